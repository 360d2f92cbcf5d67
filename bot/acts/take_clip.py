"""A clip or picture of an athlete goes to the coach with its item, and waits for an answer."""

from collections.abc import Mapping
from typing import Any

from bot.acts import show_clip
from bot.acts.clip_item import Shows, item_of
from bot.events import Media, SentMedia, Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import clips as words
from bot.wording.movement_names import name_of
from storage.queries import clips, due, people, training
from storage.records.media import Clip
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord

CLIPS = frozenset({Media.PHOTO, Media.VIDEO})
NAMES_MOST = 8  # [buttons] ch: a session has fewer items


def take(
    turn: Turn, person: Person, athlete: Athlete, event: SentMedia, *, may_ask: bool
) -> Outcome:
    """Queue the clip, show it to the coach at once, and say so; ask for the item if unclear."""
    is_first = event.album_id is None or due.take(
        turn.tx,
        person_id=person.id,
        kind="album",
        subject=event.album_id,
        due_at=turn.now,
        now=turn.now,
    )
    shows = item_of(turn, person, event) if is_first else _as_its_album(turn, person, event)
    clip = clips.add(
        turn.tx,
        athlete_id=person.id,
        at=turn.now,
        chat_id=event.chat_id,
        message_id=event.message_id,
        file_id=event.file_id,
        sent_as=event.sent_as or event.media.value,
        album_id=event.album_id,
        caption=event.caption,
        item_id=shows.item.id if shows.item else None,
        movement_key=shows.item.movement_key if shows.item else None,
    )
    is_asked = is_first and may_ask and shows.item is None and bool(shows.choices)
    coach = people.person(turn.tx, athlete.coach_id)
    show_clip.announce(turn, coach, person, clip, is_asked=is_asked)
    if is_asked:
        text = words.which_item(turn.tongue(person), coach=coach.name)
        turn.say(person, text, taps=_taps(turn, person, clip, shows.choices))
    elif is_first:
        _tell(turn, person, coach, clip)
    return Outcome.PASSED_ON


def _as_its_album(turn: Turn, person: Person, event: SentMedia) -> Shows:
    """Return what the album's earlier parts show."""
    for one in reversed(clips.waiting(turn.tx, [person.id])):
        if one.album_id == event.album_id and one.item_id is not None:
            return Shows(item=training.item(turn.tx, one.item_id)[0])
    return Shows(item=None)


def _tell(turn: Turn, person: Person, coach: Person, clip: Clip) -> None:
    tongue = turn.tongue(person)
    name = show_clip.name_of(turn, person, clip)
    taps = [[Tap(words.another_item_label(tongue), "clip.which", {"clip": clip.id})]]
    turn.say(
        person, words.to_athlete(tongue, coach=coach.name, item=name), taps=taps if name else ()
    )


def _taps(turn: Turn, person: Person, clip: Clip, choices: tuple[ItemRecord, ...]) -> TapRows:
    tongue, library = turn.tongue(person), turn.house.library.movements
    rows = [
        [
            Tap(
                words.item_label(tongue, name_of(tongue, library[item.movement_key])),
                "clip.item",
                {"clip": clip.id, "item": item.id},
            )
        ]
        for item in choices[:NAMES_MOST]
    ]
    other = Tap(words.none_of_these_label(tongue), "clip.item", {"clip": clip.id, "item": 0})
    return [*rows, [other]]


def which(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Offer the session's other items."""
    clip = _own(turn, person, arguments)
    if clip is None or clip.item_id is None:
        turn.say(person, words.clip_gone(turn.tongue(person)))
        return Outcome.STALE_TAP
    _, session_id = training.item(turn.tx, clip.item_id)
    items = tuple(one for one in training.session(turn.tx, session_id).items if one.dose)
    coach = _coach_of(turn, person)
    text = words.which_item(turn.tongue(person), coach=coach.name)
    taps = _taps(turn, person, clip, items)
    if event.message_id is None:
        turn.say(person, text, taps=taps)
    else:
        turn.change(person, event.message_id, text, taps=taps)
    return Outcome.ASKED


def named(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """The athlete says which item it is; every part of an album is of that one."""
    tongue, clip = turn.tongue(person), _own(turn, person, arguments)
    if clip is None:
        turn.say(person, words.clip_gone(tongue))
        return Outcome.STALE_TAP
    name = None
    if arguments["item"]:
        item, _ = training.item(turn.tx, int(arguments["item"]))
        for part in clips.album(turn.tx, clip):
            clips.name_item(turn.tx, part.id, item_id=item.id, movement_key=item.movement_key)
        name = name_of(tongue, turn.house.library.movements[item.movement_key])
    coach = _coach_of(turn, person)
    text = words.to_athlete(tongue, coach=coach.name, item=name)
    turn.answer_tap(person, event.message_id, text)
    return Outcome.ANSWERED


def _own(turn: Turn, person: Person, arguments: Mapping[str, Any]) -> Clip | None:
    clip = clips.clip(turn.tx, int(arguments["clip"]))
    is_own = clip is not None and clip.athlete_id == person.id
    return clip if is_own and clip is not None and clip.answered_at is None else None


def _coach_of(turn: Turn, person: Person) -> Person:
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        raise LookupError("a clip of nobody who trains")
    return people.person(turn.tx, athlete.coach_id)


TAPS = {"clip.which": which, "clip.item": named}
