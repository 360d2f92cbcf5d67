"""Each invariant names its breach: a play is spoiled in one place, looked at, and put back."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager

import pytest
from sqlmodel import Session, col, delete, select

from demo_scenario.invariants import breaches_in
from demo_scenario.play import Stage
from demo_scenario.team import Part
from scheduler.pain.events import Rested
from scheduler.pain.values import Side, Site
from storage.queries import care, people
from storage.records.care import AlertState
from storage.tables.care import AlertRow
from storage.tables.training import ItemRow, SessionRow, SetRow
from storage.tables.wire import InboxRow, InboxState, OutboxRow, OutboxState

Spoil = Callable[[Session, Stage], None]


@contextmanager
def spoiled(stage: Stage, spoil: Spoil) -> Iterator[Session]:
    """Spoil the play's database for a moment; nothing of it is kept."""
    with Session(stage.house.database.engine) as tx:
        spoil(tx, stage)
        tx.flush()
        yield tx
        tx.rollback()


def rules_broken(stage: Stage, spoil: Spoil) -> set[str]:
    with spoiled(stage, spoil) as tx:
        turn = stage.house.turn(tx, stage.clock.now())
        return {one.rule for one in breaches_in(turn, stage)}


def set_one_aside(tx: Session, _: Stage) -> None:
    row = tx.exec(select(InboxRow).limit(1)).one()
    row.state = InboxState.SET_ASIDE


def lose_an_update(tx: Session, _: Stage) -> None:
    tx.delete(tx.exec(select(InboxRow).limit(1)).one())


def send_a_session_twice(tx: Session, _: Stage) -> None:
    first = tx.exec(select(OutboxRow).where(OutboxRow.kind == "session").limit(1)).one()
    tx.add(OutboxRow(**first.model_dump(exclude={"id"})))


def refuse_one(tx: Session, _: Stage) -> None:
    tx.exec(select(OutboxRow).limit(1)).one().state = OutboxState.REFUSED


def doubt_one(tx: Session, _: Stage) -> None:
    tx.exec(select(OutboxRow).limit(1)).one().is_doubtful = True


def forget_an_alert(tx: Session, _: Stage) -> None:
    alert = tx.exec(select(AlertRow).limit(1)).one()
    alert.state, alert.tell_at, alert.answered_at = AlertState.OPEN, None, None


def drop_every_pull_of_a_pair(tx: Session, stage: Stage) -> None:
    ids = tx.exec(
        select(ItemRow.id)
        .join(SessionRow, col(SessionRow.id) == col(ItemRow.session_id))
        .where(
            SessionRow.athlete_id == _steady(tx, stage),
            col(SessionRow.on) >= stage.team.start,
            col(ItemRow.direction).in_(("vertical_pull", "horizontal_pull", "upward_pull")),
        )
    ).all()
    tx.exec(delete(SetRow).where(col(SetRow.item_id).in_(ids)))
    tx.exec(delete(ItemRow).where(col(ItemRow.id).in_(ids)))


def rest_a_region_before_the_first_session(tx: Session, stage: Stage) -> None:
    at = stage.team.begins_at()
    event = Rested(
        key="spoiled", at_utc=at, site=Site.SHOULDER_FRONT, side=Side.BOTH, by="1", reason="a test"
    )
    care.add_pain_event(
        tx,
        athlete_id=_steady(tx, stage),
        at=at,
        kind=event.kind,
        event=event.model_dump(mode="json"),
    )


def _steady(tx: Session, stage: Stage) -> int:
    person = people.person_in_chat(tx, stage.team.part(Part.STEADY).chat_id)
    assert person is not None
    return person.id


@pytest.mark.parametrize(
    ("spoil", "rule"),
    [
        (set_one_aside, "a message without an outcome"),
        (lose_an_update, "a message the bot never stored"),
        (send_a_session_twice, "something sent twice"),
        (refuse_one, "a message that was refused, lost or doubled"),
        (doubt_one, "a message that was refused, lost or doubled"),
        (send_a_session_twice, "the screens show something else than was sent"),
        (forget_an_alert, "an alert that is forgotten"),
        (drop_every_pull_of_a_pair, "a week against its rules, without a word"),
        (rest_a_region_before_the_first_session, "something left out was sent"),
    ],
)
def test_spoiled_play_is_found_out(fortnight: Stage, spoil: Spoil, rule: str) -> None:
    assert rule in rules_broken(fortnight, spoil)


def test_play_as_it_was_is_whole_again(fortnight: Stage) -> None:
    assert rules_broken(fortnight, lambda _tx, _stage: None) == set()
