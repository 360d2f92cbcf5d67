"""The house as it stands for one coach: the movements and numbers that are in force there."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any

from bot.turn import House, Turn
from scheduler.catalogue.library import library_of, packaged_movements
from scheduler.catalogue.values import Movement
from scheduler.training.rulebook import Rulebook
from storage.queries import file_versions
from storage.records.media import FileKind, FileVersion


def turn_for(turn: Turn, coach_id: int) -> Turn:
    """Return the turn with the house as it stands for a coach and the coach's athletes."""
    house = house_of(turn, coach_id)
    return turn if house is turn.house else replace(turn, house=house)


def house_of(turn: Turn, coach_id: int) -> House:
    """Return the house for a coach; read anew only where some file of the house was replaced."""
    common = turn.house.common or turn.house
    newest = file_versions.newest_id(turn.tx)
    if newest is None:
        return common
    kept = common.by_coach.get(coach_id)
    if kept is None or kept[0] != newest:
        kept = common.by_coach[coach_id] = (newest, _made(turn, common, coach_id))
    return kept[1]


def movement_files(turn: Turn, coach_id: int) -> dict[str, tuple[Movement, ...]]:
    """Return what each file of movements that is in force for a coach holds."""
    own = file_versions.in_force(turn.tx, coach_id=coach_id, kind=FileKind.MOVEMENTS)
    files = dict(packaged_movements())
    for one in own:
        if one.content is not None:
            files[one.name] = movements_in(one.meaning)
        elif one.name not in packaged_movements():
            files.pop(one.name, None)
    return files


def movements_in(meaning: Mapping[str, Any]) -> tuple[Movement, ...]:
    """Return the movements of a version as they were understood when it was checked."""
    return tuple(Movement.model_validate(one) for one in meaning.get("movements", ()))


def _made(turn: Turn, common: House, coach_id: int) -> House:
    return replace(
        common,
        library=library_of(movement_files(turn, coach_id), known=_ever_known(turn, common)),
        rulebook=_rulebook(turn, common, coach_id),
        common=common,
    )


def _ever_known(turn: Turn, common: House) -> Iterable[Movement]:
    """Return every movement that anybody of the house ever had: records may name it."""
    yield from common.library.movements.values()
    for meaning in file_versions.meanings(turn.tx, FileKind.MOVEMENTS):
        yield from movements_in(meaning)


def _rulebook(turn: Turn, common: House, coach_id: int) -> Rulebook:
    own: tuple[FileVersion, ...] = file_versions.in_force(
        turn.tx, coach_id=coach_id, kind=FileKind.STANDARDS
    )
    if not own or own[0].content is None:
        return common.rulebook
    return Rulebook.model_validate(own[0].meaning)
