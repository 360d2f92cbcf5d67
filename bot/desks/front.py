"""The front desk: whose chat is this, and which desk takes the event."""

from collections.abc import Mapping
from difflib import get_close_matches

from bot.acts import block_chat, in_force, join
from bot.desks import athlete as athlete_desk
from bot.desks import coach as coach_desk
from bot.desks import coach_commands, coach_taps
from bot.desks import owner as owner_desk
from bot.desks.entry import Command, TapEntry, has_role
from bot.events import (
    BlockedUs,
    ChatMoved,
    Event,
    FileArrived,
    NotForUs,
    SentMedia,
    Tapped,
    UnblockedUs,
    Wrote,
)
from bot.outcomes import Outcome
from bot.reading.plain_letters import plain_letters
from bot.turn import Turn
from bot.wording import plain
from bot.wording.tongue import Template
from storage import buttons
from storage.queries import people
from storage.records.people import Athlete, Person, Role
from storage.records.wire import MessageKind

NEAR_CUTOFF = 0.7  # [ratio] ch: one or two slips in a word
TAPS: dict[str, TapEntry] = {**athlete_desk.TAPS, **coach_taps.TAPS, **owner_desk.TAPS}


def handle(turn: Turn, event: Event) -> Outcome:
    """Give one event to whoever it concerns; every event ends in one outcome."""
    about_chat = _of_the_chat(turn, event)
    if about_chat is not None:
        return about_chat
    person = people.person_in_chat(turn.tx, event.chat_id)
    outcome = _of_somebody(turn, event, person)
    if person is not None:
        _follow_language(turn, person)
    return outcome


def _of_somebody(turn: Turn, event: Event, person: Person | None) -> Outcome:
    match event:
        case Wrote() if (secret := join.secret_in(event.text)) and not event.is_forwarded:
            return join.use_link(turn, event, secret, person, menu_of=menu_of)
        case FileArrived():
            return _arrived(turn, person, event)
        case _ if person is None:
            return _stranger(turn, event)
        case Tapped():
            return _tapped(turn, person, event)
        case Wrote():
            return _wrote(turn, person, event)
        case SentMedia():
            return _media(turn, person, event)
        case _:
            return Outcome.NOT_FOR_US


def _of_the_chat(turn: Turn, event: Event) -> Outcome | None:
    """Handle what says something of the chat and nothing in it; None for everything else."""
    match event:
        case NotForUs():
            return Outcome.NOT_FOR_US
        case BlockedUs():
            return block_chat.blocked(turn, event.chat_id)
        case UnblockedUs():
            return block_chat.unblocked(turn, event.chat_id)
        case ChatMoved():
            return block_chat.moved(turn, event.chat_id, event.new_chat_id)
    return None


def _follow_language(turn: Turn, before: Person) -> None:
    """Show the menu in a language that was just chosen."""
    now = people.person(turn.tx, before.id)
    if now.language != before.language:
        turn.set_menu(now, menu_of(turn, now))


def menu_of(turn: Turn, person: Person) -> list[tuple[str, Template]]:
    """Return what a person's menu shows; a menu is no access control."""
    commands = commands_of(person, people.athlete(turn.tx, person.id))
    return [(one.name, one.about) for one in commands.values() if one.is_in_menu]


def commands_of(person: Person, athlete: Athlete | None) -> dict[str, Command]:
    """Return the commands that a person may give, by name."""
    found = dict(athlete_desk.COMMANDS) if athlete is not None else {}
    if person.is_coach:
        found |= coach_commands.COMMANDS
    if person.is_owner:
        found |= owner_desk.COMMANDS
    return found


def _wrote(turn: Turn, person: Person, event: Wrote) -> Outcome:
    athlete = people.athlete(turn.tx, person.id)
    if event.text.startswith("/") and not event.is_edit:
        return _command(turn, person, athlete, event)
    if person.is_coach and coach_desk.is_for_coach(turn, person, event, is_athlete=bool(athlete)):
        return coach_desk.hear(in_force.turn_for(turn, person.id), person, event)
    if athlete is not None:
        own = in_force.turn_for(turn, athlete.coach_id)
        return athlete_desk.hear(own, person, athlete, event)
    return coach_desk.hear(turn, person, event)


def _command(turn: Turn, person: Person, athlete: Athlete | None, event: Wrote) -> Outcome:
    word, _, rest = event.text[1:].partition(" ")
    if athlete is not None:
        turn = in_force.turn_for(turn, athlete.coach_id)
    known = commands_of(person, athlete)
    name = _own_name(word, known)
    if name in known and name != word.split("@", 1)[0].lower():
        event = event.model_copy(update={"text": f"/{name} {rest}".strip()})
    command = known.get(name)
    if command is None or event.is_forwarded:
        # A red flag hidden behind a slash is still a red flag.
        if athlete is not None and athlete_desk.is_safety_matter(event):
            return athlete_desk.hear(turn, person, athlete, event)
        near = None if event.is_forwarded else _near(name, known)
        turn.say(person, plain.unknown_command(turn.tongue(person), near=near))
        return Outcome.NOT_UNDERSTOOD
    flags = None
    if athlete is not None and name in athlete_desk.COMMANDS:
        # So is one behind a command that we know: "/pain my chest is tight".
        flags = athlete_desk.listen_first(turn, person, athlete, event)
        if flags.candidates:
            return Outcome.SAFETY
    if person.is_coach and name in coach_commands.COMMANDS:
        turn = in_force.turn_for(turn, person.id)
    outcome = command.act(turn, person, rest.strip(), event)
    if flags is not None and command is athlete_desk.COMMANDS[name]:
        athlete_desk.hear_behind(turn, person, event, flags)
    return outcome


def _own_name(word: str, known: Mapping[str, Command]) -> str:
    """Return a command's own name, where it was called by another or with accents."""
    name = word.split("@", 1)[0]
    if name.lower() in known:
        return name.lower()
    plainly = plain_letters(name)
    named = {other: one.name for one in known.values() for other in one.also}
    return named.get(plainly, plainly if plainly in known else name.lower())


def _near(name: str, known: Mapping[str, Command]) -> str | None:
    """Return the name that a slip of the thumb was meant for: own or other, as it was begun."""
    names = [other for one in known.values() for other in (one.name, *one.also)]
    found = get_close_matches(plain_letters(name), names, n=1, cutoff=NEAR_CUTOFF)
    return found[0] if found else None


def _tapped(turn: Turn, person: Person, event: Tapped) -> Outcome:
    button = buttons.button(turn.tx, token=event.token, chat_id=event.chat_id)
    entry = TAPS.get(button.act) if button and button.person_id == person.id else None
    athlete = people.athlete(turn.tx, person.id)
    is_athlete = athlete is not None
    if button is None or entry is None or not has_role(person, entry.role, is_athlete=is_athlete):
        turn.say(person, plain.old_button(turn.tongue(person)))
        return Outcome.STALE_TAP
    if entry.is_once and button.used_at is not None:
        turn.say(person, plain.used_button(turn.tongue(person)))
        return Outcome.STALE_TAP
    buttons.mark_used(turn.tx, button.token, at=turn.now)
    coach_id = athlete.coach_id if athlete and entry.role is Role.ATHLETE else person.id
    return entry.act(in_force.turn_for(turn, coach_id), person, button.arguments, event)


def _media(turn: Turn, person: Person, event: SentMedia) -> Outcome:
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return coach_desk.see(in_force.turn_for(turn, person.id), person, event)
    if person.is_coach and coach_desk.is_media_for_coach(turn, person, event, is_athlete=True):
        return coach_desk.see(in_force.turn_for(turn, person.id), person, event)
    turn = in_force.turn_for(turn, athlete.coach_id)
    return athlete_desk.see(turn, person, athlete, event)


def _arrived(turn: Turn, person: Person | None, event: FileArrived) -> Outcome:
    if person is None:
        return Outcome.STRANGER  # who has left while the file was on its way
    return coach_desk.take(in_force.turn_for(turn, person.id), person, event)


def _stranger(turn: Turn, event: Event) -> Outcome:
    text = plain.stranger(turn.tongue_with(event))
    turn.say_to_chat(event.chat_id, text, kind=MessageKind.NOTICE)
    return Outcome.STRANGER
