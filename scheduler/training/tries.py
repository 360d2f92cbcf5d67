"""When a standard is asked for as it is written, instead of the ordinary dose."""

from collections.abc import Sequence
from datetime import date

from pydantic import BaseModel, ConfigDict

from scheduler.pain.values import Level
from scheduler.reasons import Decision
from scheduler.training.capacity import Capacity
from scheduler.training.capacity_reading import resistance_kg
from scheduler.training.capacity_targets import is_worth_trying
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.dose_making import floor_of
from scheduler.training.exposure_reading import is_at_target
from scheduler.training.loads import rungs
from scheduler.training.rulebook import Rulebook
from scheduler.training.standards import Requirement, is_hard_enough
from scheduler.training.values import Dose, Exposure, Rung, StageState


class TryFacts(BaseModel):
    """What a try asks besides the dose.

    ``asked`` is the standard in the athlete's own figures; ``is_shown`` tells that it needs no
    showing any more; ``lately`` are the latest exposures of the movement, tries among them.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    asked: Requirement
    is_shown: bool
    lately: tuple[Exposure, ...] = ()


def try_rung(asked: Requirement, *, facts: DoseFacts) -> Rung | None:
    """Return the easiest owned resistance that the standard counts; None where none is owned."""
    owned = rungs(facts.movement, profile=facts.profile)
    fitting = [rung for rung in owned if is_hard_enough(rung, asked)]
    return fitting[0] if fitting else None


def may_try(
    dose: Dose, *, facts: DoseFacts, about: TryFacts, on: date, rulebook: Rulebook
) -> Rung | None:
    """Return the resistance of a try where nothing speaks against one; None else.

    Not where the day's dose is cut or asks for it anyway, where something hurts or a week holds
    its level, not at once after a try that failed, and not before the movement was trained a few
    times lately (CH).
    """
    asked = about.asked
    is_other = facts.movement.key not in asked.movements or dose.measure is not asked.measure
    if is_other or about.is_shown or dose.rest_for_work is not None:
        return None
    holds = facts.is_lighter_week or facts.holds_level or not facts.returning.may_step
    if holds or facts.pain.level is not Level.NONE or dose.sets < asked.sets:
        return None
    rung = try_rung(asked, facts=facts)
    is_asked_anyway = dose.target >= asked.target and is_hard_enough(dose.rung, asked)
    if rung is None or is_asked_anyway or _has_just_failed(about.lately, facts=facts):
        return None
    steps = rulebook.steps
    lately = [one for one in about.lately if (on - one.on).days <= steps.tries_within_days.value]
    return rung if len(lately) >= steps.tries_after_exposures.whole else None


def is_early(state: StageState, *, on: date, rulebook: Rulebook) -> bool:
    """Tell whether the stage cannot be left for more than two weeks yet (CH).

    Until then nobody is sent to the limit for a standard that opens nothing.
    """
    least = rulebook.stage(state.stage).least_weeks
    if least is None or state.is_re_earned:
        return False
    return state.whole_weeks(on) < least.value - rulebook.steps.tries_from_weeks_before.value


def with_try(
    decision: Decision[Dose],
    *,
    rung: Rung,
    arms: Sequence[Capacity],
    facts: DoseFacts,
    about: TryFacts,
    on: date,
    rulebook: Rulebook,
) -> Decision[Dose]:
    """Turn a dose into a try where every arm's estimate says that it is as likely as not (CH).

    Parameters: ``arms``, the capacity of each arm that works, seen at ``rung``; ``on`` the day.
    The estimate only says when to try: the standard is shown by doing it.
    """
    if not arms:
        return decision
    at_rung = about.asked.model_copy(update={"load_kg": rung.load_kg or about.asked.load_kg})
    reference_kg = reference_of(rung, facts=facts)
    worth = [
        is_worth_trying(
            known,
            at_rung,
            movement=facts.movement,
            body_mass_kg=facts.profile.body_mass_kg,
            reference_kg=reference_kg,
            on=on,
            rulebook=rulebook,
        )
        for known in arms
    ]
    if not all(one.value for one in worth):
        return decision
    least = min(worth, key=lambda one: float(one.reasons[0].figures["probability"]))
    return Decision(
        value=_as_written(decision.value, rung=rung, about=about, rulebook=rulebook),
        reasons=least.reasons,
    )


def reference_of(rung: Rung, *, facts: DoseFacts) -> float:
    """Return the load [kg] that a capacity is seen at; 1 where the movement knows no kilograms."""
    lifted_kg = resistance_kg(
        rung, movement=facts.movement, body_mass_kg=facts.profile.body_mass_kg
    )
    return lifted_kg if lifted_kg is not None else 1.0


def _as_written(dose: Dose, *, rung: Rung, about: TryFacts, rulebook: Rulebook) -> Dose:
    target = about.asked.target
    return dose.model_copy(
        update={
            "target": target,
            "floor": floor_of(target=target, share=rulebook.steps.floor_share.value),
            "rung": rung,
            "reserve_asked": about.asked.reserve_least,
            "is_try": True,
        }
    )


def _has_just_failed(lately: Sequence[Exposure], *, facts: DoseFacts) -> bool:
    last = lately[-1] if lately else None
    return last is not None and last.dose.is_try and not is_at_target(last, movement=facts.movement)
