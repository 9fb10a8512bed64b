from enum import StrEnum


class StandardBoxKind(StrEnum):
    DEVICE = "device"
    FD_MULTIPLE = "fd_multiple"
    FD_SINGLE = "fd_single"
    FS_MULTIPLE = "fs_multiple"
    FS_SINGLE = "fs_single"
    MASONRY = "masonry"
    ROUND = "round"
    SQUARE = "square"

    def __str__(self) -> str:
        return str(self.value)
