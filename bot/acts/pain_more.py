"""What is still asked of a pain told during the first questions: answered, or put once more."""

from bot.acts import pain_go_on, pain_signs
from bot.acts.intake_answers import NONE_WORDS, tidy
from bot.acts.intake_resume import MORE, MORE_LIST
from bot.events import Tapped, Wrote
from bot.turn import Turn
from storage import buttons
from storage.records.people import Athlete, Person
from storage.records.wire import OpenQuestion

NONE_OF_THESE = NONE_WORDS | {
    *("none of these", "none of them", "none of those", "no none", "nothing of that"),
    *("nothing of these", "none de estas", "none de esas", "none de estos", "none de ellas"),
    *("nothing de eso", "no nothing"),
}


def open_one(turn: Turn, person: Person) -> OpenQuestion | None:
    """Return the question about a pain that waits for a tap, if one does."""
    if person.chat_id is None:
        return None
    found = buttons.open_question(turn.tx, chat_id=person.chat_id, now=turn.now)
    return found if found is not None and found.kind == MORE else None


def hear(turn: Turn, person: Person, event: Wrote, question: OpenQuestion) -> bool:
    """Take a typed "none of these"; False for anything else."""
    if event.is_edit or tidy(event.text) not in NONE_OF_THESE:
        return False
    tapped = Tapped(chat_id=event.chat_id, at=event.at, message_id=None, token="")
    about = question.subject
    if about["asked"] == MORE_LIST:
        pain_signs.list_line(turn, person, {**about, "line": ""}, tapped)
    else:
        pain_signs.sign(turn, person, {**about, "sign": ""}, tapped)
    return True


def ask_again(turn: Turn, person: Person, athlete: Athlete) -> bool:
    """Put the question once more; False where none waits."""
    question = open_one(turn, person)
    if question is None:
        return False
    about = question.subject
    pain_go_on.go_on(
        turn,
        person,
        athlete,
        about["report"],
        session_id=about.get("session"),
        signs_asked=about["asked"] == MORE_LIST,
    )
    return True
