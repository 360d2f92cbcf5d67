"""Once a week, after its last session: how sleep and mood were. It only ever makes more careful."""

from collections.abc import Mapping
from datetime import timedelta
from typing import Any

from bot.acts.lighter_signals import ASKED
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import plain
from bot.wording import weekly as words
from scheduler.calendar.wall_time import monday_of
from storage.queries import care, due, training
from storage.records.people import Person
from storage.records.training import SessionRecord, SessionState

KIND = "how_slept"
ANSWERS = ("fine", "sleep_poor", "mood_poor", "both_poor")


def ask_if_last(turn: Turn, person: Person, session: SessionRecord) -> None:
    """Ask once a week, when no other session of the week is still to come."""
    monday = monday_of(session.on)
    week = training.sessions_between(
        turn.tx, person.id, first=session.on, last=monday + timedelta(days=6)
    )
    if any(one.state in {SessionState.PLANNED, SessionState.SENT} for one in week):
        return
    subject = monday.isoformat()
    is_new = due.take(
        turn.tx, person_id=person.id, kind=KIND, subject=subject, due_at=turn.now, now=turn.now
    )
    if not is_new:
        return
    tongue = turn.tongue(person)
    taps = [
        [
            Tap(
                words.answer_label(tongue, answer),
                "week.slept",
                {"answer": answer, "monday": subject},
            )
        ]
        for answer in ANSWERS
    ]
    turn.say(person, words.question(tongue), taps=taps)


def answered(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Keep the answer; a second tap corrects the first."""
    answer = str(arguments["answer"])
    after = {"answer": answer, "monday": arguments["monday"], "is_poor": answer != ANSWERS[0]}
    told = care.audit_of(turn.tx, person.id, most=1, what=(ASKED,))
    newest = str(told[0].after.get("monday", "")) if told else ""
    if newest > str(arguments["monday"]):
        turn.say(person, plain.old_button(turn.tongue(person)))  # a later week was told since
        return Outcome.STALE_TAP
    if not told or told[0].after != after:
        care.write_audit(
            turn.tx,
            at=turn.now,
            what=ASKED,
            athlete_id=person.id,
            actor_id=person.id,
            after=after,
        )
    text = words.noted(turn.tongue(person), answer)
    turn.answer_tap(person, event.message_id, text)
    return Outcome.ANSWERED


TAPS = {"week.slept": answered}
