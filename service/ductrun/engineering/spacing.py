"""Spacers of a duct bank: stations along the run and pieces at a station.

Every rule here is derived by counting; the intervals themselves are published in guide specifications and are inputs.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ductrun.engineering.rounding import TIE, round_down, round_up


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


def stations_on_joints(
    stations: int, spacing: float, first: float, length: float, stick: float, clearance: float
) -> int:
    """Give the stations (count) that stand closer than a clearance to a joint of sticks laid from the start of the
    run.

    Neither end of the run is a joint.
    Parameters: stations (count), spacing of them [m], first place of them [m], length of the run [m], stick length
    [m], clearance to keep [m].
    Source: derived.
    """
    return sum(_on_joints(stations, spacing, first, length, stick, clearance))


def _on_joints(
    stations: int, spacing: float, first: float, length: float, stick: float, clearance: float
) -> Iterator[bool]:
    """Say of every station whether it stands on a joint."""
    last = round_up(length / stick) - 1  # joints stand between sticks
    closer = clearance * (1 - TIE)
    for index in range(stations):
        place = first + index * spacing
        joint = min(last, round(place / stick))
        yield joint > 0 and abs(place - joint * stick) < closer


def clear_offset(length: float, interval: float, stick: float, clearance: float, step: float) -> float | None:
    """Give the least offset [m] of the first and last station from the ends that keeps every station clear of the
    joints; None where none of the steps up to half an interval does.

    Parameters: length of the run [m], interval that stations stand apart at most [m], stick length [m], clearance to
    keep [m], step in which offsets are tried [m].
    Source: derived.
    """
    for steps in range(round_down(min(interval, length) / 2 / step) + 1):
        offset = steps * step
        stations = stations_by_distance(length, interval, offset)
        spacing = spacing_by_distance(length, stations, offset)
        if not any(_on_joints(stations, spacing, offset, length, stick, clearance)):
            return offset
    return None


def base_pieces(tiers: Sequence[Sequence[int]], ducts_per_spacer: int) -> int:
    """Give the base pieces (count) of one station for ducts of one size: those under the bottom tier.

    Parameters: tiers of so many ducts (count) beside each other, in as many groups as others part them, the bottom
    tier first; ducts_per_spacer (count).
    Source: derived.
    """
    return sum([-(-ducts // ducts_per_spacer) for ducts in tiers[0]])


def intermediate_pieces(tiers: Sequence[Sequence[int]], ducts_per_spacer: int) -> int:
    """Give the intermediate pieces (count) of one station for ducts of one size: those under every tier above the
    bottom one.

    For single-duct pieces this is all ducts less the bottom tier, which gives C (R - 1) for a rectangle of C
    columns and R tiers and stays right for a stepped bank.
    Parameters: tiers of so many ducts (count) beside each other, the bottom one first; ducts_per_spacer (count).
    Source: derived.
    """
    return sum([-(-ducts // ducts_per_spacer) for tier in tiers[1:] for ducts in tier])


def top_pieces(tiers: Sequence[Sequence[int]], ducts_per_spacer: int) -> int:
    """Give the pieces (count) that close one station from above for ducts of one size: those over every duct that
    carries no other.

    A duct is taken to carry one of its own size, and ducts that others part to need pieces of their own: never too few.
    Parameters: tiers of so many ducts (count) beside each other, the bottom one first; ducts_per_spacer (count).
    Source: derived.
    """
    found = 0
    for lower, upper in zip(tiers, [*tiers[1:], ()], strict=True):
        exposed = max(0, sum(lower) - sum(upper))
        if exposed:
            found += min(exposed, -(-exposed // ducts_per_spacer) + len(lower) - 1)
    return found


def with_waste(count: int, waste_percent: float) -> int:
    """Give the pieces to order (count): n (1 + waste / 100), rounded up to whole ones.

    Parameters: count n (count), waste_percent [percent].
    Source: derived.
    """
    return round_up(count * (1 + waste_percent / 100))
