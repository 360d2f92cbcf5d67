"""Which zones lie near a position: ranked by the zone package's own places, never decided."""

import pytest

from bot.acts.intake_answers import Heard, Several
from bot.acts.intake_places import zone_of
from scheduler.calendar.places import default_cities, zones_near
from scheduler.calendar.zones import zone_names

# PUBLISHED (tzdata: zone.tab, the position of each zone's own place, degrees and minutes)
OWN_PLACES = (
    (40 + 24 / 60, -(3 + 41 / 60), "Europe/Madrid"),  # +4024-00341
    (-(33 + 52 / 60), 151 + 13 / 60, "Australia/Sydney"),  # -3352+15113
    (40.714, -74.006, "America/New_York"),  # +404251-0740023
    (35 + 39.3 / 60, 139 + 44.7 / 60, "Asia/Tokyo"),  # +353916+1394441
)


@pytest.mark.parametrize(("latitude", "longitude", "zone"), OWN_PLACES)
def test_a_zones_own_place_has_it_first(latitude: float, longitude: float, zone: str) -> None:
    assert zones_near(latitude_deg=latitude, longitude_deg=longitude)[0] == zone


def test_several_zones_are_offered_each_once() -> None:
    near = zones_near(latitude_deg=48.1, longitude_deg=11.6, most=5)
    assert near[0] == "Europe/Berlin"  # COMMON PRACTICE: Munich keeps Berlin's time
    assert len(near) == len(set(near)) == 5


def test_across_the_date_line_what_is_near_is_near() -> None:
    # DERIVED: 179.9 degrees west lies 0.2 degrees from 179.9 east
    east = zones_near(latitude_deg=-18.0, longitude_deg=179.9)
    west = zones_near(latitude_deg=-18.0, longitude_deg=-179.9)
    assert east[0] == west[0] == "Pacific/Fiji"


def test_every_city_has_a_zone_of_the_packaged_edition() -> None:
    assert {city.zone for city in default_cities()} <= zone_names()
    for city in default_cities():
        assert -90 <= city.latitude_deg <= 90
        assert -180 <= city.longitude_deg <= 180
        # Wherever a city is written, its own zone is among those near it.
        near = zones_near(latitude_deg=city.latitude_deg, longitude_deg=city.longitude_deg, most=8)
        assert city.zone in near


@pytest.mark.parametrize(
    ("said", "zone"),
    [
        ("Barcelona", "Europe/Madrid"),  # COMMON PRACTICE
        ("Londres", "Europe/London"),  # PUBLISHED (cldr, Spanish names of cities, by babel)
        ("Nueva York", "America/New_York"),
        ("múnich", "Europe/Berlin"),
        ("Mumbai", "Asia/Kolkata"),
    ],
)
def test_a_city_is_known_by_its_name_in_either_language(said: str, zone: str) -> None:
    assert zone_of(said) == Heard(zone)


@pytest.mark.parametrize("said", ["Córdoba", "Portland", "Mérida"])
def test_a_name_of_several_cities_is_asked_about(said: str) -> None:
    assert isinstance(zone_of(said), Several)
