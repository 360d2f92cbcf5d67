"""How much repeated efforts fall off: shown as a trend after total and best, never for a gate."""

from collections.abc import Sequence


def decrement_pct(efforts: Sequence[float], *, is_lower_better: bool = False) -> float:
    """Return the percentage decrement [%, 0 or more] of repeated efforts.

    Parameters: ``efforts`` [s, repetitions or any one unit, above 0], in order, at least two;
    ``is_lower_better`` for times over a fixed distance. Source: glaister2008, best of eight
    formulas: 100 (1 - sum / (n best)), or 100 sum / (n best) - 100 where lower is better. Its
    retest reliability is poor (CV 0.8-145.7 %, same source): a trend, never a gate.

    Raises:
        ValueError: for fewer than two efforts, or one that is not above 0.

    """
    if len(efforts) < 2:
        raise ValueError("expected at least two efforts")
    if min(efforts) <= 0:
        raise ValueError("expected every effort above 0")
    if is_lower_better:
        return 100 * sum(efforts) / (len(efforts) * min(efforts)) - 100
    return 100 * (1 - sum(efforts) / (len(efforts) * max(efforts)))
