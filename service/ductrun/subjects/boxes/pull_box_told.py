"""How a box for what enters it is told."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.choices import Verdict
from ductrun.kit.telling import Telling
from ductrun.subjects.boxes.boxing import MOST_SIZES
from ductrun.subjects.boxes.choices import BoxRule, PullKind, StandardBoxKind, Structure
from ductrun.subjects.boxes.distances import Through
from ductrun.subjects.boxes.entries import MOST_CIRCUITS, MOST_ENTRIES, MOST_SPLICED
from ductrun.subjects.boxes.filling import SmallConductors
from ductrun.subjects.boxes.racks import OPENING, Racked
from ductrun.subjects.boxes.requiring import Requirement, in_inches
from ductrun.subjects.boxes.sizing import Candidate, Sized
from ductrun.units import Volume

_PAIRS = MOST_SPLICED * (MOST_SPLICED - 1) // 2


class LeastDimension(Struct, frozen=True, gc=False):
    """The least of a dimension, inside, and what decided it."""

    least: Annotated[answers.Length, Meta(description="The least.")]
    rule: Annotated[BoxRule, Meta(description="The rule that decided it.")]
    citation: Annotated[str, Meta(description="Where it stands.")]
    pointers: Annotated[
        list[str],
        Meta(
            description="JSON pointers of the entries that decided it; none where no entry did.",
            max_length=MOST_ENTRIES,
        ),
    ]


class PullThrough(Struct, frozen=True, gc=False):
    """A circuit between two entries; the distance of entries is between their near edges."""

    circuit: Annotated[str, Meta(description="Name of the circuit.", max_length=80)]
    kind: Annotated[PullKind, Meta(description="How it goes.")]
    spliced: Annotated[bool, Meta(description="Whether it is spliced on its way.")]
    pointers: Annotated[list[str], Meta(description="JSON pointers of its two entries.", max_length=2)]
    least_entry_distance: Annotated[
        answers.Length | UnsetType, Meta(description="Least distance of the two entries, where it turns or is spliced.")
    ] = UNSET
    entry_distance: Annotated[
        answers.Length | UnsetType,
        Meta(description="Distance of the two entries, where positions and the box tell it."),
    ] = UNSET
    verdict: Annotated[
        Verdict | UnsetType,
        Meta(description="Whether the two entries are far enough apart; absent where no distance is asked."),
    ] = UNSET


class StandardBoxFound(Struct, frozen=True, gc=False):
    """A standard metal box."""

    size: Annotated[str, Meta(description="Its size, as printed in inches.", max_length=40)]
    kind: Annotated[StandardBoxKind, Meta(description="Its kind; masonry, FS and FD are per gang.")]
    volume: Annotated[answers.Volume, Meta(description="Its volume.")]


class SmallConductorVolume(Struct, frozen=True, gc=False):
    """Conductors smaller than 4 AWG."""

    conductor_count: Annotated[int, Meta(description="Conductors that count, those spliced at every entry.")]
    least_volume: Annotated[answers.Volume, Meta(description="Volume they take, without devices and clamps.")]
    standard_box: Annotated[
        StandardBoxFound | UnsetType, Meta(description="Least standard box for them, where nothing larger enters.")
    ] = UNSET


class RackedCable(Struct, frozen=True, gc=False):
    """Cable on the racks of a manhole."""

    centerline_radius: Annotated[answers.Length, Meta(description="Least radius of the center line of the cable.")]
    offset_length: Annotated[answers.Length, Meta(description="Length of the two reverse bends at each end.")]
    wall_length: Annotated[answers.Length, Meta(description="Least length of the wall, from duct to duct.")]


class BoxCandidate(Struct, frozen=True, gc=False):
    """A box that can be had."""

    pointer: Annotated[str, Meta(description="JSON pointer of its size.")]
    verdict: Annotated[Verdict, Meta(description="Whether it holds the entries, so far apart as they must lie.")]
    turned: Annotated[bool, Meta(description="Whether it holds the entries with length and width exchanged.")]
    length: Annotated[answers.Length, Meta(description="From left to right, as listed.")]
    width: Annotated[answers.Length, Meta(description="From bottom to top, as listed.")]
    depth: Annotated[answers.Length, Meta(description="From back to front.")]


class PullBoxResult(Struct, frozen=True, gc=False):
    """What a box must measure for what enters it; a dimension that no rule sets is absent."""

    structure: Annotated[Structure, Meta(description="What it is.")]
    pulls: Annotated[
        list[PullThrough],
        Meta(description="Every circuit between two of its entries.", max_length=_PAIRS * MOST_CIRCUITS),
    ]
    candidates: Annotated[
        list[BoxCandidate], Meta(description="The boxes that can be had, as listed.", max_length=MOST_SIZES)
    ]
    least_length: Annotated[LeastDimension | UnsetType, Meta(description="From left to right.")] = UNSET
    least_width: Annotated[LeastDimension | UnsetType, Meta(description="From bottom to top.")] = UNSET
    least_depth: Annotated[LeastDimension | UnsetType, Meta(description="From back to front.")] = UNSET
    small_conductors: Annotated[
        SmallConductorVolume | UnsetType, Meta(description="Conductors that take volume, if there are any.")
    ] = UNSET
    smallest_box: Annotated[
        BoxCandidate | UnsetType,
        Meta(
            description="The least by volume of the boxes that hold the entries, or, where none is known to, that may."
        ),
    ] = UNSET
    racking: Annotated[RackedCable | UnsetType, Meta(description="The racks, if they were asked.")] = UNSET
    least_access_opening: Annotated[
        answers.Length | UnsetType, Meta(description="Least opening of the lid of a manhole.")
    ] = UNSET


def tell(found: Sized, telling: Telling) -> PullBoxResult:
    """Put a box into the caller's units."""
    length, width, depth = (_told_least(one, found.pointers, telling) for one in found.least)
    manhole = found.structure is Structure.MANHOLE
    return PullBoxResult(
        structure=found.structure,
        pulls=[_told_pull(one, found, telling) for one in found.through],
        candidates=[_told_candidate(one, telling) for one in found.candidates],
        least_length=length,
        least_width=width,
        least_depth=depth,
        small_conductors=UNSET if found.small is None else _told_small(found.small, telling),
        smallest_box=UNSET if found.smallest is None else _told_candidate(found.smallest, telling),
        racking=UNSET if found.racked is None else _told_racks(found.racked, telling),
        least_access_opening=telling.given(OPENING) if manhole and OPENING is not None else UNSET,
    )


def _told_least(one: Requirement | None, pointers: list[str], telling: Telling) -> LeastDimension | UnsetType:
    if one is None:
        return UNSET
    places = [pointers[at] for at in one.entries]
    return LeastDimension(telling.given(in_inches(one.least)), one.rule, one.backing.citation, places)


def _told_pull(one: Through, found: Sized, telling: Telling) -> PullThrough:
    pull, circuit = one.pull, found.entered.circuits[one.pull.circuit]
    return PullThrough(
        circuit=circuit.name,
        kind=pull.kind,
        spliced=circuit.spliced,
        pointers=[found.pointers[pull.one], found.pointers[pull.other]],
        least_entry_distance=UNSET if one.apart is None else telling.given(in_inches(one.apart)),
        entry_distance=UNSET if one.gap is None else telling.size(one.gap),
        verdict=UNSET if one.apart is None else Verdict.of(one.kept),
    )


def _told_small(small: SmallConductors, telling: Telling) -> SmallConductorVolume:
    volume = telling.of(Volume, "box_volume")
    box = small.standard_box
    found: StandardBoxFound | UnsetType = UNSET
    if box is not None:
        held = telling.given(Volume.parse(box.volume_in3, "in3"))
        found = StandardBoxFound(box.size, StandardBoxKind(box.kind), held)
    return SmallConductorVolume(small.conductor_count, volume(small.volume), found)


def _told_racks(racked: Racked, telling: Telling) -> RackedCable:
    size = telling.size
    return RackedCable(size(racked.radius), size(racked.aside), size(racked.wall))


def _told_candidate(one: Candidate, telling: Telling) -> BoxCandidate:
    given = telling.given
    return BoxCandidate(
        pointer=one.pointer,
        verdict=Verdict.of(one.holds),
        turned=one.turned,
        length=given(one.size.length),
        width=given(one.size.width),
        depth=given(one.size.depth),
    )
