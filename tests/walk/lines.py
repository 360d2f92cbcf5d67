"""What a walk writes: lines behind every command, answers to every question, wrong ones first."""

from collections.abc import Mapping

ANY_WORDS = ("???", "no lo sé", "3")
COMMANDS: Mapping[str, tuple[str, ...]] = {
    "who": ("", "Ines", "Nobody"),
    "tell": ("", "Ines", "Ines well done", "all", "all see you on Friday", "Juniors well done"),
    "roster": ("", "Juniors", "Nobody"),
    "group": ("", "Ines", "Ines Juniors", "Ines all", "Ines none", "Nobody Juniors"),
    "hours": ("", "7:00-22:00", "sunday 18:00", "7:00-8:00", "nonsense"),
    "practice": ("", "please", "end"),
    "move": ("", "Ines", "Nobody to Otto", "Ines to Nobody", "Ines to Otto"),
    "stage": ("", "Ines", "Ines 9 x", "Ines 2 strong and patient", "Ines 1 back again"),
    "season": ("", "Ines", "Ines race 2026-08-01 main", "Ines nonsense"),
    "clear": ("", "Ines", "Ines looked at it together"),
    "giveback": ("", "Ines", "Ines overhead all is well"),
    "shown": ("", "Ines", "Ines seen on a clip"),
    "upkeep": ("", "Ines on keeps strength", "Ines off enough now"),
    "note": ("", "Ines", "Ines likes mornings"),
    "audit": ("", "Ines"),
    "emergency": ("", "112", "911 US", "nonsense"),
    "invite": ("", "Nia"),
    "standin": ("", "Mara Otto", "Nobody"),
    "pause": ("", "2 weeks", "nonsense"),
    "pain": ("", "wrist 2", "muñeca 2"),
    "why": ("",),
}
"""Lines behind a command, given one after another on different days; others are given bare."""

TYPED: Mapping[str, tuple[str, ...]] = {
    "coach.group_text": ("all", "Early birds"),
    "review.text": ("A good month.",),
}
"""Answers to a question by its kind, or by its kind and step; else any words are tried."""

LAST_OF_ALL = frozenset({"leave", "erase", "move"})
"""What ends somebody's time with us is done when all else is done."""
