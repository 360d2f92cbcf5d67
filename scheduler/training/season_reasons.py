"""The codes with which a season explains its stages and its weeks."""

from enum import StrEnum


class SeasonReason(StrEnum):
    """Why a season, or one week of it, is as it is."""

    CHECKLIST_DECIDES = "season.checklist_decides"
    BASE_SHARE = "season.base_share"
    BASE_IS_BEHIND = "season.base_is_behind"
    STAGE_FITS = "season.stage_fits"
    STAGE_DOES_NOT_FIT = "season.stage_does_not_fit"
    TOO_SHORT_TO_MOVE_UP = "season.too_short_to_move_up"
    OPEN_ENDED = "season.open_ended"
    STAGE_TO_CONFIRM = "season.stage_to_confirm"
    SCREEN_AGAIN = "season.screen_again"
    ORDINARY_WEEK = "season.ordinary_week"
    LIGHTER_BY_COUNT = "season.lighter_by_count"
    LIGHTER_GIVES_WAY = "season.lighter_gives_way"
    LIGHTER_FOR_EVENT = "season.lighter_for_event"
    TAPER = "season.taper"
    TAPER_LAST = "season.taper_last"
    IN_SEASON = "season.in_season"
    EASY_AFTER = "season.easy_after"
    RETURNING = "season.returning"
    BREAK = "season.break"
    BAND_ONLY = "season.band_only"
    FREE_DAYS = "season.free_days"
    OUTLOOK_AS_PLANNED = "season.outlook_as_planned"
    OUTLOOK_AHEAD = "season.outlook_ahead"
    OUTLOOK_BEHIND = "season.outlook_behind"
    OUTLOOK_NEXT_STAGE = "season.outlook_next_stage"
    OUTLOOK_NO_EVENT = "season.outlook_no_event"
