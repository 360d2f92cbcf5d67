"""What the settings hold now, as the answers of the first questions: the way back of the intake."""

from collections.abc import Mapping
from typing import Any

from bot.acts.intake_steps import BAND_WORDS, EQUIPMENT_WORDS, WEIGHT_STEPS
from bot.wording.tongue import decimal_mark_of
from scheduler.catalogue.values import Equipment
from scheduler.training.values import AthleteProfile
from storage.records.people import Athlete, Person

CLOCK = "%H:%M"


def answers_of(person: Person, athlete: Athlete) -> dict[str, Any]:
    """Return every answer as it stands, in the shape in which the questions keep it."""
    profile = athlete.profile
    return {
        "adult": profile.is_adult,
        "guardian": profile.guardian or "",
        "weekdays": sorted(profile.weekdays),
        "minutes": profile.minutes,
        "elsewhere": [
            {"name": one.name or ", ".join(sorted(one.tags)), "weekday": one.weekday}
            for one in profile.regular_training
        ],
        "event": {
            "on": profile.event_on.isoformat() if profile.event_on else None,
            "goal": profile.goal,
        },
        "zone": person.zone,
        "session_at": athlete.session_at.strftime(CLOCK),
        "evening_at": athlete.evening_at.strftime(CLOCK),
        "screen": list(profile.screen_yes),
        "injury": profile.earlier_injury or "",
        "language": person.language,
        "units": person.units,
        "decimal_mark": person.decimal_mark or decimal_mark_of(person.language),
        **_facts(profile.facts),
    }


def _facts(facts: AthleteProfile) -> Mapping[str, Any]:
    owned = {one.value for one in facts.equipment}
    bands = {band.key for band in facts.bands}
    return {
        "reference": facts.reference.value,
        "mass_kg": facts.body_mass_kg,
        "months": facts.training_age_months,
        "untrained_days": facts.days_untrained_before,
        "equipment": [key for key in EQUIPMENT_WORDS if key in owned],
        "bands": [key for key in BAND_WORDS if key in bands],
        **{step.key: sorted(facts.loads_kg.get(Equipment(step.key), ())) for step in WEIGHT_STEPS},
    }
