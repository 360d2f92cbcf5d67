"""What was done: bests, and the last times of a movement with what hurt beneath."""

from collections.abc import Sequence

from bot.wording import dates, doses, labels
from bot.wording.coach_pain import place
from bot.wording.movement_names import name_of
from bot.wording.tongue import Marked, Tongue
from scheduler.catalogue.values import Movement
from scheduler.pain.events import MorningAnswered, PainReported
from scheduler.training.exposure_reading import best_value
from scheduler.training.values import Exposure

RESISTANCES_SHOWN = 2  # [bests] ch: the two heaviest of a movement; the rest is in its own view


def nothing_yet(tongue: Tongue) -> str:
    """Nothing is recorded in the year."""
    return tongue.say("Nothing is recorded yet. It begins with your first answer to a session.")


def not_trained(tongue: Tongue) -> str:
    """That movement has no record in the year."""
    return tongue.say(
        "I have no record of that in the last year. Tap one, or send a part of its name, like "
        "<code>/history hang</code>."
    )


def which(tongue: Tongue) -> str:
    """More than one movement has that name."""
    return tongue.say("Which one?")


def bests(tongue: Tongue, lines: Sequence[str], *, more: int) -> str:
    """List the best of the year, the latest trained first."""
    head = tongue.say("<b>Your bests of the last year</b>, the latest trained first")
    rest = tongue.count(more, "And {n} more by name.", "And {n} more by name.") if more else ""
    how = tongue.say("Tap one for its last times.")
    return "\n".join(part for part in (head, *lines, rest, how) if part)


def best(tongue: Tongue, movement: Movement, done: Sequence[Exposure]) -> str:
    """Write a movement's best at its heaviest resistances."""
    heaviest = sorted(done, key=lambda one: one.dose.load_kg or 0.0, reverse=True)
    parts = [_best(tongue, movement, one) for one in heaviest[:RESISTANCES_SHOWN]]
    return tongue.say(
        "· {name}: {bests}", name=name_of(tongue, movement), bests=Marked("; ".join(parts))
    )


def _best(tongue: Tongue, movement: Movement, one: Exposure) -> str:
    value = doses.amount(tongue, one.dose.measure, best_value([one]))
    load = doses.load(tongue, one.dose, movement)
    on = dates.day(tongue, one.on)
    if not load:
        return tongue.say("<b>{value}</b> ({day})", value=value, day=on)
    return tongue.say("<b>{value}</b>, {load} ({day})", value=value, load=load, day=on)


def of_movement(tongue: Tongue, movement: Movement, lines: Sequence[str]) -> str:
    """Head the last times of one movement."""
    head = tongue.count(
        len(lines), "<b>{name}</b>, the last time", "<b>{name}</b>, the last {n} times",
        name=name_of(tongue, movement),
    )  # fmt: skip
    return "\n".join([head, *lines])


def exposure(
    tongue: Tongue,
    movement: Movement,
    one: Exposure,
    *,
    pains: Sequence[PainReported | MorningAnswered],
) -> str:
    """Write one time: what was done, at what, what was left, and what hurt."""
    parts = [doses.results(tongue, one.dose, one.sets)]
    if load := doses.load(tongue, one.dose, movement):
        parts.append(load)
    if one.reserve is not None:
        parts.append(doses.reserve_given(tongue, one.dose.measure, one.reserve))
    line = tongue.say("{day}: <b>{what}</b>", day=dates.day(tongue, one.on), what=", ".join(parts))
    return "\n".join([line, *(_pain(tongue, pain) for pain in pains)])


def _pain(tongue: Tongue, pain: PainReported | MorningAnswered) -> str:
    where = place(tongue, pain.site, pain.side)
    score = pain.score or 0
    if isinstance(pain, PainReported):
        return tongue.say("    hurt: {place} {score} of 10", place=where, score=score)
    return tongue.say("    next morning: {place} {score} of 10", place=where, score=score)


def name_label(tongue: Tongue, movement: Movement) -> str:
    """Label the button of one movement."""
    return labels.label(tongue, "{name}", name=name_of(tongue, movement))


def how_label(tongue: Tongue) -> str:
    """Label the button to the how-to."""
    return labels.label(tongue, "How to do it")


def picture_label(tongue: Tongue) -> str:
    """Label the button that draws the movement."""
    return labels.label(tongue, "As a picture")
