"""Facts for pictures, from nothing at all to all that can be; people and figures are invented."""

from datetime import date, timedelta

from bot.pictures.shapes import WEEKS
from bot.pictures.team_layout import room_for
from bot.pictures.values import (
    BalancePicture,
    BalanceRow,
    BalanceSide,
    CoursePoint,
    HistoryDay,
    HistoryPicture,
    HistoryWords,
    PainDay,
    SeasonKey,
    SeasonPicture,
    SeasonTile,
    TeamCount,
    TeamPicture,
    TeamRow,
    TeamShort,
)
from bot.wording.pictures import shown_name, ticks
from bot.wording.tongue import Tongue

FIRST = date(2026, 1, 5)  # CHOSEN: a Monday
LONG = "Maximiliane-Theodora von und zu Hohenstein-Abendroth of the Upper Valley"
NAMES = (
    "Ana Lark",
    "Bo Finch",
    LONG,
    "دانا الفارس",
    "דנה לוי",
    "Łukasz Żółć",
    "🌵🌵",
    "王芳",
    "$x_1$ Ray",
)
WORDS = HistoryWords(
    title="Bar hang",
    subtitle="Ana Lark · plus 8 kg on the body · the weaker arm, left",
    unit="seconds",
    asked="asked",
    done="done, last set",
    other_load="done, other load",
    likely="at the limit, with its likely range",
    pain="Pain anywhere, 0 to 10",
    pain_of_session="that day",
    pain_of_morning="next morning",
    no_pain="No pain reported.",
    nothing="Not trained in these weeks.",
)
KEYS = {
    "ordinary": "training",
    "lighter": "lighter, fewer sets",
    "band_only": "away with a band",
    "returning": "back after a break",
    "taper": "fewer sets before the event",
    "in_season": "competing, short sessions",
    "easy_after": "easy after the event",
    "break": "a break",
}
LEVELS = (
    ("emergency", "emergency"),
    ("clinician", "see a clinician"),
    ("rest", "rested"),
    ("ease", "eased"),
    ("watch", "watched"),
    ("none", "no open pain"),
    ("unknown", "not worked out"),
)
WAITS = ("alert open", "12 messages", "2 decisions", "silent 5 days", "chat closed", "")


def history(days: int, *, has_pain: bool = True, most: float = 60.0) -> HistoryPicture:
    """A movement with so many sessions, each a little better; the first fifth at another load."""
    dates = [FIRST + timedelta(days=4 * number) for number in range(days)]
    values = [most * (0.4 + 0.3 * number / max(1, days)) for number in range(days)]
    last = dates[-1] if dates else FIRST
    return HistoryPicture(
        words=WORDS,
        first=FIRST,
        last=last,
        days=tuple(
            HistoryDay(on=on, asked=round(value), done=round(value) + number % 3 - 1,
                       is_other_load=number < days // 5)
            for number, (on, value) in enumerate(zip(dates, values, strict=True))
        ),
        course=tuple(
            CoursePoint(on=on, least=0.9 * value, likely=1.2 * value, most=1.5 * value)
            for on, value in list(zip(dates, values, strict=True))[-max(0, days - 2) or days :]
        ),
        pain=tuple(
            PainDay(on=on, score=number * 3 % 11, is_morning=number % 2 == 1)
            for number, on in enumerate(dates[::2])
        )
        if has_pain
        else (),
        ticks=ticks(Tongue(), FIRST, last),
    )  # fmt: skip


def season(weeks: int, *, has_events: bool = True) -> SeasonPicture:
    """A season of so many weeks with every kind of them."""
    kinds = list(WEEKS)
    return SeasonPicture(
        title="The season",
        subtitle="5 Jan to 11 Oct",
        now="this week",
        stage="stage",
        tiles=tuple(
            SeasonTile(
                day=day(FIRST + timedelta(weeks=number)),
                stage=1 + number // 9 % 5,
                week_kind=kinds[number % len(kinds)],
                is_now=number == 2,
                event={10: "main", 5: "other"}.get(number) if has_events else None,
            )
            for number in range(weeks)
        ),
        keys=tuple(SeasonKey(week_kind=kind, words=words) for kind, words in KEYS.items()),
        main_event=f"main event: 20 Mar {LONG}" if has_events else "",
        other_event="other event: 12 Feb club day, 3 May open day" if has_events else "",
        foot="Dates are a proposal: the checklist and the coach decide.",
    )


def day(on: date) -> str:
    return f"{on.day} {on:%b}"


def balance(*counts: tuple[int, int, int, int]) -> BalancePicture:
    """Rows of done and planned, left and right."""
    names = [
        ("push", "pull"),
        ("vertical push", "vertical pull"),
        ("horizontal push", "horizontal pull"),
        ("dips and supports", "shrugs and carries"),
        ("weight in hand", "hand fixed"),
        ("arm straight", "arm bent"),
    ]
    return BalancePicture(
        title="Sets of the week",
        subtitle="2 Mar to 8 Mar",
        planned="planned",
        done="done",
        nothing="No sets planned this week.",
        rows=tuple(
            BalanceRow(
                left=BalanceSide(words=left, done=count[0], planned=count[1]),
                right=BalanceSide(words=right, done=count[2], planned=count[3]),
            )
            for (left, right), count in zip(names, counts, strict=False)
        ),
    )


WEEK = (
    (14, 27, 16, 29),
    (6, 9, 6, 10),
    (5, 9, 10, 9),
    (3, 9, 0, 10),
    (14, 28, 16, 28),
    (14, 36, 16, 20),
)


def team(*, looks: int, rest: int, names: tuple[str, ...] = NAMES) -> TeamPicture:
    """A team of which so many need a look; as many as find room are drawn."""
    room = room_for(looks=looks, rest=rest)
    return TeamPicture(
        title="The team, 2 Mar to 8 Mar",
        counts=(
            TeamCount(number=str(looks + rest), words="athletes"),
            TeamCount(number="151/180", words="sessions"),
            TeamCount(number=str(looks), words="need a look"),
            TeamCount(number="6", words="with pain"),
        ),
        look_head="Need a look",
        looks=tuple(
            TeamRow(
                name=shown_name(names[number % len(names)], number + 1),
                sessions=f"{number % 8}/10",
                stage="st. 2",
                level=LEVELS[number % len(LEVELS)][0],
                level_word=LEVELS[number % len(LEVELS)][1],
                waits=WAITS[number % len(WAITS)],
            )
            for number in range(room.looks)
        ),
        looks_more=f"and {looks - room.looks} more" if looks > room.looks else "",
        rest_head="The others: sessions, stage",
        rest=tuple(
            TeamShort(
                name=shown_name(names[number % len(names)], looks + number + 1),
                sessions="10/10",
                stage=str(1 + number % 5),
            )
            for number in range(room.rest)
        ),
        rest_more=f"and {rest - room.rest} more" if rest > room.rest else "",
    )


ALL = {
    "history_nothing": history(0, has_pain=False),
    "history_one_session": history(1),
    "history_two_sessions": history(2),
    "history_no_pain": history(12, has_pain=False),
    "history_half_a_year": history(24),
    "history_repetitions": history(9, most=8),
    "history_carry": history(9, most=400),
    "season_one_week": season(1, has_events=False),
    "season_quarter": season(13),
    "season_forty_weeks": season(40),
    "balance_nothing": balance(),
    "balance_not_begun": balance((0, 1, 0, 0), (0, 1, 0, 0), (0, 0, 0, 0), (0, 0, 0, 0)),
    "balance_week": balance(*WEEK),
    "balance_more_than_planned": balance(*[(180, 90, 120, 60)] * 6),
    "team_one": team(looks=0, rest=1),
    "team_one_look": team(looks=1, rest=0),
    "team_nine": team(looks=3, rest=6),
    "team_sixty": team(looks=12, rest=48),
    "team_sixty_as_planned": team(looks=0, rest=60),
    "team_sixty_look": team(looks=60, rest=0),
    "team_half_half": team(looks=30, rest=30),
}
