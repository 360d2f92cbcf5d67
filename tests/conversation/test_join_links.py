"""Personal links: used once, for two weeks, by the person they are for, and not by guessing."""

from pathlib import Path

import pytest

from bot.acts import join
from bot.outcomes import Outcome
from storage import buttons
from storage.queries import people
from storage.records.people import AthleteState, Person, Role
from tests.conversation.newcomers import COACH_CHAT, MENU, Town

PHONE, NEW_PHONE, STRANGER = 701, 702, 703


@pytest.fixture
def town(tmp_path: Path) -> Town:
    return Town(tmp_path)


def add(town: Town, name: str, *, chat_id: int | None = None, **roles: bool) -> Person:
    with town.turn() as turn:
        return people.add_person(turn.tx, name=name, now=town.now, chat_id=chat_id, **roles)


@pytest.mark.parametrize(
    ("text", "secret"),
    [
        ("/start abc_DEF-123", "abc_DEF-123"),
        ("/start@coach_test_bot abc", "abc"),
        ("/start", None),
        ("/start two words", None),
        ("please /start abc", None),
        # PUBLISHED (botapi: deep links hold at most 64 characters of A-Z a-z 0-9 _ -)
        ("/start " + "a" * 64, "a" * 64),
        ("/start " + "a" * 65, None),
        ("/start häh", None),
    ],
)
def test_the_secret_is_read_from_a_start_command_alone(text: str, secret: str | None) -> None:
    assert join.secret_in(text) == secret


def test_a_link_leads_to_the_bot_and_fits_a_deep_link(town: Town) -> None:
    person = add(town, "Owner One", is_owner=True)
    with town.turn() as turn:
        url = join.new_link(
            turn.tx,
            bot_name="coach_test_bot",
            person=person,
            role=Role.OWNER,
            issued_by_id=None,
            now=town.now,
        )
    head, _, secret = url.partition("?start=")
    assert head == "https://t.me/coach_test_bot"
    assert join.secret_in(f"/start {secret}") == secret


def test_an_athletes_link_binds_the_chat_and_shows_the_terms_first(town: Town) -> None:
    person, secret = town.invite()
    assert town.write(PHONE, f"/start {secret}") is Outcome.JOINED
    assert town.person(person).chat_id == PHONE
    assert town.athlete(person).state is AthleteState.INVITED
    terms = town.last(PHONE)
    for part in ("Mara Quill", "7 days", "28 days", "not medical advice", "Call 112"):
        assert part in terms.text
    assert list(terms.buttons) == ["I agree", "I do not agree"]
    assert "Robin Vale opened the link" in town.last(COACH_CHAT).text
    assert [entry.what for entry in town.audit(person)] == ["athlete.invited", "athlete.joined"]


def test_the_menu_of_the_role_is_set_on_joining(town: Town) -> None:
    _, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    menus = [said.commands for said in town.heard(PHONE) if said.operation == "menu"]
    assert menus == [[list(entry) for entry in MENU]]


def test_a_link_works_once(town: Town) -> None:
    person, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    assert town.write(STRANGER, f"/start {secret}") is Outcome.STRANGER
    assert "used before" in town.last(STRANGER).text
    assert town.person(person).chat_id == PHONE


def test_the_same_person_may_open_a_used_link_again_and_is_welcomed_back(town: Town) -> None:
    _, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    town.press(PHONE, "I agree")
    assert town.write(PHONE, f"/start {secret}") is Outcome.COMMAND
    assert "Good to see you, Robin Vale" in town.said_in(PHONE)
    assert "18 or older?" in town.last(PHONE).text


@pytest.mark.parametrize(("days", "is_in"), [(13.9, True), (14, False), (30, False)])
def test_a_link_works_for_fourteen_days(town: Town, days: float, *, is_in: bool) -> None:
    person, secret = town.invite()  # CHOSEN: fourteen days
    town.later(days=days)
    town.write(PHONE, f"/start {secret}")
    assert (town.person(person).chat_id == PHONE) is is_in
    assert ("too old" in town.said_in(PHONE)) is not is_in


def test_a_newer_link_replaces_an_unused_older_one(town: Town) -> None:
    person, older = town.invite()
    newer = town.link(person, Role.ATHLETE)
    assert town.write(PHONE, f"/start {older}") is Outcome.STRANGER
    assert town.write(PHONE, f"/start {newer}") is Outcome.JOINED


def test_a_stranger_with_an_unknown_link_gets_one_polite_line(town: Town) -> None:
    assert town.write(STRANGER, "/start nothing") is Outcome.STRANGER
    assert len(town.heard(STRANGER)) == 1
    assert "This link does not work" in town.last(STRANGER).text
    assert "emergency" in town.last(STRANGER).text


def test_a_chat_that_guessed_five_times_in_an_hour_is_not_answered(town: Town) -> None:
    person, secret = town.invite()
    for n in range(5):  # CHOSEN: five within an hour
        town.write(STRANGER, f"/start guess{n}")
        town.later(minutes=5)
    assert len(town.heard(STRANGER)) == 5
    assert "Wait an hour" in town.last(STRANGER).text
    town.write(STRANGER, "/start guess9")
    town.write(STRANGER, f"/start {secret}")
    assert len(town.heard(STRANGER)) == 5
    assert town.person(person).chat_id is None
    assert town.write(PHONE, "/start other") is Outcome.STRANGER
    assert len(town.heard(PHONE)) == 1, "another chat is not shut out"


def test_the_hour_over_the_right_link_works_again(town: Town) -> None:
    person, secret = town.invite()
    for n in range(5):
        town.write(PHONE, f"/start guess{n}")
    town.later(minutes=61)
    assert town.write(PHONE, f"/start {secret}") is Outcome.JOINED
    assert town.person(person).chat_id == PHONE


def test_five_wrong_links_spread_over_hours_shut_nobody_out(town: Town) -> None:
    _, secret = town.invite()
    for n in range(8):
        town.write(PHONE, f"/start guess{n}")
        town.later(minutes=16)  # DERIVED: at most four fall into any hour
    assert town.write(PHONE, f"/start {secret}") is Outcome.JOINED


def test_a_new_phone_moves_the_chat_keeps_the_history_and_tells_the_old_one(town: Town) -> None:
    person, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    town.press(PHONE, "I agree")
    town.press(PHONE, "18 or older")
    again = town.link(person, Role.ATHLETE)
    assert town.write(NEW_PHONE, f"/start {again}") is Outcome.JOINED
    assert town.person(person).chat_id == NEW_PHONE
    assert "moved to another chat" in town.last(PHONE).text
    assert "everything is kept" in town.said_in(NEW_PHONE)
    assert "new link from another chat" in town.last(COACH_CHAT).text
    assert town.step(PHONE) is None
    assert town.step(NEW_PHONE) == "reference"
    assert "table" in town.last(NEW_PHONE).text
    assert town.audit(person)[-1].what == "athlete.new_phone"
    assert town.press(NEW_PHONE, "Women's table") is Outcome.INTAKE


def test_what_waited_for_the_old_chat_goes_to_the_new_one(town: Town) -> None:
    person, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    with town.turn() as turn:
        turn.say(town.person(person), "still on its way")
    again = town.link(person, Role.ATHLETE)
    town.write(NEW_PHONE, f"/start {again}")
    assert "still on its way" in town.said_in(NEW_PHONE)
    assert [said.text for said in town.heard(PHONE)] == [town.last(PHONE).text]


def test_a_blocked_person_is_reachable_after_a_new_link(town: Town) -> None:
    person, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    with town.turn() as turn:
        people.change_person(turn.tx, person.id, is_blocked=True)
    town.write(NEW_PHONE, f"/start {town.link(person, Role.ATHLETE)}")
    assert not town.person(person).is_blocked


def test_an_athletes_chat_does_not_take_another_athletes_link(town: Town) -> None:
    _, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    other, other_secret = town.invite("Sam Oake")
    assert town.write(PHONE, f"/start {other_secret}") is Outcome.NOT_UNDERSTOOD
    assert "already belongs to Robin Vale" in town.last(PHONE).text
    assert town.write(NEW_PHONE, f"/start {other_secret}") is Outcome.JOINED
    assert town.person(other).chat_id == NEW_PHONE


def test_a_coach_comes_in_and_reads_what_must_be_checked_first(town: Town) -> None:
    coach = add(town, "Ines Hart", is_coach=True)
    assert town.write(PHONE, f"/start {town.link(coach, Role.COACH)}") is Outcome.JOINED
    assert town.person(coach).chat_id == PHONE
    assert "/invite NAME" in town.last(PHONE).text
    assert "clinician must check" in town.last(PHONE).text


def test_an_owner_comes_in_and_may_become_a_coach_in_the_same_chat(town: Town) -> None:
    owner = add(town, "Ines Hart", is_owner=True)
    town.write(PHONE, f"/start {town.link(owner, Role.OWNER)}")
    entry = add(town, "Ines Hart", is_coach=True)
    assert town.write(PHONE, f"/start {town.link(entry, Role.COACH)}") is Outcome.JOINED
    assert town.person(owner).is_coach
    assert town.person(owner).is_owner
    assert not town.person(entry).is_coach, "one coach, not two of the same name"


def test_a_coach_may_be_an_athlete_too(town: Town) -> None:
    with town.turn() as turn:
        entry, _ = join.add_athlete(turn, town.coach, "Mara herself")
        secret = join.invite(turn, town.coach, entry).rsplit("=", 1)[1]
    assert town.write(COACH_CHAT, f"/start {secret}") is Outcome.JOINED
    assert town.athlete(town.coach).state is AthleteState.INVITED
    assert town.athlete(entry).state is AthleteState.LEFT
    assert "I agree" in town.last(COACH_CHAT).buttons


def test_an_athlete_who_left_comes_back_by_the_terms(town: Town) -> None:
    person, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    town.press(PHONE, "I agree")
    with town.turn() as turn:
        people.change_athlete(turn.tx, person.id, state=AthleteState.LEFT)
        buttons.end_dialog(turn.tx, PHONE)
    town.write(PHONE, f"/start {town.link(person, Role.ATHLETE)}")
    assert town.athlete(person).state is AthleteState.INVITED
    assert "I agree" in town.last(PHONE).buttons


def test_start_without_a_secret_welcomes_back_and_goes_on(town: Town) -> None:
    _, secret = town.invite()
    town.write(PHONE, f"/start {secret}")
    town.press(PHONE, "I agree")
    assert town.write(PHONE, "/start") is Outcome.COMMAND
    assert "Good to see you" in town.said_in(PHONE)
    assert "18 or older?" in town.last(PHONE).text


def test_a_name_with_markup_stays_a_name(town: Town) -> None:
    _, secret = town.invite("Robin <b>Vale</b>")
    town.write(PHONE, f"/start {secret}")
    assert "Hello Robin &lt;b&gt;Vale&lt;/b&gt;" in town.raw(PHONE)
