"""What holds for every test: no example fails for slowness; what costs is made once."""

import gc

import pytest
from hypothesis import settings
from xdist.remote import Producer
from xdist.scheduler import LoadScopeScheduling

MADE_ONCE = {
    "tests/demo/test_a_fortnight.py": "fortnight",
    "tests/demo/test_invariants.py": "fortnight",
    "tests/demo/test_output.py": "fortnight",
    "tests/demo/test_same_seed.py": "fortnight",
    "tests/demo/test_season_invariants.py": "fortnight",
    "tests/demo/test_used_features.py": "fortnight",
    "tests/demo/test_two_years.py": "six weeks",
    "tests/isolation/test_commands.py": "two teams",
    "tests/reading/test_corpus.py": "corpus",
    "tests/wire/test_crash_trial.py": "trial",
    "tests/wire/test_years_do_not_weigh.py": "years",
}
"""Files whose tests look at one thing that costs seconds to minutes, and its name."""

SELDOM = (50_000, 20, 20)  # CHOSEN: an eighth of a run went into looking for garbage too often

gc.set_threshold(*SELDOM)
settings.register_profile("house", deadline=None, print_blob=True)
settings.load_profile("house")


class Together(LoadScopeScheduling):  # type: ignore[misc]
    """Deal tests out one by one, but all that look at one costly thing to the same worker."""

    def _split_scope(self, nodeid: str) -> str:
        return MADE_ONCE.get(nodeid.split("::", 1)[0], nodeid)


def pytest_xdist_make_scheduler(config: pytest.Config, log: Producer) -> Together:
    """Use it: groups by mark are not read by every version of the runner."""
    return Together(config, log)
