"""Two years day by day: whoever does something next does it, and the house looks what is due."""

import random
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import partial
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.acts import draw_week
from bot.acts.timing import timing_of
from bot.turn import House
from demo_scenario.play import seeded_maker
from demo_scenario.team import Team
from demo_scenario.two_years.athlete import TryReadingPhone, TwoYearsAthlete
from demo_scenario.two_years.body import GrowingBody
from demo_scenario.two_years.coach import TwoYearsCoach
from demo_scenario.two_years.diary import ATHLETE, COACH, START, WITHOUT, Without
from demo_scenario.two_years.exchange import Exchange
from scheduler.calendar.clocks import SimulatedClock
from scheduler.calendar.values import Timing
from scheduler.calendar.wall_time import due_instant, local_date_of
from scheduler.catalogue.library import default_library
from scheduler.training.rulebook import default_rulebook
from storage.queries import care, people
from storage.records.people import Athlete, AthleteState, Person

MINUTE = timedelta(minutes=1)
HALF_HOUR = timedelta(minutes=30)

Progress = Callable[[datetime], None]


@dataclass(slots=True)
class Lives:
    """Everything that stands while the two years go by."""

    exchange: Exchange
    clock: SimulatedClock
    athlete: TwoYearsAthlete
    coach: TwoYearsCoach

    @property
    def faults(self) -> tuple[str, ...]:
        """Return what went wrong: faults of the house, and questions nobody could answer."""
        puzzled = [*self.athlete.puzzled, *self.coach.puzzled]
        return (*self.exchange.faults, *(f"not answered: {text[:90]}" for text in puzzled))

    def person(self) -> Person:
        """Return the athlete as the house knows her."""
        with self.exchange.database.transaction() as tx:
            found = people.person_in_chat(tx, ATHLETE.chat_id)
        if found is None:
            raise RuntimeError("the athlete never came in")
        return found


async def live(
    *, weeks: int, seed: int, database_file: Path, on_progress: Progress | None = None
) -> Lives:
    """Live so many weeks [weeks, 1 or more] from the first Monday of the diary."""
    lives = _set_up(seed=seed, database_file=database_file)
    team = _team()
    ends_at = team.ends_at(weeks=weeks)
    await lives.exchange.carry()
    strike_at = lives.clock.now()
    while True:
        now = lives.clock.now()
        for player in (lives.coach, lives.athlete):
            player.look(now)
        _hand_over_link(lives, now)
        soonest = min(_instants_ahead(lives, strike_at))
        if soonest >= ends_at:
            return lives
        await lives.clock.advance_to(max(soonest, now))
        now = lives.clock.now()
        await lives.exchange.carry()
        if soonest >= strike_at:
            await lives.exchange.strike(last_round=now - MINUTE)
            strike_at = _next_strike(lives)
            if on_progress is not None:
                on_progress(now)
            continue
        for player in (lives.coach, lives.athlete):
            if player.act(now):
                await lives.exchange.carry()
                if player is lives.coach or not lives.athlete.trained:
                    strike_at = min(strike_at, now.replace(second=0, microsecond=0) + MINUTE)


def _team() -> Team:
    return Team(start=START, coach=COACH, athletes=(ATHLETE,))


def _set_up(*, seed: int, database_file: Path) -> Lives:
    team, library = _team(), default_library()
    clock = SimulatedClock(team.begins_at())
    house = House(
        library=library,
        rulebook=default_rulebook(),
        bot_name="holdwell_loopback_bot",
        make_token=seeded_maker(random.Random(f"{seed} tokens"), 16),
        make_secret=seeded_maker(random.Random(f"{seed} secrets"), 32),
    )
    exchange = Exchange(house=house, clock=clock, database_file=database_file, seed=seed)
    _write_coach(exchange)
    coach_phone = TryReadingPhone(exchange.people.add(COACH.chat_id, COACH.name))
    phone = TryReadingPhone(exchange.people.add(ATHLETE.chat_id, ATHLETE.name, has_started=False))
    athlete = TwoYearsAthlete(
        ATHLETE,
        phone,
        body=GrowingBody(ATHLETE, library, random.Random(f"{seed} body")),
        library=library,
        chance=random.Random(f"{seed} habits"),
        start=team.start,
    )
    athlete.plan_diary()
    coach = TwoYearsCoach(coach_phone, team=team, chance=random.Random(f"{seed} coach"))
    for one in WITHOUT:
        _plan_without(exchange, coach, one)
    return Lives(exchange=exchange, clock=clock, athlete=athlete, coach=coach)


def _write_coach(exchange: Exchange) -> None:
    with exchange.database.transaction() as tx:
        people.add_person(
            tx,
            name=COACH.name,
            now=exchange.clock.now(),
            zone=COACH.zone,
            is_coach=True,
            is_owner=True,
            chat_id=COACH.chat_id,
            digest_weekday=COACH.digest_weekday,
            digest_at=COACH.digest_at,
            waking_from=COACH.waking_from,
            waking_until=COACH.waking_until,
        )


def _plan_without(exchange: Exchange, coach: TwoYearsCoach, one: Without) -> None:
    """Take a tool out of the profile and put it back; nobody can do it in the chat so far."""
    for on, is_there in ((one.first, False), (one.last + timedelta(days=1), True)):
        morning = datetime.combine(on, time(4), ZoneInfo(COACH.zone)).astimezone(UTC)
        coach.at(morning, partial(_set_tool, exchange, one, is_there=is_there))


def _set_tool(exchange: Exchange, one: Without, *, is_there: bool) -> None:
    with exchange.database.transaction() as tx:
        turn = exchange.turn(tx, exchange.clock.now())
        person, athlete = _the_athlete(people.athletes_in(tx, *AthleteState))
        facts = athlete.profile.facts
        tools = facts.equipment | {one.tool} if is_there else facts.equipment - {one.tool}
        profile = athlete.profile.model_copy(
            update={"facts": facts.model_copy(update={"equipment": tools})}
        )
        changed = people.change_athlete(tx, person.id, profile=profile)
        care.write_audit(
            tx,
            at=turn.now,
            what="equipment.changed",
            athlete_id=person.id,
            actor_id=athlete.coach_id,
            words=f"{one.words}: {'mended' if is_there else 'not there'}",
            before={"equipment": sorted(facts.equipment)},
            after={"equipment": sorted(tools)},
        )
        draw_week.redraw(turn, person, changed)


def _the_athlete(known: tuple[tuple[Person, Athlete], ...]) -> tuple[Person, Athlete]:
    return next(pair for pair in known if pair[0].chat_id == ATHLETE.chat_id)


def _hand_over_link(lives: Lives, now: datetime) -> None:
    for name in list(lives.coach.links):
        payload = lives.coach.links.pop(name)
        lives.athlete.at(now + HALF_HOUR, partial(lives.athlete.open_link, payload))


def _instants_ahead(lives: Lives, strike_at: datetime) -> Iterator[datetime]:
    yield strike_at
    for player in (lives.coach, lives.athlete):
        at = player.next_at()
        if at is not None:
            yield at
    if lives.exchange.next_send_at is not None:
        yield lives.exchange.next_send_at


def _next_strike(lives: Lives) -> datetime:
    """Return the next instant at which anything can fall due for either."""
    now = lives.clock.now()
    with lives.exchange.database.transaction() as tx:
        states = (AthleteState.TRAINING, AthleteState.PAUSED, AthleteState.WAITS_FOR_COACH)
        athletes = people.athletes_in(tx, *states)
        coaches = people.coaches(tx)
        alerts = [
            max(alert.tell_at, now + MINUTE)
            for coach in coaches
            for alert in care.open_alerts(tx, coach_id=coach.id)
            if alert.tell_at is not None
        ]
    hours = [
        *(at for pair in athletes for at in _athlete_hours(*pair, now=now)),
        *(at for coach in coaches for at in _coach_hours(timing_of(coach), now)),
    ]
    return min(at for at in (*hours, *alerts) if at > now)


def _athlete_hours(person: Person, athlete: Athlete, *, now: datetime) -> Iterator[datetime]:
    """Yield when something may come round for an athlete; sessions come on their weekdays."""
    timing = timing_of(person, athlete)
    for day in _days(timing, now):
        hours = {timing.morning_question_at, timing.planning_at}
        if day.weekday() in athlete.profile.weekdays:
            hours |= {timing.session_at, timing.evening_at}
        for at in hours:
            yield _instant(day, at, timing.zone)


def _coach_hours(timing: Timing, now: datetime) -> Iterator[datetime]:
    for day in _days(timing, now):
        yield _instant(day, timing.waking_from, timing.zone)
        if day.weekday() == timing.digest_weekday:
            yield _instant(day, timing.digest_at, timing.zone)


def _days(timing: Timing, now: datetime) -> tuple[date, date]:
    today = local_date_of(now, timing.zone)
    return today, today + timedelta(days=1)


def _instant(day: date, at: time, zone: ZoneInfo) -> datetime:
    return due_instant(local_date=day, wall_time=at, zone=zone).astimezone(UTC)
