from enum import StrEnum


class OperationName(StrEnum):
    CONDUCTOR_COUNT = "conductor_count"
    CONDUIT_SIZE = "conduit_size"
    COVER = "cover"
    DUCT_RUN = "duct_run"
    DUCT_RUN_COMPARE = "duct_run_compare"
    ENCASEMENT = "encasement"
    EXPANSION = "expansion"
    FILL = "fill"
    FLOTATION = "flotation"
    JOINTS = "joints"
    PERMITTED_USE = "permitted_use"
    PULL_PLAN = "pull_plan"
    PULL_TENSION = "pull_tension"
    SPACERS = "spacers"
    SUPPORTS = "supports"
    TRENCH = "trench"

    def __str__(self) -> str:
        return str(self.value)
