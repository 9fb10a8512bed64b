"""The working of an ampacity: the duct that governs, from its conductor to the earth."""

from __future__ import annotations

from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.feeder.rating import Ampacity
from ductrun.subjects.feeder.thermal import paths_of, surround


def show(found: Ampacity, sheet: Worksheet) -> None:
    """Show how warm the duct that governs becomes, layer by layer."""
    solved, tell = found.solved, sheet.tell
    at = solved.balance.governing
    heat, path = solved.balance.ducts[at], paths_of(solved.question)[at]
    load, duct = solved.governing
    place, resistance = load.sheet, tell.thermal_resistance
    current = solved.currents[next(index for index, one in enumerate(solved.question.loads) if one is load)]
    around, section = surround(solved.question), solved.question.section
    if solved.question.earth.concrete is not None:
        sheet.show(
            "(rho_e - rho_c) G/(2 pi)",
            "beyond the concrete, for the heat of each duct",
            f"envelope {section.width:.6g} m x {section.height:.6g} m, center {section.center:.6g} m down",
            resistance(around.correction),
        )
    cable, air = load.cable, path.air
    ways = (
        (
            "Ri",
            "rho ln(D/d)/(2 pi), of several cores by their images",
            f"d {cable.conductor_diameter:.6g} m, D {cable.core_diameter:.6g} m",
            path.insulation,
        ),
        (
            "Rsd",
            "U/(1 + 0.1 (V + Y Tm) De)",
            f"U {air.u:.4g}, V {air.v:.4g}, Y {air.y:.4g}, De {1000 * path.bundle:.6g} mm, "
            f"Tm {heat.air - 273.15:.6g} degC",
            heat.air_resistance,
        ),
        ("Rd", "of the duct wall", f"rho {section.walls[duct].resistivity:.4g} K.m/W", path.wall),
    )
    for symbol, formula, substituted, value in ways:
        place.show(symbol, formula, substituted, resistance(value))
    name = f"duct {found.names[duct]}"
    place.show(
        "R",
        "Rdc (1 + Ycs + Ycp)",
        f"{name} at {heat.conductor - 273.15:.6g} degC",
        tell.resistance_per_length(heat.resistance),
    )
    place.show(
        "W",
        "I^2 R",
        f"({current:.6g} A)^2 x {heat.resistance:.6g} ohm/m",
        tell.power_per_length(heat.conductor_loss),
    )
    steps = (
        ("Tcable", "Tc - Ri (W + Wd/2) - Rj (heat of a cable)", path.insulation, heat.cable),
        ("Tduct inside", "Tcable - Rsd x heat", heat.air_resistance, heat.inside),
        ("Tduct outside", "Tduct inside - Rd x heat", path.wall, heat.outside),
    )
    for symbol, formula, through, temperature in steps:
        place.show(
            symbol, formula, f"{through:.6g} K.m/W, heat of the duct {heat.heat:.6g} W/m", tell.temperature(temperature)
        )
