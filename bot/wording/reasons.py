"""Why a rule decided as it did, in one plain sentence for whoever asks.

The tables have one entry a reason code; of its templates the first is said whose figures are all
there, so the last needs none.
"""

import string
from collections.abc import Mapping

from bot.wording.reason_figures import shown
from bot.wording.reason_sentences_care import CALENDAR, PAIN
from bot.wording.reason_sentences_season import BASELINES, SEASONS
from bot.wording.reason_sentences_training import (
    CAPACITIES,
    DOSES,
    GAPS,
    GATES,
    PERMISSIONS,
    VOLUMES,
)
from bot.wording.reason_sentences_week import WEEKS
from bot.wording.tongue import Template, Tongue
from scheduler.reasons import Reason

SENTENCES: Mapping[str, tuple[Template, ...]] = {
    **PERMISSIONS,
    **DOSES,
    **VOLUMES,
    **GAPS,
    **GATES,
    **CAPACITIES,
    **WEEKS,
    **SEASONS,
    **BASELINES,
    **PAIN,
    **CALENDAR,
}


def say_reason(tongue: Tongue, reason: Reason) -> str:
    """Say one reason; an unknown one is named by its code's own words, and nothing ever fails."""
    figures = shown(tongue, reason.figures)
    for template in SENTENCES.get(reason.code, ()):
        if fields_of(template) <= figures.keys():
            return tongue.say(template, **figures)
    return _unknown(tongue, reason.code)


def fields_of(template: Template) -> frozenset[str]:
    """Return the names of the figures that a template needs."""
    return frozenset(name for _, name, _, _ in string.Formatter().parse(template) if name)


def _unknown(tongue: Tongue, code: str) -> str:
    words = code.rpartition(".")[2].replace("_", " ")
    return tongue.say("By a rule: {words}.", words=words)
