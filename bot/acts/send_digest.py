"""The weekly digest, in text: decisions with buttons first, who needs nothing in one line."""

from collections.abc import Mapping, Sequence
from datetime import date, datetime, time

from bot.acts import (
    answer_clip,
    approve_batch,
    athlete_week,
    decide_proposal,
    digest_days,
    show_roster,
    team_members,
    team_pictures,
)
from bot.acts.athlete_week import DAY, AthleteWeek, Gathered
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_roster, digest, outage
from bot.wording import limits as limit_words
from bot.wording.coach_roster import Need, RosterFacts
from bot.wording.digest import DigestFacts
from bot.wording.pages import pages_of
from bot.writer import log_fault
from scheduler.calendar.wall_time import due_instant
from scheduler.calendar.zones import zone_named
from scheduler.pain.values import Level
from storage.queries import care, people, training
from storage.records.care import Alert, AuditEntry, Proposal
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

BESTS_MOST = 5  # [lines] ch: the best one of an athlete each; the rest is a count
BUTTONS_MOST = 20  # [decisions] ch: more are decided one by one under /roster
STAGE_CHANGES = ("stage.changed", "stage.taken_back")
UNBALANCED_FROM_SETS = 2  # [sets] ch: below it a ratio of whole sets says nothing


def send_digest(
    turn: Turn, coach: Person, on: date, gathered: Gathered = athlete_week.NOTHING
) -> None:
    """Send what the days since the last digest came to; useful until the next.

    A coach without athletes gets none: there is nothing to read in it.
    ``gathered`` was looked up before, athlete by athlete; what is missing is looked up now.
    """
    if not (pairs := _athletes(turn, coach)):
        return
    tongue = turn.tongue(coach)
    proposals = care.proposals(turn.tx, [one.id for one, _ in pairs])
    weeks = weeks_of(turn, coach, on, gathered)
    text, over = digest.first_message(tongue, facts_of(turn, coach, on, proposals, weeks))
    until = digest_days.next_at(turn, coach)
    turn.say(
        coach,
        text,
        kind=MessageKind.DIGEST,
        taps=_taps(turn, coach, proposals),
        useful_until=until,
    )
    _tell_owners(turn, coach, weeks)
    for page in pages_of(over):
        turn.say(coach, page, kind=MessageKind.DIGEST, useful_until=until)
    try:
        with turn.tx.begin_nested():
            _send_pictures(turn, coach, on, weeks, gathered, until=until)
    except Exception as fault:  # noqa: BLE001 (the digest is worth more than its pictures)
        log_fault(f"P{coach.id}-pictures", fault)


def _tell_owners(turn: Turn, coach: Person, weeks: Mapping[int, AthleteWeek]) -> None:
    """Tell every owner whose week could not be worked out: a fault of ours is theirs to mend."""
    names = [people.person(turn.tx, one).name for one, week in weeks.items() if not week.is_known]
    if not names:
        return
    for owner in people.owners(turn.tx):
        text = outage.not_worked_out(turn.tongue(owner), coach=coach.name, names=names)
        turn.say(owner, text, kind=MessageKind.NOTICE)


def _send_pictures(
    turn: Turn,
    coach: Person,
    on: date,
    weeks: Mapping[int, AthleteWeek],
    gathered: Gathered,
    *,
    until: datetime,
) -> None:
    first, last = digest_days.first_of(turn, coach, on), on - DAY
    levels = athlete_week.levels_of(weeks)
    team_pictures.send(
        turn,
        coach,
        team_members.members_of(turn, coach, levels, first=first, last=last),
        first=first,
        last=last,
        until=until,
        shots=gathered.shots if gathered.on == on else None,
    )


def weeks_of(
    turn: Turn, coach: Person, on: date, gathered: Gathered = athlete_week.NOTHING
) -> dict[int, AthleteWeek]:
    """Return each athlete's week, as gathered or looked up now, or that it cannot be known."""
    known = gathered.weeks if gathered.on == on else {}
    first, last = digest_days.first_of(turn, coach, on), on - DAY
    return {
        person.id: known[person.id]
        if person.id in known
        else athlete_week.week_or_not(turn, coach, person, athlete, first=first, last=last)
        for person, athlete in _athletes(turn, coach)
    }


def facts_of(
    turn: Turn,
    coach: Person,
    on: date,
    proposals: Sequence[Proposal],
    weeks: Mapping[int, AthleteWeek],
) -> DigestFacts:
    """Collect the week."""
    first, last = digest_days.first_of(turn, coach, on), on - DAY
    names = {person.id: person.name for person, _ in _athletes(turn, coach)}
    roster = [one for one in show_roster.roster_of(turn, coach) if one.athlete_id in names]
    since, until = _instant(coach, first), _instant(coach, on)
    audit = care.audit_between(turn.tx, list(names), since=since, until=until)
    counts = training.kept_of_sent(turn.tx, list(names), first=first, last=last)
    stages = _stages(names, audit)
    unbalanced = _unbalanced(turn, names, weeks)
    bests, bests_more = _bests(turn, coach, names, weeks)
    changes = _changes(turn, coach, names, weeks)
    alerts = _alerts(turn, coach, names, since=since)
    left_out = _left_out(names, weeks, named={name for name, _, _ in alerts})
    instead = _instead(turn, coach, roster, counts)
    unknown = tuple(name for one, name in names.items() if not weeks[one].is_known)
    named = {one for one, _ in stages} | {one for one, _, _ in unbalanced} | set(unknown)
    named |= {name for name, level, _ in alerts} | {one for one, _ in (*left_out, *instead)}
    return DigestFacts(
        first=first,
        last=last,
        athletes=len(names),
        kept=sum(kept for kept, _ in counts.values()),
        sent=sum(sent for _, sent in counts.values()),
        decisions=_decisions(turn, coach, names, proposals),
        alerts=alerts,
        denied=_denied(turn, coach, names, since=since),
        left_out=left_out,
        unknown=unknown,
        messages=_messages(turn, names),
        clips=_clips(turn, names),
        instead=instead,
        quiet=tuple((one.name, one.silent) for one in roster if one.silent is not None),
        bests=bests,
        bests_more=bests_more,
        changes=changes,
        stages=stages,
        still=_still(turn, coach, names, weeks),
        up=_count(audit, "dose.up"),
        kept_doses=_count(audit, "dose.kept"),
        down=_count(audit, "dose.down"),
        unbalanced=unbalanced,
        rest=_rest(roster, named),
    )


def _athletes(turn: Turn, coach: Person) -> tuple[tuple[Person, Athlete], ...]:
    return people.athletes_of(turn.tx, coach.id)


def _decisions(
    turn: Turn, coach: Person, names: Mapping[int, str], proposals: Sequence[Proposal]
) -> tuple[tuple[str, str], ...]:
    return tuple(
        (names[one.athlete_id], decide_proposal.title_of(turn, coach, one)) for one in proposals
    )


def _alerts(
    turn: Turn, coach: Person, names: Mapping[int, str], *, since: datetime
) -> tuple[tuple[str, Level, bool], ...]:
    """Return the week's alerts and every older one that is still open, the open ones first."""
    week = care.alerts_between(turn.tx, coach_id=coach.id, since=since, until=turn.now)
    alerts = {one.id: one for one in (*care.alerts_of(turn.tx, list(names)), *week)}
    rows = [
        (names[one.athlete_id], one.level, one.answered_at is None)
        for one in alerts.values()
        if one.athlete_id in names and not _is_denied(one)
    ]
    return tuple(sorted(rows, key=lambda row: (not row[2], -row[1], row[0])))


def _denied(
    turn: Turn, coach: Person, names: Mapping[int, str], *, since: datetime
) -> tuple[str, ...]:
    """Return who was asked about a sign and said no before anybody was told, each once."""
    week = care.alerts_between(turn.tx, coach_id=coach.id, since=since, until=turn.now)
    who = {one.athlete_id for one in week if _is_denied(one)}
    return tuple(sorted(names[one] for one in who if one in names))


def _is_denied(alert: Alert) -> bool:
    """Tell whether the athlete alone answered: then no person has looked at it."""
    return alert.times_told == 0 and alert.answered_by_id == alert.athlete_id


def _left_out(
    names: Mapping[int, str], weeks: Mapping[int, AthleteWeek], *, named: set[str]
) -> tuple[tuple[str, Level], ...]:
    """Return whose training pain has changed and whom no alert names, the gravest first."""
    levels = athlete_week.levels_of(weeks)
    found = [
        (name, levels[athlete_id])
        for athlete_id, name in names.items()
        if levels.get(athlete_id, Level.NONE) >= Level.EASE and name not in named
    ]
    return tuple(sorted(found, key=lambda one: (-one[1], one[0].casefold())))


def _instead(
    turn: Turn,
    coach: Person,
    roster: Sequence[RosterFacts],
    counts: Mapping[int, tuple[int, int]],
) -> tuple[tuple[str, str], ...]:
    """Return who had no session in the week, and what they do instead."""
    return tuple(
        (one.name, coach_roster.standing(turn.tongue(coach), one))
        for one in roster
        if one.need >= Need.NOT_TRAINING and one.athlete_id not in counts
    )


def _messages(turn: Turn, names: Mapping[int, str]) -> tuple[tuple[str, str], ...]:
    waiting = care.unanswered(turn.tx, list(names))
    return tuple((names[one.athlete_id], one.words) for one in waiting)


def _clips(turn: Turn, names: Mapping[int, str]) -> tuple[tuple[str, int], ...]:
    waiting = answer_clip.waiting_by_athlete(turn, list(names))
    return tuple((names[athlete_id], count) for athlete_id, count in waiting.items())


def _stages(names: Mapping[int, str], audit: Sequence[AuditEntry]) -> tuple[tuple[str, str], ...]:
    return tuple(
        (names[one.athlete_id], f"{one.before.get('stage', '?')} → {one.after.get('stage', '?')}")
        for one in audit
        if one.what in STAGE_CHANGES and one.athlete_id is not None
    )


def _unbalanced(
    turn: Turn, names: Mapping[int, str], weeks: Mapping[int, AthleteWeek]
) -> tuple[tuple[str, int, int], ...]:
    """Return whose sets done are out of the rulebook's bounds of pushing against pulling."""
    bounds = turn.house.rulebook.weeks.push_to_pull
    found = []
    for athlete_id, name in names.items():
        push, pull = weeks[athlete_id].push, weeks[athlete_id].pull
        is_low = push < bounds.least * pull
        is_high = bounds.most is not None and push > bounds.most * pull
        # One set of a small week is no imbalance, whatever its ratio.
        if (is_low or is_high) and abs(push - pull) >= UNBALANCED_FROM_SETS:
            found.append((name, push, pull))
    return tuple(found)


def _bests(
    turn: Turn, coach: Person, names: Mapping[int, str], weeks: Mapping[int, AthleteWeek]
) -> tuple[tuple[str, ...], int]:
    """Return the largest gain of each athlete, five in all, and how many more there are."""
    tongue = turn.tongue(coach)
    found = {name: weeks[athlete_id].bests for athlete_id, name in names.items()}
    foremost = sorted(
        ((name, bests[0]) for name, bests in found.items() if bests), key=lambda one: -one[1].gain
    )[:BESTS_MOST]
    lines = tuple(digest.best(tongue, name=name, line=one.line) for name, one in foremost)
    return lines, sum(len(bests) for bests in found.values()) - len(lines)


def _changes(
    turn: Turn, coach: Person, names: Mapping[int, str], weeks: Mapping[int, AthleteWeek]
) -> tuple[str, ...]:
    """Return each athlete's largest change that is more than chance, and is news this week."""
    tongue = turn.tongue(coach)
    return tuple(
        digest.best(tongue, name=name, line=limit_words.change(tongue, change))
        for athlete_id, name in names.items()
        if (change := weeks[athlete_id].change) is not None
    )


def _still(
    turn: Turn, coach: Person, names: Mapping[int, str], weeks: Mapping[int, AthleteWeek]
) -> tuple[str, ...]:
    """Return a line for each athlete with a dose that has stood still, the longest of them."""
    return tuple(
        digest.best(turn.tongue(coach), name=name, line=weeks[athlete_id].still)
        for athlete_id, name in names.items()
        if weeks[athlete_id].still
    )


def _rest(roster: Sequence[RosterFacts], named: set[str]) -> tuple[str, ...]:
    return tuple(one.name for one in roster if one.need is Need.NOTHING and one.name not in named)


def _count(audit: Sequence[AuditEntry], what: str) -> int:
    return sum(one.what == what for one in audit)


def _taps(turn: Turn, coach: Person, proposals: Sequence[Proposal]) -> TapRows:
    rows: list[list[Tap]] = []
    for proposal in proposals[:BUTTONS_MOST]:
        name = people.person(turn.tx, proposal.athlete_id).name
        rows.append(decide_proposal.taps_for(turn, coach, proposal, name=name))
    among = [one.athlete_id for one in proposals]
    return [*rows, *approve_batch.offer(turn, coach, among=among)]


def _instant(coach: Person, day: date) -> datetime:
    return due_instant(local_date=day, wall_time=time(0), zone=zone_named(coach.zone))
