"""The codes with which the intake and the first tests explain themselves."""

from enum import StrEnum


class BaselineReason(StrEnum):
    """What the answers of the intake mean, and what is tested, with what, and what is not."""

    BEGINS = "baseline.begins"
    COACH_HAS_LOOKED = "baseline.coach_has_looked"
    WAITS_FOR_SCREEN = "baseline.waits_for_screen"
    WAITS_FOR_INJURY = "baseline.waits_for_injury"
    WAITS_FOR_GUARDIAN = "baseline.waits_for_guardian"
    DIRECTION_HELD = "baseline.direction_held"
    NO_HANGS = "baseline.no_hangs"
    NO_INVERSION = "baseline.no_inversion"
    TWO_DAYS = "baseline.two_days"
    TEST_ASKED = "baseline.test_asked"
    HEAVIER_LOAD = "baseline.heavier_load"
    LIGHTER_LOAD = "baseline.lighter_load"
    NO_FIGURES = "baseline.no_figures"
    NOT_OWNED = "baseline.not_owned"
    DIRECTION_NOT_TESTED = "baseline.direction_not_tested"
    HANG_NOT_TESTED = "baseline.hang_not_tested"
    INVERSION_NOT_TESTED = "baseline.inversion_not_tested"
    RESTED_NOT_TESTED = "baseline.rested_not_tested"
    BEYOND_STOP = "baseline.beyond_stop"
    AFTER_THE_COACH = "baseline.after_the_coach"
    NO_TIME = "baseline.no_time"
    NOTHING_TO_TEST = "baseline.nothing_to_test"
    TEST_NOT_YET = "baseline.test_not_yet"
    RESULT_WITH_PAIN = "baseline.result_with_pain"
    RESULT_AT_OTHER_LOAD = "baseline.result_at_other_load"
