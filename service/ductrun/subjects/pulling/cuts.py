"""The route of a plan, cut at every place where a pull point may stand."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import Annotated, Literal

from pydantic import Field
from typing_extensions import TypeAliasType

from ductrun.engineering import pulling as engineering
from ductrun.engineering.rounding import round_up
from ductrun.kit.forms import Form, Interval, RoutePosition
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.pulling.settled import Pulling

MOST_POSITIONS = 400
_TOUCHES = 1e-6  # m: a position this close to the end of a section stands at it


class BetweenSections(Form):
    """Pull points may stand at either end of every straight."""

    kind: Literal["between_sections"] = Field(description="Fixed text that says: at the ends of straights.")


class Anywhere(Form):
    """Pull points may stand anywhere on a straight, at places no more than a spacing apart."""

    kind: Literal["anywhere"] = Field(description="Fixed text that says: anywhere on straights.")
    spacing: Interval = Field(description="Greatest distance between places.", examples=[{"value": 20, "unit": "ft"}])


class ListedPositions(Form):
    """Pull points may stand at given places only."""

    kind: Literal["listed"] = Field(description="Fixed text that says: at these places.")
    positions: Annotated[list[RoutePosition], Field(min_length=1, max_length=MOST_POSITIONS)] = Field(
        description="Distances along the center line from the start of the route, each on a straight.",
        examples=[[{"value": 200, "unit": "ft"}]],
    )


BoxPositions = TypeAliasType(
    "BoxPositions",
    Annotated[
        BetweenSections | Anywhere | ListedPositions,
        Field(discriminator="kind", description="Where pull points may stand."),
    ],
)


class Cut:
    """The route cut at every place a pull point may stand."""

    __slots__ = ("elements", "origin", "places", "stops")

    def __init__(self, route: Sequence[engineering.Section], positions: BoxPositions | None) -> None:
        """Cut a route at the places, those at either end of a straight if none are given."""
        self.elements: list[engineering.Section] = []
        self.origin: list[int] = []  # section of the route each element is part of
        self.places: list[float] = [0.0]  # position of every joint between elements [m]
        self.stops: set[int] = {0}
        listed = _listed(positions)
        spacing = positions.spacing.si if positions is not None and positions.kind == "anywhere" else None
        for index, section in enumerate(route):
            start = self.places[-1]
            if not isinstance(section, engineering.Straight):
                self._add(section, index)
                continue
            end = start + section.length
            if listed is not None:
                cuts = [place for place in listed if start + _TOUCHES < place < end - _TOUCHES]
                self._stop_if(any(abs(place - start) <= _TOUCHES for place in listed))
            else:
                parts = 1 if spacing is None else round_up(section.length / spacing)
                cuts = [start + section.length * part / parts for part in range(1, parts)]
                self._stop_if(here=True)
            for place in [*cuts, end]:
                self._add(section._replace(length=place - self.places[-1]), index)
                self._stop_if(listed is None or place != end or any(abs(at - end) <= _TOUCHES for at in listed))
        self._stop_if(here=True)

    def lost_before(self, pulling: Pulling) -> list[int]:
        """Count the joints before each element, and before the end, at which a bend was left out.

        A pull within which the count grows loses a bend; at its ends a pull point may turn.
        """
        joints = set(pulling.lost_bends)
        counts = [0, 0]
        for before, after in pairwise(self.origin):
            counts.append(counts[-1] + (after != before and after in joints))
        return counts

    def _add(self, element: engineering.Section, index: int) -> None:
        self.elements.append(element)
        self.origin.append(index)
        self.places.append(self.places[-1] + element.developed_length)

    def _stop_if(self, here: bool) -> None:
        if here:
            self.stops.add(len(self.elements))


def _listed(positions: BoxPositions | None) -> list[float] | None:
    if positions is None or positions.kind != "listed":
        return None
    return sorted(position.si for position in positions.positions)


def most_places(lengths: Iterable[float | None], positions: BoxPositions | None) -> int:
    """Count the places that pull points may stand at, before anything is cut; of listed ones their own number.

    `lengths` are those of the straights in SI, None for a bend.
    """
    if positions is not None and positions.kind == "listed":
        return len(positions.positions)
    spacing = positions.spacing.si if positions is not None and positions.kind == "anywhere" else None
    count, here = 1, True  # `here` says that a place stands where the next section starts
    for length in lengths:
        if length is not None:
            count += (not here) + (1 if spacing is None else round_up(length / spacing))
        here = length is not None
    return count + (not here)


def check_count(route: Sequence[engineering.Section], positions: BoxPositions | None, sheet: Worksheet) -> None:
    """Refuse more places than the search can take."""
    lengths = (section.length if isinstance(section, engineering.Straight) else None for section in route)
    count = most_places(lengths, positions)
    if count > MOST_POSITIONS:
        raise UnanswerableError(
            sheet.fault(
                "",
                "too_many_positions",
                f"That makes {count} places for pull points; {MOST_POSITIONS} are the most. Take them farther apart.",
                maximum=MOST_POSITIONS,
            )
        )


def check_positions(cut: Cut, positions: BoxPositions | None, sheet: Worksheet) -> None:
    """Refuse places that are listed and are not on a straight."""
    if positions is None or positions.kind != "listed":
        return
    stops = [cut.places[stop] for stop in cut.stops]
    faults = [
        sheet.fault(
            f"positions/{index}/value",
            "position_not_on_a_straight",
            f"{position} along the route lies in a bend or beyond its end, "
            f"{text_of(sheet.tell.distance(cut.places[-1]))}: a pull point stands on a straight.",
        )
        for index, position in enumerate(positions.positions)
        if not any(abs(position.si - place) <= 2 * _TOUCHES for place in stops)
    ]
    if faults:
        raise UnanswerableError(*faults)
