"""An athlete's guided tests for a file of their own: each arm's attempts, as they stand."""

from bot.exports.units import UNITS
from bot.exports.values import ExportedAttempt
from bot.turn import Turn
from storage.queries import own_data
from storage.records.first_tests import AttemptRecord
from storage.records.people import Person


def tests_of(turn: Turn, person: Person) -> tuple[ExportedAttempt, ...]:
    """Gather every attempt, also one that ended in pain or was left out."""
    return tuple(_attempt(turn, one) for one in own_data.attempts(turn.tx, person.id))


def _attempt(turn: Turn, one: AttemptRecord) -> ExportedAttempt:
    movement = turn.house.library.movements.get(one.movement_key)
    return ExportedAttempt.model_validate(
        {
            "on": one.on,
            "at": one.at,
            "test": one.key,
            "movement": one.movement_key,
            # A movement may have left the library since it was tested.
            "name": movement.name if movement else one.movement_key,
            "side": one.side.value,
            "unit": UNITS[one.measure],
            "ended": one.ended.value,
            "left_out_because": one.why or None,
            "value": one.value,
            "load_kg": one.rung.load_kg,
            "band": one.rung.band,
            "help_kg": one.rung.assist_kg,
            "reserve_left": one.reserve.left if one.reserve else None,
            "is_reserve_at_least": bool(one.reserve and one.reserve.is_at_least),
            "pain": one.pain,
        }
    )
