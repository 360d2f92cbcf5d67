"""What the coach sets up so that help can be reached."""

from bot.wording.tongue import Tongue

EXAMPLE = "/emergency 112"


def number_now(tongue: Tongue, number: str | None) -> str:
    """Say which number safety texts name."""
    if number is None:
        return tongue.say(
            "Safety messages say “your local emergency number”. Set one that holds where all your "
            "athletes are, like <code>{example}</code>.",
            example=EXAMPLE,
        )
    return tongue.say("Safety messages name {number}.", number=number)


def number_set(tongue: Tongue, number: str) -> str:
    """Play the number back, with what the coach answers for."""
    return tongue.say(
        "Safety messages now tell your athletes to call {number}. "
        "Please check that it is right where each of them is.",
        number=number,
    )


def number_unclear(tongue: Tongue) -> str:
    """Say what to send instead."""
    return tongue.say(
        "I need a short number, like <code>{example}</code>. Nothing is changed.", example=EXAMPLE
    )


def screen_again_to_athlete(tongue: Tongue, *, coach: str, weeks: int) -> str:
    """After a very long break: a person looks first."""
    return tongue.say(
        "You have not trained here for {weeks} weeks. {coach} looks first, then we begin again, "
        "gently. Write to me if your health has changed meanwhile.",
        coach=coach,
        weeks=weeks,
    )


def screen_again_to_coach(tongue: Tongue, *, name: str, weeks: int, stage: int) -> str:
    """Ask the coach to look before training begins again."""
    return tongue.say(
        "<b>{name}</b> has not trained for {weeks} weeks. Ask again about health and injuries, and "
        "test the holds anew. Nothing is sent until you let them start, in stage {stage} at most.",
        name=name,
        weeks=weeks,
        stage=stage,
    )
