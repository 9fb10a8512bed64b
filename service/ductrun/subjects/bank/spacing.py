"""Spacers along a run: their stations, and the pieces at each."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, Literal, NamedTuple

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import spacing as engineering
from ductrun.engineering.rounding import over
from ductrun.kit.backing import WORKED_OUT, backing_of, published
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import choice, count, number, quantity
from ductrun.kit.forms import Form, Interval, Offset, Omissible, Percent
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.bank.choices import PieceSystem, SpacerPreset, TopClosure
from ductrun.tables import TABLES
from ductrun.units import Length

INTERVAL = quantity("spacers.interval", Length).written_as(lambda value: {"kind": "distance", "distance": value})
END_OFFSET = quantity("spacers.end_offset", Length)
DUCTS_PER_SPACER = count("spacers.ducts_per_spacer")
TOP_CLOSURE = choice("spacers.top_closure", TopClosure)
WASTE_PERCENT = number("spacers.waste_percent")
PIECE_SYSTEM = choice("spacers.piece_system", PieceSystem)
SHARED_END_COUNT = count("spacers.shared_end_count")
JOINT_CLEARANCE = quantity("spacers.joint_clearance", Length)
_PRESETS = {row.preset: row for row in TABLES["spacer_intervals"]}
_READ = sorted(
    (row for row in TABLES["spacer_intervals"] if row.distance_ft is not None and row.standing == "read"),
    key=lambda row: row.distance_ft,
)
_CLOSEST, _WIDEST = _READ[0], _READ[-1]
_PUBLISHED_DISTANCES = tuple(Length.parse(row.distance_ft, "ft") for row in (_CLOSEST, _WIDEST))
_WIDEST_DISTANCE = _PUBLISHED_DISTANCES[1]


class DistanceInterval(Form):
    """Stations no more than a distance apart, ends included."""

    kind: Literal["distance"] = Field(description="Fixed text that says: by distance.")
    distance: Interval = Field(description="Greatest distance between stations.", examples=[{"value": 8, "unit": "ft"}])


class PerStickInterval(Form):
    """So many stations for each stick of duct."""

    kind: Literal["per_stick"] = Field(description="Fixed text that says: by stick.")
    count: Annotated[int, Field(ge=1, le=100)] = Field(description="Stations for each stick.", examples=[2])
    stick_length: Interval = Field(description="Length of a stick.", examples=[{"value": 10, "unit": "ft"}])


class PresetInterval(Form):
    """The interval of a published specification or of the trade, by name."""

    kind: Literal["preset"] = Field(description="Fixed text that says: by a specification.")
    preset: SpacerPreset = Field(description="The specification.", examples=["cegs_4ft"])


SpacerInterval = TypeAliasType(
    "SpacerInterval",
    Annotated[DistanceInterval | PerStickInterval | PresetInterval, Field(discriminator="kind")],
)


class Spacing(Form):
    """How spacers are specified."""

    interval: Omissible[SpacerInterval] = Field(
        default=None,
        description="How far apart the stations stand.",
        json_schema_extra=INTERVAL.stated,
    )
    end_offset: Omissible[Offset] = Field(
        default=None,
        description="Distance of the first and last station from the ends, for an interval by distance.",
        examples=[{"value": 1, "unit": "ft"}],
        json_schema_extra=END_OFFSET.stated,
    )
    duct_count_per_spacer: Omissible[Annotated[int, Field(ge=1, le=20)]] = Field(
        default=None,
        description="Ducts that one piece carries side by side.",
        examples=[1],
        json_schema_extra=DUCTS_PER_SPACER.stated,
    )
    piece_system: Omissible[PieceSystem] = Field(
        default=None,
        description="Whether a piece carries a few ducts, a whole tier or the whole bank.",
        examples=["pieces"],
        json_schema_extra=PIECE_SYSTEM.stated,
    )
    shared_end_count: Omissible[Annotated[int, Field(ge=0, le=2)]] = Field(
        default=None,
        description="Ends of this segment whose station belongs to the segment it meets; 0 between manholes.",
        examples=[0],
        json_schema_extra=SHARED_END_COUNT.stated,
    )
    stick_length: Omissible[Interval] = Field(
        default=None,
        description="Length of a stick, to keep stations clear of the joints.",
        examples=[{"value": 20, "unit": "ft"}],
    )
    top_closure: Omissible[TopClosure] = Field(
        default=None,
        description="What closes each stack above the top ducts.",
        examples=["none"],
        json_schema_extra=TOP_CLOSURE.stated,
    )
    waste_percent: Omissible[Percent] = Field(
        default=None,
        description="Extra pieces to order, in percent.",
        examples=[5],
        json_schema_extra=WASTE_PERCENT.stated,
    )


MOST_SEARCHED = 2_000  # stations for which an offset is looked for
WIDEST_SEARCHED = Length.parse(20, "ft").si  # of an interval: half of it in inches is tried


class Stations(NamedTuple):
    """Stations of a run: their number, their even spacing [m], 0 for a single one, where the first stands [m], and the
    interval asked for [m], None where it is so many a stick.
    """

    number: int
    spacing: float
    first: float
    interval: float | None = None


class Spacers(NamedTuple):
    """Spacers of a run of a `length` [m] with ducts in `tiers` from the bottom: its stations, those of its own that it
    does not leave to a neighbor, the pieces of all.
    """

    length: float
    tiers: tuple[int, ...]
    stations: Stations
    station_count: int
    base_count: int
    intermediate_count: int
    top_count: int
    piece_count: int
    waste_percent: float
    order_count: int


def space(given: Spacing, tiers: Sequence[int], length: float, sheet: Worksheet) -> Spacers:
    """Count the stations of a run of a length [m], and the pieces at each for ducts in tiers from the bottom."""
    stations = _stations(given, length, sheet)
    own = max(0, stations.number - sheet.settle("shared_end_count", given.shared_end_count, SHARED_END_COUNT))
    system = sheet.settle("piece_system", given.piece_system, PIECE_SYSTEM)
    wide = 1
    if system is PieceSystem.PIECES:
        wide = sheet.settle("duct_count_per_spacer", given.duct_count_per_spacer, DUCTS_PER_SPACER)
    closure = sheet.settle("top_closure", given.top_closure, TOP_CLOSURE)
    waste = sheet.settle("waste_percent", given.waste_percent, WASTE_PERCENT)
    _caution_spacing(stations.spacing, sheet)
    _caution_joints(given.stick_length, stations, length, sheet)
    base, intermediate, top = (pieces * own for pieces in _pieces(system, tiers, wide, closure))
    pieces = base + intermediate + top
    if sheet.working is not None:
        each = own or 1
        sheet.show("base", "stations x base pieces of one", f"{own} x {base // each}", base)
        sheet.show("intermediate", "stations x pieces between tiers", f"{own} x {intermediate // each}", intermediate)
    if system is not PieceSystem.PIECES and len(tiers) > 1:
        sheet.find(
            Severity.NOTE,
            "tiers_not_staggered",
            "Pieces that carry whole tiers keep all tiers at one station: spacers of successive tiers cannot be "
            "staggered with them.",
            published("cegs-16526a"),
            member="piece_system",
        )
    sheet.find(
        Severity.NOTE,
        "one_station_apart",
        "The two readings of a specification differ by one station a run: a greatest distance counts both ends (fence "
        "posts), so many a stick does not. Runs that meet at a manhole share no station.",
        WORKED_OUT,
        member="interval",
    )
    order = engineering.with_waste(pieces, waste)
    return Spacers(length, tuple(tiers), stations, own, base, intermediate, top, pieces, waste, order)


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


def _stations(given: Spacing, length: float, sheet: Worksheet) -> Stations:
    """Give the stations of a run of a length [m]."""
    named = given.interval
    interval = _preset(named, sheet) if named is not None and named.kind == "preset" else named
    if interval is not None and interval.kind == "per_stick":
        if given.end_offset is not None:
            raise UnanswerableError(
                sheet.fault(
                    "end_offset",
                    "not_with_per_stick",
                    "An end offset belongs to an interval by distance; stations by stick stand half an interval in.",
                )
            )
        stations = engineering.stations_by_stick(length, interval.count, interval.stick_length.si)
        spacing = interval.stick_length.si / interval.count
        sheet.show(
            "stations",
            "L x count / stick, rounded up",
            f"{length:.6g} m x {interval.count} / {interval.stick_length.si:.6g} m",
            stations,
        )
        return Stations(stations, spacing if stations > 1 else 0.0, spacing / 2)
    distance = sheet.settle("interval", None if interval is None else interval.distance, INTERVAL).si
    offset = sheet.settle("end_offset", given.end_offset, END_OFFSET).si
    stations = engineering.stations_by_distance(length, distance, offset)
    sheet.show(
        "stations",
        "(L - 2 offset) / distance, rounded up, + 1",
        f"({length:.6g} m - 2 x {offset:.6g} m) / {distance:.6g} m",
        stations,
    )
    return Stations(stations, engineering.spacing_by_distance(length, stations, offset), offset, distance)


def _caution_joints(stick: Length | None, stations: Stations, length: float, sheet: Worksheet) -> None:
    """Caution where a station would stand on a bell or coupling, and name an end offset that clears them all."""
    if stick is None or not stations.spacing:
        return
    clear = JOINT_CLEARANCE.value.si
    hits = engineering.stations_on_joints(stations.number, stations.spacing, stations.first, stick.si, clear)
    if hits:
        do = "Shift those that do by hand."
        if stations.interval is not None and stations.number <= MOST_SEARCHED and stations.interval <= WIDEST_SEARCHED:
            offset = engineering.clear_offset(length, stations.interval, stick.si, clear)
            if offset is None:
                do = "No end_offset in whole inches, up to half an interval, clears them all: shift those by hand."
            else:
                do = f"With an end_offset of {text_of(sheet.tell.size(offset))} none does."
        sheet.find(
            Severity.CAUTION,
            "stations_on_joints",
            f"Of {stations.number} stations {hits} stand within {text_of(sheet.tell.size(clear))} of a joint every "
            f"{text_of(sheet.tell.given(stick))}. {do}",
            JOINT_CLEARANCE.backing,
            hits,
            0,
            member="stick_length",
        )


def _caution_spacing(spacing: float, sheet: Worksheet) -> None:
    """Caution where stations stand wider apart [m] than any publication on file has them."""
    if over(spacing, _WIDEST_DISTANCE.si):
        told, closest, widest = sheet.tell.distance(spacing), *(sheet.tell.given(one) for one in _PUBLISHED_DISTANCES)
        sheet.find(
            Severity.CAUTION,
            "spacing_beyond_published",
            f"Stations {text_of(told)} apart are wider than any specification on file ({text_of(closest)} to "
            f"{text_of(widest)}): ducts may sag between them.",
            published(_WIDEST.source),
            told,
            widest,
            member="interval",
        )


def _pieces(system: PieceSystem, tiers: Sequence[int], wide: int, closure: TopClosure) -> tuple[int, int, int]:
    """Give the base, intermediate and top pieces of one station."""
    closed = closure is not TopClosure.NONE
    if system is PieceSystem.WHOLE_BANK:
        return 1, 0, int(closed)
    if system is PieceSystem.WHOLE_TIER:
        return 1, len(tiers) - 1, int(closed)
    return (
        engineering.base_pieces(tiers, wide),
        engineering.intermediate_pieces(tiers, wide),
        engineering.top_pieces(tiers, wide) if closed else 0,
    )
