"""The whole house over the loopback platform, with people who tap and write, on one made clock."""

import asyncio
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from pathlib import Path

from bot.acts import draw_week
from bot.app import Holdwell, Wiring
from demo_scenario.loopback.limits import RateLimits
from demo_scenario.loopback.person import Person as OnPhone
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.screen import ShownButton, ShownMessage
from demo_scenario.loopback.server import LoopbackServer
from scheduler.calendar.clocks import SimulatedClock, let_others_run
from scheduler.catalogue.values import Equipment
from scheduler.training.values import AthleteProfile, ReferenceValues
from storage import buttons
from storage.database import Database
from storage.queries import people
from storage.records.people import AthleteState, Person, Profile
from storage.records.wire import Button

MONDAY = datetime(2026, 3, 2, 4, 0, tzinfo=UTC)  # CHOSEN: before anybody's session
POLL_S = 50  # [s of the real clock] CHOSEN: longer than a walk stands still
A_MOMENT = timedelta(seconds=20)  # [s] CHOSEN: between two things that people do
QUIET_WITHIN_S = 120.0  # [s of the real clock] CHOSEN: beyond it something hangs, and says so
OWNER, COACH, OTHER_COACH = 7000, 7001, 7002
ATHLETE, WAITING, SORE, THEIRS, NEWCOMER, STRANGER = 7003, 7004, 7005, 7006, 7008, 7009
COACHES = {COACH: "Mara", OTHER_COACH: "Otto"}
ATHLETES = {ATHLETE: "Ines", WAITING: "Bo", SORE: "Inma", THEIRS: "Olga"}
INVITED = "Nia"
NAMES = {OWNER: "Ada", **COACHES, **ATHLETES}
ON_PHONE = {**NAMES, NEWCOMER: INVITED, STRANGER: "Zed"}
STARTED = {ATHLETE: timedelta(days=58), SORE: timedelta(weeks=20)}
"""Since when somebody trains: the second review of the first falls due within the walk."""


@dataclass(frozen=True)
class Answer:
    """What came of one thing that somebody did: the messages that are new or read otherwise."""

    did: str
    shown: tuple[ShownMessage, ...]


class WalkStage:
    """People, the platform and the house; the house can be stopped and started at any time."""

    def __init__(self, folder: Path, language: str) -> None:
        self.language = language
        self.url = f"sqlite:///{folder / 'house.sqlite3'}"
        self.clock = SimulatedClock(MONDAY, settle=self.settle)
        self.platform = LoopbackPlatform(now=self.clock.now, seed=1, limits=RateLimits())
        self.server = LoopbackServer(self.platform)
        self.house: Holdwell | None = None
        self.on_phone: dict[int, OnPhone] = {}

    async def begin(self) -> None:
        self.server = await self.server.start()
        await self._open_house()
        with self.database.transaction() as tx:
            self._make_people(tx)
        for chat_id, name in ON_PHONE.items():
            self.on_phone[chat_id] = self.server.people.add(chat_id, name, self.language)
        await self.settle()

    async def end(self) -> None:
        if self.house is not None:
            await self.house.stop()
        await self.server.stop()

    async def restart(self) -> None:
        """Stop the house as a clean stop does, and start another on the same database."""
        assert self.house is not None
        await self.house.stop()
        self.house = None
        await self._open_house()
        await self.settle()

    @property
    def database(self) -> Database:
        assert self.house is not None
        return self.house.database

    async def settle(self) -> None:
        await let_others_run()
        for _ in range(10_000):
            if self.house is None:
                return
            if (
                self.platform.is_quiet
                and self.house.is_idle
                and not self.platform.unconfirmed_updates
            ):
                return
            if self.platform.is_quiet:
                await asyncio.sleep(0.0005)  # a page may be on its way in a thread
            else:
                await self.platform.until_quiet(within_s=QUIET_WITHIN_S)
        assert self.house is not None
        raise RuntimeError(
            f"the house does not come to rest: quiet {self.platform.is_quiet}, "
            f"writer {self.house.writer.is_idle}, sender {self.house.sender.is_idle}, "
            f"receiver answers {self.house.receiver.is_answering}, "
            f"waiting {self.platform.unconfirmed_updates}"
        )

    async def does(self, chat_id: int, did: str, act: Callable[[OnPhone], object]) -> Answer:
        """Let somebody do something, give the house a moment, and look what is new."""
        before = self.screen(chat_id)
        act(self.on_phone[chat_id])
        await self.settle()
        await self.clock.advance_to(self.clock.now() + A_MOMENT)
        await self.settle()
        after = self.screen(chat_id)
        news = [one for number, one in after.items() if before.get(number) != one]
        return Answer(did, tuple(one for one in news if one.is_from_bot))

    def screen(self, chat_id: int) -> dict[int, ShownMessage]:
        return {one.message_id: one for one in self.on_phone[chat_id].sees()}

    def last_said(self, chat_id: int) -> str:
        """Return how the bot's newest message begins."""
        said = [one.text for one in self.screen(chat_id).values() if one.is_from_bot]
        return said[-1][:80] if said else ""

    async def strike_at(self, at: datetime) -> None:
        """Go on to an instant and let the clock strike there."""
        await self.clock.advance_to(at)
        assert self.house is not None
        self.house.strike()
        await self.settle()

    def button(self, chat_id: int, shown: ShownButton) -> Button | None:
        with self.database.transaction() as tx:
            return buttons.button(tx, token=shown.data or "", chat_id=chat_id)

    def question(self, chat_id: int) -> str | None:
        """Return what is asked of a chat in words: the dialog's step, or the open question."""
        with self.database.transaction() as tx:
            dialog = buttons.dialog(tx, chat_id)
            asked = buttons.open_question(tx, chat_id=chat_id, now=self.clock.now())
        if dialog is not None:
            return f"{dialog.kind}/{dialog.step}"
        return asked.kind if asked is not None else None

    async def _open_house(self) -> None:
        self.house = Holdwell(
            Wiring(
                is_throwaway=True,
                token=self.platform.token,
                database_url=self.url,
                clock=self.clock,
                api_url=self.server.base_url.removesuffix("/bot"),
                poll_s=POLL_S,
            )
        )
        await self.house.start()

    def _make_people(self, tx) -> None:
        assert self.house is not None
        turn = self.house.turn(tx, self.clock.now())
        joined = self.clock.now() - timedelta(weeks=20)
        made = {
            chat_id: people.add_person(
                tx,
                name=name,
                now=joined,
                chat_id=chat_id,
                language=self.language,
                zone="Europe/Madrid",
                is_coach=chat_id in COACHES,
                is_owner=chat_id == OWNER,
                emergency_number="112" if chat_id in COACHES else None,
            )
            for chat_id, name in NAMES.items()
        }
        for chat_id in ATHLETES:
            person = made[chat_id]
            since = self.clock.now() - STARTED.get(chat_id, timedelta(weeks=20))
            is_waiting = chat_id == WAITING
            people.add_athlete(
                tx,
                person_id=person.id,
                coach_id=made[OTHER_COACH if chat_id == THEIRS else COACH].id,
                profile=PROFILE,
                on=since.date(),
                session_at=time(7),
                state=AthleteState.WAITS_FOR_COACH if is_waiting else AthleteState.TRAINING,
                agreed_at=since,
                started_on=since.date(),
            )
            athlete = people.athlete(tx, person.id)
            assert athlete is not None
            if not is_waiting:
                draw_week.draw(turn, person, athlete, monday=MONDAY.date())


def all_buttons(shown: tuple[ShownMessage, ...]) -> Iterator[tuple[ShownMessage, ShownButton]]:
    """Yield every button that can be tapped, the newest message first."""
    for message in reversed(shown):
        for row in message.buttons:
            for button in row:
                if button.data is not None:
                    yield message, button


def person_of(stage: WalkStage, chat_id: int) -> Person:
    with stage.database.transaction() as tx:
        found = people.person_in_chat(tx, chat_id)
    assert found is not None
    return found


PROFILE = Profile(
    facts=AthleteProfile(
        reference=ReferenceValues.WOMEN,
        body_mass_kg=60,
        training_age_months=24,
        equipment=frozenset(
            {
                Equipment.FLOOR,
                Equipment.WALL,
                Equipment.BOX,
                Equipment.BAND,
                Equipment.DUMBBELLS,
                Equipment.HIGH_BAR,
            }
        ),
        loads_kg={Equipment.DUMBBELLS: (4.0, 6.0, 8.0, 10.0)},
    ),
    weekdays=(0, 2, 4),
    minutes=45,
)
