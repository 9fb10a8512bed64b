"""Hostile bodies: a million of them, as requests one behind the other and as lines of streams."""

from __future__ import annotations

import asyncio
import random
import sys
import time
from collections import Counter

from tools.live import started
from tools.soak.callers import CUT, EXAMPLES, HUNG, Caller, resident, told, written

CALLERS = 8
AT_ONCE = 32  # requests one behind the other
LINES = 96  # of a stream


def few(source: random.Random, most: int) -> int:
    """Give a number up to a largest one, mostly a small one: what is large takes the time of many small."""
    return int(most * source.random() ** 4)


def hostile(source: random.Random) -> bytes:
    """Make a body that is wrong: cut, mixed up, nested, crowded, or of plain noise."""
    good = source.choice(list(EXAMPLES.values()))
    place = source.randrange(len(good))
    return source.choice(
        (
            lambda: good[:place],
            lambda: good[:place] + bytes([source.randrange(256)]) + good[place + 1 :],
            lambda: good[:place] + good[place // 2 : place] + good[place:],
            lambda: b"[" * few(source, 400) + b"]" * few(source, 400),
            lambda: good.replace(b":", b":" + source.choice((b"NaN", b"1e999", b'"\\ud800"', b"null,")), 1),
            lambda: b'{"a":[' + b"{}," * few(source, 4_000) + b"0]}",
            lambda: source.randbytes(source.randrange(200)),
            lambda: good.replace(b"}", b',"kind":"x"}', source.randrange(3)),
        )
    )()


def hostile_request(source: random.Random) -> bytes:
    return written(f"/v1/{source.choice([*EXAMPLES, 'batch'])}", hostile(source))


def hostile_line(source: random.Random) -> bytes:
    """Make a line that is wrong, or an item whose request is; it is one line, and not blank."""
    wrong = hostile(source).replace(b"\n", b"\0")
    if source.random() < 0.25:
        return wrong.strip() or b"-"
    operation = source.choice(list(EXAMPLES)).replace("-", "_").replace("/", "_").encode()
    return b'{"id":"a","operation":"%b","request":%b}' % (operation, wrong)


def bodies(seconds: float, count: int = 0) -> tuple[str, str, bool]:
    """Send so many hostile bodies, or as many as go into the time, and watch what is kept of them."""
    with started() as (address, server):
        port = int(address.rpartition(":")[2])
        alone, lines = Counter[int](), Counter[int]()
        sizes = [(0, resident(server.pid))]

        def sent() -> int:
            return alone.total() + lines.total()

        async def one(seed: int) -> None:
            source, caller = random.Random(seed), Caller(port)
            while sent() < count or (not count and time.monotonic() < ends):
                alone.update(await caller.ask_all([hostile_request(source) for _ in range(AT_ONCE)]))
                lines.update(await caller.stream([hostile_line(source) for _ in range(LINES)]))
            caller.close()

        async def watch() -> None:
            while True:
                await asyncio.sleep(min(1.0, seconds / 100))
                sizes.append((sent(), resident(server.pid)))
                if len(sizes) % 60 == 0:
                    print(f"{sent():,} hostile bodies, {sizes[-1][1]:.0f} MB", file=sys.stderr, flush=True)

        async def run() -> None:
            watching = asyncio.create_task(watch())
            await asyncio.gather(*map(one, range(CALLERS)))
            watching.cancel()

        ends = time.monotonic() + seconds
        asyncio.run(run())
        sizes.append((sent(), resident(server.pid)))
    return verdict(alone, lines, sizes)


def verdict(alone: Counter[int], lines: Counter[int], sizes: list[tuple[int, float]]) -> tuple[str, str, bool]:
    """Say what was sent, what came of it, and whether it is well; sizes are the memory after so many bodies."""
    statuses = alone + lines
    later = [size for sent, size in sizes if sent >= statuses.total() / 4]  # what is made at first need is made by then
    growth = max(later) / later[0] - 1
    wrong = [status for status in statuses if status >= 500 or status in (CUT, HUNG)]
    memory = f"{sizes[0][1]:.0f} MB at the start, {later[0]:.0f} after a quarter, {later[-1]:.0f} at the end"
    return (
        f"{statuses.total():,} hostile bodies, {lines.total():,} of them lines of streams",
        f"{told(statuses)}; {memory}: at most {growth:+.1%} from the quarter on",
        not wrong and growth < 0.05,
    )
