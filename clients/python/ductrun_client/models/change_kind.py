from enum import StrEnum


class ChangeKind(StrEnum):
    BRAKE_LIMIT = "brake_limit"
    CONCRETE_COVER = "concrete_cover"
    CONDUIT_TYPE = "conduit_type"
    COVER = "cover"
    ENCASEMENT = "encasement"
    END_DISTANCE = "end_distance"
    FITTING_TRAVEL = "fitting_travel"
    PIGMENT_PERCENT = "pigment_percent"
    PULL_POINT = "pull_point"
    RADIUS = "radius"
    RISER_CONDUIT_TYPE = "riser_conduit_type"
    TRADE_SIZE = "trade_size"

    def __str__(self) -> str:
        return str(self.value)
