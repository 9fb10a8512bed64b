"""Reading a form fast: a record type made from it once, into which the bytes of a request go in one native pass.

The form stays the one place where fields and bounds are written. It makes the contract and says what is wrong with a
body; a body that nothing is wrong with need not pass through it, and is read here at a quarter of the cost. A record
has the attributes of its form: quantities carry their SI value, a variant of a union carries its `kind`. What the
reader refuses goes to the form, whose word counts; what it takes is strict JSON that the form would take, and the tests
hold the two against each other for every field.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from enum import StrEnum
from functools import cache
from types import UnionType
from typing import Annotated, Any, Final, Literal, Union, get_args, get_origin

import annotated_types
import msgspec
from pydantic.fields import FieldInfo
from typing_extensions import TypeAliasType

from ductrun.kit.forms import Between, Form, MayBeAbsent
from ductrun.kit.texts import REFUSED_CHARACTERS, PlainText
from ductrun.units import UNIT_CODES, Quantity, UnitCode

_BOUNDS = {
    annotated_types.Ge: "ge",
    annotated_types.Gt: "gt",
    annotated_types.Le: "le",
    annotated_types.Lt: "lt",
    annotated_types.MinLen: "min_length",
    annotated_types.MaxLen: "max_length",
}


REFUSED: Final = (msgspec.DecodeError, UnicodeDecodeError, RecursionError)  # what a reader raises
_encode = msgspec.json.Encoder().encode


def reader_of(form: type[Form]) -> Callable[[bytes], Any]:
    """Give the function from bytes to a record with the form's attributes; it raises one of REFUSED.

    The native pass lets the last of two members of one name win. They are told by counting: the record written again
    has each member once, and the texts of a body without a backslash are written as they came, so that both have the
    same number of colons. A body with a backslash, and one with characters that no text may hold, go to the form.
    """
    decode = msgspec.json.Decoder(_record_of(form)).decode

    def read(body: bytes) -> Any:
        record = decode(body)
        if b"\\" in body or body.count(b":") != _encode(record).count(b":"):
            raise msgspec.DecodeError("a member may be given twice")
        if (not body.isascii() or b"\x7f" in body) and REFUSED_CHARACTERS.search(body.decode()):
            raise msgspec.DecodeError("a text may hold what none may")
        return record

    return read


@cache
def _record_of(form: type[Form], tag: str | None = None) -> type[msgspec.Struct]:
    fields: list[Any] = []
    for name, field in form.model_fields.items():
        if name == "kind" and tag is not None:
            continue
        kind = _type_of(field.annotation, field.metadata)
        if not field.is_required() and field.get_default(call_default_factory=True) is not None:
            raise TypeError(f"{form.__name__}.{name}: a field that may be left out is None then")
        fields.append((name, kind) if field.is_required() else (name, kind, None))
    return msgspec.defstruct(
        form.__name__,
        fields,
        tag_field=None if tag is None else "kind",
        tag=tag,
        namespace={} if tag is None else {"kind": tag},
        forbid_unknown_fields=True,
        frozen=True,
        kw_only=True,
        omit_defaults=True,
        gc=False,
    )


def _type_of(annotation: Any, metadata: Iterable[Any]) -> Any:
    """Give the type that msgspec reads where pydantic reads an annotation with its metadata."""
    if isinstance(annotation, TypeAliasType):
        return _type_of(annotation.__value__, metadata)
    origin = get_origin(annotation)
    if origin is Annotated:
        base, *more = get_args(annotation)
        return _type_of(base, [*more, *metadata])
    rules = [
        rule
        for item in metadata
        for rule in (item.metadata if isinstance(item, FieldInfo) else [item])
        if not isinstance(rule, (MayBeAbsent, PlainText))
    ]
    if origin in (Union, UnionType):
        members = [member for member in get_args(annotation) if member is not type(None)]
        return _type_of(members[0], rules) if len(members) == 1 else _union_of(members, rules)
    if origin is list:
        (item,) = get_args(annotation)
        return _bounded(list[_type_of(item, ())], rules)  # type: ignore[misc]
    if origin is not Literal and issubclass(annotation, Quantity):
        return _quantity_of(annotation, *rules)
    if origin is not Literal and issubclass(annotation, Form):
        return _bounded(_record_of(annotation), rules)
    texts = get_args(annotation) if origin is Literal else annotation if issubclass(annotation, StrEnum) else ()
    free = annotation is str and any(isinstance(item, PlainText) for item in metadata)
    if annotation in (int, float, bool) or texts or free:
        return _bounded(annotation, rules)
    raise TypeError(f"the reader knows no {annotation}")


def _union_of(members: list[Any], rules: list[Any]) -> Any:
    records = []
    for member in members:
        (tag,) = get_args(member.model_fields["kind"].annotation)
        records.append(_record_of(member, tag))
    return _bounded(Union[tuple(records)], rules)  # noqa: UP007  (made of as many as there are)


def _bounded(kind: Any, rules: Iterable[Any]) -> Any:
    bounds = {}
    for rule in rules:
        name = _BOUNDS[type(rule)]  # a rule that is not known here stops the start, and is not passed over
        bounds[name] = getattr(rule, name)
    return Annotated[kind, msgspec.Meta(**bounds)] if bounds else kind


@cache
def _quantity_of(dimension: type[Quantity], between: Between) -> Any:
    """Give one record type a unit, so that the bounds of a value in that unit are checked by the native pass."""
    return Union[  # noqa: UP007  (made of as many as there are)
        tuple(
            msgspec.defstruct(
                dimension.__name__,
                [("value", Annotated[float, msgspec.Meta(ge=low, le=high)])],
                tag_field="unit",
                tag=unit.text,
                namespace={
                    "unit": unit,
                    "si": property(_linear if type(unit).to_si is UnitCode.to_si else _converted),
                    "dimension": dimension,
                    "in_unit": Quantity.in_unit,
                    "in_system": Quantity.in_system,
                    "__str__": Quantity.__str__,
                },
                forbid_unknown_fields=True,
                frozen=True,
                gc=False,
            )
            for unit in UNIT_CODES[dimension]
            for low, high in [(_edge(unit, between.low, 1.0), _edge(unit, between.high, -1.0))]
        )
    ]


def _linear(quantity: Any) -> Any:
    return quantity.value * quantity.unit.scale


def _converted(quantity: Any) -> Any:
    return quantity.unit.to_si(quantity.value)


def _edge(unit: UnitCode, bound: Quantity, inward: float) -> float:
    """Give the value in a unit at a bound, or just inside it: of what lies between, the form has the say."""
    value: float = bound.in_unit(unit)
    # a unit with a zero of its own loses the digits of a value near it: there a step is one of the value 1
    while (unit.to_si(value) - bound.si) * inward < 0:
        value += inward * math.ulp(max(abs(value), 1.0) if unit.to_si(0.0) else value)
    return value
