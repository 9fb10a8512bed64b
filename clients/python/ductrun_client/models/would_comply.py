from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.compaction import Compaction
from ..models.conduit_type import ConduitType
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.length import Length
    from ..models.pressure import Pressure


T = TypeVar("T", bound="WouldComply")


@_attrs_define
class WouldComply:
    """What would keep every limit of this calculation with all else as it is; absent where nothing would.

    Attributes:
        greatest_cover (Length | Unset): A length with its unit.
        least_class (ConduitType | Unset): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no
            dimensions on file.
        least_compaction (Compaction | Unset): How an embedment is compacted: under 85, 85 to 95, over 95 percent of the
            standard Proctor density.
        least_cover (Length | Unset): A length with its unit.
        least_pipe_stiffness (Pressure | Unset): A pressure or stress with its unit.
    """

    greatest_cover: Length | Unset = UNSET
    least_class: ConduitType | Unset = UNSET
    least_compaction: Compaction | Unset = UNSET
    least_cover: Length | Unset = UNSET
    least_pipe_stiffness: Pressure | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        greatest_cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.greatest_cover, Unset):
            greatest_cover = self.greatest_cover.to_dict()

        least_class: str | Unset = UNSET
        if not isinstance(self.least_class, Unset):
            least_class = self.least_class.value

        least_compaction: str | Unset = UNSET
        if not isinstance(self.least_compaction, Unset):
            least_compaction = self.least_compaction.value

        least_cover: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_cover, Unset):
            least_cover = self.least_cover.to_dict()

        least_pipe_stiffness: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_pipe_stiffness, Unset):
            least_pipe_stiffness = self.least_pipe_stiffness.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update({})
        if greatest_cover is not UNSET:
            field_dict["greatest_cover"] = greatest_cover
        if least_class is not UNSET:
            field_dict["least_class"] = least_class
        if least_compaction is not UNSET:
            field_dict["least_compaction"] = least_compaction
        if least_cover is not UNSET:
            field_dict["least_cover"] = least_cover
        if least_pipe_stiffness is not UNSET:
            field_dict["least_pipe_stiffness"] = least_pipe_stiffness

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.length import Length  # noqa: PLC0415
        from ..models.pressure import Pressure  # noqa: PLC0415

        d = dict(src_dict)
        _greatest_cover = d.pop("greatest_cover", UNSET)
        greatest_cover: Length | Unset
        if isinstance(_greatest_cover, Unset):
            greatest_cover = UNSET
        else:
            greatest_cover = Length.from_dict(_greatest_cover)

        _least_class = d.pop("least_class", UNSET)
        least_class: ConduitType | Unset
        if isinstance(_least_class, Unset):
            least_class = UNSET
        else:
            least_class = ConduitType(_least_class)

        _least_compaction = d.pop("least_compaction", UNSET)
        least_compaction: Compaction | Unset
        if isinstance(_least_compaction, Unset):
            least_compaction = UNSET
        else:
            least_compaction = Compaction(_least_compaction)

        _least_cover = d.pop("least_cover", UNSET)
        least_cover: Length | Unset
        if isinstance(_least_cover, Unset):
            least_cover = UNSET
        else:
            least_cover = Length.from_dict(_least_cover)

        _least_pipe_stiffness = d.pop("least_pipe_stiffness", UNSET)
        least_pipe_stiffness: Pressure | Unset
        if isinstance(_least_pipe_stiffness, Unset):
            least_pipe_stiffness = UNSET
        else:
            least_pipe_stiffness = Pressure.from_dict(_least_pipe_stiffness)

        would_comply = cls(
            greatest_cover=greatest_cover,
            least_class=least_class,
            least_compaction=least_compaction,
            least_cover=least_cover,
            least_pipe_stiffness=least_pipe_stiffness,
        )

        would_comply.additional_properties = d
        return would_comply

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
