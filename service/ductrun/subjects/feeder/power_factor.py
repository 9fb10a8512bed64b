"""The power factor that a drop is reckoned at: as given, or that at which the most is lost."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ductrun.engineering import voltage_drop as engineering
from ductrun.kit.backing import Backing
from ductrun.kit.choices import Standing
from ductrun.kit.defaults import Default, by_rule, number
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.feeder.choices import CircuitSystem
from ductrun.subjects.feeder.impedances import Impedance

if TYPE_CHECKING:
    from ductrun.subjects.feeder.dropping import DroppedLoad, Dropping

LEAST = number("feeder.power_factor")
STATED = by_rule(
    f"of {LEAST.value:g} to 1 the one at which the most is lost; {LEAST.value:g} where the power is given, which then "
    "draws the most"
)


def worst_of(impedance: Impedance) -> float:
    """Give the power factor, from the least that is usual to 1, at which a current loses the most (ratio)."""
    return engineering.worst_power_factor(*impedance, LEAST.value)


def settled_power_factor(given: Dropping, impedance: Impedance, sheet: Worksheet) -> float:
    """Give the power factor of a load that lags (ratio): thin wire loses more at 1, thick wire at the least."""
    if given.power_factor is not None:
        return given.power_factor
    if given.power is not None:
        return sheet.settle("power_factor", None, LEAST)
    worst, (citation, _, source) = worst_of(impedance), LEAST.backing
    words = f"of {LEAST.value:g} to 1 the one at which these conductors lose the most"
    if worst > LEAST.value:
        backing = Backing(f"derived: {words}; {LEAST.value:g} by {citation}", Standing.DERIVED, source)
        return sheet.settle("power_factor", None, Default(worst, backing))
    return sheet.settle("power_factor", None, LEAST.noting(words))


def refuse_of_direct_current(given: DroppedLoad, system: CircuitSystem | None, sheet: Worksheet) -> None:
    """Refuse what direct current does not have: it would be dropped without a word."""
    if system is not CircuitSystem.DIRECT_CURRENT:
        return
    faults = [
        sheet.fault(member, "not_of_direct_current", f"Direct current has no {word}: leave it out.")
        for member, word in (
            ("power_factor", "power factor"),
            ("reactance", "reactance"),
            ("frequency", "frequency"),
            ("conduit_material", "loss in its conduit"),
        )
        if getattr(given, member, None) is not None
    ]
    if faults:
        raise UnanswerableError(*faults)
