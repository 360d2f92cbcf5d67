"""What a standard asks of one athlete with what they own: as written, at another load, or a look.

A load that is owned near the standard's needs nothing else. Further away the published curves say
what is as hard; where they do not reach, or the equipment is missing, the coach decides on a clip.
"""

from collections.abc import Mapping, Sequence

from scheduler.catalogue.values import ALWAYS_AT_HAND, Direction, Movement
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.equivalents import equivalent
from scheduler.training.gate_rules import Standard
from scheduler.training.loads import rungs
from scheduler.training.rulebook import Rulebook
from scheduler.training.standards import Requirement, requirement
from scheduler.training.training_reasons import GateReason
from scheduler.training.values import AthleteProfile


def asked_of(
    standard: Standard,
    *,
    profile: AthleteProfile,
    movements: Mapping[str, Movement],
    held: frozenset[Direction] = frozenset(),
    rulebook: Rulebook,
) -> Decision[Requirement | None]:
    """Return what a standard asks of this athlete; None where only the coach decides.

    Parameters: ``movements`` of the library, by key; ``held`` directions keep to stage 1's row
    after an old injury, and their standards are the coach's. A load above the standard's by no
    more than an ordinary step (10 %, acsm2009) counts as it is written; else the nearer owned
    load is asked for as long (or as often) as is equally hard, then the other one; a heavier one
    alone, as written.
    """
    asked = requirement(standard, profile=profile, rulebook=rulebook)
    source = standard.sets.source
    if asked is None:
        return Decision(value=None, reasons=(_by_coach(standard, source),))
    mine = [movements[key] for key in asked.movements if key in movements]
    if any(movement.direction in held for movement in mine):
        why = reason(GateReason.DIRECTION_HELD, "ch", key=standard.key)
        return Decision(value=None, reasons=(why,))
    fitting = [movement for movement in mine if _is_owned(movement, profile=profile)]
    if mine and not fitting:
        why = reason(GateReason.EQUIPMENT_MISSING, "ch", key=standard.key)
        return Decision(value=None, reasons=(why,))
    if asked.load_kg is None or not mine:
        return Decision(value=asked, reasons=())
    owned_kg = [rung.load_kg for rung in rungs(fitting[0], profile=profile) if rung.load_kg]
    near_share = rulebook.steps.load_step_share.most or 0.0
    return _at_owned_load(asked, load_kg=asked.load_kg, owned_kg=owned_kg, near_share=near_share)


def _by_coach(standard: Standard, source: str) -> Reason:
    return reason(GateReason.STANDARD_BY_COACH, source, key=standard.key, is_met=False)


def _is_owned(movement: Movement, *, profile: AthleteProfile) -> bool:
    at_hand = profile.equipment | ALWAYS_AT_HAND
    return any(choice <= at_hand for choice in movement.equipment)


def _at_owned_load(
    asked: Requirement, *, load_kg: float, owned_kg: Sequence[float], near_share: float
) -> Decision[Requirement | None]:
    heavier = [owned for owned in owned_kg if owned >= load_kg]
    lighter = [owned for owned in owned_kg if owned < load_kg]
    if heavier and heavier[0] <= load_kg * (1 + near_share):
        return Decision(value=asked, reasons=())
    nearest = sorted(
        (*heavier[:1], *lighter[-1:]), key=lambda owned: max(owned, load_kg) / min(owned, load_kg)
    )
    found = [equivalent(asked, other_load_kg=owned) for owned in nearest]
    usable = next((one for one in found if one.value is not None), None)
    if usable is not None:
        return usable
    if heavier:
        return Decision(value=asked, reasons=())
    if found:
        return found[0]
    why = reason(GateReason.EQUIPMENT_MISSING, "ch", key=asked.key)
    return Decision(value=None, reasons=(why,))
