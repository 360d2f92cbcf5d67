"""The coach's own movements and standards: shown as files, replaced, versioned, taken back."""

import re
from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from bot.acts import check_file, coach_question, export_files
from bot.acts.check_file import Checked, Refused
from bot.acts.export_files import RULEBOOK
from bot.events import FileArrived, Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.text_file import text_of
from bot.turn import Tap, TapRows, Turn
from bot.wording import files as file_words
from bot.wording import files_in_force as words
from scheduler.calendar.zones import zone_named
from storage.queries import care, file_drafts, file_versions, people
from storage.records.media import FileDraft, FileKind, FileVersion
from storage.records.people import Person

REPLACED = "file.replaced"
SENT = {kind: f"file.{kind.value}" for kind in FileKind}
"""The open question that a file without a caption answers."""
WHY = "file.why"
VERSIONS_MOST = 6  # [versions] ch: older ones are in the record
COPY_NUMBER = re.compile(r"\s*\(\d+\)(?=\.ya?ml$)")
"""What a phone adds to the name of a file that it already has."""


def movements(turn: Turn, coach: Person, _text: str, _event: Wrote) -> Outcome:
    """``/movements``: every file that is in force, and how to replace one."""
    return _show(turn, coach, FileKind.MOVEMENTS)


def standards(turn: Turn, coach: Person, _text: str, _event: Wrote) -> Outcome:
    """``/standards``: the numbers that are in force, and how to replace them."""
    return _show(turn, coach, FileKind.STANDARDS)


def movements_file(turn: Turn, coach: Person, event: FileArrived) -> Outcome:
    """A file of movements came."""
    return _take(turn, coach, FileKind.MOVEMENTS, event)


def standards_file(turn: Turn, coach: Person, event: FileArrived) -> Outcome:
    """A rulebook came."""
    return _take(turn, coach, FileKind.STANDARDS, event)


def _show(turn: Turn, coach: Person, kind: FileKind) -> Outcome:
    tongue, names = turn.tongue(coach), names_in_force(turn, coach, kind)
    for name in names:
        newest = _newest(turn, coach, kind, name)
        turn.send_file(
            coach,
            wanted=export_files.request_version(
                kind, name, version_id=newest.id if newest else None
            ),
            file_name=name,
            caption=_state(turn, coach, newest),
        )
    coach_question.ask(turn, coach, SENT[kind], {})
    taps = [
        [Tap(words.versions_label(tongue, name), "file.versions", _about(kind, name))]
        for name in names
        if _newest(turn, coach, kind, name) is not None
    ]
    turn.say(coach, words.how_to_replace(tongue, kind=kind.value), taps=taps)
    return Outcome.COMMAND


def names_in_force(turn: Turn, coach: Person, kind: FileKind) -> tuple[str, ...]:
    """Return the names of the files of a kind that are in force."""
    packaged = export_files.packaged(kind)
    names = dict.fromkeys(packaged)
    for one in file_versions.in_force(turn.tx, coach_id=coach.id, kind=kind):
        if one.content is not None:
            names[one.name] = None
        elif one.name not in packaged:
            names.pop(one.name, None)
    return tuple(names)


def _take(turn: Turn, coach: Person, kind: FileKind, event: FileArrived) -> Outcome:
    text = text_of(event.content or b"")
    if text is None:
        turn.say(coach, file_words.not_text(turn.tongue(coach), name=event.name))
        return Outcome.NOT_UNDERSTOOD
    name = RULEBOOK if kind is FileKind.STANDARDS else _plain_name(event.name)
    return propose(turn, coach, kind, name=name, content=text, why=event.words)


def _plain_name(name: str) -> str:
    plain = COPY_NUMBER.sub("", name.strip().lower())
    return plain.removesuffix(".yml") + ".yaml" if plain.endswith(".yml") else plain


def propose(
    turn: Turn, coach: Person, kind: FileKind, *, name: str, content: str | None, why: str
) -> Outcome:
    """Read a file, show what it changes, and ask for the tap or for the reason."""
    meaning = check_file.read(turn, coach, kind, name=name, content=content)
    if isinstance(meaning, Refused):
        return _refuse(turn, coach, name, meaning)
    checked = check_file.check(turn, coach, kind, name=name, meaning=meaning)
    if isinstance(checked, Refused):
        return _refuse(turn, coach, name, checked)
    if not checked.lines:
        turn.say(coach, words.no_difference(turn.tongue(coach), name=name))
        return Outcome.NOT_UNDERSTOOD
    draft_id = turn.house.make_token()
    file_drafts.keep(
        turn.tx,
        draft_id=draft_id,
        coach_id=coach.id,
        kind=kind,
        name=name,
        content=content,
        meaning=meaning,
        base_id=file_versions.newest_id(turn.tx),
        at=turn.now,
    )
    return _show_draft(turn, coach, kind, name, checked, pending={"draft": draft_id, "why": why})


def _refuse(turn: Turn, coach: Person, name: str, refused: Refused) -> Outcome:
    turn.say(coach, words.refused(turn.tongue(coach), name=name, problems=refused.problems))
    return Outcome.NOT_UNDERSTOOD


def _show_draft(
    turn: Turn,
    coach: Person,
    kind: FileKind,
    name: str,
    checked: Checked,
    *,
    pending: Mapping[str, str],
) -> Outcome:
    tongue, has_reason = turn.tongue(coach), bool(pending["why"])
    shown = words.difference(
        tongue,
        name=name,
        lines=checked.lines,
        concerned=checked.concerned,
        has_reason=has_reason,
        is_numbers=kind is FileKind.STANDARDS,
    )
    not_now = Tap(words.not_now_label(tongue), "file.not_now")
    if has_reason:
        put = Tap(words.put_in_force_label(tongue), "file.confirm", pending)
        turn.say(coach, shown, taps=[[put, not_now]])
    else:
        coach_question.ask(turn, coach, WHY, pending)
        turn.say(coach, shown, taps=[[not_now]])
    return Outcome.ASKED


def hear_why(
    turn: Turn, coach: Person, about: Mapping[str, Any], text: str, *, waited: timedelta
) -> Outcome:
    """The reason came: it puts the file in force; long after, the tap is asked for first."""
    coach_question.close(turn, coach)
    draft = _draft(turn, coach, about)
    if draft is None:
        return Outcome.STALE_TAP
    if waited <= coach_question.FRESH:
        return confirm(turn, coach, draft, why=text.strip())
    return _again(turn, coach, draft, why=text.strip())


def confirmed(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The tap that puts a file in force."""
    draft = _draft(turn, coach, arguments)
    if draft is None:
        return Outcome.STALE_TAP
    return confirm(turn, coach, draft, why=str(arguments["why"]))


def _draft(turn: Turn, coach: Person, about: Mapping[str, Any]) -> FileDraft | None:
    """Return the file that a button or a question is about; say so where it is kept no more."""
    draft = file_drafts.draft(turn.tx, str(about.get("draft", "")), coach_id=coach.id)
    if draft is None:
        turn.say(coach, words.kept_no_more(turn.tongue(coach)))
    return draft


def _again(turn: Turn, coach: Person, draft: FileDraft, *, why: str) -> Outcome:
    return propose(turn, coach, draft.kind, name=draft.name, content=draft.content, why=why)


def confirm(turn: Turn, coach: Person, draft: FileDraft, *, why: str) -> Outcome:
    """Put a file in force, on record, unless something was replaced since it was shown.

    It is not read again, but checked again: who trains may have been hurt meanwhile.
    """
    tongue, kind, name = turn.tongue(coach), draft.kind, draft.name
    if draft.base_id != file_versions.newest_id(turn.tx):
        # What was shown is no longer what would change: look at it again.
        return _again(turn, coach, draft, why=why)
    checked = check_file.check(turn, coach, kind, name=name, meaning=draft.meaning)
    if isinstance(checked, Refused):
        return _refuse(turn, coach, name, checked)
    before = _newest(turn, coach, kind, name)
    now = file_versions.add(
        turn.tx,
        coach_id=coach.id,
        kind=kind,
        name=name,
        content=draft.content,
        meaning=draft.meaning,
        words=why,
        by_id=coach.id,
        at=turn.now,
    )
    file_drafts.forget(turn.tx, draft.id)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=REPLACED,
        athlete_id=None,
        actor_id=coach.id,
        words=now.words,
        before={"version": before.id if before else None},
        after={"version": now.id, "kind": kind.value, "name": name},
    )
    turn.say(
        coach,
        words.in_force(tongue, name=name),
        taps=[[Tap(words.versions_label(tongue, name), "file.versions", _about(kind, name))]],
    )
    return Outcome.COMMAND


def versions(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Show the versions of a file; a button each leads back to an earlier one."""
    tongue, kind, name = turn.tongue(coach), FileKind(arguments["kind"]), str(arguments["name"])
    found = file_versions.of_file(
        turn.tx, coach_id=coach.id, kind=kind, name=name, most=VERSIONS_MOST
    )
    lines = [_state(turn, coach, one) for one in found]
    turn.say(
        coach,
        words.versions(tongue, name=name, lines=lines),
        taps=_back_taps(turn, coach, kind, name, found),
    )
    return Outcome.COMMAND


def _back_taps(
    turn: Turn, coach: Person, kind: FileKind, name: str, found: tuple[FileVersion, ...]
) -> TapRows:
    tongue = turn.tongue(coach)
    earlier = [
        Tap(
            words.back_to_label(tongue, at=_local(coach, one.made_at)),
            "file.back",
            {**_about(kind, name), "version": one.id},
        )
        for one in found[1:]
    ]
    packaged = Tap(
        words.back_to_packaged_label(tongue), "file.back", {**_about(kind, name), "version": 0}
    )
    return [[tap] for tap in (*earlier, packaged)]


def take_back(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Check an earlier version like any other file, show what it changes, ask for the tap."""
    tongue, kind, name = turn.tongue(coach), FileKind(arguments["kind"]), str(arguments["name"])
    earlier = file_versions.version(turn.tx, int(arguments["version"]))
    if earlier is not None and earlier.coach_id != coach.id:
        return Outcome.STALE_TAP
    content = earlier.content if earlier is not None else None
    at = _local(coach, earlier.made_at) if earlier is not None else None
    why = words.taken_back(tongue, at=at)
    return propose(turn, coach, kind, name=name, content=content, why=why)


def _newest(turn: Turn, coach: Person, kind: FileKind, name: str) -> FileVersion | None:
    found = file_versions.of_file(turn.tx, coach_id=coach.id, kind=kind, name=name, most=1)
    return found[0] if found else None


def _state(turn: Turn, coach: Person, version: FileVersion | None) -> str:
    tongue = turn.tongue(coach)
    if version is None:
        return words.as_packaged(tongue)
    return words.version(
        tongue,
        at=_local(coach, version.made_at),
        who=people.person(turn.tx, version.made_by_id).name,
        why=version.words,
    )


def not_now(turn: Turn, coach: Person, _arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """Leave everything as it is."""
    coach_question.close(turn, coach)
    turn.answer_tap(coach, event.message_id, words.left_as_it_is(turn.tongue(coach)))
    return Outcome.COMMAND


def _local(coach: Person, at: datetime) -> datetime:
    return at.astimezone(zone_named(coach.zone))


def _about(kind: FileKind, name: str) -> dict[str, Any]:
    return {"kind": kind.value, "name": name}


TAPS = {
    "file.confirm": confirmed,
    "file.not_now": not_now,
    "file.versions": versions,
    "file.back": take_back,
}
