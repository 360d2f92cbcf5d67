"""The wording of what an athlete reads first: calm, short, nothing diagnosed or promised."""

import re
from datetime import date, time
from html import unescape

import pytest

from bot.wording import help as help_words
from bot.wording import intake, intake_end, joining
from bot.wording.tongue import Tongue

TONGUE = Tongue("en")
SAFETY_TEXTS = {
    "conditions": joining.conditions(TONGUE, name="Robin", coach="Mara"),
    "conditions_with_a_number": joining.conditions(
        TONGUE, name="Robin", coach="Mara", number="112"
    ),
    "waits": intake_end.waits(TONGUE, coach="Mara"),
    "signs": intake_end.signs(TONGUE, number="112"),
    "signs_without_a_number": intake_end.signs(TONGUE, number=None),
    "pain_now": intake_end.pain_now(TONGUE, coach="Mara"),
    "guardian": intake_end.guardian_waits(TONGUE, coach="Mara"),
    "begins": intake_end.begins(
        TONGUE, coach="Mara", on=date(2026, 10, 5), at=time(7, 0), is_now=False
    ),
    "help": help_words.athlete(TONGUE, coach="Mara", number=None),
    "screen": intake.asked(TONGUE, "screen", coach="Mara"),
    "coach": joining.coach_welcome(TONGUE, name="Mara"),
}
FORBIDDEN = (
    r"you're fine|you are fine|push through|it's just|no worries|don't worry|"
    r"will heal|be gone|you have an? |caused by|take (?:a|an|some) \w*(?:pill|killer)|ibuprofen"
)
EMOJI = re.compile("[\U0001f000-\U0001faff☀-⛿]")


@pytest.mark.parametrize("name", SAFETY_TEXTS)
def test_safety_texts_are_calm(name: str) -> None:
    text = SAFETY_TEXTS[name]
    assert "!" not in text
    assert not EMOJI.search(text)
    assert not re.search(FORBIDDEN, text, re.IGNORECASE)
    assert "{" not in text


@pytest.mark.parametrize("name", SAFETY_TEXTS)
def test_safety_texts_are_short_in_their_sentences(name: str) -> None:
    text = unescape(re.sub(r"<code>.*?</code>|<[^>]+>", "", SAFETY_TEXTS[name]))
    sentences = [one.split() for one in re.split(r"(?<=[.?:])\s|\n", text) if one.strip()]
    mean = sum(map(len, sentences)) / len(sentences)
    assert mean <= 14, f"{mean:.1f} words a sentence"  # CHOSEN: at most 14 words on average


@pytest.mark.parametrize("name", ["conditions", "signs", "begins", "help"])
def test_the_way_to_help_in_an_emergency_is_named(name: str) -> None:
    text = SAFETY_TEXTS[name]
    assert "112" in text or "local emergency number" in text
    assert "Nobody may be watching this chat" in text


@pytest.mark.parametrize("key", intake.QUESTIONS)
def test_every_question_is_rendered_whole(key: str) -> None:
    text = intake.question(TONGUE, key, coach="Mara", place=1, of=13)
    assert "{" not in text
    assert "Question 1 of about 13" in text


@pytest.mark.parametrize("why", intake.UNCLEAR)
def test_what_to_send_instead_is_one_or_two_short_sentences(why: str) -> None:
    text = intake.unclear(TONGUE, why)
    assert "{" not in text
    assert len(text) <= 120
