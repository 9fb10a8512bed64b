"""POST /v1/trench: how wide, how deep, how much to dig, bed, backfill and haul."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType
from pydantic import Field

from ductrun.engineering.bank import Envelope
from ductrun.kit import answers
from ductrun.kit.defaults import choice
from ductrun.kit.forms import Depth, Omissible, RunLength
from ductrun.kit.operation import Operation
from ductrun.kit.telling import Telling
from ductrun.kit.worksheet import Gathering, Worksheet
from ductrun.subjects.ground.choices import TrenchPractice
from ductrun.subjects.ground.digging import (
    Digging,
    Trench,
    bottom_width,
    dig,
    poured_as_dug,
)
from ductrun.subjects.ground.earth_over import Fall, Stations, earth_over
from ductrun.subjects.ground.pavement import PavementTakeoff, told_pavement
from ductrun.subjects.parts.bank import DuctBank, bank_of
from ductrun.subjects.parts.envelope import (
    POUR_SHAPE,
    AskedPour,
    ConcreteCover,
    PourShape,
    buried_directly,
    caution_burial_duct,
    concrete_of,
    poured,
)

PRACTICE = choice("trench.practice", TrenchPractice)
_MEASURED = {
    False: "from the top of the concrete to the top of finished grade",
    True: "from the top of the ducts to the top of finished grade",
}


class TrenchRequest(Digging):
    """A bank in its trench."""

    length: RunLength = Field(description="Length of the trench.", examples=[{"value": 300, "unit": "ft"}])
    bank: DuctBank = Field(description="The duct bank.")
    practice: Omissible[TrenchPractice] = Field(
        default=None,
        description="How the bank lies in its trench.",
        examples=["formed"],
        json_schema_extra=PRACTICE.stated,
    )
    concrete_cover: Omissible[ConcreteCover] = Field(
        default=None, description="Concrete outside the ducts, unless they are buried directly."
    )
    pour_shape: Omissible[PourShape] = Field(
        default=None,
        description="Whether a formed pour fills the bounding rectangle or steps with the tiers.",
        examples=["bounding_rectangle"],
        json_schema_extra=POUR_SHAPE.stated,
    )
    cover: Omissible[Depth] = Field(
        default=None,
        description="Earth over the envelope, or over the ducts if there is none; this or stations.",
        examples=[{"value": 30, "unit": "in"}],
    )
    stations: Omissible[Stations] = Field(
        default=None, description="Cover along the run where it varies, from its start to its end; this or cover."
    )
    fall: Omissible[Fall] = Field(
        default=None,
        description="Fall of the ducts below level ground, from where cover is given, the least of it; without it the "
        "ducts lie as the ground does.",
    )


class TrenchResult(Struct, frozen=True, gc=False):
    """Size and volumes; bank, loose and compacted are named as such."""

    measured_from: Annotated[str, Meta(description="What the cover is measured between.")]
    width: Annotated[answers.Length, Meta(description="Width of the bottom.")]
    depth: Annotated[answers.Length, Meta(description="Depth to the bottom; the greatest, if it varies.")]
    envelope_width: Annotated[
        answers.Length,
        Meta(description="Width of the concrete, or of the ducts alone; its bottom in a sloped trench."),
    ]
    envelope_height: Annotated[answers.Length, Meta(description="Height of the concrete, or of the bare ducts.")]
    least_cover_over_ducts: Annotated[
        answers.Length,
        Meta(description="The shortest way from the top of the ducts themselves to grade, where it is least."),
    ]
    excavation_volume: Annotated[answers.Volume, Meta(description="Earth in the bank, below any pavement.")]
    bedding_volume: Annotated[answers.Volume, Meta(description="Compacted, under the bank.")]
    envelope_volume: Annotated[answers.Volume, Meta(description="What the envelope, or the ducts, take.")]
    select_fill_volume: Annotated[answers.Volume, Meta(description="Compacted, beside and over the bank.")]
    backfill_volume: Annotated[answers.Volume, Meta(description="Native, compacted, up to grade or pavement.")]
    spoil_volume: Annotated[answers.Volume, Meta(description="Loose, to haul away; 0 if fill must be brought.")]
    import_volume: Annotated[answers.Volume, Meta(description="Loose, to bring; 0 if what was dug is enough.")]
    loose_excavation_volume: Annotated[answers.Volume, Meta(description="All that is dug, loose.")]
    haul_load_count: Annotated[int, Meta(description="Truck loads of earth hauled away, or brought; none of pavement.")]
    shoring_area: Annotated[
        answers.Area,
        Meta(description="Both sides, where so deep and steep that they are to be protected; 0 where nowhere."),
    ]
    warning_tape_length: Annotated[answers.Length, Meta(description="Tape over the run.")]
    warning_tape_depth: Annotated[answers.Length, Meta(description="Below grade, where the cover is greatest.")]
    least_warning_tape_depth: Annotated[
        answers.Length, Meta(description="Below grade, where the cover is least and may leave no room for more.")
    ]
    fall_height: Annotated[
        answers.Length | UnsetType, Meta(description="From the highest of the ducts to the lowest, if they fall.")
    ] = UNSET
    pavement: Annotated[PavementTakeoff | UnsetType, Meta(description="Cut, taken up and laid again, if any.")] = UNSET


def _envelope(request: TrenchRequest, sheet: Worksheet) -> Envelope:
    """Give the envelope of the bank by practice."""
    practice = sheet.settle("practice", request.practice, PRACTICE)
    bank_place = sheet.within("bank")
    placed = bank_of(request.bank, bank_place)
    asked = AskedPour(
        request.bank,
        bank_place,
        request.concrete_cover,
        sheet.within("concrete_cover"),
        request.pour_shape,
        sheet.within("pour_shape"),
    )
    if practice is TrenchPractice.DIRECT_BURIED:
        caution_burial_duct(asked)
        return buried_directly(placed, asked)
    concrete = concrete_of(asked)
    if practice is TrenchPractice.FORMED:
        return poured(placed, asked, concrete)
    return poured_as_dug(request, placed, asked, concrete, sheet)


def assess(request: TrenchRequest, sheet: Worksheet) -> Trench:
    """Dig the trench of a request."""
    faults = Gathering()
    envelope = None
    with faults:
        envelope = _envelope(request, sheet)
    with faults:
        earth = earth_over(request.cover, request.stations, request.fall, request.length, sheet)
    if faults.faults and envelope is not None:
        with faults:
            bottom_width(request, envelope, sheet)
    faults.stop()
    assert envelope is not None  # noqa: S101  (else there was a fault)
    return dig(request, envelope, earth, request.length.si, sheet)


def tell(found: Trench, telling: Telling) -> TrenchResult:
    """Put a trench into the caller's units."""
    size, volume = telling.size, telling.bulk_volume
    return TrenchResult(
        measured_from=_MEASURED[found.envelope.concrete is None],
        width=size(found.width),
        depth=size(found.depth),
        envelope_width=size(found.envelope.width),
        envelope_height=size(found.envelope.height),
        least_cover_over_ducts=size(found.ducts_cover),
        excavation_volume=volume(found.volumes.excavated),
        bedding_volume=volume(found.volumes.bedding),
        envelope_volume=volume(found.volumes.envelope),
        select_fill_volume=volume(found.volumes.select_fill),
        backfill_volume=volume(found.volumes.backfill),
        spoil_volume=volume(max(0.0, found.spoil)),
        import_volume=volume(max(0.0, -found.spoil)),
        loose_excavation_volume=volume(found.loose_excavation),
        haul_load_count=found.load_count,
        shoring_area=telling.surface(found.shoring),
        warning_tape_length=telling.distance(found.tape_length),
        warning_tape_depth=size(found.tape.depth),
        least_warning_tape_depth=size(found.tape.least_depth),
        fall_height=UNSET if found.fall_height is None else size(found.fall_height),
        pavement=UNSET if found.pavement is None else told_pavement(found.pavement, telling),
    )


def _example() -> dict[str, object]:
    inches: Sequence[tuple[str, float]] = (("top", 3), ("bottom", 3), ("side", 3))
    return {
        "length": {"value": 300, "unit": "ft"},
        "bank": {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "4"},
            "tiers": [3, 3],
            "horizontal_separation": {"value": 2, "unit": "in"},
            "vertical_separation": {"value": 2, "unit": "in"},
            "separation_measure": "clear",
        },
        "practice": "formed",
        "concrete_cover": {name: {"value": value, "unit": "in"} for name, value in inches},
        "pour_shape": "bounding_rectangle",
        "cover": {"value": 30, "unit": "in"},
        "width": {"value": 36, "unit": "in"},
        "bedding": {"value": 0, "unit": "in"},
        "side_slope_ratio": 0,
        "haul_capacity": {"value": 10, "unit": "yd3"},
        "soil": "loam",
        "loose_volume_factor": 1.25,
        "compacted_volume_factor": 0.9,
        "soil_type": "type_c",
        "tape_overlap_percent": 5,
        "warning_tape_depth": {"value": 12, "unit": "in"},
    }


OPERATION = Operation(
    name="trench",
    operation_id="calculate_trench",
    summary="Trench volumes",
    description="Gives width and depth of the trench of a duct bank and its volumes: excavation in the bank, bedding, "
    "select fill, native backfill compacted, spoil loose and its truck loads, for even or varying depth and sloped "
    "sides, or ducts that fall to drain; shoring where the depth asks for it, and the pavement that is cut, taken up "
    "and laid again.",
    request=TrenchRequest,
    result=TrenchResult,
    assess=assess,
    tell=tell,
    example=_example(),
)
