"""What each week of a season is, before its stage and its lighter weeks are known."""

from dataclasses import dataclass, field
from datetime import date, timedelta

from scheduler.catalogue.values import Equipment
from scheduler.training.rulebook import Rulebook
from scheduler.training.season_legs import Leg, first_week_back, last_week_before, merged_breaks
from scheduler.training.season_values import (
    A_WEEK,
    SeasonEvent,
    SeasonRequest,
    SeasonWeekKind,
    Span,
    Travel,
)


@dataclass(frozen=True)
class CalendarWeek:
    """A week as dates alone make it.

    ``kind`` is the strongest claim on it; ``leg`` is the way that it lies on, None on none;
    ``back_from`` the break that is being returned from; ``other_event`` the event that makes it
    lighter; ``days_off`` have nothing planned, those in ``free_for_event`` because of an event.
    """

    monday: date
    kind: SeasonWeekKind
    leg: Leg | None
    days_off: frozenset[date] = frozenset()
    free_for_event: frozenset[date] = frozenset()
    equipment: frozenset[Equipment] | None = None
    is_in_season: bool = False
    other_event: SeasonEvent | None = None
    back_from: Span | None = None
    broken_by: Span | None = field(default=None)


def calendar_week(
    monday: date, *, request: SeasonRequest, legs: tuple[Leg, ...], rulebook: Rulebook
) -> CalendarWeek:
    """Return what a week is by the dates: a break, a taper, easy, in season, a return, or open.

    A week is a break only when every training day of it is off. A trip that takes at least half
    of what is left makes it a week for the equipment at hand there, a shorter one costs its
    days (CH).
    """
    leg = next((leg for leg in legs if leg.first <= monday < leg.until), None)
    trained = [monday + timedelta(days=day - 1) for day in sorted(request.weekdays)]
    broken = {on for on in trained if any(on in span for span in request.breaks)}
    free = _free_for_events(monday, request=request, rulebook=rulebook)
    left = [on for on in trained if on not in broken and on not in free]
    travel = _travel(left, request)
    away = {on for on in left if any(on in trip for trip in request.travels)}
    is_band_week = travel is not None and 2 * len(away) >= len(left)
    other = _other_event(monday, request=request, rulebook=rulebook)
    is_in_season = any(on in span for on in left for span in request.in_season)
    back_from = _back_from(monday, request=request, rulebook=rulebook)
    kind = _kind(
        monday,
        leg=leg,
        is_break=bool(broken) and not left,
        claims=(
            (is_in_season, SeasonWeekKind.IN_SEASON),
            (back_from is not None, SeasonWeekKind.RETURNING),
            (other is not None, SeasonWeekKind.LIGHTER),
            (is_band_week, SeasonWeekKind.BAND_ONLY),
        ),
    )
    return CalendarWeek(
        monday=monday,
        kind=kind,
        leg=leg,
        days_off=frozenset(broken | free | (set() if is_band_week else away)),
        free_for_event=frozenset(free),
        equipment=travel.equipment if travel is not None and is_band_week else None,
        is_in_season=is_in_season,
        other_event=other,
        back_from=back_from,
        broken_by=next((s for s in merged_breaks(request) if any(on in s for on in broken)), None),
    )


def _kind(
    monday: date,
    *,
    leg: Leg | None,
    is_break: bool,
    claims: tuple[tuple[bool, SeasonWeekKind], ...],
) -> SeasonWeekKind:
    """Return the strongest claim on a week; what nothing claims is ordinary."""
    if is_break:
        return SeasonWeekKind.BREAK
    if leg is not None and monday in leg.taper:
        return SeasonWeekKind.TAPER
    if leg is not None and monday in leg.easy:
        return SeasonWeekKind.EASY_AFTER
    return next((kind for holds, kind in claims if holds), SeasonWeekKind.ORDINARY)


def _free_for_events(monday: date, *, request: SeasonRequest, rulebook: Rulebook) -> set[date]:
    """Return the days kept free: an event's day and the one before (CP).

    After a main event the rest of its week is free too, or, when it comes early in the week,
    the days before it.
    """
    week = [monday + timedelta(days=day) for day in range(7)]
    before = timedelta(days=rulebook.season.taper.free_days_before.whole)
    free: set[date] = set()
    for event in request.events:
        free |= {on for on in week if event.on - before <= on <= event.on}
        if event.is_main and event.on in week:
            is_own = last_week_before(event, rulebook=rulebook) == monday
            free |= {on for on in week if (on > event.on if is_own else on < event.on)}
    return free


def _travel(left: list[date], request: SeasonRequest) -> Travel | None:
    """Return the trip that takes the most of the days that are left."""
    days = [(sum(on in trip for on in left), trip) for trip in request.travels]
    return max((one for one in days if one[0]), key=lambda one: one[0], default=(0, None))[1]


def _other_event(monday: date, *, request: SeasonRequest, rulebook: Rulebook) -> SeasonEvent | None:
    """Return the other event whose last week this is."""
    return next(
        (
            event
            for event in request.events
            if not event.is_main and last_week_before(event, rulebook=rulebook) == monday
        ),
        None,
    )


def _back_from(monday: date, *, request: SeasonRequest, rulebook: Rulebook) -> Span | None:
    """Return the break whose weeks of return this week belongs to, by the rules of missed days."""
    rules = rulebook.gaps
    found = None
    for span in merged_breaks(request):
        is_long = span.days >= rules.long_from_days.value
        shares = rules.long_shares if is_long else rules.healthy_shares
        is_counted = span.days >= rules.short_from_days.value
        back = first_week_back(span)
        if is_counted and back <= monday < back + len(shares) * A_WEEK:
            found = span
    return found
