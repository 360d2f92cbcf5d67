"""Sentences for what a coach sets and for what stands still, by reason code."""

from collections.abc import Mapping

from bot.wording.tongue import Template

COACH_DOSES: Mapping[str, tuple[Template, ...]] = {
    "dose.stood_still": (
        "The same dose for {weeks} weeks, {times} times.",
        "The same dose for two months or more.",
    ),
    "dose.by_coach": (
        "Set by the coach: {sets} × {target}, where the rules had {was_sets} × {was_target}.",
        "Set by the coach.",
    ),
    "dose.coach_slip": (
        "At most {sets_most} sets of {target_most} can be asked.",
        "More than can be asked.",
    ),
    "dose.coach_not_owned": ("That load or band is not at hand.",),
    "dose.coach_sets_outside": (
        "{sets} sets are more than the {sets_most} of this kind of work.",
        "More sets than this kind of work has.",
    ),
    "dose.coach_target_outside": (
        "{target} is outside {least} to {most}, the range of {quality}.",
        "Outside the range of this kind of work.",
    ),
    "dose.coach_load_jump": (
        "{was_kg} to {load_kg} kg is more than one step.",
        "The load rises by more than one step.",
    ),
    "dose.coach_above_best": (
        "{target} is more than a step above the best single set so far, {best} with what was left.",
        "More than a step above the best single set so far.",
    ),
    "dose.coach_above_pulls": (
        "{reps} pulls in all are more than the {reps_most} for somebody new to them.",
        "More pulls than somebody new to them gets.",
    ),
    "dose.coach_in_easy_week": ("This week is a lighter one: the rules ask for less.",),
    "dose.coach_waits_for_pain": (
        "Something hurts in what it loads: until that has settled, no more is asked than before.",
    ),
    "dose.coach_after_gap": ("After the days without training the rules ask for less at first.",),
}
