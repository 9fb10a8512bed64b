from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.structure import Structure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.box_candidate import BoxCandidate
    from ..models.least_dimension import LeastDimension
    from ..models.length import Length
    from ..models.pull_through import PullThrough
    from ..models.racked_cable import RackedCable
    from ..models.small_conductor_volume import SmallConductorVolume


T = TypeVar("T", bound="PullBoxResult")


@_attrs_define
class PullBoxResult:
    """What a box must measure for what enters it; a dimension that no rule sets is absent.

    Attributes:
        candidates (list[BoxCandidate]): The boxes that can be had, as listed.
        pulls (list[PullThrough]): Every circuit between two of its entries.
        structure (Structure): What conductors are pulled through.
        least_access_opening (Length | Unset): A length with its unit.
        least_depth (LeastDimension | Unset): The least of a dimension, inside, and what decided it.
        least_length (LeastDimension | Unset): The least of a dimension, inside, and what decided it.
        least_width (LeastDimension | Unset): The least of a dimension, inside, and what decided it.
        racking (RackedCable | Unset): Cable on the racks of a manhole.
        small_conductors (SmallConductorVolume | Unset): Conductors smaller than 4 AWG.
        smallest_box (BoxCandidate | Unset): A box that can be had.
    """

    candidates: list[BoxCandidate]
    pulls: list[PullThrough]
    structure: Structure
    least_access_opening: Length | Unset = UNSET
    least_depth: LeastDimension | Unset = UNSET
    least_length: LeastDimension | Unset = UNSET
    least_width: LeastDimension | Unset = UNSET
    racking: RackedCable | Unset = UNSET
    small_conductors: SmallConductorVolume | Unset = UNSET
    smallest_box: BoxCandidate | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        candidates = []
        for candidates_item_data in self.candidates:
            candidates_item = candidates_item_data.to_dict()
            candidates.append(candidates_item)

        pulls = []
        for pulls_item_data in self.pulls:
            pulls_item = pulls_item_data.to_dict()
            pulls.append(pulls_item)

        structure = self.structure.value

        least_access_opening: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_access_opening, Unset):
            least_access_opening = self.least_access_opening.to_dict()

        least_depth: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_depth, Unset):
            least_depth = self.least_depth.to_dict()

        least_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_length, Unset):
            least_length = self.least_length.to_dict()

        least_width: dict[str, Any] | Unset = UNSET
        if not isinstance(self.least_width, Unset):
            least_width = self.least_width.to_dict()

        racking: dict[str, Any] | Unset = UNSET
        if not isinstance(self.racking, Unset):
            racking = self.racking.to_dict()

        small_conductors: dict[str, Any] | Unset = UNSET
        if not isinstance(self.small_conductors, Unset):
            small_conductors = self.small_conductors.to_dict()

        smallest_box: dict[str, Any] | Unset = UNSET
        if not isinstance(self.smallest_box, Unset):
            smallest_box = self.smallest_box.to_dict()

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "candidates": candidates,
                "pulls": pulls,
                "structure": structure,
            }
        )
        if least_access_opening is not UNSET:
            field_dict["least_access_opening"] = least_access_opening
        if least_depth is not UNSET:
            field_dict["least_depth"] = least_depth
        if least_length is not UNSET:
            field_dict["least_length"] = least_length
        if least_width is not UNSET:
            field_dict["least_width"] = least_width
        if racking is not UNSET:
            field_dict["racking"] = racking
        if small_conductors is not UNSET:
            field_dict["small_conductors"] = small_conductors
        if smallest_box is not UNSET:
            field_dict["smallest_box"] = smallest_box

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.box_candidate import BoxCandidate  # noqa: PLC0415
        from ..models.least_dimension import LeastDimension  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.pull_through import PullThrough  # noqa: PLC0415
        from ..models.racked_cable import RackedCable  # noqa: PLC0415
        from ..models.small_conductor_volume import SmallConductorVolume  # noqa: PLC0415

        d = dict(src_dict)
        candidates = []
        _candidates = d.pop("candidates")
        for candidates_item_data in _candidates:
            candidates_item = BoxCandidate.from_dict(candidates_item_data)

            candidates.append(candidates_item)

        pulls = []
        _pulls = d.pop("pulls")
        for pulls_item_data in _pulls:
            pulls_item = PullThrough.from_dict(pulls_item_data)

            pulls.append(pulls_item)

        structure = Structure(d.pop("structure"))

        _least_access_opening = d.pop("least_access_opening", UNSET)
        least_access_opening: Length | Unset
        if isinstance(_least_access_opening, Unset):
            least_access_opening = UNSET
        else:
            least_access_opening = Length.from_dict(_least_access_opening)

        _least_depth = d.pop("least_depth", UNSET)
        least_depth: LeastDimension | Unset
        if isinstance(_least_depth, Unset):
            least_depth = UNSET
        else:
            least_depth = LeastDimension.from_dict(_least_depth)

        _least_length = d.pop("least_length", UNSET)
        least_length: LeastDimension | Unset
        if isinstance(_least_length, Unset):
            least_length = UNSET
        else:
            least_length = LeastDimension.from_dict(_least_length)

        _least_width = d.pop("least_width", UNSET)
        least_width: LeastDimension | Unset
        if isinstance(_least_width, Unset):
            least_width = UNSET
        else:
            least_width = LeastDimension.from_dict(_least_width)

        _racking = d.pop("racking", UNSET)
        racking: RackedCable | Unset
        if isinstance(_racking, Unset):
            racking = UNSET
        else:
            racking = RackedCable.from_dict(_racking)

        _small_conductors = d.pop("small_conductors", UNSET)
        small_conductors: SmallConductorVolume | Unset
        if isinstance(_small_conductors, Unset):
            small_conductors = UNSET
        else:
            small_conductors = SmallConductorVolume.from_dict(_small_conductors)

        _smallest_box = d.pop("smallest_box", UNSET)
        smallest_box: BoxCandidate | Unset
        if isinstance(_smallest_box, Unset):
            smallest_box = UNSET
        else:
            smallest_box = BoxCandidate.from_dict(_smallest_box)

        pull_box_result = cls(
            candidates=candidates,
            pulls=pulls,
            structure=structure,
            least_access_opening=least_access_opening,
            least_depth=least_depth,
            least_length=least_length,
            least_width=least_width,
            racking=racking,
            small_conductors=small_conductors,
            smallest_box=smallest_box,
        )

        pull_box_result.additional_properties = d
        return pull_box_result

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
