"""The roster: who needs the coach first."""

from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from typing import Any

from bot.acts import answer_clip, approve_batch
from bot.acts.checklist import local_today
from bot.acts.find_athlete import team_for
from bot.acts.set_group import GROUPS_MOST, groups_of, known_group
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_groups, coach_roster
from bot.wording.coach_roster import Need, RosterFacts
from bot.wording.pages import paged
from bot.wording.tongue import Tongue
from scheduler.pain.values import Level
from storage.queries import care, people, training
from storage.records.care import Alert
from storage.records.people import Athlete, AthleteState, Person

LOOKED_BACK = timedelta(days=60)  # [days] ch: who is silent for longer is silent all the same
SILENT_AFTER = timedelta(days=3)  # [days] ch: three days of silence go to the coach
KEPT_WINDOW = timedelta(weeks=4)  # [weeks] ch: the checklist's own span
BUTTONS_A_ROW = 2  # [buttons] ch: a name must stay readable on a narrow phone

Line = tuple[str, RosterFacts | None]


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/roster`` or ``/roster GROUP``."""
    return show(turn, coach, group=text)


def tapped(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The button that leads back to the roster, or to one group of it."""
    return show(turn, coach, group=str(arguments.get("group", "")))


def show(turn: Turn, coach: Person, *, group: str = "") -> Outcome:
    """Send the roster or one group of it, in as many messages as it needs."""
    tongue = turn.tongue(coach)
    groups = groups_of(team_for(turn, coach))
    wanted = known_group(group, groups)
    if group.strip() and wanted is None:
        turn.say(coach, coach_groups.unknown(tongue, asked=group.strip(), groups=groups))
        return Outcome.NOT_UNDERSTOOD
    facts = [one for one in roster_of(turn, coach) if wanted is None or one.group == wanted]
    if not facts:
        turn.say(coach, coach_roster.nobody_yet(tongue))
        return Outcome.COMMAND
    pages = paged(_lines(tongue, facts), text_of=lambda line: line[0])
    below = [
        *approve_batch.offer(turn, coach, among=[one.athlete_id for one in facts]),
        *_group_taps(tongue, [one for one in groups if one != wanted]),
    ]
    for page in pages:
        text = "\n".join(text for text, _ in page).strip("\n")
        taps = [*_taps(turn, coach, page), *(below if page is pages[-1] else [])]
        turn.say(coach, text, taps=taps)
    return Outcome.COMMAND


def _lines(tongue: Tongue, facts: Sequence[RosterFacts]) -> list[Line]:
    """Write who needs something, most pressing first, then the rest in groups."""
    lines: list[Line] = [(coach_roster.summary(tongue, facts), None)]
    for need in Need:
        alike = [one for one in facts if one.need is need]
        if not alike:
            continue
        lines += [("", None), (coach_roster.heading(tongue, need, len(alike)), None)]
        if need is Need.NOTHING:
            lines += _in_groups(tongue, alike)
        else:
            lines += [(coach_roster.line(tongue, one), one) for one in alike]
    return lines


def _in_groups(tongue: Tongue, facts: Sequence[RosterFacts]) -> list[Line]:
    """Write those who need nothing under their groups; those in none come last."""
    names = sorted({one.group for one in facts}, key=lambda name: (not name, name.casefold()))
    lines: list[Line] = []
    for name in names:
        alike = [one for one in facts if one.group == name]
        if names != [""]:
            lines.append((coach_groups.heading(tongue, group=name, count=len(alike)), None))
        lines += [(coach_roster.line(tongue, one), one) for one in alike]
    return lines


def _group_taps(tongue: Tongue, groups: Sequence[str]) -> list[list[Tap]]:
    taps = [
        Tap(coach_groups.group_label(tongue, group), "coach.roster", {"group": group})
        for group in groups[:GROUPS_MOST]
    ]
    return [taps[at : at + BUTTONS_A_ROW] for at in range(0, len(taps), BUTTONS_A_ROW)]


def _taps(turn: Turn, coach: Person, page: Sequence[Line]) -> list[list[Tap]]:
    needy = [one for _, one in page if one is not None and one.need <= Need.OUT_OF_REACH]
    taps = [
        Tap(
            coach_roster.open_label(turn.tongue(coach), one.name),
            "coach.who",
            {"athlete": one.athlete_id},
        )
        for one in needy
    ]
    return [taps[at : at + BUTTONS_A_ROW] for at in range(0, len(taps), BUTTONS_A_ROW)]


def roster_of(turn: Turn, coach: Person) -> list[RosterFacts]:
    """Return everybody, who needs most first, then by name."""
    pairs = team_for(turn, coach)
    ids = [person.id for person, _ in pairs]
    today = local_today(turn, coach)
    chats = [person.chat_id for person, _ in pairs if person.chat_id is not None]
    alerts = _by_athlete(care.alerts_of(turn.tx, ids))
    waiting = _by_athlete(care.unanswered(turn.tx, ids))
    decisions = _by_athlete(care.proposals(turn.tx, ids))
    counts = training.kept_of_sent(turn.tx, ids, first=today - KEPT_WINDOW, last=today)
    heard = people.last_heard(turn.tx, chats)
    clips = answer_clip.waiting_by_athlete(turn, ids)
    coming = training.next_planned(turn.tx, ids, since=today)
    sent = training.sent_unanswered(turn.tx, ids, since=turn.now - LOOKED_BACK)
    found = [
        RosterFacts(
            athlete_id=person.id,
            name=person.name,
            stage=athlete.stage,
            state=athlete.state.value,
            kept=counts.get(person.id, (0, 0))[0],
            sent=counts.get(person.id, (0, 0))[1],
            decisions=len(decisions.get(person.id, [])),
            messages=len(waiting.get(person.id, [])),
            oldest_message=next((one.words for one in waiting.get(person.id, [])), ""),
            clips=clips.get(person.id, 0),
            silent=silence(turn, person, athlete, heard=heard, sent=sent),
            is_blocked=person.is_blocked,
            waits_for_coach=athlete.state is AthleteState.WAITS_FOR_COACH,
            group=athlete.group_name or "",
            paused_until=athlete.paused_until,
            started_on=athlete.started_on,
            next_on=coming.get(person.id),
            **_alert_facts(turn, alerts.get(person.id, [])),
        )
        for person, athlete in pairs
    ]
    return sorted(found, key=lambda one: (one.need, -one.level, one.name.casefold()))


def silence(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    *,
    heard: Mapping[int, datetime],
    sent: Mapping[int, tuple[datetime, ...]],
) -> timedelta | None:
    """Return how long a sent session has met with nothing at all, from three days on."""
    if athlete.state is not AthleteState.TRAINING or person.chat_id is None:
        return None
    last = heard.get(person.chat_id)
    asked = [at for at in sent.get(person.id, ()) if last is None or at > last]
    if not asked:
        return None
    quiet = turn.now - asked[0]
    return quiet if quiet >= SILENT_AFTER else None


def _alert_facts(turn: Turn, alerts: Sequence[Alert]) -> dict[str, Any]:
    if not alerts:
        return {}
    return {
        "alerts": len(alerts),
        "level": max((one.level for one in alerts), default=Level.NONE),
        "alert_age": turn.now - min(one.raised_at for one in alerts),
    }


def _by_athlete(records: Sequence[Any]) -> dict[int, list[Any]]:
    found: dict[int, list[Any]] = {}
    for record in records:
        found.setdefault(record.athlete_id, []).append(record)
    return found
