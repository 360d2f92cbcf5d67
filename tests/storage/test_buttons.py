"""A button means one thing in one chat, until it is too old to be meant."""

from datetime import timedelta

from storage import buttons
from storage.queries import people


def shown(tx, now) -> str:
    somebody = people.add_person(tx, name="Ines", now=now, chat_id=7)
    return buttons.new_button(
        tx, chat_id=7, person_id=somebody.id, act="note", arguments={"rest": "words"}, now=now
    )


def test_a_button_means_nothing_in_another_chat(database, now):
    with database.transaction() as tx:
        token = shown(tx, now)
        found = buttons.button(tx, token=token, chat_id=7)
        assert found is not None
        assert found.arguments == {"rest": "words"}
        assert buttons.button(tx, token=token, chat_id=8) is None


def test_a_button_and_its_words_are_forgotten_after_ninety_days(database, now):
    kept = timedelta(days=90)  # CHOSEN
    with database.transaction() as tx:
        token = shown(tx, now)
    with database.transaction() as tx:
        assert buttons.forget_buttons(tx, now=now + kept) == 0
        assert buttons.forget_buttons(tx, now=now + kept + timedelta(seconds=1)) == 1
    with database.transaction() as tx:
        assert buttons.button(tx, token=token, chat_id=7) is None
