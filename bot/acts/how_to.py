"""How a movement is done: the library's words, with the coach's own picture or clip if any."""

from collections.abc import Mapping
from typing import Any

from bot.acts.find_movement import movements_named
from bot.events import SentMedia, Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import how_to as words
from scheduler.catalogue.values import Movement
from storage.queries import care, how_to_media
from storage.records.media import HowToMedia
from storage.records.people import Athlete, Person

KEPT, REMOVED = "how_to.kept", "how_to.removed"
SHOWN_AS = frozenset({"photo", "video", "animation"})
COMMAND = "howto"


def media_of(turn: Turn, athlete: Athlete, movement_key: str) -> HowToMedia | None:
    """Return what the athlete's coach keeps for a movement."""
    return how_to_media.media_of(turn.tx, coach_id=athlete.coach_id, movement_key=movement_key)


def show(turn: Turn, person: Person, athlete: Athlete, movement_key: str) -> None:
    """Send the how-to: under the coach's own picture or clip where there is one, else as text."""
    movement = turn.house.library.movements.get(movement_key)
    if movement is None:
        turn.say(person, words.no_longer_there(turn.tongue(person)))
        return
    _send(turn, person, movement, media_of(turn, athlete, movement_key))


def _send(
    turn: Turn,
    person: Person,
    movement: Movement,
    media: HowToMedia | None,
    *,
    is_coach: bool = False,
) -> None:
    tongue = turn.tongue(person)
    text = words.how_to(tongue, movement)
    remove = Tap(words.remove_label(tongue), "howto.remove", {"movement": movement.key})
    if media is None:
        turn.say(person, text)
        return
    turn.show_media(
        person,
        sent_as=media.sent_as,
        file_id=media.file_id,
        caption=text,
        taps=[[remove]] if is_coach else (),
    )


def command(turn: Turn, coach: Person, text: str, event: Wrote) -> Outcome:
    """``/howto``, ``/howto MOVEMENT``; as an answer to a picture or clip it keeps that."""
    if event.reply_to_file_id is not None:
        return _take(turn, coach, text, event.reply_to_file_id, event.reply_to_sent_as)
    if not text.strip():
        return _list(turn, coach)
    found = movements_named(turn, text)
    if len(found) == 1:
        return _show_to_coach(turn, coach, found[0])
    return _ask_which(turn, coach, text, found, {})


def take(turn: Turn, coach: Person, text: str, event: SentMedia) -> Outcome:
    """Keep a picture or clip whose caption is ``/howto MOVEMENT``."""
    if event.is_forwarded:
        turn.say(coach, words.forwarded(turn.tongue(coach)))
        return Outcome.NOT_UNDERSTOOD
    return _take(turn, coach, text, event.file_id, event.sent_as)


def _take(turn: Turn, coach: Person, text: str, file_id: str | None, sent_as: str) -> Outcome:
    tongue = turn.tongue(coach)
    if file_id is None or sent_as not in SHOWN_AS:
        turn.say(coach, words.not_such_a_kind(tongue))
        return Outcome.NOT_UNDERSTOOD
    found = movements_named(turn, text)
    if len(found) == 1:
        return _keep(turn, coach, found[0], file_id, sent_as)
    return _ask_which(turn, coach, text, found, {"file_id": file_id, "sent_as": sent_as})


def picked(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The movement was chosen among several of such a name."""
    movement = turn.house.library.movements.get(str(arguments["movement"]))
    if movement is None:
        turn.say(coach, words.no_longer_there(turn.tongue(coach)))
        return Outcome.STALE_TAP
    if "file_id" not in arguments:
        return _show_to_coach(turn, coach, movement)
    return _keep(turn, coach, movement, arguments["file_id"], arguments["sent_as"])


def remove(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Take the coach's medium away; the how-to is text again."""
    key = str(arguments["movement"])
    movement = turn.house.library.movements.get(key)
    name = movement.name if movement is not None else key.replace("_", " ")
    was_there = how_to_media.forget(turn.tx, coach_id=coach.id, movement_key=key)
    if was_there:
        _record(turn, coach, REMOVED, key)
    say = words.removed if was_there else words.nothing_kept_for
    turn.say(coach, say(turn.tongue(coach), name=name))
    return Outcome.COMMAND if was_there else Outcome.STALE_TAP


def _list(turn: Turn, coach: Person) -> Outcome:
    library, tongue = turn.house.library.movements, turn.tongue(coach)
    found = [library.get(one.movement_key) for one in how_to_media.all_of(turn.tx, coach.id)]
    there = sorted((one for one in found if one is not None), key=lambda one: one.name)
    taps = [
        [Tap(words.movement_label(tongue, one.name), "howto.which", {"movement": one.key})]
        for one in there
    ]
    turn.say(coach, words.listed(tongue, [one.name for one in there]), taps=taps)
    return Outcome.COMMAND


def _show_to_coach(turn: Turn, coach: Person, movement: Movement) -> Outcome:
    media = how_to_media.media_of(turn.tx, coach_id=coach.id, movement_key=movement.key)
    _send(turn, coach, movement, media, is_coach=True)
    return Outcome.COMMAND


def _ask_which(
    turn: Turn, coach: Person, asked: str, found: tuple[Movement, ...], about: Mapping[str, Any]
) -> Outcome:
    tongue = turn.tongue(coach)
    if not asked.strip():
        turn.say(coach, words.usage(tongue))
        return Outcome.NOT_UNDERSTOOD
    if not found:
        turn.say(coach, words.nothing_named(tongue, asked=asked.strip()))
        return Outcome.NOT_UNDERSTOOD
    taps = [
        [
            Tap(
                words.movement_label(tongue, one.name),
                "howto.which",
                {**about, "movement": one.key},
            )
        ]
        for one in found
    ]
    turn.say(coach, words.which(tongue, asked=asked.strip()), taps=taps)
    return Outcome.ASKED


def _keep(turn: Turn, coach: Person, movement: Movement, file_id: str, sent_as: str) -> Outcome:
    before = how_to_media.media_of(turn.tx, coach_id=coach.id, movement_key=movement.key)
    how_to_media.keep(
        turn.tx,
        coach_id=coach.id,
        movement_key=movement.key,
        file_id=file_id,
        sent_as=sent_as,
        at=turn.now,
    )
    _record(turn, coach, KEPT, movement.key)
    text = words.kept(turn.tongue(coach), name=movement.name, is_new=before is None)
    taps = [
        [Tap(words.remove_label(turn.tongue(coach)), "howto.remove", {"movement": movement.key})]
    ]
    turn.say(coach, text, taps=taps)
    return Outcome.COMMAND


def _record(turn: Turn, coach: Person, what: str, movement_key: str) -> None:
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=what,
        athlete_id=None,
        actor_id=coach.id,
        after={"movement": movement_key},
    )


TAPS = {"howto.which": picked, "howto.remove": remove}
