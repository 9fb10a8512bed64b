from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.excavation_soil_type import ExcavationSoilType
from ..models.soil_kind import SoilKind
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.pavement import Pavement
    from ..models.volume import Volume


T = TypeVar("T", bound="Digging")


@_attrs_define
class Digging:
    """How a trench is dug and filled.

    Attributes:
        bedding (Length | Unset): A length with its unit.
        bucket_widths (list[Length] | Unset): Widths of the buckets at hand: the floor is as wide as the narrowest that
            digs the width wanted.
        compacted_volume_factor (float | Unset): Compacted volume of one in the bank, in place of the soil's.
        haul_capacity (Volume | Unset): A volume with its unit.
        least_width (Length | Unset): A length with its unit.
        loose_volume_factor (float | Unset): Loose volume of one in the bank, in place of the soil's.
        nearest_utility (Length | Unset): A length with its unit.
        pavement (Pavement | Unset): The pavement that a trench goes through; its top is grade, and it is laid again as
            thick as it was.
        select_fill (Length | Unset): A length with its unit.
        side_slope (float | Unset): Side of the trench, horizontal for one vertical.
        soil (SoilKind | Unset): Soils with factors from bank to loose and compacted.
        soil_type (ExcavationSoilType | Unset): Soil types of 29 CFR 1926 Subpart P.
        tape_overlap_percent (float | Unset): Extra warning tape.
        warning_tape_depth (Length | Unset): A length with its unit.
        width (Length | Unset): A length with its unit.
        working_space (Length | Unset): A length with its unit.
    """

    bedding: Length | Unset = UNSET
    bucket_widths: list[Length] | Unset = UNSET
    compacted_volume_factor: float | Unset = UNSET
    haul_capacity: Volume | Unset = UNSET
    least_width: Length | Unset = UNSET
    loose_volume_factor: float | Unset = UNSET
    nearest_utility: Length | Unset = UNSET
    pavement: Pavement | Unset = UNSET
    select_fill: Length | Unset = UNSET
    side_slope: float | Unset = UNSET
    soil: SoilKind | Unset = UNSET
    soil_type: ExcavationSoilType | Unset = UNSET
    tape_overlap_percent: float | Unset = UNSET
    warning_tape_depth: Length | Unset = UNSET
    width: Length | Unset = UNSET
    working_space: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        bedding: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bedding, Unset):
            bedding = self.bedding.to_dict()

        bucket_widths: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.bucket_widths, Unset):
            bucket_widths = []
            for bucket_widths_item_data in self.bucket_widths:
                bucket_widths_item = bucket_widths_item_data.to_dict()
                bucket_widths.append(bucket_widths_item)

        compacted_volume_factor = self.compacted_volume_factor

        haul_capacity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.haul_capacity, Unset):
            haul_capacity = self.haul_capacity.to_dict()

        least_width: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_width, Unset):
            least_width = self.least_width.to_dict()

        loose_volume_factor = self.loose_volume_factor

        nearest_utility: dict[str, Any] | Unset = UNSET
        if not isinstance(self.nearest_utility, Unset):
            nearest_utility = self.nearest_utility.to_dict()

        pavement: dict[str, Any] | Unset = UNSET
        if not isinstance(self.pavement, Unset):
            pavement = self.pavement.to_dict()

        select_fill: dict[str, Any] | Unset = UNSET
        if not isinstance(self.select_fill, Unset):
            select_fill = self.select_fill.to_dict()

        side_slope = self.side_slope

        soil: str | Unset = UNSET
        if not isinstance(self.soil, Unset):
            soil = self.soil.value

        soil_type: str | Unset = UNSET
        if not isinstance(self.soil_type, Unset):
            soil_type = self.soil_type.value

        tape_overlap_percent = self.tape_overlap_percent

        warning_tape_depth: dict[str, Any] | Unset = UNSET
        if not isinstance(self.warning_tape_depth, Unset):
            warning_tape_depth = self.warning_tape_depth.to_dict()

        width: dict[str, Any] | Unset = UNSET
        if not isinstance(self.width, Unset):
            width = self.width.to_dict()

        working_space: dict[str, Any] | Unset = UNSET
        if not isinstance(self.working_space, Unset):
            working_space = self.working_space.to_dict()

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if bedding is not UNSET:
            field_dict["bedding"] = bedding
        if bucket_widths is not UNSET:
            field_dict["bucket_widths"] = bucket_widths
        if compacted_volume_factor is not UNSET:
            field_dict["compacted_volume_factor"] = compacted_volume_factor
        if haul_capacity is not UNSET:
            field_dict["haul_capacity"] = haul_capacity
        if least_width is not UNSET:
            field_dict["least_width"] = least_width
        if loose_volume_factor is not UNSET:
            field_dict["loose_volume_factor"] = loose_volume_factor
        if nearest_utility is not UNSET:
            field_dict["nearest_utility"] = nearest_utility
        if pavement is not UNSET:
            field_dict["pavement"] = pavement
        if select_fill is not UNSET:
            field_dict["select_fill"] = select_fill
        if side_slope is not UNSET:
            field_dict["side_slope"] = side_slope
        if soil is not UNSET:
            field_dict["soil"] = soil
        if soil_type is not UNSET:
            field_dict["soil_type"] = soil_type
        if tape_overlap_percent is not UNSET:
            field_dict["tape_overlap_percent"] = tape_overlap_percent
        if warning_tape_depth is not UNSET:
            field_dict["warning_tape_depth"] = warning_tape_depth
        if width is not UNSET:
            field_dict["width"] = width
        if working_space is not UNSET:
            field_dict["working_space"] = working_space

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.pavement import Pavement  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        _bedding = d.pop("bedding", UNSET)
        bedding: Length | Unset
        if isinstance(_bedding, Unset):
            bedding = UNSET
        else:
            bedding = Length.from_dict(_bedding)

        _bucket_widths = d.pop("bucket_widths", UNSET)
        bucket_widths: list[Length] | Unset = UNSET
        if _bucket_widths is not UNSET:
            bucket_widths = []
            for bucket_widths_item_data in _bucket_widths:
                bucket_widths_item = Length.from_dict(bucket_widths_item_data)

                bucket_widths.append(bucket_widths_item)

        compacted_volume_factor = d.pop("compacted_volume_factor", UNSET)

        _haul_capacity = d.pop("haul_capacity", UNSET)
        haul_capacity: Volume | Unset
        if isinstance(_haul_capacity, Unset):
            haul_capacity = UNSET
        else:
            haul_capacity = Volume.from_dict(_haul_capacity)

        _least_width = d.pop("least_width", UNSET)
        least_width: Length | Unset
        if isinstance(_least_width, Unset):
            least_width = UNSET
        else:
            least_width = Length.from_dict(_least_width)

        loose_volume_factor = d.pop("loose_volume_factor", UNSET)

        _nearest_utility = d.pop("nearest_utility", UNSET)
        nearest_utility: Length | Unset
        if isinstance(_nearest_utility, Unset):
            nearest_utility = UNSET
        else:
            nearest_utility = Length.from_dict(_nearest_utility)

        _pavement = d.pop("pavement", UNSET)
        pavement: Pavement | Unset
        if isinstance(_pavement, Unset):
            pavement = UNSET
        else:
            pavement = Pavement.from_dict(_pavement)

        _select_fill = d.pop("select_fill", UNSET)
        select_fill: Length | Unset
        if isinstance(_select_fill, Unset):
            select_fill = UNSET
        else:
            select_fill = Length.from_dict(_select_fill)

        side_slope = d.pop("side_slope", UNSET)

        _soil = d.pop("soil", UNSET)
        soil: SoilKind | Unset
        if isinstance(_soil, Unset):
            soil = UNSET
        else:
            soil = SoilKind(_soil)

        _soil_type = d.pop("soil_type", UNSET)
        soil_type: ExcavationSoilType | Unset
        if isinstance(_soil_type, Unset):
            soil_type = UNSET
        else:
            soil_type = ExcavationSoilType(_soil_type)

        tape_overlap_percent = d.pop("tape_overlap_percent", UNSET)

        _warning_tape_depth = d.pop("warning_tape_depth", UNSET)
        warning_tape_depth: Length | Unset
        if isinstance(_warning_tape_depth, Unset):
            warning_tape_depth = UNSET
        else:
            warning_tape_depth = Length.from_dict(_warning_tape_depth)

        _width = d.pop("width", UNSET)
        width: Length | Unset
        if isinstance(_width, Unset):
            width = UNSET
        else:
            width = Length.from_dict(_width)

        _working_space = d.pop("working_space", UNSET)
        working_space: Length | Unset
        if isinstance(_working_space, Unset):
            working_space = UNSET
        else:
            working_space = Length.from_dict(_working_space)

        digging = cls(
            bedding=bedding,
            bucket_widths=bucket_widths,
            compacted_volume_factor=compacted_volume_factor,
            haul_capacity=haul_capacity,
            least_width=least_width,
            loose_volume_factor=loose_volume_factor,
            nearest_utility=nearest_utility,
            pavement=pavement,
            select_fill=select_fill,
            side_slope=side_slope,
            soil=soil,
            soil_type=soil_type,
            tape_overlap_percent=tape_overlap_percent,
            warning_tape_depth=warning_tape_depth,
            width=width,
            working_space=working_space,
        )

        return digging
