"""A dose that the coach set: what is said before, what never is asked, when it holds.

Ranges of the stage's rows are CHOSEN (TRAINING 5); the 2-10 % step of a load is PUBLISHED
(acsm2009, from memory); the rest is CHOSEN as labelled beside each rule.
"""

from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Equipment
from scheduler.pain.values import Level
from scheduler.training.coach_doses import against, impossible, is_more, with_coach_dose
from scheduler.training.coach_plan import DoseSet
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.doses import next_dose
from scheduler.training.gaps import Return
from scheduler.training.rulebook import default_rulebook
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import (
    AthleteProfile,
    Exposure,
    PainFacts,
    Quality,
    ReferenceValues,
    Rung,
    SetDone,
)

LIBRARY, RULEBOOK = default_library().movements, default_rulebook()
TODAY = date(2026, 3, 2)
PROFILE = AthleteProfile(
    reference=ReferenceValues.WOMEN,
    body_mass_kg=60,
    training_age_months=24,
    equipment=frozenset({Equipment.DUMBBELLS, Equipment.HIGH_BAR}),
    loads_kg={Equipment.DUMBBELLS: (4.0, 6.0, 8.0)},
)


def _facts(key: str = "farmer_carry", **more: object) -> DoseFacts:
    facts = DoseFacts(
        movement=LIBRARY[key],
        quality=Quality.MUSCULAR_ENDURANCE,
        profile=PROFILE,
        planned_sets=3,
        weeks_trained=8,
    )
    return facts.model_copy(update=more)


def _set(sets: int = 3, target: int = 30, kg: float | None = 6.0) -> DoseSet:
    return DoseSet(
        movement_key="farmer_carry",
        from_on=TODAY,
        sets=sets,
        target=target,
        rung=Rung(load_kg=kg),
    )


def _codes(dose: DoseSet, facts: DoseFacts, *, done: tuple[Exposure, ...] = ()) -> set[str]:
    decided = next_dose(done, facts=facts, rulebook=RULEBOOK).value
    found = against(dose, decided=decided, done=done, facts=facts, rulebook=RULEBOOK)
    return {one.code for one in found}


def test_a_dose_inside_the_row_at_the_same_load_needs_no_second_question():
    facts = _facts()
    now = next_dose((), facts=facts, rulebook=RULEBOOK).value
    assert _codes(_set(3, now.target, now.rung.load_kg), facts) == set()


@pytest.mark.parametrize(
    ("dose", "code"),
    [
        # CHOSEN rows of muscular endurance: 2-4 sets, 20-60 s
        (_set(sets=5), DoseReason.COACH_SETS_OUTSIDE),
        (_set(target=61), DoseReason.COACH_TARGET_OUTSIDE),
        (_set(target=19), DoseReason.COACH_TARGET_OUTSIDE),
    ],
)
def test_what_is_outside_the_row_is_said(dose: DoseSet, code: DoseReason):
    assert code in _codes(dose, _facts())


def test_more_than_one_step_of_load_is_said():
    facts = _facts()
    now = next_dose((), facts=facts, rulebook=RULEBOOK).value
    assert now.rung.load_kg is not None
    heavier = _set(kg=8.0)
    # DERIVED: the first load is at most 6 kg; 8 kg is a third more, above 10 % (PUBLISHED step)
    assert now.rung.load_kg <= 6
    assert DoseReason.COACH_LOAD_JUMP in _codes(heavier, facts)


def test_more_than_a_step_above_the_best_set_is_said():
    facts = _facts()
    dose = next_dose((), facts=facts, rulebook=RULEBOOK).value
    done = (Exposure(on=TODAY - timedelta(days=3), dose=dose, sets=(SetDone(value=25),)),)
    kg = dose.rung.load_kg
    # DERIVED: 25 s and one step of 5 s (CHOSEN below 40 s) is 30 s
    assert DoseReason.COACH_ABOVE_BEST not in _codes(_set(target=30, kg=kg), facts, done=done)
    assert DoseReason.COACH_ABOVE_BEST in _codes(_set(target=31, kg=kg), facts, done=done)


@pytest.mark.parametrize(
    ("dose", "code"),
    [
        (_set(kg=7.0), DoseReason.COACH_NOT_OWNED),
        (_set(sets=13), DoseReason.COACH_SLIP),
        (_set(target=301), DoseReason.COACH_SLIP),
    ],
)
def test_an_unowned_weight_or_a_slip_of_the_thumb_is_never_asked(dose: DoseSet, code: DoseReason):
    found = impossible(dose, facts=_facts())
    assert found is not None
    assert found.code == code


def _asked(dose: DoseSet, facts: DoseFacts, *, done: tuple[Exposure, ...] = (), days: int = 0):
    decided = next_dose(done, facts=facts, rulebook=RULEBOOK)
    on = TODAY + timedelta(days=days)
    return decided, with_coach_dose(
        decided, dose=dose, done=done, facts=facts, on=on, rulebook=RULEBOOK
    )


def test_it_holds_as_it_was_set_with_its_floor_and_what_is_held_back():
    _decided, asked = _asked(_set(sets=2, target=40), _facts())
    # DERIVED: floor 80 % of 40 s; 3 planned sets less 2 are 1 held back
    assert (asked.value.sets, asked.value.target, asked.value.floor) == (2, 40, 32)
    assert asked.value.held_back == 1
    assert asked.reasons[0].code == DoseReason.BY_COACH


def test_once_it_was_done_the_rules_go_on_from_it():
    _decided, first = _asked(_set(target=40), _facts())
    done = (Exposure(on=TODAY, dose=first.value, sets=(SetDone(value=40),) * 3),)
    decided, later = _asked(_set(target=40), _facts(), done=done, days=2)
    assert later == decided
    assert later.value.target == 40
    assert later.value.rung == first.value.rung


def test_after_a_gap_an_old_dose_asks_no_more_than_the_rules():
    back = Return(share_of_sets=0.5, may_step=False)
    decided, asked = _asked(_set(sets=4, target=60), _facts(returning=back), days=30)
    assert asked.value == decided.value
    assert asked.reasons[0].code == DoseReason.COACH_AFTER_GAP


@settings(max_examples=60, deadline=None)
@given(
    sets=st.integers(1, 12),
    target=st.integers(1, 300),
    kg=st.sampled_from([4.0, 6.0, 8.0]),
    level=st.sampled_from([Level.WATCH, Level.EASE]),
)
def test_while_it_hurts_no_dose_of_the_coach_asks_more_than_the_rules(
    sets: int, target: int, kg: float, level: Level
):
    facts = _facts(pain=PainFacts(level=level, is_settled=False))
    dose = _set(sets=sets, target=target, kg=kg)
    decided, asked = _asked(dose, facts)
    assert asked.value.sets <= decided.value.sets
    assert asked.value.target <= decided.value.target
    assert (asked.value.load_kg or 0) <= (decided.value.load_kg or 0)
    if is_more(dose, decided.value):
        assert asked.reasons[0].code == DoseReason.COACH_WAITS_FOR_PAIN
