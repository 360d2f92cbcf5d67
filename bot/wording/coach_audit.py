"""Decisions as the coach reads them back: who, when, what, why."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from pydantic import ValidationError

from bot.wording import dates
from bot.wording.changes import deciding, fitting, sets_differ
from bot.wording.coach_pain import left_out
from bot.wording.intake import NAMES, shown
from bot.wording.movement_names import movement_name
from bot.wording.pages import shortened
from bot.wording.plan_entries import recorded
from bot.wording.reason_figures import word
from bot.wording.reasons import say_reason
from bot.wording.swapping import REASONS
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.pain.values import LeftOut, Level
from scheduler.reasons import Reason
from scheduler.training.values import Dose

Facts = Mapping[str, Any]
WORDS_UNITS = 200  # [UTF-16 units] ch: a reason is a sentence or two
REASONS_MOST = 2  # [sentences] ch: the deciding one and what qualified it

WHAT: Mapping[str, Template] = {
    "late.alert": "An alert was told too late",
    "late.silence_check": "Looking for silence was too late",
    "late.morning_question": "The morning's question was too late to be asked",
    "late.session": "A session was too late to be sent",
    "late.session_reminder": "A reminder was too late to be sent",
    "late.digest": "The digest was too late to be sent",
    "late.week_drawing": "The week was drawn later than usual",
    "late.review": "A review was too late",
    "stage.changed": "Stage changed",
    "stage.taken_back": "Stage change taken back",
    "tests.opened": "Tests asked for",
    "tests.none": "No tests",
    "tests.sent": "Session turned into tests",
    "tests.stopped": "Tests stopped, the rest another day",
    "tests.done": "Tests done",
    "tests.called_off": "Tests called off",
    "season.changed": "Season changed",
    "movement.swapped": "Swapped for a day by the athlete",
    "session.early": "Session sent early",
    "session.called_off": "Session called off",
    "break.begins": "Break begins",
    "break.ends": "Break ends",
    "settings.changed": "Setting changed",
    "settings.care_lifted": "Health answers taken over",
    "settings.waits": "Health answers changed: the coach looks first",
    "standard.decided": "Standard decided on a clip",
    "injury.given_back": "Given back after an old injury",
    "upkeep.set": "Upkeep of bent-arm work switched",
    "plan.changed": "Plan changed",
    "pain.rested_by_coach": "Rested by the coach",
    "pain.rest_taken_back": "Resting taken back",
    "plan.taken_back": "Change of the plan taken back",
    "week.how_slept": "Sleep and mood of the week",
    "other_training": "Other training",
    "stage.start": "Starting stage set",
    "pain.cleared": "Cleared",
    "pain.reported": "Pain reported",
    "alert.raised": "Alert raised",
    "alert.seen": "Alert seen",
    "alert.withdrawn": "Alert not told: the athlete answered that it is not so",
    "athlete.away_too_long": "Away too long: the coach looks first",
    "coach.emergency_number": "Emergency number set",
    "coach.stand_in": "Stand-in named",
    "alert.nobody_reached": "Alert reached nobody",
    "message.refused": "The platform refused a message",
    "flag.answered": "A question about a sign was answered",
    "session.refilled": "Sent session refilled",
    "handover.sent": "Handover page sent",
    "data.exported": "A file of their data was taken",
    "alert.cleared": "Alert cleared",
    "proposal.made": "Proposed",
    "proposal.accepted": "Proposal accepted",
    "proposal.declined": "Proposal not taken yet",
    "coach.wrote": "Written to the athlete",
    "coach.told_many": "Written to several athletes",
    "group.changed": "Group changed",
    "messages.closed": "Messages closed without an answer",
    "messages.reopened": "Messages put back onto the roster",
    "review.sent": "Review sent",
    "review.left": "Review not sent",
    "athlete.moved": "Moved to another coach",
    "athlete.told_by_file": "Stage and bests told by the coach",
    "coach.hours": "Hours of the coach changed",
    "clip.answered": "Clip answered",
    "clips.asking": "Asking for clips switched",
    "coach.note": "Note",
    "athlete.invited": "Invited",
    "athlete.joined": "Joined",
    "athlete.confirmed": "Answers looked at, training begins",
    "chat.blocked": "Chat blocked",
    "chat.back": "Chat open again",
    "dose.up": "Dose up",
    "dose.kept": "Dose kept",
    "dose.down": "Dose down",
    "week.drawn": "Week planned",
    "week.redrawn": "Week planned anew",
    "break.was": "How the break was",
    "result.changed": "Result changed",
    "result.taken_back": "Result taken back",
    "result.other_arm": "Result moved to the other arm",
    "session.nothing_left": "Nothing left of a session",
    "intake.finished": "Questions answered",
    "intake.minor": "Under 18: guardian asked for",
    "intake.guardian_agreed": "Guardian agreed",
    "athlete.agreed": "Terms agreed to",
}


@dataclass(frozen=True)
class EntryFacts:
    """One decision, with its instant in the reader's zone; ``who`` is empty for the rules."""

    at: datetime
    who: str
    what: str
    words: str = ""
    reasons: tuple[Reason, ...] = ()
    before: Facts | None = None
    after: Facts | None = None


def head(tongue: Tongue, *, name: str, count: int) -> str:
    """Head the list of an athlete's decisions."""
    return tongue.say("<b>{name}</b>: the last {count} decisions", name=name, count=count)


def nothing_yet(tongue: Tongue, *, name: str) -> str:
    """Nothing was decided about an athlete so far."""
    return tongue.say("Nothing has been decided about {name} so far.", name=name)


def entry(tongue: Tongue, facts: EntryFacts) -> str:
    """Write one decision in two or three short lines."""
    first = tongue.say(
        "<b>{when}</b> · {who}",
        when=dates.moment(tongue, facts.at),
        who=facts.who or tongue.say("the rules"),
    )
    return "\n".join([first, *_what_and_why(tongue, facts)])


def short_entry(tongue: Tongue, facts: EntryFacts) -> str:
    """Write one decision in one line."""
    who = facts.who or tongue.say("the rules")
    return tongue.say(
        "{when} · {who}: {what}",
        when=dates.day(tongue, facts.at),
        who=who,
        what=Marked(" ".join(_what_and_why(tongue, facts))),
    )


def _what_and_why(tongue: Tongue, facts: EntryFacts) -> list[str]:
    lines = [what_changed(tongue, facts)]
    if facts.words:
        lines.append(tongue.say("“{words}”", words=shortened(facts.words, WORDS_UNITS)))
    said = dict.fromkeys(say_reason(tongue, one) for one in _reasons(facts))
    lines += list(said)[:REASONS_MOST]
    doses = _doses(facts)
    if doses is not None and facts.reasons and not said:
        lines.append(sets_differ(tongue, *doses))
    return [line for line in lines if line]


def _reasons(facts: EntryFacts) -> tuple[Reason, ...]:
    """Return the reasons that agree with what was decided, of sets only the last of them."""
    doses = _doses(facts)
    if doses is None:
        return facts.reasons
    first = deciding(*doses, facts.reasons) if facts.reasons else None
    if first is None:
        return ()
    return (first, *(one for one in fitting(*doses, facts.reasons) if one != first))


def _doses(facts: EntryFacts) -> tuple[Dose, Dose] | None:
    before, after = (
        _dose_of((facts.before or {}).get("dose")),
        _dose_of((facts.after or {}).get("dose")),
    )
    return (before, after) if before is not None and after is not None else None


def what_changed(tongue: Tongue, facts: EntryFacts) -> str:
    """Write what was decided, with before and after where they are figures."""
    before, after = facts.before or {}, facts.after or {}
    if facts.what == "pain.left_out":
        return _care_changed(tongue, before, after)
    what = tongue.say(WHAT[facts.what]) if facts.what in WHAT else _plain(facts.what)
    change = _change(tongue, before, after)
    return (
        tongue.say("{what}: {change}.", what=what, change=Marked(change))
        if change
        else (tongue.say("{what}.", what=what))
    )


def _care_changed(tongue: Tongue, before: Facts, after: Facts) -> str:
    """Tell what is left out from what is only eased."""
    old, new = _left_out(before.get("rested")), _left_out(after.get("rested"))
    if old != new:
        if new.is_empty:
            return tongue.say("Pain: nothing is left out any more.")
        return tongue.say("Pain: left out, {what}.", what=Marked(left_out(tongue, new)))
    if int(after.get("level", Level.NONE)) >= Level.EASE:
        return tongue.say("Pain: eased, what loads the place is swapped or cut.")
    return tongue.say("Pain: nothing is eased any more.")


def _left_out(stored: object) -> LeftOut:
    try:
        return LeftOut.model_validate(stored)
    except ValidationError:
        return LeftOut()


def _plain(code: str) -> str:
    words = code.replace(".", ": ").replace("_", " ")
    return words[:1].upper() + words[1:]


def _change(tongue: Tongue, before: Facts, after: Facts) -> str:
    """Write what was changed, by the first key that says which kind of change it is."""
    said = next((say for key, say in CHANGES.items() if key in after), None)
    return said(tongue, before, after) if said else ""


def _stage(tongue: Tongue, before: Facts, after: Facts) -> str:
    return _pair(tongue, before.get("stage"), after["stage"])


def _dosed(tongue: Tongue, before: Facts, after: Facts) -> str:
    name = word(tongue, str(before.get("movement", "")))
    doses = _pair(tongue, _dose(tongue, before.get("dose")), _dose(tongue, after["dose"]))
    return tongue.say("{name}, {doses}", name=name, doses=Marked(doses))


def _coach(tongue: Tongue, before: Facts, after: Facts) -> str:
    return _pair(tongue, before.get("coach_name"), after["coach_name"])


def _group(tongue: Tongue, before: Facts, after: Facts) -> str:
    return _pair(tongue, before.get("group"), after["group"] or tongue.say("none"))


def _on_or_off(tongue: Tongue, _before: Facts, after: Facts) -> str:
    return tongue.say("on") if after["is_on"] else tongue.say("off")


def _standard(tongue: Tongue, _before: Facts, after: Facts) -> str:
    template: Template = "{name}, shown" if after["is_met"] else "{name}, to be shown"
    return tongue.say(template, name=word(tongue, str(after["key"])))


def _until(tongue: Tongue, _before: Facts, after: Facts) -> str:
    until = dates.day(tongue, date.fromisoformat(str(after["until"])))
    return tongue.say("until {day}", day=until)


def _place(tongue: Tongue, _before: Facts, after: Facts) -> str:
    return tongue.say("{place}", place=str(after["place"]))


def _swap(tongue: Tongue, before: Facts, after: Facts) -> str:
    """Write which movement gave way to which, and why."""
    if "movement" not in before:
        return ""
    names = (movement_name(tongue, str(one["movement"])) for one in (before, after))
    change = _pair(tongue, *names)
    why = REASONS.get(str(after.get("why", "")))
    if why is None:
        return change
    return tongue.say("{change}, {why}", change=Marked(change), why=tongue.say(why))


def _setting(tongue: Tongue, before: Facts, after: Facts) -> str:
    """Write a changed setting; private words are not kept here."""
    key, old, new = str(after["setting"]), before.get("value"), after.get("value")
    name = tongue.say(NAMES[key]) if key in NAMES else key
    if old is None or new is None or key not in NAMES:
        return name
    change = _pair(tongue, shown(tongue, key, old), shown(tongue, key, new))
    return tongue.say("{name}: {change}", name=name, change=Marked(change))


def _pair(tongue: Tongue, old: object, new: object) -> str:
    if old is None or old == "":
        return tongue.say("{new}", new=str(new))
    return tongue.say("{old} → {new}", old=str(old), new=str(new))


def _dose_of(stored: object) -> Dose | None:
    try:
        return Dose.model_validate(stored)
    except ValidationError:
        return None


def _dose(tongue: Tongue, stored: object) -> str:
    dose = _dose_of(stored)
    if dose is None:
        return ""
    load = f", {tongue.load(dose.load_kg)}" if dose.load_kg else ""
    return f"{dose.sets} × {dose.target}{load}"


def pages(tongue: Tongue, *, name: str, entries: Sequence[EntryFacts]) -> list[str]:
    """Write the list as blocks that a page break may fall between."""
    if not entries:
        return [nothing_yet(tongue, name=name)]
    return [
        head(tongue, name=name, count=len(entries)),
        *(f"\n{entry(tongue, one)}" for one in entries),
    ]


CHANGES: Mapping[str, Callable[[Tongue, Facts, Facts], str]] = {
    "stage": _stage,
    "dose": _dosed,
    "coach_name": _coach,
    "group": _group,
    "setting": _setting,
    "is_on": _on_or_off,
    "of_stage": _standard,
    "entries": recorded,
    "until": _until,
    "place": _place,
    "movement": _swap,
}
"""How a change is written, by the key that tells its kind."""
