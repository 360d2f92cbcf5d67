"""The digest's first message: at most 25 lines, every kind of news in it, nothing lost."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from bot.wording import digest
from bot.wording.digest import DigestFacts
from bot.wording.pages import utf16_units
from bot.wording.tongue import Tongue
from scheduler.pain.values import Level

TONGUE = Tongue()
LINES_MOST = 25  # CHOSEN: the first message fits a coffee (CONVERSATION, coach)
TEXT_MOST = 4096  # [UTF-16 units] PUBLISHED botapi: sendMessage, text
NAME = "Maximiliane-Theodora Hohenstein"
counts = st.integers(min_value=0, max_value=60)


def facts(
    *,
    decisions: int = 0,
    alerts: int = 0,
    messages: int = 0,
    quiet: int = 0,
    changes: int = 0,
    unbalanced: int = 0,
    bests: int = 0,
    rest: int = 0,
) -> DigestFacts:
    return DigestFacts(
        first=date(2026, 3, 2),
        last=date(2026, 3, 8),
        athletes=60,
        kept=151,
        sent=180,
        decisions=tuple((f"decided {n}", "Move up to stage 2") for n in range(decisions)),
        alerts=tuple((f"alarmed {n}", Level.REST, True) for n in range(alerts)),
        messages=tuple((f"asking {n}", "when do we test the hang again?") for n in range(messages)),
        quiet=tuple((f"silent {n}", timedelta(days=4)) for n in range(quiet)),
        changes=tuple(f"changed {n}" for n in range(changes)),
        unbalanced=tuple((f"uneven {n}", 12, 5) for n in range(unbalanced)),
        bests=tuple(f"best {n}" for n in range(bests)),
        rest=tuple(f"{NAME} {n}" for n in range(rest)),
    )


@given(
    decisions=counts,
    alerts=counts,
    messages=counts,
    quiet=counts,
    changes=counts,
    unbalanced=counts,
    bests=counts,
    rest=counts,
)
def test_it_never_has_more_lines_and_loses_nobody(**how_many: int):
    first, over = digest.first_message(TONGUE, facts(**how_many))
    assert len(first.split("\n")) <= LINES_MOST
    assert utf16_units(first) <= TEXT_MOST
    everything = "\n".join([first, *over])
    for word, count in (
        ("decided ", how_many["decisions"]),
        ("alarmed ", how_many["alerts"]),
        ("asking ", how_many["messages"]),
        ("silent ", how_many["quiet"]),
        ("changed ", how_many["changes"]),
        ("uneven ", how_many["unbalanced"]),
    ):
        assert sum(line.startswith(word) for line in everything.split("\n")) == count


def test_forty_decisions_push_no_alert_out_of_the_first_message():
    first, _ = digest.first_message(
        TONGUE, facts(decisions=40, alerts=3, messages=9, quiet=2, changes=4)
    )
    lines = first.split("\n")
    assert len(lines) == LINES_MOST
    assert sum(line.startswith("alarmed ") for line in lines) == 3
    assert sum(line.startswith("asking ") for line in lines) >= 3
    assert sum(line.startswith("silent ") for line in lines) == 2
    assert any(line.startswith("changed ") for line in lines)
    (head,) = [line for line in lines if line.startswith("<b>To decide</b>")]
    shown = sum(line.startswith("decided ") for line in lines)
    assert head == f"<b>To decide</b> · {shown} of 40"


def test_a_quiet_week_has_no_more_message():
    first, over = digest.first_message(TONGUE, facts(rest=60))
    assert over == ()
    assert len(first.split("\n")) == 3  # DERIVED: the head, the doses, the rest in one line


def test_the_rest_is_one_line_that_a_phone_shows_as_three():
    first, _ = digest.first_message(TONGUE, facts(rest=60))
    last = first.split("\n")[-1]
    assert last.startswith("As planned (60): ")
    assert utf16_units(last) <= 140  # CHOSEN: some 45 letters a line of a phone
