import { Calls, type Documents, type Options, type RemedyingOptions } from "./calls.js";
import { CutOffError, ProblemError, UnexpectedAnswerError } from "./errors.js";
import type { BatchItem, Problem, StreamAnswer, StreamAnswerLine, StreamProblem } from "./models.js";

/** How a client behaves; everything may be left out. */
export interface Settings {
  /** What asks: a fetch of your own, for proxies and agents. */
  fetch?: typeof globalThis.fetch;
  /** Headers of every request. */
  headers?: Record<string, string>;
  /** Milliseconds until a request is given up; 30,000 unless set. */
  timeout?: number;
  /** How often to ask again after a 429, a 503 or a connection that fails or stalls; never unless set. */
  retries?: number;
  /** Milliseconds before the first of them, doubled each time; 500 unless set. */
  firstWait?: number;
  /** Told of an operation that is to end; `console.warn` unless set. */
  onDeprecated?: (sentence: string) => void;
}

/** A stream takes what a batch takes, and more. */
export interface StreamOptions extends RemedyingOptions {
  /** How many requests are under way at once; 1 unless set. */
  connections?: number;
  /** How many questions a request has at the most: fewer are answered sooner where they come slowly; 500 unless set. */
  window?: number;
}

const LONGEST_WAIT = 30_000;
const LINES = 500;
const BYTES = 49_152; // under the 64 KiB that a server reads ahead
const MEASURE = new TextEncoder();
const TEXT = new TextDecoder();

/** Give the lines of questions, as many at a time as are one request. */
async function* windows(
  items: Iterable<BatchItem> | AsyncIterable<BatchItem>, most: number,
): AsyncGenerator<string[]> {
  let lines: string[] = [];
  let size = 0;
  for await (const item of items) {
    const line = JSON.stringify(item) + "\n";
    const length = MEASURE.encode(line).length;
    if (lines.length > 0 && (lines.length >= most || size + length > BYTES)) {
      yield lines;
      lines = [];
      size = 0;
    }
    lines.push(line);
    size += length;
  }
  if (lines.length > 0) yield lines;
}

/** Asks one service: a method for every operation, and the stream. */
export class Client extends Calls {
  private readonly address: string;

  constructor(url: string, private readonly settings: Settings = {}) {
    super();
    this.address = url.replace(/\/+$/, "");
  }

  /**
   * Ask any number of questions and get each answer in order. A few hundred lines are sent as one request and their
   * answers read before more is taken from `items`: nothing is held, and neither side waits for the other. With more
   * `connections` as many such requests are under way at once, so that several replicas are at it.
   */
  async *stream(
    items: Iterable<BatchItem> | AsyncIterable<BatchItem>,
    { connections = 1, window = LINES, signal, ...options }: StreamOptions = {},
  ): AsyncGenerator<StreamAnswer | StreamProblem> {
    if (!(connections >= 1)) throw new RangeError("connections: give 1 or more");
    if (!(window >= 1)) throw new RangeError("window: give 1 or more");
    const left = new AbortController();
    const ends = signal ? AbortSignal.any([signal, left.signal]) : left.signal;
    const underWay: Promise<(StreamAnswer | StreamProblem)[]>[] = [];
    let before = 0;
    try {
      for await (const lines of windows(items, window)) {
        const asked = this.window(lines, before, { ...options, signal: ends });
        asked.catch(() => undefined); // told when its turn comes
        underWay.push(asked);
        before += lines.length;
        if (underWay.length >= connections) yield* await underWay.shift()!;
      }
      for (const asked of underWay) yield* await asked;
    } finally {
      left.abort(); // whoever leaves in the middle needs no more answers
    }
  }

  private async window(
    lines: string[], before: number, options: RemedyingOptions,
  ): Promise<(StreamAnswer | StreamProblem)[]> {
    const text = TEXT.decode(await this.send("POST", "/v1/batch/stream", lines.join(""), "application/jsonl", options));
    const answers: (StreamAnswer | StreamProblem)[] = [];
    let told = -1;
    let reason: string | undefined;
    for (const line of text.split("\n")) {
      const one = parsed(line) as StreamAnswerLine | undefined;
      if (one?.type === "summary") told = one.item_count;
      if (one?.type === "stopped") reason = one.reason;
      if (one?.type === "answer" || one?.type === "problem") answers.push({ ...one, line: one.line + before });
    }
    if (told !== answers.length || told !== lines.length) throw new CutOffError(before, reason);
    return answers;
  }

  protected override async ask(method: string, path: string, body: unknown, options: Options): Promise<unknown> {
    const content = body === undefined ? undefined : JSON.stringify(body);
    const text = TEXT.decode(await this.send(method, path, content, "application/json", options));
    const answer = parsed(text);
    if (!isObject(answer)) throw new UnexpectedAnswerError(200, "application/json", text);
    return answer;
  }

  /** Get an answer in another form that the contract has for its path: a drawing, a sheet, a takeoff. */
  async document<Path extends keyof Documents>(
    path: Path, mediaType: Documents[Path]["mediaType"], request: Documents[Path]["request"],
    options: Documents[Path]["options"] = {},
  ): Promise<Uint8Array> {
    return this.send("POST", path, JSON.stringify(request), mediaType, options);
  }

  private async send(
    method: string, path: string, body: string | undefined, media: string, options: Options,
  ): Promise<Uint8Array> {
    const { signal, ...query } = options;
    const parameters = new URLSearchParams();
    for (const [name, value] of Object.entries(query)) {
      if (value !== undefined) parameters.set(name, String(value));
    }
    const asked = parameters.size > 0 ? `?${parameters}` : "";
    const sent = media === "application/jsonl" ? media : "application/json";
    const headers = { ...this.settings.headers, Accept: media, ...(body === undefined ? {} : { "Content-Type": sent }) };
    for (let tried = 1; ; tried++) {
      const timeout = AbortSignal.timeout(this.settings.timeout ?? 30_000);
      const request: RequestInit = { method, headers, signal: signal ? AbortSignal.any([signal, timeout]) : timeout };
      if (body !== undefined) request.body = body;
      let wait: number | undefined;
      try {
        const response = await (this.settings.fetch ?? fetch)(this.address + path + asked, request);
        const content = new Uint8Array(await response.arrayBuffer());
        wait = this.waitAfter(tried, response);
        if (wait === undefined) return this.expected(response, content, media, path);
      } catch (fault) {
        const stalled = timeout.aborted && !signal?.aborted;
        if (!stalled && !(fault instanceof TypeError)) throw fault; // fetch throws one where the connection fails
        wait = this.waitAfter(tried);
        if (wait === undefined) throw fault;
      }
      await pause(wait, signal);
    }
  }

  /** Give the milliseconds to wait before the next try; nothing if there is to be none. */
  private waitAfter(tried: number, response?: Response): number | undefined {
    if (tried > (this.settings.retries ?? 0)) return undefined;
    if (response !== undefined && response.status !== 429 && response.status !== 503) return undefined;
    const asked = retryAfter(response?.headers.get("Retry-After") ?? "");
    if (asked > LONGEST_WAIT) return undefined;
    const usual = Math.min((this.settings.firstWait ?? 500) * 2 ** (tried - 1), LONGEST_WAIT);
    return Math.max(asked, usual * (0.5 + Math.random() / 2));
  }

  private expected(response: Response, content: Uint8Array, media: string, path: string): Uint8Array {
    if (response.headers.has("Deprecation")) {
      const end = response.headers.get("Sunset");
      const sentence = `${path} is deprecated${end ? ` and ends on ${end}` : ""}`;
      (this.settings.onDeprecated ?? console.warn)(sentence);
    }
    const type = mediaType(response);
    if (response.ok && type === media) return content;
    const text = TEXT.decode(content);
    const problem = type === "application/problem+json" ? parsed(text) : undefined;
    throw isProblem(problem)
      ? new ProblemError(problem, response.headers)
      : new UnexpectedAnswerError(response.status, type, text, response.headers);
  }
}

/** Wait, unless the signal ends it. */
function pause(milliseconds: number, signal?: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    const ended = (): void => {
      clearTimeout(timer);
      reject(signal?.reason);
    };
    const timer = setTimeout(() => {
      signal?.removeEventListener("abort", ended);
      resolve();
    }, milliseconds);
    if (signal?.aborted) ended();
    else signal?.addEventListener("abort", ended, { once: true });
  });
}

/** Read Retry-After, seconds or a date, in milliseconds. */
function retryAfter(text: string): number {
  return /^\d+$/.test(text) ? Number(text) * 1000 : Math.max(0, Date.parse(text) - Date.now()) || 0;
}

function mediaType(response: Response): string {
  return (response.headers.get("Content-Type") ?? "").split(";")[0]!.trim().toLowerCase();
}

/** Read JSON; nothing of what is none. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isObject(read: unknown): read is object {
  return typeof read === "object" && read !== null && !Array.isArray(read);
}

/** Whether that is a problem of the service; one of a gateway need not have these members. */
function isProblem(read: unknown): read is Problem {
  if (!isObject(read)) return false;
  const { title, detail, status } = read as Partial<Problem>;
  return typeof title === "string" && typeof detail === "string" && typeof status === "number";
}
