"""A team's week: counts on top, a row for each who needs a look, everybody else in columns."""

from matplotlib.axes import Axes
from matplotlib.figure import Figure

from bot.pictures.look import (
    BODY_PX,
    INK,
    MARGIN_PX,
    PALE,
    RUST,
    SMALL_PX,
    SOFT,
    WIDTH_PX,
    head,
    plate,
    points,
    sheet,
    write,
)
from bot.pictures.shapes import LEVELS, Shape
from bot.pictures.team_layout import COLUMNS, HEAD_PX, ROW_PX, SHORT_ROW_PX, TOP_PX, Room
from bot.pictures.values import TeamPicture, TeamRow

COUNTS_TOP_PX, COUNTS_PX = 100, 108  # [px] ch
COLUMN_PX = (WIDTH_PX - 2 * MARGIN_PX) / COLUMNS


def figure_of(picture: TeamPicture) -> Figure:
    """Draw it; as high as it has rows."""
    room = Room(looks=len(picture.looks), rest=len(picture.rest))
    height = room.height_px(
        has_more_looks=bool(picture.looks_more), has_more_rest=bool(picture.rest_more)
    )
    figure, axes = sheet(height)
    head(axes, picture.title)
    _counts(axes, picture)
    y = float(TOP_PX + HEAD_PX / 2 - 8)
    if picture.looks:
        y = _looks(axes, picture, y)
    if picture.rest:
        _rest(axes, picture, y)
    return figure


def _counts(axes: Axes, picture: TeamPicture) -> None:
    count = max(1, len(picture.counts))
    width = (WIDTH_PX - 2 * MARGIN_PX - 16 * (count - 1)) / count
    for number, one in enumerate(picture.counts):
        x = MARGIN_PX + number * (width + 16)
        plate(axes, x, COUNTS_TOP_PX, width, COUNTS_PX)
        write(
            axes, x + width / 2, COUNTS_TOP_PX + 42, one.number,
            px=44, is_bold=True, align="center", within_px=width - 12,
        )  # fmt: skip
        write(
            axes, x + width / 2, COUNTS_TOP_PX + 86, one.words,
            px=SMALL_PX, align="center", within_px=width - 12,
        )  # fmt: skip


def _looks(axes: Axes, picture: TeamPicture, y: float) -> float:
    write(axes, MARGIN_PX, y, picture.look_head, is_bold=True, colour=RUST)
    y += HEAD_PX
    for number, row in enumerate(picture.looks):
        if number % 2 == 0:
            plate(axes, MARGIN_PX - 16, y - ROW_PX / 2, WIDTH_PX - 2 * MARGIN_PX + 32, ROW_PX)
        _row(axes, row, y)
        y += ROW_PX
    if picture.looks_more:
        write(axes, MARGIN_PX, y, picture.looks_more, colour=SOFT)
        y += ROW_PX
    return y + 4


def _row(axes: Axes, row: TeamRow, y: float) -> None:
    write(axes, MARGIN_PX, y, row.name, px=BODY_PX, is_bold=True, within_px=276)
    write(axes, 390, y, row.sessions, align="right", within_px=70)
    write(axes, 412, y, row.stage, within_px=70)
    _shape(axes, 506, y, LEVELS[row.level])
    write(axes, 534, y, row.level_word, within_px=222)
    write(axes, 770, y, row.waits, px=SMALL_PX, within_px=WIDTH_PX - MARGIN_PX - 770)


def _shape(axes: Axes, x: float, y: float, shape: Shape) -> None:
    axes.plot(
        [x], [y],
        marker=shape.marker,
        markersize=points(26),
        markeredgewidth=points(4),
        markeredgecolor=shape.colour,
        markerfacecolor=shape.colour if shape.is_filled else PALE,
    )  # fmt: skip


def _rest(axes: Axes, picture: TeamPicture, y: float) -> None:
    write(axes, MARGIN_PX, y, picture.rest_head, is_bold=True)
    y += HEAD_PX - 6
    rows = -(-len(picture.rest) // COLUMNS)
    for number, one in enumerate(picture.rest):
        x = MARGIN_PX + number // rows * COLUMN_PX
        at = y + number % rows * SHORT_ROW_PX
        write(axes, x, at, one.name, px=SMALL_PX, within_px=COLUMN_PX - 130)
        write(axes, x + COLUMN_PX - 62, at, one.sessions, px=SMALL_PX, align="right")
        write(axes, x + COLUMN_PX - 46, at, one.stage, px=SMALL_PX, colour=SOFT, within_px=26)
    if picture.rest_more:
        at = y + rows * SHORT_ROW_PX
        write(axes, MARGIN_PX, at, picture.rest_more, px=SMALL_PX, colour=INK)
