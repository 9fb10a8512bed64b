"""Spacers of a duct bank: stations along the run and pieces at a station.

Every rule here is derived by counting; the intervals themselves are published in guide specifications and are inputs.
"""

from __future__ import annotations

from collections.abc import Sequence

from ductrun.engineering.rounding import TIE, round_down, round_up

_INCH = 0.0254  # m


def stations_by_distance(length: float, interval: float, end_offset: float) -> int:
    """Give the stations (count) of a run whose spacers stand no more than an interval apart: fence posts, ends
    included.

    ceil((L - 2 e) / s) + 1; one station when the offsets leave nothing between them.
    Parameters: length L of the run face to face [m], interval s [m], end_offset e of the first and last station
    from the ends [m].
    Source: derived.
    """
    clear = length - 2 * end_offset
    return 1 if clear <= TIE * length else round_up(clear / interval) + 1


def stations_by_stick(length: float, count: int, stick_length: float) -> int:
    """Give the stations (count) of a run specified as so many for each stick: ceil(L n / stick), no fence post.

    The stations stand half an interval from the joints, which keeps them clear of the bells; against the form by
    distance this is one station fewer.
    Parameters: length L [m], count n for each stick (count), stick_length [m].
    Source: derived.
    """
    return round_up(length * count / stick_length)


def spacing_by_distance(length: float, stations: int, end_offset: float) -> float:
    """Give the distance [m] between stations that share the run evenly: (L - 2 e) / (n - 1); 0 for a single station.

    Parameters: length L [m], stations n (count), end_offset e [m].
    Source: derived.
    """
    return 0.0 if stations == 1 else (length - 2 * end_offset) / (stations - 1)


def stations_on_joints(stations: int, spacing: float, first: float, stick: float, clearance: float) -> int:
    """Give the stations (count) that stand closer than a clearance to a joint of sticks laid from the start of the
    run.

    A station at either end of the run stands on no joint: what is there is the structure.
    Parameters: stations (count), spacing of them [m], first place of them [m], stick length [m], clearance to keep
    [m].
    Source: derived.
    """
    end = 2 * first + (stations - 1) * spacing
    places = (first + index * spacing for index in range(stations))
    return sum(
        clearance < place < end - clearance and abs(place - round(place / stick) * stick) < clearance
        for place in places
    )


def clear_offset(length: float, interval: float, stick: float, clearance: float) -> float | None:
    """Give an end offset [m] with which no station stands on a joint, the least of those tried; None where none is.

    Tried are whole inches up to half an interval, which a crew can measure off, each with the stations and the
    spacing that follow from it.
    Parameters: length of the run [m], interval at most [m], stick length [m], clearance to keep [m].
    Source: derived.
    """
    for inches in range(round_down(interval / 2 / _INCH) + 1):
        offset = inches * _INCH
        stations = stations_by_distance(length, interval, offset)
        spacing = spacing_by_distance(length, stations, offset)
        if not stations_on_joints(stations, spacing, offset, stick, clearance):
            return offset
    return None


def base_pieces(tiers: Sequence[int], ducts_per_spacer: int) -> int:
    """Give the base pieces (count) of one station: those under the bottom tier.

    Parameters: tiers of so many ducts (count), the bottom one first, ducts_per_spacer (count).
    Source: derived.
    """
    return -(-tiers[0] // ducts_per_spacer)


def intermediate_pieces(tiers: Sequence[int], ducts_per_spacer: int) -> int:
    """Give the intermediate pieces (count) of one station: those under every tier above the bottom one.

    For single-duct pieces this is all ducts less the bottom tier, which gives C (R - 1) for a rectangle of C
    columns and R tiers and stays right for a stepped bank.
    Parameters: tiers of so many ducts (count), the bottom one first, ducts_per_spacer (count).
    Source: derived.
    """
    return sum(-(-ducts // ducts_per_spacer) for ducts in tiers[1:])


def top_pieces(tiers: Sequence[int], ducts_per_spacer: int) -> int:
    """Give the pieces (count) that close one station from above: those over every duct that carries no other.

    Parameters: tiers of so many ducts (count), the bottom one first, ducts_per_spacer (count).
    Source: derived.
    """
    exposed = (max(0, lower - upper) for lower, upper in zip(tiers, [*tiers[1:], 0], strict=True))
    return sum(-(-ducts // ducts_per_spacer) for ducts in exposed)


def with_waste(count: int, waste_percent: float) -> int:
    """Give the pieces to order (count): n (1 + waste / 100), rounded up to whole ones.

    Parameters: count n (count), waste_percent [percent].
    Source: derived.
    """
    return round_up(count * (1 + waste_percent / 100))
