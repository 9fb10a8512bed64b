"""A loaded bank as a section: how warm every loaded duct is, which one governs, and what its circuits may carry."""

from __future__ import annotations

from typing import Final

from ductrun.drawings.drafting import LINE, ground, letters_within
from ductrun.drawings.envelope_shapes import draw_envelope
from ductrun.drawings.figures import figure
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing
from ductrun.kit.telling import Telling
from ductrun.kit.wording import apart
from ductrun.subjects.feeder.choices import AmpacityMethod
from ductrun.subjects.feeder.findings import within_limits
from ductrun.subjects.feeder.rating import Ampacity, LoadedDuct, Rated

_TALLEST: Final = 300.0
_EARTH: Final = 14.0  # beside and below the envelope
_METHODS: Final = {
    AmpacityMethod.NEHER_MCGRATH: "Neher-McGrath",
    AmpacityMethod.IEC_60287: "IEC 60287",
    AmpacityMethod.BOTH: "both methods",
}


def bank_heat(found: Ampacity, telling: Telling, *, name: str = "Duct bank") -> str:
    """Draw the section of a bank with the temperature of the conductors in every loaded duct."""
    drawing = Drawing()
    title = f"{name}: temperatures"
    drawing.heading(title)
    drawing.note("Temperature of the conductors, looking from start to end.", "soft")
    warm = {one.duct: one for one in found.loaded}
    told = {duct: figure(telling.temperature(one.heat.conductor)) for duct, one in warm.items()}
    written = _draw_section(drawing, found, told)
    _draw_legend(drawing, found, written=written, told=told)
    for rated in found.circuits:
        drawing.note(_circuit(rated, found, telling), "limit" if _is_over(rated, found) else "ink")
    words = _place(found, telling)
    for line in words:
        drawing.note(line, "soft")
    heats = [f"{one.name} {told[duct]}" for duct, one in warm.items()]
    circuits = [_circuit(rated, found, telling) for rated in found.circuits]
    return drawing.written(title, " ".join([f"Conductors: {', '.join(heats)}.", *circuits, *words]))


def _draw_section(drawing: Drawing, found: Ampacity, told: dict[int, str]) -> bool:
    """Draw bank and earth; says whether the ducts have room for their figures."""
    envelope, bank = found.envelope, found.envelope.bank
    widest = max(envelope.width, envelope.top_width)
    room = WIDTH - 2 * (MARGIN + _EARTH)
    scale = min(room / widest, _TALLEST / envelope.height)
    grade = drawing.y + 10.0
    roof = grade + 26.0
    floor = roof + envelope.height * scale
    drawing.box(MARGIN, grade, WIDTH - 2 * MARGIN, floor + _EARTH - grade, "earth", "none")
    ground(drawing, MARGIN, WIDTH - MARGIN, grade)
    left, bottom = draw_envelope(drawing, envelope, WIDTH / 2, floor, scale)
    least = min([bank.ducts[duct].diameter for duct in told]) * scale
    longest = max([*told.values(), *found.names], key=len)
    letters = letters_within(longest, least * 0.82) if least >= 2.6 * LINE else 0.0
    governing = found.solved.governing[1]
    for one in found.loaded:
        duct = bank.ducts[one.duct]
        x, y, radius = left + duct.x * scale, bottom - duct.y * scale, duct.diameter / 2 * scale
        role = "limit" if _is_hot(one) else "ink"
        if one.duct == governing or role == "limit":
            drawing.circle(x, y, radius, "none", role, min(3.2, radius))
        if letters:
            drawing.text(x, y - 2.0, one.name, letters, "middle", "soft")
            drawing.text(x, y + letters + 0.5, told[one.duct], letters, "middle", role)
    if letters:
        for index, duct in enumerate(bank.ducts):
            if index not in told:
                spot = left + duct.x * scale, bottom - duct.y * scale + letters * 0.36
                _name_spare(drawing, found.names[index], spot, duct.diameter * scale * 0.82)
    drawing.y = floor + _EARTH
    return bool(letters)


def _name_spare(drawing: Drawing, name: str, spot: tuple[float, float], room: float) -> None:
    if letters := letters_within(name, room):
        drawing.text(*spot, name, letters, "middle", "soft")


def _is_hot(one: LoadedDuct) -> bool:
    return one.heat.conductor > one.limit + 1e-6


def _is_over(rated: Rated, found: Ampacity) -> bool:
    return rated.load.current is not None and within_limits(rated, found) is False


def _draw_legend(drawing: Drawing, found: Ampacity, *, written: bool, told: dict[int, str]) -> None:
    """Say how the marks are read; where the ducts are too small, their figures."""
    if not written:
        listed = [f"{found.names[duct]} {words}" for duct, words in told.items()]
        drawing.note(f"By duct, tier and position from the bottom left: {', '.join(listed)}.")
    else:
        drawing.note("Ducts are named tier-position: tier 1 is the bottom, position 1 the left.", "soft")
    hot = any(_is_hot(one) for one in found.loaded)
    governing = found.names[found.solved.governing[1]]
    marks = "Red rings: over the limit; of all" if hot else "Thick ring:"
    drawing.note(f"{marks} duct {governing} governs. Cover not to scale.", "soft")


def _circuit(rated: Rated, found: Ampacity, telling: Telling) -> str:
    """Say what a circuit carries, how hot it is, and what it may carry."""
    load = rated.load
    number = next(at for at, one in enumerate(found.circuits, start=1) if one is rated)
    ducts = ", ".join([found.names[duct] for duct in load.ducts])
    warmest, most = telling.temperature(rated.conductor), telling.temperature(load.limit)
    hot, limit = (_signed(text) for text in apart(warmest, most))
    carried = figure(telling.current(rated.conductor_current * load.sets))
    what = f"{load.name or f'Circuit {number}'} in {ducts}: {carried}, {hot} of {limit}"
    if rated.ampacity is not None and load.current is not None:
        what += f"; the bank lets it carry {figure(telling.current(rated.ampacity))}"
    allowed = rated.checked.terminal_ampacity
    if allowed is not None and allowed < (rated.ampacity or rated.conductor_current * load.sets):
        what += f"; its terminals allow {figure(telling.current(allowed))}"
    return f"{what}."


def _signed(text: str) -> str:
    return text.replace(" deg", "\u00a0\u00b0").replace(" ", "\u00a0")


def _place(found: Ampacity, telling: Telling) -> list[str]:
    """Say where the bank lies, and by which method it was rated."""
    question = found.solved.question
    earth = question.earth
    resistivity = figure(telling.thermal_resistivity(earth.earth))
    depth = figure(telling.size(question.section.center))
    lines = [
        f"Its center lies {depth} below grade. Earth of {figure(telling.temperature(earth.ambient))}, {resistivity}.",
        f"By {_METHODS[question.method]}.",
    ]
    if earth.concrete is not None:
        lines[0] += f" Concrete of {figure(telling.thermal_resistivity(earth.concrete))}."
    return lines
