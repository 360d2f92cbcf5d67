"""Cut plain text into figures, words and signs; nothing is understood yet."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from bot.reading.words import Mark

Choices = tuple[tuple[float, ...], ...]
"""The numbers that a figure may stand for, the likelier first: "8,6" is (8, 6) or (8.6)."""


@dataclass(frozen=True, slots=True)
class Lexeme:
    """A piece of the text; ``is_glued`` when nothing stands before it."""

    kind: str
    text: str
    choices: Choices = ()
    is_glued: bool = False


NUMBERED = r"(?:item|exercise|ex\.?|ejercicio|ej\.?|number|numero|num\.?|nr\.?) ?|no\. ?|n\. ?|#"
"""What may stand before the number of an item at the beginning of a line."""
PATTERNS: tuple[tuple[str, str], ...] = (
    ("line", r"\n"),
    (
        "rating",
        (
            r"(?<![\d/.,:-])\d{1,2}(?:[.,]\d)?(?:\s?(?:-|to|or|a|o)\s?\d{1,2})?"
            r"\s?(?:/|out of|sobre)\s?(?:10|ten|diez)(?![\d/]|[.,:]\d|[ \t]?x[ \t]?\d)"
        ),
    ),
    ("date", r"\d{4}-\d{2}-\d{2}(?!\d)"),
    ("front", rf"(?m:^)[ \t]*(?:{NUMBERED})?\d{{1,2}}(?:\)|[.:](?=[ \t]))"),
    ("front", rf"(?m:^)[ \t]*(?:{NUMBERED})\d{{1,2}}\b(?![ \t]*(?:sets?|series|reps?)\b)"),
    ("front", r"(?m:^)[ \t]*\(\d{1,2}\)(?=[ \t])|(?m:^)[ \t]*(?:\d{1,2}-(?=[ \t])|n \d{1,2}:)"),
    ("front", r"(?m:^)[ \t]*\d{1,2}(?=[ \t]*\([a-z])"),
    (
        "front",
        (
            r"(?<![^\s,;])\d{1,2}\)(?=\s)|#\d{1,2}\b|"
            r"\b(?:item|exercise|ex|ejercicio|ej) ?\d{1,2}\b[:.]?"
        ),
    ),
    ("clock", r"(?<![\d:])\d{1,2}:[0-5]\d(?![\d:])|(?<![\w:)\]]):[0-5]\d(?![\d:])"),
    ("quote", r"\d{1,2}'(?:\s?[0-5]?\d)?(?:\"|'')?(?!\d)|\d{1,3}(?:\"|'')"),
    (
        "junk",
        r"\d{1,2}(?:[:.]\d\d)?\s?[ap]\.?m\b|\d+e[+-]?\d+|\d{6,}[\d.,]*|\d+\.\d{3,}(?![.\d])|(?<![\w)\]\s.,;:/-])-\d+|(?<!\S)-\d+",
    ),
    ("list", r"\d{1,4}(?:,\d{1,4}){2,}(?!\d)|\d{1,4}(?:\.\d{1,4}){2,}(?!\d)"),
    ("pair", r"\d{1,4},\d{1,4}(?!\d)"),
    ("ordinal", r"\d{1,2}(?:st|nd|rd|th)\b"),
    ("listed", r"(?<=[\s,;])[1-9][.:-](?=[ \t])"),
    ("number", r"\d{1,5}(?:\.\d{1,2})?(?!\d)|(?<!\d)\.\d{1,2}(?!\d)"),
    ("word", r"[^\W\d_]+(?:'[^\W\d_]+)*"),
    ("?", r"\?"),
    ("stop", r"[.!;]+"),
    (",", r","),
    ("/", r"/"),
    ("-", r"-"),
    ("+", r"\+"),
    ("@", r"@"),
    ("risky", r"[%<>^$€£°]"),
)
MASTER = re.compile("|".join(f"(?P<k{n}>{pattern})" for n, (_, pattern) in enumerate(PATTERNS)))
HYPHEN = re.compile(r"(?<=[^\W\d_])-(?=[^\W\d_])")
EACH_SHORT = re.compile(r"\b(?:e/s|e\.s\.|c/lado|c/l)(?!\w)")
UNIT_CROSS = re.compile(r"(?<=\d)(kgs?|lbs?|m|s|secs?|mts?)x(?=\d)")
DASHED_LINE = re.compile(r"(?m)^[ \t]*(\d{1,2})[ \t]+-[ \t]+(?=\S)")
WITH_SHORT = re.compile(r"\bw/\s?(?!o)")
POUND_SIGN = re.compile(r"(?<=\d)\s?#")
ARROW = re.compile(r"-+>|=>|→")
SHORT_MINUTES = re.compile(r"(?<=\d)['\"]{2}")
NUMERAL = re.compile(r"\d+(?:[.,]\d+)?")


def cut(text: str) -> Iterator[Lexeme]:
    """Yield the pieces of ``text`` in order; signs without meaning are left out."""
    text = HYPHEN.sub(" ", EACH_SHORT.sub(" each side ", text))
    text = POUND_SIGN.sub(" lb ", WITH_SHORT.sub(" with ", text))
    text = ARROW.sub(" should be ", UNIT_CROSS.sub(r"\1 x ", SHORT_MINUTES.sub('"', text)))
    yield from _in_turn(list(_pieces(_with_brackets(text))))


def _with_brackets(text: str) -> str:
    """Write "1 - 20 20" as "1) 20 20" where every line begins so, each number above the last."""
    found = [int(match[1]) for match in DASHED_LINE.finditer(text)]
    lines = [line for line in text.split("\n") if line.strip()]
    is_list = len(found) == len(lines) > 1 and found == sorted(set(found))
    return DASHED_LINE.sub(r"\1) ", text) if is_list else text


def _in_turn(pieces: list[Lexeme]) -> Iterator[Lexeme]:
    """Take "2." within a line for the next item's where the line began with "1."."""
    turn = 0
    for piece in pieces:
        if piece.kind == "line":
            turn = 0
        elif piece.kind == "front":
            turn = int(piece.choices[0][0])
        is_next = piece.kind == "listed" and turn and piece.choices[0][0] == turn + 1
        if is_next:
            turn += 1
        if piece.kind == "listed":
            kind = "front" if is_next else "number"
            yield Lexeme(kind, piece.text, piece.choices, piece.is_glued)
            if not is_next and piece.text.endswith("."):
                yield Lexeme("stop", ".", is_glued=True)
        else:
            yield piece


def _pieces(text: str) -> Iterator[Lexeme]:
    end = 0
    for match in MASTER.finditer(text):
        kind = PATTERNS[int((match.lastgroup or "k0")[1:])][0]
        if kind == "front" and _closes_a_bracket(text, match):
            kind = "number"
        yield Lexeme(kind, match[0].strip(), _choices(kind, match[0]), match.start() == end > 0)
        end = match.end()


def _closes_a_bracket(text: str, match: re.Match[str]) -> bool:
    """Tell whether the bracket after a number closes one that was opened on the same line."""
    before = text[text.rfind("\n", 0, match.start()) + 1 : match.start()]
    return ")" in match[0] and before.count("(") > before.count(")")


def _choices(kind: str, text: str) -> Choices:
    numerals = [numeral.replace(",", ".") for numeral in NUMERAL.findall(text)]
    if kind == "rating":
        return (tuple(float(numeral) for numeral in numerals[:-1] or numerals),)
    if kind in {"clock", "quote"}:
        return (_seconds(text, numerals),)
    if kind == "list":
        return (tuple(float(part) for part in re.split("[.,]", text)),)
    if kind == "pair":
        whole, decimals = text.split(",")
        return (float(whole), float(decimals)), (float(f"{whole}.{decimals}"),)
    if kind == "number":
        return ((float(text.rstrip(").")),),)
    return ((float(numerals[0]),),) if kind in {"front", "ordinal", "listed"} else ()


def _seconds(text: str, numerals: list[str]) -> tuple[float, ...]:
    """Read ``1:05``, ``:40``, ``1'05"`` or ``50"`` as seconds."""
    figures = [float(part) for part in re.findall(r"\d+", text)]
    if len(figures) == 2:
        return (60 * figures[0] + figures[1],)
    is_minutes = "'" in text and not text.endswith("''")
    return (60 * float(numerals[0]),) if is_minutes else (figures[0],)


MARK_OF_SIGN = {
    "line": Mark.LINE,
    "rating": Mark.RATING,
    "junk": Mark.JUNK,
    "?": Mark.QUESTION,
    "stop": Mark.STOP_SIGN,
    ",": Mark.COMMA,
    "/": Mark.SLASH,
    "-": Mark.DASH,
    "+": Mark.PLUS,
    "@": Mark.AT,
    "risky": Mark.RISKY,
}
