from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

if TYPE_CHECKING:
    from ..models.conductor_count_item_answer import ConductorCountItemAnswer
    from ..models.conduit_size_item_answer import ConduitSizeItemAnswer
    from ..models.cover_item_answer import CoverItemAnswer
    from ..models.duct_run_comparison_item_answer import DuctRunComparisonItemAnswer
    from ..models.duct_run_item_answer import DuctRunItemAnswer
    from ..models.encasement_item_answer import EncasementItemAnswer
    from ..models.expansion_item_answer import ExpansionItemAnswer
    from ..models.fill_item_answer import FillItemAnswer
    from ..models.flotation_item_answer import FlotationItemAnswer
    from ..models.item_problem import ItemProblem
    from ..models.joints_item_answer import JointsItemAnswer
    from ..models.permitted_use_item_answer import PermittedUseItemAnswer
    from ..models.pull_plan_item_answer import PullPlanItemAnswer
    from ..models.pull_tension_item_answer import PullTensionItemAnswer
    from ..models.spacers_item_answer import SpacersItemAnswer
    from ..models.supports_item_answer import SupportsItemAnswer
    from ..models.trench_item_answer import TrenchItemAnswer


T = TypeVar("T", bound="BatchAnswer")


@_attrs_define
class BatchAnswer:
    """What became of each question, in order.

    Attributes:
        failed_count (int): How many of them ended in a problem.
        item_count (int): How many questions the batch had.
        items (list[ConductorCountItemAnswer | ConduitSizeItemAnswer | CoverItemAnswer | DuctRunComparisonItemAnswer |
            DuctRunItemAnswer | EncasementItemAnswer | ExpansionItemAnswer | FillItemAnswer | FlotationItemAnswer |
            ItemProblem | JointsItemAnswer | PermittedUseItemAnswer | PullPlanItemAnswer | PullTensionItemAnswer |
            SpacersItemAnswer | SupportsItemAnswer | TrenchItemAnswer]):
    """

    failed_count: int
    item_count: int
    items: list[
        ConductorCountItemAnswer
        | ConduitSizeItemAnswer
        | CoverItemAnswer
        | DuctRunComparisonItemAnswer
        | DuctRunItemAnswer
        | EncasementItemAnswer
        | ExpansionItemAnswer
        | FillItemAnswer
        | FlotationItemAnswer
        | ItemProblem
        | JointsItemAnswer
        | PermittedUseItemAnswer
        | PullPlanItemAnswer
        | PullTensionItemAnswer
        | SpacersItemAnswer
        | SupportsItemAnswer
        | TrenchItemAnswer
    ]
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        from ..models.conductor_count_item_answer import ConductorCountItemAnswer  # noqa: PLC0415
        from ..models.conduit_size_item_answer import ConduitSizeItemAnswer  # noqa: PLC0415
        from ..models.cover_item_answer import CoverItemAnswer  # noqa: PLC0415
        from ..models.duct_run_comparison_item_answer import DuctRunComparisonItemAnswer  # noqa: PLC0415
        from ..models.duct_run_item_answer import DuctRunItemAnswer  # noqa: PLC0415
        from ..models.encasement_item_answer import EncasementItemAnswer  # noqa: PLC0415
        from ..models.expansion_item_answer import ExpansionItemAnswer  # noqa: PLC0415
        from ..models.fill_item_answer import FillItemAnswer  # noqa: PLC0415
        from ..models.flotation_item_answer import FlotationItemAnswer  # noqa: PLC0415
        from ..models.joints_item_answer import JointsItemAnswer  # noqa: PLC0415
        from ..models.permitted_use_item_answer import PermittedUseItemAnswer  # noqa: PLC0415
        from ..models.pull_plan_item_answer import PullPlanItemAnswer  # noqa: PLC0415
        from ..models.pull_tension_item_answer import PullTensionItemAnswer  # noqa: PLC0415
        from ..models.spacers_item_answer import SpacersItemAnswer  # noqa: PLC0415
        from ..models.supports_item_answer import SupportsItemAnswer  # noqa: PLC0415
        from ..models.trench_item_answer import TrenchItemAnswer  # noqa: PLC0415

        failed_count = self.failed_count

        item_count = self.item_count

        items = []
        for items_item_data in self.items:
            items_item: dict[str, Any]
            if isinstance(items_item_data, DuctRunItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, DuctRunComparisonItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, PermittedUseItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, ConduitSizeItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, FillItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, ConductorCountItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, CoverItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, TrenchItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, SpacersItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, EncasementItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, FlotationItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, JointsItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, ExpansionItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, SupportsItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, PullPlanItemAnswer):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, PullTensionItemAnswer):
                items_item = items_item_data.to_dict()
            else:
                items_item = items_item_data.to_dict()

            items.append(items_item)

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "failed_count": failed_count,
                "item_count": item_count,
                "items": items,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.conductor_count_item_answer import ConductorCountItemAnswer  # noqa: PLC0415
        from ..models.conduit_size_item_answer import ConduitSizeItemAnswer  # noqa: PLC0415
        from ..models.cover_item_answer import CoverItemAnswer  # noqa: PLC0415
        from ..models.duct_run_comparison_item_answer import DuctRunComparisonItemAnswer  # noqa: PLC0415
        from ..models.duct_run_item_answer import DuctRunItemAnswer  # noqa: PLC0415
        from ..models.encasement_item_answer import EncasementItemAnswer  # noqa: PLC0415
        from ..models.expansion_item_answer import ExpansionItemAnswer  # noqa: PLC0415
        from ..models.fill_item_answer import FillItemAnswer  # noqa: PLC0415
        from ..models.flotation_item_answer import FlotationItemAnswer  # noqa: PLC0415
        from ..models.item_problem import ItemProblem  # noqa: PLC0415
        from ..models.joints_item_answer import JointsItemAnswer  # noqa: PLC0415
        from ..models.permitted_use_item_answer import PermittedUseItemAnswer  # noqa: PLC0415
        from ..models.pull_plan_item_answer import PullPlanItemAnswer  # noqa: PLC0415
        from ..models.pull_tension_item_answer import PullTensionItemAnswer  # noqa: PLC0415
        from ..models.spacers_item_answer import SpacersItemAnswer  # noqa: PLC0415
        from ..models.supports_item_answer import SupportsItemAnswer  # noqa: PLC0415
        from ..models.trench_item_answer import TrenchItemAnswer  # noqa: PLC0415

        d = dict(src_dict)
        failed_count = d.pop("failed_count")

        item_count = d.pop("item_count")

        items = []
        _items = d.pop("items")
        for items_item_data in _items:

            def _parse_items_item(
                data: object,
            ) -> (
                ConductorCountItemAnswer
                | ConduitSizeItemAnswer
                | CoverItemAnswer
                | DuctRunComparisonItemAnswer
                | DuctRunItemAnswer
                | EncasementItemAnswer
                | ExpansionItemAnswer
                | FillItemAnswer
                | FlotationItemAnswer
                | ItemProblem
                | JointsItemAnswer
                | PermittedUseItemAnswer
                | PullPlanItemAnswer
                | PullTensionItemAnswer
                | SpacersItemAnswer
                | SupportsItemAnswer
                | TrenchItemAnswer
            ):
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_0 = DuctRunItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_0
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_1 = DuctRunComparisonItemAnswer.from_dict(
                        data
                    )

                    return componentsschemas_item_answer_type_1
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_2 = PermittedUseItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_2
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_3 = ConduitSizeItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_3
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_4 = FillItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_4
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_5 = ConductorCountItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_5
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_6 = CoverItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_6
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_7 = TrenchItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_7
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_8 = SpacersItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_8
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_9 = EncasementItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_9
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_10 = FlotationItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_10
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_11 = JointsItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_11
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_12 = ExpansionItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_12
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_13 = SupportsItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_13
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_14 = PullPlanItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_14
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_item_answer_type_15 = PullTensionItemAnswer.from_dict(data)

                    return componentsschemas_item_answer_type_15
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_batch_item_answer_type_1 = ItemProblem.from_dict(data)

                return componentsschemas_batch_item_answer_type_1

            items_item = _parse_items_item(items_item_data)

            items.append(items_item)

        batch_answer = cls(
            failed_count=failed_count,
            item_count=item_count,
            items=items,
        )

        batch_answer.additional_properties = d
        return batch_answer

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
