"""Somebody else tries the button that is about to be tapped: by its token, and by its arguments.

Tried where the button is alive, so that only who taps it can be why nothing comes of it; undone
afterwards.
"""

import json
import re
from collections.abc import Mapping
from typing import Any

from sqlmodel import Session, col, select

from bot.desks import front
from bot.events import Tapped
from storage import buttons
from storage.queries import people
from storage.records.people import Role
from storage.records.wire import Button
from storage.tables.wire import OutboxRow
from tests.walk.lines import OWN_WORD
from tests.walk.stage import ATHLETES, COACHES, INVITED, NAMES, OWNER, STRANGER, THEIRS, WalkStage
from tests.walk.tables import Key, Row, changed, stored, whose


class _Undone(Exception):  # noqa: N818  nothing failed: what was tried is taken back
    pass


def trespass(stage: WalkStage, known: Button) -> list[str]:
    """Let everybody else try a button; return what they reached."""
    faults = []
    with stage.database.transaction() as tx:
        before = stored(tx)
    for chat_id in (*NAMES, STRANGER):
        if chat_id == known.chat_id:
            continue
        faults += _tried(stage, known, chat_id, before, is_forged=False)
        may_well = chat_id == OWNER and front.TAPS[known.act].role is Role.OWNER
        if known.arguments and not may_well:  # without arguments it is about who taps it
            faults += _tried(stage, known, chat_id, before, is_forged=True)
    return faults


def _tried(
    stage: WalkStage, known: Button, chat_id: int, before: Mapping[Key, Row], *, is_forged: bool
) -> list[str]:
    faults: list[str] = []
    try:
        with stage.database.transaction() as tx:
            faults += _try(stage, tx, known, chat_id, before, is_forged=is_forged)
            _undo()
    except _Undone:
        pass
    how = "with its arguments" if is_forged else "by its token"
    return [f"{known.act}, tapped by {NAMES.get(chat_id)} {how}: {one}" for one in faults]


def _undo() -> None:
    raise _Undone


def _try(
    stage: WalkStage,
    tx: Session,
    known: Button,
    chat_id: int,
    before: Mapping[Key, Row],
    *,
    is_forged: bool,
) -> list[str]:
    assert stage.house is not None
    now, last, theirs = stage.clock.now(), _last(tx), _ids(tx, chat_id)
    person = people.person_in_chat(tx, chat_id)
    token = known.token
    if is_forged:
        if person is None:
            return []
        token = buttons.new_button(
            tx,
            chat_id=chat_id,
            person_id=person.id,
            act=known.act,
            arguments=known.arguments,
            now=now,
        )
    turn = stage.house.turn(tx, now)
    event = Tapped(chat_id=chat_id, at=now, message_id=None, token=token)
    try:
        front.handle(turn, event)
    except Exception as fault:  # noqa: BLE001  an act may well choke on what is not its own
        return [f"{type(fault).__name__}: {fault}"]
    after = stored(tx)
    had = {key[1][0] for key in before if key[0] == "person"}
    theirs |= _ids(tx, chat_id) - had  # whom somebody invited just now is their own
    reached = {
        f"changed {key[0]} of {whose(key, after) or whose(key, before)}"
        for key in changed(before, after)
        if not {whose(key, after), whose(key, before)} & theirs
    }
    if not is_forged and changed(before, after):
        reached.add("its token did something")
    return sorted(reached) + _said(tx, chat_id, last, known, theirs)


def _said(tx: Session, chat_id: int, last: int, known: Button, theirs: set[int]) -> list[str]:
    """Return what was said to the wrong people, or of others to the right ones."""
    chats = _world(chat_id)
    others = [name for chat, name in NAMES.items() if chat not in chats] + [INVITED, OWN_WORD]
    given = json.dumps(dict(known.arguments), ensure_ascii=False)
    faults = []
    query = select(OutboxRow).where(col(OutboxRow.id) > last)
    for row in tx.exec(query):
        if row.chat_id not in chats:
            faults.append(f"wrote to {NAMES.get(row.chat_id)}: {row.payload.get('text')!r}")
        said = json.dumps(_without_tokens(row.payload), ensure_ascii=False)
        faults += [
            f"showed {name}: {said[:200]}"
            for name in others
            if _has(said, name) and not _has(given, name)
        ]
        file = row.payload.get("file")
        if isinstance(file, dict) and file.get("athlete") not in {None, *theirs}:
            faults.append(f"makes a file of {file}")
    return faults


def _has(said: str, name: str) -> bool:
    return re.search(rf"\b{name}\b", said) is not None


def _world(chat_id: int) -> set[int]:
    """Return the chats that somebody may have to do with."""
    own = {chat for chat in ATHLETES if chat != THEIRS}
    mara, otto = COACHES
    if chat_id == mara:
        return own | {mara}
    if chat_id == otto:
        return {otto, THEIRS}
    if chat_id == THEIRS:
        return {otto, THEIRS}
    return {chat_id, mara} if chat_id in own else {chat_id}


def _ids(tx: Session, chat_id: int) -> set[int]:
    """Return whose rows may change when this person taps: one's own, a coach's own athletes'."""
    person = people.person_in_chat(tx, chat_id)
    if person is None:
        return set()
    team = people.athletes_of(tx, person.id) if person.is_coach else ()
    return {person.id, *(one.id for one, _ in team)}


def _last(tx: Session) -> int:
    newest = tx.exec(select(OutboxRow.id).order_by(col(OutboxRow.id).desc()).limit(1)).first()
    return newest or 0


def _without_tokens(payload: Any) -> Any:
    kept = {key: one for key, one in payload.items() if key != "buttons"}
    labels = [label for line in payload.get("buttons", ()) for label, _ in line]
    return {**kept, "labels": labels}
