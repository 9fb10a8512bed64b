"""The takeoff of a run: what every part of it takes, gathered by item, and told line by line."""

from __future__ import annotations

from collections.abc import Iterator

from ductrun.engineering.pulling import Straight
from ductrun.kit.telling import Telling
from ductrun.kit.wording import listing, text_of
from ductrun.subjects.bank.spacing import Pieces
from ductrun.subjects.conduit.choices import JoiningMethod, RunEnd
from ductrun.subjects.duct_run.assessment import AssessedStretch, DuctRun, Piece
from ductrun.subjects.duct_run.changes import called
from ductrun.subjects.duct_run.laying import LaidSection
from ductrun.subjects.duct_run.takeoff_above import above_ground, cement_entry, sticks_of
from ductrun.subjects.duct_run.takeoff_ends import ends_and_spans, spans_of_run
from ductrun.subjects.duct_run.takeoff_entries import Entry, SizeOfLine, sized
from ductrun.subjects.duct_run.takeoff_lines import takeoff_of
from ductrun.subjects.parts.choices import BendMade
from ductrun.subjects.parts.route import inside
from ductrun.subjects.parts.takeoff import Takeoff, TakeoffItem, VolumeMeasure
from ductrun.subjects.pulling.choices import Attachment
from ductrun.subjects.pulling.practice import ATTACHMENT

_FITTINGS = {TakeoffItem.TERMINAL_ADAPTER, TakeoffItem.COUPLING}


def takeoff_of_run(run: DuctRun, tell: Telling) -> Takeoff:
    """Give the takeoff of a run, priced by the caller's rates."""
    entries = entries_of(run, tell) if run.entries is None else run.entries
    names = [stretch.laid.name for stretch in run.stretches]
    return takeoff_of(entries, names, run.given.rates, tell)


def entries_of(run: DuctRun, tell: Telling) -> Iterator[Entry]:
    """Give all that a run takes, part by part; `tell` writes the arithmetic."""
    for index, stretch in enumerate(run.stretches):
        yield from _ground(index, stretch, tell)
        yield from _bank(index, stretch, tell)
        for at, piece in enumerate(stretch.pieces):
            yield from _ducts(index, at, stretch, piece, tell)
        yield from above_ground(index, stretch, tell)
    yield from ends_and_spans(run, tell)
    yield from _cables(run, tell)


def _ground(index: int, stretch: AssessedStretch, tell: Telling) -> Iterator[Entry]:
    """Give what is cut, dug, filled and hauled."""
    setting, length = stretch.laid.given.setting, stretch.laid.plan_length
    at = f"stretches/{index}"
    if setting.kind == "bored":
        bore = setting.bore_diameter
        size = None if bore is None else text_of(tell.given(bore))
        words = text_of(tell.distance(length))
        yield Entry(TakeoffItem.BORE, length, index, f"{at}/plan_length", words, size=size)
        yield Entry(TakeoffItem.BORE_PIT, 2, index, f"{at}/plan_length", "one at either end")
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
    words = f"{along} with its overlap"
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


def _bank(index: int, stretch: AssessedStretch, tell: Telling) -> Iterator[Entry]:
    """Give spacers, tie-downs, bars, forms, concrete and the ground of a bank."""
    burial, at = stretch.burial, f"stretches/{index}"
    if burial is None:
        return
    if burial.spacers is not None:
        yield from _spacers(index, stretch, tell)
    ties = burial.flotation
    if ties is not None and ties.all_tie_downs is not None:
        spacing = text_of(tell.distance(ties.station_spacing))
        words = f"{ties.tie_downs} at each station, stations {spacing} apart"
        place = f"{at}/flotation/total_tie_down_count"
        yield Entry(TakeoffItem.TIE_DOWN, ties.all_tie_downs, index, place, words, ordered=True)
    pour = burial.encasement
    if pour is None:
        return
    at = f"{at}/encasement"
    net, gross = tell.bulk_volume(pour.net), tell.bulk_volume(pour.gross)
    words = f"{text_of(gross)} less {text_of(tell.bulk_volume(pour.displaced))} of ducts"
    yield Entry(
        TakeoffItem.CONCRETE,
        pour.net,
        index,
        f"{at}/net_volume",
        words if net != gross else text_of(net),
        waste=pour.waste_percent,
        order=pour.order,
        package="truck load",
        package_count=pour.load_count,
    )
    form = pour.envelope.form * pour.length
    words = f"{text_of(tell.size(pour.envelope.height))} high, both sides"
    yield Entry(TakeoffItem.FORM, form, index, f"{at}/form_area", words)
    if pour.bars is not None:
        bars, at = pour.bars, f"{at}/reinforcing_takeoff"
        words = f"{bars.lap_count} laps of {text_of(tell.size(bars.lap))} in it"
        for item, length, member, size, how in (
            (TakeoffItem.REINFORCING_BAR, bars.longitudinal, "longitudinal_length", bars.size, words),
            (TakeoffItem.TIE_BAR, bars.ties, "tie_length", bars.tie_size, f"{bars.tie_count} ties"),
        ):
            yield Entry(item, length, index, f"{at}/{member}", how, size=str(size), ordered=True)
    if pour.grounding is not None:
        ground = pour.grounding
        yield Entry(
            TakeoffItem.BANK_GROUND,
            ground.length,
            index,
            f"stretches/{index}/encasement/bank_ground_takeoff/conductor_length",
            "all conductors with both ends",
            size=str(ground.size),
            waste=(ground.order / ground.length - 1) * 100 if ground.length else 0.0,
            ordered=True,
        )


def _spacers(index: int, stretch: AssessedStretch, tell: Telling) -> Iterator[Entry]:
    burial = stretch.burial
    assert burial is not None and burial.spacers is not None  # noqa: S101, PT018  (looked at before)
    spacers = burial.spacers
    sizes: list[tuple[str | None, Pieces]] = [
        (_size_of(stretch, outside, tell), pieces) for outside, pieces in spacers.sizes
    ]
    for size, pieces in sizes or [(None, spacers.pieces)]:
        for item, count, member in (
            (TakeoffItem.BASE_SPACER, pieces.base, "base_spacer_count"),
            (TakeoffItem.INTERMEDIATE_SPACER, pieces.intermediate, "intermediate_spacer_count"),
            (TakeoffItem.TOP_SPACER, pieces.top, "top_piece_count"),
        ):
            yield Entry(
                item,
                count,
                index,
                f"stretches/{index}/spacers/{member}",
                f"{spacers.stations.own} stations",
                size=size,
                waste=spacers.waste_percent,
                ordered=True,
            )


def _size_of(stretch: AssessedStretch, outside: float, tell: Telling) -> str:
    """Give the trade size of the ducts of an outside diameter [m], or that diameter."""
    for duct, placed in zip(stretch.bank.ducts, stretch.bank.in_its_place.ducts, strict=True):
        if placed.diameter == outside and duct.conduit.trade_size is not None:
            return str(duct.conduit.trade_size)
    return text_of(tell.size(outside))


def _ducts(index: int, at: int, stretch: AssessedStretch, piece: Piece, tell: Telling) -> Iterator[Entry]:
    """Give conduit, bends, and what joins and finishes them."""
    named, place, count = sized(piece.conduit, tell), f"stretches/{index}/ducts/{at}", piece.duct_count
    joined = piece.joined
    straight = piece.length if joined is None else joined.straight_length
    words = f"{count} x {text_of(tell.distance(straight))}"
    yield Entry(
        TakeoffItem.CONDUIT,
        straight * count,
        index,
        f"{place}/length",
        words,
        *named,
        waste=None if joined is None else joined.waste_percent,
        stick=None if joined is None else joined.stick_length.si,
        stick_count=0 if joined is None else sticks_of(stretch, piece, joined),
        package=None if joined is None else f"stick of {joined.stick_length}",
        ordered=True,
    )
    for one in piece.sections:
        yield from _bend(index, one, named, count, stretch)
    if joined is None:
        return
    ducts = f"{count} {'duct' if count == 1 else 'ducts'}"
    fitted = f"{ducts}, with the change to {listing(list(dict.fromkeys(piece.to)))}" if piece.to else ducts
    fused = joined.ducts.method is JoiningMethod.FUSED
    for item, number, member, bought in (
        (TakeoffItem.FUSION_JOINT if fused else TakeoffItem.JOINT, joined.joint_count, "joint_count", False),
        (TakeoffItem.COUPLING, joined.order_coupling_count, "order_coupling_count", True),
        (TakeoffItem.END_BELL, joined.finish_count(RunEnd.END_BELL), "end_bell_count", True),
        (TakeoffItem.TERMINAL_ADAPTER, joined.finish_count(RunEnd.ADAPTER), "adapter_count", True),
    ):
        words = ducts if item not in _FITTINGS else fitted
        yield Entry(item, number, index, f"{place}/joints/{member}", words, *named, ordered=bought)
    if joined.cement is not None:
        place, words = f"{place}/joints/cement_volume", f"{joined.joint_count} joints of {called(piece.conduit)}"
        yield cement_entry(joined.cement.volume, index, place, words)


def _bend(index: int, one: LaidSection, named: SizeOfLine, count: int, stretch: AssessedStretch) -> Iterator[Entry]:
    """Give a bend that is bought or bent; what is laid on a curve is conduit."""
    element = one.element
    if isinstance(element, Straight):
        return
    item = TakeoffItem.ELBOW if one.is_elbow else TakeoffItem.FIELD_BEND if one.made is BendMade.FIELD_BEND else None
    if item is None:
        return
    ducts = f"{count} {'duct' if count == 1 else 'ducts'}"
    yield Entry(
        item,
        count,
        index,
        f"stretches/{index}/length",
        f"{ducts}, one in each at {inside(one.name)}" if stretch.laid.given.sections else f"{ducts}, one in each",
        *named,
        angle=element.angle,
        radius=element.radius,
        ordered=item is TakeoffItem.ELBOW,
    )


def _cables(run: DuctRun, tell: Telling) -> Iterator[Entry]:
    """Give cable, reels, eyes and lubricant of every pull."""
    spans = spans_of_run(run)
    for number, circuit in enumerate(run.circuits):
        for at, (ducts, pull) in enumerate(circuit.pulls):
            index, place = spans[pull.start][0], f"circuits/{number}/pulls/{at}"
            way = f"{circuit.placed.name}, {run.stops[pull.start].name} to {run.stops[pull.end].name}"
            yield Entry(
                TakeoffItem.LUBRICANT,
                pull.pulled.lubricant_volume * len(ducts),
                index,
                f"{place}/pull/lubricant_volume",
                f"{len(ducts)} x {text_of(tell.liquid_volume(pull.pulled.lubricant_volume))}, {way}",
                ordered=True,
            )
            held = _attachment(run, number)
            if held is Attachment.PULLING_EYE:
                yield Entry(TakeoffItem.PULLING_EYE, len(ducts), index, place, way, ordered=True)
            for line, cable in zip(pull.order, pull.pulled.pulling.cables.lines, strict=True):
                number_of = line.cable_count * len(ducts)
                size = _cable_size(cable.given, tell)
                each = text_of(tell.given(line.order_length))
                yield Entry(
                    TakeoffItem.CABLE,
                    line.exact_length * number_of,
                    index,
                    f"{place}/cables_to_order",
                    f"{number_of} x {each}, {way}",
                    size=size,
                    waste=line.waste_percent,
                    order=line.order_length.si * number_of,
                )
                if line.reel_count is not None:
                    reels = line.reel_count * len(ducts)
                    yield Entry(
                        TakeoffItem.CABLE_REEL,
                        reels,
                        index,
                        f"{place}/cables_to_order",
                        way,
                        size=size,
                        ordered=True,
                    )


def _attachment(run: DuctRun, number: int) -> Attachment:
    own, shared = run.circuits[number].placed.given.pulling, run.given.pulling
    for practice in (own, shared):
        if practice is not None and practice.attachment is not None:
            return practice.attachment
    return ATTACHMENT.value


def _cable_size(cable: object, tell: Telling) -> str:
    """Say what a cable is, as it is ordered."""
    size = getattr(cable, "size", None)
    words = [str(word) for word in (size, getattr(cable, "insulation", None), getattr(cable, "material", None)) if word]
    if size is None:
        conductor = getattr(cable, "conductor", None)
        if conductor is not None and conductor.size is not None:
            words.append(f"{conductor.size} {conductor.material}")
        words.append(f"{text_of(tell.given(cable.diameter))} diameter")  # type: ignore[attr-defined]  # a measured one
    return " ".join(words)
