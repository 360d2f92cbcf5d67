"""Checks of what an athlete reads: names that can be told apart, two short plain sentences."""

import re
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence

from scheduler.catalogue.findings import Fault, Finding, Severity, finding
from scheduler.catalogue.names import folded
from scheduler.catalogue.values import Movement

HOW_TO_SENTENCES = 2  # [sentences] CH
FAULT_SENTENCES = 1  # [sentences] CH
SENTENCE_WORDS_MOST = 18  # [words] CH: still read at a glance between two sets
NAME_LETTERS_MOST = 28  # [letters] CH: one line on a small phone
FORBIDDEN = (
    "!", "heal", "cure", "rehab", "prehab", "therap", "treat", "diagnos", "injur", "prevent",
    "pain", "hurt", "safe", "scapula", "protract", "retract", "isometric", "eccentric",
    "concentric", "thoracic", "glenohumeral", "deltoid", "rotator", "humer", "supinat", "pronat",
    "adduct", "abduct", "extension", "flexion", "engage", "activate", "no pain", "push through",
    "just", "simply", "obviously", "fine", "1rm", "rpe", "rir", "amrap",
)  # fmt: skip
"""Word beginnings that have no place in a how-to: claims about the body's health, jargon, haste."""

_SENTENCE = re.compile(r"[^.?!]+[.?!]+(?:\s+|$)")


def sentences(text: str) -> tuple[str, ...]:
    """Return the finished sentences of a text; a rest without a full stop counts as one."""
    found = tuple(match.group().strip() for match in _SENTENCE.finditer(text))
    rest = _SENTENCE.sub("", text).strip()
    return (*found, rest) if rest else found


def sentence_counts(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find how-tos that are not two finished sentences and faults that are not one."""
    for movement in movements:
        for field, text, wanted in (
            ("how_to", movement.how_to, HOW_TO_SENTENCES),
            ("common_fault", movement.common_fault, FAULT_SENTENCES),
        ):
            count = len(sentences(text))
            if count != wanted or not text.endswith("."):
                yield finding(
                    Fault.SENTENCES_COUNT,
                    movement.key,
                    field,
                    found=f"{count} sentences" if count != 1 else "1 sentence",
                    expected=f"{wanted} finished with a full stop",
                )


def long_sentences(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find sentences that are too long to read between two sets."""
    for movement in movements:
        for field, text in (("how_to", movement.how_to), ("common_fault", movement.common_fault)):
            longest = max((len(sentence.split()) for sentence in sentences(text)), default=0)
            if longest > SENTENCE_WORDS_MOST:
                yield finding(
                    Fault.SENTENCE_LONG,
                    movement.key,
                    field,
                    found=f"{longest} words",
                    expected=f"at most {SENTENCE_WORDS_MOST} words a sentence",
                )


def forbidden_words(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find claims about health, jargon and haste in what an athlete reads."""
    for movement in movements:
        for field, text in (
            ("name", movement.name),
            ("how_to", movement.how_to),
            ("common_fault", movement.common_fault),
        ):
            for word in FORBIDDEN:
                if re.search(rf"(?<!\w){re.escape(word)}" if word != "!" else "!", text.casefold()):
                    yield finding(
                        Fault.WORD_FORBIDDEN,
                        movement.key,
                        field,
                        found=word,
                        expected="plain words about the movement",
                    )


def long_names(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find names that wrap on a small phone; a notice only."""
    for movement in movements:
        if len(movement.name) > NAME_LETTERS_MOST:
            yield finding(
                Fault.NAME_LONG,
                movement.key,
                "name",
                found=f"{len(movement.name)} letters",
                expected=f"at most {NAME_LETTERS_MOST} letters",
                severity=Severity.NOTICE,
            )


def keys_twice(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find keys that two movements claim."""
    seen: set[str] = set()
    for movement in movements:
        if movement.key in seen:
            yield finding(
                Fault.KEY_TWICE, movement.key, "key", found=movement.key, expected="its own key"
            )
        seen.add(movement.key)


def names_twice(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find names and keys that two movements have, and aliases that are another's name or key."""
    owners: dict[str, str] = {}
    for movement in movements:
        for own in dict.fromkeys((folded(movement.name), folded(movement.key))):
            owner = owners.setdefault(own, movement.key)
            if owner != movement.key:
                yield _twice(movement.key, "name", found=own, owner=owner)
    for alias, keys in _aliases(movements).items():
        for key in keys:
            if not alias or owners.get(alias, key) != key:
                yield _twice(key, "aliases", found=alias, owner=owners.get(alias, "any other"))


def shared_aliases(movements: Sequence[Movement]) -> Iterator[Finding]:
    """Find aliases that several movements share; a notice, as a reader can ask which is meant."""
    for alias, keys in _aliases(movements).items():
        if len(keys) > 1:
            yield finding(
                Fault.NAME_SHARED,
                keys[-1],
                "aliases",
                found=alias,
                expected=f"known to be shared by {', '.join(keys)}",
                severity=Severity.NOTICE,
            )


def _aliases(movements: Sequence[Movement]) -> Mapping[str, Sequence[str]]:
    """Return which movements have each alias, spelling habits taken away."""
    aliases: dict[str, list[str]] = defaultdict(list)
    for movement in movements:
        for alias in dict.fromkeys(folded(alias) for alias in movement.aliases):
            aliases[alias].append(movement.key)
    return aliases


def _twice(key: str, field: str, /, *, found: str, owner: str) -> Finding:
    return finding(
        Fault.NAME_TWICE, key, field, found=found, expected=f"a name that {owner} does not have"
    )
