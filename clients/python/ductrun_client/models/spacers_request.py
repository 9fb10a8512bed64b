from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define

from ..models.top_closure import TopClosure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.distance_interval import DistanceInterval
    from ..models.length import Length
    from ..models.per_stick_interval import PerStickInterval


T = TypeVar("T", bound="SpacersRequest")


@_attrs_define
class SpacersRequest:
    """One straight run of a duct bank and how its spacers are specified.

    Attributes:
        length (Length): A length with its unit.
        tiers (list[int]): Ducts in each tier, the bottom tier first.
        ducts_per_spacer (int | Unset): Ducts that one piece carries side by side.
        end_offset (Length | Unset): A length with its unit.
        interval (DistanceInterval | PerStickInterval | Unset):
        top_closure (TopClosure | Unset): What closes a spacer stack above the top ducts.
        waste_percent (float | Unset): Extra pieces to order, in percent.
    """

    length: Length
    tiers: list[int]
    ducts_per_spacer: int | Unset = UNSET
    end_offset: Length | Unset = UNSET
    interval: DistanceInterval | PerStickInterval | Unset = UNSET
    top_closure: TopClosure | Unset = UNSET
    waste_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.distance_interval import DistanceInterval  # noqa: PLC0415

        length = self.length.to_dict()

        tiers = self.tiers

        ducts_per_spacer = self.ducts_per_spacer

        end_offset: dict[str, Any] | Unset = UNSET
        if not isinstance(self.end_offset, Unset):
            end_offset = self.end_offset.to_dict()

        interval: dict[str, Any] | Unset
        if isinstance(self.interval, Unset):
            interval = UNSET
        elif isinstance(self.interval, DistanceInterval):
            interval = self.interval.to_dict()
        else:
            interval = self.interval.to_dict()

        top_closure: str | Unset = UNSET
        if not isinstance(self.top_closure, Unset):
            top_closure = self.top_closure.value

        waste_percent = self.waste_percent

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "length": length,
                "tiers": tiers,
            }
        )
        if ducts_per_spacer is not UNSET:
            field_dict["ducts_per_spacer"] = ducts_per_spacer
        if end_offset is not UNSET:
            field_dict["end_offset"] = end_offset
        if interval is not UNSET:
            field_dict["interval"] = interval
        if top_closure is not UNSET:
            field_dict["top_closure"] = top_closure
        if waste_percent is not UNSET:
            field_dict["waste_percent"] = waste_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.distance_interval import DistanceInterval  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.per_stick_interval import PerStickInterval  # noqa: PLC0415

        d = dict(src_dict)
        length = Length.from_dict(d.pop("length"))

        tiers = cast(list[int], d.pop("tiers"))

        ducts_per_spacer = d.pop("ducts_per_spacer", UNSET)

        _end_offset = d.pop("end_offset", UNSET)
        end_offset: Length | Unset
        if isinstance(_end_offset, Unset):
            end_offset = UNSET
        else:
            end_offset = Length.from_dict(_end_offset)

        def _parse_interval(data: object) -> DistanceInterval | PerStickInterval | Unset:
            if isinstance(data, Unset):
                return data
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_spacer_interval_type_0 = DistanceInterval.from_dict(data)

                return componentsschemas_spacer_interval_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_spacer_interval_type_1 = PerStickInterval.from_dict(data)

            return componentsschemas_spacer_interval_type_1

        interval = _parse_interval(d.pop("interval", UNSET))

        _top_closure = d.pop("top_closure", UNSET)
        top_closure: TopClosure | Unset
        if isinstance(_top_closure, Unset):
            top_closure = UNSET
        else:
            top_closure = TopClosure(_top_closure)

        waste_percent = d.pop("waste_percent", UNSET)

        spacers_request = cls(
            length=length,
            tiers=tiers,
            ducts_per_spacer=ducts_per_spacer,
            end_offset=end_offset,
            interval=interval,
            top_closure=top_closure,
            waste_percent=waste_percent,
        )

        return spacers_request
