"""How a conduit and a cable of a request are called in a drawing."""

from __future__ import annotations

from ductrun.drawings.figures import figure
from ductrun.kit.telling import Telling
from ductrun.subjects.parts.cables import Cable
from ductrun.subjects.parts.choices import ConduitType, TradeSize
from ductrun.subjects.parts.conduit import ListedConduit, MeasuredConduit


def conduit_words(conduit: ListedConduit | MeasuredConduit, telling: Telling) -> str:
    """Call a conduit by its type and size, or by its bore."""
    if conduit.kind == "measured":
        return f"conduit of {figure(telling.given(conduit.inside_diameter))} bore"
    return sized_words(conduit.type, conduit.trade_size)


def sized_words(conduit_type: ConduitType, trade_size: TradeSize) -> str:
    """Call a conduit by its type and size."""
    words = conduit_type.value.split("_")
    named = [word.upper() if word not in ("schedule", "type") else word for word in words]
    return f"{' '.join(named)}, trade size {trade_size.value}"


def cable_words(cable: Cable, telling: Telling) -> str:
    """Call a cable by its size and insulation, or by its diameter."""
    if cable.kind == "listed":
        return f"{cable.size.value} {cable.insulation.value}"
    if cable.kind == "compact":
        return f"{cable.size.value} {cable.insulation.value}, compact"
    if cable.kind == "bare":
        return f"{cable.size.value} bare"
    what = "conductor" if cable.kind == "measured" else "cable"
    return f"{what} of {figure(telling.given(cable.diameter))}"
