"""A complete checklist, drafted as a decision for the coach."""

from bot.wording.reasons import say_reason
from bot.wording.tongue import Tongue
from scheduler.training.gates import Checklist


def stage_up(tongue: Tongue, name: str, stage: int, asked: Checklist) -> str:
    """Propose the next stage, with every figure that speaks for it."""
    head = tongue.say(
        "<b>{name}</b> has the whole checklist for stage {stage}. You decide.",
        name=name,
        stage=stage,
    )
    return "\n".join([head, *(f"· {say_reason(tongue, item.reason)}" for item in asked.items)])
