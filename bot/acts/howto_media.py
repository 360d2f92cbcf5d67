"""A coach's own picture or clip of a movement: kept, shown, taken away; the how-to goes with it."""

from collections.abc import Mapping
from typing import Any

from bot.acts.find_movement import movements_called
from bot.events import SentMedia, Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import how_to as words
from bot.wording import movement_names
from scheduler.catalogue.values import Movement
from storage.queries import care, how_to_media, people
from storage.records.media import HowToMedia
from storage.records.people import Person

KEPT, REMOVED = "how_to.kept", "how_to.removed"
SHOWN_AS = frozenset({"photo", "video", "animation"})
COMMAND = "howto"


def media_for(turn: Turn, person: Person, movement_key: str) -> HowToMedia | None:
    """Return what an athlete's coach keeps for a movement."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return None
    return how_to_media.media_of(turn.tx, coach_id=athlete.coach_id, movement_key=movement_key)


def send(
    turn: Turn,
    person: Person,
    movement: Movement,
    media: HowToMedia | None,
    *,
    taps: TapRows = (),
) -> None:
    """Send the how-to under a picture or clip, else as text; ``taps`` go with the medium."""
    text = words.how_to(turn.tongue(person), movement)
    if media is None:
        turn.say(person, text)
        return
    turn.show_media(person, sent_as=media.sent_as, file_id=media.file_id, caption=text, taps=taps)


def command(turn: Turn, coach: Person, text: str, event: Wrote) -> Outcome:
    """``/howto``, ``/howto MOVEMENT``; as an answer to a picture or clip it keeps that."""
    if event.reply_to_file_id is not None:
        return _take(turn, coach, text, event.reply_to_file_id, event.reply_to_sent_as)
    if not text.strip():
        return _list(turn, coach)
    found = _found(turn, coach, text)
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
    found = _found(turn, coach, text)
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
    tongue = turn.tongue(coach)
    name = (
        movement_names.name_of(tongue, movement) if movement is not None else key.replace("_", " ")
    )
    was_there = how_to_media.forget(turn.tx, coach_id=coach.id, movement_key=key)
    if was_there:
        _record(turn, coach, REMOVED, key)
    say = words.removed if was_there else words.nothing_kept_for
    turn.say(coach, say(tongue, name=name))
    return Outcome.COMMAND if was_there else Outcome.STALE_TAP


def _list(turn: Turn, coach: Person) -> Outcome:
    library, tongue = turn.house.library.movements, turn.tongue(coach)
    found = [library.get(one.movement_key) for one in how_to_media.all_of(turn.tx, coach.id)]
    there = sorted(
        (one for one in found if one is not None),
        key=lambda one: movement_names.name_of(tongue, one),
    )
    taps = [
        [Tap(words.name_label(tongue, one), "howto.which", {"movement": one.key})] for one in there
    ]
    names = [movement_names.name_of(tongue, one) for one in there]
    turn.say(coach, words.listed(tongue, names), taps=taps)
    return Outcome.COMMAND


def _show_to_coach(turn: Turn, coach: Person, movement: Movement) -> Outcome:
    media = how_to_media.media_of(turn.tx, coach_id=coach.id, movement_key=movement.key)
    send(turn, coach, movement, media, taps=_remove_taps(turn, coach, movement))
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
        [Tap(words.name_label(tongue, one), "howto.which", {**about, "movement": one.key})]
        for one in found
    ]
    turn.say(coach, words.which_of(tongue, asked=asked.strip()), taps=taps)
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
    tongue = turn.tongue(coach)
    name = movement_names.name_of(tongue, movement)
    text = words.kept(tongue, name=name, is_new=before is None)
    turn.say(coach, text, taps=_remove_taps(turn, coach, movement))
    return Outcome.COMMAND


def _found(turn: Turn, coach: Person, text: str) -> tuple[Movement, ...]:
    movements = turn.house.library.movements.values()
    return movements_called(text, movements=movements, tongue=turn.tongue(coach))


def _remove_taps(turn: Turn, coach: Person, movement: Movement) -> TapRows:
    tongue = turn.tongue(coach)
    return [[Tap(words.remove_label(tongue), "howto.remove", {"movement": movement.key})]]


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
