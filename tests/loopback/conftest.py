"""The library's newer type for durations, so that it warns of nothing."""

import pytest


@pytest.fixture(autouse=True)
def durations_as_timedelta(monkeypatch):
    monkeypatch.setenv("PTB_TIMEDELTA", "true")
