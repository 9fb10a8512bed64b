from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.duct_run_request import DuctRunRequest


T = TypeVar("T", bound="NamedRun")


@_attrs_define
class NamedRun:
    """One whole run with the name it is compared under.

    Attributes:
        name (str): What it is called here.
        run (DuctRunRequest): A run from end to end.
    """

    name: str
    run: DuctRunRequest

    def to_dict(self) -> dict[str, Any]:
        name = self.name

        run = self.run.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "name": name,
                "run": run,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.duct_run_request import DuctRunRequest  # noqa: PLC0415

        d = dict(src_dict)
        name = d.pop("name")

        run = DuctRunRequest.from_dict(d.pop("run"))

        named_run = cls(
            name=name,
            run=run,
        )

        return named_run
