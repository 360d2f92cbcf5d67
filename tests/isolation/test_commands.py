"""No command, file or reply shows or changes what is somebody else's, whoever gives it.

Generated from the desks' own tables: every command, by everybody whom it does not concern, with
the name of another's athlete behind it. Buttons are tried in tests/walk (trespass), where they
are alive.
"""

from collections.abc import Mapping
from pathlib import Path

import pytest

from bot.desks import athlete as athlete_desk
from bot.desks import coach_commands
from bot.desks import owner as owner_desk
from bot.events import FileArrived, Media, SentMedia
from bot.outcomes import Outcome
from storage.queries import care, clips, people
from tests.conversation.coach_bench import COACH_CHAT, Bench
from tests.walk.tables import Key, Row, changed, stored

OWN_WORD = "zafirum"
OTIS_CHAT, OWNER_CHAT, STRANGER_CHAT = 77, 60, 999
LINES = (
    "", "{name}", "{name} 2 {why}", "{name} 2 weeks {why}", "{name} left wrist {why}",
    "{name} on {why}", "{name} Juniors", "{name} all {why}", "ask on {name}", "{name} to Mara",
    "Juniors", "Juniors {why}",
)  # fmt: skip
"""What may stand behind a command; each gets the name of another's athlete, and their group."""
OF_THE_HOUSE = frozenset({"move", "standin", "erase", "house"})
"""What an owner may do and see across the house; the owner's tests say what of it."""
INVITE = "invite"
"""The name behind it is one's own to give: it makes somebody new, and finds nobody."""


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Bench:
    """Give one house to all tests that change nothing in it."""
    return _two_teams(Path(tmp_path_factory.mktemp("isolation")))


def _two_teams(folder: Path) -> Bench:
    """Make two teams, and an athlete of the other one with everything that can be open."""
    bench = Bench(folder)
    otis = bench.add_coach("Otis Vale", chat_id=OTIS_CHAT)
    with bench.turn() as turn:
        people.add_person(
            turn.tx, name="Ada Post", now=bench.now, chat_id=OWNER_CHAT, is_owner=True
        )
    bench.add_athlete("Ana Lark")
    ivo = bench.add_athlete("Ivo Stern", coach=otis)
    bench.add_athlete("Uma Reed", coach=otis)
    bench.alert(ivo, words=OWN_WORD)
    bench.hurts(ivo, 7)
    with bench.turn() as turn:
        people.change_athlete(turn.tx, ivo.id, group_name="Juniors")
        care.pass_on(turn.tx, athlete_id=ivo.id, words=OWN_WORD, at=bench.now)
        for kind in ("stage_up", "review"):
            facts = {"stage": 2, "from_stage": 1, "stage_since": "2026-01-05", "text": OWN_WORD}
            care.propose(turn.tx, athlete_id=ivo.id, kind=kind, facts=facts, at=bench.now)
        clips.add(
            turn.tx,
            athlete_id=ivo.id,
            at=bench.now,
            chat_id=ivo.chat_id or 0,
            message_id=1,
            caption=OWN_WORD,
        )
    return bench


def chats(bench: Bench) -> Mapping[str, int]:
    """Return who may be whom: everybody but Ivo and his coach."""
    found = {"owner": OWNER_CHAT, "coach": COACH_CHAT, "stranger": STRANGER_CHAT}
    with bench.turn() as turn:
        for role, name in (("athlete", "Ana Lark"), ("athlete of his coach", "Uma Reed")):
            person = next(one for one, _ in people.everybody(turn.tx) if one.name == name)
            found[role] = person.chat_id or 0
    return found


def _rows(bench: Bench) -> dict[Key, Row]:
    with bench.database.transaction() as tx:
        return stored(tx)


EVERYTHING = sorted(
    {
        *athlete_desk.COMMANDS,
        *coach_commands.COMMANDS,
        *owner_desk.COMMANDS,
    }
)


TRIED = [
    (role, command)
    for role in ("owner", "coach", "stranger", "athlete", "athlete of his coach")
    for command in EVERYTHING
    if command != INVITE and not (role == "owner" and command in OF_THE_HOUSE)
]


@pytest.mark.parametrize(("role", "command"), TRIED)
def test_no_command_reaches_anothers_athlete(bench: Bench, role: str, command: str):
    chat_id = chats(bench)[role]
    before, said = _rows(bench), len(bench._all())
    typed = [f"/{command} {one.format(name='Ivo Stern', why='lorem ipsum')}" for one in LINES]
    for text in typed:
        bench.write(text.strip(), chat_id=chat_id)
    after = _rows(bench)
    ivo, otis = _id(bench, "Ivo Stern"), _id(bench, "Otis Vale")
    about_them = [
        key
        for key in changed(before, after)
        if {ivo, otis} & {_athlete(key, before), _athlete(key, after)}
    ]
    assert about_them == []
    for row in bench._all()[said:]:
        assert row.chat_id not in {OTIS_CHAT, _chat(bench, ivo)}, row.payload
        text = _without(str(row.payload.get("text", "")), typed)
        assert OWN_WORD not in str(row.payload)
        assert "Ivo Stern" not in text


def test_an_invitation_of_the_same_name_is_somebody_new(tmp_path: Path):
    bench = _two_teams(tmp_path)
    before, ivo = _rows(bench), _id(bench, "Ivo Stern")
    bench.write("/invite Ivo Stern")
    after = _rows(bench)
    new = [key for key in changed(before, after) if key[0] == "athlete"]
    assert len(new) == 1
    assert not [key for key in changed(before, after) if _athlete(key, after) == ivo]
    assert OWN_WORD not in "".join(bench.texts())


@pytest.mark.parametrize("role", ["owner", "athlete", "athlete of his coach", "stranger"])
@pytest.mark.parametrize("purpose", ["invite_team", "movements", "standards"])
def test_a_file_of_somebody_who_is_no_coach_changes_nothing(bench: Bench, role: str, purpose: str):
    before = _rows(bench)
    event = FileArrived(
        chat_id=chats(bench)[role],
        at=bench.now,
        purpose=purpose,
        name="team.csv" if purpose == "invite_team" else "vertical_push.yaml",
        content=b"name,stage\nUlf,1\n",
    )
    assert bench._handle(event) in {Outcome.STALE_TAP, Outcome.STRANGER}
    assert changed(before, _rows(bench)) == []


@pytest.mark.parametrize("role", ["owner", "coach", "athlete", "athlete of his coach", "stranger"])
def test_a_reply_to_a_message_about_another_reaches_nobody(bench: Bench, role: str):
    """The platform's message numbers count by chat: another chat's number is nobody's message."""
    bench.write("/who ivo", chat_id=OTIS_CHAT)
    bench.deliver()
    about = max(row.message_id for row in bench.rows(OTIS_CHAT) if row.message_id)
    ivo = _id(bench, "Ivo Stern")
    said = len(bench.texts(_chat(bench, ivo)))
    chat_id = chats(bench)[role]
    bench.write("lorem ipsum", chat_id=chat_id, reply_to=about)
    bench._handle(
        SentMedia(
            chat_id=chat_id,
            at=bench.now,
            message_id=5,
            media=Media.VOICE,
            reply_to_message_id=about,
        )
    )
    assert len(bench.texts(_chat(bench, ivo))) == said


def test_his_own_coach_is_shown_him(bench: Bench):
    """Else the tests above would hold in a house that shows nobody anything."""
    bench.write("/who Ivo Stern", chat_id=OTIS_CHAT)
    assert "Ivo Stern" in bench.last(OTIS_CHAT)
    assert OWN_WORD in "".join(bench.texts(OTIS_CHAT))


def _without(text: str, typed: list[str]) -> str:
    """Take out what was typed itself: an answer may quote it."""
    found = text
    for one in sorted(typed, key=len, reverse=True):
        behind = one.partition(" ")[2]
        for said in (behind, behind.partition(" ")[2], "Ivo Stern 2", "“Ivo Stern”"):
            found = found.replace(said, "") if len(said) > len("Ivo Stern") else found
    return found


def _athlete(key: Key, rows: Mapping[Key, Row]) -> int | None:
    row = rows.get(key, {})
    return next(
        (
            int(row[one])
            for one in ("athlete_id", "person_id", "coach_id")
            if row.get(one) is not None
        ),
        int(row["id"]) if key[0] == "person" and row else None,
    )


def _id(bench: Bench, name: str) -> int:
    with bench.turn() as turn:
        return next(one.id for one, _ in people.everybody(turn.tx) if one.name == name)


def _chat(bench: Bench, person_id: int) -> int:
    with bench.turn() as turn:
        return people.person(turn.tx, person_id).chat_id or 0
