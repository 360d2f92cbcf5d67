"""How long a session takes, before anything of it is dosed."""

from collections.abc import Mapping, Sequence

from scheduler.catalogue.values import Arm, Direction, Movement, Role, Sides
from scheduler.training.dose_rules import QualityRow
from scheduler.training.labelled import LabelledRange
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Quality
from scheduler.training.week_places import HARD
from scheduler.training.week_values import Slot

SECONDS_A_MINUTE = 60  # [s/min] by definition


def session_minutes(
    slots: Sequence[Slot], *, movements: Mapping[str, Movement], stage: int, rulebook: Rulebook
) -> float:
    """Estimate how long a session takes [min]: warm-up, then sets × (work + rest).

    Parameters
    ----------
    slots: the session's slots in order; each arm of a one-sided movement works in turn.
    movements: the movements of the slots by key.
    stage: the athlete's stage [1-5]; from ``ramp_from_stage`` on, hard bent-arm work of the
        first pair is ramped up in ``ramp_sets`` instead of one easy set.

    Returns
    -------
    Minutes, on the long side: every set is counted three quarters up its range (CH; most doses
    end earlier), rests at the middle of theirs, and inside a pair half of the rest follows each
    set since the partner's set fills the other half (CP). Upkeep counts as a pair of its own.

    """
    if not slots:
        return 0.0
    minutes = rulebook.weeks.minutes
    seconds = minutes.easy_movement_s.value + minutes.shoulder_blade_s.value
    blocks = [_block(slot, movements[slot.movement_key]) for slot in slots]
    seconds += minutes.change_s.value * len(set(blocks))
    for slot, block in zip(slots, blocks, strict=True):
        movement = movements[slot.movement_key]
        is_paired = blocks.count(block) > 1
        seconds += _warm_up_s(slot, movement, stage=stage, rulebook=rulebook)
        seconds += slot.sets * set_s(slot, movement, is_paired=is_paired, rulebook=rulebook)
    return seconds / SECONDS_A_MINUTE


def _block(slot: Slot, movement: Movement) -> int | frozenset[Direction] | None:
    """Return what alternates: a pair by its number, upkeep by its directions; None: accessories."""
    if slot.pair is None and movement.role is Role.MAIN:
        return frozenset({slot.direction, slot.direction.partner})
    return slot.pair


def set_s(slot: Slot, movement: Movement, *, is_paired: bool, rulebook: Rulebook) -> float:
    """Return how long one set takes with the rest that follows it [s]."""
    row = rulebook.quality(slot.quality)
    share_of_range = rulebook.weeks.minutes.work_in_range.value
    if movement.measure.is_time and row.hold_s is not None:
        work = _within(row.hold_s, share=share_of_range)
    else:
        rep_s = movement.seconds_per_rep or rulebook.steps.seconds_per_rep.value
        work = _within(row.reps, share=share_of_range) * rep_s
    arms = len(slot.arms) if movement.sides is Sides.EACH else 1
    if movement.role is Role.ACCESSORY:
        return work * arms + rulebook.weeks.minutes.accessory_rest_s.value
    share = rulebook.weeks.minutes.rest_share_in_pair.value if is_paired else 1.0
    return work * arms + _rest_s(row, work_s=work) * share


def _rest_s(row: QualityRow, *, work_s: float) -> float:
    """Return the rest of a quality [s]: the middle of its range, or the clock's for rounds."""
    if row.rest_s is not None:
        return _within(row.rest_s, share=0.5)
    return _top(row.rounds.rest_for_work) * work_s if row.rounds is not None else 0.0


def _warm_up_s(slot: Slot, movement: Movement, *, stage: int, rulebook: Rulebook) -> float:
    """Return the easy set of a main movement, or its ramp where it is hard [s]."""
    minutes = rulebook.weeks.minutes
    if movement.role is Role.ACCESSORY:
        return 0.0
    is_ramped = (
        stage >= minutes.ramp_from_stage.value
        and slot.pair == 1
        and movement.arm is Arm.BENT
        and slot.quality in HARD
    )
    sets = minutes.ramp_sets.value if is_ramped else 1.0
    return sets * minutes.easy_set_s.value


def _top(bounds: LabelledRange) -> float:
    return bounds.least if bounds.most is None else bounds.most


def _within(bounds: LabelledRange, *, share: float) -> float:
    return bounds.least + share * (_top(bounds) - bounds.least)


def lower_quality(quality: Quality) -> Quality | None:
    """Return the next lighter quality with shorter rests, or None for the lightest."""
    below = {
        Quality.MAXIMAL_STRENGTH: Quality.GENERAL_STRENGTH,
        Quality.GENERAL_STRENGTH: Quality.STRENGTH_ENDURANCE,
    }
    return below.get(quality)
