from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

if TYPE_CHECKING:
    from ..models.conductor_count_item import ConductorCountItem
    from ..models.conduit_size_item import ConduitSizeItem
    from ..models.cover_item import CoverItem
    from ..models.duct_run_comparison_item import DuctRunComparisonItem
    from ..models.duct_run_item import DuctRunItem
    from ..models.encasement_item import EncasementItem
    from ..models.expansion_item import ExpansionItem
    from ..models.fill_item import FillItem
    from ..models.flotation_item import FlotationItem
    from ..models.joints_item import JointsItem
    from ..models.permitted_use_item import PermittedUseItem
    from ..models.pull_plan_item import PullPlanItem
    from ..models.pull_tension_item import PullTensionItem
    from ..models.spacers_item import SpacersItem
    from ..models.supports_item import SupportsItem
    from ..models.trench_item import TrenchItem


T = TypeVar("T", bound="BatchRequest")


@_attrs_define
class BatchRequest:
    """Questions to answer in one go.

    Attributes:
        items (list[ConductorCountItem | ConduitSizeItem | CoverItem | DuctRunComparisonItem | DuctRunItem |
            EncasementItem | ExpansionItem | FillItem | FlotationItem | JointsItem | PermittedUseItem | PullPlanItem |
            PullTensionItem | SpacersItem | SupportsItem | TrenchItem]): The questions, of any calculations in any order.
    """

    items: list[
        ConductorCountItem
        | ConduitSizeItem
        | CoverItem
        | DuctRunComparisonItem
        | DuctRunItem
        | EncasementItem
        | ExpansionItem
        | FillItem
        | FlotationItem
        | JointsItem
        | PermittedUseItem
        | PullPlanItem
        | PullTensionItem
        | SpacersItem
        | SupportsItem
        | TrenchItem
    ]

    def to_dict(self) -> dict[str, Any]:
        from ..models.conductor_count_item import ConductorCountItem  # noqa: PLC0415
        from ..models.conduit_size_item import ConduitSizeItem  # noqa: PLC0415
        from ..models.cover_item import CoverItem  # noqa: PLC0415
        from ..models.duct_run_comparison_item import DuctRunComparisonItem  # noqa: PLC0415
        from ..models.duct_run_item import DuctRunItem  # noqa: PLC0415
        from ..models.encasement_item import EncasementItem  # noqa: PLC0415
        from ..models.expansion_item import ExpansionItem  # noqa: PLC0415
        from ..models.fill_item import FillItem  # noqa: PLC0415
        from ..models.flotation_item import FlotationItem  # noqa: PLC0415
        from ..models.joints_item import JointsItem  # noqa: PLC0415
        from ..models.permitted_use_item import PermittedUseItem  # noqa: PLC0415
        from ..models.pull_plan_item import PullPlanItem  # noqa: PLC0415
        from ..models.spacers_item import SpacersItem  # noqa: PLC0415
        from ..models.supports_item import SupportsItem  # noqa: PLC0415
        from ..models.trench_item import TrenchItem  # noqa: PLC0415

        items = []
        for items_item_data in self.items:
            items_item: dict[str, Any]
            if isinstance(items_item_data, DuctRunItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, DuctRunComparisonItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, PermittedUseItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, ConduitSizeItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, FillItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, ConductorCountItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, CoverItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, TrenchItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, SpacersItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, EncasementItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, FlotationItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, JointsItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, ExpansionItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, SupportsItem):
                items_item = items_item_data.to_dict()
            elif isinstance(items_item_data, PullPlanItem):
                items_item = items_item_data.to_dict()
            else:
                items_item = items_item_data.to_dict()

            items.append(items_item)

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "items": items,
            }
        )

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.conductor_count_item import ConductorCountItem  # noqa: PLC0415
        from ..models.conduit_size_item import ConduitSizeItem  # noqa: PLC0415
        from ..models.cover_item import CoverItem  # noqa: PLC0415
        from ..models.duct_run_comparison_item import DuctRunComparisonItem  # noqa: PLC0415
        from ..models.duct_run_item import DuctRunItem  # noqa: PLC0415
        from ..models.encasement_item import EncasementItem  # noqa: PLC0415
        from ..models.expansion_item import ExpansionItem  # noqa: PLC0415
        from ..models.fill_item import FillItem  # noqa: PLC0415
        from ..models.flotation_item import FlotationItem  # noqa: PLC0415
        from ..models.joints_item import JointsItem  # noqa: PLC0415
        from ..models.permitted_use_item import PermittedUseItem  # noqa: PLC0415
        from ..models.pull_plan_item import PullPlanItem  # noqa: PLC0415
        from ..models.pull_tension_item import PullTensionItem  # noqa: PLC0415
        from ..models.spacers_item import SpacersItem  # noqa: PLC0415
        from ..models.supports_item import SupportsItem  # noqa: PLC0415
        from ..models.trench_item import TrenchItem  # noqa: PLC0415

        d = dict(src_dict)
        items = []
        _items = d.pop("items")
        for items_item_data in _items:

            def _parse_items_item(
                data: object,
            ) -> (
                ConductorCountItem
                | ConduitSizeItem
                | CoverItem
                | DuctRunComparisonItem
                | DuctRunItem
                | EncasementItem
                | ExpansionItem
                | FillItem
                | FlotationItem
                | JointsItem
                | PermittedUseItem
                | PullPlanItem
                | PullTensionItem
                | SpacersItem
                | SupportsItem
                | TrenchItem
            ):
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_0 = DuctRunItem.from_dict(data)

                    return componentsschemas_batch_item_type_0
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_1 = DuctRunComparisonItem.from_dict(data)

                    return componentsschemas_batch_item_type_1
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_2 = PermittedUseItem.from_dict(data)

                    return componentsschemas_batch_item_type_2
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_3 = ConduitSizeItem.from_dict(data)

                    return componentsschemas_batch_item_type_3
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_4 = FillItem.from_dict(data)

                    return componentsschemas_batch_item_type_4
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_5 = ConductorCountItem.from_dict(data)

                    return componentsschemas_batch_item_type_5
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_6 = CoverItem.from_dict(data)

                    return componentsschemas_batch_item_type_6
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_7 = TrenchItem.from_dict(data)

                    return componentsschemas_batch_item_type_7
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_8 = SpacersItem.from_dict(data)

                    return componentsschemas_batch_item_type_8
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_9 = EncasementItem.from_dict(data)

                    return componentsschemas_batch_item_type_9
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_10 = FlotationItem.from_dict(data)

                    return componentsschemas_batch_item_type_10
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_11 = JointsItem.from_dict(data)

                    return componentsschemas_batch_item_type_11
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_12 = ExpansionItem.from_dict(data)

                    return componentsschemas_batch_item_type_12
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_13 = SupportsItem.from_dict(data)

                    return componentsschemas_batch_item_type_13
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                try:
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_batch_item_type_14 = PullPlanItem.from_dict(data)

                    return componentsschemas_batch_item_type_14
                except (TypeError, ValueError, AttributeError, KeyError):
                    pass
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_batch_item_type_15 = PullTensionItem.from_dict(data)

                return componentsschemas_batch_item_type_15

            items_item = _parse_items_item(items_item_data)

            items.append(items_item)

        batch_request = cls(
            items=items,
        )

        return batch_request
