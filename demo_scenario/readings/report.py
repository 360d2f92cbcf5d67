"""What the command prints: a line a message, the wrong ones in detail, the totals, the times."""

from collections import Counter
from collections.abc import Sequence
from time import thread_time

from bot.reading.reply import read
from demo_scenario.readings.files import Case
from demo_scenario.readings.heard import Heard, ItemHeard
from demo_scenario.readings.places import context_of
from demo_scenario.readings.verdicts import Checked, Verdict

SHOWN_MOST = 70  # [characters] ch: of a message, so that a line stays a line
ROUNDS = 10  # [-] ch: so often each message is read for the times
TARGET_MS = 10.0  # [ms] ch: 99 of 100 typical replies at most
NAMES = {
    Verdict.RIGHT: "recorded right",
    Verdict.ASKED: "asked needlessly",
    Verdict.WRONG: "silently wrong",
}


def line_of(checked: Checked) -> str:
    """Return one line: verdict, number of the line, place, message, what it was read as."""
    said = " ⏎ ".join(checked.case.say.split("\n"))
    said = said if len(said) <= SHOWN_MOST else said[: SHOWN_MOST - 1] + "…"
    case = checked.case
    return f"{checked.verdict:<6} {case.number:>4} [{case.where}] {said} → {shown(checked.heard)}"


def why(checked: Checked) -> str:
    """Return what was expected of a message, on a line below its own."""
    return f"            expected {shown(checked.expected)}"


def totals(checked: Sequence[Checked]) -> str:
    """Return how many were read right, asked without need, and silently wrong."""
    counts = Counter(one.verdict for one in checked)
    told = ", ".join(f"{NAMES[verdict]} {counts[verdict]}" for verdict in Verdict)
    return f"{len(checked)} messages: {told}"


def timed(cases: Sequence[Case]) -> str:
    """Read every message several times and return the median and the 99th percentile."""
    placed = [(case.say, context_of(case.place)) for case in cases]
    times = []
    for say, context in placed * ROUNDS:
        start = thread_time()
        read(say, context)
        times.append(1000 * (thread_time() - start))
    times.sort()
    p99 = times[min(len(times) - 1, len(times) * 99 // 100)]
    return (
        f"processor time a message: median {times[len(times) // 2]:.2f} ms, p99 {p99:.2f} ms,"
        f" longest {times[-1]:.2f} ms (target: p99 at most {TARGET_MS:g} ms)"
    )


def shown(heard: Heard) -> str:
    """Return the facts of a reading in a short line."""
    words = [heard.kind, *(_item(one) for one in heard.items)]
    for name, value in (
        ("on", heard.day),
        ("reason", heard.reason),
        ("effort", heard.effort),
        ("reserve", heard.reserve),
        ("yes", heard.is_yes),
    ):
        words += [] if value is None else [f"{name} {value}"]
    for sites, side, score in heard.pains:
        place = "/".join(sorted(sites)) or "somewhere"
        words.append(f"pain {side or ''} {place} {'?' if score is None else score}")
    return "; ".join(words)


def _item(item: ItemHeard) -> str:
    sets = []
    for side, value, load_kg, band in item.sets:
        arm = "" if side == "both" else side[0].upper()
        load = "" if load_kg is None else f"@{load_kg:g}"
        sets.append(f"{arm}{value:g}{load}{band or ''}")
    words = [f"{item.number})", *sets]
    words += ["stopped"] * item.is_stopped + ["skipped"] * item.is_skipped
    words += [] if item.reserve is None else [f"left {item.reserve:g}"]
    return " ".join(words)
