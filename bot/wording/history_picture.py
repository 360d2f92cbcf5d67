"""One movement's history in words: on the picture, and as its caption."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.pictures.values import CoursePoint, HistoryDay, HistoryWords, PainDay
from bot.wording import doses
from bot.wording.labels import label
from bot.wording.movement_names import name_of
from bot.wording.pictures import caption_of, named, plain, short_day
from bot.wording.tongue import Tongue
from scheduler.catalogue.values import Measure, Movement
from scheduler.pain.values import Side
from scheduler.training.values import Dose


@dataclass(frozen=True)
class MovementHistory:
    """What one movement's picture is made of; ``arm`` is the weaker one where each has its own.

    ``is_named``: the name stands on the picture, for a reader who has many athletes.
    """

    name: str
    movement: Movement
    dose: Dose | None
    arm: Side
    days: Sequence[HistoryDay]
    course: Sequence[CoursePoint]
    pain: Sequence[PainDay]
    is_named: bool = False


def words(tongue: Tongue, facts: MovementHistory) -> HistoryWords:
    """Write what stands on the picture."""
    return HistoryWords(
        title=plain(tongue.say("{name}", name=name_of(tongue, facts.movement))),
        subtitle=named(facts.name if facts.is_named else "", plain(_subtitle(tongue, facts))),
        unit=_unit(tongue, facts.movement.measure),
        asked=plain(tongue.say("asked")),
        done=plain(tongue.say("done, last set")),
        other_load=plain(tongue.say("done, other load")),
        likely=plain(tongue.say("at the limit, with its likely range")),
        pain=plain(tongue.say("Pain anywhere, 0 to 10")),
        pain_of_session=plain(tongue.say("that day")),
        pain_of_morning=plain(tongue.say("next morning")),
        no_pain=plain(tongue.say("No pain reported.")),
        nothing=plain(tongue.say("Not trained in these weeks.")),
    )


def caption(tongue: Tongue, facts: MovementHistory) -> str:
    """Say what the picture shows to whoever cannot see it."""
    head = tongue.say(
        "<b>{name}</b> · {movement}", name=facts.name, movement=name_of(tongue, facts.movement)
    )
    subtitle = _subtitle(tongue, facts)
    lines = [head, *([subtitle] if subtitle else [])]
    if not facts.days:
        return caption_of([*lines, tongue.say("Not trained in these weeks.")])
    lines += [_limit(tongue, facts), *_days(tongue, facts), *_pain(tongue, facts)]
    return caption_of([line for line in lines if line])


def _subtitle(tongue: Tongue, facts: MovementHistory) -> str:
    parts = [doses.load(tongue, facts.dose, facts.movement)] if facts.dose is not None else []
    if facts.arm is Side.LEFT:
        parts.append(tongue.say("the weaker arm, left"))
    elif facts.arm is Side.RIGHT:
        parts.append(tongue.say("the weaker arm, right"))
    return " · ".join(part for part in parts if part)


def _unit(tongue: Tongue, measure: Measure) -> str:
    match measure:
        case Measure.REPS:
            return plain(tongue.say("repetitions"))
        case Measure.CARRY_M:
            return plain(tongue.say("metres"))
        case _:
            return plain(tongue.say("seconds"))


def _limit(tongue: Tongue, facts: MovementHistory) -> str:
    if not facts.course:
        return tongue.say("Too little is known yet to say what the limit is.")
    first, last = facts.course[0], facts.course[-1]
    measure = facts.movement.measure
    now = tongue.say(
        "At the limit about {likely}, likely {least} to {most}.",
        likely=doses.amount(tongue, measure, round(last.likely)),
        least=round(last.least),
        most=round(last.most),
    )
    if first is last:
        return now
    before = tongue.say(
        "On {day} about {likely}.",
        day=short_day(tongue, first.on),
        likely=doses.amount(tongue, measure, round(first.likely)),
    )
    return f"{now} {before}"


def _days(tongue: Tongue, facts: MovementHistory) -> list[str]:
    shown = [facts.days[0], facts.days[-1]] if len(facts.days) > 1 else [facts.days[0]]
    lines = [
        tongue.say(
            "{day}: asked {asked}, last set {done}.",
            day=short_day(tongue, one.on),
            asked=doses.amount(tongue, facts.movement.measure, one.asked),
            done=doses.amount(tongue, facts.movement.measure, one.done),
        )
        for one in shown
    ]
    sessions = tongue.count(
        len(facts.days), "{n} session on the picture.", "{n} sessions on the picture."
    )
    return [*lines, sessions]


def _pain(tongue: Tongue, facts: MovementHistory) -> list[str]:
    if not facts.pain:
        return [tongue.say("No pain reported.")]
    worst, last = max(facts.pain, key=lambda one: (one.score, one.on)), facts.pain[-1]
    return [
        tongue.say(
            "Pain, anywhere: at most {worst} of 10 ({on}), last {last} of 10 ({last_on}).",
            worst=worst.score,
            on=short_day(tongue, worst.on),
            last=last.score,
            last_on=short_day(tongue, last.on),
        )
    ]


def unknown(tongue: Tongue) -> str:
    """Say that a movement is not in the library (any more)."""
    return tongue.say("That movement is not in the library now. Send /history to choose another.")


def nothing_trained(tongue: Tongue, *, name: str) -> str:
    """Say that there is nothing to draw."""
    return tongue.say(
        "<b>{name}</b>: no movement was trained in the last weeks, so there is nothing to draw.",
        name=name,
    )


def movement_label(tongue: Tongue, name: str) -> str:
    """Label the button that draws another movement."""
    return label(tongue, "{name}", name=name)
