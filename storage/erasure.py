"""Erasing a person: every row that is theirs goes, in every table that the schema declares.

What is theirs is found by the schema itself, so that a new table is emptied too: rows whose
``athlete_id`` or ``person_id`` points at the person, rows that belong to such rows, and rows of the
person's chat. Columns of other names (``actor_id``, ``coach_id``, ``answered_by_id``) say what
somebody did, and do not make a row theirs.

The person's own row stays, blank: its id may stand in buttons and in copies of the database, and
a database gives a free number to the next who comes.
"""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Column, ColumnElement, Select, Table, or_, tuple_
from sqlalchemy import select as select_columns
from sqlmodel import Session, col, update

from storage.tables import metadata
from storage.tables.leaving import ErasureRow
from storage.tables.people import PersonRow
from storage.tables.wire import InboxRow, InboxState, OutboxRow, OutboxState

OWNER_COLUMNS = frozenset({"athlete_id", "person_id"})
PERSON, ATHLETE = metadata.tables["person"], metadata.tables["athlete"]
APART = frozenset({"person", "inbox", "outbox", "erasure"})
"""Tables that are not emptied row by row: blanked, or without anything personal."""
FAREWELL = "farewell"
"""The subject of the last messages about an erasure: their rows go as soon as they are sent."""

DUES_ABOUT = {"alert": "alert", "proposal_told": "proposal", "review_told": "proposal"}
"""What was done once about a row that may be somebody else's, by kind: the table of that row."""
ROWS_AT_ONCE = (
    500  # [rows] ch: a statement's variables are bounded, and so is what is looked through
)

Doomed = dict[str, set[tuple[Any, ...]]]
"""By table: the keys of the rows that go."""


@dataclass(frozen=True)
class OtherRole:
    """What somebody keeps who is erased as an athlete only, and coaches or owns the house as well.

    ``kept_dues``: the kinds of due things that a coach is owed. ``lost_acts``: whose buttons go;
    None: of all acts. ``kept_before``: what was said in the chat before that instant stays.
    """

    kept_dues: Collection[str] = ()
    lost_acts: Collection[str] | None = None
    kept_before: datetime | None = None


def erase(
    tx: Session,
    person_id: int,
    *,
    at: datetime,
    stays: OtherRole | None = None,
) -> dict[str, int]:
    """Erase a person; return how many rows went, by table.

    ``stays``: a coach or an owner stays that, with name and chat, and what goes is all that they
    were as an athlete. Whether it is noted (:func:`note_erasure`) is for whoever asks.
    """
    tx.flush()
    person = tx.get_one(PersonRow, person_id)
    name, chat_id = person.name, person.chat_id
    doomed = _rows_of(tx, person_id, chat_id)
    if stays is not None:
        _spare_other_role(tx, doomed, person_id, stays)
    _loosen(tx, doomed)
    _forget_references(tx, doomed, person_id, name=name if stays is None else None)
    for table in reversed(metadata.sorted_tables):
        _delete_rows(tx, table, doomed.get(table.name, set()))
    if chat_id is not None and stays is None:
        _give_up_chat(tx, chat_id, at=at)
    elif chat_id is not None and stays is not None:
        _empty_chat(tx, chat_id, since=stays.kept_before)
    if stays is None:
        _forget_coach(tx, person_id)
        _blank(tx, person_id, at=at)
    tx.expire_all()
    return {name: len(keys) for name, keys in doomed.items() if keys}


def note_erasure(tx: Session, person_id: int, *, at: datetime, is_whole: bool) -> None:
    """Keep that a person was erased: an id, and nothing else."""
    tx.add(ErasureRow(person_id=person_id, erased_at=at, is_whole=is_whole))
    tx.flush()


def _rows_of(tx: Session, person_id: int, chat_id: int | None) -> Doomed:
    """Find the rows that are a person's, and those that belong to these, by table."""
    doomed: Doomed = {}
    for table in metadata.sorted_tables:  # parents come before what hangs on them
        if table.name in APART:
            continue
        owned = [*_is_owned(table, person_id), *_hangs_on(table, doomed)]
        if chat_id is not None and "chat_id" in table.c and not table.foreign_keys:
            owned.append(table.c.chat_id == chat_id)
        if owned:
            keys: Any = select_columns(*table.primary_key.columns).where(or_(*owned))
            doomed[table.name] = {tuple(row) for row in tx.exec(keys)}
    return doomed


def _is_owned(table: Table, person_id: int) -> list[ColumnElement[bool]]:
    """Return what makes a row of a table a person's own."""
    return [
        column == person_id
        for column in table.c
        if column.name in OWNER_COLUMNS and _targets(column) & {PERSON.name, ATHLETE.name}
    ]


def _hangs_on(table: Table, doomed: Doomed) -> list[ColumnElement[bool]]:
    """Return what makes a row belong to rows that go: a key that may not be empty."""
    return [
        column.in_([key[0] for key in doomed[target]])
        for column in table.c
        for target in _targets(column)
        if not column.nullable and doomed.get(target) and target != ATHLETE.name
    ]


def _targets(column: Column[Any]) -> set[str]:
    return {key.column.table.name for key in column.foreign_keys}


def _spare_other_role(tx: Session, doomed: Doomed, person_id: int, stays: OtherRole) -> None:
    """Keep what a coach or owner needs: their own way in, and what they were sent as one."""
    due, invitation = metadata.tables["due"], metadata.tables["invitation"]
    button = metadata.tables["button"]
    spared: list[tuple[Table, ColumnElement[bool]]] = [
        (due, due.c.kind.in_(list(stays.kept_dues))),
        (invitation, invitation.c.role != "athlete"),
    ]
    if stays.lost_acts is not None:
        spared.append((button, button.c.act.not_in(list(stays.lost_acts))))
    for table, is_spared in spared:
        mine = table.c.person_id == person_id
        keys: Any = select_columns(*table.primary_key.columns).where(mine, is_spared)
        doomed.get(table.name, set()).difference_update(tuple(row) for row in tx.exec(keys))


def _loosen(tx: Session, doomed: Doomed) -> None:
    """Let go of rows that go wherever a row that stays may do without them."""
    for table in metadata.sorted_tables:
        for column in table.c:
            for target in _targets(column) - {PERSON.name, ATHLETE.name}:
                gone = [key[0] for key in doomed.get(target, ())]
                if column.nullable and gone:
                    tx.exec(table.update().where(column.in_(gone)).values({column.name: None}))


def _delete_rows(tx: Session, table: Table, keys: set[tuple[Any, ...]]) -> None:
    """Delete rows by their keys, some at a time."""
    columns = list(table.primary_key.columns)
    in_order = sorted(keys)
    for start in range(0, len(in_order), ROWS_AT_ONCE):
        some = in_order[start : start + ROWS_AT_ONCE]
        chosen = (
            columns[0].in_([key[0] for key in some])
            if len(columns) == 1
            else tuple_(*columns).in_(some)
        )
        tx.exec(table.delete().where(chosen))


def _forget_references(tx: Session, doomed: Doomed, person_id: int, *, name: str | None) -> None:
    """Find buttons and questions about the rows that go, and what was done once about them.

    They are added to ``doomed``: the numbers of rows are given out anew, and a button must not
    mean somebody else, nor a decision be kept from a coach who was told of another. Messages about
    them are about nobody from now on.
    """
    ids = {table: {key[0] for key in keys} for table, keys in doomed.items()}
    about = {**ids, "athlete": {person_id}, "person": {person_id}}
    for table_name, held in (("button", "arguments"), ("question", "subject")):
        table = metadata.tables[table_name]
        key = next(iter(table.primary_key.columns))
        gone = doomed.setdefault(table_name, set())
        rows = _some_at_a_time(tx, select_columns(key, table.c[held]))
        gone.update((row[0],) for row in rows if _mentions(row[1], about, name))
    due = metadata.tables["due"]
    done = select_columns(due.c.id, due.c.kind, due.c.subject).where(due.c.kind.in_(DUES_ABOUT))
    doomed.setdefault("due", set()).update(
        (row.id,)
        for row in _some_at_a_time(tx, done)
        if row.subject.split(":")[0] in {str(one) for one in ids.get(DUES_ABOUT[row.kind], ())}
    )
    subjects = [f"athlete:{person_id}", *(f"clip:{one}" for one in ids.get("clip", ()))]
    # A number is given anew, and a reply would go to somebody else.
    tx.exec(update(OutboxRow).where(col(OutboxRow.subject).in_(subjects)).values(subject=None))


def _some_at_a_time(tx: Session, query: Select[Any]) -> Iterator[Any]:
    """Read rows in parts: years of buttons are never in memory at once."""
    found = tx.connection().execute(query, execution_options={"yield_per": ROWS_AT_ONCE})
    for part in found.partitions():
        yield from part


def _mentions(held: Mapping[str, Any], about: Mapping[str, set[Any]], name: str | None) -> bool:
    """Tell whether what a button or a question holds is about rows that go, or says the name."""
    return any(
        (not isinstance(value, dict | list) and value in about.get(key, ()))
        or (bool(name) and isinstance(value, str) and str(name) in value)
        for key, value in held.items()
    )


def _empty_chat(tx: Session, chat_id: int, *, since: datetime | None) -> None:
    """Empty what came from the chat and went to it, all or since an instant; what waits stays."""
    heard, said = InboxRow, OutboxRow
    came = [col(heard.chat_id) == chat_id, col(heard.state) != InboxState.WAITING]
    went = [
        col(said.chat_id) == chat_id,
        col(said.state).not_in((OutboxState.WAITING, OutboxState.SENDING)),
    ]
    if since is not None:
        came.append(col(heard.received_at) >= since)
        went.append(col(said.created_at) >= since)
    tx.exec(update(heard).where(*came).values(raw=None))
    tx.exec(update(said).where(*went).values(payload={}))


def _give_up_chat(tx: Session, chat_id: int, *, at: datetime) -> None:
    """Empty all that came from the chat and went to it; the numbers of updates stay, to know them.

    What is being sent at this instant cannot be called back: its row goes with the farewell.
    """
    mine = update(InboxRow).where(col(InboxRow.chat_id) == chat_id)
    waiting = mine.where(col(InboxRow.state) == InboxState.WAITING)
    tx.exec(waiting.values(state=InboxState.HANDLED, handled_at=at))
    tx.exec(mine.values(raw=None, chat_id=None, fault_reference=None, outcome="erased"))
    said = update(OutboxRow).where(col(OutboxRow.chat_id) == chat_id)
    tx.exec(said.values(edits_outbox_id=None))
    in_flight = said.where(col(OutboxRow.state) == OutboxState.SENDING)
    tx.exec(in_flight.values(payload={}, subject=FAREWELL))
    outbox = metadata.tables["outbox"]
    settled = outbox.c.state != OutboxState.SENDING
    tx.exec(outbox.delete().where(outbox.c.chat_id == chat_id, settled))


def _forget_coach(tx: Session, person_id: int) -> None:
    """Empty what somebody kept as a coach before: own pictures of movements, reasons in words.

    The versions of files themselves stay: what athletes trained is named in them.
    """
    versions = metadata.tables["file_version"]
    for media in (metadata.tables["how_to_media"], metadata.tables["file_draft"]):
        tx.exec(media.delete().where(media.c.coach_id == person_id))
    tx.exec(versions.update().where(versions.c.made_by_id == person_id).values(words=""))


def _blank(tx: Session, person_id: int, *, at: datetime) -> None:
    """Leave of the person an id and nothing else."""
    blank = PersonRow(name="", created_at=at)
    values = {
        column.name: getattr(blank, column.name) for column in PERSON.c if column.name != "id"
    }
    tx.exec(PERSON.update().where(PERSON.c.id == person_id).values(**values))
    tx.exec(PERSON.update().where(PERSON.c.stand_in_id == person_id).values(stand_in_id=None))
