"""Talking about pain: where, which side, how much; one step at a time, resumable."""

from collections.abc import Iterable
from datetime import datetime

from bot.acts import pain_ask, pain_consequences, pain_picture, pain_report
from bot.acts.open_question import open_question
from bot.acts.pain_ask import Arguments
from bot.acts.pain_go_on import go_on
from bot.acts.pain_taps import score_taps
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import pain as words
from bot.wording import plain
from scheduler.pain.events import Occasion, PainSign
from scheduler.pain.values import Side, Site
from storage.queries import people
from storage.records.people import Athlete, Person


def where(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """The button "something hurts"."""
    pain_ask.ask_where(turn, person, session_id=arguments.get("session"))
    return Outcome.SAFETY


def site(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A place was tapped: for a new report, or for one that words began."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    chosen = Site(arguments["site"])
    about = dict(arguments)
    if "report" in about:
        return _amended(turn, person, athlete, about, event, site=chosen)
    if pain_picture.is_midline(chosen):
        return side(turn, person, {**about, "side": Side.BOTH.value}, event)
    pain_ask.ask_unclear(turn, person, about, edit=event.message_id)
    return Outcome.ANSWERED


def side(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A side was tapped."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    chosen = Side(arguments["side"])
    if "report" in arguments:
        return _amended(turn, person, athlete, arguments, event, side=chosen)
    tongue = turn.tongue(person)
    text = words.how_much(tongue, Site(arguments["site"]), chosen)
    place = {
        "site": arguments["site"],
        "side": chosen.value,
        "session": arguments.get("session"),
        "asked_at": turn.now.isoformat(),
    }
    open_question(turn, person, "pain.place", place)
    pain_ask.put(turn, person, text, score_taps(place), edit=event.message_id)
    return Outcome.ANSWERED


def score(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A number was tapped: now it is a report."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    if "report" in arguments:
        return _amended(turn, person, athlete, arguments, event, score=arguments["score"])
    told = pain_report.answer_of(
        turn,
        athlete,
        site=Site(arguments["site"]),
        side=Side(arguments["side"]),
        since=datetime.fromisoformat(arguments["asked_at"]),
    )
    if told is not None and pain_report.is_long_told(turn, athlete, told):
        return pain_ask.too_late(turn, person)
    report(
        turn,
        person,
        athlete,
        arguments,
        score=arguments["score"],
        must_ask=False,
        edit=event.message_id,
    )
    return Outcome.SAFETY


def report(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    place: Arguments,
    *,
    score: int | None,
    must_ask: bool,
    signs: Iterable[PainSign] = (),
    message_id: int | None = None,
    edit: int | None = None,
) -> None:
    """Record the number, tapped or typed, for the place that was tapped before.

    A second answer to the same question corrects the first: it is one report, not two.
    """
    before = pain_picture.picture_of(turn, athlete)
    session_id = place.get("session")
    key = pain_report.answer_of(
        turn,
        athlete,
        site=Site(place["site"]),
        side=Side(place["side"]),
        since=datetime.fromisoformat(place["asked_at"]),
    )
    if key is not None:
        pain_report.amend(turn, athlete, key, score=score)
    else:
        key = pain_report.add(
            turn,
            athlete,
            site=Site(place["site"]),
            side=Side(place["side"]),
            score=score,
            must_ask=must_ask,
            signs=signs,
            occasion=Occasion.AFTER_SESSION if session_id else Occasion.MESSAGE,
            session_id=session_id,
            message_id=message_id,
        )
    said = words.said(turn.tongue(person), Site(place["site"]), Side(place["side"]), score)
    pain_consequences.follow(turn, person, athlete, before, words_said=said)
    go_on(turn, person, athlete, key, session_id=session_id, edit=edit)


def _amended(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    arguments: Arguments,
    event: Tapped,
    *,
    site: Site | None = None,
    side: Side | None = None,
    score: int | None = None,
) -> Outcome:
    if pain_report.is_long_told(turn, athlete, arguments["report"]):
        return pain_ask.too_late(turn, person)
    before = pain_picture.picture_of(turn, athlete)
    key = pain_report.amend(turn, athlete, arguments["report"], site=site, side=side, score=score)
    if key is None:
        turn.say(person, plain.old_button(turn.tongue(person)))
        return Outcome.STALE_TAP
    now = pain_report.find(turn, athlete, key)
    said = words.said(turn.tongue(person), now.site, now.side, now.score) if now else ""
    pain_consequences.follow(turn, person, athlete, before, words_said=said)
    session_id = arguments.get("session")
    if site is not None and not pain_picture.is_midline(site) and not arguments.get("has_side"):
        about = {"report": key, "session": session_id, "site": site.value}
        pain_ask.ask_unclear(turn, person, about, edit=event.message_id)
        return Outcome.ANSWERED
    go_on(turn, person, athlete, key, session_id=session_id, edit=event.message_id)
    return Outcome.SAFETY


TAPS = {"pain.where": where, "pain.site": site, "pain.side": side, "pain.score": score}
