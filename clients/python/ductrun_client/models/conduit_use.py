from enum import StrEnum


class ConduitUse(StrEnum):
    ABOVE_GROUND = "above_ground"
    CONCRETE_ENCASEMENT = "concrete_encasement"
    DIRECTIONAL_BORE = "directional_bore"
    DIRECT_BURIAL = "direct_burial"
    EMERGING_FROM_GRADE = "emerging_from_grade"
    HAZARDOUS_LOCATION = "hazardous_location"
    PHYSICAL_DAMAGE = "physical_damage"
    SUNLIGHT = "sunlight"
    UNDER_BUILDING = "under_building"

    def __str__(self) -> str:
        return str(self.value)
