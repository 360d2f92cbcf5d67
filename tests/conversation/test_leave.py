"""Leaving: said, asked once, held by an open alert, and then nothing personal stays."""

from datetime import timedelta
from pathlib import Path

import pytest

from bot.acts.erase_person import WIPE_ASKED
from bot.outcomes import Outcome
from scheduler.pain.values import Level
from storage import backup, inbox, outbox
from storage.queries import due, leaving, people
from storage.records.people import Role
from storage.tables import metadata
from storage.tables.wire import OutboxState
from tests.conversation.athlete_stage import ATHLETE_CHAT, COACH_CHAT, MONDAY, Stage
from tests.storage.filled import texts_in_columns

YES, STAY = "Yes, erase everything", "No, I stay"
SEEN = "Seen"
OWN_WORDS = "can I bring my cousin Thaddeus on Friday?"
OWNER_CHAT = 3000


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    """Ines has trained, said something, and the coach has looked at her."""
    stage = Stage(tmp_path)
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, name="Xanthippe Qvist")
    stage.go_to(MONDAY, 7)
    stage.write("2) 20 20 20")
    stage.write("left wrist 2/10")
    stage.write(OWN_WORDS)
    stage.write("/who Xanthippe", chat_id=COACH_CHAT)
    stage.write("/roster", chat_id=COACH_CHAT)
    stage.write("/note Xanthippe likes Thaddeus", chat_id=COACH_CHAT)
    return stage


def deliver(stage: Stage) -> None:
    """Let the platform accept all that waits."""
    with stage.database.transaction() as tx:
        for row in stage.rows():
            if row.state is OutboxState.WAITING and row.id is not None:
                outbox.mark_sent(tx, row.id, at=stage.now, message_id=50_000 + row.id)


def hear(stage: Stage, update_id: int, text: str, chat_id: int) -> None:
    """Store a raw update as the receiver does."""
    raw = {
        "update_id": update_id,
        "message": {"chat": {"id": chat_id}, "from": {"first_name": "Xanthippe"}, "text": text},
    }
    with stage.database.transaction() as tx:
        inbox.store_updates(tx, [raw], received_at=stage.now)
        for received in inbox.next_waiting(tx, most=9):
            inbox.mark_handled(tx, received.id, at=stage.now, outcome="command")


def left_of_her(stage: Stage) -> dict[str, str]:
    with stage.database.transaction() as tx:
        return {
            place: text
            for place, texts in texts_in_columns(tx).items()
            for text in texts
            if any(part in text for part in ("Xanthippe", "Qvist", "Thaddeus", "cousin"))
        }


def chats_with(stage: Stage, chat_id: int) -> set[str]:
    with stage.database.transaction() as tx:
        return {
            table.name
            for table in metadata.sorted_tables
            if "chat_id" in table.c
            and tx.connection().execute(table.select().where(table.c.chat_id == chat_id)).first()
        }


def test_leaving_says_what_goes_and_what_stays_and_asks_once(stage: Stage) -> None:
    assert stage.write("/leave") is Outcome.ASKED
    said = stage.last()
    assert "What goes: your name and this chat" in said
    assert "What stays: that somebody left on this day" in said
    assert "/export gives you a copy first" in said
    assert said.endswith("Do you want to leave?")
    assert list(stage.screen()[-1].buttons) == [YES, STAY]


def test_how_long_daily_copies_last_is_said_where_the_bot_makes_them(stage: Stage) -> None:
    stage.house = type(stage.house)(
        library=stage.house.library, rulebook=stage.house.rulebook, bot_name="x", copies_kept=7
    )
    stage.write("/leave")
    assert "after 7 days at most" in stage.last()


def test_who_stays_loses_nothing(stage: Stage) -> None:
    stage.write("/leave")
    stage.tap(STAY)
    assert stage.last() == "Good. Nothing was erased, and everything goes on as before."
    stage.go_to(MONDAY + timedelta(days=1), 9)
    assert stage.athlete.stage == 1


def test_behind_the_tap_nothing_of_the_person_is_left_anywhere(stage: Stage) -> None:
    hear(stage, 1, OWN_WORDS, ATHLETE_CHAT)
    hear(stage, 2, "/tell Xanthippe bring Thaddeus", COACH_CHAT)
    assert left_of_her(stage)
    deliver(stage)
    stage.write("/leave")
    stage.tap(YES)
    hear(stage, 3, "a tap with the old text about Xanthippe", COACH_CHAT)
    deliver(stage)
    stage.later(minutes=1)
    stage.strike()
    assert left_of_her(stage) == {}
    assert chats_with(stage, ATHLETE_CHAT) == set()
    backup.wipe(Path(str(stage.database.engine.url.database)))
    for file in Path(str(stage.database.engine.url.database)).parent.iterdir():
        content = file.read_bytes()
        for part in (b"Xanthippe", b"Qvist", b"Thaddeus", str(ATHLETE_CHAT).encode()):
            assert part not in content


def test_both_are_told_and_the_coach_without_contents(stage: Stage) -> None:
    stage.write("/leave")
    stage.tap(YES)
    assert stage.last(ATHLETE_CHAT).startswith("Everything about you is erased now.")
    assert "local emergency number" in stage.last(ATHLETE_CHAT)
    told = stage.last(COACH_CHAT)
    assert told.startswith("<b>Xanthippe Qvist</b> left.")
    assert not any(part in told for part in ("wrist", "Thaddeus", "20"))


def test_that_it_happened_stays_with_counts_and_without_a_person(stage: Stage) -> None:
    stage.write("/leave")
    stage.tap(YES)
    (entry,) = stage.audit("athlete.erased")
    assert (entry.athlete_id, entry.actor_id, entry.words) == (None, None, "")
    assert entry.after["kept_no_longer"]["sets"] == 3
    with stage.database.transaction() as tx:
        (erased,) = leaving.erasures(tx)
        assert due.mark(tx, WIPE_ASKED) == stage.now
    assert erased.person_id == stage.person.id


def test_the_team_goes_on_without_them(stage: Stage) -> None:
    other = stage.add_athlete("Robin", chat_id=44)
    stage.write("/leave")
    stage.tap(YES)
    stage.write("/roster", chat_id=COACH_CHAT)
    assert "Robin" in stage.last(COACH_CHAT)
    assert "Xanthippe" not in stage.last(COACH_CHAT)
    stage.go_to(MONDAY + timedelta(days=2), 9)
    assert stage.sessions(other)


def test_old_buttons_and_later_messages_meet_a_stranger(stage: Stage) -> None:
    stage.write("/leave")
    message, token = stage.button(YES)
    stage.tap(YES)
    assert stage.tap_token(token, message.message_id) is Outcome.STRANGER
    assert stage.write("hello?") is Outcome.STRANGER


def test_the_coachs_old_buttons_and_replies_about_them_reach_nobody(stage: Stage) -> None:
    stage.write("/who Xanthippe", chat_id=COACH_CHAT)
    message = stage.screen(COACH_CHAT)[-1]
    label, token = next(iter(message.buttons.items()))
    stage.write("/leave")
    stage.tap(YES)
    stage.add_athlete("Robin", chat_id=44)
    assert stage.tap_token(token, None, chat_id=COACH_CHAT) is Outcome.STALE_TAP, label
    count = stage.count(44)
    stage.write("well done", chat_id=COACH_CHAT, reply_to_message_id=message.message_id)
    assert stage.count(44) == count


def hurt(stage: Stage) -> None:
    stage.write("my hand has been numb all day")
    assert [one for one in stage.alerts() if one.state == "open"]


def test_an_open_alert_holds_the_leaving_until_it_is_answered(stage: Stage) -> None:
    hurt(stage)
    stage.write("/leave")
    assert "not before" in stage.last()
    stage.tap(YES)
    stage.later(minutes=1)
    stage.strike()
    assert stage.athlete.person_id == stage.person.id
    assert "waits for your answer" in "\n".join(stage.texts(COACH_CHAT))
    stage.tap(SEEN, chat_id=COACH_CHAT)
    stage.later(minutes=1)
    stage.strike()
    with stage.turn() as turn:
        assert people.athlete(turn.tx, stage.person.id) is None
    assert stage.last(ATHLETE_CHAT).startswith("Everything about you is erased now.")


def test_while_it_waits_the_athlete_can_change_their_mind_and_the_coach_hears(stage: Stage) -> None:
    hurt(stage)
    stage.write("/leave")
    stage.tap(YES)
    assert stage.write("/leave") is Outcome.ASKED
    stage.tap(STAY)
    stage.tap(SEEN, chat_id=COACH_CHAT)
    stage.later(minutes=1)
    stage.strike()
    assert stage.athlete.person_id == stage.person.id
    assert any("stays after all" in text for text in stage.texts(COACH_CHAT))


def test_an_alert_that_is_raised_between_question_and_tap_holds_it_too(stage: Stage) -> None:
    stage.write("/leave")
    hurt(stage)
    stage.tap(YES)
    assert stage.athlete.person_id == stage.person.id
    assert stage.picture().level >= Level.CLINICIAN


def test_a_red_flag_behind_the_command_comes_first(stage: Stage) -> None:
    assert stage.write("/leave i want to kill myself") is Outcome.SAFETY
    with stage.turn() as turn:
        assert leaving.wish_of(turn.tx, stage.person.id) is None


def test_a_coach_who_leaves_as_an_athlete_still_coaches(stage: Stage) -> None:
    with stage.turn() as turn:
        people.change_person(turn.tx, stage.person.id, is_coach=True)
    stage.write("/leave")
    stage.tap(YES)
    assert "as an athlete is erased" in stage.last(ATHLETE_CHAT)
    assert stage.write("/roster") is Outcome.COMMAND


# erased by others


def ask_to_erase(stage: Stage, chat_id: int = COACH_CHAT, rest: str = "asked by letter") -> Outcome:
    return stage.write(f"/erase Xanthippe {rest}", chat_id=chat_id)


def test_a_coach_confirms_twice(stage: Stage) -> None:
    assert ask_to_erase(stage) is Outcome.ASKED
    stage.tap("Erase Xanthippe Qvist", chat_id=COACH_CHAT)
    assert stage.athlete.person_id == stage.person.id
    stage.tap("Erase for good", chat_id=COACH_CHAT)
    assert "Mara had everything about you erased now" in stage.last(ATHLETE_CHAT)
    (entry,) = stage.audit("athlete.erased")
    assert entry.actor_id == stage.coach.id
    deliver(stage)
    stage.later(minutes=1)
    stage.strike()
    assert left_of_her(stage) == {}


def test_at_either_question_everything_can_be_kept(stage: Stage) -> None:
    ask_to_erase(stage)
    stage.tap("Keep everything", chat_id=COACH_CHAT)
    ask_to_erase(stage)
    stage.tap("Erase Xanthippe Qvist", chat_id=COACH_CHAT)
    stage.tap("Keep everything", chat_id=COACH_CHAT)
    assert stage.last(COACH_CHAT) == "Nothing was erased."
    assert stage.athlete.person_id == stage.person.id


def test_without_saying_how_they_asked_nothing_begins(stage: Stage) -> None:
    assert ask_to_erase(stage, rest="") is Outcome.NOT_UNDERSTOOD
    assert "/erase robin asked by letter on 3 March" in stage.last(COACH_CHAT)


def test_an_open_alert_is_answered_before_anybody_is_erased(stage: Stage) -> None:
    ask_to_erase(stage)
    stage.tap("Erase Xanthippe Qvist", chat_id=COACH_CHAT)
    hurt(stage)
    stage.tap("Erase for good", chat_id=COACH_CHAT)
    assert stage.last(COACH_CHAT).startswith("An alert about Xanthippe Qvist is open.")
    assert stage.athlete.person_id == stage.person.id


def test_a_stand_in_and_another_coach_erase_nobody(stage: Stage) -> None:
    with stage.turn() as turn:
        other = people.add_person(turn.tx, name="Otto", now=stage.now, chat_id=77, is_coach=True)
        people.change_person(turn.tx, stage.coach.id, stand_in_id=other.id)
    assert ask_to_erase(stage, chat_id=77) is Outcome.NOT_UNDERSTOOD
    assert "No athlete of yours" in stage.last(77)


def test_an_owner_erases_anybodys_athlete_and_the_coach_is_told(stage: Stage) -> None:
    with stage.turn() as turn:
        people.add_person(
            turn.tx, name="Olga", now=stage.now, chat_id=OWNER_CHAT, is_owner=True, zone="UTC"
        )
    ask_to_erase(stage, chat_id=OWNER_CHAT)
    stage.tap("Erase Xanthippe Qvist", chat_id=OWNER_CHAT)
    stage.tap("Erase for good", chat_id=OWNER_CHAT)
    assert stage.last(COACH_CHAT).startswith("<b>Xanthippe Qvist</b> left.")
    assert stage.last(OWNER_CHAT).startswith("<b>Xanthippe Qvist</b> left.")


def test_a_button_of_somebody_who_is_no_owner_any_more_does_nothing(stage: Stage) -> None:
    with stage.turn() as turn:
        owner = people.add_person(
            turn.tx, name="Olga", now=stage.now, chat_id=OWNER_CHAT, is_owner=True, zone="UTC"
        )
    ask_to_erase(stage, chat_id=OWNER_CHAT)
    with stage.turn() as turn:
        people.change_person(turn.tx, owner.id, is_owner=False)
    assert stage.tap("Erase Xanthippe Qvist", chat_id=OWNER_CHAT) is Outcome.STALE_TAP
    assert stage.athlete.person_id == stage.person.id


def test_an_invitation_that_was_never_used_can_be_erased(stage: Stage) -> None:
    stage.write("/invite Xanthippe Newcomer", chat_id=COACH_CHAT)
    stage.write("/erase Xanthippe Newcomer asked on the phone", chat_id=COACH_CHAT)
    stage.tap("Erase Xanthippe Newcomer", chat_id=COACH_CHAT)
    stage.tap("Erase for good", chat_id=COACH_CHAT)
    with stage.database.transaction() as tx:
        found = tx.connection().exec_driver_sql("SELECT role FROM invitation").all()
    assert Role.ATHLETE.value not in {row[0] for row in found}
