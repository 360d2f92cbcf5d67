"""``/erase NAME``: an athlete asked in writing to be erased; asked twice, never taken back."""

from collections.abc import Mapping
from typing import Any

from bot.acts import erase_person, find_athlete
from bot.acts.find_athlete import Named, subject_of
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_names
from bot.wording import leaving as words
from storage.queries import people
from storage.records.people import Athlete, AthleteState, Person

PICKED, FIRST, SECOND, KEEP = "erase.picked", "erase.first", "erase.second", "erase.keep"


def command(turn: Turn, asker: Person, text: str, _event: Wrote) -> Outcome:
    """``/erase NAME how and when they asked``, of the athlete's coach or of an owner."""
    found = find_athlete.named(
        turn,
        asker,
        text,
        act=_prefixed(asker, PICKED),
        example=words.ERASE_EXAMPLE,
        has_rest=True,
        known=_known(turn, asker),
    )
    return found if isinstance(found, Outcome) else _ask_first(turn, asker, found)


def picked(turn: Turn, asker: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The athlete was chosen among several of that name."""
    found = _tapped(turn, asker, arguments)
    return found if isinstance(found, Outcome) else _ask_first(turn, asker, found)


def first(turn: Turn, asker: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """The first button: what cannot be taken back is asked once more."""
    found = _tapped(turn, asker, arguments)
    if isinstance(found, Outcome):
        return found
    if _is_held(turn, asker, found):
        return Outcome.ASKED
    tongue, about = turn.tongue(asker), {"athlete": found.person.id}
    turn.answer_tap(asker, event.message_id, words.erase_noted(tongue, name=found.person.name))
    turn.say(
        asker,
        words.erase_sure(tongue, name=found.person.name),
        taps=[
            [Tap(words.keep_label(tongue), _prefixed(asker, KEEP), about)],
            [Tap(words.erase_now_label(tongue), _prefixed(asker, SECOND), about)],
        ],
    )
    return Outcome.ASKED


def second(turn: Turn, asker: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The second button: it is done."""
    found = _tapped(turn, asker, arguments)
    if isinstance(found, Outcome):
        return found
    if _is_held(turn, asker, found):
        return Outcome.ASKED
    erase_person.erase(turn, found.person, found.athlete, asked_by=asker)
    return Outcome.COMMAND


def keep(turn: Turn, asker: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Nothing is erased."""
    turn.answer_tap(asker, event.message_id, words.nothing_erased(turn.tongue(asker)))
    return Outcome.ANSWERED


def _ask_first(turn: Turn, asker: Person, named: Named) -> Outcome:
    tongue = turn.tongue(asker)
    if not named.rest:
        turn.say(asker, words.erase_usage(tongue))
        return Outcome.NOT_UNDERSTOOD
    if _is_held(turn, asker, named):
        return Outcome.ASKED
    about = {"athlete": named.person.id}
    text = words.erase_what(
        tongue, name=named.person.name, copies_kept=turn.house.copies_kept, how=named.rest
    )
    turn.say(
        asker,
        text,
        taps=[
            [Tap(words.erase_label(tongue, named.person.name), _prefixed(asker, FIRST), about)],
            [Tap(words.keep_label(tongue), _prefixed(asker, KEEP), about)],
        ],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def _is_held(turn: Turn, asker: Person, named: Named) -> bool:
    """Say that an open alert comes first."""
    if not erase_person.has_open_alert(turn, named.person):
        return False
    text = words.erase_waits(turn.tongue(asker), name=named.person.name)
    turn.say(asker, text, subject=subject_of(named.person))
    return True


def _tapped(turn: Turn, asker: Person, arguments: Mapping[str, Any]) -> Named | Outcome:
    athlete = people.athlete(turn.tx, int(arguments["athlete"]))
    if athlete is None or not _may(asker, athlete):
        turn.say(asker, coach_names.not_yours(turn.tongue(asker)))
        return Outcome.STALE_TAP
    person = people.person(turn.tx, athlete.person_id)
    return Named(person=person, athlete=athlete, rest=str(arguments.get("rest", "")))


def _may(asker: Person, athlete: Athlete) -> bool:
    """A stand-in sees an athlete for a while; only their own coach or an owner erases."""
    return asker.is_owner or (asker.is_coach and athlete.coach_id == asker.id)


def _known(turn: Turn, asker: Person) -> tuple[tuple[Person, Athlete], ...]:
    if asker.is_owner:
        return people.athletes_in(turn.tx, *AthleteState)
    return people.athletes_of(turn.tx, asker.id)


def _prefixed(asker: Person, act: str) -> str:
    """Name the act for the role in which it was asked: the front desk looks at the role again."""
    return f"{'owner' if asker.is_owner else 'coach'}.{act}"


_ACTS = {PICKED: picked, FIRST: first, SECOND: second, KEEP: keep}
COACH_TAPS = {f"coach.{name}": act for name, act in _ACTS.items()}
OWNER_TAPS = {f"owner.{name}": act for name, act in _ACTS.items()}
