"""What pain changes in the session of a day, because of which reports, and what is still open."""

from bot.acts import open_answer, pain_picture
from bot.acts.checklist import local_today
from bot.acts.item_facts import item_facts, sent_items
from bot.acts.places import merged
from bot.acts.places_used import is_stand_in
from bot.turn import Turn
from bot.wording import care_note as words
from bot.wording import pain as pain_words
from bot.wording.care_note import ReportFacts
from scheduler.calendar.wall_time import local_date_of, monday_of
from scheduler.calendar.zones import zone_named
from scheduler.pain.events import PainReported
from scheduler.pain.picture import PainPicture, RegionPicture
from scheduler.pain.values import Level
from scheduler.training.training_reasons import DoseReason
from storage.queries import people
from storage.records.people import Athlete, Person
from storage.records.training import ItemRecord, SessionRecord

CUT_FOR_PAIN = frozenset({DoseReason.EASE_CUT, DoseReason.PUSH_CUT_WITH_PULL})


def for_session(turn: Turn, person: Person, athlete: Athlete, session: SessionRecord) -> str:
    """Write what is left out and made easier, because of what, and which answer decides."""
    tongue = turn.tongue(person)
    picture = pain_picture.picture_of(turn, athlete)
    coach = people.person(turn.tx, athlete.coach_id)
    report = open_answer.latest_open(turn, athlete)
    rested = [one for one in picture.regions if one.level >= Level.REST]
    lines = [
        pain_words.left_out_line(
            tongue,
            picture,
            coach=coach.name,
            why=words.reports(tongue, _facts(turn, person, rested, report)),
        ),
        _eased(turn, person, athlete, session, picture, report),
        _comes_back(turn, person, session, picture),
        for_open(turn, person, athlete),
    ]
    return "\n".join(line for line in lines if line)


def _comes_back(turn: Turn, person: Person, session: SessionRecord, picture: PainPicture) -> str:
    """Write that a day is shorter because what was cleared comes back; empty where it is not."""
    reasons = (why for item in sent_items(session) for why in item.reasons)
    if not picture.returns or all(why.code != DoseReason.SETS_SHARED for why in reasons):
        return ""
    return words.comes_back(turn.tongue(person))


def for_open(turn: Turn, person: Person, athlete: Athlete) -> str:
    """Write that an open answer decides; empty where none is open."""
    report = open_answer.latest_open(turn, athlete)
    missing = open_answer.missing_of(report) if report is not None else None
    if report is None or missing is None:
        return ""
    return words.still_open(turn.tongue(person), missing, site=report.site)


def _eased(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    session: SessionRecord,
    picture: PainPicture,
    report: PainReported | None,
) -> str:
    eased = [one for one in picture.regions if one.level is Level.EASE]
    if not eased:
        return ""
    numbers = [
        item_facts(turn, session, item).number
        for item in sent_items(session)
        if _is_easier(turn, athlete, session, item, picture)
    ]
    if not numbers:
        return ""
    why = words.reports(turn.tongue(person), _facts(turn, person, eased, report))
    return words.eased(turn.tongue(person), numbers, why=why)


def _is_easier(
    turn: Turn, athlete: Athlete, session: SessionRecord, item: ItemRecord, picture: PainPicture
) -> bool:
    """Tell whether an item was cut for pain, or is the easier one of its place."""
    if any(why.code in CUT_FOR_PAIN for why in item.reasons):
        return True
    movement = turn.house.library.movements[item.movement_key]
    return any(picture.eased.hits(movement, arm) for arm in item.arms) and is_stand_in(
        turn,
        athlete.person_id,
        item,
        monday=monday_of(session.on),
        picture=picture,
        changed=athlete.profile.coach_plan,
    )


def _facts(
    turn: Turn, person: Person, regions: list[RegionPicture], report: PainReported | None
) -> tuple[ReportFacts, ...]:
    """Return which reports spare these places; a side only where it was said."""
    zone = zone_named(person.zone)
    told = {one.region.site: one.last_at_utc for one in regions}
    unsaid = report.site if report is not None and not report.is_side_said else None
    return tuple(
        ReportFacts(
            site=one.site,
            side=one.side,
            score=None if one.score is None else round(one.score),
            on=local_date_of(at, zone) if (at := told[one.site]) is not None else None,
            today=local_today(turn, person),
            is_side_said=one.site is not unsaid,
            is_place_said=report is None or report.is_site_said or one.site is not report.site,
        )
        for one in merged(regions)
    )
