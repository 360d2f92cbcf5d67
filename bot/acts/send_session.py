"""Sending a session: doses computed and fixed, what is left out checked once more, one message."""

from datetime import datetime

from bot.acts import (
    ask_for_clip,
    care_note,
    close_session,
    guided_tests,
    open_answer,
    pain_picture,
)
from bot.acts.dose_today import dose_for
from bot.acts.emergency_number import number_for
from bot.acts.item_facts import item_facts, sent_items
from bot.acts.pair_on_the_day import beside_pull
from bot.turn import Tap, TapRows, Turn
from bot.wording import guided_tests as test_words
from bot.wording import how_to as how_to_words
from bot.wording import pain as pain_words
from bot.wording import season as season_words
from bot.wording import session as words
from bot.wording.tongue import Tongue
from scheduler.pain.values import Level
from scheduler.reasons import Decision
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.training_reasons import DoseReason, GapReason
from scheduler.training.values import Dose
from storage.queries import care, people, training
from storage.records.people import Athlete, Person
from storage.records.training import OffBecause, SessionRecord, SessionState
from storage.records.wire import MessageKind

BEHIND_GAP = frozenset(
    {GapReason.SHARE_AFTER_TRAVEL, GapReason.SHARE_CAREFUL, GapReason.SHARE_AFTER_LONG}
)


def send(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    session_id: int,
    *,
    useful_until: datetime | None,
) -> bool:
    """Send a planned session; False when nothing of it may be trained."""
    close_older(turn, person, session_id)
    if guided_tests.take_over(turn, person, athlete, session_id, useful_until=useful_until):
        return True
    session = training.session(turn.tx, session_id)
    if not fix_doses(turn, person, athlete, session):
        close_session.call_off(turn, session, OffBecause.LEFT_OUT)
        care.write_audit(turn.tx, at=turn.now, what="session.nothing_left", athlete_id=person.id)
        say_nothing_left(turn, person, athlete)
        return False
    training.change_session(turn.tx, session_id, state=SessionState.SENT, sent_at=turn.now)
    session = training.session(turn.tx, session_id)
    turn.say(
        person,
        words.session(turn.tongue(person), session_facts(turn, person, athlete, session)),
        kind=MessageKind.SESSION,
        taps=session_taps_for(turn, person, athlete, session),
        subject=f"session:{session_id}",
        useful_until=useful_until,
    )
    ask_for_clip.ask_if_due(turn, person, athlete, session_id)
    return True


def fix_doses(turn: Turn, person: Person, athlete: Athlete, session: SessionRecord) -> bool:
    """Fix each item's dose as of today; what hurts is left out even if the plan still has it."""
    picture = pain_picture.picture_of(turn, athlete)
    sent = 0
    decided: dict[int, Decision[Dose]] = {}
    for item in session.items:
        movement = turn.house.library.movements[item.movement_key]
        arms = picture.rested.arms_allowed(movement)
        planned = frozenset(item.arms) if item.arms else arms
        if not arms & planned:
            training.change_item(turn.tx, item.id, is_left_out=True)
            continue
        decided[item.id] = dose_for(turn, person, athlete, item, on=session.on)
        sent += item.pair is not None
    for item in session.items:
        if item.id not in decided:
            continue
        decision = beside_pull(item, session.items, decided)
        arms = picture.rested.arms_allowed(turn.house.library.movements[item.movement_key])
        training.snapshot_dose(
            turn.tx,
            item.id,
            dose=decision.value,
            reasons=decision.reasons,
            arms=arms & frozenset(item.arms) if item.arms else arms,
        )
    return sent > 0


def close_older(turn: Turn, person: Person, session_id: int) -> None:
    """Close what was sent before and got no further answer: it never piles up."""
    for older in training.open_sessions(turn.tx, person.id):
        if older.id != session_id:
            close_session.close_quietly(turn, older)


def session_facts(
    turn: Turn, person: Person, athlete: Athlete, session: SessionRecord
) -> words.SessionFacts:
    """Gather what the message says; what was left out since it was sent is not shown again."""
    week = training.week_of(turn.tx, session.week_id)
    tongue = turn.tongue(person)
    note = season_words.week_note(tongue, week.kind, is_lighter=week.is_lighter)
    is_shared_week = week.sets_share < 1 and any(one.code in BEHIND_GAP for one in week.reasons)
    if not note and (is_shared_week or _is_behind_a_gap(turn, athlete, session)):
        note = season_words.week_note(tongue, SeasonWeekKind.RETURNING, is_lighter=False)
    return words.SessionFacts(
        on=session.on,
        letter=session.letter,
        minutes=session.minutes or athlete.profile.minutes,
        items=tuple(item_facts(turn, session, item) for item in sent_items(session)),
        left_out=care_note.for_session(turn, person, athlete, session),
        note=note,
    )


def _is_behind_a_gap(turn: Turn, athlete: Athlete, session: SessionRecord) -> bool:
    """Tell whether a day has fewer sets because of days without training, not for what healed."""
    if pain_picture.picture_of(turn, athlete).returns:
        return False
    items = sent_items(session)
    return any(why.code == DoseReason.SETS_SHARED for item in items for why in item.reasons)


def session_taps_for(
    turn: Turn, person: Person, athlete: Athlete, session: SessionRecord
) -> TapRows:
    """The buttons under a session, with the one for an answer about pain that is still open."""
    opening = open_answer.taps(turn, person, athlete)
    return [*opening, *session_taps(turn.tongue(person), session)]


def session_taps(tongue: Tongue, session: SessionRecord) -> TapRows:
    """The buttons under a session."""
    about = {"session": session.id}
    return [
        [
            Tap(tongue.say("All as planned"), "as_planned", about),
            Tap(tongue.say("Step by step"), "steps", about),
        ],
        [
            Tap(tongue.say("Swap one"), "swap", about),
            Tap(tongue.say("Can't today"), "cant", about),
        ],
        [
            Tap(how_to_words.label(tongue), "how_to", about),
            Tap(tongue.say("Something hurts"), "pain.where", about),
        ],
    ]


def reminder_taps(tongue: Tongue, session: SessionRecord) -> TapRows:
    """The two shortest answers, so that nobody scrolls back for them in the evening."""
    about = {"session": session.id}
    first = Tap(tongue.say("All as planned"), "as_planned", about)
    if session.is_test_day:
        first = Tap(test_words.start_label(tongue), "tests.start", about)
    return [[first, Tap(tongue.say("Can't today"), "cant", about)]]


def say_nothing_left(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Say why there is nothing to train, and what has to happen first."""
    picture = pain_picture.picture_of(turn, athlete)
    coach = people.person(turn.tx, athlete.coach_id)
    text = pain_words.nothing_to_train(
        turn.tongue(person), picture, coach=coach.name, number=number_for(turn, person, coach)
    )
    is_stopped = picture.level >= Level.CLINICIAN  # then no answer about a place changes it
    asked = "" if is_stopped else care_note.for_open(turn, person, athlete)
    taps = open_answer.taps(turn, person, athlete) if asked else ()
    turn.say(person, "\n".join(filter(None, (text, asked))), kind=MessageKind.SAFETY, taps=taps)
