"""Several readings of one message: asked with buttons, recorded as tapped, never guessed."""

from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Any

from bot.acts import change_result, record_results
from bot.acts.item_facts import known_session
from bot.acts.reading_context import AtHand
from bot.acts.session_card import Step, next_step
from bot.acts.still_open import answerable_session
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.known import ItemResult, KnownItem
from bot.reading.values import Asked, Correction, Recorded, Told
from bot.turn import Tap, Turn
from bot.wording import asking
from scheduler.training.values import ReserveAnswer
from storage import buttons
from storage.queries import training
from storage.records.people import Person

OPTIONS: Mapping[str, type[Recorded] | type[Correction] | type[Told]] = {
    "recorded": Recorded,
    "correction": Correction,
    "told": Told,
}

ASKED_FOR = timedelta(hours=12)  # [h] ch: as long as a session is told of on its day
NOT_KEPT = {"unread", "pains", "activities", "asks_coach"}
"""What was heard already, and the athlete's own words: a button holds results only."""


def ask(turn: Turn, person: Person, asked: Asked, event: Wrote, found: AtHand) -> Outcome:
    """Ask with the possible readings as buttons; nothing is recorded before a tap."""
    tongue = turn.tongue(person)
    items: dict[str, KnownItem] = {
        item.ref: item
        for session in found.all
        for item in known_session(turn, tongue, session).items
    }
    rows = [
        [
            Tap(
                asking.option_label(tongue, option, items),
                "reading.choose",
                {
                    "kind": type(option).__name__.lower(),
                    "option": option.model_dump(mode="json", exclude=NOT_KEPT),
                    "message": event.message_id,
                    "session": _session_of(option, found),
                },
            )
        ]
        for option in asked.options
    ]
    rows.append([Tap(asking.none_of_these(tongue), "reading.none", {})])
    turn.say(person, asking.question(tongue, asked), taps=rows)
    _close_question(turn, person)
    return Outcome.ASKED


def _close_question(turn: Turn, person: Person) -> None:
    """Take no later text for an answer to what was asked before; an item stays the one meant."""
    if person.chat_id is None:
        return
    question = buttons.open_question(turn.tx, chat_id=person.chat_id, now=turn.now)
    if question is not None and question.kind != "item":
        buttons.close_question(turn.tx, person.chat_id)


def _session_of(option: Recorded | Correction | Told, found: AtHand) -> int | None:
    """Name the session that an option is about: a correction is about what was answered last."""
    session = found.answered if isinstance(option, Correction) else found.session
    return session.id if session else None


def choose(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Record what the tapped button said."""
    option = OPTIONS[arguments["kind"]].model_validate(arguments["option"])
    session_id = int(option.session_ref) if isinstance(option, Recorded) else arguments["session"]
    if session_id is None:
        return Outcome.STALE_TAP
    session = answerable_session(turn, person, session_id)
    if session is None:
        return Outcome.STALE_TAP
    match option:
        case Recorded():
            record_results.record(
                turn,
                person,
                session_id,
                option.items,
                assumptions=option.assumptions,
                effort=option.effort,
                message_id=arguments["message"],
                edit_message_id=event.message_id,
            )
            return Outcome.RECORDED
        case Correction():
            return change_result.apply(turn, person, option, session)
    return _told(turn, person, option, session_id, event)


def without_asked(
    turn: Turn, person: Person, items: Sequence[ItemResult]
) -> tuple[ItemResult, ...]:
    """Leave out "not done" for items whose figures were sent and are still asked about.

    "The rest not done" behind an open question means what was left besides these figures.
    """
    if not any(one.is_skipped and not one.sets for one in items):
        return tuple(items)
    since = turn.now - ASKED_FOR
    shown = buttons.unused_arguments(
        turn.tx, person_id=person.id, act="reading.choose", since=since
    )
    asked = {
        result["ref"]
        for one in shown
        if one["kind"] == "recorded"
        for result in one["option"]["items"]
        if result.get("sets")
    }
    return tuple(one for one in items if one.sets or one.ref not in asked)


def none_of_these(
    turn: Turn, person: Person, _arguments: Mapping[str, Any], event: Tapped
) -> Outcome:
    """No reading was right: nothing is recorded, and the person is told what helps."""
    text = asking.write_again(turn.tongue(person))
    turn.answer_tap(person, event.message_id, text)
    return Outcome.ANSWERED


def _told(turn: Turn, person: Person, told: Told, session_id: int, event: Tapped) -> Outcome:
    if told.effort is not None:
        training.change_session(turn.tx, session_id, effort=round(told.effort))
    ask = next_step(training.session(turn.tx, session_id))
    if told.reserve is not None and ask.step is Step.RESERVE and ask.item is not None:
        answer = ReserveAnswer(left=told.reserve.left, is_at_least=told.reserve.is_at_least)
        training.change_item(turn.tx, ask.item.id, reserve=answer, is_reserve_asked=True)
    record_results.go_on(turn, person, session_id, edit_message_id=event.message_id)
    return Outcome.ANSWERED


TAPS = {"reading.choose": choose, "reading.none": none_of_these}
