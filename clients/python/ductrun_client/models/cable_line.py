from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.bare_cable import BareCable
    from ..models.compact_cable import CompactCable
    from ..models.listed_cable import ListedCable
    from ..models.measured_cable import MeasuredCable
    from ..models.multiconductor_cable import MulticonductorCable


T = TypeVar("T", bound="CableLine")


@_attrs_define
class CableLine:
    """So many of one cable.

    Attributes:
        cable (BareCable | CompactCable | ListedCable | MeasuredCable | MulticonductorCable):
        count (int): How many, grounding and bonding conductors included.
    """

    cable: BareCable | CompactCable | ListedCable | MeasuredCable | MulticonductorCable
    count: int

    def to_dict(self) -> dict[str, Any]:
        from ..models.bare_cable import BareCable  # noqa: PLC0415
        from ..models.compact_cable import CompactCable  # noqa: PLC0415
        from ..models.listed_cable import ListedCable  # noqa: PLC0415
        from ..models.measured_cable import MeasuredCable  # noqa: PLC0415

        cable: dict[str, Any]
        if isinstance(self.cable, ListedCable):
            cable = self.cable.to_dict()
        elif isinstance(self.cable, CompactCable):
            cable = self.cable.to_dict()
        elif isinstance(self.cable, BareCable):
            cable = self.cable.to_dict()
        elif isinstance(self.cable, MeasuredCable):
            cable = self.cable.to_dict()
        else:
            cable = self.cable.to_dict()

        count = self.count

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "cable": cable,
                "count": count,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.bare_cable import BareCable  # noqa: PLC0415
        from ..models.compact_cable import CompactCable  # noqa: PLC0415
        from ..models.listed_cable import ListedCable  # noqa: PLC0415
        from ..models.measured_cable import MeasuredCable  # noqa: PLC0415
        from ..models.multiconductor_cable import MulticonductorCable  # noqa: PLC0415

        d = dict(src_dict)

        def _parse_cable(
            data: object,
        ) -> BareCable | CompactCable | ListedCable | MeasuredCable | MulticonductorCable:
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_cable_type_0 = ListedCable.from_dict(data)

                return componentsschemas_cable_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_cable_type_1 = CompactCable.from_dict(data)

                return componentsschemas_cable_type_1
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_cable_type_2 = BareCable.from_dict(data)

                return componentsschemas_cable_type_2
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_cable_type_3 = MeasuredCable.from_dict(data)

                return componentsschemas_cable_type_3
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_cable_type_4 = MulticonductorCable.from_dict(data)

            return componentsschemas_cable_type_4

        cable = _parse_cable(d.pop("cable"))

        count = d.pop("count")

        cable_line = cls(
            cable=cable,
            count=count,
        )

        return cable_line
