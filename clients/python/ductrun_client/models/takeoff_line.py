from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.takeoff_group import TakeoffGroup
from ..models.takeoff_item import TakeoffItem
from ..models.volume_measure import VolumeMeasure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.angle import Angle
    from ..models.length import Length
    from ..models.takeoff_quantity import TakeoffQuantity
    from ..models.takeoff_share import TakeoffShare


T = TypeVar("T", bound="TakeoffLine")


@_attrs_define
class TakeoffLine:
    """One line: an item of one conduit type and size with all that the run takes of it.

    Attributes:
        basis (str): Its arithmetic in one line.
        description (str): The item in words.
        exact_quantity (TakeoffQuantity): A quantity with the unit in which it is sold, paid or done.
        group (TakeoffGroup): Groups of a takeoff, in the order of building.
        item (TakeoffItem): What a line of a takeoff is of, in the order of its group.
        line (int): Number of the line, from 1.
        pointer (str): JSON pointer of the figure in this answer that it comes from.
        shares (list[TakeoffShare]): The exact quantity by stretch, in their order.
        angle (Angle | Unset): An angle with its unit.
        conduit_type (str | Unset): Type of the conduit.
        labor_hours (float | Unset): Of the exact quantity, by that rate.
        measure (VolumeMeasure | Unset): How a volume of earth is measured: in the bank, loose, or compacted; never
            mixed in one line.
        order_quantity (TakeoffQuantity | Unset): A quantity with the unit in which it is sold, paid or done.
        package (str | Unset): What it comes in, such as a stick of 10 ft.
        package_count (int | Unset): How many of them.
        price (float | Unset): By that rate, to the cent: of the order, of work without one of the exact quantity.
        radius (Length | Unset): A length with its unit.
        size (str | Unset): Trade size, conductor size or bar size.
        unit_labor_hours (float | Unset): The caller's rate, for one of the unit of the line.
        unit_price (float | Unset): The caller's rate, for one of the unit of the line.
        waste_percent (float | Unset): Waste that is in the order.
    """

    basis: str
    description: str
    exact_quantity: TakeoffQuantity
    group: TakeoffGroup
    item: TakeoffItem
    line: int
    pointer: str
    shares: list[TakeoffShare]
    angle: Angle | Unset = UNSET
    conduit_type: str | Unset = UNSET
    labor_hours: float | Unset = UNSET
    measure: VolumeMeasure | Unset = UNSET
    order_quantity: TakeoffQuantity | Unset = UNSET
    package: str | Unset = UNSET
    package_count: int | Unset = UNSET
    price: float | Unset = UNSET
    radius: Length | Unset = UNSET
    size: str | Unset = UNSET
    unit_labor_hours: float | Unset = UNSET
    unit_price: float | Unset = UNSET
    waste_percent: float | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        basis = self.basis

        description = self.description

        exact_quantity = self.exact_quantity.to_dict()

        group = self.group.value

        item = self.item.value

        line = self.line

        pointer = self.pointer

        shares = []
        for shares_item_data in self.shares:
            shares_item = shares_item_data.to_dict()
            shares.append(shares_item)

        angle: dict[str, Any] | Unset = UNSET
        if not isinstance(self.angle, Unset):
            angle = self.angle.to_dict()

        conduit_type = self.conduit_type

        labor_hours = self.labor_hours

        measure: str | Unset = UNSET
        if not isinstance(self.measure, Unset):
            measure = self.measure.value

        order_quantity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.order_quantity, Unset):
            order_quantity = self.order_quantity.to_dict()

        package = self.package

        package_count = self.package_count

        price = self.price

        radius: dict[str, Any] | Unset = UNSET
        if not isinstance(self.radius, Unset):
            radius = self.radius.to_dict()

        size = self.size

        unit_labor_hours = self.unit_labor_hours

        unit_price = self.unit_price

        waste_percent = self.waste_percent

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "basis": basis,
                "description": description,
                "exact_quantity": exact_quantity,
                "group": group,
                "item": item,
                "line": line,
                "pointer": pointer,
                "shares": shares,
            }
        )
        if angle is not UNSET:
            field_dict["angle"] = angle
        if conduit_type is not UNSET:
            field_dict["conduit_type"] = conduit_type
        if labor_hours is not UNSET:
            field_dict["labor_hours"] = labor_hours
        if measure is not UNSET:
            field_dict["measure"] = measure
        if order_quantity is not UNSET:
            field_dict["order_quantity"] = order_quantity
        if package is not UNSET:
            field_dict["package"] = package
        if package_count is not UNSET:
            field_dict["package_count"] = package_count
        if price is not UNSET:
            field_dict["price"] = price
        if radius is not UNSET:
            field_dict["radius"] = radius
        if size is not UNSET:
            field_dict["size"] = size
        if unit_labor_hours is not UNSET:
            field_dict["unit_labor_hours"] = unit_labor_hours
        if unit_price is not UNSET:
            field_dict["unit_price"] = unit_price
        if waste_percent is not UNSET:
            field_dict["waste_percent"] = waste_percent

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.angle import Angle  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.takeoff_quantity import TakeoffQuantity  # noqa: PLC0415
        from ..models.takeoff_share import TakeoffShare  # noqa: PLC0415

        d = dict(src_dict)
        basis = d.pop("basis")

        description = d.pop("description")

        exact_quantity = TakeoffQuantity.from_dict(d.pop("exact_quantity"))

        group = TakeoffGroup(d.pop("group"))

        item = TakeoffItem(d.pop("item"))

        line = d.pop("line")

        pointer = d.pop("pointer")

        shares = []
        _shares = d.pop("shares")
        for shares_item_data in _shares:
            shares_item = TakeoffShare.from_dict(shares_item_data)

            shares.append(shares_item)

        _angle = d.pop("angle", UNSET)
        angle: Angle | Unset
        if isinstance(_angle, Unset):
            angle = UNSET
        else:
            angle = Angle.from_dict(_angle)

        conduit_type = d.pop("conduit_type", UNSET)

        labor_hours = d.pop("labor_hours", UNSET)

        _measure = d.pop("measure", UNSET)
        measure: VolumeMeasure | Unset
        if isinstance(_measure, Unset):
            measure = UNSET
        else:
            measure = VolumeMeasure(_measure)

        _order_quantity = d.pop("order_quantity", UNSET)
        order_quantity: TakeoffQuantity | Unset
        if isinstance(_order_quantity, Unset):
            order_quantity = UNSET
        else:
            order_quantity = TakeoffQuantity.from_dict(_order_quantity)

        package = d.pop("package", UNSET)

        package_count = d.pop("package_count", UNSET)

        price = d.pop("price", UNSET)

        _radius = d.pop("radius", UNSET)
        radius: Length | Unset
        if isinstance(_radius, Unset):
            radius = UNSET
        else:
            radius = Length.from_dict(_radius)

        size = d.pop("size", UNSET)

        unit_labor_hours = d.pop("unit_labor_hours", UNSET)

        unit_price = d.pop("unit_price", UNSET)

        waste_percent = d.pop("waste_percent", UNSET)

        takeoff_line = cls(
            basis=basis,
            description=description,
            exact_quantity=exact_quantity,
            group=group,
            item=item,
            line=line,
            pointer=pointer,
            shares=shares,
            angle=angle,
            conduit_type=conduit_type,
            labor_hours=labor_hours,
            measure=measure,
            order_quantity=order_quantity,
            package=package,
            package_count=package_count,
            price=price,
            radius=radius,
            size=size,
            unit_labor_hours=unit_labor_hours,
            unit_price=unit_price,
            waste_percent=waste_percent,
        )

        takeoff_line.additional_properties = d
        return takeoff_line

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
