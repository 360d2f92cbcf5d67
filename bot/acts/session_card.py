"""The running card of a session: what is recorded so far, and the one question that comes next."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from bot.acts import tests_card
from bot.acts.checklist import local_today
from bot.acts.item_facts import item_facts, sent_items
from bot.acts.open_question import open_question
from bot.turn import Tap, TapRows, Turn
from bot.wording import doses
from bot.wording import session as words
from bot.wording.movement_names import name_of
from bot.wording.tongue import Tongue
from scheduler.catalogue.values import Measure
from storage.queries import training
from storage.records.people import Person
from storage.records.training import ItemRecord, SessionRecord
from storage.records.wire import MessageKind

HOLD_ANSWERS_S = (0, 5, 10, 15, 20)  # [s] cp: coarse enough to feel; the last means "or more"
REP_ANSWERS = (0, 1, 2, 3, 4)  # [reps] zourdos2016, hackett2017: only 0-5 left are told well


class Step(StrEnum):
    """What a session still waits for."""

    ITEM = "item"
    RESERVE = "reserve"
    EFFORT = "effort"
    PAIN = "pain"
    TEST = "test"
    CLOSE = "close"
    NOTHING = "nothing"


@dataclass(frozen=True)
class Next:
    """The next step and the item that it is about, if any."""

    step: Step
    item: ItemRecord | None = None


def next_step(session: SessionRecord) -> Next:
    """Derive from the facts what to ask next; nothing is remembered apart from them."""
    items = sent_items(session)
    fresh = _without_reserve(items)
    if fresh:
        return Next(Step.RESERVE, fresh[0])
    missing = [item for item in items if not item.is_reported]
    if missing:
        is_next = session.is_step_by_step
        return Next(Step.ITEM, missing[0]) if is_next else Next(Step.NOTHING)
    if session.effort is None:
        return Next(Step.EFFORT)
    return Next(Step.CLOSE if session.is_pain_answered else Step.PAIN)


def _without_reserve(items: Sequence[ItemRecord]) -> list[ItemRecord]:
    """Return the main items whose last set is not judged yet, the latest answered first."""
    waiting = [
        item
        for item in items
        if item.pair is not None and item.sets and not item.is_reserve_asked and not item.reserve
    ]
    return sorted(waiting, key=reported_at, reverse=True)


def reported_at(item: ItemRecord) -> datetime:
    """Return when an item with sets was last answered."""
    return max(one.reported_at for one in item.sets)


def show(
    turn: Turn,
    person: Person,
    session_id: int,
    *,
    notes: Sequence[str] = (),
    edit_message_id: int | None = None,
    has_news: bool = False,
) -> Step:
    """Send the card, or turn the one that was tapped; return what it asks.

    ``has_news`` when it plays something back: then it is shown even if nothing is asked.
    """
    session = training.session(turn.tx, session_id)
    if session.is_test_day and tests_card.ask(turn, person, session):
        return Step.TEST
    ask = next_step(session)
    tongue = turn.tongue(person)
    question, taps = _question(turn, person, session, ask)
    if ask.step is Step.CLOSE and edit_message_id is None and not notes and not has_news:
        return ask.step  # nothing is asked, and the card was seen: the closing words follow
    lines = card_lines(turn, tongue, session)
    if lines and session.on != local_today(turn, person):
        lines = [words.of_day(tongue, session.on), *lines]
    text = "\n".join(part for part in (*notes, *lines) if part)
    if question:
        text = f"{text}\n\n{question}" if text else question
    if not text:
        return ask.step
    if edit_message_id is not None:
        turn.change(person, edit_message_id, text, taps=_with_change(tongue, session, taps))
    else:
        turn.say(
            person,
            text,
            kind=MessageKind.REPLY,
            taps=_with_change(tongue, session, taps),
            subject=f"session:{session.id}",
        )
    return ask.step


def card_lines(turn: Turn, tongue: Tongue, session: SessionRecord) -> list[str]:
    """Write what is recorded, a line an item, and what is still open."""
    lines = [_line(turn, tongue, session, item) for item in sent_items(session) if item.is_reported]
    open_names = [
        name_of(tongue, item_facts(turn, session, item).movement)
        for item in sent_items(session)
        if not item.is_reported
    ]
    if lines and open_names and not session.is_step_by_step:
        lines.append(words.still_open(tongue, open_names))
    if session.effort is not None:
        lines.append(words.effort_noted(tongue, session.effort))
    return lines


def _line(turn: Turn, tongue: Tongue, session: SessionRecord, item: ItemRecord) -> str:
    facts = item_facts(turn, session, item)
    if item.is_skipped and not item.sets:
        return words.skipped(tongue, facts)
    line = words.recorded(tongue, facts, tuple(one.done for one in item.sets), assumed="")
    if item.reserve is not None:
        line += " · " + doses.reserve_given(tongue, facts.dose.measure, item.reserve)
    return line


def _question(turn: Turn, person: Person, session: SessionRecord, ask: Next) -> tuple[str, TapRows]:
    tongue = turn.tongue(person)
    match ask.step:
        case Step.RESERVE if ask.item is not None:
            return _reserve(turn, person, session, ask.item)
        case Step.ITEM if ask.item is not None:
            return _item(turn, person, session, ask.item)
        case Step.EFFORT:
            open_question(turn, person, "effort", {"session": session.id})
            return words.effort_question(tongue), _effort_taps(session)
        case Step.PAIN:
            open_question(turn, person, "pain", {"session": session.id})
            return words.pain_question(tongue), _pain_taps(tongue, session)
    return "", ()


def _reserve(
    turn: Turn, person: Person, session: SessionRecord, item: ItemRecord
) -> tuple[str, TapRows]:
    facts = item_facts(turn, session, item)
    open_question(turn, person, "reserve", {"session": session.id, "item": item.id})
    return (
        words.reserve_question(turn.tongue(person), facts.movement, facts.dose),
        [
            _reserve_taps(session, item, facts.dose.measure),
            [
                Tap(
                    turn.tongue(person).say("Don't know"),
                    "reserve.unknown",
                    {"session": session.id, "item": item.id},
                )
            ],
        ],
    )


def _reserve_taps(session: SessionRecord, item: ItemRecord, measure: Measure) -> list[Tap]:
    values = REP_ANSWERS if measure is Measure.REPS else HOLD_ANSWERS_S
    return [
        Tap(
            f"{left}+" if left == values[-1] else str(left),
            "reserve",
            {"session": session.id, "item": item.id, "left": left, "top": left == values[-1]},
        )
        for left in values
    ]


def _item(
    turn: Turn, person: Person, session: SessionRecord, item: ItemRecord
) -> tuple[str, TapRows]:
    tongue = turn.tongue(person)
    facts = item_facts(turn, session, item)
    open_question(turn, person, "item", {"session": session.id, "item": item.id})
    about = {"session": session.id, "item": item.id}
    taps = [
        [Tap(tongue.say("As planned"), "item.as_planned", about)],
        [
            Tap(tongue.say("Not done"), "item.skip", about),
            Tap(tongue.say("How to do it"), "item.how_to", about),
        ],
    ]
    return words.item_question(tongue, facts), taps


def _effort_taps(session: SessionRecord) -> TapRows:
    def tap(effort: int) -> Tap:
        return Tap(str(effort), "effort", {"session": session.id, "effort": effort})

    return [[tap(effort) for effort in range(6)], [tap(effort) for effort in range(6, 11)]]


def _pain_taps(tongue: Tongue, session: SessionRecord) -> TapRows:
    about = {"session": session.id}
    return [
        [
            Tap(tongue.say("Nothing hurt"), "pain.none", about),
            Tap(tongue.say("Something hurts"), "pain.where", about),
        ]
    ]


def _with_change(tongue: Tongue, session: SessionRecord, taps: TapRows) -> TapRows:
    if not any(item.sets for item in session.items):
        return taps
    return [*taps, [Tap(tongue.say("Change a number"), "change", {"session": session.id})]]
