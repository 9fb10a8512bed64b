from enum import StrEnum


class ConductorMarking(StrEnum):
    BARE = "bare"
    RHH = "RHH"
    RHH_NO_COVERING = "RHH*"
    RHW = "RHW"
    RHW_2 = "RHW-2"
    RHW_2_NO_COVERING = "RHW-2*"
    RHW_NO_COVERING = "RHW*"
    THHN = "THHN"
    THHW = "THHW"
    THW = "THW"
    THWN = "THWN"
    THWN_2 = "THWN-2"
    THW_2 = "THW-2"
    TW = "TW"
    USE_2 = "USE-2"
    XHH = "XHH"
    XHHW = "XHHW"
    XHHW_2 = "XHHW-2"
    ZW = "ZW"

    def __str__(self) -> str:
        return str(self.value)
