from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.excavation_soil_type import ExcavationSoilType
from ..models.pour_shape import PourShape
from ..models.soil_kind import SoilKind
from ..models.trench_practice import TrenchPractice
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.concrete_cover import ConcreteCover
    from ..models.duct_bank import DuctBank
    from ..models.fall import Fall
    from ..models.length import Length
    from ..models.pavement import Pavement
    from ..models.station import Station
    from ..models.volume import Volume


T = TypeVar("T", bound="TrenchRequest")


@_attrs_define
class TrenchRequest:
    """A bank in its trench.

    Attributes:
        bank (DuctBank): Ducts in tiers: of one kind (tiers), or of several (tier_ducts).
        length (Length): A length with its unit.
        bedding (Length | Unset): A length with its unit.
        bucket_widths (list[Length] | Unset): Widths of the buckets at hand: the floor is as wide as the narrowest that
            digs the width wanted.
        compacted_volume_factor (float | Unset): Compacted volume of one in the bank, in place of the soil's.
        concrete_cover (ConcreteCover | Unset): Concrete outside the ducts.
        cover (Length | Unset): A length with its unit.
        fall (Fall | Unset): The fall of ducts that drain, below level ground.
        haul_capacity (Volume | Unset): A volume with its unit.
        least_width (Length | Unset): A length with its unit.
        loose_volume_factor (float | Unset): Loose volume of one in the bank, in place of the soil's.
        nearest_utility (Length | Unset): A length with its unit.
        pavement (Pavement | Unset): The pavement that a trench goes through; its top is grade, and it is laid again as
            thick as it was.
        pour_shape (PourShape | Unset): Whether concrete fills the bounding rectangle or steps with the tiers.
        practice (TrenchPractice | Unset): Practices of laying a bank in its trench.
        select_fill (Length | Unset): A length with its unit.
        side_slope (float | Unset): Side of the trench, horizontal for one vertical.
        soil (SoilKind | Unset): Soils with factors from bank to loose and compacted.
        soil_type (ExcavationSoilType | Unset): Soil types of 29 CFR 1926 Subpart P.
        stations (list[Station] | Unset): Cover along the run where it varies, from its start to its end; this or cover.
        tape_overlap_percent (float | Unset): Extra warning tape.
        warning_tape_depth (Length | Unset): A length with its unit.
        width (Length | Unset): A length with its unit.
        working_space (Length | Unset): A length with its unit.
    """

    bank: DuctBank
    length: Length
    bedding: Length | Unset = UNSET
    bucket_widths: list[Length] | Unset = UNSET
    compacted_volume_factor: float | Unset = UNSET
    concrete_cover: ConcreteCover | Unset = UNSET
    cover: Length | Unset = UNSET
    fall: Fall | Unset = UNSET
    haul_capacity: Volume | Unset = UNSET
    least_width: Length | Unset = UNSET
    loose_volume_factor: float | Unset = UNSET
    nearest_utility: Length | Unset = UNSET
    pavement: Pavement | Unset = UNSET
    pour_shape: PourShape | Unset = UNSET
    practice: TrenchPractice | Unset = UNSET
    select_fill: Length | Unset = UNSET
    side_slope: float | Unset = UNSET
    soil: SoilKind | Unset = UNSET
    soil_type: ExcavationSoilType | Unset = UNSET
    stations: list[Station] | Unset = UNSET
    tape_overlap_percent: float | Unset = UNSET
    warning_tape_depth: Length | Unset = UNSET
    width: Length | Unset = UNSET
    working_space: Length | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        bank = self.bank.to_dict()

        length = self.length.to_dict()

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

        concrete_cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_cover, Unset):
            concrete_cover = self.concrete_cover.to_dict()

        cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cover, Unset):
            cover = self.cover.to_dict()

        fall: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fall, Unset):
            fall = self.fall.to_dict()

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

        pour_shape: str | Unset = UNSET
        if not isinstance(self.pour_shape, Unset):
            pour_shape = self.pour_shape.value

        practice: str | Unset = UNSET
        if not isinstance(self.practice, Unset):
            practice = self.practice.value

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

        stations: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.stations, Unset):
            stations = []
            for stations_item_data in self.stations:
                stations_item = stations_item_data.to_dict()
                stations.append(stations_item)

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

        field_dict.update(
            {
                "bank": bank,
                "length": length,
            }
        )
        if bedding is not UNSET:
            field_dict["bedding"] = bedding
        if bucket_widths is not UNSET:
            field_dict["bucket_widths"] = bucket_widths
        if compacted_volume_factor is not UNSET:
            field_dict["compacted_volume_factor"] = compacted_volume_factor
        if concrete_cover is not UNSET:
            field_dict["concrete_cover"] = concrete_cover
        if cover is not UNSET:
            field_dict["cover"] = cover
        if fall is not UNSET:
            field_dict["fall"] = fall
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
        if pour_shape is not UNSET:
            field_dict["pour_shape"] = pour_shape
        if practice is not UNSET:
            field_dict["practice"] = practice
        if select_fill is not UNSET:
            field_dict["select_fill"] = select_fill
        if side_slope is not UNSET:
            field_dict["side_slope"] = side_slope
        if soil is not UNSET:
            field_dict["soil"] = soil
        if soil_type is not UNSET:
            field_dict["soil_type"] = soil_type
        if stations is not UNSET:
            field_dict["stations"] = stations
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
        from ..models.concrete_cover import ConcreteCover  # noqa: PLC0415
        from ..models.duct_bank import DuctBank  # noqa: PLC0415
        from ..models.fall import Fall  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.pavement import Pavement  # noqa: PLC0415
        from ..models.station import Station  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        bank = DuctBank.from_dict(d.pop("bank"))

        length = Length.from_dict(d.pop("length"))

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

        _concrete_cover = d.pop("concrete_cover", UNSET)
        concrete_cover: ConcreteCover | Unset
        if isinstance(_concrete_cover, Unset):
            concrete_cover = UNSET
        else:
            concrete_cover = ConcreteCover.from_dict(_concrete_cover)

        _cover = d.pop("cover", UNSET)
        cover: Length | Unset
        if isinstance(_cover, Unset):
            cover = UNSET
        else:
            cover = Length.from_dict(_cover)

        _fall = d.pop("fall", UNSET)
        fall: Fall | Unset
        if isinstance(_fall, Unset):
            fall = UNSET
        else:
            fall = Fall.from_dict(_fall)

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

        _pour_shape = d.pop("pour_shape", UNSET)
        pour_shape: PourShape | Unset
        if isinstance(_pour_shape, Unset):
            pour_shape = UNSET
        else:
            pour_shape = PourShape(_pour_shape)

        _practice = d.pop("practice", UNSET)
        practice: TrenchPractice | Unset
        if isinstance(_practice, Unset):
            practice = UNSET
        else:
            practice = TrenchPractice(_practice)

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

        _stations = d.pop("stations", UNSET)
        stations: list[Station] | Unset = UNSET
        if _stations is not UNSET:
            stations = []
            for stations_item_data in _stations:
                stations_item = Station.from_dict(stations_item_data)

                stations.append(stations_item)

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

        trench_request = cls(
            bank=bank,
            length=length,
            bedding=bedding,
            bucket_widths=bucket_widths,
            compacted_volume_factor=compacted_volume_factor,
            concrete_cover=concrete_cover,
            cover=cover,
            fall=fall,
            haul_capacity=haul_capacity,
            least_width=least_width,
            loose_volume_factor=loose_volume_factor,
            nearest_utility=nearest_utility,
            pavement=pavement,
            pour_shape=pour_shape,
            practice=practice,
            select_fill=select_fill,
            side_slope=side_slope,
            soil=soil,
            soil_type=soil_type,
            stations=stations,
            tape_overlap_percent=tape_overlap_percent,
            warning_tape_depth=warning_tape_depth,
            width=width,
            working_space=working_space,
        )

        return trench_request
