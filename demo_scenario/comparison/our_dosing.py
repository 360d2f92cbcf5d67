"""Our own dosing as it is compared: the next dose, with the estimate of the capacity supplied."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from demo_scenario.comparison.athletes import Goal
from demo_scenario.comparison.rules import Ask, Trained, plain
from scheduler.pain.values import Side
from scheduler.reasons import Decision
from scheduler.training.capacity import Capacity, estimate
from scheduler.training.capacity_reading import observe
from scheduler.training.capacity_targets import is_worth_trying, sure_target
from scheduler.training.dose_bounds import target_bounds
from scheduler.training.dose_facts import DoseFacts, EstimatedReach
from scheduler.training.dose_making import floor_of
from scheduler.training.doses import next_dose
from scheduler.training.exposure_reading import is_at_target
from scheduler.training.rulebook import Rulebook
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Dose


@dataclass(frozen=True, slots=True)
class OurDosing:
    """One careful step at a time, and the estimate of the capacity beneath.

    With ``has_tries`` a standard that is likely is asked for as it is written, on the day that
    the estimate says so; without, it is met when the ordinary doses come to it.
    """

    rulebook: Rulebook
    has_tries: bool = True
    name: str = "ours"

    def ask(self, log: Sequence[Trained], *, facts: DoseFacts, goal: Goal, on: date) -> Ask:
        """Decide by the house's rules from everything that was reported."""
        ordinary = [one.exposure for one in log if not one.is_try]
        decision = next_dose(ordinary, facts=facts, rulebook=self.rulebook)
        known = self._known(log, facts=facts, goal=goal)
        if known is None:
            return plain(decision.value)
        if self._is_estimate_asked(decision, known):
            reach = self._reach(known, dose=decision.value, facts=facts, goal=goal, on=on)
            with_reach = facts.model_copy(update={"estimate": reach})
            decision = next_dose(ordinary, facts=with_reach, rulebook=self.rulebook)
        dose = decision.value
        if self.has_tries and self._is_try(known, log, dose=dose, facts=facts, goal=goal, on=on):
            return self._try(dose, goal=goal)
        return plain(dose)

    def _is_estimate_asked(self, decision: Decision[Dose], known: Capacity) -> bool:
        """Tell whether the estimate can matter: enough was seen, and the answer alone says stay.

        Supplying it every time decides the same, and takes twice as long.
        """
        needed = self.rulebook.steps.observations_to_step.whole
        is_held = any(one.code == DoseReason.SAME_LITTLE_LEFT for one in decision.reasons)
        return is_held and known.observations >= needed

    def _known(self, log: Sequence[Trained], *, facts: DoseFacts, goal: Goal) -> Capacity | None:
        looks = [
            observe(
                one.exposure,
                movement=facts.movement,
                arm=Side.BOTH,
                body_mass_kg=facts.profile.body_mass_kg,
                reference_kg=goal.reference_kg,
            )
            for one in log
        ]
        return estimate([one for one in looks if one is not None], rulebook=self.rulebook)

    def _reach(
        self, known: Capacity, *, dose: Dose, facts: DoseFacts, goal: Goal, on: date
    ) -> EstimatedReach:
        return sure_target(
            known,
            most=target_bounds(facts, rulebook=self.rulebook).most,
            reserve=dose.reserve_asked,
            movement=facts.movement,
            rung=dose.rung,
            body_mass_kg=facts.profile.body_mass_kg,
            reference_kg=goal.reference_kg,
            on=on,
            rulebook=self.rulebook,
        )

    def _is_try(
        self,
        known: Capacity,
        log: Sequence[Trained],
        *,
        dose: Dose,
        facts: DoseFacts,
        goal: Goal,
        on: date,
    ) -> bool:
        """Tell whether the standard itself is asked for: likely, all sets due, none just failed."""
        is_asked_anyway = dose.target >= goal.asked.target and dose.rung == goal.rung
        is_cut = dose.sets < goal.asked.sets or not facts.returning.may_step
        if is_asked_anyway or is_cut or _has_just_failed(log[-1], facts=facts):
            return False
        return is_worth_trying(
            known,
            goal.asked,
            movement=facts.movement,
            body_mass_kg=facts.profile.body_mass_kg,
            reference_kg=goal.reference_kg,
            on=on,
            rulebook=self.rulebook,
        ).value

    def _try(self, dose: Dose, *, goal: Goal) -> Ask:
        target = goal.asked.target
        floor = floor_of(target=target, share=self.rulebook.steps.floor_share.value)
        standard = dose.model_copy(update={"target": target, "floor": floor, "rung": goal.rung})
        return Ask(dose=standard, last_set_s=target, is_try=True)


def _has_just_failed(last: Trained, *, facts: DoseFacts) -> bool:
    return last.is_try and not is_at_target(last.exposure, movement=facts.movement)
