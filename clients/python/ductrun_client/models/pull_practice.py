from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.attachment import Attachment
from ..models.cable_arrangement import CableArrangement
from ..models.conductor_counting import ConductorCounting
from ..models.weight_correction_use import WeightCorrectionUse
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.force import Force
    from ..models.force_per_length import ForcePerLength
    from ..models.length import Length


T = TypeVar("T", bound="PullPractice")


@_attrs_define
class PullPractice:
    """How cables are pulled: friction, gear, and what they may bear.

    Attributes:
        allowable_sidewall_pressure (ForcePerLength | Unset): A force per length with its unit; sidewall pressure is
            one.
        allowable_tension (Force | Unset): A force with its unit; tension is a force.
        arrangement (CableArrangement | Unset): How cables lie in the conduit; three cables lie triangular or cradled,
            triplexed if twisted at the factory.

            In the worst case each check takes the arrangement that asks most.
        attachment (Attachment | Unset): Ways to hold the cable: by its conductors or by its jacket.
        brake_limit (Force | Unset): A force with its unit; tension is a force.
        braking_friction_coefficient (float | Unset): Low coefficient of friction, at which a cable runs away downhill
            most: the reel brake reckons with it.
        conductor_counting (ConductorCounting | Unset): Published rules for how many conductors share the pull: all of
            three, or two of three single conductors.
        device_limit (Force | Unset): A force with its unit; tension is a force.
        feed_length (Length | Unset): A length with its unit.
        friction_coefficient (float | Unset): Coefficient of friction of one cable against the conduit.
        grip_limit (Force | Unset): A force with its unit; tension is a force.
        incoming_tension (Force | Unset): A force with its unit; tension is a force.
        weight_correction_factor (float | Unset): Factor on friction for cables side by side, in place of the one of
            their arrangement.
        weight_correction_in (WeightCorrectionUse | Unset): Two readings of the weight correction: in the bend exponent
            as well, or on straights alone.
    """

    allowable_sidewall_pressure: ForcePerLength | Unset = UNSET
    allowable_tension: Force | Unset = UNSET
    arrangement: CableArrangement | Unset = UNSET
    attachment: Attachment | Unset = UNSET
    brake_limit: Force | Unset = UNSET
    braking_friction_coefficient: float | Unset = UNSET
    conductor_counting: ConductorCounting | Unset = UNSET
    device_limit: Force | Unset = UNSET
    feed_length: Length | Unset = UNSET
    friction_coefficient: float | Unset = UNSET
    grip_limit: Force | Unset = UNSET
    incoming_tension: Force | Unset = UNSET
    weight_correction_factor: float | Unset = UNSET
    weight_correction_in: WeightCorrectionUse | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        allowable_sidewall_pressure: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_sidewall_pressure, Unset):
            allowable_sidewall_pressure = self.allowable_sidewall_pressure.to_dict()

        allowable_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.allowable_tension, Unset):
            allowable_tension = self.allowable_tension.to_dict()

        arrangement: str | Unset = UNSET
        if not isinstance(self.arrangement, Unset):
            arrangement = self.arrangement.value

        attachment: str | Unset = UNSET
        if not isinstance(self.attachment, Unset):
            attachment = self.attachment.value

        brake_limit: dict[str, Any] | Unset = UNSET
        if not isinstance(self.brake_limit, Unset):
            brake_limit = self.brake_limit.to_dict()

        braking_friction_coefficient = self.braking_friction_coefficient

        conductor_counting: str | Unset = UNSET
        if not isinstance(self.conductor_counting, Unset):
            conductor_counting = self.conductor_counting.value

        device_limit: dict[str, Any] | Unset = UNSET
        if not isinstance(self.device_limit, Unset):
            device_limit = self.device_limit.to_dict()

        feed_length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.feed_length, Unset):
            feed_length = self.feed_length.to_dict()

        friction_coefficient = self.friction_coefficient

        grip_limit: dict[str, Any] | Unset = UNSET
        if not isinstance(self.grip_limit, Unset):
            grip_limit = self.grip_limit.to_dict()

        incoming_tension: dict[str, Any] | Unset = UNSET
        if not isinstance(self.incoming_tension, Unset):
            incoming_tension = self.incoming_tension.to_dict()

        weight_correction_factor = self.weight_correction_factor

        weight_correction_in: str | Unset = UNSET
        if not isinstance(self.weight_correction_in, Unset):
            weight_correction_in = self.weight_correction_in.value

        field_dict: dict[str, Any] = {}

        field_dict.update({})
        if allowable_sidewall_pressure is not UNSET:
            field_dict["allowable_sidewall_pressure"] = allowable_sidewall_pressure
        if allowable_tension is not UNSET:
            field_dict["allowable_tension"] = allowable_tension
        if arrangement is not UNSET:
            field_dict["arrangement"] = arrangement
        if attachment is not UNSET:
            field_dict["attachment"] = attachment
        if brake_limit is not UNSET:
            field_dict["brake_limit"] = brake_limit
        if braking_friction_coefficient is not UNSET:
            field_dict["braking_friction_coefficient"] = braking_friction_coefficient
        if conductor_counting is not UNSET:
            field_dict["conductor_counting"] = conductor_counting
        if device_limit is not UNSET:
            field_dict["device_limit"] = device_limit
        if feed_length is not UNSET:
            field_dict["feed_length"] = feed_length
        if friction_coefficient is not UNSET:
            field_dict["friction_coefficient"] = friction_coefficient
        if grip_limit is not UNSET:
            field_dict["grip_limit"] = grip_limit
        if incoming_tension is not UNSET:
            field_dict["incoming_tension"] = incoming_tension
        if weight_correction_factor is not UNSET:
            field_dict["weight_correction_factor"] = weight_correction_factor
        if weight_correction_in is not UNSET:
            field_dict["weight_correction_in"] = weight_correction_in

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.force import Force  # noqa: PLC0415
        from ..models.force_per_length import ForcePerLength  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415

        d = dict(src_dict)
        _allowable_sidewall_pressure = d.pop("allowable_sidewall_pressure", UNSET)
        allowable_sidewall_pressure: ForcePerLength | Unset
        if isinstance(_allowable_sidewall_pressure, Unset):
            allowable_sidewall_pressure = UNSET
        else:
            allowable_sidewall_pressure = ForcePerLength.from_dict(_allowable_sidewall_pressure)

        _allowable_tension = d.pop("allowable_tension", UNSET)
        allowable_tension: Force | Unset
        if isinstance(_allowable_tension, Unset):
            allowable_tension = UNSET
        else:
            allowable_tension = Force.from_dict(_allowable_tension)

        _arrangement = d.pop("arrangement", UNSET)
        arrangement: CableArrangement | Unset
        if isinstance(_arrangement, Unset):
            arrangement = UNSET
        else:
            arrangement = CableArrangement(_arrangement)

        _attachment = d.pop("attachment", UNSET)
        attachment: Attachment | Unset
        if isinstance(_attachment, Unset):
            attachment = UNSET
        else:
            attachment = Attachment(_attachment)

        _brake_limit = d.pop("brake_limit", UNSET)
        brake_limit: Force | Unset
        if isinstance(_brake_limit, Unset):
            brake_limit = UNSET
        else:
            brake_limit = Force.from_dict(_brake_limit)

        braking_friction_coefficient = d.pop("braking_friction_coefficient", UNSET)

        _conductor_counting = d.pop("conductor_counting", UNSET)
        conductor_counting: ConductorCounting | Unset
        if isinstance(_conductor_counting, Unset):
            conductor_counting = UNSET
        else:
            conductor_counting = ConductorCounting(_conductor_counting)

        _device_limit = d.pop("device_limit", UNSET)
        device_limit: Force | Unset
        if isinstance(_device_limit, Unset):
            device_limit = UNSET
        else:
            device_limit = Force.from_dict(_device_limit)

        _feed_length = d.pop("feed_length", UNSET)
        feed_length: Length | Unset
        if isinstance(_feed_length, Unset):
            feed_length = UNSET
        else:
            feed_length = Length.from_dict(_feed_length)

        friction_coefficient = d.pop("friction_coefficient", UNSET)

        _grip_limit = d.pop("grip_limit", UNSET)
        grip_limit: Force | Unset
        if isinstance(_grip_limit, Unset):
            grip_limit = UNSET
        else:
            grip_limit = Force.from_dict(_grip_limit)

        _incoming_tension = d.pop("incoming_tension", UNSET)
        incoming_tension: Force | Unset
        if isinstance(_incoming_tension, Unset):
            incoming_tension = UNSET
        else:
            incoming_tension = Force.from_dict(_incoming_tension)

        weight_correction_factor = d.pop("weight_correction_factor", UNSET)

        _weight_correction_in = d.pop("weight_correction_in", UNSET)
        weight_correction_in: WeightCorrectionUse | Unset
        if isinstance(_weight_correction_in, Unset):
            weight_correction_in = UNSET
        else:
            weight_correction_in = WeightCorrectionUse(_weight_correction_in)

        pull_practice = cls(
            allowable_sidewall_pressure=allowable_sidewall_pressure,
            allowable_tension=allowable_tension,
            arrangement=arrangement,
            attachment=attachment,
            brake_limit=brake_limit,
            braking_friction_coefficient=braking_friction_coefficient,
            conductor_counting=conductor_counting,
            device_limit=device_limit,
            feed_length=feed_length,
            friction_coefficient=friction_coefficient,
            grip_limit=grip_limit,
            incoming_tension=incoming_tension,
            weight_correction_factor=weight_correction_factor,
            weight_correction_in=weight_correction_in,
        )

        return pull_practice
