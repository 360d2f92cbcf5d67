"""A report of pain as stored events: added, amended as more is said, and looked up."""

from collections.abc import Iterable
from datetime import datetime, timedelta

from bot.acts import pain_picture
from bot.turn import Turn
from scheduler.pain.events import (
    Corrected,
    MorningAnswered,
    Occasion,
    PainReported,
    PainSign,
)
from scheduler.pain.values import Level, Side, Site
from storage.queries import care
from storage.records.people import Athlete
from storage.records.training import SessionRecord

UNSAID_FOR = timedelta(days=2)  # [d] ch: an alert says so long that a place or side is not known
CHANGED_WITHIN = timedelta(days=2)  # [d] ch: later a tap is a slip; what hurts now is told anew
ONE_MORNING = timedelta(hours=8)  # [h] ch: a second number so soon corrects the first


def add(
    turn: Turn,
    athlete: Athlete,
    *,
    site: Site,
    side: Side,
    score: int | None,
    must_ask: bool = False,
    signs: Iterable[PainSign] = (),
    occasion: Occasion,
    session_id: int | None = None,
    message_id: int | None = None,
    is_site_said: bool = True,
    is_side_said: bool = True,
) -> str:
    """Record a report and return its key."""
    key = pain_picture.new_key(turn, athlete.person_id)
    report = PainReported(
        key=key,
        at_utc=turn.now,
        site=site,
        side=Side.BOTH if pain_picture.is_midline(site) else side,
        score=score,
        must_ask=must_ask,
        signs=frozenset(signs),
        occasion=occasion,
        is_site_said=is_site_said,
        is_side_said=is_side_said or pain_picture.is_midline(site),
    )
    pain_picture.record_event(
        turn, athlete.person_id, report, session_id=session_id, message_id=message_id
    )
    return key


def add_morning(
    turn: Turn,
    athlete: Athlete,
    *,
    site: Site,
    side: Side,
    score: int | None,
    must_ask: bool,
    is_worse: bool = False,
) -> str:
    """Record the answer of the morning after and return its key; a second one corrects it."""
    key = pain_picture.new_key(turn, athlete.person_id)
    answer = MorningAnswered(
        key=key,
        at_utc=turn.now,
        site=site,
        side=side,
        score=score,
        must_ask=must_ask,
        is_worse=is_worse,
    )
    earlier = _morning_before(turn, athlete, answer)
    if earlier is None:
        pain_picture.record_event(turn, athlete.person_id, answer)
        return key
    correction = Corrected(key=key, at_utc=turn.now, report_key=earlier, replacement=answer)
    pain_picture.record_event(turn, athlete.person_id, correction)
    return earlier


def _morning_before(turn: Turn, athlete: Athlete, answer: MorningAnswered) -> str | None:
    """Return the same morning's first answer, if no session was asked about in between."""
    since = answer.at_utc - ONE_MORNING
    for event in reversed(pain_picture.events_of(turn, athlete.person_id, since=since)):
        is_here = getattr(event, "site", None) is answer.site
        if is_here and isinstance(event, PainReported):
            return None
        if (
            isinstance(event, MorningAnswered)
            and (event.site, event.side) == (answer.site, answer.side)
            and answer.at_utc - event.at_utc < ONE_MORNING
        ):
            return event.key
    return None


def amend(
    turn: Turn,
    athlete: Athlete,
    key: str,
    *,
    site: Site | None = None,
    side: Side | None = None,
    score: int | None = None,
    sign: PainSign | None = None,
) -> str | None:
    """Say more about a report; it is superseded, never rewritten, and keeps its key."""
    report = find(turn, athlete, key)
    if report is None:
        return None
    new_key = pain_picture.new_key(turn, athlete.person_id)
    new_site = site or report.site
    is_midline = pain_picture.is_midline(new_site)
    # Where it was not known where it hurts, the side was not said either.
    had_side = report.is_side_said and not pain_picture.is_midline(report.site)
    replacement = report.model_copy(
        update={
            "site": new_site,
            "side": Side.BOTH if is_midline else side or report.side,
            "score": report.score if score is None else score,
            "must_ask": report.must_ask if score is None else False,
            "is_site_said": report.is_site_said or site is not None,
            "is_side_said": is_midline or had_side or side is not None,
            "signs": report.signs | ({sign} if sign else frozenset()),
        }
    )
    if replacement == report:
        return key  # said once more, and nothing else
    correction = Corrected(key=new_key, at_utc=turn.now, report_key=key, replacement=replacement)
    pain_picture.record_event(turn, athlete.person_id, correction)
    return key


def add_nothing(turn: Turn, athlete: Athlete, session: SessionRecord) -> None:
    """Record that nothing hurt, for what was loaded today and has been hurting.

    It is an answer of 0 for these places. It never ends what only a person can end.
    """
    loaded = pain_picture.regions_loaded(turn, session)
    for one in pain_picture.picture_of(turn, athlete).regions:
        if one.region in loaded and Level.NONE < one.level < Level.REST:
            add(
                turn,
                athlete,
                site=one.region.site,
                side=one.region.arm,
                score=0,
                occasion=Occasion.AFTER_SESSION,
                session_id=session.id,
            )


def unsaid(turn: Turn, athlete: Athlete) -> tuple[bool, bool]:
    """Tell whether the latest report as it stands lacks its place, and its side."""
    keys = [
        event.key
        for event in pain_picture.events_of(turn, athlete.person_id)
        if isinstance(event, PainReported)
    ]
    last = find(turn, athlete, keys[-1]) if keys else None
    if last is None or turn.now - last.at_utc > UNSAID_FOR:
        return False, False
    return not last.is_site_said, not last.is_side_said


def find(turn: Turn, athlete: Athlete, key: str) -> PainReported | None:
    """Return a report as it stands now, after all that was said to it since."""
    standing: PainReported | None = None
    for event in pain_picture.events_of(turn, athlete.person_id):
        if isinstance(event, PainReported) and event.key == key:
            standing = event
        elif isinstance(event, Corrected) and event.report_key == key:
            found = event.replacement
            standing = found if isinstance(found, PainReported) else None
    return standing


def is_long_told(turn: Turn, athlete: Athlete, key: str) -> bool:
    """Tell whether a report has its number for days: an old button then changes it no more.

    One that still wants its number, side or place takes it whenever it comes: nothing is lost.
    """
    told = find(turn, athlete, key)
    if told is None or told.score is None or told.must_ask:
        return False
    if not (told.is_site_said and told.is_side_said):
        return False
    return turn.now - told.at_utc > CHANGED_WITHIN


def answer_of(
    turn: Turn, athlete: Athlete, *, site: Site, side: Side, since: datetime
) -> str | None:
    """Return the report that already answers a question asked at ``since``."""
    asked_side = Side.BOTH if pain_picture.is_midline(site) else side
    for event in pain_picture.events_of(turn, athlete.person_id, since=since):
        if isinstance(event, PainReported) and (event.site, event.side) == (site, asked_side):
            return event.key
    return None


def keys_of_message(turn: Turn, athlete: Athlete, message_id: int) -> tuple[str, ...]:
    """Return the reports that a message made, so that editing it corrects them."""
    ids = set(care.pain_events_from_message(turn.tx, athlete.person_id, message_id))
    events = care.pain_events(turn.tx, athlete.person_id)
    return tuple(
        str(event["key"])
        for event_id, event in events
        if event_id in ids and event["kind"] == "pain_reported"
    )
