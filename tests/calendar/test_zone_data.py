"""Zones come from one packaged edition, and what is wrong with them is said plainly."""

import zoneinfo
from importlib import metadata, resources

import pytest

from scheduler.calendar.zones import (
    UnknownZoneError,
    ZoneDataError,
    check_zone_data,
    use_packaged_zones,
    zone_data_version,
    zone_named,
    zone_names,
)


@pytest.mark.parametrize("name", ["Europe/Berlin", "Pacific/Chatham", "UTC", "Asia/Kathmandu"])
def test_a_zone_is_found_by_its_name(name):
    assert zone_named(name).key == name


@pytest.mark.parametrize(
    "name", ["", "Berlin", "europe/berlin", "Europe", "../etc/passwd", "/etc/localtime", "CEST\0"]
)
def test_an_unknown_zone_is_refused_with_how_a_name_looks(name):
    with pytest.raises(UnknownZoneError, match="looks like Europe/Berlin"):
        zone_named(name)


def test_a_misspelt_zone_is_answered_with_near_names():
    with pytest.raises(UnknownZoneError, match=r"Near it: .*Europe/Madrid"):
        zone_named("Europe/Madird")


def test_every_listed_zone_can_be_read():
    assert all(zone_named(name).key == name for name in zone_names())
    assert len(zone_names()) > 400  # PUBLISHED tzdata's own list: several hundred


def test_the_edition_is_the_package_s_own():
    # PUBLISHED by the package: release 2026.6 is edition 2026f, the sixth letter for the sixth
    year, number = metadata.version("tzdata").split(".")[:2]
    assert zone_data_version() == f"{year}{'abcdefghijklmnop'[int(number) - 1]}"


def test_good_data_passes():
    check_zone_data()


def test_a_machine_s_own_folder_is_refused(tmp_path):
    zoneinfo.reset_tzpath([str(tmp_path)])
    with pytest.raises(ZoneDataError, match="read from this machine"):
        check_zone_data()


def test_wrong_data_is_refused(tmp_path):
    (tmp_path / "Europe").mkdir()
    utc = (resources.files("tzdata") / "zoneinfo" / "UTC").read_bytes()
    (tmp_path / "Europe" / "Berlin").write_bytes(utc)
    zoneinfo.reset_tzpath([str(tmp_path)])
    zoneinfo.ZoneInfo.clear_cache()
    with pytest.raises(ZoneDataError, match="Europe/Berlin wrong"):
        check_zone_data()
    use_packaged_zones()
    check_zone_data()


def test_unreadable_data_is_refused(tmp_path):
    (tmp_path / "Europe").mkdir()
    (tmp_path / "Europe" / "Berlin").write_bytes(b"not a zone")
    zoneinfo.reset_tzpath([str(tmp_path)])
    zoneinfo.ZoneInfo.clear_cache()
    with pytest.raises(ZoneDataError, match="cannot be read"):
        zone_named("Europe/Berlin")
