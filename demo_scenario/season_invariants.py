"""What must hold of clips, files, erasures and pictures after any play."""

import io
import zipfile
from collections import Counter
from collections.abc import Iterable, Iterator

from sqlmodel import Session, col, select

from bot.acts import answer_clip
from bot.reading.red_flags import Stated, read_red_flags
from bot.turn import ALBUM_MOST, Turn
from demo_scenario.play import Stage
from demo_scenario.player import Player
from storage.queries import clips, people
from storage.tables import metadata
from storage.tables.care import AuditRow
from storage.tables.leaving import ErasureRow
from storage.tables.media import ClipRow
from storage.tables.people import PersonRow

GONE = ("Everything about you is erased now", "had everything about you erased now")


def clips_out_of_sight(turn: Turn) -> Iterator[str]:
    """Yield each clip that has no answer and stands in no coach's queue."""
    seen = {
        part.id
        for coach in people.coaches(turn.tx)
        for first in answer_clip.queue_of(turn, coach)
        for part in clips.album(turn.tx, first)
    }
    for row in turn.tx.exec(select(ClipRow).where(col(ClipRow.answered_at).is_(None))):
        if row.id not in seen:
            yield f"clip {row.id} waits, and no coach sees it"


def private_words(stage: Stage) -> frozenset[str]:
    """Return what athletes said plainly that is for nobody else's eyes."""
    return frozenset(
        message.text
        for player in stage.athletes.values()
        for message in player.sees()
        if not message.is_from_bot and is_said_privately(message.text)
    )


def is_said_privately(text: str) -> bool:
    """Tell whether a text plainly says something of which others hear without its words."""
    found = read_red_flags(text) if text else None
    return (
        found is not None
        and found.is_private
        and any(one.certainty is Stated.STATED for one in found.candidates)
    )


def private_words_told(stage: Stage) -> Iterator[str]:
    """Yield each file and each other person's screen that holds such words."""
    words = private_words(stage)
    if not words:
        return
    for player in stage.players:
        own = {one.text for one in player.sees() if not one.is_from_bot}
        for message in player.sees_from_bot():
            said = (message.text, *(one.text for one in message.history))
            if any(word in text for word in words - own for text in said):
                yield f"{player.name} reads another's private words"
            if message.file_id is not None and message.file_name is not None:
                content = stage.server.platform.files.content(message.file_id)
                if holds(content, words):
                    yield f"{player.name}: {message.file_name} holds private words"


def holds(content: bytes, words: Iterable[str]) -> bool:
    """Tell whether a file holds any of these words, packed or not."""
    sought = [word.casefold() for word in words]
    return any(
        word in text.decode("utf-8", "replace").casefold()
        for text in _unpacked(content)
        for word in sought
    )


def _unpacked(content: bytes) -> Iterator[bytes]:
    if not zipfile.is_zipfile(io.BytesIO(content)):
        yield content
        return
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        for name in archive.namelist():
            yield archive.read(name)


def has_practised(tx: Session, chat_id: int) -> bool:
    """Tell whether somebody ended a practice athlete, of whom nothing is counted any more."""
    ended = (
        select(PersonRow.id)
        .join(AuditRow, col(AuditRow.actor_id) == col(PersonRow.id))
        .where(PersonRow.chat_id == chat_id, AuditRow.what == "practice.ended")
    )
    return tx.exec(ended.limit(1)).first() is not None


def is_erased(player: Player) -> bool:
    """Tell whether a person was told that everything about them is gone."""
    return any(words in one.text for one in player.sees_from_bot()[-3:] for words in GONE)


def left_behind(tx: Session, stage: Stage) -> Iterator[str]:
    """Yield each place where something of an erased person is left."""
    for row in tx.exec(select(ErasureRow).where(ErasureRow.is_whole)):
        person = tx.get(PersonRow, row.person_id)
        if person is not None and (person.name or person.chat_id is not None):
            yield f"person {row.person_id} was erased and has a name or a chat"
    gone = [player for player in stage.players if is_erased(player)]
    chats = {phone.person.chat_id for player in gone for phone in player.phones}
    for table in metadata.sorted_tables if gone else ():
        for found in tx.connection().execute(table.select()).mappings():
            if found.get("chat_id") in chats:
                yield f"a row of {table.name} in an erased chat"
            yield from (
                f"{player.name} stands in {table.name}"
                for player in gone
                if player.name in str(tuple(found.values()))
            )


def albums_too_long(stage: Stage) -> Iterator[str]:
    """Yield each album with more pictures than the platform takes."""
    for player in stage.players:
        yield from too_long(
            player.name, [one.media_group_id for one in player.sees_from_bot() if one.media]
        )


def too_long(name: str, album_ids: Iterable[str | None]) -> Iterator[str]:
    """Yield each album that comes more often than an album may have pictures."""
    for album_id, count in Counter(one for one in album_ids if one).items():
        if count > ALBUM_MOST:
            yield f"{name}: an album of {count} ({album_id})"


def could_not_do(stage: Stage) -> Iterator[str]:
    """Yield each thing that a person meant to do and the screen did not offer."""
    for player in stage.players:
        yield from player.stumbled
        yield from (f"{player.name} puzzled over: {one[:60]}" for one in player.puzzled)
