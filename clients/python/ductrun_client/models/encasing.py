from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.bank_ground import BankGround
    from ..models.density import Density
    from ..models.length import Length
    from ..models.mass import Mass
    from ..models.reinforcing import Reinforcing
    from ..models.volume import Volume


T = TypeVar("T", bound="Encasing")


@_attrs_define
class Encasing:
    """How concrete is mixed, reinforced and bought.

    Attributes:
        bag_mass (Mass | Unset): A mass with its unit; a force is not a mass: see Force.
        bank_ground (BankGround | Unset): Bare conductors in the envelope.
        cement_content (Density | Unset): A mass per volume with its unit.
        concrete_density (Density | Unset): A mass per volume with its unit.
        maximum_aggregate_size (Length | Unset): A length with its unit.
        order_increment (Volume | Unset): A volume with its unit.
        pigment_percent (float | Unset): Color in percent of the mass of cement, for a marked mix.
        reinforcing (Reinforcing | Unset): Longitudinal bars and ties.
        truck_capacity (Volume | Unset): A volume with its unit.
        waste_percent (float | Unset): Waste on the net volume, in percent.
    """

    bag_mass: Mass | Unset = UNSET
    bank_ground: BankGround | Unset = UNSET
    cement_content: Density | Unset = UNSET
    concrete_density: Density | Unset = UNSET
    maximum_aggregate_size: Length | Unset = UNSET
    order_increment: Volume | Unset = UNSET
    pigment_percent: float | Unset = UNSET
    reinforcing: Reinforcing | Unset = UNSET
    truck_capacity: Volume | Unset = UNSET
    waste_percent: float | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        bag_mass: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bag_mass, Unset):
            bag_mass = self.bag_mass.to_dict()

        bank_ground: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bank_ground, Unset):
            bank_ground = self.bank_ground.to_dict()

        cement_content: dict[str, Any] | Unset = UNSET
        if not isinstance(self.cement_content, Unset):
            cement_content = self.cement_content.to_dict()

        concrete_density: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete_density, Unset):
            concrete_density = self.concrete_density.to_dict()

        maximum_aggregate_size: dict[str, Any] | Unset = UNSET
        if not isinstance(self.maximum_aggregate_size, Unset):
            maximum_aggregate_size = self.maximum_aggregate_size.to_dict()

        order_increment: dict[str, Any] | Unset = UNSET
        if not isinstance(self.order_increment, Unset):
            order_increment = self.order_increment.to_dict()

        pigment_percent = self.pigment_percent

        reinforcing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.reinforcing, Unset):
            reinforcing = self.reinforcing.to_dict()

        truck_capacity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.truck_capacity, Unset):
            truck_capacity = self.truck_capacity.to_dict()

        waste_percent = self.waste_percent

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if bag_mass is not UNSET:
            field_dict["bag_mass"] = bag_mass
        if bank_ground is not UNSET:
            field_dict["bank_ground"] = bank_ground
        if cement_content is not UNSET:
            field_dict["cement_content"] = cement_content
        if concrete_density is not UNSET:
            field_dict["concrete_density"] = concrete_density
        if maximum_aggregate_size is not UNSET:
            field_dict["maximum_aggregate_size"] = maximum_aggregate_size
        if order_increment is not UNSET:
            field_dict["order_increment"] = order_increment
        if pigment_percent is not UNSET:
            field_dict["pigment_percent"] = pigment_percent
        if reinforcing is not UNSET:
            field_dict["reinforcing"] = reinforcing
        if truck_capacity is not UNSET:
            field_dict["truck_capacity"] = truck_capacity
        if waste_percent is not UNSET:
            field_dict["waste_percent"] = waste_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.bank_ground import BankGround  # noqa: PLC0415
        from ..models.density import Density  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.mass import Mass  # noqa: PLC0415
        from ..models.reinforcing import Reinforcing  # noqa: PLC0415
        from ..models.volume import Volume  # noqa: PLC0415

        d = dict(src_dict)
        _bag_mass = d.pop("bag_mass", UNSET)
        bag_mass: Mass | Unset
        if isinstance(_bag_mass, Unset):
            bag_mass = UNSET
        else:
            bag_mass = Mass.from_dict(_bag_mass)

        _bank_ground = d.pop("bank_ground", UNSET)
        bank_ground: BankGround | Unset
        if isinstance(_bank_ground, Unset):
            bank_ground = UNSET
        else:
            bank_ground = BankGround.from_dict(_bank_ground)

        _cement_content = d.pop("cement_content", UNSET)
        cement_content: Density | Unset
        if isinstance(_cement_content, Unset):
            cement_content = UNSET
        else:
            cement_content = Density.from_dict(_cement_content)

        _concrete_density = d.pop("concrete_density", UNSET)
        concrete_density: Density | Unset
        if isinstance(_concrete_density, Unset):
            concrete_density = UNSET
        else:
            concrete_density = Density.from_dict(_concrete_density)

        _maximum_aggregate_size = d.pop("maximum_aggregate_size", UNSET)
        maximum_aggregate_size: Length | Unset
        if isinstance(_maximum_aggregate_size, Unset):
            maximum_aggregate_size = UNSET
        else:
            maximum_aggregate_size = Length.from_dict(_maximum_aggregate_size)

        _order_increment = d.pop("order_increment", UNSET)
        order_increment: Volume | Unset
        if isinstance(_order_increment, Unset):
            order_increment = UNSET
        else:
            order_increment = Volume.from_dict(_order_increment)

        pigment_percent = d.pop("pigment_percent", UNSET)

        _reinforcing = d.pop("reinforcing", UNSET)
        reinforcing: Reinforcing | Unset
        if isinstance(_reinforcing, Unset):
            reinforcing = UNSET
        else:
            reinforcing = Reinforcing.from_dict(_reinforcing)

        _truck_capacity = d.pop("truck_capacity", UNSET)
        truck_capacity: Volume | Unset
        if isinstance(_truck_capacity, Unset):
            truck_capacity = UNSET
        else:
            truck_capacity = Volume.from_dict(_truck_capacity)

        waste_percent = d.pop("waste_percent", UNSET)

        encasing = cls(
            bag_mass=bag_mass,
            bank_ground=bank_ground,
            cement_content=cement_content,
            concrete_density=concrete_density,
            maximum_aggregate_size=maximum_aggregate_size,
            order_increment=order_increment,
            pigment_percent=pigment_percent,
            reinforcing=reinforcing,
            truck_capacity=truck_capacity,
            waste_percent=waste_percent,
        )

        return encasing
