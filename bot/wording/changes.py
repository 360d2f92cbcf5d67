"""What changes next time, and a best when it happens: numbers before adjectives."""

from collections.abc import Sequence

from bot.wording import doses
from bot.wording.reasons import say_reason
from bot.wording.tongue import Marked, Tongue
from scheduler.catalogue.values import Measure, Movement
from scheduler.reasons import Reason
from scheduler.training.values import Dose

UP, KEPT, DOWN = "up", "kept", "down"
STEPS = frozenset({"dose.step_in_time", "dose.step_in_reps", "dose.step_in_metres"})
"""Reasons whose figures are those of the change itself."""


def direction_of(before: Dose, after: Dose) -> str:
    """Tell whether a dose went up, stayed or went down: load first, then target, then sets."""
    for old, new in (
        (before.rung.load_kg or 0.0, after.rung.load_kg or 0.0),
        (float(before.target), float(after.target)),
        (float(before.sets), float(after.sets)),
    ):
        if new != old:
            return UP if new > old else DOWN
    if before.rung.band != after.rung.band:
        return UP
    return KEPT


def change_line(
    tongue: Tongue, movement: Movement, before: Dose, after: Dose, reasons: Sequence[Reason]
) -> str:
    """Write one change with its deciding reason."""
    why = _why(tongue, deciding(before, after, reasons)) if reasons else ""
    return tongue.say(
        "{name}: {before} → <b>{after}</b>. {why}",
        name=movement.name,
        before=Marked(_short(tongue, movement, before)),
        after=Marked(_short(tongue, movement, after)),
        why=Marked(why),
    ).rstrip()


def _why(tongue: Tongue, reason: Reason) -> str:
    """Say why, without the figures that the line shows already."""
    if reason.code in STEPS:
        return tongue.say("Every set done, with enough left.")
    return say_reason(tongue, reason)


def deciding(before: Dose, after: Dose, reasons: Sequence[Reason]) -> Reason:
    """Pick the reason that explains the change: sets are decided last, all else first."""
    only_sets = before.sets != after.sets and (before.target, before.rung) == (
        after.target,
        after.rung,
    )
    return reasons[-1] if only_sets else reasons[0]


def best_line(tongue: Tongue, movement: Movement, *, now: float, before: float) -> str:
    """Name a best: the longest or the most so far at this load."""
    template = (
        "{name}: most yet, <b>{now}</b>, was {before}."
        if movement.measure is Measure.REPS
        else "{name}: longest yet, <b>{now}</b>, was {before}."
    )
    return tongue.say(
        template,
        name=movement.name,
        now=doses.amount(tongue, movement.measure, now),
        before=doses.amount(tongue, movement.measure, before),
    )


def _short(tongue: Tongue, movement: Movement, dose: Dose) -> str:
    line = tongue.say(
        "{sets} × {amount}",
        sets=dose.sets,
        amount=doses.amount(tongue, dose.measure, dose.target),
    )
    load = doses.load(tongue, dose, movement)
    return f"{line}, {load}" if load else line
