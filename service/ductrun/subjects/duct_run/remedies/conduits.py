"""Other conduit for a run: other types for a stretch, a riser or the whole bank, and the next trade sizes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from ductrun.kit.answers import Finding
from ductrun.kit.wording import listing
from ductrun.subjects.duct_run.remedies.case import Case, names_of, stretches_of
from ductrun.subjects.duct_run.remedies.changes import Change, Edit, member
from ductrun.subjects.duct_run.remedies.remedies import ChangeKind
from ductrun.subjects.ground.loaded_ducts import CLASSES
from ductrun.subjects.parts.choices import ConduitType
from ductrun.subjects.parts.conduit import SIZES

# from the one that costs least
_TYPES = (
    ConduitType.PVC_SCHEDULE_40,
    ConduitType.PVC_SCHEDULE_80,
    ConduitType.IMC,
    ConduitType.RMC,
    ConduitType.RTRC,
)
_NAMES = {
    ConduitType.PVC_SCHEDULE_40: "Schedule 40 PVC",
    ConduitType.PVC_SCHEDULE_80: "Schedule 80 PVC",
    ConduitType.PVC_DB_60: "DB-60",
    ConduitType.PVC_DB_100: "DB-100",
    ConduitType.PVC_DB_120: "DB-120",
    ConduitType.PVC_EB_35: "EB-35",
}
_BURIAL_TYPE = ConduitType.PVC_DB_120  # the stiffest: nobody has said what lies on it
# from the least stiff
_STIFFER = (
    ConduitType.PVC_EB_20,
    ConduitType.PVC_EB_35,
    ConduitType.PVC_DB_60,
    ConduitType.PVC_DB_100,
    ConduitType.PVC_DB_120,
    ConduitType.PVC_SCHEDULE_40,
    ConduitType.PVC_SCHEDULE_80,
)
_FOR_CONCRETE = {ConduitType.PVC_TYPE_EB, ConduitType.PVC_EB_20, ConduitType.PVC_EB_35}
_MOST_RUNGS = 6


def name_of(kind: ConduitType) -> str:
    """Give what a type of conduit is called."""
    return _NAMES.get(kind, kind.upper())


def riser_types(place: str, case: Case) -> list[Change]:
    """Give other conduit for the riser at a place, and for all risers."""
    risers = {
        riser.stop.sheet.place[1:]: (riser.stop, stretch.bank.ducts[0].conduit)
        for stretch in case.run.stretches
        for riser in stretch.risers
    }
    if place not in risers:
        return []
    stop, conduit = risers[place]
    groups = [[place], list(risers)] if len(risers) > 1 else [[place]]
    return [
        Change(
            ChangeKind.RISER_CONDUIT_TYPE,
            f"Come up to {listing([risers[one][0].name for one in group])} in {name_of(kind)}.",
            [Edit(f"{one}/riser_conduit_type", str(kind)) for one in group],
        )
        for kind in _TYPES
        if kind != (stop.given.riser_conduit_type or conduit.type) and conduit.trade_size in SIZES[kind]
        for group in groups
    ]


def other_types(found: Finding, case: Case) -> list[Change]:
    """Give other types of conduit, of the same size, for the stretch that is found, and for all."""
    return _types(_TYPES, stretches_of(found, case), case)


def burial_types(found: Finding, case: Case) -> list[Change]:
    """Give duct for direct burial where duct for concrete lies in earth."""
    return _types([_BURIAL_TYPE], [at for at in stretches_of(found, case) if _present(at, case) & _FOR_CONCRETE], case)


def stiffer_types(found: Finding, case: Case) -> list[Change]:
    """Give stiffer duct, from the next on; what is made for concrete where it lies in that."""
    about = [at for at in stretches_of(found, case) if case.run.stretches[at].burial is not None]
    encased = [at for at in about if case.body["stretches"][at]["setting"]["kind"] == "encased"]
    least = max((_STIFFER.index(kind) for at in about for kind in _present(at, case) if kind in _STIFFER), default=-1)
    stiffer = [kind for kind in _STIFFER[least + 1 :] if kind not in _FOR_CONCRETE or encased == about]
    return _types(stiffer, about, case)


def nonmetallic_types(found: Finding, case: Case) -> list[Change]:
    """Give plastic conduit in place of steel."""
    return _types(_TYPES[:2], stretches_of(found, case), case)


def _present(stretch: int, case: Case) -> set[ConduitType]:
    return {duct.conduit.type for duct in case.run.stretches[stretch].bank.ducts if duct.conduit.type is not None}


def _types(kinds: Sequence[ConduitType], stretches: Sequence[int], case: Case) -> list[Change]:
    """Give types of conduit for one stretch after the other, for those together, then for all ducts."""
    given = case.body["stretches"]
    alone = len(given) == 1 and not {"bank", "conduit", "conduit_type"} & set(given[0])
    groups = [[at] for at in stretches] + ([list(stretches)] if 1 < len(stretches) < len(given) else [])
    changes: list[Change] = []
    for kind in kinds:
        for group in () if alone else groups:
            here = [_of_stretch(at, kind, case.body) for at in group if _differs(at, kind, case)]
            edits = [edit for edit in here if edit is not None]
            if len(edits) == len(group):
                message = f"Take {name_of(kind)} in {names_of(group, case)}."
                changes.append(Change(ChangeKind.CONDUIT_TYPE, message, edits))
    for kind in kinds:
        whole = (
            _of_bank("/bank/conduit", kind, case.body) if any(_differs(at, kind, case) for at in stretches) else None
        )
        if whole is not None:
            changes.append(Change(ChangeKind.CONDUIT_TYPE, f"Take {name_of(kind)} for all ducts.", [whole]))
    return changes


def _differs(stretch: int, kind: ConduitType, case: Case) -> bool:
    """Say whether a stretch has none of a type, and that is on file in its size, with its bore if cables lie in it."""
    size = case.run.stretches[stretch].bank.ducts[0].conduit.trade_size
    bored = not case.run.circuits or kind not in CLASSES
    return kind not in _present(stretch, case) and bored and _is_laid(kind, size)


def _is_laid(kind: ConduitType, size: str | None) -> bool:
    """Say whether a type is on file with the outside diameter that a bank of it needs."""
    row = None if size is None else SIZES[kind].get(size)
    return row is not None and row.outside_diameter is not None


def _of_stretch(stretch: int, kind: ConduitType, body: Any) -> Edit | None:
    given, at = body["stretches"][stretch], f"/stretches/{stretch}"
    if "bank" in given:
        return _of_bank(f"{at}/bank/conduit", kind, body)
    if "conduit" in given:
        return _of_bank(f"{at}/conduit", kind, body)
    return Edit(f"{at}/conduit_type", str(kind))


def _of_bank(path: str, kind: ConduitType, body: Any) -> Edit | None:
    conduit = member(body, path)
    size = None if conduit is None else conduit.get("trade_size")
    if size not in SIZES[kind]:
        return None
    return Edit(path, {"kind": "listed", "type": str(kind), "trade_size": size})


def trade_sizes(circuit: int, case: Case) -> list[Change]:
    """Give the next trade sizes of every conduit that a circuit overfills, all by as many steps."""
    body, run = case.body, case.run
    places: dict[str, Any] = {}
    for one in run.circuits[circuit].fills:
        conduit = one.filled.conduit
        if not one.filled.fill.within:
            path = _conduit_path(conduit.sheet.place, circuit, case)
            if path is None:
                return []
            places[path] = member(body, path)
    changes: list[Change] = []
    for step in range(1, _MOST_RUNGS + 1):
        patch: list[Edit] = []
        sizes: list[str] = []
        for path, given in places.items():
            larger = list(SIZES[given["type"]])[list(SIZES[given["type"]]).index(given["trade_size"]) + 1 :]
            if len(larger) < step:
                return changes
            sizes.append(larger[step - 1])
            patch.append(Edit(f"{path}/trade_size", larger[step - 1]))
        if patch:
            message = f"Take trade size {', '.join(dict.fromkeys(sizes))} for {run.circuits[circuit].placed.name}."
            changes.append(Change(ChangeKind.TRADE_SIZE, message, patch))
    return changes


def _conduit_path(place: str, circuit: int, case: Case) -> str | None:
    """Give the path of a listed conduit at a pointer; of one that only has another type than its bank, that of a duct
    of the circuit in the bank.
    """
    ducts = case.run.circuits[circuit].placed.ducts
    banks = [stretch.bank.ducts[duct].sheet.place for stretch in case.run.stretches for duct in ducts]
    for path in (place[1:], *(one[1:] for one in banks), "/bank/conduit"):
        given = member(case.body, path)
        if isinstance(given, dict) and given.get("kind") == "listed":
            return path
    return None
