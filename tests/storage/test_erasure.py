"""Erasing leaves nothing of a person: in no column of any table, and in no byte of the files."""

from datetime import timedelta
from pathlib import Path

import pytest
from sqlmodel import Session, select

from storage import backup, erasure, outbox
from storage.database import Database
from storage.erasure import OtherRole
from storage.migrate import migrate
from storage.queries import leaving
from storage.records.media import FileKind
from storage.records.wire import MessageKind, Operation
from storage.tables import metadata
from storage.tables.care import AlertRow, ProposalRow
from storage.tables.media import ClipRow, FileVersionRow, HowToMediaRow
from storage.tables.people import PersonRow
from storage.tables.wire import ButtonRow, DueRow, InboxRow, InboxState, OutboxRow, OutboxState
from tests.storage.filled import AT, OF_NOBODY, fill, texts_in_columns

NAME, WORDS = "Xanthippe Qvist", "zwirbelige Worte"
CHAT, COACH_CHAT = 770_001_234, 880_005_678


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "house.sqlite3"


@pytest.fixture
def database(file: Path):
    database = Database(f"sqlite:///{file}", is_throwaway=True)
    migrate(database.engine)
    yield database
    database.close()


@pytest.fixture
def athlete(database: Database) -> int:
    with database.transaction() as tx:
        return fill(tx, name=NAME, words=WORDS, chat_id=CHAT, coach_chat_id=COACH_CHAT)


def erase(database: Database, athlete: int) -> None:
    with database.transaction() as tx:
        erasure.erase(tx, athlete, at=AT + timedelta(hours=1))
        erasure.note_erasure(tx, athlete, at=AT + timedelta(hours=1), is_whole=True)


def test_every_table_of_the_schema_is_filled_or_known_to_be_about_nobody(database, athlete):
    with database.transaction() as tx:
        empty = {
            table.name
            for table in metadata.sorted_tables
            if tx.connection().exec_driver_sql(f"SELECT 1 FROM {table.name}").first() is None  # noqa: S608
        }
        told = texts_in_columns(tx)
    assert empty == OF_NOBODY
    # The filling can be found: the search below would see it.
    assert sum(WORDS in text for texts in told.values() for text in texts) > 20


def test_nothing_of_the_person_is_left_in_any_column_of_any_table(database, athlete):
    erase(database, athlete)
    with database.transaction() as tx:
        left = {
            place: text
            for place, texts in texts_in_columns(tx).items()
            for text in texts
            if any(part in text for part in (NAME, "Xanthippe", "Qvist", WORDS, "zwirbelig"))
        }
        chats = [
            table.name
            for table in metadata.sorted_tables
            if "chat_id" in table.c
            and tx.connection().execute(table.select().where(table.c.chat_id == CHAT)).first()
        ]
    assert left == {}
    assert chats == []


def test_no_byte_of_it_is_left_in_the_files_once_they_are_written_anew(database, file, athlete):
    erase(database, athlete)
    backup.wipe(file)
    for one in file.parent.iterdir():
        content = one.read_bytes()
        for part in (NAME, WORDS, str(CHAT)):
            assert part.encode() not in content, one.name


def test_the_files_did_hold_it_before(database, file, athlete):
    content = b"".join(one.read_bytes() for one in file.parent.iterdir())
    assert NAME.encode() in content
    assert WORDS.encode() in content


def test_the_other_person_stays_whole_and_what_remains_is_an_empty_number(database, athlete):
    erase(database, athlete)
    with database.transaction() as tx:
        coach = tx.exec(select(PersonRow).where(PersonRow.chat_id == COACH_CHAT)).one()
        blank = tx.get_one(PersonRow, athlete)
        (known,) = leaving.erasures(tx)
    assert coach.name == "Mara"
    assert (blank.name, blank.chat_id, blank.is_coach) == ("", None, False)
    assert (known.person_id, known.is_whole) == (athlete, True)


def test_the_number_is_never_given_to_the_next_who_comes(database, athlete):
    """A button or a copy that still says the number must not mean somebody else."""
    erase(database, athlete)
    with database.transaction() as tx:
        row = PersonRow(name="Next", created_at=AT)
        tx.add(row)
        tx.flush()
        assert row.id != athlete


def test_buttons_and_alert_repeats_of_others_about_the_person_go_too(database, athlete):
    with database.transaction() as tx:
        coach = tx.exec(select(PersonRow.id).where(PersonRow.chat_id == COACH_CHAT)).one()
        alert = tx.exec(select(AlertRow.id)).one()
        for number, arguments in enumerate(
            ({"athlete": athlete}, {"alert": alert}, {"name": NAME}, {"athlete": coach})
        ):
            tx.add(
                ButtonRow(
                    token=str(number), chat_id=COACH_CHAT, person_id=coach or 0, act="coach.x",
                    arguments=arguments, made_at=AT,
                )
            )  # fmt: skip
        tx.add(
            DueRow(
                person_id=coach or 0, kind="alert", subject=f"{alert}:1", due_at=AT, handled_at=AT,
                outcome="sent",
            )
        )  # fmt: skip
    erase(database, athlete)
    with database.transaction() as tx:
        assert [row.token for row in tx.exec(select(ButtonRow))] == ["3"]
        assert tx.exec(select(DueRow)).all() == []


def test_all_of_a_coachs_buttons_are_looked_through(database, athlete):
    """CHOSEN: more than are read at once, every other one about the person."""
    with database.transaction() as tx:
        coach = tx.exec(select(PersonRow.id).where(PersonRow.chat_id == COACH_CHAT)).one() or 0
        count = 2 * erasure.ROWS_AT_ONCE + 10
        tx.add_all(
            ButtonRow(
                token=f"{number:05}", chat_id=COACH_CHAT, person_id=coach, act="coach.x",
                arguments={"athlete": athlete if number % 2 else coach}, made_at=AT,
            )
            for number in range(count)
        )  # fmt: skip
    erase(database, athlete)
    with database.transaction() as tx:
        left = [int(row.token) for row in tx.exec(select(ButtonRow).order_by(ButtonRow.token))]
    assert left == list(range(0, count, 2))


@pytest.mark.parametrize("kind", ["proposal_told", "review_told"])
def test_that_a_coach_was_told_of_a_decision_goes_with_it(database, athlete, kind):
    """A free number is given to the next decision, which the coach must hear of."""
    with database.transaction() as tx:
        coach = tx.exec(select(PersonRow.id).where(PersonRow.chat_id == COACH_CHAT)).one() or 0
        proposal = tx.exec(select(ProposalRow.id)).one() or 0
        for subject in (proposal, proposal + 1):
            tx.add(
                DueRow(
                    person_id=coach, kind=kind, subject=str(subject), due_at=AT, handled_at=AT,
                    outcome="sent",
                )
            )  # fmt: skip
    erase(database, athlete)
    with database.transaction() as tx:
        assert [row.subject for row in tx.exec(select(DueRow))] == [str(proposal + 1)]


def test_what_waits_to_be_handled_from_the_chat_is_not_handled_any_more(database, athlete):
    with database.transaction() as tx:
        (row,) = tx.exec(select(InboxRow)).all()
        row.state = InboxState.WAITING
        tx.add(row)
    erase(database, athlete)
    with database.transaction() as tx:
        (row,) = tx.exec(select(InboxRow)).all()
        assert (row.state, row.raw, row.chat_id) == (InboxState.HANDLED, None, None)


def put(tx: Session, chat_id: int, *, subject: str | None = None) -> int:
    return outbox.put(
        tx, chat_id=chat_id, operation=Operation.SEND, kind=MessageKind.REPLY,
        payload={"text": f"about {NAME}"}, now=AT, subject=subject,
    )  # fmt: skip


def test_what_is_being_sent_at_that_instant_goes_with_the_sweeping(database, athlete):
    with database.transaction() as tx:
        outbox_id = put(tx, CHAT)
        tx.get_one(OutboxRow, outbox_id).state = OutboxState.SENDING
    erase(database, athlete)
    with database.transaction() as tx:
        assert tx.get_one(OutboxRow, outbox_id).payload == {}
        assert not leaving.sweep(tx, at=AT)
        outbox.mark_sent(tx, outbox_id, at=AT, message_id=1)
        tx.expire_all()
        assert leaving.sweep(tx, at=AT)
        assert tx.get(OutboxRow, outbox_id) is None


def test_what_coaches_were_sent_is_emptied_as_soon_as_it_is_sent_and_not_before(database, athlete):
    with database.transaction() as tx:
        sent, waiting = put(tx, COACH_CHAT), put(tx, COACH_CHAT)
        outbox.mark_sent(tx, sent, at=AT, message_id=1)
    erase(database, athlete)
    with database.transaction() as tx:
        assert not leaving.sweep(tx, at=AT)
        tx.expire_all()
        assert tx.get_one(OutboxRow, sent).payload == {}
        assert NAME in tx.get_one(OutboxRow, waiting).payload["text"]
        outbox.mark_sent(tx, waiting, at=AT, message_id=2)
        assert leaving.sweep(tx, at=AT)
        tx.expire_all()
        assert tx.get_one(OutboxRow, waiting).payload == {}
        assert not leaving.is_sweeping_due(tx)


def test_what_was_kept_as_a_coach_before_goes_and_the_files_versions_stay(database, athlete):
    """What athletes trained is named in the versions; the pictures and reasons were personal."""
    with database.transaction() as tx:
        tx.add(
            HowToMediaRow(
                coach_id=athlete, movement_key="bar_hang", file_id=WORDS, sent_as="photo", at=AT
            )
        )
        tx.add(
            FileVersionRow(
                coach_id=athlete, kind=FileKind.MOVEMENTS, name="push.yaml", content="movements:",
                meaning={}, words=WORDS, made_at=AT, made_by_id=athlete,
            )
        )  # fmt: skip
    erase(database, athlete)
    with database.transaction() as tx:
        assert tx.exec(select(HowToMediaRow)).all() == []
        (version,) = tx.exec(select(FileVersionRow)).all()
        assert (version.words, version.content) == ("", "movements:")


def test_a_reply_to_a_clip_that_went_is_about_nobody(database, athlete):
    """A free number is given to the next clip, which may be somebody else's."""
    with database.transaction() as tx:
        clip = tx.exec(select(ClipRow.id)).one()
        sent = put(tx, COACH_CHAT, subject=f"clip:{clip}")
    erase(database, athlete)
    with database.transaction() as tx:
        assert tx.exec(select(ClipRow)).all() == []
        assert tx.get_one(OutboxRow, sent).subject is None


def test_a_coach_who_leaves_as_an_athlete_stays_a_coach(database, athlete):
    with database.transaction() as tx:
        tx.get_one(PersonRow, athlete).is_coach = True
    with database.transaction() as tx:
        erasure.erase(tx, athlete, at=AT, stays=OtherRole(kept_dues={WORDS}))
    with database.transaction() as tx:
        row = tx.get_one(PersonRow, athlete)
        left = {place for place, texts in texts_in_columns(tx).items() if WORDS in str(texts)}
        assert (row.name, row.chat_id, row.is_coach) == (NAME, CHAT, True)
    # What a coach is owed and waits for stays, so that no digest comes twice; no record does.
    assert {place.split(".")[0] for place in left} == {
        "due", "inbox", "invitation", "outbox",
    }  # fmt: skip
