"""A season as a path of weeks: a tile a week, its stage on it, what it is for beneath."""

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
    box,
    head,
    plate,
    points,
    sheet,
    write,
)
from bot.pictures.shapes import MAIN_EVENT, OTHER_EVENT, WEEKS, Pattern, Shape
from bot.pictures.values import SeasonPicture, SeasonTile

IN_A_ROW = 8  # [weeks] ch: two months; the figures stay large
TILES_MOST = 40  # [weeks] ch: five rows; what follows is in words
GAP_PX = 10  # [px] ch
TILE_PX = (WIDTH_PX - 2 * MARGIN_PX - (IN_A_ROW - 1) * GAP_PX) / IN_A_ROW
TILE_HEIGHT_PX, ROW_PX = 122, 138  # [px] ch
STRIP_PX = 34  # [px] ch: where the pattern stands
TOP_PX = 160  # [px] ch
KEY_PX = 45  # [px] ch: the height of a line of the key
HATCH_PX = 2.5  # [px] ch


def figure_of(picture: SeasonPicture) -> Figure:
    """Draw it; as high as it has rows."""
    tiles = picture.tiles[:TILES_MOST]
    rows = -(-len(tiles) // IN_A_ROW)
    keys = _key_lines(picture)
    bottom = TOP_PX + rows * ROW_PX
    figure, axes = sheet(round(bottom + KEY_PX * keys + (KEY_PX if picture.foot else 0) + 44))
    head(axes, picture.title, picture.subtitle)
    for number, tile in enumerate(tiles):
        _tile(axes, tile, number)
    y = _keys(axes, picture, bottom + 26)
    within = WIDTH_PX - 2 * MARGIN_PX
    write(axes, MARGIN_PX, y, picture.foot, px=SMALL_PX, colour=SOFT, within_px=within)
    return figure


def _tile(axes: Axes, tile: SeasonTile, number: int) -> None:
    x = MARGIN_PX + number % IN_A_ROW * (TILE_PX + GAP_PX)
    y = TOP_PX + number // IN_A_ROW * ROW_PX
    plate(axes, x, y, TILE_PX, TILE_HEIGHT_PX - STRIP_PX)
    write(
        axes, x + TILE_PX / 2, y + 22, tile.day, px=SMALL_PX, align="center", within_px=TILE_PX - 4
    )
    middle = x + TILE_PX / 2 - (24 if tile.event else 0)
    write(axes, middle, y + 60, str(tile.stage), px=44, is_bold=True, align="center")
    if tile.event:
        _event(
            axes, x + TILE_PX / 2 + 26, y + 60, MAIN_EVENT if tile.event == "main" else OTHER_EVENT
        )
    _strip(axes, x, y + TILE_HEIGHT_PX - STRIP_PX, TILE_PX, WEEKS[tile.week_kind])
    if tile.is_now:
        box(axes, x - 4, y - 4, TILE_PX + 8, TILE_HEIGHT_PX + 8, edge=RUST, line_px=6)


def _strip(axes: Axes, x: float, y: float, width: float, pattern: Pattern) -> None:
    box(
        axes, x, y, width, STRIP_PX - 4,
        fill=None if pattern.fill == "none" else pattern.fill,
        edge=INK, hatch=pattern.hatch, line_px=HATCH_PX, line_style=pattern.line,
    )  # fmt: skip


def _event(axes: Axes, x: float, y: float, shape: Shape) -> None:
    axes.plot(
        [x], [y],
        marker=shape.marker,
        markersize=points(34),
        markeredgewidth=points(4),
        markeredgecolor=shape.colour,
        markerfacecolor=shape.colour if shape.is_filled else PALE,
    )  # fmt: skip


def _key_lines(picture: SeasonPicture) -> int:
    events = [one for one in (picture.main_event, picture.other_event) if one]
    now = 1 if any(tile.is_now for tile in picture.tiles) else 0
    return -(-(len(picture.keys) + now + 1) // 2) + len(events)


def _keys(axes: Axes, picture: SeasonPicture, y: float) -> float:
    """Write what the patterns stand for, in two columns, then the events, a line each."""
    wide = (WIDTH_PX - 2 * MARGIN_PX) / 2
    entries: list[tuple[str, str]] = [("stage", picture.stage)]
    if any(tile.is_now for tile in picture.tiles):
        entries.append(("now", picture.now))
    entries += [(one.week_kind, one.words) for one in picture.keys]
    for number, (kind, words) in enumerate(entries):
        x, at = MARGIN_PX + number % 2 * wide, y + number // 2 * KEY_PX
        _sample(axes, x, at, kind)
        write(axes, x + 76, at, words, px=BODY_PX, within_px=wide - 90)
    y += -(-len(entries) // 2) * KEY_PX
    for words, shape in ((picture.main_event, MAIN_EVENT), (picture.other_event, OTHER_EVENT)):
        if words:
            _event(axes, MARGIN_PX + 30, y, shape)
            write(axes, MARGIN_PX + 76, y, words, within_px=WIDTH_PX - 2 * MARGIN_PX - 80)
            y += KEY_PX
    return y


def _sample(axes: Axes, x: float, y: float, kind: str) -> None:
    if kind == "stage":
        write(axes, x + 30, y, "2", px=36, is_bold=True, align="center")
    elif kind == "now":
        box(axes, x + 4, y - 15, 52, 30, edge=RUST, line_px=6)
    else:
        _strip(axes, x, y - 15, 60, WEEKS[kind])
