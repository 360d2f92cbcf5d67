"""The wide net: every sign by its field of words, so that a new way of saying it is still met.

A rule joins broad fields (a place, a trouble, a course) and mostly asks: doubt costs one tap, a
miss may cost more. The fields are named ``wide_…``; a language supplies their words.
"""

from bot.reading.red_flag_rules import ACROSS, Rule
from scheduler.pain.red_flags import RedFlag

F = RedFlag
BESIDE = 6  # [words] ch: one clause


def _wide(
    flag: RedFlag,
    *needs: str,
    within: int = BESIDE,
    unless: str = "",
    reach: int = 8,
    is_stated: bool = False,
) -> Rule:
    names = tuple("|".join(f"wide_{one}" for one in need.split("|")) for need in needs)
    excuses = tuple(_named(excuse) for excuse in unless.split())
    return Rule(flag, names, within, excuses, reach, is_stated)


def _named(excuse: str) -> str:
    """Write an excuse with the fields' full names; ``!`` parts what makes it void."""
    return "!".join(
        "+".join(f"wide_{one}" for one in part.split("+")) for part in excuse.split("!")
    )


def _said(flag: RedFlag, *needs: str, within: int = ACROSS, unless: str = "") -> Rule:
    return _wide(flag, *needs, within=within, unless=unless, is_stated=True)


HEART_AND_BREATH = (
    _said(F.CHEST_INSIDE, "chest", "pressure|pain", "companion", unless="muscle chest_cue"),
    _wide(F.CHEST_INSIDE, "chest", "pressure|pain|odd", unless="muscle chest_cue past!again"),
    _wide(F.CHEST_INSIDE, "chest", "pressure|pain|odd", "companion|effort", within=14),
    _wide(F.CHEST_INSIDE, "heart", "pressure|pain", unless="heart_figure"),
    _wide(F.CHEST_INSIDE, "on_me", unless="laugh"),
    _wide(F.CHEST_INSIDE, "indigestion", "effort|companion|arm", within=12),
    _wide(
        F.EFFORT_DISCOMFORT,
        "referred",
        "pressure|pain",
        "effort",
        within=14,
        unless="arm_motion sore trained fall legs",
    ),
    _wide(
        F.EFFORT_DISCOMFORT, "referred", "pressure|pain|odd", "hurry", within=14, unless="fall legs"
    ),
    _wide(
        F.EFFORT_DISCOMFORT,
        "referred",
        "pressure|pain",
        "heart_companion",
        within=10,
        unless="sore trained fall neck head_knock",
    ),
    _wide(F.EFFORT_DISCOMFORT, "jaw", "pressure|pain|sore", "effort|companion|trained", within=14),
    _wide(F.BREATHLESS_AT_REST, "breath", unless="nose trained laugh settled"),
    _wide(F.BREATHLESS_AT_REST, "breath|winded", "not_settling", within=14, unless="nose laugh"),
    _said(F.SHARP_ON_BREATHING, "pain", "on_breathing", within=10, unless="breath_cue laugh"),
    _wide(F.PALPITATIONS, "heartbeat", unless="heart_figure laugh"),
    _wide(F.PALPITATIONS, "heart_fast", "not_settling", within=14, unless="heart_figure laugh"),
)
HEAD_AND_NECK = (
    _said(F.COLLAPSE, "fainted", unless="faint_figure near"),
    _wide(F.COLLAPSE, "fainted", "near", within=4, unless="faint_figure laugh"),
    _wide(F.COLLAPSE, "near_faint", unless="faint_figure laugh"),
    _wide(F.COLLAPSE, "dizzy", unless="dizzy_figure laugh head_knock"),
    _said(F.HEAT_CONFUSION, "confused", "heat", unless="confused_figure"),
    _wide(F.HEAT_CONFUSION, "disoriented", unless="confused_figure laugh head_knock"),
    _said(F.FACE_ARM_SPEECH, "face_speech", unless="laugh face_figure"),
    _wide(F.FACE_ARM_SPEECH, "vision", unless="laugh head_knock face_figure"),
    _wide(F.FACE_ARM_SPEECH, "sudden", "weak", "limb", within=8, unless="tired fall pop laugh"),
    _said(F.WORST_HEADACHE, "headache", "worst", within=14, unless="laugh hangover"),
    _said(F.HEAD_INJURY_SIGNS, "head_knock", "head_grave", within=40, unless="knock_figure"),
    _wide(F.HEAD_KNOCK, "head_knock", unless="knock_figure past!again"),
    _said(F.NECK_INJURY, "neck_hurt", unless="neck_figure laugh"),
    _wide(
        F.NECK_INJURY, "neck", "fall|head_knock", within=14, unless="fall_figure neck_figure laugh"
    ),
    _said(F.NECK_WITH_LIMB_SIGNS, "neck", "numb|weak", "both_limbs|legs", unless="neck_figure"),
    _wide(F.NECK_WITH_LIMB_SIGNS, "neck", "odd", "legs", within=10, unless="neck_figure tired"),
    _said(F.NECK_WITH_DIZZINESS, "neck", "dizzy|vision", unless="neck_figure"),
)
JOINTS_AND_LIMBS = (
    _wide(F.JOINT_OUT_OF_PLACE, "joint", "looks_wrong", unless="put_back past out_figure form_cue"),
    _wide(F.JOINT_OUT_OF_PLACE, "joint", "slipped|looks_wrong", "cold_limb|stuck", within=14),
    _said(F.SUSPECTED_DISLOCATION, "joint", "slipped", unless="past out_figure", within=7),
    _wide(F.SUSPECTED_DISLOCATION, "joint", "socket", within=10, unless="past out_figure"),
    _wide(F.SUSPECTED_DISLOCATION, "joint", "put_back", unless="past out_figure form_cue"),
    _said(F.POP_WITH_LOSS, "pop", "loss", within=20, unless="pop_figure past laugh"),
    _wide(F.POP_WITH_LOSS, "pop", unless="pop_figure past laugh"),
    _said(F.CANNOT_LIFT_ARM, "cant_lift", unless="lift_figure laugh past"),
    _said(F.FALL_SWELLING_GRIP, "fall", "limb", "swollen|grip_lost", unless="fall_figure legs"),
    _wide(F.FALL_SWELLING_GRIP, "grip_lost", unless="tired trained laugh lift_figure"),
    _said(F.HARD_SWOLLEN_LIMB, "limb", "swollen|hard", "severe", within=14, unless="pump minor"),
    _said(F.HARD_SWOLLEN_LIMB, "limb", "swollen", "hard", within=14, unless="pump minor"),
    _said(F.ARM_SWOLLEN_DISCOLOURED, "limb", "swollen", "colour|heavy", unless="pump minor legs"),
    _wide(F.ARM_SWOLLEN_DISCOLOURED, "limb", "swollen", unless="pump minor legs fall"),
    _wide(F.ARM_SWOLLEN_DISCOLOURED, "limb", "turned_colour", unless="kit cold bruise minor"),
    _said(F.OUT_OF_PROPORTION_AFTER_WORK, "urine", unless="urine_figure"),
    _said(F.OUT_OF_PROPORTION_AFTER_WORK, "cant_straighten", unless="form_cue legs"),
    _said(F.FEVER_OR_HOT_JOINT, "fever", unless="fever_figure"),
    _said(F.FEVER_OR_HOT_JOINT, "joint", "hot", "red|swollen", within=10, unless="kit"),
    _said(F.CALF_SWOLLEN, "calf", "swollen", within=10, unless="kit pump minor"),
    _wide(F.CALF_SWOLLEN, "calf", "swollen|red|hot", within=10, unless="kit"),
    _said(F.BRUISE_ON_THINNERS, "thinners", "bruise", within=40),
    _wide(F.NUMB_OR_WEAK, "numb", "limb|legs|face", within=8, unless="numb_figure cold"),
    _wide(F.NUMB_OR_WEAK, "numb", "hang", unless="numb_figure cold"),
    _wide(F.NUMB_OR_WEAK, "weak", "limb", unless="tired lift_figure laugh weak_side"),
    _wide(F.NUMB_OR_WEAK, "cant_open", unless="laugh"),
    _wide(F.CANNOT_LIFT_ARM, "cant_lift", "today", within=6, unless="lifts past"),
)
WHOLE_PERSON = (
    _said(F.BLADDER_OR_BOWEL, "bladder", unless="bladder_figure"),
    _said(F.PREGNANCY_BLEEDING, "pregnant", "bleed", within=40, unless="bleed_figure"),
    _said(F.OVERDOSE, "overdose", unless="overdose_figure"),
    _said(F.SELF_HARM, "self_harm", unless="self_harm_figure"),
    _said(
        F.NIGHT_OR_REST_PAIN,
        "pain",
        "night",
        "many_nights",
        within=16,
        unless="movement_linked night_figure",
    ),
    _wide(F.NIGHT_OR_REST_PAIN, "pain", "night", within=10, unless="movement_linked night_figure"),
    _wide(F.NIGHT_OR_REST_PAIN, "pain", "all_night", unless="night_figure"),
    _wide(F.NIGHT_OR_REST_PAIN, "wakes", unless="movement_linked night_figure"),
    _wide(F.NIGHT_OR_REST_PAIN, "pain", "rest_pain", within=10, unless="movement_linked"),
    _said(F.CANCER_NIGHT_PAIN, "cancer", "pain", "night|rest_pain", within=40),
    _said(F.UNEXPLAINED_ILLNESS, "weight_loss", "no_reason", within=20),
    _said(F.UNEXPLAINED_ILLNESS, "night_sweat", unless="hot_room"),
    _wide(F.UNEXPLAINED_ILLNESS, "unwell", "pain", within=14, unless="headache"),
)
COURSES = (
    _said(
        F.KEEPS_COMING_BACK, "comes_back", "pain|limb", within=10, unless="harmless_back past!again"
    ),
)
WIDE_RULES = (*HEART_AND_BREATH, *HEAD_AND_NECK, *JOINTS_AND_LIMBS, *WHOLE_PERSON, *COURSES)
PLACES = """
    chest heart referred arm jaw effort arm_motion trained indigestion heart_figure
    not_settling on_breathing breath_cue chest_cue faint_figure confused_figure heat
    face_figure sudden hangover neck both_limbs neck_figure joint put_back past out_figure
    form_cue pop_figure lift_figure fall_figure limb legs face kit cold calf numb_figure
    tired bladder_figure bleed_figure overdose_figure self_harm_figure night all_night again today
    comes_back harmless_back settled weak_side lifts hang many_nights night_figure
    movement_linked rest_pain no_reason hot_room laugh near dizzy_figure knock_figure minor
    urine_figure fever_figure worst not
"""
WIDE_PLACES = frozenset(f"wide_{name}" for name in PLACES.split())
"""Fields of place, course and excuse, and those with a "not" of their own: denials pass them by."""
