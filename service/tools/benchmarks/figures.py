"""What a benchmark reports: ratios from one run, each beside what it should reach, as a table and as a picture."""

from __future__ import annotations

import html
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True)
class Figure:
    """One figure of a run. `reach` is what it should be, at least or at most; None for one that is only told."""

    name: str
    value: float
    detail: str
    reach: float | None = None
    at_most: bool = False
    unit: str = "x"

    @property
    def reached(self) -> bool:
        if self.reach is None:
            return True
        return self.value <= self.reach if self.at_most else self.value >= self.reach

    @property
    def told(self) -> str:
        return f"{self.value:.3g} {self.unit}"

    @property
    def goal(self) -> str:
        if self.reach is None:
            return ""
        return f"{'at most' if self.at_most else 'at least'} {self.reach:g} {self.unit}"


def table(figures: Sequence[Figure], conditions: str) -> str:
    """Write the figures as a table in Markdown."""
    rows = [
        f"| {figure.name} | {figure.told} | {figure.goal} | "
        f"{'' if figure.reach is None else 'yes' if figure.reached else 'no'} | {figure.detail} |"
        for figure in figures
    ]
    head = ["| figure | this run | to reach | reached | from |", "|---|---|---|---|---|"]
    return "\n".join([conditions, "", *head, *rows, ""])


_ROW, _LEFT, _WIDE, _RIGHT = 34, 430, 420, 210


def picture(figures: Sequence[Figure], conditions: str) -> str:
    """Draw how far each figure comes: the bar ends at the line where it is reached, or past it."""
    drawn = [figure for figure in figures if figure.reach is not None]
    height = 64 + _ROW * len(drawn) + 28
    line = _LEFT + _WIDE / 2
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{_LEFT + _WIDE + _RIGHT}" height="{height}" '
        'font-family="sans-serif" font-size="14">',
        f'<rect width="100%" height="100%" fill="#ffffff"/><text x="16" y="26" font-size="16">{html.escape(conditions)}'
        "</text>",
        f'<text x="{line}" y="52" text-anchor="middle" fill="#444444">reached from here on</text>',
    ]
    for at, figure in enumerate(drawn):
        assert figure.reach is not None
        share = figure.reach / figure.value if figure.at_most else figure.value / figure.reach
        top = 62 + _ROW * at
        color = "#2f6f4f" if figure.reached else "#b4552d"
        parts += [
            f'<text x="{_LEFT - 12}" y="{top + 19}" text-anchor="end">{html.escape(figure.name)}</text>',
            f'<rect x="{_LEFT}" y="{top + 4}" width="{min(share, 2.0) * _WIDE / 2:.1f}" height="{_ROW - 12}" '
            f'fill="{color}"/>',
            f'<text x="{_LEFT + _WIDE + 12}" y="{top + 19}">{figure.told} ({html.escape(figure.goal)})</text>',
        ]
    parts += [
        f'<line x1="{line}" x2="{line}" y1="58" y2="{height - 28}" stroke="#222222" stroke-dasharray="4 3"/>',
        f'<text x="16" y="{height - 10}" fill="#444444">Bars are shares of what is to reach; a bar twice as long as '
        "needed ends at the right edge.</text></svg>",
    ]
    return "\n".join(parts) + "\n"


def write(figures: Sequence[Figure], conditions: str, folder: Path) -> None:
    """Write both into a folder."""
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "figures.md").write_text(table(figures, conditions), encoding="utf-8")
    (folder / "figures.svg").write_text(picture(figures, conditions), encoding="utf-8")
