"""A complete checklist, drafted as a decision for the coach."""

from collections.abc import Mapping

from bot.wording import coach_checklist
from bot.wording.tongue import Tongue
from scheduler.catalogue.values import Measure
from scheduler.training.gates import Checklist


def stage_up(
    tongue: Tongue, name: str, stage: int, asked: Checklist, *, measures: Mapping[str, Measure]
) -> str:
    """Propose the next stage, with every figure that speaks for it."""
    head = tongue.say(
        "<b>{name}</b> has the whole checklist for stage {stage}. You decide.",
        name=name,
        stage=stage,
    )
    return "\n".join([head, *coach_checklist.lines(tongue, asked, measures=measures)])
