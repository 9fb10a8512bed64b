"""POST /v1/ampacity: what the cables of a duct bank may carry, or how warm they become."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.engineering.bank import Envelope, bare, encased
from ductrun.engineering.rounding import under
from ductrun.kit.forms import Depth, Edition, Omissible
from ductrun.kit.operation import Operation
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import Gathering, UnanswerableError, Worksheet
from ductrun.subjects.feeder.ampacity_told import AmpacityResult, Asked, tell
from ductrun.subjects.feeder.choices import BankSetting
from ductrun.subjects.feeder.circuits import MOST_LOADED, CircuitLoad, LoadedCircuit, loads_of
from ductrun.subjects.feeder.findings import report
from ductrun.subjects.feeder.rating import Rating, rate, rating_steps
from ductrun.subjects.feeder.studies import study
from ductrun.subjects.feeder.walls import DuctWall, walls_of
from ductrun.subjects.feeder.working import show
from ductrun.subjects.parts.bank import DuctBank, bank_of
from ductrun.subjects.parts.envelope import AskedPour, ConcreteCover, buried_directly, concrete_of


class AmpacityRequest(Rating):
    """A bank in the earth, and the circuits in its ducts."""

    code_edition: Edition = None
    bank: DuctBank = Field(description="The duct bank; ducts without a circuit are empty.")
    setting: BankSetting = Field(description="Encased in concrete, or ducts buried directly.", examples=["encased"])
    concrete_cover: Omissible[ConcreteCover] = Field(
        default=None, description="Concrete outside the ducts, where they are encased."
    )
    cover: Omissible[Depth] = Field(
        default=None,
        description="Earth over the envelope, or over the ducts if there is none; this or depth.",
        examples=[{"value": 30, "unit": "in"}],
    )
    depth: Omissible[Depth] = Field(
        default=None,
        description="From grade to the center of the envelope, or of the ducts if there is none; this or cover.",
        examples=[{"value": 43, "unit": "in"}],
    )
    circuits: Annotated[list[LoadedCircuit], Field(min_length=1, max_length=MOST_LOADED)] = Field(
        description="The circuits. One without a current is looked for: all of them carry alike in every conductor."
    )


def _envelope(request: AmpacityRequest, sheet: Worksheet) -> Envelope:
    """Give the envelope of the bank."""
    place = sheet.within("bank")
    placed = bank_of(request.bank, place)
    asked = AskedPour(
        request.bank, place, request.concrete_cover, sheet.within("concrete_cover"), None, sheet.within("setting")
    )
    if request.setting is BankSetting.DIRECT_BURIED:
        if request.concrete_thermal_resistivity is not None:
            message = "Ducts that are buried directly have no concrete: leave this out."
            raise UnanswerableError(sheet.fault("concrete_thermal_resistivity", "contradiction", message))
        buried_directly(placed, asked)
        return bare(placed)
    return encased(placed, concrete_of(asked), stepped=False)


def _cover(request: AmpacityRequest, envelope: Envelope, sheet: Worksheet) -> float:
    """Give the earth over the envelope [m]; refuse a depth that would lift the bank out of it."""
    if request.cover is not None and request.depth is not None:
        raise UnanswerableError(
            sheet.fault("depth", "contradiction", "Give the cover or the depth: each tells the other.")
        )
    if request.cover is not None:
        return request.cover.si
    if request.depth is None:
        raise UnanswerableError(
            sheet.fault("cover", "missing", "Give the earth over the bank as cover, or the depth of its center.")
        )
    half = envelope.height / 2.0
    if under(request.depth.si, half):
        least = sheet.tell.size(half)
        raise UnanswerableError(
            sheet.fault(
                "depth/value",
                "bank_above_grade",
                f"The bank is {text_of(sheet.tell.size(envelope.height))} high: with its center less than "
                f"{text_of(least)} down it would stand out of the earth.",
                minimum=least,
            )
        )
    return request.depth.si - half


def assess(request: AmpacityRequest, sheet: Worksheet) -> Asked:
    """Rate the bank of a request."""
    sheet.follow_edition(request.code_edition)
    envelope = _envelope(request, sheet)
    bank = envelope.bank
    faults = Gathering()
    cover = 0.0
    walls: list[DuctWall] = []
    loads: list[CircuitLoad] = []
    with faults:
        cover = _cover(request, envelope, sheet)
    with faults:
        walls = walls_of(request.bank, bank, sheet.within("bank"))
    with faults:
        loads = loads_of(request.circuits, bank, sheet.within("circuits"))
    faults.stop()
    found = rate(request, envelope, walls, cover, loads, sheet)
    report(found, sheet)
    studied = study(request.studies, envelope, found.solved, sheet)
    if sheet.working is not None:
        show(found, sheet)
    return Asked(found, studied)


def steps(request: AmpacityRequest) -> float:
    """Bound the work, in which every loaded duct warms every other, once and once more for each study."""
    loaded = sum(len(circuit.ducts) for circuit in request.circuits)
    return rating_steps(loaded, loaded) * (1 + len(request.studies or ()))


OPERATION = Operation(
    name="ampacity",
    operation_id="calculate_ampacity",
    summary="Ampacity of a duct bank",
    description="Gives what the cables of a buried bank may carry in its layout, depth and soil, or how warm given "
    "currents make every duct: by Neher-McGrath, by IEC 60287 or both, with each thermal resistance, the duct that "
    "governs, what the tables of the code say beside it, and what more spacing or better earth is worth.",
    request=AmpacityRequest,
    result=AmpacityResult,
    assess=assess,
    steps=steps,
    tell=tell,
    example={
        "bank": {
            "conduit": {"kind": "listed", "type": "pvc_schedule_40", "trade_size": "5"},
            "tiers": [2, 2],
            "horizontal_separation": {"value": 7.5, "unit": "in"},
            "vertical_separation": {"value": 7.5, "unit": "in"},
            "separation_measure": "center_to_center",
        },
        "setting": "encased",
        "concrete_cover": {
            "top": {"value": 3, "unit": "in"},
            "bottom": {"value": 3, "unit": "in"},
            "side": {"value": 3, "unit": "in"},
        },
        "cover": {"value": 30, "unit": "in"},
        "earth_thermal_resistivity": {"value": 90, "unit": "degC.cm/W"},
        "concrete_thermal_resistivity": {"value": 85, "unit": "degC.cm/W"},
        "earth_temperature": {"value": 20, "unit": "degC"},
        "duct_thermal_resistivity": {"value": 650, "unit": "degC.cm/W"},
        "frequency": {"value": 60, "unit": "Hz"},
        "method": "both",
        "code_edition": "2023",
        "circuits": [
            {
                "name": "Feeder 1, two sets in parallel",
                "ducts": ["2-1", "2-2"],
                "cables": [
                    {
                        "count": 3,
                        "cable": {"kind": "listed", "insulation": "XHHW-2", "size": "500 kcmil", "material": "copper"},
                    },
                    {
                        "count": 1,
                        "cable": {"kind": "listed", "insulation": "XHHW-2", "size": "1/0 AWG", "material": "copper"},
                    },
                ],
                "loaded_conductor_count": 3,
                "loaded_neutral_count": 0,
                "system": "three_phase",
                "current": {"value": 640, "unit": "A"},
                "voltage": {"value": 480, "unit": "V"},
                "load_factor_percent": 100,
                "temperature_limit": {"value": 75, "unit": "degC"},
                "overcurrent_device": {"value": 700, "unit": "A"},
                "terminal_rating": "75_degc",
            },
        ],
        "studies": ["sensitivity", "smallest_size", "largest_earth_resistivity", "smallest_separation"],
    },
)
