"""Inviting a whole team by a file: checked line by line, shown, and confirmed by a tap."""

from collections.abc import Mapping
from typing import Any

from bot.acts import join
from bot.acts.checklist import local_today
from bot.acts.coach_dues import CoachDue
from bot.acts.find_athlete import folded
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.reading.team_file import TeamRow, read_team
from bot.turn import Tap, Turn
from bot.wording import dates
from bot.wording import invite_file as words
from bot.wording.invite_file import FaultFacts, RowFacts
from bot.wording.pages import pages_of
from scheduler.training.values import Best
from storage.queries import care, due, people
from storage.records.people import Person

PURPOSE = "invite_team"
INVITE, LEAVE = "coach.invite_team", "coach.invite_team_not"
TOLD = "athlete.told_by_file"
LINKS_A_PAGE = 20  # [lines] ch: a page that a thumb can still copy from


def preview(turn: Turn, coach: Person, content: bytes) -> Outcome:
    """Check a file and show what it would do; wrong lines are named and left out."""
    tongue = turn.tongue(coach)
    known = [person.name for person, _ in people.athletes_of(turn.tx, coach.id)]
    library = turn.house.library.movements
    found = read_team(content, movements=library, known_names=known)
    lines = words.preview(
        tongue,
        [_shown(turn, row) for row in found.rows],
        [
            FaultFacts(one.line, one.wrong.value, one.shown, one.column, one.near, one.most)
            for one in found.faults
        ],
    )
    pages = pages_of(lines)
    for page in pages:
        is_last = page is pages[-1] and bool(found.rows)
        turn.say(coach, page, taps=_taps(turn, coach, found.rows) if is_last else ())
    return Outcome.ASKED if found.rows else Outcome.NOT_UNDERSTOOD


def _shown(turn: Turn, row: TeamRow) -> RowFacts:
    library = turn.house.library.movements
    bests = tuple(
        (library[key].name, library[key].measure, best.value, best.rung.load_kg)
        for key, best in row.bests.items()
    )
    return RowFacts(row.name, row.stage, row.group, bests)


def _taps(turn: Turn, coach: Person, rows: tuple[TeamRow, ...]) -> list[list[Tap]]:
    tongue = turn.tongue(coach)
    kept = [
        {
            "name": row.name,
            "stage": row.stage,
            "group": row.group,
            "bests": {key: best.model_dump(mode="json") for key, best in row.bests.items()},
        }
        for row in rows
    ]
    # One file is invited once, however often its button is tapped.
    about = {"rows": kept, "file": turn.house.make_token()}
    return [
        [
            Tap(words.invite_label(tongue, len(rows)), INVITE, about),
            Tap(words.leave_label(tongue), LEAVE),
        ]
    ]


def invite(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Invite those who were shown and are not on the roster since; a link in each line."""
    tongue = turn.tongue(coach)
    is_new = due.take(
        turn.tx,
        person_id=coach.id,
        kind=CoachDue.TEAM_INVITED,
        subject=str(arguments["file"]),
        due_at=turn.now,
        now=turn.now,
    )
    if not is_new:
        turn.say(coach, words.done_before(tongue))
        return Outcome.STALE_TAP
    known = {folded(person.name) for person, _ in people.athletes_of(turn.tx, coach.id)}
    rows = [row for row in arguments["rows"] if folded(str(row["name"])) not in known]
    late = [str(row["name"]) for row in arguments["rows"] if row not in rows]
    lines = [_invite_one(turn, coach, row) for row in rows]
    until = dates.day(tongue, local_today(turn, coach) + join.LINK_KEPT)
    if lines:
        head = words.links_head(tongue, count=len(lines), until=until)
        for page in pages_of([head, *lines], lines_most=LINKS_A_PAGE):
            turn.say(coach, page)
    if late:
        turn.say(coach, words.known_meanwhile(tongue, late))
    return Outcome.COMMAND


def leave(turn: Turn, coach: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Nobody is invited."""
    turn.answer_tap(coach, event.message_id, words.left(turn.tongue(coach)))
    return Outcome.COMMAND


def _invite_one(turn: Turn, coach: Person, row: Mapping[str, Any]) -> str:
    """Write one athlete down with what the coach told, and return the line with the link."""
    person, athlete = join.add_athlete(turn, coach, str(row["name"]))
    library = turn.house.library.movements
    bests = {key: Best.model_validate(best) for key, best in row["bests"].items() if key in library}
    people.change_athlete(
        turn.tx,
        person.id,
        stage=int(row["stage"]),
        group_name=str(row["group"]) or None,
        profile=athlete.profile.model_copy(update={"told_bests": bests}),
    )
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=TOLD,
        athlete_id=person.id,
        actor_id=coach.id,
        before={"stage": athlete.stage},
        after={"stage": int(row["stage"]), "group": row["group"], "bests": row["bests"]},
    )
    url = join.invite(turn, coach, person)
    return words.link(turn.tongue(coach), name=person.name, url=url)


TAPS = {INVITE: invite, LEAVE: leave}
