"""The legs of a season: from a start over the taper and a main event to the easy weeks after."""

from dataclasses import dataclass
from datetime import date, timedelta

from scheduler.training.rulebook import Rulebook
from scheduler.training.season_values import A_WEEK, SeasonEvent, SeasonRequest, Span, monday_of


@dataclass(frozen=True)
class Leg:
    """One way to one main event, in whole weeks; ``until`` is the Monday after its last week.

    The taper's Mondays end with the last week before the event, or with the event's own where
    enough of it lies before; ``easy`` are the Mondays after.
    """

    first: date
    until: date
    event: SeasonEvent
    taper: tuple[date, ...]
    easy: tuple[date, ...]

    @property
    def weeks(self) -> int:
        """How many weeks to the event, its taper included [weeks]."""
        return max(0, (self.taper[-1] - self.first).days // 7 + 1) if self.taper else 0


def legs_of(request: SeasonRequest, *, rulebook: Rulebook) -> tuple[Leg, ...]:
    """Return the legs to every main event since the season began, also those behind us.

    A taper takes two weeks where the way is long enough for two, else one, and one in season,
    where there is little to take away (CH); an event that follows soon takes its taper's week
    from the easy ones before it.
    """
    first = monday_of(request.began_on or request.today)
    mains = {event.on: event for event in request.events if event.is_main and event.on >= first}
    events = [mains[on] for on in sorted(mains)]
    legs: list[Leg] = []
    for number, event in enumerate(events):
        follower = events[number + 1] if number + 1 < len(events) else None
        is_held = _is_in_season_before(event, request=request, rulebook=rulebook)
        legs.append(_leg(event, first=first, follower=follower, is_held=is_held, rulebook=rulebook))
        first = legs[-1].until
    return tuple(legs)


def _leg(
    event: SeasonEvent,
    *,
    first: date,
    follower: SeasonEvent | None,
    is_held: bool,
    rulebook: Rulebook,
) -> Leg:
    last = last_week_before(event, rulebook=rulebook)
    weeks = (last - first).days // 7 + 1
    after = max(last + A_WEEK, first)
    until = after + _easy_weeks(weeks, rulebook=rulebook) * A_WEEK
    if follower is not None:
        until = min(until, max(after, last_week_before(follower, rulebook=rulebook)))
    taper = 1 if is_held else _taper_weeks(weeks, rulebook=rulebook)
    return Leg(
        first=first,
        until=until,
        event=event,
        taper=tuple(last - back * A_WEEK for back in reversed(range(min(taper, max(0, weeks))))),
        easy=tuple(mondays(after, until)),
    )


def last_week_before(event: SeasonEvent, *, rulebook: Rulebook) -> date:
    """Return the Monday of the last week to train before an event (CH).

    The event's own week where three or more of its days lie before it, else the week before.
    """
    monday = monday_of(event.on)
    counts = rulebook.season.taper.counts_its_week_from.whole
    return monday if event.on.isoweekday() >= counts else monday - A_WEEK


def _taper_weeks(weeks: int, *, rulebook: Rulebook) -> int:
    """Return one or two weeks of taper (CH; two weeks by bosquet2007)."""
    return 2 if weeks >= rulebook.season.taper.two_weeks_from.value else 1


def _is_in_season_before(event: SeasonEvent, *, request: SeasonRequest, rulebook: Rulebook) -> bool:
    """Tell whether the sport itself is on in the week before an event's last one."""
    before = last_week_before(event, rulebook=rulebook) - A_WEEK
    week = [before + timedelta(days=day) for day in range(7)]
    return any(on in span for on in week for span in request.in_season)


def _easy_weeks(weeks: int, *, rulebook: Rulebook) -> int:
    """Return one easy week after the event, two after a long way (CP)."""
    rules = rulebook.season.after
    is_long = weeks >= rules.two_weeks_from.value
    return int(rules.weeks.most or rules.weeks.least) if is_long else int(rules.weeks.least)


def mondays(first: date, until: date) -> list[date]:
    """Return every Monday from ``first`` on, before ``until``."""
    return [first + number * A_WEEK for number in range(max(0, (until - first).days // 7))]


def merged_breaks(request: SeasonRequest) -> tuple[Span, ...]:
    """Return the announced breaks with those that touch or overlap made one."""
    found: list[Span] = []
    for span in sorted(request.breaks, key=lambda one: (one.first, one.last)):
        if found and span.first <= found[-1].last + timedelta(days=1):
            last = max(found[-1].last, span.last)
            found[-1] = Span(first=found[-1].first, last=last)
        else:
            found.append(Span(first=span.first, last=span.last))
    return tuple(found)


def long_breaks(request: SeasonRequest, *, rulebook: Rulebook) -> tuple[Span, ...]:
    """Return the breaks after which screen and tests come again."""
    least = rulebook.gaps.again_from_days.value
    return tuple(span for span in merged_breaks(request) if span.days >= least)


def first_week_back(span: Span) -> date:
    """Return the Monday of the week in which training is back."""
    return monday_of(span.last + timedelta(days=1))
