"""What a walk writes: lines behind every command, answers to every question, wrong ones first.

Reasons and messages are words of no language, so that what is typed is never taken for the bot's.
"""

from collections.abc import Mapping

WORDS = "lorem ipsum"
OWN_WORD = "zafirum"
"""Stands in what Ines writes and in what is written of her: nobody else may ever read it."""

COMMANDS: Mapping[str, tuple[str, ...]] = {
    "who": ("", "Nobody", "In", "Inma", "Ines"),
    "roster": ("Nobody", "", "Juniors"),
    "tell": ("", "Ines", "In lorem", "all", "all lorem ipsum", "Juniors lorem"),
    "clips": ("ask on In", "ask off Ines", "ask off In", "ask", "In", ""),
    "group": ("", "In", "Ines", "Ines Juniors", "Ines all", "Ines none", "Nobody Juniors"),
    "stage": ("", "In 2 lorem", "Ines", "Ines 9 x", "Ines 2 lorem ipsum", "Ines 1 lorem ipsum"),
    "plan": ("", "In", "Ines nonsense", "Ines", "Ines ban nonsense"),
    "swap": ("", "In", "Ines"),
    "dose": ("", "In", "Ines"),
    "rest": ("", "In", "Ines nonsense", "Ines"),
    "pause": ("", "nonsense", "In", "Ines", "Ines 2026-03-30 lorem", "Ines 1 week lorem"),
    "tests": ("", "In", "Inma"),
    "season": ("", "In", "Ines", "Ines race 2026-08-01 main", "Ines nonsense"),
    "clear": ("", "In", "Ines"),
    "giveback": ("", "In", "Ines", "Ines overhead lorem"),
    "shown": ("", "In", "Ines", "Ines lorem"),
    "upkeep": ("", "In on lorem", "Ines on lorem ipsum", "Ines off lorem"),
    "howto": ("", "nonsense", "hang"),
    "movements": ("",),
    "standards": ("",),
    "note": ("", "In lorem", "Ines lorem zafirum"),
    "audit": ("", "In", "Ines"),
    "emergency": ("", "nonsense", "112", "911 US"),
    "hours": ("nonsense", "7:00-8:00", "", "7:00-22:00", "sunday 18:00"),
    "export": ("nonsense", "", "In", "Ines"),
    "invite": ("", "Ines"),
    "practice": ("please", "", "end"),
    "house": ("",),
    "move": ("", "Ines", "Nobody to Otto", "Ines to Nobody", "In to Otto"),
    "standin": ("", "Nobody", "Mara Otto", "Mara none"),
    "erase": ("", "Nobody", "In"),
    "start": ("",),
    "help": ("",),
}
"""Lines behind a coach's or owner's command, one a day; a command without lines is given bare."""

OWN: Mapping[str, tuple[str, ...]] = {
    "pain": ("", "wrist", "wrist 2"),
    "pause": ("nonsense", ""),
    "settings": ("nonsense", ""),
    "how": ("nonsense", "hang", ""),
    "history": ("nonsense", ""),
    "leave": (),
}
"""Lines behind an athlete's own command, where they differ from the bare one."""

TYPED: Mapping[str, tuple[str, ...]] = {
    "coach.group_text": ("all", "Lorem"),
    "review.text": ("lorem ipsum",),
    "coach.clear_day": ("???", "2026-01-01"),
}
"""Answers to a question by its kind, or by its kind and step; else any words are tried."""
SAYS_ANYTHING = frozenset({"coach.write", "coach.why", "file.why", "clip.words"})
"""Questions that any words answer: they are answered once."""
WRONG = "???"

HELD = frozenset(
    {
        "leave.yes",
        "coach.erase.first",
        "coach.erase.second",
        "owner.erase.first",
        "owner.erase.second",
        "owner.move",
        "break.end",
        "coach.practice_end",
    }
)
"""Acts that end something: the curious leave them to a scene."""

AGAIN: Mapping[str, str] = {
    "coach.export_file": "each tap sends the file as it is now, and is on record",
    "coach.handover": "each tap sends the page as it is now, and is on record",
    "export.own": "each tap sends the file as it is now, and is on record",
    "pain.list": "a sign that is tapped counts whenever it is tapped: it only makes more careful",
}
"""Acts whose used buttons may well act again, with the reason."""

ELSEWHERE: Mapping[str, str] = {
    "proposal.batch": "tests/conversation/test_coach_batches.py: it takes two complete checklists",
    "proposal.batch_yes": "tests/conversation/test_coach_batches.py",
    "proposal.batch_no": "tests/conversation/test_coach_batches.py",
}
"""Acts that the walk does not reach: the test that does, and why not here."""

ENGLISH_STILL: Mapping[str, str] = {
    "(why.figures)": "the figures of a reason stand under the rule's own English name",
    ".yaml": "what is wrong in a file is told in the words of the checker, with its line",
}
"""What is told in English in every language, by what was done; each is known and left."""
