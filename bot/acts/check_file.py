"""A changed file checked before it is in force: what it means, what it changes, whom it meets."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from typing import Any

from bot.acts.checklist import local_today
from bot.acts.in_force import movement_files, movements_in
from bot.acts.pain_picture import picture_of
from bot.turn import Turn
from bot.wording import files_in_force as words
from bot.wording.movement_names import name_of
from scheduler.catalogue.comparing import LibraryDifference, compare, lasting_changes
from scheduler.catalogue.library import library_of, packaged_movements, read_beside
from scheduler.catalogue.values import Movement
from scheduler.located_yaml import WrongFileError
from scheduler.pain.values import LeftOut, Side
from scheduler.training.rulebook import Rulebook, default_rulebook, read_rulebook
from scheduler.training.rulebook_difference import differing, movements_named
from storage.queries import people, training
from storage.records.media import FileKind
from storage.records.people import Athlete, Person
from storage.records.training import SessionState

LOOKED_BACK = timedelta(days=7)  # [days] ch: what was trained in a week comes again in the next
ARMS = (Side.LEFT, Side.RIGHT)
Meaning = Mapping[str, Any]
"""What a file says, as plain values: movements, or a rulebook."""


@dataclass(frozen=True)
class Refused:
    """Why a file is not taken, a line each; nothing was changed."""

    problems: tuple[str, ...]


@dataclass(frozen=True)
class Checked:
    """What a file changes in the coach's words; ``lines`` empty: nothing."""

    lines: tuple[str, ...]
    concerned: tuple[tuple[str, str], ...] = field(default=())


def read(
    turn: Turn, coach: Person, kind: FileKind, *, name: str, content: str | None
) -> Meaning | Refused:
    """Read a file once: what it means is kept, and never parsed again.

    ``content`` None is the file as it comes with the package.
    """
    try:
        if kind is FileKind.STANDARDS:
            return _read_standards(name, content)
        others = _others(turn, coach, name)
        return _read_movements(name, content, others)
    except WrongFileError as wrong:
        return Refused(problems=wrong.problems)


def _read_movements(
    name: str, content: str | None, others: Mapping[str, tuple[Movement, ...]]
) -> Meaning:
    movements = (
        packaged_movements().get(name, ())
        if content is None
        else read_beside(content, file_name=name, others=others)
    )
    return {"movements": [one.model_dump(mode="json") for one in movements]}


def _read_standards(name: str, content: str | None) -> Meaning:
    rulebook = default_rulebook() if content is None else read_rulebook(content, file_name=name)
    return rulebook.model_dump(mode="json")


def _others(turn: Turn, coach: Person, name: str) -> dict[str, tuple[Movement, ...]]:
    files = movement_files(turn, coach.id)
    return {one: each for one, each in files.items() if one != name}


def check(
    turn: Turn, coach: Person, kind: FileKind, *, name: str, meaning: Meaning
) -> Checked | Refused:
    """Check what a file means against everything else that is in force, and against who trains."""
    if kind is FileKind.STANDARDS:
        return _check_standards(turn, coach, Rulebook.model_validate(meaning))
    return _check_movements(turn, coach, name=name, movements=movements_in(meaning))


def _check_movements(
    turn: Turn, coach: Person, *, name: str, movements: Sequence[Movement]
) -> Checked | Refused:
    """Check movements together with the other files', the standards and the athletes."""
    others = _others(turn, coach, name)
    after = {one.key: one for each in (*others.values(), movements) for one in each}
    difference = compare(turn.house.library.movements, after)
    problems = [
        *_lasting(turn, coach, difference),
        *_missed_by_standards(turn, coach, after),
        *_had_today(turn, coach, difference),
        *_given_back(turn, coach, difference),
    ]
    if problems:
        return Refused(problems=tuple(problems))
    lines = words.movements_differ(turn.tongue(coach), difference, _successors(difference, after))
    return Checked(lines=lines, concerned=tuple(_concerned(turn, coach, difference.keys)))


def _check_standards(turn: Turn, coach: Person, rulebook: Rulebook) -> Checked | Refused:
    """Check that every movement is there that a rulebook names."""
    tongue, library = turn.tongue(coach), turn.house.library
    unknown = [
        words.unknown_movement(tongue, place=place, key=key)
        for place, keys in movements_named(rulebook).items()
        for key in keys
        if key not in library.movements
    ]
    unknown += [
        words.standard_without_movement(tongue, place=place, keys=keys)
        for place, keys in movements_named(rulebook).items()
        if not any(library.is_in_force(key) for key in keys)
    ]
    if unknown:
        return Refused(problems=tuple(unknown))
    changes = differing(turn.house.rulebook, rulebook)
    return Checked(lines=words.numbers_differ(tongue, changes))


def _lasting(turn: Turn, coach: Person, difference: LibraryDifference) -> Iterator[str]:
    """Refuse another movement under an old key: what was recorded would mean something else."""
    for one, name in lasting_changes(difference):
        yield words.lasting(
            turn.tongue(coach),
            key=one.before.key,
            field=name,
            found=str(getattr(one.after, name)),
            expected=str(getattr(one.before, name)),
        )


def _missed_by_standards(turn: Turn, coach: Person, after: Mapping[str, Movement]) -> Iterator[str]:
    for place, keys in movements_named(turn.house.rulebook).items():
        if not any(key in after for key in keys):
            yield words.standard_without_movement(turn.tongue(coach), place=place, keys=keys)


def _had_today(turn: Turn, coach: Person, difference: LibraryDifference) -> Iterator[str]:
    """Refuse to remove what somebody has in a session that is out."""
    removed = {one.key: one for one in difference.removed}
    if not removed:
        return
    for person, _ in _athletes(turn, coach):
        for session in training.open_sessions(turn.tx, person.id):
            for item in session.items:
                if item.movement_key in removed and not item.is_left_out:
                    movement = removed[item.movement_key]
                    yield words.had_today(
                        turn.tongue(coach),
                        name=person.name,
                        movement=name_of(turn.tongue(coach), movement),
                    )


def _given_back(turn: Turn, coach: Person, difference: LibraryDifference) -> Iterator[str]:
    """Refuse what would bring back a movement that is left out for somebody's pain."""
    if not difference.changed:
        return
    for person, athlete in _athletes(turn, coach):
        picture = picture_of(turn, athlete)
        for one in difference.changed:
            if _is_freed(picture.rested, one.before, one.after) or _is_freed(
                picture.eased, one.before, one.after
            ):
                yield words.given_back(
                    turn.tongue(coach),
                    name=person.name,
                    movement=name_of(turn.tongue(coach), one.before),
                )


def _is_freed(left_out: LeftOut, before: Movement, after: Movement) -> bool:
    return any(left_out.hits(before, arm) and not left_out.hits(after, arm) for arm in ARMS)


def _successors(
    difference: LibraryDifference, after: Mapping[str, Movement]
) -> dict[str, Movement]:
    """Return what stands in the place of each movement that is removed."""
    library = library_of({"": tuple(after.values())}, known=difference.removed)
    found = {one.key: library.successor_of(one.key) for one in difference.removed}
    return {key: movement for key, movement in found.items() if movement is not None}


def _concerned(turn: Turn, coach: Person, keys: frozenset[str]) -> Iterator[tuple[str, str]]:
    """Yield who has a changed movement planned, or had it in the last week."""
    library, tongue = turn.house.library.movements, turn.tongue(coach)
    for person, _ in _athletes(turn, coach) if keys else ():
        today = local_today(turn, person)
        sessions = training.sessions_between(
            turn.tx, person.id, first=today - LOOKED_BACK, last=today + LOOKED_BACK
        )
        found = {
            item.movement_key
            for session in sessions
            if session.state is not SessionState.CALLED_OFF
            for item in session.items
            if item.movement_key in keys
        }
        if found:
            yield person.name, ", ".join(sorted(name_of(tongue, library[key]) for key in found))


def _athletes(turn: Turn, coach: Person) -> Sequence[tuple[Person, Athlete]]:
    return people.athletes_of(turn.tx, coach.id)
