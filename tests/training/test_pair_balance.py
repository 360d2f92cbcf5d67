"""Pulls that are cut for pain take the pushes of their pair along, so that the balance holds."""

from hypothesis import given
from hypothesis import strategies as st

from scheduler.catalogue.values import Direction
from scheduler.reasons import Decision, reason
from scheduler.training.pair_balance import push_beside
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Quality
from tests.training.athletes import PULL_UP, PUSH_UP_HOLD, RULEBOOK, codes, dose

MOST = RULEBOOK.weeks.push_to_pull.most or 0.0  # COMMON PRACTICE: 1.1 pushes for a pull
EASED = (reason(DoseReason.EASE_CUT, "cp", sets=2),)


def decision(movement, sets, reasons=()):
    made = dose(movement, Quality.MUSCULAR_ENDURANCE, target=30).model_copy(update={"sets": sets})
    return Decision(value=made, reasons=reasons)


def beside(push, pull, planned):
    return push_beside(push, pull=pull, push_planned=planned[0], pull_planned=planned[1])


def test_a_pull_cut_by_a_third_takes_its_push_along():
    # DERIVED 3 x 2 / 3
    found = beside(decision(PUSH_UP_HOLD, 3), decision(PULL_UP, 2, EASED), (3, 3))
    assert found.value.sets == 2
    assert codes(found) == ["dose.push_cut_with_pull"]
    assert found.reasons[0].figures == {"movement": PULL_UP.key, "pull_sets": 2, "sets": 2}


def test_a_push_that_was_cut_as_well_is_not_cut_twice():
    found = beside(decision(PUSH_UP_HOLD, 2), decision(PULL_UP, 2, EASED), (3, 3))
    assert (found.value.sets, found.reasons) == (2, ())


def test_a_pull_that_is_careful_for_another_reason_leaves_the_push():
    guard = (reason(DoseReason.PULL_GUARD, "ch"),)
    assert beside(decision(PUSH_UP_HOLD, 3), decision(PULL_UP, 2, guard), (3, 3)).value.sets == 3


pairs = st.lists(
    st.integers(1, 5).flatmap(
        lambda planned: st.tuples(
            st.just(planned), st.integers(1, planned), st.integers(1, planned), st.booleans()
        )
    ),
    min_size=1,
    max_size=8,
)


@given(pairs)
def test_any_week_whose_pulls_are_cut_for_pain_keeps_its_pushes_within_bounds(pairs):
    """A week gives both of a pair the same sets; then any pull is cut, any push left or cut."""
    pushes = pulls = 0
    for planned, pull_sets, push_sets, is_eased in pairs:
        pull = decision(PULL_UP, pull_sets if is_eased else planned, EASED if is_eased else ())
        push = beside(decision(PUSH_UP_HOLD, push_sets), pull, (planned, planned))
        assert 1 <= push.value.sets <= push_sets
        pushes += push.value.sets
        pulls += pull.value.sets
    assert pushes <= MOST * pulls


def test_these_are_a_push_and_a_pull():
    assert PUSH_UP_HOLD.direction.is_push
    assert PULL_UP.direction is Direction.VERTICAL_PULL
