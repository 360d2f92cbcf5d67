"""When the checklist is complete: propose the next stage to the coach, who decides."""

from bot.acts.checklist import checklist_of
from bot.acts.find_athlete import subject_of
from bot.turn import Tap, Turn
from bot.wording import proposing
from storage.queries import care, people
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

KIND = "stage_up"


def propose_if_complete(turn: Turn, person: Person, athlete: Athlete) -> bool:
    """Propose once for a stage; a proposal that was answered for this stage is not repeated."""
    asked = checklist_of(turn, person, athlete)
    if not asked.is_complete:
        return False
    earlier = care.proposals(turn.tx, [person.id], kind=KIND, only_open=False)
    since = athlete.stage_since.isoformat()
    if any(one.facts.get("stage_since") == since for one in earlier):
        return False
    coach = people.person(turn.tx, athlete.coach_id)
    proposal = care.propose(
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
    tongue = turn.tongue(coach)
    about = {"proposal": proposal.id}
    turn.say(
        coach,
        proposing.stage_up(tongue, person.name, athlete.stage + 1, asked),
        kind=MessageKind.NOTICE,
        subject=subject_of(person),
        taps=[
            [
                Tap(tongue.say("Move up"), "proposal.accept", about),
                Tap(tongue.say("Not yet"), "proposal.decline", about),
            ]
        ],
    )
    return True
