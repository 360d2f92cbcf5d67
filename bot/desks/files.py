"""Text files that a coach sends: the caption's command, or the open question, says what for."""

from collections.abc import Callable
from dataclasses import dataclass

from bot.acts import replace_file
from bot.desks.entry import command_in, has_role
from bot.events import SentFile
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import files
from storage import buttons
from storage.queries import people
from storage.records.media import FileKind
from storage.records.people import Person, Role

FileAct = Callable[[Turn, Person, SentFile], Outcome]


@dataclass(frozen=True)
class FileEntry:
    """A file's act, and the role that its sender must have."""

    role: Role
    act: FileAct


COMMANDS: dict[str, FileEntry] = {
    "movements": FileEntry(Role.COACH, replace_file.movements_file),
    "standards": FileEntry(Role.COACH, replace_file.standards_file),
}
"""By the command in the caption, without its slash; the act reads the rest of the caption."""

QUESTIONS: dict[str, FileEntry] = {
    replace_file.SENT[FileKind.MOVEMENTS]: FileEntry(Role.COACH, replace_file.movements_file),
    replace_file.SENT[FileKind.STANDARDS]: FileEntry(Role.COACH, replace_file.standards_file),
}
"""By the kind of the question that is open in the chat and that a file answers."""


def hear(turn: Turn, person: Person, event: SentFile) -> Outcome:
    """Hand a file to its act; what it is for is never guessed from its content.

    The caption of a forwarded file is somebody else's, so its command is not followed.
    """
    tongue = turn.tongue(person)
    entry = _entry(turn, event)
    is_athlete = people.athlete(turn.tx, person.id) is not None
    if entry is None or not has_role(person, entry.role, is_athlete=is_athlete):
        turn.say(person, files.for_nothing(tongue, name=event.name, commands=_commands(person)))
        return Outcome.NOT_UNDERSTOOD
    if event.fault is not None:
        turn.say(person, files.unreadable(tongue, name=event.name, fault=event.fault.value))
        return Outcome.NOT_UNDERSTOOD
    return entry.act(turn, person, event)


def _entry(turn: Turn, event: SentFile) -> FileEntry | None:
    named = None if event.is_forwarded else command_in(event.caption, among=COMMANDS)
    if named is not None:
        return COMMANDS[named]
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    return QUESTIONS.get(question.kind) if question is not None else None


def _commands(person: Person) -> list[str]:
    return [
        f"/{name}"
        for name, entry in COMMANDS.items()
        if has_role(person, entry.role, is_athlete=False)
    ]
