"""What is trained elsewhere every week, and on which days: "climbing tue thu, swim sat"."""

import re
from collections.abc import Mapping, Sequence
from typing import Any

from bot.acts.intake_answers import NONE_WORDS, Answer, Heard, Unclear, Why, tidy
from bot.reading.days import WEEKDAYS
from scheduler.training.other_training import HARD_UNLESS_SAID, RegularTraining, tags_of

NOTHING = NONE_WORDS | {"nothing else", "no other", "only this", "just this"}
PASSED_OVER = frozenset(
    """a an and also at do each evening evenings every for go i in morning mornings my on once
    session sessions some the then times to twice week weekly with
    los el la las y de por en cada manana mananas tarde tardes noche noches""".split()  # noqa: SIM905 (a text)
)
DAY_LETTERS_LEAST = 3  # [letters] ch: "we" and "su" are words, "wed" and "sun" are days
NAME_MOST = 40  # [characters] ch


def elsewhere_of(text: str) -> Answer:
    """Read activities, each with its days; one without a day is asked for again."""
    said = tidy(text)
    if said in NOTHING:
        return Heard([])
    found: list[tuple[list[str], list[int]]] = []
    for word in re.findall(r"[^\W\d_]+(?:-[^\W\d_]+)*", said):
        day = _day(word)
        if day is not None and found:
            found[-1][1].append(day + 1)
        elif day is None and word not in PASSED_OVER:
            if not found or found[-1][1]:
                found.append(([], []))
            found[-1][0].append(word)
        elif day is not None:
            return Unclear(Why.ELSEWHERE)
    if not found or any(not days for _, days in found):
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
