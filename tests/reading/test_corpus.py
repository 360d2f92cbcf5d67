"""The frozen corpora: written apart from the reader, never edited to please it.

All CHOSEN: messages and expected readings are our own invention. ``replies_en_es`` and
``replies_pt_de_fr`` were written without sight of the reader, ``replies_fresh`` after they were
used up. First runs: 330 right, 74 asked without need, 17 silently wrong of 421; 39, 2, 2 of 43;
102, 4, 2 of 108.
"""

from pathlib import Path

import pytest

from demo_scenario.readings.files import load
from demo_scenario.readings.report import line_of, why
from demo_scenario.readings.verdicts import Checked, Verdict, check

FOLDER = Path(__file__).parent / "corpus"
RIGHT_AT_LEAST = {"replies_en_es": 390, "replies_pt_de_fr": 43, "replies_fresh": 105}
"""So many were read right when this was written; fewer is a step back."""


@pytest.fixture(scope="module", params=sorted(RIGHT_AT_LEAST))
def checked(request: pytest.FixtureRequest) -> tuple[str, list[Checked]]:
    return request.param, check(load(FOLDER / f"{request.param}.jsonl"))


def test_nothing_in_a_frozen_corpus_is_read_silently_wrong(checked: tuple[str, list[Checked]]):
    wrong = [one for one in checked[1] if one.verdict is Verdict.WRONG]
    assert [f"{line_of(one)}{why(one)}" for one in wrong] == []


def test_no_fewer_messages_are_read_right_than_before(checked: tuple[str, list[Checked]]):
    name, found = checked
    assert sum(one.verdict is Verdict.RIGHT for one in found) >= RIGHT_AT_LEAST[name]
