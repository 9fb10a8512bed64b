from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.volume import Volume


T = TypeVar("T", bound="TrenchResult")


@_attrs_define
class TrenchResult:
    """Size and volumes; bank, loose and compacted are named as such.

    Attributes:
        backfill_volume (Volume): A volume with its unit.
        bedding_volume (Volume): A volume with its unit.
        depth (Length): A length with its unit.
        envelope_volume (Volume): A volume with its unit.
        excavation_volume (Volume): A volume with its unit.
        import_volume (Volume): A volume with its unit.
        loose_excavation_volume (Volume): A volume with its unit.
        select_fill_volume (Volume): A volume with its unit.
        spoil_volume (Volume): A volume with its unit.
        warning_tape_depth (Length): A length with its unit.
        warning_tape_length (Length): A length with its unit.
        width (Length): A length with its unit.
    """

    backfill_volume: Volume
    bedding_volume: Volume
    depth: Length
    envelope_volume: Volume
    excavation_volume: Volume
    import_volume: Volume
    loose_excavation_volume: Volume
    select_fill_volume: Volume
    spoil_volume: Volume
    warning_tape_depth: Length
    warning_tape_length: Length
    width: Length
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        backfill_volume = self.backfill_volume.to_dict()

        bedding_volume = self.bedding_volume.to_dict()

        depth = self.depth.to_dict()

        envelope_volume = self.envelope_volume.to_dict()

        excavation_volume = self.excavation_volume.to_dict()

        import_volume = self.import_volume.to_dict()

        loose_excavation_volume = self.loose_excavation_volume.to_dict()

        select_fill_volume = self.select_fill_volume.to_dict()

        spoil_volume = self.spoil_volume.to_dict()

        warning_tape_depth = self.warning_tape_depth.to_dict()

        warning_tape_length = self.warning_tape_length.to_dict()

        width = self.width.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "backfill_volume": backfill_volume,
                "bedding_volume": bedding_volume,
                "depth": depth,
                "envelope_volume": envelope_volume,
                "excavation_volume": excavation_volume,
                "import_volume": import_volume,
                "loose_excavation_volume": loose_excavation_volume,
                "select_fill_volume": select_fill_volume,
                "spoil_volume": spoil_volume,
                "warning_tape_depth": warning_tape_depth,
                "warning_tape_length": warning_tape_length,
                "width": width,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        backfill_volume = Volume.from_dict(d.pop("backfill_volume"))

        bedding_volume = Volume.from_dict(d.pop("bedding_volume"))

        depth = Length.from_dict(d.pop("depth"))

        envelope_volume = Volume.from_dict(d.pop("envelope_volume"))

        excavation_volume = Volume.from_dict(d.pop("excavation_volume"))

        import_volume = Volume.from_dict(d.pop("import_volume"))

        loose_excavation_volume = Volume.from_dict(d.pop("loose_excavation_volume"))

        select_fill_volume = Volume.from_dict(d.pop("select_fill_volume"))

        spoil_volume = Volume.from_dict(d.pop("spoil_volume"))

        warning_tape_depth = Length.from_dict(d.pop("warning_tape_depth"))

        warning_tape_length = Length.from_dict(d.pop("warning_tape_length"))

        width = Length.from_dict(d.pop("width"))

        trench_result = cls(
            backfill_volume=backfill_volume,
            bedding_volume=bedding_volume,
            depth=depth,
            envelope_volume=envelope_volume,
            excavation_volume=excavation_volume,
            import_volume=import_volume,
            loose_excavation_volume=loose_excavation_volume,
            select_fill_volume=select_fill_volume,
            spoil_volume=spoil_volume,
            warning_tape_depth=warning_tape_depth,
            warning_tape_length=warning_tape_length,
            width=width,
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
