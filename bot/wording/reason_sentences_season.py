"""One sentence for each reason about a season, by its code; and about the first tests."""

from collections.abc import Mapping

from bot.wording.tongue import Template

Sentences = Mapping[str, tuple[Template, ...]]

SEASONS: Sentences = {
    "season.checklist_decides": (
        "The dates are a proposal: the checklist and the coach decide when a stage ends.",
    ),
    "season.base_share": (
        "{weeks} weeks go to stages 1 and 2, about {share_pct} % of the time or more.",
        "Most of the time goes to stages 1 and 2.",
    ),
    "season.base_is_behind": (
        "Stage {stage} is held already, so no time is set aside for stages 1 and 2.",
        "The first stages are behind, so no time is set aside for them.",
    ),
    "season.stage_fits": (
        "Stage {stage}: {weeks} weeks, at least {needed_weeks} needed.",
        "The stage fits with all the weeks it needs.",
    ),
    "season.stage_does_not_fit": (
        "Stage {stage} would take {needed_weeks} weeks in all, and {weeks} are there.",
        "The next stage does not fit, so it is not planned.",
    ),
    "season.too_short_to_move_up": (
        "No weeks to build with are left, so stage {stage} is held.",
        "No weeks to build with are left, so the stage is held.",
    ),
    "season.open_ended": (
        "Without a main event the training goes on; the next {weeks} weeks are shown.",
        "Without a main event the training goes on, with lighter weeks between.",
    ),
    "season.stage_to_confirm": ("After the event, the coach confirms the stage to go on from.",),
    "season.screen_again": (
        (
            "After so long a break, the first questions and tests come again, "
            "and stage {stage} is planned."
        ),
        "After so long a break, the first questions and tests come again before more is planned.",
    ),
    "season.ordinary_week": ("A week as usual.",),
    "season.lighter_by_count": (
        "Every {every} weeks one is lighter, and this is it.",
        "From time to time a week is lighter, and this is it.",
    ),
    "season.lighter_gives_way": (
        "The lighter week of every {every} is left to the easier one that follows.",
        "The lighter week is left to the easier one that follows.",
    ),
    "season.lighter_for_event": (
        "Fewer sets, for the event on {on}.",
        "Fewer sets, for the event.",
    ),
    "season.taper": (
        "{share_pct} % of the sets at the same load, towards the event on {on}.",
        "Fewer sets at the same load, towards the event.",
    ),
    "season.taper_last": (
        "The last week before the event on {on}: {share_pct} % of the sets, the same load.",
        "The last week before the event: few sets, the same load.",
    ),
    "season.in_season": (
        "In season: at most {sessions} sessions of {session_min} min, to hold the level.",
        "In season: short sessions, to hold the level.",
    ),
    "season.easy_after": (
        "An easy week after the event on {on}.",
        "An easy week after the event.",
    ),
    "season.returning": (
        "Back after {days} days off: {share_pct} % of the sets.",
        "Back after the days off: fewer sets.",
    ),
    "season.break": (
        "A break of {days} days: nothing is planned, and it counts neither way.",
        "A break: nothing is planned, and it counts neither way.",
    ),
    "season.band_only": (
        "Away from home: a week for what is at hand there ({equipment}).",
        "Away from home: a week for what is at hand there.",
    ),
    "season.free_days": (
        "{days} days around the event are kept free.",
        "The days around the event are kept free.",
    ),
    "season.outlook_as_planned": (
        "By {on}, stage {stage} can be reached, as planned.",
        "The stage for the event can be reached, as planned.",
    ),
    "season.outlook_ahead": (
        "By {on}, stage {stage} can be reached; stage {planned} was planned.",
        "More can be reached by the event than was planned.",
    ),
    "season.outlook_behind": (
        "Stage {stage} can honestly be reached by {on}, not stage {planned}; nothing is rushed.",
        "Less can be reached by the event than was planned; nothing is rushed.",
    ),
    "season.outlook_next_stage": (
        "Stage {stage} comes on {on} at the earliest.",
        "The next stage has an earliest day.",
    ),
    "season.outlook_no_event": (
        "No main event; by {on}, stage {stage} can be reached.",
        "No main event, so there is no date to be ready by.",
    ),
}

BASELINES: Sentences = {
    "baseline.begins": ("Nothing in the first answers asks for a look before the start.",),
    "baseline.coach_has_looked": ("The coach has looked at the answers, so it begins.",),
    "baseline.waits_for_screen": (
        "{answers} answers on health ask for the coach's look before the start.",
        "Answers on health ask for the coach's look before the start.",
    ),
    "baseline.waits_for_injury": (
        "A joint was out, operated on, or hurt within {months} months: the coach looks first.",
        "An earlier injury asks for the coach's look first.",
    ),
    "baseline.waits_for_guardian": (
        "Under 18, so a guardian and the coach must agree before the start.",
    ),
    "baseline.direction_held": (
        "{direction}: kept at stage {stage} until the coach gives it back.",
        "Kept at the first stage until the coach gives it back.",
    ),
    "baseline.no_hangs": ("No still hangs until the coach gives them back.",),
    "baseline.no_inversion": ("Nothing upside down.",),
    "baseline.two_days": (
        "One set each after a warm-up. Tests: {tests}. Days: {days}.",
        "Tests of one set each, with a warm-up first.",
    ),
    "baseline.test_asked": (
        "{movement} with {load_kg}: one set of up to {target_s} s.",
        "{movement}: one set of up to {target_s} s.",
        "{movement} with {load_kg}: one set of up to {target_reps}.",
        "{movement}: one set of up to {target_reps}.",
        "One set of it is tested.",
    ),
    "baseline.heavier_load": (
        "{movement}: {load_kg} instead of {was_kg}, so {target_s} s are enough.",
        "The weight at hand is heavier, so less is enough.",
    ),
    "baseline.lighter_load": (
        "{movement}: {load_kg} instead of {was_kg}, so {target_s} s are asked.",
        "The weight at hand is lighter, so more is asked.",
    ),
    "baseline.no_figures": (
        "{key}: no figures for it, so the coach decides on a clip.",
        "No figures for it, so the coach decides on a clip.",
    ),
    "baseline.not_owned": (
        "{key}: the equipment is not at hand, so the coach decides on a clip.",
        "The equipment is not at hand, so the coach decides on a clip.",
    ),
    "baseline.direction_not_tested": (
        "{key}: not tested, as {direction} is kept back after an injury; the coach decides.",
        "Not tested, as it is kept back after an injury; the coach decides.",
    ),
    "baseline.hang_not_tested": (
        "{key}: no still hang after an injury; the coach decides.",
        "No still hang after an injury; the coach decides.",
    ),
    "baseline.inversion_not_tested": (
        "{key}: not tested, as it goes upside down; the coach decides.",
        "Not tested, as it goes upside down; the coach decides.",
    ),
    "baseline.rested_not_tested": (
        "{key}: not tested, as it loads what is left out now; the coach decides.",
        "Not tested, as it loads what is left out now; the coach decides.",
    ),
    "baseline.beyond_stop": (
        "{key}: with the weight at hand it would take more than {at_most_s} s; the coach decides.",
        "With the weight at hand it would take too long; the coach decides.",
    ),
    "baseline.after_the_coach": (
        "What opens more than stage {stage} is not tested before the coach has decided.",
        "Harder tests wait for what the coach decides.",
    ),
    "baseline.no_time": (
        "{movement}: no time for it in {session_min} min, so the coach decides.",
        "No time for it, so the coach decides.",
    ),
    "baseline.nothing_to_test": (
        "Nothing can be tested, so it begins at stage {stage}.",
        "Nothing can be tested, so it begins at the first stage.",
    ),
    "baseline.nothing_while_waiting": (
        "Nothing is tested before the coach has looked at the first answers.",
    ),
    "baseline.too_soon": (
        "The second day of tests keeps {free_days} free day from the first.",
        "The second day of tests keeps a free day from the first.",
    ),
    "baseline.test_not_yet": (
        "{movement}: comes only after the tests before it went well.",
        "Comes only after the tests before it went well.",
    ),
    "baseline.result_with_pain": (
        "{movement}: pain of {pain} of 10, more than {most}, so it does not count.",
        "It hurt, so it does not count.",
    ),
    "baseline.result_at_other_load": (
        "{movement}: held with {was_kg}, which stands for {held_s} s with {load_kg}.",
        "Held with another weight, and converted.",
    ),
}
