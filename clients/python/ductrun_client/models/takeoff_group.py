from enum import StrEnum


class TakeoffGroup(StrEnum):
    BACKFILL = "backfill"
    BANK = "bank"
    CABLE = "cable"
    DUCT = "duct"
    SITE_WORK = "site_work"
    SUPPORTS = "supports"

    def __str__(self) -> str:
        return str(self.value)
