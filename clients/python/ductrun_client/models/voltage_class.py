from enum import StrEnum


class VoltageClass(StrEnum):
    OVER_1_KV_TO_22_KV = "over_1_kv_to_22_kv"
    OVER_22_KV_TO_40_KV = "over_22_kv_to_40_kv"
    OVER_40_KV = "over_40_kv"
    UP_TO_1000_V = "up_to_1000_v"

    def __str__(self) -> str:
        return str(self.value)
