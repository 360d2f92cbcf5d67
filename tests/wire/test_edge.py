"""Every kind of update becomes one event of ours, or is set aside; none is guessed at.

The updates are made by the loopback platform as the Bot API documents them, or written out here.
"""

import json
from datetime import UTC, datetime

import pytest
from telegram import Bot

from bot.events import (
    BlockedUs,
    ChatMoved,
    Media,
    NotForUs,
    SentMedia,
    Tapped,
    UnblockedUs,
    Wrote,
)
from bot.wire.edge import WANTED_UPDATES, MalformedUpdateError, event_from, tap_ids
from demo_scenario.loopback.files import MediaKind
from demo_scenario.loopback.people import People
from demo_scenario.loopback.platform_state import LoopbackPlatform
from tests.wire.stage import ANA, START, quick_request

NOW = datetime(2026, 3, 2, 7, 0, 1, tzinfo=UTC)  # CHOSEN
GROUP = -5001  # CHOSEN
USER = {"id": ANA, "is_bot": False, "first_name": "Ana", "language_code": "es"}
CHAT = {"id": ANA, "type": "private", "first_name": "Ana"}


@pytest.fixture
def bot():
    request = quick_request()
    return Bot("1:x", request=request, get_updates_request=request)


@pytest.fixture
def platform():
    platform = LoopbackPlatform(now=lambda: START, seed=3)
    platform.updates.allow(WANTED_UPDATES)
    return platform


@pytest.fixture
def ana(platform):
    return People(platform).add(ANA, "Ana", "es")


@pytest.fixture
def read(platform, bot):
    """Return the events of what has arrived."""

    def read_all():
        page = platform.updates.page(100)
        platform.updates.confirm_all()
        return [event_from(json.dumps(raw), bot, received_at=NOW) for raw in page]

    return read_all


def message(**facts):
    return {"message_id": 9, "date": 1_772_434_800, "chat": CHAT, "from": USER, **facts}


def test_a_text_is_what_somebody_wrote(ana, read):
    first = ana.write("45 40 38")
    reply = ana.write("and this", reply_to_message_id=first)
    wrote, replied = read()
    assert wrote == Wrote(
        chat_id=ANA,
        at=NOW,
        message_id=first,
        text="45 40 38",
        first_name="Ana",
        language_code="es",
    )
    assert (replied.message_id, replied.reply_to_message_id) == (reply, first)


def test_an_edit_keeps_the_message_it_corrects(ana, read):
    written = ana.write("45 40 38")
    ana.edit(written, "45 40 36")
    _, edit = read()
    assert isinstance(edit, Wrote)
    assert (edit.message_id, edit.text, edit.is_edit) == (written, "45 40 36", True)


def test_what_was_forwarded_is_marked(ana, read):
    ana.forward_from_elsewhere("/stage Ana 5", sender_name="Somebody")
    (event,) = read()
    assert isinstance(event, Wrote)
    assert event.is_forwarded


@pytest.mark.parametrize(
    ("send", "media"),
    [
        (lambda ana: ana.send_photo("row 2"), Media.PHOTO),
        (lambda ana: ana.send_video("row 2"), Media.VIDEO),
        (lambda ana: ana.send_document("a.csv", b"x", "row 2"), Media.DOCUMENT),
        (lambda ana: ana.send_voice(), Media.VOICE),
        (lambda ana: ana.send_sticker(), Media.STICKER),
        (lambda ana: ana.send_location(latitude=52.5, longitude=13.4), Media.LOCATION),
        (lambda ana: ana.send_contact(phone_number="1", first_name="X"), Media.OTHER),
    ],
    ids=lambda each: each if isinstance(each, str) else "",
)
def test_each_kind_of_media_is_named(ana, read, send, media):
    sent = send(ana)
    (event,) = read()
    assert isinstance(event, SentMedia)
    assert (event.chat_id, event.message_id, event.media) == (ANA, sent, media)
    if media in {Media.PHOTO, Media.VIDEO, Media.DOCUMENT}:
        assert event.caption == "row 2"
    if media is Media.LOCATION:
        assert (event.latitude, event.longitude) == (52.5, 13.4)


@pytest.mark.parametrize(
    ("field", "body", "media"),
    [
        ("audio", {"file_id": "f", "file_unique_id": "u", "duration": 3}, Media.VOICE),
        (
            "video_note",
            {"file_id": "f", "file_unique_id": "u", "length": 9, "duration": 3},
            Media.VIDEO_NOTE,
        ),
        ("dice", {"emoji": "🎲", "value": 4}, Media.OTHER),
        ("poll_of_the_year_2031", {"anything": 1}, Media.OTHER),
    ],
)
def test_other_and_future_kinds_are_media_too(bot, field, body, media):
    raw = json.dumps({"update_id": 1, "message": message(**{field: body})})
    event = event_from(raw, bot, received_at=NOW)
    assert isinstance(event, SentMedia)
    assert event.media is media


def test_the_parts_of_an_album_share_its_id(ana, read):
    ana.send_album(("left", "right"), kind=MediaKind.VIDEO)
    left, right = read()
    assert left.album_id is not None
    assert left.album_id == right.album_id
    assert (left.caption, right.caption) == ("left", "right")


def test_a_tap_carries_its_token_and_its_message(bot):
    query = {
        "id": "77",
        "from": USER,
        "chat_instance": "1",
        "message": message(text="How was it?"),
        "data": "token",
    }
    raw = {"update_id": 1, "callback_query": query}
    event = event_from(json.dumps(raw), bot, received_at=NOW)
    assert event == Tapped(chat_id=ANA, at=NOW, message_id=9, token="token")  # noqa: S106
    assert list(tap_ids([raw])) == ["77"]


@pytest.mark.parametrize(
    ("message_part", "message_id"),
    [({}, None), ({"message": {"chat": CHAT, "message_id": 9, "date": 0}}, 9)],
    ids=["no message", "a message too old to be shown"],
)
def test_a_tap_without_a_readable_message_is_still_a_tap(bot, message_part, message_id):
    query = {"id": "77", "from": USER, "chat_instance": "1", **message_part}
    event = event_from(json.dumps({"update_id": 1, "callback_query": query}), bot, received_at=NOW)
    assert event == Tapped(chat_id=ANA, at=NOW, message_id=message_id, token="")


def test_blocking_and_coming_back_are_events(ana, read):
    ana.block()
    ana.unblock()
    assert read() == [BlockedUs(chat_id=ANA, at=NOW), UnblockedUs(chat_id=ANA, at=NOW)]


def test_a_group_is_not_for_us_whatever_is_said_in_it(platform, bot, read):
    people = People(platform)
    ana = people.add(ANA, "Ana")
    people.make_group(GROUP, "Team", by=ana)
    ana.write("/roster", in_chat_id=GROUP)
    assert read() == [NotForUs(chat_id=GROUP, at=NOW, why="group")] * 2


def test_a_moved_chat_tells_its_new_id(bot):
    group = {"id": GROUP, "type": "group", "title": "Team"}
    body = message(chat=group, migrate_to_chat_id=-100_777)
    event = event_from(json.dumps({"update_id": 1, "message": body}), bot, received_at=NOW)
    assert event == ChatMoved(chat_id=GROUP, at=NOW, new_chat_id=-100_777)


@pytest.mark.parametrize(
    "part",
    [
        {"message_reaction": {"chat": CHAT, "message_id": 9, "date": 0, "user": USER,
                              "old_reaction": [], "new_reaction": []}},
        {"channel_post": message(chat={"id": -7, "type": "channel", "title": "News"}, text="x")},
        {"poll": {"id": "1", "question": "?", "options": [], "total_voter_count": 0,
                  "is_closed": False, "is_anonymous": True, "type": "regular",
                  "allows_multiple_answers": False}},
        {"kind_of_the_year_2031": {"chat": CHAT}},
        {},
    ],
    ids=lambda part: next(iter(part), "nothing"),
)  # fmt: skip
def test_reactions_posts_and_unknown_kinds_mean_nothing_here(bot, part):
    event = event_from(json.dumps({"update_id": 1, **part}), bot, received_at=NOW)
    assert event == NotForUs(chat_id=0, at=NOW, why="unknown_update")


@pytest.mark.parametrize(
    "raw",
    [
        "",
        "not json",
        "[1, 2]",
        '{"update_id": 1, "message": "broken"}',
        '{"update_id": 1, "message": {"message_id": 9}}',
        '{"update_id": 1, "message": {"message_id": 9, "date": "soon", "chat": {"id": 1}}}',
        '{"update_id": 1, "callback_query": {"id": "7"}}',
        '{"message": {}}',
    ],
)
def test_what_has_not_the_promised_shape_is_malformed(bot, raw):
    with pytest.raises(MalformedUpdateError) as fault:
        event_from(raw, bot, received_at=NOW)
    assert "broken" not in str(fault.value)


def test_half_a_surrogate_pair_becomes_a_mark_that_a_database_takes(bot):
    raw = '{"update_id": 1, "message": ' + json.dumps(message(text="45 \ud83d 40")) + "}"
    event = event_from(raw, bot, received_at=NOW)
    assert isinstance(event, Wrote)
    assert event.text == "45 � 40"
    event.text.encode()


def test_a_whole_emoji_stays_whole(bot):
    raw = json.dumps({"update_id": 1, "message": message(text="done 💪")})
    event = event_from(raw, bot, received_at=NOW)
    assert isinstance(event, Wrote)
    assert event.text == "done 💪"


@pytest.mark.parametrize("query", ["broken", {}, {"id": 7}, None])
def test_a_tap_without_an_id_is_not_answered(query):
    assert list(tap_ids([{"update_id": 1, "callback_query": query}])) == []


PLACE = {"latitude": 38.7, "longitude": -9.1}


@pytest.mark.parametrize(
    "parts",
    [
        {"location": PLACE},
        # PUBLISHED (botapi: a message with a venue carries its location too)
        {"venue": {"location": PLACE, "title": "Gym", "address": "1"}, "location": PLACE},
        {"venue": {"location": PLACE, "title": "Gym", "address": "1"}},
    ],
)
def test_a_shared_place_or_venue_carries_its_position(bot, parts):
    raw = json.dumps({"update_id": 1, "message": message(**parts)})
    event = event_from(raw, bot, received_at=NOW)
    assert isinstance(event, SentMedia)
    assert event.media is Media.LOCATION
    assert (event.latitude, event.longitude) == (38.7, -9.1)


def test_a_place_that_is_shared_live_is_heard_once(bot):
    raw = json.dumps({"update_id": 1, "edited_message": message(location=PLACE)})
    event = event_from(raw, bot, received_at=NOW)
    assert event == NotForUs(chat_id=ANA, at=NOW, why="live_location")
