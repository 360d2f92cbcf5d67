"""A coach's practice athlete: what it is, and that it is gone without a trace."""

from bot.wording.labels import label
from bot.wording.tongue import Tongue


def begun(tongue: Tongue, *, weeks: int, sessions: int) -> str:
    """Say what has begun and how it ends."""
    return tongue.say(
        "<b>Practice</b>: you are an athlete of your own now, with {weeks} invented weeks and "
        "{sessions} invented sessions behind you. A session comes in a minute. Answer it as an "
        "athlete would; /today, /week, /why and /pain work too.\n"
        "It counts in no digest, no alert and no figure of the team. "
        "<code>/practice end</code> erases all of it.",
        weeks=weeks,
        sessions=sessions,
    )


def running(tongue: Tongue) -> str:
    """It goes on already."""
    return tongue.say(
        "Your practice athlete is there already. /today shows its next session, "
        "<code>/who practice</code> what a coach sees of it."
    )


def end_label(tongue: Tongue) -> str:
    """Label the button that erases it."""
    return label(tongue, "End and erase it")


def ended(tongue: Tongue) -> str:
    """All of it is gone."""
    return tongue.say("The practice athlete is gone, and everything of it is erased.")


def none(tongue: Tongue) -> str:
    """There is nothing to end."""
    return tongue.say("There is no practice athlete. <code>/practice</code> begins one.")


def trains_already(tongue: Tongue) -> str:
    """The coach is an athlete in earnest, and one chat holds one athlete."""
    return tongue.say(
        "You train here yourself, so you see what athletes see already, and one chat can hold "
        "only one athlete. There is no practice beside it."
    )


def usage(tongue: Tongue) -> str:
    """The word behind the command is unknown."""
    return tongue.say(
        "Send <code>/practice</code> to begin, <code>/practice end</code> to end it and erase it."
    )


def would_be_passed_on(tongue: Tongue) -> str:
    """Words that are no result: in earnest they go to the coach, who is the one who wrote them."""
    return tongue.say(
        "Practice: an athlete's words like these go to the coach, so nothing happens here. "
        "To write to an athlete, reply to a message about them, or send "
        "<code>/tell NAME …</code>. <code>/practice end</code> ends the practice."
    )


def nobody_alerted(tongue: Tongue) -> str:
    """In earnest the coach would have been alerted; here nobody was."""
    return tongue.say(
        "Practice: in earnest your coach would be alerted now. Nobody was. If this is real, "
        "get help now and tell somebody."
    )
