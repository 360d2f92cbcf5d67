"""What the coach sets up so that help can be reached."""

from collections.abc import Sequence

from bot.wording.tongue import Tongue

EXAMPLE = "/emergency 112"
EXAMPLE_COUNTRY = "/emergency 911 US"


def number_now(tongue: Tongue, number: str | None) -> str:
    """Say which number safety texts name."""
    if number is None:
        return tongue.say(
            "Safety messages say “your local emergency number”. Set one that holds where all your "
            "athletes are, like <code>{example}</code>.",
            example=EXAMPLE,
        )
    return tongue.say("Safety messages name {number}.", number=number)


def number_set(tongue: Tongue, number: str, without: Sequence[str]) -> str:
    """Play the number back, with what the coach answers for, and whom it does not reach."""
    text = tongue.say(
        "Safety messages now tell your athletes to call {number}, where it is known to hold in "
        "their country. Please check that it is right where each of them is.",
        number=number,
    )
    if not without:
        return text
    return text + tongue.say(
        "\nStill “your local emergency number”: {names}. "
        "For a country: <code>{example}</code>. /emergency alone shows what is known.",
        names=", ".join(without),
        example=EXAMPLE_COUNTRY,
    )


def number_confirmed(tongue: Tongue, number: str, country: str) -> str:
    """Play back a number for one country."""
    return tongue.say(
        "Safety messages now name {number} to your athletes in {country}. "
        "You answer for its being right.",
        number=number,
        country=country,
    )


def of_country(
    tongue: Tongue,
    country: str,
    names: Sequence[str],
    *,
    now: str | None,
    proposed: Sequence[str],
    is_from_memory: bool,
) -> str:
    """Say what athletes of a country are told, and what the table proposes."""
    head = tongue.say(
        "<b>{country}</b> ({names}): {now}",
        country=country,
        names=", ".join(names),
        now=now or tongue.say("“your local emergency number”"),
    )
    if not proposed:
        example = f"/emergency NUMBER {country}"
        return head + tongue.say(
            "\nNot in the table. Set it: <code>{example}</code>.", example=example
        )
    known = tongue.say("\nThe table says {numbers}.", numbers=", ".join(proposed))
    memory = tongue.say(" From memory only: check it first.") if is_from_memory else ""
    return head + known + memory


def confirm_label(tongue: Tongue, number: str, country: str) -> str:
    """Label the button that confirms a proposed number."""
    return tongue.say("{number} is right in {country}", number=number, country=country)


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
