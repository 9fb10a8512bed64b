"""The result of any operation as tables, made from the record and what the contract says of its members."""

from __future__ import annotations

from typing import Any, Final

from msgspec import UNSET, Struct

from ductrun.drawings.markup import NOTHING, Markup, element, joined, table
from ductrun.drawings.readable import meanings_of, shown, titled
from ductrun.units import AnyQuantity

_MANY: Final = 7  # columns from which a table is set smaller
_HEADINGS: Final = ("h3", "h4", "h5", "h6")


def result_tables(result: Struct, level: int = 0) -> Markup:
    """Give a record: its figures in one table, what has parts of its own below, each under its heading."""
    members = _told(result)
    meanings = meanings_of(type(result))
    facts = [
        (titled(name), shown(value, name), meanings.get(name, "")) for name, value in members if not _has_parts(value)
    ]
    parts = [
        _part(name, value, meanings.get(name, ""), level) for name, value in members if _has_parts(value) and value
    ]
    first = table(("Member", "Value", "What it is"), facts, kind="facts") if facts else NOTHING
    return joined([first, *parts])


def _told(record: Struct) -> list[tuple[str, Any]]:
    return [(name, getattr(record, name)) for name in record.__struct_fields__ if getattr(record, name) is not UNSET]


def _is_record(value: Any) -> bool:
    return isinstance(value, Struct) and not isinstance(value, AnyQuantity)


def _has_parts(value: Any) -> bool:
    return _is_record(value) or (isinstance(value, (list, tuple)) and any(map(_is_record, value)))


def _part(name: str, value: Any, meaning: str, level: int) -> Markup:
    """Give a member that is a record, or a list of them."""
    heading = element(_HEADINGS[min(level, 3)], titled(name))
    about = element("p", meaning, kind="about") if meaning else NOTHING
    if _is_record(value) or len(value) == 1:
        return joined([heading, about, result_tables(value if _is_record(value) else value[0], level + 1)])
    return joined([heading, about, _rows(value, level)])


def _rows(records: list[Struct], level: int) -> Markup:
    """Give a list of records as a table; what a row has of parts of its own stands below, by the number of the row."""
    columns = {
        name: titled(name) for record in records for name, value in _told(record) if not _has_parts(value) or not value
    }
    header = ["No.", *columns.values()]
    rows = []
    below = []
    for number, record in enumerate(records, start=1):
        members = dict(_told(record))
        rows.append([str(number), *[_cell(members, name) for name in columns]])
        below += [
            _part(f"{name}_of_no._{number}", value, meanings_of(type(record)).get(name, ""), level + 1)
            for name, value in members.items()
            if _has_parts(value) and value
        ]
    kind = "dense" if len(header) >= _MANY else ""
    written = table(header, rows, kind=kind) if columns else NOTHING
    return joined([written, _legend(records, columns), *below])


def _cell(members: dict[str, Any], name: str) -> str:
    return shown(members[name], name) if name in members else ""


def _legend(records: list[Struct], columns: dict[str, str]) -> Markup:
    """Say below a table what its columns are."""
    meanings = {name: text for kind in dict.fromkeys(map(type, records)) for name, text in meanings_of(kind).items()}
    said = [f"{title}: {meanings[name]}" for name, title in columns.items() if meanings.get(name)]
    return element("p", " ".join(said), kind="about") if said else NOTHING
