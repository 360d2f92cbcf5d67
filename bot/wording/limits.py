"""What an athlete can do, worded by what it is: likely, with its range, and real change as such."""

from dataclasses import dataclass

from bot.wording import doses
from bot.wording.movement_names import name_of
from bot.wording.tongue import Marked, Tongue
from scheduler.catalogue.values import Measure, Movement
from scheduler.training.values import Rung


@dataclass(frozen=True)
class Limit:
    """One movement's last set to the limit: likely value and range, at a resistance.

    In the movement's own unit [s, m or repetitions]; of a one-sided movement the weaker arm.
    """

    movement: Movement
    rung: Rung
    likely: float
    least: float
    most: float


@dataclass(frozen=True)
class Change:
    """A change by more than chance within four weeks, in the movement's own unit."""

    movement: Movement
    rung: Rung
    was: float
    now: float


def limit(tongue: Tongue, facts: Limit) -> str:
    """Write what the last set would come to at the limit."""
    return tongue.say(
        "{name}{load}: about {likely}, likely {least} to {most}",
        name=name_of(tongue, facts.movement),
        load=Marked(_load(tongue, facts.rung)),
        likely=_amount(tongue, facts.movement.measure, facts.likely),
        least=round(facts.least),
        most=round(facts.most),
    )


def change(tongue: Tongue, facts: Change) -> str:
    """Name a change by more than chance, up or down."""
    return tongue.say(
        "{name}{load}: <b>{now}</b> to the limit, was {was}. More than chance.",
        name=name_of(tongue, facts.movement),
        load=Marked(_load(tongue, facts.rung)),
        now=_amount(tongue, facts.movement.measure, facts.now),
        was=_amount(tongue, facts.movement.measure, facts.was),
    )


def _amount(tongue: Tongue, measure: Measure, value: float) -> str:
    return doses.amount(tongue, measure, round(value))


def _load(tongue: Tongue, rung: Rung) -> str:
    if rung.load_kg:
        return tongue.say(" at {load}", load=tongue.load(rung.load_kg))
    return (
        tongue.say(" with the {band} band", band=doses.band_word(tongue, rung.band))
        if rung.band
        else ""
    )
