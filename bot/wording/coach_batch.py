"""Decisions that need no thought: the list of what one tap would approve, and what it did."""

from collections.abc import Sequence

from bot.wording.labels import label
from bot.wording.tongue import Tongue


def offer_label(tongue: Tongue, count: int) -> str:
    """Label the button that leads to the list."""
    return label(tongue, "Approve {n} without a doubt", n=count)


def ask(tongue: Tongue, moves: Sequence[tuple[str, int, int]]) -> str:
    """List what would be approved: each name with the stage before and after."""
    return "\n".join(
        [
            tongue.say("<b>These would move up</b>"),
            *(
                tongue.say("{name}: stage {old} → {new}", name=name, old=old, new=new)
                for name, old, new in moves
            ),
            tongue.say(
                "Each of them: checklist complete, no pain in 14 days, nothing left out, "
                "no alert, no message that waits. Each is recorded on its own and can be "
                "taken back."
            ),
        ]
    )


def yes_label(tongue: Tongue, count: int) -> str:
    """Label the button that approves them."""
    if count == 1:
        return label(tongue, "Move up 1")
    return label(tongue, "Move up all {n}", n=count)


def leave_label(tongue: Tongue) -> str:
    """Label the button that approves nothing."""
    return label(tongue, "Not now")


def left(tongue: Tongue) -> str:
    """Nothing was approved."""
    return tongue.say("All right, each of them stays to be decided.")


def nothing(tongue: Tongue) -> str:
    """None of them is without a doubt any more."""
    return tongue.say("None of these is without a doubt any more. See /roster.")


def done(
    tongue: Tongue, moves: Sequence[tuple[str, int, int]], *, held: Sequence[str], untold: int
) -> str:
    """Tell who moved up, and who did not because something came up meanwhile."""
    lines = [
        tongue.say("{name}: stage {old} → {new}", name=name, old=old, new=new)
        for name, old, new in moves
    ]
    lines.insert(0, tongue.count(len(moves), "<b>1 moved up</b>", "<b>{n} moved up</b>"))
    if held:
        lines.append(
            tongue.say("Not moved, something changed since: {names}.", names=", ".join(held))
        )
    if untold:
        lines.append(tongue.say("{n} of them have no open chat and were not told.", n=untold))
    return "\n".join(lines)


def take_back_label(tongue: Tongue, name: str) -> str:
    """Label the button that takes one of them back."""
    return label(tongue, "Take back {name}", name=name)
