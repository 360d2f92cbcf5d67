"""Drafted decisions: what is proposed, and what was decided."""

from collections.abc import Mapping
from typing import Any

from bot.wording import review
from bot.wording.labels import label
from bot.wording.tongue import Template, Tongue

MOVE_UP = "stage_up"
EARLY_PATTERN = "early_pattern"
BY_TESTS = "tests_stage"
STAGES = {MOVE_UP, BY_TESTS}
REVIEW = "review"
PATTERNS: Mapping[tuple[str, str], Template] = {
    ("one_wrist", "left"): "left wrist hurts, the right one does not",
    ("one_wrist", "right"): "right wrist hurts, the left one does not",
    ("outer_elbow_again", "left"): "outside of the left elbow hurts again",
    ("outer_elbow_again", "right"): "outside of the right elbow hurts again",
}


def title(tongue: Tongue, *, kind: str, facts: Mapping[str, Any]) -> str:
    """Name a proposal in a few words."""
    if kind == MOVE_UP:
        return tongue.say("Move up to stage {stage}", stage=str(facts.get("stage", "?")))
    if kind == BY_TESTS:
        return tongue.say("Set stage {stage}, as the tests suggest", stage=str(facts["stage"]))
    if kind == EARLY_PATTERN:
        seen = PATTERNS.get((str(facts.get("pattern")), str(facts.get("arm"))))
        return tongue.say(seen) if seen else tongue.say("an early pattern")
    if kind == REVIEW:
        return review.title(tongue, number=int(facts.get("number", 1)))
    return tongue.say("{kind}", kind=kind.replace("_", " ").capitalize())


def yes_label(tongue: Tongue, *, kind: str) -> str:
    """Label the button that takes the proposal."""
    if kind == BY_TESTS:
        return label(tongue, "Set it")
    return label(tongue, "Move up") if kind == MOVE_UP else label(tongue, "Noted")


def named_yes_label(tongue: Tongue, *, name: str, kind: str, facts: Mapping[str, Any]) -> str:
    """Label the button that takes the proposal, with the athlete's name in front."""
    if kind in STAGES:
        return label(tongue, "{name} → {stage}", name=name, stage=str(facts.get("stage", "?")))
    return label(tongue, "{name}: noted", name=name)


def not_yet_label(tongue: Tongue) -> str:
    """Label the button that declines for now."""
    return label(tongue, "Not yet")


def accepted(tongue: Tongue, *, name: str, title: str, kind: str) -> str:
    """The coach took note; of an early pattern, what coaches commonly do with it."""
    noted = tongue.say("{name}: noted ({title}).", name=name, title=title)
    if kind != EARLY_PATTERN:
        return noted
    return "\n".join([noted, pattern_advice(tongue)])


def pattern_advice(tongue: Tongue) -> str:
    """Say what may be considered; nothing of it happens by itself (common practice)."""
    return tongue.say(
        "To consider for 7 to 14 days: half the gripping and palm-down work, neutral grips or "
        "handles, no bent-arm steps on that side. Shoulder-blade and straight-arm work goes on "
        "as far as it stays at 2 or below. Look at what rose in the last two weeks, other "
        "training included. Nothing of this changes the plan by itself."
    )


def declined(tongue: Tongue, *, name: str, title: str) -> str:
    """The coach said not yet."""
    return tongue.say("{name}: not yet ({title}).", name=name, title=title)


def answered_before(tongue: Tongue, *, name: str) -> str:
    """The proposal was decided earlier."""
    return tongue.say("That decision about {name} was made before.", name=name)


def reason_of_checklist(tongue: Tongue) -> str:
    """The reason that is kept when the coach takes a proposal."""
    return tongue.say("checklist complete, approved by tap")
