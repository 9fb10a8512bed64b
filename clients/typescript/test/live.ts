// The client against a live server, at DUCTRUN_URL, and against answers made here.
import assert from "node:assert/strict";
import { createServer, type RequestListener } from "node:http";
import type { AddressInfo } from "node:net";
import test from "node:test";

import {
  type BatchItem, Client, CutOffError, ProblemError, type SpacersRequest, TRADE_SIZE_VALUES, UnexpectedAnswerError,
} from "../src/index.js";

const ductrun = new Client(process.env["DUCTRUN_URL"]!);
const bank: SpacersRequest = { length: { value: 300, unit: "ft" }, tiers: [3, 3, 2] };

function* runs(count: number): Generator<BatchItem> {
  for (let feet = 1; feet <= count; feet++) {
    yield { id: `${feet}`, operation: "spacers", request: { length: { value: feet, unit: "ft" }, tiers: [3] } };
  }
}

/** Serve answers made by hand while something is asked. */
async function answering(answer: RequestListener, ask: (address: string) => Promise<void>): Promise<void> {
  const server = createServer(answer).listen(0, "127.0.0.1");
  await new Promise((resolve) => server.once("listening", resolve));
  try {
    await ask(`http://127.0.0.1:${(server.address() as AddressInfo).port}/prefix/`);
  } finally {
    server.closeAllConnections();
    server.close();
  }
}

test("a question is answered in types, in the units asked for", async () => {
  const answer = await ductrun.spacers(bank, { units: "metric", working: true });
  assert.equal(answer.result.station_count, 61); // ceil(300 / 5) + 1
  assert.equal(answer.result.actual_spacing?.unit, "m");
  assert.ok(answer.working?.length);
});

test("unions are told apart by their kind, both ways", async () => {
  const cable = { kind: "listed", insulation: "THHN", size: "4/0 AWG" } as const;
  const answer = await ductrun.fill(
    { conduit: { kind: "listed", type: "pvc_schedule_40", trade_size: "2" }, cables: [{ count: 5, cable }] },
    { request: "completed" },
  );
  assert.equal(answer.verdict, "violates");
  const conduit = answer.request!.conduit;
  assert.equal(conduit.kind === "listed" ? conduit.trade_size : conduit.inside_diameter.unit, "2");
  assert.ok(TRADE_SIZE_VALUES.includes("2"));
});

test("a problem is thrown with every fault of it", async () => {
  const bad = { length: { value: -1, unit: "ft" }, tiers: [99] } as const;
  await assert.rejects(ductrun.spacers({ ...bad, tiers: [...bad.tiers] }), (fault: unknown) => {
    assert.ok(fault instanceof ProblemError);
    assert.equal(fault.status, 422);
    assert.deepEqual(fault.faults.map((one) => one.pointer), ["#/length/value", "#/tiers/0"]);
    return fault.message.includes("#/tiers/0: ");
  });
});

test("a batch says of each item what became of it", async () => {
  const wrong = { id: "b", operation: "cover", request: {} } as unknown as BatchItem;
  const { items } = await ductrun.batch({ items: [...runs(1), wrong] });
  const told = items.map((item) => (item.type === "answer" ? item.answer.basis.service_version : item.problem.type));
  assert.equal(told[1], "/problems/invalid_request");
  assert.equal(items[0]!.type === "answer" && items[0]!.operation === "spacers" && items[0]!.answer.result.station_count, 2);
});

test("tables and health are there too", async () => {
  const { rows } = await ductrun.listConduits({ type: "emt", trade_size: "2" });
  assert.deepEqual(rows.map((row) => row.metric_designator), [53]);
  assert.equal((await ductrun.checkReady()).status, "ready");
});

test("a stream takes what a batch takes, and a line without an answer ends nothing", async () => {
  const [first, second] = [...runs(2)] as [BatchItem, BatchItem];
  const wrong = { ...second, request: { length: { value: 1, unit: "furlong" }, tiers: [3] } } as unknown as BatchItem;
  const told = [];
  for await (const line of ductrun.stream([first, wrong, second], { request: "completed", remedies: true })) {
    told.push(line.type === "answer" ? Boolean(line.answer.request) : line.problem.errors?.[0]?.pointer);
  }
  assert.deepEqual(told, [true, "#/request/length/unit", true]);
});

test("a stream of many windows comes back in order, and takes no more than is being asked", async () => {
  let answered = 0;
  for await (const line of ductrun.stream(runs(1_700))) {
    assert.equal(line.line, ++answered);
    assert.equal(line.id, `${answered}`);
    assert.equal(line.type, "answer");
  }
  assert.equal(answered, 1_700);
  let taken = 0;
  async function* counted(): AsyncGenerator<BatchItem> {
    for (const item of runs(1_000_000)) {
      taken++;
      yield item;
    }
  }
  for await (const _ of ductrun.stream(counted())) break;
  assert.ok(taken <= 501);
});

test("several connections are at a stream at once, and order is kept", async () => {
  const lines: number[] = [];
  let most = 0;
  let open = 0;
  const counted: typeof fetch = async (...asked) => {
    most = Math.max(most, ++open);
    return fetch(...asked).finally(() => open--);
  };
  const several = new Client(process.env["DUCTRUN_URL"]!, { fetch: counted });
  for await (const line of several.stream(runs(2_100), { connections: 3 })) lines.push(line.line!);
  assert.deepEqual(lines, Array.from({ length: 2_100 }, (_, index) => index + 1));
  assert.equal(most, 3);
  await assert.rejects(several.stream(runs(1), { connections: 0 }).next(), RangeError);
});

test("whoever leaves a stream ends what is under way", async () => {
  const signals: AbortSignal[] = [];
  const said = '{"type":"problem","line":1,"status":422}\n{"type":"summary","item_count":1,"failed_count":1}\n';
  const first: typeof fetch = async (_, request) => {
    const signal = request!.signal!;
    if (signals.push(signal) === 1) return new Response(said, { headers: { "Content-Type": "application/jsonl" } });
    return new Promise((_, reject) => signal.addEventListener("abort", () => reject(signal.reason)));
  };
  for await (const _ of new Client("", { fetch: first }).stream(runs(3), { connections: 3, window: 1 })) break;
  assert.deepEqual(signals.map((one) => one.aborted), [true, true, true]);
});

test("a small window asks for few at a time", async () => {
  let requests = 0;
  const counted: typeof fetch = async (...asked) => (requests++, fetch(...asked));
  const small = new Client(process.env["DUCTRUN_URL"]!, { fetch: counted });
  let lines = 0;
  for await (const _ of small.stream(runs(7), { window: 3 })) lines++;
  assert.deepEqual([lines, requests], [7, 3]);
  await assert.rejects(small.stream(runs(1), { window: 0 }).next(), RangeError);
});

test("a server that stalls is asked again where retries say so", async () => {
  let asked = 0;
  const once: RequestListener = (_, answer) => {
    if (++asked > 1) answer.writeHead(200, { "Content-Type": "application/json" }).end('{"status":"ready"}');
  };
  await answering(once, async (address) => {
    await new Client(address, { timeout: 300, retries: 1, firstWait: 1 }).checkReady();
  });
  assert.equal(asked, 2);
});

test("a page of a gateway is an error of its own, for a call and a stream", async () => {
  const page: RequestListener = (_, answer) => answer.writeHead(502, { "Content-Type": "text/html" }).end("<h1>Bad");
  await answering(page, async (address) => {
    const lost = new Client(address);
    const expected = { name: UnexpectedAnswerError.name, status: 502, contentType: "text/html", content: "<h1>Bad" };
    await assert.rejects(lost.spacers(bank), expected);
    await assert.rejects(lost.stream(runs(1)).next(), expected);
  });
});

test("a problem of a gateway, and an answer that is none, are readable", async () => {
  for (const [status, content] of [[401, '{"title":"Unauthorized","status":401}'], [504, '"late"'], [502, ""]] as const) {
    const type = "application/problem+json";
    await answering((_, answer) => answer.writeHead(status, { "Content-Type": type, "X-Gate": "a" }).end(content), async (address) => {
      await assert.rejects(new Client(address).spacers(bank), (fault: unknown) => {
        assert.ok(fault instanceof UnexpectedAnswerError);
        assert.deepEqual([fault.status, fault.content, fault.headers.get("x-gate")], [status, content, "a"]);
        return fault.message.startsWith(`status ${status}, ${type}: that is no answer of the service: something before it`);
      });
    });
  }
  const nothing: RequestListener = (_, answer) => answer.writeHead(200, { "Content-Type": "application/json" }).end("null");
  await answering(nothing, (address) => assert.rejects(new Client(address).checkReady(), UnexpectedAnswerError));
});

test("a wait ends with its signal, and a Retry-After that is a date is kept to", async () => {
  const later = { "Content-Type": "application/problem+json", "Retry-After": "20" };
  const told = JSON.stringify({ type: "/problems/starting", title: "Starting", status: 503, detail: "Not yet." });
  await answering((_, answer) => answer.writeHead(503, later).end(told), async (address) => {
    const begun = Date.now();
    const asked = new Client(address, { retries: 1 }).checkReady({ signal: AbortSignal.timeout(100) });
    await assert.rejects(asked, { name: "TimeoutError" });
    assert.ok(Date.now() - begun < 5_000);
    await assert.rejects(new Client(address).checkReady(), (fault: unknown) =>
      fault instanceof ProblemError && fault.headers.get("Retry-After") === "20");
  });
  const from = new Date(Date.now() + 1_500).toUTCString(); // whole seconds: half a second or more from now
  const times: number[] = [];
  await answering((_, answer) => {
    times.push(Date.now());
    const ready = times.length > 1;
    answer.writeHead(ready ? 200 : 503, { "Content-Type": ready ? "application/json" : "text/plain", "Retry-After": from });
    answer.end(ready ? '{"status":"ready"}' : "");
  }, async (address) => {
    await new Client(address, { retries: 1, firstWait: 1 }).checkReady();
  });
  assert.ok(times[1]! >= Date.parse(from) - 20);
  const far: RequestListener = (_, answer) =>
    answer.writeHead(503, { ...later, "Retry-After": new Date(Date.now() + 3_600_000).toUTCString() }).end(told);
  await answering(far, (address) => assert.rejects(new Client(address, { retries: 1 }).checkReady(), ProblemError));
});

test("a stream without its summary was cut off", async () => {
  const cut: RequestListener = (_, answer) =>
    answer.writeHead(200, { "Content-Type": "application/jsonl" }).end('{"type":"basis"}\n{"type":"ans');
  await answering(cut, async (address) => {
    await assert.rejects(new Client(address).stream(runs(3)).next(), new CutOffError(0));
  });
});

test("a stream that the service ends says why", async () => {
  const stopped: RequestListener = (_, answer) => answer.writeHead(200, { "Content-Type": "application/jsonl" })
    .end('{"type":"basis"}\n{"type":"stopped","reason":"idle","line":0,"item_count":0,"failed_count":0}\n');
  await answering(stopped, async (address) => {
    const expected = { name: CutOffError.name, answered: 0, reason: "idle" };
    await assert.rejects(new Client(address).stream(runs(3)).next(), expected);
  });
});

test("what may pass is asked again only if that was asked for, and the path before is kept", async () => {
  const paths: (string | undefined)[] = [];
  const busy: RequestListener = (request, answer) => {
    paths.push(request.url);
    const ready = paths.length > 2;
    answer.writeHead(ready ? 200 : 503, { "Content-Type": ready ? "application/json" : "application/problem+json" });
    answer.end(JSON.stringify(ready ? { status: "ready" } : { type: "/problems/starting", title: "Starting", status: 503, detail: "Not yet." }));
  };
  await answering(busy, async (address) => {
    await assert.rejects(new Client(address).checkReady(), ProblemError);
    assert.equal((await new Client(address, { retries: 2, firstWait: 1 }).checkReady()).status, "ready");
  });
  assert.deepEqual(paths, ["/prefix/readyz", "/prefix/readyz", "/prefix/readyz"]);
});

test("a connection that is refused is asked again and then told", async () => {
  let asked = 0;
  const counting: typeof fetch = (input, init) => (asked++, fetch(input, init));
  await assert.rejects(new Client("http://127.0.0.1:1", { fetch: counting, retries: 2, firstWait: 1 }).checkReady(), TypeError);
  assert.equal(asked, 3);
});

test("a server that stalls ends in a timeout, and a signal ends a call", async () => {
  await answering(() => {}, async (address) => {
    await assert.rejects(new Client(address, { timeout: 50 }).checkReady(), { name: "TimeoutError" });
    await assert.rejects(new Client(address, { timeout: 50 }).stream(runs(1)).next(), { name: "TimeoutError" });
    await assert.rejects(ductrun.checkReady({ signal: AbortSignal.abort() }), { name: "AbortError" });
  });
});

test("an operation that is to end is told of", async () => {
  const headers = { "Content-Type": "application/json", Deprecation: "@1", Sunset: "Thu, 31 Dec 2026 23:59:59 GMT" };
  const told: string[] = [];
  await answering((_, answer) => answer.writeHead(200, headers).end("{}"), async (address) => {
    await new Client(address, { onDeprecated: (sentence) => told.push(sentence) }).checkReady();
  });
  assert.deepEqual(told, ["/readyz is deprecated and ends on Thu, 31 Dec 2026 23:59:59 GMT"]);
});

test("another form of an answer is given as it came, and no other for it", async () => {
  const picture: RequestListener = (request, answer) => {
    assert.equal(request.headers["content-type"], "application/json");
    answer.writeHead(200, { "Content-Type": "image/svg+xml" }).end("<svg/>");
  };
  await answering(picture, async (address) => {
    const lost = new Client(address);
    const drawn = await lost.document("/v1/spacers", "image/svg+xml", bank, { units: "metric" });
    // @ts-expect-error no list is made of spacers
    await assert.rejects(lost.document("/v1/spacers", "text/csv", bank), UnexpectedAnswerError);
    // @ts-expect-error a page is chosen of a whole run alone
    await lost.document("/v1/spacers", "image/svg+xml", bank, { page: "crew" });
    assert.equal(new TextDecoder().decode(drawn), "<svg/>");
    await assert.rejects(lost.document("/v1/spacers", "text/html", bank), UnexpectedAnswerError);
  });
});
