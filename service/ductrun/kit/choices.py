"""Closed sets that every operation speaks of: findings and code editions."""

from __future__ import annotations

from ductrun.units import Code


class CodeEdition(Code):
    """Editions of NFPA 70 whose numbers and rules an answer can follow."""

    NFPA_70_2017 = "2017"
    NFPA_70_2020 = "2020"
    NFPA_70_2023 = "2023"


class Severity(Code):
    """Weight of a finding: a broken rule or limit, something unwise or near a limit, or a note."""

    VIOLATION = "violation"
    CAUTION = "caution"
    NOTE = "note"


class Verdict(Code):
    """What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of something."""

    COMPLIES = "complies"
    VIOLATES = "violates"
    NOT_JUDGED = "not_judged"

    @classmethod
    def of(cls, within: bool | None) -> Verdict:
        """Give the verdict of a part that keeps its limits, or not; None where that was not judged."""
        return cls.NOT_JUDGED if within is None else cls.COMPLIES if within else cls.VIOLATES


class Standing(Code):
    """What backs a figure: a published source, practice, memory of a source, a derivation, or the caller."""

    PUBLISHED = "published"
    PRACTICE = "practice"
    MEMORY = "memory"
    DERIVED = "derived"
    CALLER = "caller"
