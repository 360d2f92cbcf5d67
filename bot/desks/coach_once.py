"""Which taps of the coach's desk count once.

They do something at once: a second tap, weeks later by a slip, would do it again.
"""

ONCE = frozenset(
    {
        "clip.ask_off",
        "clip.ask_on",
        "clip.send",
        "coach.emergency_confirm",
        "coach.group_back",
        "coach.invite_other",
        "coach.invite_team",
        "coach.no_answer",
        "coach.no_answer_back",
        "coach.let_start",
        "coach.note",
        "coach.relink",
        "coach.shown_one",
        "coach.stage_anyway",
        "coach.stage_back",
        "coach.tell",
        "coach.tell_many",
        "coach.tests_off",
        "coach.upkeep",
        "hours.set",
        "howto.remove",
        "pause.back",
        "pause.go",
        "rest.back",
        "rest.go",
    }
)
