"""How much of a team fits on one picture; nothing heavy is loaded to know it."""

from dataclasses import dataclass

HEIGHT_MOST_PX = 1280  # [px] ch: chats scale a photo to 1280 on its longer side
TOP_PX = 236  # [px] ch: the title and the counts
HEAD_PX = 50  # [px] ch: over a list
ROW_PX, SHORT_ROW_PX = 46, 31  # [px] ch
FOOT_PX = 32  # [px] ch
COLUMNS = 3  # [columns] ch: names of some twelve letters stay whole
LOOKS_LEAST = 6  # [rows] ch: who needs a look comes first
COUNTED_ROW = 1  # [rows] the one that says how many more there are


@dataclass(frozen=True)
class Room:
    """How many of each list are drawn; where some are left out, a row says how many."""

    looks: int
    rest: int

    def height_px(self, *, has_more_looks: bool, has_more_rest: bool) -> int:
        """Return how high the picture gets [px]."""
        height = TOP_PX + FOOT_PX
        if self.looks:
            height += HEAD_PX + ROW_PX * (self.looks + has_more_looks)
        if self.rest:
            height += HEAD_PX + SHORT_ROW_PX * (_rows(self.rest) + has_more_rest)
        return height


def room_for(*, looks: int, rest: int) -> Room:
    """Share out the height: who needs a look first, but not at the cost of everybody else."""
    free = HEIGHT_MOST_PX - TOP_PX - FOOT_PX
    rest_px = (HEAD_PX + SHORT_ROW_PX * _rows(rest)) if rest else 0
    for_looks = (free - rest_px - HEAD_PX) // ROW_PX
    shown_looks = _shown(looks, max(LOOKS_LEAST, for_looks))
    if looks:
        free -= HEAD_PX + ROW_PX * (shown_looks + (shown_looks < looks))
    rows = max(0, (free - HEAD_PX) // SHORT_ROW_PX)
    if _rows(rest) <= rows:
        return Room(looks=shown_looks, rest=rest)
    return Room(looks=shown_looks, rest=max(0, rows - COUNTED_ROW) * COLUMNS)


def _shown(count: int, most: int) -> int:
    return count if count <= most else most - COUNTED_ROW


def _rows(count: int) -> int:
    return -(-count // COLUMNS)
