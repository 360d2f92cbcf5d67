"""The figures of a reason as people read them: keys become words, shares become percent."""

from collections.abc import Mapping
from datetime import date

from bot.wording import dates
from bot.wording.flag_words import flag_word
from bot.wording.movement_names import movement_name, name_within
from bot.wording.tongue import Template, Tongue
from scheduler.reasons import Figure

WORDS: Mapping[str, Template] = {
    "vertical_push": "overhead pushing",
    "horizontal_push": "pushing forward",
    "downward_push": "dips and supports",
    "vertical_pull": "pulling from overhead",
    "horizontal_pull": "rowing",
    "upward_pull": "shrugs and carries",
    "muscular_endurance": "muscular endurance",
    "strength_endurance": "strength endurance",
    "general_strength": "general strength",
    "dynamic_fresh": "fresh, quick repetitions",
    "repeated_effort": "repeated efforts on a clock",
    "maximal_strength": "maximal strength",
    "open": "work with a weight or band in the hand",
    "closed": "work with the hand fixed",
    "left": "left",
    "right": "right",
    "both": "both",
    "hang": "hang",
    "carry": "carry",
    "support": "support",
    "push_up": "push up",
    "harder_push_up": "harder push up",
    "pull_up": "pull up",
}
LEVEL_WORDS: tuple[Template, ...] = (
    "nothing",
    "watched",
    "eased",
    "rested",
    "see a clinician",
    "emergency",
)
SHARES = ("share", "share_of_sets", "weaker_for_stronger", "needed", "own_start", "share_least")
SAID_IF_LESS = frozenset({"share", "share_of_sets"})
"""Shares of the sets: the whole of them is no share worth naming."""
WITHIN_A_SENTENCE = frozenset({"to", "harder"})
"""Figures that name a movement after other words."""
LOADS = "_kg"
"""How the names of loads end; they are written with their unit."""
SECONDS_AN_HOUR = 3600  # [s] definition


def shown(tongue: Tongue, figures: Mapping[str, Figure]) -> dict[str, str]:
    """Return every figure in words, with ``…_pct`` for shares and ``…_h`` for long spans."""
    found = {name: _one(tongue, name, value) for name, value in figures.items()}
    for name in SHARES:
        value = figures.get(name)
        is_whole = name in SAID_IF_LESS and value == 1
        if isinstance(value, int | float) and not isinstance(value, bool) and not is_whole:
            found[f"{name}_pct"] = f"{round(100 * value)}"
    for name in ("wait_s", "late_s", "span_s"):
        value = figures.get(name)
        if isinstance(value, int | float) and not isinstance(value, bool):
            found[name.removesuffix("_s") + "_span"] = span(tongue, seconds=value)
    return found


def span(tongue: Tongue, *, seconds: float) -> str:
    """Write a span of time in minutes or hours."""
    if seconds < 2 * SECONDS_AN_HOUR:
        return tongue.say("{n} min", n=round(seconds / 60))
    return tongue.say("{n} h", n=round(seconds / SECONDS_AN_HOUR))


def word(tongue: Tongue, key: str) -> str:
    """Write a key in words: a known one by the table, a movement's by its name."""
    return tongue.say(WORDS[key]) if key in WORDS else movement_name(tongue, key)


def _one(tongue: Tongue, name: str, value: Figure) -> str:
    if isinstance(value, bool):
        return tongue.say("yes") if value else tongue.say("no")
    if name == "level" and isinstance(value, int) and 0 <= value < len(LEVEL_WORDS):
        return tongue.say(LEVEL_WORDS[value])
    if isinstance(value, int | float):
        return tongue.load(value) if name.endswith(LOADS) else tongue.number(value)
    if name == "flag":
        return flag_word(tongue, value)
    if name in {"on", "to", "local_date"} and (on := _date_in(value)):
        return dates.day(tongue, on)
    if name in WITHIN_A_SENTENCE and value not in WORDS:
        return name_within(tongue, value)
    return ", ".join(word(tongue, part) for part in value.split(" ")) if value else ""


def _date_in(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None
