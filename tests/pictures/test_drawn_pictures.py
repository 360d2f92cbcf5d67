"""Every picture from whatever there is to show: it fits, nothing overlaps, nothing is cut off."""

import struct
from itertools import combinations

import pytest
from matplotlib import style
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.text import Text
from matplotlib.transforms import Bbox

from bot.pictures.draw import SETTINGS, draw, figure_of
from bot.pictures.look import SMALL_PX, WIDTH_PX, points
from bot.pictures.team_layout import HEIGHT_MOST_PX, room_for
from bot.pictures.values import PICTURE, Picture
from tests.pictures.examples import ALL, LONG, team

PHOTO_BYTES_MOST = 10_000_000  # PUBLISHED botapi: sendPhoto, 10 MB
SIDES_SUM_MOST = 10_000  # PUBLISHED botapi: sendPhoto, width and height in total
SIDES_RATIO_MOST = 20  # PUBLISHED botapi: sendPhoto, ratio
PRINT_LEAST_PX = 22  # [px] CHOSEN: read on a phone where 1080 px are a hand wide
HEIGHT_WITH_ROOM_PX = HEIGHT_MOST_PX  # CHOSEN: chats scale a photo to 1280 on its longer side

every = pytest.mark.parametrize("picture", ALL.values(), ids=ALL)


def texts_of(figure: Figure) -> list[tuple[Text, Bbox]]:
    figure.canvas.draw()
    found: list[Text] = []
    for axes in figure.axes:
        found += axes.texts
        if axes.axison:
            found += axes.get_xticklabels()
            found += [one for one in axes.get_yticklabels() if _is_beside(one, axes)]
    return [(one, one.get_window_extent()) for one in found if one.get_text().strip()]


def _is_beside(label: Text, axes: Axes) -> bool:
    """Leave out what the library keeps of an axis beyond its limits, and never draws."""
    box = label.get_window_extent()
    return bool(axes.bbox.y0 - 1 <= (box.y0 + box.y1) / 2 <= axes.bbox.y1 + 1)


def drawn(picture: Picture) -> Figure:
    with style.context(SETTINGS):
        return figure_of(picture)


@every
def test_it_is_a_png_that_the_platform_takes_and_a_phone_shows_whole(picture: Picture):
    png = draw(picture.model_dump(mode="json"))
    width, height = struct.unpack(">II", png[16:24])  # PUBLISHED: PNG, the IHDR chunk
    assert width == WIDTH_PX
    assert height <= HEIGHT_WITH_ROOM_PX
    assert width + height <= SIDES_SUM_MOST
    assert max(width, height) <= SIDES_RATIO_MOST * min(width, height)
    assert len(png) < PHOTO_BYTES_MOST


@every
def test_no_text_is_cut_off_by_the_edge(picture: Picture):
    figure = drawn(picture)
    width, height = figure.bbox.width, figure.bbox.height
    for text, box in texts_of(figure):
        assert box.x0 >= 4, text.get_text()  # CHOSEN: inside the frame
        assert box.x1 <= width - 4, text.get_text()
        assert box.y0 >= 4, text.get_text()
        assert box.y1 <= height - 4, text.get_text()


@every
def test_no_two_texts_overlap(picture: Picture):
    shrunk = [
        (text, Bbox([[box.x0 + 1, box.y0 + 2], [box.x1 - 1, box.y1 - 2]]))
        for text, box in texts_of(drawn(picture))
    ]
    overlaps = [
        (one.get_text(), other.get_text())
        for (one, box), (other, other_box) in combinations(shrunk, 2)
        if box.overlaps(other_box)
    ]
    assert overlaps == []


@every
def test_no_print_is_smaller_than_a_phone_can_show(picture: Picture):
    for text, _ in texts_of(drawn(picture)):
        assert float(text.get_fontsize()) >= points(PRINT_LEAST_PX), text.get_text()
    assert SMALL_PX >= PRINT_LEAST_PX


@every
def test_facts_are_kept_as_data_and_read_back_the_same(picture: Picture):
    kept = PICTURE.dump_json(picture)
    assert PICTURE.validate_json(kept) == picture


@every
def test_the_same_facts_give_the_same_picture(picture: Picture):
    facts = picture.model_dump(mode="json")
    assert draw(facts) == draw(facts)


def test_a_long_name_is_cut_with_a_sign_that_it_is():
    figure = drawn(team(looks=2, rest=2, names=(LONG,)))
    shown = [text.get_text() for text, _ in texts_of(figure) if text.get_text().startswith("Maxim")]
    assert len(shown) == 4
    assert all(one.endswith("…") for one in shown)


def test_sixty_athletes_are_all_drawn_or_counted():
    for looks in range(61):
        room = room_for(looks=looks, rest=60 - looks)
        height = room.height_px(
            has_more_looks=room.looks < looks, has_more_rest=room.rest < 60 - looks
        )
        assert height <= HEIGHT_MOST_PX
        assert room.looks >= min(looks, 5)
    # CHOSEN: with a dozen who need a look, all the others are still named
    assert room_for(looks=8, rest=52).rest == 52
