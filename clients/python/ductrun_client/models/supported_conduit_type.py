from enum import StrEnum


class SupportedConduitType(StrEnum):
    EMT = "emt"
    ENT = "ent"
    FMC = "fmc"
    IMC = "imc"
    LFMC = "lfmc"
    LFNC_A = "lfnc_a"
    LFNC_B = "lfnc_b"
    PVC_SCHEDULE_40 = "pvc_schedule_40"
    PVC_SCHEDULE_80 = "pvc_schedule_80"
    RMC = "rmc"
    RTRC = "rtrc"

    def __str__(self) -> str:
        return str(self.value)
