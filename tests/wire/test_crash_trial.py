"""The house is killed forty times while replies flow: nothing is lost, nothing happens twice.

The process is a real one and is ended by SIGKILL at instants that nobody chose; its clock goes on
over the restarts. What is shown is what the loopback platform accepted.
"""

import asyncio
import shutil

import pytest
from sqlmodel import select

from demo_scenario.loopback.interface_check import problems_of_all
from demo_scenario.trials import checks
from demo_scenario.trials.crash import CrashPlan, Trial
from storage.database import Database
from storage.tables.training import SetRow
from storage.tables.wire import InboxRow, InboxState, OutboxRow

PLAN = CrashPlan(kills=40, athletes=20, seed=3)  # CHOSEN


@pytest.fixture(scope="module")
def trial(tmp_path_factory):
    trial = Trial(PLAN, tmp_path_factory.mktemp("trial"), print)
    asyncio.run(trial.run())
    return trial


@pytest.fixture
def doctored(trial, tmp_path):
    """Return the trial's database as a copy that a test may spoil."""
    copy = tmp_path / "house.sqlite3"
    shutil.copy(trial.folder / "house.sqlite3", copy)
    database = Database(f"sqlite:///{copy}")
    yield database
    database.close()


def test_forty_kills_lose_nothing_and_repeat_nothing(trial):
    report = trial.report
    assert report.kills == PLAN.kills
    assert {check.what: check.breaches for check in report.checks if not check.is_kept} == {}


def test_the_kills_fell_while_something_was_in_hand(trial):
    """CHOSEN: without kills in full flow the trial would prove nothing."""
    assert trial.report.kills_in_hand >= PLAN.kills // 5
    assert trial.report.doubtful >= 1
    assert trial.ledger.count >= 5 * PLAN.kills


def test_every_request_of_the_trial_fits_the_published_interface(trial):
    # PUBLISHED botapi, by the typed methods of an independent library
    assert problems_of_all(trial.report.requests) == ()


def test_a_lost_reply_would_be_seen(trial, doctored):
    with doctored.transaction() as tx:
        tx.delete(tx.exec(select(InboxRow)).first())
        tx.flush()
        assert not checks.stored_once_in_order(tx, trial.ledger).is_kept


def test_two_replies_in_the_wrong_order_would_be_seen(trial, doctored):
    with doctored.transaction() as tx:
        first = tx.exec(select(InboxRow).order_by("id")).first()
        second = tx.exec(
            select(InboxRow).where(InboxRow.chat_id == first.chat_id, InboxRow.id > first.id)
        ).first()
        first.raw, second.raw = second.raw, first.raw
        tx.add_all([first, second])
        tx.flush()
        assert not checks.stored_once_in_order(tx, trial.ledger).is_kept


@pytest.mark.parametrize(
    "spoiled",
    [{"state": InboxState.WAITING}, {"outcome": None}, {"attempts": 1}],
    ids=["waits", "without outcome", "after a fault"],
)
def test_a_reply_that_was_not_handled_once_would_be_seen(doctored, spoiled):
    with doctored.transaction() as tx:
        row = tx.exec(select(InboxRow)).first()
        for name, value in spoiled.items():
            setattr(row, name, value)
        tx.add(row)
        tx.flush()
        assert not checks.handled_once(tx).is_kept


def test_a_set_that_differs_from_what_was_typed_would_be_seen(trial, doctored):
    item_id, line = next(iter(trial.ledger.typed.items()))
    with doctored.transaction() as tx:
        row = tx.exec(select(SetRow).where(SetRow.item_id == item_id)).first()
        row.number += 1
        tx.add(row)
        tx.flush()
        (breach,) = checks.recorded_as_typed(tx, trial.ledger).breaches
    assert repr(line.text) in breach


def test_a_reply_that_was_recorded_twice_would_be_seen(trial, doctored):
    with doctored.transaction() as tx:
        row = tx.exec(select(SetRow)).first()
        row.replaced_at = row.reported_at
        tx.add(row)
        tx.flush()
        assert not checks.recorded_as_typed(tx, trial.ledger).is_kept


def test_a_double_that_is_not_marked_doubtful_would_be_seen(trial, doctored):
    with doctored.transaction() as tx:
        assert checks.shown_once(tx, trial.report.requests).is_kept
        for row in tx.exec(select(OutboxRow).where(OutboxRow.is_doubtful)):
            row.is_doubtful = False
            tx.add(row)
        tx.flush()
        assert not checks.shown_once(tx, trial.report.requests).is_kept


def test_a_message_that_was_never_shown_would_be_seen(trial, doctored):
    with doctored.transaction() as tx:
        row = tx.exec(select(OutboxRow).where(OutboxRow.operation == "send")).first()
        row.payload = {**row.payload, "text": "never shown"}
        tx.add(row)
        tx.flush()
        assert not checks.shown_once(tx, trial.report.requests).is_kept
