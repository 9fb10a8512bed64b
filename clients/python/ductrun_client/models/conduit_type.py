from enum import StrEnum


class ConduitType(StrEnum):
    EMT = "emt"
    ENT = "ent"
    FMC = "fmc"
    HDPE_SCHEDULE_40 = "hdpe_schedule_40"
    IMC = "imc"
    LFMC = "lfmc"
    LFNC_A = "lfnc_a"
    LFNC_B = "lfnc_b"
    PVC_DB_100 = "pvc_db_100"
    PVC_DB_120 = "pvc_db_120"
    PVC_DB_60 = "pvc_db_60"
    PVC_EB_20 = "pvc_eb_20"
    PVC_EB_35 = "pvc_eb_35"
    PVC_SCHEDULE_40 = "pvc_schedule_40"
    PVC_SCHEDULE_80 = "pvc_schedule_80"
    PVC_TYPE_A = "pvc_type_a"
    PVC_TYPE_EB = "pvc_type_eb"
    RMC = "rmc"
    RTRC = "rtrc"

    def __str__(self) -> str:
        return str(self.value)
