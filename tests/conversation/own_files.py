"""A coach who sends files: movements with one entry more, what is in force, its versions."""

from itertools import count
from typing import Any

from bot.acts import in_force
from bot.events import SentFile
from bot.outcomes import Outcome
from scheduler.catalogue.library import Library, packaged_texts
from scheduler.training.rulebook import Rulebook
from storage.queries import file_versions
from storage.records.media import FileKind, FileVersion
from storage.records.people import Person
from tests.conversation.athlete_stage import COACH_CHAT, Stage

FILE = "vertical_push.yaml"
_IDS = count(40_000)


def send(stage: Stage, text: str, caption: str, *, name: str = FILE, **facts: Any) -> Outcome:
    return stage.handle(
        SentFile(
            chat_id=COACH_CHAT,
            at=stage.now,
            message_id=next(_IDS),
            name=name,
            text=text,
            caption=caption,
            **facts,
        )
    )


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
