"""A doubt was answered: what the same message said of pain is gone on with, as after any report."""

from collections.abc import Mapping
from typing import Any

from bot.acts import intake_resume, open_answer, pain_go_on, pain_picture, pain_report, red_flag
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from scheduler.pain.events import Certainty, PainReported
from storage.queries import people, training
from storage.records.people import Athlete, Person


def answered(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Take the answer; after a no, say and ask what else the message wants."""
    athlete = people.athlete(turn.tx, person.id)
    flags = pain_picture.picture_of(turn, athlete).flags if athlete is not None else ()
    asked = next((one for one in flags if one.key == arguments["flag"]), None)
    outcome = red_flag.answered(turn, person, arguments, event)
    is_no = arguments["certainty"] == Certainty.DENIED.value and outcome is Outcome.SAFETY
    if athlete is None or asked is None or not is_no or asked.is_private:
        return outcome
    is_first = intake_resume.open_dialog(turn, person) is None
    if is_first and not pain_picture.picture_of(turn, athlete).flags:
        for report in pain_picture.events_of(turn, athlete.person_id, since=asked.since_utc):
            if isinstance(report, PainReported) and report.at_utc == asked.since_utc:
                _go_on(turn, person, athlete, report.key)
                break
    return outcome


def _go_on(turn: Turn, person: Person, athlete: Athlete, key: str) -> None:
    report = pain_report.find(turn, athlete, key)
    if report is None:
        return
    if open_answer.missing_of(report) is not None:
        open_answer.ask(turn, person, athlete, report)
        return
    sessions = training.open_sessions(turn.tx, person.id)
    session_id = sessions[0].id if sessions else None
    pain_go_on.go_on(turn, person, athlete, key, session_id=session_id)


TAPS = {"flag.answer": answered}
