"""An athlete's eye reads what the bot's own wording shows. All CHOSEN: our own screen."""

import random
from datetime import UTC, date, datetime

import pytest

from bot.wording import session as words
from bot.wording.tongue import tongue_of
from demo_scenario.eye import SeenItem, Unit, label_at_most, see_session
from demo_scenario.loopback.entities import parse_html
from demo_scenario.loopback.screen import ShownButton, ShownMessage
from demo_scenario.slips import Slip, slipped
from demo_scenario.team import Habit
from demo_scenario.typing_habits import DoneItem, in_words, messages
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side
from scheduler.training.values import Dose, Quality, Rung

LIBRARY = default_library()
BOTH = (Side.LEFT, Side.RIGHT)


def dose(key: str, sets: int, target: int, rung: Rung, measure: Measure, left: float) -> Dose:
    return Dose(
        movement_key=key,
        quality=Quality.MUSCULAR_ENDURANCE,
        measure=measure,
        sets=sets,
        target=target,
        floor=1,
        rung=rung,
        rest_s=60,
        reserve_asked=left,
    )


DOSES = (
    (1, dose("bar_hang", 3, 35, Rung(), Measure.HOLD_S, 15)),
    (1, dose("one_arm_overhead_hold", 2, 20, Rung(load_kg=7.5), Measure.HOLD_S, 15)),
    (2, dose("band_pull_apart", 3, 17, Rung(band="light"), Measure.REPS, 3)),
    (2, dose("long_farmer_carry", 2, 40, Rung(load_kg=16), Measure.CARRY_M, 15)),
    (None, dose("wall_slide", 1, 15, Rung(), Measure.REPS, 4)),
)


def screen(buttons: tuple[str, ...] = ("All as planned", "Step by step")) -> ShownMessage:
    items = tuple(
        words.ItemFacts(
            number=place,
            pair=pair,
            movement=LIBRARY.movements[one.movement_key],
            dose=one,
            arms=BOTH,
        )
        for place, (pair, one) in enumerate(DOSES, start=1)
    )
    facts = words.SessionFacts(on=date(2026, 10, 12), letter="A", minutes=30, items=items)
    html = words.session(tongue_of("en"), facts)
    return message(parse_html(html).text, buttons)


def message(text: str, buttons: tuple[str, ...]) -> ShownMessage:
    return ShownMessage(
        message_id=1,
        is_from_bot=True,
        sender_name="Holdwell",
        sent_at=datetime(2026, 10, 12, 5, tzinfo=UTC),
        text=text,
        html=text,
        buttons=(tuple(ShownButton(text=one, data=one) for one in buttons),),
    )


def seen() -> tuple[SeenItem, ...]:
    session = see_session(screen())
    assert session is not None
    return session.items


def test_eye_finds_every_item_with_its_sets_target_and_unit() -> None:
    assert [(one.number, one.name, one.sets, one.target, one.unit) for one in seen()] == [
        (1, "Bar hang", 3, 35, Unit.SECONDS),
        (2, "One-arm overhead hold", 2, 20, Unit.SECONDS),
        (3, "Band pull-apart", 3, 17, Unit.REPS),
        (4, LIBRARY.movements["long_farmer_carry"].name, 2, 40, Unit.METRES),
        (5, "Wall slide", 1, 15, Unit.REPS),
    ]


def test_eye_finds_loads_bands_arms_and_what_to_keep() -> None:
    assert [(one.load_kg, one.band, one.arms, one.stop_with) for one in seen()] == [
        (None, None, (), 15),
        (7.5, None, ("L", "R"), 15),
        (None, "light", (), 3),
        (16, None, (), 15),
        (None, None, (), 4),
    ]
    assert [one.is_extra for one in seen()] == [False, False, False, False, True]


def test_answered_session_is_none_any_more() -> None:
    assert see_session(screen(buttons=("Change a number",))) is None


@pytest.mark.parametrize(
    ("believed", "tapped"), [(0.0, "0"), (4.9, "0"), (5.0, "5"), (19.0, "15"), (44.0, "20+")]
)
def test_thumb_taps_the_number_that_is_not_above_what_was_left(
    believed: float, tapped: str
) -> None:
    assert label_at_most(message("?", ("0", "5", "10", "15", "20+")), believed) == tapped


@pytest.mark.parametrize(
    ("number", "words_said"), [(8, "eight"), (19, "nineteen"), (40, "forty"), (35, "thirty five")]
)
def test_numbers_are_dictated_in_words(number: int, words_said: str) -> None:
    assert in_words(number) == words_said


@pytest.mark.parametrize(
    ("habit", "first"),
    [
        (Habit.NUMBERED, "1) 45 40 38"),
        (Habit.NUMBERED_COMMAS, "1. 45, 40, 38"),
        (Habit.PLAIN_LINES, "45 40 38"),
        (Habit.SLASHES, "1) 45/40/38"),
        (Habit.ITEM_BY_ITEM, "bar hang 45 40 38"),
        (Habit.WORDS, "1) forty five, forty, thirty eight"),
    ],
)
def test_each_habit_writes_the_same_sets_its_own_way(habit: Habit, first: str) -> None:
    done = [DoneItem(seen=seen()[0], both=(45, 40, 38))]
    assert messages(habit, done, random.Random(1))[0] == first


def test_one_arm_each_is_written_arm_by_arm() -> None:
    done = [DoneItem(seen=seen()[1], left=(20, 19), right=(20, 18))]
    assert messages(Habit.NUMBERED, done, random.Random(1)) == ["2) L 20 19 R 20 18"]


def test_slip_is_one_wrong_number_and_a_word_that_mends_it() -> None:
    done = DoneItem(seen=seen()[0], both=(45, 40, 38))
    assert slipped(Slip.SORRY, "1) 45 40 38\n2) 20", done) == (
        "1) 45 40 35\n2) 20",
        "sorry, 38 not 35",
    )
    assert slipped(Slip.EDIT, "1) 45 40 38", done) == ("1) 45 40 35", "1) 45 40 38")
