"""A coach who sends files: movements with one entry more, what is in force, its versions."""

from itertools import count
from typing import Any

from bot.acts import in_force
from bot.events import FileArrived, Media, SentFile, SentMedia
from bot.outcomes import Outcome
from scheduler.catalogue.demand_lint import implied_demands
from scheduler.catalogue.library import Library, packaged_texts
from scheduler.catalogue.values import Movement
from scheduler.training.rulebook import Rulebook
from storage.queries import file_versions
from storage.records.media import FileKind, FileVersion
from storage.records.people import Person
from storage.records.wire import Operation
from tests.conversation.athlete_stage import COACH_CHAT, Stage

FILE = "vertical_push.yaml"
_IDS = count(40_000)


def announce(
    stage: Stage,
    caption: str,
    *,
    name: str = FILE,
    size_bytes: int = 100,
    is_forwarded: bool = False,
    chat_id: int = COACH_CHAT,
) -> Outcome:
    """Send a file as the platform tells of it: its name and size, and no content yet."""
    return stage.handle(
        SentMedia(
            chat_id=chat_id,
            at=stage.now,
            message_id=next(_IDS),
            media=Media.DOCUMENT,
            caption=caption,
            is_forwarded=is_forwarded,
            file=SentFile(file_id="f1", name=name, size_bytes=size_bytes),
        )
    )


def fetched(stage: Stage) -> dict[str, Any]:
    """Return what the newest fetch asks for."""
    asked = [row for row in stage.rows(COACH_CHAT) if row.operation == Operation.FETCH.value]
    return dict(asked[-1].payload)


def arrive(stage: Stage, content: bytes | None, fault: str = "") -> Outcome:
    """Let the file arrive that was asked for last."""
    asked = fetched(stage)
    about = {key: asked[key] for key in ("name", "purpose", "words")}
    return stage.handle(
        FileArrived(chat_id=COACH_CHAT, at=stage.now, content=content, fault=fault, **about)
    )


def send(stage: Stage, text: str, caption: str, *, name: str = FILE, **facts: Any) -> Outcome:
    outcome = announce(stage, caption, name=name, **facts)
    return arrive(stage, text.encode()) if outcome is Outcome.COMMAND else outcome


def without(text: str, key: str) -> str:
    """Take one entry out of a file of movements."""
    start = text.index(f"  - key: {key}\n")
    end = text.find("\n  - key: ", start)
    return text[:start] + (text[end + 1 :] if end > 0 else "")


def library_of(stage: Stage, coach: Person | None = None) -> Library:
    with stage.turn() as turn:
        return in_force.house_of(turn, (coach or stage.coach).id).library


def versions(
    stage: Stage, name: str = FILE, kind: FileKind = FileKind.MOVEMENTS
) -> tuple[FileVersion, ...]:
    with stage.turn() as turn:
        return file_versions.of_file(turn.tx, coach_id=stage.coach.id, kind=kind, name=name, most=9)


SHRUG = """
  - key: low_wall_shrug
    name: Low wall shrug
    direction: vertical_push
    chain: closed
    arm: straight
    tempo: controlled
    seconds_per_rep: 3
    measure: reps
    is_upright: true
    family: low_wall_shrug
    limiting_joint: shoulder
    demands: [overhead, wrist_extension, elbow_extension]
    position_rules: [elbows_bend]
    how_to: Lean straight arms on a wall. Push the shoulders up, then let them sink.
    common_fault: Your elbows bend as you push.
    aliases: [low shrug]
"""
ADDED = packaged_texts()[FILE].rstrip() + "\n" + SHRUG


def put(stage: Stage, text: str = ADDED, why: str = "a gentler shrug", **facts: Any) -> None:
    assert send(stage, text, f"/movements {why}", **facts) is Outcome.ASKED, stage.last(COACH_CHAT)
    assert stage.tap("Put in force", chat_id=COACH_CHAT) is Outcome.COMMAND


def rulebook_of(stage: Stage) -> Rulebook:
    with stage.turn() as turn:
        return in_force.house_of(turn, stage.coach.id).rulebook


def file_of(key: str) -> str:
    return next(name for name, text in packaged_texts().items() if f"- key: {key}\n" in text)


def less_demanding(movement: Movement) -> tuple[str, str]:
    """Return the file of a movement with only the demands that its other words imply."""
    file = file_of(movement.key)
    text = packaged_texts()[file]
    at = text.index("demands: [", text.index(f"key: {movement.key}\n"))
    kept = ", ".join(sorted(one.value for one in implied_demands(movement)))
    return file, f"{text[:at]}demands: [{kept}]{text[text.index(chr(10), at) :]}"
