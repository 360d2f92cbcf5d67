"""What a coach writes reaches the athlete with the coach's name; notes stay with the coach."""

from pathlib import Path

import pytest

from bot.outcomes import Outcome
from storage.queries import care, people
from storage.records.people import Role
from tests.conversation.coach_bench import Bench


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


def test_tell_sends_the_words_with_the_coachs_name_and_answers_what_waited(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    with bench.turn() as turn:
        care.pass_on(turn.tx, athlete_id=ana.id, words="may I swim?", at=bench.now)
    assert bench.write("/tell ana Yes, <easy> lengths.\nNo sprints.") is Outcome.PASSED_ON
    assert bench.last(ana.chat_id) == (
        "<b>Mara Quill</b>:\nYes, &lt;easy&gt; lengths.\nNo sprints."
    )
    assert "1 waiting message is answered" in bench.last()
    with bench.turn() as turn:
        assert care.unanswered(turn.tx, [ana.id]) == ()


def test_replying_to_a_message_about_an_athlete_goes_to_that_athlete(bench: Bench):
    bench.add_athlete("Bo Finch")
    ana = bench.add_athlete("Ana Lark")
    bench.alert(ana)
    about_ana = bench.deliver()
    bench.write("rest it this week", reply_to=about_ana)
    assert "rest it this week" in bench.last(ana.chat_id)


def test_the_write_button_makes_the_next_text_go_there_and_only_that_one(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.alert(ana)
    bench.tap("Write")
    bench.write("how is it today?")
    assert "how is it today?" in bench.last(ana.chat_id)
    assert bench.write("and this?") is Outcome.NOT_UNDERSTOOD
    assert len(bench.texts(ana.chat_id)) == 1


def test_a_text_long_after_the_button_is_asked_about_first(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.alert(ana)
    bench.tap("Write")
    bench.later(hours=2)
    assert bench.write("bring milk") is Outcome.ASKED
    assert bench.texts(ana.chat_id) == []
    bench.tap("Yes, to Ana Lark")
    assert "bring milk" in bench.last(ana.chat_id)


def test_never_mind_closes_the_question(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.alert(ana)
    bench.tap("Write")
    bench.tap("Not now")
    assert bench.write("hello?") is Outcome.NOT_UNDERSTOOD
    assert bench.texts(ana.chat_id) == []


def test_a_long_text_arrives_whole_in_pieces(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    long = " ".join(f"word{number}" for number in range(900))
    bench.write(f"/tell ana {long}")
    texts = bench.texts(ana.chat_id)
    assert len(texts) > 1
    assert " ".join(text.removeprefix("<b>Mara Quill</b>:\n") for text in texts) == long


def test_who_cannot_be_reached_is_named_and_what_waited_stays(bench: Bench):
    bench.add_athlete("Ana Lark", has_chat=False)
    bench.write("/tell ana hello")
    assert "has not opened the link yet" in bench.last()
    bo = bench.add_athlete("Bo Finch")
    with bench.turn() as turn:
        people.change_person(turn.tx, bo.id, is_blocked=True)
        care.pass_on(turn.tx, athlete_id=bo.id, words="hi", at=bench.now)
    bench.write("/tell bo hello")
    assert "has blocked or closed the chat" in bench.last()
    with bench.turn() as turn:
        assert len(care.unanswered(turn.tx, [bo.id])) == 1


def test_edited_and_forwarded_texts_are_not_sent_on(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.alert(ana)
    about_ana = bench.deliver()
    bench.write("changed", reply_to=about_ana, is_edit=True)
    assert "does not change what was sent" in bench.last()
    bench.write("forwarded", reply_to=about_ana, is_forwarded=True)
    assert bench.texts(ana.chat_id) == []


def test_a_note_is_kept_for_the_coach_and_never_sent(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/note ana new job, trains late")
    assert bench.texts(ana.chat_id) == []
    bench.write("/audit ana")
    assert "“new job, trains late”" in bench.last()


def test_the_audit_is_told_in_the_coachs_own_zone(bench: Bench):
    bench.add_athlete("Ana Lark", stage=2)
    bench.write("/stage ana 1 careful again")
    bench.write("/audit ana")
    # DERIVED: 9:00 UTC on 2 March 2026 is 10:00 in Madrid (UTC+1)
    assert "<b>Mon 2 Mar, 10:00</b> · Mara Quill" in bench.last()
    assert "Stage changed: 2 → 1." in bench.last()
    assert "“careful again”" in bench.last()


def test_an_invitation_is_a_personal_link_that_works_once_and_is_kept_as_a_digest(bench: Bench):
    bench.write("/invite  Robin   Field ")
    link = bench.last()
    assert "https://t.me/holdwell_test_bot?start=" in link
    secret = link.split("start=")[1].split("\n")[0]
    with bench.turn() as turn:
        invitation = people.invitation(turn.tx, secret)
        assert invitation is not None
        person = people.person(turn.tx, invitation.person_id)
    assert (person.name, invitation.role) == ("Robin Field", Role.ATHLETE)
    # CHOSEN: 14 days
    assert (invitation.expires_at - bench.now).days == 14
    assert bench.athlete(person).state.value == "invited"


def test_inviting_a_known_name_asks_and_a_new_link_keeps_the_person(bench: Bench):
    bench.write("/invite Robin Field")
    first = bench.last().split("start=")[1].split("\n")[0]
    assert bench.write("/invite robin field") is Outcome.ASKED
    bench.tap("Same person")
    second = bench.last().split("start=")[1].split("\n")[0]
    with bench.turn() as turn:
        assert people.invitation(turn.tx, first) is None
        assert people.invitation(turn.tx, second) is not None
        assert len(people.athletes_of(turn.tx, bench.coach.id)) == 1


def test_the_owner_sees_who_coaches_whom_and_what_nobody_has_seen(bench: Bench):
    owner_chat = 31
    with bench.turn() as turn:
        people.add_person(
            turn.tx, name="Ona Keys", now=bench.now, chat_id=owner_chat, is_owner=True
        )
    ana = bench.add_athlete("Ana Lark")
    bench.alert(ana)
    bench.later(hours=1)
    bench.write("/house", chat_id=owner_chat)
    text = bench.last(owner_chat)
    assert "<b>Mara Quill</b> (1): Ana Lark" in text
    assert "Ana Lark, coach Mara Quill: rested, 1 h ago" in text
    bench.write("/roster", chat_id=owner_chat)
    assert "do not know that command" in bench.last(owner_chat)
    bench.write("hello", chat_id=owner_chat)
    assert "/house" in bench.last(owner_chat)


def test_a_coach_has_no_house_and_an_athlete_no_roster(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.write("/house")
    assert "do not know that command" in bench.last()
    assert ana.chat_id is not None
    bench.write("/roster", chat_id=ana.chat_id)
    assert "do not know that command" in bench.last(ana.chat_id)
