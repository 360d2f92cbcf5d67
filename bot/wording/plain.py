"""Short texts that belong to no single subject."""

from collections.abc import Mapping

from bot.reading.courtesies import Courtesy
from bot.wording.emergency import call
from bot.wording.tongue import Template, Tongue


def stranger(tongue: Tongue) -> str:
    """What somebody without a link is told, and nothing else."""
    return tongue.say(
        "This is a private coaching bot. Ask your coach for a personal link. "
        "In an emergency call your local emergency number."
    )


def unknown_command(tongue: Tongue, *, near: str | None = None) -> str:
    """A command that this person does not have; ``near`` is one of theirs that it may mean."""
    if near is not None:
        return tongue.say("I do not know that command. Did you mean /{name}?", name=near)
    return tongue.say("I do not know that command. Send /help to see what I understand.")


def old_button(tongue: Tongue) -> str:
    """A button that no longer means anything."""
    return tongue.say("That button is from earlier and changes nothing now. /today shows what is.")


def used_button(tongue: Tongue) -> str:
    """A button that has done what it was for."""
    return tongue.say("That button was used already and does nothing more.")


def media_without_reader(tongue: Tongue) -> str:
    """Something that is not text, from somebody who has no coach."""
    return tongue.say("I can only read text here. Please write it.")


def media_passed_on(tongue: Tongue, *, coach: str) -> str:
    """A picture or clip went to the coach."""
    return tongue.say("Passed on to {coach}. I cannot look at it myself.", coach=coach)


def voice_passed_on(tongue: Tongue, *, coach: str) -> str:
    """A voice note or sticker went to the coach."""
    return tongue.say(
        "Passed on to {coach}. I cannot hear or read that: for results, please write numbers.",
        coach=coach,
    )


COURTESIES: Mapping[Courtesy, Template] = {
    Courtesy.GREETING: "Hello. /today shows what is next.",
    Courtesy.THANKS: "You are welcome.",
    Courtesy.CHEER: "Good to hear.",
    Courtesy.HEARD: "Noted.",
}


def courtesy(tongue: Tongue, kind: Courtesy, *, is_open: bool) -> str:
    """Answer small talk without troubling anybody; a cheer records no session (``is_open``)."""
    if kind is Courtesy.CHEER and is_open:
        return tongue.say("Good to hear. Today's numbers are still open: /today shows them.")
    return tongue.say(COURTESIES[kind])


def words_passed_on(tongue: Tongue, *, coach: str) -> str:
    """A text that is no result went to the coach."""
    return tongue.say("Passed on to {coach}, who will answer here.", coach=coach)


def set_aside_to_person(
    tongue: Tongue, *, coach: str, reference: str, number: str | None = None
) -> str:
    """Our fault: the message could not be handled, and a person has it now."""
    return tongue.say(
        "I could not handle your message, that is my fault ({reference}). "
        "I passed it to {coach} as you wrote it. If something hurts badly or worries you, "
        "do not wait for us: call {call} or see a doctor.",
        call=call(tongue, number),
        coach=coach,
        reference=reference,
    )


def set_aside_to_coach_self(tongue: Tongue, *, reference: str) -> str:
    """Our fault: a coach's own message could not be handled, and nothing of it was done."""
    return tongue.say(
        "I could not handle your message, that is my fault ({reference}). Nothing of it was done. "
        "If it was about somebody's safety, please reach them another way.",
        reference=reference,
    )


def set_aside_to_coach(tongue: Tongue, *, name: str, words: str, reference: str) -> str:
    """The coach gets what could not be handled, as it was written."""
    return tongue.say(
        "A message of {name} could not be handled ({reference}). It says:\n<i>{words}</i>",
        name=name,
        words=words,
        reference=reference,
    )


def blocked_to_coach(tongue: Tongue, *, name: str) -> str:
    """The athlete blocked the bot."""
    return tongue.say(
        "{name} can no longer be reached: the chat is blocked or closed. "
        "Sessions are not arriving. Please ask another way.",
        name=name,
    )


def back_to_coach(tongue: Tongue, *, name: str) -> str:
    """The athlete opened the chat again."""
    return tongue.say("{name} can be reached again.", name=name)


def welcome_back(tongue: Tongue) -> str:
    """The athlete opened the chat again."""
    return tongue.say("Good to have you back. /today shows what is next.")


def session_closed(tongue: Tongue) -> str:
    """An answer to a session that is over."""
    return tongue.say(
        "That session is closed. If a number in it is wrong, write it to me and say which day."
    )
