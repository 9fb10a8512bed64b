"""POST /v1/earth-load: what earth and traffic do to ducts."""

from __future__ import annotations

from pydantic import Field

from ductrun.engineering import bank as engineering
from ductrun.engineering.bank import Alignment
from ductrun.kit.defaults import by_rule, flag
from ductrun.kit.forms import Depth, Edition, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.earth_load_told import EarthLoadResult, tell
from ductrun.subjects.ground.earth_loading import EarthAndWater
from ductrun.subjects.ground.laid_ducts import lay
from ductrun.subjects.ground.loaded_ducts import LoadedDuct, ducts_of_bank, load_ducts_of, loading_steps
from ductrun.subjects.ground.under_load import UnderLoad, bear, unloaded
from ductrun.subjects.parts.bank import DuctBank, bank_of, conduits_of, duct_count, kind_count
from ductrun.subjects.parts.conduit import Conduit, outside_diameter
from ductrun.subjects.parts.envelope import (
    AskedPour,
    ConcreteCover,
    buried_directly,
    concrete_of,
    need_of,
)

ENCASED = flag("cover.encased")


class EarthLoadRequest(EarthAndWater):
    """Ducts in the ground, and what lies and passes over them."""

    conduit: Omissible[Conduit] = Field(default=None, description="The duct, if it is one alone; give this or a bank.")
    bank: Omissible[DuctBank] = Field(default=None, description="The duct bank; give this or a conduit.")
    cover: Depth = Field(
        description="Earth over the top of what is buried, which is its concrete where it is encased.",
        examples=[{"value": 30, "unit": "in"}],
    )
    encased: Omissible[bool] = Field(
        default=None,
        description="Whether it is encased in concrete.",
        examples=[False],
        json_schema_extra=ENCASED.stated,
    )
    concrete_cover: Omissible[ConcreteCover] = Field(
        default=None,
        description="Concrete outside the ducts, where they are encased.",
        json_schema_extra=by_rule("none of ducts that are not encased"),
    )
    code_edition: Edition = None


def assess(request: EarthLoadRequest, sheet: Worksheet) -> UnderLoad:
    """Load the ducts of a request."""
    sheet.follow_edition(request.code_edition)
    asked = _asked(request, sheet)
    encased = sheet.settle("encased", request.encased, ENCASED)
    cover, place = request.cover.si, sheet.within("cover")
    forbidden = not encased and need_of(asked).encased_only is True
    ducts = [] if forbidden else _loaded(asked, request, sheet, encased=encased)
    placed = _placed(request, sheet)
    if not encased:
        _refuse_pour(request, sheet)
        buried_directly(placed, asked)
    if forbidden:
        return unloaded(cover, sheet)
    concrete = engineering.encased(placed, concrete_of(asked), stepped=False) if encased else None
    return bear(request, lay(placed, ducts, concrete), cover, place, sheet)


def _refuse_pour(request: EarthLoadRequest, sheet: Worksheet) -> None:
    """Refuse what is said of a pour around ducts that lie in earth."""
    given = {"lift_height": request.lift_height, "concrete_density": request.concrete_density}
    faults = [
        sheet.fault(name, "contradiction", "Nothing is poured around these ducts: leave it out, or say encased.")
        for name, value in given.items()
        if value is not None
    ]
    if faults:
        raise UnanswerableError(*faults)


def _asked(request: EarthLoadRequest, sheet: Worksheet) -> AskedPour:
    """Give the bank that is asked about with the sheets of its places; one duct alone is a bank of it."""
    if (request.conduit is None) == (request.bank is None):
        missing = request.bank is None
        raise UnanswerableError(
            sheet.fault(
                "conduit",
                "missing" if missing else "contradiction",
                "Give the conduit of one duct, or a bank." if missing else "Give the conduit or a bank, not both.",
            )
        )
    bank, bank_place = request.bank, sheet.within("bank")
    if bank is None and request.conduit is not None:
        bank, bank_place = DuctBank.model_construct(conduit=request.conduit, tiers=[1]), sheet
    assert bank is not None  # noqa: S101  (one of the two is there)
    return AskedPour(
        bank, bank_place, request.concrete_cover, sheet.within("concrete_cover"), None, sheet.within("encased")
    )


def _loaded(asked: AskedPour, request: EarthLoadRequest, sheet: Worksheet, *, encased: bool) -> list[LoadedDuct]:
    if request.bank is None:
        return load_ducts_of(conduits_of(asked.bank, asked.bank_place), request, sheet, encased=encased)
    return ducts_of_bank(asked.bank, asked.bank_place, request, sheet, encased=encased)


def _placed(request: EarthLoadRequest, sheet: Worksheet) -> engineering.Bank:
    if request.bank is not None:
        return bank_of(request.bank, sheet.within("bank"))
    outside = outside_diameter(request.conduit, sheet.within("conduit"))  # type: ignore[arg-type]
    one = engineering.Tier((outside,))
    return engineering.place([one], 0.0, 0.0, 0.0, Alignment.CENTERED, center_to_center=False)


def steps(request: EarthLoadRequest) -> float:
    """Bound the work by the ducts, each of which is loaded."""
    return (
        loading_steps(1, 1)
        if request.bank is None
        else loading_steps(duct_count(request.bank), kind_count(request.bank))
    )


OPERATION = Operation(
    name="earth-load",
    operation_id="calculate_earth_load",
    summary="Earth and traffic on ducts",
    description="Gives the load of earth and traffic on a plastic duct or bank by named methods, its deflection with "
    "the band of what is measured, the compression of its wall, buckling and flotation with groundwater, each against "
    "its limit; and the least and greatest cover, the least stiffness and the least compaction that comply. Encased "
    "ducts are held against the wet concrete and flotation instead.",
    request=EarthLoadRequest,
    result=EarthLoadResult,
    assess=assess,
    tell=tell,
    steps=steps,
    example={
        "conduit": {"kind": "listed", "type": "pvc_db_60", "trade_size": "4"},
        "cover": {"value": 30, "unit": "in"},
        "encased": False,
        "traffic": "h_20",
        "wheel_load": {"value": 16000, "unit": "lbf"},
        "live_load_method": "governing",
        "load_spread_ratio": 1.15,
        "soil_density": {"value": 120, "unit": "lb/ft3"},
        "saturated_soil_density": {"value": 125, "unit": "lb/ft3"},
        "groundwater_depth": {"value": 10, "unit": "ft"},
        "earth_load_method": "prism",
        "trench_width": {"value": 24, "unit": "in"},
        "arching_soil": "clay",
        "lag_factor": 1,
        "embedment": "coarse_grained",
        "compaction": "moderate",
        "bedding_angle": {"value": 60, "unit": "deg"},
        "modulus": {"value": 400000, "unit": "psi"},
        "long_term_modulus": {"value": 140000, "unit": "psi"},
        "allowable_wall_stress": {"value": 2000, "unit": "psi"},
        "deflection_limit_percent": 5,
        "duct_density": {"value": 87.4, "unit": "lb/ft3"},
        "flotation_safety_factor": 1.5,
        "code_edition": "2023",
    },
)
