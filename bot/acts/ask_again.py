"""What silence left open is asked once more before the next session: silence lowers nothing."""

from bot.acts import morning_question, pain_picture, pain_report, pain_talk, red_flag
from bot.acts.checklist import local_today
from bot.turn import Turn
from scheduler.calendar.wall_time import local_date_of
from scheduler.calendar.zones import zone_named
from scheduler.pain.events import PainReported
from scheduler.pain.picture import Ask, AskKind
from storage.records.people import Athlete, Person


def before_session(turn: Turn, person: Person, athlete: Athlete) -> None:
    """Ask the gravest of what is open since an earlier day: a doubt, a number, a morning."""
    zone, today = zone_named(person.zone), local_today(turn, person)
    picture = pain_picture.picture_of(turn, athlete)
    old = [ask for ask in picture.asks if local_date_of(ask.since_utc, zone) < today]
    for kind in (AskKind.FLAG, AskKind.NUMBER, AskKind.MORNING):
        if any(ask.kind is kind for ask in old):
            _ask(turn, person, athlete, kind, old)
            return


def _ask(turn: Turn, person: Person, athlete: Athlete, kind: AskKind, old: list[Ask]) -> None:
    if kind is AskKind.FLAG:
        red_flag.ask_open(turn, person, athlete, pain_picture.picture_of(turn, athlete).flags)
    elif kind is AskKind.MORNING:
        morning_question.ask(turn, person, athlete)
    else:
        region = next(ask.region for ask in old if ask.kind is AskKind.NUMBER)
        key = next(
            (
                event.key
                for event in reversed(pain_picture.events_of(turn, athlete.person_id))
                if isinstance(event, PainReported)
                and (now := pain_report.find(turn, athlete, event.key)) is not None
                and region is not None
                and now.site is region.site
                and (now.score is None or now.must_ask)
            ),
            None,
        )
        if key is not None:
            pain_talk.go_on(turn, person, athlete, key, session_id=None)
