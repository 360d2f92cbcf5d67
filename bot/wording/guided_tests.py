"""Guided tests as the athlete reads them: one test a message, its figures, what was found."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import time

from bot.wording import doses, labels
from bot.wording.movement_names import common_fault, how_to, name_of
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.catalogue.values import HAND_WEIGHTS, Loading, Measure, Movement
from scheduler.pain.values import Side
from scheduler.training.baseline_values import TestStop
from scheduler.training.values import ReserveAnswer, Rung

MINUTE_S = 60  # [s] definition
EASY_SHARE = 1 / 3  # [fraction of the mark] ch: an easy set before the test
EASY_STEP_S = 5  # [s] ch: nobody counts single seconds to warm up
REASONS: Mapping[str, Template] = {
    "could_not": "Could not do it",
    "no_equipment": "Not here: no equipment",
    "tired": "Too tired for it today",
    "rather_not": "Rather not",
}


@dataclass(frozen=True)
class TestFacts:
    """One test as it is shown: ``number`` of ``of`` today, up to ``mark`` [s or repetitions]."""

    __test__ = False

    number: int
    of: int
    movement: Movement
    measure: Measure
    mark: int
    rung: Rung


@dataclass(frozen=True)
class ArmDone:
    """What one arm did; ``value`` None where the try was skipped or ended without a figure."""

    side: Side
    value: float | None
    is_hurt: bool = False
    load_kg: float | None = None


def intro(
    tongue: Tongue,
    *,
    weekday: str,
    minutes: int,
    names: Sequence[str],
    stop: TestStop,
    coach: str,
    is_first: bool,
    spared: Sequence[str] = (),
) -> str:
    """Open the session: what it is for, when a set is over, the warm-up, what comes."""
    what = (
        tongue.say("Today shows where you stand, one test at a time. Nobody passes or fails.")
        if is_first
        else tongue.say("Tests again: the same sets as before, one at a time.")
    )
    return "\n".join(
        [
            tongue.say(
                "<b>{weekday}, tests</b> · about {minutes} min", weekday=weekday, minutes=minutes
            ),
            what,
            _rules(tongue, stop),
            "",
            tongue.say(
                "<b>Warm-up</b>\n2 min easy movement, 10 slow shoulder-blade circles. "
                "Each test begins with an easy set."
            ),
            "",
            *(tongue.say("{n}. {name}", n=n, name=name) for n, name in enumerate(names, start=1)),
            *([passed_over(tongue, spared)] if spared else []),
            "",
            clip_wish(tongue, coach=coach),
        ]
    )


def _rules(tongue: Tongue, stop: TestStop) -> str:
    return tongue.say(
        "One set each. End it while about {hold} s or {least} to {most} good reps are left in you, "
        "when the position goes, or when something hurts above {pain} of 10.",
        hold=stop.reserve_hold_s,
        least=stop.reserve_reps_least,
        most=stop.reserve_reps_most,
        pain=stop.pain_above,
    )


def clip_wish(tongue: Tongue, *, coach: str) -> str:
    """Ask for a clip, kindly: nobody must."""
    return tongue.say(
        "If somebody can film a set, send the clip here: {coach} will look at it.", coach=coach
    )


def start_label(tongue: Tongue) -> str:
    """Label the button that begins."""
    return labels.label(tongue, "Start")


def cant_label(tongue: Tongue) -> str:
    """Label the button of a day without training."""
    return labels.label(tongue, "Can't today")


def something_hurts_label(tongue: Tongue) -> str:
    """Label the button that reports pain before a test began."""
    return labels.label(tongue, "Something hurts")


def hurt_label(tongue: Tongue) -> str:
    """Label the button that ends a test because it hurt."""
    return labels.label(tongue, "That hurt")


def skip_label(tongue: Tongue) -> str:
    """Label the button that leaves a test out."""
    return labels.label(tongue, "Skip it")


def stop_label(tongue: Tongue) -> str:
    """Label the button that ends the tests of today."""
    return labels.label(tongue, "Rest on another day")


def change_label(tongue: Tongue) -> str:
    """Label the button that asks for a test's figures again."""
    return labels.label(tongue, "Change")


def unknown_label(tongue: Tongue) -> str:
    """Label the button for an athlete who cannot tell what was left."""
    return labels.label(tongue, "Don't know")


def reason_label(tongue: Tongue, key: str) -> str:
    """Label the button of one reason to leave a test out."""
    return labels.label(tongue, REASONS[key])


def value_label(tongue: Tongue, measure: Measure, value: float) -> str:
    """Label the button of one reading."""
    return labels.label(tongue, "{amount}", amount=doses.amount(tongue, measure, value))


def test(tongue: Tongue, facts: TestFacts, *, arm: Side, rest_until: time | None) -> str:
    """Write one test: rest, how it is done, an easy set first, then the best, and its mark."""
    name = name_of(tongue, facts.movement)
    head = tongue.say("<b>Test {n} of {of}: {name}</b>", n=facts.number, of=facts.of, name=name)
    how = tongue.say(
        "{how} Often seen: {fault}",
        how=how_to(tongue, facts.movement),
        fault=common_fault(tongue, facts.movement),
    )
    lines = [head, how, "", _easy(tongue, facts)]
    if rest_until is not None:
        lines = [rest(tongue, rest_until), "", *lines]
    return "\n".join([*lines, best(tongue, facts, arm=arm)])


def rest(tongue: Tongue, until: time) -> str:
    """Say how long to rest by the clock on the wall."""
    return tongue.say("Rest until {time} on your clock.", time=f"{until:%H:%M}")


def best(tongue: Tongue, facts: TestFacts, *, arm: Side) -> str:
    """Ask for the best of one arm, with the mark at which it is enough."""
    load = load_of(tongue, facts)
    amount = doses.amount(tongue, facts.measure, facts.mark)
    if facts.measure is Measure.REPS:
        first = tongue.say(
            "Then your best{arm}{load}: {amount} are enough.",
            arm=arm_words(tongue, arm),
            load=Marked(load),
            amount=amount,
        )
        return "\n".join([first, tongue.say("How many clean ones? Tap, or write the number.")])
    if facts.measure is Measure.CARRY_M:
        first = tongue.say(
            "Then your best{arm}{load}: {amount} are enough.",
            arm=arm_words(tongue, arm),
            load=Marked(load),
            amount=amount,
        )
        return "\n".join([first, tongue.say("How many metres? Tap, or write the number.")])
    first = tongue.say(
        "Then your best{arm}{load}: start at :00 and end at {clock} on your clock at the latest.",
        arm=arm_words(tongue, arm),
        load=Marked(load),
        clock=clock(facts.mark),
    )
    return "\n".join([first, tongue.say("How long was it? Tap, or write the seconds.")])


def asked_again(tongue: Tongue, *, name: str, question: str) -> str:
    """Ask a test's figures again."""
    return tongue.say(
        "<b>{name}</b>, once more. The figure before is taken back.\n{question}",
        name=name,
        question=Marked(question),
    )


def next_arm(tongue: Tongue, facts: TestFacts, *, arm: Side, rest_until: time | None) -> str:
    """Go on with the other arm of the same test."""
    lines = [] if rest_until is None else [rest(tongue, rest_until)]
    return "\n".join([*lines, best(tongue, facts, arm=arm)])


def _easy(tongue: Tongue, facts: TestFacts) -> str:
    easy = facts.mark * EASY_SHARE
    if facts.measure is Measure.REPS:
        return tongue.count(
            max(1, round(easy)),
            "First one easy set of {n}, then a minute of rest.",
            "First one easy set of {n}, then a minute of rest.",
        )
    step = max(EASY_STEP_S, round(easy / EASY_STEP_S) * EASY_STEP_S)
    return tongue.say(
        "First one easy set of about {amount}, then a minute of rest.",
        amount=doses.amount(tongue, facts.measure, step),
    )


def arm_words(tongue: Tongue, arm: Side) -> str:
    """Name the arm of a set, empty where both work at once."""
    if arm is Side.LEFT:
        return tongue.say(", left arm")
    return tongue.say(", right arm") if arm is Side.RIGHT else ""


def load_of(tongue: Tongue, facts: TestFacts) -> str:
    """Write the resistance of a test in front of its mark, empty where there is none."""
    if not facts.rung.load_kg:
        return ""
    if facts.movement.loading is Loading.BODYWEIGHT_PLUS:
        return tongue.say(", plus {kg} kg on the body", kg=facts.rung.load_kg)
    if any(choice & HAND_WEIGHTS for choice in facts.movement.equipment):
        return tongue.say(", {kg} kg a hand", kg=facts.rung.load_kg)
    return tongue.say(", {kg} kg", kg=facts.rung.load_kg)


def clock(seconds: int) -> str:
    """Write seconds as they stand on a clock that began at :00."""
    minutes, rest_s = divmod(seconds, MINUTE_S)
    return f"{minutes}:{rest_s:02d}" if minutes else f":{rest_s:02d}"


def done(
    tongue: Tongue, facts: TestFacts, arms: Sequence[ArmDone], reserve: ReserveAnswer | None
) -> str:
    """Play one test back in one line, arm by arm, with what was left."""
    is_left_out = bool(arms) and all(one.value is None and not one.is_hurt for one in arms)
    done = " · ".join(part for one in arms if (part := arm_done(tongue, facts, one)))
    said = tongue.say("left out") if is_left_out else done
    line = tongue.say(
        "{n}. {name}: <b>{results}</b>",
        n=facts.number,
        name=name_of(tongue, facts.movement),
        results=Marked(said),
    )
    if reserve is not None:
        line += " · " + doses.reserve_given(tongue, facts.measure, reserve)
    return line


def arm_done(tongue: Tongue, facts: TestFacts, one: ArmDone) -> str:
    """Write what one arm did."""
    if one.value is None:
        said = tongue.say("stopped, it hurt") if one.is_hurt else tongue.say("left out")
    else:
        said = doses.amount(tongue, facts.measure, one.value)
        if one.is_hurt:
            said = tongue.say("{said}, and it hurt", said=said)
        if one.load_kg is not None and one.load_kg != facts.rung.load_kg:
            said = tongue.say("{said} at {kg} kg", said=said, kg=one.load_kg)
    if one.side is Side.LEFT:
        return tongue.say("left {values}", values=said)
    return tongue.say("right {values}", values=said) if one.side is Side.RIGHT else said


def reserve_question(tongue: Tongue, facts: TestFacts) -> str:
    """Ask what was left when the set ended."""
    if facts.measure is Measure.REPS:
        return tongue.say("How many more good reps were in you?")
    return tongue.say("How many more seconds were in you?")


def why_skip(tongue: Tongue, facts: TestFacts) -> str:
    """Ask why a test is left out."""
    return tongue.say("{name}: why leave it out?", name=name_of(tongue, facts.movement))


def how_to_answer(tongue: Tongue, facts: TestFacts) -> str:
    """Say what to send for the test that is asked."""
    example = facts.mark - 2 if facts.mark > 4 else facts.mark
    return tongue.say(
        "I did not get a figure for {name}. Send it like <code>{example}</code>, or tap.",
        name=name_of(tongue, facts.movement),
        example=example,
    )


def which_value(tongue: Tongue, facts: TestFacts) -> str:
    """Ask which figure was meant."""
    return tongue.say("{name}: what did you get?", name=name_of(tongue, facts.movement))


def no_test_now(tongue: Tongue) -> str:
    """A button of a test that is over."""
    return tongue.say("That test is behind you. /today shows what is next.")


def stays_closed(tongue: Tongue) -> str:
    """A test that hurt is not opened again by a tap."""
    return tongue.say("That test hurt, so it stays closed. Your coach decides when it comes again.")


def passed_over(tongue: Tongue, names: Sequence[str]) -> str:
    """What is not tested today since something it loads is looked after."""
    return tongue.say(
        "Not tested today, since it loads what hurts: {names}.", names=", ".join(names)
    )
