"""Small talk of an athlete: whether a message is nothing else, here and now."""

from datetime import timedelta

from bot.acts import pain_picture
from bot.acts.checklist import local_today
from bot.events import Wrote
from bot.reading.courtesies import Courtesy, courtesy_of
from bot.turn import Turn
from scheduler.pain.values import Level
from storage.queries import care, remarks, training
from storage.records.people import Athlete, Person
from storage.records.training import SessionState

COACH_WROTE = "coach.wrote"
ANSWERS_WITHIN = timedelta(hours=48)  # [h] ch: so long an "ok" may answer what the coach wrote


def kind_of(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, *, coach: Person
) -> Courtesy | None:
    """Tell what small talk a message is; None where it may be more, and a person should read it.

    While a sign or an alert is open everything is for the coach. A cheer is kept as a remark; where
    something hurts it is only noted: nobody is told that it is good to hear.
    """
    if not event.text.strip() or _courtesy(event, coach, has_finished=True) is None:
        return None
    today = local_today(turn, person)
    todays = training.sessions_between(turn.tx, person.id, first=today, last=today)
    has_finished = any(one.state is SessionState.TRAINED for one in todays)
    found = _courtesy(event, coach, has_finished=has_finished)
    picture = pain_picture.picture_of(turn, athlete)
    if found is None or picture.flags or care.open_alerts(turn.tx, athlete_id=person.id):
        return None
    if found is Courtesy.CHEER:
        remarks.add_remark(turn.tx, athlete_id=person.id, at=turn.now, on=today, words=event.text)
    return Courtesy.HEARD if picture.level > Level.NONE else found


def _courtesy(event: Wrote, coach: Person, *, has_finished: bool) -> Courtesy | None:
    return courtesy_of(event.text, coach=coach.name, has_finished=has_finished)


def may_answer(turn: Turn, person: Person) -> bool:
    """Tell whether the coach wrote to the athlete lately: then an "ok" may be the answer."""
    written = care.audit_of(turn.tx, person.id, most=1, what=[COACH_WROTE])
    return bool(written) and turn.now - written[0].at <= ANSWERS_WITHIN


def is_session_open(turn: Turn, person: Person) -> bool:
    """Tell whether a session waits for its first answer: a cheer does not stand for it."""
    return any(not one.has_results for one in training.open_sessions(turn.tx, person.id)[:1])
