"""Read a reply: text and context in, a reading out. Whatever is unclear, the pain is kept."""

from collections.abc import Mapping, Sequence
from typing import Any

from bot.reading.absences import read_absence
from bot.reading.activities import find_activities
from bot.reading.answers import read_answer
from bot.reading.bare_numbers import by_bare_numbers
from bot.reading.clauses import GAP
from bot.reading.corrections import Past, read_correction
from bot.reading.days import find_day
from bot.reading.effort import find_effort, find_reserve
from bot.reading.examples import example_reply
from bot.reading.failures import read_failure
from bot.reading.known import Expects, ReadingContext, Reserve
from bot.reading.lone_figures import decided, lone_claim
from bot.reading.marking import known_items, tokenise
from bot.reading.minutes_at_hand import tells_minutes_at_hand
from bot.reading.other_languages import other_language
from bot.reading.pain import find_pain
from bot.reading.results import with_reserve
from bot.reading.sentences import (
    begins_like_a_question,
    has_strange_words,
    is_about_something_else,
    without_cheers,
    without_idle_buts,
    without_plans,
    without_questions,
)
from bot.reading.sessions import in_first, which_day
from bot.reading.tokens import Token
from bot.reading.values import (
    Activity,
    Asked,
    CantToday,
    Correction,
    NotUnderstood,
    OtherTraining,
    PainMention,
    PassedOn,
    PassedWhy,
    QuestionCode,
    Reading,
    Recorded,
    SessionNow,
    Told,
)
from bot.reading.vocabulary import READ_IN_FULL
from bot.reading.words import FIGURES, Mark
from scheduler.catalogue.values import Sides

MOST_TOKENS = 400  # [tokens] CH: a longer message is a letter, not a reply
MOST_UNREAD = 8  # [words] CH: figures among more words than this are confirmed first
SILENT = frozenset(
    {
        Mark.COMMA,
        Mark.STOP_SIGN,
        Mark.LINE,
        Mark.FILLER,
        Mark.SORRY,
        Mark.QUESTION,
        Mark.DASH,
        Mark.SLASH,
        Mark.AND,
        Mark.PLUS,
        Mark.FINE,
        Mark.AT,
    }
)
"""Marks that say nothing when they stand alone."""


def read(text: str, context: ReadingContext) -> Reading:
    """Return the one reading of a reply, in the athlete's language or in the one it is written in.

    What is in neither English nor Spanish is recorded only where figures and the words beside
    them are unmistakable; its pain is kept, and anything else goes to the coach.
    """
    reading = by_bare_numbers(text, context, _read(text, context), _read)
    if context.language not in READ_IN_FULL or not reading.unread:
        return reading
    language = other_language(text[: 20 * MOST_TOKENS])
    if language is None:
        return reading
    other = _read(text, context.model_copy(update={"language": language}))
    if not isinstance(other, PassedOn):
        return other
    pains = reading.pains or other.pains
    return other.model_copy(update={"pains": pains, "activities": reading.activities})


def _read(text: str, context: ReadingContext) -> Reading:
    """Return the one reading of a reply.

    The order is that of care: pain is taken out first and kept by every reading; then other
    training, effort and what was left, so that none of them is taken for a result; then
    corrections, an absence, the answer to the open question, and the results.
    """
    tokens: Sequence[Token] = tokenise(text[: 20 * MOST_TOKENS], context)
    if len(tokens) > MOST_TOKENS or len(text) > 20 * MOST_TOKENS:
        return PassedOn(pains=_pains_of_a_letter(tokens, context), why=PassedWhy.TOO_LONG)
    pains, tokens = find_pain(tokens, context)
    tokens, has_question, is_doubtful = without_questions(tokens)
    tokens = without_cheers(without_plans(without_idle_buts(tokens)))
    activities, tokens = find_activities(tokens)
    effort, tokens = find_effort(tokens)
    activities, effort = _effort_of_its_own(activities, effort, tokens)
    beside: dict[str, Any] = {"pains": pains, "activities": activities, "effort": effort}
    beside |= {"unread": _unread(tokens), "asks_coach": has_question}
    failed = read_failure(text, context, beside) if not pains else None
    if failed is not None:
        return failed
    if tells_minutes_at_hand(text, context):
        return PassedOn(**{**beside, "asks_coach": True}, why=PassedWhy.A_QUESTION)
    reading = (
        _asked_for(tokens, context, beside)
        or read_absence(tokens, context, beside)
        or _answer(tokens, context, beside)
        or _results(tokens, context, beside)
        or _remainder(tokens, context, beside)
    )
    if not isinstance(reading, Recorded | CantToday | Correction | Told):
        away = read_absence(tokens, context, beside, may_have_figures=True)
        reading = away or reading
    if context.language not in READ_IN_FULL and _has_words(tokens):
        return PassedOn(**beside, why=PassedWhy.OTHER_LANGUAGE, language=context.language)
    tokens, _ = _take_reserves(tokens, context)
    return _doubted(reading, tokens, beside, is_doubtful=is_doubtful)


def _pains_of_a_letter(tokens: Sequence[Token], context: ReadingContext) -> tuple[PainMention, ...]:
    """Find the pains of a long message a stretch at a time, each once: no work without bound."""
    pains: dict[PainMention, None] = {}
    for start in range(0, len(tokens), MOST_TOKENS):
        found, _ = find_pain(tokens[start : start + MOST_TOKENS], context)
        pains |= dict.fromkeys(found)
    return tuple(pains)


def _doubted(
    reading: Reading, tokens: Sequence[Token], beside: Mapping[str, Any], *, is_doubtful: bool
) -> Reading:
    """Ask first where a question mark or strange words make results doubtful."""
    if not isinstance(reading, Recorded):
        return reading
    figures = any(not s.is_as_planned for item in reading.items for s in item.sets)
    _, undated = find_day(tokens, reading.day)
    strange = has_strange_words(undated) if figures else is_about_something_else(undated)
    if is_doubtful or strange or (figures and begins_like_a_question(tokens)):
        kept = reading.model_copy(update={"pains": (), "activities": (), "unread": ""})
        return Asked(**beside, question=QuestionCode.IS_THIS_MEANT, options=(kept,))
    return reading


def _effort_of_its_own(
    activities: tuple[Activity, ...], effort: float | None, tokens: Sequence[Token]
) -> tuple[tuple[Activity, ...], float | None]:
    """Give the effort to the one activity where nothing else was told: "climbed 2 h. 7/10"."""
    if len(activities) != 1 or any(token.mark in FIGURES - {Mark.RATING} for token in tokens):
        return activities, effort
    if activities[0].effort is not None or effort is None:
        return activities, effort
    return (activities[0].model_copy(update={"effort": effort}),), None


def _has_words(tokens: Sequence[Token]) -> bool:
    return any(token.mark is Mark.WORD for token in tokens)


def _unread(tokens: Sequence[Token]) -> str:
    return " ".join(token.text for token in tokens if token.mark in {Mark.WORD, Mark.CHAT})


def _asked_for(
    tokens: Sequence[Token], context: ReadingContext, beside: Mapping[str, Any]
) -> Reading | None:
    """Read a wish for the session now, and corrections of the last results."""
    marks = {token.mark for token in tokens}
    if Mark.NOW in marks and not marks & (FIGURES | {Mark.CANT, Mark.ITEM, Mark.DONE, Mark.NOT}):
        return SessionNow(**{**beside, "asks_coach": False})
    found = read_correction(tokens, _past(context))
    if isinstance(found, NotUnderstood):
        return NotUnderstood(
            **beside, example=example_reply(context.session, language=context.language)
        )
    if isinstance(found, Asked):
        return found.model_copy(update=dict(beside))
    return found.model_copy(update=dict(beside)) if found else None


def _past(context: ReadingContext) -> Past:
    items = known_items(context)
    session = context.session
    return Past(
        last=context.last,
        earlier=context.earlier,
        items=items,
        asked=next((item for item in items if item.ref == context.asked_ref), None),
        session_ref=session.ref if session else "",
        day=session.day if session else context.local_date,
        pound=context.unit == "lb",
    )


def _answer(
    tokens: Sequence[Token], context: ReadingContext, beside: Mapping[str, Any]
) -> Told | Asked | None:
    if context.question is None:
        return None
    ref = context.question.item_ref
    item = next((one for one in known_items(context) if one.ref == ref), None)
    expects = context.question.expects
    if expects is Expects.EFFORT and beside["effort"] is not None:
        return None
    answer = read_answer(tokens, context.question, item)
    if isinstance(answer, Asked):
        return answer.model_copy(update=dict(beside))
    if not answer:
        return None
    if beside["pains"] and "pains" in answer and context.question.site is None:
        return Told(**{**beside, "pains": _with_lone_score(beside["pains"], answer["pains"])})
    return Told(**{**beside, **answer, "pains": (*beside["pains"], *answer.get("pains", ()))})


def _with_lone_score(
    pains: tuple[PainMention, ...], answer: tuple[PainMention, ...]
) -> tuple[PainMention, ...]:
    """Give the figure to the one named pain that has none: no second pain is invented."""
    open_ones = [pain for pain in pains if pain.score is None]
    score = answer[0].score
    if len(open_ones) != 1 or not score:
        return pains
    told = open_ones[0].model_copy(update={"score": score, "must_ask": answer[0].must_ask})
    return tuple(told if pain is open_ones[0] else pain for pain in pains)


def _results(
    tokens: Sequence[Token], context: ReadingContext, beside: Mapping[str, Any]
) -> Reading | None:
    """Read the results; a lone figure may be one of them or something else."""
    tokens, reserves = _take_reserves(tokens, context)
    as_sets = _as_sets(tokens, reserves, context, beside)
    claim = lone_claim(tokens, beside)
    if claim is None:
        return as_sets
    otherwise = _as_sets(claim.rest, reserves, context, {**beside, **claim.adds})
    return decided(as_sets, otherwise, claim, beside)


def _as_sets(
    tokens: Sequence[Token],
    reserves: Sequence[tuple[frozenset[str], Reserve]],
    context: ReadingContext,
    beside: Mapping[str, Any],
) -> Reading | None:
    """Read the results for the session in question or that of the named day."""
    day, tokens = find_day(tokens, context.local_date)
    sessions = [s for s in (context.session, *context.others) if s is not None]
    chosen = [session for session in sessions if day is None or session.day == day]
    if not chosen:
        return which_day(tokens, sessions, context, beside) or _told(tokens, beside, reserves)
    found, session = in_first(tokens, chosen, context)
    if found is None:
        return _told(tokens, beside, reserves)
    if session is not chosen[0] and isinstance(found, Recorded):
        return Asked(**beside, question=QuestionCode.WHICH_DAY, options=(found,))
    return _kept(found, reserves, beside)


def _take_reserves(
    tokens: Sequence[Token], context: ReadingContext
) -> tuple[list[Token], list[tuple[frozenset[str], Reserve]]]:
    """Take out what was left, each with the items named before it."""
    rest = list(tokens)
    reserves = []
    named = frozenset[str]().union(*(t.refs for t in tokens if t.mark is Mark.ITEM))
    meant = named or {context.asked_ref}
    has_arms = any(
        item.sides is Sides.EACH
        for item in known_items(context)
        if item.ref in meant or meant == {None}
    )
    for at, reserve, used in find_reserve(tokens, has_arms=has_arms):
        before = [token.refs for token in tokens[:at] if token.mark is Mark.ITEM]
        reserves.append((before[-1] if before else frozenset[str](), reserve))
        for i in used:
            rest[i] = GAP
    return rest, reserves


def _told(
    tokens: Sequence[Token],
    beside: Mapping[str, Any],
    reserves: Sequence[tuple[frozenset[str], Reserve]],
) -> Told | None:
    """Return effort, reserve and pain when nothing else is left to read."""
    left = {token.mark for token in tokens} & FIGURES
    said = beside["effort"] is not None or beside["pains"] or reserves
    if left or not said:
        return None
    return Told(**beside, reserve=reserves[0][1] if reserves else None)


def _kept(
    found: Recorded | Asked,
    reserves: Sequence[tuple[frozenset[str], Reserve]],
    beside: Mapping[str, Any],
) -> Reading:
    """Put pain, effort and reserve beside what was found; ask first where the words are many."""
    if isinstance(found, Asked):
        lone = reserves[0][1] if reserves else None
        return found.model_copy(update={**beside, "reserve": lone})
    refs = [item.ref for item in found.items]
    by_item = {
        ref: reserve
        for named, reserve in reserves
        for ref in refs
        if ref in named or (not named and len(refs) == 1)
    }
    found = with_reserve(found, by_item)
    lone = reserves[0][1] if reserves and not by_item else None
    if len(beside["unread"].split()) > MOST_UNREAD:
        return Asked(**beside, reserve=lone, question=QuestionCode.IS_THIS_MEANT, options=(found,))
    return found.model_copy(update={**beside, "reserve": lone})


def _remainder(
    tokens: Sequence[Token], context: ReadingContext, beside: Mapping[str, Any]
) -> Reading:
    """Return what is left when there are no results."""
    marks = {token.mark for token in tokens} - SILENT
    if marks & FIGURES:
        return NotUnderstood(
            **beside, example=example_reply(context.session, language=context.language)
        )
    if beside["pains"] or beside["effort"] is not None:
        return Told(**beside)
    if beside["activities"]:
        return OtherTraining(**beside)
    if beside["asks_coach"]:
        return PassedOn(**beside, why=PassedWhy.A_QUESTION)
    why = PassedWhy.NOT_A_RESULT if {t.mark for t in tokens} else PassedWhy.NO_WORDS
    return PassedOn(**beside, why=why)
