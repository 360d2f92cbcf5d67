"""The one page that an athlete takes along: gathered here, drawn when it is sent."""

from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from typing import Any

from bot.acts import pain_picture, pain_scores
from bot.acts.about_athlete import about_tapped
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.pictures.handover_values import HandoverPage, Section, Series
from bot.turn import Turn
from bot.wording import coach_pain, doses
from bot.wording import handover as words
from bot.wording.movement_names import name_of
from bot.wording.tongue import Tongue
from scheduler.calendar.wall_time import local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.pain.picture import PainPicture
from scheduler.pain.values import Level, Region
from storage.queries import care, training
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord

ACT = "coach.handover"
SHOWN = timedelta(days=42)  # [days] ch: what a page can hold, and what a clinician asks about
SESSIONS_MOST = 10  # [lines] ch
SCORES_MOST = 8  # [numbers] ch: on one line
FILE_NAME = "handover.pdf"
Points = Sequence[tuple[date, int, bool]]


@about_tapped
def tapped(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The button on the athlete's screen or under an alert."""
    page = page_of(turn, found.person, found.athlete, tongue=turn.tongue(coach))
    turn.send_file(
        coach,
        page=page.model_dump(mode="json"),
        file_name=FILE_NAME,
        caption=words.caption(turn.tongue(coach), found.person.name),
        subject=subject_of(found.person),
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="handover.sent",
        athlete_id=found.person.id,
        actor_id=coach.id,
    )
    return Outcome.COMMAND


def page_of(turn: Turn, person: Person, athlete: Athlete, *, tongue: Tongue) -> HandoverPage:
    """Gather the page in the reader's language; private signs are not on it."""
    today = local_today(turn, person)
    since = today - SHOWN
    picture = pain_picture.picture_of(turn, athlete)
    points = pain_scores.points_of(turn, person, since=since)
    return HandoverPage(
        title=words.title(tongue, person.name),
        subtitle=words.subtitle(tongue, today, since),
        sections=_sections(turn, person, tongue, picture, points, since=since, today=today),
        chart_heading=words.chart_heading(tongue),
        chart_days=(since, today),
        chart_day_labels=(words.full_day(tongue, since), words.full_day(tongue, today)),
        series=tuple(
            Series(
                name=words.plain(coach_pain.place(tongue, region.site, region.arm)),
                points=tuple((on, score) for on, score, _ in scores),
            )
            for region, scores in points.items()
        ),
        foot=words.foot(tongue),
    )


def _sections(
    turn: Turn,
    person: Person,
    tongue: Tongue,
    picture: PainPicture,
    points: Mapping[Region, Points],
    *,
    since: date,
    today: date,
) -> tuple[Section, ...]:
    zone = zone_named(person.zone)
    regions = [one for one in picture.regions if one.level > Level.NONE]
    hurts = [
        words.region_line(
            tongue, one, local_date_of(one.since_utc, zone) if one.since_utc else None
        )
        for one in regions
    ]
    courses = [
        words.course_line(tongue, region.site, region.arm, scores[-SCORES_MOST:])
        for region, scores in points.items()
    ]
    signs = [
        words.flag_line(tongue, flag, local_date_of(flag.since_utc, zone))
        for flag in picture.flags
        if not flag.is_private
    ]
    left_out = coach_pain.left_out(tongue, picture.rested)
    lines = (
        _trained(turn, person, tongue, since=since, today=today),
        hurts,
        courses,
        signs,
        [words.plain(left_out)] if left_out else [],
    )
    return tuple(
        Section(heading=heading, lines=tuple(found) or (words.nothing(tongue),))
        for heading, found in zip(words.headings(tongue), lines, strict=True)
    )


def _trained(turn: Turn, person: Person, tongue: Tongue, *, since: date, today: date) -> list[str]:
    sessions = [
        session
        for session in training.sessions_between(turn.tx, person.id, first=since, last=today)
        if any(item.sets for item in session.items)
    ]
    earlier = len(sessions) - SESSIONS_MOST
    return [
        *([words.earlier_sessions(tongue, earlier)] if earlier > 0 else []),
        *(
            words.session_line(tongue, one.on, _results(turn, tongue, one), one.effort)
            for one in sessions[-SESSIONS_MOST:]
        ),
    ]


def _results(turn: Turn, tongue: Tongue, session: SessionRecord) -> list[str]:
    found = []
    for item in session.items:
        if not item.sets:
            continue
        movement = turn.house.library.movements[item.movement_key]
        values = ", ".join(tongue.number(one.done.value) for one in item.sets)
        found.append(f"{name_of(tongue, movement)} {values} {doses.unit(tongue, movement.measure)}")
    return found


TAPS = {ACT: tapped}
