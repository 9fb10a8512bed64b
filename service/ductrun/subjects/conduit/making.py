"""How joints without cement are made, and the couplings that come with the lengths."""

from __future__ import annotations

from ductrun.kit.backing import PRACTICE
from ductrun.kit.choices import Severity
from ductrun.kit.worksheet import Worksheet
from ductrun.subjects.conduit.choices import JoiningMethod

_MAKING = {
    JoiningMethod.THREADED: "Cut square, ream, cut the thread to length and clean it; treat cut threads against rust "
    "with a compound that conducts, and make every joint up wrench-tight, for the conduit is the ground path.",
    JoiningMethod.COUPLED: "Cut square and ream; seat the ends and make every coupling tight, for the tubing is the "
    "ground path. Take couplings listed for the wet or for concrete where they lie in it.",
    JoiningMethod.FUSED: "Fuse by the procedure of the maker of the conduit, with trained people; let a joint cool "
    "under pressure before it is moved, and try the first one to destruction.",
}


def on_lengths(method: JoiningMethod, sticks: int, couplings: int) -> int:
    """Count the couplings of a run that come with its lengths: threaded conduit is sold with one on each."""
    return min(sticks, couplings) if method is JoiningMethod.THREADED else 0


def remind(method: JoiningMethod, sticks: int, couplings: int, sheet: Worksheet) -> None:
    """Say how joints without cement are made, and which couplings need not be ordered; `sheet` is of the conduit."""
    sheet.find(Severity.NOTE, "make_the_joint", _MAKING[method], PRACTICE, member="")
    if method is JoiningMethod.FUSED:
        words = "Fusion tools burn: keep hands and whatever catches fire away from them, and the joint dry and clean."
        sheet.caution("hot_fusion", words, PRACTICE)
    come = on_lengths(method, sticks, couplings)
    if come:
        rest = couplings - come
        order = "none is" if not rest else "1 is" if rest == 1 else f"{rest:,} are"
        sheet.find(
            Severity.NOTE,
            "couplings_come_with_lengths",
            f"Threaded conduit is sold with a coupling on each length: of {couplings:,} couplings {come:,} come with "
            f"the lengths, and {order} to be ordered.",
            PRACTICE,
            couplings,
            come,
            member="",
        )
