"""The words of pictures: names that can be drawn, captions that fit and say the same."""

from datetime import date, timedelta

import pytest
from matplotlib import get_data_path
from matplotlib.ft2font import FT2Font

from bot.wording import balance_picture, history_picture, season_picture, team_picture
from bot.wording.coach_roster import RosterFacts
from bot.wording.coach_week import SetCount, WeekFigures
from bot.wording.history_picture import MovementHistory
from bot.wording.pages import utf16_units
from bot.wording.pictures import caption_of, named, shown_name, ticks
from bot.wording.season_picture import SeasonPictureFacts, WeekFacts
from bot.wording.team_picture import TeamMember
from bot.wording.tongue import Tongue
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Direction
from scheduler.pain.values import Level, Side
from scheduler.training.season_values import SeasonBlock, SeasonEvent, SeasonWeekKind
from tests.pictures.examples import LONG, NAMES

TONGUE = Tongue()
CAPTION_MOST = 1024  # [UTF-16 units] PUBLISHED botapi: sendPhoto, caption
MONDAY = date(2026, 3, 2)


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("Ana Lark", "Ana Lark"),
        ("Ana 🌵 Lark", "Ana Lark"),
        ("🌵🌵", "#7"),
        ("王芳", "#7"),
        ("Ana 王", "#7"),
        ("दीपा", "#7"),
        ("דנה לוי", "דנה לוי"),
        ("دانا", "دانا"),
        ("Łukasz Żółć", "Łukasz Żółć"),
        ("O'Neil-Łuk", "O'Neil-Łuk"),
        ("", "#7"),
        ("A️na", "Ana"),
    ],
)
def test_a_name_is_drawn_in_its_letters_or_as_its_number(name: str, shown: str):
    assert shown_name(name, 7) == shown


def test_every_letter_that_is_let_through_has_a_shape_in_the_font():
    letters = FT2Font(f"{get_data_path()}/fonts/ttf/DejaVuSans.ttf").get_charmap()
    for name in NAMES:
        assert all(ord(sign) in letters for sign in shown_name(name, 1)), name


def test_a_subtitle_without_a_drawable_name_says_the_rest():
    assert named("王芳", "2 Mar to 8 Mar") == "2 Mar to 8 Mar"
    assert named("Ana", "") == "Ana"


def test_a_caption_keeps_whole_lines_and_says_that_some_are_missing():
    lines = [f"line {number} " + "x" * 60 for number in range(60)]
    caption = caption_of(lines, more="…")
    assert utf16_units(caption) <= CAPTION_MOST
    *kept, more = caption.split("\n")
    assert more == "…"
    assert kept == lines[: len(kept)]
    assert caption_of(["one", "two"], more="…") == "one\ntwo"


def test_days_under_an_axis_are_both_ends_and_some_between():
    found = ticks(TONGUE, MONDAY, MONDAY + timedelta(days=100))
    # DERIVED: five days, 25 apart
    assert [one.on for one in found] == [MONDAY + timedelta(days=25 * n) for n in range(5)]
    assert found[0].words == "2 Mar"
    assert len(ticks(TONGUE, MONDAY, MONDAY)) == 1
    assert len({one.on for one in ticks(TONGUE, MONDAY, MONDAY + timedelta(days=2))}) == 3


def member(number: int, *, level: Level = Level.NONE, **facts: object) -> TeamMember:
    roster = RosterFacts(
        athlete_id=number,
        name=NAMES[number % len(NAMES)] + (f" {number}" if number >= len(NAMES) else ""),
        stage=2,
        state="training",
        kept=3,
        sent=4,
        **facts,  # type: ignore[arg-type]
    )
    return TeamMember(kept=3, sent=4, level=level, roster=roster)


def test_the_gravest_pain_comes_first_then_what_waits():
    members = [
        member(0),
        member(1, messages=1, oldest_message="hi"),
        member(3, level=Level.EASE),
        member(4, level=Level.EMERGENCY, alerts=1),
        member(5, decisions=1),
        member(6, level=Level.REST),
    ]
    order = [one.roster.athlete_id for one in team_picture.in_order(members)]
    assert order == [4, 6, 5, 1, 3, 0]


def test_the_teams_caption_fits_and_names_who_is_drawn_as_a_number():
    members = [member(number, level=Level.EASE, decisions=1) for number in range(60)]
    last = MONDAY + timedelta(days=6)
    caption = team_picture.caption(TONGUE, members, first=MONDAY, last=last)
    assert utf16_units(caption) <= CAPTION_MOST
    assert "180 of 240 sessions" in caption  # DERIVED: 60 times 3 of 4
    assert "Need a look: 60." in caption
    few = [member(7, level=Level.REST, alerts=1, alert_age=timedelta(hours=2))]
    said = team_picture.caption(TONGUE, few, first=MONDAY, last=last)
    assert said.split("\n")[-1] == "#1 王芳: 3 of 4, stage 2, rested, alert open"
    assert team_picture.picture(TONGUE, few, first=MONDAY, last=last).looks[0].name == "#1"


def test_a_movement_never_trained_is_said_to_be_so():
    facts = MovementHistory(
        name=LONG,
        movement=default_library().movements["bar_hang"],
        dose=None,
        arm=Side.BOTH,
        days=(),
        course=(),
        pain=(),
    )
    assert history_picture.caption(TONGUE, facts).endswith("Not trained in these weeks.")
    assert history_picture.words(TONGUE, facts).subtitle == ""


def test_a_long_season_is_drawn_for_forty_weeks_and_its_caption_fits():
    weeks = tuple(
        WeekFacts(monday=MONDAY + timedelta(weeks=n), stage=1, kind=SeasonWeekKind.ORDINARY)
        for n in range(60)
    )
    facts = SeasonPictureFacts(
        name="Ana <Lark>",
        weeks=weeks,
        blocks=tuple(
            SeasonBlock(kind=SeasonWeekKind.TAPER, stage=1, monday=one.monday, weeks=1)
            for one in weeks
        ),
        events=(SeasonEvent(on=MONDAY + timedelta(days=9), name="meet <A> 🌵", is_main=True),),
        this_monday=MONDAY,
        is_open_ended=True,
    )
    drawn = season_picture.picture(TONGUE, facts)
    assert len(drawn.tiles) == 40  # CHOSEN: five rows of eight
    assert [tile.event for tile in drawn.tiles[:3]] == [None, "main", None]
    assert drawn.main_event == "main event: 11 Mar meet <A>"
    caption = season_picture.caption(TONGUE, facts)
    assert utf16_units(caption) <= CAPTION_MOST
    assert "Ana &lt;Lark&gt;" in caption


def test_a_weeks_picture_and_its_caption_say_the_same_figures():
    figures = WeekFigures(
        directions={
            Direction.VERTICAL_PUSH: SetCount(6, 9),
            Direction.VERTICAL_PULL: SetCount(4, 12),
        }
    )
    drawn = balance_picture.picture(TONGUE, figures, name="Ana", monday=MONDAY)
    total = drawn.rows[0]
    assert (total.left.done, total.left.planned) == (6, 9)
    assert (total.right.done, total.right.planned) == (4, 12)
    caption = balance_picture.caption(TONGUE, figures, name="Ana", monday=MONDAY)
    assert "9 and 12 planned, 6 and 4 done" in caption
    empty = balance_picture.picture(TONGUE, WeekFigures(), name="Ana", monday=MONDAY)
    assert empty.rows == ()
