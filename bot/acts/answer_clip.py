"""The coach's queue of clips: the oldest first, answered by a stock cue or in own words."""

from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Any

from bot.acts import ask_for_clip, coach_question, find_athlete, show_clip
from bot.acts.about_athlete import about_tapped
from bot.acts.find_athlete import Named, athletes_for
from bot.events import SentMedia, Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import clips as words
from bot.wording import coach_messages, cues
from storage import outbox
from storage.queries import care, clips, people
from storage.records.media import Clip
from storage.records.people import Person
from storage.records.wire import MessageKind

WORDS = "clip.words"
ANSWERED = "clip.answered"
TEXT_UNITS = 3500  # [UTF-16 units] botapi: 4096 with the coach's name and the item above


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/clips``, ``/clips NAME``, ``/clips ask on NAME``."""
    asked = ask_for_clip.asked_in(text)
    if asked is not None:
        return ask_for_clip.switch(turn, coach, asked)
    if not text.strip():
        return show_oldest(turn, coach)
    found = find_athlete.named(
        turn, coach, text, act="clip.of", example="/clips robin", has_rest=False
    )
    return found if isinstance(found, Outcome) else show_oldest(turn, coach, of=found.person)


@about_tapped
def picked(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The athlete was chosen among several of that name."""
    return show_oldest(turn, coach, of=found.person)


def next_one(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Leave one waiting and show the next."""
    return show_oldest(turn, coach, after=int(arguments["behind"]))


def show_oldest(turn: Turn, coach: Person, *, of: Person | None = None, after: int = 0) -> Outcome:
    """Show the oldest clip that waits, with every part of its album, or the next after one."""
    queue = queue_of(turn, coach, of=of)
    if not queue:
        turn.say(coach, words.none_waiting(turn.tongue(coach)))
        return Outcome.COMMAND
    clip = next((one for one in queue if one.id > after), queue[0])
    tongue, athlete = turn.tongue(coach), people.person(turn.tx, clip.athlete_id)
    text = words.in_queue(
        tongue,
        text=show_clip.text_of(turn, coach, athlete, clip),
        waits=turn.now - clip.at,
        left=len(queue),
    )
    taps = show_clip.taps_for(turn, coach, clip)
    if len(queue) > 1:
        taps[-1].append(Tap(words.next_label(tongue), "clip.next", {"behind": clip.id}))
    for part in clips.album(turn.tx, clip):
        if part.id != clip.id:
            show_clip.show(turn, coach, part, "", taps=())
    show_clip.show(turn, coach, clip, text, taps=taps)
    return Outcome.COMMAND


def queue_of(turn: Turn, coach: Person, *, of: Person | None = None) -> tuple[Clip, ...]:
    """Return what waits for this coach, the oldest first, an album once."""
    ids = [of.id] if of is not None else [one.id for one, _ in athletes_for(turn, coach)]
    first: dict[object, Clip] = {}
    for clip in clips.waiting(turn.tx, ids):
        first.setdefault((clip.athlete_id, clip.album_id) if clip.album_id else clip.id, clip)
    return tuple(first.values())


def waiting_by_athlete(turn: Turn, athlete_ids: Sequence[int]) -> dict[int, int]:
    """Count what waits by athlete, an album once; for the roster and the digest."""
    found: dict[int, set[object]] = {}
    for clip in clips.waiting(turn.tx, athlete_ids):
        found.setdefault(clip.athlete_id, set()).add(clip.album_id or clip.id)
    return {athlete_id: len(parts) for athlete_id, parts in found.items()}


def cue(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Answer with a stock cue, in the athlete's own language."""
    found = _mine(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    clip, named = found
    if clip.answered_at is not None:
        text = words.answered_before(turn.tongue(coach), name=named.person.name)
        turn.say(coach, text, subject=show_clip.subject_of(clip))
        return Outcome.STALE_TAP
    movement, key = show_clip.movement_of(turn, clip), str(arguments["cue"])
    if key not in cues.cues_of(movement):
        key = cues.GOOD if movement is None else cues.FAULT
    text = cues.cue(turn.tongue(named.person), key, movement)
    return send(turn, coach, clip, named, text, how=key)


def ask_words(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The coach wants own words: the next text goes under the clip."""
    found = _mine(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    clip, named = found
    tongue = turn.tongue(coach)
    coach_question.ask(turn, coach, WORDS, {"athlete": named.person.id, "clip": clip.id})
    turn.say(
        coach,
        words.write_now(tongue, name=named.person.name, item=show_clip.name_of(turn, coach, clip)),
        taps=[[Tap(coach_messages.never_mind_label(tongue), "coach.never_mind")]],
        subject=show_clip.subject_of(clip),
    )
    return Outcome.ASKED


def hear_text(
    turn: Turn, coach: Person, about: Mapping[str, Any], text: str, *, waited: timedelta
) -> Outcome:
    """The text that was asked for came; long after, ask whether it is still meant so."""
    coach_question.close(turn, coach)
    found = _mine(turn, coach, about)
    if isinstance(found, Outcome):
        return found
    clip, named = found
    if waited <= coach_question.FRESH:
        return send(turn, coach, clip, named, text)
    tongue = turn.tongue(coach)
    arguments = {"clip": clip.id, "text": text}
    turn.say(
        coach,
        words.still_for_clip(tongue, name=named.person.name, text=text),
        taps=[
            [
                Tap(
                    words.yes_send_label(tongue, name=named.person.name),
                    "clip.send",
                    arguments,
                ),
                Tap(coach_messages.never_mind_label(tongue), "coach.never_mind"),
            ]
        ],
    )
    return Outcome.ASKED


def confirmed(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """A late text is meant so."""
    return hear_text(turn, coach, arguments, str(arguments["text"]), waited=timedelta(0))


def replied(turn: Turn, chat_id: int, reply_to: int | None) -> Clip | None:
    """Return the clip whose message the coach replied to."""
    if reply_to is None:
        return None
    found = outbox.sent_message(turn.tx, chat_id=chat_id, message_id=reply_to)
    clip_id = show_clip.clip_id(found[1]) if found else None
    return clips.clip(turn.tx, clip_id) if clip_id is not None else None


def hear_media(turn: Turn, coach: Person, clip_id: int, event: SentMedia) -> Outcome:
    """The coach answers with a picture, clip or voice note: it goes to the athlete as it is."""
    coach_question.close(turn, coach)
    found = _mine(turn, coach, {"clip": clip_id})
    if isinstance(found, Outcome):
        return found
    clip, named = found
    if not _can_reach(turn, coach, named):
        return Outcome.COMMAND
    text = words.under_clip(
        turn.tongue(named.person),
        coach=coach.name,
        item=show_clip.name_of(turn, named.person, clip),
        text="",
    )
    turn.say(named.person, text.strip(), kind=MessageKind.NOTICE, reply_to=clip.message_id)
    turn.relay(
        named.person,
        from_chat_id=event.chat_id,
        message_id=event.message_id,
        subject=f"coach:{coach.id}",
    )
    _mark(turn, coach, clip, named, how="media")
    turn.say(coach, words.media_answered(turn.tongue(coach), name=named.person.name))
    return Outcome.PASSED_ON


def send(
    turn: Turn, coach: Person, clip: Clip, named: Named, text: str, *, how: str = "words"
) -> Outcome:
    """Send an answer under the athlete's clip, clear it from the queue, and confirm."""
    tongue, person = turn.tongue(coach), named.person
    if not _can_reach(turn, coach, named):
        return Outcome.COMMAND
    under = words.under_clip(
        turn.tongue(person),
        coach=coach.name,
        item=show_clip.name_of(turn, named.person, clip),
        text=text[:TEXT_UNITS],
    )
    turn.say(person, under, kind=MessageKind.NOTICE, reply_to=clip.message_id)
    _mark(turn, coach, clip, named, how=how)
    left = len(queue_of(turn, coach))
    taps = [[Tap(words.next_label(tongue), "clip.next", {"behind": 0})]] if left else ()
    turn.say(
        coach,
        words.answered(tongue, name=person.name, text=text, left=left),
        taps=taps,
        subject=find_athlete.subject_of(person),
    )
    return Outcome.PASSED_ON


def _can_reach(turn: Turn, coach: Person, named: Named) -> bool:
    if named.person.chat_id is not None and not named.person.is_blocked:
        return True
    text = coach_messages.blocked(turn.tongue(coach), name=named.person.name)
    turn.say(coach, text)
    return False


def _mark(turn: Turn, coach: Person, clip: Clip, named: Named, *, how: str) -> None:
    for part in clips.album(turn.tx, clip):
        clips.mark_answered(turn.tx, part.id, by_id=coach.id, at=turn.now)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=ANSWERED,
        athlete_id=named.person.id,
        actor_id=coach.id,
        after={"clip": clip.id, "movement": clip.movement_key, "how": how},
    )


def _mine(turn: Turn, coach: Person, arguments: Mapping[str, Any]) -> tuple[Clip, Named] | Outcome:
    """Return the clip and whose it is; a coach who lost the athlete is told so."""
    clip = clips.clip(turn.tx, int(arguments["clip"]))
    if clip is None:
        turn.say(coach, words.none_waiting(turn.tongue(coach)))
        return Outcome.STALE_TAP
    found = find_athlete.tapped(turn, coach, {"athlete": clip.athlete_id})
    return found if isinstance(found, Outcome) else (clip, found)


TAPS = {
    "clip.of": picked,
    "clip.next": next_one,
    "clip.cue": cue,
    "clip.words": ask_words,
    "clip.send": confirmed,
    **ask_for_clip.TAPS,
}
