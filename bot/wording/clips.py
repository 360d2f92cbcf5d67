"""Clips and pictures on their way to the coach, and the answers on their way back."""

from collections.abc import Sequence
from datetime import timedelta

from bot.wording import dates
from bot.wording.labels import label
from bot.wording.pages import shortened
from bot.wording.relayed import kind_of
from bot.wording.tongue import Marked, Tongue

CAPTION_UNITS = 400  # [UTF-16 units] botapi: a caption may have 1024 in all

ASK_EXAMPLE = "/clips ask on robin"


def to_athlete(tongue: Tongue, *, coach: str, item: str | None) -> str:
    """A clip or picture went to the coach."""
    if item is None:
        return tongue.say(
            "Passed on to {coach}, who will answer here. I cannot look at it myself.", coach=coach
        )
    return tongue.say(
        "Passed on to {coach} as {item}. I cannot look at it myself.", coach=coach, item=item
    )


def which_item(tongue: Tongue, *, coach: str) -> str:
    """A clip went to the coach, and what it shows is not clear."""
    return tongue.say("Passed on to {coach}. Which item is it?", coach=coach)


def item_label(tongue: Tongue, name: str) -> str:
    """Label the button of one item."""
    return label(tongue, "{name}", name=name)


def none_of_these_label(tongue: Tongue) -> str:
    """Label the button for a clip of something else."""
    return label(tongue, "Something else")


def another_item_label(tongue: Tongue) -> str:
    """Label the button that changes which item a clip shows."""
    return label(tongue, "Another item")


def clip_gone(tongue: Tongue) -> str:
    """A button of a clip that was answered meanwhile."""
    return tongue.say("That clip is answered already.")


def under_clip(tongue: Tongue, *, coach: str, item: str | None, text: str) -> str:
    """The coach's answer, under the athlete's clip."""
    if item is None:
        return tongue.say("<b>{coach}</b> on your clip:\n{text}", coach=coach, text=text)
    return tongue.say(
        "<b>{coach}</b> on your clip, {item}:\n{text}", coach=coach, item=item, text=text
    )


def please_film(tongue: Tongue, *, coach: str, item: str) -> str:
    """Ask kindly for one clip; nothing depends on it."""
    return tongue.say(
        "If it is easy today: {coach} would like a short clip of one set of {item}. "
        "Send it here, or leave it. Your plan does not depend on it.",
        coach=coach,
        item=item,
    )


# for the coach


def of_athlete(
    tongue: Tongue, *, name: str, kind: str, item: str | None, dose: str | None, caption: str
) -> str:
    """What stands under a clip, for the coach: whose, which item, the dose, the athlete's words."""
    sent = tongue.say("<b>{name}</b> sent {kind}.", name=name, kind=kind_of(tongue, kind))
    lines = [sent, _item(tongue, item, dose)]
    if caption:
        short = shortened(caption, CAPTION_UNITS)
        lines.append(tongue.say("“{words}”", words=short))
    return "\n".join(lines)


def _item(tongue: Tongue, item: str | None, dose: str | None) -> str:
    if item is None:
        return tongue.say("Which item it shows was not said.")
    if dose is None:
        return tongue.say("{item}", item=item)
    return tongue.say("{item} · {dose}", item=item, dose=Marked(dose))


def in_queue(tongue: Tongue, *, text: str, waits: timedelta, left: int) -> str:
    """The oldest clip of the queue: what it is, how long it waits, and how many there are."""
    foot = tongue.say("Sent {age} ago · {left} waiting", age=dates.age(tongue, waits), left=left)
    return f"{text}\n{foot}"


def none_waiting(tongue: Tongue) -> str:
    """The queue is empty."""
    return tongue.say("No clip is waiting for you.")


def own_words_label(tongue: Tongue) -> str:
    """Label the button for an answer in own words."""
    return label(tongue, "Own words")


def next_label(tongue: Tongue) -> str:
    """Label the button that shows the next clip and leaves this one waiting."""
    return label(tongue, "Next clip")


def write_now(tongue: Tongue, *, name: str, item: str | None) -> str:
    """The next text goes under the clip."""
    if item is None:
        return tongue.say("Write now: your next message goes under the clip of {name}.", name=name)
    return tongue.say(
        "Write now: your next message goes under the clip of {name}, {item}.", name=name, item=item
    )


def answered(tongue: Tongue, *, name: str, text: str, left: int) -> str:
    """The answer went to the athlete."""
    sent = tongue.say("Sent to {name} under the clip:\n“{text}”", name=name, text=text)
    rest = (
        tongue.count(left, "1 clip is still waiting.", "{n} clips are still waiting.")
        if left
        else none_waiting(tongue)
    )
    return f"{sent}\n{rest}"


def media_answered(tongue: Tongue, *, name: str) -> str:
    """The coach's own picture or clip went to the athlete."""
    return tongue.say("Sent to {name} under the clip.", name=name)


def answered_before(tongue: Tongue, *, name: str) -> str:
    """A stock answer to a clip that has an answer."""
    return tongue.say(
        "That clip of {name} is answered already. To add something, reply to it in your own words.",
        name=name,
    )


def still_for_clip(tongue: Tongue, *, name: str, text: str) -> str:
    """A text came long after the button was tapped."""
    return tongue.say("Should this go under the clip of {name}?\n“{text}”", name=name, text=text)


def yes_send_label(tongue: Tongue, *, name: str) -> str:
    """Label the button that sends a late text."""
    return label(tongue, "Yes, to {name}", name=name)


def usage(tongue: Tongue) -> str:
    """What can stand behind the command."""
    return tongue.say(
        "Send <code>/clips</code> for the oldest clip, <code>/clips robin</code> for one "
        "athlete's, or <code>/clips ask on robin</code> and <code>/clips ask off robin</code>: "
        "then I ask for one clip a week, never in a lighter week or while something hurts."
    )


def asking(tongue: Tongue, *, name: str, is_on: bool) -> str:
    """The weekly question was switched."""
    if is_on:
        return tongue.say(
            "I ask {name} for one clip of a main item a week, never in a lighter week or while "
            "something hurts.",
            name=name,
        )
    return tongue.say("I no longer ask {name} for clips.", name=name)


def asking_same(tongue: Tongue, *, name: str, is_on: bool) -> str:
    """It stood so already."""
    if is_on:
        return tongue.say("I ask {name} for a clip a week already.", name=name)
    return tongue.say("I do not ask {name} for clips.", name=name)


def asking_to_athlete(tongue: Tongue, *, coach: str, is_on: bool) -> str:
    """Tell the athlete what the coach switched."""
    if is_on:
        return tongue.say(
            "{coach} would like to see a short clip now and then. I will ask for one at most "
            "once a week. You may always leave it.",
            coach=coach,
        )
    return tongue.say("I will not ask you for clips any more. You may still send them.")


def waiting_line(tongue: Tongue, names: Sequence[tuple[str, int]]) -> list[str]:
    """Write whose clips wait, a line each."""
    return [
        tongue.say("{name}: {what}", name=name, what=count(tongue, number))
        for name, number in names
    ]


def count(tongue: Tongue, number: int) -> str:
    """Count clips."""
    return tongue.count(number, "1 clip", "{n} clips")
