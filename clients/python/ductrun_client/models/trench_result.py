from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.area import Area
    from ..models.length import Length
    from ..models.pavement_takeoff import PavementTakeoff
    from ..models.volume import Volume


T = TypeVar("T", bound="TrenchResult")


@_attrs_define
class TrenchResult:
    """Size and volumes; bank, loose and compacted are named as such.

    Attributes:
        backfill_volume (Volume): A volume with its unit.
        bedding_volume (Volume): A volume with its unit.
        depth (Length): A length with its unit.
        envelope_height (Length): A length with its unit.
        envelope_volume (Volume): A volume with its unit.
        envelope_width (Length): A length with its unit.
        excavation_volume (Volume): A volume with its unit.
        haul_load_count (int): Truck loads of earth hauled away, or brought; none of pavement.
        import_volume (Volume): A volume with its unit.
        least_cover_over_ducts (Length): A length with its unit.
        least_warning_tape_depth (Length): A length with its unit.
        loose_excavation_volume (Volume): A volume with its unit.
        measured_from (str): What the cover is measured between.
        select_fill_volume (Volume): A volume with its unit.
        shoring_area (Area): An area with its unit.
        spoil_volume (Volume): A volume with its unit.
        warning_tape_depth (Length): A length with its unit.
        warning_tape_length (Length): A length with its unit.
        width (Length): A length with its unit.
        fall_height (Length | Unset): A length with its unit.
        pavement (PavementTakeoff | Unset): Pavement in place; what is taken up of it is no spoil.
    """

    backfill_volume: Volume
    bedding_volume: Volume
    depth: Length
    envelope_height: Length
    envelope_volume: Volume
    envelope_width: Length
    excavation_volume: Volume
    haul_load_count: int
    import_volume: Volume
    least_cover_over_ducts: Length
    least_warning_tape_depth: Length
    loose_excavation_volume: Volume
    measured_from: str
    select_fill_volume: Volume
    shoring_area: Area
    spoil_volume: Volume
    warning_tape_depth: Length
    warning_tape_length: Length
    width: Length
    fall_height: Length | Unset = UNSET
    pavement: PavementTakeoff | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        backfill_volume = self.backfill_volume.to_dict()

        bedding_volume = self.bedding_volume.to_dict()

        depth = self.depth.to_dict()

        envelope_height = self.envelope_height.to_dict()

        envelope_volume = self.envelope_volume.to_dict()

        envelope_width = self.envelope_width.to_dict()

        excavation_volume = self.excavation_volume.to_dict()

        haul_load_count = self.haul_load_count

        import_volume = self.import_volume.to_dict()

        least_cover_over_ducts = self.least_cover_over_ducts.to_dict()

        least_warning_tape_depth = self.least_warning_tape_depth.to_dict()

        loose_excavation_volume = self.loose_excavation_volume.to_dict()

        measured_from = self.measured_from

        select_fill_volume = self.select_fill_volume.to_dict()

        shoring_area = self.shoring_area.to_dict()

        spoil_volume = self.spoil_volume.to_dict()

        warning_tape_depth = self.warning_tape_depth.to_dict()

        warning_tape_length = self.warning_tape_length.to_dict()

        width = self.width.to_dict()

        fall_height: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fall_height, Unset):
            fall_height = self.fall_height.to_dict()

        pavement: dict[str, Any] | Unset = UNSET
        if not isinstance(self.pavement, Unset):
            pavement = self.pavement.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "backfill_volume": backfill_volume,
                "bedding_volume": bedding_volume,
                "depth": depth,
                "envelope_height": envelope_height,
                "envelope_volume": envelope_volume,
                "envelope_width": envelope_width,
                "excavation_volume": excavation_volume,
                "haul_load_count": haul_load_count,
                "import_volume": import_volume,
                "least_cover_over_ducts": least_cover_over_ducts,
                "least_warning_tape_depth": least_warning_tape_depth,
                "loose_excavation_volume": loose_excavation_volume,
                "measured_from": measured_from,
                "select_fill_volume": select_fill_volume,
                "shoring_area": shoring_area,
                "spoil_volume": spoil_volume,
                "warning_tape_depth": warning_tape_depth,
                "warning_tape_length": warning_tape_length,
                "width": width,
            }
        )
        if fall_height is not UNSET:
            field_dict["fall_height"] = fall_height
        if pavement is not UNSET:
            field_dict["pavement"] = pavement

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.pavement_takeoff import PavementTakeoff  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        backfill_volume = Volume.from_dict(d.pop("backfill_volume"))

        bedding_volume = Volume.from_dict(d.pop("bedding_volume"))

        depth = Length.from_dict(d.pop("depth"))

        envelope_height = Length.from_dict(d.pop("envelope_height"))

        envelope_volume = Volume.from_dict(d.pop("envelope_volume"))

        envelope_width = Length.from_dict(d.pop("envelope_width"))

        excavation_volume = Volume.from_dict(d.pop("excavation_volume"))

        haul_load_count = d.pop("haul_load_count")

        import_volume = Volume.from_dict(d.pop("import_volume"))

        least_cover_over_ducts = Length.from_dict(d.pop("least_cover_over_ducts"))

        least_warning_tape_depth = Length.from_dict(d.pop("least_warning_tape_depth"))

        loose_excavation_volume = Volume.from_dict(d.pop("loose_excavation_volume"))

        measured_from = d.pop("measured_from")

        select_fill_volume = Volume.from_dict(d.pop("select_fill_volume"))

        shoring_area = Area.from_dict(d.pop("shoring_area"))

        spoil_volume = Volume.from_dict(d.pop("spoil_volume"))

        warning_tape_depth = Length.from_dict(d.pop("warning_tape_depth"))

        warning_tape_length = Length.from_dict(d.pop("warning_tape_length"))

        width = Length.from_dict(d.pop("width"))

        _fall_height = d.pop("fall_height", UNSET)
        fall_height: Length | Unset
        if isinstance(_fall_height, Unset):
            fall_height = UNSET
        else:
            fall_height = Length.from_dict(_fall_height)

        _pavement = d.pop("pavement", UNSET)
        pavement: PavementTakeoff | Unset
        if isinstance(_pavement, Unset):
            pavement = UNSET
        else:
            pavement = PavementTakeoff.from_dict(_pavement)

        trench_result = cls(
            backfill_volume=backfill_volume,
            bedding_volume=bedding_volume,
            depth=depth,
            envelope_height=envelope_height,
            envelope_volume=envelope_volume,
            envelope_width=envelope_width,
            excavation_volume=excavation_volume,
            haul_load_count=haul_load_count,
            import_volume=import_volume,
            least_cover_over_ducts=least_cover_over_ducts,
            least_warning_tape_depth=least_warning_tape_depth,
            loose_excavation_volume=loose_excavation_volume,
            measured_from=measured_from,
            select_fill_volume=select_fill_volume,
            shoring_area=shoring_area,
            spoil_volume=spoil_volume,
            warning_tape_depth=warning_tape_depth,
            warning_tape_length=warning_tape_length,
            width=width,
            fall_height=fall_height,
            pavement=pavement,
        )

        trench_result.additional_properties = d
        return trench_result

    @property
    def additional_keys(self) -> list[str]:
        return list(self.additional_properties.keys())

    def __getitem__(self, key: str) -> Any:
        return self.additional_properties[key]

    def __setitem__(self, key: str, value: Any) -> None:
        self.additional_properties[key] = value

    def __delitem__(self, key: str) -> None:
        del self.additional_properties[key]

    def __contains__(self, key: str) -> bool:
        return key in self.additional_properties
