"""Read red flags in a message: first of all readers, in every state, on every message.

Words raise, they never lower. What is denied, said of somebody else, a figure of speech or plain
soreness does not raise; what is in doubt is asked about, and counts until it is answered. The
reader names signs, never conditions, and its lists must be checked by a clinician before use.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import cached_property

from bot.reading.red_flag_learnt import (
    Group,
    Weights,
    doubt_in,
    features,
    reads_harmless,
    reads_surely_harmless,
    weights,
)
from bot.reading.red_flag_pain import PainWords, read_pain_words
from bot.reading.red_flag_rules import PASSING_TINGLE, RULES, Rule
from bot.reading.red_flag_scope import (
    SENTENCE_ENDS,
    Hit,
    denied_words,
    found,
    is_answered_no,
    other_words,
)
from bot.reading.red_flag_text import Text, shaped
from bot.reading.red_flag_wide_rules import WIDE_RULES
from bot.reading.red_flag_words import WordSet
from bot.reading.red_flag_words_en import ENGLISH
from bot.reading.red_flag_words_es import SPANISH
from scheduler.pain.events import Certainty
from scheduler.pain.red_flags import RED_FLAGS, RedFlag, severity
from scheduler.pain.values import Level

CLOSE_AND_WIDE = (*RULES, *WIDE_RULES)
RULES_OF: Mapping[str, tuple[Rule, ...]] = {"en": CLOSE_AND_WIDE, "es": WIDE_RULES}
LANGUAGES: Mapping[str, WordSet] = {"en": ENGLISH, "es": SPANISH}
LANGUAGES_READY = frozenset({"en", "es"})
"""The languages whose own vignettes pass; in no other may an athlete be enrolled."""
DENIED_WITHIN = frozenset({"pop_event", "wide_pop", "wide_numb"})
"""Events whose own words leave room for a denial: "there was no pop"."""
SUPPOSED_FOR = 8  # [words] ch: "what if …" reaches so far, and never over a sentence's end
MOST_HITS = 40  # [hits of one concept] ch: a message of one word over and over stays cheap


class Stated(StrEnum):
    """How sure the words are."""

    STATED = "stated"
    ASKED = "asked"

    @property
    def certainty(self) -> Certainty:
        """The same for the event that is raised."""
        return Certainty.CONFIRMED if self is Stated.STATED else Certainty.ASKED


@dataclass(frozen=True)
class FlagCandidate:
    """A red flag that the words raise; ``span`` is where, in the message."""

    flag: RedFlag
    certainty: Stated
    span: tuple[int, int]


@dataclass(frozen=True)
class RedFlagReading:
    """What the red-flag reader saw, the gravest first."""

    candidates: tuple[FlagCandidate, ...] = ()
    asks_about_medicine: bool = False
    pain: PainWords | None = None
    is_in_hang: bool = False
    is_no_report: bool = False
    """True where the words are of somebody else, supposed, long past, or plain soreness."""

    @property
    def level(self) -> Level:
        """The level that the words ask for at once; doubt counts in full."""
        return max((RED_FLAGS[c.flag].level for c in self.candidates), default=Level.NONE)

    @property
    def is_private(self) -> bool:
        """True where the words may stay in the raw inbox only: no reading, audit, export, log."""
        return any(RED_FLAGS[candidate.flag].is_private for candidate in self.candidates)


def read_red_flags(text: str) -> RedFlagReading:
    """Read a message in every language that we know; never raises, whatever the text.

    People mix languages, and write in the one that fear leaves them: so all are read, always.

    Args:
        text: the message, up to 4096 characters; what goes beyond is not looked at.

    """
    seen = _seen_in_every_language(text)
    readings = [_read(one) for one in seen]
    return RedFlagReading(
        candidates=_joined(readings, text, seen, weights()),
        asks_about_medicine=any(reading.asks_about_medicine for reading in readings),
        pain=next((reading.pain for reading in readings if reading.pain), None),
        is_in_hang=any(reading.is_in_hang for reading in readings),
        is_no_report=any(reading.is_no_report for reading in readings),
    )


def features_of(text: str) -> frozenset[str]:
    """Return what the third net compares of a message."""
    return _features(text, _seen_in_every_language(text))


def _features(text: str, seen: Sequence["Seen"]) -> frozenset[str]:
    return features(text, (concept for one in seen for concept in one.concepts_met()))


def _seen_in_every_language(message: str) -> list["Seen"]:
    return [
        Seen(
            message=message,
            text=shaped(
                message,
                mending=words.mending,
                written_out=words.written_out,
                stems=words.stems,
                joined=words.joined,
            ),
            words=words,
        )
        for words in LANGUAGES.values()
    ]


def _read(seen: "Seen") -> RedFlagReading:
    candidates = [
        candidate for rule in RULES_OF[seen.words.language] if (candidate := _applied(rule, seen))
    ]
    return RedFlagReading(
        candidates=_best(_narrowed(candidates, seen)),
        asks_about_medicine=_asks_about_medicine(seen),
        pain=read_pain_words(seen.counting),
        is_in_hang=bool(seen.counting("numb") and seen.counting("hang")),
        is_no_report=seen.is_told_of_nothing,
    )


def candidates_of(text: str, learnt: Weights) -> tuple[FlagCandidate, ...]:
    """Return what a message raises with other weights than those that come with the reader."""
    seen = _seen_in_every_language(text)
    return _joined([_read(one) for one in seen], text, seen, learnt)


def _joined(
    readings: Sequence[RedFlagReading], text: str, seen: Sequence["Seen"], learnt: Weights
) -> tuple[FlagCandidate, ...]:
    """Join the languages, and weigh what the rules say against what was learnt."""
    likely = learnt.likelihoods(_features(text, seen))
    kept = _weighed([c for reading in readings for c in reading.candidates], likely)
    doubt = doubt_in(likely, is_named=any(one.certainty is Stated.STATED for one in kept))
    # What a rule names it names better; only a graver level is added to it.
    if doubt is not None and not any(_level(c.flag) >= _level(doubt) for c in kept):
        kept.append(FlagCandidate(doubt, Stated.ASKED, (0, len(text))))
    return _best(kept)


def _weighed(
    candidates: Sequence[FlagCandidate], likely: Mapping[Group, float]
) -> list[FlagCandidate]:
    """Ask first about what is stated but reads harmless; drop mere doubts that surely do.

    What is private stands as the rules have it.
    """
    if not reads_harmless(likely):
        return list(candidates)
    is_sure = reads_surely_harmless(likely)
    return [
        one if RED_FLAGS[one.flag].is_private else replace(one, certainty=Stated.ASKED)
        for one in candidates
        if RED_FLAGS[one.flag].is_private or one.certainty is Stated.STATED or not is_sure
    ]


def _level(flag: RedFlag) -> Level:
    return RED_FLAGS[flag].level


class Seen:
    """A message with every concept looked up at most once, each hit with its scope."""

    def __init__(self, *, message: str, text: Text, words: WordSet) -> None:
        """Keep the message; nothing is looked up yet."""
        self.message, self.text, self.words = message, text, words
        self._hits: dict[str, list[Hit]] = {}

    @cached_property
    def _denied(self) -> list[tuple[int, int, int]]:
        return denied_words(self.text, self.words)

    @cached_property
    def _others(self) -> set[int]:
        return other_words(self.text, self.words, self.message)

    @staticmethod
    def _reaches(denial: tuple[int, int, int], hit: Hit) -> bool:
        """Tell whether a denial stands before the words, or before the last of an event's."""
        at, start, last = denial
        is_before = at < hit.first and start <= hit.last and hit.first <= last
        is_within = hit.concept in DENIED_WITHIN and hit.first < at and start <= hit.last <= last
        return is_before or is_within

    @cached_property
    def _outdone(self) -> set[int]:
        """The words that are said to be too little: "not just sore"."""
        hits = found(self.text, self.words, "more_than")
        return {place for hit in hits for place in range(hit.first, hit.last + 1)}

    @cached_property
    def _no_issues(self) -> set[int]:
        return {hit.first for hit in found(self.text, self.words, "no_issue")}

    @cached_property
    def _supposed(self) -> list[Hit]:
        return found(self.text, self.words, "hypothetical")

    @cached_property
    def is_told_of_nothing(self) -> bool:
        """True where pain is only somebody else's or supposed, or harmless words stand alone."""
        pains = self._of("pain_words")
        if any(hit.counts for hit in pains):
            return False
        return bool(pains or self._others or self._supposed or self.counting("no_report"))

    def counting(self, names: str) -> list[Hit]:
        """Return the hits that count, of any of the concepts parted by ``|``."""
        hits = [hit for name in names.split("|") for hit in self._of(name) if hit.counts]
        return sorted(hits, key=lambda hit: hit.first)[:MOST_HITS]

    def concepts_met(self) -> list[str]:
        """Return every concept that the message meets, apart where it counts and where not."""
        met = []
        for name in self.words.concepts:
            if hits := self._of(name):
                counts = any(hit.counts for hit in hits)
                met.append(f"{self.words.language}{'+' if counts else '-'}{name}")
        return met

    def _of(self, name: str) -> list[Hit]:
        if name not in self._hits:
            hits = found(self.text, self.words, name)[: 2 * MOST_HITS]
            self._hits[name] = [self._in_scope(hit) for hit in hits]
        return self._hits[name]

    def _in_scope(self, hit: Hit) -> Hit:
        is_denied = hit.first in self._outdone or (
            hit.concept not in self.words.denial_passes_over
            and (
                any(self._reaches(denial, hit) for denial in self._denied)
                or is_answered_no(self.text, self.words, hit, self._no_issues)
            )
        )
        is_supposed = any(
            h.first <= hit.first <= h.last + SUPPOSED_FOR
            and not SENTENCE_ENDS & set(self.text.words[h.last : hit.first])
            for h in self._supposed
        )
        is_other = hit.first in self._others or is_supposed
        return Hit(hit.concept, hit.first, hit.last, is_denied=is_denied, is_other=is_other)


def _applied(rule: Rule, seen: Seen) -> FlagCandidate | None:
    """Return the flag when everything needed stands close enough and nothing excuses it."""
    firsts = seen.counting(rule.needs[0])
    if not firsts:
        return None
    others = [seen.counting(need) for need in rule.needs[1:]]
    if not all(others):
        return None
    for first in firsts:
        near = [_nearest(first, hits) for hits in others]
        if any(_gap(first, hit) > rule.within for hit in near):
            continue
        if any(_excuses(excuse, first, rule, seen) for excuse in rule.unless):
            continue
        span = _span(seen.text, [first, *near])
        return FlagCandidate(rule.flag, Stated.STATED if rule.is_stated else Stated.ASKED, span)
    return None


def _excuses(excuse: str, first: Hit, rule: Rule, seen: Seen) -> bool:
    excusing, _, cancelling = excuse.partition("!")
    if cancelling and seen.counting(cancelling):
        return False
    return all(
        any(_gap(first, hit) <= rule.unless_within for hit in seen.counting(concept))
        for concept in excusing.split("+")
    )


def _gap(one: Hit, other: Hit) -> int:
    return max(other.first - one.last, one.first - other.last, 0)


def _nearest(first: Hit, hits: Sequence[Hit]) -> Hit:
    return min(hits, key=lambda hit: _gap(first, hit))


def _span(text: Text, hits: Sequence[Hit]) -> tuple[int, int]:
    first = min(hit.first for hit in hits)
    last = max(hit.last for hit in hits)
    return text.spans[first][0], text.spans[last][1]


def _narrowed(candidates: list[FlagCandidate], seen: Seen) -> list[FlagCandidate]:
    """Take a tingle in a hang that passed for what it is: with strength there it is that and no
    more; where strength was not spoken of it is asked.
    """
    flags = {candidate.flag for candidate in candidates}
    *tingle, strength = PASSING_TINGLE
    if flags != {RedFlag.NUMB_OR_WEAK} or not all(seen.counting(one) for one in tingle):
        return candidates
    if seen.counting("weak" if "weak" in seen.words.concepts else "wide_weak"):
        return candidates
    is_strong = bool(seen.counting(strength))
    flag = RedFlag.TINGLING_PASSED if is_strong else RedFlag.NUMB_OR_WEAK
    certainty = Stated.STATED if is_strong else Stated.ASKED
    return [FlagCandidate(flag, certainty, candidate.span) for candidate in candidates]


def _best(candidates: Sequence[FlagCandidate]) -> tuple[FlagCandidate, ...]:
    """Keep one candidate a flag, the surer one, the gravest flag first.

    A doubt about nothing graver than what is said outright needs no question.
    """
    kept: dict[RedFlag, FlagCandidate] = {}
    for candidate in candidates:
        known = kept.get(candidate.flag)
        if known is None or (known.certainty, candidate.certainty) == (Stated.ASKED, Stated.STATED):
            kept[candidate.flag] = candidate
    outright = [severity(c.flag) for c in kept.values() if c.certainty is Stated.STATED]
    gravest = max(outright, default=None)
    left = [
        one
        for one in kept.values()
        if one.certainty is Stated.STATED or gravest is None or severity(one.flag) > gravest
    ]
    return tuple(sorted(left, key=lambda c: severity(c.flag), reverse=True))


def _asks_about_medicine(seen: Seen) -> bool:
    """Tell whether a drug or a diagnosis is asked about."""
    is_question = "?" in seen.text.words
    topics = found(seen.text, seen.words, "medicine") + found(seen.text, seen.words, "condition")
    asking = found(seen.text, seen.words, "asking")
    return bool(topics) and (
        is_question or any(_gap(topic, ask) <= 8 for topic in topics for ask in asking)
    )
