"""Results written in Spanish, Portuguese, German and French are read back exactly.

All figures CHOSEN: drawn at random around an invented plan.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.reading.number_words import FOREIGN, SPANISH
from bot.reading.reply import read
from bot.reading.values import PassedOn, Recorded
from scheduler.pain.values import Side
from tests.reading.team import PLACES

holds = st.lists(st.integers(26, 59), min_size=3, max_size=3)
"""[s] around a plan of 40 with an own best of 55."""
reps = st.lists(st.integers(4, 12), min_size=3, max_size=3)
ES_ONES = {
    value: word
    for word, value in SPANISH.items()
    if value < 30 and word not in {"un", "sinco", "dies", "una", "docena"}
}
ES_TENS = {30: "treinta", 40: "cuarenta", 50: "cincuenta"}
DE_TENS = {20: "zwanzig", 30: "dreißig", 40: "vierzig", 50: "fünfzig"}
DE_ONES = ["", "ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun"]
FR_TENS = {20: "vingt", 30: "trente", 40: "quarante", 50: "cinquante"}
FR_ONES = ["", "un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf"]
PT_TENS = {20: "vinte", 30: "trinta", 40: "quarenta", 50: "cinquenta"}
PT_ONES = ["", "um", "dois", "três", "quatro", "cinco", "seis", "sete", "oito", "nove"]


def spoken_es(value: int) -> str:
    if value in ES_ONES:
        return ES_ONES[value]
    tens, ones = value // 10 * 10, value % 10
    return ES_TENS[tens] + (f" y {ES_ONES[ones]}" if ones else "")


def spoken_de(value: int) -> str:
    tens, ones = value // 10 * 10, value % 10
    return f"{DE_ONES[ones]}und{DE_TENS[tens]}" if ones else DE_TENS[tens]


def spoken_fr(value: int) -> str:
    tens, ones = value // 10 * 10, value % 10
    if ones == 1:
        return f"{FR_TENS[tens]} et un"
    return FR_TENS[tens] + (f"-{FR_ONES[ones]}" if ones else "")


def spoken_pt(value: int) -> str:
    tens, ones = value // 10 * 10, value % 10
    return PT_TENS[tens] + (f" e {PT_ONES[ones]}" if ones else "")


SPOKEN = {"es": spoken_es, "de": spoken_de, "fr": spoken_fr, "pt": spoken_pt}


def place(name: str, language: str):
    return PLACES[name].model_copy(update={"language": language, "decimal_mark": ","})


def sets_of(text: str, name: str, language: str, side: Side = Side.BOTH) -> list[float]:
    reading = read(text, place(name, language))
    assert isinstance(reading, Recorded), (text, reading)
    return [s.value for s in reading.items[0].sets if s.side is side]


@pytest.mark.parametrize("language", SPOKEN)
@given(values=holds)
def test_spoken_seconds_are_read_back(language, values):
    text = ", ".join(SPOKEN[language](value) for value in values)
    assert sets_of(text, "hang", language) == values


@pytest.mark.parametrize(
    "form",
    [
        "{0}, {1} y {2}",
        "{0} seg, {1} seg y {2} seg",
        "primera {0}, segunda {1}, tercera {2}",
        "{0} {1} y la última {2}",
        "hoy he hecho {0}, {1} y {2}",
        "{0}/{1}/{2} segundos",
        "{0} luego {1} y luego {2}",
        "me salieron {0}, {1} y {2}",
    ],
)
@given(values=holds)
def test_a_row_is_read_back_in_spanish(form, values):
    assert sets_of(form.format(*values), "hang", "es") == values


@pytest.mark.parametrize(
    "form", ["3x{0}", "3 series de {0}", "{0} en todas", "todas de {0}", "{0} por serie", "{0} x 3"]
)
@given(value=st.integers(26, 59))
def test_one_figure_for_all_sets_is_read_back_in_spanish(form, value):
    assert sets_of(form.format(value), "hang", "es") == [value] * 3


@pytest.mark.parametrize(
    "form", ["{0} {1} {2} con {load} kg", "{load} kilos: {0}, {1} y {2}", "{0} {1} {2} a {load}kg"]
)
@given(values=reps, quarters=st.integers(42, 128))
def test_a_load_with_a_decimal_comma_is_read_back_in_spanish(form, values, quarters):
    load = f"{quarters / 4:g}".replace(".", ",")
    reading = read(form.format(*values, load=load), place("press", "es"))
    assert isinstance(reading, Recorded)
    assert [s.value for s in reading.items[0].sets] == values
    assert {s.load_kg for s in reading.items[0].sets} == {quarters / 4}


@pytest.mark.parametrize(
    ("language", "form"),
    [
        ("es", "izquierda {0} {1} {2} derecha {3} {4} {5}"),
        ("es", "izq: {0}, {1}, {2}\nder: {3}, {4}, {5}"),
        ("pt", "esquerda {0} {1} {2} direita {3} {4} {5}"),
        ("de", "links {0} {1} {2}, rechts {3} {4} {5}"),
        ("fr", "gauche {0} {1} {2}, droite {3} {4} {5}"),
    ],
)
@given(left=reps, right=reps)
def test_each_arm_is_read_back(language, form, left, right):
    text = form.format(*left, *right)
    assert sets_of(text, "row", language, Side.LEFT) == left
    assert sets_of(text, "row", language, Side.RIGHT) == right


@pytest.mark.parametrize("language", FOREIGN)
@given(values=holds, word=st.sampled_from(["zzkqx", "wvrtl", "qqandrel"]))
def test_a_word_that_is_unknown_in_another_language_sends_all_to_the_coach(language, values, word):
    text = f"{' '.join(map(str, values))} {word}"
    reading = read(text, place("hang", language))
    assert isinstance(reading, PassedOn)
    assert reading.language == language


@pytest.mark.parametrize(
    ("text", "language"),
    [("tut weh", "de"), ("heute Schmerzen", "de"), ("dói muito", "pt"), ("j'ai mal", "fr")],
)
def test_a_word_of_pain_in_another_language_is_kept(text, language):
    assert read(text, place("hang", language)).pains
    if language != "pt":  # told apart by its words also where the athlete's own is English
        assert read(text, PLACES["hang"]).pains or language == "fr"
