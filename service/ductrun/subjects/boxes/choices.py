"""Closed sets of boxes, handholes and manholes."""

from __future__ import annotations

from ductrun.units import Code


class Structure(Code):
    """What conductors are pulled through."""

    PULL_BOX = "pull_box"
    HANDHOLE = "handhole"
    MANHOLE = "manhole"


class BoxWall(Code):
    """Walls of a box, looking at its front; of a manhole the front is its roof and the back its floor."""

    LEFT = "left"
    RIGHT = "right"
    TOP = "top"
    BOTTOM = "bottom"
    BACK = "back"
    FRONT = "front"


class BoxDimension(Code):
    """Dimensions of a box: length from left to right, width from bottom to top, depth from back to front."""

    LENGTH = "length"
    WIDTH = "width"
    DEPTH = "depth"


class PullKind(Code):
    """How conductors go through a box: to the wall opposite, to a wall beside it, or back out of the same wall."""

    STRAIGHT = "straight"
    ANGLE = "angle"
    U_PULL = "u_pull"


class BoxRule(Code):
    """What sets the least of a dimension."""

    STRAIGHT_PULL = "straight_pull"
    OPPOSITE_WALL = "opposite_wall"
    ENTRIES_APART = "entries_apart"
    BENDING_SPACE = "bending_space"
    BENDING_RADIUS = "bending_radius"
    ROOM_FOR_ENTRIES = "room_for_entries"
    LEAST_STRUCTURE = "least_structure"
    RACKING = "racking"


class StandardBoxKind(Code):
    """Kinds of standard metal boxes; the volume of some is per gang."""

    ROUND = "round"
    SQUARE = "square"
    DEVICE = "device"
    MASONRY = "masonry"
    FS_SINGLE = "fs_single"
    FD_SINGLE = "fd_single"
    FS_MULTIPLE = "fs_multiple"
    FD_MULTIPLE = "fd_multiple"
