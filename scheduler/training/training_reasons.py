"""Why the training rules decide as they do: the codes, a family for each kind of decision."""

from enum import StrEnum


class PermissionReason(StrEnum):
    """Whether a stage permits a movement, and which quality a slot gets."""

    PERMITTED = "permission.permitted"
    ARM_NOT_YET = "permission.arm_not_yet"
    DYNAMIC_NOT_YET = "permission.dynamic_not_yet"
    DYNAMIC_PULL_NOT_YET = "permission.dynamic_pull_not_yet"
    UNSTABLE_NOT_YET = "permission.unstable_not_yet"
    MOVEMENT_NOT_YET = "permission.movement_not_yet"
    UPKEEP = "permission.upkeep"
    OVERRIDDEN = "permission.overridden_by_coach"
    QUALITY_OF_ACCESSORY = "permission.quality_of_accessory"
    QUALITY_OF_STAGE = "permission.quality_of_stage"
    QUALITY_OF_UNLOADED_HOLD = "permission.quality_of_unloaded_hold"
    QUALITY_OF_FRESH_DYNAMIC = "permission.quality_of_fresh_dynamic"
    QUALITY_OF_ROUNDS = "permission.quality_of_rounds"
    QUALITY_OF_MAXIMAL_SLOT = "permission.quality_of_maximal_slot"
    QUALITY_OF_SECOND_PAIR = "permission.quality_of_second_pair"


class DoseReason(StrEnum):
    """Why a dose is what it is."""

    FIRST_FROM_BEST = "dose.first_from_best"
    FIRST_CAREFUL = "dose.first_careful"
    FIRST_WEEKS_TWO_SETS = "dose.first_weeks_two_sets"
    NEW_QUALITY = "dose.new_quality"
    NEW_QUALITY_LIGHTER = "dose.new_quality_lighter"
    STEP_IN_TIME = "dose.step_in_time"
    STEP_IN_REPS = "dose.step_in_reps"
    STEP_IN_METRES = "dose.step_in_metres"
    STEP_IN_LOAD = "dose.step_in_load"
    STEP_IN_BIG_LOAD = "dose.step_in_big_load"
    STEP_IN_BAND = "dose.step_in_band"
    STEP_PAST_TOP = "dose.step_past_top"
    STEP_IN_REST = "dose.step_in_rest"
    STEP_BY_ESTIMATE = "dose.step_by_estimate"
    SET_GIVEN_BACK = "dose.set_given_back"
    READY_FOR_HARDER = "dose.ready_for_harder"
    PLAINLY_LIGHT = "dose.plainly_light"
    PLAINLY_LIGHT_BAND = "dose.plainly_light_band"
    PLAINLY_EASY = "dose.plainly_easy"
    AFTER_TRY = "dose.after_try"
    SAME_AFTER_TRY = "dose.same_after_try"
    ACCESSORY_TWICE = "dose.accessory_twice"
    DOWN_LITTLE_LEFT = "dose.down_little_left"
    ONE_MORE_AT_TOP = "dose.one_more_at_top"
    NOTHING_HEAVIER = "dose.nothing_heavier"
    SAME_NO_ANSWER = "dose.same_no_answer"
    SAME_NOT_AT_TARGET = "dose.same_not_at_target"
    SAME_LITTLE_LEFT = "dose.same_little_left"
    SAME_MISSED = "dose.same_missed"
    SAME_PAIN = "dose.same_pain"
    SAME_PAIN_NO_LOAD = "dose.same_pain_no_load"
    SAME_AFTER_GAP = "dose.same_after_gap"
    SAME_LEVEL_HELD = "dose.same_level_held"
    SAME_LIGHTER_WEEK = "dose.same_lighter_week"
    EASE_CUT = "dose.ease_cut"
    DOWN_AFTER_MISSES = "dose.down_after_misses"
    DOWN_NOTHING_LEFT = "dose.down_nothing_left"
    TRY_EASIER = "dose.try_easier"
    LIGHTER_TAKEN = "dose.lighter_taken"
    LOAD_NO_LONGER_OWNED = "dose.load_no_longer_owned"
    NO_OWNED_LOAD = "dose.no_owned_load"
    MORE_SETS_FIRST = "dose.more_sets_first"
    PULL_GUARD = "dose.pull_guard"
    SETS_SHARED = "dose.sets_shared"
    PUSH_CUT_WITH_PULL = "dose.push_cut_with_pull"
    ONE_THING_AT_A_TIME = "dose.one_thing_at_a_time"
    UP_AGAIN = "dose.up_again"
    GOES_ON_FROM_REPORT = "dose.goes_on_from_report"


class VolumeReason(StrEnum):
    """How many sets a direction gets in a week, and when a week is lighter."""

    CUT_AFTER_MISSES = "volume.cut_after_misses"
    LIGHTER_BY_COUNT = "volume.lighter_by_count"
    LIGHTER_BY_SIGNALS = "volume.lighter_by_signals"
    MISSED_WEEK_COUNTS = "volume.missed_week_counts"
    NOT_LIGHTER = "volume.not_lighter"


class GapReason(StrEnum):
    """What missed days change."""

    AS_PLANNED = "gap.as_planned"
    NO_STEP = "gap.no_step"
    SHARE_AFTER_TRAVEL = "gap.share_after_travel"
    SHARE_CAREFUL = "gap.share_careful"
    SHARE_AFTER_LONG = "gap.share_after_long"
    RETURN_DONE = "gap.return_done"
    SCREEN_AGAIN = "gap.screen_again"
    FEVER_WAIT = "gap.fever_wait"


class GateReason(StrEnum):
    """Where an athlete stands against a standard or the checklist."""

    WEEKS = "gate.weeks"
    WEEKS_WAIVED = "gate.weeks_waived"
    STANDARD = "gate.standard"
    STANDARD_BY_COACH = "gate.standard_by_coach"
    EQUIVALENT = "gate.equivalent"
    EQUIVALENT_OUT_OF_RANGE = "gate.equivalent_out_of_range"
    ADHERENCE = "gate.adherence"
    PAIN = "gate.pain"
    EQUIPMENT_MISSING = "gate.equipment_missing"
    DIRECTION_HELD = "gate.direction_held"
    SIDES = "gate.sides"
    SIDES_OWN_START = "gate.sides_own_start"
    LAST_STAGE = "gate.last_stage"
    START_STAGE = "gate.start_stage"
    START_UNTESTED = "gate.start_untested"
    TRY_STANDARD = "gate.try_standard"


class CapacityReason(StrEnum):
    """Whether what an athlete can do has changed by more than chance."""

    REAL_CHANGE = "capacity.real_change"
    WITHIN_UNCERTAINTY = "capacity.within_uncertainty"
