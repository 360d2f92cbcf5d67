"""Finding the gap that still matters: how long it was, and how long training has been back."""

from collections.abc import Sequence
from datetime import date

from pydantic import BaseModel, ConfigDict, Field

from scheduler.training.rulebook import Rulebook


class Gap(BaseModel):
    """Days without training, and where the athlete stands behind them.

    ``days_untrained`` [days]; ``weeks_back`` [whole weeks since the first session after it].
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    days_untrained: int = Field(ge=0)
    weeks_back: int = Field(ge=0)


def latest_gap(trained_on: Sequence[date], *, today: date, rulebook: Rulebook) -> Gap:
    """Find the latest gap that counts, as seen on ``today``.

    Parameters: ``trained_on``: every day with a trained session of any direction, in any order;
    ``today``: the day that is being planned. A gap counts from the rulebook's first bound on
    (CH: days without a step); with none, the days since the last session are returned.
    """
    days = sorted({day for day in trained_on if day < today})
    if not days:
        return Gap(days_untrained=0, weeks_back=0)
    counts_from = rulebook.gaps.no_step_from_days.value
    since_last = (today - days[-1]).days
    if since_last >= counts_from:
        return Gap(days_untrained=since_last, weeks_back=0)
    for before, back in zip(reversed(days[:-1]), reversed(days[1:]), strict=True):
        if (back - before).days >= counts_from:
            return Gap(days_untrained=(back - before).days, weeks_back=(today - back).days // 7)
    return Gap(days_untrained=since_last, weeks_back=0)
