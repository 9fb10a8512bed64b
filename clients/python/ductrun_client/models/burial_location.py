from enum import StrEnum


class BurialLocation(StrEnum):
    AIRPORT_RUNWAY = "airport_runway"
    DWELLING_DRIVEWAY = "dwelling_driveway"
    NOT_OTHERWISE_SPECIFIED = "not_otherwise_specified"
    STREET_ROAD_DRIVEWAY_PARKING_LOT = "street_road_driveway_parking_lot"
    TRENCH_BELOW_2_IN_CONCRETE = "trench_below_2_in_concrete"
    UNDER_4_IN_EXTERIOR_SLAB_NO_VEHICLES = "under_4_in_exterior_slab_no_vehicles"
    UNDER_BUILDING = "under_building"

    def __str__(self) -> str:
        return str(self.value)
