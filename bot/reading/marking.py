"""From pieces of text to tokens: item numbers and names, phrases, number words, then units."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from bot.reading.known import KnownItem, ReadingContext
from bot.reading.lexemes import MARK_OF_SIGN, Lexeme, cut
from bot.reading.names import NameIndex
from bot.reading.number_words import ONE, PLURALS, number_at
from bot.reading.script import plain
from bot.reading.tokens import Token
from bot.reading.units import COLOURS, UNITS, join_units
from bot.reading.vocabulary import Meaning, Vocabulary, vocabulary
from bot.reading.words import Mark

WORDLIKE = frozenset({"word", "number", "ordinal"})
WRITTEN_OUT = {"i'll": "iwill", "we'll": "wewill", "i'd": "iwould"}
"""Words that are other words without their apostrophe."""
NO_MEANING = Meaning(Mark.WORD)
SECOND = frozenset({"second", "segundo"})
BAND_WORDS = frozenset({"band", "bands", "banda", "goma"})
STRETCHED = re.compile(r"(.)\1{2,}")
BETWEEN_LETTERS = re.compile(r"\b(?:[ldjcmtsn]|qu)'(?=[^\W\d_])")
BEFORE_WHICH_ONE_COUNTS = frozenset(
    {
        *UNITS,
        *(Mark.SET, Mark.SETS, Mark.MORE, Mark.LEFT_OVER, Mark.LEFT_WORD, Mark.AND, Mark.OR),
        *(Mark.COMMA, Mark.STOP_SIGN, Mark.LINE, Mark.TIMES, Mark.PLUS, Mark.HALF, Mark.SLASH),
    }
)
"""Marks in front of which "one" is a number; elsewhere it points at something."""


def tokenise(text: str, context: ReadingContext) -> tuple[Token, ...]:
    """Return the tokens of a reply."""
    said = plain(text)
    if context.language == "fr":
        said = BETWEEN_LETTERS.sub(" ", said)
    tokens = list(_Marker(known_items(context), context.language).marked(list(cut(said))))
    return tuple(join_units(_exercises(_ones(tokens), known_items(context))))


def known_items(context: ReadingContext) -> tuple[KnownItem, ...]:
    """Return every item that a name may mean, the session in question first."""
    sessions = ((context.session,) if context.session else ()) + context.others
    return tuple(item for session in sessions for item in session.items)


class _Marker:
    """Turns pieces into tokens, with the names of the items and the words of a language."""

    def __init__(self, items: Sequence[KnownItem], language: str) -> None:
        self._items = items
        self._index = NameIndex(items)
        self._language = language
        self._words: Vocabulary = vocabulary(language)

    def marked(self, lexemes: Sequence[Lexeme]) -> Iterator[Token]:
        at = 0
        before: Token | None = None
        while at < len(lexemes):
            tokens, used = self._next(lexemes, at, before)
            yield from tokens
            before = tokens[-1]
            at += used

    def _next(
        self, lexemes: Sequence[Lexeme], at: int, before: Token | None
    ) -> tuple[list[Token], int]:
        """Return the tokens that begin at ``at``, and how many pieces they take."""
        lexeme = lexemes[at]
        if lexeme.kind == "front":
            return self._numbered(lexeme, before), 1
        if lexeme.kind in MARK_OF_SIGN:
            mark = MARK_OF_SIGN[lexeme.kind]
            token = Token(mark, lexeme.text, choices=lexeme.choices, is_glued=lexeme.is_glued)
            return [token], 1
        words = self._words_from(lexemes, at)
        if (band := _band(words)) is not None:
            return [Token(Mark.BAND, band)], 2
        if before is not None and before.mark is Mark.ITEM and self._goes_on(before, words):
            return [replace(before, text=lexeme.text)], 1
        if (row := self._name_of_a_place(lexemes, at)) is not None:
            return [row], 1
        named = self._index.at(words) if lexeme.kind == "word" else None
        if named and self._is_longest(words, named[1]):
            token = Token(Mark.ITEM, lexeme.text, refs=named[0], is_mended=named[2])
            return [token], named[1]
        return self._phrase(lexeme, words) or self._figure_or_word(lexeme, words)

    def _goes_on(self, before: Token, words: Sequence[str]) -> bool:
        """Tell whether a word behind a name belongs to it: "curl wrist", "row one arm"."""
        has_number = not words or number_at(words, self._language) is not None
        return not has_number and self._index.goes_on(before.refs, words[0])

    def _name_of_a_place(self, lexemes: Sequence[Lexeme], at: int) -> Token | None:
        """Take "wrist" for the wrist curl where a row of figures follows it: no pain is told so."""
        row = _row_behind(lexemes, at)
        word = lexemes[at].text
        if row < 2 or self._words.phrases.get((word,), NO_MEANING).mark is not Mark.SITE:
            return None
        refs = frozenset(
            item.ref
            for item in self._items
            if item.sets == row and self._index.goes_on(frozenset({item.ref}), word)
        )
        return Token(Mark.ITEM, word, refs=refs) if len(refs) == 1 else None

    def _numbered(self, lexeme: Lexeme, before: Token | None) -> list[Token]:
        """Take a number in front for an item's, or for a figure where no item has it.

        Behind "second" the word "exercise" names the item, and the number is a figure.
        """
        number = int(lexeme.choices[0][0])
        figure = Token(Mark.NUMBER, lexeme.text, choices=((float(number),),))
        is_placed = before is not None and (before.mark is Mark.ORDINAL or before.text in SECOND)
        if is_placed and lexeme.text[0].isalpha():
            return [Token(Mark.EXERCISE, lexeme.text), figure]
        refs = frozenset(item.ref for item in self._items if item.number == number)
        return [Token(Mark.ITEM, lexeme.text, n=number, refs=refs)] if refs else [figure]

    def _is_longest(self, words: Sequence[str], used: int) -> bool:
        """Tell whether no phrase says more than the name ("pull" within a longer phrase)."""
        lengths = range(used + 1, min(self._words.longest, len(words)) + 1)
        return not any(tuple(words[:length]) in self._words.phrases for length in lengths)

    def _words_from(self, lexemes: Sequence[Lexeme], at: int) -> list[str]:
        """Return the run of words and numbers from ``at``, as far as a phrase can reach."""
        words = []
        for lexeme in lexemes[at : at + self._words.longest]:
            if lexeme.kind not in WORDLIKE:
                break
            words.append(WRITTEN_OUT.get(lexeme.text) or lexeme.text.replace("'", ""))
        return words

    def _phrase(self, lexeme: Lexeme, words: Sequence[str]) -> tuple[list[Token], int] | None:
        phrases = self._words.phrases
        for used in range(min(self._words.longest, len(words)), 0, -1):
            meaning = phrases.get(tuple(words[:used]))
            if meaning:
                text = " ".join(words[:used])
                token = Token(meaning.mark, text, n=meaning.n, is_glued=lexeme.is_glued)
                return [replace(token, sites=meaning.sites)], used
        if lexeme.kind != "word" or self._is_number(words):
            return None
        meant = self._words.mended(STRETCHED.sub(r"\1", words[0]))
        found = phrases.get((meant,))
        if found is None or meant == words[0]:
            return None
        token = Token(found.mark, meant, n=found.n, is_glued=lexeme.is_glued)
        return [replace(token, sites=found.sites)], 1

    def _is_number(self, words: Sequence[str]) -> bool:
        return words[0] in PLURALS or number_at(words, self._language) is not None

    def _figure_or_word(self, lexeme: Lexeme, words: Sequence[str]) -> tuple[list[Token], int]:
        if lexeme.kind == "word":
            return self._number_word(lexeme, words)
        if lexeme.kind == "date":
            return [Token(Mark.WORD, lexeme.text)], 1
        if lexeme.kind == "ordinal":
            return [Token(Mark.ORDINAL, lexeme.text, n=int(lexeme.choices[0][0]))], 1
        unit = Mark.SECONDS if lexeme.kind in {"clock", "quote"} else None
        token = Token(Mark.NUMBER, lexeme.text, choices=lexeme.choices, unit=unit)
        return [replace(token, is_glued=lexeme.is_glued)], 1

    def _number_word(self, lexeme: Lexeme, words: Sequence[str]) -> tuple[list[Token], int]:
        found = number_at(words, self._language)
        if found is None and words[0] in PLURALS:
            found = PLURALS[words[0]], 1
        if found is None:
            return [Token(Mark.WORD, lexeme.text, is_glued=lexeme.is_glued)], 1
        value, used = found
        token = Token(Mark.NUMBER, words[0], choices=((float(value),),))
        more = number_at(words[used:], self._language) if words[used:] else None
        if more is None and words[used:] and words[used] in PLURALS and words[0] not in PLURALS:
            eights = Token(Mark.NUMBER, words[used], choices=((float(PLURALS[words[used]]),),))
            return [token, Token(Mark.TIMES, "x"), eights], used + 1
        return [token], used


def _row_behind(lexemes: Sequence[Lexeme], at: int) -> int:
    """Count the plain figures that follow a word, spaces and commas between them."""
    count = 0
    for lexeme in lexemes[at + 1 :]:
        if lexeme.kind in {"number", "list", "pair"}:
            count += len(lexeme.choices[0])
        elif lexeme.kind != ",":
            break
    return count


def _band(words: Sequence[str]) -> str | None:
    """Return the colour of "red band" or "goma roja"."""
    for colour, band in (words[:2], words[1::-1]) if len(words) > 1 else ():
        if colour in COLOURS and band in BAND_WORDS:
            return colour
    return None


def _ones(tokens: Sequence[Token]) -> list[Token]:
    """Take "one", "una" and the like for a number only where something is counted."""
    kept = []
    for at, token in enumerate(tokens):
        if token.mark is Mark.NUMBER and token.text in ONE and not _counts(tokens, at):
            kept.append(Token(Mark.FILLER, token.text))
        else:
            kept.append(token)
    return kept


def _counts(tokens: Sequence[Token], at: int) -> bool:
    after = tokens[at + 1] if at + 1 < len(tokens) else None
    before = tokens[at - 1] if at > 0 else None
    if before is not None and before.mark in {Mark.ORDINAL, Mark.ITEM, Mark.CHAT, Mark.FINE}:
        return False
    if after is None or after.mark in BEFORE_WHICH_ONE_COUNTS:
        return True
    is_of = after.text in {"of", "de", "of the"} and at + 2 < len(tokens)
    return is_of and tokens[at + 2].mark is Mark.NUMBER


def _exercises(tokens: Sequence[Token], items: Sequence[KnownItem]) -> list[Token]:
    """Read "second exercise" and "last exercise" as the item with that place."""
    named: list[Token] = []
    last = max((item.number for item in items), default=0)
    at = 0
    while at < len(tokens):
        token = tokens[at]
        after = tokens[at + 1].mark if at + 1 < len(tokens) else None
        is_second = token.text in SECOND
        if (token.mark is Mark.ORDINAL or is_second) and after is Mark.EXERCISE:
            n = 2 if is_second else token.n
            number = last + 1 + n if n < 0 else n
            refs = frozenset(item.ref for item in items if item.number == number)
            mark = Mark.ITEM if refs else Mark.WORD
            named.append(Token(mark, token.text, n=number if refs else 0, refs=refs))
            at += 2
        else:
            named.append(token)
            at += 1
    return named
