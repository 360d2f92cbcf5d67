"""How a dose gets easier. CHOSEN order: load, then time or repetitions, then a set."""

import pytest

from scheduler.training.values import Neighbour, Quality, Rung
from tests.training.athletes import (
    OVERHEAD_HOLD,
    PUSH_UP_HOLD,
    after,
    athlete,
    codes,
    done,
    done_by_side,
    dose,
    left,
)


def test_one_set_below_its_floor_keeps_the_dose():
    # CHOSEN: the floor is 80 % of the target, 8 of 10
    decision = after(done(dose(target=10, kg=10), 10, 9, 7, reserve=left(0)))
    assert (decision.value.target, codes(decision)) == (10, ["dose.same_missed"])


def test_a_set_left_out_counts_as_below_its_floor():
    assert codes(after(done(dose(target=10, kg=10), 10, 10, reserve=left(3)))) == [
        "dose.same_missed"
    ]


def test_two_misses_running_take_the_owned_load_within_ten_percent_below():
    # DERIVED: 11 -> 10 kg is 9.1 % less
    was = dose(target=10, kg=11)
    decision = after(done(was, 10, 9, 7), done(was, 10, 7, 7, day=3))
    assert (decision.value.load_kg, decision.value.target) == (10, 10)
    assert codes(decision) == ["dose.down_after_misses"]


@pytest.mark.parametrize(
    ("target", "new"),
    # CHOSEN: 2 repetitions from 10 on, 1 below; never below the row's bottom of 8
    [(12, 10), (10, 8), (9, 8)],
)
def test_without_a_load_near_below_the_repetitions_fall(target, new):
    # DERIVED: 10 -> 8 kg would be 20 % less
    was = dose(target=target, kg=10)
    decision = after(done(was, 5, 5, 5), done(was, 5, 5, 5, day=3))
    assert (decision.value.load_kg, decision.value.target) == (10, new)


def test_a_hold_without_load_falls_by_a_tenth_of_its_time():
    # DERIVED: 45 s less 10 % is 40.5, whole seconds 40
    quality = Quality.MUSCULAR_ENDURANCE
    was = dose(PUSH_UP_HOLD, quality, target=45, reserve_asked=15)
    decision = after(
        done(was, 30, 30, 30), done(was, 30, 30, 30, day=3), of=PUSH_UP_HOLD, quality=quality
    )
    assert decision.value.target == 40


def test_at_the_bottom_of_the_range_a_set_goes():
    was = dose(target=8, kg=10)
    decision = after(done(was, 5, 5, 5), done(was, 5, 5, 5, day=3))
    assert (decision.value.sets, decision.value.target, decision.value.load_kg) == (2, 8, 10)


def test_at_the_bottom_of_everything_any_lighter_owned_load_is_taken():
    was = dose(target=8, kg=10, sets=1, held_back=2)
    decision = after(done(was, 5), done(was, 5, day=3))
    assert (decision.value.sets, decision.value.load_kg) == (1, 8)


def test_where_nothing_can_be_made_easier_the_easier_neighbour_is_asked_for():
    was = dose(target=8, kg=4, sets=1, held_back=2)
    decision = after(done(was, 5), done(was, 5, day=3))
    assert (decision.value.load_kg, decision.value.neighbour) == (4, Neighbour.EASIER)
    assert codes(decision) == ["dose.down_after_misses", "dose.try_easier"]


def test_nothing_left_twice_makes_it_easier_too():
    was = dose(target=10, kg=11)
    decision = after(done(was, reserve=left(0)), done(was, reserve=left(0), day=3))
    assert (decision.value.load_kg, codes(decision)) == (10, ["dose.down_nothing_left"])


def test_a_miss_at_another_dose_does_not_run_on():
    decision = after(
        done(dose(target=12, kg=10), 5, 5, 5), done(dose(target=10, kg=10), 5, 5, 5, day=3)
    )
    assert codes(decision) == ["dose.same_missed"]


def test_the_weaker_arm_decides_a_miss():
    was = dose(OVERHEAD_HOLD, target=20, kg=8)
    decision = after(
        done_by_side(was, left_values=(20, 20, 15), right_values=(20, 20, 20), reserve=left(10)),
        of=OVERHEAD_HOLD,
    )
    assert codes(decision) == ["dose.same_missed"]


def test_the_sound_arm_alone_still_steps():
    was = dose(OVERHEAD_HOLD, target=20, kg=8)
    decision = after(
        done_by_side(was, left_values=(), right_values=(20, 20, 20), reserve=left(10)),
        of=OVERHEAD_HOLD,
    )
    assert decision.value.target == 25


def test_a_lighter_load_taken_in_every_set_becomes_the_dose():
    history = done(dose(target=8, kg=10), reserve=left(3), rung=Rung(load_kg=8))
    decision = after(history)
    assert (decision.value.load_kg, decision.value.target) == (8, 8)
    assert codes(decision) == ["dose.lighter_taken"]


def test_a_weight_taken_below_all_that_are_listed_is_said_to_be_so():
    history = done(dose(target=8, kg=6), reserve=left(3), rung=Rung(load_kg=3))
    decision = after(history, profile=athlete(loads_kg=(6, 12)))
    assert decision.value.load_kg == 6
    assert codes(decision)[0] == "dose.lighter_unlisted"
    assert decision.reasons[0].figures == {"took_kg": 3, "load_kg": 6}


def test_a_load_that_is_no_longer_owned_gives_way_to_the_next_below():
    history = done(dose(target=8, kg=10), reserve=left(3))
    decision = after(history, profile=athlete(loads_kg=(6, 12)))
    assert (decision.value.load_kg, decision.value.target) == (6, 8)
    assert codes(decision) == ["dose.load_no_longer_owned"]


def test_when_only_heavier_loads_are_owned_the_easier_neighbour_is_asked_for():
    history = done(dose(target=12, kg=10), reserve=left(3))
    decision = after(history, profile=athlete(loads_kg=(16, 20)))
    assert (decision.value.load_kg, decision.value.target) == (16, 8)
    assert decision.value.neighbour is Neighbour.EASIER


def test_when_nothing_is_owned_no_weight_is_named():
    history = done(dose(target=12, kg=10), reserve=left(3))
    decision = after(history, profile=athlete(loads_kg=(), bands=()))
    assert decision.value.load_kg is None
    assert "dose.no_owned_load" in codes(decision)
