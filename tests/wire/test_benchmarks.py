"""The benchmarks measure what they say; how fast this machine is, is no matter of a test."""

import asyncio

import pytest

from demo_scenario.benchmarks.report import Line, percentile, print_lines
from demo_scenario.benchmarks.runs import messages_per_s, rush


@pytest.mark.parametrize("kind", ["echo", "house"])
def test_both_bots_answer_every_message_of_the_same_crowd(tmp_path, kind):
    assert asyncio.run(messages_per_s(kind, tmp_path, count=30)) > 0


def test_a_rush_is_timed_reply_by_reply_and_held_to_its_order(tmp_path):
    found = asyncio.run(rush(tmp_path, per_s=20.0, rush_s=1.0))  # CHOSEN: a walk
    assert len(found.took_ms) == 20
    assert min(found.took_ms) > 0
    assert found.is_in_order


def test_a_percentile_is_a_value_that_was_measured():
    values = [float(number) for number in range(100)]
    assert percentile(values, 50) == 50.0  # DERIVED: nearest rank of 0 to 99
    assert percentile(values, 99) == 99.0
    assert percentile([7.0], 99) == 7.0


def test_a_missed_target_is_said(capsys):
    print_lines([Line("rate", "30", "12", is_met=False), Line("bare", "", "700")])
    assert "missed" in capsys.readouterr().out
