"""An athlete goes through guided tests: reads one test off the screen and does it with the body."""

import re
from dataclasses import dataclass

from demo_scenario.hidden import Effort, HiddenBody
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.training_day import movement_named
from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side

OPENING = "Each test begins with an easy set"
HEAD = re.compile(r"^(?:Test \d+ of \d+: (?P<name>.+)|\d+\. (?P<told>.+?): .*)$", re.MULTILINE)
CLOCK = re.compile(r"end at (?P<min>\d*):(?P<s>\d\d) on your clock")
ENOUGH = re.compile(r"(?P<amount>\d+) (?:reps?|m) are enough")
LOAD = re.compile(r"(?P<kg>\d+(?:\.\d+)?) kg")
STOP_WITH = {Measure.REPS: 2.5}  # [reps] as the opening says
STOP_WITH_S = 10.0  # [s] as the opening says


@dataclass(frozen=True, slots=True)
class SeenTest:
    """One test as displayed: ``mark`` [s or reps] at which it is enough."""

    name: str
    side: Side
    mark: int
    load_kg: float | None


def see_test(message: ShownMessage) -> SeenTest | None:
    """Read a test off the screen; None when the message asks for none."""
    asked = message.text.split("Then your best")[-1]
    head = HEAD.search(message.text)
    clock, enough = CLOCK.search(asked), ENOUGH.search(asked)
    if head is None or (clock is None and enough is None):
        return None
    mark = int(enough["amount"]) if enough else 0
    if clock:
        mark = 60 * int(clock["min"] or 0) + int(clock["s"])
    load = LOAD.search(asked.split(":")[0])
    arms = {", left arm": Side.LEFT, ", right arm": Side.RIGHT}
    return SeenTest(
        name=head["name"] or head["told"],
        side=next((side for words, side in arms.items() if words in asked), Side.BOTH),
        mark=mark,
        load_kg=float(load["kg"]) if load else None,
    )


def do_test(seen: SeenTest, *, body: HiddenBody, library: Library) -> tuple[Effort, float] | None:
    """Do one test; return the effort and what the athlete believes was left."""
    movement = movement_named(seen.name, library)
    if movement is None:
        return None
    effort = body.do_set(
        movement,
        target=seen.mark,
        stop_with=STOP_WITH.get(movement.measure, STOP_WITH_S),
        load_kg=seen.load_kg,
        side=seen.side,
    )
    body.end_exercise(movement)
    return effort, body.guess_left(effort, measure=movement.measure)
