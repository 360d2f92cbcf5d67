"""A coach's waking hours, and the day and hour of the digest: by command and by taps."""

import re
from collections.abc import Mapping
from datetime import time, timedelta
from typing import Any

from bot.acts import digest_days
from bot.acts.intake_answers import Heard
from bot.acts.intake_clock import clock
from bot.acts.timing import timing_of
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.days import ONLY_IN_FRONT, WEEKDAYS
from bot.turn import Tap, TapRows, Turn
from bot.wording import hours as words
from scheduler.calendar.alert_telling import first_telling_at
from scheduler.pain.values import Urgency
from storage.queries import care, people
from storage.records.people import Person

SHOW, ASK, SET = "hours.show", "hours.ask", "hours.set"
CHANGED = "coach.hours"
UP_LEAST = timedelta(hours=4)  # [h] ch: an alert told again after 4 waking hours comes each day
TIMES = re.compile(r"\d{1,2}(?:[:.h]\d{2})?\s*(?:am|pm)?", re.IGNORECASE)
CHOICES: Mapping[str, tuple[int, ...]] = {  # [h of the day] ch: what a thumb is offered
    "digest_at": (6, 7, 8, 9, 12, 17, 18, 20),
    "waking_from": (5, 6, 7, 8, 9, 10),
    "waking_until": (19, 20, 21, 22, 23, 0),
}
FIELDS = ("digest_weekday", "digest_at", "waking_from", "waking_until")
BUTTONS_A_ROW = 4  # [buttons] ch: a time is short


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/hours``, ``/hours 7:00-22:00`` or ``/hours sunday 18:00``."""
    if not text.strip():
        turn.say(coach, _card(turn, coach), taps=_card_taps(turn, coach))
        return Outcome.COMMAND
    wanted = _heard(text)
    if wanted is None:
        turn.say(coach, words.not_understood(turn.tongue(coach)))
        return Outcome.NOT_UNDERSTOOD
    if _is_too_short(coach, wanted):
        least = int(UP_LEAST.total_seconds() // 3600)
        turn.say(coach, words.too_short(turn.tongue(coach), least_h=least))
        return Outcome.NOT_UNDERSTOOD
    now = change(turn, coach, wanted)
    turn.say(coach, _card(turn, now), taps=_card_taps(turn, now))
    return Outcome.COMMAND


def show(turn: Turn, coach: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Back to the card."""
    _turn_into(turn, coach, event, _card(turn, coach), _card_taps(turn, coach))
    return Outcome.COMMAND


def ask(turn: Turn, coach: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Offer what one of the hours can be."""
    tongue, field = turn.tongue(coach), str(arguments["field"])
    if field == "digest_weekday":
        options = [(words.weekday_label(tongue, day), str(day)) for day in range(7)]
    else:
        times = [time(hour) for hour in CHOICES[field]]
        options = [(words.clock(at), at.isoformat()) for at in times]
    taps = [Tap(shown, SET, {"field": field, "value": value}) for shown, value in options]
    rows = [taps[at : at + BUTTONS_A_ROW] for at in range(0, len(taps), BUTTONS_A_ROW)]
    rows.append([Tap(words.back_label(tongue), SHOW)])
    _turn_into(turn, coach, event, words.question(tongue, field), rows)
    return Outcome.ASKED


def chosen(turn: Turn, coach: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """One of the hours was tapped."""
    field, value = str(arguments["field"]), str(arguments["value"])
    wanted = {field: int(value) if field == "digest_weekday" else time.fromisoformat(value)}
    if _is_too_short(coach, wanted):
        least = int(UP_LEAST.total_seconds() // 3600)
        turn.say(coach, words.too_short(turn.tongue(coach), least_h=least))
        return Outcome.NOT_UNDERSTOOD
    now = change(turn, coach, wanted)
    _turn_into(turn, coach, event, _card(turn, now), _card_taps(turn, now))
    return Outcome.COMMAND


def change(turn: Turn, coach: Person, wanted: Mapping[str, Any]) -> Person:
    """Set the hours and record it; what waits for waking hours may come earlier, never later."""
    now = people.change_person(turn.tx, coach.id, **wanted)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=CHANGED,
        athlete_id=None,
        actor_id=coach.id,
        before={field: str(getattr(coach, field)) for field in wanted},
        after={field: str(getattr(now, field)) for field in wanted},
    )
    _bring_alerts_forward(turn, now)
    if {"digest_weekday", "digest_at"} & wanted.keys():
        digest_days.note_move(turn, now)
    return now


def _bring_alerts_forward(turn: Turn, coach: Person) -> None:
    for alert in care.open_alerts(turn.tx, coach_id=coach.id):
        if alert.urgency is not Urgency.SOON or alert.times_told or alert.tell_at is None:
            continue
        first = first_telling_at(
            alert.urgency, raised_at_utc=turn.now, coach=timing_of(coach)
        ).value
        if first is not None and first < alert.tell_at:
            care.change_alert(turn.tx, alert.id, tell_at=first)


def _is_too_short(coach: Person, wanted: Mapping[str, Any]) -> bool:
    """Tell whether so few waking hours are left that alerts would wait; equal ends are all day."""
    start, end = (wanted.get(one, getattr(coach, one)) for one in ("waking_from", "waking_until"))
    minutes = (end.hour * 60 + end.minute - start.hour * 60 - start.minute) % (24 * 60)
    return bool(minutes) and timedelta(minutes=minutes) < UP_LEAST


def _heard(text: str) -> dict[str, Any] | None:
    """Read two times as the waking hours, and a day, a time or both as the digest's."""
    times = [_time(found.group()) for found in TIMES.finditer(text)]
    names = re.findall(r"[^\W\d_]+", text.casefold())
    days = [{**WEEKDAYS, **ONLY_IN_FRONT}.get(_plain(name)) for name in names]
    weekdays = [day for day in days if day is not None]
    is_digest = bool(weekdays) or bool({"digest", "resumen"} & set(names))
    if None in times or len(weekdays) > 1:
        return None
    if not is_digest:
        fields = ("waking_from", "waking_until")
        return dict(zip(fields, times, strict=True)) if len(times) == len(fields) else None
    found: dict[str, Any] = {"digest_weekday": weekdays[0]} if weekdays else {}
    if len(times) == 1:
        found["digest_at"] = times[0]
    return found if found and len(times) <= 1 else None


def _plain(name: str) -> str:
    return name.replace("á", "a").replace("é", "e")


def _time(text: str) -> time | None:
    heard = clock(text.strip().replace("h", ":").replace(".", ":"))
    return time.fromisoformat(str(heard.value)) if isinstance(heard, Heard) else None


def _card(turn: Turn, coach: Person) -> str:
    return words.card(
        turn.tongue(coach),
        zone=coach.zone,
        waking_from=coach.waking_from,
        waking_until=coach.waking_until,
        weekday=coach.digest_weekday,
        at=coach.digest_at,
        next_digest=digest_days.next_at(turn, coach),
    )


def _card_taps(turn: Turn, coach: Person) -> TapRows:
    tongue = turn.tongue(coach)
    shown = (words.day_label, words.hour_label, words.from_label, words.until_label)
    taps = [
        Tap(write(tongue), ASK, {"field": field})
        for write, field in zip(shown, FIELDS, strict=True)
    ]
    return [taps[:2], taps[2:]]


def _turn_into(turn: Turn, coach: Person, event: Tapped, text: str, taps: TapRows) -> None:
    """Turn the tapped message into the next one, so that the card moves in place."""
    if event.message_id is None:
        turn.say(coach, text, taps=taps)
    else:
        turn.change(coach, event.message_id, text, taps=taps)


TAPS = {SHOW: show, ASK: ask, SET: chosen}
