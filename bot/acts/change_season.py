"""A coach changes what a season is planned from: events, travel, competing, off-season."""

import re
from collections.abc import Callable, Mapping
from datetime import date, timedelta
from typing import Any

from bot.acts import draw_week
from bot.acts.about_athlete import entries
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named
from bot.acts.intake_places import EVENT_MOST, dates_in
from bot.acts.show_season import show_to_coach
from bot.acts.tell_athlete import tell
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import season as words
from scheduler.training.season_values import SeasonEvent, Span, Travel
from storage.queries import care, people
from storage.records.people import Person, Profile

CHANGED = "season.changed"
NAME_MOST = 60  # [characters] ch: a name, not a letter
SPAN_MOST = timedelta(days=366)  # [days] ch

Changed = Profile | words.Unclear
Change = Callable[[Profile, str, date], Changed]


def show_or_change(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Show the season, or change what is asked for and plan the coming weeks anew."""
    if not named.rest.strip():
        return show_to_coach(turn, coach, named)
    tongue = turn.tongue(coach)
    keyword, _, rest = named.rest.strip().partition(" ")
    change = CHANGES.get(keyword.casefold().rstrip(":,"))
    if change is None:
        turn.say(coach, words.unclear(tongue, words.Unclear.WHAT))
        return Outcome.NOT_UNDERSTOOD
    profile = named.athlete.profile
    new = change(profile, rest.strip(), local_today(turn, named.person))
    if isinstance(new, words.Unclear):
        turn.say(coach, words.unclear(tongue, new))
        return Outcome.NOT_UNDERSTOOD
    athlete = people.change_athlete(turn.tx, named.person.id, profile=new)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=CHANGED,
        athlete_id=named.person.id,
        actor_id=coach.id,
        words=named.rest.strip(),
        before=_facts(profile),
        after=_facts(new),
    )
    draw_week.redraw(turn, named.person, athlete)
    tell(turn, named.person, words.changed_to_athlete(turn.tongue(named.person), coach=coach.name))
    shown = Named(person=named.person, athlete=athlete, rest="")
    return show_to_coach(turn, coach, shown)


def _facts(profile: Profile) -> dict[str, Any]:
    kept = {"event_on", "events", "in_season", "travels", "is_off_season"}
    return profile.model_dump(mode="json", include=kept)


def _event(*, is_main: bool) -> Change:
    def change(profile: Profile, rest: str, today: date) -> Changed:
        found = dates_in(rest, today=today)
        if len(found.dates) != 1:
            return words.Unclear.ONE_DATE
        (on,) = found.dates
        if on <= today:
            return words.Unclear.PAST
        if on - today > EVENT_MOST:
            return words.Unclear.FAR
        event = SeasonEvent(on=on, name=_name(found.rest), is_main=is_main)
        return _without(profile, on).model_copy(
            update={"events": (*_without(profile, on).events, event)}
        )

    return change


def _name(rest: str) -> str:
    """Return what an event is called, without the words that lead to its date."""
    bare = re.sub(r"^(?:event|on|the|:|,|-|\s)+|(?:\s|on|,|:|-)+$", "", rest.strip())
    return " ".join(bare.split())[:NAME_MOST]


def _without(profile: Profile, on: date) -> Profile:
    events = tuple(event for event in profile.events if event.on != on)
    event_on = None if profile.event_on == on else profile.event_on
    return profile.model_copy(update={"events": events, "event_on": event_on})


def _remove(profile: Profile, rest: str, today: date) -> Changed:
    found = dates_in(rest, today=today)
    if len(found.dates) != 1:
        return words.Unclear.ONE_DATE
    (on,) = found.dates
    fewer = _without(profile, on).model_copy(
        update={
            "travels": tuple(one for one in profile.travels if on not in one),
            "in_season": tuple(one for one in profile.in_season if on not in one),
        }
    )
    return words.Unclear.NOTHING_THERE if fewer == profile else fewer


def _span(rest: str, today: date) -> Span | words.Unclear:
    found = dates_in(rest, today=today)
    if len(found.dates) != 2:
        return words.Unclear.TWO_DATES
    first, last = found.dates
    if last < first or last - first > SPAN_MOST:
        return words.Unclear.TWO_DATES
    if last < today:
        return words.Unclear.PAST
    return Span(first=first, last=last)


def _travel(profile: Profile, rest: str, today: date) -> Changed:
    span = _span(rest, today)
    if isinstance(span, words.Unclear):
        return span
    travel = Travel(first=span.first, last=span.last)
    return profile.model_copy(update={"travels": (*profile.travels, travel)})


def _competing(profile: Profile, rest: str, today: date) -> Changed:
    span = _span(rest, today)
    if isinstance(span, words.Unclear):
        return span
    return profile.model_copy(update={"in_season": (*profile.in_season, span)})


def _off_season(profile: Profile, rest: str, _today: date) -> Changed:
    said = rest.casefold().strip(" .")
    if said not in words.YES | words.NO:
        return words.Unclear.YES_OR_NO
    return profile.model_copy(update={"is_off_season": said in words.YES})


CHANGES: Mapping[str, Change] = {
    "main": _event(is_main=True),
    "other": _event(is_main=False),
    "travel": _travel,
    "travelling": _travel,
    "competing": _competing,
    "off-season": _off_season,
    "remove": _remove,
    "principal": _event(is_main=True),
    "otra": _event(is_main=False),
    "otro": _event(is_main=False),
    "viaje": _travel,
    "compitiendo": _competing,
    "fuera-de-temporada": _off_season,
    "quitar": _remove,
}


command, picked = entries(
    show_or_change, act="coach.season", example=words.EXAMPLE
)  # ``/season NAME``, with what to change behind it.
