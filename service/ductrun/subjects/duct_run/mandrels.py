"""The mandrel of each duct: that of the smallest bore along it."""

from __future__ import annotations

from collections.abc import Iterable

from ductrun.subjects.duct_run.assessment import AssessedStretch


def mandrels_of(stretches: Iterable[AssessedStretch]) -> dict[int, float]:
    """Give the mandrel of each duct [m] through stretches, by its index; none of a duct whose bore is not known."""
    found: dict[int, float] = {}
    for stretch in stretches:
        for piece in stretch.pieces:
            mandrel = None if piece.joined is None else piece.joined.mandrel_diameter
            if mandrel is None:
                continue
            for duct in piece.ducts:
                if mandrel < found.get(duct, mandrel + 1.0):
                    found[duct] = mandrel
    return found
