from enum import StrEnum


class SpacerPreset(StrEnum):
    CEGS_4FT = "cegs_4ft"
    LAWA_DIRECT_4FT = "lawa_direct_4ft"
    MASTER_5_PER_20FT = "master_5_per_20ft"
    TELECOM_DIRECT_10FT = "telecom_direct_10ft"
    TRADE_6FT = "trade_6ft"
    TRADE_TWO_PER_10FT = "trade_two_per_10ft"
    WSU_DIRECT_5FT = "wsu_direct_5ft"
    WSU_ENCASED_8FT = "wsu_encased_8ft"

    def __str__(self) -> str:
        return str(self.value)
