from enum import StrEnum


class PieceSystem(StrEnum):
    PIECES = "pieces"
    WHOLE_BANK = "whole_bank"
    WHOLE_TIER = "whole_tier"

    def __str__(self) -> str:
        return str(self.value)
