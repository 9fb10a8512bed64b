"""The thinnest writer of HTML: elements of escaped text, and a whole document with the policy it is to be sent under.

A text is escaped wherever it stands; only what an element function gave is markup. A document has no script and no
reference of any kind, to itself or outward; its styles are its own, and its policy allows these by their hashes and
nothing else.
"""

from __future__ import annotations

import base64
import hashlib
import re
from collections.abc import Iterable, Sequence
from html import escape
from typing import Final, NamedTuple

from ductrun.drawings.svg import STYLE_HASH as DRAWING_STYLE_HASH

_NOT_IN_XML: Final = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_PLAIN: Final = re.compile("[\t\n\r !#-%(-;=?-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]*")  # stands as it is
_LONGEST_WORD: Final = 25  # letters
_LONG: Final = re.compile(rf"[^ ]{{{_LONGEST_WORD}}}")
_PARTS: Final = re.compile(".{1,20}", re.DOTALL)


class Markup(str):
    """What is markup already, and is not escaped again."""

    __slots__ = ()


NOTHING: Final = Markup()


class Document(NamedTuple):
    """A page and the content security policy it is sent under."""

    written: bytes
    policy: str


def legible(text: str) -> str:
    """Give a text with a sign in the place of what neither XML nor HTML can hold."""
    return _NOT_IN_XML.sub("\ufffd", text)


def _escaped(text: str) -> str:
    return text if _PLAIN.fullmatch(text) else escape(legible(text))


def _within(text: str) -> str:
    """Write a text within an element; a word that is too long for a narrow column may break, and stays one word."""
    if len(text) < _LONGEST_WORD or not _LONG.search(text):
        return _escaped(text)
    return " ".join(["<wbr>".join(map(_escaped, _PARTS.findall(word))) for word in text.split(" ")])


def element(name: str, *parts: str, kind: str = "", **attributes: str) -> Markup:
    """Write an element; `kind` is its class, an attribute of the trade's own (`data_label`) has its dash back."""
    written = f' class="{_escaped(kind)}"' if kind else ""
    for attribute, value in attributes.items():
        written += f' {attribute.replace("_", "-")}="{_escaped(value)}"'
    return Markup(f"<{name}{written}>{joined(parts)}</{name}>")


def joined(parts: Iterable[str]) -> Markup:
    """Write parts one after the other."""
    return Markup("".join([_part(part) for part in parts]))


def _part(part: str) -> str:
    return part if isinstance(part, Markup) else _within(part)


def table(
    header: Sequence[str], rows: Iterable[Sequence[str]], *, kind: str = "", figures: Sequence[int] = ()
) -> Markup:
    """Write a table whose header is repeated on every page and whose rows stay whole.

    Each cell carries its header, so that a narrow screen can show a row as a card. `figures` are the columns of
    figures, which stand to the right.
    """
    classes = [' class="figure"' if place in figures else "" for place in range(len(header))]
    head = [f'<th{one} scope="col">{_part(title)}</th>' for title, one in zip(header, classes, strict=True)]
    opened = [f'<td{one} data-label="{_escaped(title)}">' for title, one in zip(header, classes, strict=True)]
    body = [
        "".join(["<tr>", *[f"{td}{_part(cell)}</td>" for td, cell in zip(opened, row, strict=True)], "</tr>"])
        for row in rows
    ]
    shown = f' class="{_escaped(kind)}"' if kind else ""
    return Markup(f"<table{shown}><thead><tr>{''.join(head)}</tr></thead><tbody>{''.join(body)}</tbody></table>")


def document(title: str, body: str, styles: Sequence[str]) -> Document:
    """Write a page in its styles, which its policy allows, and the one of the drawings."""
    head = [
        Markup('<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">'),
        Markup('<meta name="color-scheme" content="light dark"><meta name="robots" content="noindex">'),
        Markup(f"<title>{_escaped(title)}</title>"),
        *[Markup(f"<style>{style}</style>") for style in styles],
    ]
    whole = element("html", element("head", *head), element("body", body), lang="en")
    hashes = " ".join([f"'{hash_}'" for hash_ in (*map(hash_of, styles), DRAWING_STYLE_HASH)])
    policy = f"default-src 'none'; style-src {hashes}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
    return Document(f"<!doctype html>\n{whole}\n".encode(), policy)


def hash_of(style: str) -> str:
    """Give the hash by which a policy allows a style."""
    return "sha256-" + base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
