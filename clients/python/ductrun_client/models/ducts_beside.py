from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit


T = TypeVar("T", bound="DuctsBeside")


@_attrs_define
class DuctsBeside:
    """Like ducts beside each other in a tier.

    Attributes:
        count (int): How many of them.
        conduit (ListedConduit | MeasuredConduit | Unset):
    """

    count: int
    conduit: ListedConduit | MeasuredConduit | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415

        count = self.count

        conduit: dict[str, Any] | Unset
        if isinstance(self.conduit, Unset):
            conduit = UNSET
        elif isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "count": count,
            }
        )
        if conduit is not UNSET:
            field_dict["conduit"] = conduit

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.measured_conduit import MeasuredConduit  # noqa: PLC0415

        d = dict(src_dict)
        count = d.pop("count")

        def _parse_conduit(data: object) -> ListedConduit | MeasuredConduit | Unset:
            if isinstance(data, Unset):
                return data
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_conduit_type_0 = ListedConduit.from_dict(data)

                return componentsschemas_conduit_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_conduit_type_1 = MeasuredConduit.from_dict(data)

            return componentsschemas_conduit_type_1

        conduit = _parse_conduit(d.pop("conduit", UNSET))

        ducts_beside = cls(
            count=count,
            conduit=conduit,
        )

        return ducts_beside
