"""Taps on buttons: asked, and answered in time or too late."""

from dataclasses import dataclass, field
from datetime import datetime, timedelta

from demo_scenario.loopback.bounds import CALLBACK_ANSWER_CHARS_MAX
from demo_scenario.loopback.refusals import bad_request

ANSWERABLE_FOR = timedelta(seconds=30)  # [s] CH: botapi says that late answers fail, not when


@dataclass(frozen=True, slots=True)
class TapAnswer:
    """How the bot answered a tap."""

    at: datetime
    text: str
    is_alert: bool


@dataclass(slots=True)
class Tap:
    """One tap; it is answered when ``answers`` is not empty."""

    query_id: str
    chat_id: int
    message_id: int
    data: str
    at: datetime
    answers: list[TapAnswer] = field(default_factory=list)


@dataclass(slots=True)
class TapBook:
    """Every tap by its query id."""

    _by_id: dict[str, Tap] = field(default_factory=dict)

    def open(self, tap: Tap) -> None:
        """Record a tap."""
        self._by_id[tap.query_id] = tap

    def of(self, query_id: str) -> Tap:
        """Return a tap by the id that tapping returned."""
        return self._by_id[query_id]

    def answered(self) -> tuple[Tap, ...]:
        """Return the taps that were answered, oldest first."""
        return tuple(tap for tap in self._by_id.values() if tap.answers)

    def unanswered(self) -> tuple[Tap, ...]:
        """Return the taps that nobody has answered."""
        return tuple(tap for tap in self._by_id.values() if not tap.answers)

    def answer(self, query_id: str, answer: TapAnswer) -> None:
        """Take the bot's answer, or refuse one that is too long, too late, or for no tap."""
        tap = self._by_id.get(query_id)
        if tap is None or answer.at - tap.at > ANSWERABLE_FOR:
            raise bad_request(
                "query is too old and response timeout expired or query ID is invalid"
            )
        if len(answer.text) > CALLBACK_ANSWER_CHARS_MAX:
            raise bad_request("MESSAGE_TOO_LONG")
        tap.answers.append(answer)
