"""Results written in every supported form are read back exactly as they were.

All figures CHOSEN: drawn at random around an invented plan.
"""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bot.reading.examples import example_line
from bot.reading.reply import read
from bot.reading.values import Recorded
from scheduler.pain.values import Side
from tests.reading.team import CARRY, HANG, ITEMS, PLACES, PRESS, ROW

ONES = (
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
)
TENS = ["-", "-", "twenty", "thirty", "forty", "fifty"]


def _spoken(value: int) -> str:
    if value < len(ONES):
        return ONES[value]
    tens, ones = divmod(value, 10)
    return TENS[tens] + (f" {ONES[ones]}" if ones else "")


def _digits(value: int, zero: int) -> str:
    return "".join(chr(zero + int(digit)) for digit in str(value))


FORMS_OF_A_ROW = {
    "spaces": lambda v: " ".join(map(str, v)),
    "slashes": lambda v: "/".join(map(str, v)),
    "dashes": lambda v: "-".join(map(str, v)),
    "spaced dashes": lambda v: " - ".join(map(str, v)),
    "commas": lambda v: ",".join(map(str, v)),
    "commas and spaces": lambda v: ", ".join(map(str, v)),
    "semicolons": lambda v: "; ".join(map(str, v)),
    "lines": lambda v: "\n".join(map(str, v)),
    "and": lambda v: f"{v[0]}, {v[1]} and then {v[2]}",
    "set numbers": lambda v: "\n".join(f"set {n}: {x}" for n, x in enumerate(v, start=1)),
    "ordinals": lambda v: f"first {v[0]}, second {v[1]}, last one {v[2]}",
    "name in front": lambda v: f"Dead hang: {v[0]} {v[1]} {v[2]}",
    "part of the name": lambda v: f"hang {v[0]} {v[1]} {v[2]}",
    "name behind": lambda v: f"{v[0]} {v[1]} {v[2]} hang",
    "number in front": lambda v: f"1) {v[0]} {v[1]} {v[2]}",
    "emoji": lambda v: f"💪🏽 {v[0]} ✅ {v[1]} ✅ {v[2]} 🎉",
    "markup": lambda v: f"<b>{v[0]}</b> *{v[1]}* _{v[2]}_",
    "Arabic digits": lambda v: " ".join(_digits(x, 0x660) for x in v),
    "Devanagari digits": lambda v: " ".join(_digits(x, 0x966) for x in v),
    "full-width digits": lambda v: " ".join(_digits(x, 0xFF10) for x in v),
}
FORMS_OF_TIME = {
    "s": lambda v: " ".join(f"{x}s" for x in v),
    "sec": lambda v: ", ".join(f"{x} sec" for x in v),
    "clock": lambda v: " ".join(f"{x // 60}:{x % 60:02d}" for x in v),
    "colon": lambda v: " ".join(f":{x:02d}" if x < 60 else f"1:{x - 60:02d}" for x in v),
    "quotes": lambda v: " ".join(f"{x // 60}'{x % 60:02d}\"" for x in v),
}
holds = st.lists(st.integers(26, 70), min_size=3, max_size=3)
"""[s] around a plan of 40 with an own best of 55."""
reps = st.lists(st.integers(4, 12), min_size=3, max_size=3)
"""[repetitions] around a plan of 8 with an own best of 11."""


def _values(text: str, place: str, ref: str, side: Side = Side.BOTH) -> list[float]:
    reading = read(text, PLACES[place])
    assert isinstance(reading, Recorded), (text, reading)
    (item,) = (item for item in reading.items if item.ref == ref)
    return [s.value for s in item.sets if s.side is side]


@pytest.mark.parametrize(
    "form",
    [*FORMS_OF_A_ROW.values(), *FORMS_OF_TIME.values()],
    ids=[*FORMS_OF_A_ROW, *FORMS_OF_TIME],
)
@given(values=holds)
def test_a_row_of_holds_is_read_back_in_every_form(form, values):
    assert _values(form(values), "hang", "hang") == values


@given(values=reps)
def test_spoken_repetitions_are_read_back(values):
    spoken = f"{_spoken(values[0])}, {_spoken(values[1])} and then {_spoken(values[2])}"
    assert _values(spoken, "press", "press") == values


@given(values=st.lists(st.integers(26, 59), min_size=3, max_size=3))
def test_spoken_seconds_are_read_back(values):
    assert _values(" ".join(map(_spoken, values)), "hang", "hang") == values


@pytest.mark.parametrize(
    "form",
    [
        "3x{0}",
        "3 x {0}",
        "3×{0}",
        "3 sets of {0}",
        "all {0}",
        "{0} each",
        "{0} every set",
        "3 sets at {0}",
        "all three {0}",
        "{0} for all sets",
        "three sets of {0}",
    ],
)
@given(value=st.integers(26, 70))
def test_one_figure_with_a_word_for_all_sets_is_read_back(form, value):
    assert _values(form.format(value), "hang", "hang") == [value] * 3


@pytest.mark.parametrize(
    "form",
    [
        "{load}kg {0} {1} {2}",
        "{load} kg: {0}, {1}, {2}",
        "{0} {1} {2} @ {load}",
        "{0}/{1}/{2} with {load} kg",
        "{0} @ {load}kg, {1} @ {load}kg, {2} @ {load}kg",
        "press {load}kg {0} {1} {2}",
        "{load}kg x {0} x {1} x {2}",
    ],
)
@given(values=reps, quarters=st.integers(42, 128))
def test_a_load_is_read_back_with_its_sets(form, values, quarters):
    load_kg = quarters / 4
    for figure in (f"{load_kg:g}", f"{load_kg:g}".replace(".", ",")):
        reading = read(form.format(*values, load=figure), PLACES["press"])
        assert isinstance(reading, Recorded), (figure, reading)
        assert [s.value for s in reading.items[0].sets] == values
        assert {s.load_kg for s in reading.items[0].sets} == {load_kg}


@pytest.mark.parametrize(
    "form",
    [
        "L {0} {1} {2} R {3} {4} {5}",
        "left: {0} {1} {2}\nright: {3} {4} {5}",
        "{0}/{3} {1}/{4} {2}/{5}",
        "{0} {1} {2} left, {3} {4} {5} right",
        "R {3},{4},{5} L {0},{1},{2}",
    ],
)
@given(left=reps, right=reps)
def test_each_arm_is_read_back(form, left, right):
    text = form.format(*left, *right)
    assume("/10" not in text or text.count("/10") > 1)  # "7/10" may be an effort: see below
    assert _values(text, "row", "row", Side.LEFT) == left
    assert _values(text, "row", "row", Side.RIGHT) == right


@given(
    hang=holds,
    press=reps,
    carry=st.lists(st.integers(20, 40), min_size=3, max_size=3),
    order=st.permutations(range(3)),
    named=st.booleans(),
)
def test_several_items_in_any_order_are_read_back(hang, press, carry, order, named):
    rows = [(HANG, hang), (PRESS, press), (CARRY, carry)]
    lines = [
        f"{item.names[0] if named else f'{item.number})'} {' '.join(map(str, values))}"
        for item, values in (rows[i] for i in order)
    ]
    text = "\n".join(lines)
    for item, values in rows:
        assert _values(text, "day", item.ref) == values


@given(
    values=holds,
    score=st.integers(0, 10),
    effort=st.integers(0, 10),
    form=st.sampled_from(
        [
            "{r}, wrist {p}/10, rpe {e}",
            "wrist {p}/10\n{r}\neffort {e}",
            "{r} left wrist {p}, effort {e}",
            "rpe {e}: {r}\nwrist {p}",
        ]
    ),
)
def test_pain_and_effort_are_never_taken_for_results(values, score, effort, form):
    text = form.format(r=" ".join(map(str, values)), p=score, e=effort)
    reading = read(text, PLACES["hang"])
    assert _values(text, "hang", "hang") == values
    assert [pain.score for pain in reading.pains] == [score]
    assert reading.effort == effort


@given(
    values=st.lists(st.integers(26, 70), min_size=1, max_size=8).filter(lambda v: len(v) != 3),
    joint=st.sampled_from([" ", ", ", "/", "\n"]),
)
def test_figures_that_do_not_fit_the_sets_are_never_recorded(values, joint):
    assert not isinstance(read(joint.join(map(str, values)), PLACES["hang"]), Recorded)


@pytest.mark.parametrize("item", [HANG, PRESS, ROW, CARRY, ITEMS["curl"]], ids=lambda i: i.ref)
def test_the_example_that_the_bot_gives_is_itself_understood(item):
    reading = read(example_line(item, language="en"), PLACES["day"])
    assert isinstance(reading, Recorded)
    figures = {s.value for s in reading.items[0].sets if s.number < item.sets}
    assert figures == {item.target}
