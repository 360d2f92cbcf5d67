"""Everything passed on waits on the roster until it is answered, in whatever form."""

from pathlib import Path

import pytest

from bot.events import Media, SentFile, SentMedia
from bot.outcomes import Outcome
from storage.queries import care, people
from storage.records.people import Person
from tests.conversation.coach_bench import COACH_CHAT, Bench


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


def asks(bench: Bench, person: Person, text: str = "may I run on Sunday?") -> int:
    """Let an athlete ask; return the platform's id of what the coach sees of it."""
    assert person.chat_id is not None
    assert bench.write(text, chat_id=person.chat_id) is Outcome.PASSED_ON
    return bench.deliver()


def waiting(bench: Bench, person: Person) -> list[str]:
    with bench.turn() as turn:
        return [one.words for one in care.unanswered(turn.tx, [person.id])]


def send(
    bench: Bench,
    media: Media,
    *,
    reply_to: int | None,
    chat_id: int = COACH_CHAT,
    album: str | None = None,
    message_id: int = 700,
    caption: str = "",
    file: SentFile | None = None,
) -> Outcome:
    event = SentMedia(
        chat_id=chat_id,
        at=bench.now,
        message_id=message_id,
        media=media,
        caption=caption,
        album_id=album,
        reply_to_message_id=reply_to,
        file=file,
    )
    return bench._handle(event)


def copies(bench: Bench, chat_id: int | None) -> list[int]:
    assert chat_id is not None
    rows = [one for one in bench.rows(chat_id) if one.operation == "copy"]
    return [one.payload["message_id"] for one in rows]


@pytest.mark.parametrize(
    ("media", "words"),
    [
        (Media.VOICE, "a voice note"),
        (Media.PHOTO, "a picture"),
        (Media.VIDEO, "a clip"),
        (Media.DOCUMENT, "a file"),
    ],
)
def test_a_reply_that_is_not_text_goes_to_the_athlete_and_answers(
    bench: Bench, media: Media, words: str
):
    ana, bo = bench.add_athlete("Ana Lark"), bench.add_athlete("Bo Finch")
    asked = asks(bench, ana)
    assert send(bench, media, reply_to=asked) is Outcome.PASSED_ON
    assert copies(bench, ana.chat_id) == [700]
    assert bench.last(ana.chat_id) == f"<b>Mara Quill</b> sends you {words}:"
    assert waiting(bench, ana) == []
    assert bench.last() == f"To Ana Lark: {words}.\n1 waiting message is answered with it."
    assert bench.texts(bo.chat_id) == []


def test_an_album_is_announced_and_confirmed_once(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    asked = asks(bench, ana)
    for number in (701, 702, 703):
        send(bench, Media.PHOTO, reply_to=asked, album="a1", message_id=number)
    assert copies(bench, ana.chat_id) == [701, 702, 703]
    assert sum("sends you" in text for text in bench.texts(ana.chat_id)) == 1
    assert sum(text.startswith("To Ana Lark") for text in bench.texts()) == 1


def test_after_write_a_voice_note_goes_to_that_athlete(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/who ana")
    bench.tap("Write")
    assert send(bench, Media.VOICE, reply_to=None) is Outcome.PASSED_ON
    assert copies(bench, ana.chat_id) == [700]
    # The question is answered: the next text is for nobody.
    assert bench.write("and more") is Outcome.NOT_UNDERSTOOD


def test_without_an_addressee_it_goes_to_nobody_and_says_how(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    assert send(bench, Media.VOICE, reply_to=None) is Outcome.NOT_UNDERSTOOD
    assert "Whom is this for?" in bench.last()
    assert bench.texts(ana.chat_id) == []


def test_an_athlete_who_cannot_be_reached_is_named_and_nothing_is_answered(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    asked = asks(bench, ana)
    with bench.turn() as turn:
        people.change_person(turn.tx, ana.id, is_blocked=True)
    send(bench, Media.VOICE, reply_to=asked)
    assert "Ana Lark cannot be reached" in bench.last()
    assert waiting(bench, ana) == ["may I run on Sunday?"]


def test_it_stays_on_the_roster_for_days_until_answered(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    asked = asks(bench, ana)
    bench.later(days=9)
    bench.write("/roster")
    assert "“may I run on Sunday?”" in bench.last()
    bench.write("yes, easy", reply_to=asked)
    bench.write("/roster")
    assert "may I run" not in bench.last()


def test_what_needs_no_answer_is_closed_by_a_tap_recorded_and_put_back(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    asks(bench, ana, "thanks for Tuesday, see you at the meet")
    bench.write("/who ana")
    asks(bench, ana, "one more thing: may I run?")
    bench.tap("No answer needed")
    # What came after the screen was shown still waits.
    assert waiting(bench, ana) == ["one more thing: may I run?"]
    with bench.turn() as turn:
        assert care.audit_of(turn.tx, ana.id)[0].what == "messages.closed"
    count = len(bench.texts(ana.chat_id))
    bench.tap("Put back")
    assert len(waiting(bench, ana)) == 2
    assert len(bench.texts(ana.chat_id)) == count


def test_a_coach_who_trains_too_has_their_own_media_passed_on_and_replies_sent(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    both = bench.add_athlete("Ugo Hall")
    with bench.turn() as turn:
        people.change_person(turn.tx, both.id, is_coach=True)
        people.change_athlete(turn.tx, ana.id, coach_id=both.id)
    assert both.chat_id is not None
    assert send(bench, Media.VIDEO, reply_to=None, chat_id=both.chat_id) is Outcome.PASSED_ON
    assert copies(bench, COACH_CHAT) == [700]
    bench.write("may I swim?", chat_id=ana.chat_id or 0)
    bench.deliver()
    asked = next(
        50_000 + (row.id or 0)
        for row in bench.rows(both.chat_id)
        if "may I swim?" in row.payload.get("text", "")
    )
    send(bench, Media.VOICE, reply_to=asked, chat_id=both.chat_id, message_id=701)
    assert copies(bench, ana.chat_id) == [701]
    team = SentFile(file_id="f", name="team.csv", size_bytes=10)
    assert send(bench, Media.DOCUMENT, reply_to=None, chat_id=both.chat_id, file=team) is (
        Outcome.COMMAND
    )
    assert any(row.operation == "fetch" for row in bench.rows(both.chat_id))


def test_words_of_danger_under_a_coachs_own_picture_are_heard_first(bench: Bench):
    both = bench.add_athlete("Ugo Hall")
    with bench.turn() as turn:
        people.change_person(turn.tx, both.id, is_coach=True)
    team = SentFile(file_id="f", name="team.csv", size_bytes=10)
    outcome = send(
        bench,
        Media.DOCUMENT,
        reply_to=None,
        chat_id=both.chat_id or 0,
        file=team,
        caption="I fainted in the last set",
    )
    assert outcome is Outcome.SAFETY
