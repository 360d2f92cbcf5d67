"""What holds for every test: no example fails for slowness; what costs is made once."""

from collections.abc import Sequence

import pytest
from hypothesis import settings

MADE_ONCE = ("fortnight", "six_weeks", "trial", "statements_by_years", "checked")
"""Fixtures that cost seconds to minutes: their tests stay with the worker that made them."""

settings.register_profile("house", deadline=None, print_blob=True)
settings.load_profile("house")


def pytest_collection_modifyitems(items: Sequence[pytest.Item]) -> None:
    """Keep the tests of one costly fixture together, so that two workers never make it twice."""
    for item in items:
        fixtures = getattr(item, "fixturenames", ())
        for name in MADE_ONCE:
            if name in fixtures:
                item.add_marker(pytest.mark.xdist_group(name))
