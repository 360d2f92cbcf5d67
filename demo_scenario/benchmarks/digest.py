"""The weekly digest of a full team with its pictures, while the team writes.

Sixty athletes with a year of history each; some hurt. The digest falls due while replies come in:
how long from the round that finds it due until the last picture has arrived, how long the replies
took meanwhile, and how much memory the bot and the process that draws took.
"""

import asyncio
import json
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from datetime import time as wall_time
from pathlib import Path

from sqlmodel import col, select

from bot.acts import history_picture, pain_picture
from bot.acts.timing import timing_of
from bot.pictures.studio import Studio
from bot.rounds import tick
from bot.turn import Turn
from demo_scenario.benchmarks.past_years import write_years_of_team
from demo_scenario.benchmarks.report import Line, percentile
from demo_scenario.benchmarks.runs import ATHLETES, BOT_NAME, ORIGIN, Stage, staged
from demo_scenario.trials.ready_team import COACH_CHAT, chat_of, house
from scheduler.calendar.due import due_for
from scheduler.calendar.values import Due, DueKind, Owed
from scheduler.pain.events import PainReported
from scheduler.pain.values import Side, Site
from storage.database import Database
from storage.queries import due, people
from storage.records.people import Person
from storage.tables.wire import InboxRow

DIGEST_AT = wall_time(8, 1)  # ch: a minute behind the start, so that replies come before it
HURTING = 14  # [athletes] ch: more than an album holds
SCORE = 4  # [of 10] ch: eased, so that a look is wanted
REPLIES_PER_S = 5.0  # [messages/s] ch: everybody within twelve seconds, again and again
LOOK_EVERY_S = 0.05  # [s] ch
PATIENCE_S = 180.0  # [s] ch: from the start to the last picture, on a slow machine
WORK_MOST_S = 10.0  # [s] ch
P99_MOST_MS = 200.0  # [ms] ch
MEMORY_MOST_MIB = 300.0  # [MiB] ch
PICTURE_CALLS = ("sendphoto", "sendmediagroup")


@dataclass(frozen=True)
class Digested:
    """What came of it."""

    work_s: float
    pictures: int
    took_ms: tuple[float, ...]
    mib: tuple[float, ...]
    processor_s: tuple[float, ...]


def prepare(database: Database) -> None:
    """Give everybody a year behind them, let some hurt, and make the digest due soon."""
    write_years_of_team(database, ATHLETES, years=1)
    with database.transaction() as tx:
        turn = Turn(tx=tx, now=ORIGIN - timedelta(hours=2), house=house(BOT_NAME))
        coach = people.person_in_chat(tx, COACH_CHAT)
        if coach is None:  # pragma: no cover - a ready team's
            raise LookupError("there is no coach")
        people.change_person(tx, coach.id, digest_weekday=0, digest_at=DIGEST_AT)
        for one in _last_week(coach, turn):
            due.take(
                tx,
                person_id=coach.id,
                kind=one.kind.value,
                subject=one.subject,
                due_at=one.due_at_utc,
                now=turn.now,
            )
        for number in range(HURTING):
            person = people.person_in_chat(tx, chat_of(number * 4))
            if person is not None:
                event = PainReported(
                    key=pain_picture.new_key(turn, person.id),
                    at_utc=turn.now,
                    site=Site.WRIST,
                    side=Side.LEFT,
                    score=SCORE,
                )
                pain_picture.record_event(turn, person.id, event)


def _last_week(coach: Person, turn: Turn) -> Sequence[Due]:
    """Return last week's digest, which would still be useful today."""
    timing = timing_of(coach).model_copy(update={"digest_weekday": 0, "digest_at": DIGEST_AT})
    return due_for(
        person_id=coach.id,
        timing=timing,
        owed=Owed(recurring=frozenset({DueKind.DIGEST})),
        since_utc=turn.now,
        until_utc=turn.now,
        handled=frozenset(),
    )


async def digested(folder: Path) -> Digested:
    """Let the digest fall due while the team writes."""
    module = "demo_scenario.benchmarks.digest_bot"
    async with staged("house", folder, is_paced=True, module=module, prepare=prepare) as stage:
        due_at = datetime.combine(ORIGIN.date(), DIGEST_AT, ORIGIN.tzinfo)
        writing = asyncio.create_task(
            stage.crowd.write_at(REPLIES_PER_S, int(REPLIES_PER_S * PATIENCE_S))
        )
        ended_at = await _until_pictures(stage)
        began_at = max(due_at, _round_began_at(stage.database))
        writing.cancel()
        await asyncio.sleep(1.0)  # what was written last is answered too
        said = json.loads(await stage.stop())
        meanwhile = _received_between(stage.database, began_at, ended_at)
        sent = [one for one in stage.crowd.platform.requests if one.method.lower() in PICTURE_CALLS]
    return Digested(
        work_s=(ended_at - began_at).total_seconds(),
        pictures=sum(len(json.loads(one.params.get("media", "[0]"))) for one in sent),
        took_ms=tuple(ms for inbox_id, ms in said["took_ms"] if inbox_id in meanwhile),
        mib=tuple(kib / 1024 for kib in said["at_end"]["kib"]),
        processor_s=tuple(said["at_end"]["processor_s"]),
    )


async def _until_pictures(stage: Stage) -> datetime:
    """Wait for the album, which is the last of the digest, and return when it arrived."""
    for _ in range(int(PATIENCE_S / LOOK_EVERY_S)):
        for one in stage.crowd.platform.requests:
            if one.method.lower() == "sendmediagroup" and one.is_accepted:
                return one.at
        await asyncio.sleep(LOOK_EVERY_S)
    raise TimeoutError("the digest's album never came")


def _round_began_at(database: Database) -> datetime:
    """Return when the round began that found the digest due: up to a minute behind its time."""
    with database.transaction() as tx:
        began_at = due.mark(tx, tick.LAST_ROUND)
    if began_at is None:  # pragma: no cover - the digest came from one
        raise LookupError("no round was run")
    return began_at


def _received_between(database: Database, since: datetime, until: datetime) -> set[int]:
    with database.transaction() as tx:
        query = select(InboxRow.id).where(
            col(InboxRow.received_at) >= since, col(InboxRow.received_at) <= until
        )
        return {one for one in tx.exec(query) if one is not None}


async def all_drawn_s(database: Database) -> tuple[int, float]:
    """Gather and draw everybody's history, as the buttons under the digest would; return [s]."""
    began_s, studio, count = time.perf_counter(), Studio(), 0
    for number in range(ATHLETES):
        with database.transaction() as tx:
            turn = Turn(tx=tx, now=ORIGIN, house=house(BOT_NAME))
            coach, person = (
                people.person_in_chat(tx, chat) for chat in (COACH_CHAT, chat_of(number))
            )
            athlete = people.athlete(tx, person.id) if person is not None else None
            if coach is None or person is None or athlete is None:  # pragma: no cover
                raise LookupError("a ready team is there")
            shot = history_picture.foremost_shot(turn, coach, person, athlete)
        if shot is not None:
            await studio.draw(shot.picture.model_dump(mode="json"))
            count += 1
    studio.close()
    return count, time.perf_counter() - began_s


async def digest_lines(folder: Path, say: Callable[[str], None]) -> Sequence[Line]:
    """Run both and say what came of them."""
    say(f"{ATHLETES} athletes with a year of history each …")
    found = await digested(folder)
    say("everybody's picture …")
    database = Database(_made_in(folder), is_throwaway=True)
    count, drawn_s = await all_drawn_s(database)
    database.close()
    return lines_of(found, count=count, drawn_s=drawn_s)


def _made_in(folder: Path) -> str:
    (file,) = folder.glob("house-*.sqlite3")
    return f"sqlite:///{file}"


def lines_of(found: Digested, *, count: int, drawn_s: float) -> list[Line]:
    """Say what was aimed at and what was reached."""
    p50, p99 = percentile(found.took_ms, 50), percentile(found.took_ms, 99)
    mib = " + ".join(f"{one:.0f}" for one in found.mib)
    return [
        Line(
            f"digest of {ATHLETES} athletes, to the last of {found.pictures} pictures",
            f"{WORK_MOST_S:.0f} s",
            f"{found.work_s:.1f} s",
            found.work_s <= WORK_MOST_S,
        ),
        Line(
            f"  {len(found.took_ms)} replies meanwhile, inbox to commit, median",
            "",
            f"{p50:.0f} ms",
        ),
        Line("  the same, p99", f"{P99_MOST_MS:.0f} ms", f"{p99:.0f} ms", p99 <= P99_MOST_MS),
        Line("  the same, longest", "", f"{max(found.took_ms, default=0.0):.0f} ms"),
        Line(
            "  memory at most, bot + process that draws",
            f"{MEMORY_MOST_MIB:.0f} MiB",
            f"{sum(found.mib):.0f} MiB ({mib})",
            sum(found.mib) <= MEMORY_MOST_MIB,
        ),
        Line(
            f"all {count} histories, gathered and drawn",
            f"{WORK_MOST_S:.0f} s",
            f"{drawn_s:.1f} s",
            drawn_s <= WORK_MOST_S,
        ),
    ]
