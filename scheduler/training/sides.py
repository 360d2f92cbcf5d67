"""How even the two arms are, over the latest sessions of one movement."""

import statistics
from collections.abc import Sequence

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Measure
from scheduler.pain.values import Side
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Exposure


class SideRatio(BaseModel):
    """The weaker arm for the stronger [ratio, 0-1] over ``sessions`` [sessions] of one movement."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    movement_key: str
    measure: Measure
    weaker_for_stronger: float = Field(ge=0, le=1)
    weaker: Side
    sessions: int = Field(ge=1)


def side_ratio(exposures: Sequence[Exposure], *, rulebook: Rulebook) -> SideRatio | None:
    """Return how even the arms were in the latest three sessions of one movement.

    Parameters: ``exposures`` of one movement, oldest first. Each session counts by the mean of
    each arm's sets; sessions where one arm rested say nothing. None where no session names both
    arms, or neither arm did anything.
    """
    means = [pair for one in exposures if (pair := _arm_means(one)) is not None]
    latest = means[-rulebook.gates.sides_sessions.whole :]
    if not latest:
        return None
    left = statistics.mean(pair[0] for pair in latest)
    right = statistics.mean(pair[1] for pair in latest)
    if max(left, right) == 0:
        return None
    return SideRatio(
        movement_key=exposures[-1].dose.movement_key,
        measure=exposures[-1].dose.measure,
        weaker_for_stronger=min(left, right) / max(left, right),
        weaker=Side.LEFT if left <= right else Side.RIGHT,
        sessions=len(latest),
    )


def _arm_means(exposure: Exposure) -> tuple[float, float] | None:
    """Return the mean of the left and of the right arm's sets, None unless both are named."""
    left = [one.value for one in exposure.sets if one.side is Side.LEFT]
    right = [one.value for one in exposure.sets if one.side is Side.RIGHT]
    return (statistics.mean(left), statistics.mean(right)) if left and right else None
