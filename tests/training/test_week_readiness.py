"""What is beyond an athlete today, and what opens it: CHOSEN rules, CHOSEN figures.

Three sets of five strict pull-ups open dynamic pulls; a newcomer begins on the first two rungs;
five repetitions of an assisted pull-up open the strict one.
"""

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Arm, Chain, Direction, Equipment, Loading, Measure, Tempo
from scheduler.training.permissions import PermissionFacts, permits
from scheduler.training.standards import BaselineSet
from scheduler.training.values import AthleteProfile, Dose, Exposure, Quality, Rung, SetDone
from scheduler.training.week_readiness import Shown, can_pull_dynamically, not_yet, shown_by
from scheduler.training.week_values import WeekRequest
from scheduler.training.weeks import draw_week
from tests.training.any_week import MONDAY, requests
from tests.training.athletes import RULEBOOK, athlete, codes, dose

LIBRARY = default_library()
MOVEMENTS = LIBRARY.movements
GYM = frozenset(Equipment)
NEWCOMER = athlete(training_age_months=0, equipment=GYM)
TRAINED = athlete(training_age_months=24, equipment=GYM)
GENERAL, ENDURANCE = Quality.GENERAL_STRENGTH, Quality.MUSCULAR_ENDURANCE
NOTHING = Shown()
PULL_UPS = [movement.key for movement in LIBRARY.ladder("strict_pull_up")]
HOLDS = [movement.key for movement in LIBRARY.ladder("push_up_hold")]


def trained(key: str, *values: float, quality: Quality = GENERAL, **changes: Any) -> Exposure:
    asked: Dose = dose(MOVEMENTS[key], quality, target=5, **changes)
    return Exposure(on=MONDAY, dose=asked, sets=tuple(SetDone(value=one) for one in values))


def closed_for(
    profile: AthleteProfile, *exposures: Exposure, weeks: int = 0, tests: Any = ()
) -> frozenset[str]:
    shown = shown_by(exposures, tests=tests, rulebook=RULEBOOK)
    return not_yet(shown, profile=profile, weeks_trained=weeks, library=LIBRARY, rulebook=RULEBOOK)


def test_three_times_five_strict_pull_ups_open_dynamic_pulls() -> None:
    found = can_pull_dynamically([trained("strict_pull_up", 6, 5, 5)], rulebook=RULEBOOK)
    assert (found.value, codes(found)) == (True, ["permission.permitted"])


@pytest.mark.parametrize(
    "exposures",
    [
        [],
        [trained("strict_pull_up", 6, 5, 4)],
        [trained("strict_pull_up", 5, 5)],
        [trained("strict_pull_up", 5, 5), trained("strict_pull_up", 5)],
        [trained("band_assisted_pull_up", 8, 8, 8)],
        [trained("pull_up_lowering", 8, 8, 8)],
        [trained("strict_pull_up", 5, 5, 5, rung=Rung(band="green"))],
        [trained("strict_pull_up", 5, 5, 5, rung=Rung(assist_kg=8))],
    ],
    ids=["none", "a set short", "two sets", "two days", "band", "lowering", "own band", "help"],
)
def test_less_than_three_times_five_does_not(exposures: list[Exposure]) -> None:
    found = can_pull_dynamically(exposures, rulebook=RULEBOOK)
    assert (found.value, codes(found)) == (False, ["permission.dynamic_pull_not_yet"])


def test_help_in_a_single_set_is_no_strict_set() -> None:
    exposure = trained("strict_pull_up", 5, 5, 5)
    helped = exposure.sets[0].model_copy(update={"rung": Rung(band="red")})
    with_help = exposure.model_copy(update={"sets": (helped, *exposure.sets[1:])})
    assert not can_pull_dynamically([with_help], rulebook=RULEBOOK).value


def test_what_counts_as_strict_is_a_pull_up_of_the_library_without_help() -> None:
    for key in RULEBOOK.stages.extras.strict_pull_movements:
        one = MOVEMENTS[key]
        assert (one.direction, one.chain, one.arm) == (
            Direction.VERTICAL_PULL,
            Chain.CLOSED,
            Arm.BENT,
        )
        assert (one.measure, one.loading) == (Measure.REPS, Loading.BODYWEIGHT_PLUS)
        assert one.tempo is Tempo.CONTROLLED


def test_newcomer_begins_on_the_first_two_rungs() -> None:
    closed = closed_for(NEWCOMER)
    assert [key in closed for key in HOLDS] == [False, False, True, True, True]


def test_rung_opens_when_the_one_below_was_done_at_its_rows_bottom() -> None:
    # CHOSEN: muscular endurance begins at 20 s
    def rungs(*exposures: Exposure) -> list[bool]:
        closed = closed_for(NEWCOMER, *exposures)
        return [key in closed for key in HOLDS]

    assert rungs(trained(HOLDS[1], 20, quality=ENDURANCE)) == [False, False, False, True, True]
    assert rungs(trained(HOLDS[1], 19, quality=ENDURANCE)) == [False, False, True, True, True]
    # what was trained stays open, and everything easier with it
    assert rungs(trained(HOLDS[3], 9, quality=ENDURANCE)) == [False] * 4 + [True]


@pytest.mark.parametrize(("value", "is_closed"), [(20, False), (19, True)])
def test_test_opens_what_it_shows(value: float, *, is_closed: bool) -> None:
    tested = BaselineSet(
        on=MONDAY, movement_key="push_up_hold", measure=Measure.HOLD_S, value=value
    )
    assert ("push_up_hold" in closed_for(NEWCOMER, tests=[tested])) is is_closed


def test_rungs_count_among_what_is_owned() -> None:
    """Without a box the second rung of the hold ladder is on the knees."""
    closed = closed_for(athlete(training_age_months=0, equipment=frozenset()))
    assert HOLDS[2] not in closed
    assert HOLDS[3] in closed


@pytest.mark.parametrize(("weeks", "is_new"), [(0, True), (26, True), (27, False)])
def test_after_six_months_with_us_nobody_is_a_newcomer(weeks: int, *, is_new: bool) -> None:
    # COMMON PRACTICE: under 6 months; DERIVED 6 months are 26.1 weeks
    assert (HOLDS[3] in closed_for(NEWCOMER, weeks=weeks)) is is_new


@pytest.mark.parametrize("profile", [NEWCOMER, TRAINED], ids=["newcomer", "trained"])
def test_strict_pull_up_waits_for_five_assisted_ones_whoever_it_is(
    profile: AthleteProfile,
) -> None:
    assisted = "band_assisted_pull_up"
    assert {"strict_pull_up", "chin_up"} <= closed_for(profile)
    assert "strict_pull_up" in closed_for(profile, trained(assisted, 4, 4, 4))
    opened = closed_for(profile, trained(assisted, 5))
    assert not {"strict_pull_up", "chin_up"} & opened
    # on legs alone it is not enough where there is a band; where there is none, it is
    on_legs = trained("foot_assisted_pull_up", 9)
    assert "strict_pull_up" in closed_for(profile, on_legs)
    no_band = profile.model_copy(update={"equipment": GYM - {Equipment.BAND}})
    assert "strict_pull_up" not in closed_for(no_band, on_legs)


def test_dip_waits_for_assisted_ones() -> None:
    assert "dip" in closed_for(TRAINED)
    assert "dip" not in closed_for(TRAINED, trained("band_assisted_dip", 5))


@pytest.mark.parametrize("stage", [1, 2, 3, 4, 5])
@pytest.mark.parametrize("profile", [NEWCOMER, TRAINED], ids=["newcomer", "trained"])
def test_every_cell_that_a_stage_permits_still_has_a_movement(
    profile: AthleteProfile, stage: int
) -> None:
    closed = closed_for(profile)
    facts = PermissionFacts(stage=stage)
    cells = [
        LIBRARY.cell(direction, chain, arm)
        for direction in Direction
        for chain in Chain
        for arm in RULEBOOK.stage(stage).arms
    ]
    filled = [cell for cell in cells if cell]  # the two void cells apart
    assert len(cells) - len(filled) == len(RULEBOOK.stage(stage).arms)  # DERIVED: void, an arm each
    for cell in filled:
        open_now = [
            one
            for one in cell
            if permits(one, facts=facts, rulebook=RULEBOOK).value and one.key not in closed
        ]
        assert open_now, cell[0]


@settings(max_examples=100, deadline=None)
@given(requests, st.sampled_from([NEWCOMER, TRAINED]))
def test_week_of_who_never_pulled_with_help_holds_no_strict_pull_up(
    request: WeekRequest, profile: AthleteProfile
) -> None:
    owned = profile.model_copy(update={"equipment": request.equipment})
    request = request.model_copy(update={"not_yet": closed_for(owned)})
    drawn = draw_week(request, library=LIBRARY, rulebook=RULEBOOK)
    keys = {slot.movement_key for slot in drawn.slots}
    assert not keys & set(RULEBOOK.stages.extras.strict_pull_movements)


def test_newcomers_first_week_takes_the_rung_nearest_to_what_the_standards_ask() -> None:
    wanted = frozenset(row.movements[0] for row in RULEBOOK.standards[1])
    week = draw_week(
        WeekRequest(
            stage=1,
            week_start=MONDAY,
            session_min=45,
            equipment=GYM,
            wanted=wanted,
            not_yet=closed_for(NEWCOMER),
            is_first_two_weeks=True,
        ),
        library=LIBRARY,
        rulebook=RULEBOOK,
    )
    keys = {slot.movement_key for slot in week.slots}
    assert {"incline_push_up_hold", "half_kneeling_overhead_hold", "farmer_carry"} <= keys
    assert not keys & closed_for(NEWCOMER)


def test_what_the_coach_pinned_is_not_held_back() -> None:
    asked: dict[str, Any] = {
        "stage": 1,
        "week_start": MONDAY,
        "session_min": 45,
        "equipment": GYM,
        "not_yet": closed_for(NEWCOMER),
    }
    pinned = WeekRequest(**asked, pinned=frozenset({"push_up_hold"}))
    week = draw_week(pinned, library=LIBRARY, rulebook=RULEBOOK)
    assert "push_up_hold" in {slot.movement_key for slot in week.slots}


def test_pull_up_ladder_is_the_one_these_tests_mean() -> None:
    assert PULL_UPS[:3] == ["foot_assisted_pull_up", "band_assisted_pull_up", "strict_pull_up"]
    assert len(HOLDS) == 5
