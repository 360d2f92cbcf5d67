"""Every test of the calendar reads the packaged zones, as the bot does."""

import zoneinfo

import pytest

from scheduler.calendar.zones import use_packaged_zones


@pytest.fixture(autouse=True)
def _packaged_zones():
    before = zoneinfo.TZPATH
    use_packaged_zones()
    yield
    zoneinfo.reset_tzpath(before)
