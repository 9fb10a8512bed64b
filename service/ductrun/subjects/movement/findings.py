"""What is found about runs that move: the coefficient's source, the trigger, fixings, and where runs are held."""

from __future__ import annotations

from typing import NamedTuple

from ductrun.kit.backing import WORKED_OUT, Backing, backing_of
from ductrun.kit.choices import Severity, Standing
from ductrun.kit.defaults import quantity
from ductrun.kit.telling import TELLINGS
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.movement.choices import ConduitMaterial, RunSetting
from ductrun.subjects.movement.fittings import Fitting, Layout
from ductrun.tables import TABLES
from ductrun.units import ExpansionCoefficient, Length, Temperature

TRIGGER = quantity("expansion.trigger", Length).value
_TRIGGER_TOLD = {system: telling.given(TRIGGER) for system, telling in TELLINGS.items()}
_TRIGGER_TEXT = {system: text_of(told) for system, told in _TRIGGER_TOLD.items()}
SOLD = tuple(Length.parse(row.travel_in, "in") for row in TABLES["fitting_travels"])
_RULES = {ConduitMaterial.PVC: "expansion_pvc", ConduitMaterial.RTRC: "expansion_rtrc"}


class MovingRun(NamedTuple):
    """A straight run [m]: its change of length [m], its fittings, the share of their travel that is used [1].

    `layout` says where they stand, None without any or without room for them. `openings` tells how far the pistons are
    opened [m] at each temperature asked for, the installation first.
    """

    length: float
    change: float
    fitting_count: int
    travel_used: float
    layout: Layout | None
    openings: list[tuple[Temperature, float]]


class Apart(NamedTuple):
    """The coefficients of a conduit and of the structure it lies on, which moves too [1/K]."""

    own: float
    structure: float


class Coefficient(NamedTuple):
    """How a conduit moves with temperature, as printed or given, and what backs that.

    Its material, if that was given, and the sheet of the place where material or coefficient were. Against a structure
    that moves too it is that of both, and `apart` says of what.
    """

    printed: ExpansionCoefficient
    backing: Backing
    material: ConduitMaterial | None
    place: Worksheet
    apart: Apart | None = None

    @property
    def per_kelvin(self) -> float:
        """The coefficient in SI [1/K]."""
        return self.printed.si


_COEFFICIENTS = {
    row.material: (ExpansionCoefficient.parse(row.coefficient, row.unit), backing_of(row))
    for row in TABLES["expansion_coefficients"]
}


GIVEN_COEFFICIENT = Backing("the coefficient given", Standing.CALLER)


def coefficient_of(
    material: ConduitMaterial | None, given: ExpansionCoefficient | None, sheet: Worksheet
) -> Coefficient:
    """Give the coefficient of a conduit; one of material and coefficient must be given."""
    if material is not None and given is None:
        printed, backing = _COEFFICIENTS[material]
        sheet.cite(backing.source_id)
        return Coefficient(printed, backing, material, sheet.within("material"))
    if given is not None and material is None:
        return Coefficient(given, GIVEN_COEFFICIENT, None, sheet.within("coefficient"))
    both = material is not None
    raise UnanswerableError(
        sheet.fault(
            "coefficient" if both else "material",
            "one_of_two",
            "Give either material or coefficient, not both." if both else "Give either material or coefficient.",
            [choice.value for choice in ConduitMaterial],
        )
    )


def rule_of(material: ConduitMaterial | None, sheet: Worksheet) -> Backing:
    """Say which rule of the code speaks of the movement of this material."""
    return sheet.rule(_RULES.get(material, "expansion_other") if material is not None else "expansion_other")


def find_movement(which: str, place: Worksheet, run: MovingRun, fitting: Fitting, backing: Backing) -> None:
    """Say that a run needs fittings, how many, and how they are fixed; `place` is the sheet of the run."""
    tell, count = place.tell, run.fitting_count
    change = tell.size(run.change)
    travel = text_of(tell.given(fitting.travel))
    if count == 1:
        fittings = f"1 expansion fitting of {travel} travel"
        where = "Clamp its barrel at one end of the run, in a riser the top, opening down"
    else:
        each = text_of(tell.distance(run.length / count))
        fittings = f"{count} expansion fittings of {travel} travel, one to each {each}"
        where = (
            "Anchor the run in its middle and clamp both barrels there, back to back"
            if count == 2
            else "Anchor the run between them and clamp each barrel at a fixed point, back to back at every second "
            "anchor"
        )
    place.find(
        Severity.CAUTION,
        "expansion_fitting_required",
        f"{which} moves {text_of(change)}, at or over the {_TRIGGER_TEXT[tell.system]} that calls for an expansion "
        f"fitting: provide {fittings}. {where}; let all else slide in guide straps, none on a piston, and leave slack "
        "in the conductors.",
        backing,
        change,
        _TRIGGER_TOLD[tell.system],
        member="",
    )


def report_no_room(which: str, place: Worksheet, run: MovingRun, fitting: Fitting) -> None:
    """Caution that the fittings are longer than the pieces of run they stand in."""
    reach, room = place.tell.size(fitting.reach), place.tell.size(run.length / run.fitting_count)
    place.find(
        Severity.CAUTION,
        "no_room_for_fittings",
        f"{which} has {text_of(room)} for each fitting, and one fully open takes {text_of(reach)}: it is not laid out. "
        "Take shorter fittings or give the run a bend.",
        WORKED_OUT,
        reach,
        room,
        member="",
    )


def report_borrowed_trigger(coefficient: Coefficient, rule: Backing) -> None:
    """Note a material for which the code has no trigger; the one of PVC and RTRC is used."""
    if coefficient.material in _RULES:
        return
    place = coefficient.place
    system = place.tell.system
    place.find(
        Severity.NOTE,
        "trigger_borrowed",
        f"The code sets the trigger of {_TRIGGER_TEXT[system]} for PVC and RTRC; for this run it is used as a planning "
        "figure, and fittings are due where the movement needs them.",
        rule,
        limit=_TRIGGER_TOLD[system],
        member="",
    )


def report_crossings(emerges_from_grade: bool | None, crosses_structural_joint: bool | None, sheet: Worksheet) -> None:
    """Caution where a run leaves the ground or crosses a joint: that asks for fittings beside its own movement."""
    if emerges_from_grade:
        sheet.find(
            Severity.CAUTION,
            "emerges_from_grade",
            "Where the run leaves the ground, settlement and frost move it: provide an expansion fitting or a slip "
            "riser, and Schedule 80 where it is exposed to physical damage.",
            sheet.rule("emergence"),
            member="emerges_from_grade",
        )
    if crosses_structural_joint:
        sheet.find(
            Severity.CAUTION,
            "crosses_structural_joint",
            "Where a run crosses a joint of the structure it needs a listed expansion and deflection fitting or other "
            "approved means, whatever it moves by itself.",
            sheet.rule("structural_joint"),
            member="crosses_structural_joint",
        )


def report_setting(setting: RunSetting, rule: Backing, sheet: Worksheet) -> None:
    """Explain what the movement told is that of, or why a run that is held is not computed as if it were free."""
    code, words = _HOLDING[setting]
    sheet.find(Severity.NOTE, code, words, rule, member="setting")


_HOLDING = {
    RunSetting.ABOVE_GROUND: (
        "free_to_move",
        "The movement is that of conduit free to slide, at the temperature of the conduit itself, which in the sun is "
        "not that of the air.",
    ),
    RunSetting.DIRECT_BURIED: (
        "direct_buried_run_is_held",
        "The ground holds a buried run and keeps its temperature nearly even: it does not move as a free one would. "
        "Backfill at the temperature of the ground, snake long runs, and provide for movement where they come up.",
    ),
    RunSetting.ENCASED: (
        "encased_run_is_held",
        "Concrete holds an encased run: it needs no expansion fitting but where the envelope ends, at structures and "
        "at their joints.",
    ),
}
