"""Reading a page as a browser would: its elements, its text, what it may load."""

from __future__ import annotations

import base64
import hashlib
import re
from html.parser import HTMLParser
from typing import NamedTuple

VOID = {"meta", "wbr", "br", "hr", "img", "link", "input"}
ACTIVE = {"script", "iframe", "object", "embed", "form", "link", "base", "img", "image", "use", "a", "video", "audio"}
LOADING = {"src", "href", "xlink:href", "action", "data", "poster", "srcset", "background", "formaction", "style"}


class Found(NamedTuple):
    name: str
    attributes: dict[str, str]
    text: list[str]


class Read(HTMLParser):
    """A page with its elements in order; every element closes."""

    def __init__(self, written: bytes) -> None:
        super().__init__()
        self.elements: list[Found] = []
        self._open: list[Found] = []
        self.feed(written.decode("utf-8"))
        self.close()
        assert not self._open, [one.name for one in self._open]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        found = Found(tag, {name: value or "" for name, value in attrs}, [])
        self.elements.append(found)
        if tag not in VOID:
            self._open.append(found)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append(Found(tag, {name: value or "" for name, value in attrs}, []))

    def handle_endtag(self, tag: str) -> None:
        assert self._open, tag
        assert self._open.pop().name == tag

    def handle_data(self, data: str) -> None:
        for one in self._open:
            one.text.append(data)

    def texts(self, name: str) -> list[str]:
        return ["".join(one.text) for one in self.elements if one.name == name]

    @property
    def text(self) -> str:
        return " ".join(self.texts("body"))

    def rows(self) -> list[list[str]]:
        """Give the cells of every row of every table, its header too."""
        found: list[list[str]] = []
        for one in self.elements:
            if one.name == "tr":
                found.append([])
            elif one.name in ("td", "th"):
                found[-1].append("".join(one.text))
        return found


def assert_harmless(written: bytes, policy: str) -> Read:
    """Hold that a page runs and loads nothing, and that its policy allows its styles and nothing else."""
    page = Read(written)
    assert not {one.name for one in page.elements} & ACTIVE
    for one in page.elements:
        assert not set(one.attributes) & LOADING, one
        assert not [name for name in one.attributes if name.startswith("on")], one
    styles = page.texts("style")
    assert styles
    hashes = {f"'sha256-{base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()}'" for style in styles}
    directives = {part.split()[0]: set(part.split()[1:]) for part in policy.split(";")}
    assert directives["default-src"] == {"'none'"}
    assert hashes <= directives["style-src"]
    assert "unsafe" not in policy
    assert {name for name, allowed in directives.items() if allowed != {"'none'"}} == {"style-src"}
    for style in styles:
        assert not re.search(r"url\(|@import|expression|</", style)
    return page
