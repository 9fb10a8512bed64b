"""Whether every formula can be checked against its page: docstring and signature of `engineering`, held together.

A formula names each parameter with its unit or what it counts, says what it gives in which unit, and where it stands:
`Source:` and citations of sources.csv, or the standings that need none. Run it for the table of formulas; it exits 1
and names every fault.
"""

from __future__ import annotations

import doctest
import importlib
import inspect
import pkgutil
import re
import sys
from collections.abc import Callable, Iterator
from functools import cache
from types import FunctionType, ModuleType
from typing import Any, NamedTuple, get_args, get_type_hints

import ductrun.engineering
from ductrun.tables import TABLES

SMALL = ["in/SCALE", "in2/SCALE", "1/SCALE", "1/WHOLE"]  # the whole numbers of fill
ELECTRICAL = ["A", "A2", "V", "W", "W/m", "Hz", "ohm/m", "ohm.m", "V/m", "K.m/W"]
UNITS = frozenset(
    [
        *SMALL,
        *ELECTRICAL,
        "m",
        "m2",
        "m3",
        "m3/m2",
        "rad",
        "K",
        "1/K",
        "N",
        "N/m",
        "N/m2",
        "kg/m",
        "kg/m3",
        "percent",
        "any",
    ]
)
BARE = frozenset({"count", "ratio", "index"})
STANDINGS = ("derived", "from memory", "common practice, no source")

_FIGURE = r"(?:\[(?P<unit>[^\]]+)\]|\((?P<bare>\w+)\))"


class Formula(NamedTuple):
    """One public function of a module, or a public method of one of its records, with what its docstring tells."""

    module: str
    name: str
    function: Callable[..., Any]
    text: str

    @property
    def parameters(self) -> dict[str, Any]:
        """What it takes, by name, with its type."""
        hints = get_type_hints(self.function)
        return {name: hints[name] for name in inspect.signature(self.function).parameters if name != "self"}

    @property
    def is_method(self) -> bool:
        return "." in self.name

    @property
    def source(self) -> str:
        """What stands after `Source:`, with anything beyond it."""
        return self.text.partition("Source: ")[2]

    @property
    def has_units(self) -> bool:
        return not [*_parameter_faults(self), *_result_faults(self)]

    @property
    def has_doctest(self) -> bool:
        return ">>>" in self.text


class Record(NamedTuple):
    """One public record of a module, with what its docstring tells."""

    module: str
    name: str
    kind: type
    text: str


def modules() -> list[ModuleType]:
    """Give the modules of the handbook."""
    found = pkgutil.iter_modules(ductrun.engineering.__path__)
    return [importlib.import_module(f"{ductrun.engineering.__name__}.{one.name}") for one in found]


def formulas() -> list[Formula]:
    """Give every public function of the handbook, and every public method that takes something."""
    return [
        Formula(_short(module), name, function, _one_line(function))
        for module in modules()
        for name, function in _functions(module)
    ]


def records() -> list[Record]:
    """Give every public record of the handbook."""
    return [
        Record(_short(module), kind.__name__, kind, _one_line(kind))
        for module in modules()
        for kind in _kinds(module)
        if _is_record(kind)
    ]


def faults() -> list[str]:
    """Give what keeps a formula or a record from being checked against its page."""
    found = [f"{one.module}.{one.name}: {fault}" for one in formulas() for fault in faults_of(one)]
    return found + [f"{one.module}.{one.name}: {fault}" for one in records() for fault in _field_faults(one)]


def faults_of(formula: Formula) -> list[str]:
    """Give what one formula does not tell; a method rests on the functions it calls, and needs no source."""
    return [
        *_parameter_faults(formula),
        *_result_faults(formula),
        *([] if formula.is_method else _source_faults(formula)),
    ]


def failed_doctests(module: ModuleType) -> tuple[int, int]:
    """Run the examples of one module: how many failed, and how many there are."""
    found = doctest.testmod(module)
    return found.failed, found.attempted


def table() -> list[str]:
    """Write the table of formulas: how many a module has, with units, with a source, with a printed example."""
    every = [one for one in formulas() if not one.is_method]
    rows = [("all", every)] + [
        (_short(module), [one for one in every if one.module == _short(module)]) for module in modules()
    ]
    lines = ["| module | formulas | with units | with source | with doctest |", "|---|---|---|---|---|"]
    for name, those in rows:
        counts = (len(those), *(sum(map(bool, told)) for told in zip(*map(_told, those), strict=True)))
        lines.append(f"| {name} | " + " | ".join(map(str, counts)) + " |")
    return lines


def _told(one: Formula) -> tuple[bool, bool, bool]:
    return one.has_units, bool(one.source), one.has_doctest


def _short(module: ModuleType) -> str:
    return module.__name__.rpartition(".")[2]


def _one_line(thing: object) -> str:
    return " ".join((inspect.getdoc(thing) or "").split())


def _kinds(module: ModuleType) -> Iterator[type]:
    for name, kind in vars(module).items():
        if isinstance(kind, type) and kind.__module__ == module.__name__ and not name.startswith("_"):
            yield kind


def _functions(module: ModuleType) -> Iterator[tuple[str, FunctionType]]:
    for name, thing in vars(module).items():
        if isinstance(thing, FunctionType) and thing.__module__ == module.__name__ and not name.startswith("_"):
            yield name, thing
    for kind in filter(_is_record, _kinds(module)):
        for name, thing in vars(kind).items():
            if isinstance(thing, FunctionType) and not name.startswith("_") and thing.__module__ == module.__name__:
                yield f"{kind.__name__}.{name}", thing


def _is_record(kind: type) -> bool:
    return issubclass(kind, tuple) and hasattr(kind, "_fields")


def _is_figure(kind: Any) -> bool:
    """Say whether a type is a number, or holds bare numbers."""
    if isinstance(kind, type) and issubclass(kind, tuple):
        return False
    return kind in (int, float) or any(map(_is_figure, get_args(kind)))


def _parameter_faults(formula: Formula) -> Iterator[str]:
    """Say which parameters its list does not name, or names without a unit."""
    for name, kind in formula.parameters.items():
        listed = rf"\b{name}\b" if formula.is_method else rf"(?:Parameters: |[,;] ){name}\b"
        entry = re.search(rf"{listed}[^,;\[\]()]*(?:{_FIGURE})?", formula.text)
        if entry is None:
            yield f"{name} does not stand after Parameters"
        elif _is_figure(kind):
            yield from (f"{name} {fault}" for fault in _figure_faults(entry))


def _result_faults(formula: Formula) -> Iterator[str]:
    """Say whether the unit of what it gives is missing before its parameters."""
    gives = get_type_hints(formula.function)["return"]
    before = formula.text.partition("Parameters: ")[0].partition(">>>")[0]
    if gives is bool:
        if not before.startswith("Say whether"):
            yield "does not say whether"
    elif _is_figure(gives):
        found = [*re.finditer(_FIGURE, before)]
        if not any(not _figure_faults(one) for one in found):
            yield "what it gives has no unit"


def _source_faults(formula: Formula) -> Iterator[str]:
    """Say whether a source is missing, or is no citation of the table of sources."""
    rest = formula.source.partition(" >>>")[0]
    if not rest:
        yield "no source"
    while rest:
        known = max((one for one in _citations() if rest.startswith(one)), key=len, default=None)
        if known is None:
            yield f"no such source: {rest}"
        rest = rest.removeprefix(known or "").partition("; ")[2]


@cache
def _citations() -> tuple[str, ...]:
    return (*(source.citation for source in TABLES["sources"]), *STANDINGS)


def _field_faults(record: Record) -> Iterator[str]:
    """Say which fields of a record have no unit."""
    for name, kind in get_type_hints(record.kind).items():
        if name in record.kind._fields and _is_figure(kind):  # type: ignore[attr-defined]
            entry = re.search(rf"\b{name}\b[^\[\]().;]*(?:{_FIGURE})?", record.text)
            yield from (f"{name} {fault}" for fault in (_figure_faults(entry) if entry else ["is not named"]))


def _figure_faults(entry: re.Match[str]) -> list[str]:
    if entry["unit"] is None and entry["bare"] is None:
        return ["has no unit"]
    known = entry["unit"] in UNITS if entry["unit"] else entry["bare"] in BARE
    return [] if known else [f"has no known unit: {entry['unit'] or entry['bare']}"]


def main() -> int:
    """Write the table and the faults."""
    print("\n".join(table()))
    found = faults()
    sys.stderr.write("".join(f"{one}\n" for one in found))
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
