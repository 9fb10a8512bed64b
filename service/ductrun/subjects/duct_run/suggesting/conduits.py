"""Other conduit for a run: other types for a stretch, a riser or the whole bank, and the next trade sizes."""

from __future__ import annotations

from typing import Any

from ductrun.kit.wording import listing
from ductrun.subjects.duct_run.assessment import DuctRun
from ductrun.subjects.duct_run.suggesting.changes import Change, Edit, member, setting
from ductrun.subjects.duct_run.suggesting.suggestions import ChangeKind, PatchOp
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
}
_MOST_STEPS = 6


def name_of(kind: ConduitType) -> str:
    """Give what a type of conduit is called."""
    return _NAMES.get(kind, kind.upper())


def riser_types(place: str, body: Any, run: DuctRun) -> list[Change]:
    """Give other conduit for the riser at a place, and for all risers."""
    risers = {
        riser.stop.sheet.place[1:]: (riser.stop, stretch.bank.ducts[0].conduit)
        for stretch in run.stretches
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
            [setting(body, f"{one}/riser_conduit_type", str(kind)) for one in group],
        )
        for kind in _TYPES
        if kind != (stop.given.riser_conduit_type or conduit.type) and conduit.trade_size in SIZES[kind]
        for group in groups
    ]


def stretch_types(stretch: int | None, body: Any, run: DuctRun) -> list[Change]:
    """Give other types of conduit, of the same size, for a stretch, and where that is one among several for all."""
    changes: list[Change] = []
    size = run.stretches[stretch or 0].bank.ducts[0].conduit.trade_size
    alone = len(run.stretches) == 1 and not {"bank", "conduit", "conduit_type"} & set(body["stretches"][0])
    present = {duct.conduit.type for duct in run.stretches[stretch or 0].bank.ducts}
    for kind in _TYPES:
        if kind in present or not _is_laid(kind, size):
            continue
        here = None if stretch is None or alone else _of_stretch(stretch, kind, body)
        if here is not None and stretch is not None:
            message = f"Take {name_of(kind)} in {run.stretches[stretch].laid.name}."
            changes.append(Change(ChangeKind.CONDUIT_TYPE, message, [here]))
        whole = _of_bank("/bank/conduit", kind, body)
        if here is None and whole is not None:
            changes.append(Change(ChangeKind.CONDUIT_TYPE, f"Take {name_of(kind)} for all ducts.", [whole]))
    if stretch is not None and not alone:
        changes += stretch_types(None, body, run)
    return changes


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
    return setting(body, f"{at}/conduit_type", str(kind))


def _of_bank(path: str, kind: ConduitType, body: Any) -> Edit | None:
    conduit = member(body, path)
    size = None if conduit is None else conduit.get("trade_size")
    if size not in SIZES[kind]:
        return None
    return Edit(PatchOp.REPLACE, path, {"kind": "listed", "type": str(kind), "trade_size": size})


def trade_sizes(circuit: int, body: Any, run: DuctRun) -> list[Change]:
    """Give the next trade sizes of every conduit that a circuit overfills, all by as many steps."""
    places: dict[str, Any] = {}
    for one in run.circuits[circuit].fills:
        conduit = one.filled.conduit
        if not one.filled.fill.within:
            path = _conduit_path(conduit.sheet.place, body)
            if path is None:
                return []
            places[path] = member(body, path)
    changes: list[Change] = []
    for step in range(1, _MOST_STEPS + 1):
        patch: list[Edit] = []
        sizes: list[str] = []
        for path, given in places.items():
            larger = list(SIZES[given["type"]])[list(SIZES[given["type"]]).index(given["trade_size"]) + 1 :]
            if len(larger) < step:
                return changes
            sizes.append(larger[step - 1])
            patch.append(Edit(PatchOp.REPLACE, f"{path}/trade_size", larger[step - 1]))
        if patch:
            message = f"Take trade size {', '.join(dict.fromkeys(sizes))} for {run.circuits[circuit].placed.name}."
            changes.append(Change(ChangeKind.TRADE_SIZE, message, patch))
    return changes


def _conduit_path(place: str, body: Any) -> str | None:
    """Give the path of a listed conduit at a pointer, or of that of the bank for one that keeps its size."""
    for path in (place[1:], "/bank/conduit"):
        given = member(body, path)
        if isinstance(given, dict) and given.get("kind") == "listed":
            return path
    return None
