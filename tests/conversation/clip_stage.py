"""Clips and other media of the stage's athlete, with a reference as the platform gives it."""

from itertools import count

from sqlmodel import col, select

from bot.events import Media, SentMedia
from bot.outcomes import Outcome
from storage.records.media import Clip
from storage.tables.media import ClipRow
from tests.conversation.athlete_stage import ATHLETE_CHAT, Stage

_IDS = count(20_000)


def send_clip(
    stage: Stage,
    caption: str = "",
    *,
    message_id: int | None = None,
    album_id: str | None = None,
    media: Media = Media.VIDEO,
    reply_to: int | None = None,
    chat_id: int = ATHLETE_CHAT,
) -> Outcome:
    """Send a clip or picture."""
    return stage.handle(
        SentMedia(
            chat_id=chat_id,
            at=stage.now,
            message_id=next(_IDS) if message_id is None else message_id,
            media=media,
            caption=caption,
            album_id=album_id,
            reply_to_message_id=reply_to,
            file_id=f"file-{len(clips_of(stage)) + 1}",
            sent_as=media.value,
        )
    )


def send_media(stage: Stage, media: Media) -> Outcome:
    """Send a voice note, a sticker, a round video note."""
    return stage.handle(
        SentMedia(chat_id=ATHLETE_CHAT, at=stage.now, message_id=next(_IDS), media=media)
    )


def clips_of(stage: Stage) -> tuple[Clip, ...]:
    """Return every clip that is kept."""
    with stage.turn() as turn:
        rows = turn.tx.exec(select(ClipRow).order_by(col(ClipRow.id)))
        return tuple(Clip.model_validate(row) for row in rows)
