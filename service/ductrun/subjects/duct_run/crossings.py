"""What only a whole run shows: where stretches meet, and what its places ask for."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from ductrun.engineering.rounding import over
from ductrun.kit.backing import PRACTICE, WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.wording import listing, text_of
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.duct_run.assessment import AssessedStretch
from ductrun.subjects.duct_run.heights import above_ducts
from ductrun.subjects.duct_run.names import Names
from ductrun.subjects.duct_run.places import CONFINED
from ductrun.subjects.duct_run.settings import BURIED
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.parts.route import JOINT_DEFLECTION
from ductrun.units import Length

STEP = quantity("duct_run.step", Length)


def find_crossings(stretches: Sequence[AssessedStretch], names: Names) -> None:
    """Find what is unwise where a stretch goes on in the next without a pull point between."""
    for before, after in pairwise(stretches):
        if before.laid.given.pull_point is not None:
            continue
        with names.about(f"{before.laid.name} to {after.laid.name}", after.laid.station):
            _find_step(before, after)
            _find_bore(before, after)
            _find_emergence(before, after)
            _note_tiers(before, after)


def _depth(stretch: AssessedStretch, *, at_end: bool) -> float | None:
    """Give how deep the top of the ducts lies at an end of a stretch [m]."""
    burial = stretch.burial
    if burial is None:
        return None
    return burial.earth.along[-1 if at_end else 0][1] + above_ducts(burial.envelope)


def _find_step(before: AssessedStretch, after: AssessedStretch) -> None:
    depths = _depth(before, at_end=True), _depth(after, at_end=False)
    if depths[0] is None or depths[1] is None or not over(abs(depths[0] - depths[1]), STEP.value.si):
        return
    sheet = after.laid.sheet
    step, ended, begins = (sheet.tell.size(one) for one in (abs(depths[0] - depths[1]), depths[0], depths[1]))
    sheet.find(
        Severity.CAUTION,
        "ducts_miss_each_other",
        f"The top of the ducts lies {text_of(ended)} deep where one stretch ends and {text_of(begins)} where the next "
        f"begins, {text_of(step)} apart: give the grade or the bends that bring them together, or other covers.",
        STEP.backing,
        step,
        sheet.tell.given(STEP.value),
        member="",
    )


def _find_bore(before: AssessedStretch, after: AssessedStretch) -> None:
    kinds = {before.laid.given.setting.kind, after.laid.given.setting.kind}
    if "bored" not in kinds or len(kinds) == 1:
        return
    sheet = after.laid.sheet
    angle = abs(after.laid.sections[0].element.entry_grade - before.laid.sections[-1].element.exit_grade)
    if not over(angle, JOINT_DEFLECTION.value.si):
        return
    told = sheet.tell.angle(angle)
    sheet.find(
        Severity.CAUTION,
        "meets_bore_without_curve",
        f"The trench meets the bore at {text_of(told)} without a curve; joints deflect by "
        f"{JOINT_DEFLECTION.value} at most. Give the curve that lies there.",
        JOINT_DEFLECTION.backing,
        told,
        sheet.tell.given(JOINT_DEFLECTION.value),
        member="",
    )


def _find_emergence(before: AssessedStretch, after: AssessedStretch) -> None:
    buried = [one.laid.given.setting.kind in BURIED for one in (before, after)]
    above = [one.laid.given.setting.kind == "above_ground" for one in (before, after)]
    types = [{duct.conduit.type for duct in one.bank.ducts} for one in (before, after)]
    if not (any(buried) and any(above)) or types[0] != types[1]:
        return
    sheet = after.laid.sheet
    sheet.find(
        Severity.CAUTION,
        "emerges_in_the_same_conduit",
        "The ducts leave the ground in the conduit they lie in: where they may be damaged, from below grade up, they "
        "need one that is permitted there, such as Schedule 80. Change the conduit at a pull point or a joint below "
        "grade.",
        sheet.rule("emergence"),
        member="",
    )


def _note_tiers(before: AssessedStretch, after: AssessedStretch) -> None:
    if before.bank is after.bank:
        return
    names = [[duct.name for duct in one.bank.ducts] for one in (before, after)]
    if names[0] == names[1]:
        return
    changed = [f"{old} to {new}" for old, new in zip(*names, strict=True) if old != new]
    after.laid.sheet.find(
        Severity.NOTE,
        "ducts_change_place",
        f"The ducts go on in other tiers, in order from the bottom left: {listing(changed[:12])}"
        f"{', and so on' if len(changed) > 12 else ''}. Circuits keep the names of the bank of the run.",
        WORKED_OUT,
        member="",
    )


def caution_places(stretches: Sequence[AssessedStretch], stops: Sequence[Stop], sheet: Worksheet) -> None:
    """Give the usual cautions of the places of a run, each once."""
    if any(stop.given.kind in CONFINED for stop in stops):
        sheet.caution(
            "confined_space",
            "Manholes and vaults are confined spaces: test the air, ventilate, and enter under the adopted permit "
            "rules only.",
            PRACTICE,
        )
    if any(stretch.laid.given.setting.kind == "existing" for stretch in stretches):
        sheet.caution(
            "occupied_ducts",
            "Cables in occupied ducts and manholes are treated as energized until those who are qualified have shown "
            "otherwise.",
            PRACTICE,
        )
