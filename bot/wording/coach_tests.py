"""Guided tests as the coach reads and asks for them."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bot.wording import doses
from bot.wording.guided_tests import ArmDone, TestFacts
from bot.wording.labels import label
from bot.wording.movement_names import name_of
from bot.wording.pages import shortened
from bot.wording.tests_found import line_found
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.training.values import ReserveAnswer

EXAMPLE = "/tests Robin"
REMARK_UNITS = 120  # [UTF-16 units] ch: three lines of a phone; the chat has the whole
ENDS: Mapping[str, Template] = {
    "could_not": "could not do it",
    "no_equipment": "no equipment",
    "tired": "too tired",
    "rather_not": "rather not",
    "": "left out",
}


@dataclass(frozen=True)
class ShownFacts:
    """One standard that a test may show: of ``stage``, from ``at`` [s or repetitions] on."""

    stage: int
    at: int
    is_shown: bool


@dataclass(frozen=True)
class ResultFacts:
    """One test of a round: what was done, what it shows, or why there is nothing."""

    test: TestFacts
    arms: tuple[ArmDone, ...]
    reserve: ReserveAnswer | None
    shows: tuple[ShownFacts, ...]
    skipped_because: str | None = None


def results(
    tongue: Tongue,
    *,
    name: str,
    tests: Sequence[ResultFacts],
    by_coach: Sequence[str],
    changes: Sequence[str],
    suggestion: str,
) -> str:
    """Write what the tests found on one screen: test by test, what it shows, what it suggests."""
    lines = [tongue.say("<b>{name}</b>: the tests are done", name=name)]
    lines += [_line(tongue, one) for one in tests]
    if not tests:
        lines.append(tongue.say("Nothing was tested."))
    if changes:
        lines += ["", tongue.say("<b>Since the last tests</b>"), *changes]
    if by_coach:
        lines += [
            "",
            tongue.say("Yours to decide, since no test could show it: {what}.",
                       what=", ".join(by_coach)),
        ]  # fmt: skip
    return "\n".join([*lines, "", suggestion])


def _line(tongue: Tongue, one: ResultFacts) -> str:
    if not one.arms:
        why = one.skipped_because
        said = tongue.say("not reached") if why is None else tongue.say(ENDS.get(why, ENDS[""]))
        return tongue.say("· {name}: {why}", name=name_of(tongue, one.test.movement), why=said)
    line = line_found(tongue, one.test, one.arms)
    if one.reserve is not None:
        line += " · " + doses.reserve_given(tongue, one.test.measure, one.reserve)
    return "\n".join([line, *(_shown(tongue, one.test, shown) for shown in one.shows)])


def _shown(tongue: Tongue, test: TestFacts, shown: ShownFacts) -> str:
    amount = doses.amount(tongue, test.measure, shown.at)
    if shown.is_shown:
        return tongue.say(
            "    shows the standard of stage {stage} ({amount})", stage=shown.stage, amount=amount
        )
    return tongue.say(
        "    {amount} would show the standard of stage {stage}", amount=amount, stage=shown.stage
    )


def suggests(tongue: Tongue, *, stage: int, now: int) -> str:
    """Say which stage the tests suggest; the coach decides."""
    if stage == now:
        return tongue.say("The tests suggest stage {stage}, where they are.", stage=stage)
    return tongue.say(
        "The tests suggest <b>stage {stage}</b> (now {now}). Nothing changes until you decide.",
        stage=stage,
        now=now,
    )


def no_suggestion(tongue: Tongue) -> str:
    """Later tests count for the checklist and suggest no stage."""
    return tongue.say("What they show counts for the checklist.")


def set_label(tongue: Tongue, stage: int) -> str:
    """Label the button that takes the suggestion."""
    return label(tongue, "Set stage {stage}", stage=stage)


def leave_label(tongue: Tongue, stage: int) -> str:
    """Label the button that leaves the stage."""
    return label(tongue, "Leave stage {stage}", stage=stage)


def open_label(tongue: Tongue) -> str:
    """Label the button that opens the athlete's screen."""
    return label(tongue, "Open")


def reason_of_tests(tongue: Tongue) -> str:
    """The reason that is kept when the coach takes a suggestion."""
    return tongue.say("shown by tests, approved by tap")


def would_test(tongue: Tongue, *, name: str, lines: Sequence[str], whys: Sequence[str]) -> str:
    """Show what would be tested, and what not and why, before it is asked for."""
    if not lines:
        head = tongue.say("<b>{name}</b>: nothing can be tested now.", name=name)
        return "\n".join([head, *whys])
    head = tongue.say("<b>{name}</b>: this would be tested, led by the bot:", name=name)
    return "\n".join([head, *lines, *(["", *whys] if whys else []), "", tongue.say("When?")])


def test_line(tongue: Tongue, test: TestFacts, *, day: int) -> str:
    """Name one test, its load and its mark."""
    load = tongue.say(" with {kg} kg", kg=test.rung.load_kg) if test.rung.load_kg else ""
    return tongue.say(
        "· day {day}: {name}{load}, up to {amount}",
        day=day,
        name=name_of(tongue, test.movement),
        load=Marked(load),
        amount=doses.amount(tongue, test.measure, test.mark),
    )


def is_open(tongue: Tongue, *, name: str, done: int, of: int, is_in_lighter_week: bool) -> str:
    """Tests are on already: how far they are."""
    if is_in_lighter_week and not done:
        return tongue.say(
            "<b>{name}</b>: tests wait for the next lighter week ({of} in all).", name=name, of=of
        )
    return tongue.say("<b>{name}</b>: tests are on, {done} of {of} done.", name=name, done=done,
                      of=of)  # fmt: skip


def next_label(tongue: Tongue) -> str:
    """Label the button: with the next session."""
    return label(tongue, "With the next session")


def lighter_label(tongue: Tongue) -> str:
    """Label the button: in the next lighter week."""
    return label(tongue, "In the next lighter week")


def call_off_label(tongue: Tongue) -> str:
    """Label the button that takes the tests back."""
    return label(tongue, "Call them off")


def asked(tongue: Tongue, *, name: str, is_in_lighter_week: bool) -> str:
    """The tests are asked for."""
    if is_in_lighter_week:
        return tongue.say("{name}: tests in the next lighter week. {name} was told.", name=name)
    return tongue.say("{name}: tests with the next session. {name} was told.", name=name)


def called_off(tongue: Tongue, *, name: str) -> str:
    """The tests are called off."""
    return tongue.say("{name}: the tests are called off. {name} was told.", name=name)


def nothing_open(tongue: Tongue, *, name: str) -> str:
    """No tests are on, so there is nothing to call off."""
    return tongue.say(
        "{name}: no tests are on now. <code>/tests {name}</code> asks for some.", name=name
    )


def not_training(tongue: Tongue, *, name: str) -> str:
    """Somebody who does not train now is not tested."""
    return tongue.say(
        "{name} is not in training now, so nothing is tested. "
        "First look at the answers or the break: <code>/who {name}</code>.",
        name=name,
    )


def remark(tongue: Tongue, *, day: str, words: str) -> str:
    """Words that stood beside results, in a line or two."""
    line = shortened(" · ".join(words.split("\n")), REMARK_UNITS)
    return tongue.say("{day}: “{words}”", day=day, words=line)
