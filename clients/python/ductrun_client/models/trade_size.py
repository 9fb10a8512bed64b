from enum import StrEnum


class TradeSize(StrEnum):
    SIZE_1 = "1"
    SIZE_1_1_2 = "1-1/2"
    SIZE_1_1_4 = "1-1/4"
    SIZE_1_2 = "1/2"
    SIZE_2 = "2"
    SIZE_2_1_2 = "2-1/2"
    SIZE_3 = "3"
    SIZE_3_1_2 = "3-1/2"
    SIZE_3_4 = "3/4"
    SIZE_3_8 = "3/8"
    SIZE_4 = "4"
    SIZE_5 = "5"
    SIZE_6 = "6"

    def __str__(self) -> str:
        return str(self.value)
