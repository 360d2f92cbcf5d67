"""What the answers of the intake mean: begin, wait for the coach, hold a direction back."""

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Direction, Movement, Role
from scheduler.pain.left_out import left_out_for
from scheduler.pain.values import LeftOut, Side
from scheduler.reasons import Decision, Reason, reason
from scheduler.sources import CH, CP
from scheduler.training.baseline_reasons import BaselineReason
from scheduler.training.baseline_values import (
    INJURIES,
    INVERSION_ONLY,
    NO_INVERSION,
    EarlierInjury,
    IntakeAnswers,
    IntakeOutcome,
    IntakeState,
    ScreenTopic,
)
from scheduler.training.rulebook import Rulebook


def intake_decision(
    answers: IntakeAnswers, *, library: Library, rulebook: Rulebook
) -> Decision[IntakeOutcome]:
    """Decide whether training begins, and what it leaves out, from the answers of the intake.

    A yes in the screen waits for the coach; it clears and names nothing (riebe2015 asks the same
    topics; which of them wait is CH, the careful way). A joint that was ever out or operated on,
    or hurt within 12 months, holds its directions at stage 1's row, with no test in them and no
    passive hang, until the coach lifts it; where the joint is not known, all are held. High
    blood pressure, the eyes and pregnancy mean nothing upside down.
    """
    waits = _waits(answers, rulebook=rulebook)
    counted = counted_injuries(answers, rulebook=rulebook)
    held = _held(counted, library=library) - answers.lifted
    may_hang = not counted or answers.are_hangs_lifted
    may_invert = not NO_INVERSION & answers.topics
    outcome = IntakeOutcome(
        state=IntakeState.WAITS_FOR_COACH if waits else IntakeState.BEGINS,
        held=held,
        may_hang=may_hang,
        may_invert=may_invert,
    )
    return Decision(value=outcome, reasons=(*(waits or _begins(answers)), *_limits(outcome)))


def _waits(answers: IntakeAnswers, *, rulebook: Rulebook) -> tuple[Reason, ...]:
    """Return why the coach must look first; none once the coach has, and a guardian where due."""
    found: list[Reason] = []
    if not answers.is_adult and not (answers.has_guardian_agreed and answers.has_coach_looked):
        found.append(reason(BaselineReason.WAITS_FOR_GUARDIAN, CH))
    if answers.has_coach_looked:
        return tuple(found)
    topics = answers.topics - INVERSION_ONLY - INJURIES
    if topics:
        found.append(reason(BaselineReason.WAITS_FOR_SCREEN, "riebe2015", answers=len(topics)))
    if counted_injuries(answers, rulebook=rulebook):
        months = rulebook.baseline.injury_months
        why = reason(BaselineReason.WAITS_FOR_INJURY, months.source, months=months.whole)
        found.append(why)
    return tuple(found)


def _begins(answers: IntakeAnswers) -> tuple[Reason, ...]:
    code = BaselineReason.COACH_HAS_LOOKED if answers.has_coach_looked else BaselineReason.BEGINS
    return (reason(code, CH),)


def counted_injuries(answers: IntakeAnswers, *, rulebook: Rulebook) -> tuple[EarlierInjury, ...]:
    """Return the injuries that count: ever out or operated on, or within 12 months.

    A yes in the screen without a joint named counts as one of a joint not known.
    """
    months = rulebook.baseline.injury_months.value
    counted = tuple(
        one
        for one in answers.injuries
        if one.is_out_or_operated or one.months_ago is None or one.months_ago <= months
    )
    said = INJURIES & answers.topics
    if said and not counted:
        is_out = ScreenTopic.OUT_OR_OPERATED in said
        return (EarlierInjury(is_out_or_operated=is_out),)
    return counted


def _held(injuries: tuple[EarlierInjury, ...], *, library: Library) -> frozenset[Direction]:
    """Return the directions of which any main movement loads an injured site (CP, careful)."""
    held: set[Direction] = set()
    for one in injuries:
        if one.site is None:
            return frozenset(Direction)
        spared = left_out_for(one.site, one.side)
        held |= {
            movement.direction
            for movement in library.movements.values()
            if movement.role is Role.MAIN and _touches(spared, movement)
        }
    return frozenset(held)


def _touches(spared: LeftOut, movement: Movement) -> bool:
    return any(spared.hits(movement, arm) for arm in Side.BOTH.arms)


def _limits(outcome: IntakeOutcome) -> tuple[Reason, ...]:
    held = sorted(outcome.held)
    found = [
        reason(BaselineReason.DIRECTION_HELD, CH, direction=direction.value, stage=1)
        for direction in held
    ]
    if not outcome.may_hang:
        found.append(reason(BaselineReason.NO_HANGS, CH))
    if not outcome.may_invert:
        found.append(reason(BaselineReason.NO_INVERSION, CP))
    return tuple(found)
