"""Signs that a person must look at, named as signs and never as conditions."""

from collections.abc import Mapping

from bot.wording.tongue import Template, Tongue
from scheduler.pain.red_flags import RED_FLAGS, RedFlag

FLAGS: Mapping[RedFlag, Template] = {
    RedFlag.CHEST_INSIDE: "pressure, tightness or pain inside the chest",
    RedFlag.EFFORT_DISCOMFORT: "discomfort that comes with effort",
    RedFlag.BREATHLESS_AT_REST: "breathlessness that does not settle",
    RedFlag.SHARP_ON_BREATHING: "sharp pain on breathing",
    RedFlag.COLLAPSE: "fainting or collapse",
    RedFlag.HEAT_CONFUSION: "heat with confusion",
    RedFlag.FACE_ARM_SPEECH: "sudden weakness of face, arm or speech",
    RedFlag.WORST_HEADACHE: "a sudden, very strong headache",
    RedFlag.HEAD_INJURY_SIGNS: "signs after a blow to the head",
    RedFlag.NECK_INJURY: "a neck injury",
    RedFlag.NECK_WITH_LIMB_SIGNS: "neck pain with signs in arms or legs",
    RedFlag.NECK_WITH_DIZZINESS: "neck pain with dizziness or double vision",
    RedFlag.JOINT_OUT_OF_PLACE: "a joint that looks out of place",
    RedFlag.HARD_SWOLLEN_LIMB: "strong pain with a hard, swollen limb",
    RedFlag.BLADDER_OR_BOWEL: "loss of bladder or bowel control",
    RedFlag.PREGNANCY_BLEEDING: "bleeding in pregnancy",
    RedFlag.OVERDOSE: "too much of a medicine or substance",
    RedFlag.SELF_HARM: "a message that needs a person",
    RedFlag.SUSPECTED_DISLOCATION: "a joint that may have slipped out",
    RedFlag.POP_WITH_LOSS: "a pop or tear with loss of function",
    RedFlag.ARM_SWOLLEN_DISCOLOURED: "one arm swollen, heavy and discoloured",
    RedFlag.OUT_OF_PROPORTION_AFTER_WORK: "dark urine, swelling or weakness after hard work",
    RedFlag.FEVER_OR_HOT_JOINT: "fever, or a hot, red joint",
    RedFlag.NUMB_OR_WEAK: "numbness, weakness or lasting pins and needles",
    RedFlag.HEAD_KNOCK: "a knock to the head with headache or fog",
    RedFlag.PALPITATIONS: "irregular heartbeats in or after exercise",
    RedFlag.CALF_SWOLLEN: "one swollen calf",
    RedFlag.BRUISE_ON_THINNERS: "a growing bruise on blood thinners",
    RedFlag.CANNOT_LIFT_ARM: "an arm that cannot be lifted",
    RedFlag.FALL_SWELLING_GRIP: "a fall with swelling and lost grip",
    RedFlag.NIGHT_OR_REST_PAIN: "pain at night or at rest",
    RedFlag.UNEXPLAINED_ILLNESS: "feeling ill without a known cause",
    RedFlag.CANCER_NIGHT_PAIN: "night pain with an earlier grave illness",
    RedFlag.REST_NOT_FALLING: "pain that has not fallen in 14 days of rest",
    RedFlag.KEEPS_COMING_BACK: "pain that keeps coming back",
    RedFlag.TINGLING_PASSED: "tingling that passed",
    RedFlag.UNCLEAR_EMERGENCY: "words that may tell of an emergency",
    RedFlag.UNCLEAR_SIGN: "words that may tell of a sign to be looked at",
}


def flag_word(tongue: Tongue, key: str) -> str:
    """Name a sign by its key; an unknown key is not shown at all."""
    try:
        return tongue.say(FLAGS[RedFlag(key)])
    except (KeyError, ValueError):
        return tongue.say("a sign that a person must look at")


def is_private(key: str) -> bool:
    """Tell whether nothing about this sign may be written down but that a person is needed."""
    try:
        return RED_FLAGS[RedFlag(key)].is_private
    except (KeyError, ValueError):
        return False
