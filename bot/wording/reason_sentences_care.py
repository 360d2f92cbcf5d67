"""One sentence for each reason about pain, alerts and the calendar, by its code."""

from collections.abc import Mapping

from bot.wording.tongue import Template

CALENDAR: Mapping[str, tuple[Template, ...]] = {
    "calendar.on_time": ("On time.",),
    "calendar.late_still_useful": (
        "{late_span} late, and still of use.",
        "Late, and still of use.",
    ),
    "calendar.too_late": (
        "{late_span} late, so it was not sent any more.",
        "Too late, so it was not sent any more.",
    ),
    "calendar.day_left_out": (
        "{local_date} does not exist in this zone.",
        "The day does not exist in this zone.",
    ),
    "calendar.ran_through": ("The bot ran all the time.",),
    "calendar.stood_still": (
        "The bot stood still for {span_span}.",
        "The bot stood still for a while.",
    ),
    "calendar.told_at_once": ("Told at once, day or night.",),
    "calendar.told_when_awake": (
        "Told in waking hours, after {wait_span}.",
        "Told in waking hours.",
    ),
    "calendar.told_in_digest": ("Told in the weekly digest.",),
    "calendar.told_again": (
        "Not answered, so told again after {wait_span}.",
        "Not answered, so told again.",
    ),
    "calendar.told_again_when_awake": ("Not answered, so told again in waking hours.",),
}

PAIN: Mapping[str, tuple[Template, ...]] = {
    "pain.no_pain": ("No pain was reported.",),
    "pain.plain_soreness": ("Plain muscle soreness, no pain.",),
    "pain.words_only": ("Pain was mentioned without a number, so it is watched.",),
    "pain.score_band": (
        "Pain {score} of 10.",
        "The number that was reported.",
    ),
    "pain.rise": (
        "It rose by {rise} to {score} of 10 within {within_d} days.",
        "It rose within a week.",
    ),
    "pain.recurring_in_sessions": (
        "The same place hurt in {sessions} of the last {of_sessions} sessions.",
        "The same place hurt in several of the last sessions.",
    ),
    "pain.ease_without_fall": (
        "Three sessions running with less work, and the pain in them did not fall.",
    ),
    "pain.unsettled_morning": (
        "Next morning {score} of 10, not back to {before}.",
        "It had not settled by the next morning.",
    ),
    "pain.second_unsettled_morning": (
        "Unsettled on {mornings} mornings, now {score} of 10.",
        "It had not settled on a second morning.",
    ),
    "pain.sudden_sharp": ("It came suddenly and sharply.",),
    "pain.stopped_a_set": ("It stopped a set.",),
    "pain.disturbs_everyday_use": ("It disturbs everyday use.",),
    "pain.rested_by_coach": ("The coach rested it.",),
    "pain.rest_not_falling": (
        "It has not eased in {after_d} days of rest.",
        "It has not eased in two weeks of rest.",
    ),
    "pain.keeps_coming_back": (
        "It came back in {weeks} of {of_weeks} weeks.",
        "It keeps coming back.",
    ),
    "pain.red_flag": (
        "Reported: {flag}.",
        "A sign that a person must look at.",
    ),
    "pain.settled": (
        "Settled: {score} of 10, before the session {before}.",
        "Settled: {score} of 10 in a session that loads it.",
        "It has settled.",
    ),
    "pain.may_clear": ("Everything that clearing asks for was there.",),
    "pain.needs_assessment": (
        "First the athlete must report having been seen by a licensed clinician.",
    ),
    "pain.needs_trains_from": ("A day is needed from when it may be trained.",),
    "pain.nothing_to_clear": ("Nothing is left out there, so there is nothing to clear.",),
    "pain.one_wrist": (
        "The {side} wrist {score} of 10, the other {other}.",
        "One wrist hurts and not the other.",
    ),
    "pain.outer_elbow_again": (
        "Outside of the {side} elbow, {reports} times in {within_d} days.",
        "The outside of the elbow hurts again.",
    ),
    "pain.return_after_rest": (
        "Back after rest: {share_pct} % of the sets at first.",
        "Back after rest: fewer sets at first.",
    ),
    "pain.return_after_clinician": (
        "Back after a clinician's look: {share_pct} % of the sets, one step easier.",
        "Back after a clinician's look: fewer sets, one step easier.",
    ),
}
