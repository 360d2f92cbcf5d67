"""How the words of a language are written down for the red-flag reader.

A concept is a list of short patterns. In a pattern a space parts words, ``~`` stands for up to
three words between and ``~~`` for seven, ``*`` ends a stem, ``(a|b)`` is a choice. Nothing crosses
a sign. A line may be broken behind ``|`` and ``(``.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property

from bot.reading.red_flag_grammar import Grammar
from bot.reading.red_flag_text import slips_of


@dataclass(frozen=True)
class WordSet:
    """One language: its concepts, and what its readers write another way."""

    language: str
    concepts: Mapping[str, str]
    grammar: Grammar
    denial_passes_over: frozenset[str] = frozenset()
    """Places and course are not denied: "no feeling in my hand" is about the hand all the same."""
    written_out: Mapping[str, str] = field(default_factory=dict)
    joined: Mapping[tuple[str, str], str] = field(default_factory=dict)
    """Pairs of words that are read as one."""
    mended_to: frozenset[str] = frozenset()
    """The words that a slip of the finger must not hide."""
    protected: frozenset[str] = frozenset()
    """Ordinary words that look like a slip of one of them."""

    @cached_property
    def patterns(self) -> Mapping[str, re.Pattern[str]]:
        """Every concept as one compiled pattern."""
        return {name: compiled(lines) for name, lines in self.concepts.items()}

    @cached_property
    def stems(self) -> tuple[str, ...]:
        """The beginnings that stand for all their endings: their words are no slips."""
        together = " ".join(self.concepts.values())
        return tuple(sorted(set(re.findall(r"(?<![\w*])([a-z]{4,})\*", together))))

    @cached_property
    def known(self) -> frozenset[str]:
        """Every whole word of the concepts: none of them is a name."""
        return frozenset(re.findall(r"[a-z]{3,}", " ".join(self.concepts.values())))

    @cached_property
    def mending(self) -> Mapping[str, str]:
        """How slips of the finger are mended."""
        return slips_of(self.mended_to, protected=self.protected)


def together(*parts: str) -> str:
    """Join the patterns of several concepts into one."""
    return "\n".join(parts)


def compiled(lines: str) -> re.Pattern[str]:
    """Return one pattern for a concept."""
    written = "|".join(_written(part) for part in parts_of(lines))
    return re.compile(rf"(?<!\w)(?:{written})(?!\w)")


def parts_of(lines: str) -> list[str]:
    """Return a concept's patterns: ``;`` and the end of a line part them, outside brackets."""
    parts, depth = [""], 0
    for line in lines.splitlines():
        if line.strip().startswith("~") and len(parts) > 1 and not parts[-1]:
            parts.pop()
        for sign in line.strip():
            depth += (sign == "(") - (sign == ")")
            if sign == ";" and not depth:
                parts.append("")
            else:
                parts[-1] += sign
        if not depth:
            parts.append("")
        elif parts[-1][-1] not in "(|":
            parts[-1] += " "
    return [part.strip() for part in parts if part.strip()]


def _written(part: str) -> str:
    groups = re.sub(r"\((?!\?)", "(?:", part.strip("~"))
    stems = groups.replace("*", r"\w*")
    return stems.replace("~~", r" (?:\w+ ){0,7}?").replace("~", r" (?:\w+ ){0,3}?")
