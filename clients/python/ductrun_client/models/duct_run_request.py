from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define

from ..models.code_edition import CodeEdition
from ..models.straight_lengths import StraightLengths
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.cable_order import CableOrder
    from ..models.circuit import Circuit
    from ..models.digging import Digging
    from ..models.duct_bank import DuctBank
    from ..models.earth_loading import EarthLoading
    from ..models.encasing import Encasing
    from ..models.floating import Floating
    from ..models.profile import Profile
    from ..models.pull_practice import PullPractice
    from ..models.rate import Rate
    from ..models.rating_practice import RatingPractice
    from ..models.run_joining import RunJoining
    from ..models.run_moving import RunMoving
    from ..models.run_place import RunPlace
    from ..models.site import Site
    from ..models.spacing import Spacing
    from ..models.stretch import Stretch


T = TypeVar("T", bound="DuctRunRequest")


@_attrs_define
class DuctRunRequest:
    """A run from end to end.

    Attributes:
        end (RunPlace): An end of the run, or a pull point in it.
        start (RunPlace): An end of the run, or a pull point in it.
        stretches (list[Stretch]): The stretches in order.
        bank (DuctBank | Unset): Ducts in tiers: of one kind (tiers), or of several (tier_ducts).
        circuits (list[Circuit] | Unset): The circuits; ducts left over are spares.
        code_edition (CodeEdition | Unset): Editions of NFPA 70 whose numbers and rules an answer can follow.
        concrete (Encasing | Unset): How concrete is mixed, reinforced and bought.
        digging (Digging | Unset): How a trench is dug and filled.
        earth_load (EarthLoading | Unset): What lies and passes over ducts, how they are bedded, and the limits they are
            held against.
        flotation (Floating | Unset): What a bank floats in, and how it is held down.
        joining (RunJoining | Unset): How ducts are joined, and how their elbows are made.
        movement (RunMoving | Unset): Expansion fittings and straps of all that lies above ground.
        name (str | Unset): Its name.
        note (str | Unset): A remark, told back as it is.
        ordering (CableOrder | Unset): What is added to the route at each of its two ends, and how the cable comes.
        profile (Profile | Unset): Elevations along the run, straight between the points: they give grades and cover.
        pulling (PullPractice | Unset): How cables are pulled: friction, gear, and what they may bear.
        rates (list[Rate] | Unset): The caller's rates for what is taken off.
        rating (RatingPractice | Unset): The method a bank is rated by, and what concrete and ducts are to its heat.
        site (Site | Unset): The place, once.
        spacing (Spacing | Unset): How spacers are specified.
        straight_lengths (StraightLengths | Unset): Where the lengths of straights end: at the bends, or at the
            intersections of their tangents.
    """

    end: RunPlace
    start: RunPlace
    stretches: list[Stretch]
    bank: DuctBank | Unset = UNSET
    circuits: list[Circuit] | Unset = UNSET
    code_edition: CodeEdition | Unset = UNSET
    concrete: Encasing | Unset = UNSET
    digging: Digging | Unset = UNSET
    earth_load: EarthLoading | Unset = UNSET
    flotation: Floating | Unset = UNSET
    joining: RunJoining | Unset = UNSET
    movement: RunMoving | Unset = UNSET
    name: str | Unset = UNSET
    note: str | Unset = UNSET
    ordering: CableOrder | Unset = UNSET
    profile: Profile | Unset = UNSET
    pulling: PullPractice | Unset = UNSET
    rates: list[Rate] | Unset = UNSET
    rating: RatingPractice | Unset = UNSET
    site: Site | Unset = UNSET
    spacing: Spacing | Unset = UNSET
    straight_lengths: StraightLengths | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        end = self.end.to_dict()

        start = self.start.to_dict()

        stretches = []
        for stretches_item_data in self.stretches:
            stretches_item = stretches_item_data.to_dict()
            stretches.append(stretches_item)

        bank: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bank, Unset):
            bank = self.bank.to_dict()

        circuits: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.circuits, Unset):
            circuits = []
            for circuits_item_data in self.circuits:
                circuits_item = circuits_item_data.to_dict()
                circuits.append(circuits_item)

        code_edition: str | Unset = UNSET
        if not isinstance(self.code_edition, Unset):
            code_edition = self.code_edition.value

        concrete: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete, Unset):
            concrete = self.concrete.to_dict()

        digging: dict[str, Any] | Unset = UNSET
        if not isinstance(self.digging, Unset):
            digging = self.digging.to_dict()

        earth_load: dict[str, Any] | Unset = UNSET
        if not isinstance(self.earth_load, Unset):
            earth_load = self.earth_load.to_dict()

        flotation: dict[str, Any] | Unset = UNSET
        if not isinstance(self.flotation, Unset):
            flotation = self.flotation.to_dict()

        joining: dict[str, Any] | Unset = UNSET
        if not isinstance(self.joining, Unset):
            joining = self.joining.to_dict()

        movement: dict[str, Any] | Unset = UNSET
        if not isinstance(self.movement, Unset):
            movement = self.movement.to_dict()

        name = self.name

        note = self.note

        ordering: dict[str, Any] | Unset = UNSET
        if not isinstance(self.ordering, Unset):
            ordering = self.ordering.to_dict()

        profile: dict[str, Any] | Unset = UNSET
        if not isinstance(self.profile, Unset):
            profile = self.profile.to_dict()

        pulling: dict[str, Any] | Unset = UNSET
        if not isinstance(self.pulling, Unset):
            pulling = self.pulling.to_dict()

        rates: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.rates, Unset):
            rates = []
            for rates_item_data in self.rates:
                rates_item = rates_item_data.to_dict()
                rates.append(rates_item)

        rating: dict[str, Any] | Unset = UNSET
        if not isinstance(self.rating, Unset):
            rating = self.rating.to_dict()

        site: dict[str, Any] | Unset = UNSET
        if not isinstance(self.site, Unset):
            site = self.site.to_dict()

        spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.spacing, Unset):
            spacing = self.spacing.to_dict()

        straight_lengths: str | Unset = UNSET
        if not isinstance(self.straight_lengths, Unset):
            straight_lengths = self.straight_lengths.value

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "end": end,
                "start": start,
                "stretches": stretches,
            }
        )
        if bank is not UNSET:
            field_dict["bank"] = bank
        if circuits is not UNSET:
            field_dict["circuits"] = circuits
        if code_edition is not UNSET:
            field_dict["code_edition"] = code_edition
        if concrete is not UNSET:
            field_dict["concrete"] = concrete
        if digging is not UNSET:
            field_dict["digging"] = digging
        if earth_load is not UNSET:
            field_dict["earth_load"] = earth_load
        if flotation is not UNSET:
            field_dict["flotation"] = flotation
        if joining is not UNSET:
            field_dict["joining"] = joining
        if movement is not UNSET:
            field_dict["movement"] = movement
        if name is not UNSET:
            field_dict["name"] = name
        if note is not UNSET:
            field_dict["note"] = note
        if ordering is not UNSET:
            field_dict["ordering"] = ordering
        if profile is not UNSET:
            field_dict["profile"] = profile
        if pulling is not UNSET:
            field_dict["pulling"] = pulling
        if rates is not UNSET:
            field_dict["rates"] = rates
        if rating is not UNSET:
            field_dict["rating"] = rating
        if site is not UNSET:
            field_dict["site"] = site
        if spacing is not UNSET:
            field_dict["spacing"] = spacing
        if straight_lengths is not UNSET:
            field_dict["straight_lengths"] = straight_lengths

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.cable_order import CableOrder  # noqa: PLC0415
        from ..models.circuit import Circuit  # noqa: PLC0415
        from ..models.digging import Digging  # noqa: PLC0415
        from ..models.duct_bank import DuctBank  # noqa: PLC0415
        from ..models.earth_loading import EarthLoading  # noqa: PLC0415
        from ..models.encasing import Encasing  # noqa: PLC0415
        from ..models.floating import Floating  # noqa: PLC0415
        from ..models.profile import Profile  # noqa: PLC0415
        from ..models.pull_practice import PullPractice  # noqa: PLC0415
        from ..models.rate import Rate  # noqa: PLC0415
        from ..models.rating_practice import RatingPractice  # noqa: PLC0415
        from ..models.run_joining import RunJoining  # noqa: PLC0415
        from ..models.run_moving import RunMoving  # noqa: PLC0415
        from ..models.run_place import RunPlace  # noqa: PLC0415
        from ..models.site import Site  # noqa: PLC0415
        from ..models.spacing import Spacing  # noqa: PLC0415
        from ..models.stretch import Stretch  # noqa: PLC0415

        d = dict(src_dict)
        end = RunPlace.from_dict(d.pop("end"))

        start = RunPlace.from_dict(d.pop("start"))

        stretches = []
        _stretches = d.pop("stretches")
        for stretches_item_data in _stretches:
            stretches_item = Stretch.from_dict(stretches_item_data)

            stretches.append(stretches_item)

        _bank = d.pop("bank", UNSET)
        bank: DuctBank | Unset
        if isinstance(_bank, Unset):
            bank = UNSET
        else:
            bank = DuctBank.from_dict(_bank)

        _circuits = d.pop("circuits", UNSET)
        circuits: list[Circuit] | Unset = UNSET
        if _circuits is not UNSET:
            circuits = []
            for circuits_item_data in _circuits:
                circuits_item = Circuit.from_dict(circuits_item_data)

                circuits.append(circuits_item)

        _code_edition = d.pop("code_edition", UNSET)
        code_edition: CodeEdition | Unset
        if isinstance(_code_edition, Unset):
            code_edition = UNSET
        else:
            code_edition = CodeEdition(_code_edition)

        _concrete = d.pop("concrete", UNSET)
        concrete: Encasing | Unset
        if isinstance(_concrete, Unset):
            concrete = UNSET
        else:
            concrete = Encasing.from_dict(_concrete)

        _digging = d.pop("digging", UNSET)
        digging: Digging | Unset
        if isinstance(_digging, Unset):
            digging = UNSET
        else:
            digging = Digging.from_dict(_digging)

        _earth_load = d.pop("earth_load", UNSET)
        earth_load: EarthLoading | Unset
        if isinstance(_earth_load, Unset):
            earth_load = UNSET
        else:
            earth_load = EarthLoading.from_dict(_earth_load)

        _flotation = d.pop("flotation", UNSET)
        flotation: Floating | Unset
        if isinstance(_flotation, Unset):
            flotation = UNSET
        else:
            flotation = Floating.from_dict(_flotation)

        _joining = d.pop("joining", UNSET)
        joining: RunJoining | Unset
        if isinstance(_joining, Unset):
            joining = UNSET
        else:
            joining = RunJoining.from_dict(_joining)

        _movement = d.pop("movement", UNSET)
        movement: RunMoving | Unset
        if isinstance(_movement, Unset):
            movement = UNSET
        else:
            movement = RunMoving.from_dict(_movement)

        name = d.pop("name", UNSET)

        note = d.pop("note", UNSET)

        _ordering = d.pop("ordering", UNSET)
        ordering: CableOrder | Unset
        if isinstance(_ordering, Unset):
            ordering = UNSET
        else:
            ordering = CableOrder.from_dict(_ordering)

        _profile = d.pop("profile", UNSET)
        profile: Profile | Unset
        if isinstance(_profile, Unset):
            profile = UNSET
        else:
            profile = Profile.from_dict(_profile)

        _pulling = d.pop("pulling", UNSET)
        pulling: PullPractice | Unset
        if isinstance(_pulling, Unset):
            pulling = UNSET
        else:
            pulling = PullPractice.from_dict(_pulling)

        _rates = d.pop("rates", UNSET)
        rates: list[Rate] | Unset = UNSET
        if _rates is not UNSET:
            rates = []
            for rates_item_data in _rates:
                rates_item = Rate.from_dict(rates_item_data)

                rates.append(rates_item)

        _rating = d.pop("rating", UNSET)
        rating: RatingPractice | Unset
        if isinstance(_rating, Unset):
            rating = UNSET
        else:
            rating = RatingPractice.from_dict(_rating)

        _site = d.pop("site", UNSET)
        site: Site | Unset
        if isinstance(_site, Unset):
            site = UNSET
        else:
            site = Site.from_dict(_site)

        _spacing = d.pop("spacing", UNSET)
        spacing: Spacing | Unset
        if isinstance(_spacing, Unset):
            spacing = UNSET
        else:
            spacing = Spacing.from_dict(_spacing)

        _straight_lengths = d.pop("straight_lengths", UNSET)
        straight_lengths: StraightLengths | Unset
        if isinstance(_straight_lengths, Unset):
            straight_lengths = UNSET
        else:
            straight_lengths = StraightLengths(_straight_lengths)

        duct_run_request = cls(
            end=end,
            start=start,
            stretches=stretches,
            bank=bank,
            circuits=circuits,
            code_edition=code_edition,
            concrete=concrete,
            digging=digging,
            earth_load=earth_load,
            flotation=flotation,
            joining=joining,
            movement=movement,
            name=name,
            note=note,
            ordering=ordering,
            profile=profile,
            pulling=pulling,
            rates=rates,
            rating=rating,
            site=site,
            spacing=spacing,
            straight_lengths=straight_lengths,
        )

        return duct_run_request
