"""The working of ducts under earth and traffic: every figure with what was put in."""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.engineering.flexible_duct import buoyancy_share, elastic_support
from ductrun.kit.wording import in_percent
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.ground.choices import LiveLoadMethod
from ductrun.subjects.ground.earth_ground import Ground, TierLoad, buckling_factor, water_over
from ductrun.subjects.ground.holding_down import Floating
from ductrun.subjects.ground.traffic import worked

_FORMULAS = {
    LiveLoadMethod.HANDBOOK_TABLE: "pressure of the table at H, times P / 16000 lbf",
    LiveLoadMethod.AASHTO_SPREAD: "n P (1 + IM) m/((w + s H) (l + s H)) + q m/(lane + s H)",
    LiveLoadMethod.BOUSSINESQ: "P/(w l) x (own print + other wheel) x impact",
}


def show_load(tiers: Sequence[TierLoad], floating: Floating, ground: Ground, sheet: Worksheet) -> None:
    """Show how the load of every tier, and what holds all down, came about."""
    for tier in tiers:
        _show_pressures(tier, ground, sheet)
        _show_duct(tier, ground, sheet)
    if floating.factor is not None:
        tell = sheet.tell.force_per_length
        sheet.show("U", "A rho g, of all ducts", "what of their section lies in groundwater", tell(floating.uplift))
        sheet.show("W down", "earth over the ducts + own weight", "submerged below the water", tell(floating.hold_down))
        words = f"{floating.hold_down:.6g} N/m / {floating.uplift:.6g} N/m"
        sheet.show("F", "W down / U, the least of ducts over each other", words, sheet.tell.ratio(floating.factor))


def _show_pressures(tier: TierLoad, ground: Ground, sheet: Worksheet) -> None:
    pressure = sheet.tell.pressure
    sheet.show("P", "rho g H", f"rho = {ground.density:.6g} kg/m3, H = {tier.cover:.5g} m", pressure(tier.prism))
    if tier.arched is not None:
        words = f"K mu = {ground.friction:g}, B = {ground.trench_width:.5g} m"
        sheet.show("P arched", "(1 - exp(-2 K mu H/B))/(2 K mu) rho g B", words, pressure(tier.arched))
    for live in tier.lives:
        words = "" if ground.traffic is None else worked(live.method, ground.traffic, tier.cover)
        sheet.show("W", _FORMULAS[live.method], f"{live.method.value}: {words}", pressure(live.pressure))


def _show_duct(tier: TierLoad, ground: Ground, sheet: Worksheet) -> None:
    duct, pressure = tier.duct, sheet.tell.pressure
    live = 0.0 if tier.live is None else tier.live.pressure
    if duct.stiffness is not None:
        words = f"OD = {duct.outside:.5g} m" + ("" if duct.wall is None else f", t = {duct.wall:.5g} m")
        sheet.show("PS", "as given, of the class, or 4.47 E/(OD/t - 1)^3", words, pressure(duct.stiffness))
    words = "as given" if ground.embedment is None else f"of {ground.embedment.value} as compacted"
    sheet.show("E'", "modulus of soil reaction", words, pressure(ground.soil_modulus))
    if tier.deflection is not None and duct.stiffness is not None:
        sheet.show(
            "d",
            "100 (DL K P + K W)/(0.149 PS + 0.061 E')",
            f"100 x ({ground.lag:g} x {ground.bedding:.4g} x {tier.earth:.6g} + {ground.bedding:.4g} x {live:.6g})/"
            f"(0.149 x {duct.stiffness:.6g} + 0.061 x {ground.soil_modulus:.6g}), in Pa",
            in_percent(tier.deflection),
        )
    if tier.stress is not None and duct.wall is not None:
        words = f"({tier.prism:.6g} + {live:.6g}) Pa x {duct.outside:.5g} m/(2 x {duct.wall:.5g} m)"
        sheet.show("s", "(P + W) OD/(2 t)", words, pressure(tier.stress))
    if tier.demand is not None and tier.buckling is not None:
        _show_ring(tier, ground, live, sheet)


def _show_ring(tier: TierLoad, ground: Ground, live: float, sheet: Worksheet) -> None:
    duct, pressure, water = tier.duct, sheet.tell.pressure, water_over(ground, tier.cover)
    share = buoyancy_share(tier.cover, water) if tier.cover > 0.0 else 1.0
    words = f"hw = {water:.5g} m, Rw = {share:.4g}, P = {tier.prism:.6g} Pa, W = {live:.6g} Pa"
    sheet.show("q", "rho g hw + Rw P + W", words, pressure(tier.demand or 0.0))
    support = elastic_support(tier.cover, duct.outside) if tier.cover > 0.0 else 0.0
    words = (
        f"B' = {support:.4g}, PS = {duct.long_term_stiffness or 0.0:.6g} Pa, FS = {buckling_factor(duct, tier.cover):g}"
    )
    formula = "sqrt(32 Rw B' E' PS/53.6)/FS, or 3 PS/(6.7 (1 - nu^2) 2) if that is more"
    sheet.show("q allowed", formula, words, pressure(tier.buckling or 0.0))
