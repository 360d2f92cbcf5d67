"""The vignettes: what must raise, to which level, and what must not.

Levels: SAFETY's lists, whose sources are in scheduler/sources.py (nhis2019, ahaacc2015, scalco2016,
rawson2017, boast2016, alla2010, murphy2023, mccartney2018, rees2021); the sorting is CHOSEN and
must be checked by a clinician.
"""

import pytest

from bot.reading.red_flags import Stated, read_red_flags
from scheduler.pain.values import Level
from tests.pain.harmless_vignettes_en import FIGURES, HARMLESS
from tests.pain.harmless_vignettes_es import HARMLESS_ES
from tests.pain.harmless_vignettes_fresh import HARMLESS_FRESH, HARMLESS_FRESH_ES
from tests.pain.harmless_vignettes_more_en import HARMLESS_MORE
from tests.pain.harmless_vignettes_third_en import HARMLESS_THIRD
from tests.pain.raising_vignettes_en import (
    CLINICIAN,
    CLINICIAN_IN_PASSING,
    EMERGENCY,
    EMERGENCY_IN_PASSING,
)
from tests.pain.raising_vignettes_es import CLINICIAN_ES, EMERGENCY_ES
from tests.pain.raising_vignettes_fresh import CLINICIAN_FRESH, EMERGENCY_FRESH
from tests.pain.raising_vignettes_fresh_es import CLINICIAN_FRESH_ES, EMERGENCY_FRESH_ES
from tests.pain.raising_vignettes_more_en import CLINICIAN_MORE, EMERGENCY_MORE
from tests.pain.raising_vignettes_third_en import CLINICIAN_THIRD, EMERGENCY_THIRD

FALSE_ALARMS_AT_MOST = 0.03  # [share of harmless messages] CHOSEN
QUESTIONS_AT_MOST = 0.10  # [share of harmless messages] CHOSEN


@pytest.mark.parametrize(
    "words",
    EMERGENCY
    + EMERGENCY_IN_PASSING
    + EMERGENCY_MORE
    + EMERGENCY_THIRD
    + EMERGENCY_ES
    + EMERGENCY_FRESH
    + EMERGENCY_FRESH_ES,
)
def test_an_emergency_is_never_read_below_its_level(words):
    assert read_red_flags(words).level is Level.EMERGENCY


@pytest.mark.parametrize(
    "words",
    CLINICIAN
    + CLINICIAN_IN_PASSING
    + CLINICIAN_MORE
    + CLINICIAN_THIRD
    + CLINICIAN_ES
    + CLINICIAN_FRESH
    + CLINICIAN_FRESH_ES,
)
def test_a_sign_for_a_clinician_is_never_read_below_its_level(words):
    assert read_red_flags(words).level >= Level.CLINICIAN


ASKED_ABOUT = {"head down and got on with it"}
"""Figures that the third net asks about, since they read like a knock: asked, never stated."""


@pytest.mark.parametrize("words", sorted(set(FIGURES) - ASKED_ABOUT))
def test_a_figure_of_speech_raises_nothing(words):
    assert read_red_flags(words).candidates == ()


HARMLESS_OF = {
    "en": HARMLESS + HARMLESS_MORE + HARMLESS_THIRD + HARMLESS_FRESH,
    "es": HARMLESS_ES + HARMLESS_FRESH_ES,
}


@pytest.mark.parametrize("language", sorted(HARMLESS_OF))
def test_harmless_messages_are_alarmed_three_and_asked_about_ten_times_in_a_hundred(language):
    harmless = HARMLESS_OF[language]
    raised = [(words, read_red_flags(words)) for words in harmless]
    raised = [(words, reading) for words, reading in raised if reading.level >= Level.CLINICIAN]
    alarms = [w for w, r in raised if any(c.certainty is Stated.STATED for c in r.candidates)]
    assert len(alarms) <= FALSE_ALARMS_AT_MOST * len(harmless), alarms
    assert len(raised) <= QUESTIONS_AT_MOST * len(harmless), raised


@pytest.mark.parametrize("words", EMERGENCY + CLINICIAN)
@pytest.mark.parametrize("change", [str.upper, str.title, lambda t: t.replace("'", "")])
def test_capitals_and_missing_apostrophes_lower_nothing(words, change):
    assert read_red_flags(change(words)).level >= min(read_red_flags(words).level, Level.CLINICIAN)


@pytest.mark.parametrize("words", EMERGENCY + CLINICIAN)
def test_results_around_a_sign_do_not_hide_it(words):
    plain = read_red_flags(words).level
    assert read_red_flags(f"45 40 38\n{words}\n3x8 @ 20").level >= plain
