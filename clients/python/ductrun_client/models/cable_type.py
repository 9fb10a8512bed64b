from enum import StrEnum


class CableType(StrEnum):
    CONTROL_NONSHIELDED_600_V = "control_nonshielded_600_v"
    CONTROL_SHIELDED_600_V = "control_shielded_600_v"
    CORRUGATED_ARMOR = "corrugated_armor"
    GENERAL = "general"
    INSTRUMENTATION = "instrumentation"
    INTERLOCKED_ARMOR = "interlocked_armor"
    POWER_NONSHIELDED_600_V = "power_nonshielded_600_v"
    POWER_SHIELDED_25_TO_46_KV = "power_shielded_25_to_46_kv"
    POWER_SHIELDED_5_TO_15_KV = "power_shielded_5_to_15_kv"

    def __str__(self) -> str:
        return str(self.value)
