"""Stored before it is confirmed, each once, in order, and set aside when it cannot be handled."""

from datetime import timedelta

import pytest
from sqlmodel import col, select

from storage import inbox
from storage.tables.wire import InboxRow


def update(update_id: int, chat_id: int = 7, text: str = "45 40 38") -> dict[str, object]:
    return {
        "update_id": update_id,
        "message": {"message_id": 1, "chat": {"id": chat_id}, "text": text},
    }


def test_an_update_that_comes_again_is_stored_once(database, now):
    with database.transaction() as tx:
        assert inbox.store_updates(tx, [update(1), update(2)], received_at=now) == 2
    with database.transaction() as tx:
        assert inbox.store_updates(tx, [update(2), update(3)], received_at=now) == 1
        assert [one.update_id for one in inbox.next_waiting(tx, most=10)] == [1, 2, 3]


def test_an_update_twice_in_one_batch_is_stored_once(database, now):
    with database.transaction() as tx:
        assert inbox.store_updates(tx, [update(5), update(5)], received_at=now) == 1


def test_ids_that_restart_lower_are_new_updates(database, now):
    with database.transaction() as tx:
        inbox.store_updates(tx, [update(900)], received_at=now)
        assert inbox.store_updates(tx, [update(12)], received_at=now) == 1
        assert [one.update_id for one in inbox.next_waiting(tx, most=10)] == [900, 12]


def test_order_of_arrival_is_the_order_of_handling(database, now):
    with database.transaction() as tx:
        inbox.store_updates(tx, [update(3), update(1), update(2)], received_at=now)
        assert [one.update_id for one in inbox.next_waiting(tx, most=2)] == [3, 1]


def test_a_handled_update_waits_no_more_and_keeps_its_outcome(database, now):
    with database.transaction() as tx:
        inbox.store_updates(tx, [update(1)], received_at=now)
        (one,) = inbox.next_waiting(tx, most=1)
        inbox.mark_handled(tx, one.id, at=now, outcome="recorded")
    with database.transaction() as tx:
        assert inbox.count_waiting(tx) == 0
        assert inbox.outcomes(tx) == {"recorded": 1}


def test_the_third_fault_sets_an_update_aside(database, now):
    with database.transaction() as tx:
        inbox.store_updates(tx, [update(1), update(2)], received_at=now)
        first = inbox.next_waiting(tx, most=1)[0].id
    asides = []
    for _ in range(3):
        with database.transaction() as tx:
            asides.append(inbox.note_fault(tx, first, at=now, reference="F1"))
    assert asides == [False, False, True]
    with database.transaction() as tx:
        assert [one.update_id for one in inbox.next_waiting(tx, most=5)] == [2]


@pytest.mark.parametrize(
    ("raw", "chat_id"),
    [
        (update(1, chat_id=99), 99),
        ({"update_id": 1, "callback_query": {"message": {"chat": {"id": 5}}}}, 5),
        ({"update_id": 1, "my_chat_member": {"chat": {"id": 6}}}, 6),
        ({"update_id": 1, "message": "broken"}, None),
        ({"update_id": 1, "message": {"chat": {"id": "x"}}}, None),
    ],
)
def test_the_chat_is_found_however_broken_the_rest_is(raw, chat_id):
    assert inbox.chat_of(raw) == chat_id


def test_raw_words_are_kept_seven_days_and_unhandled_ones_stay(database, now):
    with database.transaction() as tx:
        inbox.store_updates(tx, [update(1), update(2)], received_at=now)
        inbox.mark_handled(tx, inbox.next_waiting(tx, most=1)[0].id, at=now, outcome="recorded")
    with database.transaction() as tx:
        # CHOSEN: raw messages are kept seven days.
        assert inbox.forget_raw(tx, now=now + timedelta(days=7)) == 0
        assert inbox.forget_raw(tx, now=now + timedelta(days=7, seconds=1)) == 1
    with database.transaction() as tx:
        kept = tx.exec(select(InboxRow.raw).order_by(col(InboxRow.id))).all()
    assert kept[0] is None
    assert kept[1] is not None


def test_a_chat_has_spoken_only_after_the_instant_asked(database, now):
    with database.transaction() as tx:
        inbox.store_updates(tx, [update(1)], received_at=now)
        assert inbox.has_spoken_since(tx, 7, since=now - timedelta(seconds=1))
        assert not inbox.has_spoken_since(tx, 7, since=now)
        assert not inbox.has_spoken_since(tx, 8, since=now - timedelta(days=1))
