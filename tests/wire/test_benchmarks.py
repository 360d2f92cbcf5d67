"""The benchmarks measure what they say; how fast this machine is, is no matter of a test."""

import asyncio

import pytest
import typer
from typer.testing import CliRunner

from demo_scenario.benchmarks.cli import add_to
from demo_scenario.benchmarks.memory import memory_lines
from demo_scenario.benchmarks.report import Line, percentile, print_lines
from demo_scenario.benchmarks.runs import messages_per_s, rush
from demo_scenario.benchmarks.weeks import combinations, rule_ms
from demo_scenario.benchmarks.years import MEASURES, years_lines


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


def test_a_week_is_planned_for_every_stage_with_every_number_of_days_and_equipment():
    asked = [one.request() for one in combinations()]
    # DERIVED: five stages, two to five days, five sets of equipment
    assert len({(one.stage, one.weekdays, one.equipment) for one in asked}) == 5 * 4 * 5
    assert min(rule_ms()) > 0


def test_every_kind_of_work_is_timed_in_both_houses(tmp_path):
    lines = asyncio.run(years_lines(tmp_path, lambda _: None, weeks=2))
    assert len(lines) == len(MEASURES)
    assert all(line.is_met is not None for line in lines)


def test_the_memory_of_a_process_is_measured_and_compared(tmp_path):
    # CHOSEN: hardly more athletes, so that the process starts soon
    (line,) = asyncio.run(memory_lines(tmp_path, lambda _: None, few=70, many=200))
    assert "70 → 200 athletes" in line.what
    assert line.is_met  # DERIVED: 130 athletes fit into 5 % of a process several times over


@pytest.mark.parametrize("command", ["week", "memory", "years"])
def test_each_measure_has_a_command_of_its_own(command):
    app = typer.Typer()
    add_to(app)
    said = CliRunner().invoke(app, ["bench", command, "--help"])
    assert said.exit_code == 0
    assert command in said.output
