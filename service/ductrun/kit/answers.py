"""What every answer is made of: plain records, written to JSON once and never validated again.

A quantity is of its dimension here as in a request, one schema for both: `answers.Length` is the Length that units
declares.
"""

from __future__ import annotations

from typing import Annotated, Any

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit.choices import Severity, Standing, Verdict
from ductrun.units import *  # noqa: F403  # every dimension that is declared
from ductrun.units import AnyQuantity

MOST_COUNTED = 2**31 - 1  # of a count: whole numbers are of 32 bits in the languages of the callers
LISTED = ": all are listed in docs/findings.md of the service"
Figure = float | AnyQuantity  # a bare one is told as a ratio


class Finding(Struct, frozen=True, gc=False):
    """One sentence a foreman understands: what, how much, the limit, what to do; `pointer` is where in the request.

    What the caller gave, and what is worked out, has no source id.
    """

    severity: Annotated[Severity, Meta(description="Violation, caution or note.")]
    code: Annotated[str, Meta(description=f"What was found, in one stable word for programs{LISTED}.", max_length=100)]
    message: Annotated[str, Meta(description="The sentence for people.")]
    citation: Annotated[str, Meta(description="Where the rule or the limit stands.")]
    standing: Annotated[Standing, Meta(description="With what right that is given.")]
    source_id: Annotated[str | UnsetType, Meta(description="Id of the source in the table of sources.")] = UNSET
    actual: Annotated[AnyQuantity | UnsetType, Meta(description="How much it is.")] = UNSET
    limit: Annotated[AnyQuantity | UnsetType, Meta(description="What it is held against.")] = UNSET
    pointer: Annotated[str | UnsetType, Meta(description="JSON pointer of the member it is about.")] = UNSET


class Caution(Struct, frozen=True, gc=False):
    """A usual caution of the work at hand, whatever the figures."""

    code: Annotated[str, Meta(description=f"Which caution, in one stable word for programs{LISTED}.", max_length=100)]
    message: Annotated[str, Meta(description="The sentence for people.")]
    citation: Annotated[str, Meta(description="Where it stands, or that it is practice.")]


class Assumption(Struct, frozen=True, gc=False):
    """A value taken for want of one, with every member it stands in for; a quantity too, where it is a figure."""

    pointers: Annotated[list[str], Meta(description="JSON pointers of the members that were left out.")]
    text: Annotated[str, Meta(description="The value as a text.")]
    citation: Annotated[str, Meta(description="Where it comes from, or that it is practice.")]
    standing: Annotated[Standing, Meta(description="With what right it is taken.")]
    source_id: Annotated[str | UnsetType, Meta(description="Id of the source in the table of sources.")] = UNSET
    quantity: Annotated[AnyQuantity | UnsetType, Meta(description="The value, where it is a figure.")] = UNSET


class Step(Struct, frozen=True, gc=False):
    """One line of the working; `pointer` is the part of the request it is about."""

    pointer: Annotated[str, Meta(description="JSON pointer of the part of the request.")]
    symbol: Annotated[str, Meta(description="Symbol of what comes out.")]
    formula: Annotated[str, Meta(description="The formula.")]
    substituted: Annotated[
        str, Meta(description="The figures put in, in SI unless they say their unit.", max_length=20_000)
    ]
    quantity: Annotated[AnyQuantity, Meta(description="What comes out.")]


class Basis(Struct, frozen=True, gc=False):
    """What the answer rests on."""

    service_version: Annotated[str, Meta(description="Version of the service.")]
    tables_version: Annotated[str, Meta(description="Hash of all reference tables.")]
    source_ids: Annotated[tuple[str, ...], Meta(description="Ids of the sources that the answer rests on.")]
    code_edition: Annotated[
        str | UnsetType, Meta(description="Code and edition followed; absent where a calculation follows none.")
    ] = UNSET


class Answer(Struct, frozen=True, gc=False, kw_only=True):
    """The envelope of every calculation; it has a verdict where something was held against a limit."""

    verdict: Annotated[
        Verdict | UnsetType,
        Meta(description="What the answer says of its limits; absent where nothing was held against one."),
    ] = UNSET
    result: Annotated[Any, Meta(description="What was calculated.")]
    findings: Annotated[list[Finding], Meta(description="What is broken, unwise or worth a note; often none.")]
    cautions: Annotated[list[Caution], Meta(description="The usual cautions of the work, whatever the figures.")]
    assumptions: Annotated[list[Assumption], Meta(description="What was taken for members that were left out.")]
    basis: Annotated[Basis, Meta(description="The versions and sources that the answer rests on.")]
    notice: Annotated[str, Meta(description="What the answer is not: show it wherever its figures are shown.")]
    working: Annotated[
        list[Step] | UnsetType, Meta(description="How it was worked out, step by step, if asked for.")
    ] = UNSET
    request: Annotated[Any | UnsetType, Meta(description="The request with every default filled in, if asked for.")] = (
        UNSET
    )
    suggestions: Annotated[
        Any | UnsetType, Meta(description="Changes of the request that were tried and keep its limits, if asked for.")
    ] = UNSET


NOTICE = (
    "A planning figure. The adopted code with its local amendments, the authority having jurisdiction and a licensed "
    "professional decide."
)

# what the service is for, as its contract and its pages say it
PURPOSE = "The engineering behind a conduit run."
USE = "ductrun turns a conduit run on a drawing into what is priced, ordered, permitted and built."
WITHOUT_ANSWER = "a duct wider than its envelope, cables that do not pass the bore, a size the tables do not hold"
