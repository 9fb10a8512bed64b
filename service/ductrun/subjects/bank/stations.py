"""Where spacers stand along a run, and what is unwise of it."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.engineering import spacing as engineering
from ductrun.engineering.rounding import over, under
from ductrun.kit.backing import backing_of, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import apart, text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.spacing_practice import (
    END_OFFSET,
    INTERVAL,
    SHARED_END_COUNT,
    DistanceInterval,
    PerStickInterval,
    PresetInterval,
    Spacing,
)
from ductrun.tables import TABLES
from ductrun.units import Length

JOINT_CLEARANCE = quantity("spacers.joint_clearance", Length)
OFFSET_STEP = quantity("spacers.offset_step", Length)
_PRESETS = {row.preset: row for row in TABLES["spacer_intervals"]}
_READ = sorted(
    (row for row in TABLES["spacer_intervals"] if row.distance_ft is not None and row.standing == "read"),
    key=lambda row: row.distance_ft,
)
_CLOSEST, _WIDEST = _READ[0], _READ[-1]
_PUBLISHED_DISTANCES = tuple(Length.parse(row.distance_ft, "ft") for row in (_CLOSEST, _WIDEST))
_WIDEST_DISTANCE = _PUBLISHED_DISTANCES[1]
MOST_SEARCHED = 2_000  # stations for which an offset is looked for
WIDEST_SEARCHED = Length.parse(20, "ft").si  # of an interval: half of it is tried in steps


class Stations(NamedTuple):
    """Stations of a run: their number, their even spacing [m], 0 for a single one, and where the first stands [m].

    `own` are those that it does not leave to a neighbor, as `shared` of its ends do; `interval` [m] is the most they
    may stand apart, None by stick.
    """

    number: int
    spacing: float
    first: float
    shared: int
    own: int
    interval: float | None


def _preset(interval: PresetInterval, sheet: Worksheet) -> DistanceInterval | PerStickInterval:
    """Give the interval a preset stands for, and say what was taken."""
    row = _PRESETS[interval.preset]
    sheet.cite(row.source)
    if row.distance_ft is not None:
        distance = Length.parse(row.distance_ft, "ft")
        taken = f"stations at most {text_of(sheet.tell.given(distance))} apart"
        stands_for: DistanceInterval | PerStickInterval = DistanceInterval(kind="distance", distance=distance)
    else:
        stick = Length.parse(row.stick_length_ft, "ft")
        taken = f"{row.count} stations for each stick of {text_of(sheet.tell.given(stick))}"
        stands_for = PerStickInterval(kind="per_stick", count=row.count, stick_length=stick)
    by_whom = "published" if row.standing == "read" else "usual"
    sheet.find(
        Severity.NOTE,
        "preset_interval",
        f"Taken are {taken}, as is {by_whom} for {row.setting.replace('_', ' ')} ducts.",
        backing_of(row),
        member="interval",
    )
    return stands_for


def stations_of(given: Spacing, length: float, sheet: Worksheet) -> Stations:
    """Give the stations of a run of a length [m]."""
    named = given.interval
    interval = _preset(named, sheet) if named is not None and named.kind == "preset" else named
    if interval is not None and interval.kind == "per_stick":
        _refuse_beside_sticks(given, interval.stick_length, sheet)
        stations = engineering.stations_by_stick(length, interval.count, interval.stick_length.si)
        spacing = interval.stick_length.si / interval.count
        if sheet.working is not None:
            words = f"{length:.6g} m x {interval.count} / {interval.stick_length.si:.6g} m"
            sheet.show("stations", "L x count / stick, rounded up", words, stations)
        shared = sheet.settle("shared_end_count", given.shared_end_count, SHARED_END_COUNT)
        spaced = spacing if stations > 1 else 0.0
        return Stations(stations, spaced, spacing / 2, shared, stations, None)
    if given.end_offset is not None and given.end_offset.si and given.shared_end_count:
        words = (
            "A station that is shared stands at the end itself: with an end_offset this run has none there. Leave one "
            "of the two out."
        )
        raise UnanswerableError(sheet.fault("shared_end_count", "contradiction", words, maximum=0))
    distance = sheet.settle("interval", None if interval is None else interval.distance, INTERVAL).si
    offset = sheet.settle("end_offset", given.end_offset, END_OFFSET).si
    stations = engineering.stations_by_distance(length, distance, offset)
    if sheet.working is not None:
        words = f"({length:.6g} m - 2 x {offset:.6g} m) / {distance:.6g} m"
        sheet.show("stations", "(L - 2 offset) / distance, rounded up, + 1", words, stations)
    shared = sheet.settle("shared_end_count", given.shared_end_count, SHARED_END_COUNT)
    spacing = engineering.spacing_by_distance(length, stations, offset)
    return Stations(stations, spacing, offset, shared, max(0, stations - shared), distance)


def _refuse_beside_sticks(given: Spacing, stick: Length, sheet: Worksheet) -> None:
    """Refuse what contradicts stations for each stick of a length: an end offset, and sticks of another length."""
    faults = []
    if given.shared_end_count:
        words = "Stations by stick stand half an interval in: none is at an end to be shared. Leave it out."
        faults.append(sheet.fault("shared_end_count", "not_with_per_stick", words, maximum=0))
    if given.end_offset is not None:
        words = "An end offset belongs to an interval by distance; stations by stick stand half an interval in."
        faults.append(sheet.fault("end_offset", "not_with_per_stick", words))
    beside = given.stick_length
    if beside is not None and (over(beside.si, stick.si) or under(beside.si, stick.si)):
        faults.append(
            sheet.fault(
                "stick_length",
                "contradiction",
                f"The interval counts stations for each stick of {text_of(sheet.tell.given(stick))}: give the sticks "
                "one length, or leave it out here.",
                minimum=stick,
                maximum=stick,
            )
        )
    if faults:
        raise UnanswerableError(*faults)


def caution_joints(stick: Length, length: float, stations: Stations, sheet: Worksheet) -> None:
    """Caution where a station of its own stands on a bell or coupling, and name the offset that clears them all."""
    if not stations.spacing:
        return
    clear = JOINT_CLEARANCE.value.si
    skipped = min(1, stations.shared)
    first = stations.first + skipped * stations.spacing
    hits = engineering.stations_on_joints(stations.own, stations.spacing, first, length, stick.si, clear)
    if hits:
        sheet.find(
            Severity.CAUTION,
            "stations_on_joints",
            f"{hits} of {stations.own} stations {'stands' if hits == 1 else 'stand'} closer than "
            f"{text_of(sheet.tell.size(clear))} to a joint every {text_of(sheet.tell.given(stick))}. "
            f"{_way_out(length, stations, stick.si, sheet)}",
            JOINT_CLEARANCE.backing,
            hits,
            0,
            member="stick_length",
        )


def _way_out(length: float, stations: Stations, stick: float, sheet: Worksheet) -> str:
    """Say which offset of the ends keeps every station clear of the joints, or that none does."""
    if stations.interval is None:
        return "Stations by stick have no offset: move those off the bells."
    if stations.shared:
        return "A run that shares a station at its end has no offset: move those off the bells."
    if stations.number > MOST_SEARCHED or stations.interval > WIDEST_SEARCHED:
        return "Move those off the bells."
    clear, step = JOINT_CLEARANCE.value.si, OFFSET_STEP.value.si
    offset = engineering.clear_offset(length, stations.interval, stick, clear, step)
    if offset is None:
        return (
            f"No end_offset up to half an interval, in steps of {text_of(sheet.tell.size(step))}, clears them all: "
            "move those off the bells."
        )
    left = engineering.stations_by_distance(length, stations.interval, offset)
    return f"An end_offset of {text_of(sheet.tell.size(offset))} clears them all, with {left} stations."


def caution_spacing(spacing: float, sheet: Worksheet) -> None:
    """Caution where stations stand wider apart [m] than any publication on file has them."""
    if over(spacing, _WIDEST_DISTANCE.si):
        told, closest, widest = sheet.tell.distance(spacing), *(sheet.tell.given(one) for one in _PUBLISHED_DISTANCES)
        stand, most = apart(told, widest)
        sheet.find(
            Severity.CAUTION,
            "spacing_beyond_published",
            f"Stations {stand} apart are wider than any specification on file ({text_of(closest)} to {most}): ducts "
            "may sag between them.",
            published(_WIDEST.source),
            told,
            widest,
            member="interval",
        )
