"""A throwaway house in memory with one coach and one athlete, for one vignette at a time."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from sqlalchemy.pool import StaticPool
from sqlmodel import Session, create_engine

from bot.acts import draw_week, send_session
from bot.turn import House, Turn
from demo_scenario.trials.ready_team import house
from scheduler.catalogue.values import Equipment
from scheduler.training.values import AthleteProfile, ReferenceValues
from storage.migrate import migrate
from storage.queries import people, training
from storage.records.people import Athlete, AthleteState, Person, Profile

ZONE = ZoneInfo("Europe/Lisbon")  # ch: any zone does
TODAY = date(2026, 3, 4)  # ch: a Wednesday on which a session was sent
NOON = datetime.combine(TODAY, time(12), tzinfo=ZONE)
COACH_CHAT, ATHLETE_CHAT = 8000, 8001  # [chat id] ch
JOINED_BEFORE = timedelta(weeks=60)  # [weeks] ch: before any history of a vignette
STAGE_SINCE = timedelta(weeks=3)  # [weeks] ch


class VignetteHouse:
    """The coach, the athlete and today's session; what a vignette does is undone after it."""

    def __init__(self, *, stage: int, language: str) -> None:
        """Build it once; each vignette begins from here."""
        self._engine = create_engine(
            "sqlite://", poolclass=StaticPool, connect_args={"check_same_thread": False}
        )
        migrate(self._engine)
        self.house: House = house("holdwell_vignette_bot")
        with Session(self._engine, expire_on_commit=False) as tx:
            self.person, self.athlete = self._people(tx, stage, language)
            self._send_today(tx)
            tx.commit()

    @contextmanager
    def undone(self) -> Iterator[Session]:
        """Yield a transaction that is rolled back, whatever happened in it."""
        with Session(self._engine, expire_on_commit=False) as tx:
            try:
                yield tx
            finally:
                tx.rollback()

    def turn(self, tx: Session, at: datetime) -> Turn:
        """Return a turn at an instant."""
        return Turn(tx=tx, now=at, house=self.house)

    def _people(self, tx: Session, stage: int, language: str) -> tuple[Person, Athlete]:
        joined_at = NOON - JOINED_BEFORE
        coach = people.add_person(
            tx,
            name="Ruta",
            now=joined_at,
            chat_id=COACH_CHAT,
            is_coach=True,
            zone=ZONE.key,
            emergency_number="112",
        )
        person = people.add_person(
            tx,
            name="Athlete",
            now=joined_at,
            chat_id=ATHLETE_CHAT,
            zone=ZONE.key,
            language=language,
        )
        people.add_athlete(
            tx,
            person_id=person.id,
            coach_id=coach.id,
            profile=PROFILE,
            on=TODAY - STAGE_SINCE,
            session_at=time(7),
            stage=stage,
            state=AthleteState.TRAINING,
            agreed_at=joined_at,
            started_on=TODAY - STAGE_SINCE,
        )
        athlete = people.athlete(tx, person.id)
        if athlete is None:  # pragma: no cover - it was written just above
            raise RuntimeError("the athlete is not there")
        return person, athlete

    def _send_today(self, tx: Session) -> None:
        monday = TODAY - timedelta(days=TODAY.weekday())
        morning = datetime.combine(TODAY, time(7), tzinfo=ZONE)
        drawn = self.turn(tx, datetime.combine(monday, time(1), tzinfo=ZONE))
        draw_week.draw(drawn, self.person, self.athlete, monday=monday)
        for session in training.sessions_between(tx, self.person.id, first=TODAY, last=TODAY):
            send_session.send(
                self.turn(tx, morning), self.person, self.athlete, session.id, useful_until=None
            )


PROFILE = Profile(
    facts=AthleteProfile(
        reference=ReferenceValues.WOMEN,
        body_mass_kg=62,
        training_age_months=24,
        equipment=frozenset({Equipment.FLOOR, Equipment.WALL, Equipment.BOX, Equipment.HIGH_BAR}),
    ),
    weekdays=(0, 2, 4),
    minutes=45,
)
