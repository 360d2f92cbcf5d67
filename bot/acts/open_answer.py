"""The open answer to a report of pain: looked up, and asked for once more by a tap."""

from collections.abc import Iterator, Mapping
from datetime import timedelta
from typing import Any

from bot.acts import pain_ask, pain_go_on, pain_picture, pain_report
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import care_note as words
from bot.wording import plain
from bot.wording.care_note import Missing
from scheduler.pain.events import Corrected, PainReported
from scheduler.pain.values import Level, Site, regions_of
from storage.queries import people
from storage.records.people import Athlete, Person

ASKED_FOR = timedelta(days=28)  # [d] ch: what is older is told anew, or looked at by the coach


def latest_open(turn: Turn, athlete: Athlete) -> PainReported | None:
    """Return the latest report that changes training and lacks a place, a side or a number."""
    for report in _standing(turn, athlete):
        if missing_of(report) is not None and _level(turn, athlete, report) > Level.WATCH:
            return report
    return None


def latest_without_number(turn: Turn, athlete: Athlete) -> PainReported | None:
    """Return the latest report whose number is not known, for a place that is at least watched."""
    for report in _standing(turn, athlete):
        has_number = report.score is not None and not report.must_ask
        if not has_number and _level(turn, athlete, report) >= Level.WATCH:
            return report
    return None


def _level(turn: Turn, athlete: Athlete, report: PainReported) -> Level:
    picture = pain_picture.picture_of(turn, athlete)
    found = (picture.region(one.site, one.arm) for one in regions_of(report.site, report.side))
    return max((one.level for one in found if one is not None), default=Level.NONE)


def missing_of(report: PainReported) -> Missing | None:
    """Return what a report still lacks, in the order in which it is asked; None for nothing."""
    if not report.is_site_said:
        return Missing.PLACE
    if not report.is_side_said:
        return Missing.SIDE
    if report.score is None or report.must_ask:
        return Missing.NUMBER
    return None


def _standing(turn: Turn, athlete: Athlete) -> Iterator[PainReported]:
    """Yield the reports of the last weeks as they stand after corrections, the latest first."""
    standing: dict[str, PainReported] = {}
    since = turn.now - ASKED_FOR
    for event in pain_picture.events_of(turn, athlete.person_id, since=since):
        if isinstance(event, PainReported):
            standing[event.key] = event
        elif isinstance(event, Corrected) and event.report_key in standing:
            del standing[event.report_key]
            if isinstance(event.replacement, PainReported):
                standing[event.report_key] = event.replacement
    yield from reversed(standing.values())


def ask(turn: Turn, person: Person, athlete: Athlete, report: PainReported) -> None:
    """Ask for the place, the side or the number, whichever comes first."""
    about: dict[str, Any] = {"report": report.key, "session": None}
    match missing_of(report):
        case Missing.PLACE:
            about |= {"has_side": _has_side(report), "sites": _around(report.site)}
            waits = words.sessions_wait(turn.tongue(person)) + "\n"
            lead = waits if stops_all(turn, athlete, report) else ""
            pain_ask.ask_unclear(turn, person, about, lead=lead)
        case Missing.SIDE:
            pain_ask.ask_unclear(turn, person, {**about, "site": report.site.value})
        case _:
            pain_go_on.go_on(turn, person, athlete, report.key, session_id=None)


def _has_side(report: PainReported) -> bool:
    """Tell whether a side was said; a place without sides, or none at all, says nothing of it."""
    return report.is_side_said and not pain_picture.is_midline(report.site)


def stops_all(turn: Turn, athlete: Athlete, report: PainReported) -> bool:
    """Tell whether nothing may be trained because it is not known where it hurts, and only so."""
    picture = pain_picture.picture_of(turn, athlete)
    is_known = report.is_site_said or report.site is not Site.ELSEWHERE
    return not is_known and picture.rested.everything and picture.level is Level.REST


def _around(site: Site) -> list[str]:
    """Return the places that a half-known one may be: of a shoulder those of the shoulder."""
    part = site.value.split("_")[0]
    alike = [one.value for one in Site if one.value.split("_")[0] == part]
    return alike if len(alike) > 1 else []


def taps(turn: Turn, person: Person, athlete: Athlete) -> TapRows:
    """Return the button that opens the question, under a session that an open answer changes."""
    report = latest_open(turn, athlete)
    missing = missing_of(report) if report is not None else None
    if report is None or missing is None:
        return []
    label = words.open_label(turn.tongue(person), missing)
    return [[Tap(label, "pain.open", {"report": report.key})]]


def tapped(turn: Turn, person: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The button was tapped: ask, unless it was answered meanwhile."""
    athlete = people.athlete(turn.tx, person.id)
    report = pain_report.find(turn, athlete, arguments["report"]) if athlete is not None else None
    if athlete is None or report is None or missing_of(report) is None:
        turn.say(person, plain.used_button(turn.tongue(person)))
        return Outcome.STALE_TAP
    ask(turn, person, athlete, report)
    return Outcome.SAFETY


TAPS = {"pain.open": tapped}
