"""Coming in by a link: what the link leads to, what is asked first, and who hears of it."""

from bot.wording.emergency import call_before_the_zone
from bot.wording.labels import label
from bot.wording.tongue import Tongue


def unknown_link(tongue: Tongue) -> str:
    """A link that we never made, or that a newer one replaced."""
    return tongue.say(
        "This link does not work. Ask your coach for a new one. "
        "In an emergency call your local emergency number."
    )


def too_many_tries(tongue: Tongue) -> str:
    """The last answer that a guessing chat gets for a while."""
    return tongue.say(
        "That was one wrong link too many. Wait an hour, then use the newest link of your coach. "
        "In an emergency call your local emergency number."
    )


def used_link(tongue: Tongue) -> str:
    """A link works once."""
    return tongue.say("This link was used before. Ask your coach for a new one.")


def expired_link(tongue: Tongue) -> str:
    """A link works for two weeks."""
    return tongue.say("This link is too old. Ask your coach for a new one.")


def link_of_another(tongue: Tongue, *, name: str) -> str:
    """The chat belongs to somebody else already."""
    return tongue.say(
        "This chat already belongs to {name}. Open the link on the phone of the person it is for. "
        "It still works.",
        name=name,
    )


def welcome_back(tongue: Tongue, *, name: str) -> str:
    """Somebody known opened the bot again."""
    return tongue.say("Good to see you, {name}. /help shows what I understand.", name=name)


def new_phone(tongue: Tongue) -> str:
    """A known person came in from another chat."""
    return tongue.say(
        "This is your chat from now on, and everything is kept. "
        "Buttons in the old chat no longer work."
    )


def old_phone(tongue: Tongue) -> str:
    """What the chat is told that a person left for another."""
    return tongue.say(
        "Your coaching has moved to another chat by a new personal link. "
        "If that was not you, tell your coach at once by another way."
    )


def coach_welcome(tongue: Tongue, *, name: str) -> str:
    """A coach is in."""
    return tongue.say(
        "Welcome, {name}. You are set up as a coach. "
        "Invite your first athlete with <code>/invite NAME</code>; /help shows the rest.\n"
        "I plan, ask and pass on. I never diagnose, treat or clear anybody, and you are no "
        "clinician here either. The table of pain levels comes from studies of leg tendons and "
        "the list of warning signs from our own reading. A clinician must check both before use.",
        name=name,
    )


def owner_welcome(tongue: Tongue, *, name: str) -> str:
    """An owner is in."""
    return tongue.say(
        "Welcome, {name}. You run this bot: you see who coaches whom, and you are told when it "
        "stood still. /help shows what you can do.",
        name=name,
    )


def conditions(tongue: Tongue, *, name: str, coach: str, number: str | None = None) -> str:
    """Who is behind this, what is kept, what it is not; agreed to before anything else."""
    return tongue.say(
        "Hello {name}. This bot carries the upper-body coaching of <b>{coach}</b>. "
        "{coach} reads what you report here.\n\n"
        "<b>What is kept</b>\n"
        "· your answers, plans and results, while you train here\n"
        "· messages as they came: 7 days\n"
        "· the words of a reported result: 28 days\n"
        "· reports of pain, and what was decided: until you ask for them to be erased\n"
        "{coach} sees all of it. /export gives you a copy, /leave has it erased.\n\n"
        "<b>What it is not</b>\n"
        "It is coaching support, not medical advice. It does not examine you. "
        "Local rules and licensed professionals come first, always.\n\n"
        "<b>In an emergency</b>\n"
        "Call {call}. Nobody may be watching this chat.\n\n"
        "Do you agree to start on these terms?",
        name=name,
        coach=coach,
        call=call_before_the_zone(tongue, number),
    )


def agree_label(tongue: Tongue) -> str:
    """Label the button that agrees."""
    return label(tongue, "I agree")


def decline_label(tongue: Tongue) -> str:
    """Label the button that does not."""
    return label(tongue, "I do not agree")


def agreed(tongue: Tongue) -> str:
    """Agreement is noted."""
    return tongue.say("You agreed to the terms above. You can stop at any time.")


def declined(tongue: Tongue, *, coach: str) -> str:
    """No agreement: nothing is kept but the link."""
    return tongue.say(
        "All right. Nothing is kept but that your link was opened, and nothing is asked. "
        "If you change your mind, tap the button. {coach} is told that you did not agree.",
        coach=coach,
    )


def read_again_label(tongue: Tongue) -> str:
    """Label the button that shows the terms once more."""
    return label(tongue, "Show the terms again")


def joined_to_coach(tongue: Tongue, *, name: str) -> str:
    """The athlete opened the link."""
    return tongue.say("{name} opened the link. I ask the first questions now.", name=name)


def moved_to_coach(tongue: Tongue, *, name: str) -> str:
    """The athlete came in from another chat."""
    return tongue.say(
        "{name} opened a new link from another chat. The old chat is cut off; the history is kept.",
        name=name,
    )


def declined_to_coach(tongue: Tongue, *, name: str) -> str:
    """The athlete did not agree."""
    return tongue.say(
        "{name} read the terms and did not agree. Nothing was asked or kept.", name=name
    )


def practice_first(tongue: Tongue) -> str:
    """A practice athlete is in the way of a real one."""
    return tongue.say(
        "Your practice athlete is still there. Send <code>/practice end</code>, then open the "
        "link once more."
    )
