"""Messages with figures, or words such as "done", from which nothing may be stored unasked.

All CHOSEN: our own invention. Each was once recorded, or nearly so.
"""

import pytest

from bot.reading.reply import read
from bot.reading.values import Correction, Recorded
from tests.reading.team import PLACES

NEVER_STORED: tuple[tuple[str, str], ...] = tuple(
    (place, text)
    for place, texts in {
        "hang": (
            "my max is 45 40 38\n45 40 38 for warm up\nlet's do 45 40 38 tomorrow\n"
            "for anna 45 40 38\nI think I can do 45 40 38\nis 45 40 38 good\nplan says 45 40 38\n"
            "not quite 45 40 38\njust under 45 40 38\na bit less than 45 each\n45+ every set\n"
            "40-45 each\n45 or 40 each\n45 40 380\n45 4 38\n450 400 380\n45 40 38 @ 60kg\n"
            "done with my shift\nskipped breakfast\nfinished work late\nmissed you guys\n"
            "stopped at 38\nstopped after 38\nalmost 45, 40, 38\nwas supposed to be 45 40 38\n"
            "didn't count the last one\n45 40 fail\n45 40 38 20\n20 45 40 38\n45h 40 38\n"
            "45% 40% 38%\n45 lbs 40 38\n45 reps 40 reps 38 reps\n45m 40m 38m\n$45 40 38\n"
            "did 2 of 3 as planned\n2 sets as planned\nas planned +5\nas planned twice\n"
            "half done\nnot done yet\nnot as planned\ncan't do more, 45 40 38"
        ),
        "press": (
            "8 8 then 7 at 14\n8 8 8@14\n8@14 8 8\nas planned but 18kg on the last\n3x8-10\n"
            "3x8/10\n8-10 reps x3\n24 total\n3x8, 7\n8x3\n8 8 7 at 80%\n8 8 8 up 2kg\n16kg\n"
            "8 8 8, 18kg next time\nsame as monday\nnearly as planned\nas planned but lighter\n"
            "8 8 7 no weight\n160kg 8 8 8\n8 8 7 2kg heavier"
        ),
        "row": "8 8 7\nright 8 8 7\n8 8 7 right arm only\nL8 R7\n8 8 8 8 8 8\nleft only 8 8 7",
        "day": (
            "45 40 38\n8 8 7\ndone\nall as planned except the carry\neverything but the carry\n"
            "did hang and press, skipped the rest\nhang, skipped press\npress, row 8 8 8\n"
            "hang before press 45 40 38\nnot hang, press\nthat was press not hang\n"
            "almost all as planned\nbench press 8 8 8\nhanging leg raise 8 8 8\n1-3 done\n"
            "1) press 40 40 38"
        ),
        "single": "see you at 5\n5 people in the gym\nslept 5 hours\ncall me on 5\nback at 5pm",
        "after": (
            "sorry I'm late\nsorry, 8 8 7\nwait 5 min\nthose were for the press\nnot 48\n"
            "undo everything\nremove the second set\n5 more on each"
        ),
        "es": (
            "mi récord es 45 40 38\nantes 45 40 38\ntocaba 45 40 38\nvoy a hacer 45 40 38\n"
            "mi hermano hizo 45 40 38\nla semana pasada 45 40 38\nintenté 45 40 38\n"
            "no llegué a 45 40 38\nmenos de 45 en todas\nentre 40 y 45 todas\nmedio hecho\n"
            "todo menos la última\ncasi 45 40 38\n45 o 40"
        ),
    }.items()
    for text in texts.split("\n")
)


@pytest.mark.parametrize(("place", "text"), NEVER_STORED)
def test_what_may_not_be_a_result_is_never_stored_unasked(place, text):
    assert not isinstance(read(text, PLACES[place]), Recorded | Correction)
