"""A Swift program of calls, held against the client it calls: types, labels, cases and members that are not there."""

from __future__ import annotations

import re
from collections.abc import Mapping

from tools.swift_client import Declared, Parameter

_TOKEN = re.compile(r'\s+|//[^\n]*|("(?:[^"\\]|\\.)*")|(\d+(?:\.\d+)?)|(\w+)|([.,:()\[\]=!])')
_LITERALS = {'"': {"String"}, "1": {"Int", "Int32", "Double"}, "1.": {"Double"}, "true": {"Bool"}, "false": {"Bool"}}
_OF_SWIFT = {"print"}
_SET = re.compile(r"^let (\w+) = ")


class NotThereError(Exception):
    """What a program says that the client does not have."""


def unsaid(program: str, types: Mapping[str, Declared]) -> list[str]:
    """Give what each statement of a program says wrongly; a statement is a line that begins at the margin."""
    names: dict[str, str] = {}
    found = []
    for statement in re.split(r"\n(?=[^\s)\]}])", program.strip()):
        named = _SET.match(statement)
        reading = _Reading(statement[named.end() :] if named else statement, types, names)
        try:
            kind = reading.whole()
        except NotThereError as fault:
            found.append(f"{statement}: {fault}")
            continue
        if named:
            names[named[1]] = kind
    return found


class _Reading:
    """An expression, read from left to right with the type that is asked for."""

    def __init__(self, text: str, types: Mapping[str, Declared], names: Mapping[str, str]) -> None:
        self.tokens: list[str] = []
        place = 0
        while place < len(text):
            read = _TOKEN.match(text, place)
            if read is None:
                raise NotThereError(f"{text[place:][:20]!r} cannot be read")
            self.tokens += [one for one in read.groups() if one]
            place = read.end()
        self.types, self.names, self.at = types, names, 0

    def whole(self) -> str:
        kind = self.expression("")
        if self.at < len(self.tokens):
            raise NotThereError(f"{self.tokens[self.at]!r} stands after its end")
        return kind

    def next(self) -> str:
        return self.tokens[self.at] if self.at < len(self.tokens) else ""

    def take(self, wanted: str = "") -> str:
        read = self.next()
        if wanted and read != wanted:
            raise NotThereError(f"{wanted!r} is wanted, not {read!r}")
        self.at += 1
        return read

    def expression(self, asked: str) -> str:
        while self.next() in ("try", "await"):
            self.take()
        kind = self.primary(asked)
        while self.next() in (".", "!", "["):
            kind = self.part(kind)
        if asked and kind != asked:
            raise NotThereError(f"{kind} is given where {asked} is asked")
        return kind

    def primary(self, asked: str) -> str:
        read = self.take()
        if read == "[":
            return self.array(asked)
        if read == ".":
            return self.case(asked, self.take())
        literal = _LITERALS.get(read) or _LITERALS.get(read[0] if read[0] == '"' else "")
        if read[0].isdigit():
            literal = _LITERALS["1." if "." in read else "1"]
        if literal:
            if asked and asked not in literal:
                raise NotThereError(f"{read} is no {asked}")
            return asked or min(literal)
        if read in self.names:
            return self.names[read]
        if read in _OF_SWIFT:
            self.arguments([Parameter("_", "", False)])
            return ""
        if read not in self.types:
            raise NotThereError(f"there is no {read}")
        return self.of_type(read)

    def of_type(self, name: str) -> str:
        """Read what follows the name of a type: how it is made, a case, or a call."""
        one = self.types[name]
        if self.next() == "(":
            if one.made is None:
                raise NotThereError(f"{name} cannot be made")
            self.arguments(one.made)
            return name
        self.take(".")
        member = self.take()
        if member in one.calls:
            taken, gives = one.calls[member]
            self.arguments(taken)
            return gives
        return self.case(name, member)

    def case(self, kind: str, name: str) -> str:
        cases = self.types[kind].cases if kind in self.types else {}
        if name not in cases:
            near = [one for one in cases if one.lower() == name.lower()]
            raise NotThereError(f"{kind or 'what is asked'} has no case {name}{f', but {near[0]}' if near else ''}")
        if cases[name]:
            self.arguments([Parameter("_", cases[name], False)])
        return kind

    def array(self, asked: str) -> str:
        inner, kind = asked[1:-1] if asked.startswith("[") else "", ""
        if asked and not inner:
            raise NotThereError(f"an array is given where {asked} is asked")
        while self.next() != "]":
            kind = self.expression(inner)
            if self.next() == ",":
                self.take()
        self.take("]")
        return asked or f"[{kind}]"

    def part(self, kind: str) -> str:
        read = self.take()
        if read == "!":
            return kind
        if read == "[":
            self.expression("Int")
            self.take("]")
            return kind[1:-1]
        name = self.take()
        members = self.types[kind].members if kind in self.types else {}
        if name not in members:
            raise NotThereError(f"{kind} has no member {name}")
        return members[name]

    def arguments(self, taken: list[Parameter]) -> None:
        """Read what is handed over: labels in the order of the client, and all that cannot be left out."""
        self.take("(")
        left = list(taken)
        while self.next() != ")":
            label = self.take() if self.tokens[self.at + 1 : self.at + 2] == [":"] else "_"
            if label != "_":
                self.take(":")
            while left and left[0].label != label and left[0].optional:
                left.pop(0)
            if not left or left[0].label != label:
                wanted = ", ".join(one.label for one in taken)
                raise NotThereError(f"no {label!r} can stand here: it takes {wanted}, in this order")
            self.expression(left.pop(0).kind)
            if self.next() == ",":
                self.take()
        self.take(")")
        missing = [one.label for one in left if not one.optional]
        if missing:
            raise NotThereError(f"{', '.join(missing)} must be given")
