"""A coach clears what only a person may clear: with a reason, and where needed a statement."""

from collections.abc import Mapping
from datetime import date, datetime, time, timedelta
from typing import Any

from bot.acts import after_fever, answer_alert, ask_why, coach_question, draw_week, find_athlete
from bot.acts.about_athlete import entries
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.acts.pain_picture import events_of, new_key, picture_of, record_event
from bot.acts.places import held_in
from bot.acts.tell_athlete import tell
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_clear
from bot.wording.coach_pain import PlaceFacts, where_of
from scheduler.calendar.wall_time import due_instant
from scheduler.calendar.zones import zone_named
from scheduler.pain.events import Cleared
from scheduler.pain.levels import clearing_decision
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.values import Side, Site
from storage.queries import care
from storage.records.care import AlertState
from storage.records.people import Person
from storage.records.wire import MessageKind

ACT, DAY = "coach.clear", "coach.clear_day"
CLEARED = "pain.cleared"
WEEK = timedelta(days=7)  # [days] ch: what the button "in a week" means
FARTHEST = timedelta(days=365)  # [days] ch: a later day is a slip of the thumb


def begin(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Ask for what is missing: a reason, which place, the statement; else clear."""
    tongue = turn.tongue(coach)
    held = held_in(picture_of(turn, named.athlete))
    if not held:
        turn.say(coach, coach_clear.nothing_left_out(tongue, name=named.person.name))
        return Outcome.COMMAND
    if not named.rest.strip():
        return ask_why.ask(
            turn,
            coach,
            named.person,
            act=ACT,
            request={"athlete": named.person.id},
            text=coach_clear.ask_reason(tongue, name=named.person.name, places=held),
            whys=(),  # who may train again is said in own words, never by one tap
        )
    request = {
        "athlete": named.person.id,
        "why": named.rest.strip(),
        "events": care.count_pain_events(turn.tx, named.person.id),
    }
    if len(held) > 1 and all(one.flag is None for one in held):
        turn.say(
            coach,
            coach_clear.ask_place(tongue, name=named.person.name),
            taps=_place_taps(turn, coach, held, request),
            subject=subject_of(named.person),
        )
        return Outcome.ASKED
    return _go_on(turn, coach, named, request)


def _place_taps(
    turn: Turn, coach: Person, held: tuple[PlaceFacts, ...], request: Mapping[str, Any]
) -> TapRows:
    tongue = turn.tongue(coach)
    places = [
        [
            Tap(
                coach_clear.place_label(tongue, one),
                "coach.clear_place",
                {**request, "site": one.site.value, "side": one.side.value},
            )
        ]
        for one in held
    ]
    last = [
        Tap(coach_clear.all_label(tongue), "coach.clear_place", request),
        Tap(coach_clear.stop_label(tongue), "coach.clear_stop", request),
    ]
    return [*places, last]


def place_chosen(
    turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """One place, or all of it, was chosen."""
    found = _unchanged(turn, coach, arguments)
    return found if isinstance(found, Outcome) else _go_on(turn, coach, found, arguments)


def _go_on(turn: Turn, coach: Person, named: Named, request: Mapping[str, Any]) -> Outcome:
    """Clear what needs no statement; ask for the statement where it is needed."""
    event = _event(turn, coach, named, request, is_assessed=False, from_utc=None)
    decision = clearing_decision(events_of(turn, named.person.id), event)
    if decision.value:
        return _clear(turn, coach, named, request, event, from_day=None)
    tongue, name = turn.tongue(coach), named.person.name
    if decision.reasons[0].code == PainReason.NOTHING_TO_CLEAR:
        turn.say(coach, coach_clear.nothing_left_out(tongue, name=name))
        return Outcome.COMMAND
    turn.say(
        coach,
        coach_clear.ask_assessed(
            tongue, name=name, places=_meant(turn, named, request), why=str(request["why"])
        ),
        taps=[
            [
                Tap(coach_clear.assessed_label(tongue), "coach.clear_assessed", request),
                Tap(coach_clear.not_assessed_label(tongue), "coach.clear_stop", request),
            ]
        ],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def assessed(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The statement was given: ask from when."""
    found = _unchanged(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    tongue = turn.tongue(coach)
    today, first = local_today(turn, found.person), after_fever.first_day(turn, found)
    after = first if first > today else None
    coach_question.ask(turn, coach, DAY, arguments)
    turn.say(
        coach,
        coach_clear.ask_from_when(tongue, name=found.person.name, after_fever=after),
        taps=[
            [
                Tap(
                    coach_clear.day_label(tongue, after),
                    DAY,
                    {**arguments, "day": first.isoformat()},
                ),
                Tap(
                    coach_clear.week_label(tongue),
                    DAY,
                    {**arguments, "day": (today + WEEK).isoformat()},
                ),
            ]
        ],
        subject=subject_of(found.person),
    )
    return Outcome.ASKED


def day_chosen(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The day was tapped."""
    return _clear_from(turn, coach, arguments, str(arguments["day"]))


def hear_day(turn: Turn, coach: Person, about: Mapping[str, Any], text: str) -> Outcome:
    """The day came as the next text."""
    return _clear_from(turn, coach, about, text.strip())


def _clear_from(turn: Turn, coach: Person, request: Mapping[str, Any], text: str) -> Outcome:
    found = _unchanged(turn, coach, request)
    if isinstance(found, Outcome):
        return found
    today = local_today(turn, found.person)
    day = _day_in(text)
    if day is None or not today <= day <= today + FARTHEST:
        turn.say(coach, coach_clear.bad_day(turn.tongue(coach)))
        return Outcome.NOT_UNDERSTOOD
    if day < (first := after_fever.first_day(turn, found)):
        turn.say(coach, coach_clear.fever_waits(turn.tongue(coach), first=first))
        return Outcome.NOT_UNDERSTOOD
    coach_question.close(turn, coach)
    midnight = due_instant(local_date=day, wall_time=time(0), zone=zone_named(found.person.zone))
    event = _event(turn, coach, found, request, is_assessed=True, from_utc=max(midnight, turn.now))
    from_day = day if day > today else None
    return _clear(turn, coach, found, request, event, from_day=from_day)


def stop(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Without the statement, or without wanting to, nothing is cleared."""
    coach_question.close(turn, coach)
    found = find_athlete.tapped(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    turn.say(
        coach,
        coach_clear.nothing_cleared(turn.tongue(coach), name=found.person.name),
        subject=subject_of(found.person),
    )
    return Outcome.COMMAND


def _clear(
    turn: Turn,
    coach: Person,
    named: Named,
    request: Mapping[str, Any],
    event: Cleared,
    *,
    from_day: date | None,
) -> Outcome:
    """Record the clearing, plan anew, tell both."""
    decision = clearing_decision(events_of(turn, named.person.id), event)
    if not decision.value:
        turn.say(
            coach,
            coach_clear.changed_since(turn.tongue(coach), name=named.person.name),
        )
        return Outcome.STALE_TAP
    places = _meant(turn, named, request)
    record_event(turn, named.person.id, event)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=CLEARED,
        athlete_id=named.person.id,
        actor_id=coach.id,
        words=event.reason,
        reasons=decision.reasons,
        before={"level": max(int(one.level) for one in places)},
        after={
            "place": ", ".join(where_of(turn.tongue(coach), one) for one in places),
            "is_assessed": event.is_assessed,
            "trains_from": event.trains_from_utc.isoformat() if event.trains_from_utc else None,
        },
    )
    still = _still_held(turn, named, places)
    if not still:
        for alert in care.open_alerts(turn.tx, athlete_id=named.person.id):
            answer_alert.answer(turn, coach, alert, state=AlertState.CLEARED)
    draw_week.redraw(turn, named.person, named.athlete)
    _tell_both(turn, coach, named, places, still, why=event.reason, from_day=from_day)
    return Outcome.COMMAND


def _tell_both(
    turn: Turn,
    coach: Person,
    named: Named,
    places: tuple[PlaceFacts, ...],
    still: tuple[PlaceFacts, ...],
    *,
    why: str,
    from_day: date | None,
) -> None:
    person = named.person
    is_told = tell(
        turn,
        person,
        coach_clear.to_athlete(
            turn.tongue(person), coach=coach.name, places=places, from_day=from_day
        ),
        kind=MessageKind.SAFETY,
    )
    turn.say(
        coach,
        coach_clear.cleared(
            turn.tongue(coach),
            name=person.name,
            places=places,
            from_day=from_day,
            why=why,
            still=still,
            is_told=is_told,
        ),
        subject=subject_of(person),
    )


def _still_held(
    turn: Turn, named: Named, cleared: tuple[PlaceFacts, ...]
) -> tuple[PlaceFacts, ...]:
    """Return what still waits for a person; a sign cleared for a later day does not."""
    signs = {one.flag for one in cleared if one.flag is not None}
    held = held_in(picture_of(turn, named.athlete))
    return tuple(one for one in held if one.flag is None or one.flag not in signs)


def _meant(turn: Turn, named: Named, request: Mapping[str, Any]) -> tuple[PlaceFacts, ...]:
    held = held_in(picture_of(turn, named.athlete))
    if "site" not in request:
        return held
    wanted = (request["site"], request["side"])
    return tuple(
        one for one in held if one.flag is None and (one.site.value, one.side.value) == wanted
    )


def _event(
    turn: Turn,
    coach: Person,
    named: Named,
    request: Mapping[str, Any],
    *,
    is_assessed: bool,
    from_utc: datetime | None,
) -> Cleared:
    return Cleared(
        key=new_key(turn, named.person.id),
        at_utc=turn.now,
        site=Site(request["site"]) if "site" in request else None,
        side=Side(request["side"]) if "side" in request else Side.BOTH,
        by=f"person:{coach.id}",
        reason=str(request["why"]),
        is_assessed=is_assessed,
        trains_from_utc=from_utc,
    )


def _unchanged(turn: Turn, coach: Person, request: Mapping[str, Any]) -> Named | Outcome:
    """Find the athlete, unless something was said about pain since the question."""
    found = find_athlete.tapped(turn, coach, request)
    if isinstance(found, Outcome):
        return found
    if care.count_pain_events(turn.tx, found.person.id) != int(request["events"]):
        coach_question.close(turn, coach)
        turn.say(coach, coach_clear.changed_since(turn.tongue(coach), name=found.person.name))
        return Outcome.STALE_TAP
    return found


def _day_in(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


command, picked = entries(begin, act=ACT, example=coach_clear.EXAMPLE)  # ``/clear NAME reason``.
