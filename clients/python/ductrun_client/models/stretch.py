from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar, cast

from attrs import define as _attrs_define

from ..models.conduit_type import ConduitType
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.above_ground_setting import AboveGroundSetting
    from ..models.bored_setting import BoredSetting
    from ..models.digging import Digging
    from ..models.direct_buried_setting import DirectBuriedSetting
    from ..models.duct_bank import DuctBank
    from ..models.earth_loading import EarthLoading
    from ..models.encased_setting import EncasedSetting
    from ..models.encasing import Encasing
    from ..models.existing_setting import ExistingSetting
    from ..models.length import Length
    from ..models.listed_conduit import ListedConduit
    from ..models.measured_conduit import MeasuredConduit
    from ..models.place_rating import PlaceRating
    from ..models.run_horizontal_bend import RunHorizontalBend
    from ..models.run_joining import RunJoining
    from ..models.run_place import RunPlace
    from ..models.run_straight import RunStraight
    from ..models.run_vertical_bend import RunVerticalBend
    from ..models.spacing import Spacing


T = TypeVar("T", bound="Stretch")


@_attrs_define
class Stretch:
    """A part of the run in one setting, from the end of the one before it.

    Attributes:
        setting (AboveGroundSetting | BoredSetting | DirectBuriedSetting | EncasedSetting | ExistingSetting):
        bank (DuctBank | Unset): Ducts in tiers: of one kind (tiers), or of several (tier_ducts).
        concrete (Encasing | Unset): How concrete is mixed, reinforced and bought.
        conduit (ListedConduit | MeasuredConduit | Unset):
        conduit_type (ConduitType | Unset): Kinds of conduit and duct with a sourced table row; RTRC has rules, but no
            dimensions on file.
        digging (Digging | Unset): How a trench is dug and filled.
        earth_load (EarthLoading | Unset): What lies and passes over ducts, how they are bedded, and the limits they are
            held against.
        friction_coefficient (float | Unset): Coefficient of friction here, where it differs.
        joining (RunJoining | Unset): How ducts are joined, and how their elbows are made.
        length (Length | Unset): A length with its unit.
        name (str | Unset): Its name.
        pull_point (RunPlace | Unset): An end of the run, or a pull point in it.
        rating (PlaceRating | Unset): The place a bank lies in, and the method it is rated by.
        sections (list[RunHorizontalBend | RunStraight | RunVerticalBend] | Unset): Its straights and bends; these or
            length.
        spacing (Spacing | Unset): How spacers are specified.
        tiers (list[int] | Unset): The same ducts in other tiers here: they go on in order, from the bottom left.
    """

    setting: (
        AboveGroundSetting | BoredSetting | DirectBuriedSetting | EncasedSetting | ExistingSetting
    )
    bank: DuctBank | Unset = UNSET
    concrete: Encasing | Unset = UNSET
    conduit: ListedConduit | MeasuredConduit | Unset = UNSET
    conduit_type: ConduitType | Unset = UNSET
    digging: Digging | Unset = UNSET
    earth_load: EarthLoading | Unset = UNSET
    friction_coefficient: float | Unset = UNSET
    joining: RunJoining | Unset = UNSET
    length: Length | Unset = UNSET
    name: str | Unset = UNSET
    pull_point: RunPlace | Unset = UNSET
    rating: PlaceRating | Unset = UNSET
    sections: list[RunHorizontalBend | RunStraight | RunVerticalBend] | Unset = UNSET
    spacing: Spacing | Unset = UNSET
    tiers: list[int] | Unset = UNSET

    def to_dict(self) -> dict[str, Any]:
        from ..models.above_ground_setting import AboveGroundSetting  # noqa: PLC0415
        from ..models.bored_setting import BoredSetting  # noqa: PLC0415
        from ..models.direct_buried_setting import DirectBuriedSetting  # noqa: PLC0415
        from ..models.encased_setting import EncasedSetting  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.run_horizontal_bend import RunHorizontalBend  # noqa: PLC0415
        from ..models.run_straight import RunStraight  # noqa: PLC0415

        setting: dict[str, Any]
        if isinstance(self.setting, EncasedSetting):
            setting = self.setting.to_dict()
        elif isinstance(self.setting, DirectBuriedSetting):
            setting = self.setting.to_dict()
        elif isinstance(self.setting, AboveGroundSetting):
            setting = self.setting.to_dict()
        elif isinstance(self.setting, BoredSetting):
            setting = self.setting.to_dict()
        else:
            setting = self.setting.to_dict()

        bank: dict[str, Any] | Unset = UNSET
        if not isinstance(self.bank, Unset):
            bank = self.bank.to_dict()

        concrete: dict[str, Any] | Unset = UNSET
        if not isinstance(self.concrete, Unset):
            concrete = self.concrete.to_dict()

        conduit: dict[str, Any] | Unset
        if isinstance(self.conduit, Unset):
            conduit = UNSET
        elif isinstance(self.conduit, ListedConduit):
            conduit = self.conduit.to_dict()
        else:
            conduit = self.conduit.to_dict()

        conduit_type: str | Unset = UNSET
        if not isinstance(self.conduit_type, Unset):
            conduit_type = self.conduit_type.value

        digging: dict[str, Any] | Unset = UNSET
        if not isinstance(self.digging, Unset):
            digging = self.digging.to_dict()

        earth_load: dict[str, Any] | Unset = UNSET
        if not isinstance(self.earth_load, Unset):
            earth_load = self.earth_load.to_dict()

        friction_coefficient = self.friction_coefficient

        joining: dict[str, Any] | Unset = UNSET
        if not isinstance(self.joining, Unset):
            joining = self.joining.to_dict()

        length: dict[str, Any] | Unset = UNSET
        if not isinstance(self.length, Unset):
            length = self.length.to_dict()

        name = self.name

        pull_point: dict[str, Any] | Unset = UNSET
        if not isinstance(self.pull_point, Unset):
            pull_point = self.pull_point.to_dict()

        rating: dict[str, Any] | Unset = UNSET
        if not isinstance(self.rating, Unset):
            rating = self.rating.to_dict()

        sections: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.sections, Unset):
            sections = []
            for sections_item_data in self.sections:
                sections_item: dict[str, Any]
                if isinstance(sections_item_data, RunStraight):
                    sections_item = sections_item_data.to_dict()
                elif isinstance(sections_item_data, RunHorizontalBend):
                    sections_item = sections_item_data.to_dict()
                else:
                    sections_item = sections_item_data.to_dict()

                sections.append(sections_item)

        spacing: dict[str, Any] | Unset = UNSET
        if not isinstance(self.spacing, Unset):
            spacing = self.spacing.to_dict()

        tiers: list[int] | Unset = UNSET
        if not isinstance(self.tiers, Unset):
            tiers = self.tiers

        field_dict: dict[str, Any] = {}

        field_dict.update(
            {
                "setting": setting,
            }
        )
        if bank is not UNSET:
            field_dict["bank"] = bank
        if concrete is not UNSET:
            field_dict["concrete"] = concrete
        if conduit is not UNSET:
            field_dict["conduit"] = conduit
        if conduit_type is not UNSET:
            field_dict["conduit_type"] = conduit_type
        if digging is not UNSET:
            field_dict["digging"] = digging
        if earth_load is not UNSET:
            field_dict["earth_load"] = earth_load
        if friction_coefficient is not UNSET:
            field_dict["friction_coefficient"] = friction_coefficient
        if joining is not UNSET:
            field_dict["joining"] = joining
        if length is not UNSET:
            field_dict["length"] = length
        if name is not UNSET:
            field_dict["name"] = name
        if pull_point is not UNSET:
            field_dict["pull_point"] = pull_point
        if rating is not UNSET:
            field_dict["rating"] = rating
        if sections is not UNSET:
            field_dict["sections"] = sections
        if spacing is not UNSET:
            field_dict["spacing"] = spacing
        if tiers is not UNSET:
            field_dict["tiers"] = tiers

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.above_ground_setting import AboveGroundSetting  # noqa: PLC0415
        from ..models.bored_setting import BoredSetting  # noqa: PLC0415
        from ..models.digging import Digging  # noqa: PLC0415
        from ..models.direct_buried_setting import DirectBuriedSetting  # noqa: PLC0415
        from ..models.duct_bank import DuctBank  # noqa: PLC0415
        from ..models.earth_loading import EarthLoading  # noqa: PLC0415
        from ..models.encased_setting import EncasedSetting  # noqa: PLC0415
        from ..models.encasing import Encasing  # noqa: PLC0415
        from ..models.existing_setting import ExistingSetting  # noqa: PLC0415
        from ..models.length import Length  # noqa: PLC0415
        from ..models.listed_conduit import ListedConduit  # noqa: PLC0415
        from ..models.measured_conduit import MeasuredConduit  # noqa: PLC0415
        from ..models.place_rating import PlaceRating  # noqa: PLC0415
        from ..models.run_horizontal_bend import RunHorizontalBend  # noqa: PLC0415
        from ..models.run_joining import RunJoining  # noqa: PLC0415
        from ..models.run_place import RunPlace  # noqa: PLC0415
        from ..models.run_straight import RunStraight  # noqa: PLC0415
        from ..models.run_vertical_bend import RunVerticalBend  # noqa: PLC0415
        from ..models.spacing import Spacing  # noqa: PLC0415

        d = dict(src_dict)

        def _parse_setting(
            data: object,
        ) -> (
            AboveGroundSetting
            | BoredSetting
            | DirectBuriedSetting
            | EncasedSetting
            | ExistingSetting
        ):
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_setting_type_0 = EncasedSetting.from_dict(data)

                return componentsschemas_setting_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_setting_type_1 = DirectBuriedSetting.from_dict(data)

                return componentsschemas_setting_type_1
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_setting_type_2 = AboveGroundSetting.from_dict(data)

                return componentsschemas_setting_type_2
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_setting_type_3 = BoredSetting.from_dict(data)

                return componentsschemas_setting_type_3
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_setting_type_4 = ExistingSetting.from_dict(data)

            return componentsschemas_setting_type_4

        setting = _parse_setting(d.pop("setting"))

        _bank = d.pop("bank", UNSET)
        bank: DuctBank | Unset
        if isinstance(_bank, Unset):
            bank = UNSET
        else:
            bank = DuctBank.from_dict(_bank)

        _concrete = d.pop("concrete", UNSET)
        concrete: Encasing | Unset
        if isinstance(_concrete, Unset):
            concrete = UNSET
        else:
            concrete = Encasing.from_dict(_concrete)

        def _parse_conduit(data: object) -> ListedConduit | MeasuredConduit | Unset:
            if isinstance(data, Unset):
                return data
            try:
                if not isinstance(data, dict):
                    raise TypeError()
                componentsschemas_conduit_type_0 = ListedConduit.from_dict(data)

                return componentsschemas_conduit_type_0
            except (TypeError, ValueError, AttributeError, KeyError):
                pass
            if not isinstance(data, dict):
                raise TypeError()
            componentsschemas_conduit_type_1 = MeasuredConduit.from_dict(data)

            return componentsschemas_conduit_type_1

        conduit = _parse_conduit(d.pop("conduit", UNSET))

        _conduit_type = d.pop("conduit_type", UNSET)
        conduit_type: ConduitType | Unset
        if isinstance(_conduit_type, Unset):
            conduit_type = UNSET
        else:
            conduit_type = ConduitType(_conduit_type)

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

        friction_coefficient = d.pop("friction_coefficient", UNSET)

        _joining = d.pop("joining", UNSET)
        joining: RunJoining | Unset
        if isinstance(_joining, Unset):
            joining = UNSET
        else:
            joining = RunJoining.from_dict(_joining)

        _length = d.pop("length", UNSET)
        length: Length | Unset
        if isinstance(_length, Unset):
            length = UNSET
        else:
            length = Length.from_dict(_length)

        name = d.pop("name", UNSET)

        _pull_point = d.pop("pull_point", UNSET)
        pull_point: RunPlace | Unset
        if isinstance(_pull_point, Unset):
            pull_point = UNSET
        else:
            pull_point = RunPlace.from_dict(_pull_point)

        _rating = d.pop("rating", UNSET)
        rating: PlaceRating | Unset
        if isinstance(_rating, Unset):
            rating = UNSET
        else:
            rating = PlaceRating.from_dict(_rating)

        _sections = d.pop("sections", UNSET)
        sections: list[RunHorizontalBend | RunStraight | RunVerticalBend] | Unset = UNSET
        if _sections is not UNSET:
            sections = []
            for sections_item_data in _sections:

                def _parse_sections_item(
                    data: object,
                ) -> RunHorizontalBend | RunStraight | RunVerticalBend:
                    try:
                        if not isinstance(data, dict):
                            raise TypeError()
                        componentsschemas_run_section_type_0 = RunStraight.from_dict(data)

                        return componentsschemas_run_section_type_0
                    except (TypeError, ValueError, AttributeError, KeyError):
                        pass
                    try:
                        if not isinstance(data, dict):
                            raise TypeError()
                        componentsschemas_run_section_type_1 = RunHorizontalBend.from_dict(data)

                        return componentsschemas_run_section_type_1
                    except (TypeError, ValueError, AttributeError, KeyError):
                        pass
                    if not isinstance(data, dict):
                        raise TypeError()
                    componentsschemas_run_section_type_2 = RunVerticalBend.from_dict(data)

                    return componentsschemas_run_section_type_2

                sections_item = _parse_sections_item(sections_item_data)

                sections.append(sections_item)

        _spacing = d.pop("spacing", UNSET)
        spacing: Spacing | Unset
        if isinstance(_spacing, Unset):
            spacing = UNSET
        else:
            spacing = Spacing.from_dict(_spacing)

        tiers = cast(list[int], d.pop("tiers", UNSET))

        stretch = cls(
            setting=setting,
            bank=bank,
            concrete=concrete,
            conduit=conduit,
            conduit_type=conduit_type,
            digging=digging,
            earth_load=earth_load,
            friction_coefficient=friction_coefficient,
            joining=joining,
            length=length,
            name=name,
            pull_point=pull_point,
            rating=rating,
            sections=sections,
            spacing=spacing,
            tiers=tiers,
        )

        return stretch
