"""What could not be handled is passed on in the person's own words, never in ours."""

import json

from bot.acts.set_aside import words_of

OURS = {
    "message_id": 4,
    "chat": {"id": 7},
    "text": "3. Bar hang: 3 × 20 s. What did you get?",
    "reply_markup": {
        "inline_keyboard": [
            [{"text": "As planned", "callback_data": "a"}],
            [{"text": "Something hurts", "callback_data": "b"}],
        ]
    },
}


def tapped(data: str) -> str:
    tap = {"id": "1", "from": {"id": 7}, "message": OURS, "data": data}
    return json.dumps({"update_id": 1, "callback_query": tap})


def test_of_a_tap_the_label_of_its_button_is_passed_on():
    assert words_of(tapped("b")) == "Something hurts"


def test_a_tap_whose_button_is_not_found_never_passes_for_our_own_question():
    words = words_of(tapped("gone"))
    assert words.startswith('{"update_id": 1')


def test_of_a_message_its_text_is_passed_on_and_not_what_it_replies_to():
    message = {"reply_to_message": OURS, "chat": {"id": 7}, "text": "20 20 18"}
    assert words_of(json.dumps({"update_id": 1, "message": message})) == "20 20 18"


def test_what_is_no_json_is_passed_on_as_it_came():
    assert words_of("{broken") == "{broken"
    assert words_of("[1]") == "[1]"
