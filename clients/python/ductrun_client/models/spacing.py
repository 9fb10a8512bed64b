from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.piece_system import PieceSystem
from ..models.top_closure import TopClosure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.distance_interval import DistanceInterval
    from ..models.length import Length
    from ..models.per_stick_interval import PerStickInterval
    from ..models.preset_interval import PresetInterval


T = TypeVar("T", bound="Spacing")


@_attrs_define
class Spacing:
    """How spacers are specified.

    Attributes:
        duct_count_per_spacer (int | Unset): Ducts that one piece carries side by side.
        end_offset (Length | Unset): A length with its unit.
        interval (DistanceInterval | PerStickInterval | PresetInterval | Unset):
        piece_system (PieceSystem | Unset): Whether pieces carry a few ducts, a whole tier, or the whole bank.
        shared_end_count (int | Unset): Ends of this segment whose station belongs to the segment it meets; 0 between
            manholes.
        stick_length (Length | Unset): A length with its unit.
        top_closure (TopClosure | Unset): What closes a spacer stack above the top ducts.
        waste_percent (float | Unset): Extra pieces to order, in percent.
    """

    duct_count_per_spacer: int | Unset = UNSET
    end_offset: Length | Unset = UNSET
    interval: DistanceInterval | PerStickInterval | PresetInterval | Unset = UNSET
    piece_system: PieceSystem | Unset = UNSET
    shared_end_count: int | Unset = UNSET
    stick_length: Length | Unset = UNSET
    top_closure: TopClosure | Unset = UNSET
    waste_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.distance_interval import DistanceInterval  # noqa: PLC0415
        from ..models.per_stick_interval import PerStickInterval  # noqa: PLC0415

        duct_count_per_spacer = self.duct_count_per_spacer

        end_offset: dict[str, Any] | Unset = UNSET
        if not isinstance(self.end_offset, Unset):
            end_offset = self.end_offset.to_dict()

        interval: dict[str, Any] | Unset
        if isinstance(self.interval, Unset):
            interval = UNSET
        elif isinstance(self.interval, DistanceInterval):
            interval = self.interval.to_dict()
        elif isinstance(self.interval, PerStickInterval):
            interval = self.interval.to_dict()
        else:
            interval = self.interval.to_dict()

        piece_system: str | Unset = UNSET
        if not isinstance(self.piece_system, Unset):
            piece_system = self.piece_system.value

        shared_end_count = self.shared_end_count

        stick_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.stick_length, Unset):
            stick_length = self.stick_length.to_dict()

        top_closure: str | Unset = UNSET
        if not isinstance(self.top_closure, Unset):
            top_closure = self.top_closure.value

        waste_percent = self.waste_percent

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if duct_count_per_spacer is not UNSET:
            field_dict["duct_count_per_spacer"] = duct_count_per_spacer
        if end_offset is not UNSET:
            field_dict["end_offset"] = end_offset
        if interval is not UNSET:
            field_dict["interval"] = interval
        if piece_system is not UNSET:
            field_dict["piece_system"] = piece_system
        if shared_end_count is not UNSET:
            field_dict["shared_end_count"] = shared_end_count
        if stick_length is not UNSET:
            field_dict["stick_length"] = stick_length
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
        from ..models.preset_interval import PresetInterval  # noqa: PLC0415

        d = dict(src_dict)
        duct_count_per_spacer = d.pop("duct_count_per_spacer", UNSET)

        _end_offset = d.pop("end_offset", UNSET)
        end_offset: Length | Unset
        if isinstance(_end_offset, Unset):
            end_offset = UNSET
        else:
            end_offset = Length.from_dict(_end_offset)

        def _parse_interval(
            data: object,
        ) -> DistanceInterval | PerStickInterval | PresetInterval | Unset:
            if isinstance(data, Unset):
                return data
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_spacer_interval_type_0 = DistanceInterval.from_dict(data)

                return componentsschemas_spacer_interval_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_spacer_interval_type_1 = PerStickInterval.from_dict(data)

                return componentsschemas_spacer_interval_type_1
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_spacer_interval_type_2 = PresetInterval.from_dict(data)

            return componentsschemas_spacer_interval_type_2

        interval = _parse_interval(d.pop("interval", UNSET))

        _piece_system = d.pop("piece_system", UNSET)
        piece_system: PieceSystem | Unset
        if isinstance(_piece_system, Unset):
            piece_system = UNSET
        else:
            piece_system = PieceSystem(_piece_system)

        shared_end_count = d.pop("shared_end_count", UNSET)

        _stick_length = d.pop("stick_length", UNSET)
        stick_length: Length | Unset
        if isinstance(_stick_length, Unset):
            stick_length = UNSET
        else:
            stick_length = Length.from_dict(_stick_length)

        _top_closure = d.pop("top_closure", UNSET)
        top_closure: TopClosure | Unset
        if isinstance(_top_closure, Unset):
            top_closure = UNSET
        else:
            top_closure = TopClosure(_top_closure)

        waste_percent = d.pop("waste_percent", UNSET)

        spacing = cls(
            duct_count_per_spacer=duct_count_per_spacer,
            end_offset=end_offset,
            interval=interval,
            piece_system=piece_system,
            shared_end_count=shared_end_count,
            stick_length=stick_length,
            top_closure=top_closure,
            waste_percent=waste_percent,
        )

        return spacing
