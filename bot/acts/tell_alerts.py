"""Alerts: raised as records, told at once or when it is time, told again until a person answers."""

from collections.abc import Sequence
from datetime import datetime

from bot.acts.answer_alert import alert_taps, alert_text
from bot.acts.emergency_number import number_for
from bot.acts.timing import timing_of
from bot.turn import Turn
from bot.wording import practice as practice_words
from bot.wording import unreachable
from scheduler.calendar.alert_telling import first_telling_at, next_telling_at
from scheduler.pain.values import Level, Urgency
from scheduler.reasons import Reason
from storage.queries import care, due, people
from storage.records.care import Alert, AlertState
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

STAND_IN_FROM = 2  # [tellings] ch: unseen once, the next telling goes to the stand-in too


def raise_alert(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    *,
    level: Level,
    urgency: Urgency,
    words: str,
    reasons: Sequence[Reason],
    is_private: bool = False,
    not_before: datetime | None = None,
) -> Alert:
    """Open an alert, and tell it now if its urgency says so; of a practice nobody is told."""
    if athlete.is_practice:
        return _of_practice(turn, person, level=level, urgency=urgency, reasons=reasons)
    coach = people.person(turn.tx, athlete.coach_id)
    known = _of_this_message(turn, person, is_private=is_private)
    if known is not None and known.level >= level and _is_as_urgent(known, urgency):
        more = tuple(why for why in reasons if why not in known.reasons)
        return care.change_alert(turn.tx, known.id, reasons=(*known.reasons, *more))
    first = first_telling_at(urgency, raised_at_utc=turn.now, coach=timing_of(coach)).value
    if first is not None and not_before is not None:
        first = max(first, not_before)
    alert = care.raise_alert(
        turn.tx,
        athlete_id=person.id,
        coach_id=coach.id,
        level=level,
        urgency=urgency,
        words="" if is_private else words,
        reasons=reasons,
        at=turn.now,
        tell_at=first,
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="alert.raised",
        athlete_id=person.id,
        reasons=reasons,
        after={"alert": alert.id, "level": int(level), "urgency": urgency.value},
    )
    if first is not None and first <= turn.now:
        tell(turn, coach, alert.id)
    return alert


def _of_practice(
    turn: Turn, person: Person, *, level: Level, urgency: Urgency, reasons: Sequence[Reason]
) -> Alert:
    """Keep an alert of a practice athlete as answered, and say that nobody was alerted."""
    alert = care.raise_alert(
        turn.tx,
        athlete_id=person.id,
        coach_id=person.id,
        level=level,
        urgency=urgency,
        words="",
        reasons=reasons,
        at=turn.now,
        tell_at=None,
    )
    said = practice_words.nobody_alerted(turn.tongue(person))
    turn.say(person, said, kind=MessageKind.SAFETY)
    return care.change_alert(
        turn.tx,
        alert.id,
        state=AlertState.SEEN,
        answered_at=turn.now,
        answered_by_id=person.id,
    )


def _of_this_message(turn: Turn, person: Person, *, is_private: bool) -> Alert | None:
    """Return the alert that the same message raised already: one message is one alert."""
    if is_private:
        return None
    alike = [
        alert
        for alert in care.open_alerts(turn.tx, athlete_id=person.id)
        if alert.raised_at == turn.now and alert.words
    ]
    return max(alike, key=lambda alert: alert.level, default=None)


def _is_as_urgent(alert: Alert, urgency: Urgency) -> bool:
    order = tuple(Urgency)
    return order.index(alert.urgency) <= order.index(urgency)


def coach_lost(turn: Turn, coach: Person) -> None:
    """The coach's chat cannot be reached any more: what is open is told to whoever can be."""
    for alert in care.open_alerts(turn.tx, coach_id=coach.id):
        if alert.times_told or alert.tell_at is not None:
            tell(turn, coach, alert.id)


def hurry(turn: Turn, person: Person) -> None:
    """A doubt was confirmed: what waited is told now."""
    for alert in care.open_alerts(turn.tx, athlete_id=person.id):
        if alert.times_told == 0:
            tell(turn, people.person(turn.tx, alert.coach_id), alert.id)


def tell(turn: Turn, coach: Person, alert_id: int) -> None:
    """Tell an open alert, and set when it is told again."""
    alert = care.alert(turn.tx, alert_id)
    if alert is None or alert.answered_at is not None:
        return
    _mark_told(turn, coach, alert)
    reached = [one for one in _who_hears(turn, coach, alert) if _tell_one(turn, one, alert)]
    again = next_telling_at(
        alert.urgency,
        times_told=alert.times_told + 1,
        told_at_utc=turn.now,
        coach=timing_of(coach),
    ).value
    care.change_alert(turn.tx, alert.id, times_told=alert.times_told + 1, tell_at=again)
    if not reached:
        _nobody_reached(turn, alert)


def _mark_told(turn: Turn, coach: Person, alert: Alert) -> None:
    """Take the due row of this telling, so that the round does not tell it a second time."""
    due.take(
        turn.tx,
        person_id=coach.id,
        kind="alert",
        subject=f"{alert.id}:{alert.times_told}",
        due_at=alert.tell_at or turn.now,
        now=turn.now,
    )


def _who_hears(turn: Turn, coach: Person, alert: Alert) -> list[Person]:
    hears = [coach]
    is_late = alert.times_told + 1 >= STAND_IN_FROM or not _is_reachable(coach)
    if is_late and coach.stand_in_id is not None:
        hears.append(people.person(turn.tx, coach.stand_in_id))
    return hears


def _is_reachable(person: Person) -> bool:
    return person.chat_id is not None and not person.is_blocked


def _tell_one(turn: Turn, to: Person, alert: Alert) -> bool:
    if not _is_reachable(to):
        return False
    turn.say(
        to,
        alert_text(turn, to, alert),
        kind=MessageKind.ALERT,
        taps=alert_taps(turn, to, alert),
        subject=f"athlete:{alert.athlete_id}",
    )
    return True


def _number(turn: Turn, person: Person) -> str | None:
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return None
    return number_for(turn, person, people.person(turn.tx, athlete.coach_id))


def _nobody_reached(turn: Turn, alert: Alert) -> None:
    """Nobody can be reached: the athlete is told so once, whoever owns the house every time."""
    athlete = people.person(turn.tx, alert.athlete_id)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="alert.nobody_reached",
        athlete_id=alert.athlete_id,
        after={"alert": alert.id},
    )
    is_first = due.take(
        turn.tx,
        person_id=athlete.id,
        kind="nobody_reached",
        subject=str(alert.id),
        due_at=turn.now,
        now=turn.now,
    )
    if is_first:
        turn.say(
            athlete,
            unreachable.to_athlete(turn.tongue(athlete), number=_number(turn, athlete)),
            kind=MessageKind.SAFETY,
        )
    for owner in people.owners(turn.tx):
        turn.say(
            owner,
            unreachable.to_owner(turn.tongue(owner), athlete.name),
            kind=MessageKind.ALERT,
        )
