"""The play: the real house in this process, a loopback platform, one made clock, and people."""

import asyncio
import random
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import partial
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.acts.timing import timing_of
from bot.app import Holdwell, Wiring
from bot.rounds.tick import LAST_ROUND
from demo_scenario.athletes import SimulatedAthlete
from demo_scenario.coaching import SimulatedCoach
from demo_scenario.hidden import HiddenBody
from demo_scenario.loopback.limits import RateLimits
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.server import LoopbackServer
from demo_scenario.past import settle_in
from demo_scenario.phone import Phone
from demo_scenario.player import Player
from demo_scenario.scenes.steps import Outage
from demo_scenario.scenes.the_season import OUTAGES
from demo_scenario.team import AthleteEntry, Team
from scheduler.calendar.clocks import SimulatedClock
from scheduler.calendar.values import Timing
from scheduler.calendar.wall_time import due_instant, local_date_of
from scheduler.catalogue.library import default_library
from storage.queries import care, due, people
from storage.records.people import AthleteState

MINUTE = timedelta(minutes=1)
HALF_HOUR = timedelta(minutes=30)
POLL_S = 50  # [s of the real clock] ch: longer than a demo stands still
ANSWER_WITHIN_S = 300.0  # [s of the real clock] ch: a slow machine makes no doubtful send
QUIET_WITHIN_S = 300.0  # [s of the real clock] ch: beyond it something hangs, and says so
NEW_PHONE = 500  # [chat ids] ch: nobody else is there
BRIEFLY = 200  # [loop turns] ch: beyond them a file is being made beside the loop
DRAWING_S = 0.01  # [s of the real clock] ch: between two looks while a picture is drawn
LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-"

Progress = Callable[[datetime], None]


@dataclass(slots=True)
class Stage:
    """Everything that stands when the play begins."""

    house: Holdwell
    wiring: Wiring
    server: LoopbackServer
    clock: SimulatedClock
    team: Team
    coach: SimulatedCoach
    athletes: dict[str, SimulatedAthlete]
    strikes: int = 0
    is_down: bool = False
    ended_at: datetime | None = None

    @property
    def players(self) -> list[Player]:
        """Return everybody, in a fixed order."""
        return [self.coach, *self.athletes.values()]

    async def settle(self) -> None:
        """Wait until the platform is quiet and the house has nothing in hand."""
        platform = self.server.platform
        if self.is_down:
            return
        for turns in range(10_000):
            if platform.is_quiet and self.house.is_idle and not platform.unconfirmed_updates:
                return
            if platform.is_quiet:
                is_working = self.house.is_drawing or turns > BRIEFLY
                await asyncio.sleep(DRAWING_S if is_working else 0)
            else:
                await platform.until_quiet(within_s=QUIET_WITHIN_S)
        raise RuntimeError("the house does not come to rest")


def seeded_maker(chance: random.Random, length: int) -> Callable[[], str]:
    """Return a maker of references that are the same in every run with the same seed."""

    def make() -> str:
        return "".join(chance.choices(LETTERS, k=length))

    return make


async def play(
    *, team: Team, seed: int, weeks: int, database_file: Path, on_progress: Progress | None = None
) -> Stage:
    """Play so many weeks; return everything as it stands at the end, the house stopped."""
    stage = await _set_up(team=team, seed=seed, database_file=database_file)
    ends_at = team.ends_at(weeks=weeks)
    try:
        await _run(stage, ends_at, on_progress)
    finally:
        await stage.house.stop()
        await stage.server.stop()
    stage.ended_at = ends_at
    return stage


async def _set_up(*, team: Team, seed: int, database_file: Path) -> Stage:
    stage: Stage | None = None

    async def settle() -> None:
        if stage is not None:
            await stage.settle()

    clock = SimulatedClock(team.begins_at(), settle=settle)
    platform = LoopbackPlatform(now=clock.now, seed=seed, limits=RateLimits())
    server = await LoopbackServer(platform).start()
    wiring = Wiring(
        is_throwaway=True,
        token=platform.token,
        database_url=f"sqlite:///{database_file}",
        clock=clock,
        api_url=server.base_url.removesuffix("/bot"),
        poll_s=POLL_S,
        answer_within_s=ANSWER_WITHIN_S,
        make_token=seeded_maker(random.Random(f"{seed} tokens"), 16),
        make_secret=seeded_maker(random.Random(f"{seed} secrets"), 32),
    )
    house = Holdwell(wiring)
    await house.start()
    library = default_library()
    bodies = {
        one.name: HiddenBody(one, library, random.Random(f"{seed} body {one.name}"))
        for one in team.athletes
    }
    settle_in(house, team, bodies)
    coach_person = server.people.add(team.coach.chat_id, team.coach.name)
    stage = Stage(
        house=house,
        wiring=wiring,
        server=server,
        clock=clock,
        team=team,
        coach=SimulatedCoach(
            team.coach,
            Phone(coach_person),
            team=team,
            chance=random.Random(f"{seed} coach"),
            start=team.start,
        ),
        athletes={
            one.name: _athlete(one, server, bodies[one.name], seed=seed, start=team.start)
            for one in team.athletes
        },
    )
    return stage


def _athlete(
    entry: AthleteEntry, server: LoopbackServer, body: HiddenBody, *, seed: int, start: date
) -> SimulatedAthlete:
    person = server.people.add(
        entry.chat_id,
        entry.name,
        entry.language,
        has_started=not entry.joins or entry.coaches,
    )
    return SimulatedAthlete(
        entry,
        Phone(person),
        body=body,
        library=body.library,
        chance=random.Random(f"{seed} habits {entry.name}"),
        start=start,
    )


async def _run(stage: Stage, ends_at: datetime, on_progress: Progress | None) -> None:
    _plan_journeys(stage)
    await stage.settle()
    strike_at = stage.clock.now()
    outages = _outages(stage)
    while True:
        now = stage.clock.now()
        if outages and outages[0][0] <= now:
            await _stand_still(stage, outages.pop(0)[1])
            strike_at = stage.clock.now()
            continue
        for player in stage.players:
            player.look(now)
        _hand_over_links(stage, now)
        soonest = min(
            [
                strike_at,
                *(began for began, _ in outages[:1]),
                *(at for player in stage.players if (at := player.next_at()) is not None),
            ]
        )
        if min(soonest, ends_at) == ends_at:
            break
        await stage.clock.advance_to(max(soonest, now))
        if soonest >= strike_at:
            await _strike(stage)
            strike_at = _next_strike(stage)
            if on_progress is not None:
                on_progress(stage.clock.now())
            continue
        for player in stage.players:
            if player.act(stage.clock.now()):
                await stage.settle()
                if _may_plan_for_now(player):
                    strike_at = min(strike_at, _whole_minute_after(stage.clock.now()))
    await stage.clock.advance_to(ends_at)


def _may_plan_for_now(player: Player) -> bool:
    """Tell whether what a person did may make something due at once: a coach, a new athlete."""
    return not isinstance(player, SimulatedAthlete) or (player.entry.joins and not player.trained)


def _whole_minute_after(now: datetime) -> datetime:
    return now.replace(second=0, microsecond=0) + MINUTE


def _hand_over_links(stage: Stage, now: datetime) -> None:
    """Give a new athlete the link that the coach was shown; it is opened a little later."""
    for name in list(stage.coach.links):
        athlete, payload = stage.athletes[name], stage.coach.links.pop(name)
        if athlete.has_joined:
            athlete.at(now + HALF_HOUR, partial(_open_on_new_phone, stage, athlete, payload))
            continue
        athlete.has_joined = True
        athlete.at(now + HALF_HOUR, partial(athlete.open_link, payload))


def _open_on_new_phone(stage: Stage, athlete: SimulatedAthlete, payload: str) -> None:
    """Open a new link on another phone, where nothing of the chat is yet."""
    chat_id = athlete.phone.person.chat_id + NEW_PHONE
    person = stage.server.people.add(chat_id, athlete.name, athlete.entry.language)
    athlete.change_phone(Phone(person))
    athlete.open_link(payload)


def _outages(stage: Stage) -> list[tuple[datetime, Outage]]:
    zone = ZoneInfo(stage.team.coach.zone)
    return [
        (
            datetime.combine(stage.team.start + timedelta(days=one.day), one.at, zone).astimezone(
                UTC
            ),
            one,
        )
        for one in sorted(OUTAGES, key=lambda one: (one.day, one.at))
    ]


async def _stand_still(stage: Stage, outage: Outage) -> None:
    """Take the process down for a while: people write on, and the platform keeps it."""
    ends_at = stage.clock.now() + timedelta(minutes=outage.minutes)
    with stage.house.database.transaction() as tx:
        due.set_mark(tx, LAST_ROUND, at=stage.clock.now())
    await stage.house.stop()
    stage.is_down = True
    while (
        soonest := min(
            (at for player in stage.players if (at := player.next_at()) is not None),
            default=ends_at,
        )
    ) < ends_at:
        await stage.clock.advance_to(max(soonest, stage.clock.now()))
        for player in stage.players:
            player.act(stage.clock.now())
    await stage.clock.advance_to(ends_at)
    stage.house = Holdwell(stage.wiring)
    await stage.house.start()
    stage.is_down = False
    await stage.settle()
    stage.house.strike()
    await stage.settle()


def _plan_journeys(stage: Stage) -> None:
    """Move those who travel to another zone and back, at their own early morning."""
    for athlete in stage.athletes.values():
        travels = athlete.entry.travels
        if travels is None:
            continue
        for day, zone in (
            (travels.on_day, travels.to_zone),
            (travels.back_on_day, athlete.entry.zone),
        ):
            morning = datetime.combine(stage.team.start + timedelta(days=day), time(4), UTC)
            athlete.at(morning, partial(_move, stage, athlete, zone))


def _move(stage: Stage, athlete: SimulatedAthlete, zone: str) -> None:
    """Change the zone of a person as whoever runs the bot does on the machine."""
    athlete.zone = ZoneInfo(zone)
    with stage.house.database.transaction() as tx:
        person = people.person_in_chat(tx, athlete.entry.chat_id)
        if person is not None:
            people.change_person(tx, person.id, zone=zone)


async def _strike(stage: Stage) -> None:
    """Let the house look what is due.

    The real bot strikes every minute. Between two instants at which somebody's wall clock says
    something, a round would find nothing and only move its mark on; the play moves it instead.
    """
    now = stage.clock.now()
    with stage.house.database.transaction() as tx:
        due.set_mark(tx, LAST_ROUND, at=now - MINUTE)
    stage.house.strike()
    stage.strikes += 1
    await stage.settle()


def _next_strike(stage: Stage) -> datetime:
    """Return the next instant at which anything can fall due for anybody."""
    now = stage.clock.now()
    with stage.house.database.transaction() as tx:
        states = (AthleteState.TRAINING, AthleteState.PAUSED, AthleteState.WAITS_FOR_COACH)
        hours = [
            (timing, _hours_of_athlete(timing))
            for timing in (timing_of(*pair) for pair in people.athletes_in(tx, *states))
        ]
        coaches = people.coaches(tx)
        hours += [
            (timing, {timing.digest_at, timing.waking_from}) for timing in map(timing_of, coaches)
        ]
        alerts = [
            max(alert.tell_at, now + MINUTE)
            for coach in coaches
            for alert in care.open_alerts(tx, coach_id=coach.id)
            if alert.tell_at is not None
        ]
    instants = (at for timing, times in hours for at in _instants(timing, times, now))
    return min(at for at in (*instants, *alerts) if at > now)


def _instants(timing: Timing, times: set[time], now: datetime) -> Iterator[datetime]:
    """Yield when a person's wall clock says something, today and tomorrow."""
    today = local_date_of(now, timing.zone)
    for day in (today, today + timedelta(days=1)):
        for at in times:
            yield due_instant(local_date=day, wall_time=at, zone=timing.zone).astimezone(UTC)


def _hours_of_athlete(timing: Timing) -> set[time]:
    """Return the wall times at which something may come round for an athlete."""
    return {
        timing.session_at,
        timing.evening_at,
        timing.morning_question_at,
        timing.planning_at,
    }
