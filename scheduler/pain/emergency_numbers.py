"""Which emergency number belongs to which country, and which country a time zone lies in."""

from collections.abc import Mapping
from enum import StrEnum
from functools import cache
from importlib.resources import files

from pydantic import BaseModel, ConfigDict, Field

from scheduler.located_yaml import read_located


class NumberSource(StrEnum):
    """Where a row of the table comes from."""

    EU112 = "eu112"
    MEMORY = "memory"


class CountryRow(BaseModel):
    """Countries that share their numbers; the first number is proposed."""

    model_config = ConfigDict(frozen=True, extra="forbid", populate_by_name=True)

    numbers: tuple[str, ...] = Field(min_length=1)
    source: NumberSource
    countries: tuple[str, ...] = Field(alias="in", min_length=1)


class EmergencyNumbers(BaseModel):
    """The whole table."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    version: int = Field(ge=1)
    countries: tuple[CountryRow, ...]

    def row(self, country: str | None) -> CountryRow | None:
        """Return a country's row, None where the table has none."""
        return next((one for one in self.countries if country in one.countries), None)


@cache
def default_numbers() -> EmergencyNumbers:
    """Return the table that comes with Holdwell; a coach confirms a number before it is named."""
    name = "emergency_numbers.yaml"
    text = files("scheduler.pain").joinpath(name).read_text(encoding="utf-8")
    return read_located(text, EmergencyNumbers, file_name=name)


@cache
def _countries_by_zone() -> Mapping[str, str]:
    """Read the zone package's own table: each zone of one country, and its older names."""
    tables = files("tzdata.zoneinfo")
    found: dict[str, str] = {}
    for line in tables.joinpath("zone.tab").read_text(encoding="utf-8").splitlines():
        if not line.startswith("#"):
            country, _, zone = line.split("\t")[:3]
            found[zone] = country
    for line in tables.joinpath("tzdata.zi").read_text(encoding="utf-8").splitlines():
        kind, *names = line.split(" ")
        if kind == "L" and names[0] in found:
            found.setdefault(names[1], found[names[0]])
    return found


def country_of_zone(zone: str) -> str | None:
    """Return the country (ISO 3166-1) that a zone lies in; None for zones of no country (UTC)."""
    return _countries_by_zone().get(zone)


def number_that_holds(country: str | None, *, confirmed: str | None) -> str | None:
    """Return the number that a coach confirmed, if the table knows it in that country.

    Args:
        country: where the athlete's zone lies, None where that is not known.
        confirmed: what the coach confirmed.

    Returns:
        None, so that the text says "your local emergency number", where the country is not
        known, is not in the table, or has other numbers. Source: ch, the careful reading.

    """
    row = default_numbers().row(country)
    return confirmed if confirmed and row is not None and confirmed in row.numbers else None
