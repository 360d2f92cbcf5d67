"""A coach changes a stage: recorded, told, planned anew, and to be taken back."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from bot.acts import ask_why, draw_week, propose_stage, tests_end
from bot.acts.about_athlete import about_tapped, entries
from bot.acts.checklist import checklist_of, local_today, measures_of
from bot.acts.find_athlete import Named, subject_of
from bot.acts.stage_history import CHANGED, TAKEN_BACK, held_stages, is_re_earned
from bot.acts.tell_athlete import tell
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_checklist, coach_stage
from scheduler.reasons import Reason
from storage.queries import care, people
from storage.records.people import Athlete, Person

ACT = "coach.stage"
STAGES = range(1, 6)
STAGE_AND_REASON = re.compile(r"\s*(?P<stage>-?\d{1,4})\b[\s,.:;-]*(?P<why>.*)", re.DOTALL)


@dataclass(frozen=True)
class Changed:
    """A change of stage: what stood before and after, and whether the athlete could be told."""

    before: Mapping[str, Any]
    after: Mapping[str, Any]
    is_told: bool


def ask_or_change(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Check the request; against an open checklist ask once more, else change."""
    tongue, athlete = turn.tongue(coach), named.athlete
    asked = STAGE_AND_REASON.match(named.rest)
    if asked is None:
        turn.say(coach, coach_stage.usage(tongue))
        return Outcome.NOT_UNDERSTOOD
    stage, why = int(asked["stage"]), asked["why"].strip()
    if stage not in STAGES:
        turn.say(coach, coach_stage.out_of_range(tongue, stage))
    elif stage == athlete.stage:
        turn.say(coach, coach_stage.same(tongue, name=named.person.name, stage=stage))
    elif not why:
        what = coach_stage.to_change(tongue, name=named.person.name, old=athlete.stage, new=stage)
        return ask_why.ask_in_words(turn, coach, named, act=ACT, what=what, rest=str(stage))
    else:
        return _against_checklist(turn, coach, named, stage=stage, why=why)
    return Outcome.NOT_UNDERSTOOD


def _against_checklist(turn: Turn, coach: Person, named: Named, *, stage: int, why: str) -> Outcome:
    person, athlete = named.person, named.athlete
    if stage > athlete.stage:
        checklist = checklist_of(turn, person, athlete)
        if not checklist.is_complete or stage - athlete.stage > 1:
            _ask_once_more(turn, coach, named, stage=stage, why=why)
            return Outcome.ASKED
    change(turn, coach, person, athlete, stage=stage, why=why)
    return Outcome.COMMAND


def _ask_once_more(turn: Turn, coach: Person, named: Named, *, stage: int, why: str) -> None:
    tongue, person, athlete = turn.tongue(coach), named.person, named.athlete
    lines = coach_checklist.lines(
        tongue,
        checklist_of(turn, person, athlete),
        measures=measures_of(turn, athlete.stage),
        only_open=True,
    )
    about = {"athlete": person.id, "from": athlete.stage, "stage": stage, "why": why}
    turn.say(
        coach,
        coach_stage.ask_once_more(
            tongue, name=person.name, old=athlete.stage, new=stage, open_lines=lines
        ),
        taps=[
            [
                Tap(coach_stage.move_anyway_label(tongue, stage), "coach.stage_anyway", about),
                Tap(coach_stage.leave_label(tongue), "coach.stage_leave", about),
            ]
        ],
        subject=subject_of(person),
    )


@about_tapped
def anyway(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The coach moves the athlete up against an open checklist."""
    stage = int(arguments["stage"])
    if found.athlete.stage != int(arguments["from"]):
        _say_changed_since(turn, coach, found.person, found.athlete)
        return Outcome.STALE_TAP
    change(turn, coach, found.person, found.athlete, stage=stage, why=str(arguments["why"]))
    return Outcome.COMMAND


@about_tapped
def leave(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], event: Tapped
) -> Outcome:
    """The coach leaves the stage as it is."""
    text = coach_stage.left_alone(
        turn.tongue(coach), name=found.person.name, stage=found.athlete.stage
    )
    turn.answer_tap(coach, event.message_id, text)
    return Outcome.COMMAND


def change(
    turn: Turn,
    coach: Person,
    person: Person,
    athlete: Athlete,
    *,
    stage: int,
    why: str,
    reasons: tuple[Reason, ...] = (),
) -> None:
    """Change the stage, record it, plan anew, tell both."""
    done = carry_out(turn, coach, person, athlete, stage=stage, why=why, reasons=reasons)
    _confirm(turn, coach, person, done, why=why)


def carry_out(
    turn: Turn,
    coach: Person,
    person: Person,
    athlete: Athlete,
    *,
    stage: int,
    why: str,
    reasons: tuple[Reason, ...] = (),
) -> Changed:
    """Change the stage, record it, plan anew, tell the athlete; whoever asked tells the coach."""
    before = _facts(athlete)
    new = people.change_athlete(
        turn.tx,
        person.id,
        stage=stage,
        stage_since=local_today(turn, person),
        stage_is_re_earned=has_served(turn, athlete, stage),
    )
    after = _facts(new)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=CHANGED,
        athlete_id=person.id,
        actor_id=coach.id,
        words=why,
        reasons=reasons,
        before=before,
        after=after,
    )
    close_proposals(turn, person, answer=f"stage {stage}")
    draw_week.redraw(turn, person, new)
    told = tell(
        turn,
        person,
        coach_stage.to_athlete(turn.tongue(person), coach=coach.name, old=athlete.stage, new=stage),
    )
    return Changed(before=before, after=after, is_told=told)


def _confirm(turn: Turn, coach: Person, person: Person, done: Changed, *, why: str) -> None:
    tongue = turn.tongue(coach)
    turn.say(
        coach,
        coach_stage.changed(
            tongue,
            name=person.name,
            old=int(done.before["stage"]),
            new=int(done.after["stage"]),
            why=why,
            is_told=done.is_told,
        ),
        taps=[[take_back_tap(coach_stage.take_back_label(tongue), person, done)]],
        subject=subject_of(person),
    )


def take_back_tap(label: str, person: Person, done: Changed) -> Tap:
    """Return the button that undoes a change of stage."""
    about = {"athlete": person.id, "before": dict(done.before), "after": dict(done.after)}
    return Tap(label, "coach.stage_back", about)


@about_tapped
def take_back(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Undo a change of stage, unless something changed since."""
    person, athlete = found.person, found.athlete
    before, after = arguments["before"], arguments["after"]
    if _facts(athlete) != after:
        _say_changed_since(turn, coach, person, athlete)
        return Outcome.STALE_TAP
    restored = people.change_athlete(
        turn.tx,
        person.id,
        stage=int(before["stage"]),
        stage_since=date.fromisoformat(before["stage_since"]),
        stage_is_re_earned=bool(before["stage_is_re_earned"]),
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=TAKEN_BACK,
        athlete_id=person.id,
        actor_id=coach.id,
        before=after,
        after=before,
    )
    draw_week.redraw(turn, person, restored)
    tell(
        turn,
        person,
        coach_stage.taken_back_to_athlete(
            turn.tongue(person), coach=coach.name, stage=restored.stage
        ),
    )
    turn.say(
        coach,
        coach_stage.taken_back(turn.tongue(coach), name=person.name, stage=restored.stage),
        subject=subject_of(person),
    )
    return Outcome.COMMAND


def has_served(turn: Turn, athlete: Athlete, stage: int) -> bool:
    """Tell whether the athlete has served the stage's weeks before."""
    history = care.audit_of(turn.tx, athlete.person_id, what=(CHANGED, TAKEN_BACK))
    least = turn.house.rulebook.stage(stage).least_weeks
    return is_re_earned(
        held_stages(history),
        stage=stage,
        least_weeks=least.value if least else 0,
    )


def close_proposals(turn: Turn, person: Person, *, answer: str) -> None:
    """A change of stage answers what was proposed about stages."""
    about_stages = {propose_stage.KIND, tests_end.KIND}
    for proposal in care.proposals(turn.tx, [person.id]):
        if proposal.kind not in about_stages:
            continue
        care.answer_proposal(turn.tx, proposal.id, at=turn.now, answer=answer)


def _facts(athlete: Athlete) -> dict[str, Any]:
    return {
        "stage": athlete.stage,
        "stage_since": athlete.stage_since.isoformat(),
        "stage_is_re_earned": athlete.stage_is_re_earned,
    }


def _say_changed_since(turn: Turn, coach: Person, person: Person, athlete: Athlete) -> None:
    turn.say(
        coach,
        coach_stage.changed_since(turn.tongue(coach), name=person.name, stage=athlete.stage),
    )


command, picked = entries(
    ask_or_change, act=ACT, example=coach_stage.EXAMPLE
)  # ``/stage NAME n reason``.
