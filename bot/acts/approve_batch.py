"""Several decisions by one tap, where none of them needs a thought; each stays one of its own."""

from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Any

from bot.acts import change_stage, propose_stage, review
from bot.acts.change_stage import Changed
from bot.acts.checklist import checklist_of
from bot.acts.find_athlete import by_id
from bot.acts.injuries import held_directions
from bot.acts.pain_picture import picture_of, worst_score_since
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_batch as words
from bot.wording import coach_decisions
from scheduler.pain.values import Level
from storage.queries import care
from storage.records.care import Proposal
from storage.records.people import Athlete, AthleteState, Person

SHOW, APPROVE, LEAVE = "proposal.batch", "proposal.batch_yes", "proposal.batch_no"
ACCEPTED = "proposal.accepted"
NO_DOUBT = frozenset({propose_stage.KIND, review.KIND})
"""Kinds of open decisions beside which a stage may still be decided without a thought."""
BATCH_LEAST = 2  # [decisions] ch: one alone has a button of its own
BATCH_MOST = 30  # [decisions] ch: a list that is still read; the rest is offered after it

Plain = tuple[Proposal, Person, Athlete]


def offer(turn: Turn, coach: Person, *, among: Sequence[int]) -> list[list[Tap]]:
    """Return the row with the button, empty where fewer than two decisions need no thought."""
    count = len(_plain(turn, coach, among))
    if count < BATCH_LEAST:
        return []
    return [[Tap(words.offer_label(turn.tongue(coach), count), SHOW, {"among": list(among)})]]


def show(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """List what would be approved."""
    tongue = turn.tongue(coach)
    plain = _plain(turn, coach, arguments["among"])
    if not plain:
        turn.say(coach, words.nothing(tongue))
        return Outcome.STALE_TAP
    about = {"proposals": [proposal.id for proposal, _, _ in plain]}
    turn.say(
        coach,
        words.ask(tongue, [_move(person, athlete) for _, person, athlete in plain]),
        taps=[
            [
                Tap(words.yes_label(tongue, len(plain)), APPROVE, about),
                Tap(words.leave_label(tongue), LEAVE),
            ]
        ],
    )
    return Outcome.ASKED


def approve(turn: Turn, coach: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Approve those of the list that are still without a doubt; the others stay to be decided."""
    tongue = turn.tongue(coach)
    asked = [care.proposal(turn.tx, int(one)) for one in arguments["proposals"]]
    found = [pair for one in asked if one is not None and (pair := _its_athlete(turn, coach, one))]
    plain = [one for one in found if _is_plain(turn, *one)]
    if not plain:
        turn.answer_tap(coach, event.message_id, words.nothing(tongue))
        return Outcome.STALE_TAP
    done = [(one[1], one[2], _move_up(turn, coach, *one)) for one in plain]
    said = words.done(
        tongue,
        [_move(person, athlete) for person, athlete, _ in done],
        held=[one[1].name for one in found if one not in plain],
        untold=sum(not changed.is_told for _, _, changed in done),
    )
    turn.say(
        coach,
        said,
        taps=[
            [
                change_stage.take_back_tap(
                    words.take_back_label(tongue, person.name), person, changed
                )
            ]
            for person, _, changed in done
        ],
    )
    return Outcome.COMMAND


def leave(turn: Turn, coach: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Nothing is approved."""
    turn.answer_tap(coach, event.message_id, words.left(turn.tongue(coach)))
    return Outcome.COMMAND


def _plain(turn: Turn, coach: Person, among: Sequence[int]) -> list[Plain]:
    proposals = care.proposals(turn.tx, list(among), kind=propose_stage.KIND)
    found = [pair for one in proposals if (pair := _its_athlete(turn, coach, one))]
    return [one for one in found if _is_plain(turn, *one)][:BATCH_MOST]


def _its_athlete(turn: Turn, coach: Person, proposal: Proposal) -> Plain | None:
    """Return a proposal with its athlete, while the coach may decide about them."""
    pair = by_id(turn, coach, proposal.athlete_id)
    if pair is None or pair[1].is_practice:
        return None
    return proposal, *pair


def _is_plain(turn: Turn, proposal: Proposal, person: Person, athlete: Athlete) -> bool:
    """Tell whether nothing about a proposal asks for a thought, as things stand now."""
    if proposal.answered_at is not None or proposal.kind != propose_stage.KIND:
        return False
    if athlete.state is not AthleteState.TRAINING or person.is_blocked:
        return False
    if athlete.stage != int(proposal.facts["stage"]) - 1:
        return False
    return not _has_doubt(turn, person, athlete) and checklist_of(turn, person, athlete).is_complete


def _has_doubt(turn: Turn, person: Person, athlete: Athlete) -> bool:
    """Tell of pain of any size lately, what is held, an alert, a message, another decision."""
    picture = picture_of(turn, athlete)
    since = turn.now - timedelta(days=turn.house.rulebook.gates.pain_days.whole)
    return bool(
        picture.level > Level.NONE
        or picture.flags
        or picture.asks
        or picture.returns
        or not picture.rested.is_empty
        or worst_score_since(turn, athlete, since) > 0
        or held_directions(turn, athlete)
        or care.open_alerts(turn.tx, athlete_id=person.id)
        or care.unanswered(turn.tx, [person.id])
        or any(one.kind not in NO_DOUBT for one in care.proposals(turn.tx, [person.id]))
    )


def _move_up(
    turn: Turn, coach: Person, proposal: Proposal, person: Person, athlete: Athlete
) -> Changed:
    tongue = turn.tongue(coach)
    care.answer_proposal(turn.tx, proposal.id, at=turn.now, answer="yes")
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=ACCEPTED,
        athlete_id=person.id,
        actor_id=coach.id,
        words=coach_decisions.title(tongue, kind=proposal.kind, facts=proposal.facts),
    )
    return change_stage.carry_out(
        turn,
        coach,
        person,
        athlete,
        stage=athlete.stage + 1,
        why=coach_decisions.reason_of_checklist(tongue),
        reasons=tuple(item.reason for item in checklist_of(turn, person, athlete).items),
    )


def _move(person: Person, athlete: Athlete) -> tuple[str, int, int]:
    return person.name, athlete.stage, athlete.stage + 1


TAPS = {SHOW: show, APPROVE: approve, LEAVE: leave}
