"""Tension and sidewall pressure along a route with their limits, from both ends, with pull points and sections."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from ductrun.drawings.chart import Axis, Curve, Stem, axis_of, draw_chart, mark
from ductrun.drawings.drafting import LINE, Boxes
from ductrun.drawings.figures import figure
from ductrun.drawings.stations import station_text
from ductrun.drawings.svg import MARGIN, WIDTH, Drawing, text_width
from ductrun.engineering.pulling import HorizontalBend, Section, Straight, VerticalBend
from ductrun.kit.telling import Telling
from ductrun.subjects.pulling.direction import Carried, Direction
from ductrun.units import AnyQuantity

_LEFT, _RIGHT = 58.0, WIDTH - MARGIN
_PARTS = 6  # of a bend whose tension is drawn as a curve


class Pull(NamedTuple):
    """One pull of a route that begins at `start` [m] along it: carried as the sections are given, from the other end,
    or both; `chosen_backward` says that it is to be pulled from the other end.
    """

    start: float
    sections: Sequence[Section]
    forward: Direction | None
    backward: Direction | None
    chosen_backward: bool = False

    @property
    def end(self) -> float:
        """Where it ends along the route [m]."""
        return self.start + sum([section.developed_length for section in self.sections])


class PullLimits(NamedTuple):
    """The tension that is allowed, None where that is not known, and the sidewall pressure, as they are told."""

    tension: AnyQuantity | None
    pressure: AnyQuantity


def pull_diagram(
    pulls: Sequence[Pull],
    weight: float,
    limits: PullLimits,
    telling: Telling,
    *,
    name: str = "Pull",
    section_names: Sequence[str] = (),
    first_number: int = 1,
) -> str:
    """Draw tension and sidewall pressure of pulls of a cable of a weight [N/m] through a route, one after the other.

    Sections are named by their numbers, or by the names given.
    """
    drawing = Drawing()
    drawing.heading(f"{name}: tension and sidewall pressure")
    start, end = pulls[0].start, pulls[-1].end
    axis = Axis(_LEFT, _RIGHT, start, max(end, start + 1e-9))
    stops = [pull.end for pull in pulls[:-1]]
    _legend(drawing, pulls)
    force, per_length = telling.force, telling.force_per_length
    curves = [curve for pull in pulls for curve in _curves(pull, weight, force)]
    scale = axis_of(_highest(curves), limits.tension)
    draw_chart(drawing, "Tension", axis, scale, curves, [], limits.tension, stops)
    stems = [stem for pull in pulls for stem in _stems(pull, per_length)]
    if stems:
        pressed = max([stem.value for stem in stems])
        draw_chart(
            drawing,
            "Sidewall pressure in bends",
            axis,
            axis_of(AnyQuantity(pressed, limits.pressure.unit), limits.pressure),
            [],
            stems,
            limits.pressure,
            stops,
        )
    _strip(drawing, pulls, axis, section_names, first_number)
    _stations(drawing, [pulls[0].start, *[pull.end for pull in pulls]], telling)
    for number, pull in enumerate(pulls, start=1):
        _tell(drawing, pull, f"Pull {number}" if len(pulls) > 1 else "", telling)
    if limits.tension is None:
        drawing.note("The tension that the cable may bear is not known: it was not judged.", "limit")
    words = _in_words(pulls, limits, telling)
    return drawing.written(f"{name}: tension and sidewall pressure along the route", words)


def _legend(drawing: Drawing, pulls: Sequence[Pull]) -> None:
    """Say how the two directions are drawn."""
    for backward, words in ((False, "pulled as given"), (True, "pulled from the other end")):
        if any((pull.backward if backward else pull.forward) is not None for pull in pulls):
            drawing.y += LINE
            y = drawing.y - 4.0
            dash, role = ("5 3", "back") if backward else ("", "there")
            drawing.line([(MARGIN, y), (MARGIN + 34.0, y)], role, 2.0, dash)
            mark(drawing, (MARGIN + 17.0, y), backward=backward)
            drawing.text(MARGIN + 42.0, drawing.y, words)
    drawing.y += 4.0


def _curves(pull: Pull, weight: float, force: Callable[[float], AnyQuantity]) -> list[Curve]:
    """Give the tension of a pull along the route, in the units of the answer, for each way it was carried."""
    found = []
    for way, backward in ((pull.forward, False), (pull.backward, True)):
        if way is None:
            continue
        carried = way.pulling
        at = pull.end if backward else pull.start
        turn = -1.0 if backward else 1.0
        points = [(at, force(carried.case.entering).value)]
        joints = [points[0]]
        for section, step in zip(carried.sections, carried.pulled, strict=True):
            for part in range(1, _PARTS):
                tension = None if isinstance(section, Straight) else _within(section, step.tension_in, weight, part)
                if tension is not None:
                    points.append((at + turn * section.developed_length * part / _PARTS, force(tension).value))
            at += turn * section.developed_length
            points.append((at, force(step.tension_out).value))
            joints.append(points[-1])
        found.append(Curve(points, joints, backward, force(carried.case.highest)))
    return found


def _within(bend: HorizontalBend | VerticalBend, tension: float, weight: float, part: int) -> float:
    """Give the tension [N] after a part of a bend."""
    share = part / _PARTS
    if isinstance(bend, HorizontalBend):
        return bend._replace(angle=bend.angle * share).pulled(tension, weight).tension_out
    exit_grade = bend.entry_grade + (bend.exit_grade - bend.entry_grade) * share
    return bend._replace(exit_grade=exit_grade).pulled(tension, weight).tension_out


def _stems(pull: Pull, per_length: Callable[[float], AnyQuantity]) -> list[Stem]:
    """Give the highest pressure in every bend, in the units of the answer, for each way it was carried."""
    found = []
    for way, backward in ((pull.forward, False), (pull.backward, True)):
        if way is None:
            continue
        carried = way.pulling
        at = pull.end if backward else pull.start
        turn = -1.0 if backward else 1.0
        for section, step in zip(carried.sections, carried.pulled, strict=True):
            if step.pressure is not None:
                middle = at + turn * section.developed_length / 2
                found.append(Stem(middle, per_length(step.pressure).value, backward))
            at += turn * section.developed_length
    return found


def _highest(curves: Sequence[Curve]) -> AnyQuantity:
    return max([curve.highest for curve in curves], key=lambda one: one.value)


def _strip(drawing: Drawing, pulls: Sequence[Pull], axis: Axis, names: Sequence[str], first_number: int) -> None:
    """Draw the sections as a strip, bends filled, each with its name or number where there is room for it."""
    top = drawing.y + 6.0
    taken = Boxes()
    index = 0
    left_out = False
    for pull in pulls:
        at = pull.start
        for section in pull.sections:
            start, at = at, at + section.developed_length
            left, right = axis.x(start), axis.x(at)
            bend = not isinstance(section, Straight)
            drawing.box(left, top, max(right - left, 1.0), 9.0, "ink" if bend else "none", "ink", 0.8)
            text = names[index] if index < len(names) else str(index + first_number)
            middle = (left + right) / 2
            if text_width(text, 10.0) < 60.0 and taken.take_text(middle, top + 20.0, text, 10.0):
                drawing.text(middle, top + 20.0, text, 10.0, "middle", "soft")
            else:
                left_out = True
            index += 1
    drawing.y = top + 24.0
    words = "Sections in the order given; bends are filled."
    drawing.note(f"{words} Some names are left out for want of room." if left_out else words, "soft")


def _stations(drawing: Drawing, places: Sequence[float], telling: Telling) -> None:
    """Say at which stations the pulls begin and end."""
    drawing.y += 3.0
    texts = [station_text(place, telling) for place in places]
    if len(places) == 2:
        drawing.note(f"From station {texts[0]} to {texts[1]}, along the center line.")
        return
    drawing.note(f"From station {texts[0]} to {texts[-1]}; pull points, dotted, at {', '.join(texts[1:-1])}.")


def _tell(drawing: Drawing, pull: Pull, which: str, telling: Telling) -> None:
    """Say what is highest in a pull, for each way it was carried."""
    for way, backward in ((pull.forward, False), (pull.backward, True)):
        if way is None:
            continue
        lead = "from the other end" if backward else "as given"
        start = f"{which}, {lead}" if which else lead[0].upper() + lead[1:]
        if pull.forward is not None and pull.backward is not None and pull.chosen_backward == backward:
            start += " (better)"
        drawing.note(f"{start}: {_figures(way, telling)}.")


def _figures(way: Direction, telling: Telling) -> str:
    words = _carried_words(way.pulling, telling)
    if way.braking is not None and way.braking.brake is not None:
        words += f"; at the low friction it {_carried_words(way.braking, telling)}"
    return words


def _carried_words(carried: Carried, telling: Telling) -> str:
    case = carried.case
    words = f"ends at {figure(telling.force(case.final))}, highest {figure(telling.force(case.highest))}"
    if carried.pressure_at is not None:
        words += f", presses with {figure(telling.force_per_length(case.pressure))} at most"
    if carried.brake is not None:
        words += f", brake {figure(telling.force(carried.brake))}"
    return words


def _in_words(pulls: Sequence[Pull], limits: PullLimits, telling: Telling) -> str:
    """Say what the diagram shows."""
    words = [] if len(pulls) == 1 else [f"{len(pulls)} pulls."]
    for number, pull in enumerate(pulls, start=1):
        which = "" if len(pulls) == 1 else f"Pull {number}, "
        for way, lead in ((pull.forward, "as given"), (pull.backward, "from the other end")):
            if way is not None:
                said = f"{which}{lead}: {_figures(way, telling)}."
                words.append(said[0].upper() + said[1:])
    allowed = "not known" if limits.tension is None else figure(limits.tension)
    words.append(f"Allowed tension {allowed}, allowed sidewall pressure {figure(limits.pressure)}.")
    return " ".join(words)
