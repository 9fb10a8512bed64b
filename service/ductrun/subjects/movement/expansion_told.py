"""What expansion answers: the records of its result, and how a movement is told."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.telling import TELLINGS, Telling
from ductrun.subjects.movement.findings import SOLD, MovingRun
from ductrun.subjects.movement.fittings import MOST_FITTINGS
from ductrun.subjects.movement.moving import MOST_OPENINGS, Movement
from ductrun.units import Temperature

MOST_RUNS = 200


class PistonOpening(Struct, frozen=True, gc=False):
    """One line of the table the crew carries."""

    temperature: Annotated[answers.Temperature, Meta(description="Temperature of the conduit.")]
    opening: Annotated[answers.Length, Meta(description="Opening of the piston, measured from fully closed.")]


class TravelOption(Struct, frozen=True, gc=False):
    """What fittings of one travel that is sold would mean."""

    fitting_travel: Annotated[answers.Length, Meta(description="Travel of one fitting.")]
    fitting_count: Annotated[int, Meta(description="Fittings of that travel that the run needs.")]


class RunMovement(Struct, frozen=True, gc=False):
    """One straight run."""

    length: Annotated[answers.Length, Meta(description="Length of the run.")]
    length_change: Annotated[answers.Length, Meta(description="Change over the whole span of temperature.")]
    fitting_required: Annotated[bool, Meta(description="Whether the change reaches what calls for a fitting.")]
    fitting_count: Annotated[int, Meta(description="Fittings that share the change; 0 if none is required.")]
    fitting_positions: Annotated[
        list[answers.Length],
        Meta(description="Where the barrels are clamped, one for each fitting.", max_length=MOST_FITTINGS),
    ]
    piston_reaches: Annotated[
        list[answers.Length],
        Meta(
            description="Where the pistons end when fully open, in the order of the fittings: between a barrel's clamp "
            "and this place no strap may stand.",
            max_length=MOST_FITTINGS,
        ),
    ]
    anchor_positions: Annotated[
        list[answers.Length],
        Meta(description="Where the run is fixed between them; its ends are fixed.", max_length=MOST_FITTINGS),
    ]
    holding_strap_positions: Annotated[
        list[answers.Length],
        Meta(
            description="Straps that hold: the clamps of the barrels, and the anchors without barrels. All others let "
            "the run slide.",
            max_length=MOST_FITTINGS + MOST_FITTINGS // 2,
        ),
    ]
    piston_openings: Annotated[
        list[PistonOpening],
        Meta(
            description="Openings at the temperatures asked for and of the installation, from the lowest on.",
            max_length=MOST_OPENINGS + 1,
        ),
    ]
    travel_used_percent: Annotated[
        float | UnsetType, Meta(description="Share of the travel of a fitting that its movement uses.")
    ] = UNSET


class ExpansionResult(Struct, frozen=True, gc=False):
    """How far the runs move and what takes it up; runs held by the ground have no movement to show."""

    temperature_difference: Annotated[
        answers.TemperatureDifference, Meta(description="Highest less lowest temperature, sun allowance included.")
    ]
    coefficient: Annotated[
        answers.ExpansionCoefficient, Meta(description="Coefficient of linear expansion that the runs move by.")
    ]
    fitting_required: Annotated[bool, Meta(description="Whether any run reaches what calls for a fitting.")]
    fitting_count: Annotated[int, Meta(description="Expansion fittings of all runs together.")]
    runs: Annotated[
        list[RunMovement],
        Meta(description="Each straight run; none if they are buried or encased.", max_length=MOST_RUNS),
    ]
    travel_options: Annotated[
        list[TravelOption],
        Meta(description="How many fittings of each travel that is sold would be needed.", max_length=len(SOLD)),
    ]
    length_change: Annotated[
        answers.Length | UnsetType, Meta(description="Change of the run; of several, of the one that moves most.")
    ] = UNSET
    longest_run_without_fitting: Annotated[
        answers.Length | UnsetType,
        Meta(description="At this length a fitting becomes required; shorter runs need none."),
    ] = UNSET
    largest_difference_without_fitting: Annotated[
        answers.TemperatureDifference | UnsetType,
        Meta(description="At this difference the longest run needs a fitting; at less, none does."),
    ] = UNSET
    travel_needed: Annotated[
        answers.Length | UnsetType,
        Meta(description="Travel with which one fitting would do for the longest run, its usable share considered."),
    ] = UNSET
    fitting_spacing: Annotated[
        answers.Length | UnsetType, Meta(description="Length of run to each fitting, for one run that needs any.")
    ] = UNSET
    piston_opening: Annotated[
        answers.Length | UnsetType,
        Meta(description="Opening at the installation temperature, measured from fully closed, for one run."),
    ] = UNSET


_SOLD = {system: [telling.given(travel) for travel in SOLD] for system, telling in TELLINGS.items()}


def tell(movement: Movement, telling: Telling) -> ExpansionResult:
    """Tell how far the runs move and what takes it up; of runs held by the ground, that nothing does."""
    difference, coefficient = telling.given(movement.seen.difference), telling.given(movement.coefficient.printed)
    free = movement.free
    if free is None:
        return ExpansionResult(
            temperature_difference=difference,
            coefficient=coefficient,
            fitting_required=False,
            fitting_count=0,
            runs=[],
            travel_options=[],
        )
    fittings = sum(run.fitting_count for run in free.runs)
    only = free.runs[0] if len(free.runs) == 1 and fittings else None
    installed = None if only is None else _opening_at(movement.seen.installation, only)
    return ExpansionResult(
        temperature_difference=difference,
        coefficient=coefficient,
        length_change=telling.size(free.change),
        fitting_required=fittings > 0,
        fitting_count=fittings,
        runs=[_told_run(run, telling) for run in free.runs],
        travel_options=[
            TravelOption(travel, count)
            for travel, count in zip(_SOLD[telling.system], free.counts_by_travel, strict=True)
        ],
        longest_run_without_fitting=telling.distance(free.longest_without_fitting),
        largest_difference_without_fitting=telling.difference(free.largest_difference_without_fitting),
        travel_needed=telling.size(free.travel_needed) if fittings else UNSET,
        fitting_spacing=telling.distance(only.length / only.fitting_count) if only else UNSET,
        piston_opening=telling.size(installed) if installed is not None else UNSET,
    )


def _opening_at(temperature: Temperature | None, run: MovingRun) -> float | None:
    return next((opening for at, opening in run.openings if at is temperature), None)


def _told_run(run: MovingRun, telling: Telling) -> RunMovement:
    layout = run.layout
    clamps, reaches, anchors, holding = ([], [], [], []) if layout is None else layout[1:]
    return RunMovement(
        length=telling.distance(run.length),
        length_change=telling.size(run.change),
        fitting_required=run.fitting_count > 0,
        fitting_count=run.fitting_count,
        fitting_positions=[telling.distance(place) for place in clamps],
        piston_reaches=[telling.distance(place) for place in reaches],
        anchor_positions=[telling.distance(place) for place in anchors],
        holding_strap_positions=[telling.distance(place) for place in holding],
        piston_openings=[
            PistonOpening(telling.given(temperature), telling.size(opening)) for temperature, opening in run.openings
        ],
        travel_used_percent=100 * run.travel_used if run.fitting_count else UNSET,
    )
