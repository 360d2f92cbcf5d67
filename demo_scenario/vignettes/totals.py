"""The figures of a run: what was read below its level, and what was raised for nothing."""

from collections.abc import Sequence
from dataclasses import dataclass

from demo_scenario.vignettes.playing import Played
from demo_scenario.vignettes.values import Kind
from scheduler.pain.values import Level


@dataclass(frozen=True)
class Totals:
    """Counts over a run: an alarm is said outright, a question may be answered away."""

    red_flags: int
    below: int
    ordinary: int
    ordinary_off: int
    harmless: int
    alarms: int
    questions: int
    raised_otherwise: int
    urgency_off: int
    asks_off: int

    def lines(self, title: str) -> tuple[str, ...]:
        """Return the figures, a line each."""
        return (
            title,
            f"  red flags below their level: {_of(self.below, self.red_flags)}",
            f"  harmless, alarm at clinician or above: {_of(self.alarms, self.harmless)}",
            f"  harmless, provisional question: {_of(self.questions, self.harmless)}",
            f"  harmless, another level than expected: {_of(self.raised_otherwise, self.harmless)}",
            f"  ordinary pain, another level: {_of(self.ordinary_off, self.ordinary)}",
            f"  another urgency: {self.urgency_off}; asked otherwise: {self.asks_off}",
        )


def totals_of(played: Sequence[Played]) -> Totals:
    """Count."""
    flags = [one for one in played if one.vignette.expect.kind is Kind.RED_FLAG]
    ordinary = [one for one in played if one.vignette.expect.kind is Kind.ORDINARY]
    harmless = [one for one in played if one.vignette.expect.kind is Kind.HARMLESS]
    raised = [one for one in harmless if _is_raised(one)]
    others = [one for one in harmless if not _is_raised(one)]
    return Totals(
        red_flags=len(flags),
        below=sum(one.is_below for one in flags),
        ordinary=len(ordinary),
        ordinary_off=sum(one.level != one.vignette.expect.level for one in ordinary),
        harmless=len(harmless),
        alarms=sum(not one.asks for one in raised),
        questions=sum(one.asks for one in raised),
        raised_otherwise=sum(one.level != one.vignette.expect.level for one in others),
        urgency_off=sum(one.urgency != one.vignette.expect.urgency for one in played),
        asks_off=sum(one.asks != one.vignette.expect.asks for one in played),
    )


def _is_raised(one: Played) -> bool:
    return one.level >= Level.CLINICIAN > one.vignette.expect.level


def _of(count: int, whole: int) -> str:
    share = f" ({100 * count / whole:.1f} %)" if whole else ""
    return f"{count} of {whole}{share}"
