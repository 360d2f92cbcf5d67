"""``/export``: files to take along, by taps; of oneself, of an athlete, or of the team."""

from collections.abc import Mapping
from typing import Any

from bot.acts import find_athlete, handover
from bot.acts.about_athlete import about_tapped
from bot.acts.export_files import ExportFile, file_name, request
from bot.acts.find_athlete import Named, subject_of
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import exporting as words
from bot.wording import handover as handover_words
from storage.queries import care, people
from storage.records.people import Athlete, Person

OWN, OF_ATHLETE, PICKED = "export.own", "coach.export_file", "coach.export"
PAGE = "page"
ROWS = (
    (ExportFile.RESULTS, ExportFile.SESSIONS),
    (ExportFile.PAIN, ExportFile.WORDS),
    (ExportFile.SEASON, ExportFile.DATA),
)


def own(turn: Turn, person: Person, rest: str, _event: Wrote) -> Outcome:
    """``/export`` of an athlete: their own data."""
    tongue = turn.tongue(person)
    if rest.strip():
        turn.say(person, words.only_own(tongue))
        return Outcome.NOT_UNDERSTOOD
    turn.say(person, words.choose_own(tongue), taps=_taps(turn, person, OWN, {}))
    return Outcome.COMMAND


def own_file(turn: Turn, person: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """An athlete tapped one of the files."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    _send(turn, person, Named(person=person, athlete=athlete, rest=""), str(arguments["file"]))
    return Outcome.COMMAND


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/export`` of a coach: the team; ``/export NAME``: an athlete's files."""
    if text.strip():
        found = find_athlete.named(
            turn, coach, text, act=PICKED, example=words.EXAMPLE, has_rest=False
        )
        return found if isinstance(found, Outcome) else _offer(turn, coach, found)
    tongue = turn.tongue(coach)
    if not people.athletes_of(turn.tx, coach.id):
        turn.say(coach, words.no_team(tongue))
        return Outcome.COMMAND
    _put(turn, coach, ExportFile.TEAM, coach, words.team_caption(tongue))
    _note(turn, coach, None, ExportFile.TEAM.value)
    if people.athlete(turn.tx, coach.id) is not None:
        turn.say(coach, words.choose_own(tongue), taps=_taps(turn, coach, OWN, {}))
    return Outcome.COMMAND


@about_tapped
def picked(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The athlete was chosen by a button."""
    return _offer(turn, coach, found)


@about_tapped
def file_of(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """A coach tapped one of an athlete's files."""
    _send(turn, coach, found, str(arguments["file"]))
    return Outcome.COMMAND


def _offer(turn: Turn, coach: Person, named: Named) -> Outcome:
    about = {"athlete": named.person.id}
    turn.say(
        coach,
        words.choose_of(turn.tongue(coach), name=named.person.name),
        taps=_taps(turn, coach, OF_ATHLETE, about),
        subject=subject_of(named.person),
    )
    return Outcome.COMMAND


def _taps(turn: Turn, reader: Person, act: str, about: Mapping[str, Any]) -> TapRows:
    tongue = turn.tongue(reader)

    def tap(kind: ExportFile) -> Tap:
        return Tap(words.file_label(tongue, kind.value), act, {**about, "file": kind.value})

    page = Tap(handover_words.label(tongue), act, {**about, "file": PAGE})
    return [*[[tap(kind) for kind in row] for row in ROWS], [page], [tap(ExportFile.EVERYTHING)]]


def _send(turn: Turn, reader: Person, named: Named, wanted: str) -> None:
    """Send a file, and what belongs to it: data never goes without what describes it."""
    tongue, person = turn.tongue(reader), named.person
    _note(turn, reader, person, wanted)
    if wanted == PAGE:
        turn.send_file(
            reader,
            page=_page(turn, reader, person, named.athlete),
            file_name=handover.FILE_NAME,
            caption=handover_words.caption(tongue, person.name),
            subject=subject_of(person),
        )
        return
    kind = ExportFile(wanted)
    page = None
    if kind is ExportFile.EVERYTHING:
        page = _page(turn, reader, person, named.athlete)
    caption = words.caption(tongue, kind.value, name=person.name)
    _put(turn, reader, kind, person, caption, page=page)
    if kind is ExportFile.DATA:
        described = words.caption(tongue, ExportFile.SCHEMA.value, name=person.name)
        _put(turn, reader, ExportFile.SCHEMA, person, described)


def _page(turn: Turn, reader: Person, person: Person, athlete: Athlete) -> dict[str, Any]:
    page = handover.page_of(turn, person, athlete, tongue=turn.tongue(reader))
    return page.model_dump(mode="json")


def _put(
    turn: Turn,
    reader: Person,
    kind: ExportFile,
    person: Person,
    caption: str,
    *,
    page: Mapping[str, Any] | None = None,
) -> None:
    turn.send_file(
        reader,
        wanted=request(kind, person, reader),
        file_name=file_name(kind),
        caption=caption,
        page=page,
        subject=subject_of(person) if kind is not ExportFile.TEAM else None,
    )


def _note(turn: Turn, reader: Person, person: Person | None, wanted: str) -> None:
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="data.exported",
        athlete_id=person.id if person is not None else None,
        actor_id=reader.id,
        after={"file": wanted},
    )


TAPS = {OWN: own_file}
COACH_TAPS = {PICKED: picked, OF_ATHLETE: file_of}
