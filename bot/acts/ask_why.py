"""The reason of a coach's change: one tap among the usual ones, or a few words."""

from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Any

from bot.acts import coach_question
from bot.acts.find_athlete import Named, subject_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_changes as words
from storage.records.people import Person

ASK = "coach.why"
A_ROW = 2  # [buttons] ch: reasons are short
PLAN_WHYS = ("goal", "technique", "equipment", "time", "variety", "safe")
"""The usual reasons of a change of the plan."""


def ask(
    turn: Turn,
    coach: Person,
    about: Person,
    *,
    act: str,
    request: Mapping[str, Any],
    text: str,
    whys: Sequence[str] = PLAN_WHYS,
) -> Outcome:
    """Ask why; whatever is answered goes on with ``act`` and the reason in its arguments.

    ``text`` is the question, ``whys`` the usual reasons that a tap gives: none where only own words
    will do. The reason comes as ``why``, and behind what else was written of the command as
    ``rest``: so a command goes on as if it had been written with its reason.
    """
    tongue = turn.tongue(coach)
    coach_question.ask(turn, coach, ASK, {**request, "act": act})
    taps = [
        Tap(words.why_label(tongue, key), act, _with(request, words.why_label(tongue, key)))
        for key in whys
    ]
    turn.say(
        coach,
        text,
        taps=[taps[at : at + A_ROW] for at in range(0, len(taps), A_ROW)],
        subject=subject_of(about),
    )
    return Outcome.ASKED


def ask_in_words(
    turn: Turn, coach: Person, named: Named, *, act: str, what: str, rest: str = ""
) -> Outcome:
    """Ask why one athlete's ``what`` is changed, where only own words will do."""
    text = words.ask_in_words(turn.tongue(coach), what=what)
    request = {"athlete": named.person.id, "rest": rest}
    return ask(turn, coach, named.person, act=act, request=request, text=text, whys=())


def _with(request: Mapping[str, Any], why: str) -> dict[str, Any]:
    rest = f"{request.get('rest', '')} {why}".strip()
    return {**request, "why": why, "rest": rest}


def answered(
    turn: Turn,
    coach: Person,
    about: Mapping[str, Any],
    text: str,
    *,
    waited: timedelta,
    taps: Mapping[str, Any],
) -> Outcome:
    """The reason came as the next text: go on as its button would; one that comes late is not it.

    ``taps`` is the desk's table, by act.
    """
    coach_question.close(turn, coach)
    request = {key: one for key, one in about.items() if key != "act"}
    why = text.strip() if waited <= coach_question.FRESH else ""
    event = Tapped(chat_id=coach.chat_id or 0, at=turn.now, message_id=None, token="")
    found: Outcome = taps[str(about["act"])](turn, coach, _with(request, why), event)
    return found
