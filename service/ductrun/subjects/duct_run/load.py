"""The load of a circuit: for what its ducts become warm by, and for the voltage it loses on its way."""

from __future__ import annotations

from pydantic import Field

from ductrun.kit.defaults import by_rule
from ductrun.kit.forms import Omissible
from ductrun.subjects.feeder.choices import CircuitConduit
from ductrun.subjects.feeder.circuits import CableLoading, ConductorLimit
from ductrun.subjects.feeder.dropping import DroppedLoad


class RunLoad(CableLoading, DroppedLoad):
    """What a circuit carries, at the voltage it has; its sets are those of its ducts."""

    temperature_limit: Omissible[ConductorLimit] = Field(
        default=None,
        description="Highest temperature of the conductor; what is lost on the way is reckoned at it.",
        examples=[{"value": 75, "unit": "degC"}],
        json_schema_extra=by_rule("that of the marking in wet places; 75 degC of a cable without one"),
    )
    conduit_material: Omissible[CircuitConduit] = Field(
        default=None,
        description="Conduit that its voltage drop is reckoned in, as Table 9 tells them apart.",
        examples=["pvc"],
        json_schema_extra=by_rule("pvc where all conduit on its way is plastic, else steel, which loses more"),
    )
