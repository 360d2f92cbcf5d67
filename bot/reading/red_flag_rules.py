"""Which signs together are a red flag: symptom, place and course, in any order of words.

The rules know concepts, not words, and are the same in every language. ``needs`` are found
within so many words of each other; ``unless`` names what makes it harmless. Where words leave a
doubt the flag is asked about, and counts until it is answered.
"""

from dataclasses import dataclass

from scheduler.pain.red_flags import RedFlag

NEAR = 8  # [words] ch: a sign and its place
ACROSS = 25  # [words] ch: a sign and its course, also over the end of a sentence


@dataclass(frozen=True)
class Rule:
    """One way of saying a red flag.

    ``|`` parts concepts of which one is enough, ``+`` joins those that are harmless together, and
    ``!`` names what makes the excuse void.
    """

    flag: RedFlag
    needs: tuple[str, ...]
    within: int = NEAR
    unless: tuple[str, ...] = ()
    unless_within: int = 12
    is_stated: bool = True


def _stated(flag: RedFlag, *needs: str, within: int = NEAR, unless: str = "") -> Rule:
    return Rule(flag, needs, within, tuple(unless.split()))


def _asked(flag: RedFlag, *needs: str, within: int = NEAR, unless: str = "") -> Rule:
    return Rule(flag, needs, within, tuple(unless.split()), is_stated=False)


F = RedFlag
CHEST = (
    _stated(
        F.CHEST_INSIDE,
        "chest",
        "pressure|pain",
        "sweat|sick|jaw|breathless|cant_breathe|inside",
        within=ACROSS,
        unless="muscle_hint lifts_figure",
    ),
    _stated(F.CHEST_INSIDE, "chest", "pressure|pain", "jaw|cold_sweat|cant_breathe", within=ACROSS),
    _stated(
        F.CHEST_INSIDE,
        "chest",
        "pressure|pain",
        "arm",
        within=NEAR,
        unless="muscle_hint after_exercise exercise shoulder",
    ),
    _stated(F.CHEST_INSIDE, "chest", "pressure|pain|indigestion", "stairs", within=ACROSS),
    _asked(
        F.CHEST_INSIDE,
        "chest",
        "pressure",
        within=9,
        unless="muscle_hint after_exercise lifts_figure position_cue",
    ),
    _asked(
        F.CHEST_INSIDE,
        "chest",
        "pain_not_sore|odd_feeling",
        within=6,
        unless="muscle_hint position_cue",
    ),
    _asked(
        F.CHEST_INSIDE,
        "chest",
        "pain_not_sore|pressure",
        "at_rest|sudden|during_exercise",
        within=14,
        unless="muscle_hint position_cue",
    ),
    _stated(F.CHEST_INSIDE, "heart_attack", unless="heart_figure laugh"),
    _asked(F.CHEST_INSIDE, "indigestion", "exercise|sweat|stairs|arm|jaw", within=12),
    _stated(
        F.EFFORT_DISCOMFORT,
        "jaw",
        "pain|pressure",
        "arm|sweat|sick|breathless|stairs|shoulder",
        within=14,
    ),
    _stated(
        F.EFFORT_DISCOMFORT,
        "arm|shoulder",
        "pain|pressure",
        "cold_sweat|cant_breathe",
        within=14,
        unless="after_exercise during_exercise lost_grip swollen hand",
    ),
    _stated(
        F.EFFORT_DISCOMFORT,
        "arm|shoulder|jaw|upper_back",
        "pain|pressure",
        "stairs",
        "eases_with_rest|not_arm_motion",
        within=ACROSS,
        unless="fall",
    ),
    _asked(
        F.EFFORT_DISCOMFORT,
        "arm|shoulder|jaw|upper_back",
        "pain|pressure",
        "stairs",
        within=14,
        unless="arm_motion after_exercise fall sore leg numb",
    ),
    _asked(F.EFFORT_DISCOMFORT, "jaw", "pain|pressure", "exercise", within=14, unless="dental"),
)
BREATH = (
    _stated(
        F.BREATHLESS_AT_REST, "cant_breathe|breathless", "at_rest", within=14, unless="nose laugh"
    ),
    _asked(F.BREATHLESS_AT_REST, "cant_breathe", unless="nose laugh during_exercise exercise"),
    _asked(
        F.BREATHLESS_AT_REST, "breathless_word", unless="nose laugh during_exercise exercise stairs"
    ),
    _stated(
        F.BREATHLESS_AT_REST, "breathless|cant_breathe", "wont_settle", within=14, unless="nose"
    ),
    _stated(F.SHARP_ON_BREATHING, "pain|catch", "breath_in", within=8, unless="laugh breath_cue"),
)
FAINT = (
    _stated(F.COLLAPSE, "passed_out", unless="not_passed_out near_faint"),
    _asked(F.COLLAPSE, "near_faint", unless="not_passed_out laugh"),
    _stated(F.HEAT_CONFUSION, "confused", "heat", within=ACROSS, unless="plan_confusion"),
    _stated(F.FACE_ARM_SPEECH, "face_speech", unless="laugh dental"),
    _stated(
        F.FACE_ARM_SPEECH,
        "weak_arm_sudden",
        unless="tired during_exercise laugh slept_on wide_weak_side",
    ),
    _stated(
        F.FACE_ARM_SPEECH, "cant_lift|weak", "sudden_only", within=6, unless="pop fall tired laugh"
    ),
    _stated(F.WORST_HEADACHE, "headache", "worst", within=14, unless="laugh hangover"),
)
KNOCK = (
    _stated(F.HEAD_INJURY_SIGNS, "head_knock", "vomit_memory", within=40, unless="not_head_knock"),
    _stated(F.HEAD_KNOCK, "head_knock", "head_signs", within=40, unless="not_head_knock"),
    _asked(F.HEAD_KNOCK, "head_knock", unless="not_head_knock long_ago!again"),
    _stated(F.NECK_INJURY, "neck_injury", unless="neck_figure laugh"),
    _stated(
        F.NECK_INJURY,
        "neck",
        "fall",
        "pain|sore|numb|weak|dizzy|pop|cant_move",
        within=14,
        unless="fall_figure neck_figure slept_on",
    ),
    _stated(F.NECK_WITH_LIMB_SIGNS, "neck", "numb|clumsy|weak", "both_arms", within=ACROSS),
    _stated(
        F.NECK_WITH_LIMB_SIGNS,
        "neck",
        "numb|clumsy|weak",
        "legs_or_walk",
        within=ACROSS,
        unless="neck_figure tired",
    ),
    _asked(
        F.NECK_WITH_LIMB_SIGNS,
        "neck",
        "numb_strong|weak",
        "limb_pair",
        within=16,
        unless="neck_figure",
    ),
    _stated(F.NECK_WITH_DIZZINESS, "neck", "pain|sore", "dizzy", within=ACROSS),
)
JOINT = (
    _stated(
        F.JOINT_OUT_OF_PLACE,
        "joint",
        "visible_out",
        within=6,
        unless="went_back long_ago pop_out_figure pop_harmless position_cue",
    ),
    _stated(
        F.JOINT_OUT_OF_PLACE,
        "joint",
        "dislocate|visible_out",
        "stuck_out|looks_bad",
        within=14,
        unless="long_ago",
    ),
    _stated(
        F.JOINT_OUT_OF_PLACE,
        "joint",
        "visible_out|dislocate",
        "cold_hand",
        within=ACROSS,
        unless="long_ago pop_out_figure position_cue",
    ),
    _stated(
        F.SUSPECTED_DISLOCATION,
        "joint",
        "dislocate|visible_out",
        within=10,
        unless="long_ago pop_out_figure pop_harmless position_cue",
    ),
    _stated(
        F.SUSPECTED_DISLOCATION,
        "joint",
        "dislocate|visible_out",
        "went_back",
        within=16,
        unless="long_ago pop_out_figure",
    ),
    _stated(F.SUSPECTED_DISLOCATION, "joint", "back_in", within=6, unless="long_ago"),
    _asked(
        F.SUSPECTED_DISLOCATION,
        "dislocate_word",
        unless="long_ago history_only!again pop_out_figure",
    ),
    _stated(
        F.POP_WITH_LOSS, "pop_event", "loss", within=ACROSS, unless="pop_harmless long_ago laugh"
    ),
    _stated(
        F.POP_WITH_LOSS, "pop", "loss", "limb_any", within=14, unless="pop_harmless long_ago laugh"
    ),
    _asked(F.POP_WITH_LOSS, "pop_event", unless="pop_harmless long_ago laugh"),
    _stated(F.CANNOT_LIFT_ARM, "cant_lift", unless="lifts_figure tired_arms laugh long_ago"),
    _stated(
        F.FALL_SWELLING_GRIP,
        "fall",
        "hand|arm",
        "swollen|lost_grip",
        within=ACROSS,
        unless="fall_figure",
    ),
    _asked(F.FALL_SWELLING_GRIP, "swollen", "lost_grip", within=14),
)
LIMB = (
    _stated(F.HARD_SWOLLEN_LIMB, "limb_any", "swollen", "hard", within=14, unless="pump_only"),
    _stated(
        F.HARD_SWOLLEN_LIMB,
        "limb_any",
        "hard_only",
        "severe",
        within=14,
        unless="lifts_figure session_was pump_only",
    ),
    _stated(F.HARD_SWOLLEN_LIMB, "limb_any", "swollen", "severe", within=10, unless="joint_only"),
    _stated(
        F.ARM_SWOLLEN_DISCOLOURED,
        "arm|hand",
        "swollen",
        "colour|heavy",
        within=ACROSS,
        unless="pump_only",
    ),
    _stated(
        F.ARM_SWOLLEN_DISCOLOURED,
        "arm|hand",
        "colour_strong",
        "heavy|pain",
        within=12,
        unless="bruise_word cold_weather pop fall kit_colour",
    ),
    _stated(
        F.ARM_SWOLLEN_DISCOLOURED,
        "arm|hand",
        "colour_turned",
        within=10,
        unless="bruise_word cold_weather kit_colour",
    ),
    _asked(F.ARM_SWOLLEN_DISCOLOURED, "arm_swollen", unless="pump_only joint_only laugh"),
    _stated(F.OUT_OF_PROPORTION_AFTER_WORK, "urine_dark", unless="urine_harmless"),
    _stated(F.OUT_OF_PROPORTION_AFTER_WORK, "cant_straighten", unless="position_cue legs_only"),
    _stated(
        F.OUT_OF_PROPORTION_AFTER_WORK,
        "limb_any",
        "swollen",
        "after_exercise|exercise",
        within=14,
        unless="pump_only joint_only fall",
    ),
    _stated(F.FEVER_OR_HOT_JOINT, "fever", unless="not_fever"),
    _stated(
        F.FEVER_OR_HOT_JOINT, "joint", "hot", "red", within=10, unless="kit_colour session_was"
    ),
    _stated(F.FEVER_OR_HOT_JOINT, "hot_touch", "joint", within=8),
    _stated(F.CALF_SWOLLEN, "calf|one_leg", "swollen", within=12, unless="pump_only"),
    _asked(F.CALF_SWOLLEN, "calf", "hot|red_word", within=8, unless="kit_colour"),
    _stated(F.BRUISE_ON_THINNERS, "thinners", "bruise", within=40),
)
NERVE = (
    _stated(
        F.NUMB_OR_WEAK,
        "numb_strong",
        unless="numb_figure cold_weather slept_on+passed history_only!again never_had",
    ),
    _stated(
        F.NUMB_OR_WEAK,
        "numb",
        "limb_any",
        within=10,
        unless="numb_figure cold_weather slept_on+passed history_only!again never_had",
    ),
    _stated(
        F.NUMB_OR_WEAK,
        "numb_strong",
        "both_arms|limb_any",
        within=10,
        unless="slept_on+passed cold_weather numb_figure history_only!again never_had",
    ),
    _stated(F.NUMB_OR_WEAK, "weak", unless="tired laugh lifts_figure"),
    _asked(
        F.NUMB_OR_WEAK,
        "weak_word",
        "limb_not_grip",
        within=6,
        unless="tired laugh lifts_figure exercise after_exercise history_only!again",
    ),
    _stated(F.NUMB_OR_WEAK, "dropping_things"),
    _stated(F.BLADDER_OR_BOWEL, "bladder", unless="bladder_figure"),
    _stated(F.PALPITATIONS, "heart_irregular", unless="heart_delight laugh"),
    _stated(
        F.PALPITATIONS,
        "heart_fast",
        "at_rest",
        within=14,
        unless="heart_delight laugh resting_rate",
    ),
)
OTHER = (
    _stated(F.PREGNANCY_BLEEDING, "pregnant", "bleed", within=40, unless="bleed_minor"),
    _stated(F.OVERDOSE, "overdose", unless="overdose_figure"),
    _stated(F.SELF_HARM, "self_harm", unless="self_harm_figure"),
    _stated(F.NIGHT_OR_REST_PAIN, "woken_by", unless="movement_linked gone_by_morning"),
    _stated(F.CANCER_NIGHT_PAIN, "cancer", "night|at_rest", "pain|sore", within=40),
    _stated(
        F.NIGHT_OR_REST_PAIN,
        "pain|sore_ache",
        "night",
        "two_nights",
        within=16,
        unless="movement_linked legs_ache",
    ),
    _asked(
        F.NIGHT_OR_REST_PAIN,
        "pain",
        "night",
        within=10,
        unless="movement_linked gone_by_morning legs_ache",
    ),
    _asked(F.NIGHT_OR_REST_PAIN, "pain", "rest_only", within=10, unless="movement_linked"),
    _stated(F.UNEXPLAINED_ILLNESS, "weight_drop", "no_reason", within=20),
    _stated(F.UNEXPLAINED_ILLNESS, "night_sweats", unless="hot_room"),
    _asked(
        F.UNEXPLAINED_ILLNESS,
        "sore",
        "unwell_strong",
        "limb_any|shoulder|neck|joint|upper_back",
        within=14,
    ),
    _asked(
        F.UNEXPLAINED_ILLNESS,
        "pain",
        "unwell",
        "limb_any|shoulder|neck|joint|upper_back",
        within=14,
    ),
)
RULES = (*CHEST, *BREATH, *FAINT, *KNOCK, *JOINT, *LIMB, *NERVE, *OTHER)
PASSING_TINGLE = ("numb", "hang", "passed", "no_weakness")
"""All of these together are a tingle that passed, which takes the item out and nothing else."""
