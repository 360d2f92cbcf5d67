"""A file that a coach sends: what it may be for, how big it may be, and where it goes then."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import PurePath

from bot.acts import invite_team, replace_file
from bot.events import FileArrived, SentMedia
from bot.outcomes import Outcome
from bot.reading.captions import command_in
from bot.turn import Turn
from bot.wording import files, files_in_force
from bot.wording import invite_file as words
from storage import buttons
from storage.records.media import FileKind
from storage.records.people import Person

TABLE_KB_MOST = 200  # [kB] ch: a table of two hundred lines is a tenth of it
OWN_FILE_KB_MOST = 200  # [kB] ch: the largest has 30; read in the loop, measured 4 to 8 ms a kB
TABLES = frozenset({".csv", ".tsv", ".txt"})
OWN_FILES = frozenset({".yaml", ".yml"})


def _preview(turn: Turn, coach: Person, event: FileArrived) -> Outcome:
    return invite_team.preview(turn, coach, event.content or b"")


@dataclass(frozen=True)
class Purpose:
    """What a file may be for: how large it may be [kB], and the act that reads it."""

    kb_most: int
    read: Callable[[Turn, Person, FileArrived], Outcome]


PURPOSES: Mapping[str, Purpose] = {
    invite_team.PURPOSE: Purpose(TABLE_KB_MOST, _preview),
    FileKind.MOVEMENTS.value: Purpose(OWN_FILE_KB_MOST, replace_file.movements_file),
    FileKind.STANDARDS.value: Purpose(OWN_FILE_KB_MOST, replace_file.standards_file),
}
COMMANDS: Mapping[str, str] = {kind.value: kind.value for kind in FileKind}
"""What a file is for, by the command in its caption, without the slash."""
QUESTIONS: Mapping[str, str] = {asked: kind.value for kind, asked in replace_file.SENT.items()}
"""What a file without one is for, by the question that is open in the chat."""


def names_command(event: SentMedia) -> bool:
    """Tell whether the caption says what the file is for; a forwarded one is somebody else's."""
    return event.file is not None and _commanded(event) is not None


def is_for_coach(turn: Turn, event: SentMedia) -> bool:
    """Tell whether an act of the coach reads such a file."""
    return names_command(event) or _purpose_of(turn, event) is not None


def ask(turn: Turn, coach: Person, event: SentMedia) -> Outcome:
    """Have the file fetched, unless it is too big or of no use; what for is never guessed."""
    file, key = event.file, _purpose_of(turn, event)
    if file is None or key is None:
        turn.say(coach, _for_nothing(turn, coach, event))
        return Outcome.NOT_UNDERSTOOD
    purpose = PURPOSES[key]
    if (file.size_bytes or 0) > 1000 * purpose.kb_most:
        turn.say(coach, _too_big(turn, coach, key, name=file.name))
        return Outcome.NOT_UNDERSTOOD
    turn.fetch(
        coach,
        file_id=file.file_id,
        name=file.name,
        purpose=key,
        bytes_most=1000 * purpose.kb_most,
        words=_words(event),
    )
    return Outcome.COMMAND


def arrived(turn: Turn, coach: Person, event: FileArrived) -> Outcome:
    """Hand a fetched file to the act that reads it; say what is to be done where it failed."""
    purpose = PURPOSES.get(event.purpose)
    if event.content is None or purpose is None:
        is_big = event.fault == "too_big"
        tongue = turn.tongue(coach)
        turn.say(
            coach,
            _too_big(turn, coach, event.purpose, name=event.name)
            if is_big
            else words.not_there(tongue),
        )
        return Outcome.NOT_UNDERSTOOD
    return purpose.read(turn, coach, event)


def _purpose_of(turn: Turn, event: SentMedia) -> str | None:
    """Return what a file is for: by its ending, and among the coach's own by caption or question.

    The name's ending decides: what a platform says of a file's kind differs by the sender's
    machine, and a spreadsheet's CSV often comes as something else.
    """
    ending = _ending(event)
    commanded = _commanded(event)
    if ending in TABLES and commanded is None:
        return invite_team.PURPOSE
    if ending not in OWN_FILES:
        return None
    if commanded is not None:
        return commanded
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    return QUESTIONS.get(question.kind) if question is not None else None


def _commanded(event: SentMedia) -> str | None:
    named = None if event.is_forwarded else command_in(event.caption, among=COMMANDS)
    return COMMANDS[named] if named is not None else None


def _words(event: SentMedia) -> str:
    """Return the coach's own words under a file, without the command."""
    if event.is_forwarded:
        return ""
    caption = event.caption.strip()
    return caption.partition(" ")[2].strip() if caption.startswith("/") else caption


def _ending(event: SentMedia) -> str:
    return PurePath(event.file.name).suffix.lower() if event.file else ""


def _for_nothing(turn: Turn, coach: Person, event: SentMedia) -> str:
    tongue, name = turn.tongue(coach), event.file.name if event.file else ""
    if _commanded(event) is not None:
        return files_in_force.not_yaml(tongue, name=name)
    if _ending(event) in OWN_FILES:
        return files.for_nothing(tongue, name=name, commands=[f"/{one}" for one in COMMANDS])
    return words.wrong_type(tongue, name=name)


def _too_big(turn: Turn, coach: Person, purpose: str, *, name: str) -> str:
    tongue = turn.tongue(coach)
    if purpose == invite_team.PURPOSE:
        return words.too_big(tongue, most_kb=TABLE_KB_MOST)
    return files.too_big(tongue, name=name, most_kb=OWN_FILE_KB_MOST)
