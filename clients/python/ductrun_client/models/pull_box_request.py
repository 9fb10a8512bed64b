from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.box_wall import BoxWall
from ..models.code_edition import CodeEdition
from ..models.structure import Structure
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.box_circuit import BoxCircuit
    from ..models.box_entry import BoxEntry
    from ..models.box_size import BoxSize
    from ..models.racking import Racking
    from ..models.voltage import Voltage


T = TypeVar("T", bound="PullBoxRequest")


@_attrs_define
class PullBoxRequest:
    """What enters a box.

    Attributes:
        circuits (list[BoxCircuit]): The circuits in them, each in the entries by which it goes in and out.
        entries (list[BoxEntry]): Every raceway that enters it.
        voltage (Voltage): A voltage with its unit.
        box (BoxSize | Unset): Inside dimensions of a box; of a handhole without a bottom the depth is to the ends of
            the raceways.
        box_sizes (list[BoxSize] | Unset): Boxes that can be had: the smallest that holds the entries is named.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        racking (Racking | Unset): How cable leads from its ducts to the racks on a wall of a manhole, along its length.
        removable_cover (BoxWall | Unset): Walls of a box, looking at its front; of a manhole the front is its roof and
            the back its floor.
        structure (Structure | Unset): What conductors are pulled through.
    """

    circuits: list[BoxCircuit]
    entries: list[BoxEntry]
    voltage: Voltage
    box: BoxSize | Unset = UNSET
    box_sizes: list[BoxSize] | Unset = UNSET
    code_edition: CodeEdition | Unset = UNSET
    racking: Racking | Unset = UNSET
    removable_cover: BoxWall | Unset = UNSET
    structure: Structure | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        circuits = []
        for circuits_item_data in self.circuits:
            circuits_item = circuits_item_data.to_dict()
            circuits.append(circuits_item)

        entries = []
        for entries_item_data in self.entries:
            entries_item = entries_item_data.to_dict()
            entries.append(entries_item)

        voltage = self.voltage.to_dict()

        box: dict[str, Any] | Unset = UNSET
        if not isinstance(self.box, Unset):
            box = self.box.to_dict()

        box_sizes: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.box_sizes, Unset):
            box_sizes = []
            for box_sizes_item_data in self.box_sizes:
                box_sizes_item = box_sizes_item_data.to_dict()
                box_sizes.append(box_sizes_item)

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        racking: dict[str, Any] | Unset = UNSET
        if not isinstance(self.racking, Unset):
            racking = self.racking.to_dict()

        removable_cover: str | Unset = UNSET
        if not isinstance(self.removable_cover, Unset):
            removable_cover = self.removable_cover.value

        structure: str | Unset = UNSET
        if not isinstance(self.structure, Unset):
            structure = self.structure.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "circuits": circuits,
                "entries": entries,
                "voltage": voltage,
            }
        )
        if box is not UNSET:
            field_dict["box"] = box
        if box_sizes is not UNSET:
            field_dict["box_sizes"] = box_sizes
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if racking is not UNSET:
            field_dict["racking"] = racking
        if removable_cover is not UNSET:
            field_dict["removable_cover"] = removable_cover
        if structure is not UNSET:
            field_dict["structure"] = structure

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.box_circuit import BoxCircuit  # noqa: PLC0415
        from ..models.box_entry import BoxEntry  # noqa: PLC0415
        from ..models.box_size import BoxSize  # noqa: PLC0415
        from ..models.racking import Racking  # noqa: PLC0415
        from ..models.voltage import Voltage  # noqa: PLC0415

        d = dict(src_dict)
        circuits = []
        _circuits = d.pop("circuits")
        for circuits_item_data in _circuits:
            circuits_item = BoxCircuit.from_dict(circuits_item_data)

            circuits.append(circuits_item)

        entries = []
        _entries = d.pop("entries")
        for entries_item_data in _entries:
            entries_item = BoxEntry.from_dict(entries_item_data)

            entries.append(entries_item)

        voltage = Voltage.from_dict(d.pop("voltage"))

        _box = d.pop("box", UNSET)
        box: BoxSize | Unset
        if isinstance(_box, Unset):
            box = UNSET
        else:
            box = BoxSize.from_dict(_box)

        _box_sizes = d.pop("box_sizes", UNSET)
        box_sizes: list[BoxSize] | Unset = UNSET
        if _box_sizes is not UNSET:
            box_sizes = []
            for box_sizes_item_data in _box_sizes:
                box_sizes_item = BoxSize.from_dict(box_sizes_item_data)

                box_sizes.append(box_sizes_item)

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        _racking = d.pop("racking", UNSET)
        racking: Racking | Unset
        if isinstance(_racking, Unset):
            racking = UNSET
        else:
            racking = Racking.from_dict(_racking)

        _removable_cover = d.pop("removable_cover", UNSET)
        removable_cover: BoxWall | Unset
        if isinstance(_removable_cover, Unset):
            removable_cover = UNSET
        else:
            removable_cover = BoxWall(_removable_cover)

        _structure = d.pop("structure", UNSET)
        structure: Structure | Unset
        if isinstance(_structure, Unset):
            structure = UNSET
        else:
            structure = Structure(_structure)

        pull_box_request = cls(
            circuits=circuits,
            entries=entries,
            voltage=voltage,
            box=box,
            box_sizes=box_sizes,
            code_edition=code_edition,
            racking=racking,
            removable_cover=removable_cover,
            structure=structure,
        )

        return pull_box_request
