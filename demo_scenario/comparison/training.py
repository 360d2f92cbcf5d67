"""One athlete in training under one rule, until all standards are declared or time is up."""

import math
from dataclasses import dataclass
from datetime import date

from demo_scenario.comparison.assumptions import Assumptions
from demo_scenario.comparison.athletes import BEGINS, STAGE, Athlete, Goal
from demo_scenario.comparison.bodies import ANSWERS_S, Body
from demo_scenario.comparison.courses import WEEK_DAYS, Course, Declared, load_ratio
from demo_scenario.comparison.rules import Ask, Progression, Trained
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.gaps import Absence, Return, after_gap
from scheduler.training.loads import rungs
from scheduler.training.rulebook import Rulebook
from scheduler.training.standards import standing
from scheduler.training.values import Best, Exposure, Quality, ReserveAnswer, SetDone

PLANNED_SETS = 3  # [sets] ch: of each movement in a session
TEST_LEFT_S = 10.0  # [s] ch: a baseline stops with two or three repetitions' worth in reserve
TEST_LEAST_S = 20.0  # [s] ch: a baseline that is over sooner is repeated lighter


@dataclass(slots=True)
class Season:
    """The state of one course. ``came_back``: the first day after a gap, and its days."""

    athlete: Athlete
    rule: Progression
    rulebook: Rulebook
    body: Body
    course: Course
    logs: dict[str, list[Trained]]
    tested: dict[str, Best]
    last_day: date | None = None
    came_back: tuple[date, int] | None = None

    @property
    def is_done(self) -> bool:
        """Whether every standard has been declared."""
        return len(self.course.declared) == len(self.athlete.goals)


def run(
    athlete: Athlete, *, rule: Progression, assumptions: Assumptions, rulebook: Rulebook
) -> Course:
    """Train one athlete under one rule."""
    season = begin(athlete, rule=rule, assumptions=assumptions, rulebook=rulebook)
    for on, keys in athlete.days:
        train_day(season, on=on, keys=keys)
        if season.is_done:
            season.course.weeks = ((on - BEGINS).days + 1) / WEEK_DAYS
            break
    return season.course


def begin(
    athlete: Athlete, *, rule: Progression, assumptions: Assumptions, rulebook: Rulebook
) -> Season:
    """Test a body before its first day."""
    body = Body(traits=athlete.traits, assumptions=assumptions, luck=athlete.luck)
    return Season(
        athlete=athlete,
        rule=rule,
        rulebook=rulebook,
        body=body,
        course=Course(gain=athlete.traits.gain),
        logs={key: [] for key in athlete.goals},
        tested={
            key: _test(body, goal, athlete=athlete, rulebook=rulebook)
            for key, goal in athlete.goals.items()
        },
    )


def _test(body: Body, goal: Goal, *, athlete: Athlete, rulebook: Rulebook) -> Best:
    """Test one set at the standard's load, or at the heaviest owned one below it that goes well."""
    wanted_kg = goal.rung.load_kg or 0.0
    owned = rungs(goal.movement, profile=athlete.profile)
    most_s = rulebook.start.test_stop_s.value
    for rung in reversed([one for one in owned if (one.load_kg or 0.0) <= wanted_kg]):
        ratio = load_ratio(rung, goal=goal)
        could_s = math.exp(body.level(goal.movement.key, load_ratio=ratio, sets_before=0))
        best = Best(value=min(max(1.0, could_s - TEST_LEFT_S), most_s), rung=rung)
        if best.value >= TEST_LEAST_S:
            break
    return best


def train_day(season: Season, *, on: date, keys: tuple[str, ...]) -> None:
    """Train one session."""
    returning = _returning(season, on)
    season.body.wake(on)
    exposures = []
    for key in keys:
        goal = season.athlete.goals[key]
        if key in season.course.declared:
            _keep_up(season, goal)
            continue
        exposure = _train(season, goal, on=on, returning=returning)
        exposures.append((goal, exposure))
        _declare(season, goal, on=on)
    season.course.count_session(exposures, rulebook=season.rulebook)
    season.last_day = on


def _train(season: Season, goal: Goal, *, on: date, returning: Return) -> Exposure:
    """Ask the rule, do what it asks, and report it."""
    log = season.logs[goal.movement.key]
    facts = DoseFacts(
        movement=goal.movement,
        quality=Quality.MUSCULAR_ENDURANCE,
        profile=season.athlete.profile,
        planned_sets=PLANNED_SETS,
        weeks_trained=(on - BEGINS).days // WEEK_DAYS,
        returning=returning,
        best=season.tested[goal.movement.key],
    )
    ask = season.rule.ask(log, facts=facts, goal=goal, on=on)
    exposure = _do(season.body, goal, ask, on=on)
    log.append(Trained(exposure=exposure, is_try=ask.is_try))
    season.course.count_exposure(log, goal=goal)
    return exposure


def _do(body: Body, goal: Goal, ask: Ask, *, on: date) -> Exposure:
    """Do the sets, and answer how much was left."""
    dose, key = ask.dose, goal.movement.key
    wanted_s = (*(dose.target for _ in range(dose.sets - 1)), ask.last_set_s)
    done, left_s = body.train(key, load_ratio=load_ratio(dose.rung, goal=goal), wanted_s=wanted_s)
    answer = body.guess_left_s(left_s, key=key)
    return Exposure(
        on=on,
        dose=dose,
        sets=tuple(SetDone(value=value) for value in done),
        reserve=None
        if answer is None
        else ReserveAnswer(left=answer, is_at_least=answer == ANSWERS_S[-1]),
    )


def _keep_up(season: Season, goal: Goal) -> None:
    """Repeat a standard that is met, alike under every rule: it tires, and is not counted."""
    wanted_s = (goal.asked.target,) * PLANNED_SETS
    season.body.train(goal.movement.key, load_ratio=1.0, wanted_s=wanted_s)


def _returning(season: Season, on: date) -> Return:
    """Say what holds after missed days; only our dosing asks."""
    gap_days = (on - season.last_day).days if season.last_day else 0
    if gap_days >= season.rulebook.gaps.no_step_from_days.value:
        season.came_back = (on, gap_days)
    since, days = season.came_back or (on, 0)
    return after_gap(
        days_untrained=days,
        weeks_back=(on - since).days // WEEK_DAYS,
        absence=Absence.TRAVEL,
        stage=STAGE,
        rulebook=season.rulebook,
    ).value


def _declare(season: Season, goal: Goal, *, on: date) -> None:
    """Declare a standard as the gate does: done as written or more, on two different days."""
    key = goal.movement.key
    exposures = [one.exposure for one in season.logs[key]]
    if not standing(goal.asked, exposures=exposures, rulebook=season.rulebook).is_shown:
        return
    level = season.body.level(key, load_ratio=1.0, sets_before=goal.asked.sets - 1)
    is_below = math.exp(level) < goal.asked.target
    season.course.declared[key] = Declared(on=on, is_below=is_below)
