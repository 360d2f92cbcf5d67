"""The signs that a person must look at: how high, how fast, what stops, what is asked.

The lists are a careful reading of the sources named; the sorting into levels is our own and
must be checked by a clinician before use. Names of members are signs, never conditions.
"""

from collections.abc import Mapping
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.pain.values import Level, Urgency
from scheduler.sources import CH, CP


class RedFlag(StrEnum):
    """A sign that is never trained through."""

    CHEST_INSIDE = "chest_inside"
    EFFORT_DISCOMFORT = "effort_discomfort"
    BREATHLESS_AT_REST = "breathless_at_rest"
    SHARP_ON_BREATHING = "sharp_on_breathing"
    COLLAPSE = "collapse"
    HEAT_CONFUSION = "heat_confusion"
    FACE_ARM_SPEECH = "face_arm_speech"
    WORST_HEADACHE = "worst_headache"
    HEAD_INJURY_SIGNS = "head_injury_signs"
    NECK_INJURY = "neck_injury"
    NECK_WITH_LIMB_SIGNS = "neck_with_limb_signs"
    NECK_WITH_DIZZINESS = "neck_with_dizziness"
    JOINT_OUT_OF_PLACE = "joint_out_of_place"
    HARD_SWOLLEN_LIMB = "hard_swollen_limb"
    BLADDER_OR_BOWEL = "bladder_or_bowel"
    PREGNANCY_BLEEDING = "pregnancy_bleeding"
    OVERDOSE = "overdose"
    SELF_HARM = "self_harm"
    SUSPECTED_DISLOCATION = "suspected_dislocation"
    POP_WITH_LOSS = "pop_with_loss"
    ARM_SWOLLEN_DISCOLOURED = "arm_swollen_discoloured"
    OUT_OF_PROPORTION_AFTER_WORK = "out_of_proportion_after_work"
    FEVER_OR_HOT_JOINT = "fever_or_hot_joint"
    NUMB_OR_WEAK = "numb_or_weak"
    HEAD_KNOCK = "head_knock"
    PALPITATIONS = "palpitations"
    CALF_SWOLLEN = "calf_swollen"
    BRUISE_ON_THINNERS = "bruise_on_thinners"
    CANNOT_LIFT_ARM = "cannot_lift_arm"
    FALL_SWELLING_GRIP = "fall_swelling_grip"
    NIGHT_OR_REST_PAIN = "night_or_rest_pain"
    UNEXPLAINED_ILLNESS = "unexplained_illness"
    CANCER_NIGHT_PAIN = "cancer_night_pain"
    REST_NOT_FALLING = "rest_not_falling"
    KEEPS_COMING_BACK = "keeps_coming_back"
    TINGLING_PASSED = "tingling_passed"
    UNCLEAR_EMERGENCY = "unclear_emergency"
    UNCLEAR_SIGN = "unclear_sign"


class Stops(StrEnum):
    """How much training a flag stops."""

    EVERYTHING = "everything"
    UPPER_BODY = "upper_body"
    REGION = "region"
    ITEM = "item"


class FollowUp(StrEnum):
    """The one question that is asked, with buttons, when a flag is in doubt."""

    CHEST_INSIDE_OR_MUSCLE = "chest_inside_or_muscle"
    COMES_WITH_EFFORT = "comes_with_effort"
    BREATH_SETTLED = "breath_settled"
    HURTS_TO_BREATHE = "hurts_to_breathe"
    PASSED_OUT = "passed_out"
    CLEAR_IN_THE_HEAD = "clear_in_the_head"
    FACE_ARM_SPEECH = "face_arm_speech"
    HEADACHE_SUDDEN = "headache_sudden"
    AFTER_THE_KNOCK = "after_the_knock"
    NECK_SIGNS = "neck_signs"
    JOINT_SHAPE = "joint_shape"
    LIMB_HARD = "limb_hard"
    CONTROL_KEPT = "control_kept"
    BLEEDING_NOW = "bleeding_now"
    HOW_MUCH_TAKEN = "how_much_taken"
    SAFE_RIGHT_NOW = "safe_right_now"
    AFTER_THE_POP = "after_the_pop"
    ARM_COLOUR = "arm_colour"
    URINE_OR_SWELLING = "urine_or_swelling"
    FEVER_OR_HOT = "fever_or_hot"
    NUMB_FOR_HOW_LONG = "numb_for_how_long"
    HEARTBEAT = "heartbeat"
    CALF_ONE_SIDED = "calf_one_sided"
    BRUISE_GROWING = "bruise_growing"
    CAN_LIFT_ARM = "can_lift_arm"
    CAN_GRIP = "can_grip"
    NIGHTS = "nights"
    FEELING_ILL = "feeling_ill"
    UNLIKE_TRAINING = "unlike_training"
    NONE_ASKED = "none_asked"


class FlagRule(BaseModel):
    """What one red flag means for the athlete, the coach and the training."""

    model_config = ConfigDict(frozen=True)

    level: Level
    urgency: Urgency
    source: str
    follow_up: FollowUp
    stops: Stops
    is_private: bool = False
    """True where the words stay in the raw inbox and go nowhere else."""


def _emergency(source: str, follow_up: FollowUp, *, is_private: bool = False) -> FlagRule:
    return FlagRule(
        level=Level.EMERGENCY,
        urgency=Urgency.NOW,
        source=source,
        follow_up=follow_up,
        stops=Stops.EVERYTHING,
        is_private=is_private,
    )


def _clinician(
    urgency: Urgency, source: str, follow_up: FollowUp, *, stops: Stops | None = None
) -> FlagRule:
    wide = Stops.UPPER_BODY if urgency is Urgency.TODAY else Stops.REGION
    return FlagRule(
        level=Level.CLINICIAN,
        urgency=urgency,
        source=source,
        follow_up=follow_up,
        stops=stops or wide,
    )


TODAY, SOON, CONVENIENT = Urgency.TODAY, Urgency.SOON, Urgency.CONVENIENT
RED_FLAGS: Mapping[RedFlag, FlagRule] = {
    RedFlag.CHEST_INSIDE: _emergency("nhis2019", FollowUp.CHEST_INSIDE_OR_MUSCLE),
    RedFlag.EFFORT_DISCOMFORT: _emergency("nhis2019", FollowUp.COMES_WITH_EFFORT),
    RedFlag.BREATHLESS_AT_REST: _emergency("nhis2019", FollowUp.BREATH_SETTLED),
    RedFlag.SHARP_ON_BREATHING: _emergency(CH, FollowUp.HURTS_TO_BREATHE),
    RedFlag.COLLAPSE: _emergency("ahaacc2015", FollowUp.PASSED_OUT),
    RedFlag.HEAT_CONFUSION: _emergency(CH, FollowUp.CLEAR_IN_THE_HEAD),
    RedFlag.FACE_ARM_SPEECH: _emergency(CH, FollowUp.FACE_ARM_SPEECH),
    RedFlag.WORST_HEADACHE: _emergency(CH, FollowUp.HEADACHE_SUDDEN),
    RedFlag.HEAD_INJURY_SIGNS: _emergency(CH, FollowUp.AFTER_THE_KNOCK),
    RedFlag.NECK_INJURY: _emergency("mccartney2018", FollowUp.NECK_SIGNS),
    RedFlag.NECK_WITH_LIMB_SIGNS: _emergency("mccartney2018", FollowUp.NECK_SIGNS),
    RedFlag.NECK_WITH_DIZZINESS: _emergency(CH, FollowUp.NECK_SIGNS),
    RedFlag.JOINT_OUT_OF_PLACE: _emergency("murphy2023", FollowUp.JOINT_SHAPE),
    RedFlag.HARD_SWOLLEN_LIMB: _emergency("boast2016", FollowUp.LIMB_HARD),
    RedFlag.BLADDER_OR_BOWEL: _emergency("mccartney2018", FollowUp.CONTROL_KEPT),
    RedFlag.PREGNANCY_BLEEDING: _emergency(CH, FollowUp.BLEEDING_NOW),
    RedFlag.OVERDOSE: _emergency(CH, FollowUp.HOW_MUCH_TAKEN),
    RedFlag.SELF_HARM: _emergency(CH, FollowUp.SAFE_RIGHT_NOW, is_private=True),
    RedFlag.SUSPECTED_DISLOCATION: _clinician(TODAY, "murphy2023", FollowUp.JOINT_SHAPE),
    RedFlag.POP_WITH_LOSS: _clinician(TODAY, "murphy2023", FollowUp.AFTER_THE_POP),
    RedFlag.ARM_SWOLLEN_DISCOLOURED: _clinician(TODAY, "alla2010", FollowUp.ARM_COLOUR),
    RedFlag.OUT_OF_PROPORTION_AFTER_WORK: _clinician(
        TODAY, "rawson2017", FollowUp.URINE_OR_SWELLING
    ),
    RedFlag.FEVER_OR_HOT_JOINT: _clinician(TODAY, "murphy2023", FollowUp.FEVER_OR_HOT),
    RedFlag.NUMB_OR_WEAK: _clinician(TODAY, "mccartney2018", FollowUp.NUMB_FOR_HOW_LONG),
    RedFlag.HEAD_KNOCK: _clinician(TODAY, CH, FollowUp.AFTER_THE_KNOCK),
    RedFlag.PALPITATIONS: _clinician(TODAY, "ahaacc2015", FollowUp.HEARTBEAT),
    RedFlag.CALF_SWOLLEN: _clinician(TODAY, CH, FollowUp.CALF_ONE_SIDED),
    RedFlag.BRUISE_ON_THINNERS: _clinician(TODAY, CH, FollowUp.BRUISE_GROWING),
    RedFlag.CANNOT_LIFT_ARM: _clinician(TODAY, "rees2021", FollowUp.CAN_LIFT_ARM),
    RedFlag.FALL_SWELLING_GRIP: _clinician(TODAY, CH, FollowUp.CAN_GRIP),
    RedFlag.NIGHT_OR_REST_PAIN: _clinician(SOON, CH, FollowUp.NIGHTS),
    RedFlag.UNEXPLAINED_ILLNESS: _clinician(SOON, CH, FollowUp.FEELING_ILL),
    RedFlag.CANCER_NIGHT_PAIN: _clinician(SOON, CH, FollowUp.NIGHTS),
    RedFlag.REST_NOT_FALLING: _clinician(CONVENIENT, CH, FollowUp.NONE_ASKED),
    RedFlag.KEEPS_COMING_BACK: _clinician(CONVENIENT, CH, FollowUp.NONE_ASKED),
    RedFlag.TINGLING_PASSED: _clinician(
        CONVENIENT, CP, FollowUp.NUMB_FOR_HOW_LONG, stops=Stops.ITEM
    ),
    RedFlag.UNCLEAR_EMERGENCY: _emergency(CH, FollowUp.UNLIKE_TRAINING),
    RedFlag.UNCLEAR_SIGN: _clinician(TODAY, CH, FollowUp.UNLIKE_TRAINING),
}
LEARNT = frozenset({RedFlag.UNCLEAR_EMERGENCY, RedFlag.UNCLEAR_SIGN})
"""Signs that no rule names: a message reads like those that carry one, and the athlete is asked."""


def severity(flag: RedFlag) -> tuple[int, int]:
    """Return a key that sorts flags, the most urgent of the highest level last."""
    rule = RED_FLAGS[flag]
    return rule.level, -tuple(Urgency).index(rule.urgency)
