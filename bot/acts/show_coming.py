"""``/plan NAME``: the coming two weeks as they would be sent, by week, day and item."""

from collections.abc import Sequence
from datetime import date

from bot.acts.about_athlete import Arguments, about_tapped
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.acts.places import left_out_words, places_of
from bot.acts.plan_change import GO_ON, replacing, request_of
from bot.acts.plan_weeks import (
    ComingDay,
    ComingWeek,
    Place,
    arms_now,
    coming_days,
    coming_weeks,
    dose_as_sent,
    find_item,
)
from bot.acts.show_season import show_to_coach
from bot.acts.standing_still import still_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_plan as words
from scheduler.catalogue.values import Direction
from scheduler.training.coach_plan import Ban, Pin, PlanChange, PlanEntry
from scheduler.training.why_not_more import why_not_more
from storage.records.people import Person
from storage.records.training import ItemRecord

WEEK, DAY, ITEM, SEASON, STANDING = (
    "plan.week", "plan.day", "plan.item", "plan.season", "plan.standing",
)  # fmt: skip
OTHER, MOVE = "plan.other", "plan.move"
ITEMS_A_ROW = 4  # [buttons] ch: numbers are narrow
DAYS_A_ROW = 3  # [buttons] ch


def show(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Show this week first."""
    return show_week(turn, coach, named, ahead=0, message_id=None)


def put(
    turn: Turn,
    coach: Person,
    named: Named,
    text: str,
    *,
    taps: TapRows,
    message_id: int | None,
) -> Outcome:
    """Turn the shown page into another, or send the first."""
    if message_id is None:
        turn.say(coach, text, taps=taps, subject=subject_of(named.person))
    else:
        turn.change(coach, message_id, text, taps=taps)
    return Outcome.COMMAND


def show_week(
    turn: Turn, coach: Person, named: Named, *, ahead: int, message_id: int | None
) -> Outcome:
    """Show one week with a button for each day that is still to come."""
    tongue = turn.tongue(coach)
    weeks = coming_weeks(turn, named.person, named.athlete)
    if not weeks:
        text = words.not_training(tongue, name=named.person.name, until=named.athlete.paused_until)
        return put(turn, coach, named, text, taps=(), message_id=message_id)
    week = weeks[ahead % len(weeks)]
    text = words.week(tongue, _week_shown(turn, coach, named, week))
    taps = _week_taps(turn, coach, named, week, ahead=ahead % len(weeks))
    return put(turn, coach, named, text, taps=taps, message_id=message_id)


def _week_shown(turn: Turn, coach: Person, named: Named, week: ComingWeek) -> words.WeekShown:
    return words.WeekShown(
        name=named.person.name,
        monday=week.monday,
        kind=week.kind,
        is_lighter=week.is_lighter,
        left_out=left_out_words(turn, coach, named.athlete),
        places=places_of(turn, named.athlete),
        reasons=week.reasons,
        days=tuple(day_shown(turn, named, day) for day in week.days),
    )


def _week_taps(turn: Turn, coach: Person, named: Named, week: ComingWeek, *, ahead: int) -> TapRows:
    tongue, about = turn.tongue(coach), {"athlete": named.person.id}
    today = local_today(turn, named.person)
    days = [
        Tap(words.day_label(tongue, day.on), DAY, {**about, "on": day.on.isoformat()})
        for day in week.days
        if day.on >= today and day.is_open
    ]
    other = "next_week" if ahead == 0 else "this_week"
    last = [
        Tap(words.step_label(tongue, other), WEEK, {**about, "ahead": 1 - ahead}),
        Tap(words.step_label(tongue, "season"), SEASON, about),
        Tap(words.step_label(tongue, "standing"), STANDING, about),
    ]
    return [*_rows(days, DAYS_A_ROW), last]


def _rows(taps: Sequence[Tap], most: int) -> list[Sequence[Tap]]:
    return [taps[at : at + most] for at in range(0, len(taps), most)]


def day_shown(turn: Turn, named: Named, day: ComingDay) -> words.DayShown:
    """Return one day as the wording shows it, with its doses."""
    return words.DayShown(
        on=day.on,
        letter=day.letter,
        minutes=day.minutes,
        state=day.state.value,
        items=tuple(item_shown(turn, named, day, item) for item in day.items),
    )


def item_shown(turn: Turn, named: Named, day: ComingDay, item: ItemRecord) -> words.ItemShown:
    """Return one item as the wording shows it: as sent, or as it would be."""
    decision = dose_as_sent(turn, named.person, named.athlete, day, item)
    plan = named.athlete.profile.coach_plan
    change = plan.item_change(on=day.on, pair=item.pair, direction=item.direction)
    mine = [
        one
        for one in (change, *(one for one in plan.entries if isinstance(one, Pin)))
        if one is not None and one.movement_key == item.movement_key
    ]
    return words.ItemShown(
        movement=turn.house.library.movements[item.movement_key],
        dose=decision.value,
        arms=tuple(sorted(arms_now(turn, named.athlete, item))),
        reasons=decision.reasons,
        is_by_coach=bool(mine),
        is_beyond_stage=any(one.is_override for one in mine),
    )


def show_day(
    turn: Turn, coach: Person, named: Named, *, on: date, message_id: int | None
) -> Outcome:
    """Show one day, with a button for each item."""
    tongue = turn.tongue(coach)
    days = coming_days(turn, named.person, named.athlete)
    day = next((one for one in days if one.on == on), None)
    if day is None:
        turn.say(coach, words.stale(tongue, name=named.person.name))
        return Outcome.STALE_TAP
    text = words.day(tongue, day_shown(turn, named, day), name=named.person.name)
    taps = _day_taps(turn, coach, named, day)
    return put(turn, coach, named, text, taps=taps, message_id=message_id)


def _day_taps(turn: Turn, coach: Person, named: Named, day: ComingDay) -> TapRows:
    tongue, about = turn.tongue(coach), {"athlete": named.person.id}
    items = [
        Tap(words.number_label(tongue, number), ITEM, about_item(named, day, item))
        for number, item in enumerate(day.items, start=1)
        if not item.is_reported
    ]
    first = coming_weeks(turn, named.person, named.athlete)[0].monday
    ahead = (day.on - first).days // 7
    last = [
        Tap(words.step_label(tongue, "move"), MOVE, {**about, "on": day.on.isoformat()}),
        Tap(words.step_label(tongue, "to_week"), WEEK, {**about, "ahead": ahead}),
    ]
    return [*_rows(items, ITEMS_A_ROW), last]


def about_item(named: Named, day: ComingDay, item: ItemRecord) -> dict[str, object]:
    """Return what a button about one item carries: its place, and what stood there."""
    return {
        "athlete": named.person.id,
        "on": day.on.isoformat(),
        "pair": item.pair,
        "direction": item.direction.value,
        "was": item.movement_key,
    }


def item_in(
    turn: Turn, coach: Person, named: Named, arguments: Arguments
) -> tuple[ComingDay, ItemRecord] | Outcome:
    """Find the item that a button is about, unless the place holds another movement by now."""
    place = Place(
        on=date.fromisoformat(str(arguments["on"])),
        pair=arguments["pair"],
        direction=Direction(arguments["direction"]),
    )
    days = coming_days(turn, named.person, named.athlete)
    found = find_item(days, place, was=str(arguments["was"]))
    if found is None or not found[0].is_open or found[1].is_reported:
        turn.say(coach, words.stale(turn.tongue(coach), name=named.person.name))
        return Outcome.STALE_TAP
    return found


@about_tapped
def week(turn: Turn, coach: Person, named: Named, arguments: Arguments, event: Tapped) -> Outcome:
    """Turn to a week."""
    ahead = int(arguments["ahead"])
    return show_week(turn, coach, named, ahead=ahead, message_id=event.message_id)


@about_tapped
def day(turn: Turn, coach: Person, named: Named, arguments: Arguments, event: Tapped) -> Outcome:
    """Turn to a day."""
    on = date.fromisoformat(str(arguments["on"]))
    return show_day(turn, coach, named, on=on, message_id=event.message_id)


@about_tapped
def item(turn: Turn, coach: Person, named: Named, arguments: Arguments, event: Tapped) -> Outcome:
    """Turn to one item: why it is so, and what may be changed."""
    found = item_in(turn, coach, named, arguments)
    if isinstance(found, Outcome):
        return found
    coming, record = found
    shown = item_shown(turn, named, coming, record)
    today = local_today(turn, named.person)
    still = [
        why
        for one in still_of(turn, named.person.id, today=today)
        if one.movement.key == record.movement_key
        for why in one.reasons
    ]
    text = words.item(
        turn.tongue(coach),
        shown,
        on=coming.on,
        not_more=why_not_more(shown.dose, shown.reasons, steps=turn.house.rulebook.steps),
        still=still,
    )
    taps = _item_taps(turn, coach, named, coming, record)
    return put(turn, coach, named, text, taps=taps, message_id=event.message_id)


def _item_taps(
    turn: Turn, coach: Person, named: Named, coming: ComingDay, record: ItemRecord
) -> TapRows:
    tongue, about = turn.tongue(coach), about_item(named, coming, record)
    plan, key = named.athlete.profile.coach_plan, record.movement_key
    change = plan.item_change(on=coming.on, pair=record.pair, direction=record.direction)
    first = [Tap(words.step_label(tongue, "other"), OTHER, {**about, "page": 0})]
    if change is not None:
        undo = PlanChange(remove=(change,))
        first.append(_change_tap(turn, coach, named, "undo_item", undo))
    marks: list[Tap] = []
    pinned = next((e for e in plan.entries if isinstance(e, Pin) and e.movement_key == key), None)
    if pinned is None:
        marks.append(_entry_tap(turn, coach, named, "pin", Pin(movement_key=key)))
    else:
        marks.append(_change_tap(turn, coach, named, "unpin", PlanChange(remove=(pinned,))))
    marks.append(_entry_tap(turn, coach, named, "ban", Ban(movement_key=key)))
    back = Tap(
        words.step_label(tongue, "to_day"),
        DAY,
        {"athlete": named.person.id, "on": coming.on.isoformat()},
    )
    return [first, marks, [back]]


def _entry_tap(turn: Turn, coach: Person, named: Named, key: str, entry: PlanEntry) -> Tap:
    return _change_tap(turn, coach, named, key, replacing(named.athlete, [entry]))


def _change_tap(turn: Turn, coach: Person, named: Named, key: str, change: PlanChange) -> Tap:
    request = {**request_of(named, change), "why": ""}
    return Tap(words.step_label(turn.tongue(coach), key), GO_ON, request)


@about_tapped
def standing(turn: Turn, coach: Person, named: Named, _: Arguments, event: Tapped) -> Outcome:
    """List what the coach changed and stands, each with a button that takes it out."""
    tongue, found = turn.tongue(coach), named.athlete.profile.coach_plan.entries
    taps = [
        Tap(
            words.number_label(tongue, number),
            GO_ON,
            {**request_of(named, PlanChange(remove=(one,))), "why": ""},
        )
        for number, one in enumerate(found, start=1)
    ]
    back = Tap(
        words.step_label(tongue, "this_week"), WEEK, {"athlete": named.person.id, "ahead": 0}
    )
    text = words.standing(tongue, found, name=named.person.name)
    rows = [*_rows(taps, ITEMS_A_ROW), [back]]
    return put(turn, coach, named, text, taps=rows, message_id=event.message_id)


@about_tapped
def season(turn: Turn, coach: Person, named: Named, _: Arguments, _event: Tapped) -> Outcome:
    """Show the season, in a message of its own."""
    return show_to_coach(turn, coach, named)


TAPS = {
    WEEK: week,
    DAY: day,
    ITEM: item,
    SEASON: season,
    STANDING: standing,
}
