"""Whatever is typed: no crash, nothing impossible recorded, no figure invented, no pain lost."""

import re

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.reading.body_words import SITES, WEAK_SITES
from bot.reading.known import ItemResult
from bot.reading.marking import tokenise
from bot.reading.plausible import MOST, MOST_LOAD_KG
from bot.reading.reply import MOST_TOKENS, read
from bot.reading.values import Asked, PassedOn, PassedWhy, Reading, Recorded
from bot.reading.vocabulary import vocabulary
from tests.reading.team import ITEMS, PLACES

WORDS = sorted(
    {" ".join(words) for language in ("en", "es") for words in vocabulary(language).phrases}
    | set(SITES)
    | set(WEAK_SITES)
    | {name for item in ITEMS.values() for name in item.names}
)
SIGNS = [",", "/", "-", "+", "@", ".", "?", ":", "\n", "x", "(", ")", "'", '"', "%", "1)", "#2"]
figures = st.one_of(
    st.integers(0, 120).map(str),
    st.decimals(0, 99, places=1).map(str),
    st.sampled_from(["1:05", "7/10", "8,5", "8,8,6", "1e9", "nan", "inf", "-4", "99999999", "½"]),
)
jumbles = st.lists(st.one_of(st.sampled_from(WORDS), st.sampled_from(SIGNS), figures), max_size=25)
places = st.sampled_from(sorted(PLACES))


def _results(reading: Reading) -> list[ItemResult]:
    if isinstance(reading, Recorded):
        return list(reading.items)
    options = reading.options if isinstance(reading, Asked) else ()
    return [item for option in options if isinstance(option, Recorded) for item in option.items]


def _is_possible(result: ItemResult) -> bool:
    most = MOST[ITEMS[result.ref].measure]
    return all(0 <= s.value <= most and 0 <= (s.load_kg or 0) <= MOST_LOAD_KG for s in result.sets)


@given(text=st.text(max_size=300), place=places)
def test_any_text_is_read_without_a_crash_and_nothing_impossible_is_recorded(text, place):
    assert all(_is_possible(result) for result in _results(read(text, PLACES[place])))


ODD = st.sampled_from(
    [
        *("\u202e45 40 38\u202c", "4\u200b5 40 38", "\u200f٤٥ ٤٠ ٣٨", "４５ ４０ ３８"),
        *("<b>45</b>", "'; DROP TABLE sets; --", "NaN NaN NaN", "inf -inf", "1e308 1e-308 0x45"),
        *("-45 -40 -38", "99999999999999999999", "½ ¼ ¾", "²³¹", "Ⅷ Ⅸ", "４５：０５"),
        *("🏋🏽\u200d♀️ 45", "&lt;45&gt;", "{0} %s %d", "((((((((", "........", "////", "::::"),
        *("x x x x", "1) 2) 3) 4)", "45,,,,40", "8x8x8x8x8", "bw+bw+10", "@@@", "45\x00 40\x07 38"),
    ]
)


@given(pieces=st.lists(st.one_of(ODD, figures, st.text(max_size=40)), max_size=60), place=places)
def test_odd_signs_and_long_texts_record_nothing_impossible(pieces, place):
    text = " ".join(pieces)[:4096]  # botapi: one message
    for language in ("en", "es", "pt", "de", "fr"):
        reading = read(text, PLACES[place].model_copy(update={"language": language}))
        assert all(_is_possible(result) for result in _results(reading))


@given(piece=st.one_of(ODD, figures, st.sampled_from(WORDS)), place=places)
def test_one_piece_said_over_and_over_is_read_or_passed_on(piece, place):
    text = (f"{piece} " * 4096)[:4096]  # botapi: one message
    reading = read(text, PLACES[place])
    assert all(_is_possible(result) for result in _results(reading))
    if len(tokenise(text, PLACES[place])) > MOST_TOKENS:
        assert isinstance(reading, PassedOn)


@settings(max_examples=400)
@given(pieces=jumbles, place=places)
def test_any_jumble_of_known_words_records_nothing_impossible(pieces, place):
    reading = read(" ".join(pieces), PLACES[place])
    assert all(_is_possible(result) for result in _results(reading))


@settings(max_examples=400)
@given(
    values=st.lists(st.integers(11, 99), max_size=8),
    place=places,
    words=st.lists(st.sampled_from(WORDS), max_size=6),
    data=st.data(),
)
def test_no_recorded_figure_was_invented(values, place, words, data):
    pieces = data.draw(st.permutations([*map(str, values), *words]))
    text = " ".join(pieces)
    reading = read(text, PLACES[place])
    if isinstance(reading, Recorded):
        told = {s.value for item in reading.items for s in item.sets if not s.is_as_planned}
        spoken = _spoken(text)
        assert {v for v in told if v > 10 and v not in spoken} == set(), (text, reading)


def _spoken(text: str) -> set[float]:
    """Return the figures in the text, alone and as minutes and seconds together."""
    digits = [float(d) for d in re.findall(r"\d+", text)]
    together = {60 * a + b for a in (*digits, 1.0) for b in (*digits, 0.0)}
    return {*digits, *together, *(3600 * a for a in digits)}


@given(
    pieces=jumbles,
    place=places,
    score=st.integers(1, 10),
    site=st.sampled_from(["wrist", "left elbow", "shoulder", "neck", "codo derecho"]),
)
def test_pain_with_a_score_is_kept_whatever_stands_around_it(pieces, place, score, site):
    text = f"{' '.join(pieces)}\n{site} {score}/10\n{' '.join(reversed(pieces))}"
    reading = read(text, PLACES[place])
    assert score in {pain.score for pain in reading.pains}


def test_a_letter_goes_to_the_coach_with_its_pain():
    reading = read("left wrist 4/10. " + "45 40 38 " * MOST_TOKENS, PLACES["hang"])
    assert isinstance(reading, PassedOn)
    assert reading.why is PassedWhy.TOO_LONG
    assert [pain.score for pain in reading.pains] == [4]
