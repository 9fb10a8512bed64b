"""Suggestions as an answer tells them: each a change of the request in the terms of RFC 6902 (JSON Patch)."""

from __future__ import annotations

from typing import Annotated, Any

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit.choices import Verdict
from ductrun.units import Code

MOST_TRIALS = 50
MOST_SUGGESTIONS = 20
MOST_OPERATIONS = 200
_MOST_REMOVED = 1_000


class ChangeKind(Code):
    """What a suggestion changes, the cheapest to build first."""

    BRAKE_LIMIT = "brake_limit"
    END_DISTANCE = "end_distance"
    PIGMENT_PERCENT = "pigment_percent"
    FITTING_TRAVEL = "fitting_travel"
    RADIUS = "radius"
    COVER = "cover"
    RISER_CONDUIT_TYPE = "riser_conduit_type"
    CONDUIT_TYPE = "conduit_type"
    CONCRETE_COVER = "concrete_cover"
    ENCASEMENT = "encasement"
    TRADE_SIZE = "trade_size"
    PULL_POINT = "pull_point"


class PatchOp(Code):
    """Operations of JSON Patch that suggestions use."""

    ADD = "add"
    REPLACE = "replace"


class PatchOperation(Struct, frozen=True, gc=False):
    """One operation of a JSON Patch (RFC 6902) on the request; what it sets is always an object."""

    op: Annotated[PatchOp, Meta(description="Whether the object is put in or takes the place of another.")]
    path: Annotated[str, Meta(description="JSON pointer of the member that is set, or of the item that is put in.")]
    value: Annotated[dict[str, Any], Meta(description="The object that is set there, as a request has it.")]


class RemovedViolation(Struct, frozen=True, gc=False):
    """A violation that the changed run has no more."""

    code: Annotated[str, Meta(description="Its code.", max_length=100)]
    pointer: Annotated[str | UnsetType, Meta(description="Where it is in the request that was sent.")] = UNSET


class Suggestion(Struct, frozen=True, gc=False):
    """One change that was run: it removes a violation and adds none."""

    change: Annotated[ChangeKind, Meta(description="What kind of change it is.")]
    message: Annotated[str, Meta(description="What to change, in one sentence.")]
    patch: Annotated[
        list[PatchOperation],
        Meta(description="The change of the request, operations in order.", max_length=MOST_OPERATIONS),
    ]
    verdict: Annotated[Verdict, Meta(description="Of the run so changed.")]
    removed: Annotated[
        list[RemovedViolation], Meta(description="Violations that are gone then.", max_length=_MOST_REMOVED)
    ]
    remaining_violation_count: Annotated[int, Meta(description="Violations that are left then.")]


class Suggestions(Struct, frozen=True, gc=False):
    """What would make a run comply, each change of one thing verified by running it."""

    suggestions: Annotated[
        list[Suggestion],
        Meta(description="Those that comply first, then the cheapest to build.", max_length=MOST_SUGGESTIONS),
    ]
    trial_count: Annotated[
        int,
        Meta(description=f"How many changed runs were tried; {MOST_TRIALS} at most, fewer of a run that takes long."),
    ]
    bound_met: Annotated[bool, Meta(description="Whether changes were left untried for that bound.")]
