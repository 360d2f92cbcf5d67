"""From the answers of the intake to what the rules need to know."""

from collections.abc import Mapping
from datetime import date
from typing import Any

from bot.acts.intake_elsewhere import regular_of
from bot.acts.intake_steps import (
    BAND_WORDS,
    INJURY_TOPICS,
    INVERSION_TOPICS,
    WEIGHT_STEPS,
    asked_steps,
)
from bot.acts.old_injuries import injuries_of
from scheduler.catalogue.values import Equipment
from scheduler.training.values import AthleteProfile, Band, ReferenceValues
from storage.records.people import Profile

BANDS = {
    key: Band(key=key, family="long", rank=rank) for rank, key in enumerate(BAND_WORDS, start=1)
}

BLANK = Profile(
    facts=AthleteProfile(reference=ReferenceValues.OWN, body_mass_kg=1, training_age_months=0)
)
"""What is known of somebody who was only invited: nothing; no week is drawn from it."""


def kept_answers(answers: Mapping[str, Any]) -> dict[str, Any]:
    """Return the answers to the questions that are still asked, in their order."""
    return {step.key: answers[step.key] for step in asked_steps(answers) if step.key in answers}


def profile_of(answers: Mapping[str, Any]) -> Profile:
    """Return the profile; an implement without a weight, and bands without one, are not owned."""
    said = kept_answers(answers)
    screen = tuple(said["screen"])
    on = said["event"]["on"]
    return Profile(
        facts=_facts(said),
        weekdays=tuple(said["weekdays"]),
        minutes=said["minutes"],
        regular_training=regular_of(said.get("elsewhere", ())),
        goal=said["event"]["goal"],
        event_on=date.fromisoformat(on) if on else None,
        is_adult=said["adult"],
        may_invert=not INVERSION_TOPICS & set(screen),
        screen_yes=screen,
        earlier_injury=said.get("injury") or ("told in person" if _is_hurt(screen) else None),
        injuries=injuries_of(said.get("injury", ""), screen=frozenset(screen)),
        guardian=said.get("guardian"),
    )


def _is_hurt(screen: tuple[str, ...]) -> bool:
    return bool(INJURY_TOPICS & set(screen))


def _facts(said: Mapping[str, Any]) -> AthleteProfile:
    loads_kg = {Equipment(step.key): tuple(said.get(step.key, ())) for step in WEIGHT_STEPS}
    loads_kg = {implement: loads for implement, loads in loads_kg.items() if loads}
    bands = tuple(BANDS[key] for key in said.get("bands", ()))
    weighed = {Equipment(step.key) for step in WEIGHT_STEPS}
    equipment = {Equipment(key) for key in said["equipment"]}
    equipment -= weighed - set(loads_kg)
    if not bands:
        equipment.discard(Equipment.BAND)
    return AthleteProfile(
        reference=ReferenceValues(said["reference"]),
        body_mass_kg=said["mass_kg"],
        training_age_months=said["months"],
        days_untrained_before=said.get("untrained_days", 0),
        equipment=frozenset(equipment),
        loads_kg=loads_kg,
        bands=bands,
    )
