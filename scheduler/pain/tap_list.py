"""The short list of signs that an athlete taps through after a report that calls for it."""

from collections.abc import Mapping
from enum import StrEnum

from scheduler.pain.red_flags import RedFlag, severity

ASKED_FROM_SCORE = 3  # [of 10] ch: the tap list follows a report of this or more


class TapLine(StrEnum):
    """One line of the list: a group of signs."""

    CHEST_OR_BREATH = "chest_or_breath"
    HEAD_OR_NECK = "head_or_neck"
    NUMB_OR_WEAK = "numb_or_weak"
    SHAPE_OR_POP = "shape_or_pop"
    SWOLLEN_HOT_OR_DARK = "swollen_hot_or_dark"
    NIGHT_OR_UNWELL = "night_or_unwell"


TAP_LINES: Mapping[TapLine, tuple[RedFlag, ...]] = {
    TapLine.CHEST_OR_BREATH: (
        RedFlag.CHEST_INSIDE,
        RedFlag.EFFORT_DISCOMFORT,
        RedFlag.BREATHLESS_AT_REST,
        RedFlag.SHARP_ON_BREATHING,
        RedFlag.PALPITATIONS,
    ),
    TapLine.HEAD_OR_NECK: (
        RedFlag.COLLAPSE,
        RedFlag.HEAT_CONFUSION,
        RedFlag.FACE_ARM_SPEECH,
        RedFlag.WORST_HEADACHE,
        RedFlag.HEAD_INJURY_SIGNS,
        RedFlag.NECK_INJURY,
        RedFlag.NECK_WITH_LIMB_SIGNS,
        RedFlag.NECK_WITH_DIZZINESS,
        RedFlag.HEAD_KNOCK,
    ),
    TapLine.NUMB_OR_WEAK: (
        RedFlag.BLADDER_OR_BOWEL,
        RedFlag.NUMB_OR_WEAK,
        RedFlag.CANNOT_LIFT_ARM,
        RedFlag.TINGLING_PASSED,
    ),
    TapLine.SHAPE_OR_POP: (
        RedFlag.JOINT_OUT_OF_PLACE,
        RedFlag.SUSPECTED_DISLOCATION,
        RedFlag.POP_WITH_LOSS,
        RedFlag.FALL_SWELLING_GRIP,
    ),
    TapLine.SWOLLEN_HOT_OR_DARK: (
        RedFlag.HARD_SWOLLEN_LIMB,
        RedFlag.ARM_SWOLLEN_DISCOLOURED,
        RedFlag.OUT_OF_PROPORTION_AFTER_WORK,
        RedFlag.FEVER_OR_HOT_JOINT,
        RedFlag.CALF_SWOLLEN,
        RedFlag.BRUISE_ON_THINNERS,
    ),
    TapLine.NIGHT_OR_UNWELL: (
        RedFlag.NIGHT_OR_REST_PAIN,
        RedFlag.UNEXPLAINED_ILLNESS,
        RedFlag.CANCER_NIGHT_PAIN,
    ),
}


def flag_of_line(line: TapLine) -> RedFlag:
    """Return the gravest sign of a group: what a tap on it counts as until it is narrowed down."""
    return max(TAP_LINES[line], key=severity)


def is_list_due(*, score: int | None, is_new_site: bool, is_rise: bool) -> bool:
    """Tell whether the list follows a report: a new site, three or more, or a rise (ch).

    Args:
        score: the number that counts [of 10], or None while only words are known.
        is_new_site: no earlier report at this site and side.
        is_rise: the score rose within a week (:mod:`scheduler.pain.rises`).

    """
    return is_new_site or is_rise or (score is not None and score >= ASKED_FROM_SCORE)
