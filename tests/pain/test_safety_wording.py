"""Every safety text of an athlete, in every state and language, against the rules of wording.

The rules are CHOSEN (calm, short, nothing diagnosed, treated, promised or played down).
"""

import re
from collections.abc import Iterator
from datetime import UTC, date, datetime
from html import unescape
from typing import ClassVar

import pytest

from bot.wording import coach_clear, flag_words, follow_ups, intake_end, pain, plain, unreachable
from bot.wording import help as help_words
from bot.wording import red_flags as words
from bot.wording.catalogue.extraction import has_words
from bot.wording.catalogue.spoken import MESSAGES, SOURCE_LANGUAGE, SPOKEN, read_catalogue
from bot.wording.catalogue.upkeep import SAFETY
from bot.wording.coach_pain import PlaceFacts
from bot.wording.tongue import Tongue, tongue_of
from scheduler.pain.events import Certainty
from scheduler.pain.left_out import UPPER_BODY, left_out_for
from scheduler.pain.levels import picture_of
from scheduler.pain.picture import PainPicture, RegionPicture
from scheduler.pain.red_flags import RED_FLAGS, FollowUp, RedFlag, Stops
from scheduler.pain.tap_list import TapLine
from scheduler.pain.values import MIDLINE, LeftOut, Level, Region, Side, Site, Urgency

NOW = datetime(2026, 3, 2, 8, tzinfo=UTC)
COACH = "Mara"
FORBIDDEN = {
    "en": r"you're fine|you are fine|push through|it's just|it is just|no worries|don't worry|"
    r"tendonitis|tendinitis|impingement|rotator cuff|heart attack|stroke|fracture|concussion|"
    r"rhabdo|blood clot|ibuprofen|paracetamol|painkiller|ice it|massage|physio exercises|"
    r"probably|will be gone|in a few days|guarantee|i promise|caused by|because of your",
    "es": r"estás bien|no es nada|aguanta|no te preocupes|seguro que|tendinitis|pinzamiento|"
    r"manguito|infarto|ictus|fractura|conmoción|rabdo|trombo|ibuprofeno|paracetamol|"
    r"analgésico|hielo|masaje|probablemente|en unos días|te prometo|causado por|por culpa de tu",
}
MEAN_WORDS_MOST = 14  # [words a sentence] CHOSEN
EMOJI = re.compile("[\U0001f300-\U0001faff\u2600-\u27bf]")
HELP_WITHOUT_SAFETY = ("/today", "<b>How to answer")
LANGUAGES = sorted(SPOKEN)


class Recording(Tongue):
    """A tongue that remembers every template."""

    seen: ClassVar[set[str]] = set()

    def translated(self, text: str) -> str:
        Recording.seen.add(text)
        return super().translated(text)


def texts_of(tongue: Tongue) -> Iterator[str]:
    """Every text that an athlete may read about pain and signs, in every state."""
    yield from flag_texts(tongue)
    yield from level_texts(tongue)
    for site in Site:
        yield pain.which_side(tongue, site)
        for side in Side:
            yield pain.how_much(tongue, site, side)
            yield pain.morning(tongue, site, side)
            yield pain.which_sign(tongue, site, side)
    yield pain.where(tongue)
    yield pain.tap_list(tongue)
    yield pain.morning_fine(tongue)
    yield pain.nothing_hurt(tongue)
    yield pain.back_in_today(tongue, ["Bar hang"])
    yield pain.eased_today(tongue, ["1. Bar hang: 2 × 20 s"])
    yield pain.instead_today(tongue, ["1. Bar hang: 2 × 20 s"])
    for why in ([], ["left wrist"]):
        yield pain.taken_out_of_today(tongue, ["Bar hang"], why=why, coach=COACH)
    yield unreachable.to_athlete(tongue)
    yield plain.set_aside_to_person(tongue, coach=COACH, reference="F1")
    yield intake_end.pain_now(tongue, coach=COACH)
    for number in ("112", None):
        yield intake_end.signs(tongue, number=number)
        yield help_words.athlete(tongue, coach=COACH, number=number).split("\n\n", 2)[2]


def flag_texts(tongue: Tongue) -> Iterator[str]:
    for flag in RedFlag:
        for number in ("112", None):
            for stops in Stops:
                yield words.told(tongue, flag, coach=COACH, number=number, stops=stops)
            yield words.asked(tongue, flag, coach=COACH, number=number)
    for follow_up in FollowUp:
        yield from words.question_labels(tongue, follow_up)
        for certainty in (Certainty.CONFIRMED, Certainty.DENIED):
            yield words.answer_said(tongue, follow_up, certainty)
    yield words.denied(tongue, coach=COACH)
    yield words.already_passed_on(tongue)
    yield words.medicine_deferred(tongue, coach=COACH)
    for line in TapLine:
        yield words.tapped_line(tongue, line)
    for sign in pain.SIGNS.values():
        yield tongue.say(sign)
    for label in pain.SITE_LABELS.values():
        yield tongue.say(label)


def level_texts(tongue: Tongue) -> Iterator[str]:
    blank = picture_of([], as_of_utc=NOW)
    for level in Level:
        for score in (None, 4):
            region = RegionPicture(
                region=Region(site=Site.WRIST, arm=Side.LEFT),
                level=level,
                urgency=Urgency.SOON,
                since_utc=NOW,
                is_settled=False,
                needs_person=level >= Level.REST,
                last_score=score,
                last_at_utc=NOW,
                reasons=(),
            )
            yield pain.outcome(tongue, region, coach=COACH)
        for number in ("112", None):
            picture: PainPicture = blank.model_copy(update={"level": level})
            yield pain.nothing_to_train(tongue, picture, coach=COACH, number=number)
        for from_day in (None, date(2026, 3, 9)):
            for flag in (None, RedFlag.COLLAPSE.value):
                where = PlaceFacts(site=Site.WRIST, side=Side.LEFT, level=level, flag=flag)
                yield coach_clear.to_athlete(
                    tongue, coach=COACH, places=(where,), from_day=from_day
                )
    for site in Site:
        for side in Side.BOTH.arms if site not in MIDLINE else (Side.BOTH,):
            yield left_out(tongue, blank, left_out_for(site, side))
    yield left_out(tongue, blank, UPPER_BODY)


def left_out(tongue: Tongue, blank: PainPicture, rested: LeftOut) -> str:
    return pain.left_out_line(tongue, blank.model_copy(update={"rested": rested}), coach=COACH)


def sentences(text: str) -> list[str]:
    bare = re.sub(r"<[^>]*>", "", unescape(text))
    return [one for one in re.split(r"[.?:!]\s|\n|[.?:!]$", bare) if one.split()]


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_text_names_a_condition_a_cause_a_treatment_or_plays_it_down(language):
    for text in texts_of(tongue_of(language)):
        found = re.search(FORBIDDEN[language], text, re.IGNORECASE)
        assert found is None, (found, text)


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_text_has_exclamation_marks_emoji_or_an_unfilled_place(language):
    for text in texts_of(tongue_of(language)):
        assert "!" not in text, text
        assert "¡" not in text, text
        assert EMOJI.search(text) is None, text
        assert "{" not in text, text


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_mean_sentence_is_short(language):
    for text in texts_of(tongue_of(language)):
        parts = sentences(text)
        if parts:
            mean = sum(len(one.split()) for one in parts) / len(parts)
            assert mean <= MEAN_WORDS_MOST + 4 * (len(parts) == 1), (round(mean, 1), text)


@pytest.mark.parametrize("language", LANGUAGES)
def test_an_emergency_names_the_number_and_that_nobody_may_be_watching(language):
    watching = {"en": "may be watching this chat", "es": "puede que nadie mire este chat"}
    for flag, rule in RED_FLAGS.items():
        if rule.level is not Level.EMERGENCY:
            continue
        text = words.told(tongue_of(language), flag, coach=COACH, number="112")
        assert "112" in text
        assert rule.is_private or watching[language] in text.lower()


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_left_out_says_who_can_bring_it_back(language):
    blank = picture_of([], as_of_utc=NOW)
    for site in Site:
        assert COACH in left_out(tongue_of(language), blank, left_out_for(site, Side.LEFT))


@pytest.mark.parametrize("language", LANGUAGES)
def test_words_of_self_harm_get_a_person_and_no_promise_of_secrecy(language):
    text = words.told(tongue_of(language), RedFlag.SELF_HARM, coach=COACH, number="112")
    assert {
        "en": "cannot promise to keep it secret",
        "es": "No puedo prometer que quede en secreto",
    }[language] in text
    assert COACH not in text


@pytest.mark.parametrize("language", [one for one in LANGUAGES if one != SOURCE_LANGUAGE])
def test_every_safety_text_is_marked_for_the_translator_and_translated(language):
    Recording.seen = set()
    list(texts_of(Recording(language)))
    said = {
        one for one in Recording.seen if has_words(one) and not one.startswith(HELP_WITHOUT_SAFETY)
    }
    assert said - marked_for_the_translator(language).keys() == set()
    assert all(marked_for_the_translator(language).values())


@pytest.mark.parametrize("language", [one for one in LANGUAGES if one != SOURCE_LANGUAGE])
def test_nothing_marked_as_a_safety_text_says_what_no_safety_text_says(language):
    for english, said in marked_for_the_translator(language).items():
        assert re.search(FORBIDDEN["en"], english, re.IGNORECASE) is None, english
        assert re.search(FORBIDDEN[language], said, re.IGNORECASE) is None, said
        assert not set("!¡") & set(english + said), said


def marked_for_the_translator(language: str) -> dict[str, str]:
    return {
        str(one.id): str(one.string)
        for one in read_catalogue(language, MESSAGES)
        if SAFETY in one.user_comments
    }


def test_signs_are_named_as_signs():
    for sign in flag_words.FLAGS.values():
        assert re.search(FORBIDDEN["en"], sign) is None, sign
    for question in follow_ups.QUESTIONS.values():
        assert question.endswith("?")
