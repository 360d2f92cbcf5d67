"""The codes with which the calendar explains itself."""

from enum import StrEnum


class CalendarReason(StrEnum):
    """Why something due is sent or only noted, and when a coach is told."""

    ON_TIME = "calendar.on_time"
    LATE_STILL_USEFUL = "calendar.late_still_useful"
    TOO_LATE = "calendar.too_late"
    DAY_LEFT_OUT = "calendar.day_left_out"
    RAN_THROUGH = "calendar.ran_through"
    STOOD_STILL = "calendar.stood_still"
    TOLD_AT_ONCE = "calendar.told_at_once"
    TOLD_WHEN_AWAKE = "calendar.told_when_awake"
    TOLD_IN_DIGEST = "calendar.told_in_digest"
    TOLD_AGAIN = "calendar.told_again"
    TOLD_AGAIN_WHEN_AWAKE = "calendar.told_again_when_awake"
