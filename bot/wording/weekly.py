"""The one question a week, about sleep and mood."""

from collections.abc import Mapping

from bot.wording.tongue import Template, Tongue

LABELS: Mapping[str, Template] = {
    "fine": "Both fine",
    "sleep_poor": "Sleep poor",
    "mood_poor": "Mood low",
    "both_poor": "Both poor",
}


def question(tongue: Tongue) -> str:
    """Ask once a week."""
    return tongue.say("That was the week. How were sleep and mood in it?")


def answer_label(tongue: Tongue, answer: str) -> str:
    """Label one answer."""
    return tongue.say(LABELS[answer])


def noted(tongue: Tongue, answer: str) -> str:
    """Play the answer back; it may make the next week lighter and says no more."""
    return tongue.say("Noted: {answer}. Thank you.", answer=tongue.say(LABELS[answer]).lower())
