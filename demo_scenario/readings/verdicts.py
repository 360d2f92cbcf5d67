"""Compare readings with what was expected: right, asked without need, or silently wrong."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from time import perf_counter

from bot.reading.reply import read
from demo_scenario.readings.files import Case
from demo_scenario.readings.heard import Heard, expected, heard
from demo_scenario.readings.places import context_of

HARMLESS = frozenset({"asked", "not_understood", "passed_on"})
"""Outcomes by which nothing is stored but the pain."""
STORING = frozenset({"recorded", "correction"})


class Verdict(StrEnum):
    """How a reading stands to what was expected."""

    RIGHT = "right"
    ASKED = "asked"
    WRONG = "wrong"


@dataclass(frozen=True)
class Checked:
    """One message with its reading and the verdict."""

    case: Case
    verdict: Verdict
    expected: Heard
    heard: Heard
    took_ms: float


def check(cases: Sequence[Case]) -> list[Checked]:
    """Read every message in its place and judge the reading."""
    checked = []
    for case in cases:
        context = context_of(case.place)
        start = perf_counter()
        reading = read(case.say, context)
        took_ms = 1000 * (perf_counter() - start)
        want, got = expected(case.expect, context), heard(reading, context)
        verdict = judged(want, got, may_be=case.expect.may_be)
        checked.append(Checked(case, verdict, want, got, took_ms))
    return checked


def judged(want: Heard, got: Heard, *, may_be: Sequence[str] = ()) -> Verdict:
    """Judge a reading.

    A pain that was lost, invented or changed is wrong whatever the outcome. So is a store of
    something else than expected, and a store where a question was due. A question, an example or
    a passing on where something plain was said is asked without need.
    """
    if got.pains != want.pains:
        return Verdict.WRONG
    if got.kind == want.kind or {got.kind, want.kind} == STORING:
        return Verdict.RIGHT if _says_the_same(want, got) else Verdict.WRONG
    if got.kind in may_be:
        is_same = got.kind not in STORING or not want.items or got.items == want.items
        return Verdict.RIGHT if is_same else Verdict.WRONG
    return Verdict.ASKED if got.kind in HARMLESS else Verdict.WRONG


def _says_the_same(want: Heard, got: Heard) -> bool:
    if want.kind in {"asked", "not_understood", "passed_on"}:
        return True
    is_same_day = want.day == got.day or None in {want.day, got.day}
    told = (want.items, want.reason, want.effort, want.reserve, want.is_yes)
    return is_same_day and told == (got.items, got.reason, got.effort, got.reserve, got.is_yes)
