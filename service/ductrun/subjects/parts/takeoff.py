"""The takeoff of a run: what is ordered, dug and done, line by line, in the order of building."""

from __future__ import annotations

from typing import Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.texts import MOST_NAME
from ductrun.subjects.parts.choices import ConduitType
from ductrun.units import Code


class TakeoffGroup(Code):
    """Groups of a takeoff, in the order of building."""

    SITE_WORK = "site_work"
    DUCT = "duct"
    BANK = "bank"
    BACKFILL = "backfill"
    SUPPORTS = "supports"
    CABLE = "cable"


class TakeoffItem(Code):
    """What a line of a takeoff is of, in the order of its group."""

    PAVEMENT_SAWCUT = "pavement_sawcut"
    PAVEMENT_REMOVAL = "pavement_removal"
    EXCAVATION = "excavation"
    SHORING = "shoring"
    BORE = "bore"
    BORE_PIT = "bore_pit"
    CONDUIT = "conduit"
    ELBOW = "elbow"
    FIELD_BEND = "field_bend"
    COUPLING = "coupling"
    EXPANSION_FITTING = "expansion_fitting"
    TERMINAL_ADAPTER = "terminal_adapter"
    CONDUIT_BODY = "conduit_body"
    END_BELL = "end_bell"
    DUCT_PLUG = "duct_plug"
    CAP = "cap"
    WALL_PENETRATION = "wall_penetration"
    JOINT = "joint"
    FUSION_JOINT = "fusion_joint"
    SOLVENT_CEMENT = "solvent_cement"
    PRIMER = "primer"
    BASE_SPACER = "base_spacer"
    INTERMEDIATE_SPACER = "intermediate_spacer"
    TOP_SPACER = "top_spacer"
    TIE_DOWN = "tie_down"
    REINFORCING_BAR = "reinforcing_bar"
    TIE_BAR = "tie_bar"
    FORM = "form"
    CONCRETE = "concrete"
    BANK_GROUND = "bank_ground"
    BEDDING = "bedding"
    SELECT_FILL = "select_fill"
    IMPORT = "import"
    NATIVE_BACKFILL = "native_backfill"
    WARNING_TAPE = "warning_tape"
    SPOIL = "spoil"
    HAUL_LOAD = "haul_load"
    PAVEMENT_RESTORATION = "pavement_restoration"
    STRAP = "strap"
    HANGER = "hanger"
    MANDREL_PASS = "mandrel_pass"  # noqa: S105  (no password)
    PULL_CORD = "pull_cord"
    LUBRICANT = "lubricant"
    CABLE = "cable"
    CABLE_REEL = "cable_reel"
    PULLING_EYE = "pulling_eye"
    CABLE_SUPPORT = "cable_support"


class TakeoffUnit(Code):
    """Units of a takeoff: of counts each, of all else as they are sold or paid."""

    EACH = "each"
    FT = "ft"
    M = "m"
    FT2 = "ft2"
    M2 = "m2"
    YD3 = "yd3"
    M3 = "m3"
    GAL_US = "gal_us"
    QT_US = "qt_us"
    L = "L"
    LB = "lb"
    KG = "kg"


class VolumeMeasure(Code):
    """How a volume of earth is measured: in the bank, loose, or compacted; never mixed in one line."""

    BANK = "bank"
    LOOSE = "loose"
    COMPACTED = "compacted"


MOST_SHARES = 200
MOST_TAKEOFF_LINES = 2_000


class TakeoffQuantity(Struct, frozen=True, gc=False):
    """A quantity with the unit in which it is sold, paid or done."""

    value: Annotated[float, Meta(description="The number, in the unit.")]
    unit: Annotated[TakeoffUnit, Meta(description="The unit.")]


class TakeoffShare(Struct, frozen=True, gc=False):
    """What of the exact quantity one stretch of the run takes."""

    stretch: Annotated[str, Meta(description="Name of the stretch.", max_length=MOST_NAME)]
    quantity: Annotated[TakeoffQuantity, Meta(description="How much of it.")]


class TakeoffLine(Struct, frozen=True, gc=False, kw_only=True):
    """One line: an item of one conduit type and size with all that the run takes of it."""

    line: Annotated[int, Meta(description="Number of the line, from 1.", ge=1)]
    group: Annotated[TakeoffGroup, Meta(description="The part of the work it belongs to.")]
    item: Annotated[TakeoffItem, Meta(description="What it is a line of.")]
    description: Annotated[str, Meta(description="The item in words.", max_length=300)]
    exact_quantity: Annotated[TakeoffQuantity, Meta(description="What is laid, dug or done, without waste.")]
    basis: Annotated[str, Meta(description="Arithmetic of the exact quantity in one line.", max_length=2_000)]
    pointer: Annotated[str, Meta(description="JSON pointer of the figure in this answer that it comes from.")]
    shares: Annotated[
        list[TakeoffShare], Meta(description="The exact quantity by stretch, in their order.", max_length=MOST_SHARES)
    ]
    conduit_type: Annotated[ConduitType | UnsetType, Meta(description="Type of the conduit.")] = UNSET
    size: Annotated[
        Annotated[str, Meta(max_length=40)] | UnsetType,
        Meta(description="Trade size, conductor size or bar size; of pavement its kind. A rate matches by it."),
    ] = UNSET
    angle: Annotated[answers.Angle | UnsetType, Meta(description="Angle of an elbow or a field bend.")] = UNSET
    radius: Annotated[answers.Length | UnsetType, Meta(description="Radius of an elbow or a field bend.")] = UNSET
    waste_percent: Annotated[float | UnsetType, Meta(description="Waste that is in the order.")] = UNSET
    order_quantity: Annotated[
        TakeoffQuantity | UnsetType,
        Meta(description="What is ordered, in whole packages; absent for work without an order."),
    ] = UNSET
    measure: Annotated[VolumeMeasure | UnsetType, Meta(description="How a volume of earth is measured.")] = UNSET
    package: Annotated[
        Annotated[str, Meta(max_length=100)] | UnsetType,
        Meta(description="What it comes in, such as a stick of 10 ft."),
    ] = UNSET
    package_count: Annotated[int | UnsetType, Meta(description="Packages that are ordered.")] = UNSET
    unit_price: Annotated[
        float | UnsetType, Meta(description="The caller's rate, for one of the unit of the line.")
    ] = UNSET
    price: Annotated[
        float | UnsetType,
        Meta(description="By the caller's rate, to the cent: of the order, else of the exact quantity."),
    ] = UNSET
    unit_labor_hours: Annotated[
        float | UnsetType, Meta(description="The caller's rate, for one of the unit of the line.")
    ] = UNSET
    labor_hours: Annotated[
        float | UnsetType, Meta(description="Labor hours of the exact quantity, by the caller's rate.")
    ] = UNSET


class TakeoffTotal(Struct, frozen=True, gc=False, kw_only=True):
    """What the caller's rates come to; a total with gaps says so."""

    unpriced_lines: Annotated[
        list[int], Meta(description="Lines that have no price, of work too.", max_length=MOST_TAKEOFF_LINES)
    ]
    lines_without_hours: Annotated[
        list[int], Meta(description="Lines without a rate of labor hours.", max_length=MOST_TAKEOFF_LINES)
    ]
    complete: Annotated[bool, Meta(description="Whether every line has a price.")]
    price: Annotated[float | UnsetType, Meta(description="Price of all priced lines, to the cent.")] = UNSET
    labor_hours: Annotated[float | UnsetType, Meta(description="Labor hours of all lines with a rate.")] = UNSET


class Takeoff(Struct, frozen=True, gc=False, kw_only=True):
    """All lines in the order of building, and their total by the caller's rates."""

    lines: Annotated[
        list[TakeoffLine], Meta(description="The lines, by group and item.", max_length=MOST_TAKEOFF_LINES)
    ]
    total: Annotated[TakeoffTotal | UnsetType, Meta(description="If rates were given.")] = UNSET
