from enum import StrEnum


class OperationName(StrEnum):
    CALCULATE_CONDUCTOR_COUNT = "conductor-count"
    CALCULATE_CONDUIT_SIZE = "conduit-size"
    CALCULATE_COVER = "cover"
    CALCULATE_ENCASEMENT = "encasement"
    CALCULATE_EXPANSION = "expansion"
    CALCULATE_FILL = "fill"
    CALCULATE_FLOTATION = "flotation"
    CALCULATE_JOINTS = "joints"
    CALCULATE_PULL_PLAN = "pull-plan"
    CALCULATE_PULL_TENSION = "pull-tension"
    CALCULATE_SPACERS = "spacers"
    CALCULATE_SUPPORTS = "supports"
    CALCULATE_TRENCH = "trench"
    JUDGE_PERMITTED_USE = "permitted-use"

    def __str__(self) -> str:
        return str(self.value)
