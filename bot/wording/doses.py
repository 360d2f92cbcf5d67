"""Doses and results in words: sets, seconds, loads, reserve."""

from collections.abc import Mapping

from bot.wording.tongue import Template, Tongue
from scheduler.catalogue.values import HAND_WEIGHTS, Loading, Measure, Movement, Sides
from scheduler.pain.values import Side
from scheduler.training.values import Dose, ReserveAnswer, Rung, SetDone

BANDS: Mapping[str, Template] = {"light": "light", "medium": "medium", "heavy": "heavy"}
"""Bands that everybody has words for; one with a name of its own keeps it."""
MINUTE_S = 60  # [s] definition


def amount(tongue: Tongue, measure: Measure, value: float) -> str:
    """Write one value with its unit: ``45 s``, ``8 reps``, ``20 m``."""
    match measure:
        case Measure.REPS:
            return tongue.count(round(value), "{n} rep", "{n} reps")
        case Measure.CARRY_M:
            return tongue.say("{value} m", value=tongue.number(value))
        case _:
            return tongue.say("{value} s", value=tongue.number(value))


def band_word(tongue: Tongue, key: str) -> str:
    """Name a band."""
    return tongue.say(BANDS[key]) if key in BANDS else key


def load(tongue: Tongue, dose: Dose, movement: Movement) -> str:
    """Write the resistance of a dose, or nothing where the body is all there is."""
    return load_of_rung(tongue, dose.rung, movement)


def load_of_rung(tongue: Tongue, rung: Rung, movement: Movement) -> str:
    """Write a resistance, or nothing where the body is all there is."""
    if rung.assist_kg is not None:
        return tongue.say(
            "{band} band, about {load} of help",
            band=band_word(tongue, rung.band or ""),
            load=tongue.load(rung.assist_kg),
        )
    if rung.band is not None:
        return tongue.say("{band} band", band=band_word(tongue, rung.band))
    if rung.load_kg is None:
        return ""
    if movement.loading is Loading.BODYWEIGHT_PLUS:
        return tongue.say("plus {load} on the body", load=tongue.load(rung.load_kg))
    if any(choice & HAND_WEIGHTS for choice in movement.equipment):
        return tongue.say("{load} a hand", load=tongue.load(rung.load_kg))
    return tongue.load(rung.load_kg)


def dose_line(tongue: Tongue, dose: Dose, movement: Movement, *, arms: tuple[Side, ...]) -> str:
    """Write a dose in one line: ``3 × 30 s, 8 kg a hand, each arm``."""
    parts = [
        tongue.say(
            "{sets} × {amount}",
            sets=dose.sets,
            amount=amount(tongue, dose.measure, dose.target),
        ),
        load(tongue, dose, movement),
    ]
    if movement.sides is Sides.EACH:
        parts.append(_arms(tongue, arms))
    return ", ".join(part for part in parts if part)


def _arms(tongue: Tongue, arms: tuple[Side, ...]) -> str:
    if set(arms) == {Side.LEFT}:
        return tongue.say("left arm only")
    if set(arms) == {Side.RIGHT}:
        return tongue.say("right arm only")
    return tongue.say("each arm")


def rest(tongue: Tongue, rest_s: int) -> str:
    """Write a rest: seconds below two minutes, minutes above."""
    if rest_s < 2 * MINUTE_S:
        return tongue.say("rest {s} s", s=rest_s)
    return tongue.say("rest {min} min", min=tongue.number(rest_s / MINUTE_S))


def reserve_wish(tongue: Tongue, dose: Dose) -> str:
    """Say when to stop a set, in terms of what is left; a try ends with the position."""
    if dose.is_try:
        return tongue.say("a try of your checklist: end the set when the position goes")
    left = tongue.number(dose.reserve_asked)
    if dose.measure is Measure.REPS:
        return tongue.say("stop with {left} good reps left", left=left)
    return tongue.say("stop with about {left} s left", left=left)


def results(tongue: Tongue, dose: Dose, sets: tuple[SetDone, ...]) -> str:
    """Write what was done: ``45, 40, 38 s``; by arm where the arms differ; load where it did."""
    by_side = {
        side: [done for done in sets if done.side is side]
        for side in (Side.BOTH, Side.LEFT, Side.RIGHT)
    }
    parts = []
    for side, done in by_side.items():
        if done:
            values = ", ".join(tongue.number(one.value) for one in done)
            parts.append(_with_side(tongue, side, values))
    line = " · ".join(parts) + " " + unit(tongue, dose.measure)
    loads = {one.rung.load_kg for one in sets if one.rung and one.rung.load_kg is not None}
    if loads and loads != {dose.load_kg}:
        line += tongue.say(" at {load}", load=tongue.load(*sorted(loads)))
    return line


def _with_side(tongue: Tongue, side: Side, values: str) -> str:
    if side is Side.LEFT:
        return tongue.say("left {values}", values=values)
    if side is Side.RIGHT:
        return tongue.say("right {values}", values=values)
    return values


def unit(tongue: Tongue, measure: Measure) -> str:
    """Write the unit alone, behind several numbers."""
    match measure:
        case Measure.REPS:
            return tongue.say("reps")
        case Measure.CARRY_M:
            return tongue.say("m")
        case _:
            return tongue.say("s")


def reserve_given(tongue: Tongue, measure: Measure, answer: ReserveAnswer) -> str:
    """Write an answer about the reserve: ``10 s left``, ``4 or more reps left``."""
    left = tongue.number(answer.left)
    if measure is Measure.REPS:
        if answer.is_at_least:
            return tongue.say("{left} or more reps left", left=left)
        return tongue.count(round(answer.left), "{n} rep left", "{n} reps left")
    if answer.is_at_least:
        return tongue.say("{left} s or more left", left=left)
    return tongue.say("{left} s left", left=left)
