"""Pavement over a trench: what is cut, taken up and laid again."""

from __future__ import annotations

from typing import Annotated, NamedTuple

from msgspec import Meta, Struct
from pydantic import Field

from ductrun.engineering import trench as engineering
from ductrun.engineering.rounding import over
from ductrun.kit import answers
from ductrun.kit.backing import WORKED_OUT
from ductrun.kit.choices import Severity
from ductrun.kit.defaults import quantity
from ductrun.kit.forms import Clearance, Form, Omissible, between
from ductrun.kit.telling import Telling
from ductrun.kit.wording import text_of
from ductrun.kit.worksheet import UnanswerableError, Worksheet
from ductrun.subjects.ground.choices import PavementKind
from ductrun.subjects.ground.filling import EarthCover, Section
from ductrun.units import Length

CUT_BACK = quantity("pavement.cut_back", Length)
Thickness = Annotated[Length, between(Length, 0.5, 48, "in")]


class Pavement(Form):
    """The pavement that a trench goes through; its top is grade, and it is laid again as thick as it was."""

    kind: PavementKind = Field(description="What it is made of.", examples=["asphalt"])
    thickness: Thickness = Field(description="How thick it is.", examples=[{"value": 4, "unit": "in"}])
    cut_back: Omissible[Clearance] = Field(
        default=None,
        description="How far beyond each edge of the trench it is cut.",
        examples=[{"value": 12, "unit": "in"}],
        json_schema_extra=CUT_BACK.stated,
    )


class Paved(NamedTuple):
    """Pavement over a trench [m, m2, m3]: its thickness, greatest width and length of the cut, what is taken up and
    laid again.
    """

    kind: PavementKind
    thickness: float
    width: float
    cut_length: float
    area: float
    volume: float


class PavementTakeoff(Struct, frozen=True, gc=False):
    """Pavement in place; what is taken up of it is no spoil."""

    kind: Annotated[PavementKind, Meta(description="Kind of the pavement.")]
    cut_width: Annotated[answers.Length, Meta(description="Width of the cut; the greatest, if it varies.")]
    saw_cut_length: Annotated[answers.Length, Meta(description="Along both sides and across both ends.")]
    removal_area: Annotated[answers.Area, Meta(description="Taken up, the whole cut.")]
    removal_volume: Annotated[answers.Volume, Meta(description="Taken up, in place.")]
    restoration_area: Annotated[answers.Area, Meta(description="Laid again, the whole cut.")]
    restoration_volume: Annotated[answers.Volume, Meta(description="Laid again, in place.")]


def thickness_of(given: Pavement | None, earth: EarthCover, sheet: Worksheet) -> float:
    """Give the thickness of the pavement [m], 0 without any; refuse one that reaches into what is buried."""
    if given is None:
        return 0.0
    thickness = given.thickness
    if over(thickness.si, earth.least):
        raise UnanswerableError(
            sheet.fault(
                "pavement/thickness/value",
                "thicker_than_the_cover",
                "The cover is measured from the top of the pavement: the pavement cannot be thicker.",
                maximum=Length(thickness.unit.from_si(earth.least), thickness.unit),
            )
        )
    return thickness.si


def pave(given: Pavement, section: Section, profile: engineering.Profile, sheet: Worksheet) -> Paved:
    """Give the pavement over a trench of a depth by position [m], cut beside its edges and square across its ends."""
    beyond = sheet.settle("cut_back", given.cut_back, CUT_BACK).si
    width, slope = section.width + 2 * beyond, section.side_slope
    widths = [width + 2 * slope * depth for _, depth in profile]
    area = engineering.open_area(width, slope, profile)
    if sheet.working is not None:
        substituted = f"{max(widths):.5g} m at most, over {profile[-1][0]:.6g} m"
        sheet.show("A_pavement", "(B + 2 z d + 2 cut back) x L", substituted, sheet.tell.surface(area))
    volume = area * given.thickness.si
    told = sheet.tell.bulk_volume(volume)
    sheet.find(
        Severity.NOTE,
        "pavement_hauled_apart",
        f"{text_of(told)} of pavement, in place, is taken up and hauled apart from the earth: it is not in the truck "
        "loads.",
        WORKED_OUT,
        told,
        member="",
    )
    return Paved(
        kind=given.kind,
        thickness=given.thickness.si,
        width=max(widths),
        cut_length=engineering.edge_length(slope, profile) + widths[0] + widths[-1],
        area=area,
        volume=volume,
    )


def told_pavement(found: Paved, telling: Telling) -> PavementTakeoff:
    """Put pavement into the caller's units."""
    area, volume = telling.surface(found.area), telling.bulk_volume(found.volume)
    return PavementTakeoff(
        kind=found.kind,
        cut_width=telling.size(found.width),
        saw_cut_length=telling.distance(found.cut_length),
        removal_area=area,
        removal_volume=volume,
        restoration_area=area,
        restoration_volume=volume,
    )
