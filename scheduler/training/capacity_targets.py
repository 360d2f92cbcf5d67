"""What an estimate allows: the largest sure target, and when a standard is worth trying."""

from datetime import date

from scheduler.catalogue.values import Movement
from scheduler.reasons import Decision, reason
from scheduler.training.capacity import Capacity, probability_of
from scheduler.training.capacity_reading import at_reference
from scheduler.training.dose_facts import EstimatedReach
from scheduler.training.rulebook import Rulebook
from scheduler.training.standards import Requirement
from scheduler.training.training_reasons import GateReason
from scheduler.training.values import Rung


def sure_target(
    capacity: Capacity,
    *,
    most: int,
    reserve: float,
    movement: Movement,
    rung: Rung,
    body_mass_kg: float,
    reference_kg: float,
    on: date,
    rulebook: Rulebook,
) -> EstimatedReach:
    """Return the largest target up to ``most`` that is done as asked with probability 0.85 (CH).

    Parameters: ``most`` [s or repetitions]; ``reserve`` [same unit] asked after the last set,
    whose capacity was observed, so that no further decrement is taken off; ``rung`` the
    resistance; ``body_mass_kg``, ``reference_kg`` [kg] as for :func:`observe`; ``on`` the day.
    A target of 0 means that none is sure.
    """
    wanted = rulebook.steps.target_probability.value
    for target in range(most, 0, -1):
        needed = at_reference(
            target + reserve,
            rung=rung,
            movement=movement,
            body_mass_kg=body_mass_kg,
            reference_kg=reference_kg,
        )
        if needed is None:
            continue
        if probability_of(capacity, needed=needed, on=on, rulebook=rulebook) >= wanted:
            return EstimatedReach(observations=capacity.observations, sure_target=target)
    return EstimatedReach(observations=capacity.observations, sure_target=0)


def is_worth_trying(
    capacity: Capacity,
    asked: Requirement,
    *,
    movement: Movement,
    body_mass_kg: float,
    reference_kg: float,
    on: date,
    rulebook: Rulebook,
) -> Decision[bool]:
    """Decide whether a standard is proposed for trying: as likely as not, or more (CH).

    The estimate only says when to try; the standard itself is shown by doing it.
    """
    needed = at_reference(
        asked.target + asked.reserve_least,
        rung=Rung(load_kg=asked.load_kg),
        movement=movement,
        body_mass_kg=body_mass_kg,
        reference_kg=reference_kg,
    )
    wanted = rulebook.steps.try_probability
    chance = (
        0.0 if needed is None else probability_of(capacity, needed=needed, on=on, rulebook=rulebook)
    )
    why = reason(GateReason.TRY_STANDARD, wanted.source, probability=chance, needed=wanted.value)
    return Decision(value=chance >= wanted.value, reasons=(why,))
