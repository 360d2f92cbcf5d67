"""The checklist to move up, with figures, for the coach's screen."""

from collections.abc import Mapping

from bot.wording.reason_figures import word
from bot.wording.reasons import say_reason
from bot.wording.tongue import Marked, Tongue
from scheduler.catalogue.values import Measure
from scheduler.reasons import Figure, Reason
from scheduler.training.gates import Checklist, ChecklistItem
from scheduler.training.training_reasons import GateReason

UNITS = {
    Measure.HOLD_S: " s",
    Measure.CARRY_S: " s",
    Measure.CARRY_M: " m",
    Measure.REPS: "",
}


def lines(
    tongue: Tongue,
    checklist: Checklist,
    *,
    measures: Mapping[str, Measure],
    only_open: bool = False,
) -> list[str]:
    """Write the checklist, a line a condition: met or not, and where the athlete stands.

    ``measures`` tells how each standard of the stage is measured, by its key.
    """
    items = checklist.open_items if only_open else checklist.items
    return [_line(tongue, item, measures) for item in items]


def head(tongue: Tongue, checklist: Checklist) -> str:
    """Head the checklist: how many lines are met."""
    if any(item.reason.code == GateReason.LAST_STAGE for item in checklist.items):
        return tongue.say("<b>Last stage</b>, no checklist to move up")
    met = len(checklist.items) - len(checklist.open_items)
    return tongue.say(
        "<b>Checklist to stage {next}</b> · {met} of {all} met",
        next=checklist.stage + 1,
        met=met,
        all=len(checklist.items),
    )


def is_last_stage(checklist: Checklist) -> bool:
    """Tell whether there is no stage above."""
    return any(item.reason.code == GateReason.LAST_STAGE for item in checklist.items)


def _line(tongue: Tongue, item: ChecklistItem, measures: Mapping[str, Measure]) -> str:
    mark = tongue.say("met:") if item.is_met else tongue.say("<b>not yet:</b>")
    return f"{mark} {figures(tongue, item.reason, measures)}"


def figures(tongue: Tongue, reason: Reason, measures: Mapping[str, Measure]) -> str:
    """Write where the athlete stands in one condition, short."""
    shown = reason.figures
    match reason.code:
        case GateReason.STANDARD:
            return _standard(tongue, shown, measures)
        case GateReason.PAIN:
            return _pain(tongue, shown)
        case GateReason.ADHERENCE if not shown["sessions_sent"]:
            return tongue.say("no session was sent in four weeks")
        case _:
            return say_reason(tongue, reason)


def _standard(tongue: Tongue, shown: Mapping[str, Figure], measures: Mapping[str, Measure]) -> str:
    key = str(shown["key"])
    unit = UNITS.get(measures.get(key, Measure.REPS), "")
    load = float(shown["load_kg"])
    at_load = tongue.say(" at {kg} kg", kg=tongue.number(load)) if load else ""
    return tongue.say(
        "{name} {sets} × {target}{unit}{load}; best {best}{unit}, on {shown} of {needed} days",
        name=word(tongue, key),
        sets=shown["sets"],
        target=shown["target"],
        unit=unit,
        load=Marked(at_load),
        best=tongue.number(float(shown["best_set"])),
        shown=shown["days_shown"],
        needed=shown["needed_days"],
    )


def _pain(tongue: Tongue, shown: Mapping[str, Figure]) -> str:
    parts = [
        tongue.say(
            "highest pain in {days} days {worst} of 10, at most {most}",
            days=shown["days"],
            worst=tongue.number(float(shown["worst_pain"])),
            most=tongue.number(float(shown["most"])),
        )
    ]
    if shown["has_something_rested"]:
        parts.append(tongue.say("something is left out"))
    if shown["has_open_alert"]:
        parts.append(tongue.say("an alert is open"))
    return "; ".join(parts)
