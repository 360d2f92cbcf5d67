"""``/history``: bests in words, how a movement went lately, and what hurt beneath it."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, time, timedelta
from typing import Any

from bot.acts import history_picture, pain_picture
from bot.acts.bests import COMPARED
from bot.acts.checklist import local_today
from bot.acts.find_movement import movements_called
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import history as words
from scheduler.calendar.wall_time import due_instant, local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.catalogue.values import Movement
from scheduler.pain.events import MorningAnswered, PainReported
from scheduler.pain.left_out import left_out_for
from scheduler.pain.values import Side
from scheduler.training.baseline_values import TestedSet
from scheduler.training.exposure_reading import best_value
from scheduler.training.values import Exposure, Rung
from storage.queries import first_tests, history, people
from storage.records.people import Person

PICTURE_FROM = 3  # [sessions] ch: fewer points make no course
EXPOSURES_SHOWN = 5  # [sessions] ch: one glance
MOVEMENTS_SHOWN = 10  # [lines] ch: one screen; any other by its name
PAIN_AFTER = timedelta(days=1)  # [days] ch: the day itself and the next morning
A_DAY = timedelta(days=1)


def command(turn: Turn, person: Person, rest: str, _event: Wrote) -> Outcome:
    """``/history`` for the bests, ``/history hang`` for one movement."""
    today = local_today(turn, person)
    done = history.all_exposures(turn.tx, person.id, since=today - COMPARED, before=today + A_DAY)
    tested = first_tests.tested_sets(turn.tx, person.id, since=today - COMPARED)
    trained = _latest_first(turn, done, tested)
    if not rest:
        _show_bests(turn, person, trained, done, tested)
        return Outcome.COMMAND
    found = movements_called(rest, movements=trained, tongue=turn.tongue(person))
    if len(found) == 1:
        show_movement(turn, person, found[0])
        return Outcome.COMMAND
    tongue = turn.tongue(person)
    text = words.which(tongue) if found else words.not_trained(tongue)
    turn.say(person, text, taps=_taps(turn, person, found or trained[:MOVEMENTS_SHOWN]))
    return Outcome.COMMAND if found else Outcome.NOT_UNDERSTOOD


def chosen(turn: Turn, person: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """A movement was chosen."""
    movement = turn.house.library.movements.get(str(arguments["movement"]))
    if movement is None:
        turn.say(person, words.not_trained(turn.tongue(person)))
        return Outcome.STALE_TAP
    show_movement(turn, person, movement)
    return Outcome.ANSWERED


def show_movement(turn: Turn, person: Person, movement: Movement) -> None:
    """Show one movement's last times and latest test, what hurt, and a picture from some on."""
    today = local_today(turn, person)
    done = history.latest_exposures(
        turn.tx, person.id, [movement.key], most=EXPOSURES_SHOWN, before=today + A_DAY
    )
    tongue = turn.tongue(person)
    test = latest_tests(
        one
        for one in first_tests.tested_sets(turn.tx, person.id, since=today - COMPARED)
        if one.movement_key == movement.key
    ).get(movement.key, ())
    if not done and not test:
        turn.say(person, words.not_trained(tongue))
        return
    pains = _by_exposure(done, _pains(turn, person, movement, since=done[0].on)) if done else {}
    lines = [
        words.exposure(tongue, movement, one, pains=pains.get(place, ()))
        for place, one in enumerate(done)
    ]
    taps = [[Tap(words.how_label(tongue), "how_to.show", {"movement": movement.key})]]
    tested = words.test_of_movement(tongue, movement, test) if test else ""
    turn.say(person, words.of_movement(tongue, movement, lines, test=tested), taps=taps)
    athlete = people.athlete(turn.tx, person.id)
    if athlete is not None and len(done) >= PICTURE_FROM:
        history_picture.send(turn, person, athlete, movement.key)


def _show_bests(
    turn: Turn,
    person: Person,
    trained: Sequence[Movement],
    done: Iterable[Exposure],
    tested: Iterable[TestedSet],
) -> None:
    tongue = turn.tongue(person)
    if not trained:
        turn.say(person, words.nothing_yet(tongue))
        return
    best, tests = _bests(done), latest_tests(tested)
    shown = trained[:MOVEMENTS_SHOWN]
    lines = [
        words.best(tongue, movement, own)
        for movement in shown
        if (own := [one for key, one in best.items() if key[0] == movement.key])
    ]
    test_lines = [
        words.test(tongue, movement, tests[movement.key])
        for movement in shown
        if movement.key in tests
    ]
    more = len(trained) - len(shown)
    text = words.bests(tongue, lines, tests=test_lines, more=more)
    turn.say(person, text, taps=_taps(turn, person, shown))


def latest_tests(tested: Iterable[TestedSet]) -> dict[str, tuple[TestedSet, ...]]:
    """Return the sets of each movement's latest day of tests, one an arm: the last one done."""
    found: dict[str, dict[Side, TestedSet]] = {}
    for one in tested:
        arms = found.setdefault(one.movement_key, {})
        if any(other.on < one.on for other in arms.values()):
            arms.clear()
        arms[one.side] = one
    return {key: tuple(arms.values()) for key, arms in found.items()}


def _latest_first(
    turn: Turn, done: Iterable[Exposure], tested: Iterable[TestedSet] = ()
) -> list[Movement]:
    """Return what was trained or tested in the year, the latest first."""
    latest: dict[str, date] = {}
    for one in done:
        latest[one.dose.movement_key] = one.on
    for test in tested:
        latest[test.movement_key] = max(test.on, latest.get(test.movement_key, test.on))
    library = turn.house.library.movements
    known = [key for key in latest if key in library]
    return [library[key] for key in sorted(known, key=lambda key: latest[key], reverse=True)]


def _bests(done: Iterable[Exposure]) -> dict[tuple[str, Rung], Exposure]:
    """Return the best time of each movement at each resistance; of equals the first."""
    found: dict[tuple[str, Rung], Exposure] = {}
    for one in done:
        key = (one.dose.movement_key, one.dose.rung)
        if key not in found or best_value([one]) > best_value([found[key]]):
            found[key] = one
    return found


def _pains(
    turn: Turn, person: Person, movement: Movement, *, since: date
) -> list[tuple[date, PainReported | MorningAnswered]]:
    """Return what was reported, since a day, of places that a movement loads."""
    zone = zone_named(person.zone)
    midnight = due_instant(local_date=since, wall_time=time(0), zone=zone)
    return [
        (local_date_of(event.at_utc, zone), event)
        for event in pain_picture.events_of(turn, person.id, since=midnight)
        if isinstance(event, PainReported | MorningAnswered)
        and event.score
        and any(left_out_for(event.site, arm).hits(movement, arm) for arm in _arms(event.side))
    ]


def _arms(side: Side) -> tuple[Side, ...]:
    return (Side.LEFT, Side.RIGHT) if side is Side.BOTH else (side,)


def _by_exposure(
    done: Sequence[Exposure], pains: Iterable[tuple[date, PainReported | MorningAnswered]]
) -> dict[int, list[PainReported | MorningAnswered]]:
    """Put each report under the last time before it, if that was on the day or the day before."""
    found: dict[int, list[PainReported | MorningAnswered]] = {}
    for on, event in pains:
        before = [place for place, one in enumerate(done) if one.on <= on <= one.on + PAIN_AFTER]
        if before:
            found.setdefault(before[-1], []).append(event)
    return found


def _taps(turn: Turn, person: Person, movements: Iterable[Movement]) -> list[list[Tap]]:
    tongue = turn.tongue(person)
    return [
        [Tap(words.name_label(tongue, one), "history.of", {"movement": one.key})]
        for one in movements
    ]


TAPS = {"history.of": chosen}
