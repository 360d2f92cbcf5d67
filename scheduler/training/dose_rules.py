"""The rulebook's rows about doses: ranges by quality, steps, misses and guards."""

from pydantic import BaseModel, ConfigDict

from scheduler.training.labelled import Labelled, LabelledRange

STRICT = ConfigDict(frozen=True, extra="forbid")


class RoundsRow(BaseModel):
    """What makes rounds on a clock of repeated effort."""

    model_config = STRICT

    share_of_fresh_maximum: LabelledRange
    low_reps: LabelledRange
    rest_for_work: LabelledRange
    rest_for_work_step: Labelled
    least_share_of_best_round: Labelled


class QualityRow(BaseModel):
    """The dose range of one quality. ``hold_s`` [s] counts for carries too."""

    model_config = STRICT

    from_stage: Labelled
    sets: LabelledRange
    hold_s: LabelledRange | None = None
    is_hold_loaded: bool = False
    reps: LabelledRange
    rest_s: LabelledRange | None = None
    reserve_reps: LabelledRange
    reserve_hold_s: Labelled
    rounds: RoundsRow | None = None


class AccessoryRow(BaseModel):
    """What accessories ask instead of their quality's row."""

    model_config = STRICT

    sets: LabelledRange
    reserve_reps: Labelled
    reserve_hold_s: Labelled


class StepRules(BaseModel):
    """How a dose gets harder, one thing at a time."""

    model_config = STRICT

    floor_share: Labelled
    short_hold_step_s: Labelled
    long_hold_step_s: Labelled
    long_hold_from_s: Labelled
    few_reps_step: Labelled
    many_reps_step: Labelled
    many_reps_from: Labelled
    carry_pace_m_per_s: Labelled
    carry_step_m: Labelled
    too_light_exposures: Labelled
    feeling_out_times_most: Labelled
    accessory_exposures: Labelled
    exposures_at_top: Labelled
    load_step_share: LabelledRange
    moderate_step_share_most: Labelled
    past_top_moderate: Labelled
    past_top_large: Labelled
    fewer_sets_at_large_step: Labelled
    observations_to_step: Labelled
    target_probability: Labelled
    try_probability: Labelled
    tries_after_exposures: Labelled
    tries_within_days: Labelled
    tries_from_weeks_before: Labelled
    seconds_per_rep: Labelled


class MissRules(BaseModel):
    """How a dose gets easier."""

    model_config = STRICT

    running: Labelled
    little_left_running: Labelled
    load_share_most: Labelled
    time_share: Labelled
    few_reps: Labelled
    many_reps: Labelled


class GuardRules(BaseModel):
    """Bounds for people whose muscles are not used to pulling, and for pain."""

    model_config = STRICT

    pull_exposures: Labelled
    pull_sets_most: Labelled
    pull_reps_most: Labelled
    ease_cut: Labelled


class CapacityRules(BaseModel):
    """The spread that the estimate of a capacity starts from, on a log scale."""

    model_config = STRICT

    noise_at_failure: Labelled
    noise_per_reserve: Labelled
    drift_per_day: Labelled
    first_spread: Labelled
    decrement_prior: Labelled
    reserve_trusted_reps: Labelled
