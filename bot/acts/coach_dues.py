"""What a coach is owed, or was told once: it stays where they stop being an athlete."""

from enum import StrEnum

from scheduler.calendar.values import DueKind


class CoachDue(StrEnum):
    """What is done once for a coach, beside what the clock brings."""

    DIGEST_MOVED = "digest_moved"
    ALBUM_SHOWN = "album_out"
    PROPOSAL_TOLD = "proposal_told"
    REVIEW_TOLD = "review_told"
    TEAM_INVITED = "invite_team"
    MANY_TOLD = "told_many"
    OUTAGE_TOLD = "outage"


OWED_TO_COACHES = frozenset({DueKind.ALERT.value, DueKind.DIGEST.value, *CoachDue})
