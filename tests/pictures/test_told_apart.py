"""What a picture says is read in any light, and without colours."""

import pytest

from bot.pictures import shapes
from bot.pictures.look import DEEP, INK, PALE, PAPER, RUST, SOFT
from bot.pictures.values import UNKNOWN
from scheduler.pain.values import Level
from scheduler.training.season_values import SeasonWeekKind

TEXT_LEAST = 4.5  # PUBLISHED WCAG 2.2: 1.4.3 contrast (minimum), text
MARK_LEAST = 3.0  # PUBLISHED WCAG 2.2: 1.4.11 non-text contrast


def luminance(colour: str) -> float:
    """PUBLISHED WCAG 2.2: definition of relative luminance."""
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (
        part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """PUBLISHED WCAG 2.2: definition of contrast ratio."""
    lighter, darker = sorted((luminance(one), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def test_the_formula_gives_the_published_ends():
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)  # PUBLISHED WCAG 2.2: 1 to 21
    assert contrast("#777777", "#777777") == pytest.approx(1.0)


@pytest.mark.parametrize("ground", [PAPER, PALE])
@pytest.mark.parametrize("ink", [INK, SOFT, RUST])
def test_print_stands_out_from_its_ground(ink: str, ground: str):
    assert contrast(ink, ground) >= TEXT_LEAST


@pytest.mark.parametrize("mark", [INK, SOFT, DEEP, RUST])
def test_shapes_stand_out_from_their_ground(mark: str):
    assert min(contrast(mark, ground) for ground in (PAPER, PALE, "#FFFFFF")) >= MARK_LEAST


def test_the_card_stands_out_from_a_light_chat_and_a_dark_one():
    # CHOSEN: plain white and the dark of most chats; the frame does it in the one, paper in other
    assert contrast(INK, "#FFFFFF") >= MARK_LEAST
    assert contrast(PAPER, "#17212B") >= MARK_LEAST


def test_every_level_has_a_shape_of_its_own():
    assert set(shapes.LEVELS) == {level.name.lower() for level in Level} | {UNKNOWN}
    assert len({one.marker for one in shapes.LEVELS.values()}) == len(shapes.LEVELS)


def test_every_kind_of_week_has_a_pattern_of_its_own():
    assert set(shapes.WEEKS) == {kind.value for kind in SeasonWeekKind}
    looks = {(one.hatch, one.fill == "none", one.line) for one in shapes.WEEKS.values()}
    assert len(looks) == len(shapes.WEEKS)


def test_marks_that_stand_together_are_told_apart_without_colour():
    for together in (
        (shapes.DONE, shapes.DONE_OTHER_LOAD, shapes.ASKED),
        (shapes.PAIN_OF_SESSION, shapes.PAIN_OF_MORNING),
        (shapes.MAIN_EVENT, shapes.OTHER_EVENT),
    ):
        assert len({one.marker for one in together}) == len(together)
