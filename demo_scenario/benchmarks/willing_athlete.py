"""An athlete without complaint, who types every result and taps whatever is asked."""

from collections.abc import Callable
from random import Random

from demo_scenario.benchmarks.quiet_house import QuietHouse
from demo_scenario.trials.ready_team import chat_of, name_of
from demo_scenario.trials.typed_results import typed_results
from storage.queries import people, training
from storage.records.training import SessionRecord
from storage.tables.wire import ButtonRow

ASKED_MOST = 40  # [questions] ch: far more than a session asks
LIKED = ("reserve", "effort", "pain.none", "week.slept", "morning.score")
"""The acts that such an athlete taps, each by the first button that offers it."""

Timed = Callable[[str, float], None]
"""Told of each answer: what was said (``typed``, or the act of the button), and its time [ms]."""


class WillingAthlete:
    """One athlete of the made team in a quiet house."""

    def __init__(self, house: QuietHouse, number: int = 0) -> None:
        """Be the athlete with this number, from 0."""
        self._house = house
        self._chat_id, self._name = chat_of(number), name_of(number)

    async def train(self, timed: Timed, chance: Random) -> None:
        """Type the results of the open session line by line, and tap until it closes.

        Raises:
            RuntimeError: it did not close.

        """
        session = self.open_sessions()[0]
        self._house.sent()
        for line in typed_results(session, self._house.inside.library, chance):
            timed("typed", await self._house.hear(self._chat_id, self._name, line.text))
        for _ in range(ASKED_MOST):
            found = self._offered()
            if found is None:
                break
            act, token, message_id = found
            took_ms = await self._house.feel(self._chat_id, self._name, token, message_id)
            timed(act, took_ms)
        if any(one.id == session.id for one in self.open_sessions()):
            raise RuntimeError(f"the session of {self._name} did not close")

    async def type_some(self, most: int) -> None:
        """Type the first results of the open session and leave it at that."""
        (session,) = self.open_sessions()
        lines = typed_results(session, self._house.inside.library, Random(session.id))
        for line in lines[:most]:
            await self._house.hear(self._chat_id, self._name, line.text)

    def open_sessions(self) -> tuple[SessionRecord, ...]:
        """Return what was sent to the athlete and is not closed."""
        with self._house.database.transaction() as tx:
            person = people.person_in_chat(tx, self._chat_id)
            return () if person is None else training.open_sessions(tx, person.id)

    def _offered(self) -> tuple[str, str, int] | None:
        """Return the button that is tapped next: its act, its token and its message's id."""
        mine = [row for row in self._house.sent() if row.chat_id == self._chat_id]
        with self._house.database.transaction() as tx:
            for row in mine:
                shown = [token for line in row.payload.get("buttons", ()) for _, token in line]
                for token in shown:
                    act = tx.get_one(ButtonRow, token).act
                    if act in LIKED:
                        return act, token, int(row.payload.get("message_id") or row.id or 0)
        return None
