"""When a reply can mean several things, or nothing: what is asked, and what to send instead."""

from collections.abc import Mapping, Sequence

from bot.reading.examples import letter_of
from bot.reading.known import ItemResult, KnownItem, SetResult
from bot.reading.values import (
    Activity,
    Asked,
    AssumptionCode,
    Correction,
    CorrectionKind,
    QuestionCode,
    Recorded,
    Told,
)
from bot.wording import doses
from bot.wording.assumptions import item_numbers
from bot.wording.pages import shortened, utf16_units
from bot.wording.reason_figures import word
from bot.wording.tongue import Template, Tongue
from scheduler.pain.values import Side

OPTION_UNITS = 60  # [UTF-16 units] ch: two lines of a button on a narrow phone

QUESTIONS: Mapping[QuestionCode, Template] = {
    QuestionCode.WHICH_ITEM: "Which one are these numbers for?",
    QuestionCode.WHICH_DAY: "Which day is this for?",
    QuestionCode.WHICH_SET: "Which set do you mean?",
    QuestionCode.WHICH_SIDE: "Which arm is which?",
    QuestionCode.WHICH_UNIT: "Which unit do you mean?",
    QuestionCode.FEWER_NUMBERS: "That is fewer numbers than sets. What happened?",
    QuestionCode.MORE_NUMBERS: "That is more numbers than sets. Which is right?",
    QuestionCode.IMPLAUSIBLE: "That is far from what you did before. Is it right?",
    QuestionCode.LOAD_UNEXPECTED: "That is not the planned load. Is it right?",
    QuestionCode.WHOLE_SESSION: "Did you do everything as planned?",
    QuestionCode.SAME_AS_WHAT: "The same as what?",
    QuestionCode.PAIN_OR_RESULT: "Is that number pain, or a result?",
    QuestionCode.EFFORT_OR_RESULT: "Is that number effort, or a result?",
    QuestionCode.SEVERAL_READINGS: "I can read that in more than one way. Which do you mean?",
    QuestionCode.IS_THIS_MEANT: "Is this what you mean?",
}


def question(tongue: Tongue, asked: Asked) -> str:
    """Ask, and say how to answer when no button fits."""
    return tongue.say(
        "{question}\nIf no button fits, write it again with the item's number in front.",
        question=tongue.say(QUESTIONS[asked.question]),
    )


def option_label(
    tongue: Tongue, option: Recorded | Correction | Told, items: Mapping[str, KnownItem]
) -> str:
    """Write one possible reading short enough for a button."""
    match option:
        case Recorded():
            return _recorded_label(tongue, option, items)
        case Correction():
            return _correction_label(tongue, option)
        case Told():
            return _told_label(tongue, option)


def none_of_these(tongue: Tongue) -> str:
    """The button for no option at all."""
    return tongue.say("None of these")


def write_again(tongue: Tongue) -> str:
    """After no option was right."""
    return tongue.say("Fine, nothing is recorded. Write it again with the item's number in front.")


def not_understood(tongue: Tongue, example: str) -> str:
    """Say what would be understood, by an example from today."""
    return tongue.say(
        "I could not fit that to today's session, so nothing is recorded. "
        "Write it like this:\n<code>{example}</code>",
        example=example,
    )


def edit_kept(tongue: Tongue) -> str:
    """A message with results was edited into something that is none."""
    return tongue.say(
        "I could not read your edited message, so what it recorded before stands. "
        "To take it back, write <i>undo</i>."
    )


def corrected(tongue: Tongue, name: str, lines: Sequence[str]) -> str:
    """Play a correction back."""
    return tongue.say("Changed. {name}: {lines}", name=name, lines=", ".join(lines))


def change_line(tongue: Tongue, number: int, old: float, new: float) -> str:
    """Write one changed set."""
    return tongue.say("set {n}: {old} → {new}", n=number, old=old, new=new)


def done_line(tongue: Tongue, one: SetResult) -> str:
    """Write one set as it stands now: its arm, its figure, its load."""
    load = "" if one.load_kg is None else f" @ {tongue.load(one.load_kg)}"
    return letter_of(one.side, tongue.language) + tongue.number(one.value) + load


def taken_back(tongue: Tongue, names: Sequence[str]) -> str:
    """The last results are gone, as asked."""
    return tongue.say("Taken back: {names}. Write the numbers again.", names=", ".join(names))


def nothing_to_correct(tongue: Tongue) -> str:
    """A correction without anything to correct."""
    return tongue.say(
        "I have no recent result to change. Write the item's number and all its sets, like "
        "<code>2) 40 38 35</code>."
    )


def which_to_change(tongue: Tongue) -> str:
    """Ask which item is to be changed."""
    return tongue.say("Which one shall I change? Then write all its sets again.")


def activities_noted(tongue: Tongue, activities: Sequence[Activity]) -> str:
    """Play other training back."""
    names = "; ".join(_activity(tongue, activity) for activity in activities)
    return tongue.say("Noted as other training: {names}. Your coach sees it.", names=names)


def _activity(tongue: Tongue, activity: Activity) -> str:
    parts = [activity.name]
    if activity.minutes is not None:
        parts.append(tongue.say("{n} min", n=tongue.number(activity.minutes)))
    if activity.distance_m is not None:
        parts.append(tongue.say("{value} m", value=tongue.number(activity.distance_m)))
    if activity.effort is not None:
        parts.append(tongue.say("effort {value} of 10", value=tongue.number(activity.effort)))
    return ", ".join(parts)


def _recorded_label(tongue: Tongue, option: Recorded, items: Mapping[str, KnownItem]) -> str:
    parts = [_result(tongue, result, items.get(result.ref)) for result in option.items]
    whole = "; ".join(parts)
    if len(parts) == 1 or utf16_units(whole) <= OPTION_UNITS:
        return shortened(whole, OPTION_UNITS)
    known = [items[result.ref].number for result in option.items if result.ref in items]
    numbers = item_numbers(tongue, known)
    if all(one.is_as_planned for result in option.items for one in result.sets):
        return tongue.say("As planned: items {items}", items=numbers)
    if any(taken.code is AssumptionCode.LINE_BY_LINE for taken in option.assumptions):
        return tongue.say("Line by line: items {items}", items=numbers)
    values = "; ".join(_values(tongue, result) for result in option.items)
    text = tongue.say("Items {items}: {values}", items=numbers, values=values)
    return shortened(text, OPTION_UNITS)


def _result(tongue: Tongue, result: ItemResult, item: KnownItem | None) -> str:
    name = item.names[0] if item else "?"
    if result.is_skipped:
        return tongue.say("{name}: not done", name=name)
    loads = {one.load_kg for one in result.sets if one.load_kg is not None}
    at_load = f" @ {tongue.load(loads.pop())}" if len(loads) == 1 else ""
    stopped = " " + tongue.say("(stopped)") if result.is_stopped else ""
    unit = doses.unit(tongue, item.measure) if item else ""
    return f"{name}: {_values(tongue, result)} {unit}{at_load}{stopped}".strip()


def _values(tongue: Tongue, result: ItemResult) -> str:
    """Write the figures as an athlete writes them, each arm behind its letter."""
    by_arm: dict[Side, list[str]] = {}
    for one in result.sets:
        by_arm.setdefault(one.side, []).append(tongue.number(one.value))
    return ", ".join(
        letter_of(arm, tongue.language) + " ".join(values) for arm, values in by_arm.items()
    )


def _correction_label(tongue: Tongue, option: Correction) -> str:
    if option.kind is CorrectionKind.UNDO:
        return tongue.say("Take the last one back")
    if option.kind is CorrectionKind.OTHER_ARM:
        return tongue.say("It was the other arm")
    if option.kind is CorrectionKind.ITEMS:
        done = [done_line(tongue, one) for item in option.items for one in item.sets]
        return shortened(", ".join(done), OPTION_UNITS)
    lines = [
        change_line(tongue, change.number, change.old, change.new) for change in option.changes
    ]
    return shortened(", ".join(lines), OPTION_UNITS)


def _told_label(tongue: Tongue, option: Told) -> str:
    if option.pains:
        pain = option.pains[0]
        side = f" {word(tongue, pain.side)}" if pain.side in {Side.LEFT, Side.RIGHT} else ""
        return tongue.say("Pain{side} {score} of 10", side=side, score=pain.score or "")
    if option.effort is not None:
        return tongue.say("Effort {effort} of 10", effort=round(option.effort))
    if option.reserve is not None:
        return tongue.say("{left} left", left=option.reserve.left)
    return tongue.say("No") if option.is_yes is False else tongue.say("Yes")
