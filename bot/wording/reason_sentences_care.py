"""One sentence for each reason about pain, alerts and the calendar, by its code."""

from collections.abc import Mapping

CALENDAR: Mapping[str, tuple[str, ...]] = {
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
