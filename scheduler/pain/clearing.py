"""Whether a person may clear, and how training comes back afterwards."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from math import floor

from scheduler.pain.events import Cleared, SessionTrained
from scheduler.pain.open_flags import OpenFlag
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.region_state import RegionState
from scheduler.pain.values import Level, Region, regions_of
from scheduler.reasons import Decision, reason
from scheduler.sources import CH

RETURN_SESSIONS = 2  # [sessions] ch: the first two that load it
SHARE_AFTER_REST = 0.7  # [share of sets] ch
SHARE_AFTER_CLINICIAN = 0.5  # [share of sets] ch
LEAST_SETS = 1  # [sets] ch


@dataclass(frozen=True)
class Return:
    """How a cleared region comes back; ``region`` None means all of the upper body."""

    region: Region | None
    share_of_sets: float
    is_one_step_back: bool
    sessions_left: int
    from_utc: datetime

    def sets(self, planned: int) -> int:
        """Return the sets of a session that returns: rounded down, at least one."""
        share = floor(planned * self.share_of_sets + 1e-9)
        return max(share, LEAST_SETS)

    @property
    def code(self) -> PainReason:
        """Why the session is smaller."""
        if self.is_one_step_back:
            return PainReason.RETURN_AFTER_CLINICIAN
        return PainReason.RETURN_AFTER_REST


def may_clear(
    event: Cleared, *, regions: Sequence[RegionState], flags: Sequence[OpenFlag]
) -> Decision[bool]:
    """Tell whether a clearing is complete.

    Args:
        event: the clearing as the coach wrote it; a reason is already sure.
        regions: every region's state.
        flags: the flags that stand.

    Returns:
        False where nothing meant by it is held; and for clinician and emergency without the
        statement that the athlete reports having been assessed by a licensed clinician, or
        without a date to train from. Source: ch.

    """
    held = [h.level for state in meant_regions(event, regions) for h in state.held]
    held += [flag.rule.level for flag in meant_flags(event, flags)]
    if not held:
        return Decision(value=False, reasons=(reason(PainReason.NOTHING_TO_CLEAR, CH),))
    level = max(held)
    if level >= Level.CLINICIAN and not event.is_assessed:
        why = reason(PainReason.NEEDS_ASSESSMENT, CH, level=level.value)
        return Decision(value=False, reasons=(why,))
    if level >= Level.CLINICIAN and event.trains_from_utc is None:
        why = reason(PainReason.NEEDS_TRAINS_FROM, CH, level=level.value)
        return Decision(value=False, reasons=(why,))
    return Decision(value=True, reasons=(reason(PainReason.MAY_CLEAR, CH, level=level.value),))


def meant_flags(event: Cleared, flags: Sequence[OpenFlag]) -> tuple[OpenFlag, ...]:
    """Return the flags that a clearing means: all, or those wholly inside its region.

    A flag of both arms is not cleared with one of them.
    """
    if event.site is None:
        return tuple(flags)
    cleared = set(regions_of(event.site, event.side))
    return tuple(flag for flag in flags if flag.regions and set(flag.regions) <= cleared)


def clear_region(state: RegionState, event: Cleared) -> tuple[RegionState, Return | None]:
    """End what is held, now or from the date named, and count the region anew."""
    if not state.held:
        return state, None
    level = max(h.level for h in state.held)
    starts = max(event.trains_from_utc or event.at_utc, event.at_utc)
    held = (
        tuple(replace(h, ends_at_utc=starts) for h in state.held) if starts > event.at_utc else ()
    )
    fresh = RegionState(
        region=state.region,
        held=held,
        answers=state.answers,
        counts_from_utc=event.at_utc,
    )
    return fresh, returning(state.region, level, starts)


def returning(region: Region | None, level: Level, from_utc: datetime) -> Return:
    """Return how a region comes back: 70 % of the sets after rest, 50 % and a step back above."""
    is_grave = level >= Level.CLINICIAN
    return Return(
        region=region,
        share_of_sets=SHARE_AFTER_CLINICIAN if is_grave else SHARE_AFTER_REST,
        is_one_step_back=is_grave,
        sessions_left=RETURN_SESSIONS,
        from_utc=from_utc,
    )


def count_session(returns: Sequence[Return], event: SessionTrained) -> tuple[Return, ...]:
    """Count a session for every return that it loads; two of them end it."""
    counted = (
        replace(one, sessions_left=one.sessions_left - 1) if _is_loaded(one, event) else one
        for one in returns
    )
    return tuple(one for one in counted if one.sessions_left)


def _is_loaded(one: Return, event: SessionTrained) -> bool:
    loads = one.region in event.loaded if one.region else bool(event.loaded)
    return loads and event.at_utc >= one.from_utc


def meant_regions(event: Cleared, regions: Sequence[RegionState]) -> tuple[RegionState, ...]:
    """Return the regions that a clearing means: all, or those of its site and side."""
    if event.site is None:
        return tuple(regions)
    cleared = set(regions_of(event.site, event.side))
    return tuple(state for state in regions if state.region in cleared)
