"""One athlete's fault kept apart from the others, where many are looked at for one message."""

from collections.abc import Callable
from typing import TypeVar

from bot.turn import Turn
from bot.writer import log_fault

Found = TypeVar("Found")


def looked_up(turn: Turn, reference: str, look: Callable[[], Found]) -> Found | None:
    """Return what was found; None where it failed, which is logged under the reference.

    What it wrote before it failed is undone, and the turn goes on.
    """
    try:
        with turn.tx.begin_nested():
            return look()
    except Exception as fault:  # noqa: BLE001 (one athlete's fault never costs the others)
        log_fault(reference, fault)
        return None
