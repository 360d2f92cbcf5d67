"""The owner moves an athlete to another coach, with all that is open; nobody sees another's."""

from collections.abc import Mapping
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select

from bot.desks import coach_commands, coach_taps, front
from bot.events import Media, SentMedia, Tapped
from bot.outcomes import Outcome
from scheduler.pain.values import Level, Urgency
from storage import buttons
from storage.queries import care, clips, file_versions, people
from storage.records.media import FileKind
from storage.records.people import AthleteState, Person
from storage.tables import metadata
from tests.conversation.coach_bench import COACH_CHAT, Bench

OWNER, OTIS = 60, 77


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    bench = Bench(tmp_path)
    with bench.turn() as turn:
        people.add_person(turn.tx, name="Ada Post", now=bench.now, chat_id=OWNER, is_owner=True)
    return bench


@pytest.fixture
def otis(bench: Bench) -> Person:
    return bench.add_coach("Otis Vale", chat_id=OTIS, zone="Europe/Madrid")


def test_the_athlete_and_all_that_is_open_go_along_and_all_three_are_told(
    bench: Bench, otis: Person
):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/group ana Juniors")
    alert_id = bench.alert(ana)
    with bench.turn() as turn:
        care.pass_on(turn.tx, athlete_id=ana.id, words="may I run?", at=bench.now)
        facts = {"stage": 2, "from_stage": 1, "stage_since": "2026-01-05"}
        care.propose(turn.tx, athlete_id=ana.id, kind="stage_up", facts=facts, at=bench.now)
    assert bench.write("/move ana to otis", chat_id=OWNER) is Outcome.ASKED
    assert "Move <b>Ana Lark</b> from Mara Quill to Otis Vale?" in bench.last(OWNER)
    assert "1 open alert, 1 decision, 1 message to answer" in bench.last(OWNER)
    assert bench.athlete(ana).coach_id == bench.coach.id
    bench.tap("Move", chat_id=OWNER)
    assert bench.athlete(ana).coach_id == otis.id
    assert bench.athlete(ana).group_name is None
    assert "Otis Vale is your coach now." in bench.last(ana.chat_id)
    assert "Ana Lark is with Otis Vale now." in bench.last()
    told = "\n".join(bench.texts(OTIS))
    assert "<b>Ana Lark</b> is with you now, so far with Mara Quill." in told
    assert "may I run?" in told
    kinds = [row.kind for row in bench.rows(OTIS)]
    assert "alert" in kinds
    bench.write("/roster", chat_id=OTIS)
    assert "1 athlete, 1 waiting for you" in bench.last(OTIS)
    with bench.turn() as turn:
        assert [one.id for one in care.open_alerts(turn.tx, coach_id=otis.id)] == [alert_id]
        assert care.open_alerts(turn.tx, coach_id=bench.coach.id) == ()
        entry = care.audit_of(turn.tx, ana.id, what=("athlete.moved",))[0]
        assert entry.before["coach"] == bench.coach.id
        assert entry.after["coach"] == otis.id
    bench.write("/audit ana", chat_id=OTIS)
    assert "Moved to another coach: Mara Quill → Otis Vale." in bench.last(OTIS)


def test_the_coach_who_gave_an_athlete_away_can_do_nothing_more(bench: Bench, otis: Person):
    ana = bench.add_athlete("Ana Lark")
    bench.alert(ana)
    bench.write("/who ana")
    newest = bench.deliver()
    bench.write("/move ana to otis", chat_id=OWNER)
    bench.tap("Move", chat_id=OWNER)
    before = len(bench.texts(ana.chat_id))
    assert bench.write("hello", reply_to=newest) is Outcome.STALE_TAP
    assert bench.tap("Alert seen") is Outcome.STALE_TAP
    assert bench.tap("Write") is Outcome.STALE_TAP
    assert bench.write("/who ana") is Outcome.NOT_UNDERSTOOD
    assert len(bench.texts(ana.chat_id)) == before
    with bench.turn() as turn:
        assert len(care.open_alerts(turn.tx, coach_id=otis.id)) == 1


def test_who_waits_for_a_look_at_the_answers_is_let_in_by_the_new_coach(bench: Bench, otis: Person):
    ana = bench.add_athlete("Ana Lark", state=AthleteState.WAITS_FOR_COACH)
    bench.write("/move ana to otis", chat_id=OWNER)
    bench.tap("Move", chat_id=OWNER)
    assert bench.athlete(ana).state is AthleteState.WAITS_FOR_COACH
    bench.tap("let them start", chat_id=OTIS)
    assert bench.athlete(ana).state is AthleteState.TRAINING


def test_it_is_moved_back_by_a_tap(bench: Bench, otis: Person):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/move ana to otis", chat_id=OWNER)
    bench.tap("Move", chat_id=OWNER)
    assert bench.athlete(ana).coach_id == otis.id
    bench.tap("Move back", chat_id=OWNER)
    assert bench.athlete(ana).coach_id == bench.coach.id
    assert bench.tap("Move back", chat_id=OWNER) is Outcome.COMMAND
    assert bench.athlete(ana).coach_id == otis.id


def test_a_tap_that_no_longer_fits_moves_nobody(bench: Bench, otis: Person):
    ana = bench.add_athlete("Ana Lark")
    third = bench.add_coach("Ugo Hall", chat_id=88)
    bench.write("/move ana to otis", chat_id=OWNER)
    with bench.turn() as turn:
        people.change_athlete(turn.tx, ana.id, coach_id=third.id)
    assert bench.tap("Move", chat_id=OWNER) is Outcome.STALE_TAP
    assert bench.athlete(ana).coach_id == third.id
    assert otis.id != third.id


def test_an_alert_waits_for_the_new_coachs_morning_and_an_urgent_one_for_nobodys(
    bench: Bench, otis: Person
):
    ana, bo = bench.add_athlete("Ana Lark"), bench.add_athlete("Bo Finch")
    bench.later(hours=14)  # 23:00 UTC: midnight in Madrid
    bench.alert(ana)
    bench.alert(bo, level=Level.EMERGENCY, urgency=Urgency.NOW, words="fainted")
    for name in ("ana", "bo"):
        bench.write(f"/move {name} to otis", chat_id=OWNER)
        bench.tap("Move", chat_id=OWNER)
    alerts = [row.payload["text"] for row in bench.rows(OTIS) if row.kind == "alert"]
    assert len(alerts) == 1
    assert "Bo Finch" in alerts[0]
    with bench.turn() as turn:
        (waits,) = care.open_alerts(turn.tx, athlete_id=ana.id)
    assert waits.tell_at is not None
    # DERIVED: 07:00 in Madrid in March is 06:00 UTC, seven hours after 23:00.
    assert waits.tell_at - bench.now == timedelta(hours=7)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "/move Robin to Mara"),
        ("ana otis", "/move Robin to Mara"),
        ("ana to nobody", "/move Robin to Mara"),
        ("zoe to otis", "No athlete here is called “zoe”"),
        ("ana to mara", "Mara Quill coaches Ana Lark already"),
        ("ana to ugo", "Ugo Hall has no open chat"),
    ],
)
def test_what_cannot_be_moved_is_answered_with_what_to_send(
    bench: Bench, otis: Person, text: str, words: str
):
    bench.add_athlete("Ana Lark")
    with bench.turn() as turn:
        people.add_person(turn.tx, name="Ugo Hall", now=bench.now, is_coach=True)
    assert bench.write(f"/move {text}", chat_id=OWNER) is Outcome.NOT_UNDERSTOOD
    assert words in bench.last(OWNER)
    assert otis.is_coach


def test_two_of_a_name_become_buttons_with_their_coaches(bench: Bench, otis: Person):
    bench.add_athlete("Ana Lark")
    theirs = bench.add_athlete("Anabel Reed", coach=otis)
    bench.write("/move ana to mara", chat_id=OWNER)
    assert bench.labels(OWNER) == ["Ana Lark · Mara Quill", "Anabel Reed · Otis Vale"]
    bench.tap("Anabel Reed", chat_id=OWNER)
    bench.tap("Move", chat_id=OWNER)
    assert bench.athlete(theirs).coach_id == bench.coach.id


def test_nobody_but_an_owner_moves_or_sees_the_house(bench: Bench, otis: Person):
    ana = bench.add_athlete("Ana Lark")
    for command in ("/move ana to otis", "/house"):
        assert bench.write(command) is Outcome.NOT_UNDERSTOOD
    with bench.turn() as turn:
        token = buttons.new_button(
            turn.tx,
            chat_id=COACH_CHAT,
            person_id=bench.coach.id,
            act="owner.move",
            arguments={"athlete": ana.id, "from": bench.coach.id, "to": otis.id},
            now=bench.now,
        )
    tap = Tapped(chat_id=COACH_CHAT, at=bench.now, message_id=1, token=token)
    assert bench._handle(tap) is Outcome.STALE_TAP
    assert bench.athlete(ana).coach_id == bench.coach.id


def test_the_house_shows_who_coaches_whom_with_what_waits_and_who_stands_in(
    bench: Bench, otis: Person
):
    ana = bench.add_athlete("Ana Lark")
    bench.add_athlete("Bo Finch", coach=otis)
    bench.alert(ana)
    with bench.turn() as turn:
        care.pass_on(turn.tx, athlete_id=ana.id, words="hm", at=bench.now)
        people.change_person(turn.tx, bench.coach.id, stand_in_id=otis.id)
    bench.write("/house", chat_id=OWNER)
    lines = bench.last(OWNER).split("\n")
    assert "<b>Mara Quill</b> (1): Ana Lark · stand-in Otis Vale" in lines
    at = lines.index("<b>Mara Quill</b> (1): Ana Lark · stand-in Otis Vale")
    assert lines[at + 1] == "to do: 1 open alert, 1 message to answer"
    assert "<b>Otis Vale</b> (1): Bo Finch" in lines


# nobody sees another's


def _rows_about(bench: Bench, person_id: int) -> list[Any]:
    """Return every row of every table that is about an athlete."""
    found: list[Any] = []
    with bench.database.transaction() as tx:
        for name, table in metadata.tables.items():
            for column in ("athlete_id", "person_id"):
                if column in table.c and name not in {"button", "due"}:
                    query = select(table).where(table.c[column] == person_id)
                    found += [(name, tuple(row)) for row in tx.connection().execute(query)]
    return found


FIXED: Mapping[str, Any] = {
    "cue": "good",
    "behind": 0,
    "movement": "bar_hang",
    "kind": "movements",
    "content": None,
    "base": None,
    "rest": "2 a good reason",
    "text": "hello",
    "stage": 2,
    "from": 1,
    "why": "because",
    "before": {"stage": 1, "stage_since": "2026-01-05", "stage_is_re_earned": False},
    "after": {"stage": 1, "stage_since": "2026-01-05", "stage_is_re_earned": False},
    "was": "",
    "now": "",
    "site": "wrist",
    "side": "left",
    "key": "all",
    "what": "all",
    "is_on": True,
    "is_guardian": False,
    "name": "Nobody Known",
    "message": 1,
    "file": "f",
    "rows": [],
    "number": "112",
    "country": "ES",
    "field": "digest_weekday",
    "value": "3",
    "group": "",
    "day": "2026-03-09",
    "messages": [1],
}
"""Arguments of buttons that are about nobody in particular."""


def _full_of_things(bench: Bench, coach: Person) -> tuple[Person, dict[str, Any]]:
    """Make another coach's athlete with everything open that a button can be about.

    A new act that asks for an argument that is not here fails for want of it: add it.
    """
    ivo = bench.add_athlete("Ivo Stern", coach=coach)
    alert_id = bench.alert(ivo)
    bench.hurts(ivo, 7)
    with bench.turn() as turn:
        care.pass_on(turn.tx, athlete_id=ivo.id, words="secret words", at=bench.now)
        facts = {"stage": 2, "from_stage": 1, "stage_since": "2026-01-05"}
        made = care.propose(turn.tx, athlete_id=ivo.id, kind="stage_up", facts=facts, at=bench.now)
        review = {"number": 1, "text": "secret review"}
        care.propose(turn.tx, athlete_id=ivo.id, kind="review", facts=review, at=bench.now)
        clip = clips.add(
            turn.tx, athlete_id=ivo.id, at=bench.now, chat_id=ivo.chat_id, message_id=1,
            caption="secret caption",
        )  # fmt: skip
        version = file_versions.add(
            turn.tx, coach_id=coach.id, kind=FileKind.MOVEMENTS, name="vertical_push.yaml",
            content="movements: []", meaning={"movements": []}, words="a secret reason",
            by_id=coach.id, at=bench.now,
        )  # fmt: skip
    arguments = {
        **FIXED,
        "clip": clip.id,
        "version": version.id,
        "athlete": ivo.id,
        "athletes": [ivo.id],
        "among": [ivo.id],
        "alert": alert_id,
        "proposal": made.id,
        "proposals": [made.id],
    }
    return ivo, arguments


@pytest.mark.parametrize("name", sorted(coach_commands.COMMANDS))
def test_no_command_of_a_coach_shows_or_changes_anothers_athlete(
    bench: Bench, otis: Person, name: str
):
    ivo, _ = _full_of_things(bench, otis)
    before, said = _rows_about(bench, ivo.id), len(bench.texts(ivo.chat_id))
    for text in (f"/{name}", f"/{name} ivo", f"/{name} Ivo Stern 2 a good reason"):
        bench.write(text)
    shown = "\n".join(bench.texts()).replace("“Ivo Stern 2 a good reason”", "")
    if name != "invite":  # a name is a coach's own to give, and makes somebody new
        assert "Ivo Stern" not in shown.replace("Ivo Stern 2", "")
    assert "secret" not in shown
    assert _rows_about(bench, ivo.id) == before
    assert len(bench.texts(ivo.chat_id)) == said


@pytest.mark.parametrize("act", sorted(coach_taps.TAPS))
def test_no_button_of_a_coach_reaches_anothers_athlete(bench: Bench, otis: Person, act: str):
    ivo, arguments = _full_of_things(bench, otis)
    before, said = _rows_about(bench, ivo.id), len(bench.texts(ivo.chat_id))
    with bench.turn() as turn:
        token = buttons.new_button(
            turn.tx,
            chat_id=COACH_CHAT,
            person_id=bench.coach.id,
            act=act,
            arguments=arguments,
            now=bench.now,
        )
    bench._handle(Tapped(chat_id=COACH_CHAT, at=bench.now, message_id=None, token=token))
    shown = "\n".join(bench.texts())
    assert "Ivo Stern" not in shown
    assert "secret" not in shown
    assert _rows_about(bench, ivo.id) == before
    assert len(bench.texts(ivo.chat_id)) == said


def test_no_reply_with_words_or_media_reaches_an_athlete_who_is_anothers_now(
    bench: Bench, otis: Person
):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/who ana")
    newest = bench.deliver()
    with bench.turn() as turn:
        people.change_athlete(turn.tx, ana.id, coach_id=otis.id)
    event = SentMedia(
        chat_id=COACH_CHAT,
        at=bench.now,
        message_id=5,
        media=Media.VOICE,
        reply_to_message_id=newest,
    )
    with bench.turn() as turn:
        assert front.handle(turn, event) is Outcome.STALE_TAP
    assert bench.texts(ana.chat_id) == []
