from __future__ import annotations

from collections.abc import Mapping
from typing import (
    TYPE_CHECKING,
    Any,
    Literal,
    TypeVar,
    cast,
)

from attrs import define as _attrs_define

from ..models.conduit_use import ConduitUse
from ..models.support_kind import SupportKind
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.expansion_coefficient import ExpansionCoefficient
    from ..models.length import Length
    from ..models.structure_joint import StructureJoint


T = TypeVar("T", bound="AboveGroundSetting")


@_attrs_define
class AboveGroundSetting:
    """Above ground, on supports.

    Attributes:
        kind (Literal['above_ground']): Fixed text that says: above ground.
        fitting_travel (Length | Unset): A length with its unit.
        structure_coefficient (ExpansionCoefficient | Unset): A coefficient of linear thermal expansion with its unit.
        structure_joints (list[StructureJoint] | Unset): Joints of a structure that moves, such as a bridge.
        support_spacing (Length | Unset): A length with its unit.
        supports (SupportKind | Unset): What holds conduit above ground.
        uses (list[ConduitUse] | Unset): What it meets there beside being above ground.
    """

    kind: Literal["above_ground"]
    fitting_travel: Length | Unset = UNSET
    structure_coefficient: ExpansionCoefficient | Unset = UNSET
    structure_joints: list[StructureJoint] | Unset = UNSET
    support_spacing: Length | Unset = UNSET
    supports: SupportKind | Unset = UNSET
    uses: list[ConduitUse] | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        kind = self.kind

        fitting_travel: dict[str, Any] | Unset = UNSET
        if not isinstance(self.fitting_travel, Unset):
            fitting_travel = self.fitting_travel.to_dict()

        structure_coefficient: dict[str, Any] | Unset = UNSET
        if not isinstance(self.structure_coefficient, Unset):
            structure_coefficient = self.structure_coefficient.to_dict()

        structure_joints: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.structure_joints, Unset):
            structure_joints = []
            for structure_joints_item_data in self.structure_joints:
                structure_joints_item = structure_joints_item_data.to_dict()
                structure_joints.append(structure_joints_item)

        support_spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.support_spacing, Unset):
            support_spacing = self.support_spacing.to_dict()

        supports: str | Unset = UNSET
        if not isinstance(self.supports, Unset):
            supports = self.supports.value

        uses: list[str] | Unset = UNSET
        if not isinstance(self.uses, Unset):
            uses = []
            for uses_item_data in self.uses:
                uses_item = uses_item_data.value
                uses.append(uses_item)

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "kind": kind,
            }
        )
        if fitting_travel is not UNSET:
            field_dict["fitting_travel"] = fitting_travel
        if structure_coefficient is not UNSET:
            field_dict["structure_coefficient"] = structure_coefficient
        if structure_joints is not UNSET:
            field_dict["structure_joints"] = structure_joints
        if support_spacing is not UNSET:
            field_dict["support_spacing"] = support_spacing
        if supports is not UNSET:
            field_dict["supports"] = supports
        if uses is not UNSET:
            field_dict["uses"] = uses

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.expansion_coefficient import ExpansionCoefficient  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.structure_joint import StructureJoint  # noqa: PLC0415

        d = dict(src_dict)
        kind = cast(Literal["above_ground"], d.pop("kind"))
        if kind != "above_ground":
            raise ValueError(f"kind must match const 'above_ground', got '{kind}'")

        _fitting_travel = d.pop("fitting_travel", UNSET)
        fitting_travel: Length | Unset
        if isinstance(_fitting_travel, Unset):
            fitting_travel = UNSET
        else:
            fitting_travel = Length.from_dict(_fitting_travel)

        _structure_coefficient = d.pop("structure_coefficient", UNSET)
        structure_coefficient: ExpansionCoefficient | Unset
        if isinstance(_structure_coefficient, Unset):
            structure_coefficient = UNSET
        else:
            structure_coefficient = ExpansionCoefficient.from_dict(_structure_coefficient)

        _structure_joints = d.pop("structure_joints", UNSET)
        structure_joints: list[StructureJoint] | Unset = UNSET
        if _structure_joints is not UNSET:
            structure_joints = []
            for structure_joints_item_data in _structure_joints:
                structure_joints_item = StructureJoint.from_dict(structure_joints_item_data)

                structure_joints.append(structure_joints_item)

        _support_spacing = d.pop("support_spacing", UNSET)
        support_spacing: Length | Unset
        if isinstance(_support_spacing, Unset):
            support_spacing = UNSET
        else:
            support_spacing = Length.from_dict(_support_spacing)

        _supports = d.pop("supports", UNSET)
        supports: SupportKind | Unset
        if isinstance(_supports, Unset):
            supports = UNSET
        else:
            supports = SupportKind(_supports)

        _uses = d.pop("uses", UNSET)
        uses: list[ConduitUse] | Unset = UNSET
        if _uses is not UNSET:
            uses = []
            for uses_item_data in _uses:
                uses_item = ConduitUse(uses_item_data)

                uses.append(uses_item)

        above_ground_setting = cls(
            kind=kind,
            fitting_travel=fitting_travel,
            structure_coefficient=structure_coefficient,
            structure_joints=structure_joints,
            support_spacing=support_spacing,
            supports=supports,
            uses=uses,
        )

        return above_ground_setting
