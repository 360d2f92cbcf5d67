"""The zones of the world, from one packaged edition: the same on every machine."""

import zoneinfo
from datetime import UTC, datetime, timedelta
from difflib import get_close_matches
from functools import lru_cache
from importlib import import_module, resources

PROBES = (
    ("Europe/Berlin", datetime(2026, 3, 29, 1, 0, tzinfo=UTC), 120),  # rfc5545: Berlin, spring
    ("America/New_York", datetime(2026, 11, 1, 6, 0, tzinfo=UTC), -300),  # rfc5545: autumn
    ("Australia/Lord_Howe", datetime(2026, 10, 3, 15, 30, tzinfo=UTC), 660),  # rfc5545: half hour
)
"""Zone, an instant at which its offset has just changed, and the offset from then [min]."""


class UnknownZoneError(ValueError):
    """No zone has that name; the message says how one looks and names near ones."""


class ZoneDataError(RuntimeError):
    """The zone data is missing or wrong; the message says how to mend it."""


def use_packaged_zones() -> None:
    """Read zones from the ``tzdata`` package alone, never from the machine's own folders.

    Called once by the composition root: machines differ in their data, and one message a day
    must not depend on that.
    """
    zoneinfo.reset_tzpath(())
    zoneinfo.ZoneInfo.clear_cache()


def zone_data_version() -> str:
    """Return the edition of the zone data, such as ``2026f``.

    Raises:
        ZoneDataError: when the package is missing.

    """
    try:
        return str(import_module("tzdata").IANA_VERSION)
    except (ImportError, AttributeError) as fault:
        raise ZoneDataError(
            "The time zone data is missing: install the package 'tzdata' again."
        ) from fault


@lru_cache(maxsize=1)
def zone_names() -> frozenset[str]:
    """Return the names of every zone in the packaged edition.

    Raises:
        ZoneDataError: when the package or its list is missing.

    """
    try:
        listed = (resources.files("tzdata") / "zones").read_text(encoding="utf-8")
    except (ImportError, OSError) as fault:
        raise ZoneDataError(
            "The list of time zones is missing: install the package 'tzdata' again."
        ) from fault
    return frozenset(listed.split())


def zone_named(name: str) -> zoneinfo.ZoneInfo:
    """Return the zone of that name.

    Raises:
        UnknownZoneError: when there is none.
        ZoneDataError: when the zone is listed and its data cannot be read.

    """
    if name not in zone_names():
        near = get_close_matches(name, sorted(zone_names()), n=3, cutoff=0.7)
        hint = f" Near it: {', '.join(near)}." if near else ""
        raise UnknownZoneError(
            f"No time zone is named {name!r}. A name looks like Europe/Berlin.{hint}"
        )
    try:
        return zoneinfo.ZoneInfo(name)
    except (KeyError, ValueError, OSError) as fault:
        raise ZoneDataError(
            f"The data of time zone {name} cannot be read: install the package 'tzdata' again."
        ) from fault


def check_zone_data() -> None:
    """Make sure that zones come from the package and that known changes are where they belong.

    Raises:
        ZoneDataError: when they do not; the bot must not start then.

    """
    for name, instant_utc, offset_min in PROBES:
        before = (instant_utc - timedelta(minutes=1)).astimezone(zone_named(name)).utcoffset()
        after = instant_utc.astimezone(zone_named(name)).utcoffset()
        if after != timedelta(minutes=offset_min) or before == after:
            raise ZoneDataError(
                f"The time zone data ({zone_data_version()}) has {name} wrong at "
                f"{instant_utc:%Y-%m-%d %H:%M} UTC: install the package 'tzdata' again."
            )
    if zoneinfo.TZPATH:
        raise ZoneDataError(
            "Time zones would be read from this machine: call use_packaged_zones() at the start."
        )
