"""The result of a whole run as a submittal reads it: by subject, a row a stretch, and its circuits with their pulls."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import Any, Final

from msgspec import UNSET, Struct

from ductrun.drawings.load_tables import load_tables
from ductrun.drawings.markup import NOTHING, Markup, element, joined, table
from ductrun.drawings.pull_tables import circuit_tables
from ductrun.drawings.readable import conduit_text, quantity_text, shown, words_of
from ductrun.subjects.duct_run.told import DuctRunResult
from ductrun.subjects.duct_run.told_stretches import RunStretch, StretchRiser
from ductrun.units import AnyQuantity

_NO_VALUE: Final = ""


def run_tables(result: DuctRunResult) -> Markup:
    """Give the results of a run."""
    return joined(
        [
            element("h2", "The run"),
            _lengths(result),
            _ducts(result),
            _stretches(result.stretches),
            element("h2", "Cover"),
            _cover(result.stretches),
            element("h2", "Permitted use"),
            _uses(result.stretches),
            _by_stretch("Trench", "trench", _TRENCH, result.stretches),
            _by_stretch("Spacers", "spacers", _SPACERS, result.stretches),
            _by_stretch("Concrete", "encasement", _CONCRETE, result.stretches),
            _by_place("Reinforcing", _steel(result.stretches), _STEEL),
            _by_stretch("Flotation while the concrete is placed", "flotation", _FLOTATION, result.stretches),
            _by_stretch("Flotation in groundwater", "groundwater_flotation", _FLOTATION, result.stretches),
            _bores(result.stretches),
            _joints(result.stretches),
            _movement(result.stretches),
            _supports(result.stretches),
            load_tables(result, member),
            circuit_tables(result.circuits),
        ]
    )


def member(record: Any, name: str) -> str:
    """Write a member of a told record; nothing where it has none."""
    value = getattr(record, name, UNSET)
    return _NO_VALUE if value is UNSET else shown(value, name)


def _lengths(result: DuctRunResult) -> Markup:
    rows = [
        ("Length in plan", quantity_text(result.plan_length)),
        ("Length of a duct along its center line", quantity_text(result.length)),
        ("Ducts", f"{result.duct_count}, {result.spare_count} of them spare"),
        ("One mandrel for the whole run", member(result, "mandrel_diameter") or "not one for all"),
    ]
    stops = [(stop.name, words_of(stop.kind), quantity_text(stop.station)) for stop in result.stops]
    told = table(("Stop", "What stands there", "Station"), stops)
    return joined([table(("Of the run", "Value"), rows, kind="sent"), told])


def _ducts(result: DuctRunResult) -> Markup:
    rows = [
        (duct.name, ", ".join(duct.circuits) or "spare", member(duct, "outside_diameter") or "not known")
        for duct in result.ducts
    ]
    about = "Tier 1 is the bottom, position 1 the left, looking from start to end."
    return joined([table(("Duct", "Circuits", "Outside diameter"), rows), element("p", about, kind="about")])


def _stretches(stretches: Sequence[RunStretch]) -> Markup:
    rows = [
        (one.name, words_of(one.setting), *map(quantity_text, (one.station, one.plan_length, one.length)))
        for one in stretches
    ]
    return table(("Stretch", "Setting", "Begins at station", "Length in plan", "Length of a duct"), rows)


def _cover(stretches: Sequence[RunStretch]) -> Markup:
    rows = [
        (one.name, *[member(one.cover, name) for name in ("cover_over_raceway", "minimum_cover", "margin", "rule")])
        for one in stretches
        if one.cover is not UNSET
    ]
    if not rows:
        return element("p", "No stretch was held against a least cover.")
    return table(("Stretch", "Over the ducts, at least", "Least that the code takes", "Margin", "Rule"), rows)


def _uses(stretches: Sequence[RunStretch]) -> Markup:
    rows = [
        (one.name, words_of(of_type.conduit_type), words_of(str(use.use)), words_of(str(use.verdict)), use.citation)
        for one in stretches
        for of_type in one.permitted_uses
        for use in of_type.uses
    ]
    return table(("Stretch", "Conduit", "Use", "Verdict", "Rule"), rows)


_TRENCH: Final = {
    "width": "Width",
    "depth": "Depth at most",
    "envelope_width": "Envelope, wide",
    "envelope_height": "Envelope, high",
    "excavation_volume": "Excavation, bank",
    "backfill_volume": "Backfill, compacted",
    "spoil_volume": "Spoil, loose",
}
_SPACERS: Final = {
    "station_count": "Stations",
    "actual_spacing": "Apart",
    "base_spacer_count": "Base",
    "intermediate_spacer_count": "Intermediate",
    "top_piece_count": "Top",
}
_CONCRETE: Final = {
    "envelope_width": "Wide",
    "envelope_height": "High",
    "gross_volume": "Gross",
    "duct_volume": "Ducts",
    "net_volume": "Net",
    "order_volume": "Order",
    "truck_load_count": "Loads",
}
_STEEL: Final = {
    "bar_count": "Bars",
    "bar_size": "Size",
    "longitudinal_length": "With laps",
    "lap_length": "Lap",
    "tie_count": "Ties",
    "tie_size": "Size of ties",
    "tie_spacing": "Ties apart",
    "edge_cover": "Outside the ties",
    "mass": "All bars",
}
_FLOTATION: Final = {
    "full_uplift_per_length": "Uplift of the ducts",
    "concrete_weight_per_length": "Held by concrete",
    "earth_weight_per_length": "Held by earth",
    "uplift_per_length": "Uplift that is left",
    "hold_down_per_station": "To hold down at a station",
    "tie_down_count": "Tie-downs at a station",
}


def _bores(stretches: Sequence[RunStretch]) -> Markup:
    """Give how hard ducts float in the fluid of every bore of which that is known."""
    rows = [
        (one.name, quantity_text(one.bore_uplift_per_length))
        for one in stretches
        if one.bore_uplift_per_length is not UNSET
    ]
    if not rows:
        return NOTHING
    told = table(("Stretch", "Uplift of all ducts, along the bore"), rows)
    return joined([element("h2", "Ducts in the fluid of the bore"), told])


def _by_stretch(title: str, part: str, columns: dict[str, str], stretches: Sequence[RunStretch]) -> Markup:
    """Give one part of every stretch that has it, under a heading."""
    having = [(one.name, getattr(one, part)) for one in stretches if getattr(one, part) is not UNSET]
    return _by_place(title, having, columns)


def _steel(stretches: Sequence[RunStretch]) -> list[tuple[str, Struct]]:
    pours = [(one.name, one.encasement) for one in stretches if one.encasement is not UNSET]
    return [(name, pour.reinforcing_takeoff) for name, pour in pours if pour.reinforcing_takeoff is not UNSET]


def _by_place(title: str, having: Sequence[tuple[str, Any]], columns: dict[str, str]) -> Markup:
    """Give a part by the place that has it; only columns in which something stands."""
    if not having:
        return NOTHING
    used = {name: words for name, words in columns.items() if any(member(told, name) for _, told in having)}
    rows = [(stretch, *[member(told, name) for name in used]) for stretch, told in having]
    return joined([element("h2", title), table(("Stretch", *used.values()), rows, kind="dense")])


def _joints(stretches: Sequence[RunStretch]) -> Markup:
    header = ("Stretch", "Conduit", "Ducts", "Length of one", "Sticks", "Joints", "Elbows", "End bells", "Cement")
    rows = []
    for one in stretches:
        for of_conduit in one.conduits:
            made = of_conduit.joints
            counts = ("order_stick_count", "joint_count", "elbow_count", "end_bell_count", "cement_volume")
            place = one.name if of_conduit.riser is UNSET else f"{one.name}, riser at {of_conduit.riser}"
            conduit = conduit_text(of_conduit)
            length = quantity_text(of_conduit.length)
            rows.append((place, conduit, str(of_conduit.duct_count), length, *[member(made, name) for name in counts]))
    return joined([element("h2", "Ducts and joints"), table(header, rows, kind="dense")])


def above_ground(stretches: Iterable[RunStretch]) -> list[tuple[str, RunStretch | StretchRiser]]:
    """Give what moves in the open: stretches above ground and risers, each by its name."""
    found: list[tuple[str, RunStretch | StretchRiser]] = []
    for one in stretches:
        found.append((one.name, one))
        found += [(f"riser at {riser.name}", riser) for riser in one.risers]
    return found


def _movement(stretches: Sequence[RunStretch]) -> Markup:
    parts = [_moving(name, one.expansion) for name, one in above_ground(stretches) if isinstance(one.expansion, Struct)]
    parts += [_over_joints(one) for one in stretches if one.structure_joints is not UNSET]
    return joined([element("h2", "Movement"), *parts]) if parts else NOTHING


def _over_joints(one: RunStretch) -> Markup:
    """Give the joints of the structure of a stretch, and how far the fitting over each is opened."""
    joints = [] if one.structure_joints is UNSET else one.structure_joints
    columns = {"position": "At", "movement": "Moves", "fitting_travel": "Travel of its fitting"}
    rows = [[member(joint, name) for name in columns] for joint in joints]
    tables = dict.fromkeys(opening_table(joint, heading="Structure at") for joint in joints)
    title = element("h3", f"{one.name}: over joints of the structure, one fitting more in every duct")
    return joined([title, table([*columns.values()], rows, kind="dense"), *tables])


_MOVED: Final = (
    "length",
    "length_change",
    "fitting_count",
    "fitting_positions",
    "anchor_positions",
    "holding_strap_positions",
    "travel_used_percent",
)


def _moving(name: str, told: Any) -> Markup:
    header = ("Run", "Length", "Moves", "Fittings", "Fittings at", "Anchors at", "Holding straps at", "Travel used")
    rows = [(str(number), *[member(run, one) for one in _MOVED]) for number, run in enumerate(told.runs, start=1)]
    about = f"Temperature difference {quantity_text(told.temperature_difference)}, "
    about += f"coefficient {quantity_text(told.coefficient)}."
    tables = [opening_table(run) for run in told.runs]
    return joined([element("h3", name), element("p", about), table(header, rows, kind="dense"), *tables])


def opening_table(run: Any, write: Callable[[AnyQuantity], str] = quantity_text, heading: str = "Conduit at") -> Markup:
    """Give how far a piston is opened by the temperature of the conduit, from cold to hot, or of what it lies on."""
    openings = run.piston_openings
    if openings is UNSET or not openings:
        return NOTHING
    ordered = sorted({one.temperature.value: one for one in openings}.items())
    header = [heading, *[quantity_text(one.temperature) for _, one in ordered]]
    return table(header, [["Piston opened", *[write(one.opening) for _, one in ordered]]], kind="dense across")


def _supports(stretches: Sequence[RunStretch]) -> Markup:
    members = ("support_spacing", "support_count", "actual_spacing", "positions")
    rows = []
    for name, one in above_ground(stretches):
        told = one.supports
        strapped = [] if told is UNSET else told if isinstance(told, list) else [told]
        rows += [(name, *[member(straps, column) for column in members]) for straps in strapped]
    header = ("Where", "Apart at most", "Straps of one duct", "Apart", "At")
    return joined([element("h2", "Supports"), table(header, rows)]) if rows else NOTHING
