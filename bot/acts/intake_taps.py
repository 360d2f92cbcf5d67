"""Taps of the intake: an answer, a choice of several, back, a change, the coach's consent."""

from collections.abc import Mapping
from typing import Any

from bot.acts import intake_course as course
from bot.acts import intake_finish
from bot.acts.intake_answers import Why
from bot.acts.intake_resume import open_dialog
from bot.acts.intake_show import DRAFT, ask
from bot.acts.intake_steps import AGREE, BY_KEY, GUARDIAN_WAIT, REVIEW, Step
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import intake_end as end_words
from storage.queries import care, people
from storage.records.people import Athlete, AthleteState, Person
from storage.records.wire import Dialog

Arguments = Mapping[str, Any]


def tap_answer(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A button that answers a question."""
    found = _open(turn, person, arguments)
    if isinstance(found, Outcome):
        return found
    athlete, dialog, step = found
    return course.take(
        turn, person, athlete, dialog, step, arguments["value"], message_id=event.message_id
    )


def tap_toggle(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A button that adds to a choice of several, or takes away from it."""
    found = _open(turn, person, arguments)
    if isinstance(found, Outcome):
        return found
    athlete, dialog, step = found
    chosen = list(dialog.answers.get(DRAFT, ()))
    value = arguments["value"]
    chosen = [one for one in chosen if one != value] if value in chosen else [*chosen, value]
    if step.most is not None and len(chosen) > step.most:
        ask(turn, person, athlete, step.key, dialog.answers, unclear=step.too_many)
        return Outcome.NOT_UNDERSTOOD
    order = {one: place for place, one in enumerate(step.choices)}
    chosen.sort(key=lambda one: order.get(one, len(order)))
    answers = {**dialog.answers, DRAFT: chosen}
    course.keep(turn, person, step.key, answers)
    ask(turn, person, athlete, step.key, answers, message_id=event.message_id)
    return Outcome.INTAKE


def tap_done(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """The choice of several is complete; ``is_none`` says that nothing applies."""
    found = _open(turn, person, arguments)
    if isinstance(found, Outcome):
        return found
    athlete, dialog, step = found
    chosen = [] if arguments.get("is_none") else list(dialog.answers.get(DRAFT, ()))
    if not chosen and not arguments.get("is_none"):
        ask(turn, person, athlete, step.key, dialog.answers, unclear=Why.NONE_CHOSEN)
        return Outcome.NOT_UNDERSTOOD
    return course.take(turn, person, athlete, dialog, step, chosen, message_id=event.message_id)


def tap_back(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """Back to the question before."""
    found = _open(turn, person, arguments)
    if isinstance(found, Outcome):
        return found
    athlete, dialog, _ = found
    return course.go_back(turn, person, athlete, dialog)


def tap_change(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """Change one line of what was understood."""
    found = _at(turn, person, REVIEW)
    if isinstance(found, Outcome):
        return found
    return course.change(turn, person, found[0], found[1], str(arguments["change"]))


def tap_right(turn: Turn, person: Person, _arguments: Arguments, _event: Tapped) -> Outcome:
    """All that was understood is right."""
    found = _at(turn, person, REVIEW)
    return found if isinstance(found, Outcome) else course.finish(turn, person, *found)


def tap_agree(turn: Turn, person: Person, _arguments: Arguments, event: Tapped) -> Outcome:
    """The terms are agreed to."""
    found = _at(turn, person, AGREE)
    return (
        found
        if isinstance(found, Outcome)
        else course.agree(turn, person, message_id=event.message_id)
    )


def tap_decline(turn: Turn, person: Person, _arguments: Arguments, _event: Tapped) -> Outcome:
    """The terms are not agreed to."""
    found = _at(turn, person, AGREE)
    return found if isinstance(found, Outcome) else course.decline(turn, person, found[0])


def tap_begin(turn: Turn, person: Person, _arguments: Arguments, _event: Tapped) -> Outcome:
    """Show the terms, or the open question, once more."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None or athlete.state not in {AthleteState.INVITED, AthleteState.INTAKE}:
        return course.is_behind(turn, person, athlete)
    course.begin(turn, person, athlete)
    return Outcome.INTAKE


def let_start(turn: Turn, coach: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """The coach lets a waiting athlete start, or, with the guardian's word, go on."""
    found = intake_finish.waiting_athlete(turn, coach, arguments, event)
    if isinstance(found, Outcome):
        return found
    dialog = open_dialog(turn, found.person)
    is_guardian = dialog is not None and dialog.step == GUARDIAN_WAIT
    if is_guardian is not bool(arguments.get("is_guardian", is_guardian)):
        turn.say(coach, end_words.no_longer_waits(turn.tongue(coach), name=found.person.name))
        return Outcome.STALE_TAP
    if dialog is not None and is_guardian:
        return _guardian_agreed(turn, coach, found.person, dialog)
    return intake_finish.start_after_look(turn, coach, found)


def _guardian_agreed(turn: Turn, coach: Person, person: Person, dialog: Dialog) -> Outcome:
    athlete = people.change_athlete(turn.tx, person.id, state=AthleteState.INTAKE)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="intake.guardian_agreed",
        athlete_id=person.id,
        actor_id=coach.id,
    )
    told = end_words.goes_on(turn.tongue(person), coach=coach.name)
    course.go_on(turn, person, athlete, {**dialog.answers, "is_guardian_heard": True}, noted=told)
    turn.say(coach, end_words.goes_on_to_coach(turn.tongue(coach), name=person.name))
    return Outcome.COMMAND


def _open(
    turn: Turn, person: Person, arguments: Arguments
) -> tuple[Athlete, Dialog, Step] | Outcome:
    """Find the open question that a button belongs to; one that is behind us answers politely."""
    found = _at(turn, person, str(arguments["step"]))
    return found if isinstance(found, Outcome) else (*found, BY_KEY[found[1].step])


def _at(turn: Turn, person: Person, key: str) -> tuple[Athlete, Dialog] | Outcome:
    athlete, dialog = people.athlete(turn.tx, person.id), open_dialog(turn, person)
    if athlete is not None and dialog is not None and course.asks_first(turn, person, athlete):
        return Outcome.SAFETY
    if athlete is None or dialog is None or dialog.step != key:
        return course.is_behind(turn, person, athlete)
    return athlete, dialog


TAPS = {
    "intake.answer": tap_answer,
    "intake.toggle": tap_toggle,
    "intake.done": tap_done,
    "intake.back": tap_back,
    "intake.change": tap_change,
    "intake.right": tap_right,
    "intake.agree": tap_agree,
    "intake.decline": tap_decline,
    "intake.begin": tap_begin,
}
COACH_TAPS = {"coach.let_start": let_start}
