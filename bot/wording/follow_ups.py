"""The one question about each doubt, in our own words, and the buttons beneath it."""

from collections.abc import Mapping

from bot.wording.tongue import Template
from scheduler.pain.red_flags import FollowUp

QUESTIONS: Mapping[FollowUp, Template] = {
    FollowUp.CHEST_INSIDE_OR_MUSCLE: "Is it inside the chest, or the muscle when you press it?",
    FollowUp.COMES_WITH_EFFORT: "Does it come with effort such as stairs, without moving the arm?",
    FollowUp.BREATH_SETTLED: "Are you still short of breath at rest?",
    FollowUp.HURTS_TO_BREATHE: "Is there a sharp pain when you breathe in?",
    FollowUp.PASSED_OUT: "Did you pass out, or nearly, during exercise?",
    FollowUp.CLEAR_IN_THE_HEAD: "Are you hot and confused, or not clear in the head?",
    FollowUp.FACE_ARM_SPEECH: "Is a face side, an arm or your speech suddenly weak or odd?",
    FollowUp.HEADACHE_SUDDEN: "Did the headache come suddenly, the worst you know?",
    FollowUp.AFTER_THE_KNOCK: "Since the knock: headache, fog, vomiting, gaps or drowsiness?",
    FollowUp.NECK_SIGNS: "With the neck: dizziness, double vision, or signs in arms or legs?",
    FollowUp.JOINT_SHAPE: "Did the joint slip out, also if it went back, or look out of place?",
    FollowUp.LIMB_HARD: "Is the limb hard, swollen and very painful?",
    FollowUp.CONTROL_KEPT: "Did you lose control of bladder or bowel?",
    FollowUp.BLEEDING_NOW: "Are you pregnant and bleeding?",
    FollowUp.HOW_MUCH_TAKEN: "Did you take more of something than you should?",
    FollowUp.SAFE_RIGHT_NOW: "Are you thinking of harming yourself?",
    FollowUp.AFTER_THE_POP: "Was there a pop or tear, and it lost strength, shape or turned blue?",
    FollowUp.ARM_COLOUR: "Is one arm swollen, heavy or another colour?",
    FollowUp.URINE_OR_SWELLING: "Dark urine, or swelling or weakness far beyond the work done?",
    FollowUp.FEVER_OR_HOT: "Do you have a fever, or is the joint hot and red?",
    FollowUp.NUMB_FOR_HOW_LONG: "Is it still numb, weak or tingling after some minutes?",
    FollowUp.HEARTBEAT: "Did your heart race or skip in or after exercise, unlike usual?",
    FollowUp.CALF_ONE_SIDED: "Is one calf swollen?",
    FollowUp.BRUISE_GROWING: "Do you take blood thinners, and the bruise is growing?",
    FollowUp.CAN_LIFT_ARM: "Is it impossible to lift the arm?",
    FollowUp.CAN_GRIP: "Since the fall: swelling, or a grip that is gone?",
    FollowUp.NIGHTS: "Does it hurt at night or at rest, whatever you do, on two nights or more?",
    FollowUp.FEELING_ILL: "Do you feel ill with it: lost weight, night sweats?",
    FollowUp.UNLIKE_TRAINING: "Is it new, sudden or strange, unlike what training does to you?",
    FollowUp.NONE_ASKED: "Is there anything else that worries you about it?",
}
OTHER_ANSWERS: tuple[Template, Template] = ("Yes, or not sure", "No")
ANSWERS: Mapping[FollowUp, tuple[Template, Template]] = {
    FollowUp.CHEST_INSIDE_OR_MUSCLE: ("Inside, or not sure", "The muscle, when I press or move it"),
    FollowUp.NUMB_FOR_HOW_LONG: ("Yes, or it came back", "No, gone within minutes"),
    FollowUp.UNLIKE_TRAINING: ("Yes, or not sure", "No, nothing of that kind"),
    FollowUp.SAFE_RIGHT_NOW: ("Yes", "No, that is not what I meant"),
}
