"""The whole comparison: every rule, every set of assumptions, the same bodies."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from demo_scenario.comparison.assumptions import ASSUMPTIONS, Assumptions
from demo_scenario.comparison.athletes import draw_athlete
from demo_scenario.comparison.courses import Course
from demo_scenario.comparison.figures import Figures, figures_of
from demo_scenario.comparison.our_dosing import OurDosing
from demo_scenario.comparison.rules import SHORT_REP_S, FixedSteps, Progression, TwoForTwo
from demo_scenario.comparison.training import run
from scheduler.training.rulebook import Rulebook, default_rulebook

HORIZON_WEEKS = 52  # [weeks] ch: who is not through by then counts as unfinished
ALL = "all"  # every set of assumptions together
OURS = "ours, with tries"
TWO_FOR_TWO = ("two for two, +10 s", "two for two, +6 s")


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the comparison."""

    assumptions: str
    rule: str
    figures: Figures


def rules(rulebook: Rulebook) -> tuple[Progression, ...]:
    """Return the progressions that are compared."""
    return (
        OurDosing(rulebook, name=OURS),
        OurDosing(rulebook, has_tries=False, name="ours, doses alone"),
        FixedSteps(rulebook, name="fixed steps"),
        TwoForTwo(rulebook, name=TWO_FOR_TWO[0]),
        TwoForTwo(rulebook, rep_s=SHORT_REP_S, name=TWO_FOR_TWO[1]),
    )


def compare(
    *,
    athletes: int,
    seed: int,
    weeks: int = HORIZON_WEEKS,
    sets: Sequence[Assumptions] = ASSUMPTIONS,
    on_progress: Callable[[str], None] = lambda _: None,
) -> list[Row]:
    """Put as many ``athletes`` [a set of assumptions] through every rule."""
    rulebook = default_rulebook()
    pooled: dict[str, list[Course]] = {}
    rows = []
    for assumptions in sets:
        drawn = [
            draw_athlete(
                number=number, seed=seed, weeks=weeks, assumptions=assumptions, rulebook=rulebook
            )
            for number in range(athletes)
        ]
        for rule in rules(rulebook):
            on_progress(f"{assumptions.name}: {rule.name}")
            courses = [
                run(one, rule=rule, assumptions=assumptions, rulebook=rulebook) for one in drawn
            ]
            pooled.setdefault(rule.name, []).extend(courses)
            rows.append(
                Row(assumptions=assumptions.name, rule=rule.name, figures=figures_of(courses))
            )
    rows += [
        Row(assumptions=ALL, rule=name, figures=figures_of(courses))
        for name, courses in pooled.items()
    ]
    return rows
