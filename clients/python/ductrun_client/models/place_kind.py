from enum import StrEnum


class PlaceKind(StrEnum):
    CAPPED = "capped"
    CONDUIT_BODY = "conduit_body"
    EQUIPMENT = "equipment"
    EXISTING_DUCT = "existing_duct"
    HANDHOLE = "handhole"
    MANHOLE = "manhole"
    PAD = "pad"
    POLE_BASE = "pole_base"
    PULL_BOX = "pull_box"
    STUB_UP = "stub_up"
    VAULT = "vault"

    def __str__(self) -> str:
        return str(self.value)
