"""Pictures in the chat: the digest's, the coach's buttons on an athlete, the athlete's season."""

from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest

from bot.acts import refused_message, send_digest
from bot.outcomes import Outcome
from bot.pictures.values import PICTURE, HistoryPicture, Picture, SeasonPicture, TeamPicture
from scheduler.pain.values import Level, Urgency
from storage.queries import people
from storage.records.people import AthleteState, Person
from storage.records.wire import Outgoing
from storage.tables.wire import OutboxRow
from tests.conversation.coach_bench import COACH_CHAT, Bench
from tests.conversation.done_sessions import did

CAPTION_MOST = 1024  # [UTF-16 units] PUBLISHED botapi: sendPhoto, caption
SUNDAY = date(2026, 3, 8)


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


def photos(bench: Bench, chat_id: int = COACH_CHAT) -> list[OutboxRow]:
    return [one for one in bench.rows(chat_id) if one.operation == "photo"]


def albums(bench: Bench) -> list[Sequence[Mapping[str, Any]]]:
    return [one.payload["pictures"] for one in bench.rows() if one.operation == "album"]


def picture_of(row: OutboxRow) -> Picture:
    return PICTURE.validate_python(row.payload["picture"])


def trained(bench: Bench, person: Person, weeks: int = 5) -> None:
    for number in range(weeks):
        on = date(2026, 3, 2) - timedelta(weeks=weeks - 1 - number)
        did(bench, person.id, on, seconds={"bar_hang": 20 + number, "wall_hinge_hold": 30})


def digest(bench: Bench) -> None:
    with bench.turn() as turn:
        send_digest.send_digest(turn, bench.coach, date(2026, 3, 9))


def test_the_history_button_shows_what_was_asked_done_and_hurt(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    trained(bench, ana)
    bench.hurts(ana, 4)
    bench.write("/who ana")
    assert bench.tap("History") is Outcome.COMMAND
    (row,) = photos(bench)
    shown = picture_of(row)
    assert isinstance(shown, HistoryPicture)
    # DERIVED: five weeks, the last set one second more each
    assert [one.done for one in shown.days] == [20, 21, 22, 23, 24]
    assert {one.asked for one in shown.days} == {20}
    assert [one.score for one in shown.pain] == [4]
    caption = row.payload["caption"]
    assert "2 Mar: asked 20 s, last set 24 s." in caption
    assert "at most 4 of 10 (2 Mar)" in caption
    assert row.subject == f"athlete:{ana.id}"


def test_another_movement_is_one_tap_away(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    trained(bench, ana)
    bench.write("/who ana")
    bench.tap("History")
    first, *_ = photos(bench)
    (other,) = [label for line in first.payload["buttons"] for label, _ in line]
    bench.tap(other)
    assert picture_of(photos(bench)[-1]).words.title == other  # type: ignore[union-attr]


def test_who_has_not_trained_has_no_history_and_is_told_so(bench: Bench):
    bench.add_athlete("Ana Lark")
    bench.write("/who ana")
    bench.tap("History")
    assert photos(bench) == []
    assert "nothing to draw" in bench.last()


def test_the_season_and_the_weeks_balance_come_by_their_buttons(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    trained(bench, ana)
    bench.write("/who ana")
    bench.tap("Season")
    bench.tap("Week's balance")
    season, balance = photos(bench)
    assert season.payload["picture"]["kind"] == "season"
    assert "the season" in season.payload["caption"]
    assert balance.payload["picture"]["kind"] == "balance"
    # DERIVED: this week's one session, 3 sets each of a vertical pull and of a vertical push
    assert "push and pull: 3 and 3 planned, 3 and 3 done" in balance.payload["caption"]


def test_an_athlete_sees_the_own_season_as_words_and_as_a_picture(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    assert ana.chat_id is not None
    bench.write("/season", chat_id=ana.chat_id)
    (row,) = photos(bench, ana.chat_id)
    shown = picture_of(row)
    assert isinstance(shown, SeasonPicture)
    assert sum(tile.is_now for tile in shown.tiles) == 1
    assert row.subject is None
    assert "Dates are a proposal" in bench.last(ana.chat_id)


def test_an_athlete_gets_the_own_history_of_a_movement(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    trained(bench, ana)
    assert ana.chat_id is not None
    bench.write("/history bar hang", chat_id=ana.chat_id)
    (row,) = photos(bench, ana.chat_id)
    assert row.subject is None
    assert "Bar hang" in bench.last(ana.chat_id)


def test_the_digest_has_one_team_picture_and_an_album_of_at_most_ten(bench: Bench):
    names = [f"Athlete {number:02}" for number in range(14)]
    for name in names:
        person = bench.add_athlete(name)
        trained(bench, person, weeks=2)
        if name != names[-1]:
            bench.alert(person)
    bench.later(days=6)
    digest(bench)
    (row,) = photos(bench)
    team = picture_of(row)
    assert isinstance(team, TeamPicture)
    assert [count.number for count in team.counts] == ["14", "14/14", "13", "0"]
    assert len(team.looks) == 13
    assert [one.name for one in team.rest] == [names[-1]]
    (album,) = albums(bench)
    assert len(album) == 10  # PUBLISHED botapi: sendMediaGroup, media, 2-10
    bench.tap("More pictures")
    first, second = albums(bench)
    assert len(second) == 4
    assert {one["subject"] for one in first}.isdisjoint(one["subject"] for one in second)


def test_who_needs_no_look_has_no_picture_in_the_digest_but_one_by_button(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    trained(bench, ana)
    bench.later(days=6)
    digest(bench)
    assert albums(bench) == []
    (team,) = photos(bench)
    bench.tap("More pictures")
    assert len(photos(bench)) == 2
    assert team.payload["picture"]["looks"] == []


def test_pictures_of_an_athlete_who_went_to_another_coach_are_not_sent(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    trained(bench, ana)
    other = bench.add_coach("Otto", chat_id=77)
    bench.later(days=6)
    digest(bench)
    with bench.turn() as turn:
        people.change_athlete(turn.tx, ana.id, coach_id=other.id)
    bench.tap("More pictures")
    assert len(photos(bench)) == 1
    assert "no more pictures" in bench.last()


def test_what_the_platform_refuses_as_a_picture_is_said_in_words(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    trained(bench, ana)
    bench.write("/who ana")
    bench.tap("Season")
    (row,) = photos(bench)
    with bench.turn() as turn:
        refused_message.refused(turn, Outgoing.model_validate(row))
    assert bench.last() == f"{row.payload['caption']}\nThe picture itself could not be drawn."
    assert bench.rows()[-1].subject == f"athlete:{ana.id}"


def test_a_picture_that_cannot_be_gathered_costs_neither_the_digest_nor_the_teams_picture(
    bench: Bench,
):
    ana = bench.add_athlete("Ana Lark")
    trained(bench, ana)
    bench.alert(ana)
    with bench.turn() as turn:
        people.change_person(turn.tx, ana.id, zone="Nowhere/AtAll")
    bench.later(days=6)
    with bench.turn() as turn:
        send_digest.send_digest(turn, bench.coach, date(2026, 3, 9))
    assert "Alerts" in bench.last()
    assert [picture_of(one).kind for one in photos(bench)] == ["team"]


def test_a_coach_without_athletes_gets_no_team_picture(bench: Bench):
    digest(bench)
    assert photos(bench) == []


def test_the_digest_reads_for_sixty_athletes(bench: Bench):
    for number in range(60):
        person = bench.add_athlete(f"Athlete {number:02}", stage=1 + number % 3)
        if number % 4 == 0:
            bench.alert(person, level=Level.EASE, urgency=Urgency.CONVENIENT)
        if number % 7 == 0:
            bench.hurts(person, 4)
        if number == 59:
            with bench.turn() as turn:
                people.change_athlete(turn.tx, person.id, state=AthleteState.PAUSED)
    bench.later(days=6)
    digest(bench)
    first = bench.texts()[0]
    # CHOSEN: 25 lines (CONVERSATION, coach); PUBLISHED botapi: sendMessage, 4096 units
    assert len(first.split("\n")) <= 25
    assert len(first.encode("utf-16-le")) // 2 <= 4096
    (team,) = photos(bench)
    caption = team.payload["caption"]
    assert len(caption.encode("utf-16-le")) // 2 <= CAPTION_MOST
    assert "0 of 0 sessions" in caption
    shown = picture_of(team)
    assert isinstance(shown, TeamPicture)
    looks = int(shown.counts[2].number)
    named = len(shown.looks) + len(shown.rest)
    left_out = sum(int(more.split()[1]) for more in (shown.looks_more, shown.rest_more) if more)
    assert named + left_out == 60  # nobody is lost
    assert looks >= len(shown.looks) > 0
