"""The coach's desk: what a coach writes and sends, and which act it leads to."""

from datetime import timedelta

from bot.acts import (
    answer_clip,
    ask_why,
    clear_pain,
    howto_media,
    red_flag,
    replace_file,
    review,
    set_group,
    take_file,
    tell_athlete,
    tell_media,
)
from bot.acts.find_athlete import subject_id
from bot.desks import athlete as athlete_desk
from bot.desks.coach_asked import question_in
from bot.desks.coach_commands import COMMANDS
from bot.desks.coach_taps import ACTS
from bot.events import FileArrived, Media, SentMedia, Wrote
from bot.outcomes import Outcome
from bot.reading.captions import command_in
from bot.turn import Turn
from bot.wording import coach_help as help_words
from bot.wording import coach_messages, plain
from storage import outbox
from storage.records.people import Person
from storage.records.wire import OpenQuestion


def is_for_coach(turn: Turn, person: Person, event: Wrote, *, is_athlete: bool) -> bool:
    """Tell whether a text is meant for the coach's desk, of somebody who may be both.

    Replying to a message about another athlete always is. An answer to a question of this desk
    is too, unless it needs the red-flag reader: a coach's own danger comes first.
    """
    if not is_athlete:
        return True
    replied = _replied_about(turn, event)
    if replied is not None and replied != person.id:
        return True
    if event.is_edit or question_in(turn, event) is None:
        return False
    return not athlete_desk.is_safety_matter(event)


def hear(turn: Turn, person: Person, event: Wrote) -> Outcome:
    """Hear a coach's text: a reply goes to its athlete, else it answers what was asked."""
    if not person.is_coach:
        turn.say(person, help_words.nothing_for_owner(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    refused = _refused(turn, person, event)
    if refused is not None:
        return refused
    clip = answer_clip.replied(turn, event.chat_id, event.reply_to_message_id)
    if clip is not None:
        about = {"clip": clip.id}
        return answer_clip.hear_text(turn, person, about, event.text, waited=timedelta(0))
    replied, question = _replied_about(turn, event), question_in(turn, event)
    if question is not None and replied in {None, question.subject.get("athlete")}:
        return _answer(turn, person, question, event)
    if replied is not None:
        about = {"athlete": replied}
        return tell_athlete.hear_text(turn, person, about, event.text, waited=timedelta(0))
    turn.say(person, coach_messages.no_addressee(turn.tongue(person)))
    return Outcome.NOT_UNDERSTOOD


def is_media_for_coach(turn: Turn, person: Person, event: SentMedia, *, is_athlete: bool) -> bool:
    """Tell whether something that is not text is meant for this desk, as :func:`is_for_coach`."""
    if not is_athlete:
        return True
    replied = _replied_about(turn, event)
    if replied is not None and replied != person.id:
        return True
    is_meant = (
        _is_how_to(event)
        or answer_clip.replied(turn, event.chat_id, event.reply_to_message_id) is not None
        or _asked_for_media(turn, event) is not None
        or take_file.is_for_coach(turn, event)
    )
    return is_meant and not red_flag.is_raised(event.caption)


def see(turn: Turn, person: Person, event: SentMedia) -> Outcome:
    """See what is not text: a how-to, a reply to its athlete, a file to the act that reads it."""
    if not person.is_coach:
        turn.say(person, plain.media_without_reader(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    if _is_how_to(event):
        _, _, rest = event.caption.strip().partition(" ")
        return howto_media.take(turn, person, rest, event)
    clip = answer_clip.replied(turn, event.chat_id, event.reply_to_message_id)
    if clip is not None:
        return answer_clip.hear_media(turn, person, clip.id, event)
    replied, question = _replied_about(turn, event), _asked_for_media(turn, event)
    if replied is not None:
        return tell_media.send(turn, person, replied, event)
    if take_file.names_command(event):
        return take_file.ask(turn, person, event)
    if question is not None and question.kind == answer_clip.WORDS:
        return answer_clip.hear_media(turn, person, int(question.subject["clip"]), event)
    if question is not None:
        return tell_media.send(turn, person, int(question.subject["athlete"]), event)
    if event.media is Media.DOCUMENT:
        return take_file.ask(turn, person, event)
    return tell_media.no_addressee(turn, person)


def take(turn: Turn, person: Person, event: FileArrived) -> Outcome:
    """Take a file that was fetched for this person, who may have lost the role meanwhile."""
    if not person.is_coach:
        return Outcome.STALE_TAP
    return take_file.arrived(turn, person, event)


def _asked_for_media(turn: Turn, event: SentMedia) -> OpenQuestion | None:
    """Return the open question that anything may answer: the coach's words to an athlete."""
    question = question_in(turn, event)
    is_asked = question is not None and question.kind in {tell_athlete.WRITE, answer_clip.WORDS}
    return question if is_asked else None


def _is_how_to(event: SentMedia) -> bool:
    return command_in(event.caption, among=COMMANDS) == howto_media.COMMAND


def _answer(turn: Turn, person: Person, question: OpenQuestion, event: Wrote) -> Outcome:
    about, waited = question.subject, turn.now - question.asked_at
    match question.kind:
        case clear_pain.DAY:
            return clear_pain.hear_day(turn, person, about, event.text)
        case ask_why.ASK:
            return ask_why.answered(turn, person, about, event.text, waited=waited, taps=ACTS)
        case review.ASK:
            return review.hear_text(turn, person, about, event.text, waited=waited)
        case set_group.ASK:
            return set_group.hear_name(turn, person, about, event.text, waited=waited)
        case replace_file.WHY:
            return replace_file.hear_why(turn, person, about, event.text, waited=waited)
        case answer_clip.WORDS:
            return answer_clip.hear_text(turn, person, about, event.text, waited=waited)
        case _:
            return tell_athlete.hear_text(turn, person, about, event.text, waited=waited)


def _refused(turn: Turn, person: Person, event: Wrote) -> Outcome | None:
    tongue = turn.tongue(person)
    if event.is_edit:
        turn.say(person, coach_messages.edits_do_not_reach(tongue))
    elif event.is_forwarded:
        turn.say(person, coach_messages.forwarded(tongue))
    else:
        return None
    return Outcome.NOT_UNDERSTOOD


def _replied_about(turn: Turn, event: Wrote | SentMedia) -> int | None:
    if event.reply_to_message_id is None:
        return None
    found = outbox.sent_message(
        turn.tx, chat_id=event.chat_id, message_id=event.reply_to_message_id
    )
    if found is None:
        return None
    clip = answer_clip.replied(turn, event.chat_id, event.reply_to_message_id)
    return clip.athlete_id if clip is not None else subject_id(found[1])
