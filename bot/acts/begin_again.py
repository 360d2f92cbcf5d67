"""After a very long break nothing is sent before the coach has looked again."""

from bot.acts.checklist import local_today
from bot.acts.dose_today import returning
from bot.acts.find_athlete import subject_of
from bot.turn import Tap, Turn
from bot.wording import coach_safety as words
from bot.wording import intake_end as intake_words
from storage.queries import care, due, people, training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.wire import MessageKind

KIND = "screen_again"
DAYS_A_WEEK = 7  # [days] by definition


def hold_if_long_away(turn: Turn, person: Person, athlete: Athlete) -> bool:
    """Hold an athlete who was away too long, once a break; True when they are held now."""
    today = local_today(turn, person)
    back = returning(turn, athlete, on=today).value
    last = training.last_trained(turn.tx, person.id, before=today)
    if not back.needs_screen or last is None:
        return False
    is_new = due.take(
        turn.tx,
        person_id=person.id,
        kind=KIND,
        subject=last.isoformat(),
        due_at=turn.now,
        now=turn.now,
    )
    if not is_new:
        return False
    stage = min(athlete.stage, back.stage_most or athlete.stage)
    people.change_athlete(
        turn.tx, person.id, state=AthleteState.WAITS_FOR_COACH, stage=stage, stage_since=today
    )
    weeks = (today - last).days // DAYS_A_WEEK
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="athlete.away_too_long",
        athlete_id=person.id,
        before={"stage": athlete.stage},
        after={"stage": stage, "last_trained": last.isoformat()},
    )
    _tell(turn, person, athlete, weeks=weeks, stage=stage)
    return True


def _tell(turn: Turn, person: Person, athlete: Athlete, *, weeks: int, stage: int) -> None:
    coach = people.person(turn.tx, athlete.coach_id)
    turn.say(
        person,
        words.screen_again_to_athlete(turn.tongue(person), coach=coach.name, weeks=weeks),
        kind=MessageKind.SAFETY,
    )
    tongue = turn.tongue(coach)
    turn.say(
        coach,
        words.screen_again_to_coach(tongue, name=person.name, weeks=weeks, stage=stage),
        kind=MessageKind.NOTICE,
        subject=subject_of(person),
        taps=[
            [Tap(intake_words.open_label(tongue), "coach.who", {"athlete": person.id})],
            [
                Tap(
                    intake_words.let_start_label(tongue, is_guardian=False),
                    "coach.let_start",
                    {"athlete": person.id},
                )
            ],
        ],
    )
