"""Supports of conduit above ground: the end straps near each termination, the rest no farther apart than allowed."""

from __future__ import annotations

from ductrun.engineering.rounding import over, round_down, round_up


def support_positions(length: float, spacing: float, end_distance: float, terminations: int) -> list[float]:
    """Give where straps stand along a straight run [m].

    With a termination at both ends the first and last stand `end_distance` from them and the rest share what is
    between evenly, fence posts included; a run no longer than twice that distance needs one strap, in its middle.
    With one termination the first stands `end_distance` from it and the next follow every `spacing`, as the run
    goes on.
    Parameters: length of the run [m], spacing at most [m], end_distance at most [m], and no more than the spacing,
    terminations of the run (count), 1 or 2.
    Source: NFPA 70-2023, Table 352.30(B), and 352.30(A) and the like sections; derived for the count.
    """
    end = min(end_distance, spacing)
    if terminations == 1:
        beyond = max(0.0, length - end)
        return [min(end, length / 2) if length < end else end] + [
            end + spacing * step for step in range(1, round_down(beyond / spacing) + 1)
        ]
    if not over(length, 2 * end):
        return [length / 2]
    between = length - 2 * end
    gaps = max(1, round_up(between / spacing))
    return [end + between * step / gaps for step in range(gaps + 1)]
