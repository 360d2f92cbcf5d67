"""The comparison on a page: what was assumed, the tables, and what they do not say."""

from collections.abc import Sequence

from demo_scenario.comparison.assumptions import ASSUMPTIONS
from demo_scenario.comparison.figures import STRATA, Figures
from demo_scenario.comparison.runs import ALL, OURS, TWO_FOR_TWO, Row
from scheduler.training.rulebook import default_rulebook

HEADINGS = (
    "assumptions",
    "rule",
    "median weeks",
    "90 % weeks",
    "not through",
    "sessions with a miss",
    "with a set short",
    "jump in a week, median",
    "jump, most",
    "declared below",
    *(f"below, {name}" for name in STRATA),
    "tries",
    "tries shown",
)
MOST_OF_MEDIAN = 0.9  # [share] ch: what our median is held against


def page(rows: Sequence[Row], *, athletes: int, seed: int, weeks: int) -> str:
    """Write the whole page, in Markdown."""
    sets = len({row.assumptions for row in rows} - {ALL})
    lines = [
        "# Dosing compared by simulation",
        "",
        "A simulation shows how a rule behaves, not how people do: the bodies below are made up.",
        "",
        f"{athletes} simulated athletes under each of {sets} sets of assumptions, seed {seed},",
        f"watched for {weeks} weeks.",
        "Each trains the movements of the first stage's leave standards, three days a week, under",
        "every rule with the same body, loads, missed days, good and bad days and first dose.",
        "A standard is declared when it was done as written or more on two different days; no",
        "least weeks, lighter weeks or pain are asked of any rule.",
        "",
        *(f"- **{one.name}**: {one.says}." for one in ASSUMPTIONS),
        "",
        *_explanations(),
        "",
        *table(rows),
        "",
        *verdict(rows),
    ]
    return "\n".join(lines) + "\n"


def _explanations() -> tuple[str, ...]:
    likely = default_rulebook().steps.try_probability.value
    return (
        "*Weeks* run to the day on which all four standards were declared; who was not through",
        "when time was up comes last in the order, and a share that was never reached is a dash.",
        "*A miss* is a set below its floor, four fifths of its target; *short* is a set below its",
        "target. *Jump* is the largest rise of a target within seven days, loads compared by the",
        "published endurance curve. *Declared below* is the share of declared standards whose",
        "third set the body would not do on an ordinary, rested day; by thirds of the bodies' own",
        f"gain. *Tries* are standards asked for because the estimate gave them {likely} or more.",
        "*Two for two* counts a repetition as 5 s in the first form, as our reserve answers do,",
        "and as 3 s in the second, its time under load.",
    )


def table(rows: Sequence[Row]) -> list[str]:
    """Return the table, a line a row."""
    rule = "| " + " | ".join("---" for _ in HEADINGS) + " |"
    return ["| " + " | ".join(HEADINGS) + " |", rule, *(_line(row) for row in rows)]


def _line(row: Row) -> str:
    one = row.figures
    cells = (
        row.assumptions,
        row.rule,
        _weeks(one.median_weeks),
        _weeks(one.tail_weeks),
        _share(one.unfinished / one.athletes),
        _share(one.missed_share),
        _share(one.short_share),
        _share(one.jump_median),
        _share(one.jump_most),
        _share(one.below_share),
        *(_share(one.below_by_stratum[name]) for name in STRATA),
        str(one.tries),
        _share(one.shown_share),
    )
    return "| " + " | ".join(cells) + " |"


def _weeks(weeks: float | None) -> str:
    return "–" if weeks is None else f"{weeks:.1f}"


def _share(share: float | None) -> str:
    return "–" if share is None else f"{share:.1%}"


def verdict(rows: Sequence[Row]) -> list[str]:
    """Say what is reached and what is not, ours against each form of two for two, in all."""
    found = {row.rule: row.figures for row in rows if row.assumptions == ALL}
    lines = ["In all, ours with tries:", ""]
    for name in TWO_FOR_TWO:
        lines += [f"- {text}" for text in _against(found[OURS], found[name], name=name)]
    return lines


def _against(ours: Figures, other: Figures, *, name: str) -> tuple[str, ...]:
    misses = _is_reached(is_reached=ours.missed_share <= other.missed_share)
    shares = f"{_share(ours.missed_share)} against {_share(other.missed_share)}"
    ratio = _ratio(ours.median_weeks, other.median_weeks)
    is_quick = ratio is not None and ratio <= MOST_OF_MEDIAN
    by = "not known" if ratio is None else f"{ratio:.2f}"
    return (
        f"misses not above {name}: {misses} ({shares});",
        f"median at most {MOST_OF_MEDIAN} of {name}: {_is_reached(is_reached=is_quick)} ({by});",
        f"90 % not later than {name}: {_tail(ours, other)}.",
    )


def _is_reached(*, is_reached: bool) -> str:
    return "reached" if is_reached else "not reached"


def _ratio(ours: float | None, other: float | None) -> float | None:
    return ours / other if ours is not None and other is not None else None


def _tail(ours: Figures, other: Figures) -> str:
    """Compare the tails; where time was up before either, the shares not through."""
    if ours.tail_weeks is None and other.tail_weeks is None:
        shares = [_share(one.unfinished / one.athletes) for one in (ours, other)]
        return f"not known, time was up before ({shares[0]} not through against {shares[1]})"
    is_reached = ours.tail_weeks is not None and (
        other.tail_weeks is None or ours.tail_weeks <= other.tail_weeks
    )
    weeks = f"{_weeks(ours.tail_weeks)} against {_weeks(other.tail_weeks)} weeks"
    return f"{_is_reached(is_reached=is_reached)} ({weeks})"
