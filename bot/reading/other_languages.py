"""Which language a message is in, when words are left over that the athlete's does not know."""

import re
from collections.abc import Mapping
from functools import cache

from bot.reading import words_de, words_fr, words_pt
from bot.reading.number_words import ENGLISH, SPANISH
from bot.reading.script import plain
from bot.reading.vocabulary import READ_IN_FULL, foreign_words, vocabulary
from bot.reading.words import Mark

OTHERS = ("pt", "de", "fr")
LEAST = 2  # [words] ch: one word may be a name; a word of pain is enough alone
SHORTEST = 3  # [letters] ch
SMALL_WORDS: Mapping[str, str] = {
    "pt": "nao eu hoje minha meu muito obrigado obrigada voce esta estou treino fazer consigo "
    "amanha ontem mais tambem mas tenho quando posso sim foi dificil facil semana ultimo",
    "de": "nicht ich heute und aber mein meine meinen kann kein keine das ist war morgen gestern "
    "sehr auch noch habe hab beim wann warum danke training geht schwer leicht letzten wieder",
    "fr": "pas je aujourd hui est mais mon mes ma peux demain hier tres aussi encore fait etait "
    "quand pourquoi merci seance dur facile dernier avec pour nous vous cette une suis",
}
"""Words that only tell a language apart."""


def other_language(text: str) -> str | None:
    """Return the language of a message that is neither English nor Spanish, None when unclear."""
    said = set(re.findall(r"[^\W\d_]{3,}", plain(text)))
    counts = {language: len(said & _own_words(language)) for language in OTHERS}
    hurting = [language for language in OTHERS if said & _pain_words(language)]
    best = max(OTHERS, key=lambda one: (counts[one], one in hurting))
    rivals = [one for one in OTHERS if one != best and counts[one] == counts[best]]
    if counts[best] == 0 or (rivals and best not in hurting):
        return None
    return best if counts[best] >= LEAST or best in hurting else None


@cache
def _own_words(language: str) -> frozenset[str]:
    """Return the words of a language that are none of English or Spanish."""
    numbers = {"pt": words_pt.NUMBERS, "de": words_de.NUMBERS, "fr": words_fr.NUMBERS}[language]
    own = foreign_words(language) | numbers.keys() | set(SMALL_WORDS[language].split())
    shared = {word for one in READ_IN_FULL for words in vocabulary(one).phrases for word in words}
    return frozenset(
        word for word in own - shared - ENGLISH.keys() - SPANISH.keys() if len(word) >= SHORTEST
    )


@cache
def _pain_words(language: str) -> frozenset[str]:
    phrases = {"pt": words_pt, "de": words_de, "fr": words_fr}[language].PHRASES[Mark.PAIN]
    return _own_words(language) & frozenset(phrases.split("|"))
