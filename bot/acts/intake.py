"""The first questions as heard in the chat: one at a time, from a table, resumed at will."""

import re
from collections.abc import Mapping, Sequence
from typing import Any

from bot.acts import (
    hear_pain,
    intake_pain,
    intake_taps,
    pain_more,
    pain_typed,
    pass_on,
    red_flag,
)
from bot.acts import intake_course as course
from bot.acts.checklist import local_today
from bot.acts.intake_answers import NONE_WORDS, Heard, Partly, Several, Unclear, Why, tidy
from bot.acts.intake_pain import HURTS, SCORED
from bot.acts.intake_profile import kept_answers
from bot.acts.intake_resume import resume
from bot.acts.intake_show import ADDS, DRAFT, ask, in_order
from bot.acts.intake_steps import AGREE, BY_KEY, GUARDIAN_WAIT, REVIEW, Step, read_answer
from bot.acts.intake_who import YES
from bot.acts.pain_picture import picture_of
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.reading.red_flags import RedFlagReading
from bot.turn import Turn
from bot.wording import intake as words
from bot.wording import intake_beside as beside_words
from storage.records.people import Athlete, Person
from storage.records.wire import Dialog

SCREEN, INJURY = "screen", "injury"
TAPS = intake_taps.TAPS
COACH_TAPS = intake_taps.COACH_TAPS
FOR_THE_COACH = re.compile(rf"\?|{HURTS.pattern}")
"""A question, or something that hurts: no answer to ours, and not to be lost either."""
BACK_WORDS = frozenset({"back", "go back", "atras", "volver"})
DONE_WORDS = frozenset({"done", "that's all", "thats all", "ready", "listo", "lista", "hecho"})
RIGHT_WORDS = frozenset(
    {
        "looks right",
        "looks good",
        "all good",
        "right",
        "correct",
        "confirm",
        "correcto",
        "bien",
        *YES,
    }
)


def hear(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    dialog: Dialog,
    event: Wrote,
    *,
    flags: RedFlagReading,
) -> Outcome:
    """Hear a text while the questions are open: signs and pain come before any answer."""
    first = _graver(turn, person, athlete, dialog, event, flags)
    if first is not None:
        return first
    said = tidy(event.text)
    if event.is_edit:
        turn.say(person, words.unclear(turn.tongue(person), "edit"))
        return Outcome.NOT_UNDERSTOOD
    if dialog.step == GUARDIAN_WAIT:
        return pass_on.words(turn, person, event)
    if dialog.step == AGREE:
        return _hear_agreement(turn, person, athlete, event, flags)
    if said in BACK_WORDS:
        return course.go_back(turn, person, athlete, dialog)
    if dialog.step == REVIEW:
        return _hear_review(turn, person, athlete, dialog, said)
    return _hear_answer(turn, person, athlete, dialog, event)


def _graver(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    dialog: Dialog,
    event: Wrote,
    flags: RedFlagReading,
) -> Outcome | None:
    """Hear what comes before any answer: signs, pain, what is asked about them, medicine."""
    if flags.candidates:
        return _beside_sign(turn, person, athlete, dialog, event, flags)
    if red_flag.ask_open(turn, person, athlete, picture_of(turn, athlete).flags):
        return Outcome.SAFETY
    if athlete.agreed_at is not None and _is_pain(turn, person, athlete, dialog, event, flags):
        return Outcome.SAFETY
    if pain_more.ask_again(turn, person, athlete):
        return Outcome.SAFETY
    if flags.asks_about_medicine:
        resume(turn, person, athlete)
        return Outcome.PASSED_ON
    return None


def _beside_sign(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    dialog: Dialog,
    event: Wrote,
    flags: RedFlagReading,
) -> Outcome:
    """A sign was raised and answered already: keep what else the words hold, and ask nothing.

    What was written about an old injury is its answer, so that the same words are not asked for
    a second time. The words of a private sign are kept nowhere.
    """
    mentions = intake_pain.told(turn, person, event, flags)
    if flags.is_private:
        event = event.model_copy(update={"text": ""})
    elif dialog.step == INJURY:
        course.keep_quietly(turn, person, dialog, INJURY, " ".join(event.text.split()))
    if athlete.agreed_at is not None:
        hear_pain.hear(turn, person, athlete, mentions, event, None, may_ask=False)
    resume(turn, person, athlete)
    return Outcome.SAFETY


def _is_pain(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    dialog: Dialog,
    event: Wrote,
    flags: RedFlagReading,
) -> bool:
    """Hear what hurts as anywhere else; the open question comes again when that is told."""
    more = pain_more.open_one(turn, person)
    if more is not None and pain_more.hear(turn, person, event, more):
        return True
    if pain_typed.hear(turn, person, athlete, event) is not None:
        return True
    mentions = intake_pain.told(turn, person, event, flags)
    if dialog.step == INJURY and (flags.is_no_report or not _is_of_now(dialog, event)):
        return False  # it is the answer to what was asked
    if not mentions:
        return False
    if dialog.step == INJURY:
        course.keep_quietly(turn, person, dialog, INJURY, " ".join(event.text.split()))
    elif "?" in event.text:
        pass_on.words(turn, person, event)
    return hear_pain.hear(turn, person, athlete, mentions, event, None)


def _is_of_now(dialog: Dialog, event: Wrote) -> bool:
    """Tell whether words about an injury are of today as well: ticked so, or with a number."""
    return "hurts_now" in dialog.answers.get(SCREEN, ()) or bool(SCORED.search(event.text.lower()))


def _hear_agreement(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, flags: RedFlagReading
) -> Outcome:
    said = tidy(event.text)
    if intake_pain.told(turn, person, event, flags):
        turn.say(person, beside_words.not_before_terms(turn.tongue(person)))
    elif said in YES:
        return course.agree(turn, person)
    elif said in NONE_WORDS or said in {"i do not agree", "do not agree", "disagree", "no acepto"}:
        return course.decline(turn, person, athlete)
    ask(turn, person, athlete, AGREE, {}, unclear="agree")
    return Outcome.NOT_UNDERSTOOD


def _hear_review(
    turn: Turn, person: Person, athlete: Athlete, dialog: Dialog, said: str
) -> Outcome:
    if said in RIGHT_WORDS:
        return course.finish(turn, person, athlete, dialog)
    number = said.removeprefix("change").removeprefix("line").strip()
    keys = list(kept_answers(dialog.answers))
    if number.isdecimal() and 1 <= int(number) <= len(keys):
        return course.change(turn, person, athlete, dialog, keys[int(number) - 1])
    ask(turn, person, athlete, REVIEW, dialog.answers, unclear=Why.REVIEW)
    return Outcome.NOT_UNDERSTOOD


def _hear_answer(
    turn: Turn, person: Person, athlete: Athlete, dialog: Dialog, event: Wrote
) -> Outcome:
    text = event.text
    step = BY_KEY[dialog.step]
    draft = dialog.answers.get(DRAFT)
    if step.is_many and draft and tidy(text) in DONE_WORDS:
        return course.take(turn, person, athlete, dialog, step, draft)
    match read_answer(step, text, today=local_today(turn, person), units=person.units):
        case Heard(value):
            value = _added(step, dialog.answers, value)
            return course.take(turn, person, athlete, dialog, step, value)
        case Partly(value, unsure):
            return _hear_partly(turn, person, athlete, dialog, step, value, unsure)
        case Unclear(_) if FOR_THE_COACH.search(text.lower()):
            outcome = pass_on.words(turn, person, event)
            ask(turn, person, athlete, step.key, dialog.answers)
            return outcome
        case Unclear(why):
            ask(turn, person, athlete, step.key, dialog.answers, unclear=why)
            return Outcome.NOT_UNDERSTOOD
        case Several() as several:
            ask(turn, person, athlete, step.key, dialog.answers, several=several)
            return Outcome.ASKED


def _added(step: Step, answers: Mapping[str, Any], value: Any) -> Any:
    """Add to what was understood before, where the rest of it was asked for."""
    if not (step.is_many and answers.get(ADDS)):
        return value
    return in_order(step, {*answers.get(DRAFT, ()), *value})


def _hear_partly(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    dialog: Dialog,
    step: Step,
    value: Sequence[Any],
    unsure: Sequence[str],
) -> Outcome:
    """Tick what was understood of a list, and ask for the rest; nothing is taken yet."""
    chosen = _added(step, dialog.answers, value)
    answers = {**dialog.answers, DRAFT: chosen, ADDS: True}
    course.keep(turn, person, step.key, answers)
    noted = words.partly(turn.tongue(person), step.key, chosen, unsure)
    ask(turn, person, athlete, step.key, answers, noted=noted)
    return Outcome.ASKED
