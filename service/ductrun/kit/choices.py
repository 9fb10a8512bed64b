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


class Standing(Code):
    """What backs a figure: a published source, practice, memory of a source, a derivation, or the caller."""

    PUBLISHED = "published"
    PRACTICE = "practice"
    MEMORY = "memory"
    DERIVED = "derived"
    CALLER = "caller"
