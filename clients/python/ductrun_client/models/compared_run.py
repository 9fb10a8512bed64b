from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.compared_count import ComparedCount
    from ..models.compared_finding import ComparedFinding
    from ..models.compared_length import ComparedLength
    from ..models.compared_number import ComparedNumber
    from ..models.compared_quantity import ComparedQuantity


T = TypeVar("T", bound="ComparedRun")


@_attrs_define
class ComparedRun:
    """One run: what it says of its limits, its place, its figures beside those of the base, its findings.

    Attributes:
        findings_gained (list[ComparedFinding]): Findings that the base has not.
        findings_lost (list[ComparedFinding]): Findings that the base alone has.
        length (ComparedLength): A length of a run beside that of the base.
        name (str): Name of the run, as given.
        plan_length (ComparedLength): A length of a run beside that of the base.
        pull_count (ComparedCount): A count of a run beside that of the base.
        unjudged_pull_count (int): How many of the pulls were not judged.
        violation_count (int): How many limits it breaks.
        highest_utilization_percent (ComparedNumber | Unset): A figure of a run beside that of the base.
        item_quantity (ComparedQuantity | Unset): A quantity of a takeoff beside that of the base.
        labor_hours (ComparedNumber | Unset): A figure of a run beside that of the base.
        labor_hours_gap (str | Unset): What the labor hours leave out, if rates are given.
        not_ranked_because (str | Unset): Why it has no place: what gap its measure has.
        price (ComparedNumber | Unset): A figure of a run beside that of the base.
        price_gap (str | Unset): What the price leaves out, if rates are given.
        rank (int | Unset): Its place from 1, if ranked: those that comply first, those that do not last, least first;
            alike figures share a place.
        verdict (Verdict | Unset): What an answer, or a part of it, says of the limits: kept, broken, or not judged for
            want of something.
    """

    findings_gained: list[ComparedFinding]
    findings_lost: list[ComparedFinding]
    length: ComparedLength
    name: str
    plan_length: ComparedLength
    pull_count: ComparedCount
    unjudged_pull_count: int
    violation_count: int
    highest_utilization_percent: ComparedNumber | Unset = UNSET
    item_quantity: ComparedQuantity | Unset = UNSET
    labor_hours: ComparedNumber | Unset = UNSET
    labor_hours_gap: str | Unset = UNSET
    not_ranked_because: str | Unset = UNSET
    price: ComparedNumber | Unset = UNSET
    price_gap: str | Unset = UNSET
    rank: int | Unset = UNSET
    verdict: Verdict | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        findings_gained = []
        for findings_gained_item_data in self.findings_gained:
            findings_gained_item = findings_gained_item_data.to_dict()
            findings_gained.append(findings_gained_item)

        findings_lost = []
        for findings_lost_item_data in self.findings_lost:
            findings_lost_item = findings_lost_item_data.to_dict()
            findings_lost.append(findings_lost_item)

        length = self.length.to_dict()

        name = self.name

        plan_length = self.plan_length.to_dict()

        pull_count = self.pull_count.to_dict()

        unjudged_pull_count = self.unjudged_pull_count

        violation_count = self.violation_count

        highest_utilization_percent: dict[str, Any] | Unset = UNSET
        if not isinstance(self.highest_utilization_percent, Unset):
            highest_utilization_percent = self.highest_utilization_percent.to_dict()

        item_quantity: dict[str, Any] | Unset = UNSET
        if not isinstance(self.item_quantity, Unset):
            item_quantity = self.item_quantity.to_dict()

        labor_hours: dict[str, Any] | Unset = UNSET
        if not isinstance(self.labor_hours, Unset):
            labor_hours = self.labor_hours.to_dict()

        labor_hours_gap = self.labor_hours_gap

        not_ranked_because = self.not_ranked_because

        price: dict[str, Any] | Unset = UNSET
        if not isinstance(self.price, Unset):
            price = self.price.to_dict()

        price_gap = self.price_gap

        rank = self.rank

        verdict: str | Unset = UNSET
        if not isinstance(self.verdict, Unset):
            verdict = self.verdict.value

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "findings_gained": findings_gained,
                "findings_lost": findings_lost,
                "length": length,
                "name": name,
                "plan_length": plan_length,
                "pull_count": pull_count,
                "unjudged_pull_count": unjudged_pull_count,
                "violation_count": violation_count,
            }
        )
        if highest_utilization_percent is not UNSET:
            field_dict["highest_utilization_percent"] = highest_utilization_percent
        if item_quantity is not UNSET:
            field_dict["item_quantity"] = item_quantity
        if labor_hours is not UNSET:
            field_dict["labor_hours"] = labor_hours
        if labor_hours_gap is not UNSET:
            field_dict["labor_hours_gap"] = labor_hours_gap
        if not_ranked_because is not UNSET:
            field_dict["not_ranked_because"] = not_ranked_because
        if price is not UNSET:
            field_dict["price"] = price
        if price_gap is not UNSET:
            field_dict["price_gap"] = price_gap
        if rank is not UNSET:
            field_dict["rank"] = rank
        if verdict is not UNSET:
            field_dict["verdict"] = verdict

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.compared_count import ComparedCount  # noqa: PLC0415
        from ..models.compared_finding import ComparedFinding  # noqa: PLC0415
        from ..models.compared_length import ComparedLength  # noqa: PLC0415
        from ..models.compared_number import ComparedNumber  # noqa: PLC0415
        from ..models.compared_quantity import ComparedQuantity  # noqa: PLC0415

        d = dict(src_dict)
        findings_gained = []
        _findings_gained = d.pop("findings_gained")
        for findings_gained_item_data in _findings_gained:
            findings_gained_item = ComparedFinding.from_dict(findings_gained_item_data)

            findings_gained.append(findings_gained_item)

        findings_lost = []
        _findings_lost = d.pop("findings_lost")
        for findings_lost_item_data in _findings_lost:
            findings_lost_item = ComparedFinding.from_dict(findings_lost_item_data)

            findings_lost.append(findings_lost_item)

        length = ComparedLength.from_dict(d.pop("length"))

        name = d.pop("name")

        plan_length = ComparedLength.from_dict(d.pop("plan_length"))

        pull_count = ComparedCount.from_dict(d.pop("pull_count"))

        unjudged_pull_count = d.pop("unjudged_pull_count")

        violation_count = d.pop("violation_count")

        _highest_utilization_percent = d.pop("highest_utilization_percent", UNSET)
        highest_utilization_percent: ComparedNumber | Unset
        if isinstance(_highest_utilization_percent, Unset):
            highest_utilization_percent = UNSET
        else:
            highest_utilization_percent = ComparedNumber.from_dict(_highest_utilization_percent)

        _item_quantity = d.pop("item_quantity", UNSET)
        item_quantity: ComparedQuantity | Unset
        if isinstance(_item_quantity, Unset):
            item_quantity = UNSET
        else:
            item_quantity = ComparedQuantity.from_dict(_item_quantity)

        _labor_hours = d.pop("labor_hours", UNSET)
        labor_hours: ComparedNumber | Unset
        if isinstance(_labor_hours, Unset):
            labor_hours = UNSET
        else:
            labor_hours = ComparedNumber.from_dict(_labor_hours)

        labor_hours_gap = d.pop("labor_hours_gap", UNSET)

        not_ranked_because = d.pop("not_ranked_because", UNSET)

        _price = d.pop("price", UNSET)
        price: ComparedNumber | Unset
        if isinstance(_price, Unset):
            price = UNSET
        else:
            price = ComparedNumber.from_dict(_price)

        price_gap = d.pop("price_gap", UNSET)

        rank = d.pop("rank", UNSET)

        _verdict = d.pop("verdict", UNSET)
        verdict: Verdict | Unset
        if isinstance(_verdict, Unset):
            verdict = UNSET
        else:
            verdict = Verdict(_verdict)

        compared_run = cls(
            findings_gained=findings_gained,
            findings_lost=findings_lost,
            length=length,
            name=name,
            plan_length=plan_length,
            pull_count=pull_count,
            unjudged_pull_count=unjudged_pull_count,
            violation_count=violation_count,
            highest_utilization_percent=highest_utilization_percent,
            item_quantity=item_quantity,
            labor_hours=labor_hours,
            labor_hours_gap=labor_hours_gap,
            not_ranked_because=not_ranked_because,
            price=price,
            price_gap=price_gap,
            rank=rank,
            verdict=verdict,
        )

        compared_run.additional_properties = d
        return compared_run

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
