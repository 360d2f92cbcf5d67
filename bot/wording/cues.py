"""Stock answers to a clip: a few words for what a movement's position asks."""

from collections.abc import Mapping

from bot.wording import movement_names
from bot.wording.labels import label
from bot.wording.tongue import Template, Tongue
from scheduler.catalogue.values import Movement, PositionRule

GOOD, FAULT = "good", "fault"

WORDS: Mapping[PositionRule, Template] = {
    PositionRule.ELBOWS_BEND: "Keep the elbows straight to the end.",
    PositionRule.SHOULDERS_SINK: "Do not let the shoulders sink.",
    PositionRule.SHOULDERS_RISE: "Keep the shoulders away from the ears.",
    PositionRule.RIBS_FLARE: "Keep the ribs down.",
    PositionRule.HIPS_SAG: "Keep the hips in line with the shoulders.",
    PositionRule.WRIST_BENDS: "Keep the wrist straight.",
    PositionRule.GRIP_OPENS: "End the set before the grip opens.",
    PositionRule.LEANS_SIDEWAYS: "Stay upright and do not lean to the side.",
    PositionRule.RANGE_SHORTENS: "Keep the full range, and stop when it gets shorter.",
}
LABELS: Mapping[PositionRule, Template] = {
    PositionRule.ELBOWS_BEND: "Elbows straight",
    PositionRule.SHOULDERS_SINK: "Shoulders sink",
    PositionRule.SHOULDERS_RISE: "Shoulders low",
    PositionRule.RIBS_FLARE: "Ribs down",
    PositionRule.HIPS_SAG: "Hips in line",
    PositionRule.WRIST_BENDS: "Wrist straight",
    PositionRule.GRIP_OPENS: "Grip opens",
    PositionRule.LEANS_SIDEWAYS: "Upright",
    PositionRule.RANGE_SHORTENS: "Full range",
}


def cues_of(movement: Movement | None) -> tuple[str, ...]:
    """Return what a clip of a movement can be answered with by one tap."""
    if movement is None:
        return (GOOD,)
    return (GOOD, *(rule.value for rule in movement.position_rules), FAULT)


def cue(tongue: Tongue, key: str, movement: Movement | None) -> str:
    """Write a stock answer as the athlete reads it."""
    if key == GOOD:
        return tongue.say("This looks right. Keep it like this.")
    if key == FAULT:
        fault = movement_names.common_fault(tongue, movement) if movement else ""
        return tongue.say("Watch for this: {fault}", fault=fault)
    return tongue.say(WORDS[PositionRule(key)])


def cue_label(tongue: Tongue, key: str) -> str:
    """Label the button of a stock answer."""
    if key == GOOD:
        return label(tongue, "Looks right")
    if key == FAULT:
        return label(tongue, "Usual fault")
    return label(tongue, LABELS[PositionRule(key)])
