"""A drawing as it is seen: its texts with the boxes they take, measured by the widths of a broad common font."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations
from xml.etree import ElementTree

SPACE = "{http://www.w3.org/2000/svg}"
# thousandths of the height of the letters, of DejaVu Sans, which is broader than most that stand for sans-serif
WIDTHS = {
    275: "'",
    278: "ijl",
    295: "IJ",
    318: " ,.\u00a0",
    337: "/:;\\|",
    352: "f",
    361: "-",
    390: "()[]",
    392: "t",
    401: "!",
    411: "r",
    460: '"',
    500: "*_`\u00b0",
    521: "s",
    525: "z",
    531: "?",
    550: "c",
    557: "L",
    575: "F",
    579: "k",
    592: "vxy",
    603: "P",
    611: "TY",
    612: "o",
    613: "a",
    615: "e",
    632: "E",
    634: "hnu",
    635: "Sbdgpq",
    636: "$0123456789{}",
    656: "K",
    684: "AV",
    685: "XZ",
    686: "B",
    695: "R",
    698: "C",
    732: "U",
    748: "N",
    752: "H",
    770: "D",
    775: "G",
    780: "&",
    787: "OQ",
    818: "w",
    838: "#+<=>^~\u00d7",
    863: "M",
    950: "%",
    974: "m",
    989: "W",
    1000: "@\u2026",
}
ADVANCES = {letter: width / 1000 for width, letters in WIDTHS.items() for letter in letters}
BOLD = 1.12
LEAST = 9.0  # height of letters
RISE, FALL = 0.76, 0.24  # of the letters over and under the line they stand on


@dataclass(frozen=True)
class Text:
    """A text, the height of its letters, and the box it takes."""

    words: str
    size: float
    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: Text) -> bool:
        return (
            min(self.right, other.right) - max(self.left, other.left) > 0.01
            and min(self.bottom, other.bottom) - max(self.top, other.top) > 0.01
        )


def read(svg: str) -> ElementTree.Element:
    return ElementTree.fromstring(svg)  # noqa: S314  (our own)


def texts_of(svg: str) -> list[Text]:
    """Give every text with its box."""
    found = []
    for node in read(svg).iter(f"{SPACE}text"):
        words, size = node.text or "", float(node.attrib["font-size"])
        wide = sum(ADVANCES.get(letter, 1.0) for letter in words) * size
        wide *= BOLD if node.attrib.get("font-weight") == "700" else 1.0
        x, y = float(node.attrib["x"]), float(node.attrib["y"])
        left = x - {"start": 0.0, "middle": wide / 2, "end": wide}[node.attrib["text-anchor"]]
        found.append(Text(words, size, left, y - RISE * size, left + wide, y + FALL * size))
    return found


def words_of(svg: str) -> list[str]:
    """Give every line of text, with plain spaces."""
    return [text.words.replace("\u00a0", " ") for text in texts_of(svg)]


def told(svg: str) -> tuple[str, str]:
    """Give the title and the description, with plain spaces."""
    root = read(svg)
    title, description = (root.findtext(f"{SPACE}{name}") or "" for name in ("title", "desc"))
    return title, description.replace("\u00a0", " ")


def assert_readable(svg: str) -> None:
    """Hold that all text is large enough, on the sheet, and none of it over another."""
    root = read(svg)
    _, _, wide, high = (float(one) for one in root.attrib["viewBox"].split())
    texts = texts_of(svg)
    for text in texts:
        assert text.words.strip(), svg
        assert text.size >= LEAST, text
        assert text.left >= 0.0, text
        assert text.top >= 0.0, text
        assert text.right <= wide, text
        assert text.bottom <= high, text
    over = [(one.words, other.words) for one, other in combinations(texts, 2) if one.meets(other)]
    assert not over, over
    assert all(told(svg)), svg
