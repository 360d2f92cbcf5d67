"""Answering an alert: seen stops the repeats, the level stays until somebody clears it."""

from collections.abc import Mapping
from typing import Any

from bot.acts import find_athlete, pain_report
from bot.acts.alert_doubt import doubt_of
from bot.acts.find_athlete import subject_of
from bot.acts.pain_picture import picture_of
from bot.acts.places import held_places, left_out_words, places_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_alerts
from bot.wording import handover as handover_words
from bot.wording.coach_alerts import AlertFacts
from bot.wording.flag_words import is_private
from scheduler.calendar.zones import zone_named
from scheduler.pain.values import Level
from storage.queries import care, people
from storage.records.care import Alert, AlertState
from storage.records.people import Athlete, Person

SEEN = "alert.seen"


def alert_text(turn: Turn, to: Person, alert: Alert) -> str:
    """Write an alert for whoever hears of it."""
    athlete = people.athlete(turn.tx, alert.athlete_id)
    unsaid = pain_report.unsaid(turn, athlete) if athlete is not None else (False, False)
    person = people.person(turn.tx, alert.athlete_id)
    return coach_alerts.alert_text(
        turn.tongue(to),
        AlertFacts(
            name=person.name,
            level=alert.level,
            urgency=alert.urgency,
            raised_at=alert.raised_at.astimezone(zone_named(to.zone)),
            words=alert.words,
            reasons=alert.reasons,
            places=places_of(turn, athlete) if athlete is not None else (),
            left_out=left_out_words(turn, to, athlete) if athlete is not None else "",
            times_told=alert.times_told,
            is_private=_is_private(turn, alert, athlete),
            is_site_unsaid=unsaid[0],
            is_side_unsaid=unsaid[1],
            doubt=doubt_of(turn, alert, athlete) if athlete is not None else None,
        ),
    )


def alert_taps(turn: Turn, to: Person, alert: Alert) -> TapRows:
    """Return the buttons of an alert: seen, write, open the record, clear."""
    tongue, about = turn.tongue(to), {"athlete": alert.athlete_id}
    rows = [
        [
            Tap(coach_alerts.seen_label(tongue), SEEN, {"alert": alert.id}),
            Tap(coach_alerts.write_label(tongue), "coach.write", about),
        ]
    ]
    second = [Tap(coach_alerts.open_label(tongue), "coach.who", about)]
    if alert.level >= Level.REST:
        second.append(Tap(coach_alerts.clear_label(tongue), "coach.clear_ask", about))
    page = [Tap(handover_words.label(tongue), "coach.handover", about)]
    return [*rows, second, page]


def seen(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """A person has seen the alert."""
    alert = care.alert(turn.tx, int(arguments["alert"]))
    if alert is None:
        return Outcome.STALE_TAP
    named = find_athlete.tapped(turn, coach, {"athlete": alert.athlete_id})
    if isinstance(named, Outcome):
        return named
    tongue, name = turn.tongue(coach), named.person.name
    if alert.state is not AlertState.OPEN:
        turn.say(coach, coach_alerts.answered_before(tongue, name=name))
        return Outcome.STALE_TAP
    answer(turn, coach, alert, state=AlertState.SEEN)
    turn.say(
        coach,
        coach_alerts.seen(tongue, name=name, still=held_places(turn, named.athlete)),
        subject=subject_of(named.person),
    )
    return Outcome.COMMAND


def answer(turn: Turn, coach: Person, alert: Alert, *, state: AlertState) -> None:
    """Close an alert and write down who did."""
    care.change_alert(
        turn.tx,
        alert.id,
        state=state,
        answered_at=turn.now,
        answered_by_id=coach.id,
        tell_at=None,
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=f"alert.{state.value}",
        athlete_id=alert.athlete_id,
        actor_id=coach.id,
        before={"alert": alert.id, "state": alert.state.value},
        after={"alert": alert.id, "state": state.value},
    )


def _is_private(turn: Turn, alert: Alert, athlete: Athlete | None) -> bool:
    """Tell whether nothing but the need for a person may be said."""
    if any(is_private(str(one.figures.get("flag", ""))) for one in alert.reasons):
        return True
    if alert.words or athlete is None:
        return False
    return any(flag.is_private for flag in picture_of(turn, athlete).flags)
