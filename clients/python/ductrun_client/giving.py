"""What a caller gives, made into what is sent: models, mappings, dataclasses and quantities of pint, nested in any way.

Quantities are looked at here, before anything is sent; everything else is for the service to judge.
"""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Mapping, Sequence
from functools import cache
from types import NoneType, UnionType
from typing import Any, TypeAlias, TypeVar, Union, cast, get_args, get_origin

import msgspec

from .errors import QuantityError
from .quantities import PintQuantity, Quantity

Model = TypeVar("Model")
Given: TypeAlias = Model | Mapping[str, Any]
Measured: TypeAlias = Model | Mapping[str, Any] | PintQuantity


def to_send(given: Any, kind: Any, at: str = "") -> Any:
    """Give what is sent for what was given where the contract has a `kind`; `at` is its place, for sentences."""
    if isinstance(given, (str, bool, int)) or given is None:
        return given
    if isinstance(given, float):
        return _finite(given, at)
    if isinstance(kind, type) and issubclass(kind, Quantity):
        return _quantity(given, kind, at)
    if isinstance(given, (list, tuple)):
        several = cast("Sequence[Any]", given)
        return [to_send(one, _kind_of_items(kind), f"{at}/{place}") for place, one in enumerate(several)]
    if isinstance(given, (msgspec.Struct, Mapping)) or dataclasses.is_dataclass(given):
        members = _members(given)
        kinds = _kinds_of_members(_record_of(members, kind, given))
        return {name: to_send(value, kinds.get(name), f"{at}/{name}") for name, value in members.items()}
    if _is_of_pint(given):
        raise QuantityError(at, f"{given} is given where no quantity is asked for")
    if hasattr(given, "item"):  # a number of an array library
        return to_send(given.item(), kind, at)
    raise TypeError(f"{at or 'this'}: {type(given).__name__} cannot be sent; give a model, a mapping or a number")


def _members(given: Any) -> dict[str, Any]:
    """Give the members as they are sent: by their names on the wire, what was left out left out."""
    if isinstance(given, Mapping):
        return dict(cast("Mapping[str, Any]", given))
    if isinstance(given, msgspec.Struct):
        names = zip(given.__struct_encode_fields__, given.__struct_fields__, strict=True)
        members = {sent: getattr(given, name) for sent, name in names}
        tag = given.__struct_config__.tag
        if tag is not None:
            members[str(given.__struct_config__.tag_field)] = tag
    else:
        members = {field.name: getattr(given, field.name) for field in dataclasses.fields(given)}
    return {name: value for name, value in members.items() if value is not None}


def _record_of(members: Mapping[str, Any], kind: Any, given: Any) -> Any:
    """Give the record of the contract that is meant: of a union, the one whose tag was given."""
    if isinstance(given, msgspec.Struct):
        return type(given)
    for one in get_args(kind):
        config = getattr(one, "__struct_config__", None)
        if config is not None and members.get(config.tag_field) == config.tag:
            return one
    return kind if hasattr(kind, "__struct_config__") else None


@cache
def _kinds_of_members(record: Any) -> dict[str, Any]:
    if record is None:
        return {}
    return {field.encode_name: _present(field.type) for field in msgspec.structs.fields(record)}


def _present(kind: Any) -> Any:
    """Give the kind of what may be left out without its None."""
    if get_origin(kind) not in {Union, UnionType}:
        return kind
    kinds = [one for one in get_args(kind) if one is not NoneType]
    return kinds[0] if len(kinds) == 1 else Union[tuple(kinds)]  # noqa: UP007


def _kind_of_items(kind: Any) -> Any:
    return get_args(kind)[0] if get_origin(kind) is list else None


def _finite(value: float, at: str) -> float:
    if not math.isfinite(value):
        raise QuantityError(at, f"{value} is no number that can be sent")
    return value


def _quantity(given: Any, kind: type[Quantity], at: str) -> Any:
    if _is_of_pint(given):
        return _from_pint(given, kind, at)
    if not isinstance(given, (Quantity, Mapping)) and not dataclasses.is_dataclass(given):
        raise QuantityError(at, f"{_asked(kind)}; {type(given).__name__} is none")
    members = {name: to_send(value, None, f"{at}/{name}") for name, value in _members(given).items()}
    unit = members.get("unit")
    if isinstance(unit, str) and kind.CLOSED and unit not in kind.PINT:
        raise QuantityError(at, f"{unit!r} is no unit of what is asked here; {_asked(kind)}")
    return members


def _asked(kind: type[Quantity]) -> str:
    return f"give {_words(kind)} in {', '.join(kind.PINT)}"


def _words(kind: type[Quantity]) -> str:
    words = "".join(f" {letter.lower()}" if letter.isupper() else letter for letter in kind.__name__).strip()
    return f"an {words}" if words[0] in "aeiou" else f"a {words}"


def _is_of_pint(given: Any) -> bool:
    return hasattr(given, "magnitude") and hasattr(given, "dimensionality")


def _from_pint(given: Any, kind: type[Quantity], at: str) -> dict[str, Any]:
    """Give a quantity of pint in the unit it has, if that is one of the contract, else in the one that reads best.

    An angle, a grade and a ratio are all without dimension for pint: there the unit itself must be one that is taken.
    """
    possible: list[dict[str, Any]] = []
    for code, expression in kind.PINT.items():
        try:
            there = given.to(expression)
        except Exception as refused:  # pint has several, and need not be there to be imported
            raise QuantityError(at, f"{given} is of another dimension; {_asked(kind)}") from refused
        if there.units == given.units:
            return {"value": _finite(float(given.magnitude), at), "unit": code}
        possible.append({"value": _finite(float(there.magnitude), at), "unit": code})
    if not given.dimensionality:
        raise QuantityError(at, f"{given} could be an angle, a grade or a ratio; {_asked(kind)}")
    return min(possible, key=lambda one: abs(math.log10(abs(one["value"]) or 1.0)))
