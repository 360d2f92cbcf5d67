"""Changing one answer later: what it changes, what is planned anew, and what the coach sees."""

from collections.abc import Mapping, Sequence
from datetime import time
from typing import Any

from bot.acts import draw_week
from bot.acts.emergency_number import number_for
from bot.acts.find_athlete import subject_of
from bot.acts.intake_finish import evening_for
from bot.acts.intake_profile import profile_of
from bot.acts.intake_steps import BY_KEY, EQUIPMENT_WORDS, WEIGHT_STEPS
from bot.acts.settings_now import answers_of
from bot.turn import Tap, Turn
from bot.wording import intake_end
from bot.wording import settings as words
from scheduler.pain.emergency_numbers import country_of_zone
from scheduler.training.values import AthleteProfile
from storage.queries import care, people
from storage.records.people import Athlete, Person, Profile
from storage.records.wire import MessageKind

CHANGED = "settings.changed"
PRIVATE = frozenset({"guardian", "injury"})
"""Whose words stay in the profile, where they can be erased, and in no record of changes."""
OF_PERSON = frozenset({"zone", "language", "units", "decimal_mark"})
HOURS = frozenset({"session_at", "evening_at"})
IMPLEMENT_OF = {"bands": "band"} | {step.key: step.key for step in WEIGHT_STEPS}
"""What each question about weights and bands is about."""
OWNED = frozenset({"equipment", *IMPLEMENT_OF})
PLANNED_ANEW = OWNED | {"weekdays", "minutes", "elsewhere", "event", "reference", "months"}
FOR_THE_COACH = OWNED | {"event", "reference"}
FIELDS: Mapping[str, tuple[str, ...]] = {
    "weekdays": ("weekdays",),
    "minutes": ("minutes",),
    "elsewhere": ("regular_training",),
    "event": ("goal", "event_on"),
}
FACTS: Mapping[str, tuple[str, ...]] = {
    "reference": ("reference",),
    "mass_kg": ("body_mass_kg",),
    "months": ("training_age_months",),
    "untrained_days": ("days_untrained_before",),
}


def change(turn: Turn, person: Person, athlete: Athlete, key: str, value: Any) -> None:
    """Change one answer that a person may change alone, write it down, and draw what is ahead."""
    before = answers_of(person, athlete)
    old_zone = person.zone
    if key in OF_PERSON:
        person = people.change_person(turn.tx, person.id, **{key: value})
    elif key in HOURS:
        athlete = people.change_athlete(turn.tx, person.id, **_hours(athlete, key, value))
    else:
        profile = changed_profile(athlete.profile, before, key, value)
        athlete = people.change_athlete(turn.tx, person.id, profile=profile)
    record(turn, person, key, before[key], answers_of(person, athlete)[key])
    if key in PLANNED_ANEW:
        draw_week.redraw(turn, person, athlete)
    if key in FOR_THE_COACH:
        tell_coach(turn, person, athlete, key, before[key], answers_of(person, athlete)[key])
    if key == "zone" and country_of_zone(old_zone) != country_of_zone(person.zone):
        _tell_country(turn, person, athlete)


def changed_profile(profile: Profile, answers: Mapping[str, Any], key: str, value: Any) -> Profile:
    """Return the profile with one answer changed, as the first questions would have it."""
    answers = {**answers, key: value}
    if key in IMPLEMENT_OF and value:
        owned = {*answers["equipment"], IMPLEMENT_OF[key]}
        answers["equipment"] = [one for one in EQUIPMENT_WORDS if one in owned]
    fresh = profile_of(answers)
    if key in FIELDS:
        return profile.model_copy(update={name: getattr(fresh, name) for name in FIELDS[key]})
    if key in FACTS:
        facts = {name: getattr(fresh.facts, name) for name in FACTS[key]}
    else:
        facts = _owned(profile.facts, fresh.facts)
    return profile.model_copy(update={"facts": profile.facts.model_copy(update=facts)})


def _owned(old: AthleteProfile, fresh: AthleteProfile) -> dict[str, Any]:
    """Return what is owned now; what no question asks about, such as a wall, stays."""
    unasked = {one for one in old.equipment if one.value not in EQUIPMENT_WORDS}
    kept = {band.key: band for band in old.bands}
    return {
        "equipment": frozenset(fresh.equipment | unasked),
        "loads_kg": fresh.loads_kg,
        "bands": tuple(kept.get(band.key, band) for band in fresh.bands),
    }


def _hours(athlete: Athlete, key: str, value: str) -> dict[str, time]:
    """Return the hours; an evening that nobody chose follows the session's hour."""
    at = time.fromisoformat(value)
    if key == "session_at" and athlete.evening_at == evening_for(athlete.session_at):
        return {"session_at": at, "evening_at": evening_for(at)}
    return {key: at}


def missing(answers: Mapping[str, Any], wanted: Sequence[str]) -> str | None:
    """Return the question that a change leads to: weights and bands of what is newly there."""
    answers = {**answers, "equipment": wanted}
    steps = [step for step in (*WEIGHT_STEPS, BY_KEY["bands"]) if step.is_asked(answers)]
    return next((step.key for step in steps if not answers.get(step.key)), None)


def record(turn: Turn, person: Person, key: str, old: Any, new: Any) -> None:
    """Write a change down; private words stay where they can be erased."""
    is_private = key in PRIVATE
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=CHANGED,
        athlete_id=person.id,
        actor_id=person.id,
        before={"setting": key, "value": None if is_private else old},
        after={"setting": key, "value": None if is_private else new},
    )


def tell_coach(turn: Turn, person: Person, athlete: Athlete, key: str, old: Any, new: Any) -> None:
    """Show the coach what changed, in a line."""
    coach = people.person(turn.tx, athlete.coach_id)
    if coach.id == person.id:
        return
    tongue = turn.tongue(coach)
    text = words.changed_to_coach(tongue, name=person.name, key=key, old=old, new=new)
    say_to_coach(turn, coach, person, text)


def say_to_coach(
    turn: Turn, coach: Person, person: Person, text: str, *, taps: list[Tap] | None = None
) -> None:
    """Write to the coach about the athlete, with the way to the record."""
    about = {"athlete": person.id}
    open_tap = Tap(intake_end.open_label(turn.tongue(coach)), "coach.who", about)
    rows = [[tap] for tap in (open_tap, *(taps or ()))]
    turn.say(coach, text, kind=MessageKind.NOTICE, subject=subject_of(person), taps=rows)


def _tell_country(turn: Turn, person: Person, athlete: Athlete) -> None:
    """In another country another emergency number holds: the coach is told which is named now."""
    coach = people.person(turn.tx, athlete.coach_id)
    number = number_for(turn, person, coach)
    tongue = turn.tongue(coach)
    text = words.country_to_coach(tongue, name=person.name, zone=person.zone, number=number)
    say_to_coach(turn, coach, person, text)
