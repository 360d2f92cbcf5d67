"""Erasing an athlete: what is theirs goes, the coach hears that they left, and nothing else."""

from bot.acts.coach_dues import OWED_TO_COACHES
from bot.turn import Turn
from bot.wording import leaving as words
from storage import erasure
from storage.erasure import OtherRole
from storage.queries import care, due, own_data, people
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

ERASED = "athlete.erased"
WIPE_ASKED = "wipe_asked"
"""The mark that the file is to be written anew, so that nothing erased stays in its free pages."""


def has_open_alert(turn: Turn, person: Person) -> bool:
    """Tell whether somebody must still answer for this athlete: until then nothing is erased."""
    return bool(care.open_alerts(turn.tx, athlete_id=person.id))


def erase(turn: Turn, person: Person, athlete: Athlete, *, asked_by: Person | None) -> None:
    """Erase an athlete in this transaction, and say so to them and to their coach.

    ``asked_by`` is who did it on the athlete's request, None where they did it themselves. The
    last messages carry no contents, and their rows go as soon as they are sent.
    """
    coach = people.person(turn.tx, athlete.coach_id)
    name, tongue, chat_id = person.name, turn.tongue(person), person.chat_id
    is_whole = not (person.is_coach or person.is_owner)
    kept = own_data.counts(turn.tx, person.id)
    stays = None if is_whole else OtherRole(kept_dues=OWED_TO_COACHES)
    erasure.erase(turn.tx, person.id, at=turn.now, stays=stays)
    erasure.note_erasure(turn.tx, person.id, at=turn.now, is_whole=is_whole)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=ERASED,
        athlete_id=None,
        actor_id=asked_by.id if asked_by is not None else None,
        after={"kept_no_longer": kept},
    )
    due.set_mark(turn.tx, WIPE_ASKED, at=turn.now)
    if chat_id is not None:
        by = asked_by.name if asked_by is not None else None
        said = words.erased(tongue, by=by) if is_whole else words.erased_role(tongue)
        _say_last(turn, chat_id, said)
    for told in {one.id: one for one in (coach, asked_by) if one is not None}.values():
        if told.chat_id is not None and told.id != person.id:
            _say_last(turn, told.chat_id, words.left_to_coach(turn.tongue(told), name=name))


def _say_last(turn: Turn, chat_id: int, text: str) -> None:
    turn.say_to_chat(chat_id, text, kind=MessageKind.NOTICE, subject=erasure.FAREWELL)
