"""The ducts that earth and traffic load: their walls, stiffness and what they bear."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ductrun.engineering import flexible_duct as engineering
from ductrun.engineering.flotation import wall_mass
from ductrun.kit.backing import Backing, backing_of
from ductrun.kit.defaults import Default
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import PlasticMaterial
from ductrun.subjects.ground.earth_loading import DUCT_DENSITIES, MATERIAL, MATERIALS, EarthLoading
from ductrun.subjects.parts.bank import DuctBank, conduits_of, lines_of
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.subjects.parts.conduit import SIZES, ListedConduit, MeasuredConduit, find_row, outside_diameter
from ductrun.subjects.parts.duct_mass import settle_unknown_masses
from ductrun.tables import TABLES
from ductrun.tables.earth_rows import DuctMaterial
from ductrun.units import Length, Pressure

CLASSES = {ConduitType(row.type): row for row in TABLES["duct_stiffnesses"]}
STIFFNESSES = {kind: Pressure.parse(row.stiffness_psi, "psi") for kind, row in CLASSES.items()}
BURIAL_CLASSES = sorted(
    (kind for kind in CLASSES if kind.startswith("pvc_db")), key=lambda kind: STIFFNESSES[kind].value
)
MADE_OF = {
    kind: material for material in PlasticMaterial for kind in ConduitType if kind.startswith(f"{material.value}_")
}


def loading_steps(ducts: int, kinds: int, covers: int = 1) -> float:
    """Bound the steps of what earth and traffic do to so many ducts of so many kinds: settled once, and loaded under
    each of so many covers.
    """
    return 120.0 + 3.0 * ducts + covers * (80.0 + 4.5 * ducts + 90.0 * kinds)


class LoadedDuct(NamedTuple):
    """A duct: its type and trade size where it has them, its diameters and wall [m], its `stiffness` at 5 percent for a
    moment and for the long term [Pa], what its wall bears [Pa] and its mass [kg/m], 0 without a wall; None where that
    is not on file. `place` is the sheet of its conduit.
    """

    kind: ConduitType | None
    size: TradeSize | None
    outside: float
    bore: float | None
    wall: float | None
    stiffness: float | None
    long_term_stiffness: float | None
    long_term_share: float
    wall_stress: float
    poisson: float
    mass: float
    place: Worksheet


def load_ducts_of(
    conduits: Sequence[tuple[ListedConduit | MeasuredConduit, Worksheet]],
    given: EarthLoading,
    sheet: Worksheet,
    *,
    encased: bool = False,
) -> list[LoadedDuct]:
    """Settle every conduit as a duct that bears earth, or `encased` the pour around it, of which less is assumed;
    refuses what is no plastic, all faults at once.
    """
    earth = Worksheet(sheet.tell) if encased else sheet
    faults = Gathering()
    ducts = []
    for conduit, place in conduits:
        with faults:
            ducts.append(_duct_of(conduit, place, given, sheet, earth))
    faults.stop()
    if given.duct_mass_per_length is None:
        settle_unknown_masses(sum(duct.wall is None for duct in ducts), len(ducts), sheet)
    return ducts


def ducts_of_bank(
    bank: DuctBank, bank_sheet: Worksheet, given: EarthLoading, sheet: Worksheet, *, encased: bool = False
) -> list[LoadedDuct]:
    """Settle every duct of a bank, tier by tier from the bottom left."""
    conduits = conduits_of(bank, bank_sheet)
    loaded = load_ducts_of(conduits, given, sheet, encased=encased)
    settled = {id(conduit): duct for (conduit, _), duct in zip(conduits, loaded, strict=True)}
    return [settled[id(line.conduit)] for line in lines_of(bank, bank_sheet) for _ in range(line.duct_count)]


def _duct_of(
    conduit: ListedConduit | MeasuredConduit,
    place: Worksheet,
    given: EarthLoading,
    sheet: Worksheet,
    earth: Worksheet,
) -> LoadedDuct:
    """Settle a duct; `earth` is the sheet of what is asked of it in earth alone."""
    kind, row = _material_of(conduit, place, given, sheet)
    outside = outside_diameter(conduit, place)
    backing = backing_of(row)
    bore, wall = _bore_and_wall(conduit, outside, place)
    by_wall = given.pipe_stiffness is None and wall is not None and conduit.type not in CLASSES
    modulus = _settled("modulus", row.modulus_psi, given, sheet if by_wall else earth, backing)
    long_term = _settled("long_term_modulus", row.long_term_modulus_psi, given, earth, backing)
    stress = _settled("allowable_wall_stress", row.allowable_stress_psi, given, earth, backing)
    stiffness = _stiffness(conduit, outside, wall, modulus, given, sheet)
    share = min(1.0, long_term / modulus)
    later = None if stiffness is None else stiffness * share
    mass = _mass(kind, outside, wall, given, sheet)
    return LoadedDuct(
        conduit.type,
        conduit.trade_size,
        outside,
        bore,
        wall,
        stiffness,
        later,
        share,
        stress,
        row.poisson_ratio,
        mass,
        place,
    )


def in_class(duct: LoadedDuct, kind: ConduitType, given: EarthLoading) -> LoadedDuct | None:
    """Give a duct as it would be of another class and its own trade size; None where there is none that takes as much
    room, or where it has no type: what is given of it is then its own, and no other's.
    """
    if duct.kind is None or duct.size is None or duct.size not in SIZES[kind]:
        return None
    aside = Worksheet(duct.place.tell)  # nothing of it is assumed or found: it is not the duct asked about
    conduit = ListedConduit.model_construct(kind="listed", type=kind, trade_size=duct.size)
    try:
        found = _duct_of(conduit, aside, given, aside, aside)
    except UnanswerableError:
        return None
    return None if found.outside != duct.outside else found


def _settled(member: str, psi: float, given: EarthLoading, sheet: Worksheet, backing: Backing) -> float:
    default = Default(Pressure.parse(psi, "psi"), backing)
    settled: Pressure = sheet.settle(member, getattr(given, member), default)
    return settled.si


def _material_of(
    conduit: ListedConduit | MeasuredConduit, place: Worksheet, given: EarthLoading, sheet: Worksheet
) -> tuple[PlasticMaterial, DuctMaterial]:
    """Settle what a duct is made of: what its type says, and what the request says of one without a type."""
    if conduit.type is None:
        kind = sheet.settle("duct_material", given.duct_material, MATERIAL)
        return kind, MATERIALS[kind]
    made_of = MADE_OF.get(conduit.type)
    if made_of is None:
        raise UnanswerableError(
            place.fault(
                "type",
                "not_a_plastic_duct",
                f"{conduit.type.value} is none of the plastic ducts judged here, in earth or in concrete: take one of "
                "them, or ask a structural engineer.",
                [kind.value for kind in MADE_OF],
            )
        )
    if given.duct_material not in (None, made_of):
        raise UnanswerableError(
            sheet.fault(
                "duct_material",
                "contradiction",
                f"{conduit.type.value} is made of {made_of.value.upper()}: leave the material out.",
                [made_of.value],
            )
        )
    return made_of, MATERIALS[made_of]


def _bore_and_wall(
    conduit: ListedConduit | MeasuredConduit, outside: float, place: Worksheet
) -> tuple[float | None, float | None]:
    """Give bore and wall [m]: as measured, or as the table has them; utility duct has no bore there."""
    if conduit.kind == "measured":
        return conduit.inside_diameter.si, (outside - conduit.inside_diameter.si) / 2
    row = find_row(conduit, place)
    wall = None if row.minimum_wall_in is None else Length.parse(float(row.minimum_wall_in), "in").si
    return None if row.inside_diameter is None else row.inside_diameter.si, wall


def _stiffness(
    conduit: ListedConduit | MeasuredConduit,
    outside: float,
    wall: float | None,
    modulus: float,
    given: EarthLoading,
    sheet: Worksheet,
) -> float | None:
    if given.pipe_stiffness is not None:
        return given.pipe_stiffness.si
    if conduit.type is not None and conduit.type in CLASSES:
        sheet.cite(CLASSES[conduit.type].source)
        return STIFFNESSES[conduit.type].si
    return None if wall is None else engineering.pipe_stiffness(modulus, outside, wall)


def _mass(kind: PlasticMaterial, outside: float, wall: float | None, given: EarthLoading, sheet: Worksheet) -> float:
    if given.duct_mass_per_length is not None:
        return given.duct_mass_per_length.si
    if wall is None:
        return 0.0
    return wall_mass(outside, wall, sheet.settle("duct_density", given.duct_density, DUCT_DENSITIES[kind]).si)
