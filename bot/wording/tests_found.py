"""Around guided tests: asked for, stopped, still to come, and what they found."""

from collections.abc import Sequence
from datetime import date

from bot.wording import doses
from bot.wording.dates import day
from bot.wording.guided_tests import ArmDone, TestFacts, arm_done, arm_words, load_of
from bot.wording.movement_names import name_of
from bot.wording.tongue import Marked, Tongue
from scheduler.pain.values import Side


def stopped(tongue: Tongue, *, next_on: date | None) -> str:
    """The athlete goes on another day."""
    if next_on is None:
        return tongue.say("Fine. The rest of the tests comes with your next session.")
    return tongue.say(
        "Fine. The rest of the tests comes with your session on {day}.", day=day(tongue, next_on)
    )


def more_to_come(tongue: Tongue, *, next_on: date | None, names: Sequence[str]) -> str:
    """The second day is still to come."""
    what = ", ".join(names)
    if next_on is None:
        return tongue.say("Still to test, with one of your next sessions: {names}.", names=what)
    return tongue.say(
        "Still to test, from {day} on: {names}.", day=day(tongue, next_on), names=what
    )


def found(
    tongue: Tongue,
    lines: Sequence[str],
    *,
    changes: Sequence[str],
    coach: str,
    is_again: bool,
) -> str:
    """Say what the tests found, in plain words, and what becomes of it."""
    if not lines:
        return tongue.say(
            "The tests are closed without a result. Training goes on carefully, from the easy end."
        )
    use = (
        tongue.say("Your next doses know it. {coach} has the results too.", coach=coach)
        if is_again
        else tongue.say(
            "Your first doses begin well below this, on purpose. "
            "{coach} has the results too and looks at where you begin.",
            coach=coach,
        )
    )
    return "\n".join(
        [tongue.say("<b>The tests are done.</b> This is what they found:"), *lines,
         *(["", *changes] if changes else []), "", use]
    )  # fmt: skip


def line_found(tongue: Tongue, facts: TestFacts, arms: Sequence[ArmDone]) -> str:
    """Write one test's result without its number."""
    said = " · ".join(part for one in arms if (part := arm_done(tongue, facts, one)))
    load = load_of(tongue, facts)
    return tongue.say(
        "· {name}{load}: {results}",
        name=name_of(tongue, facts.movement),
        load=Marked(load),
        results=Marked(said),
    )


def change_found(
    tongue: Tongue, facts: TestFacts, *, side: Side, was: float, now: float, is_real: bool | None
) -> str:
    """Compare with the test before; real only beyond what two tests wander by themselves."""
    fillings = {
        "name": name_of(tongue, facts.movement),
        "arm": arm_words(tongue, side),
        "was": doses.amount(tongue, facts.measure, was),
        "now": doses.amount(tongue, facts.measure, now),
    }
    if is_real:
        return tongue.say("{name}{arm}: {was}, now {now}. A real change.", **fillings)
    if is_real is False:
        return tongue.say(
            "{name}{arm}: {was}, now {now}. Within what tests wander by themselves.", **fillings
        )
    return tongue.say("{name}{arm}: {was}, now {now}.", **fillings)


def asked_by_coach(tongue: Tongue, *, coach: str, is_in_lighter_week: bool) -> str:
    """The coach asks for tests."""
    if is_in_lighter_week:
        return tongue.say(
            "{coach} asks for tests in your next lighter week. "
            "A session of it turns into tests, and I lead you through.",
            coach=coach,
        )
    return tongue.say(
        "{coach} asks for tests. Your next session turns into them, and I lead you through.",
        coach=coach,
    )


def called_off(tongue: Tongue, *, coach: str) -> str:
    """The coach took the tests back."""
    return tongue.say("{coach} called the tests off. Your sessions go on as planned.", coach=coach)


def begins_with_tests(tongue: Tongue) -> str:
    """The first sessions are tests."""
    return tongue.say(
        "Your first one or two sessions are tests: a few sets with the figures that you reach. "
        "I lead you through, one at a time."
    )


def reminder(tongue: Tongue) -> str:
    """The one reminder of a day of tests."""
    return tongue.say(
        "Today's tests are still open. Tap to begin. If not today, they wait for your next session."
    )
