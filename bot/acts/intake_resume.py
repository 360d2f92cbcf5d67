"""The open question of the intake after something graver: shown again, never beside a doubt."""

from collections.abc import Mapping
from typing import Any

from bot.acts.intake_show import ask
from bot.acts.intake_steps import GUARDIAN_WAIT
from bot.acts.open_question import open_question
from bot.acts.pain_picture import picture_of
from bot.turn import Tap, Turn
from bot.wording import intake_beside as words
from scheduler.pain.events import Certainty
from scheduler.pain.values import Level
from storage import buttons
from storage.records.people import Athlete, Person
from storage.records.wire import Dialog

KIND = "intake"
MORE, MORE_SIGNS, MORE_LIST = "pain.more", "signs", "list"
"""The kind of the open question about a pain that waits for a tap, and what it asks."""


def open_dialog(turn: Turn, person: Person) -> Dialog | None:
    """Return where a person's first questions stand; None when they are over or not begun."""
    found = None if person.chat_id is None else buttons.dialog(turn.tx, person.chat_id)
    return found if found is not None and found.kind == KIND else None


def remember(turn: Turn, person: Person, about: Mapping[str, Any], asked: str) -> None:
    """Within the first questions a typed "no" is meant for what was asked last: remember that."""
    if open_dialog(turn, person) is not None:
        open_question(turn, person, MORE, {**about, "asked": asked})


def resume(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Show the open question again, if there is one.

    While a sign is asked about nothing else is asked. Who was told to call for help gets a button
    to go on by, and no question.
    """
    dialog = open_dialog(turn, person)
    if dialog is None or dialog.step == GUARDIAN_WAIT:
        return
    picture = picture_of(turn, athlete)
    if any(flag.certainty is Certainty.ASKED for flag in picture.flags):
        return
    if picture.level >= Level.EMERGENCY:
        tongue = turn.tongue(person)
        turn.say(
            person, words.wait(tongue), taps=[[Tap(words.go_on_label(tongue), "intake.begin")]]
        )
        return
    ask(turn, person, athlete, dialog.step, dialog.answers)
