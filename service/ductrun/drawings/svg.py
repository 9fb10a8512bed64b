"""The thinnest writer of SVG: shapes in named roles, real text, a title and a description in words.

A drawing is 360 units wide, a phone held upright, and as high as what is drawn asks for; its least letters are 9 units
high. It has no script, no id and no reference of any kind, to itself or outward, so that any number of drawings may
stand in one page. Sizes, dashes and the colours of a light page are presentation attributes, which need no leave of a
content security policy. The colours of a dark screen are in one `style` element, the same text in every drawing: a page
or an answer under a policy allows it with `style-src 'STYLE_HASH'`; where it is not allowed the drawing is shown as on
a light page, on its own paper.

Text of a caller is escaped and cut to its room, never interpreted.
"""

from __future__ import annotations

import base64
import hashlib
import math
import re
import unicodedata
from collections.abc import Sequence
from html import escape
from typing import Final

WIDTH: Final = 360.0
MARGIN: Final = 10.0
SMALLEST: Final = 9.0  # height of letters
_BOLD: Final = 1.12  # of the width of plain letters

# role: on a light page, on a dark one
_COLOURS: Final = {
    "ink": ("#1b1f24", "#e8eaed"),
    "soft": ("#59636e", "#a3adb8"),
    "faint": ("#c9ced4", "#4a525b"),
    "paper": ("#ffffff", "#14171a"),
    "earth": ("#f1e7d6", "#3a3020"),
    "sand": ("#f7efb9", "#575020"),
    "concrete": ("#dfe2e5", "#40474e"),
    "limit": ("#b3261e", "#ff8f85"),
    "there": ("#0b57a4", "#7ab8ff"),
    "back": ("#8a4b00", "#ffb86b"),
}
_LIGHT, _DARK = ("".join(f"--dr-{role}:{colours[place]};" for role, colours in _COLOURS.items()) for place in (0, 1))
STYLE: Final = (
    f".ductrun-drawing{{{_LIGHT}background:var(--dr-paper)}}"
    f"@media screen and (prefers-color-scheme:dark){{.ductrun-drawing{{{_DARK}}}}}"
    + "".join(
        f".ductrun-drawing .f-{role}{{fill:var(--dr-{role})}}.ductrun-drawing .s-{role}{{stroke:var(--dr-{role})}}"
        for role in _COLOURS
    )
)
STYLE_HASH: Final = "sha256-" + base64.b64encode(hashlib.sha256(STYLE.encode()).digest()).decode()

_NOT_IN_XML: Final = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_SPACES: Final = re.compile("[ \t\n\r]+")
_NARROW: Final = frozenset("\u00a0 .,:;'|!ilIjtfr()[]/-")
_BROAD: Final = frozenset("^mwMW@%\u2026+\u00d7=<>~#&")
Place = tuple[float, float]


def plain(text: str) -> str:
    """Give a text without what no XML can hold, in one line."""
    return _SPACES.sub(" ", _NOT_IN_XML.sub("\ufffd", text)).strip(" ")


def text_width(text: str, size: float) -> float:
    """Give a width that a text of a size of letters does not exceed in the usual sans-serif fonts."""
    return sum([_advance(letter) for letter in text]) * size


def _advance(letter: str) -> float:
    if letter in _NARROW:
        return 0.43
    if letter in _BROAD:
        return 1.0
    if letter.isascii():
        return 0.8 if letter.isupper() else 0.66
    return 1.1 if unicodedata.east_asian_width(letter) in "WF" else 1.0


def shortened(text: str, size: float, room: float) -> str:
    """Give a text that is no wider than its room, cut with an ellipsis where it must be."""
    text = plain(text)
    if text_width(text, size) <= room:
        return text
    room -= text_width("\u2026", size)
    kept, taken = "", 0.0
    for letter in text:
        taken += _advance(letter) * size
        if taken > room:
            break
        kept += letter
    return kept.rstrip() + "\u2026"


def wrapped(text: str, size: float, room: float) -> list[str]:
    """Give the lines of a text that are no wider than their room; a word that is wider is cut."""
    lines: list[str] = []
    line = ""
    for given in plain(text).split(" "):
        word = shortened(given, size, room)
        longer = f"{line} {word}" if line else word
        if line and text_width(longer, size) > room:
            lines.append(line)
            longer = word
        line = longer
    return [*lines, line] if line else lines


def number(value: float) -> str:
    """Write a number of a drawing: to the hundredth of a unit; one that is not finite is a fault of ours."""
    if not math.isfinite(value):
        raise ArithmeticError("a drawing was given a number that is not finite")
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("", "-0") else text


class Drawing:
    """Shapes and text on a sheet of a fixed width; `y` is where what is drawn so far ends."""

    def __init__(self) -> None:
        """Start with an empty sheet."""
        self._parts: list[str] = []
        self.y = MARGIN

    def line(
        self, places: Sequence[Place], stroke: str = "ink", width: float = 1.0, dash: str = "", *, closed: bool = False
    ) -> None:
        """Draw a line through places."""
        self.shape(places, "none", stroke, width, dash, closed=closed)

    def shape(
        self,
        places: Sequence[Place],
        fill: str,
        stroke: str = "none",
        width: float = 1.0,
        dash: str = "",
        *,
        closed: bool = True,
    ) -> None:
        """Draw the outline through places, filled."""
        path = "M" + "L".join([f"{number(x)} {number(y)}" for x, y in places]) + ("Z" if closed else "")
        self._parts.append(f'<path d="{path}"{_painted(fill, stroke, width, dash)}/>')

    def lines(self, pairs: Sequence[tuple[Place, Place]], stroke: str = "ink", width: float = 1.0) -> None:
        """Draw many short lines as one."""
        if pairs:
            path = "".join(
                [f"M{number(a)} {number(b)}L{number(c)} {number(d)}" for (a, b), (c, d) in pairs],
            )
            self._parts.append(f'<path d="{path}"{_painted("none", stroke, width, "")}/>')

    def circle(
        self, x: float, y: float, radius: float, fill: str = "none", stroke: str = "ink", width: float = 1.0
    ) -> None:
        """Draw a circle."""
        painted = _painted(fill, stroke, width, "")
        self._parts.append(f'<circle cx="{number(x)}" cy="{number(y)}" r="{number(radius)}"{painted}/>')

    def box(
        self,
        x: float,
        y: float,
        width: float,
        height: float,
        fill: str = "none",
        stroke: str = "ink",
        thickness: float = 1.0,
    ) -> None:
        """Draw a rectangle."""
        painted = _painted(fill, stroke, thickness, "")
        size = f'width="{number(width)}" height="{number(height)}"'
        self._parts.append(f'<rect x="{number(x)}" y="{number(y)}" {size}{painted}/>')

    def text(
        self,
        x: float,
        y: float,
        text: str,
        size: float = 11.0,
        anchor: str = "start",
        role: str = "ink",
        *,
        bold: bool = False,
        halo: bool = False,
    ) -> None:
        """Write a line of text whose letters stand on `y`, kept within the sheet; a halo keeps it clear of lines."""
        text = shortened(text, size * (_BOLD if bold else 1.0), WIDTH - 4.0)
        if not text:
            return
        wide = text_width(text, size) * (_BOLD if bold else 1.0)
        before = {"start": 0.0, "middle": wide / 2, "end": wide}[anchor]
        x = min(max(x, before + 2.0), WIDTH - 2.0 - (wide - before))
        weight = ' font-weight="700"' if bold else ""
        at = f'x="{number(x)}" y="{number(y)}" font-size="{number(size)}" text-anchor="{anchor}"'
        painted = _painted(role, "paper" if halo else "none", 3.0, "") + (' paint-order="stroke"' if halo else "")
        self._parts.append(f"<text {at}{weight}{painted}>{escape(text)}</text>")

    def heading(self, text: str) -> None:
        """Write a heading below what is drawn so far."""
        for line in wrapped(text, 14.6, WIDTH - 2 * MARGIN):
            self.y += 15.0
            self.text(MARGIN, self.y, line, 13.0, bold=True)
        self.y += 6.0

    def note(self, text: str, role: str = "ink", indent: float = 0.0) -> None:
        """Write a note below what is drawn so far, on as many lines as it takes."""
        for line in wrapped(text, 11.0, WIDTH - 2 * MARGIN - indent):
            self.y += 14.5
            self.text(MARGIN + indent, self.y, line, role=role)
        self.y += 2.0

    def written(self, title: str, description: str) -> str:
        """Give the drawing, with a title and a description that say in words what it shows."""
        height = number(self.y + MARGIN)
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="ductrun-drawing" role="img" '
            f'viewBox="0 0 {number(WIDTH)} {height}" font-family="system-ui, sans-serif">'
            f"<title>{escape(plain(title))}</title><desc>{escape(plain(description))}</desc><style>{STYLE}</style>"
            f'<rect width="{number(WIDTH)}" height="{height}" class="f-paper" fill="{_COLOURS["paper"][0]}"/>'
            f"{''.join(self._parts)}</svg>\n"
        )


def _painted(fill: str, stroke: str, width: float, dash: str) -> str:
    """Write the roles of a shape, with the colours of a light page for where no style is allowed."""
    roles = " ".join([f"{kind}-{role}" for kind, role in (("f", fill), ("s", stroke)) if role != "none"])
    painted = f' class="{roles}"' if roles else ""
    painted += f' fill="{_COLOURS[fill][0] if fill != "none" else "none"}"'
    if stroke != "none":
        painted += f' stroke="{_COLOURS[stroke][0]}" stroke-width="{number(width)}"'
        if dash:
            painted += f' stroke-dasharray="{dash}"'
    return painted
