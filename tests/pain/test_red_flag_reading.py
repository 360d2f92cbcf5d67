"""What the red-flag reader tells besides the level, and that no text upsets it."""

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.reading.red_flag_rules import PASSING_TINGLE
from bot.reading.red_flag_words import parts_of
from bot.reading.red_flags import (
    LANGUAGES,
    LANGUAGES_READY,
    RULES_OF,
    Stated,
    read_red_flags,
)
from scheduler.pain.red_flags import LEARNT, RedFlag
from scheduler.pain.values import Level, Side, Site

DERIVED_BY_THE_FOLD = {RedFlag.REST_NOT_FALLING}
SECONDS_AT_MOST = 10.0  # [s of this process] CHOSEN: what grows with the square takes minutes


def flags(words):
    return {candidate.flag: candidate.certainty for candidate in read_red_flags(words).candidates}


@pytest.mark.parametrize("language", sorted(LANGUAGES_READY))
def test_every_flag_that_words_can_raise_has_a_rule_in_every_language(language):
    by_rule = {rule.flag for rule in RULES_OF[language]} | {RedFlag.TINGLING_PASSED}
    assert by_rule == set(RedFlag) - DERIVED_BY_THE_FOLD - LEARNT


@pytest.mark.parametrize("language", sorted(LANGUAGES_READY))
def test_every_concept_of_a_languages_rules_has_its_words(language):
    rules = RULES_OF[language]
    needed = {c for rule in rules for need in rule.needs for c in need.split("|")}
    needed |= {
        c for rule in rules for excuse in rule.unless for c in excuse.replace("!", "+").split("+")
    }
    assert needed | set(PASSING_TINGLE) <= set(LANGUAGES[language].concepts)


@pytest.mark.parametrize("language", sorted(LANGUAGES_READY))
def test_every_pattern_is_closed_where_it_is_broken_over_lines(language):
    for name, lines in LANGUAGES[language].concepts.items():
        for part in parts_of(lines):
            assert part.count("(") == part.count(")"), (name, part)


def test_a_chest_in_doubt_is_asked_about_and_counts_in_full():
    reading = read_red_flags("my chest feels a bit tight")
    assert flags("my chest feels a bit tight")[RedFlag.CHEST_INSIDE] is Stated.ASKED
    assert reading.level is Level.EMERGENCY


def test_a_chest_with_sweat_is_said_outright():
    assert flags("chest pressure and sweating")[RedFlag.CHEST_INSIDE] is Stated.STATED


def test_words_of_self_harm_are_private_and_others_are_not():
    assert read_red_flags("i want to kill myself").is_private
    assert not read_red_flags("chest pain").is_private


def test_the_span_is_where_the_words_stand():
    words = "45 40 38. My hand has gone numb — sorry"
    (candidate,) = read_red_flags(words).candidates
    first, last = candidate.span
    assert "numb" in words[first:last]


def test_the_gravest_comes_first():
    found = read_red_flags("my hand is numb and i fainted").candidates
    assert [candidate.flag for candidate in found] == [RedFlag.COLLAPSE, RedFlag.NUMB_OR_WEAK]


def test_a_tingle_that_passed_with_strength_there_takes_out_the_item_only():
    words = "tingling in the hang, gone within a minute, strength is fine"
    assert set(flags(words)) == {RedFlag.TINGLING_PASSED}
    assert set(flags("tingling in the hang")) == {RedFlag.NUMB_OR_WEAK}


@pytest.mark.parametrize(
    "words",
    [
        "should i take ibuprofen for my elbow",
        "Is it a tear?",
        "how much paracetamol can I take",
        "do you think it's tendonitis",
        "could it be a rotator cuff thing?",
    ],
)
def test_questions_about_medicine_or_a_diagnosis_are_noticed(words):
    assert read_red_flags(words).asks_about_medicine


@pytest.mark.parametrize("words", ["45 40 38", "how long do I rest", "took it easy, 3x8"])
def test_other_messages_ask_about_no_medicine(words):
    assert not read_red_flags(words).asks_about_medicine


@pytest.mark.parametrize(
    ("words", "site", "side"),
    [
        ("my left wrist hurts", Site.WRIST, Side.LEFT),
        ("pain on the outside of my right elbow", Site.ELBOW_OUTER, Side.RIGHT),
        ("something hurts", None, None),
        ("both forearms painful", Site.FOREARM, Side.BOTH),
    ],
)
def test_pain_without_a_number_says_where_if_it_can(words, site, side):
    pain = read_red_flags(words).pain
    assert pain is not None
    assert (pain.site, pain.side) == (site, side)


@pytest.mark.parametrize("words", ["no pain", "a bit sore from monday", "my mum has back pain"])
def test_no_pain_plain_soreness_and_others_pain_are_not_pain(words):
    assert read_red_flags(words).pain is None


@settings(max_examples=300, deadline=None)
@given(st.text(max_size=400))
def test_no_text_upsets_the_reader(words):
    for candidate in read_red_flags(words).candidates:
        assert 0 <= candidate.span[0] < candidate.span[1] <= len(words)


@settings(max_examples=100, deadline=None)
@given(st.text(st.characters(categories=["Cs", "Cf", "Mn", "So", "Nd", "Zl"]), max_size=400))
def test_lone_surrogates_and_strange_signs_do_not_upset_it(words):
    read_red_flags(words)


@pytest.mark.parametrize(
    "words",
    [
        "chest " * 700,
        "no " * 1400,
        "my mum " * 600,
        "a" * 4096,
        "\ufdfa" * 4096,
        "cant feel my hand and ",
        "pain in my " * 400,
        "took too many " * 300,
    ],
)
def test_the_longest_message_is_read_in_bounded_time(words):
    read_red_flags("warm up")
    started = time.process_time()
    read_red_flags((words * 300)[:4096])
    assert time.process_time() - started < SECONDS_AT_MOST


@settings(max_examples=60, deadline=None)
@given(
    st.lists(
        st.sampled_from(
            [
                "no",
                "my",
                "mum",
                "had",
                "chest",
                "pain",
                "numb",
                "hand",
                ".",
                ",",
                "and",
                "i",
                "the",
                "?",
                "lol",
            ]
        )
    )
)
def test_any_heap_of_its_own_words_is_read(words):
    read_red_flags(" ".join(words))
