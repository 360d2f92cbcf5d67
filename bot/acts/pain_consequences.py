"""What a change of the pain picture sets in motion, in the same transaction that recorded it."""

from collections.abc import Sequence
from datetime import datetime

from bot.acts import draw_week, pain_picture, pain_report, refill_session, tell_alerts
from bot.acts.alert_doubt import doubt_of
from bot.acts.find_athlete import subject_of
from bot.acts.places import merged
from bot.turn import Turn
from bot.wording import coach_alerts
from bot.wording import pain as words
from bot.wording.coach_alerts import Doubt
from scheduler.pain.events import Certainty
from scheduler.pain.open_flags import alert_wait
from scheduler.pain.picture import FlagPicture, PainPicture, RegionPicture
from scheduler.pain.values import Level, Urgency
from storage.queries import care, people
from storage.records.care import AlertState
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

PATTERN = "early_pattern"
URGENCIES = tuple(Urgency)  # the most urgent first


def follow(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    before: PainPicture,
    *,
    words_said: str,
) -> PainPicture:
    """Raise alerts, advise, leave out, redraw, and correct what was sent; return the picture after.

    What to do comes first: who is told of a doctor at the end of three messages has read two.
    """
    after = pain_picture.picture_of(turn, athlete)
    risen = _risen(before, after)
    if risen:
        _advise(turn, person, athlete, after, risen)
    _raise_for_regions(turn, person, athlete, risen, words_said)
    _raise_for_flags(turn, person, athlete, before, after, words_said)
    _propose_patterns(turn, athlete, before, after)
    leave_out(turn, person, athlete, before, after)
    return after


def leave_out(
    turn: Turn, person: Person, athlete: Athlete, before: PainPicture, after: PainPicture
) -> None:
    """Correct what was sent and draw anew where what is left out or eased has changed."""
    if after.rested == before.rested and after.eased == before.eased:
        return
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="pain.left_out",
        athlete_id=person.id,
        reasons=tuple(why for one in after.regions for why in one.reasons),
        before={"level": int(before.level), "rested": before.rested.model_dump(mode="json")},
        after={"level": int(after.level), "rested": after.rested.model_dump(mode="json")},
    )
    refill_session.correct(turn, person, athlete, after)
    if {one.key for one in before.flags} - {one.key for one in after.flags}:
        refill_session.bring_back(turn, person, athlete, after)
    draw_week.redraw(turn, person, athlete)


def _risen(before: PainPicture, after: PainPicture) -> tuple[RegionPicture, ...]:
    """Return the places that only a person can clear now, and that stood lower before."""
    known = {one.region: one.level for one in before.regions}
    return tuple(
        one
        for one in after.regions
        if one.level >= Level.REST and one.level > known.get(one.region, Level.NONE)
    )


def _advise(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    after: PainPicture,
    risen: Sequence[RegionPicture],
) -> None:
    """Say what to do before what changes, unless a sign of this message says something graver."""
    if any(flag.since_utc == turn.now for flag in after.flags):
        return
    coach = people.person(turn.tx, athlete.coach_id)
    worst = max(merged(risen), key=lambda one: one.level)
    _, is_side_unsaid = pain_report.unsaid(turn, athlete)
    text = words.advice(
        turn.tongue(person), worst, coach=coach.name, is_side_said=not is_side_unsaid
    )
    turn.say(person, text, kind=MessageKind.SAFETY)
    turn.advised.add(person.id)


def _raise_for_regions(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    risen: Sequence[RegionPicture],
    words_said: str,
) -> None:
    if not risen:
        return
    worst = max(risen, key=lambda one: one.level)
    tell_alerts.raise_alert(
        turn,
        person,
        athlete,
        level=worst.level,
        urgency=_most_urgent(risen),
        words=words_said,
        reasons=tuple(why for one in risen for why in one.reasons),
    )


def _most_urgent(risen: Sequence[RegionPicture]) -> Urgency:
    return min((one.urgency for one in risen), key=URGENCIES.index)


def _raise_for_flags(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    before: PainPicture,
    after: PainPicture,
    words_said: str,
) -> None:
    known = {one.key: one for one in before.flags}
    fresh = [flag for flag in after.flags if flag.key not in known]
    for is_private in (True, False):
        alike = [flag for flag in fresh if flag.is_private is is_private]
        if alike:
            _raise_for(turn, person, athlete, alike, "" if is_private else words_said)
    for flag in after.flags:
        earlier = known.get(flag.key)
        was_in_doubt = earlier is not None and earlier.certainty is Certainty.ASKED
        if was_in_doubt and flag.certainty is Certainty.CONFIRMED:
            tell_alerts.hurry(turn, person)
    standing = {one.key for one in after.flags}
    gone = [flag for flag in before.flags if flag.key not in standing]
    if gone:
        _tell_denials(turn, person, athlete, {one.flag.value for one in gone})
        _withdraw(turn, person, after)


def _raise_for(
    turn: Turn, person: Person, athlete: Athlete, flags: list[FlagPicture], words_said: str
) -> None:
    """Raise one alert for all that one message raised, as grave and as urgent as its gravest."""
    tell_alerts.raise_alert(
        turn,
        person,
        athlete,
        level=max(flag.level for flag in flags),
        urgency=min((flag.urgency for flag in flags), key=URGENCIES.index),
        words=words_said,
        reasons=tuple(why for flag in flags for why in flag.reasons),
        is_private=any(flag.is_private for flag in flags),
        not_before=_not_before(turn, flags),
    )


def _not_before(turn: Turn, flags: list[FlagPicture]) -> datetime | None:
    """Only the coach's alert about a chest in doubt waits; the athlete is told at once."""
    wait = min(alert_wait(flag.flag, flag.certainty, is_in_hang=flag.is_in_hang) for flag in flags)
    return turn.now + wait if wait else None


def _withdraw(turn: Turn, person: Person, after: PainPicture) -> None:
    """A doubt was answered away before the coach was told: nobody needs to be woken for it."""
    if after.level >= Level.REST:
        return
    for alert in care.open_alerts(turn.tx, athlete_id=person.id):
        if alert.times_told == 0:
            care.change_alert(
                turn.tx,
                alert.id,
                state=AlertState.SEEN,
                answered_at=turn.now,
                answered_by_id=person.id,
                tell_at=None,
            )
            care.write_audit(
                turn.tx,
                at=turn.now,
                what="alert.withdrawn",
                athlete_id=person.id,
                actor_id=person.id,
                reasons=alert.reasons,
                before={"alert": alert.id},
            )


def _tell_denials(turn: Turn, person: Person, athlete: Athlete, gone: set[str]) -> None:
    """Tell a coach who was alerted that the athlete says no; nothing of a private sign."""
    for alert in care.open_alerts(turn.tx, athlete_id=person.id):
        is_about = any(one.figures.get("flag") in gone for one in alert.reasons)
        if not (is_about and alert.times_told and alert.words):
            continue
        if doubt_of(turn, alert, athlete) is Doubt.DENIED:
            coach = people.person(turn.tx, alert.coach_id)
            said = coach_alerts.answered_no(turn.tongue(coach), name=person.name)
            turn.say(coach, said, kind=MessageKind.ALERT, subject=subject_of(person))


def _propose_patterns(
    turn: Turn, athlete: Athlete, before: PainPicture, after: PainPicture
) -> None:
    known = {(one.kind, one.arm) for one in before.patterns}
    for pattern in after.patterns:
        if (pattern.kind, pattern.arm) in known:
            continue
        care.propose(
            turn.tx,
            athlete_id=athlete.person_id,
            kind=PATTERN,
            facts={
                "pattern": pattern.kind.value,
                "arm": pattern.arm.value,
                "reasons": [why.model_dump(mode="json") for why in pattern.reasons],
            },
            at=turn.now,
        )
