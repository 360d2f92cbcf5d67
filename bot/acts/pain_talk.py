"""Talking about pain: where, which side, how much, what else; one step at a time, resumable."""

from collections.abc import Iterable, Mapping
from datetime import datetime
from typing import Any

from bot.acts import pain_consequences, pain_picture, pain_report, record_results, red_flag
from bot.acts.intake_resume import MORE_LIST, MORE_SIGNS, remember, resume
from bot.acts.pain_taps import list_taps, score_taps, side_taps, sign_taps, signs_of, site_taps
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import TapRows, Turn
from bot.wording import pain as words
from bot.wording import plain
from bot.wording import red_flags as red_flag_words
from scheduler.pain.events import Occasion, PainSign, TapListAnswered
from scheduler.pain.picture import AskKind, PainPicture
from scheduler.pain.tap_list import TapLine, flag_of_line
from scheduler.pain.values import Side, Site, regions_of
from storage import buttons
from storage.queries import people, training
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord
from storage.records.wire import MessageKind

UNCLEAR = "pain.unclear"  # the kind of the open question for a place or a side
SIGNS_FROM_SCORE = 3  # [of 10] ch: below it the three further questions are not worth a tap
Arguments = Mapping[str, Any]


def ask_where(
    turn: Turn, person: Person, *, session_id: int | None, edit: int | None = None
) -> None:
    """Ask for the place."""
    ask_unclear(turn, person, {"session": session_id}, edit=edit)


def ask_unclear(
    turn: Turn, person: Person, about: Arguments, *, lead: str = "", edit: int | None = None
) -> None:
    """Ask for the side of a known site, else for the place; a typed answer counts like a tap.

    ``lead`` is said before the question, in the same message.
    """
    tongue = turn.tongue(person)
    _open(turn, person, UNCLEAR, dict(about))
    if "site" in about:
        text = words.which_side(tongue, Site(about["site"]))
        _say(turn, person, lead + text, side_taps(tongue, about), edit=edit)
        return
    sites = tuple(Site(one) for one in about.get("sites", ()))
    taps = site_taps(tongue, {k: v for k, v in about.items() if k != "sites"}, sites=sites)
    _say(turn, person, lead + words.where(tongue), taps, edit=edit)


def where(turn: Turn, person: Person, arguments: Arguments, _event: Tapped) -> Outcome:
    """The button "something hurts"."""
    ask_where(turn, person, session_id=arguments.get("session"))
    return Outcome.SAFETY


def nothing(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """The button "nothing hurt": an answer of 0 for what was loaded and has been hurting."""
    session = training.session(turn.tx, arguments["session"])
    if session.athlete_id != person.id or not session.is_open:
        turn.say(person, plain.session_closed(turn.tongue(person)))
        return Outcome.STALE_TAP
    _note_nothing(turn, person, session)
    note = words.nothing_hurt(turn.tongue(person))
    record_results.go_on(turn, person, session.id, notes=[note], edit_message_id=event.message_id)
    return Outcome.ANSWERED


def _note_nothing(turn: Turn, person: Person, session: SessionRecord) -> None:
    athlete = people.athlete(turn.tx, person.id)
    if athlete is not None:
        before = pain_picture.picture_of(turn, athlete)
        pain_report.add_nothing(turn, athlete, session)
        pain_consequences.follow(turn, person, athlete, before, words_said="")
    training.change_session(turn.tx, session.id, is_pain_answered=True)


def close_question_of(turn: Turn, person: Person, session_id: int) -> None:
    """Go on with a session whose question about pain was answered in words."""
    session = training.session(turn.tx, session_id)
    if session.is_open:
        _note_nothing(turn, person, session)
        note = words.nothing_hurt(turn.tongue(person))
        record_results.go_on(turn, person, session_id, notes=[note])


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
    ask_unclear(turn, person, about, edit=event.message_id)
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
    _open(turn, person, "pain.place", place)
    _say(turn, person, text, score_taps(place), edit=event.message_id)
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
        return _too_late(turn, person)
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


def sign(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """What else was true of it."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    found = signs_of(arguments["sign"])
    key = arguments["report"]
    if pain_report.is_long_told(turn, athlete, key):
        return _too_late(turn, person)
    if found is not None:
        before = pain_picture.picture_of(turn, athlete)
        key = pain_report.amend(turn, athlete, key, sign=found) or key
        said = turn.tongue(person).say(words.SIGNS[found])
        pain_consequences.follow(turn, person, athlete, before, words_said=said)
    go_on(
        turn,
        person,
        athlete,
        key,
        session_id=arguments.get("session"),
        edit=event.message_id,
        signs_asked=True,
    )
    return Outcome.SAFETY


def list_line(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A line of the short list, or none of them."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    if arguments["line"] and _stands(turn, athlete, TapLine(arguments["line"])):
        turn.say(person, red_flag_words.already_passed_on(turn.tongue(person)))
        return Outcome.STALE_TAP
    pain_picture.record_event(
        turn,
        person.id,
        TapListAnswered(key=pain_picture.new_key(turn, person.id), at_utc=turn.now),
    )
    if arguments["line"]:
        line = TapLine(arguments["line"])
        red_flag.raise_tapped(turn, person, athlete, flag_of_line(line), line)
        return Outcome.SAFETY
    go_on(
        turn,
        person,
        athlete,
        arguments["report"],
        session_id=arguments.get("session"),
        edit=event.message_id,
        signs_asked=True,
    )
    return Outcome.SAFETY


def _stands(turn: Turn, athlete: Athlete, line: TapLine) -> bool:
    """Tell whether a line was tapped before and still counts: a double tap is no second sign."""
    flags = pain_picture.picture_of(turn, athlete).flags
    return any(flag.flag is flag_of_line(line) for flag in flags)


def go_on(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    key: str,
    *,
    session_id: int | None,
    edit: int | None = None,
    signs_asked: bool = False,
) -> None:
    """Ask what is still missing of a report, or say what it changes."""
    report = pain_report.find(turn, athlete, key)
    if report is None:
        return
    tongue = turn.tongue(person)
    about = {"report": key, "session": session_id}
    picture = pain_picture.picture_of(turn, athlete)
    if report.score is None or report.must_ask:
        text = words.how_much(tongue, report.site, report.side)
        _ask_number(turn, person, key, session_id)
        _say(turn, person, text, score_taps(about), edit=edit)
    elif report.score >= SIGNS_FROM_SCORE and not signs_asked and not report.signs:
        remember(turn, person, about, MORE_SIGNS)
        text = words.which_sign(tongue, report.site, report.side)
        _say(turn, person, text, sign_taps(tongue, about), edit=edit)
    elif any(ask.kind is AskKind.TAP_LIST for ask in picture.asks):
        remember(turn, person, about, MORE_LIST)
        _say(turn, person, words.tap_list(tongue), list_taps(tongue, about), edit=edit)
    else:
        _finish(turn, person, athlete, picture, report.site, report.side, session_id, edit=edit)


def _finish(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    picture: PainPicture,
    site: Site,
    side: Side,
    session_id: int | None,
    *,
    edit: int | None,
) -> None:
    coach = people.person(turn.tx, athlete.coach_id)
    tongue = turn.tongue(person)
    shown = [picture.region(one.site, one.arm) for one in regions_of(site, side)]
    worst = max((one for one in shown if one), key=lambda one: one.level, default=None)
    if worst is None:
        text = words.nothing_hurt(tongue)
    elif person.id in turn.advised:
        text = words.noted(tongue, worst)
    else:
        text = words.outcome(tongue, worst, coach=coach.name)
    _say(turn, person, text, (), edit=edit)
    resume(turn, person, athlete)
    session = training.session(turn.tx, session_id) if session_id else None
    if session is not None and session.is_open and session.is_test_day:
        # The next test comes by itself; the end of the day does not ask again what was told.
        training.change_session(turn.tx, session.id, is_pain_answered=session.has_results)
        record_results.go_on(turn, person, session.id)
    elif (
        session is not None and session.is_open and any(item.is_reported for item in session.items)
    ):
        # Before the first result it is not the answer to the question at the session's end.
        training.change_session(turn.tx, session.id, is_pain_answered=True)
        record_results.go_on(turn, person, session.id)


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
        return _too_late(turn, person)
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
        ask_unclear(turn, person, about, edit=event.message_id)
        return Outcome.ANSWERED
    go_on(turn, person, athlete, key, session_id=session_id, edit=event.message_id)
    return Outcome.SAFETY


def _too_late(turn: Turn, person: Person) -> Outcome:
    turn.say(person, words.too_late_to_say(turn.tongue(person)), kind=MessageKind.SAFETY)
    return Outcome.STALE_TAP


def _ask_number(turn: Turn, person: Person, key: str, session_id: int | None) -> None:
    _open(turn, person, "pain.score", {"report": key, "session": session_id})


def _open(turn: Turn, person: Person, kind: str, subject: dict[str, Any]) -> None:
    """Let a typed number be the answer, as well as a tapped one."""
    if person.chat_id is not None:
        buttons.ask(
            turn.tx,
            chat_id=person.chat_id,
            person_id=person.id,
            kind=kind,
            subject=subject,
            now=turn.now,
        )


def _say(turn: Turn, person: Person, text: str, taps: TapRows, *, edit: int | None = None) -> None:
    if edit is not None:
        turn.change(person, edit, text, taps=taps)
    else:
        turn.say(person, text, kind=MessageKind.SAFETY, taps=taps)


TAPS = {
    "pain.none": nothing,
    "pain.where": where,
    "pain.site": site,
    "pain.side": side,
    "pain.score": score,
    "pain.sign": sign,
    "pain.list": list_line,
}
