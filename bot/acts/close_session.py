"""Closing a session: what changes next time and why, and a best when there was one."""

from bot.acts import guided_tests, pain_picture, weekly_question
from bot.acts.bests import bests_of_session
from bot.acts.dose_today import dose_for
from bot.acts.item_facts import item_facts, sent_items
from bot.acts.session_card import Step
from bot.turn import Turn
from bot.wording import changes
from bot.wording import session as words
from storage.queries import care, people, training
from storage.records.people import Person
from storage.records.training import OffBecause, SessionRecord, SessionState

LINES_MOST = 3  # [lines] ch: what changes fits one glance; all of it is behind /why


def close_if_done(turn: Turn, person: Person, session_id: int, step: Step) -> bool:
    """Close the session when its last question was answered."""
    if step is not Step.CLOSE:
        return False
    session = training.session(turn.tx, session_id)
    if session.closed_at is None:
        close(turn, person, session)
    return True


def close(turn: Turn, person: Person, session: SessionRecord) -> None:
    """Write down the decisions about the next doses, and tell them in a few lines."""
    training.change_session(turn.tx, session.id, closed_at=turn.now)
    tongue = turn.tongue(person)
    bests = bests_of_session(turn, tongue, session)
    decided = _decide_next(turn, person, session)
    shown = decided[:LINES_MOST]
    more = len(decided) - len(shown)
    turn.say(person, words.closed(tongue, bests=bests, changes=shown, more=more))
    athlete = people.athlete(turn.tx, person.id)
    if session.is_test_day and athlete is not None:
        guided_tests.after_session(turn, person, athlete, session)
    weekly_question.ask_if_last(turn, person, session)


def close_quietly(turn: Turn, session: SessionRecord) -> None:
    """Close what got no more answers: trained if anything was reported, missed else."""
    state = SessionState.TRAINED if session.has_results else SessionState.MISSED
    training.change_session(turn.tx, session.id, closed_at=turn.now, state=state)


def call_off(turn: Turn, session: SessionRecord, because: OffBecause) -> None:
    """Call a session off; one in which something was done ends there, trained."""
    training.change_session(
        turn.tx,
        session.id,
        state=SessionState.TRAINED if session.has_results else SessionState.CALLED_OFF,
        closed_at=turn.now,
        called_off_because=because,
    )


def call_off_open(turn: Turn, person: Person, because: OffBecause) -> None:
    """Call off what is out and unanswered; it counts neither as trained nor as missed."""
    for session in training.open_sessions(turn.tx, person.id):
        if session.has_results:
            close_quietly(turn, session)
        else:
            call_off(turn, session, because)


def _decide_next(turn: Turn, person: Person, session: SessionRecord) -> list[str]:
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return []
    lines = []
    left_out = pain_picture.picture_of(turn, athlete).rested
    for item in sent_items(session):
        if item.dose is None or not item.sets:
            continue
        decision = dose_for(turn, person, athlete, item, on=session.on, is_projection=True)
        change = changes.direction_of(item.dose, decision.value)
        care.write_audit(
            turn.tx,
            at=turn.now,
            what=f"dose.{change}",
            athlete_id=person.id,
            reasons=decision.reasons,
            before={"movement": item.movement_key, "dose": item.dose.model_dump(mode="json")},
            after={"dose": decision.value.model_dump(mode="json"), "session": session.id},
        )
        movement = item_facts(turn, session, item).movement
        # What is left out has no next time: that was said in the answer about the pain.
        if change != changes.KEPT and left_out.arms_allowed(movement):
            lines.append(
                changes.change_line(
                    turn.tongue(person), movement, item.dose, decision.value, decision.reasons
                )
            )
    return lines
