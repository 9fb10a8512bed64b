from enum import StrEnum


class CodeEdition(StrEnum):
    NFPA_70_2017 = "2017"
    NFPA_70_2020 = "2020"
    NFPA_70_2023 = "2023"

    def __str__(self) -> str:
        return str(self.value)
