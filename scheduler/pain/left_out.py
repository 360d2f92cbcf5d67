"""What pain at a site takes out of training: a table that a person can read and check."""

from collections.abc import Mapping
from functools import cache
from importlib.resources import files

from pydantic import BaseModel, ConfigDict, Field, model_validator

from scheduler.catalogue.values import Demand, Direction, Measure
from scheduler.located_yaml import read_located
from scheduler.pain.values import LeftOut, Region, Side, Site, regions_of


class SiteRow(BaseModel):
    """One row of the table."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    demands: frozenset[Demand] = frozenset()
    directions: frozenset[Direction] = frozenset()
    measures: frozenset[Measure] = frozenset()
    movements: frozenset[str] = frozenset()
    session_waits: bool = False

    @model_validator(mode="after")
    def _takes_something_out(self) -> "SiteRow":
        if not (self.session_waits or self.demands or self.directions or self.movements):
            raise ValueError("a site must leave something out, or say session_waits: true")
        return self


class LeftOutTable(BaseModel):
    """Every site with what it takes out."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    version: int = Field(ge=1)
    sites: Mapping[Site, SiteRow]

    @model_validator(mode="after")
    def _every_site_is_there(self) -> "LeftOutTable":
        missing = sorted(site.value for site in Site if site not in self.sites)
        if missing:
            raise ValueError("a row is expected for each of: " + ", ".join(missing))
        return self


def read_left_out_table(text: str, *, file_name: str) -> LeftOutTable:
    """Check and read a table; a wrong one is refused with line, field and what is expected."""
    return read_located(text, LeftOutTable, file_name=file_name)


@cache
def default_left_out_table() -> LeftOutTable:
    """Return the table that comes with Holdwell."""
    text = files("scheduler.pain").joinpath("left_out.yaml").read_text(encoding="utf-8")
    return read_left_out_table(text, file_name="left_out.yaml")


def left_out_for(site: Site, side: Side, *, table: LeftOutTable | None = None) -> LeftOut:
    """Return what is left out when a site must be spared.

    Args:
        site: where it hurts.
        side: which arm; a site in the middle of the body leaves out both.
        table: a coach's own table, else the one that comes with Holdwell.

    Returns:
        Demands, directions and carries by arm; everything when the place is not yet known.
        Source: cp, the whole table.

    """
    row = (table or default_left_out_table()).sites[site]
    arms = [region.arm for region in regions_of(site, side)]
    return LeftOut(
        demands=frozenset((demand, arm) for demand in row.demands for arm in arms),
        directions=frozenset((direction, arm) for direction in row.directions for arm in arms),
        measures=frozenset((measure, arm) for measure in row.measures for arm in arms),
        movements=row.movements,
        everything=row.session_waits,
    )


def left_out_for_regions(
    regions: frozenset[Region], *, table: LeftOutTable | None = None
) -> LeftOut:
    """Return everything that any of the regions takes out."""
    together = LeftOut()
    for region in regions:
        together = together | left_out_for(region.site, region.arm, table=table)
    return together


HANGING = LeftOut(demands=frozenset((Demand.TRACTION, arm) for arm in Side.BOTH.arms))
"""All that pulls at the arms: what a tingle in a hang takes out where the item is not known."""
UPPER_BODY = LeftOut(
    directions=frozenset((direction, arm) for direction in Direction for arm in Side.BOTH.arms)
)
"""All pushing and pulling: every movement of the library has a direction."""
