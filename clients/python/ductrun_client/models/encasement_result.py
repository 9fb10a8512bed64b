from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.area import Area
    from ..models.bank_ground_takeoff import BankGroundTakeoff
    from ..models.length import Length
    from ..models.mass import Mass
    from ..models.placed_duct import PlacedDuct
    from ..models.pressure import Pressure
    from ..models.reinforcing_takeoff import ReinforcingTakeoff
    from ..models.volume import Volume


T = TypeVar("T", bound="EncasementResult")


@_attrs_define
class EncasementResult:
    """Envelope, volumes and what to order.

    Attributes:
        bag_count (int): Bags of pre-mix for the net volume with waste.
        concrete_mass (Mass): A mass with its unit; a force is not a mass: see Force.
        duct_volume (Volume): A volume with its unit.
        ducts (list[PlacedDuct]): Where every duct lies.
        envelope_height (Length): A length with its unit.
        envelope_width (Length): A length with its unit.
        form_area (Area): An area with its unit.
        gross_volume (Volume): A volume with its unit.
        net_volume (Volume): A volume with its unit.
        order_volume (Volume): A volume with its unit.
        truck_load_count (int): Truck loads for the order.
        bank_ground_takeoff (BankGroundTakeoff | Unset): The conductors of the ground.
        envelope_top_width (Length | Unset): A length with its unit.
        form_pressure (Pressure | Unset): A pressure or stress with its unit.
        pigment_mass (Mass | Unset): A mass with its unit; a force is not a mass: see Force.
        reinforcing_takeoff (ReinforcingTakeoff | Unset): Bars of the envelope.
    """

    bag_count: int
    concrete_mass: Mass
    duct_volume: Volume
    ducts: list[PlacedDuct]
    envelope_height: Length
    envelope_width: Length
    form_area: Area
    gross_volume: Volume
    net_volume: Volume
    order_volume: Volume
    truck_load_count: int
    bank_ground_takeoff: BankGroundTakeoff | Unset = UNSET
    envelope_top_width: Length | Unset = UNSET
    form_pressure: Pressure | Unset = UNSET
    pigment_mass: Mass | Unset = UNSET
    reinforcing_takeoff: ReinforcingTakeoff | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        bag_count = self.bag_count

        concrete_mass = self.concrete_mass.to_dict()

        duct_volume = self.duct_volume.to_dict()

        ducts = []
        for ducts_item_data in self.ducts:
            ducts_item = ducts_item_data.to_dict()
            ducts.append(ducts_item)

        envelope_height = self.envelope_height.to_dict()

        envelope_width = self.envelope_width.to_dict()

        form_area = self.form_area.to_dict()

        gross_volume = self.gross_volume.to_dict()

        net_volume = self.net_volume.to_dict()

        order_volume = self.order_volume.to_dict()

        truck_load_count = self.truck_load_count

        bank_ground_takeoff: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bank_ground_takeoff, Unset):
            bank_ground_takeoff = self.bank_ground_takeoff.to_dict()

        envelope_top_width: dict[str, Any] | Unset = UNSET
        if not isinstance(self.envelope_top_width, Unset):
            envelope_top_width = self.envelope_top_width.to_dict()

        form_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.form_pressure, Unset):
            form_pressure = self.form_pressure.to_dict()

        pigment_mass: dict[str, Any] | Unset = UNSET
        if not isinstance(self.pigment_mass, Unset):
            pigment_mass = self.pigment_mass.to_dict()

        reinforcing_takeoff: dict[str, Any] | Unset = UNSET
        if not isinstance(self.reinforcing_takeoff, Unset):
            reinforcing_takeoff = self.reinforcing_takeoff.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "bag_count": bag_count,
                "concrete_mass": concrete_mass,
                "duct_volume": duct_volume,
                "ducts": ducts,
                "envelope_height": envelope_height,
                "envelope_width": envelope_width,
                "form_area": form_area,
                "gross_volume": gross_volume,
                "net_volume": net_volume,
                "order_volume": order_volume,
                "truck_load_count": truck_load_count,
            }
        )
        if bank_ground_takeoff is not UNSET:
            field_dict["bank_ground_takeoff"] = bank_ground_takeoff
        if envelope_top_width is not UNSET:
            field_dict["envelope_top_width"] = envelope_top_width
        if form_pressure is not UNSET:
            field_dict["form_pressure"] = form_pressure
        if pigment_mass is not UNSET:
            field_dict["pigment_mass"] = pigment_mass
        if reinforcing_takeoff is not UNSET:
            field_dict["reinforcing_takeoff"] = reinforcing_takeoff

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.area import Area  # noqa: PLC0415
        from ..models.bank_ground_takeoff import BankGroundTakeoff  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass import Mass  # noqa: PLC0415
        from ..models.placed_duct import PlacedDuct  # noqa: PLC0415
        from ..models.pressure import Pressure  # noqa: PLC0415
        from ..models.reinforcing_takeoff import ReinforcingTakeoff  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        bag_count = d.pop("bag_count")

        concrete_mass = Mass.from_dict(d.pop("concrete_mass"))

        duct_volume = Volume.from_dict(d.pop("duct_volume"))

        ducts = []
        _ducts = d.pop("ducts")
        for ducts_item_data in _ducts:
            ducts_item = PlacedDuct.from_dict(ducts_item_data)

            ducts.append(ducts_item)

        envelope_height = Length.from_dict(d.pop("envelope_height"))

        envelope_width = Length.from_dict(d.pop("envelope_width"))

        form_area = Area.from_dict(d.pop("form_area"))

        gross_volume = Volume.from_dict(d.pop("gross_volume"))

        net_volume = Volume.from_dict(d.pop("net_volume"))

        order_volume = Volume.from_dict(d.pop("order_volume"))

        truck_load_count = d.pop("truck_load_count")

        _bank_ground_takeoff = d.pop("bank_ground_takeoff", UNSET)
        bank_ground_takeoff: BankGroundTakeoff | Unset
        if isinstance(_bank_ground_takeoff, Unset):
            bank_ground_takeoff = UNSET
        else:
            bank_ground_takeoff = BankGroundTakeoff.from_dict(_bank_ground_takeoff)

        _envelope_top_width = d.pop("envelope_top_width", UNSET)
        envelope_top_width: Length | Unset
        if isinstance(_envelope_top_width, Unset):
            envelope_top_width = UNSET
        else:
            envelope_top_width = Length.from_dict(_envelope_top_width)

        _form_pressure = d.pop("form_pressure", UNSET)
        form_pressure: Pressure | Unset
        if isinstance(_form_pressure, Unset):
            form_pressure = UNSET
        else:
            form_pressure = Pressure.from_dict(_form_pressure)

        _pigment_mass = d.pop("pigment_mass", UNSET)
        pigment_mass: Mass | Unset
        if isinstance(_pigment_mass, Unset):
            pigment_mass = UNSET
        else:
            pigment_mass = Mass.from_dict(_pigment_mass)

        _reinforcing_takeoff = d.pop("reinforcing_takeoff", UNSET)
        reinforcing_takeoff: ReinforcingTakeoff | Unset
        if isinstance(_reinforcing_takeoff, Unset):
            reinforcing_takeoff = UNSET
        else:
            reinforcing_takeoff = ReinforcingTakeoff.from_dict(_reinforcing_takeoff)

        encasement_result = cls(
            bag_count=bag_count,
            concrete_mass=concrete_mass,
            duct_volume=duct_volume,
            ducts=ducts,
            envelope_height=envelope_height,
            envelope_width=envelope_width,
            form_area=form_area,
            gross_volume=gross_volume,
            net_volume=net_volume,
            order_volume=order_volume,
            truck_load_count=truck_load_count,
            bank_ground_takeoff=bank_ground_takeoff,
            envelope_top_width=envelope_top_width,
            form_pressure=form_pressure,
            pigment_mass=pigment_mass,
            reinforcing_takeoff=reinforcing_takeoff,
        )

        encasement_result.additional_properties = d
        return encasement_result

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
