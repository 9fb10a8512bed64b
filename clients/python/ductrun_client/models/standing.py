from enum import StrEnum


class Standing(StrEnum):
    CALLER = "caller"
    DERIVED = "derived"
    MEMORY = "memory"
    PRACTICE = "practice"
    PUBLISHED = "published"

    def __str__(self) -> str:
        return str(self.value)
