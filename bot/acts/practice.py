"""A coach's practice athlete: the coach's own second self, begun and erased by command."""

from collections.abc import Collection
from datetime import time

from bot.acts import draw_week, practice_history
from bot.acts.checklist import local_today
from bot.acts.coach_dues import OWED_TO_COACHES
from bot.acts.intake_finish import evening_for
from bot.acts.join import MenuOf
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import practice as words
from scheduler.calendar.wall_time import local_time_of, monday_of
from scheduler.calendar.zones import zone_named
from storage import erasure
from storage.erasure import OtherRole
from storage.queries import care, people
from storage.records.people import Athlete, AthleteState, Person

END = "coach.practice_end"
BEGUN, ENDED = "practice.begun", "practice.ended"
END_WORDS = frozenset({"end", "stop", "off", "fin", "terminar"})


def command(
    turn: Turn, coach: Person, text: str, *, menu_of: MenuOf, acts: Collection[str]
) -> Outcome:
    """``/practice`` or ``/practice end``; ``acts`` are the buttons of an athlete."""
    tongue, word = turn.tongue(coach), text.strip().casefold()
    own = people.athlete(turn.tx, coach.id)
    if word and word not in END_WORDS:
        turn.say(coach, words.usage(tongue))
        return Outcome.NOT_UNDERSTOOD
    if word:
        return end(turn, coach, menu_of=menu_of, acts=acts)
    if own is None:
        return _begin(turn, coach, menu_of=menu_of)
    if own.is_practice:
        turn.say(coach, words.running(tongue), taps=[[Tap(words.end_label(tongue), END)]])
        return Outcome.COMMAND
    turn.say(coach, words.trains_already(tongue))
    return Outcome.COMMAND


def end(turn: Turn, coach: Person, *, menu_of: MenuOf, acts: Collection[str]) -> Outcome:
    """End it and erase everything of it."""
    own = people.athlete(turn.tx, coach.id)
    if own is None or not own.is_practice:
        turn.say(coach, words.none(turn.tongue(coach)))
        return Outcome.STALE_TAP
    erase(turn, coach, own, acts=acts)
    turn.set_menu(coach, menu_of(turn, coach))
    turn.say(coach, words.ended(turn.tongue(coach)))
    return Outcome.COMMAND


def erase(turn: Turn, coach: Person, own: Athlete, *, acts: Collection[str]) -> None:
    """Erase a practice athlete; that there was one stays on record, and nothing of what it did."""
    stays = OtherRole(
        kept_dues=OWED_TO_COACHES, lost_acts=frozenset(acts), kept_before=own.agreed_at or turn.now
    )
    # No erasure is noted: nobody asked for one, and what coaches wrote meanwhile stays.
    erasure.erase(turn.tx, coach.id, at=turn.now, stays=stays)
    turn.pictures.pop(coach.id, None)
    care.write_audit(turn.tx, at=turn.now, what=ENDED, athlete_id=None, actor_id=coach.id)


def _begin(turn: Turn, coach: Person, *, menu_of: MenuOf) -> Outcome:
    today = local_today(turn, coach)
    soon = _minute_of(turn, coach)
    athlete = people.add_athlete(
        turn.tx,
        person_id=coach.id,
        coach_id=coach.id,
        profile=practice_history.profile_for(today.weekday()),
        on=practice_history.first_monday(today),
        session_at=soon,
        evening_at=evening_for(soon),
        state=AthleteState.TRAINING,
        started_on=practice_history.first_monday(today),
        agreed_at=turn.now,
        is_practice=True,
    )
    sessions = practice_history.invent(turn, coach, athlete, today=today)
    draw_week.draw(turn, coach, athlete, monday=monday_of(today))
    care.write_audit(turn.tx, at=turn.now, what=BEGUN, athlete_id=None, actor_id=coach.id)
    turn.set_menu(coach, menu_of(turn, coach))
    tongue = turn.tongue(coach)
    turn.say(
        coach,
        words.begun(tongue, weeks=practice_history.WEEKS, sessions=sessions),
        taps=[[Tap(words.end_label(tongue), END)]],
    )
    return Outcome.COMMAND


def _minute_of(turn: Turn, coach: Person) -> time:
    """Return the coach's present minute, so that the first session is due at the next round."""
    return local_time_of(turn.now, zone_named(coach.zone)).replace(second=0, microsecond=0)
