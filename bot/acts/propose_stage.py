"""When the checklist is complete: propose the next stage to the coach, who decides."""

from bot.acts.checklist import checklist_of, may_be_complete, measures_of
from bot.acts.coach_dues import CoachDue
from bot.acts.find_athlete import subject_of
from bot.acts.timing import timing_of
from bot.turn import Tap, Turn
from bot.wording import proposing
from scheduler.calendar.waking_hours import is_awake
from scheduler.training.gates import Checklist
from storage.queries import care, due, people
from storage.records.care import Proposal
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

KIND = "stage_up"
TOLD = CoachDue.PROPOSAL_TOLD


def propose_if_complete(turn: Turn, person: Person, athlete: Athlete) -> bool:
    """Propose once for a stage; a proposal that was answered for this stage is not repeated."""
    if athlete.is_practice:
        return False
    earlier = care.proposals(turn.tx, [person.id], kind=KIND, only_open=False)
    since = athlete.stage_since.isoformat()
    if any(one.facts.get("stage_since") == since for one in earlier):
        return False
    if not may_be_complete(turn, person, athlete):
        return False
    asked = checklist_of(turn, person, athlete)
    if not asked.is_complete:
        return False
    care.propose(
        turn.tx,
        athlete_id=person.id,
        kind=KIND,
        facts={
            "stage": athlete.stage + 1,
            "from_stage": athlete.stage,
            "stage_since": since,
            "checklist": asked.model_dump(mode="json"),
        },
        at=turn.now,
    )
    return True


def tell_waiting(turn: Turn, coach: Person) -> None:
    """Put what was proposed overnight before the coach, once, in their waking hours."""
    if not is_awake(turn.now, timing=timing_of(coach)):
        return
    for proposal in care.proposals_to(turn.tx, coach.id, kind=KIND):
        is_new = due.take(
            turn.tx,
            person_id=coach.id,
            kind=TOLD,
            subject=str(proposal.id),
            due_at=proposal.made_at,
            now=turn.now,
        )
        if is_new:
            _tell(turn, coach, people.person(turn.tx, proposal.athlete_id), proposal)


def _tell(turn: Turn, coach: Person, person: Person, proposal: Proposal) -> None:
    tongue = turn.tongue(coach)
    about = {"proposal": proposal.id}
    from_stage = int(proposal.facts["from_stage"])
    turn.say(
        coach,
        proposing.stage_up(
            tongue,
            person.name,
            int(proposal.facts["stage"]),
            Checklist.model_validate(proposal.facts["checklist"]),
            measures=measures_of(turn, from_stage),
        ),
        kind=MessageKind.NOTICE,
        subject=subject_of(person),
        taps=[
            [
                Tap(tongue.say("Move up"), "proposal.accept", about),
                Tap(tongue.say("Not yet"), "proposal.decline", about),
            ]
        ],
    )
