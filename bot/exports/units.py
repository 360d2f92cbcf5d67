"""What a figure of a file is counted in."""

from collections.abc import Mapping
from typing import Literal

from scheduler.catalogue.values import Measure

Unit = Literal["s", "reps", "m"]
UNITS: Mapping[Measure, Unit] = {
    Measure.HOLD_S: "s",
    Measure.CARRY_S: "s",
    Measure.REPS: "reps",
    Measure.CARRY_M: "m",
}
