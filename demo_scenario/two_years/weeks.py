"""The head of a week: what it is for, its sets, what was relaxed, and how the checklist moved."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts.injuries import held_directions
from bot.acts.own_standards import decided_by_coach
from bot.acts.stage_history import CHANGED, TAKEN_BACK, held_stages
from bot.acts.week_figures import figures_of
from bot.turn import Turn
from bot.wording import coach_checklist
from bot.wording.coach_week import SetCount
from demo_scenario.two_years.plain_text import TONGUE, all_why, plain
from scheduler.catalogue.values import Arm, Chain, Direction
from scheduler.training.gates import Checklist, Condition, GateFacts, checklist
from scheduler.training.values import Exposure, StageState
from storage.queries import care, training
from storage.records.people import Athlete
from storage.records.training import SessionRecord, WeekRecord

ADHERENCE = timedelta(weeks=4)
SHOWN = frozenset({Condition.WEEKS, Condition.STANDARD, Condition.ADHERENCE, Condition.SIDES})
"""Pain is told where it was reported."""


@dataclass(frozen=True, slots=True)
class StageOn:
    """The stage that was held, and since when."""

    stage: int
    since: date
    is_re_earned: bool


def week_head(week: WeekRecord, *, number: int, held: StageOn) -> list[str]:
    """Write the first line of a week, and why it is what it is."""
    share = "" if week.sets_share == 1 else f" · {round(100 * week.sets_share)} % of the sets"
    lighter = " · LIGHTER" if week.is_lighter else ""
    weeks_in = max(0, (week.monday - held.since).days // 7) + 1
    head = (
        f"=== Week {number} · {week.monday:%d %b %Y} · stage {week.stage} (its week {weeks_in})"
        f" · {week.kind.value}{lighter}{share} · letter after: {week.next_letter}"
    )
    return [
        head,
        *all_why(week.reasons, indent="  ", lead="why"),
        *all_why(week.relaxations, indent="  ", lead="relaxed:"),
    ]


def set_lines(turn: Turn, sessions: Sequence[SessionRecord]) -> list[str]:
    """Count the main sets by direction, pushing against pulling, and both kinds."""
    figures = figures_of(turn, sessions)
    by_direction = [
        f"{one.value} {_count(figures.directions[one])}"
        for one in Direction
        if one in figures.directions
    ]
    if not by_direction:
        return ["  sets: none"]
    push, pull = figures.push, figures.pull
    ratio = f"{push.planned / pull.planned:.2f}" if pull.planned else "no pull"
    chains = [figures.chains.get(one, SetCount()).planned for one in (Chain.OPEN, Chain.CLOSED)]
    arms = [figures.arms.get(one, SetCount()).planned for one in (Arm.STRAIGHT, Arm.BENT)]
    balance = (
        f"  push:pull {push.planned}:{pull.planned} ({ratio}), done {push.done}:{pull.done}"
        f" · open:closed {chains[0]}:{chains[1]} · straight:bent {arms[0]}:{arms[1]}"
    )
    return [f"  sets done/planned: {' · '.join(by_direction)}", balance]


def _count(count: SetCount) -> str:
    return f"{count.done}/{count.planned}"


def stage_on(turn: Turn, athlete: Athlete, on: date) -> StageOn:
    """Return the stage on a day, from the recorded changes."""
    spans = held_stages(care.audit_of(turn.tx, athlete.person_id, what=(CHANGED, TAKEN_BACK)))
    for place, span in enumerate(spans):
        if on < span.until:
            before = any(one.stage == span.stage for one in spans[:place])
            return StageOn(span.stage, span.since, is_re_earned=before)
    return StageOn(athlete.stage, athlete.stage_since, is_re_earned=athlete.stage_is_re_earned)


def checklist_on(
    turn: Turn, athlete: Athlete, on: date, *, exposures: Sequence[Exposure]
) -> Checklist:
    """Draw up the checklist as of a day, but for pain: the profile is taken as it stands now."""
    held = stage_on(turn, athlete, on)
    first = on - ADHERENCE
    counts = training.kept_of_sent(turn.tx, [athlete.person_id], first=first, last=on)
    done, sent = counts.get(athlete.person_id, (0, 0))
    rows = turn.house.rulebook.standards.get(held.stage, ())
    library = turn.house.library.movements
    facts = GateFacts(
        state=StageState(
            stage=held.stage, entered_on=min(held.since, on), is_re_earned=held.is_re_earned
        ),
        on=on,
        profile=athlete.profile.facts,
        exposures=tuple(one for one in exposures if one.on <= on),
        sessions_sent=sent,
        sessions_done=done,
        movements={key: library[key] for row in rows for key in row.movements if key in library},
        held=held_directions(turn, athlete),
        by_coach=decided_by_coach(turn, athlete),
    )
    return checklist(facts, rulebook=turn.house.rulebook)


def checklist_lines(turn: Turn, found: Checklist) -> dict[str, str]:
    """Write the lines of a checklist by what they are about, so that two can be compared."""
    if coach_checklist.is_last_stage(found):
        return {"last": "last stage, no checklist"}
    measures = {row.key: row.measure for row in turn.house.rulebook.standards.get(found.stage, ())}
    lines = coach_checklist.lines(TONGUE, found, measures=measures)
    return {
        f"{item.condition.value} {item.reason.figures.get('key', '')}": plain(line)
        for item, line in zip(found.items, lines, strict=True)
        if item.condition in SHOWN
    }
