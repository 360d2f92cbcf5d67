"""Leaving: what goes, what stays and for how long, asked once; and what others hear of it."""

from bot.wording.emergency import call
from bot.wording.labels import label
from bot.wording.tongue import Template, Tongue

ERASE_EXAMPLE: Template = "/erase robin asked by letter on 3 March"


def what_goes(tongue: Tongue, *, coach: str, copies_kept: int, has_open_alert: bool) -> str:
    """Say what leaving means, before anything is done."""
    parts = [
        tongue.say(
            "<b>Leave, and have everything erased</b>\n"
            "What goes: your name and this chat, your plans and results, reports of pain, "
            "your words, and what was decided about you. It cannot be brought back. "
            "/export gives you a copy first.\n"
            "What stays: that somebody left on this day, and counts without a name. "
            "What {coach} already received in their own chat stays there.",
            coach=coach,
        ),
        _copies(tongue, copies_kept),
    ]
    if has_open_alert:
        parts.append(_open_alert(tongue, coach=coach))
    return "\n\n".join([*parts, tongue.say("Do you want to leave?")])


def _copies(tongue: Tongue, copies_kept: int) -> str:
    if copies_kept > 0:
        return tongue.say(
            "Copies against loss hold the old data until they are replaced, after {n} days at "
            "most. If one is ever used, you are erased from it first.",
            n=copies_kept,
        )
    return tongue.say(
        "Whoever runs the bot may hold older copies of it. "
        "If one is ever used, you are erased from it first."
    )


def _open_alert(tongue: Tongue, *, coach: str) -> str:
    return tongue.say(
        "One report of yours still waits for {coach}. "
        "You are erased as soon as it is answered, not before.",
        coach=coach,
    )


def leave_label(tongue: Tongue) -> str:
    """Label the button that leaves."""
    return label(tongue, "Yes, erase everything")


def stay_label(tongue: Tongue) -> str:
    """Label the button that stays."""
    return label(tongue, "No, I stay")


def waits(tongue: Tongue, *, coach: str, number: str | None = None) -> str:
    """An alert is open, so leaving waits."""
    return tongue.say(
        "You asked to leave. One report of yours still waits for {coach}. "
        "As soon as it is answered, everything is erased and you hear from me once more.\n"
        "If you need help, do not wait for that: call {call}.",
        coach=coach,
        call=call(tongue, number),
    )


def may_stay(tongue: Tongue) -> str:
    """The wish can be taken back while it waits."""
    return tongue.say("Until then you can change your mind.")


def stays(tongue: Tongue) -> str:
    """Nothing is erased."""
    return tongue.say("Good. Nothing was erased, and everything goes on as before.")


def erased(tongue: Tongue, *, by: str | None) -> str:
    """The last message."""
    done = (
        tongue.say("Everything about you is erased now.")
        if by is None
        else tongue.say(
            "{coach} had everything about you erased now, as you asked in writing.", coach=by
        )
    )
    rest = tongue.say(
        "Nothing more comes from here, and nobody reads this chat. "
        "You can delete it on your phone. Thank you for training with us.\n"
        "In an emergency call your local emergency number."
    )
    return f"{done}\n{rest}"


def erased_role(tongue: Tongue) -> str:
    """Somebody who also coaches or runs the bot left as an athlete."""
    return tongue.say(
        "Everything about you as an athlete is erased now. "
        "Your other role here stays as it was; /help shows it."
    )


def wish_to_coach(tongue: Tongue, *, name: str) -> str:
    """An athlete wants to leave, and an alert is in the way."""
    return tongue.say(
        "{name} asked to leave and be erased. That waits for your answer to the open alert.",
        name=name,
    )


def stays_to_coach(tongue: Tongue, *, name: str) -> str:
    """The athlete changed their mind."""
    return tongue.say("{name} stays after all. Nothing was erased.", name=name)


def left_to_coach(tongue: Tongue, *, name: str) -> str:
    """An athlete left: that, and nothing else."""
    return tongue.say(
        "<b>{name}</b> left. Everything about them is erased here. "
        "What stands in your chat about them is yours to delete.",
        name=name,
    )


def erase_usage(tongue: Tongue) -> str:
    """The request itself was not said."""
    return tongue.say(
        "Erasing is only for an athlete who asked for it in writing. "
        "Say how and when they asked:\n<code>{example}</code>",
        example=tongue.translated(ERASE_EXAMPLE),
    )


def erase_what(tongue: Tongue, *, name: str, copies_kept: int, how: str) -> str:
    """Say what erasing means, the first time."""
    head = tongue.say(
        "<b>Erase {name}?</b>\n"
        "The request: “{how}”. Keep it yourself; it is not kept here.\n"
        "Everything about them goes: name, chat, plans, results, pain, words, decisions. "
        "What stays is that somebody was erased today, and counts without a name. "
        "It cannot be taken back. If they only pause, /pause is enough.",
        name=name,
        how=how,
    )
    if copies_kept <= 0:
        return head
    copies = tongue.say(
        "Daily copies hold the old data for {n} days at most. "
        "When one is used, the erasure is done on it again.",
        n=copies_kept,
    )
    return f"{head}\n{copies}"


def erase_waits(tongue: Tongue, *, name: str) -> str:
    """An open alert comes first."""
    return tongue.say(
        "An alert about {name} is open. Answer it first; then send /erase again.", name=name
    )


def erase_noted(tongue: Tongue, *, name: str) -> str:
    """The first of two confirmations."""
    return tongue.say("Once confirmed: erase {name}.", name=name)


def erase_sure(tongue: Tongue, *, name: str) -> str:
    """Ask the second time."""
    return tongue.say(
        "This is the last question. All that is kept about <b>{name}</b> is gone after it.",
        name=name,
    )


def erase_label(tongue: Tongue, name: str) -> str:
    """Label the first button."""
    return label(tongue, "Erase {name}", name=name)


def erase_now_label(tongue: Tongue) -> str:
    """Label the second button."""
    return label(tongue, "Erase for good")


def keep_label(tongue: Tongue) -> str:
    """Label the button that keeps everything."""
    return label(tongue, "Keep everything")


def nothing_erased(tongue: Tongue) -> str:
    """Nothing was done."""
    return tongue.say("Nothing was erased.")
