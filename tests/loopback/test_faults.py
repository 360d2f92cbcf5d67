"""Each planned fault, as the real library meets it and as the person sees it."""

import asyncio
from datetime import timedelta

import aiohttp
import pytest
from telegram.error import (
    BadRequest,
    ChatMigrated,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from demo_scenario.loopback.faults import (
    Delayed,
    DroppedAfter,
    DroppedBefore,
    FloodWait,
    GatewayFailure,
    NotJson,
    Refusal,
)
from tests.loopback.stage import ANA, BRUNO, on_stage


def _texts(person):
    return [message.text for message in person.sees()]


@pytest.mark.parametrize("status", [500, 502])
@on_stage
async def test_a_gateway_failure_sends_nothing_and_strikes_once(stage, status):
    stage.platform.faults.add(GatewayFailure(status=status))
    with pytest.raises(NetworkError):
        await stage.bot.send_message(ANA, "first")
    await stage.bot.send_message(ANA, "second")
    assert _texts(stage.ana) == ["second"]
    failed, _ = stage.platform.requests.of("sendMessage")
    assert (failed.status, failed.is_accepted, failed.fault) == (status, False, "GatewayFailure")


@on_stage
async def test_a_gateway_answers_with_a_page_and_not_with_json(stage):
    stage.platform.faults.add(GatewayFailure(status=502))
    async with stage.http.get(f"{stage.server.base_url}{stage.platform.token}/getMe") as answer:
        assert (answer.status, answer.content_type) == (502, "text/html")
        assert (await answer.text()).startswith("<html>")


@on_stage
async def test_a_gateway_may_fail_after_the_platform_has_accepted(stage):
    stage.platform.faults.add(GatewayFailure(is_accepted=True), method="sendMessage")
    with pytest.raises(NetworkError):
        await stage.bot.send_message(ANA, "arrived")
    assert _texts(stage.ana) == ["arrived"]
    assert not stage.ana.sees()[0].is_heard


@on_stage
async def test_a_flood_wait_carries_its_seconds(stage):
    stage.platform.faults.add(FloodWait(retry_after_s=17), chat_id=ANA)  # CHOSEN
    with pytest.raises(RetryAfter) as limited:
        await stage.bot.send_message(ANA, "later")
    assert limited.value.retry_after == timedelta(seconds=17)
    assert _texts(stage.ana) == []


@on_stage
async def test_a_connection_dropped_before_has_sent_nothing(stage):
    stage.platform.faults.add(DroppedBefore(), method="sendMessage")
    with pytest.raises(NetworkError):
        await stage.bot.send_message(ANA, "lost")
    assert _texts(stage.ana) == []
    (dropped,) = stage.platform.requests.of("sendMessage")
    assert (dropped.status, dropped.is_accepted) == (None, False)


@on_stage
async def test_a_connection_dropped_after_has_sent_what_the_bot_cannot_know(stage):
    stage.platform.faults.add(DroppedAfter(), method="sendMessage")
    with pytest.raises(NetworkError):
        await stage.bot.send_message(ANA, "arrived")
    await stage.bot.send_message(ANA, "heard")
    assert _texts(stage.ana) == ["arrived", "heard"]
    assert [message.is_heard for message in stage.ana.sees()] == [False, True]
    dropped, _ = stage.platform.requests.of("sendMessage")
    assert (dropped.status, dropped.is_accepted, dropped.fault) == (None, True, "DroppedAfter")


@on_stage
async def test_the_server_serves_others_while_one_connection_drops(stage):
    stage.platform.faults.add(DroppedBefore(), chat_id=ANA)
    outcomes = await asyncio.gather(
        stage.call("sendMessage", chat_id=ANA, text="x"),
        stage.call("sendMessage", chat_id=BRUNO, text="y"),
        return_exceptions=True,
    )
    assert isinstance(outcomes[0], aiohttp.ClientError)
    assert stage.ana.sees() == ()
    assert _texts(stage.bruno) == ["y"]


@on_stage
async def test_a_fetch_dropped_after_confirms_and_loses_nothing_that_was_not_confirmed(stage):
    stage.ana.write("one")
    stage.platform.faults.add(DroppedAfter(), method="getUpdates")
    with pytest.raises(NetworkError):
        await stage.bot.get_updates()
    (again,) = await stage.bot.get_updates()
    assert again.message.text == "one"


@pytest.mark.parametrize("is_accepted", [False, True])
@on_stage
async def test_a_body_that_is_no_json_is_an_error_to_the_library(stage, is_accepted):
    stage.platform.faults.add(NotJson(body="<p>hello</p>", is_accepted=is_accepted))
    with pytest.raises(TelegramError):
        await stage.bot.send_message(ANA, "x")
    assert len(stage.ana.sees()) == int(is_accepted)


@on_stage
async def test_a_delay_holds_the_call_back_and_then_lets_it_through(stage):
    loop = asyncio.get_running_loop()
    stage.platform.faults.add(Delayed(delay_s=0.05), method="sendMessage")
    started = loop.time()
    await stage.bot.send_message(ANA, "late")
    assert loop.time() - started >= 0.05  # CHOSEN: the delay asked for
    assert _texts(stage.ana) == ["late"]


@on_stage
async def test_a_client_that_gives_up_before_acceptance_has_sent_nothing(stage):
    stage.platform.faults.add(Delayed(delay_s=0.15), method="sendMessage")
    with pytest.raises(TimedOut):
        await stage.bot.send_message(ANA, "x", read_timeout=0.03)
    await stage.platform.until(lambda: stage.platform.requests.in_flight == 0)
    assert _texts(stage.ana) == []


@on_stage
async def test_a_client_that_gives_up_after_acceptance_has_sent_without_knowing(stage):
    stage.platform.faults.add(Delayed(delay_s=0.15, after=True), method="sendMessage")
    with pytest.raises(TimedOut):
        await stage.bot.send_message(ANA, "x", read_timeout=0.03)
    await stage.platform.until(lambda: stage.platform.requests.in_flight == 0)
    assert [(message.text, message.is_heard) for message in stage.ana.sees()] == [("x", False)]


@on_stage
async def test_a_late_answer_that_is_waited_for_is_heard(stage):
    stage.platform.faults.add(Delayed(delay_s=0.02, after=True), method="sendMessage")
    await stage.bot.send_message(ANA, "x")
    assert stage.ana.sees()[0].is_heard


@on_stage
async def test_faults_pick_their_method_their_chat_and_their_number(stage):
    stage.platform.faults.add(
        FloodWait(retry_after_s=3), method="SendMessage", chat_id=ANA, times=2
    )
    statuses = []
    for chat_id in (BRUNO, ANA, ANA, ANA):
        status, _ = await stage.call("sendMessage", chat_id=chat_id, text="x")
        statuses.append(status)
    # DERIVED: another chat passes, the next two of this one do not, the third does
    assert statuses == [200, 429, 429, 200]
    assert (await stage.call("getMe"))[0] == 200


@on_stage
async def test_a_fault_without_end_strikes_until_it_is_lifted(stage):
    planned = stage.platform.faults.add(GatewayFailure(), times=None)
    other = stage.platform.faults.add(Delayed(delay_s=0.001), times=None)
    assert [(await _status(stage)) for _ in range(3)] == [502, 502, 502]
    assert (planned.struck, other.struck) == (3, 3)
    stage.platform.faults.lift([planned])
    assert await _status(stage) == 200
    assert other.struck == 4
    stage.platform.faults.lift()
    assert await _status(stage) == 200
    assert other.struck == 4


@on_stage
async def test_two_breaks_strike_one_after_the_other(stage):
    stage.platform.faults.add(GatewayFailure(status=500))
    stage.platform.faults.add(GatewayFailure(status=502))
    assert [(await _status(stage)) for _ in range(3)] == [500, 502, 200]


async def _status(stage):
    async with stage.http.get(f"{stage.server.base_url}{stage.platform.token}/getMe") as answer:
        return answer.status


@on_stage
async def test_any_refusal_can_be_asked_for(stage):
    stage.platform.faults.add(
        Refusal(
            status=400,
            description="Bad Request: group chat was upgraded to a supergroup chat",
            parameters={"migrate_to_chat_id": -777},
        )
    )
    with pytest.raises(ChatMigrated) as moved:
        await stage.bot.send_message(ANA, "x")
    assert moved.value.new_chat_id == -777
    stage.platform.faults.add(Refusal(status=400, description="Bad Request: MESSAGE_ID_INVALID"))
    with pytest.raises(BadRequest, match="Message_id_invalid"):
        await stage.bot.send_message(ANA, "x")


@on_stage
async def test_an_outage_keeps_the_state_and_the_port(stage):
    poll = asyncio.create_task(stage.bot.get_updates(timeout=20))
    await stage.platform.until(lambda: stage.platform.is_poll_parked)
    before = stage.server.base_url
    await stage.server.stop()
    with pytest.raises(NetworkError):
        await poll
    with pytest.raises(NetworkError):
        await stage.bot.send_message(ANA, "x")
    stage.ana.write("written meanwhile")
    await stage.server.start()
    assert stage.server.base_url == before
    (update,) = await stage.bot.get_updates()
    assert update.message.text == "written meanwhile"
