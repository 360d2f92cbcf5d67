"""One movement over time: what it may come to, what was asked and done, and pain beneath."""

from collections.abc import Sequence
from datetime import date, timedelta

from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.ticker import MaxNLocator

from bot.pictures.look import (
    BODY_PX,
    DEEP,
    FAINT,
    INK,
    MARGIN_PX,
    SMALL_PX,
    SOFT,
    WASH,
    WIDTH_PX,
    box,
    font,
    head,
    points,
    sheet,
    width_px,
    write,
)
from bot.pictures.shapes import (
    ASKED,
    DONE,
    DONE_OTHER_LOAD,
    PAIN_OF_MORNING,
    PAIN_OF_SESSION,
    Shape,
)
from bot.pictures.values import HistoryPicture, Tick

HEIGHT_PX = 1180
LEFT_PX, RIGHT_PX = 122, 40  # [px] ch: room for figures at the side
UPPER_PX = (286, 776)  # [px] ch: top and bottom of what was done
LOWER_PX = (892, 1072)  # [px] ch: top and bottom of pain
KEY_TOP_PX, KEY_LINE_PX = 176, 44  # [px] ch
MARKER_PX, BAR_PX = 20, 40  # [px] ch: a bar shows on both sides of a marker upon it
HEADROOM = 1.12  # [1] ch: above the highest value
DAY = timedelta(days=1)
SCORES = (0, 5, 10)  # [of 10] ch
TICKS_FROM_TOP = 5  # [lines] ch: across the upper part at most


def figure_of(picture: HistoryPicture) -> Figure:
    """Draw it."""
    figure, axes = sheet(HEIGHT_PX)
    head(axes, picture.words.title, picture.words.subtitle)
    _keys(axes, picture)
    upper = _panel(figure, UPPER_PX, picture)
    _course(upper, picture)
    _days(upper, picture)
    _values(upper, axes, picture)
    lower = _panel(figure, LOWER_PX, picture)
    _pain(lower, axes, picture)
    _named_days(lower, picture.ticks)
    return figure


def _panel(figure: Figure, span_px: tuple[int, int], picture: HistoryPicture) -> Axes:
    top, bottom = span_px
    width = WIDTH_PX - LEFT_PX - RIGHT_PX
    axes = figure.add_axes(
        (
            LEFT_PX / WIDTH_PX,
            1 - bottom / HEIGHT_PX,
            width / WIDTH_PX,
            (bottom - top) / HEIGHT_PX,
        ),
        facecolor="none",
    )
    for side in ("top", "right", "left"):
        axes.spines[side].set_visible(False)
    axes.spines["bottom"].set(color=INK, linewidth=points(3))
    axes.tick_params(length=0, pad=points(14), labelcolor=INK)
    first, last = picture.first, max(picture.last, picture.first + DAY)
    pad = max((last - first) / 40, DAY / 2)
    axes.set_xlim(first.toordinal() - pad / DAY, last.toordinal() + pad / DAY)
    axes.set_xticks([])
    return axes


def _course(axes: Axes, picture: HistoryPicture) -> None:
    if not picture.course:
        return
    x = [one.on.toordinal() for one in picture.course]
    least = [one.least for one in picture.course]
    most = [one.most for one in picture.course]
    likely = [one.likely for one in picture.course]
    if len(x) == 1:  # a range of one day still needs a width
        axes.errorbar(
            x, likely, yerr=[[likely[0] - least[0]], [most[0] - likely[0]]], ecolor=DEEP,
            elinewidth=points(6), capsize=points(14), capthick=points(4), fmt="none",
        )  # fmt: skip
    axes.fill_between(x, least, most, color=WASH, linewidth=0, zorder=1)
    for edge in (least, most):
        axes.plot(x, edge, color=DEEP, linewidth=points(2), linestyle=(0, (2, 3)), zorder=2)
    axes.plot(x, likely, color=DEEP, linewidth=points(5), zorder=3)


def _days(axes: Axes, picture: HistoryPicture) -> None:
    alike = [one for one in picture.days if not one.is_other_load]
    other = [one for one in picture.days if one.is_other_load]
    _marks(axes, [(one.on, one.asked) for one in picture.days], ASKED, px=BAR_PX)
    _marks(axes, [(one.on, one.done) for one in alike], DONE)
    _marks(axes, [(one.on, one.done) for one in other], DONE_OTHER_LOAD)


def _marks(
    axes: Axes, places: Sequence[tuple[date, float]], shape: Shape, *, px: float = MARKER_PX
) -> None:
    axes.plot(
        [on.toordinal() for on, _ in places],
        [value for _, value in places],
        linestyle="none",
        marker=shape.marker,
        markersize=points(px),
        markeredgewidth=points(5 if shape.marker == "_" else 3),
        markeredgecolor=shape.colour,
        markerfacecolor=shape.colour if shape.is_filled else "#FFFFFF",
        zorder=4,
        clip_on=False,
    )


def _values(axes: Axes, page: Axes, picture: HistoryPicture) -> None:
    highest = max(
        [one.most for one in picture.course]
        + [max(one.asked, one.done) for one in picture.days]
        + [1.0]
    )
    axes.set_ylim(0, highest * HEADROOM)
    axes.yaxis.set_major_locator(MaxNLocator(nbins=TICKS_FROM_TOP, integer=True))
    _across(axes)
    write(page, MARGIN_PX, UPPER_PX[0] - 24, picture.words.unit, px=SMALL_PX, colour=SOFT)
    if not picture.days:
        middle = (UPPER_PX[0] + UPPER_PX[1]) / 2
        write(page, WIDTH_PX / 2, middle, picture.words.nothing, px=BODY_PX, align="center")


def _across(axes: Axes) -> None:
    axes.grid(axis="y", color=FAINT, linewidth=points(2))
    axes.set_axisbelow(True)
    for label in axes.get_yticklabels():
        label.set(fontproperties=font(), fontsize=points(BODY_PX), color=INK)


def _pain(axes: Axes, page: Axes, picture: HistoryPicture) -> None:
    words = picture.words
    axes.set_ylim(0, 10.5)
    axes.set_yticks(SCORES)
    _across(axes)
    title = write(page, MARGIN_PX, LOWER_PX[0] - 40, words.pain, is_bold=True)
    scores = [(one.on.toordinal(), one.score) for one in picture.pain]
    for x, score in scores:
        axes.plot([x, x], [0, score], color=SOFT, linewidth=points(3), zorder=2)
    for is_morning, shape in ((False, PAIN_OF_SESSION), (True, PAIN_OF_MORNING)):
        of_kind = [one for one in picture.pain if one.is_morning is is_morning]
        _marks(axes, [(one.on, one.score) for one in of_kind], shape, px=18)
    if not picture.pain:
        between_lines = LOWER_PX[0] + (LOWER_PX[1] - LOWER_PX[0]) / 4
        write(page, WIDTH_PX / 2, between_lines, words.no_pain, colour=SOFT, align="center")
        return
    _in_a_row(
        page,
        LOWER_PX[0] - 40,
        [(PAIN_OF_SESSION, words.pain_of_session), (PAIN_OF_MORNING, words.pain_of_morning)],
        from_x=MARGIN_PX + width_px(title) + 36,
    )


def _named_days(axes: Axes, ticks: Sequence[Tick]) -> None:
    axes.set_xticks([tick.on.toordinal() for tick in ticks], [tick.words for tick in ticks])
    for label in axes.get_xticklabels():
        label.set(fontproperties=font(), fontsize=points(BODY_PX), color=INK, parse_math=False)


def _keys(page: Axes, picture: HistoryPicture) -> None:
    words = picture.words
    _in_a_row(page, KEY_TOP_PX, [(DONE, words.done), (ASKED, words.asked)], from_x=MARGIN_PX)
    if any(one.is_other_load for one in picture.days):
        _in_a_row(page, KEY_TOP_PX, [(DONE_OTHER_LOAD, words.other_load)], from_x=640)
    if not picture.course:
        return
    y = KEY_TOP_PX + KEY_LINE_PX
    box(page, MARGIN_PX, y - 14, 54, 28, fill=WASH)
    page.plot([MARGIN_PX, MARGIN_PX + 54], [y, y], color=DEEP, linewidth=points(5))
    for edge in (-14, 14):
        page.plot(
            [MARGIN_PX, MARGIN_PX + 54], [y + edge, y + edge],
            color=DEEP, linewidth=points(2), linestyle=(0, (2, 3)),
        )  # fmt: skip
    write(page, MARGIN_PX + 70, y, words.likely)


def _in_a_row(page: Axes, y: float, keys: Sequence[tuple[Shape, str]], *, from_x: float) -> None:
    x = from_x
    for shape, words in keys:
        is_bar = shape.marker == "_"
        wide = BAR_PX if is_bar else MARKER_PX
        page.plot(
            [x + wide / 2 + 4], [y],
            marker=shape.marker,
            markersize=points(wide),
            markeredgewidth=points(5 if is_bar else 3),
            markeredgecolor=shape.colour,
            markerfacecolor=shape.colour if shape.is_filled else "#FFFFFF",
        )  # fmt: skip
        text = write(page, x + wide + 18, y, words)
        x += wide + 18 + width_px(text) + 40
