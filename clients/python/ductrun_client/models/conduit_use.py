from enum import StrEnum


class ConduitUse(StrEnum):
    ABOVE_GROUND = "above_ground"
    CINDER_FILL = "cinder_fill"
    CONCRETE_ENCASEMENT = "concrete_encasement"
    CORROSIVE_INFLUENCE = "corrosive_influence"
    DIRECTIONAL_BORE = "directional_bore"
    DIRECT_BURIAL = "direct_burial"
    EMERGING_FROM_GRADE = "emerging_from_grade"
    HAZARDOUS_LOCATION = "hazardous_location"
    PHYSICAL_DAMAGE = "physical_damage"
    PLENUM = "plenum"
    SEVERE_PHYSICAL_DAMAGE = "severe_physical_damage"
    SUNLIGHT = "sunlight"
    UNDER_BUILDING = "under_building"
    WET_LOCATION = "wet_location"
    WITHIN_BUILDING = "within_building"

    def __str__(self) -> str:
        return str(self.value)
