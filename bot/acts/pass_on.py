"""What only a person can answer goes to the coach, and stays on the roster until answered."""

from bot.acts import small_talk
from bot.events import Media, SentMedia, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import other_languages, plain, practice, relayed
from storage.queries import care, due, people
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

UNREADABLE = {Media.VOICE, Media.VIDEO_NOTE, Media.STICKER, Media.OTHER}


def words(
    turn: Turn,
    person: Person,
    event: Wrote,
    *,
    language: str | None = None,
    is_quiet: bool = False,
) -> Outcome:
    """Pass a text on, with a button to answer it; ``language`` where it is one we do not speak.
    ``is_quiet``: the caller says that it was passed on.

    Small talk is acknowledged and waits on nobody's roster; where it may answer what the coach
    wrote, the coach reads it all the same.
    """
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.NOT_UNDERSTOOD
    if athlete.is_practice:
        turn.say(person, practice.would_be_passed_on(turn.tongue(person)))
        return Outcome.PASSED_ON
    coach = people.person(turn.tx, athlete.coach_id)
    small = small_talk.kind_of(turn, person, athlete, event, coach=coach)
    if small is not None:
        if small_talk.may_answer(turn, person):
            said = relayed.words(turn.tongue(coach), person.name, event.text)
            tell_coach(turn, coach, person, said)
        is_open = small_talk.is_session_open(turn, person)
        turn.say(person, plain.courtesy(turn.tongue(person), small, is_open=is_open))
        return Outcome.ANSWERED
    care.pass_on(turn.tx, athlete_id=person.id, words=event.text, at=turn.now)
    tell_coach(turn, coach, person, relayed.words(turn.tongue(coach), person.name, event.text))
    if language is not None:
        number = coach.emergency_number
        said = other_languages.passed_on(language, coach=coach.name, number=number)
        turn.say(person, said, kind=MessageKind.SAFETY)
        return Outcome.PASSED_ON
    if is_quiet:
        return Outcome.PASSED_ON
    turn.say(person, plain.words_passed_on(turn.tongue(person), coach=coach.name))
    return Outcome.PASSED_ON


def media(turn: Turn, person: Person, athlete: Athlete, event: SentMedia) -> Outcome:
    """Relay a picture, clip, voice note or anything else by reference, once an album."""
    if athlete.is_practice:
        turn.say(person, practice.would_be_passed_on(turn.tongue(person)))
        return Outcome.PASSED_ON
    coach = people.person(turn.tx, athlete.coach_id)
    tell_coach(
        turn,
        coach,
        person,
        relayed.media(turn.tongue(coach), person.name, event.media.value, event.caption),
    )
    turn.relay(
        coach,
        from_chat_id=event.chat_id,
        message_id=event.message_id,
        subject=f"athlete:{person.id}",
    )
    if event.album_id is not None and _is_answered_album(turn, person, event.album_id):
        return Outcome.PASSED_ON
    kind = relayed.kind_of(turn.tongue(coach), event.media.value)
    care.pass_on(turn.tx, athlete_id=person.id, words=f"[{kind}]", at=turn.now)
    tongue = turn.tongue(person)
    say = plain.voice_passed_on if event.media in UNREADABLE else plain.media_passed_on
    turn.say(person, say(tongue, coach=coach.name))
    return Outcome.PASSED_ON


def tell_coach(turn: Turn, coach: Person, athlete: Person, text: str) -> None:
    """Write to the coach about one athlete: a reply to it goes to that athlete."""
    turn.say(
        coach,
        text,
        kind=MessageKind.NOTICE,
        subject=f"athlete:{athlete.id}",
        taps=[[Tap(turn.tongue(coach).say("Answer"), "coach.write", {"athlete": athlete.id})]],
    )


def _is_answered_album(turn: Turn, person: Person, album_id: str) -> bool:
    """Answer an album once: its parts arrive as messages of their own."""
    return not due.take(
        turn.tx,
        person_id=person.id,
        kind="album",
        subject=album_id,
        due_at=turn.now,
        now=turn.now,
    )
