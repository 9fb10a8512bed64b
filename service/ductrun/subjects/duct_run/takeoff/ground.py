"""What is cut, dug, filled, hauled and paved again for a stretch in earth, or bored."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.subjects.duct_run.assessment import AssessedStretch
from ductrun.subjects.duct_run.takeoff.entries import Entry
from ductrun.subjects.parts.takeoff import TakeoffItem, VolumeMeasure


def ground_entries(index: int, stretch: AssessedStretch, tell: Telling) -> Iterator[Entry]:
    """Give what is cut, dug, filled and hauled."""
    setting, length = stretch.laid.given.setting, stretch.laid.plan_length
    at = f"stretches/{index}"
    if setting.kind == "bored":
        bore = setting.bore_diameter
        size = None if bore is None else text_of(tell.given(bore))
        drilled = stretch.laid.length
        words = text_of(tell.distance(drilled))
        yield Entry(TakeoffItem.BORE, drilled, index, f"{at}/length", words, size=size)
        yield Entry(TakeoffItem.BORE_PIT, 2, index, f"{at}/length", "one at either end")
    if stretch.burial is None:
        return
    trench, volume = stretch.burial.trench, tell.bulk_volume
    at = f"{at}/trench"
    dug = trench.volumes
    section = f"{text_of(tell.size(trench.width))} wide, {text_of(tell.size(trench.depth))} deep at most, "
    along = text_of(tell.distance(length))
    section += f"{along} long"
    yield Entry(
        TakeoffItem.EXCAVATION,
        dug.excavated,
        index,
        f"{at}/excavation_volume",
        section,
        measure=VolumeMeasure.BANK,
    )
    yield Entry(TakeoffItem.SHORING, trench.shoring, index, f"{at}/shoring_area", "both sides where deep")
    for item, quantity, measure, member in (
        (TakeoffItem.BEDDING, dug.bedding, VolumeMeasure.COMPACTED, "bedding_volume"),
        (TakeoffItem.SELECT_FILL, dug.select_fill, VolumeMeasure.COMPACTED, "select_fill_volume"),
        (TakeoffItem.NATIVE_BACKFILL, dug.backfill, VolumeMeasure.COMPACTED, "backfill_volume"),
        (TakeoffItem.SPOIL, max(0.0, trench.spoil), VolumeMeasure.LOOSE, "spoil_volume"),
        (TakeoffItem.IMPORT, max(0.0, -trench.spoil), VolumeMeasure.LOOSE, "import_volume"),
    ):
        if not quantity:
            continue
        ordered = item not in {TakeoffItem.NATIVE_BACKFILL, TakeoffItem.SPOIL}
        words = text_of(volume(quantity))
        yield Entry(item, quantity, index, f"{at}/{member}", words, measure=measure, ordered=ordered)
    loads = abs(trench.spoil) / trench.haul_capacity
    words = f"{text_of(volume(abs(trench.spoil)))} loose"
    yield Entry(TakeoffItem.HAUL_LOAD, loads, index, f"{at}/haul_load_count", words, ordered=True)
    tape = trench.tape_length
    words = f"{text_of(tell.distance(stretch.laid.duct_length))} with its overlap"
    yield Entry(TakeoffItem.WARNING_TAPE, tape, index, f"{at}/warning_tape_length", words, ordered=True)
    paved = trench.pavement
    if paved is None:
        return
    at, kind = f"{at}/pavement", str(paved.kind)
    cut = text_of(tell.distance(paved.cut_length))
    yield Entry(TakeoffItem.PAVEMENT_SAWCUT, paved.cut_length, index, f"{at}/saw_cut_length", cut, size=kind)
    area = f"{text_of(tell.size(paved.width))} wide at most"
    for item, member in (
        (TakeoffItem.PAVEMENT_REMOVAL, "removal_area"),
        (TakeoffItem.PAVEMENT_RESTORATION, "restoration_area"),
    ):
        yield Entry(item, paved.area, index, f"{at}/{member}", area, size=kind)
