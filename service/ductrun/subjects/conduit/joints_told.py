"""What joints answers: the record of its result, and how it is told."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated

from msgspec import UNSET, Meta, Struct, UnsetType

from ductrun.kit import answers
from ductrun.kit.telling import Telling

if TYPE_CHECKING:
    from ductrun.subjects.conduit.joints import Joined


class JointsResult(Struct, frozen=True, gc=False):
    """What to order and how long to wait."""

    stick_count: Annotated[int, Meta(description="Sticks of all ducts.")]
    straight_length: Annotated[answers.Length, Meta(description="Straight duct in one duct, elbows taken out.")]
    joint_count: Annotated[int, Meta(description="Cemented sockets of all ducts, end bells included.")]
    coupling_count: Annotated[int, Meta(description="Separate couplings; none with bells.")]
    elbow_count: Annotated[int, Meta(description="Elbows and sweeps of all ducts.")]
    elbow_length: Annotated[answers.Length, Meta(description="Developed length of the elbows of one duct.")]
    end_bell_count: Annotated[int, Meta(description="End bells, two a duct.")]
    plug_count: Annotated[int, Meta(description="Plugs for spare ducts, two each.")]
    pull_cord_length: Annotated[answers.Length, Meta(description="Cord through every duct, tails included.")]
    cement_volume: Annotated[answers.Volume, Meta(description="Solvent cement, by the conduit table.")]
    cement_quart_count: Annotated[int, Meta(description="The same in whole quarts.")]
    set_time: Annotated[answers.Duration, Meta(description="Time a joint is left alone.")]
    mandrel_diameter: Annotated[
        answers.Length | UnsetType, Meta(description="Mandrel for the test, if the bore is known.")
    ] = UNSET


def tell(joined: Joined, telling: Telling) -> JointsResult:
    """Tell what to order and how long to wait."""
    ducts, mandrel = joined.ducts, joined.mandrel_diameter
    return JointsResult(
        stick_count=joined.stick_count,
        straight_length=telling.distance(joined.straight_length),
        joint_count=joined.joint_count,
        coupling_count=joined.coupling_count,
        elbow_count=ducts.elbows.elbow_count * ducts.duct_count,
        elbow_length=telling.distance(ducts.elbows.length),
        end_bell_count=joined.end_bell_count,
        plug_count=joined.plug_count,
        pull_cord_length=telling.distance(joined.pull_cord_length),
        cement_volume=telling.liquid_volume(joined.cement_volume),
        cement_quart_count=joined.cement_quart_count,
        set_time=answers.Duration(joined.set_time.value, joined.set_time.unit),
        mandrel_diameter=UNSET if mandrel is None else telling.size(mandrel),
    )
