"""A typed answer to "where does it hurt?" and "which side?": as good as the button."""

import re
from collections.abc import Mapping
from typing import Any

from bot.acts import (
    hear_pain,
    morning_question,
    pain_ask,
    pain_consequences,
    pain_picture,
    pain_report,
    pain_talk,
)
from bot.acts.reading_context import at_hand, read_at_hand
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.pain_numbers import is_row_of_figures, pain_numbers, says_worse, word_count
from bot.reading.plain_letters import plain_letters
from bot.reading.red_flags import read_red_flags
from bot.reading.values import PainMention
from bot.turn import Turn
from bot.wording import pain as words
from scheduler.pain.events import PainSign
from scheduler.pain.values import Side, Site
from storage import buttons
from storage.records.people import Athlete, Person
from storage.records.wire import OpenQuestion

NUMBER_ASKED = frozenset({"pain.score", "pain.place", "morning"})
NUMBER_WORDS_MOST = 16  # [words] ch: a number with its story; more is a message of its own
ANSWER_WORDS_MOST = 6  # [words] ch: "the front i think, right side"; more is something else
ONE_SIDE = frozenset({Side.LEFT, Side.RIGHT})
SIDES = {
    **dict.fromkeys(("left", "l", "izquierda", "izquierdo", "izq", "izda", "izdo"), Side.LEFT),
    **dict.fromkeys(("right", "r", "derecha", "derecho", "dcha", "dcho", "der"), Side.RIGHT),
    **dict.fromkeys(("both", "ambos", "ambas"), Side.BOTH),
}
"""What a side is called, in plain letters."""
BOTH_OF_THEM = re.compile(r"\bl[oa]s dos\b")
BESIDE_A_SIDE = re.compile(r"the|my|one|on|side|it|is|s|of|them|el|la|los|las|lado|del?|es|mi|en")
"""Words that add nothing to a side."""
NUMBER = re.compile(r"(?<![\d.,:/-])(10|\d)(?:\s*(?:/|of|out of|de|sobre)\s*10)?(?![\d.,:/-])")
UNIT = re.compile(r"\d\s*(?:kgs?|lbs?|s|secs?|min|reps?|x)\b|\b(?:rpe|sets?|reps?)\b")


def hear(turn: Turn, person: Person, athlete: Athlete, event: Wrote) -> Outcome | None:
    """Take a short text as the answer to the open question; None when it is none."""
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    if question is None or event.is_edit:
        return None
    if question.kind in NUMBER_ASKED:
        return _number_said(turn, person, athlete, event, question)
    if question.kind != pain_ask.UNCLEAR:
        return None
    said = event.text.lower()
    if len(said.split()) > ANSWER_WORDS_MOST:
        return None
    about = question.subject
    if "report" not in about and "site" not in about:
        return _new_place(turn, person, athlete, event)
    if "report" in about and (score := _only_number(said)) is not None:
        return _number(turn, person, athlete, about, score)
    side = _side(said)
    if "site" in about:
        if side is None or re.search(r"\d", said):
            return None  # with figures it is a result of one arm
        tapped = Tapped(chat_id=event.chat_id, at=event.at, message_id=None, token="")
        return pain_talk.side(turn, person, {**about, "side": side.value}, tapped)
    placed = _place(turn, person, athlete, event, about, side)
    if placed is None and side is not None and _is_only_side(said):
        return _side_before_place(turn, person, athlete, about, side, said=event.text)
    return placed


def _number_said(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, question: OpenQuestion
) -> Outcome | None:
    """Take the number that was asked for, however it is said; None where it is something else."""
    if word_count(event.text) > NUMBER_WORDS_MOST or is_row_of_figures(event.text):
        return None
    numbers = pain_numbers(event.text)
    is_worse = question.kind == "morning" and numbers is None and says_worse(event.text)
    if numbers is None and not is_worse:
        return None
    if _is_elsewhere(turn, person, athlete, event, question):
        return None
    score, must_ask = (numbers.score, numbers.must_ask) if numbers else (None, True)
    if question.kind == "morning":
        morning_question.answer(
            turn,
            person,
            athlete,
            site=Site(question.subject["site"]),
            side=Side(question.subject["side"]),
            score=score,
            must_ask=must_ask,
            is_worse=is_worse,
        )
        return Outcome.ANSWERED
    own = read_red_flags(event.text).pain
    said = PainMention(
        score=score,
        must_ask=must_ask,
        is_sharp=own is not None and own.is_sudden_sharp,
        stopped_a_set=own is not None and PainSign.STOPPED_A_SET in own.signs,
        disturbs=own is not None and PainSign.DISTURBS_EVERYDAY_USE in own.signs,
    )
    hear_pain.answer_question(turn, person, athlete, said, event, question)
    return Outcome.ANSWERED


def _is_elsewhere(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, question: OpenQuestion
) -> bool:
    """Tell whether the text names another place, or the other side, than was asked about."""
    sites, side = _asked_about(turn, athlete, question)
    if not sites:
        return False
    return any(
        not sites & set(one.sites) or (side in ONE_SIDE and one.side in ONE_SIDE - {side})
        for one in _mentions(turn, person, event, "")
        if one.sites
    )


def _asked_about(
    turn: Turn, athlete: Athlete, question: OpenQuestion
) -> tuple[frozenset[Site], Side | None]:
    """Return the place and the side that a question is about; no place where it is not known."""
    about = question.subject
    if "report" in about:
        report = pain_report.find(turn, athlete, about["report"])
        if report is None or not report.is_site_said:
            return frozenset(), None
        return frozenset({report.site}), report.side if report.is_side_said else None
    if "site" not in about:
        return frozenset(), None
    return frozenset({Site(about["site"])}), Side(about["side"]) if "side" in about else None


def _new_place(turn: Turn, person: Person, athlete: Athlete, event: Wrote) -> Outcome | None:
    if re.search(r"\d", event.text) and _only_number(event.text) is None:
        return None  # more figures than a score: results
    mentions = _mentions(turn, person, event, "")
    if not any(mention.sites for mention in mentions):
        return None
    hear_pain.hear(turn, person, athlete, mentions, event, None)
    return Outcome.ANSWERED


def _place(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    event: Wrote,
    about: Mapping[str, Any],
    side: Side | None,
) -> Outcome | None:
    offered = [Site(one) for one in about.get("sites", ())] or list(Site)
    named = {site for one in _mentions(turn, person, event, _part(offered)) for site in one.sites}
    chosen = [site for site in offered if site in named]
    if len(chosen) != 1:
        return None
    if side is not None:
        pain_report.amend(turn, athlete, about["report"], side=side)
        about = {**about, "has_side": True}
    tapped = Tapped(chat_id=event.chat_id, at=event.at, message_id=None, token="")
    return pain_talk.site(turn, person, {**about, "site": chosen[0].value}, tapped)


def _side_before_place(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    about: Mapping[str, Any],
    side: Side,
    *,
    said: str,
) -> Outcome:
    """Keep the side, though the place was asked about, and ask for the place again."""
    before = pain_picture.picture_of(turn, athlete)
    pain_report.amend(turn, athlete, about["report"], side=side)
    pain_consequences.follow(turn, person, athlete, before, words_said=said)
    pain_ask.ask_unclear(turn, person, {**about, "has_side": True})
    return Outcome.SAFETY


def _mentions(turn: Turn, person: Person, event: Wrote, part: str) -> tuple[Any, ...]:
    """Read the text as a report: the word that says that it hurts stands in the question."""
    said = event.model_copy(update={"text": f"pain {part} {event.text}"})
    return tuple(
        read_at_hand(turn, person, said.text, at_hand(turn, person, said, None), None).pains
    )


def _part(offered: list[Site]) -> str:
    """Return the part of the body that all offered places share, such as the shoulder."""
    parts = {words.SITE_LABELS[site].split(",")[0].lower() for site in offered}
    return parts.pop() if len(parts) == 1 else ""


def _side(said: str) -> Side | None:
    found = {SIDES[word] for word in _side_words(said) if word in SIDES}
    return found.pop() if len(found) == 1 else None


def _is_only_side(said: str) -> bool:
    """Tell whether a side is all that was said: "left 45 40" is a result of one arm."""
    return all(word in SIDES or BESIDE_A_SIDE.fullmatch(word) for word in _side_words(said))


def _side_words(said: str) -> list[str]:
    return re.findall(r"[a-z0-9]+", BOTH_OF_THEM.sub("ambos", plain_letters(said)))


def _only_number(said: str) -> int | None:
    """Return a score that stands alone; with a unit or a second figure it is a result."""
    found = NUMBER.findall(said)
    figures = re.findall(r"\d+", said)
    is_alone = len(found) == 1 and figures in ([found[0]], [found[0], "10"])
    return int(found[0]) if is_alone and not UNIT.search(said) else None


def _number(
    turn: Turn, person: Person, athlete: Athlete, about: Mapping[str, Any], score: int
) -> Outcome:
    """Keep how much it hurts at once, and ask for the place again."""
    before = pain_picture.picture_of(turn, athlete)
    pain_report.amend(turn, athlete, about["report"], score=score)
    pain_consequences.follow(turn, person, athlete, before, words_said=f"{score}/10")
    report = pain_report.find(turn, athlete, about["report"])
    if report is not None:
        pain_ask.ask_unclear(turn, person, about)
    return Outcome.SAFETY
