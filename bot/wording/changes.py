"""What changes next time, and a best when it happens: numbers before adjectives."""

from collections.abc import Sequence

from bot.wording import doses
from bot.wording.movement_names import name_of
from bot.wording.reasons import say_reason
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.catalogue.values import Measure, Movement
from scheduler.reasons import Reason
from scheduler.training.values import Dose

UP, KEPT, DOWN = "up", "kept", "down"
STEPS = frozenset({"dose.step_in_time", "dose.step_in_reps", "dose.step_in_metres"})
"""Reasons whose figures are those of the change itself."""


STAYS = "dose.same_"
"""How the codes begin that say why a dose stays."""
FEWER = frozenset(
    {
        "dose.ease_cut",
        "dose.sets_shared",
        "dose.first_weeks_two_sets",
        "dose.push_cut_with_pull",
    }
)
"""Reasons for fewer sets, which explain no other change."""
MOST_YET: Template = "{name}: most yet, <b>{now}</b>, was {before}."
LONGEST_YET: Template = "{name}: longest yet, <b>{now}</b>, was {before}."
MOST_IN_A_YEAR: Template = "{name}: most in a year, <b>{now}</b>, was {before}."
LONGEST_IN_A_YEAR: Template = "{name}: longest in a year, <b>{now}</b>, was {before}."


def direction_of(before: Dose, after: Dose) -> str:
    """Tell whether a dose went up, stayed or went down: load first, then target, then sets.

    Another band with no more to do is a harder one: a lighter band comes with as much or more.
    """
    if before.rung.band != after.rung.band:
        return UP if after.target <= before.target else DOWN
    for old, new in (
        (before.rung.load_kg or 0.0, after.rung.load_kg or 0.0),
        (float(before.target), float(after.target)),
        (float(before.sets), float(after.sets)),
    ):
        if new != old:
            return UP if new > old else DOWN
    return KEPT


def change_line(
    tongue: Tongue, movement: Movement, before: Dose, after: Dose, reasons: Sequence[Reason]
) -> str:
    """Write one change with its deciding reason."""
    why = _why(tongue, before, after, reasons) if reasons else ""
    return tongue.say(
        "{name}: {before} → <b>{after}</b>. {why}",
        name=name_of(tongue, movement),
        before=Marked(_short(tongue, movement, before)),
        after=Marked(_short(tongue, movement, after)),
        why=Marked(why),
    ).rstrip()


def _why(tongue: Tongue, before: Dose, after: Dose, reasons: Sequence[Reason]) -> str:
    """Say why, without the figures that the line shows already."""
    reason = deciding(before, after, reasons)
    if reason is None:
        return sets_differ(tongue, before, after)
    if reason.code in STEPS:
        return tongue.say("Every set done, with enough left.")
    if reason.code == "dose.plainly_light":
        return tongue.say("Plainly light for you.")
    return say_reason(tongue, reason)


def deciding(before: Dose, after: Dose, reasons: Sequence[Reason]) -> Reason | None:
    """Pick the reason that explains the change: sets are decided last, all else first.

    None where no reason agrees with it: then the week's plan has other sets, and that is all.
    """
    agreeing = fitting(before, after, reasons)
    if not agreeing:
        return None
    return agreeing[-1] if _is_of_sets_only(before, after) else agreeing[0]


def fitting(before: Dose, after: Dose, reasons: Sequence[Reason]) -> tuple[Reason, ...]:
    """Keep the reasons that agree with a change; all of them where nothing changed."""
    is_same_work = (before.target, before.rung) == (after.target, after.rung)
    if is_same_work and before.sets == after.sets:
        return tuple(reasons)
    return tuple(
        one
        for one in reasons
        if not one.code.startswith(STAYS) and (one.code not in FEWER or after.sets < before.sets)
    )


def sets_differ(tongue: Tongue, before: Dose, after: Dose) -> str:
    """Say which way the sets went, where the plan of the day alone decides."""
    if after.sets > before.sets:
        return tongue.say("That day's plan has more sets.")
    return tongue.say("That day's plan has fewer sets.") if after.sets < before.sets else ""


def _is_of_sets_only(before: Dose, after: Dose) -> bool:
    return before.sets != after.sets and (before.target, before.rung) == (
        after.target,
        after.rung,
    )


def best_line(
    tongue: Tongue, movement: Movement, *, now: float, before: float, is_of_year: bool = False
) -> str:
    """Name a best: the longest or the most so far at this load, or in a year where there are more.

    Nothing is claimed of what was not looked at.
    """
    is_reps = movement.measure is Measure.REPS
    if is_of_year:
        template = MOST_IN_A_YEAR if is_reps else LONGEST_IN_A_YEAR
    else:
        template = MOST_YET if is_reps else LONGEST_YET
    return tongue.say(
        template,
        name=name_of(tongue, movement),
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
