"""A file that a coach sends: what it may be for, how big it may be, and where it goes then."""

from collections.abc import Callable, Mapping
from pathlib import PurePath

from bot.acts import invite_team
from bot.events import FileArrived, SentMedia
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import invite_file as words
from storage.records.people import Person

FILE_KB_MOST = 200  # [kB] ch: a table of two hundred lines is a tenth of it
PURPOSES: Mapping[str, str] = {
    ".csv": invite_team.PURPOSE,
    ".tsv": invite_team.PURPOSE,
    ".txt": invite_team.PURPOSE,
}
"""What a file is for, by the ending of its name."""
READERS: Mapping[str, Callable[[Turn, Person, bytes], Outcome]] = {
    invite_team.PURPOSE: invite_team.preview,
}


def purpose_of(event: SentMedia) -> str | None:
    """Return what a file is for; None for anything that no act of the coach reads."""
    return PURPOSES.get(PurePath(event.file.name).suffix.lower()) if event.file else None


def ask(turn: Turn, coach: Person, event: SentMedia) -> Outcome:
    """Have the file fetched, unless it is too big or of no use."""
    tongue, file, purpose = turn.tongue(coach), event.file, purpose_of(event)
    if file is None or purpose is None:
        turn.say(coach, words.wrong_type(tongue, name=file.name if file else ""))
        return Outcome.NOT_UNDERSTOOD
    if (file.size_bytes or 0) > 1000 * FILE_KB_MOST:
        turn.say(coach, words.too_big(tongue, most_kb=FILE_KB_MOST))
        return Outcome.NOT_UNDERSTOOD
    turn.fetch(coach, file_id=file.file_id, name=file.name, purpose=purpose)
    return Outcome.COMMAND


def arrived(turn: Turn, coach: Person, event: FileArrived) -> Outcome:
    """Hand a fetched file to the act that reads it; say what is to be done where it failed."""
    tongue, read = turn.tongue(coach), READERS.get(event.purpose)
    if event.content is None or read is None:
        is_big = event.fault == "too_big"
        say = words.too_big(tongue, most_kb=FILE_KB_MOST) if is_big else words.not_there(tongue)
        turn.say(coach, say)
        return Outcome.NOT_UNDERSTOOD
    return read(turn, coach, event.content)
