"""One sentence for each reason about doses, sets, breaks, stages and the checklist, by its code."""

from collections.abc import Mapping

from bot.wording.reason_sentences_coach import COACH_DOSES
from bot.wording.tongue import Template

Sentences = Mapping[str, tuple[Template, ...]]

PERMISSIONS: Sentences = {
    "permission.permitted": (
        "Stage {stage} includes it.",
        "The stage includes it.",
    ),
    "permission.arm_not_yet": (
        "Bending the elbow under load comes after stage {stage}.",
        "Bending the elbow under load comes at a later stage.",
    ),
    "permission.dynamic_not_yet": (
        "Quick repetitions come after stage {stage}.",
        "Quick repetitions come at a later stage.",
    ),
    "permission.dynamic_pull_not_yet": (
        "Quick pulls come after {sets} × {reps} strict pull-ups without help.",
        "Quick pulls come after strict pull-ups without help.",
    ),
    "permission.unstable_not_yet": (
        "Rings and straps come after stage {stage}.",
        "Rings and straps come at a later stage.",
    ),
    "permission.movement_not_yet": (
        "This movement comes after stage {stage}.",
        "This movement comes at a later stage.",
    ),
    "permission.upkeep": ("A few easy bent-arm sets keep up what is trained elsewhere.",),
    "permission.overridden_by_coach": (
        "The coach allowed it at stage {stage}.",
        "The coach allowed it.",
    ),
    "permission.quality_of_accessory": ("Extra work stays light.",),
    "permission.quality_of_stage": (
        "This stage is for {quality}.",
        "This is what the stage is for.",
    ),
    "permission.quality_of_unloaded_hold": ("A hold without extra weight trains endurance.",),
    "permission.quality_of_fresh_dynamic": (
        "Quick repetitions are done fresh for the first {fresh_weeks} weeks.",
        "Quick repetitions are done fresh at first.",
    ),
    "permission.quality_of_rounds": (
        "After {fresh_weeks} fresh weeks, quick repetitions come in rounds.",
        "Quick repetitions now come in rounds.",
    ),
    "permission.quality_of_maximal_slot": (
        "This is the week's one heaviest work in its direction.",
    ),
    "permission.quality_of_second_pair": ("The second pair is trained a little easier.",),
}

DOSES: Sentences = {
    "dose.first_from_best": (
        "First dose: {share_pct} % of a tested best of {best}.",
        "First dose, taken from a tested best.",
    ),
    "dose.first_careful": (
        "A careful first dose: {target} a set.",
        "A careful first dose, as nothing was tested.",
    ),
    "dose.first_weeks_two_sets": (
        "The first weeks keep to {sets} sets.",
        "The first weeks keep to few sets.",
    ),
    "dose.new_quality": (
        "The work changes from {was} to {quality}, so the dose starts at {target}.",
        "The kind of work changes, so it starts again from an easy dose.",
    ),
    "dose.new_quality_lighter": (
        "The new kind of work starts with {load_kg}.",
        "The new kind of work starts lighter.",
    ),
    "dose.step_in_time": (
        "Every set at target with enough left: from {was} to {target} s.",
        "Every set at target with enough left: a little longer.",
    ),
    "dose.step_in_reps": (
        "Every set at target with enough left: from {was} to {target} reps.",
        "Every set at target with enough left: a few more reps.",
    ),
    "dose.step_in_metres": (
        "Every set at target with enough left: from {was} to {target} m.",
        "Every set at target with enough left: a little farther.",
    ),
    "dose.step_in_load": (
        "Two good sessions at the top: from {was_kg} to {load_kg}, and {target} a set.",
        "Two good sessions at the top: the next weight.",
    ),
    "dose.step_in_big_load": (
        "From {was_kg} to {load_kg} is a big step: one set fewer, {target} a set.",
        "The next weight is a big step, so one set fewer.",
    ),
    "dose.step_in_band": (
        "Two good sessions at the top: the next band, {target} a set.",
        "Two good sessions at the top: the next band.",
    ),
    "dose.step_past_top": (
        "The next weight is far off, so first from {was} to {target} a set.",
        "The next weight is far off, so first more with this one.",
    ),
    "dose.step_in_rest": ("All rounds held up: the rest gets shorter.",),
    "dose.step_by_estimate": (
        "Going by the last sessions, {target} is within reach.",
        "Going by the last sessions, more is within reach.",
    ),
    "dose.set_given_back": ("It went well, so one set comes back.",),
    "dose.ready_for_harder": (
        "Two good sessions at the top: time to try the {harder}.",
        "Two good sessions at the top: time for a harder movement.",
    ),
    "dose.plainly_light": (
        "{was_kg} is plainly light for you, so the next weight: {load_kg}, {target} a set.",
        "The weight is plainly light for you, so the next one.",
    ),
    "dose.plainly_light_band": ("The band is plainly light for you, so the next one.",),
    "dose.plainly_easy": (
        "Plainly easy for you: time to try the {harder}.",
        "Plainly easy for you: time for a harder movement.",
    ),
    "dose.after_try": (
        "After the try: {target} a set is where {asked} are left.",
        "After the try it goes on from what was left.",
    ),
    "dose.same_after_try": ("After the try it goes on as before.",),
    "dose.accessory_twice": (
        "Extra work steps after {needed} good sessions, {exposures} so far.",
        "Extra work steps after two good sessions.",
    ),
    "dose.down_little_left": (
        "Less was left than asked in {exposures} sessions running, so it gets a little easier.",
        "Less was left than asked in several sessions running, so it gets a little easier.",
    ),
    "dose.one_more_at_top": (
        "{exposures} of {needed} good sessions at the top so far.",
        "One more good session at the top first.",
    ),
    "dose.nothing_heavier": (
        "There is nothing heavier to use, so it stays at {target}.",
        "There is nothing heavier to use, so it stays.",
    ),
    "dose.same_no_answer": ("Without an answer on what was left, the dose stays.",),
    "dose.same_not_at_target": (
        "Not every set reached {target}, so the dose stays.",
        "Not every set reached its target, so the dose stays.",
    ),
    "dose.same_little_left": (
        "Less was left than asked ({left}, not {asked}), so the dose stays.",
        "Less was left than asked, so the dose stays.",
    ),
    "dose.same_missed": (
        "A set ended below {floor}, so the dose stays.",
        "A set ended well below its target, so the dose stays.",
    ),
    "dose.same_pain": ("It loads a place that hurts, so it does not get harder now.",),
    "dose.same_pain_no_load": ("It loads a place that hurts a little, so no more weight for now.",),
    "dose.same_after_gap": (
        "After days off the dose stays, at {share_of_sets_pct} % of the sets.",
        "After days off the dose stays.",
    ),
    "dose.same_level_held": ("This week keeps the level: no step up.",),
    "dose.same_lighter_week": ("A lighter week: no step up.",),
    "dose.ease_cut": ("It loads a place that hurts, so it has fewer sets for now.",),
    "dose.down_after_misses": (
        "Below target in {misses} sessions running, so it gets a little easier.",
        "Below target in several sessions running, so it gets a little easier.",
    ),
    "dose.down_nothing_left": (
        "Nothing was left at the end of {exposures} sessions running, so it gets a little easier.",
        "Nothing was left in several sessions running, so it gets a little easier.",
    ),
    "dose.try_easier": (
        "Even {load_kg} is a lot here, so an easier movement comes first.",
        "An easier movement comes first.",
    ),
    "dose.lighter_taken": (
        "Less than {was_kg} was taken, so it goes on from there.",
        "A lighter one was taken, so it goes on from there.",
    ),
    "dose.lighter_unlisted": (
        "{took_kg} was taken, but {load_kg} is the lightest weight listed. /settings adds one.",
        "What was taken is lighter than every weight listed. /settings adds one.",
    ),
    "dose.load_no_longer_owned": (
        "{was_kg} is no longer at hand, so it starts with what is.",
        "The weight is no longer at hand, so it starts with what is.",
    ),
    "dose.no_owned_load": ("No weight for it is at hand.",),
    "dose.more_sets_first": (
        "From {was} to {sets} sets first, the rest stays.",
        "More sets first, the rest stays.",
    ),
    "dose.pull_guard": ("The first pulling for reps is kept short, to keep soreness small.",),
    "dose.one_thing_at_a_time": (
        "Not more at once: one thing steps at a time, after every set is done as asked.",
    ),
    "dose.up_again": (
        "It goes up again once every set reaches {target} with enough left.",
        "It goes up again once every set is done with enough left.",
    ),
    "dose.goes_on_from_report": ("What you report decides how fast it goes on.",),
    **COACH_DOSES,
    "dose.push_cut_with_pull": (
        "Its partner, {movement}, has fewer sets while something hurts, so this has {sets} too.",
        "Its partner has fewer sets while something hurts, so this has fewer too.",
    ),
    "dose.sets_shared": (
        "{share_pct} % of the sets, so {sets} now.",
        "Fewer sets for now.",
    ),
}

VOLUMES: Sentences = {
    "volume.cut_after_misses": (
        "Half of the work of two weeks was missed, so {sets} sets this week.",
        "Half of the work of two weeks was missed, so fewer sets this week.",
    ),
    "volume.lighter_by_count": (
        "A lighter week, as every {every} weeks.",
        "A lighter week, as planned from time to time.",
    ),
    "volume.lighter_by_signals": (
        (
            "A lighter week: {signals} signs of tiredness agree "
            "(items below their floor: {misses}, "
            "less left than before: {is_reserve_falling}, "
            "sleep or mood poor: {is_sleep_or_mood_poor})."
        ),
        "A lighter week: {signals} signs of tiredness agree.",
        "A lighter week: signs of tiredness agree.",
    ),
    "volume.missed_week_counts": ("A missed week counts as the lighter one.",),
    "volume.not_lighter": ("An ordinary week.",),
}

GAPS: Sentences = {
    "gap.as_planned": (
        "{days} days since the last session: as planned.",
        "{clear_h} hours without fever: as planned.",
        "As planned.",
    ),
    "gap.no_step": (
        "{days} days since the last session: the same doses, no step up.",
        "After some days off: the same doses, no step up.",
    ),
    "gap.share_after_travel": (
        "{days} days off: {share_pct} % of the sets this week.",
        "After the days off: fewer sets this week.",
    ),
    "gap.share_careful": (
        "{days} days off, so a careful return: {share_pct} % of the sets this week.",
        "A careful return: fewer sets this week.",
    ),
    "gap.share_after_long": (
        "A long break of {days} days: {share_pct} % of the sets this week.",
        "After a long break: fewer sets this week.",
    ),
    "gap.return_done": (
        "The return after {days} days off is done.",
        "The return is done.",
    ),
    "gap.screen_again": (
        "After {days} days off, the first questions and tests come again.",
        "After so long, the first questions and tests come again.",
    ),
    "gap.fever_wait": (
        "No training until {needed_h} hours without fever; {clear_h} so far.",
        "No training until two days without fever.",
    ),
}

GATES: Sentences = {
    "gate.weeks": (
        "{weeks} of {needed_weeks} weeks in the stage.",
        "Weeks in the stage.",
    ),
    "gate.weeks_waived": (
        "Stage held before, so no weeks are asked ({weeks} so far).",
        "Stage held before, so no weeks are asked.",
    ),
    "gate.standard": (
        (
            "{key}: {sets} × {target} asked, best {best_set}, "
            "days shown {days_shown}, days asked {needed_days}."
        ),
        "A standard of the stage.",
    ),
    "gate.standard_by_coach": (
        "{key}: for the coach to decide on a clip.",
        "A standard for the coach to decide on a clip.",
    ),
    "gate.equipment_missing": (
        "{key}: what it needs is not at hand, so the coach decides on a clip.",
        "What a standard needs is not at hand, so the coach decides on a clip.",
    ),
    "gate.direction_held": (
        "{key}: held after an old injury, so the coach decides.",
        "A standard is held after an old injury, so the coach decides.",
    ),
    "gate.equivalent": (
        "With {load_kg}, {target} a set stands for it.",
        "Another weight and number stand for it.",
    ),
    "gate.equivalent_out_of_range": (
        "{key} cannot be converted to {load_kg}, so the coach decides.",
        "It cannot be converted, so the coach decides.",
    ),
    "gate.adherence": (
        (
            "{sessions_done} of {sessions_sent} sessions in four weeks, "
            "{needed_sessions} of them asked."
        ),
        "Sessions kept in four weeks.",
    ),
    "gate.pain": (
        "Highest pain in {days} days: {worst_pain} of 10, at most {most} asked.",
        "Pain in the last two weeks.",
    ),
    "gate.sides": (
        (
            "{movement}: weaker side at {weaker_for_stronger_pct} % of the stronger, "
            "{needed_pct} % asked."
        ),
        "The weaker side against the stronger.",
    ),
    "gate.sides_own_start": (
        (
            "{movement}: weaker side at {weaker_for_stronger_pct} %, "
            "no worse than at the start ({own_start_pct} %)."
        ),
        "The sides are no less even than at the start.",
    ),
    "gate.last_stage": (
        "Stage {stage} is the last.",
        "This is the last stage.",
    ),
    "gate.start_stage": (
        "The tests show stage {stage} to begin with.",
        "The tests show where to begin.",
    ),
    "gate.start_untested": ("Nothing was tested, so stage 1 to begin with.",),
    "gate.try_standard": (
        "{key} is likely within reach: worth a try.",
        "A standard is likely within reach: worth a try.",
    ),
}

CAPACITIES: Sentences = {
    "capacity.real_change": (
        "From {was} to {now}: more than chance ({needed_pct} % asked, {change_pct} % seen).",
        "More than chance.",
    ),
    "capacity.within_uncertainty": (
        "From {was} to {now}: not more than chance so far.",
        "Not more than chance so far.",
    ),
}
