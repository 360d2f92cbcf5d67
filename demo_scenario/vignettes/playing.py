"""Play one vignette: the history by the acts that record it, then the message, then look."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import cache
from typing import Any

from sqlmodel import Session, col, select

from bot.acts import pain_consequences, pain_picture, pain_report
from bot.desks import front
from bot.events import Wrote
from bot.turn import Turn
from demo_scenario.vignettes.house import ATHLETE_CHAT, NOON, VignetteHouse
from demo_scenario.vignettes.values import Open, QuestionKind, Scored, Sent, Vignette
from scheduler.pain.events import Certainty, FlagRaised, Occasion, SessionTrained
from scheduler.pain.red_flags import RedFlag
from scheduler.pain.values import Level, Side, Site, Urgency, regions_of
from storage import buttons
from storage.queries import training
from storage.tables.care import AlertRow
from storage.tables.wire import OutboxRow

SESSION_HOUR, MORNING_HOUR = 18, 8  # [h] ch: when the past's reports were made
AFTER_TRAINING = frozenset({QuestionKind.PAIN, QuestionKind.RESERVE, QuestionKind.EFFORT})
A_MOMENT = timedelta(minutes=2)  # [min] ch: how long the question has stood open


@dataclass(frozen=True)
class Played:
    """What came of a vignette."""

    vignette: Vignette
    level: Level
    urgency: Urgency | None
    asks: bool
    flags: tuple[str, ...]
    texts: tuple[str, ...]

    @property
    def is_below(self) -> bool:
        """True where the level is lower than it must be."""
        return self.level < self.vignette.expect.level


@cache
def _house(stage: int, language: str) -> VignetteHouse:
    return VignetteHouse(stage=stage, language=language)


def play(vignette: Vignette) -> Played:
    """Play it against the true acts; nothing of it is kept."""
    house = _house(min(vignette.athlete.stage, 5), vignette.language)
    with house.undone() as tx:
        for number, event in enumerate(sorted(vignette.history, key=lambda one: -one.days_ago), 1):
            _happen(house, tx, event, number)
        if vignette.question is not None:
            _ask(house, house.turn(tx, NOON - A_MOMENT), vignette.question)
        return _say(house, tx, vignette)


def _say(house: VignetteHouse, tx: Session, vignette: Vignette) -> Played:
    turn = house.turn(tx, NOON)
    known = {flag.key for flag in pain_picture.picture_of(turn, house.athlete).flags}
    last_alert = max((one or 0 for one in tx.exec(select(AlertRow.id))), default=0)
    last_row = max((one or 0 for one in tx.exec(select(OutboxRow.id))), default=0)
    front.handle(turn, _wrote(vignette.say, NOON, 900_000))
    picture = pain_picture.picture_of(turn, house.athlete)
    fresh = [flag for flag in picture.flags if flag.key not in known]
    raised = tx.exec(select(AlertRow.urgency).where(col(AlertRow.id) > last_alert)).all()
    said = tx.exec(
        select(OutboxRow).where(col(OutboxRow.id) > last_row, OutboxRow.chat_id == ATHLETE_CHAT)
    ).all()
    urgencies = [Urgency(one) for one in raised]
    return Played(
        vignette=vignette,
        level=picture.level,
        urgency=min(urgencies, key=tuple(Urgency).index, default=None),
        asks=any(flag.certainty is Certainty.ASKED for flag in fresh),
        flags=tuple(flag.flag.value for flag in fresh),
        texts=tuple(row.payload["text"] for row in said if "text" in row.payload),
    )


def _happen(house: VignetteHouse, tx: Session, event: Scored | Sent, number: int) -> None:
    day = NOON - timedelta(days=event.days_ago)
    if isinstance(event, Sent):
        front.handle(house.turn(tx, day), _wrote(event.say, day, 100_000 + number))
        return
    is_morning = event.at == "morning"
    turn = house.turn(tx, day.replace(hour=MORNING_HOUR if is_morning else SESSION_HOUR))
    if turn.now >= NOON:
        turn = house.turn(tx, NOON - timedelta(hours=1))  # today's session is before the message
    before = pain_picture.picture_of(turn, house.athlete)
    if is_morning:
        pain_report.add_morning(
            turn, house.athlete, site=event.site, side=event.side, score=event.score, must_ask=False
        )
    else:
        _train(turn, house, event.site, event.side)
        pain_report.add(
            turn,
            house.athlete,
            site=event.site,
            side=event.side,
            score=event.score,
            occasion=Occasion.AFTER_SESSION,
        )
    pain_consequences.follow(turn, house.person, house.athlete, before, words_said="")


def _train(turn: Turn, house: VignetteHouse, site: Site, side: Side) -> None:
    """A session that loaded what hurt; the report after it is about this session."""
    trained = SessionTrained(
        key=pain_picture.new_key(turn, house.person.id),
        at_utc=turn.now - timedelta(minutes=40),
        loaded=frozenset(regions_of(site, side)),
    )
    pain_picture.record_event(turn, house.person.id, trained)


def _ask(house: VignetteHouse, turn: Turn, question: Open) -> None:
    match question.kind:
        case QuestionKind.CHEST:
            raised = FlagRaised(
                key=pain_picture.new_key(turn, house.person.id),
                at_utc=turn.now,
                flag=RedFlag.CHEST_INSIDE,
                certainty=Certainty.ASKED,
            )
            pain_picture.record_event(turn, house.person.id, raised)
        case QuestionKind.RED_FLAG_LIST:
            pass  # it is asked by taps alone: a text beside it is read like any other
        case _:
            if question.kind in AFTER_TRAINING:
                # It is asked at the end of a session: that session was trained.
                _train(turn, house, question.site or Site.ELSEWHERE, question.side or Side.BOTH)
            kind, subject = _question(house, turn, question)
            buttons.ask(
                turn.tx,
                chat_id=ATHLETE_CHAT,
                person_id=house.person.id,
                kind=kind,
                subject=dict(subject),
                now=turn.now,
            )


def _question(house: VignetteHouse, turn: Turn, question: Open) -> tuple[str, Mapping[str, Any]]:
    sessions = training.open_sessions(turn.tx, house.person.id)
    session = sessions[0].id if sessions else None
    place = {
        "site": (question.site or Site.ELSEWHERE).value,
        "side": (question.side or Side.BOTH).value,
    }
    if question.kind is QuestionKind.MORNING:
        return "morning", place
    if question.kind is QuestionKind.PAIN and question.site is not None:
        return "pain.place", {**place, "session": session, "asked_at": turn.now.isoformat()}
    return question.kind.value, {"session": session}


def _wrote(text: str, at: datetime, message_id: int) -> Wrote:
    return Wrote(chat_id=ATHLETE_CHAT, at=at, message_id=message_id, text=text)
