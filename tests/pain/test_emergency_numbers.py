"""The table of emergency numbers, and the country that a zone lies in."""

import pytest

from scheduler.pain.emergency_numbers import (
    NumberSource,
    country_of_zone,
    default_numbers,
    number_that_holds,
)


# PUBLISHED tzdata, zone.tab and its links: the country of each zone
@pytest.mark.parametrize(
    ("zone", "country"),
    [
        ("Europe/Madrid", "ES"),
        ("America/New_York", "US"),
        ("Australia/Lord_Howe", "AU"),
        ("Asia/Calcutta", "IN"),
        ("UTC", None),
        ("Etc/GMT+5", None),
        ("not a zone", None),
    ],
)
def test_a_zone_lies_in_its_country(zone, country):
    assert country_of_zone(zone) == country


# PUBLISHED: 112 in every state of the European Union (the source named in the table)
@pytest.mark.parametrize("country", ["AT", "DE", "ES", "FR", "IT", "LV", "PT", "SE"])
def test_the_european_number_holds_in_the_union(country):
    row = default_numbers().row(country)
    assert row is not None
    assert (row.numbers[0], row.source) == ("112", NumberSource.EU112)


# CHOSEN: what is not known to hold is not named
@pytest.mark.parametrize(
    ("country", "confirmed", "named"),
    [
        ("ES", "112", "112"),
        ("ES", "911", None),
        ("GB", "999", "999"),
        ("GB", "112", "112"),
        (None, "112", None),
        ("AQ", "112", None),
        ("ES", None, None),
    ],
)
def test_a_number_is_named_only_where_the_table_knows_it(country, confirmed, named):
    assert number_that_holds(country, confirmed=confirmed) == named


def test_no_country_stands_twice():
    found = [country for row in default_numbers().countries for country in row.countries]
    assert len(found) == len(set(found))
