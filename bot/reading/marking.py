"""From pieces of text to tokens: item numbers and names, phrases, number words, then units."""

from collections.abc import Iterator, Sequence

from bot.reading.body_words import SITES, WEAK_SITES
from bot.reading.known import KnownItem, ReadingContext
from bot.reading.lexemes import MARK_OF_SIGN, Lexeme, cut
from bot.reading.names import NameIndex
from bot.reading.number_words import number_at
from bot.reading.script import plain
from bot.reading.tokens import Token
from bot.reading.units import join_units
from bot.reading.words import ORDINALS, PHRASES, Mark

WORDLIKE = frozenset({"word", "number", "ordinal"})


def _phrase_table() -> dict[tuple[str, ...], Mark]:
    """Turn the data into a table; what stands first in the data wins."""
    table: dict[tuple[str, ...], Mark] = {}
    for words, mark in ((ORDINALS, Mark.ORDINAL), (SITES, Mark.SITE), (WEAK_SITES, Mark.WEAK_SITE)):
        for phrase in words:
            table[tuple(phrase.split())] = mark
    for mark, phrases in PHRASES.items():
        for phrase in phrases.split("|"):
            table.setdefault(tuple(phrase.split()), mark)
    return table


PHRASE_TABLE = _phrase_table()
LONGEST_PHRASE = max(len(phrase) for phrase in PHRASE_TABLE)


def tokenise(text: str, context: ReadingContext) -> tuple[Token, ...]:
    """Return the tokens of a reply."""
    items = known_items(context)
    return tuple(join_units(list(_marked(list(cut(plain(text))), items, context.language))))


def known_items(context: ReadingContext) -> tuple[KnownItem, ...]:
    """Return every item that a name may mean, the session in question first."""
    sessions = ((context.session,) if context.session else ()) + context.others
    return tuple(item for session in sessions for item in session.items)


def _marked(
    lexemes: Sequence[Lexeme], items: Sequence[KnownItem], language: str
) -> Iterator[Token]:
    index = NameIndex(items)
    at = 0
    while at < len(lexemes):
        token, used = _next(lexemes, at, index, language)
        if token.mark is Mark.ITEM and not token.refs:
            refs = frozenset(item.ref for item in items if item.number == token.n)
            token = _numbered(lexemes[at], token.n, refs)
        yield token
        at += used


def _numbered(lexeme: Lexeme, number: int, refs: frozenset[str]) -> Token:
    """Take a number in front for an item's, or for a figure where no item has it."""
    if refs:
        return Token(Mark.ITEM, lexeme.text, n=number, refs=refs)
    return Token(Mark.NUMBER, lexeme.text, choices=((float(number),),))


def _next(lexemes: Sequence[Lexeme], at: int, index: NameIndex, language: str) -> tuple[Token, int]:
    """Return the token that begins at ``at``, and how many pieces it takes."""
    lexeme = lexemes[at]
    if lexeme.kind == "front":
        return Token(Mark.ITEM, lexeme.text, n=int(lexeme.choices[0][0])), 1
    if lexeme.kind in MARK_OF_SIGN:
        mark = MARK_OF_SIGN[lexeme.kind]
        return Token(mark, lexeme.text, choices=lexeme.choices, is_glued=lexeme.is_glued), 1
    words = _words_from(lexemes, at)
    named = index.at(words) if lexeme.kind == "word" else None
    if named and _is_longest(words, named[1]):
        return Token(Mark.ITEM, lexeme.text, refs=named[0], is_mended=named[2]), named[1]
    return _phrase(lexeme, words) or _figure_or_word(lexeme, words, language)


def _is_longest(words: Sequence[str], used: int) -> bool:
    """Tell whether no phrase says more than the name ("pull" within a longer phrase)."""
    return not any(
        tuple(words[:length]) in PHRASE_TABLE for length in range(used + 1, LONGEST_PHRASE + 1)
    )


def _words_from(lexemes: Sequence[Lexeme], at: int) -> list[str]:
    """Return the run of words and numbers from ``at``, as far as a phrase can reach."""
    words = []
    for lexeme in lexemes[at : at + LONGEST_PHRASE]:
        if lexeme.kind not in WORDLIKE:
            break
        words.append(lexeme.text)
    return words


def _phrase(lexeme: Lexeme, words: Sequence[str]) -> tuple[Token, int] | None:
    for used in range(min(LONGEST_PHRASE, len(words)), 0, -1):
        text = " ".join(words[:used])
        mark = PHRASE_TABLE.get(tuple(words[:used]))
        if mark:
            sites = SITES.get(text) or WEAK_SITES.get(text, ())
            n = ORDINALS.get(text, 0)
            return Token(mark, text, n=n, sites=sites, is_glued=lexeme.is_glued), used
    return None


def _figure_or_word(lexeme: Lexeme, words: Sequence[str], language: str) -> tuple[Token, int]:
    if lexeme.kind == "word":
        found = number_at(words, language)
        if found is None:
            return Token(Mark.WORD, lexeme.text, is_glued=lexeme.is_glued), 1
        value, used = found
        return Token(Mark.NUMBER, lexeme.text, choices=((float(value),),)), used
    unit = Mark.SECONDS if lexeme.kind in {"clock", "quote"} else None
    if lexeme.kind == "ordinal":
        return Token(Mark.ORDINAL, lexeme.text, n=int(lexeme.choices[0][0])), 1
    return Token(
        Mark.NUMBER, lexeme.text, choices=lexeme.choices, unit=unit, is_glued=lexeme.is_glued
    ), 1
