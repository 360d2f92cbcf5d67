"""Rate limits follow the clock that they are given.

PUBLISHED botapi (bots FAQ): about one a second in a chat with short bursts, about 30 a second in
all, 20 a minute in a group. CHOSEN: a burst of five.
"""

from datetime import UTC, datetime, timedelta

import pytest
from telegram.error import RetryAfter

from demo_scenario.loopback.limits import CHAT_BURST, RateLimits
from tests.loopback.stage import ANA, BRUNO, on_stage

START = datetime(2026, 3, 2, 7, tzinfo=UTC)  # CHOSEN
GROUP = -500  # CHOSEN


def _admitted(limits, chat_ids, at):
    return sum(limits.retry_after_s(chat_id, at) == 0 for chat_id in chat_ids)


def test_a_chat_takes_a_burst_and_then_one_a_second():
    limits = RateLimits()
    assert _admitted(limits, [ANA] * 20, START) == CHAT_BURST == 5  # CHOSEN
    # DERIVED: 10 s at one a second, less the burst's ceiling: one each second is let through
    passed = [_admitted(limits, [ANA] * 3, START + timedelta(seconds=s)) for s in range(1, 11)]
    assert passed == [1] * 10


def test_the_wait_is_whole_seconds_and_at_least_one():
    limits = RateLimits()
    _admitted(limits, [ANA] * 5, START)
    assert limits.retry_after_s(ANA, START) == 1
    assert limits.retry_after_s(ANA, START + timedelta(milliseconds=900)) == 1
    assert limits.retry_after_s(ANA, START + timedelta(seconds=1)) == 0


def test_thirty_a_second_pass_in_all():
    limits = RateLimits()
    assert _admitted(limits, range(1, 100), START) == 30  # PUBLISHED botapi: about 30 a second
    second = START + timedelta(seconds=1)
    assert _admitted(limits, range(100, 200), second) == 30


def test_twenty_a_minute_pass_in_a_group():
    limits = RateLimits()
    assert _admitted(limits, [GROUP] * 30, START) == 20  # PUBLISHED botapi: 20 a minute
    # DERIVED: one every 60 / 20 = 3 s
    assert limits.retry_after_s(GROUP, START) == 3
    assert _admitted(limits, [GROUP] * 5, START + timedelta(seconds=3)) == 1


def test_an_album_takes_as_many_as_it_has_items():
    limits = RateLimits()
    assert limits.retry_after_s(ANA, START, messages=8) == 0
    # DERIVED: 5 - 8 = -3; one message again after 4 s
    assert limits.retry_after_s(ANA, START) == 4


def test_a_clock_that_goes_back_gives_nothing_and_breaks_nothing():
    limits = RateLimits()
    _admitted(limits, [ANA] * 5, START)
    assert limits.retry_after_s(ANA, START - timedelta(hours=1)) == 1


def test_limits_that_are_off_let_everything_through():
    assert _admitted(RateLimits(are_on=False), [ANA] * 1000, START) == 1000


@on_stage
async def test_the_bot_is_told_how_long_to_wait_and_nothing_was_sent(stage):
    for number in range(5):  # CHOSEN: the burst
        await stage.bot.send_message(ANA, str(number))
    with pytest.raises(RetryAfter) as limited:
        await stage.bot.send_message(ANA, "one too many")
    assert limited.value.retry_after == timedelta(seconds=1)  # DERIVED: one a second
    assert len(stage.ana.sees()) == 5
    await stage.bot.send_message(BRUNO, "another chat is free")
    stage.clock.advance(seconds=1)
    await stage.bot.send_message(ANA, "in time")
    assert [message.text for message in stage.ana.sees()][-1] == "in time"


@on_stage
async def test_the_answer_over_the_limit_has_the_documented_form(stage):
    for _ in range(5):
        await stage.call("sendMessage", chat_id=ANA, text="x")
    status, body = await stage.call("sendMessage", chat_id=ANA, text="x")
    assert status == 429
    # PUBLISHED botapi, ResponseParameters: retry_after in whole seconds
    assert body == {
        "ok": False,
        "error_code": 429,
        "description": "Too Many Requests: retry after 1",
        "parameters": {"retry_after": 1},
    }


@on_stage
async def test_an_edit_counts_like_a_message_and_an_answer_to_a_tap_does_not(stage):
    buttons = {"inline_keyboard": [[{"text": "a", "callback_data": "a"}]]}
    sent = await stage.result("sendMessage", chat_id=ANA, text="x", reply_markup=buttons)
    query_id = stage.ana.tap(sent["message_id"], "a")
    for number in range(4):  # DERIVED: burst 5 - 1 sent
        await stage.result(
            "editMessageText", chat_id=ANA, message_id=sent["message_id"], text=str(number)
        )
    status, _ = await stage.call(
        "editMessageText", chat_id=ANA, message_id=sent["message_id"], text="over"
    )
    assert status == 429
    assert stage.ana.sees()[0].text == "3"
    assert await stage.result("answerCallbackQuery", callback_query_id=query_id)


@on_stage
async def test_a_refused_message_takes_no_room(stage):
    for _ in range(10):
        await stage.call("sendMessage", chat_id=ANA, text="")
    for number in range(5):
        await stage.result("sendMessage", chat_id=ANA, text=str(number))
