"""How a movement is done: by a button on the session, by a name behind ``/how``."""

from collections.abc import Mapping, Sequence
from typing import Any

from bot.acts import howto_media
from bot.acts.checklist import local_today
from bot.acts.find_movement import movements_asked, movements_called
from bot.acts.item_facts import sent_items
from bot.acts.still_open import ANSWERS_TAKEN
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.how_questions import movement_asked
from bot.turn import Tap, Turn
from bot.wording import how_to as words
from bot.wording import plain
from bot.wording.catalogue.spoken import SPOKEN
from bot.wording.tongue import tongue_of
from scheduler.catalogue.values import Movement
from storage.queries import training
from storage.records.people import Person

Arguments = Mapping[str, Any]


def show(turn: Turn, person: Person, movement_key: str) -> Outcome:
    """Explain one movement: under the coach's own picture or clip where there is one."""
    movement = turn.house.library.movements.get(movement_key)
    if movement is None:  # the library was replaced since the button was shown
        turn.say(person, words.no_longer_there(turn.tongue(person)))
        return Outcome.STALE_TAP
    howto_media.send(turn, person, movement, howto_media.media_for(turn, person, movement_key))
    return Outcome.ANSWERED


def which(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """The button on a session: its movements as buttons, as they are now."""
    session = training.session(turn.tx, int(arguments["session"]))
    if session.athlete_id != person.id:
        turn.say(person, plain.old_button(turn.tongue(person)))
        return Outcome.STALE_TAP
    keys = dict.fromkeys(item.movement_key for item in sent_items(session))
    _offer(turn, person, [turn.house.library.movements[key] for key in keys])
    return Outcome.ANSWERED


def movement(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """A movement was chosen."""
    return show(turn, person, str(arguments["movement"]))


def command(turn: Turn, person: Person, rest: str, _event: Wrote) -> Outcome:
    """``/how`` for the latest session's movements, ``/how hang`` for any of that name."""
    library = turn.house.library.movements
    if not rest:
        latest = _latest(turn, person)
        if not latest:
            turn.say(person, words.nothing_yet(turn.tongue(person)))
        else:
            _offer(turn, person, latest)
        return Outcome.COMMAND
    found = movements_called(rest, movements=library.values(), tongue=turn.tongue(person))
    if len(found) == 1:
        show(turn, person, found[0].key)
        return Outcome.COMMAND
    if not found:
        turn.say(person, words.unknown(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    _offer(turn, person, found)
    return Outcome.COMMAND


def hear(turn: Turn, person: Person, event: Wrote) -> Outcome | None:
    """Answer "how do I do the …?" where it names a movement; None where it is anything else."""
    name = movement_asked(event.text)
    if name is None or event.is_edit:
        return None
    own = turn.tongue(person)
    found = movements_asked(
        name,
        movements=tuple(turn.house.library.movements.values()),
        tongues=(own, *(tongue_of(one) for one in SPOKEN if one != own.language)),
    )
    if not found:
        return None
    if len(found) == 1:
        return show(turn, person, found[0].key)
    _offer(turn, person, found)
    return Outcome.ANSWERED


def _latest(turn: Turn, person: Person) -> list[Movement]:
    """Return the movements of the session that was sent last."""
    today = local_today(turn, person)
    sessions = training.sessions_between(
        turn.tx, person.id, first=today - ANSWERS_TAKEN, last=today
    )
    for session in reversed(sessions):
        keys = dict.fromkeys(item.movement_key for item in sent_items(session))
        if keys:
            return [turn.house.library.movements[key] for key in keys]
    return []


def _offer(turn: Turn, person: Person, movements: Sequence[Movement]) -> None:
    tongue = turn.tongue(person)
    taps = [
        [Tap(words.name_label(tongue, one), "how_to.show", {"movement": one.key})]
        for one in movements
    ]
    turn.say(person, words.which(tongue), taps=taps)


TAPS = {"how_to": which, "how_to.show": movement}
