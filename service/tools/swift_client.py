"""The generated Swift client as far as a caller sees it, read from its source for want of a compiler."""

from __future__ import annotations

import re
from pathlib import Path
from typing import NamedTuple

KNOWN = {"String", "Double", "Int", "Int32", "Bool"}
_BLOCK = re.compile(
    r"^( *)(?:public |open |final )+(struct|enum|class) (?!func )(\w+)[^\n{]*\{\n(.*?)^\1\}", re.M | re.S
)
_MEMBER = re.compile(r"^ *public (?:private\(set\) )?(?:var|let) (\w+): ([^={\n]+)", re.M)
_CASE = re.compile(r"^ *case (\w+)(?:\((\w+)\))?(?: = .*)?$", re.M)
_INIT = re.compile(r"public init\((.*?)\) *\{", re.S)
_CALL = re.compile(r"open class func (\w+)\((.*?)\) async throws(?:\(\w+\))? -> (\w+) \{")


class Parameter(NamedTuple):
    """What a call takes: its label, its type, and whether it may be left out."""

    label: str
    kind: str
    optional: bool


class Declared(NamedTuple):
    """A type: its members, its cases with what they carry, how it is made, and its calls with what they give."""

    members: dict[str, str]
    cases: dict[str, str]
    made: list[Parameter] | None
    calls: dict[str, tuple[list[Parameter], str]]


def declared(folder: Path) -> dict[str, Declared]:
    """Give every type of a client by its name; one inside another as `ListedCable.Kind`."""
    found: dict[str, Declared] = {}
    for path in sorted(folder.rglob("*.swift")):
        _read(path.read_text(encoding="utf-8"), "", found)
    return found


def _read(text: str, around: str, found: dict[str, Declared]) -> None:
    for block in _BLOCK.finditer(text):
        name, inside = f"{around}{block[3]}", block[4]
        own = _BLOCK.sub("", inside)
        nested = {one[3] for one in _BLOCK.finditer(inside)}
        made = _INIT.search(own)
        found[name] = Declared(
            {member: _within(name, nested, kind) for member, kind in _MEMBER.findall(own)},
            dict(_CASE.findall(own.split(" func ", 1)[0])) if block[2] == "enum" else {},
            _parameters(made[1], name, nested) if made else None,
            {call: (_parameters(taken, name, nested), gives) for call, taken, gives in _CALL.findall(own)},
        )
        _read(inside, f"{name}.", found)


def _parameters(text: str, name: str, nested: set[str]) -> list[Parameter]:
    found = []
    for one in re.split(r",\s*(?=\w+:)", text.strip()) if text.strip() else ():
        label, _, rest = one.strip().partition(":")
        kind, _, default = rest.partition("=")
        found.append(Parameter(label, _within(name, nested, kind), bool(default)))
    return found


def _within(name: str, nested: set[str], kind: str) -> str:
    """Give a type without its question mark; one that is declared within the type that has it by its whole name."""
    plain = kind.strip().rstrip("?")
    bare = plain.strip("[]")
    return plain.replace(bare, f"{name}.{bare}") if bare in nested else plain


def unknown_types(folder: Path, untyped: frozenset[str] = frozenset()) -> list[str]:
    """Give every member of the models whose type is none that is known; `untyped` are those of which none is asked."""
    types = {name: one for path in sorted(folder.rglob("Models")) for name, one in declared(path).items()}
    return [
        f"{name}.{member}: {kind}"
        for name, one in types.items()
        for member, kind in [*one.members.items(), *one.cases.items()]
        if kind and kind.strip("[]") not in types.keys() | KNOWN and f"{name}.{member}" not in untyped
    ]


_RESERVED = {"as", "break", "case", "catch", "class", "continue", "default", "defer", "do", "else", "enum", "extension"}
_RESERVED |= {"fallthrough", "false", "for", "func", "guard", "if", "import", "in", "init", "inout", "internal", "is"}
_RESERVED |= {
    "let",
    "nil",
    "operator",
    "private",
    "protocol",
    "public",
    "repeat",
    "rethrows",
    "return",
    "self",
    "static",
}
_RESERVED |= {
    "struct",
    "subscript",
    "super",
    "switch",
    "throw",
    "throws",
    "true",
    "try",
    "typealias",
    "var",
    "where",
    "while",
}


def unwritable(folder: Path) -> list[str]:
    """Give every name of the models that Swift keeps for itself, and every one that stands twice in a type."""
    found = []
    for path in sorted(folder.rglob("Models/*.swift")):
        for block in _BLOCK.finditer(path.read_text(encoding="utf-8")):
            for _, _, name, inside in [block.groups(), *(one.groups() for one in _BLOCK.finditer(block[4]))]:
                own = _BLOCK.sub("", inside).split(" func ", 1)[0]
                names = [one for one, _ in (*_MEMBER.findall(own), *_CASE.findall(own))]
                found += [f"{name}.{one}" for one in names if one in _RESERVED or names.count(one) > 1]
    return found
