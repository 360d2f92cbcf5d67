"""What a number on the 11-point scale means at once.

The bands come from a pain-monitoring model tried on tendons of the leg; for shoulder, elbow and
wrist they are an extrapolation, used with care.
"""

from collections.abc import Sequence
from math import ceil, isfinite

from scheduler.pain.events import PainSign
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.values import Level
from scheduler.reasons import Decision, reason
from scheduler.sources import CH, CP

LOWEST, HIGHEST = 0, 10  # [of 10] serlin1995: 11-point numeric scale, whole numbers
WATCH_UP_TO = 2  # [of 10] silbernagel2007: 0-2 safe (bands from memory); ch: some print 0-3
EASE_UP_TO = 5  # [of 10] silbernagel2007: 3-5 acceptable, above 5 high risk (from memory)
STOPS_AT_ONCE = {
    PainSign.SUDDEN_SHARP: PainReason.SUDDEN_SHARP,
    PainSign.STOPPED_A_SET: PainReason.STOPPED_A_SET,
    PainSign.DISTURBS_EVERYDAY_USE: PainReason.DISTURBS_EVERYDAY_USE,
}


def counted(said: Sequence[float]) -> tuple[int | None, bool]:
    """Return the score that counts at once, and whether the number must be asked again.

    Args:
        said: every number that was said about one region, in any order [of 10].

    Returns:
        The highest inside 0-10, a half counted upward, None when there is none; and True unless
        exactly one whole number inside the scale was said (ch: doubt is asked and counts high).

    """
    inside = [number for number in said if isfinite(number) and LOWEST <= number <= HIGHEST]
    is_clear = len(said) == 1 == len(inside) and float(inside[0]).is_integer()
    return (ceil(max(inside)) if inside else None), not is_clear


def level_of_score(score: int | None) -> Decision[Level]:
    """Return the level that a score has by itself.

    Args:
        score: what counts [of 10], None for pain words whose number is not known.

    Returns:
        0 none, 1-2 watch, 3-5 ease, above 5 rest; words alone watch. Source: silbernagel2007
        (the careful 0-2 where some texts print 0-3 is chosen).

    """
    if score is None:
        return Decision(value=Level.WATCH, reasons=(reason(PainReason.WORDS_ONLY, CH),))
    if score == LOWEST:
        why = reason(PainReason.NO_PAIN, "silbernagel2007", score=score)
        return Decision(value=Level.NONE, reasons=(why,))
    if score <= WATCH_UP_TO:
        level, limit = Level.WATCH, WATCH_UP_TO
    elif score <= EASE_UP_TO:
        level, limit = Level.EASE, EASE_UP_TO
    else:
        level, limit = Level.REST, EASE_UP_TO
    why = reason(PainReason.SCORE_BAND, "silbernagel2007", score=score, limit=limit)
    return Decision(value=level, reasons=(why,))


def level_of_report(score: int | None, signs: frozenset[PainSign]) -> Decision[Level]:
    """Return the level of a report by its number and by what was said beside it.

    Plain muscle soreness without a number is no pain; with one, the number decides (ch, the
    careful side). Painkillers make no score lower. A sudden sharp onset, a stopped set and
    disturbed everyday use rest the region whatever the number (cp).
    """
    grave = [reason(STOPS_AT_ONCE[sign], CP) for sign in sorted(signs) if sign in STOPS_AT_ONCE]
    if grave:
        return Decision(value=Level.REST, reasons=tuple(grave))
    if score is None and PainSign.PLAIN_SORENESS in signs:
        return Decision(value=Level.NONE, reasons=(reason(PainReason.PLAIN_SORENESS, CP),))
    return level_of_score(score)
