"""The load curve: what a process gives as more callers ask of it than it takes at once, as a table and a picture."""

from __future__ import annotations

import math
import statistics
from collections.abc import Sequence
from typing import Final, NamedTuple

from ductrun.drawings.svg import MARGIN, WIDTH, Drawing, Place


class Step(NamedTuple):
    """So many callers at once, and what came of it; `patient` ones wait as they are told where they are refused."""

    callers: int
    patient: bool
    taken: float  # a second
    refused: float  # a second
    p50: float  # milliseconds of those taken
    p99: float


class Line(NamedTuple):
    """What one line of the picture tells of the steps, and how it is drawn."""

    name: str
    member: str
    role: str
    dash: str = ""


TITLE: Final = "What one process takes under load"
RATES: Final = (Line("taken", "taken", "there"), Line("refused", "refused", "limit", "1.5 2.5"))
TIMES: Final = (Line("p99 of those taken", "p99", "back"), Line("p50", "p50", "there", "5 2.5"))
_LEFT: Final = 40.0
_RIGHT: Final = WIDTH - MARGIN - 6.0
_HIGH: Final = 120.0
_SMALL: Final = 9.5


def median_of(steps: Sequence[Step]) -> Step:
    """Give one step of several alike: the median of each figure."""
    return Step(
        *steps[0][:2], *(statistics.median(figures) for figures in zip(*(step[2:] for step in steps), strict=True))
    )


def told(count: float) -> str:
    return f"{count:,.0f}" if count >= 100 else f"{count:.1f}"


def table(steps: Sequence[Step]) -> str:
    """Write the steps as a table in Markdown."""
    lines = [
        "| callers | taken a second | refused a second | p50 of those taken, ms | p99, ms |",
        "|---|---|---|---|---|",
    ]
    for step in steps:
        who = f"{step.callers}, waiting when refused" if step.patient else f"{step.callers}"
        lines.append(f"| {who} | {step.taken:,.0f} | {step.refused:,.0f} | {told(step.p50)} | {told(step.p99)} |")
    return "\n".join(lines) + "\n"


def round_up(value: float) -> float:
    """Give the least of 1, 2, 4, 6, 8 and 10 times a power of ten that is no less: a scale of four parts ends there."""
    power = 10.0 ** math.floor(math.log10(value))
    return next(power * times for times in (1, 2, 4, 6, 8, 10) if power * times >= value * 0.999)


class Panel:
    """One field of the picture: callers across, each step twice the one before, and a scale of its own upward."""

    def __init__(self, drawing: Drawing, steps: Sequence[Step], lines: Sequence[Line]) -> None:
        self.drawing, self.steps, self.lines = drawing, steps, lines
        self.full = round_up(max(getattr(step, line.member) for step in steps for line in lines))
        self.most = max(step.callers for step in steps)
        self.top = self.bottom = 0.0

    def across(self, callers: float) -> float:
        return _LEFT + (_RIGHT - _LEFT) * math.log(callers) / math.log(self.most)

    def place(self, step: Step, line: Line) -> Place:
        return self.across(step.callers), self.bottom - _HIGH * getattr(step, line.member) / self.full

    def draw(self, title: str, limit: int) -> None:
        self.drawing.y += 20.0
        self.drawing.text(MARGIN, self.drawing.y, title, 11.0, bold=True)
        self.legend()
        self.top = self.drawing.y + 12.0
        self.bottom = self.top + _HIGH
        self.scale(limit)
        for line in self.lines:
            at_once = [step for step in self.steps if not step.patient]
            patient = [step for step in self.steps if step.patient]
            before = [step for step in at_once if step.callers < min(one.callers for one in patient)][-1:]
            self.drawing.line([self.place(step, line) for step in at_once], line.role, 1.8, line.dash)
            self.drawing.line([self.place(step, line) for step in before + patient], line.role, 0.8, line.dash)
            for step in self.steps:
                fill = "paper" if step.patient else line.role
                self.drawing.circle(*self.place(step, line), 3.0, fill, line.role, 1.5)
        self.drawing.y = self.bottom + 28.0

    def legend(self) -> None:
        self.drawing.y += 15.0
        x = _LEFT
        for line in self.lines:
            self.drawing.line([(x, self.drawing.y - 3.5), (x + 20.0, self.drawing.y - 3.5)], line.role, 1.8, line.dash)
            self.drawing.text(x + 25.0, self.drawing.y, line.name, _SMALL)
            x += 150.0

    def scale(self, limit: int) -> None:
        for part in range(5):
            y = self.bottom - _HIGH * part / 4
            self.drawing.line([(_LEFT, y), (_RIGHT, y)], "faint", 0.7)
            self.drawing.text(_LEFT - 5.0, y + 3.5, f"{self.full * part / 4:,.4g}", _SMALL, "end", "soft")
        for callers in sorted({step.callers for step in self.steps}):
            self.drawing.text(self.across(callers), self.bottom + 13.0, f"{callers}", _SMALL, "middle", "soft")
        x = self.across(limit)
        self.drawing.line([(x, self.top), (x, self.bottom)], "soft", 1.0, "3 2")
        self.drawing.text((_LEFT + _RIGHT) / 2, self.bottom + 25.0, "callers at once", _SMALL, "middle", "soft")


def picture(steps: Sequence[Step], limit: int, conditions: str) -> str:
    """Draw the steps: requests a second above, milliseconds below."""
    drawing = Drawing()
    drawing.heading(TITLE)
    drawing.note(conditions, "soft")
    Panel(drawing, steps, RATES).draw("Requests a second", limit)
    Panel(drawing, steps, TIMES).draw("Milliseconds until the answer", limit)
    drawing.note(f"The upright line: {limit} requests are taken at once, and those beyond are told to come back.")
    drawing.note(
        "Full dots: who are refused ask again at once. Hollow dots: they wait a second first, as they are told."
    )
    highest = max(steps, key=lambda step: step.taken)
    description = (
        f"Of {', '.join(str(step.callers) for step in steps if not step.patient)} callers at once, {limit} are taken. "
        f"At most {highest.taken:,.0f} requests a second are answered, to {highest.callers} callers; the p99 of those "
        f"taken is at most {max(step.p99 for step in steps):.0f} milliseconds."
    )
    return drawing.written(TITLE, description)
