"""Put figures and the units behind them together: seconds, loads, distances, counts of sets."""

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.tokens import Token
from bot.reading.words import Mark

POUND_KG = 0.45359237  # [kg] the international pound, exact by definition
POUND_STEP = 0.5  # [lb] ch: what plates and dumbbells in pounds come in, at the finest
UNITS = {
    Mark.SECONDS: (Mark.SECONDS, 1.0),
    Mark.HOURS: (Mark.SECONDS, 3600.0),
    Mark.MINUTES: (Mark.SECONDS, 60.0),
    Mark.KG: (Mark.KG, 1.0),
    Mark.LB: (Mark.KG, POUND_KG),
    Mark.METRES: (Mark.METRES, 1.0),
    Mark.KILOMETRES: (Mark.METRES, 1000.0),
    Mark.REPS: (Mark.REPS, 1.0),
}
COLOURS = frozenset(
    {
        *("red", "blue", "green", "black", "yellow", "purple", "orange", "grey", "gray", "white"),
        *("pink", "light", "medium", "heavy", "strong", "thin", "thick", "silver", "gold"),
        *("roja", "azul", "verde", "negra", "amarilla", "morada", "naranja", "gris", "blanca"),
        *("ligera", "media", "fuerte", "fina", "gruesa", "rosa", "rojo", "negro"),
    }
)
"""What a band is called by."""
MOST_MINUTES = 10  # [min] CH: above, "m" before seconds stands for metres
ARTICLES = frozenset({"a", "an", "un", "one", "uno", "um", "ein", "une"})
SPELT_OUT = frozenset({"minute", "minuto", "minutes", "minutos"})
MOST_SETS = 20  # [sets] CH: a larger count is no count of sets


def nearest_lb(load_kg: float) -> float:
    """Return a load as somebody who counts in pounds is told it [lb]."""
    return round(load_kg / POUND_KG / POUND_STEP) * POUND_STEP


def join_units(tokens: Sequence[Token]) -> list[Token]:
    """Return the tokens with every unit drawn into its figure."""
    joined: list[Token] = []
    tokens = _spoken_minutes(_second_after_first(tokens))
    at = 0
    while at < len(tokens):
        token, used = _join(tokens, at)
        joined.append(token)
        at += used
    return joined


def _second_after_first(tokens: Sequence[Token]) -> list[Token]:
    """Take "second" for a place where "first" is said too, else for a unit."""
    has_first = any(token.mark is Mark.ORDINAL and token.n == 1 for token in tokens)
    return [
        Token(Mark.ORDINAL, token.text, n=2) if has_first and token.text == "second" else token
        for token in tokens
    ]


def _spoken_minutes(tokens: Sequence[Token]) -> list[Token]:
    """Put "minute ten", "a minute and five", "minute and a half", "half a minute" as figures."""
    turned: list[Token] = []
    at = 0
    while at < len(tokens):
        token, used = _spoken(tokens, at)
        turned.append(token)
        at += used
    return turned


def _spoken(tokens: Sequence[Token], at: int) -> tuple[Token, int]:
    marks = [token.mark for token in tokens[at : at + 6]]
    if marks[:1] == [Mark.HALF] and Mark.MINUTES in marks[1:3]:
        between = marks[1 : marks.index(Mark.MINUTES)]
        if between in ([], [Mark.FILLER]):
            return _in_seconds(tokens[at], ((30.0,),)), marks.index(Mark.MINUTES) + 1
    start = 1 if marks[:1] in ([Mark.NUMBER], [Mark.FILLER]) else 0
    if marks[start : start + 1] != [Mark.MINUTES] or (start and not _is_whole(tokens[at])):
        return tokens[at], 1
    whole = tokens[at].value if marks[0] is Mark.NUMBER else 1.0
    behind = marks[start + 1 :]
    and_half = [m for m in behind[:3] if m is not Mark.FILLER]
    if and_half[:2] == [Mark.AND, Mark.HALF]:
        return _in_seconds(tokens[at], ((60 * whole + 30,),)), start + 1 + behind.index(
            Mark.HALF
        ) + 1
    is_and = behind[:2] == [Mark.AND, Mark.NUMBER]
    is_lone = behind[:1] == [Mark.NUMBER] and tokens[at + start].text in SPELT_OUT
    if not (is_and or is_lone):
        return tokens[at], 1
    rest = tokens[at + start + (2 if is_and else 1)]
    used = start + (3 if is_and else 2)
    unit = tokens[at + used].mark if at + used < len(tokens) else None
    is_seconds = unit is Mark.SECONDS
    if not rest.is_bare or not 0 < rest.value < 60:
        return tokens[at], 1
    together: tuple[tuple[float, ...], ...] = ((60 * whole + rest.value,),)
    if not is_seconds and (marks[0] is Mark.NUMBER or not rest.text.isalpha()):
        together = (*together, (60 * whole, rest.value))
    return _in_seconds(tokens[at], together), used + is_seconds


def _is_whole(token: Token) -> bool:
    """Tell whether a token may count minutes: a small whole figure, or an article."""
    if token.mark is Mark.FILLER:
        return token.text in ARTICLES
    return token.is_bare and token.value.is_integer() and 1 <= token.value <= MOST_MINUTES


def _join(tokens: Sequence[Token], at: int) -> tuple[Token, int]:
    token = tokens[at]
    after = tokens[at + 1] if at + 1 < len(tokens) else None
    if _is_out_of_ten(tokens, at):
        return Token(Mark.RATING, token.text, choices=token.choices), 3
    if token.mark is Mark.NUMBER and after is not None and token.unit is None:
        return _figure(tokens, at, after)
    if token.mark is Mark.SET and after is not None and after.is_bare and after.value.is_integer():
        return Token(Mark.ORDINAL, token.text, n=int(after.value)), 2
    if token.mark is Mark.BODYWEIGHT:
        return _bodyweight(tokens, at)
    if token.text == "second":
        return Token(Mark.ORDINAL, token.text, n=2), 1
    if token.text in ARTICLES and after is not None and after.mark in {Mark.MINUTES, Mark.HOURS}:
        return _minutes(token, tokens, at, 60.0 if after.mark is Mark.MINUTES else 3600.0)
    if token.mark is Mark.OR and _is_load(tokens, at + 1):
        return Token(Mark.AT, token.text), 1
    if token.mark is Mark.WORD and after is not None and after.mark is Mark.BAND:
        return Token(Mark.BAND, token.text), 2
    if token.mark is Mark.AT and (colour := _colour_behind(tokens, at)):
        return Token(Mark.BAND, tokens[colour].text), colour - at + 1
    return token, 1


def _is_out_of_ten(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether "four out of ten" stands there in words."""
    if at + 2 >= len(tokens) or not (tokens[at].is_bare and tokens[at + 2].is_bare):
        return False
    is_ten = tokens[at + 2].value == 10 and tokens[at].value <= 10
    return is_ten and tokens[at + 1].text == "out of"


def _colour_behind(tokens: Sequence[Token], at: int) -> int:
    """Return where the colour of "with the blue one" stands, 0 where there is none."""
    for i in range(at + 1, min(at + 3, len(tokens))):
        if tokens[i].text in COLOURS and tokens[i].mark in {Mark.WORD, Mark.CHAT}:
            return i
        if tokens[i].mark is not Mark.FILLER:
            break
    return 0


def _is_times_behind(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether "3 times" stands at the end: a count of sets."""
    token, after = tokens[at], tokens[at + 1]
    last = tokens[at + 2].mark if at + 2 < len(tokens) else None
    is_count = token.is_bare and token.value.is_integer() and token.value <= MOST_SETS
    is_behind = at > 0 and tokens[at - 1].mark is not Mark.LINE
    return is_count and is_behind and after.text in {"times", "veces"} and last is not Mark.NUMBER


def _is_load(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether "20 kg" stands there: then "a" in front of it is Spanish for "at"."""
    marks = [token.mark for token in tokens[at : at + 2]]
    return len(marks) == 2 and marks[0] is Mark.NUMBER and marks[1] in {Mark.KG, Mark.LB}


def _figure(tokens: Sequence[Token], at: int, after: Token) -> tuple[Token, int]:
    token = tokens[at]
    if after.mark is Mark.SETS and token.is_bare and token.value <= MOST_SETS:
        return Token(Mark.COUNT, token.text, n=int(token.value)), 2
    if after.mark is Mark.SET and token.is_bare and token.value == 1:
        return Token(Mark.COUNT, token.text, n=1), 2
    if _is_times_behind(tokens, at):
        return Token(Mark.COUNT, token.text, n=int(token.value)), 2
    glued_minutes = (
        after.mark is Mark.METRES and after.is_glued and _is_glued_figure(tokens, at + 2)
    )
    if after.mark in {Mark.MINUTES, Mark.HOURS} or glued_minutes or _is_m_for_minutes(tokens, at):
        return _minutes(token, tokens, at, 3600.0 if after.mark is Mark.HOURS else 60.0)
    if after.mark not in UNITS:
        return token, 1
    unit, factor = UNITS[after.mark]
    choices = token.choices
    if len(choices) > 1 and unit is not Mark.REPS:
        choices = choices[1:]
    scaled = tuple(tuple(value * factor for value in values) for values in choices)
    if any(len(values) > 1 for values in scaled):
        return replace(token, unit=None), 1
    return replace(token, choices=scaled, unit=unit, text=token.text + after.text), 2


def _is_m_for_minutes(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether seconds follow: "1m 5s"."""
    marks = [token.mark for token in tokens[at + 1 : at + 4]]
    return marks == [Mark.METRES, Mark.NUMBER, Mark.SECONDS] and tokens[at].value <= MOST_MINUTES


def _is_glued_figure(tokens: Sequence[Token], at: int) -> bool:
    return at < len(tokens) and tokens[at].is_glued and tokens[at].is_bare


def _minutes(token: Token, tokens: Sequence[Token], at: int, factor: float) -> tuple[Token, int]:
    """Read "1 min", "1 min 10 s", "1m10", "1h30"; "1 min 10" may also be two figures."""
    whole = (token.choices[-1][0] if token.choices else 1.0) * factor
    rest = tokens[at + 2] if at + 2 < len(tokens) else None
    if rest is None or not rest.is_bare or not 0 <= rest.value < 60:
        return _in_seconds(token, ((whole,),)), 2
    together = whole + rest.value * factor / 60
    is_long = factor == 60.0 and whole > 60 * MOST_MINUTES and not rest.is_glued
    unit = tokens[at + 3].mark if at + 3 < len(tokens) else None
    if unit is (Mark.MINUTES if factor == 3600 else Mark.SECONDS):
        return _in_seconds(token, ((together,),)), 4
    if is_long:
        return _in_seconds(token, ((whole,),)), 2
    if rest.is_glued:
        return _in_seconds(token, ((together,),)), 3
    return _in_seconds(token, ((together,), (whole, rest.value))), 3


def _in_seconds(token: Token, choices: tuple[tuple[float, ...], ...]) -> Token:
    return Token(Mark.NUMBER, token.text, choices=choices, unit=Mark.SECONDS)


def _bodyweight(tokens: Sequence[Token], at: int) -> tuple[Token, int]:
    """Read "bw" as no load and "bw+10" or "bw + 10 kg" as a load; less than body weight as junk."""
    sign = tokens[at + 1].mark if at + 1 < len(tokens) else None
    if sign is Mark.MORE and tokens[at + 1].text == "mas":
        sign = Mark.PLUS
    figure = tokens[at + 2] if at + 2 < len(tokens) else None
    if sign not in {Mark.PLUS, Mark.DASH} or figure is None or figure.mark is not Mark.NUMBER:
        return Token(Mark.BODYWEIGHT, "bw", choices=((0.0,),), unit=Mark.KG), 1
    if sign is Mark.DASH:
        return Token(Mark.JUNK, "bw-"), 3
    unit = tokens[at + 3].mark if at + 3 < len(tokens) else None
    is_load = unit in {Mark.KG, Mark.LB}
    factor = UNITS[unit][1] if unit is not None and is_load else 1.0
    choices = ((figure.choices[-1][0] * factor,),)
    known = Mark.KG if is_load else None
    return Token(Mark.BODYWEIGHT, "bw", choices=choices, unit=known), 4 if is_load else 3
