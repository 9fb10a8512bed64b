from enum import StrEnum


class Embedment(StrEnum):
    COARSE_GRAINED = "coarse_grained"
    CRUSHED_ROCK = "crushed_rock"
    FINE_GRAINED = "fine_grained"
    FINE_GRAINED_HIGH_PLASTICITY = "fine_grained_high_plasticity"
    MIXED_GRAINED = "mixed_grained"

    def __str__(self) -> str:
        return str(self.value)
