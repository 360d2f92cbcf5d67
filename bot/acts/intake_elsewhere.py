"""What is trained elsewhere every week, and on which days: "climbing tue thu, swim sat"."""

import re
from collections.abc import Mapping, Sequence
from typing import Any

from bot.acts.intake_answers import NONE_WORDS, Answer, Heard, Unclear, Why, tidy
from bot.reading.days import WEEKDAYS
from scheduler.training.other_training import HARD_UNLESS_SAID, RegularTraining, tags_of

NOTHING = NONE_WORDS | {
    "nothing else", "no other", "only this", "just this", "not really", "no not really",
    "no nothing", "nope nothing", "nothing at all", "no nothing else", "only upper body",
    "nothing regular", "nothing fixed", "no thanks", "solo esto", "solo this",
    "la verdad es que no", "no la verdad", "no nada", "nothing nothing",
    "no hago nothing else", "no hago nothing",
    "i don't", "i do not", "no i don't", "no more",
}  # fmt: skip
PASSED_OVER = frozenset(
    """a an and also at do each evening evenings every for go i in morning mornings my on once
    session sessions some the then times to twice week weekly with am pm h hrs o'clock usually
    mostly practice hago voy tengo por semana sobre a las
    los el la las y de por en cada manana mananas tarde tardes noche noches""".split()  # noqa: SIM905 (a text)
)
DAY_LETTERS_LEAST = 3  # [letters] ch: "we" and "su" are words, "wed" and "sun" are days
NAME_MOST = 40  # [characters] ch


def elsewhere_of(text: str) -> Answer:
    """Read activities, each with its days; one without a day is asked for again."""
    said = tidy(text)
    if " ".join(re.sub(r"[,.;]", " ", said).split()) in NOTHING:
        return Heard([])
    spoken = re.findall(r"[^\W\d_]+(?:-[^\W\d_]+)*", said)
    spoken = [word for word in spoken if word not in PASSED_OVER]
    if spoken and _day(spoken[0]) is not None:
        return _days_first(spoken)
    found: list[tuple[list[str], list[int]]] = []
    for word in spoken:
        day = _day(word)
        if day is not None:
            found[-1][1].append(day + 1)
            continue
        if not found or found[-1][1]:
            found.append(([], []))
        found[-1][0].append(word)
    return _heard(found)


def _days_first(spoken: Sequence[str]) -> Answer:
    """Read "tue climbing, sat swim": here the days stand before what they are for."""
    found: list[tuple[list[str], list[int]]] = []
    for word in spoken:
        day = _day(word)
        if day is None:
            found[-1][0].append(word)
            continue
        if not found or found[-1][0]:
            found.append(([], []))
        found[-1][1].append(day + 1)
    return _heard(found)


def _heard(found: Sequence[tuple[list[str], list[int]]]) -> Answer:
    if not found or any(not days or not name for name, days in found):
        return Unclear(Why.ELSEWHERE)
    return Heard(
        [
            {"name": " ".join(name)[:NAME_MOST], "weekday": day}
            for name, days in found
            for day in sorted(set(days))
        ]
    )


def _day(word: str) -> int | None:
    """Return the weekday that a word names, Monday = 0."""
    single = word.removesuffix("s")
    for said in (word, single):
        if said in WEEKDAYS:
            return WEEKDAYS[said]
    meant = {
        day
        for name, day in WEEKDAYS.items()
        if len(word) >= DAY_LETTERS_LEAST and (name.startswith(word) or name == single)
    }
    return meant.pop() if len(meant) == 1 else None


def regular_of(said: Sequence[Mapping[str, Any]]) -> tuple[RegularTraining, ...]:
    """Return what comes every week as the rules know it; what pulls or grips counts as hard."""
    return tuple(
        RegularTraining(
            weekday=int(one["weekday"]),
            tags=tags,
            is_hard=bool(tags & HARD_UNLESS_SAID),
            name=str(one["name"]),
        )
        for one in said
        for tags in (tags_of(str(one["name"])),)
    )
