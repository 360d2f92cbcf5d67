"""Why a level is what it is, and why a clearing was refused."""

from enum import StrEnum


class PainReason(StrEnum):
    """The reasons of this room. Figures are named beside each rule."""

    NO_PAIN = "pain.no_pain"
    PLAIN_SORENESS = "pain.plain_soreness"
    WORDS_ONLY = "pain.words_only"
    SCORE_BAND = "pain.score_band"
    RISE = "pain.rise"
    RECURRING_IN_SESSIONS = "pain.recurring_in_sessions"
    EASE_WITHOUT_FALL = "pain.ease_without_fall"
    UNSETTLED_MORNING = "pain.unsettled_morning"
    SECOND_UNSETTLED_MORNING = "pain.second_unsettled_morning"
    SUDDEN_SHARP = "pain.sudden_sharp"
    STOPPED_A_SET = "pain.stopped_a_set"
    DISTURBS_EVERYDAY_USE = "pain.disturbs_everyday_use"
    RESTED_BY_COACH = "pain.rested_by_coach"
    REST_NOT_FALLING = "pain.rest_not_falling"
    KEEPS_COMING_BACK = "pain.keeps_coming_back"
    RED_FLAG = "pain.red_flag"
    SETTLED = "pain.settled"
    MAY_CLEAR = "pain.may_clear"
    NEEDS_ASSESSMENT = "pain.needs_assessment"
    NEEDS_TRAINS_FROM = "pain.needs_trains_from"
    NOTHING_TO_CLEAR = "pain.nothing_to_clear"
    ONE_WRIST = "pain.one_wrist"
    OUTER_ELBOW_AGAIN = "pain.outer_elbow_again"
    RETURN_AFTER_REST = "pain.return_after_rest"
    RETURN_AFTER_CLINICIAN = "pain.return_after_clinician"
