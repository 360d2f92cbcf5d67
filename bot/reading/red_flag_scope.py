"""Whom a word is about, and whether it is denied: by clause, not by phrase.

A denial reaches to the end of its clause or list. Another person reaches until the athlete
speaks of themselves again. Both are read generously towards raising: what is unclear counts.
"""

from collections.abc import Collection, Iterable
from dataclasses import dataclass

from bot.reading.red_flag_text import Text
from bot.reading.red_flag_words import WordSet

SENTENCE_ENDS = frozenset({".", "?"})
SIGNS = SENTENCE_ENDS | {","}
LONGEST_DENIAL = 9  # [words] ch: further on, a denial is not believed without a list
LIST_PART = 3  # [words] ch: the parts of "no numbness, swelling or fever"
PERSON_TO_VERB = 6  # [words] ch: between a person and what happened to them


@dataclass(frozen=True)
class Hit:
    """One concept found; ``first`` and ``last`` are the words it covers."""

    concept: str
    first: int
    last: int
    is_denied: bool = False
    is_other: bool = False

    @property
    def counts(self) -> bool:
        """True when it is said, and of the athlete."""
        return not (self.is_denied or self.is_other)


def found(text: Text, words: WordSet, concept: str) -> list[Hit]:
    """Return where a concept occurs, whoever it is about."""
    return [
        Hit(concept, text.word_at(match.start()), text.word_at(max(match.end() - 1, match.start())))
        for match in words.patterns[concept].finditer(text.shape)
    ]


def denied_words(text: Text, words: WordSet) -> list[tuple[int, int, int]]:
    """Return (place of the denial, first, last word it reaches)."""
    excused = [(h.first, h.last) for h in found(text, words, "not_negating")]
    barriers = sorted(h.first for h in found(text, words, "barrier"))
    lists = {h.first for h in found(text, words, "list_word")}
    reaches = []
    for denial in found(text, words, "no"):
        if any(first <= denial.last and denial.first <= last for first, last in excused):
            continue
        last = _reach(text, words, denial.last + 1, barriers, lists)
        reaches.append((denial.first, denial.last + 1, last))
    return reaches


def _reach(text: Text, words: WordSet, start: int, barriers: list[int], lists: set[int]) -> int:
    """Return the last word that a denial reaches."""
    stop = next((b for b in barriers if b >= start), len(text.words))
    last = start - 1
    for place in range(start, min(stop, len(text.words))):
        word = text.words[place]
        if word in SENTENCE_ENDS:
            break
        if word == "," and not _list_goes_on(text, words, place + 1, lists):
            break
        if place - start >= LONGEST_DENIAL and not lists & set(range(start, place + 1)):
            break
        last = place
    return last


def _list_goes_on(text: Text, words: WordSet, start: int, lists: set[int]) -> bool:
    """Tell whether a short part of a list follows a comma: nothing of the athlete's own in it."""
    end = start
    while end < len(text.words) and text.words[end] not in SIGNS and end - start <= LONGEST_DENIAL:
        end += 1
    part = text.words[start:end]
    is_own = any(word in words.grammar.own_in_list for word in part)
    has_list_word = bool(lists & set(range(start, end)))
    ahead = any(place in lists for place in range(start, min(end + 8, len(text.words))))
    return not is_own and (has_list_word or (len(part) <= LIST_PART and ahead) or len(part) <= 1)


def other_words(text: Text, words: WordSet, message: str) -> set[int]:
    """Return the words that are about somebody else."""
    if found(text, words, "writes_for"):
        return set()  # somebody writes for the athlete: what they tell of is the athlete's
    others: set[int] = set()
    persons = found(text, words, "person")
    named = {place for hit in persons for place in range(hit.first, hit.last + 1)}
    own = {h.first for h in found(text, words, "me")} - named
    grammar = words.grammar
    own -= {place for place in own if set(text.words[place - 1 : place]) & grammar.beside_me}
    reports = {h.first for h in found(text, words, "reports")}
    for hit in persons:
        after = range(hit.last + 1, min(hit.last + 3, len(text.words)))
        name = text.words[hit.last]
        ends_so = bool(grammar.owner_ending) and name.endswith(grammar.owner_ending)
        is_owner = ends_so and name not in grammar.not_owners
        before = text.words[max(hit.first - 3, 0) : hit.first]
        is_likened = bool(grammar.likened & set(before))
        if is_likened or (any(place in reports for place in after) and not is_owner):
            continue
        if is_owner or name in grammar.owners or _happens(text, words, hit):
            others |= _until_own(text, words, hit.first, own)
    for place in _names(text, words, message):
        others |= _until_own(text, words, place, own)
    return others


def _happens(text: Text, words: WordSet, hit: Hit) -> bool:
    after = text.words[hit.last + 1 : hit.last + 1 + PERSON_TO_VERB]
    return any(words.grammar.happened.match(word) for word in after)


def _until_own(text: Text, words: WordSet, start: int, own: set[int]) -> set[int]:
    """Return the words from a person on, until the athlete or a new subject comes."""
    reach: set[int] = set()
    for place in range(start, len(text.words)):
        if place in own:
            break
        word = text.words[place]
        if word in SIGNS:
            rest = " ".join(text.words[place + 1 : place + 3])
            if not words.grammar.goes_on.match(rest):
                break
        reach.add(place)
    return reach


def _names(text: Text, words: WordSet, message: str) -> Iterable[int]:
    """Yield where a sentence speaks of somebody by name: an unknown word with a capital."""
    for place, word in enumerate(text.words[:-1]):
        start, end = text.spans[place]
        is_name = message[start:end].istitle() and len(word) > 2 and word.isalpha()
        is_known = word in words.known or word in words.grammar.not_names
        is_known = is_known or word.endswith(("ing", "ly"))
        if is_name and not is_known and text.words[place + 1] in words.grammar.name_happened:
            yield place


def is_answered_no(text: Text, words: WordSet, hit: Hit, no_issues: Collection[int]) -> bool:
    """Tell whether the words after a sign take it back: "chest pain? none", "never an issue".

    ``no_issues`` are the words where something is said to be no issue.
    """
    if {hit.last + 1, hit.last + 2} & set(no_issues):
        return True
    place = hit.last + 1
    if place < len(text.words) and text.words[place] in {",", "?"}:
        place += 1
    if place >= len(text.words) or text.words[place] not in words.grammar.no_words:
        return False
    following = text.words[place + 1] if place + 1 < len(text.words) else "."
    return following in SIGNS or following in words.grammar.after_no
