from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.earth_load_method import EarthLoadMethod
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.in_service import InService
    from ..models.pressure import Pressure
    from ..models.tier_in_pour import TierInPour
    from ..models.tier_under_load import TierUnderLoad
    from ..models.would_comply import WouldComply


T = TypeVar("T", bound="EarthLoadResult")


@_attrs_define
class EarthLoadResult:
    """Ducts under earth and traffic; without tiers where no load was put on them.

    Attributes:
        pour (list[TierInPour]): Encased ducts in wet concrete by tier, the bottom first.
        tiers (list[TierUnderLoad]): Ducts in earth by tier, the bottom first.
        deflection_percent (float | Unset): The largest deflection of all tiers.
        earth_load_method (EarthLoadMethod | Unset): How earth loads a duct: by the prism above it, or arching on the
            walls of its trench.
        highest_deflection_percent (float | Unset): The high end of what the formula stands for there.
        in_service (InService | Unset): Empty ducts in groundwater.
        lowest_deflection_percent (float | Unset): The low end of what the formula stands for there.
        soil_modulus (Pressure | Unset): A pressure or stress with its unit.
        would_comply (WouldComply | Unset): What would keep every limit of this calculation with all else as it is;
            absent where nothing would.
    """

    pour: list[TierInPour]
    tiers: list[TierUnderLoad]
    deflection_percent: float | Unset = UNSET
    earth_load_method: EarthLoadMethod | Unset = UNSET
    highest_deflection_percent: float | Unset = UNSET
    in_service: InService | Unset = UNSET
    lowest_deflection_percent: float | Unset = UNSET
    soil_modulus: Pressure | Unset = UNSET
    would_comply: WouldComply | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        pour = []
        for pour_item_data in self.pour:
            pour_item = pour_item_data.to_dict()
            pour.append(pour_item)

        tiers = []
        for tiers_item_data in self.tiers:
            tiers_item = tiers_item_data.to_dict()
            tiers.append(tiers_item)

        deflection_percent = self.deflection_percent

        earth_load_method: str | Unset = UNSET
        if not isinstance(self.earth_load_method, Unset):
            earth_load_method = self.earth_load_method.value

        highest_deflection_percent = self.highest_deflection_percent

        in_service: dict[str, Any] | Unset = UNSET
        if not isinstance(self.in_service, Unset):
            in_service = self.in_service.to_dict()

        lowest_deflection_percent = self.lowest_deflection_percent

        soil_modulus: dict[str, Any] | Unset = UNSET
        if not isinstance(self.soil_modulus, Unset):
            soil_modulus = self.soil_modulus.to_dict()

        would_comply: dict[str, Any] | Unset = UNSET
        if not isinstance(self.would_comply, Unset):
            would_comply = self.would_comply.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "pour": pour,
                "tiers": tiers,
            }
        )
        if deflection_percent is not UNSET:
            field_dict["deflection_percent"] = deflection_percent
        if earth_load_method is not UNSET:
            field_dict["earth_load_method"] = earth_load_method
        if highest_deflection_percent is not UNSET:
            field_dict["highest_deflection_percent"] = highest_deflection_percent
        if in_service is not UNSET:
            field_dict["in_service"] = in_service
        if lowest_deflection_percent is not UNSET:
            field_dict["lowest_deflection_percent"] = lowest_deflection_percent
        if soil_modulus is not UNSET:
            field_dict["soil_modulus"] = soil_modulus
        if would_comply is not UNSET:
            field_dict["would_comply"] = would_comply

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.in_service import InService  # noqa: PLC0415
        from ..models.pressure import Pressure  # noqa: PLC0415
        from ..models.tier_in_pour import TierInPour  # noqa: PLC0415
        from ..models.tier_under_load import TierUnderLoad  # noqa: PLC0415
        from ..models.would_comply import WouldComply  # noqa: PLC0415

        d = dict(src_dict)
        pour = []
        _pour = d.pop("pour")
        for pour_item_data in _pour:
            pour_item = TierInPour.from_dict(pour_item_data)

            pour.append(pour_item)

        tiers = []
        _tiers = d.pop("tiers")
        for tiers_item_data in _tiers:
            tiers_item = TierUnderLoad.from_dict(tiers_item_data)

            tiers.append(tiers_item)

        deflection_percent = d.pop("deflection_percent", UNSET)

        _earth_load_method = d.pop("earth_load_method", UNSET)
        earth_load_method: EarthLoadMethod | Unset
        if isinstance(_earth_load_method, Unset):
            earth_load_method = UNSET
        else:
            earth_load_method = EarthLoadMethod(_earth_load_method)

        highest_deflection_percent = d.pop("highest_deflection_percent", UNSET)

        _in_service = d.pop("in_service", UNSET)
        in_service: InService | Unset
        if isinstance(_in_service, Unset):
            in_service = UNSET
        else:
            in_service = InService.from_dict(_in_service)

        lowest_deflection_percent = d.pop("lowest_deflection_percent", UNSET)

        _soil_modulus = d.pop("soil_modulus", UNSET)
        soil_modulus: Pressure | Unset
        if isinstance(_soil_modulus, Unset):
            soil_modulus = UNSET
        else:
            soil_modulus = Pressure.from_dict(_soil_modulus)

        _would_comply = d.pop("would_comply", UNSET)
        would_comply: WouldComply | Unset
        if isinstance(_would_comply, Unset):
            would_comply = UNSET
        else:
            would_comply = WouldComply.from_dict(_would_comply)

        earth_load_result = cls(
            pour=pour,
            tiers=tiers,
            deflection_percent=deflection_percent,
            earth_load_method=earth_load_method,
            highest_deflection_percent=highest_deflection_percent,
            in_service=in_service,
            lowest_deflection_percent=lowest_deflection_percent,
            soil_modulus=soil_modulus,
            would_comply=would_comply,
        )

        earth_load_result.additional_properties = d
        return earth_load_result

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
