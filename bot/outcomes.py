"""What became of each thing that arrived: every update ends as exactly one of these."""

from enum import StrEnum


class Outcome(StrEnum):
    """Written on the inbox row when it is handled."""

    RECORDED = "recorded"
    ASKED = "asked"
    CORRECTED = "corrected"
    CANT_TODAY = "cant_today"
    PASSED_ON = "passed_on"
    NOT_UNDERSTOOD = "not_understood"
    ANSWERED = "answered"
    OTHER_TRAINING = "other_training"
    SAFETY = "safety"
    COMMAND = "command"
    INTAKE = "intake"
    JOINED = "joined"
    STALE_TAP = "stale_tap"
    STATE = "state"
    STRANGER = "stranger"
    NOT_FOR_US = "not_for_us"
