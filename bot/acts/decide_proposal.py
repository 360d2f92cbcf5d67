"""The coach decides what was proposed: yes moves the athlete up, not yet leaves the stage."""

from collections.abc import Mapping
from typing import Any

from bot.acts import change_stage, find_athlete, propose_stage, review, tests_end
from bot.acts.checklist import checklist_of
from bot.acts.find_athlete import Named, subject_of
from bot.acts.pain_picture import picture_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_decisions, coach_tests
from scheduler.reasons import Reason
from storage.queries import care, people
from storage.records.care import Proposal
from storage.records.people import Person

ACCEPT, DECLINE = "proposal.accept", "proposal.decline"
ACCEPTED, DECLINED = "proposal.accepted", "proposal.declined"


def accept(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Take the proposal, unless the checklist has opened again since."""
    found = _open(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    proposal, named = found
    if proposal.kind == propose_stage.KIND:
        return _move_up(turn, coach, proposal, named)
    if proposal.kind == tests_end.KIND:
        return _take_suggestion(turn, coach, proposal, named)
    _answer(turn, coach, proposal, what=ACCEPTED, answer="yes")
    turn.say(
        coach,
        coach_decisions.accepted(
            turn.tongue(coach),
            name=named.person.name,
            title=title_of(turn, coach, proposal),
            kind=proposal.kind,
        ),
        subject=subject_of(named.person),
    )
    return Outcome.COMMAND


def decline(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Not yet: the athlete keeps the stage and is not told of what never happened."""
    found = _open(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    proposal, named = found
    _answer(turn, coach, proposal, what=DECLINED, answer="not yet")
    turn.say(
        coach,
        coach_decisions.declined(
            turn.tongue(coach), name=named.person.name, title=title_of(turn, coach, proposal)
        ),
        subject=subject_of(named.person),
    )
    return Outcome.COMMAND


def _move_up(turn: Turn, coach: Person, proposal: Proposal, named: Named) -> Outcome:
    stage = int(proposal.facts["stage"])
    checklist = checklist_of(turn, named.person, named.athlete)
    if named.athlete.stage != stage - 1 or not checklist.is_complete:
        why = coach_decisions.reason_of_checklist(turn.tongue(coach))
        again = Named(person=named.person, athlete=named.athlete, rest=f"{stage} {why}")
        return change_stage.ask_or_change(turn, coach, again)
    _answer(turn, coach, proposal, what=ACCEPTED, answer="yes")
    change_stage.change(
        turn,
        coach,
        named.person,
        named.athlete,
        stage=stage,
        why=coach_decisions.reason_of_checklist(turn.tongue(coach)),
        reasons=tuple(item.reason for item in checklist.items),
    )
    return Outcome.COMMAND


def _take_suggestion(turn: Turn, coach: Person, proposal: Proposal, named: Named) -> Outcome:
    """Set the stage that tests suggested; upwards past pain or an alert it is asked once more."""
    stage, person, athlete = int(proposal.facts["stage"]), named.person, named.athlete
    why = coach_tests.reason_of_tests(turn.tongue(coach))
    is_held = not picture_of(turn, athlete).rested.is_empty or bool(
        care.open_alerts(turn.tx, athlete_id=person.id)
    )
    is_changed = athlete.stage != int(proposal.facts["from_stage"])
    if is_changed or (stage > athlete.stage and is_held):
        again = Named(person=person, athlete=athlete, rest=f"{stage} {why}")
        return change_stage.ask_or_change(turn, coach, again)
    _answer(turn, coach, proposal, what=ACCEPTED, answer="yes")
    reasons = tuple(Reason.model_validate(one) for one in proposal.facts["reasons"])
    change_stage.change(turn, coach, person, athlete, stage=stage, why=why, reasons=reasons)
    return Outcome.COMMAND


def _open(
    turn: Turn, coach: Person, arguments: Mapping[str, Any]
) -> tuple[Proposal, Named] | Outcome:
    proposal = care.proposal(turn.tx, int(arguments["proposal"]))
    if proposal is None:
        return Outcome.STALE_TAP
    named = find_athlete.tapped(turn, coach, {"athlete": proposal.athlete_id})
    if isinstance(named, Outcome):
        return named
    if proposal.answered_at is not None:
        text = coach_decisions.answered_before(turn.tongue(coach), name=named.person.name)
        turn.say(coach, text)
        return Outcome.STALE_TAP
    return proposal, named


def _answer(turn: Turn, coach: Person, proposal: Proposal, *, what: str, answer: str) -> None:
    care.answer_proposal(turn.tx, proposal.id, at=turn.now, answer=answer)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=what,
        athlete_id=proposal.athlete_id,
        actor_id=coach.id,
        words=title_of(turn, coach, proposal),
    )


def title_of(turn: Turn, coach: Person, proposal: Proposal) -> str:
    """Name a proposal in the coach's language, as plain text."""
    return coach_decisions.title(turn.tongue(coach), kind=proposal.kind, facts=proposal.facts)


def taps_for(turn: Turn, coach: Person, proposal: Proposal, *, name: str = "") -> list[Tap]:
    """Return the two buttons of a proposal, with the name where several stand together."""
    tongue = turn.tongue(coach)
    about = {"proposal": proposal.id}
    if proposal.kind == review.KIND:
        named = name or people.person(turn.tx, proposal.athlete_id).name
        return [review.show_tap(turn, coach, proposal, name=named)]
    yes = (
        coach_decisions.named_yes_label(tongue, name=name, kind=proposal.kind, facts=proposal.facts)
        if name
        else coach_decisions.yes_label(tongue, kind=proposal.kind)
    )
    return [
        Tap(yes, ACCEPT, about),
        Tap(coach_decisions.not_yet_label(tongue), DECLINE, about),
    ]
