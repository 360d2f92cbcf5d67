"""Which stages an athlete has held, read from the recorded changes."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from storage.records.care import AuditEntry

CHANGED = "stage.changed"
TAKEN_BACK = "stage.taken_back"
DAYS_A_WEEK = 7  # [days] definition


@dataclass(frozen=True)
class Held:
    """One span in one stage, from its first day to the day it was left."""

    stage: int
    since: date
    until: date
    is_left_upwards: bool


def held_stages(newest_first: Sequence[AuditEntry]) -> tuple[Held, ...]:
    """Fold the changes into spans; a change that was taken back never happened."""
    spans: list[Held] = []
    for entry in reversed(newest_first):
        if entry.what == TAKEN_BACK:
            spans = spans[:-1]
        elif entry.what == CHANGED:
            spans.append(
                Held(
                    stage=int(entry.before["stage"]),
                    since=date.fromisoformat(str(entry.before["stage_since"])),
                    until=date.fromisoformat(str(entry.after["stage_since"])),
                    is_left_upwards=int(entry.after["stage"]) > int(entry.before["stage"]),
                )
            )
    return tuple(spans)


def is_re_earned(spans: Sequence[Held], *, stage: int, least_weeks: float) -> bool:
    """Tell whether the weeks of a stage were served before, so that they are not asked again.

    They were where the stage was left upwards, or held for its least weeks [weeks] in all. A day
    spent in a stage by mistake serves nothing (CH: the more careful reading).
    """
    mine = [span for span in spans if span.stage == stage]
    days = sum((span.until - span.since).days for span in mine)
    return any(span.is_left_upwards for span in mine) or (
        bool(mine) and days >= least_weeks * DAYS_A_WEEK
    )
