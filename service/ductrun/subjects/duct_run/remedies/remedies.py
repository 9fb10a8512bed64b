"""Remedies as an answer tells them: each the changed run itself, and for what breaks a limit and has none, why."""

from __future__ import annotations

from typing import Annotated, Any

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit.choices import Verdict
from ductrun.units import Code

MOST_TRIALS = 50
MOST_REMEDIES = 20
MOST_CHANGED = 500
MOST_BYTES = 4 * 1_048_576  # of all changed runs of an answer together
_MOST_VIOLATIONS = 1_000


class ChangeKind(Code):
    """What a remedy changes, the cheapest to build first."""

    BRAKE_LIMIT = "brake_limit"
    END_DISTANCE = "end_distance"
    PIGMENT_PERCENT = "pigment_percent"
    LIFT_HEIGHT = "lift_height"
    COMPACTION = "compaction"
    FITTING_TRAVEL = "fitting_travel"
    OVERCURRENT_DEVICE = "overcurrent_device"
    TEMPERATURE_LIMIT = "temperature_limit"
    INSULATION = "insulation"
    GROUNDING_CONDUCTOR = "grounding_conductor"
    RADIUS = "radius"
    BOX = "box"
    COVER = "cover"
    RISER_CONDUIT_TYPE = "riser_conduit_type"
    CONDUIT_TYPE = "conduit_type"
    CONCRETE_COVER = "concrete_cover"
    SEPARATION = "separation"
    ENCASEMENT = "encasement"
    CONDUCTOR_SIZE = "conductor_size"
    PARALLEL_SETS = "parallel_sets"
    TRADE_SIZE = "trade_size"
    PULL_POINT = "pull_point"


class RemovedViolation(Struct, frozen=True, gc=False):
    """A violation that the changed run has no more."""

    code: Annotated[str, Meta(description="Its code.", max_length=100)]
    pointer: Annotated[str | UnsetType, Meta(description="Where it is in the request that was sent.")] = UNSET


class Remedy(Struct, frozen=True, gc=False):
    """One change that was run: it removes a violation and adds none."""

    change: Annotated[ChangeKind, Meta(description="What kind of change it is.")]
    message: Annotated[str, Meta(description="What to change, in one sentence.")]
    run: Annotated[
        Any,
        Meta(
            description="The run as it was sent with this one change made: to send, to alter further, or to compare.",
            extra_json_schema={"$ref": "#/components/schemas/DuctRunRequest"},
        ),
    ]
    changed: Annotated[
        list[str], Meta(description="JSON pointers into that run of what was set.", max_length=MOST_CHANGED)
    ]
    verdict: Annotated[Verdict, Meta(description="Of the run so changed.")]
    removed: Annotated[
        list[RemovedViolation], Meta(description="Violations that are gone then.", max_length=_MOST_VIOLATIONS)
    ]
    remaining_violation_count: Annotated[int, Meta(description="Violations that are left then.")]


class UnremediedViolation(Struct, frozen=True, gc=False):
    """A violation that no remedy told removes."""

    code: Annotated[str, Meta(description="Its code.", max_length=100)]
    message: Annotated[str, Meta(description="Why there is none: nothing known to try, or tried in vain.")]
    trial_count: Annotated[int, Meta(description="How many changes were tried against it.")]
    pointer: Annotated[str | UnsetType, Meta(description="Where it is in the request that was sent.")] = UNSET


class Remedies(Struct, frozen=True, gc=False):
    """What would make a run comply, each change of one thing verified by running it."""

    found: Annotated[
        list[Remedy],
        Meta(
            description="Remedies that were found: runs that comply first, then the cheapest to build.",
            max_length=MOST_REMEDIES,
        ),
    ]
    not_found: Annotated[
        list[UnremediedViolation],
        Meta(description="Violations that no remedy removes, each with why.", max_length=_MOST_VIOLATIONS),
    ]
    trial_count: Annotated[
        int,
        Meta(description=f"How many changed runs were tried: {MOST_TRIALS} at most, fewer of a run that takes long."),
    ]
    cut_short: Annotated[
        bool,
        Meta(
            description="Whether there is more than is told: as many runs were tried as may be and changes left, more "
            f"than {MOST_REMEDIES} were found, or their runs take more than {MOST_BYTES // 1_048_576} MiB together."
        ),
    ]
