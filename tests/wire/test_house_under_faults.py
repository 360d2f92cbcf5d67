"""The platform misbehaves in every way at once: nothing is lost, others are unaffected."""

import asyncio

from demo_scenario.loopback.faults import Delayed, DroppedAfter, FloodWait, GatewayFailure
from demo_scenario.loopback.interface_check import problems_of_all
from storage.tables.wire import InboxState, OutboxState
from tests.wire.housed import housed

SESSION_BUTTON = "All as planned"


def sessions_shown(person) -> int:
    return sum(
        any(button.text == SESSION_BUTTON for row in message.buttons for button in row)
        for message in person.sees_from_bot()
    )


def sent(stage):
    return [one for one in stage.platform.requests if one.method == "sendMessage"]


async def until_session(stage, person):
    await stage.platform.until(lambda: sessions_shown(person) > 0, within_s=120)


def test_a_storm_of_429_and_502_delays_and_loses_nothing(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            for fault in (FloodWait(retry_after_s=5), GatewayFailure(status=502)) * 6:
                stage.platform.faults.add(fault, method="sendMessage")
            for fault in (GatewayFailure(status=502), FloodWait(retry_after_s=3)):
                stage.platform.faults.add(fault, times=3, method="getUpdates")
            for athlete in stage.athletes:
                await until_session(stage, athlete)
                athlete.write("Can I swap days next week?")
            await stage.rest()
            assert [sessions_shown(athlete) for athlete in stage.athletes] == [1] * 4
            assert len(stage.inbox()) == 4
            assert {row.state for row in stage.inbox()} == {InboxState.HANDLED}
            # Each athlete's question reached the coach, and nothing is in doubt.
            about = [message.text for message in stage.coach.sees_from_bot()]
            assert sum("swap days" in text for text in about) == 4
            for athlete in stage.athletes:
                states = {(row.state, row.is_doubtful) for row in stage.outbox(athlete.chat_id)}
                assert states == {(OutboxState.SENT, False)}
            assert problems_of_all(stage.platform.requests) == ()

    asyncio.run(story())


def test_one_chats_trouble_is_nobody_elses(tmp_path):
    """One is blocked, one answer times out, one breaks off; the fourth notices nothing."""

    async def story():
        async with housed(tmp_path, answer_within_s=5.0) as stage:
            blocked, timed_out, broken_off, unaffected = stage.athletes
            blocked.chat.is_blocked = True  # the platform knows; the bot has not been told
            stage.platform.faults.add(
                Delayed(delay_s=7.0, after=True), method="sendMessage", chat_id=timed_out.chat_id
            )  # CHOSEN: longer than the house waits for an answer
            stage.platform.faults.add(DroppedAfter(), chat_id=broken_off.chat_id)
            await until_session(stage, unaffected)
            unaffected.write("Is chalk fine?")
            await stage.platform.until(lambda: len(unaffected.sees_from_bot()) == 2, within_s=120)
            await stage.rest()
            assert sessions_shown(blocked) == 0
            # Accepted, and the bot could not know: once more, and marked.
            for athlete in (timed_out, broken_off):
                assert sessions_shown(athlete) == 2
                (row,) = stage.outbox(athlete.chat_id)
                assert (row.state, row.is_doubtful) == (OutboxState.SENT, True)
            assert sessions_shown(unaffected) == 1
            asked_of = [int(one.params["chat_id"]) for one in sent(stage)]
            again = [n for n, chat_id in enumerate(asked_of) if chat_id == timed_out.chat_id][1]
            assert asked_of.index(unaffected.chat_id) < again
            assert not any(row.is_doubtful for row in stage.outbox(unaffected.chat_id))
            # The coach is told of the blocked chat, once and by name.
            told = [message.text for message in stage.coach.sees_from_bot()]
            name = blocked.user["first_name"]
            assert sum(name in text and "blocked" in text for text in told) == 1
            assert problems_of_all(stage.platform.requests) == ()

    asyncio.run(story())


def test_a_malformed_update_reaches_the_coach_and_the_person_is_told(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            first, second, *_ = stage.athletes
            await until_session(stage, first)
            await until_session(stage, second)
            first.write("before")
            stage.platform.updates.inject(
                {
                    "message": {
                        "message_id": 900,
                        "date": "no date",
                        "chat": first.chat.as_json(),
                        "from": first.user,
                        "text": "words that must not be lost",
                    }
                }
            )
            first.write("after")
            second.write("from somebody else")
            await stage.rest()
            outcomes = [row.outcome for row in stage.inbox()]
            assert outcomes.count("set_aside") == 1
            assert len(outcomes) == 4
            told = [message.text for message in stage.coach.sees_from_bot()]
            assert any("words that must not be lost" in text for text in told)
            assert any("somebody else" in text for text in told)
            reference = next(row.fault_reference for row in stage.inbox() if row.fault_reference)
            assert any(reference in message.text for message in first.sees_from_bot())

    asyncio.run(story())


def test_an_outage_of_the_platform_delays_and_loses_nothing(tmp_path):
    async def story():
        async with housed(tmp_path) as stage:
            stage.platform.faults.add(GatewayFailure(status=502), times=None)
            await asyncio.sleep(1.0)  # CHOSEN: half a simulated minute, over the sessions' time
            stage.athletes[0].write("written in the outage")
            stage.platform.faults.lift()
            for athlete in stage.athletes:
                await until_session(stage, athlete)
            await stage.rest()
            assert [sessions_shown(athlete) for athlete in stage.athletes] == [1] * 4
            assert [row.state for row in stage.inbox()] == [InboxState.HANDLED]

    asyncio.run(story())
