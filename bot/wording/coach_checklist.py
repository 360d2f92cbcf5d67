"""The checklist to move up, with figures, for the coach's screen."""

from collections.abc import Mapping
from math import ceil

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
    if _is_too_few(item):
        return f"{mark} {_too_few(tongue, item.reason.figures)}"
    return f"{mark} {figures(tongue, item.reason, measures)}"


def _is_too_few(item: ChecklistItem) -> bool:
    """Tell whether the arms are even enough and only too few sessions say so."""
    shown = item.reason.figures
    if item.reason.code != GateReason.SIDES or item.is_met:
        return False
    return float(shown["weaker_for_stronger"]) >= float(shown["needed"])


def _too_few(tongue: Tongue, shown: Mapping[str, Figure]) -> str:
    return tongue.count(
        int(shown.get("sessions", 0)),
        "{movement}: both arms in {n} session so far, more are needed to compare them.",
        "{movement}: both arms in {n} sessions so far, more are needed to compare them.",
        movement=word(tongue, str(shown["movement"])),
    )


def figures(tongue: Tongue, reason: Reason, measures: Mapping[str, Measure]) -> str:
    """Write where the athlete stands in one condition, short."""
    shown = reason.figures
    match reason.code:
        case GateReason.STANDARD:
            return _standard(tongue, shown, measures)
        case GateReason.PAIN:
            return _pain(tongue, shown)
        case GateReason.WEEKS if float(shown["weeks"]) >= float(shown["needed_weeks"]):
            return tongue.count(
                int(shown["weeks"]),
                "{n} week in the stage, {needed} asked.",
                "{n} weeks in the stage, {needed} asked.",
                needed=shown["needed_weeks"],
            )
        case GateReason.ADHERENCE if not shown["sessions_sent"]:
            return tongue.say("no session was sent in four weeks")
        case GateReason.ADHERENCE:
            return _kept(tongue, shown)
        case _:
            return say_reason(tongue, reason)


def _kept(tongue: Tongue, shown: Mapping[str, Figure]) -> str:
    """Say how many sessions were kept, and how many would be enough, in whole ones."""
    sent = int(shown["sessions_sent"])
    return tongue.say(
        "{done} of {sent} sessions kept in four weeks, {needed} are enough",
        done=str(shown["sessions_done"]),
        sent=str(sent),
        needed=str(min(sent, ceil(float(shown["needed_sessions"])))),
    )


def _standard(tongue: Tongue, shown: Mapping[str, Figure], measures: Mapping[str, Measure]) -> str:
    key = str(shown["key"])
    unit = UNITS.get(measures.get(key, Measure.REPS), "")
    load = float(shown["load_kg"])
    at_load = tongue.say(" at {load}", load=tongue.load(round(load, 1))) if load else ""
    same: dict[str, str | int] = {
        "name": word(tongue, key),
        "sets": str(shown["sets"]),
        "target": str(shown["target"]),
        "unit": unit,
        "load": Marked(at_load),
        "best": str(int(float(shown["best_set"]))),
    }
    if not float(shown["best_set"]):
        return tongue.say("{name} {sets} × {target}{unit}{load}; none shown yet", **same)
    if shown.get("is_by_test"):
        return tongue.say(
            "{name} {sets} × {target}{unit}{load}; best {best}{unit}, shown in a test", **same
        )
    return tongue.say(
        "{name} {sets} × {target}{unit}{load}; best {best}{unit}, {days}, {needed} asked",
        days=tongue.count(int(shown["days_shown"]), "shown on {n} day", "shown on {n} days"),
        needed=str(shown["needed_days"]),
        **same,
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
