"""What may be asked of a coach, so that the next text, picture or file is the answer."""

from bot.acts import (
    answer_clip,
    ask_why,
    clear_pain,
    replace_file,
    review,
    set_group,
    tell_athlete,
)
from bot.events import SentMedia, Wrote
from bot.turn import Turn
from storage import buttons
from storage.records.wire import OpenQuestion

ASKS = frozenset(
    {
        tell_athlete.WRITE,
        clear_pain.DAY,
        ask_why.ASK,
        set_group.ASK,
        review.ASK,
        answer_clip.WORDS,
        replace_file.WHY,
    }
)


def question_in(turn: Turn, event: Wrote | SentMedia) -> OpenQuestion | None:
    """Return the question of this desk that is open in the chat."""
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    return question if question is not None and question.kind in ASKS else None
