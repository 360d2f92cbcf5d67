"""From what a keyboard, a dictation or a phone produces to plain lower-case text."""

import re
import unicodedata

FRACTIONS = {"½": ".5", "¼": ".25", "¾": ".75"}
LOOKALIKES = str.maketrans(
    {
        **dict.fromkeys("×✕✖⨯х", "x"),
        **dict.fromkeys("–—−‒―‐‑", "-"),
        **dict.fromkeys("’‘′´`ʹ", "'"),
        **dict.fromkeys("“”″„", '"'),
        **dict.fromkeys("،、，", ","),
        **dict.fromkeys("؛；", ";"),
        **dict.fromkeys("؟？", "?"),
        **dict.fromkeys("٫", "."),
        **dict.fromkeys("⁄÷", "/"),
        **dict.fromkeys("ºª", "."),
        "¿": " ",
        "¡": " ",
    }
)
KEYCAP = re.compile("([0-9#*])\ufe0f?\u20e3")
TAG = re.compile(r"</?[a-zA-Z][^<>\n]{0,20}>")
STAR_BETWEEN_DIGITS = re.compile(r"(?<=\d)\s?\*\s?(?=\d)")
ABOUT_SIGN = re.compile(r"(?<![~\w])[~≈]\s?(?=\d)")
MARKUP = re.compile(r"[*_~|\\\[\]{}]")
UNSEEN = {"So", "Sk", "Cs", "Cf", "Co", "Cn", "Cc"}
LINE_ENDS = {"\r", "\x0b", "\x0c", "\x85", "\u2028", "\u2029"}


def plain(text: str) -> str:
    """Return ``text`` with ASCII digits, one kind of dash, quote and cross, no markup, no emoji."""
    text = KEYCAP.sub(r"\1) ", text.translate(LOOKALIKES))
    for sign, decimals in FRACTIONS.items():
        text = text.replace(sign, decimals)
    text = TAG.sub(" ", unicodedata.normalize("NFKC", text))
    text = "".join(_seen(char) for char in unicodedata.normalize("NFD", text.casefold()))
    text = ABOUT_SIGN.sub(" about ", STAR_BETWEEN_DIGITS.sub("x", text))
    return MARKUP.sub(" ", text)


def _seen(char: str) -> str:
    """Return an ASCII digit for a digit of any script, nothing for accents, a space for emoji."""
    if char.isascii():
        return char if char.isprintable() or char == "\n" else "\n" if char in LINE_ENDS else " "
    digit = unicodedata.decimal(char, None)
    if digit is not None:
        return str(digit)
    kind = unicodedata.category(char)
    if char in LINE_ENDS or kind in {"Zl", "Zp"}:
        return "\n"
    if kind in {"Mn", "Me"}:
        return ""
    return " " if kind in UNSEEN or kind.startswith("Z") else char
