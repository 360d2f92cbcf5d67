"""Where on earth: which zones a city's name may mean, and which lie near a shared position."""

from functools import cache
from importlib.resources import files
from math import asin, cos, radians, sin, sqrt
from typing import NamedTuple

from pydantic import BaseModel, ConfigDict, Field

from scheduler.located_yaml import read_located

EARTH_RADIUS_KM = 6371.0  # [km] wgs84: 3, mean radius; only ranks distances
POSITION_PARTS = {"latitude": 2, "longitude": 3}  # [digits] iso6709: 6, of degrees
NEAR_MOST = 5  # [zones] ch: buttons that one thumb reads


class City(NamedTuple):
    """A place with its zone; latitude and longitude [degrees]."""

    name: str
    latitude_deg: float
    longitude_deg: float
    zone: str


class Cities(BaseModel):
    """The whole table."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    version: int = Field(ge=1)
    cities: tuple[City, ...]


@cache
def default_cities() -> tuple[City, ...]:
    """Return the big cities that no zone is named after."""
    text = files("scheduler.calendar").joinpath("cities.yaml").read_text(encoding="utf-8")
    return read_located(text, Cities, file_name="cities.yaml").cities


@cache
def _named_zones() -> tuple[City, ...]:
    """Return the cities that zones are named after, with their positions (tzdata: zone.tab)."""
    text = files("tzdata.zoneinfo").joinpath("zone.tab").read_text(encoding="utf-8")
    rows = (line.split("\t")[1:3] for line in text.splitlines() if not line.startswith("#"))
    return tuple(City(zone, *_position(position), zone) for position, zone in rows)


def _position(written: str) -> tuple[float, float]:
    """Read ``+4024-00341`` or ``+404302-0740023`` (ISO 6709): latitude, longitude [degrees]."""
    split = max(written.rfind("+"), written.rfind("-"))
    latitude, longitude = written[:split], written[split:]
    return (
        _degrees(latitude, POSITION_PARTS["latitude"]),
        _degrees(longitude, POSITION_PARTS["longitude"]),
    )


def _degrees(written: str, digits: int) -> float:
    sign = -1.0 if written[0] == "-" else 1.0
    degrees, rest = written[1 : digits + 1], written[digits + 1 :]
    minutes, seconds = rest[:2] or "0", rest[2:4] or "0"
    return sign * (int(degrees) + int(minutes) / 60 + int(seconds) / 3600)


def zones_near(
    *, latitude_deg: float, longitude_deg: float, most: int = NEAR_MOST
) -> tuple[str, ...]:
    """Return the zones whose known places lie nearest to a position, the nearest first.

    Args:
        latitude_deg: [degrees] -90 to 90, north positive.
        longitude_deg: [degrees] -180 to 180, east positive.
        most: how many zones at most.

    Returns:
        Names of zones. The nearest place is not always in the same zone: the person chooses.

    """
    ranked = sorted(
        (*_named_zones(), *default_cities()),
        key=lambda place: _distance_km(place, latitude_deg, longitude_deg),
    )
    return tuple(dict.fromkeys(place.zone for place in ranked))[:most]


def _distance_km(place: City, latitude_deg: float, longitude_deg: float) -> float:
    """Return the great-circle distance [km] (haversine)."""
    phi_a, phi_b = radians(place.latitude_deg), radians(latitude_deg)
    half_phi = (phi_b - phi_a) / 2
    half_lambda = radians(longitude_deg - place.longitude_deg) / 2
    chord = sin(half_phi) ** 2 + cos(phi_a) * cos(phi_b) * sin(half_lambda) ** 2
    return 2 * EARTH_RADIUS_KM * asin(min(1.0, sqrt(chord)))
