"""Draw a week of training for one athlete, or what is left of it."""

from collections.abc import Sequence
from datetime import date
from itertools import groupby

from scheduler.catalogue.library import Library
from scheduler.reasons import Reason, reason
from scheduler.sources import CH
from scheduler.training.rulebook import Rulebook
from scheduler.training.week_accessories import choose_accessory
from scheduler.training.week_days import DayPlan, lay_out_days, training_dates
from scheduler.training.week_fit import fit_day, keep_balance, keep_straight_share, minutes_of
from scheduler.training.week_in_use import stays_not_kept
from scheduler.training.week_pairs import fill_week, keep_both_chains
from scheduler.training.week_places import Pick
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_relaxations import relaxations_of
from scheduler.training.week_sets import give_sets
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_slots import picks_of, slots_of
from scheduler.training.week_upkeep import place_upkeep
from scheduler.training.week_values import Session, WeekDraft, WeekRequest

ROUNDS_OF_FITTING = 4  # [times] ch: minutes and straight-arm share settle each other


def draw_week(request: WeekRequest, *, library: Library, rulebook: Rulebook) -> WeekDraft:
    """Draw the week: days, pairs, movements, qualities, sets, accessories.

    The same request gives the same week. Permissions, spacing, what is left out, equipment,
    minutes and the upper bound of sets always hold; what else cannot hold gives way in the order
    of :class:`~scheduler.training.week_values.Relaxed` and is recorded.
    """
    shelf = Shelf(request=request, library=library, rulebook=rulebook)
    kept = picks_of(request.kept, shelf=shelf)
    planned = lay_out_days(request, rules=rulebook.weeks)
    days = _days_to_draw(planned, request=request)
    filling = fill_week(days, planned=planned, shelf=shelf, kept=kept)
    keep_both_chains(filling, shelf=shelf)
    given = give_sets(filling.picks, kept=kept, request=request, rulebook=rulebook)
    fitted, fit_reasons = _fit(given.picks, days=days, kept=kept, shelf=shelf)
    upkeep, upkeep_reasons = place_upkeep(days, week=fitted, kept=kept, shelf=shelf)
    picks = (*fitted, *upkeep)
    reasons = (
        *filling.reasons,
        *given.reasons,
        *fit_reasons,
        *upkeep_reasons,
        *_day_reasons(request, planned=planned),
    )
    stay = stays_not_kept(picks, shelf=shelf)
    rest = relaxations_of((*kept, *picks), planned=planned, shelf=shelf, found=reasons)
    return WeekDraft(
        sessions=_sessions(picks, kept=kept, shelf=shelf),
        relaxations=tuple(sorted((*stay, *rest), key=lambda gone: gone.what)),
        reasons=reasons,
    )


def _days_to_draw(planned: Sequence[DayPlan], *, request: WeekRequest) -> tuple[DayPlan, ...]:
    sent = {slot.on for slot in request.kept}
    return tuple(day for day in planned if request.is_open(day.on) and day.on not in sent)


def _fit(
    picks: tuple[Pick, ...], *, days: Sequence[DayPlan], kept: Sequence[Pick], shelf: Shelf
) -> tuple[tuple[Pick, ...], tuple[Reason, ...]]:
    """Add accessories, then let minutes, balance and straight-arm share settle each other."""
    reasons: list[Reason] = []
    accessories: list[Pick] = []
    for day in days:
        today = [pick for pick in picks if pick.place.on == day.on]
        week = [*kept, *accessories]
        accessory = choose_accessory(day, today=today, week=week, shelf=shelf)
        accessories += [accessory] if accessory is not None else []
    week_picks: tuple[Pick, ...] = (*picks, *accessories)
    for _ in range(ROUNDS_OF_FITTING):
        before = week_picks
        fitted: list[Pick] = []
        for day in days:
            today_picks = tuple(pick for pick in week_picks if pick.place.on == day.on)
            day_picks, why = fit_day(today_picks, shelf=shelf)
            fitted += day_picks
            reasons += why
        week_picks, why = keep_balance(fitted, kept=kept, shelf=shelf)
        reasons += why
        week_picks, why = keep_straight_share(week_picks, kept=kept, shelf=shelf)
        reasons += why
        if week_picks == before:
            break
    return _with_main_work(week_picks), tuple(reasons)


def _with_main_work(picks: Sequence[Pick]) -> tuple[Pick, ...]:
    """Drop the accessory of a day whose main work has all gone."""
    trained = {pick.place.on for pick in picks if pick.place.pair is not None}
    return tuple(pick for pick in picks if pick.place.on in trained)


def _day_reasons(request: WeekRequest, *, planned: Sequence[DayPlan]) -> tuple[Reason, ...]:
    sent = {slot.on for slot in request.kept}
    missed = [day.on for day in planned if not request.is_open(day.on) and day.on not in sent]
    usual = training_dates(request.model_copy(update={"hard_days": ()}))
    moved = (reason(WeekReason.DAYS_MOVED, CH),) if training_dates(request) != usual else ()
    return (
        *moved,
        *(reason(WeekReason.DAY_KEPT, CH, on=on.isoformat()) for on in sorted(sent)),
        *(reason(WeekReason.DAY_MISSED, CH, on=on.isoformat()) for on in missed),
    )


def _sessions(picks: Sequence[Pick], *, kept: Sequence[Pick], shelf: Shelf) -> tuple[Session, ...]:
    """Put the drawn days between those that stand, which keep their slots as they are."""
    by_day: dict[date, tuple[Pick, ...]] = {}
    for pick in (*kept, *picks):
        by_day[pick.place.on] = (*by_day.get(pick.place.on, ()), pick)
    sent = {
        on: tuple(slots)
        for on, slots in groupby(
            sorted(shelf.request.kept, key=lambda slot: (slot.on, slot.position)),
            key=lambda slot: slot.on,
        )
    }
    slots_by_day = {**{on: slots_of(day) for on, day in by_day.items()}, **sent}
    return tuple(
        Session(
            on=on,
            letter=slots[0].letter,
            slots=slots,
            minutes=minutes_of(by_day.get(on, ()), shelf=shelf),
        )
        for on, slots in sorted(slots_by_day.items())
    )
