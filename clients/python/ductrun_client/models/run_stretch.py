from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.ampacity_result import AmpacityResult
    from ..models.cover_result import CoverResult
    from ..models.earth_load_result import EarthLoadResult
    from ..models.encasement_result import EncasementResult
    from ..models.expansion_result import ExpansionResult
    from ..models.flotation_result import FlotationResult
    from ..models.length import Length
    from ..models.spacers_result import SpacersResult
    from ..models.stretch_joints import StretchJoints
    from ..models.stretch_riser import StretchRiser
    from ..models.stretch_use import StretchUse
    from ..models.supports_result import SupportsResult
    from ..models.trench_result import TrenchResult


T = TypeVar("T", bound="RunStretch")


@_attrs_define
class RunStretch:
    """One stretch of the run, each part as its own operation tells it.

    Attributes:
        ducts (list[StretchJoints]): Its ducts by conduit, risers of another apart.
        length (Length): A length with its unit.
        name (str):
        permitted_uses (list[StretchUse]):
        plan_length (Length): A length with its unit.
        risers (list[StretchRiser]):
        setting (str):
        station (Length): A length with its unit.
        ampacity (AmpacityResult | Unset): What the bank may carry, and how warm it becomes.
        bore_flotation (FlotationResult | Unset): The uplift and what holds it.
        cover (CoverResult | Unset): The least cover and how it is measured.
        earth_loads (list[EarthLoadResult] | Unset): If asked: under its least cover and, where that is another, under
            its greatest.
        encasement (EncasementResult | Unset): Envelope, volumes and what to order.
        expansion (ExpansionResult | Unset): How far the runs move and what takes it up; runs held by the ground have no
            movement to show.
        flotation (FlotationResult | Unset): The uplift and what holds it.
        groundwater_flotation (FlotationResult | Unset): The uplift and what holds it.
        spacers (SpacersResult | Unset): The stations and the pieces.
        supports (list[SupportsResult] | Unset): Of each straight above ground.
        trench (TrenchResult | Unset): Size and volumes; bank, loose and compacted are named as such.
    """

    ducts: list[StretchJoints]
    length: Length
    name: str
    permitted_uses: list[StretchUse]
    plan_length: Length
    risers: list[StretchRiser]
    setting: str
    station: Length
    ampacity: AmpacityResult | Unset = UNSET
    bore_flotation: FlotationResult | Unset = UNSET
    cover: CoverResult | Unset = UNSET
    earth_loads: list[EarthLoadResult] | Unset = UNSET
    encasement: EncasementResult | Unset = UNSET
    expansion: ExpansionResult | Unset = UNSET
    flotation: FlotationResult | Unset = UNSET
    groundwater_flotation: FlotationResult | Unset = UNSET
    spacers: SpacersResult | Unset = UNSET
    supports: list[SupportsResult] | Unset = UNSET
    trench: TrenchResult | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        ducts = []
        for ducts_item_data in self.ducts:
            ducts_item = ducts_item_data.to_dict()
            ducts.append(ducts_item)

        length = self.length.to_dict()

        name = self.name

        permitted_uses = []
        for permitted_uses_item_data in self.permitted_uses:
            permitted_uses_item = permitted_uses_item_data.to_dict()
            permitted_uses.append(permitted_uses_item)

        plan_length = self.plan_length.to_dict()

        risers = []
        for risers_item_data in self.risers:
            risers_item = risers_item_data.to_dict()
            risers.append(risers_item)

        setting = self.setting

        station = self.station.to_dict()

        ampacity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.ampacity, Unset):
            ampacity = self.ampacity.to_dict()

        bore_flotation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bore_flotation, Unset):
            bore_flotation = self.bore_flotation.to_dict()

        cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cover, Unset):
            cover = self.cover.to_dict()

        earth_loads: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.earth_loads, Unset):
            earth_loads = []
            for earth_loads_item_data in self.earth_loads:
                earth_loads_item = earth_loads_item_data.to_dict()
                earth_loads.append(earth_loads_item)

        encasement: dict[str, Any] | Unset = UNSET
        if not isinstance(self.encasement, Unset):
            encasement = self.encasement.to_dict()

        expansion: dict[str, Any] | Unset = UNSET
        if not isinstance(self.expansion, Unset):
            expansion = self.expansion.to_dict()

        flotation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.flotation, Unset):
            flotation = self.flotation.to_dict()

        groundwater_flotation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.groundwater_flotation, Unset):
            groundwater_flotation = self.groundwater_flotation.to_dict()

        spacers: dict[str, Any] | Unset = UNSET
        if not isinstance(self.spacers, Unset):
            spacers = self.spacers.to_dict()

        supports: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.supports, Unset):
            supports = []
            for supports_item_data in self.supports:
                supports_item = supports_item_data.to_dict()
                supports.append(supports_item)

        trench: dict[str, Any] | Unset = UNSET
        if not isinstance(self.trench, Unset):
            trench = self.trench.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "ducts": ducts,
                "length": length,
                "name": name,
                "permitted_uses": permitted_uses,
                "plan_length": plan_length,
                "risers": risers,
                "setting": setting,
                "station": station,
            }
        )
        if ampacity is not UNSET:
            field_dict["ampacity"] = ampacity
        if bore_flotation is not UNSET:
            field_dict["bore_flotation"] = bore_flotation
        if cover is not UNSET:
            field_dict["cover"] = cover
        if earth_loads is not UNSET:
            field_dict["earth_loads"] = earth_loads
        if encasement is not UNSET:
            field_dict["encasement"] = encasement
        if expansion is not UNSET:
            field_dict["expansion"] = expansion
        if flotation is not UNSET:
            field_dict["flotation"] = flotation
        if groundwater_flotation is not UNSET:
            field_dict["groundwater_flotation"] = groundwater_flotation
        if spacers is not UNSET:
            field_dict["spacers"] = spacers
        if supports is not UNSET:
            field_dict["supports"] = supports
        if trench is not UNSET:
            field_dict["trench"] = trench

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.ampacity_result import AmpacityResult  # noqa: PLC0415
        from ..models.cover_result import CoverResult  # noqa: PLC0415
        from ..models.earth_load_result import EarthLoadResult  # noqa: PLC0415
        from ..models.encasement_result import EncasementResult  # noqa: PLC0415
        from ..models.expansion_result import ExpansionResult  # noqa: PLC0415
        from ..models.flotation_result import FlotationResult  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.spacers_result import SpacersResult  # noqa: PLC0415
        from ..models.stretch_joints import StretchJoints  # noqa: PLC0415
        from ..models.stretch_riser import StretchRiser  # noqa: PLC0415
        from ..models.stretch_use import StretchUse  # noqa: PLC0415
        from ..models.supports_result import SupportsResult  # noqa: PLC0415
        from ..models.trench_result import TrenchResult  # noqa: PLC0415

        d = dict(src_dict)
        ducts = []
        _ducts = d.pop("ducts")
        for ducts_item_data in _ducts:
            ducts_item = StretchJoints.from_dict(ducts_item_data)

            ducts.append(ducts_item)

        length = Length.from_dict(d.pop("length"))

        name = d.pop("name")

        permitted_uses = []
        _permitted_uses = d.pop("permitted_uses")
        for permitted_uses_item_data in _permitted_uses:
            permitted_uses_item = StretchUse.from_dict(permitted_uses_item_data)

            permitted_uses.append(permitted_uses_item)

        plan_length = Length.from_dict(d.pop("plan_length"))

        risers = []
        _risers = d.pop("risers")
        for risers_item_data in _risers:
            risers_item = StretchRiser.from_dict(risers_item_data)

            risers.append(risers_item)

        setting = d.pop("setting")

        station = Length.from_dict(d.pop("station"))

        _ampacity = d.pop("ampacity", UNSET)
        ampacity: AmpacityResult | Unset
        if isinstance(_ampacity, Unset):
            ampacity = UNSET
        else:
            ampacity = AmpacityResult.from_dict(_ampacity)

        _bore_flotation = d.pop("bore_flotation", UNSET)
        bore_flotation: FlotationResult | Unset
        if isinstance(_bore_flotation, Unset):
            bore_flotation = UNSET
        else:
            bore_flotation = FlotationResult.from_dict(_bore_flotation)

        _cover = d.pop("cover", UNSET)
        cover: CoverResult | Unset
        if isinstance(_cover, Unset):
            cover = UNSET
        else:
            cover = CoverResult.from_dict(_cover)

        _earth_loads = d.pop("earth_loads", UNSET)
        earth_loads: list[EarthLoadResult] | Unset = UNSET
        if _earth_loads is not UNSET:
            earth_loads = []
            for earth_loads_item_data in _earth_loads:
                earth_loads_item = EarthLoadResult.from_dict(earth_loads_item_data)

                earth_loads.append(earth_loads_item)

        _encasement = d.pop("encasement", UNSET)
        encasement: EncasementResult | Unset
        if isinstance(_encasement, Unset):
            encasement = UNSET
        else:
            encasement = EncasementResult.from_dict(_encasement)

        _expansion = d.pop("expansion", UNSET)
        expansion: ExpansionResult | Unset
        if isinstance(_expansion, Unset):
            expansion = UNSET
        else:
            expansion = ExpansionResult.from_dict(_expansion)

        _flotation = d.pop("flotation", UNSET)
        flotation: FlotationResult | Unset
        if isinstance(_flotation, Unset):
            flotation = UNSET
        else:
            flotation = FlotationResult.from_dict(_flotation)

        _groundwater_flotation = d.pop("groundwater_flotation", UNSET)
        groundwater_flotation: FlotationResult | Unset
        if isinstance(_groundwater_flotation, Unset):
            groundwater_flotation = UNSET
        else:
            groundwater_flotation = FlotationResult.from_dict(_groundwater_flotation)

        _spacers = d.pop("spacers", UNSET)
        spacers: SpacersResult | Unset
        if isinstance(_spacers, Unset):
            spacers = UNSET
        else:
            spacers = SpacersResult.from_dict(_spacers)

        _supports = d.pop("supports", UNSET)
        supports: list[SupportsResult] | Unset = UNSET
        if _supports is not UNSET:
            supports = []
            for supports_item_data in _supports:
                supports_item = SupportsResult.from_dict(supports_item_data)

                supports.append(supports_item)

        _trench = d.pop("trench", UNSET)
        trench: TrenchResult | Unset
        if isinstance(_trench, Unset):
            trench = UNSET
        else:
            trench = TrenchResult.from_dict(_trench)

        run_stretch = cls(
            ducts=ducts,
            length=length,
            name=name,
            permitted_uses=permitted_uses,
            plan_length=plan_length,
            risers=risers,
            setting=setting,
            station=station,
            ampacity=ampacity,
            bore_flotation=bore_flotation,
            cover=cover,
            earth_loads=earth_loads,
            encasement=encasement,
            expansion=expansion,
            flotation=flotation,
            groundwater_flotation=groundwater_flotation,
            spacers=spacers,
            supports=supports,
            trench=trench,
        )

        run_stretch.additional_properties = d
        return run_stretch

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
