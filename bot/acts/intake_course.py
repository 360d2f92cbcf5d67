"""The course of the intake: what happens to an answer, and where that leads."""

from collections.abc import Mapping
from typing import Any

from bot.acts import intake_finish, intake_steps, pain_more, red_flag
from bot.acts.find_athlete import subject_of
from bot.acts.intake_resume import KIND, open_dialog
from bot.acts.intake_show import DRAFT, ZONE, ask, play_back, without_draft
from bot.acts.intake_steps import AGREE, BY_KEY, GUARDIAN_WAIT, Step
from bot.acts.pain_picture import picture_of
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import intake as words
from bot.wording import joining
from storage import buttons
from storage.queries import care, people
from storage.records.people import Athlete, AthleteState, Person
from storage.records.wire import Dialog, MessageKind

Arguments = Mapping[str, Any]


def begin(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Show the terms first; when they are agreed to, go on where the questions stopped."""
    dialog = open_dialog(turn, person)
    if asks_first(turn, person, athlete):
        return
    if athlete.agreed_at is None:
        keep(turn, person, AGREE, {})
        ask(turn, person, athlete, AGREE, {})
    elif dialog is not None:
        ask(turn, person, athlete, dialog.step, dialog.answers)
    else:
        go_on(turn, person, athlete, {})


def take(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    dialog: Dialog,
    step: Step,
    value: Any,
    *,
    message_id: int | None = None,
) -> Outcome:
    """Keep an answer, play it back, and ask the next question."""
    answers = without_draft(dialog.answers) | {step.key: value}
    if step.key == "guardian":
        answers["is_guardian_heard"] = False
    if step.key == ZONE:  # from here on hours, and the number for emergencies, are those of there
        person = people.change_person(turn.tx, person.id, zone=value)
    noted = play_back(turn, person, step.key, value, message_id=message_id)
    go_on(turn, person, athlete, answers, noted=noted)
    return Outcome.INTAKE


def keep_quietly(turn: Turn, person: Person, dialog: Dialog, key: str, value: Any) -> None:
    """Keep an answer whose message said something graver; what follows is asked later."""
    answers = without_draft(dialog.answers) | {key: value}
    keep(turn, person, intake_steps.next_key(answers), answers)
    turn.say(person, words.answered(turn.tongue(person), key, value))


def go_on(
    turn: Turn, person: Person, athlete: Athlete, answers: Arguments, *, noted: str = ""
) -> None:
    key = intake_steps.next_key(answers)
    keep(turn, person, key, answers)
    if key == GUARDIAN_WAIT:
        intake_finish.wait_for_guardian(turn, person, athlete, str(answers["guardian"]))
    elif not asks_first(turn, person, athlete):
        ask(turn, person, athlete, key, answers, noted=noted)


def go_back(turn: Turn, person: Person, athlete: Athlete, dialog: Dialog) -> Outcome:
    key = intake_steps.key_before(dialog.step, dialog.answers) or dialog.step
    return change(turn, person, athlete, dialog, key)


def change(turn: Turn, person: Person, athlete: Athlete, dialog: Dialog, key: str) -> Outcome:
    """Ask a question again, with what was answered as the choice so far."""
    answers = without_draft(dialog.answers)
    if BY_KEY[key].is_many and key in answers:
        answers[DRAFT] = answers[key]
    keep(turn, person, key, answers)
    ask(turn, person, athlete, key, answers)
    return Outcome.INTAKE


def agree(turn: Turn, person: Person, *, message_id: int | None = None) -> Outcome:
    athlete = people.change_athlete(
        turn.tx, person.id, agreed_at=turn.now, state=AthleteState.INTAKE
    )
    care.write_audit(
        turn.tx, at=turn.now, what="athlete.agreed", athlete_id=person.id, actor_id=person.id
    )
    text = joining.agreed(turn.tongue(person))
    if message_id is not None:
        turn.say(person, text)
        text = ""
    go_on(turn, person, athlete, {}, noted=text)
    return Outcome.INTAKE


def decline(turn: Turn, person: Person, athlete: Athlete) -> Outcome:
    if person.chat_id is not None:
        buttons.end_dialog(turn.tx, person.chat_id)
    coach = people.person(turn.tx, athlete.coach_id)
    tongue = turn.tongue(person)
    turn.say(
        person,
        joining.declined(tongue, coach=coach.name),
        taps=[[Tap(joining.read_again_label(tongue), "intake.begin")]],
    )
    if coach.id != person.id:
        text = joining.declined_to_coach(turn.tongue(coach), name=person.name)
        turn.say(coach, text, kind=MessageKind.NOTICE, subject=subject_of(person))
    return Outcome.INTAKE


def finish(turn: Turn, person: Person, athlete: Athlete, dialog: Dialog) -> Outcome:
    if athlete.state is not AthleteState.INTAKE:
        return is_behind(turn, person, athlete)
    intake_finish.finish(turn, person, athlete, dialog.answers)
    return Outcome.INTAKE


def is_behind(turn: Turn, person: Person, athlete: Athlete | None) -> Outcome:
    dialog = open_dialog(turn, person)
    turn.say(person, words.already_answered(turn.tongue(person), is_over=dialog is None))
    if athlete is not None and dialog is not None:
        ask(turn, person, athlete, dialog.step, dialog.answers)
    return Outcome.STALE_TAP


def asks_first(turn: Turn, person: Person, athlete: Athlete) -> bool:
    """Ask again about a sign in doubt, or about signs beside a pain: nothing stands beside it.

    False where neither waits.
    """
    flags = picture_of(turn, athlete).flags
    if red_flag.ask_open(turn, person, athlete, flags):
        return True
    return pain_more.ask_again(turn, person, athlete)


def keep(turn: Turn, person: Person, key: str, answers: Arguments) -> None:
    if person.chat_id is not None:
        buttons.keep_dialog(
            turn.tx,
            chat_id=person.chat_id,
            person_id=person.id,
            kind=KIND,
            step=key,
            answers=answers,
            now=turn.now,
        )
