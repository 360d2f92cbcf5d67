"""Which item a clip shows: the one asked for, reported or named with it, else answered last."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.acts.item_facts import known_session, sent_items
from bot.acts.reading_context import AtHand, at_hand, latest_items
from bot.acts.session_card import reported_at
from bot.events import SentMedia, Wrote
from bot.reading.named_items import named_in
from bot.turn import Turn
from storage import outbox
from storage.queries import training
from storage.records.people import Person
from storage.records.training import ItemRecord

ASKED = "clip_ask"
"""The subject of the message that asks for a clip: a reply to it is about its item."""


@dataclass(frozen=True)
class Shows:
    """What a clip shows: the item, or None with the ``choices`` among which the athlete says."""

    item: ItemRecord | None
    choices: tuple[ItemRecord, ...] = ()


def item_of(turn: Turn, person: Person, event: SentMedia) -> Shows:
    """Find the item that a clip shows, after what stands under it was recorded."""
    sure = _asked_for(turn, person, event) or _reported_with(turn, event)
    if sure is not None:
        return Shows(item=sure)
    said = Wrote(
        chat_id=event.chat_id, at=event.at, message_id=event.message_id, text=event.caption
    )
    found = at_hand(turn, person, said, None)
    if found.session is None:
        return _of_answered(found)
    items = sent_items(found.session)
    named = _named(turn, person, found, event.caption, items)
    if len(named) == 1:
        return Shows(item=named[0])
    last = _answered_last(found)
    if not named and last is not None:
        return Shows(item=last)
    return Shows(item=None, choices=tuple(named) or items)


def _asked_for(turn: Turn, person: Person, event: SentMedia) -> ItemRecord | None:
    if event.reply_to_message_id is None:
        return None
    found = outbox.sent_message(
        turn.tx, chat_id=event.chat_id, message_id=event.reply_to_message_id
    )
    kind, _, number = (found[1] or "" if found else "").partition(":")
    if kind != ASKED or not number.isdecimal():
        return None
    item, session_id = training.item(turn.tx, int(number))
    is_own = training.session(turn.tx, session_id).athlete_id == person.id
    return item if is_own else None


def _reported_with(turn: Turn, event: SentMedia) -> ItemRecord | None:
    reported = training.items_of_message(
        turn.tx, chat_id=event.chat_id, message_id=event.message_id
    )
    return training.item(turn.tx, reported[0])[0] if len(reported) == 1 else None


def _named(
    turn: Turn, person: Person, found: AtHand, caption: str, items: Sequence[ItemRecord]
) -> list[ItemRecord]:
    if not caption or found.session is None:
        return []
    known = known_session(turn, turn.tongue(person), found.session).items
    refs = named_in(caption, known)
    return [item for item in items if str(item.id) in refs]


def _answered_last(found: AtHand) -> ItemRecord | None:
    """Return the one item answered last in the session at hand; of several it is not clear."""
    if found.session is None:
        return None
    latest = latest_items(found.session)
    return latest[0] if len(latest) == 1 else None


def _of_answered(found: AtHand) -> Shows:
    """Nothing is open: what was answered last is meant, as far as that is one item."""
    if found.answered is None:
        return Shows(item=None)
    items = sorted(latest_items(found.answered), key=reported_at)
    if len(items) == 1:
        return Shows(item=items[0])
    return Shows(item=None, choices=sent_items(found.answered))
