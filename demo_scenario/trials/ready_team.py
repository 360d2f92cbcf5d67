"""A ready-made team in a new database: agreed, placed, this week drawn, nothing sent yet."""

from collections.abc import Sequence
from datetime import UTC, datetime, time, timedelta

from sqlmodel import Session

from bot.acts import draw_week
from bot.turn import House, Turn
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Equipment
from scheduler.training.rulebook import default_rulebook
from scheduler.training.values import AthleteProfile, ReferenceValues
from storage.database import Database
from storage.migrate import migrate
from storage.queries import people
from storage.records.people import AthleteState, Person, Profile

COACH_CHAT = 6000  # [chat id] ch: our own invention
FIRST_ATHLETE_CHAT = 6001  # [chat id] ch: the others follow
MONDAY = datetime(2026, 3, 2, tzinfo=UTC)  # ch: everybody trains on Mondays
COACH_NAME = "Ruta"
WEEKDAYS = (0, 2, 4)  # [weekday] ch: Monday, Wednesday, Friday
JOINED_BEFORE = timedelta(weeks=3)  # [weeks] ch: long enough that nothing of joining is due
DUMBBELLS_KG = tuple(float(kg) for kg in range(4, 22, 2))


def name_of(number: int) -> str:
    """Return the name of the athlete with this number, from 0."""
    return f"Athlete {number + 1}"


def chat_of(number: int) -> int:
    """Return the chat of the athlete with this number, from 0."""
    return FIRST_ATHLETE_CHAT + number


def house(bot_name: str) -> House:
    """Return the house as it is delivered."""
    return House(library=default_library(), rulebook=default_rulebook(), bot_name=bot_name)


def make_team(database: Database, session_times: Sequence[time], *, bot_name: str) -> None:
    """Write a coach and an athlete for each session time, all of whom train this Monday."""
    migrate(database.engine)
    inside = house(bot_name)
    with database.transaction() as tx:
        turn = Turn(tx=tx, now=MONDAY, house=inside)
        coach = _add_coach(tx)
        for number, session_at in enumerate(session_times):
            _add_athlete(turn, coach, number, session_at)


def _add_coach(tx: Session) -> Person:
    return people.add_person(
        tx,
        name=COACH_NAME,
        now=MONDAY - JOINED_BEFORE,
        chat_id=COACH_CHAT,
        is_coach=True,
        is_owner=True,
        digest_weekday=6,
    )


def _add_athlete(turn: Turn, coach: Person, number: int, session_at: time) -> None:
    joined_at = MONDAY - JOINED_BEFORE
    person = people.add_person(
        turn.tx, name=name_of(number), now=joined_at, chat_id=chat_of(number)
    )
    people.add_athlete(
        turn.tx,
        person_id=person.id,
        coach_id=coach.id,
        profile=_profile(number),
        on=joined_at.date(),
        session_at=session_at,
        state=AthleteState.TRAINING,
        agreed_at=joined_at,
        started_on=joined_at.date(),
    )
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:  # pragma: no cover - it was written just above
        raise RuntimeError("the athlete is not there")
    draw_week.draw(turn, person, athlete, monday=MONDAY.date())


def _profile(number: int) -> Profile:
    return Profile(
        facts=AthleteProfile(
            reference=(ReferenceValues.MEN, ReferenceValues.WOMEN)[number % 2],
            body_mass_kg=60.0 + number % 7 * 4,
            training_age_months=6.0 + number % 5 * 9,
            equipment=frozenset(
                {
                    Equipment.FLOOR,
                    Equipment.WALL,
                    Equipment.BOX,
                    Equipment.HIGH_BAR,
                    Equipment.LOW_BAR,
                    Equipment.DUMBBELLS,
                }
            ),
            loads_kg={Equipment.DUMBBELLS: DUMBBELLS_KG},
        ),
        weekdays=WEEKDAYS,
        minutes=45,
    )
