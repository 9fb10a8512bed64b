"""The other baseline: a plain FastAPI handler that carries the pull, both ways, in pint quantities.

What one writes first: the request model takes the body, every length, mass and angle becomes a quantity, and the
formulas are those of the handbook. It finds nothing, assumes nothing and cites nothing.
"""

from __future__ import annotations

import math
from typing import Any

import pint
from ductrun.subjects.pulling.pull_tension import PullTensionRequest
from ductrun.tables import TABLES
from ductrun.units import DEFINITIONS
from fastapi import FastAPI

app = FastAPI()
registry: pint.UnitRegistry[float] = pint.UnitRegistry()
PINT = {
    code: registry.Unit(definition.pint) for code, definition in DEFINITIONS.items() if "1000" not in definition.pint
}
GRAVITY = registry.Quantity(9.80665, "m/s**2")
BORES = {(row.type, row.trade_size): row.inside_diameter_in for row in TABLES["conduits"]}


def quantity(given: Any) -> Any:
    return registry.Quantity(given.value, PINT[given.unit])


def told(given: Any, unit: str) -> dict[str, Any]:
    return {"value": given.to(unit).magnitude, "unit": unit}


def carried(sections: list[Any], weight: Any, friction: float, incoming: Any) -> list[dict[str, Any]]:
    tension, found = incoming, []
    for section in sections:
        step = {"tension_in": told(tension, "lbf")}
        if section.kind == "straight":
            slope = quantity(section.grade).to("radian").magnitude
            tension = tension + weight * quantity(section.length) * (friction * math.cos(slope) + math.sin(slope))
        else:
            turn = friction * quantity(section.angle).to("radian").magnitude
            radius = quantity(section.radius)
            across = ((tension**2 + (weight * radius) ** 2) ** 0.5).to("lbf")
            tension = tension * math.cosh(turn) + across * math.sinh(turn)
            step["sidewall_pressure"] = told(tension / radius, "lbf/ft")
        found.append(step | {"tension_out": told(tension, "lbf")})
    return found


@app.post("/pull")
async def pull(request: PullTensionRequest) -> dict[str, Any]:
    [line] = request.cables
    assert line.cable.kind == "measured"
    weight = (line.count * quantity(line.cable.mass_per_length) * GRAVITY).to("lbf/ft")
    diameter = quantity(line.cable.diameter)
    assert request.conduit.kind == "listed"
    bore = registry.Quantity(float(BORES[request.conduit.type, request.conduit.trade_size]), "inch")
    correction = 1 + 4 / 3 * ((diameter / (bore - diameter)).to("dimensionless").magnitude) ** 2
    friction = correction * (request.friction_coefficient or 0.5)
    incoming = quantity(request.incoming_tension)
    sections = list(request.sections)
    return {
        "forward": carried(sections, weight, friction, incoming),
        "backward": carried(sections[::-1], weight, friction, incoming),
    }
