"""Operations wait, are claimed once, keep their chat's order, and end in one known state."""

from datetime import timedelta

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlmodel import col, delete, select

from storage import outbox
from storage.records.wire import MessageKind, Operation
from storage.tables.wire import OutboxRow, OutboxState


def put(tx, now, chat_id=1, text="hello", **facts):
    return outbox.put(
        tx,
        chat_id=chat_id,
        operation=Operation.SEND,
        kind=facts.pop("kind", MessageKind.REPLY),
        payload={"text": text},
        now=now,
        **facts,
    )


def state_of(tx, outbox_id) -> OutboxState:
    return OutboxState(tx.exec(select(OutboxRow.state).where(OutboxRow.id == outbox_id)).one())


def test_of_each_chat_only_the_first_unsent_one_is_claimed(database, now):
    with database.transaction() as tx:
        first, second, other = put(tx, now), put(tx, now), put(tx, now, chat_id=2)
        assert [one.id for one in outbox.claim_due(tx, now=now, most=10)] == [first, other]
        assert outbox.claim_due(tx, now=now, most=10) == ()
        outbox.mark_sent(tx, first, at=now, message_id=11)
        assert [one.id for one in outbox.claim_due(tx, now=now, most=10)] == [second]


def test_a_chat_that_waits_holds_back_what_comes_behind_and_no_other_chat(database, now):
    with database.transaction() as tx:
        put(tx, now, not_before=now + timedelta(minutes=1))
        put(tx, now)
        other = put(tx, now, chat_id=2)
        assert [one.id for one in outbox.claim_due(tx, now=now, most=10)] == [other]
        assert outbox.next_due_at(tx, after=now) == now + timedelta(minutes=1)


def test_held_chats_wait_as_long_as_the_platform_asked(database, now):
    with database.transaction() as tx:
        row = put(tx, now)
        outbox.hold_chat(tx, 1, until=now + timedelta(seconds=30))
        assert outbox.claim_due(tx, now=now + timedelta(seconds=29), most=5) == ()
        claimed = outbox.claim_due(tx, now=now + timedelta(seconds=30), most=5)
        assert [one.id for one in claimed] == [row]


def test_what_was_in_flight_is_known_after_a_restart(database, now):
    with database.transaction() as tx:
        row = put(tx, now)
        outbox.claim_due(tx, now=now, most=1)
    with database.transaction() as tx:
        assert [one.id for one in outbox.in_flight(tx)] == [row]
        outbox.put_back(tx, row, not_before=now, is_doubtful=True, fault="process ended")
    with database.transaction() as tx:
        (again,) = outbox.claim_due(tx, now=now, most=1)
        assert again.is_doubtful
        assert again.attempts == 2


def test_texts_are_forgotten_once_and_what_is_unsent_stays(database, now):
    week = timedelta(days=7)  # CHOSEN: as long as raw messages are kept
    with database.transaction() as tx:
        sent, _waiting = put(tx, now, text="sent"), put(tx, now, chat_id=2, text="waiting")
        outbox.mark_sent(tx, sent, at=now, message_id=1)
        later = now + week + timedelta(seconds=1)
        assert outbox.forget_texts(tx, now=now + week, kept=week) == 0
        assert outbox.forget_texts(tx, now=later, kept=week) == 1
        assert outbox.forget_texts(tx, now=later, kept=week) == 0
    with database.transaction() as tx:
        payloads = tx.exec(select(OutboxRow.payload).order_by(col(OutboxRow.id))).all()
    assert payloads == [{}, {"text": "waiting"}]


def test_a_blocked_chat_ends_everything_that_waits_for_it(database, now):
    with database.transaction() as tx:
        mine, other = put(tx, now), put(tx, now, chat_id=2)
        outbox.mark_blocked(tx, 1, at=now)
        assert state_of(tx, mine) is OutboxState.BLOCKED
        assert state_of(tx, other) is OutboxState.WAITING


def test_a_moved_chat_takes_along_what_waits(database, now):
    with database.transaction() as tx:
        put(tx, now)
        outbox.move_chat(tx, old_chat_id=1, new_chat_id=99)
        assert [one.chat_id for one in outbox.claim_due(tx, now=now, most=5)] == [99]


def test_a_chat_that_has_had_enough_is_passed_over_and_loses_nothing(database, now):
    with database.transaction() as tx:
        row, other = put(tx, now), put(tx, now, chat_id=2)
        assert [one.id for one in outbox.claim_due(tx, now=now, most=1, but_chats=[1])] == [other]
        (later,) = outbox.claim_due(tx, now=now, most=1)
        assert (later.id, later.attempts) == (row, 1)


def test_an_edit_knows_the_message_that_its_target_became(database, now):
    with database.transaction() as tx:
        first = put(tx, now)
        outbox.claim_due(tx, now=now, most=1)
        outbox.mark_sent(tx, first, at=now, message_id=77)
        put(tx, now, edits_outbox_id=first)
        (edit,) = outbox.claim_due(tx, now=now, most=1)
        assert edit.edits_message_id == 77


@settings(max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(chats=st.lists(st.integers(1, 4), min_size=1, max_size=25), room=st.integers(1, 5))
def test_any_mix_of_chats_goes_out_once_and_in_order(database, now, chats, room):
    with database.transaction() as tx:
        tx.exec(delete(OutboxRow))
        ids = [put(tx, now, chat_id=chat) for chat in chats]
    sent: list[tuple[int, int]] = []
    while True:
        with database.transaction() as tx:
            claimed = outbox.claim_due(tx, now=now, most=room)
            assert len({one.chat_id for one in claimed}) == len(claimed)
            for one in claimed:
                outbox.mark_sent(tx, one.id, at=now, message_id=one.id)
                sent.append((one.chat_id, one.id))
        if not claimed:
            break
    assert sorted(one for _, one in sent) == ids
    for chat in set(chats):
        mine = [one for chat_id, one in sent if chat_id == chat]
        assert mine == sorted(mine)
