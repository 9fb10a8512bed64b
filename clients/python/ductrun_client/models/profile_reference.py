from enum import StrEnum


class ProfileReference(StrEnum):
    DUCT_INVERT = "duct_invert"
    TOP_OF_DUCT = "top_of_duct"
    TOP_OF_ENVELOPE = "top_of_envelope"

    def __str__(self) -> str:
        return str(self.value)
