"""What lies in earth laid deeper, or in more concrete."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

from msgspec import UNSET

from ductrun.engineering.rounding import under
from ductrun.kit.answers import Finding
from ductrun.kit.wording import listing
from ductrun.subjects.duct_run.remedies.case import (
    Case,
    at_least,
    at_most,
    inches,
    length_of,
    names_of,
    si,
    stretch_at,
    stretches_of,
    written,
)
from ductrun.subjects.duct_run.remedies.changes import Change, Edit, member
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind
from ductrun.units import Length

_OF_COVER = {"too_shallow", "too_little_cover_under_traffic"}
_MORE_COVER = (6, 12, 18, 24)  # inches that are tried against what no least cover is known of
_MORE_CONCRETE = 4  # inches that are tried


def deeper(found: Finding, case: Case) -> list[Change]:
    """Lie as deep as all asks for that is found of the cover, in the caller's unit: the stretch, or all that are too
    shallow; with a profile the whole line.
    """
    index = stretch_at(found)
    needs = _needs(case)
    if index is None or index not in needs:
        return []
    if _cover(index, case) is None:
        return _lower_line(max(short for _, short in needs.values()), case)
    # alike stretches are told as one: what lies under a cover asked of another is laid as deep too
    most = max(least for least, _ in needs.values())
    alike = [at for at in range(len(case.run.stretches)) if _is_under(at, most, case)]
    groups = [[index], alike] if len(alike) > 1 else [[index]]
    return [_covered({at: needs.get(at, (most, 0.0))[0] for at in group}, case) for group in groups]


def _cover(stretch: int, case: Case) -> dict[str, Any] | None:
    given: dict[str, Any] | None = member(case.body, f"/stretches/{stretch}/setting/cover")
    return given


def _is_under(stretch: int, least: float, case: Case) -> bool:
    given = _cover(stretch, case)
    return given is not None and under(length_of(given), least)


def _needs(case: Case) -> dict[int, tuple[float, float]]:
    """Give for every stretch found too shallow the cover that all its limits ask for, and what it lacks of that [m]."""
    needs: dict[int, tuple[float, float]] = {}
    for found in case.violations:
        index = stretch_at(found)
        if found.code not in _OF_COVER or index is None or found.limit is UNSET or found.actual is UNSET:
            continue
        short = si(found.limit, Length) - si(found.actual, Length)
        given = _cover(index, case)
        least = 0.0 if given is None else length_of(given) + short
        known = needs.get(index, (0.0, 0.0))
        needs[index] = max(known[0], least), max(known[1], short)
    return needs


def _covered(least: dict[int, float], case: Case) -> Change:
    covers: dict[int, dict[str, Any]] = {}
    words: dict[str, list[int]] = {}
    for at, value in least.items():
        given = _cover(at, case)
        assert given is not None  # noqa: S101  (looked at before)
        covers[at] = at_least(value, given["unit"], Length)
        words.setdefault(f"{written(covers[at])} of cover instead of {written(given)}", []).append(at)
    told = " and ".join(f"{names_of(stretches, case)} with {cover}" for cover, stretches in words.items())
    edits = [Edit(f"/stretches/{at}/setting/cover", one) for at, one in covers.items()]
    return Change(ChangeKind.COVER, f"Lay {told}.", edits)


def deeper_by_steps(found: Finding, case: Case) -> list[Change]:
    """Lie deeper by so much and so much: the stretches that are found, with a profile the whole line."""
    stretches = stretches_of(found, case)
    covers = {at: given for at in stretches if (given := _cover(at, case)) is not None}
    if len(covers) < len(stretches):
        return [change for more in _MORE_COVER for change in _lower_line(inches(more), case)]
    return [
        _covered({at: length_of(given) + inches(more) for at, given in covers.items()}, case) for more in _MORE_COVER
    ]


def _lower_line(short: float, case: Case) -> list[Change]:
    points = member(case.body, "/profile/points")
    if points is None:
        return []
    lower = at_least(short, "in" if points[0]["line"]["unit"] in {"ft", "in", "yd"} else "cm", Length)
    by = length_of(lower)
    message = f"Lay the whole run {written(lower)} deeper."
    lowered = [point | {"line": _less(point["line"], by)} for point in points]
    return [Change(ChangeKind.COVER, message, [Edit("/profile/points", lowered)])]


def _less(elevation: dict[str, Any], by: float) -> dict[str, Any]:
    """Give an elevation that is lower by a depth [m], to the hundredth."""
    unit = Length.parse(1.0, elevation["unit"]).unit
    return elevation | {"value": math.floor((elevation["value"] - unit.from_si(by)) * 100 + 1e-6) / 100}


def more_concrete(found: Finding, case: Case) -> list[Change]:
    """Make the concrete around the ducts of a stretch, or of all that are encased, thicker, inch by inch."""
    index = stretch_at(found)
    encased = [at for at, one in enumerate(case.run.stretches) if one.burial and one.burial.envelope.concrete]
    if index is None or index not in encased:
        return []
    groups = [[index], encased] if len(encased) > 1 else [[index]]
    return [_thicker(group, more, case) for more in range(1, _MORE_CONCRETE + 1) for group in groups]


def _thicker(group: list[int], more: int, case: Case) -> Change:
    edits = []
    for at in group:
        burial = case.run.stretches[at].burial
        assert burial is not None  # noqa: S101  (what is encased is buried)
        sides = {
            side: at_least(getattr(burial.envelope.concrete, side) + inches(more), "in", Length)
            for side in ("top", "side", "bottom")
        }
        edits.append(Edit(f"/stretches/{at}/setting/concrete_cover", sides))
    message = f"Pour {more} in more of concrete around the ducts in {names_of(group, case)}."
    return Change(ChangeKind.CONCRETE_COVER, message, edits)


def encase(found: Finding, case: Case) -> list[Change]:
    """Encase the stretch, or each of those that lie in earth, or all of them."""
    earth = [at for at, one in enumerate(case.body["stretches"]) if one["setting"]["kind"] == "direct_buried"]
    index = stretch_at(found)
    groups = [[at] for at in earth if index in {None, at}] + ([earth] if len(earth) > 1 else [])
    return [
        Change(
            ChangeKind.ENCASEMENT,
            f"Encase {names_of(group, case)} in concrete.",
            [_encased(at, case) for at in group],
        )
        for group in groups
    ]


def _encased(stretch: int, case: Case) -> Edit:
    path = f"/stretches/{stretch}/setting"
    given = member(case.body, path)
    if "on_spacers" not in given:
        return Edit(f"{path}/kind", "encased")
    # in concrete there are always spacers, and nothing is said of them
    return Edit(path, {name: one for name, one in given.items() if name != "on_spacers"} | {"kind": "encased"})


def lower_lifts(found: Finding, case: Case) -> list[Change]:
    """Pour in lifts as high as the ducts bear, or half as high."""
    stretches = stretches_of(found, case)
    pours = [
        pour for at in stretches for load in case.run.stretches[at].earth_loads for pour in load.pours if not pour.holds
    ]
    heights = [pour.head * pour.bears / pour.pressure for pour in pours if pour.bears]
    paths = dict.fromkeys(_lift_of(at, case) for at in stretches)
    return [_of_lifts(min(heights) * part, list(paths), case) for part in (1.0, 0.5) if heights]


def _lift_of(stretch: int, case: Case) -> str:
    """Give where the lifts of a stretch are said, or would be."""
    own = f"/stretches/{stretch}/earth_load"
    said = (f"{place}/lift_height" for place in (own, "/earth_load", "/flotation"))
    place = own if member(case.body, "/earth_load") is None else "/earth_load"
    return next((path for path in said if member(case.body, path) is not None), f"{place}/lift_height")


def _of_lifts(height: float, paths: Sequence[str], case: Case) -> Change:
    given = [one for path in paths if (one := member(case.body, path)) is not None]
    lift = at_most(height, given[0]["unit"] if given else "in", Length)
    instead = f" instead of {listing(list(dict.fromkeys(map(written, given))))}" if given else ""
    message = f"Pour in lifts of {written(lift)}{instead}."
    return Change(ChangeKind.LIFT_HEIGHT, message, [Edit(path, lift) for path in paths])
