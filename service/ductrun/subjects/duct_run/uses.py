"""Whether the conduit of a stretch is permitted where it lies."""

from __future__ import annotations

from ductrun.kit.backing import PRACTICE
from ductrun.kit.choices import Severity
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.conduit.choices import ConduitUse
from ductrun.subjects.conduit.permitted_use import Using, judge
from ductrun.subjects.duct_run.assessment import JudgedType
from ductrun.subjects.duct_run.banks import RunBank
from ductrun.subjects.duct_run.form import Stretch
from ductrun.subjects.duct_run.practice import laid_over
from ductrun.subjects.duct_run.risers import conduit_of_riser
from ductrun.subjects.duct_run.stops import Stop
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import PlacedType
from ductrun.subjects.parts.envelope import ENCASED_ONLY

_USES = {
    "encased": [ConduitUse.CONCRETE_ENCASEMENT],
    "direct_buried": [ConduitUse.DIRECT_BURIAL],
    "bored": [ConduitUse.DIRECTIONAL_BORE],
    "above_ground": [ConduitUse.ABOVE_GROUND],
}
_RISER = [ConduitUse.EMERGING_FROM_GRADE, ConduitUse.ABOVE_GROUND]
_USING = Using(uses=_RISER)  # uses are laid over it: a form of its own for every stretch would be slow to make


def judged_uses(stretch: Stretch, bank: RunBank, here: Worksheet) -> list[JudgedType]:
    """Judge every type of conduit of a stretch in its setting."""
    setting = stretch.setting
    uses = list(_USES.get(setting.kind, ()))
    if setting.kind == "above_ground":
        uses += [use for use in setting.uses or () if use not in uses]
    kinds = list(dict.fromkeys(conduit.type for conduit in bank.conduits))
    place = here.within("setting", about=here.place)
    found = [_judged(kind, uses, place) for kind in kinds] if uses else []
    return [one for one in found if one is not None]


def judged_riser(bank: RunBank, stop: Stop) -> list[JudgedType]:
    """Judge every type of conduit that comes up to a stop."""
    kinds = list(dict.fromkeys(conduit_of_riser(stop, conduit).type for conduit in bank.conduits))
    about = stop.sheet.within("riser_conduit_type", about=stop.sheet.pointer("height"))
    found = [_judged(kind, _RISER, about) for kind in kinds]
    return [one for one in found if one is not None]


def _judged(kind: ConduitType | None, uses: list[ConduitUse], sheet: Worksheet) -> JudgedType | None:
    if kind is None:
        sheet.find(
            Severity.CAUTION,
            "use_not_judged",
            "What the conduit is made of was not said: give its type beside its diameters to judge whether it is "
            "permitted here.",
            PRACTICE,
        )
        sheet.judge(None)
        return None
    findings = sheet.book.findings
    before = len(findings)
    judged = judge(laid_over(_USING, {"uses": uses}), PlacedType(kind, sheet), sheet)
    if kind in ENCASED_ONLY and ConduitUse.DIRECT_BURIAL in uses:  # which the envelope tells
        findings[before:] = [one for one in findings[before:] if one.code != "use_not_permitted"]
    return JudgedType(kind, judged)
