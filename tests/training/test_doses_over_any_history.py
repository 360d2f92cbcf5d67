"""Whatever was reported: bounds, owned loads, pain, one thing at a time."""

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.catalogue.values import Measure
from scheduler.pain.values import Level
from scheduler.training.doses import next_dose
from scheduler.training.loads import rungs
from scheduler.training.values import (
    Dose,
    Exposure,
    PainFacts,
    Quality,
    ReserveAnswer,
    SetDone,
)
from tests.training.athletes import (
    BAND_PULL,
    MONDAY,
    OVERHEAD_HOLD,
    PRESS,
    PULL_UP,
    PUSH_UP_HOLD,
    RULEBOOK,
    athlete,
    facts,
)

MOVEMENTS = [PRESS, OVERHEAD_HOLD, PUSH_UP_HOLD, PULL_UP, BAND_PULL]
QUALITIES = [quality for quality in Quality if quality is not Quality.DYNAMIC_FRESH]
LOADS_KG = st.lists(st.sampled_from([2, 4, 5, 5.5, 6, 8, 10, 10.5, 12, 16, 24]), max_size=6)
PAINS = st.builds(PainFacts, level=st.sampled_from(Level), is_settled=st.booleans())
# CHOSEN: past the top by at most 50 %, before a large owned step
MOST_PAST_TOP = 1.5


@st.composite
def answers(draw):
    """One report: values around the target, a tap or none, pain or none."""
    shares = draw(st.lists(st.sampled_from([0, 0.5, 0.75, 0.85, 1, 1, 1, 1.2]), min_size=5))
    reserve = draw(
        st.none()
        | st.builds(
            ReserveAnswer, left=st.sampled_from([0, 1, 2, 4, 10, 20]), is_at_least=st.booleans()
        )
    )
    good = draw(st.booleans())
    if good:
        shares, reserve = [1.0] * 8, ReserveAnswer(left=20, is_at_least=True)
    return shares, reserve, draw(st.none() | PAINS)


def report(dose: Dose, answer, day: int) -> Exposure:
    shares, reserve, _ = answer
    sets = tuple(SetDone(value=int(dose.target * share)) for share in shares[: dose.sets])
    return Exposure(on=MONDAY + timedelta(days=day), dose=dose, sets=sets, reserve=reserve)


def lived_through(of, quality, loads_kg, reports):
    """Yield each dose with the one before it and the pain it was decided under.

    Of the one before, the sets are the most of the last four exposures: coming back to the usual
    sets after an easier day is no step (CHOSEN).
    """
    profile = athlete(loads_kg=loads_kg)
    history: list[Exposure] = []
    before = None
    for number, answer in enumerate(reports):
        pain = answer[2] or PainFacts()
        slot = facts(of, quality, profile=profile, pain=pain, fresh_maximum=20)
        now = next_dose(history, facts=slot, rulebook=RULEBOOK).value
        yield slot, before, now, pain
        history.append(report(now, answer, number * 3))
        usual = max(one.dose.sets for one in history[-4:])
        before = now.model_copy(update={"sets": usual})


def row_of(dose: Dose):
    row = RULEBOOK.quality(dose.quality)
    return row.reps if dose.measure is Measure.REPS else row.hold_s


CASES = {
    "of": st.sampled_from(MOVEMENTS),
    "quality": st.sampled_from(QUALITIES),
    "loads_kg": LOADS_KG,
    "reports": st.lists(answers(), min_size=1, max_size=25),
}


@settings(max_examples=150, deadline=None)
@given(**CASES)
def test_a_dose_never_leaves_the_bounds_of_its_row(of, quality, loads_kg, reports):
    for _, _, dose, _ in lived_through(of, quality, loads_kg, reports):
        row = row_of(dose)
        assert row.least <= dose.target <= -(-row.most * MOST_PAST_TOP // 1)
        assert 1 <= dose.sets <= RULEBOOK.quality(dose.quality).sets.most
        assert 1 <= dose.floor <= dose.target


@settings(max_examples=150, deadline=None)
@given(**CASES)
def test_a_dose_never_names_a_load_that_is_not_owned(of, quality, loads_kg, reports):
    for slot, _, dose, _ in lived_through(of, quality, loads_kg, reports):
        owned = rungs(slot.movement, profile=slot.profile)
        assert dose.rung in owned or (not owned and dose.load_kg is None)
        assert dose.load_kg is None or dose.load_kg in loads_kg


def what_rose(slot, before: Dose, now: Dose) -> list[str]:
    owned = rungs(slot.movement, profile=slot.profile)
    rose = []
    if owned and owned.index(now.rung) > owned.index(before.rung):
        rose.append("load")
    if now.target > before.target:
        rose.append("target")
    if now.sets > before.sets:
        rose.append("sets")
    if (now.rest_for_work or 0) < (before.rest_for_work or 0):
        rose.append("rest")
    return rose


@settings(max_examples=150, deadline=None)
@given(**CASES)
def test_one_thing_rises_at_a_time(of, quality, loads_kg, reports):
    for slot, before, now, _ in lived_through(of, quality, loads_kg, reports):
        if before is not None:
            assert len(what_rose(slot, before, now)) <= 1


@settings(max_examples=150, deadline=None)
@given(**CASES)
def test_nothing_rises_while_it_hurts_and_no_load_while_pain_is_watched(
    of, quality, loads_kg, reports
):
    for slot, before, now, pain in lived_through(of, quality, loads_kg, reports):
        if before is None:
            continue
        rose = what_rose(slot, before, now)
        if pain.level >= Level.EASE or not pain.is_settled:
            assert set(rose) <= {"sets"}  # a cut that ends is the week's own number again
        if pain.level is Level.WATCH:
            assert "load" not in rose


@pytest.mark.parametrize("movement", MOVEMENTS, ids=lambda one: one.key)
def test_a_year_of_good_reports_reaches_the_end_of_what_is_owned(movement):
    good = ([1.0] * 8, ReserveAnswer(left=20, is_at_least=True), None)
    quality = Quality.STRENGTH_ENDURANCE
    *_, (slot, _, last, _) = lived_through(movement, quality, [4, 5, 6], [good] * 150)
    assert last.rung == rungs(movement, profile=slot.profile)[-1]
