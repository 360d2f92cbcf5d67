"""Which features were used, by whom and when: looked up on the screens and in the database."""

import re
from collections.abc import Iterable, Iterator
from datetime import date, datetime
from itertools import pairwise

from pydantic import BaseModel, ConfigDict
from sqlmodel import Session, col, select

from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.play import Stage
from demo_scenario.player import Player
from demo_scenario.scenes.features import FEATURES, Feature
from storage.tables.care import AuditRow
from storage.tables.people import PersonRow
from storage.tables.training import SessionRow
from storage.tables.wire import DueRow

REFUSED = re.compile(r"(?i)send it like this|i do not know|i know no|no athlete of yours")
NAMES_SHOWN = 3  # [people] ch: a table's line

Trace = tuple[datetime, str]


class Used(BaseModel):
    """One feature: who used it, first when; nobody where it was not."""

    model_config = ConfigDict(frozen=True)

    feature: str
    people: tuple[str, ...]
    first_on: date | None
    times: int


def used_in(stage: Stage) -> tuple[Used, ...]:
    """Look every feature up."""
    with stage.house.database.transaction() as tx:
        names = {row.id: row.name for row in tx.exec(select(PersonRow))}
        traces = _Traces(tx, stage, names)
        return tuple(_used(one, sorted(traces.of(one)), stage) for one in FEATURES)


def _used(feature: Feature, found: list[Trace], stage: Stage) -> Used:
    at = [one for one in found if one[0] >= stage.team.begins_at()]
    people = dict.fromkeys(name for _, name in at)
    return Used(
        feature=feature.name,
        people=tuple(people),
        first_on=at[0][0].date() if at else None,
        times=len(at),
    )


class _Traces:
    """Everything that proves a use, gathered once."""

    def __init__(self, tx: Session, stage: Stage, names: dict[int | None, str]) -> None:
        self._names = names
        self._audits = tx.exec(select(AuditRow).order_by(col(AuditRow.id))).all()
        self._dues = tx.exec(select(DueRow).where(DueRow.outcome == "sent")).all()
        self._off = tx.exec(
            select(SessionRow).where(col(SessionRow.called_off_because).is_not(None))
        ).all()
        self._screens = [(player, player.sees()) for player in stage.players]

    def of(self, feature: Feature) -> Iterator[Trace]:
        """Yield each use: when and by whom."""
        for audit in self._audits:
            if feature.audit and audit.what == feature.audit:
                yield audit.at, self._who(audit.actor_id, audit.athlete_id)
        for due in self._dues:
            if feature.due and due.kind == feature.due:
                yield due.handled_at, self._who(due.person_id, None)
        for off in self._off:
            when = off.sent_at or off.closed_at
            if feature.off_for and off.called_off_because == feature.off_for and when:
                yield when, self._who(off.athlete_id, None)
        if feature.wrote:
            yield from _answered(feature.wrote, self._screens)
        if feature.says or feature.own or feature.file:
            yield from _on_screens(feature, self._screens)

    def _who(self, first: int | None, second: int | None) -> str:
        return self._names.get(first) or self._names.get(second) or "the house"


def _on_screens(
    feature: Feature, screens: Iterable[tuple[Player, tuple[ShownMessage, ...]]]
) -> Iterator[Trace]:
    pattern = re.compile(feature.says, re.MULTILINE) if feature.says else None
    name = re.compile(feature.file) if feature.file else None
    for player, messages in screens:
        for message in messages:
            if _shows(feature, message, pattern, name):
                yield message.sent_at, player.name


def _answered(
    command: str, screens: Iterable[tuple[Player, tuple[ShownMessage, ...]]]
) -> Iterator[Trace]:
    """Yield each time that somebody gave a command and the bot did what it says."""
    for player, messages in screens:
        for message, behind in pairwise(messages):
            is_given = not message.is_from_bot and message.text.split(" ")[0] == command
            if is_given and behind.is_from_bot and not REFUSED.search(behind.text):
                yield message.sent_at, player.name


def _shows(
    feature: Feature,
    message: ShownMessage,
    pattern: re.Pattern[str] | None,
    name: re.Pattern[str] | None,
) -> bool:
    if not message.is_from_bot:
        return feature.own is not None and message.media is feature.own
    if name is not None:
        return message.file_name is not None and bool(name.search(message.file_name))
    if pattern is None or (feature.shows is not None and message.media is not feature.shows):
        return False
    said = (message.text, *(one.text for one in message.history))
    return any(pattern.search(text) for text in said)


def unused(found: Iterable[Used]) -> tuple[str, ...]:
    """Return the names of what nobody used."""
    return tuple(one.feature for one in found if not one.people)
