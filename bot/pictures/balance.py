"""A week's sets in rows of opposites: one to the left of the middle, one to the right."""

from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle

from bot.pictures.look import (
    BODY_PX,
    DEEP,
    INK,
    MARGIN_PX,
    RUST,
    WIDTH_PX,
    box,
    head,
    points,
    sheet,
    write,
)
from bot.pictures.values import BalancePicture, BalanceSide

MIDDLE_PX = WIDTH_PX / 2
REACH_PX = 350  # [px] ch: the longest bar, so that its figures have room beside it
TOP_PX, ROW_PX = 236, 132  # [px] ch
BAR_PX = 52  # [px] ch
TOTAL_BAR_PX = 68  # [px] ch: the first row is the total
HATCHES = (None, "//")  # the left is full, the right is striped: no colour has to tell them


def figure_of(picture: BalancePicture) -> Figure:
    """Draw it."""
    rows = max(1, len(picture.rows))
    figure, axes = sheet(TOP_PX + rows * ROW_PX + 36)
    head(axes, picture.title, picture.subtitle)
    if not picture.rows:
        write(axes, MIDDLE_PX, TOP_PX + 30, picture.nothing, align="center")
        return figure
    _keys(axes, picture)
    most = max(
        [1]
        + [max(side.done, side.planned) for row in picture.rows for side in (row.left, row.right)]
    )
    for number, row in enumerate(picture.rows):
        y = TOP_PX + number * ROW_PX
        height = TOTAL_BAR_PX if number == 0 else BAR_PX
        for side, sign in ((row.left, -1), (row.right, 1)):
            _side(axes, side, sign, y, height, px_a_set=REACH_PX / most, is_bold=number == 0)
    bottom = TOP_PX + rows * ROW_PX - 14
    axes.plot([MIDDLE_PX, MIDDLE_PX], [TOP_PX - 8, bottom], color=INK, linewidth=points(4))
    return figure


def _side(
    axes: Axes,
    side: BalanceSide,
    sign: int,
    y: float,
    height: float,
    *,
    px_a_set: float,
    is_bold: bool,
) -> None:
    """Write the words above, then the outline of what is planned and the bar of what is done."""
    align = "right" if sign < 0 else "left"
    write(
        axes, MIDDLE_PX + sign * 18, y + 8, side.words,
        is_bold=is_bold, align=align, within_px=MIDDLE_PX - MARGIN_PX - 20,
    )  # fmt: skip
    top = y + 34
    planned, done = side.planned * px_a_set, side.done * px_a_set
    colour, hatch = (DEEP, HATCHES[0]) if sign < 0 else (RUST, HATCHES[1])
    fill = DEEP if sign < 0 else "#FFFFFF"
    left = MIDDLE_PX - done if sign < 0 else MIDDLE_PX
    if done:
        axes.add_patch(
            _bar(left, top + 8, done, height - 16, fill=fill, colour=colour, hatch=hatch)
        )
    left = MIDDLE_PX - planned if sign < 0 else MIDDLE_PX
    box(axes, left, top, planned, height, edge=INK, line_px=4)
    end = MIDDLE_PX + sign * (max(planned, done) + 18)
    write(
        axes, end, top + height / 2, f"{side.done} / {side.planned}",
        px=BODY_PX + (6 if is_bold else 0), is_bold=is_bold, align=align,
    )  # fmt: skip


def _bar(
    x: float, y: float, width: float, height: float, *, fill: str, colour: str, hatch: str | None
) -> Rectangle:
    return Rectangle(
        (x, y), width, height,
        facecolor=fill, edgecolor=colour, hatch=hatch, linewidth=points(3),
    )  # fmt: skip


def _keys(axes: Axes, picture: BalancePicture) -> None:
    y = 176
    box(axes, MARGIN_PX, y - 18, 60, 36, edge=INK, line_px=4)
    write(axes, MARGIN_PX + 76, y, picture.planned)
    x = MARGIN_PX + 400
    axes.add_patch(_bar(x, y - 14, 40, 28, fill=DEEP, colour=DEEP, hatch=None))
    axes.add_patch(_bar(x + 46, y - 14, 40, 28, fill="#FFFFFF", colour=RUST, hatch=HATCHES[1]))
    write(axes, x + 102, y, picture.done)
