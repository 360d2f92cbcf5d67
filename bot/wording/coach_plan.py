"""The coach's view of the coming two weeks: weeks, days, items, and what stands by the coach."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from bot.wording import dates, doses
from bot.wording.coach_pain import PlaceFacts, place_line
from bot.wording.labels import label
from bot.wording.movement_names import movement_name, name_of
from bot.wording.plan import STATES, TESTS
from bot.wording.plan_entries import entry
from bot.wording.reasons import say_reason
from bot.wording.season import KINDS
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.catalogue.values import Movement
from scheduler.pain.values import Side
from scheduler.reasons import Reason
from scheduler.training.coach_plan import PlanEntry
from scheduler.training.season_values import SeasonWeekKind
from scheduler.training.values import Dose
from scheduler.training.week_reasons import WeekReason

EXAMPLE = "/plan robin"
MARK_EXAMPLE: Template = "/plan robin pin pike hold it is what she misses"
WHY_MOST = 6  # [lines] ch: a week's reasons beside its days fit one screen


@dataclass(frozen=True)
class ItemShown:
    """One item as it would be sent; ``arms`` empty: left out. ``is_by_coach``: put there."""

    movement: Movement
    dose: Dose
    arms: tuple[Side, ...]
    reasons: tuple[Reason, ...]
    is_by_coach: bool = False
    is_beyond_stage: bool = False


@dataclass(frozen=True)
class DayShown:
    """One day."""

    on: date
    letter: str
    minutes: int | None
    state: str
    items: tuple[ItemShown, ...]


@dataclass(frozen=True)
class WeekShown:
    """One week, with what is left out and why the week is so."""

    name: str
    monday: date
    kind: SeasonWeekKind
    is_lighter: bool
    left_out: str
    places: tuple[PlaceFacts, ...]
    reasons: tuple[Reason, ...]
    days: tuple[DayShown, ...]


def week(tongue: Tongue, facts: WeekShown) -> str:
    """Write a week: each day with its items in a line."""
    head = tongue.say(
        "<b>{name}</b>, week of {day}", name=facts.name, day=dates.day(tongue, facts.monday)
    )
    lines = [head, _kind(tongue, facts)]
    if facts.left_out:
        lines.append(tongue.say("Left out: {what}.", what=Marked(facts.left_out)))
    lines += [place_line(tongue, one) for one in facts.places]
    for day in facts.days:
        lines += ["", day_head(tongue, day), *(_short(tongue, item) for item in day.items)]
    if not facts.days:
        lines.append(tongue.say("No training day in this week."))
    # That a day stays as it was sent, the day's own line says.
    told = [one for one in facts.reasons if one.code != WeekReason.DAY_KEPT]
    whys = list(dict.fromkeys(say_reason(tongue, one) for one in told))[:WHY_MOST]
    if whys:
        lines += ["", tongue.say("<b>Why so</b>"), *whys]
    return "\n".join(lines)


def _kind(tongue: Tongue, facts: WeekShown) -> str:
    kind = SeasonWeekKind.LIGHTER if facts.is_lighter else facts.kind
    if kind in KINDS:
        return tongue.say(WEEK_KINDS[kind])
    return tongue.say("An ordinary week. Doses as they would be fixed today.")


WEEK_KINDS: Mapping[SeasonWeekKind, Template] = {
    SeasonWeekKind.LIGHTER: "A lighter week. Doses as they would be fixed today.",
    SeasonWeekKind.TAPER: "Fewer sets towards the event. Doses as they would be fixed today.",
    SeasonWeekKind.IN_SEASON: "A week of competing. Doses as they would be fixed today.",
    SeasonWeekKind.EASY_AFTER: "Easy after the event. Doses as they would be fixed today.",
    SeasonWeekKind.BAND_ONLY: "A travel week. Doses as they would be fixed today.",
    SeasonWeekKind.RETURNING: "Back after a break. Doses as they would be fixed today.",
}


def day_head(tongue: Tongue, facts: DayShown) -> str:
    """Head one day: weekday, letter, minutes, how far it has come."""
    if facts.letter == TESTS:
        return tongue.say(
            "<b>{day}, tests</b> · {minutes} min · {state}",
            day=dates.day(tongue, facts.on),
            minutes=facts.minutes or "?",
            state=tongue.say(STATES[facts.state]),
        )
    return tongue.say(
        "<b>{day}, day {letter}</b> · {minutes} min · {state}",
        day=dates.day(tongue, facts.on),
        letter=facts.letter,
        minutes=facts.minutes or "?",
        state=tongue.say(STATES[facts.state]),
    )


def _short(tongue: Tongue, item: ItemShown) -> str:
    return tongue.say(
        "· {name}: {dose}{mark}",
        name=name_of(tongue, item.movement),
        dose=Marked(_dose(tongue, item)),
        mark=Marked(_mark(tongue, item)),
    )


def _dose(tongue: Tongue, item: ItemShown) -> str:
    if not item.arms:
        return tongue.say("left out")
    return doses.dose_line(tongue, item.dose, item.movement, arms=item.arms)


def _mark(tongue: Tongue, item: ItemShown) -> str:
    if item.is_beyond_stage:
        return tongue.say(" (by you, beyond the stage)")
    return tongue.say(" (by you)") if item.is_by_coach else ""


def day(tongue: Tongue, facts: DayShown, *, name: str) -> str:
    """Write one day with its doses and why they are so."""
    lines = [tongue.say("<b>{name}</b>", name=name), day_head(tongue, facts)]
    for number, item in enumerate(facts.items, start=1):
        lines.append(
            tongue.say(
                "\n{n}. {name}{mark}\n    <b>{dose}</b>",
                n=number,
                name=name_of(tongue, item.movement),
                mark=Marked(_mark(tongue, item)),
                dose=Marked(_dose(tongue, item)),
            )
        )
        if item.arms and item.reasons:
            lines.append(tongue.say("    {why}", why=Marked(say_reason(tongue, item.reasons[0]))))
    lines += ["", tongue.say("Tap an item to change it.")]
    return "\n".join(lines)


def item(
    tongue: Tongue, facts: ItemShown, *, on: date, not_more: Reason | None, still: Sequence[Reason]
) -> str:
    """Write one item: dose, every reason, what keeps it from more, whether it stands still."""
    lines = [
        tongue.say(
            "<b>{name}</b>{mark}, {day}",
            name=name_of(tongue, facts.movement),
            mark=Marked(_mark(tongue, facts)),
            day=dates.day(tongue, on),
        ),
        tongue.say("<b>{dose}</b>", dose=Marked(_dose(tongue, facts))),
    ]
    said = [say_reason(tongue, one) for one in (*facts.reasons, *still)]
    said += [say_reason(tongue, not_more)] if not_more is not None else []
    return "\n".join([*lines, *dict.fromkeys(said)])


def still_line(tongue: Tongue, movement: Movement, dose: Dose, *, since: date, today: date) -> str:
    """Write one dose that stands still, with how long."""
    return tongue.say(
        "{name} {sets} × {amount}, {n} weeks since {day}",
        name=name_of(tongue, movement),
        sets=dose.sets,
        amount=doses.amount(tongue, dose.measure, dose.target),
        n=(today - since).days // 7,
        day=dates.day(tongue, since),
    )


def standing(tongue: Tongue, entries: Sequence[PlanEntry], *, name: str) -> str:
    """List what the coach changed and stands."""
    if not entries:
        return tongue.say("Nothing of the plan of {name} is changed by you.", name=name)
    lines = [tongue.say("<b>{name}</b>: changed by you", name=name)]
    lines += [
        tongue.say("{n}. {what}", n=number, what=Marked(entry(tongue, one)))
        for number, one in enumerate(entries, start=1)
    ]
    return "\n".join([*lines, "", tongue.say("Tap a number to take it out.")])


def mark_usage(tongue: Tongue) -> str:
    """Say what may stand behind the name."""
    return tongue.say(
        "Behind the name write nothing, or pin, ban or free, a movement, and why. "
        "For example:\n<code>{example}</code>",
        example=tongue.translated(MARK_EXAMPLE),
    )


def marked_already(tongue: Tongue, *, name: str, key: str) -> str:
    """It stands so already."""
    return tongue.say(
        "{movement} of {name} stands so already, so nothing was changed. /plan shows it.",
        movement=movement_name(tongue, key),
        name=name,
    )


def not_training(tongue: Tongue, *, name: str, until: date | None) -> str:
    """Nothing is planned for the athlete now."""
    if until is not None:
        return tongue.say(
            "{name} is on a break until {day}: nothing is sent. /pause {name} off ends it.",
            name=name,
            day=dates.day(tongue, until),
        )
    return tongue.say("{name} does not train now, so nothing is planned.", name=name)


def which_instead(tongue: Tongue, *, name: str, movement: str) -> str:
    """Ask for another movement."""
    return tongue.say("{name}: what instead of {movement}?", name=name, movement=movement)


def nothing_fits(tongue: Tongue, *, movement: str) -> str:
    """Nothing may stand in."""
    return tongue.say(
        "Nothing else fits that place now, so {movement} stays. "
        "For a movement beyond the stage write /swap.",
        movement=movement,
    )


def which_day(tongue: Tongue, *, on: date) -> str:
    """Ask for another day."""
    return tongue.say("Move {day} to which day?", day=dates.day(tongue, on))


def no_free_day(tongue: Tongue, *, on: date) -> str:
    """No other day of the week is left."""
    return tongue.say(
        "No free day is left in the week of {day}, so it stays.", day=dates.day(tongue, on)
    )


def stale(tongue: Tongue, *, name: str) -> str:
    """The place that a button was about is no more."""
    return tongue.say(
        "That part of the plan of {name} is another by now. /plan shows it.", name=name
    )


def day_label(tongue: Tongue, on: date) -> str:
    """Label the button of a day."""
    return label(tongue, "{day}", day=dates.day(tongue, on))


def name_label(tongue: Tongue, name: str) -> str:
    """Label the button of a movement."""
    return label(tongue, "{name}", name=name)


def number_label(tongue: Tongue, number: int) -> str:
    """Label the button of a numbered line."""
    return label(tongue, "{n}", n=number)


LABELS: Mapping[str, Template] = {
    "this_week": "This week",
    "next_week": "Next week",
    "season": "Season",
    "standing": "Changed by you",
    "move": "Move this day",
    "to_week": "Back to the week",
    "to_day": "Back to the day",
    "other": "Another movement",
    "undo_item": "Back to what was drawn",
    "pin": "Always take it",
    "unpin": "No longer always",
    "ban": "Never take it",
    "more": "More",
    "plan": "Plan",
}


def step_label(tongue: Tongue, key: str) -> str:
    """Label a button of the view."""
    return label(tongue, LABELS[key])
