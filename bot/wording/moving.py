"""Moving an athlete from one coach to another: asked, done, told to everybody it concerns."""

from collections.abc import Sequence

from bot.wording.labels import label
from bot.wording.tongue import Marked, Tongue

EXAMPLE = "/move Robin to Mara"


def usage(tongue: Tongue, coaches: Sequence[str]) -> str:
    """Say how the command goes and who there is."""
    return tongue.say(
        "Send it like this:\n<code>{example}</code>\nCoaches: {names}.",
        example=EXAMPLE,
        names=", ".join(coaches),
    )


def no_athlete(tongue: Tongue, *, asked: str) -> str:
    """No athlete of the house is called so."""
    return tongue.say(
        "No athlete here is called “{asked}”. /house shows who coaches whom. For example:\n"
        "<code>{example}</code>",
        asked=asked,
        example=EXAMPLE,
    )


def which(tongue: Tongue, *, asked: str, count: int) -> str:
    """Several athletes are called so."""
    return tongue.say("{n} athletes match “{asked}”. Who is meant?", n=count, asked=asked)


def choice(tongue: Tongue, *, name: str, coach: str) -> str:
    """Label the button of one of several athletes, with the coach they have."""
    return label(tongue, "{name} · {coach}", name=name, coach=coach)


def same_coach(tongue: Tongue, *, name: str, coach: str) -> str:
    """There is nothing to move."""
    return tongue.say("{coach} coaches {name} already.", name=name, coach=coach)


def not_oneself(tongue: Tongue, *, name: str) -> str:
    """Nobody would see the alerts of somebody who coaches themselves."""
    return tongue.say(
        "{name} cannot coach themselves: nobody else would hear an alert. Name another coach.",
        name=name,
    )


def no_chat(tongue: Tongue, *, coach: str) -> str:
    """The new coach cannot be reached."""
    return tongue.say(
        "{coach} has no open chat with me, so alerts would reach nobody. Let them open their "
        "link first, or name another coach.",
        coach=coach,
    )


def goes_along(tongue: Tongue, *, alerts: int, decisions: int, messages: int) -> str:
    """Name what goes along with an athlete; empty where nothing does."""
    parts = [
        tongue.count(alerts, "1 open alert", "{n} open alerts") if alerts else "",
        tongue.count(decisions, "1 decision", "{n} decisions") if decisions else "",
        tongue.count(messages, "1 message to answer", "{n} messages to answer") if messages else "",
    ]
    return ", ".join(part for part in parts if part)


def ask(tongue: Tongue, *, name: str, old: str, new: str, along: str) -> str:
    """Ask whether to move an athlete."""
    head = tongue.say("Move <b>{name}</b> from {old} to {new}?", name=name, old=old, new=new)
    tail = tongue.say(
        "{old} will see nothing of {name} any more. {name} and both coaches are told.",
        old=old,
        name=name,
    )
    if not along:
        return f"{head}\n{tail}"
    return "\n".join([head, tongue.say("It goes along: {what}.", what=Marked(along)), tail])


def move_label(tongue: Tongue) -> str:
    """Label the button that moves."""
    return label(tongue, "Move")


def leave_label(tongue: Tongue) -> str:
    """Label the button that leaves it."""
    return label(tongue, "Not now")


def left(tongue: Tongue, *, name: str, coach: str) -> str:
    """Nothing was moved."""
    return tongue.say("All right, {name} stays with {coach}.", name=name, coach=coach)


def changed_since(tongue: Tongue, *, name: str, coach: str) -> str:
    """Somebody moved the athlete meanwhile, or a coach is no coach any more."""
    return tongue.say(
        "That no longer fits: {name} is with {coach} now. Send <code>{example}</code> anew.",
        name=name,
        coach=coach,
        example=EXAMPLE,
    )


def done(tongue: Tongue, *, name: str, old: str, new: str) -> str:
    """Tell the owner that it is done."""
    return tongue.say(
        "{name} is with {new} now, no longer with {old}.", name=name, old=old, new=new
    )


def back_label(tongue: Tongue) -> str:
    """Label the button that moves the athlete back."""
    return label(tongue, "Move back")


def to_athlete(tongue: Tongue, *, old: str, new: str) -> str:
    """Tell the athlete who coaches them now."""
    return tongue.say(
        "{new} is your coach now. Your plan and your history stay as they are. What you write "
        "goes to {new}. {old} no longer sees it.",
        old=old,
        new=new,
    )


def to_old_coach(tongue: Tongue, *, name: str, new: str) -> str:
    """Tell the coach who gives the athlete away."""
    return tongue.say(
        "{name} is with {new} now. Their alerts, decisions and messages went along.",
        name=name,
        new=new,
    )


def to_new_coach(tongue: Tongue, *, name: str, old: str, along: str) -> str:
    """Tell the coach who takes the athlete over."""
    head = tongue.say("<b>{name}</b> is with you now, so far with {old}.", name=name, old=old)
    if not along:
        return head
    return "\n".join([head, tongue.say("With them come: {what}.", what=Marked(along))])


def open_label(tongue: Tongue) -> str:
    """Label the button that opens the athlete's screen."""
    return label(tongue, "Open")
