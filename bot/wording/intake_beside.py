"""What is said beside the first questions: something graver came between."""

from bot.wording.labels import label
from bot.wording.tongue import Tongue


def wait(tongue: Tongue) -> str:
    """Somebody who was told to call for help is asked nothing else."""
    return tongue.say("The questions can wait. When you have been helped, go on here.")


def go_on_label(tongue: Tongue) -> str:
    """Label the button that shows the open question again."""
    return label(tongue, "Go on with the questions")


def not_before_terms(tongue: Tongue) -> str:
    """Pain that is told before the terms are agreed to is not kept."""
    return tongue.say(
        "Before you agree, I keep nothing about what hurts. Please write it again after that. "
        "If it worries you, see a doctor or physiotherapist."
    )
