"""A reply that would be understood, built from today's own items."""

from collections.abc import Mapping, Sequence

from bot.reading.known import KnownItem, KnownSession
from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side

MOST_LINES = 2  # [lines] CH: an example, not a form
SHORT = 3  # [s, m] CH: so much the last set of an example is short, to show what is meant
SHORT_FROM = 10  # [s, m] CH: below it, and for repetitions, one less is short enough
LETTERS: Mapping[str, Mapping[Side, str]] = {
    "en": {Side.LEFT: "L ", Side.RIGHT: "R "},
    "es": {Side.LEFT: "I ", Side.RIGHT: "D "},
}
"""How each arm is written in short, by language; what people type before its figures."""


def letter_of(arm: Side, language: str) -> str:
    """Return the letter of an arm, empty for both at once."""
    return LETTERS.get(language, LETTERS["en"]).get(arm, "")


def example_reply(session: KnownSession | None, *, language: str) -> str:
    """Return a line for each of the first open items: its number and one figure a set."""
    if session is None:
        return ""
    items = [item for item in session.items if not item.is_reported] or list(session.items)
    return "\n".join(example_line(item, language=language) for item in items[:MOST_LINES])


def example_line(item: KnownItem, *, language: str) -> str:
    """Return the item's number and a figure for each set, arm by arm where each has its own."""
    return example_of(
        number=item.number,
        measure=item.measure,
        sets=item.sets,
        target=item.target,
        arms=item.arms_asked,
        language=language,
    )


def example_of(
    *,
    number: int,
    measure: Measure,
    sets: int,
    target: float,
    arms: Sequence[Side],
    language: str,
) -> str:
    """Return believable figures behind an item's number: the last set a little short.

    ``arms`` are those that have sets of their own, none where both work at once.
    """
    is_long = measure is not Measure.REPS and target >= SHORT_FROM
    last = max(1, target - (SHORT if is_long else 1))
    figures = " ".join([f"{target:g}"] * (sets - 1) + [f"{last:g}"])
    by_arm = " ".join(f"{letter_of(arm, language)}{figures}" for arm in arms) or figures
    return f"{number}) {by_arm}"
