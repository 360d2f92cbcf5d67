"""One sentence for each reason about how a week was drawn, by its code."""

from collections.abc import Mapping

from bot.wording.tongue import Template

WEEKS: Mapping[str, tuple[Template, ...]] = {
    "week.eased_to_neighbour": (
        "{movement} loads a place that hurts, so the easier {to} takes its place.",
        "It loads a place that hurts, so an easier movement takes its place.",
    ),
    "week.eased_stays": (
        "{movement} loads a place that hurts and has no easier form here, so it has fewer sets.",
        "It loads a place that hurts and has no easier form here, so it has fewer sets.",
    ),
    "week.rested_to_neighbour": (
        "{movement} is left out, so the easier {to} takes its place.",
        "It is left out, so an easier movement takes its place.",
    ),
    "week.one_arm_only": (
        "{movement}: the sound arm only.",
        "The sound arm only.",
    ),
    "week.other_movement": (
        "{to} takes the place of {movement}.",
        "Another movement takes its place.",
    ),
    "week.other_arm": (
        "{movement} is done with the elbow the other way, as nothing else fits.",
        "The elbow is held the other way, as nothing else fits.",
    ),
    "week.other_chain": (
        "{movement} fills the place, as nothing of the planned kind fits.",
        "Another kind of movement fills the place.",
    ),
    "week.other_directions": (
        "{on}: {to} takes the place of {direction}.",
        "Other directions take the place this time.",
    ),
    "week.nothing_rested": (
        "{on}: no {direction}, as all of it loads what is left out.",
        "A place stays empty, as everything for it loads what is left out.",
    ),
    "week.nothing_owned": (
        "{on}: no {direction} with the equipment at hand.",
        "A place stays empty for want of equipment.",
    ),
    "week.nothing_permitted": (
        "{on}: no {direction} that the stage includes.",
        "A place stays empty, as the stage includes nothing for it.",
    ),
    "week.short_session": (
        "{session_min} min are enough for the first pair only.",
        "The minutes are enough for the first pair only.",
    ),
    "week.fewer_sets_for_minutes": (
        "Fewer sets, to stay inside {session_min} min.",
        "Fewer sets, to stay inside the minutes.",
    ),
    "week.lower_quality_for_minutes": (
        "Lighter work with shorter rests, to stay inside {session_min} min.",
        "Lighter work with shorter rests, to stay inside the minutes.",
    ),
    "week.no_accessory_for_minutes": (
        "No extra work, to stay inside {session_min} min.",
        "No extra work, to stay inside the minutes.",
    ),
    "week.no_room_in_minutes": (
        "A part had to go, to stay inside {session_min} min.",
        "A part had to go, to stay inside the minutes.",
    ),
    "week.easy_pulls_for_spacing": (
        "{on}: easy pulling, as hard pulling needs a free day between.",
        "Easy pulling, as hard pulling needs a free day between.",
    ),
    "week.growth_capped": (
        "{direction}: from {last_sets} to {sets} sets, no more in one week.",
        "The week's sets grow slowly.",
    ),
    "week.share_of_sets": (
        "{share_pct} % of the usual sets this week.",
        "Fewer sets than usual this week.",
    ),
    "week.first_two_weeks": (
        "The first two weeks keep to {sets} sets.",
        "The first two weeks keep to few sets.",
    ),
    "week.careful_pulling": (
        "The first pulling for reps keeps to {sets_most} sets.",
        "The first pulling for reps is kept short.",
    ),
    "week.straight_share_kept": (
        "Changed so that enough is done with a straight arm ({changes}).",
        "Changed so that enough is done with a straight arm.",
    ),
    "week.balance_kept": (
        "{sets_taken} fewer sets, so that pushing and pulling match.",
        "A few sets fewer, so that pushing and pulling match.",
    ),
    "week.days_moved": ("The days moved, to keep free days between hard ones.",),
    "week.day_kept": (
        "{on} stays as it was sent.",
        "What was sent stays.",
    ),
    "week.day_missed": (
        "{on} was missed and is not made up.",
        "A missed day is not made up.",
    ),
    "week.changed_early": (
        "{movement} changed to {to} after {weeks} weeks, sooner than usual.",
        "A movement changed sooner than usual.",
    ),
    "week.no_other_movement": (
        "{movement} stays beyond {weeks_most} weeks, as nothing else fits.",
        "A movement stays longer than usual, as nothing else fits.",
    ),
    "week.too_few_exposures": (
        "{direction}: {exposures} instead of {exposures_due} times.",
        "One direction comes less often than usual.",
    ),
    "week.push_to_pull": (
        "{push_sets} sets of pushing to {pull_sets} of pulling.",
        "Pushing and pulling do not match.",
    ),
    "week.one_chain_this_week": (
        "No {missing} this week; it comes next week.",
        "Only one kind of work this week.",
    ),
    "week.one_chain_only": (
        "No {missing}, as nothing of it fits.",
        "Only one kind of work, as nothing of the other fits.",
    ),
    "week.partner_missing": (
        "{on}: {direction} without its opposite.",
        "One direction without its opposite.",
    ),
    "week.not_alternating": (
        "{on}: pair {pair} does not take turns.",
        "One pair does not take turns.",
    ),
    "week.unknown_movement": (
        "{movement} is not in the library.",
        "A movement is not in the library.",
    ),
    "week.not_of_the_direction": (
        "{movement} does not count for {direction}.",
        "A movement does not count for its direction.",
    ),
    "week.stage_forbids": (
        "Stage {stage} does not include {movement}.",
        "The stage does not include a movement.",
    ),
    "week.straight_share_low": (
        "Only {straight_sets} of {sets} sets with a straight arm.",
        "Too few sets with a straight arm.",
    ),
    "week.hard_too_close": (
        "Hard work on {on} and {to}, without a free day between.",
        "Hard work without a free day between.",
    ),
    "week.hang_after_hard_pulling": (
        "{movement} on the day after hard pulling.",
        "A hang on the day after hard pulling.",
    ),
    "week.maximal_too_often": (
        "{direction}: {exposures} times of the heaviest work.",
        "The heaviest work comes too often.",
    ),
    "week.rested_loaded": (
        "{movement} loads what is left out.",
        "A movement loads what is left out.",
    ),
    "week.not_owned": (
        "{movement} needs equipment that is not at hand.",
        "A movement needs equipment that is not at hand.",
    ),
    "week.inverted": (
        "{movement} is head-down, which is ruled out.",
        "A movement is head-down, which is ruled out.",
    ),
    "week.banned": (
        "{movement} is banned by the coach.",
        "A movement is banned by the coach.",
    ),
    "week.above_minutes": (
        "{on}: {minutes} min, more than {session_min}.",
        "A day takes more minutes than there are.",
    ),
    "week.above_sets": (
        "{direction}: {sets} sets, more than {sets_most}.",
        "More sets than the stage allows.",
    ),
    "week.not_yet": (
        "{movement} comes once its easier forms have been done.",
        "A movement comes once its easier forms have been done.",
    ),
    "week.upkeep_placed": (
        "{on}: {movement}, {sets} easy sets, to keep up what you train elsewhere.",
        "A few easy bent-arm sets keep up what is trained elsewhere.",
    ),
    "week.upkeep_no_room": (
        "{direction}: no bent-arm sets this week, as the minutes are full.",
        "No bent-arm sets this week, as the minutes are full.",
    ),
    "week.upkeep_nothing_fits": (
        "{direction}: no bent-arm sets this week, as nothing may be done for it now.",
        "No bent-arm sets this week, as nothing may be done for them now.",
    ),
    "week.upkeep_out_of_bounds": (
        "{on}: {movement} is not what bent-arm upkeep allows.",
        "A movement is not what bent-arm upkeep allows.",
    ),
    "week.stayed_too_long": (
        "{movement} has stayed for {weeks} weeks, longer than usual.",
        "A movement stayed longer than usual.",
    ),
}
