"""What the platform refused and may not be lost: alerts, and what keeps an athlete safe."""

import html
import re

from bot.acts.find_athlete import subject_id
from bot.turn import Turn
from bot.wording import unreachable
from storage import outbox
from storage.queries import care, people
from storage.records.wire import MessageKind, Operation, Outgoing

TAG = re.compile(r"<[^>]*>")
PLAIN = "is_plain"  # the mark of a message that was refused once and is written anew without markup
PLAIN_MOST = 3000  # [characters] botapi: 4096 UTF-16 units, some of which count double
KINDS = frozenset({MessageKind.ALERT, MessageKind.SAFETY})


def refused(turn: Turn, outgoing: Outgoing) -> None:
    """Write it anew without markup and buttons; what is refused again goes to the owners."""
    if outgoing.operation is Operation.MEDIA:
        _say_without(turn, outgoing)
        return
    if outgoing.operation.is_drawn:
        _say_in_words(turn, outgoing)
        return
    if outgoing.kind not in KINDS or "text" not in outgoing.payload:
        return
    person = people.person_in_chat(turn.tx, outgoing.chat_id)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="message.refused",
        athlete_id=subject_id(outgoing.subject) or (person.id if person else None),
        after={"kind": outgoing.kind.value, "is_plain": bool(outgoing.payload.get(PLAIN))},
    )
    if not outgoing.payload.get(PLAIN):
        text = html.escape(html.unescape(TAG.sub("", outgoing.payload["text"])), quote=False)
        outbox.put(
            turn.tx,
            chat_id=outgoing.chat_id,
            operation=Operation.SEND,
            kind=outgoing.kind,
            payload={"text": text[:PLAIN_MOST], PLAIN: True},
            now=turn.now,
            subject=outgoing.subject,
        )
        return
    for owner in people.owners(turn.tx):
        if owner.chat_id is None or owner.chat_id == outgoing.chat_id:
            continue
        said = unreachable.refused_to_owner(
            turn.tongue(owner), person.name if person is not None else "?"
        )
        outbox.put(
            turn.tx,
            chat_id=owner.chat_id,
            operation=Operation.SEND,
            kind=MessageKind.ALERT,
            payload={"text": said, PLAIN: True},
            now=turn.now,
        )


def _say_without(turn: Turn, outgoing: Outgoing) -> None:
    """A picture or clip that the platform no longer gives: its words and buttons still go."""
    person = people.person_in_chat(turn.tx, outgoing.chat_id)
    if person is None:
        return
    said = unreachable.media_gone(turn.tongue(person), outgoing.payload["text"])
    outbox.put(
        turn.tx,
        chat_id=outgoing.chat_id,
        operation=Operation.SEND,
        kind=outgoing.kind,
        payload={**outgoing.payload, "text": said},
        now=turn.now,
        subject=outgoing.subject,
    )


def _say_in_words(turn: Turn, outgoing: Outgoing) -> None:
    """A picture that the platform will not take: what it shows is said."""
    for one in outgoing.payload.get("pictures") or [outgoing.payload]:
        outbox.put(
            turn.tx,
            chat_id=outgoing.chat_id,
            operation=Operation.SEND,
            kind=outgoing.kind,
            payload={
                "text": f"{one['caption']}\n{one['instead']}",
                "buttons": one.get("buttons", []),
            },
            now=turn.now,
            subject=one.get("subject"),
            useful_until=outgoing.useful_until,
        )
