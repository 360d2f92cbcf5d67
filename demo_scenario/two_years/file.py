"""An athlete's whole file as text, from what is stored and from nothing else."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.turn import House, Turn
from demo_scenario.two_years.entries import (
    OF_ITEMS,
    OF_WEEKS,
    entry_lines,
    names_of,
    pain_at,
    pain_line,
    proposal_line,
)
from demo_scenario.two_years.sessions import session_lines
from demo_scenario.two_years.weeks import (
    checklist_lines,
    checklist_on,
    set_lines,
    stage_on,
    week_head,
)
from scheduler.calendar.zones import zone_named
from scheduler.catalogue.library import default_library
from scheduler.training.rulebook import default_rulebook
from storage.queries import care, first_tests, history, people, training
from storage.records.care import AuditEntry
from storage.records.people import Athlete, Person
from storage.records.training import SessionRecord, WeekRecord

LINE_END = "\n"
WEEK_DAYS = 6  # [days] definition: from a Monday to its Sunday


def file_of(tx: Session, athlete_id: int) -> str:
    """Write everything that is stored about an athlete's training, the earliest first."""
    person, athlete = people.person(tx, athlete_id), people.athlete(tx, athlete_id)
    if athlete is None:
        raise LookupError(f"person {athlete_id} is not an athlete")
    return LINE_END.join(_File(tx, person, athlete).lines()) + LINE_END


class _File:
    """One reading of the database, week by week."""

    def __init__(self, tx: Session, person: Person, athlete: Athlete) -> None:
        self._tx, self._person, self._athlete = tx, person, athlete
        self._zone = zone_named(person.zone)
        self._house = House(library=default_library(), rulebook=default_rulebook(), bot_name="")
        self._entries = care.audit_of(tx, person.id)[::-1]
        self._names = names_of(tx, self._entries)
        self._proposals = care.proposals(tx, [person.id], only_open=False)
        self._pains = [event for _, event in care.pain_events(tx, person.id)]
        self._exposures = history.all_exposures(tx, person.id)
        self._told: Mapping[str, str] = {}

    def lines(self) -> Iterator[str]:
        """Yield the file line by line."""
        weeks = training.weeks(self._tx, self._person.id)
        yield from self._head()
        first = weeks[0].monday if weeks else date.max
        yield from self._beside(date.min, first - timedelta(days=1))
        for number, week in enumerate(weeks, start=1):
            yield ""
            yield from self._week(week, number=number)
            last = week.monday + timedelta(days=WEEK_DAYS)
            following = weeks[number].monday if number < len(weeks) else date.max
            yield from self._beside(last + timedelta(days=1), following - timedelta(days=1))

    def _head(self) -> Iterator[str]:
        athlete, facts = self._athlete, self._athlete.profile.facts
        yield f"{self._person.name} · stage {athlete.stage} since {athlete.stage_since}"
        yield (
            f"  table {facts.reference.value}, {facts.body_mass_kg:g} kg, "
            f"trained for {facts.training_age_months:g} months when joining"
        )
        yield (
            f"  weekdays {athlete.profile.weekdays} (Monday 0), "
            f"{athlete.profile.minutes} min a session"
        )
        yield f"  equipment {', '.join(sorted(facts.equipment))}"
        for tool, loads in sorted(facts.loads_kg.items()):
            yield f"  {tool} {', '.join(f'{kg:g}' for kg in loads)} kg"
        for event in athlete.profile.all_events:
            yield f"  {'main' if event.is_main else 'other'} event {event.on} {event.name}"
        for travel in athlete.profile.travels:
            yield f"  travel {travel.first} to {travel.last}"

    def _week(self, week: WeekRecord, *, number: int) -> Iterator[str]:
        sunday = week.monday + timedelta(days=WEEK_DAYS)
        turn = self._turn(sunday)
        sessions = training.sessions_between(
            self._tx, self._person.id, first=week.monday, last=sunday
        )
        held = stage_on(turn, self._athlete, week.monday)
        yield from week_head(week, number=number, held=held)
        yield from set_lines(turn, sessions)
        by_day: dict[date, list[SessionRecord]] = defaultdict(list)
        for session in sessions:
            by_day[session.on].append(session)
        for back in range(WEEK_DAYS + 1):
            day = week.monday + timedelta(days=back)
            for session in by_day[day]:
                yield from session_lines(
                    session,
                    next_doses=self._decided_after(session),
                    tested=first_tests.attempts_in(turn.tx, session.id),
                    library=self._house.library,
                )
            yield from self._beside(day, day)
        yield from self._checklist(turn, sunday)

    def _decided_after(self, session: SessionRecord) -> Mapping[str, AuditEntry]:
        return {
            str(one.before.get("movement")): one
            for one in self._entries
            if one.what in OF_ITEMS and one.after.get("session") == session.id
        }

    def _beside(self, first: date, last: date) -> Iterator[str]:
        """Yield what was decided in a span of days beside the doses."""
        found: list[tuple[datetime, Sequence[str]]] = [
            (one.at, entry_lines(one, zone=self._zone, names=self._names))
            for one in self._entries
            if one.what not in OF_ITEMS | OF_WEEKS and first <= self._day(one.at) <= last
        ]
        found += [
            (one.made_at, [proposal_line(one, zone=self._zone)])
            for one in self._proposals
            if first <= self._day(one.made_at) <= last
        ]
        found += [
            (pain_at(one), [line])
            for one in self._pains
            if first <= self._day(pain_at(one)) <= last
            and (line := pain_line(one, zone=self._zone)) is not None
        ]
        for _, lines in sorted(found, key=lambda pair: pair[0]):
            yield from lines

    def _checklist(self, turn: Turn, on: date) -> Iterator[str]:
        """Yield the lines of the checklist that read differently than a week before."""
        found = checklist_on(turn, self._athlete, on, exposures=self._exposures)
        lines = checklist_lines(turn, found)
        for about, line in lines.items():
            if self._told.get(about) != line and not about.startswith(("weeks", "adherence")):
                yield f"  checklist to {found.stage + 1}: {line}"
        self._told = lines

    def _turn(self, on: date) -> Turn:
        end = datetime.combine(on, time(23, 59), self._zone)
        return Turn(tx=self._tx, now=end.astimezone(ZoneInfo("UTC")), house=self._house)

    def _day(self, at: datetime) -> date:
        return at.astimezone(self._zone).date()
