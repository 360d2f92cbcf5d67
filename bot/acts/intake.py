"""The first questions as heard in the chat: one at a time, from a table, resumed at will."""

import re

from bot.acts import intake_course as course
from bot.acts import intake_taps, pass_on
from bot.acts.checklist import local_today
from bot.acts.intake_answers import NONE_WORDS, Heard, Several, Unclear, Why, tidy
from bot.acts.intake_profile import kept_answers
from bot.acts.intake_show import DRAFT, ask
from bot.acts.intake_steps import AGREE, BY_KEY, GUARDIAN_WAIT, REVIEW, YES, read_answer
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import intake as words
from storage.records.people import Athlete, Person
from storage.records.wire import Dialog

KIND = course.KIND
TAPS = intake_taps.TAPS
COACH_TAPS = intake_taps.COACH_TAPS
FOR_THE_COACH = re.compile(
    r"\?|\b(?:hurts?|hurting|pains?|painful|sore|aches?|aching"
    r"|duelen?|dol[ií]an?|doli[oó]|dolor|dolores|doloridos?|doloridas?|molestias?|molestan?)\b"
)
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


def hear(turn: Turn, person: Person, athlete: Athlete, dialog: Dialog, event: Wrote) -> Outcome:
    """Hear a text while the questions are open."""
    said = tidy(event.text)
    if event.is_edit:
        turn.say(person, words.unclear(turn.tongue(person), "edit"))
        return Outcome.NOT_UNDERSTOOD
    if dialog.step == GUARDIAN_WAIT:
        return pass_on.words(turn, person, event)
    if dialog.step == AGREE:
        return _hear_agreement(turn, person, athlete, said)
    if said in BACK_WORDS:
        return course.go_back(turn, person, athlete, dialog)
    if dialog.step == REVIEW:
        return _hear_review(turn, person, athlete, dialog, said)
    return _hear_answer(turn, person, athlete, dialog, event)


def _hear_agreement(turn: Turn, person: Person, athlete: Athlete, said: str) -> Outcome:
    if said in YES:
        return course.agree(turn, person)
    if said in NONE_WORDS or said in {"i do not agree", "do not agree", "disagree", "no acepto"}:
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
            return course.take(turn, person, athlete, dialog, step, value)
        case Unclear(_) if FOR_THE_COACH.search(text.lower()):
            outcome = pass_on.words(turn, person, event)
            ask(turn, person, athlete, step.key, dialog.answers)
            return outcome
        case Unclear(why):
            ask(turn, person, athlete, step.key, dialog.answers, unclear=why)
            return Outcome.NOT_UNDERSTOOD
        case Several(values):
            ask(turn, person, athlete, step.key, dialog.answers, several=values)
            return Outcome.ASKED
