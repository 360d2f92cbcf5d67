"""The benchmarks measure what they say; how fast this machine is, is no matter of a test."""

import asyncio
from datetime import date, time

import pytest
import typer
from typer.testing import CliRunner

from demo_scenario.benchmarks.cli import add_to
from demo_scenario.benchmarks.digest import Digested, lines_of
from demo_scenario.benchmarks.memory import memory_lines
from demo_scenario.benchmarks.past_years import write_years_of_team
from demo_scenario.benchmarks.quiet_house import BOT_NAME
from demo_scenario.benchmarks.report import Line, percentile, print_lines
from demo_scenario.benchmarks.runs import messages_per_s, rush
from demo_scenario.benchmarks.weeks import combinations, rule_ms
from demo_scenario.benchmarks.years import MEASURES, years_lines
from demo_scenario.trials.ready_team import make_team
from storage.database import Database
from storage.queries import training
from storage.records.training import SessionState


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


def test_every_athlete_of_a_team_gets_a_year_of_their_own(tmp_path):
    database = Database(f"sqlite:///{tmp_path}/team.sqlite3", is_throwaway=True)
    make_team(database, [time(7, 0)] * 3, bot_name=BOT_NAME)
    write_years_of_team(database, 3, years=1)
    with database.transaction() as tx:
        kept = training.kept_of_sent(tx, [2, 3, 4], first=date(2025, 3, 3), last=date(2026, 3, 1))
        this_week = training.sessions_between(tx, 2, first=date(2026, 3, 2), last=date(2026, 3, 8))
    # DERIVED: three sessions a week for 52 weeks, all trained; this week is still planned
    assert kept == {2: (156, 156), 3: (156, 156), 4: (156, 156)}
    assert {one.state for one in this_week} == {SessionState.PLANNED}
    database.close()


def test_the_digests_lines_say_what_was_missed():
    found = Digested(
        work_s=12.0,
        pictures=11,
        took_ms=(10.0,) * 99 + (900.0,),
        mib=(130.0, 120.0),
        processor_s=(5.0, 2.0),
    )
    work, _, p99, longest, memory, drawn = lines_of(found, count=60, drawn_s=7.0)
    assert (work.is_met, p99.is_met, memory.is_met, drawn.is_met) == (False, False, True, True)
    assert longest.reached == "900 ms"
    assert memory.reached == "250 MiB (130 + 120)"  # DERIVED


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
