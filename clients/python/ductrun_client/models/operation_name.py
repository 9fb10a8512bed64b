from enum import StrEnum


class OperationName(StrEnum):
    AMPACITY = "ampacity"
    CONDUCTOR_COUNT = "conductor_count"
    CONDUIT_SIZE = "conduit_size"
    COVER = "cover"
    DUCT_RUN = "duct_run"
    EARTH_LOAD = "earth_load"
    ENCASEMENT = "encasement"
    EXPANSION = "expansion"
    FILL = "fill"
    FLOTATION = "flotation"
    JOINTS = "joints"
    PERMITTED_USE = "permitted_use"
    PULL_BOX = "pull_box"
    PULL_PLAN = "pull_plan"
    PULL_TENSION = "pull_tension"
    SPACERS = "spacers"
    SUPPORTS = "supports"
    TRENCH = "trench"
    VOLTAGE_DROP = "voltage_drop"

    def __str__(self) -> str:
        return str(self.value)
