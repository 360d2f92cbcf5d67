"""The third net: a message that reads like those that carry a sign, though no rule names it.

A rule knows the words that it was given. People avoid them: "my arm stops at my chin since the
fall". So every message is also compared with thousands of lines that were written for it, each
with what a careful reader made of it, by the weights that were learnt from them (logistic
regression over words, parts of words and the reader's own concepts). It asks and never states:
the athlete answers by a tap, and until then the doubt counts.

The weights lie beside this file (``learnt_signs.tsv``); ``holdwell learn`` makes them anew.
"""

import math
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from importlib.resources import files

from bot.reading.red_flag_text import plain_letters
from scheduler.pain.red_flags import RedFlag

WORDS_IN_A_ROW = 3  # [words] ch: longer rows are too rare to learn from
LONGEST_WORD = 40  # [letters] ch: no word is longer; what is, would cost time
PART_LETTERS = (3, 4, 5)  # [letters] ch: parts of words meet slips and endings
SIGN_FROM = 0.42  # [likelihood] ch: from here a message is asked about (``holdwell learn --check``)
EMERGENCY_SHARE = 0.4  # [share of the signs' likelihood] ch: from here as an emergency
CRISIS_FROM = 0.6  # [likelihood] ch: below it the words are as often a figure of speech
BESIDE_NAMED = 0.9  # [share of the signs' likelihood] ch: where a rule states a lesser sign
HARMLESS_FROM = 0.5  # [likelihood] ch: from here a sign said outright is asked about first
SURELY_FROM = 0.8  # [likelihood] ch: from here a rule's doubt alone asks nothing
PIECE = re.compile(r"[^\W\d_]+|\d+|[.?!,]")


class Group(StrEnum):
    """What a message may carry."""

    HARMLESS = "harmless"
    CLINICIAN = "clinician"
    EMERGENCY = "emergency"
    CRISIS = "crisis"


@dataclass(frozen=True)
class Weights:
    """What was learnt: for each group its start, for each feature what it adds to each group."""

    groups: tuple[Group, ...]
    starts: tuple[float, ...]
    of_feature: Mapping[str, tuple[float, ...]]
    made_from: str = ""
    """A digest of the lines that these weights were learnt from."""

    def likelihoods(self, features: Iterable[str]) -> dict[Group, float]:
        """Return how likely each group is, from 0 to 1, together 1."""
        known = [found for one in features if (found := self.of_feature.get(one))]
        scale = 1 / math.sqrt(len(known)) if known else 0.0
        sums = [
            start + scale * sum(one[at] for one in known) for at, start in enumerate(self.starts)
        ]
        most = max(sums)
        parts = [math.exp(one - most) for one in sums]
        return {group: part / sum(parts) for group, part in zip(self.groups, parts, strict=True)}


def features(message: str, concepts: Iterable[str]) -> frozenset[str]:
    """Return what is compared: words in a row, parts of words, and the concepts met."""
    pieces = [
        "0" if piece.isdigit() else piece[:LONGEST_WORD]
        for piece in PIECE.findall(plain_letters(message))
    ]
    rows = {
        " ".join(pieces[at : at + length])
        for length in range(1, WORDS_IN_A_ROW + 1)
        for at in range(len(pieces) - length + 1)
    }
    parts = {
        f"~{word[at : at + length]}"
        for word in (f"_{piece}_" for piece in set(pieces) if piece.isalpha())
        for length in PART_LETTERS
        for at in range(len(word) - length + 1)
    }
    return frozenset(rows | parts | {f"={concept}" for concept in concepts})


def read_weights(lines: Iterable[str]) -> Weights:
    """Read the table: source, groups, starts, then a feature a line with weights in hundredths."""
    table = iter(lines)
    made_from = next(table).rstrip("\n").split("\t")[1]
    groups = tuple(Group(one) for one in next(table).rstrip("\n").split("\t")[1:])
    starts = tuple(float(one) for one in next(table).rstrip("\n").split("\t")[1:])
    of_feature = {}
    for line in table:
        name, *weights = line.rstrip("\n").split("\t")
        of_feature[name] = tuple(int(one) / 100 for one in weights)
    return Weights(groups, starts, of_feature, made_from)


def write_weights(learnt: Weights) -> str:
    """Write the table that :func:`read_weights` reads."""
    lines = [
        "\t".join(["made_from", learnt.made_from]),
        "\t".join(["feature", *learnt.groups]),
        "\t".join(["start", *(str(one) for one in learnt.starts)]),
        *(
            "\t".join([name, *(str(round(100 * one)) for one in row)])
            for name, row in sorted(learnt.of_feature.items())
        ),
    ]
    return "\n".join(lines) + "\n"


@cache
def weights() -> Weights:
    """Return the weights that come with the reader."""
    with (files("bot.reading") / "learnt_signs.tsv").open(encoding="utf-8") as table:
        return read_weights(table)


def doubt_in(likely: Mapping[Group, float], *, is_named: bool = False) -> RedFlag | None:
    """Return the sign to ask about, None where the message reads like harmless ones.

    ``is_named``: a rule states a sign already, so that only a much graver likeness is added.
    """
    if likely[Group.CRISIS] >= CRISIS_FROM:
        return RedFlag.SELF_HARM
    sign = likely[Group.CLINICIAN] + likely[Group.EMERGENCY]
    if sign < SIGN_FROM:
        return None
    share = BESIDE_NAMED if is_named else EMERGENCY_SHARE
    is_grave = likely[Group.EMERGENCY] >= share * sign
    return RedFlag.UNCLEAR_EMERGENCY if is_grave else RedFlag.UNCLEAR_SIGN


def reads_harmless(likely: Mapping[Group, float]) -> bool:
    """Tell whether a message reads more like harmless ones: then a stated sign is asked first."""
    return likely[Group.HARMLESS] >= HARMLESS_FROM


def reads_surely_harmless(likely: Mapping[Group, float]) -> bool:
    """Tell whether a message reads so much like harmless ones that a mere doubt asks nothing."""
    return likely[Group.HARMLESS] >= SURELY_FROM
