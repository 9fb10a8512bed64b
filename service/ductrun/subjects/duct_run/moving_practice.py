"""How what lies above ground is let move and held, once for the whole run."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ductrun.kit.defaults import by_rule
from ductrun.kit.forms import ConduitTemperature, Offset, Omissible
from ductrun.subjects.movement.choices import Coupling, PistonConvention
from ductrun.subjects.movement.fittings import FittingMade
from ductrun.subjects.movement.moving import CONVENTION, MOST_OPENINGS, USABLE_TRAVEL
from ductrun.subjects.movement.service_temperature import ServiceTemperature
from ductrun.subjects.movement.spacing import COUPLING


class RunMoving(FittingMade):
    """Expansion fittings and straps of all that lies above ground."""

    usable_travel_percent: Omissible[Annotated[float, Field(ge=10, le=100)]] = Field(
        default=None,
        description="Most of the travel of a fitting that its share of the movement may use.",
        examples=[90],
        json_schema_extra=USABLE_TRAVEL.stated,
    )
    piston_convention: Omissible[PistonConvention] = Field(
        default=None,
        description="How far to open the fittings.",
        examples=["full_travel"],
        json_schema_extra=CONVENTION.stated,
    )
    opening_temperatures: Omissible[Annotated[list[ConduitTemperature], Field(max_length=MOST_OPENINGS)]] = Field(
        default=None,
        description="Temperatures for which to give the opening.",
        examples=[[{"value": 40, "unit": "degF"}, {"value": 60, "unit": "degF"}]],
        json_schema_extra=by_rule("every 10 degF between the lowest and the highest"),
    )
    service_temperature: Omissible[ServiceTemperature] = Field(
        default=None,
        description="Highest temperature of the air that the conduit is permitted or listed for.",
        examples=[{"value": 122, "unit": "degF"}],
        json_schema_extra=by_rule("what the code permits the material in"),
    )
    end_distance: Omissible[Offset] = Field(
        default=None,
        description="Distance of the end straps from the terminations.",
        examples=[{"value": 2, "unit": "ft"}],
        json_schema_extra=by_rule("the most that the rule of the conduit allows"),
    )
    coupling: Omissible[Coupling] = Field(
        default=None,
        description="How lengths of rmc and imc are coupled.",
        examples=["threaded"],
        json_schema_extra=COUPLING.stated,
    )
