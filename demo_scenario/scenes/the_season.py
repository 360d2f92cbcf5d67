"""The whole season, put together."""

from demo_scenario.scenes.first_weeks import FIRST_WEEKS
from demo_scenario.scenes.later_weeks import LATE, LATER_WEEKS, OUTAGES, SILENCES
from demo_scenario.scenes.steps import Scene

SCENES: tuple[Scene, ...] = (*FIRST_WEEKS, *LATER_WEEKS)

__all__ = ["LATE", "OUTAGES", "SCENES", "SILENCES"]
