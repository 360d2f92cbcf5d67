"""The checklist to move up, and the stage to begin with."""

from collections.abc import Mapping, Sequence
from datetime import date
from enum import StrEnum

from pydantic import BaseModel, ConfigDict, Field

from scheduler.catalogue.values import Direction, Measure, Movement
from scheduler.reasons import Decision, Reason, reason
from scheduler.training.gate_rules import Standard
from scheduler.training.own_standards import asked_of
from scheduler.training.rulebook import Rulebook
from scheduler.training.sides import SideRatio
from scheduler.training.standards import (
    BaselineSet,
    is_shown_by_test,
    requirement,
    requirements,
    standing,
)
from scheduler.training.training_reasons import GateReason
from scheduler.training.values import AthleteProfile, Exposure, StageState


class Condition(StrEnum):
    """The five conditions of a gate."""

    WEEKS = "weeks"
    STANDARD = "standard"
    ADHERENCE = "adherence"
    PAIN = "pain"
    SIDES = "sides"


class ChecklistItem(BaseModel):
    """One line: what is asked and where the athlete stands are the figures of the reason."""

    model_config = ConfigDict(frozen=True)

    condition: Condition
    is_met: bool
    reason: Reason


class Checklist(BaseModel):
    """Everything that moving up from ``stage`` asks, line by line."""

    model_config = ConfigDict(frozen=True)

    stage: int
    items: tuple[ChecklistItem, ...]

    @property
    def is_complete(self) -> bool:
        """True when every line is met, and there is a line at all."""
        return bool(self.items) and all(item.is_met for item in self.items)

    @property
    def open_items(self) -> tuple[ChecklistItem, ...]:
        """The lines that are not met."""
        return tuple(item for item in self.items if not item.is_met)


class GateFacts(BaseModel):
    """What the checklist is drawn from.

    ``sessions_sent`` and ``sessions_done`` [sessions in the last four weeks]; ``worst_pain``
    [0-10, the highest answer in the last 14 days, 0 for none]; ``start_ratios`` [weaker for
    stronger, at the athlete's own start, by movement]; ``movements`` of the library, by key, as
    far as the standards name them; ``held`` directions keep to stage 1's row, so that their
    standards are the coach's; ``by_coach``: standards that the coach has decided on a clip, met
    or not.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    state: StageState
    on: date
    profile: AthleteProfile
    exposures: tuple[Exposure, ...] = ()
    tests: tuple[BaselineSet, ...] = ()
    sessions_sent: int = Field(default=0, ge=0)
    sessions_done: int = Field(default=0, ge=0)
    worst_pain: float = Field(default=0, ge=0, le=10)
    has_something_rested: bool = False
    has_open_alert: bool = False
    side_ratios: tuple[SideRatio, ...] = ()
    start_ratios: Mapping[str, float] = Field(default_factory=dict)
    movements: Mapping[str, Movement] = Field(default_factory=dict)
    held: frozenset[Direction] = frozenset()
    by_coach: Mapping[str, bool] = Field(default_factory=dict)


def checklist(facts: GateFacts, *, rulebook: Rulebook) -> Checklist:
    """Draw up the checklist to the next stage; it proposes, a coach approves."""
    stage = facts.state.stage
    if rulebook.stage(stage).least_weeks is None:
        last = reason(GateReason.LAST_STAGE, rulebook.stage(stage).source, stage=stage)
        item = ChecklistItem(condition=Condition.WEEKS, is_met=False, reason=last)
        return Checklist(stage=stage, items=(item,))
    items = (
        _weeks(facts, rulebook=rulebook),
        *_standards(facts, rulebook=rulebook),
        _adherence(facts, rulebook=rulebook),
        _pain(facts, rulebook=rulebook),
        *_sides(facts, rulebook=rulebook),
    )
    return Checklist(stage=stage, items=items)


def _weeks(facts: GateFacts, *, rulebook: Rulebook) -> ChecklistItem:
    """Ask the least weeks in the stage; waived when the stage was reached before (CH)."""
    least = rulebook.stage(facts.state.stage).least_weeks
    needed = least.whole if least else 0
    weeks = facts.state.whole_weeks(facts.on)
    code = GateReason.WEEKS_WAIVED if facts.state.is_re_earned else GateReason.WEEKS
    return ChecklistItem(
        condition=Condition.WEEKS,
        is_met=facts.state.is_re_earned or weeks >= needed,
        reason=reason(code, least.source if least else "ch", weeks=weeks, needed_weeks=needed),
    )


def _standards(facts: GateFacts, *, rulebook: Rulebook) -> tuple[ChecklistItem, ...]:
    rows = rulebook.standards.get(facts.state.stage, ())
    return tuple(_one_standard(index, facts=facts, rulebook=rulebook) for index in range(len(rows)))


def _one_standard(index: int, *, facts: GateFacts, rulebook: Rulebook) -> ChecklistItem:
    """Ask one standard; where it is not in figures for this athlete, only the coach decides."""
    row = rulebook.standards[facts.state.stage][index]
    own = asked_of(
        row,
        profile=facts.profile,
        movements=facts.movements,
        held=facts.held,
        rulebook=rulebook,
    )
    asked = own.value
    if row.key in facts.by_coach:
        is_met = facts.by_coach[row.key]
        why = reason(GateReason.STANDARD_BY_COACH, row.sets.source, key=row.key, is_met=is_met)
        return ChecklistItem(condition=Condition.STANDARD, is_met=is_met, reason=why)
    if asked is None:
        return ChecklistItem(condition=Condition.STANDARD, is_met=False, reason=own.reasons[0])
    stands = standing(asked, exposures=facts.exposures, tests=facts.tests, rulebook=rulebook)
    is_met = stands.is_shown or _is_shown_as_written(row, facts=facts, rulebook=rulebook)
    why = reason(
        GateReason.STANDARD,
        asked.source,
        key=row.key,
        sets=asked.sets,
        target=asked.target,
        load_kg=asked.load_kg or 0.0,
        best_set=stands.best_set,
        days_shown=stands.days_shown,
        needed_days=rulebook.gates.days_shown.whole,
        **({"is_by_test": True} if stands.is_by_test else {}),
    )
    return ChecklistItem(condition=Condition.STANDARD, is_met=is_met, reason=why)


def _is_shown_as_written(row: Standard, *, facts: GateFacts, rulebook: Rulebook) -> bool:
    """Tell whether it was shown with a load that is no longer owned: what was shown stays shown."""
    written = requirement(row, profile=facts.profile, rulebook=rulebook)
    return (
        written is not None
        and standing(
            written, exposures=facts.exposures, tests=facts.tests, rulebook=rulebook
        ).is_shown
    )


def _adherence(facts: GateFacts, *, rulebook: Rulebook) -> ChecklistItem:
    """Ask three quarters of what was sent in four weeks, or 8 sessions, whichever is less (CP)."""
    rules = rulebook.gates
    share_of_sent = facts.sessions_sent * rules.adherence_share.value
    needed = min(share_of_sent, rules.adherence_sessions.value)
    return ChecklistItem(
        condition=Condition.ADHERENCE,
        is_met=facts.sessions_sent > 0 and facts.sessions_done >= needed,
        reason=reason(
            GateReason.ADHERENCE,
            rules.adherence_share.source,
            sessions_done=facts.sessions_done,
            sessions_sent=facts.sessions_sent,
            needed_sessions=needed,
        ),
    )


def _pain(facts: GateFacts, *, rulebook: Rulebook) -> ChecklistItem:
    """Ask no pain above 2 in 14 days, nothing rested and no open alert (CH)."""
    most = rulebook.gates.pain_most
    is_met = (
        facts.worst_pain <= most.value
        and not facts.has_something_rested
        and not facts.has_open_alert
    )
    why = reason(
        GateReason.PAIN,
        most.source,
        worst_pain=facts.worst_pain,
        most=most.value,
        days=rulebook.gates.pain_days.whole,
        has_something_rested=facts.has_something_rested,
        has_open_alert=facts.has_open_alert,
    )
    return ChecklistItem(condition=Condition.PAIN, is_met=is_met, reason=why)


def _sides(facts: GateFacts, *, rulebook: Rulebook) -> tuple[ChecklistItem, ...]:
    return tuple(_one_side(ratio, facts=facts, rulebook=rulebook) for ratio in facts.side_ratios)


def _one_side(ratio: SideRatio, *, facts: GateFacts, rulebook: Rulebook) -> ChecklistItem:
    """Ask the weaker side near the stronger, or no worse than the athlete's own start.

    The convention of 10 % does not fit people (petersen1989), so the own start may stand in.
    """
    gates = rulebook.gates
    is_reps = ratio.measure is Measure.REPS
    needed = gates.sides_reps_ratio if is_reps else gates.sides_hold_ratio
    own = facts.start_ratios.get(ratio.movement_key)
    is_even = ratio.weaker_for_stronger >= needed.value
    is_own = own is not None and ratio.weaker_for_stronger >= own
    code = GateReason.SIDES_OWN_START if is_own and not is_even else GateReason.SIDES
    figures = {"own_start": own} if own is not None else {}
    why = reason(
        code,
        needed.source,
        movement=ratio.movement_key,
        weaker_for_stronger=ratio.weaker_for_stronger,
        needed=needed.value,
        sessions=ratio.sessions,
        **figures,
    )
    is_met = (is_even or is_own) and ratio.sessions >= gates.sides_sessions.whole
    return ChecklistItem(condition=Condition.SIDES, is_met=is_met, reason=why)


def starting_stage(
    tests: Sequence[BaselineSet], *, profile: AthleteProfile, rulebook: Rulebook
) -> Decision[int]:
    """Decide the stage to begin with from a baseline of single sets [1-5].

    The highest whose entry standards (the leave standards of the stages before) are all shown by
    test, for push and pull in both chains; at most 3 from tests alone (CH); 1 where nothing
    could be tested.
    """
    most = rulebook.start.highest_stage
    if not tests:
        why = reason(GateReason.START_UNTESTED, most.source, stage=1)
        return Decision(value=1, reasons=(why,))
    stage = 1
    while stage < most.whole and _is_left(stage, tests, profile=profile, rulebook=rulebook):
        stage += 1
    why = reason(GateReason.START_STAGE, most.source, stage=stage, most=most.whole)
    return Decision(value=stage, reasons=(why,))


def _is_left(
    stage: int, tests: Sequence[BaselineSet], *, profile: AthleteProfile, rulebook: Rulebook
) -> bool:
    """Tell whether tests show every leave standard of a stage."""
    asked = requirements(stage=stage, profile=profile, rulebook=rulebook)
    return len(asked) == len(rulebook.standards[stage]) and all(
        any(is_shown_by_test(test, one, rulebook=rulebook) for test in tests) for one in asked
    )
