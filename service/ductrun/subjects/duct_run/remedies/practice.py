"""Practice beyond a limit set to what keeps it: fittings, straps, pigment, compaction."""

from __future__ import annotations

from msgspec import UNSET

from ductrun.kit.answers import Finding
from ductrun.subjects.duct_run.remedies.case import Case, names_of, stretch_at, written
from ductrun.subjects.duct_run.remedies.changes import Change, Edit, member
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind
from ductrun.subjects.ground.choices import Compaction
from ductrun.subjects.ground.earth_loading import COMPACTION
from ductrun.tables import TABLES

_COMPACTED = {
    Compaction.SLIGHT: "slightly, to under 85 percent",
    Compaction.MODERATE: "to 85 to 95 percent",
    Compaction.HIGH: "to more than 95 percent",
}


def more_travel(found: Finding, case: Case) -> list[Change]:
    """Take a fitting of more travel in the stretch, of those on file."""
    index = stretch_at(found)
    if index is None:
        return []
    path = f"/stretches/{index}/setting/fitting_travel"
    return [
        Change(
            ChangeKind.FITTING_TRAVEL,
            f"Take expansion fittings of {float(row.travel_in):g} in of travel in {names_of([index], case)}.",
            [Edit(path, {"value": float(row.travel_in), "unit": "in"})],
        )
        for row in TABLES["fitting_travels"]
    ]


def nearer_straps(found: Finding, case: Case) -> list[Change]:
    """Set the end straps as near as they must stand."""
    path = "/movement/end_distance"
    if found.limit is UNSET or member(case.body, path) is None:
        return []
    near = {"value": found.limit.value, "unit": found.limit.unit}
    message = f"Set the end straps {written(near)} from the terminations."
    return [Change(ChangeKind.END_DISTANCE, message, [Edit(path, near)])]


def less_pigment(found: Finding, case: Case) -> list[Change]:
    """Take the highest dose that is allowed, at every place that gives one."""
    if found.limit is UNSET:
        return []
    places = ["/concrete", *(f"/stretches/{index}/concrete" for index in range(len(case.body["stretches"])))]
    given = [path for place in places if member(case.body, path := f"{place}/pigment_percent") is not None]
    edits = [Edit(path, found.limit.value) for path in given]
    return (
        [Change(ChangeKind.PIGMENT_PERCENT, f"Take {found.limit.value:g} percent of pigment.", edits)] if edits else []
    )


def compacted(_: Finding, case: Case) -> list[Change]:
    """Compact the embedment better, by a grade and by another: everywhere, since ducts of one bank are told as one."""
    paths = ["/earth_load", *(f"/stretches/{index}/earth_load" for index in range(len(case.body["stretches"])))]
    given = [path for path in paths if member(case.body, path) is not None]
    grades = list(Compaction)
    least = min(
        (grades.index(Compaction(member(case.body, f"{path}/compaction") or COMPACTION.value)) for path in given),
        default=len(grades),
    )
    return [
        Change(
            ChangeKind.COMPACTION,
            f"Compact the soil around the ducts {_COMPACTED[grade]} of the standard Proctor density.",
            [Edit(f"{path}/compaction", str(grade)) for path in given],
        )
        for grade in grades[least + 1 :]
    ]
