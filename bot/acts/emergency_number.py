"""The emergency numbers that safety texts name: proposed from a table, confirmed by the coach."""

import re
from collections.abc import Mapping
from typing import Any

from bot.acts.find_athlete import athletes_for
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_safety as words
from scheduler.pain.emergency_numbers import (
    NumberSource,
    country_of_zone,
    default_numbers,
    number_that_holds,
)
from storage.queries import care, emergency, people
from storage.records.people import Person

NUMBER = re.compile(r"\+?\d{2,6}")  # [digits] cp: emergency numbers are short
WITH_COUNTRY = re.compile(r"(\+?\d{2,6})\s+([A-Za-z]{2})")
CONFIRM = "coach.emergency_confirm"


def number_for(turn: Turn, athlete: Person, coach: Person) -> str | None:
    """Return the number for an athlete: confirmed by the coach for the country of their zone.

    A number that the coach set for everybody counts where the table knows it in that country.
    """
    country = country_of_zone(athlete.zone)
    confirmed = emergency.number_of(turn.tx, coach_id=coach.id, country=country or "")
    return confirmed or number_that_holds(country, confirmed=coach.emergency_number)


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/emergency 112``, ``/emergency 911 US``; without a number, what it is now."""
    said = text.strip()
    if not said:
        return _show(turn, coach)
    if match := WITH_COUNTRY.fullmatch(said):
        return _confirm(turn, coach, match[1], match[2].upper())
    if NUMBER.fullmatch(said) is None:
        turn.say(coach, words.number_unclear(turn.tongue(coach)))
        return Outcome.NOT_UNDERSTOOD
    people.change_person(turn.tx, coach.id, emergency_number=said)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="coach.emergency_number",
        athlete_id=None,
        actor_id=coach.id,
        before={"number": coach.emergency_number},
        after={"number": said},
    )
    now = people.person(turn.tx, coach.id)
    turn.say(coach, words.number_set(turn.tongue(coach), said, _without(turn, now)))
    return Outcome.COMMAND


def confirmed(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The button under a proposed number."""
    return _confirm(turn, coach, str(arguments["number"]), str(arguments["country"]))


def _confirm(turn: Turn, coach: Person, number: str, country: str) -> Outcome:
    before = emergency.number_of(turn.tx, coach_id=coach.id, country=country)
    emergency.confirm(turn.tx, coach_id=coach.id, country=country, number=number, at=turn.now)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="coach.emergency_number",
        athlete_id=None,
        actor_id=coach.id,
        before={"number": before, "country": country},
        after={"number": number, "country": country},
    )
    turn.say(coach, words.number_confirmed(turn.tongue(coach), number, country))
    return Outcome.COMMAND


def _show(turn: Turn, coach: Person) -> Outcome:
    """Show what each country's athletes are told, and propose what is not confirmed yet."""
    tongue = turn.tongue(coach)
    turn.say(coach, words.number_now(tongue, coach.emergency_number))
    for country, names in sorted(_countries(turn, coach).items()):
        now = emergency.number_of(turn.tx, coach_id=coach.id, country=country)
        now = now or number_that_holds(country, confirmed=coach.emergency_number)
        row = default_numbers().row(country)
        taps: TapRows = ()
        if row is not None and row.numbers[0] != now:
            first = row.numbers[0]
            about = {"number": first, "country": country}
            taps = [[Tap(words.confirm_label(tongue, first, country), CONFIRM, about)]]
        text = words.of_country(
            tongue,
            country,
            names,
            now=now,
            proposed=row.numbers if row else (),
            is_from_memory=row is not None and row.source is NumberSource.MEMORY,
        )
        turn.say(coach, text, taps=taps)
    return Outcome.COMMAND


def _countries(turn: Turn, coach: Person) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for person, _ in athletes_for(turn, coach):
        country = country_of_zone(person.zone)
        if country is not None:
            found.setdefault(country, []).append(person.name)
    return found


def _without(turn: Turn, coach: Person) -> list[str]:
    """Return the athletes whose texts still say "your local emergency number"."""
    return [
        person.name
        for person, _ in athletes_for(turn, coach)
        if number_for(turn, person, coach) is None
    ]


TAPS = {CONFIRM: confirmed}
