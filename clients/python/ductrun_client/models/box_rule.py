from enum import StrEnum


class BoxRule(StrEnum):
    BENDING_RADIUS = "bending_radius"
    BENDING_SPACE = "bending_space"
    ENTRIES_APART = "entries_apart"
    LEAST_STRUCTURE = "least_structure"
    OPPOSITE_WALL = "opposite_wall"
    RACKING = "racking"
    ROOM_FOR_ENTRIES = "room_for_entries"
    STRAIGHT_PULL = "straight_pull"

    def __str__(self) -> str:
        return str(self.value)
