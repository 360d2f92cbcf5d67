"""Parameters by every road, and what is recorded of a call (source: botapi, making requests)."""

from datetime import UTC, datetime

import aiohttp
import pytest

from demo_scenario.loopback.request_log import RequestLog
from tests.loopback.stage import ANA, on_stage


def _multipart():
    form = aiohttp.FormData(default_to_multipart=True)
    form.add_field("chat_id", str(ANA))
    form.add_field("text", "ñ 💪")
    return {"data": form}


@pytest.mark.parametrize(
    "road",
    [
        {"json": {"chat_id": ANA, "text": "ñ 💪"}},
        {"data": {"chat_id": str(ANA), "text": "ñ 💪"}},
        {"params": {"chat_id": str(ANA), "text": "ñ 💪"}},
        "multipart",
    ],
    ids=["json", "form", "address", "multipart"],
)
@on_stage
async def test_a_message_is_the_same_by_every_road(stage, road):
    url = f"{stage.server.base_url}{stage.platform.token}/sendMessage"
    given = _multipart() if road == "multipart" else road
    async with stage.http.post(url, **given) as answer:
        assert answer.status == 200, await answer.text()
    assert stage.ana.sees()[0].text == "ñ 💪"
    (record,) = stage.platform.requests.of("sendMessage")
    assert (str(record.params["chat_id"]), record.params["text"]) == (str(ANA), "ñ 💪")


@on_stage
async def test_a_get_call_is_as_good_as_a_post(stage):
    url = f"{stage.server.base_url}{stage.platform.token}/sendMessage"
    async with stage.http.get(url, params={"chat_id": ANA, "text": "x"}) as answer:
        assert answer.status == 200


@pytest.mark.parametrize("body", [b"{", b"[1]", b"\xff"])
@on_stage
async def test_a_body_that_is_no_json_object_is_refused(stage, body):
    url = f"{stage.server.base_url}{stage.platform.token}/sendMessage"
    headers = {"Content-Type": "application/json"}
    async with stage.http.post(url, data=body, headers=headers) as answer:
        assert answer.status == 400


@on_stage
async def test_every_call_is_recorded_with_what_was_answered(stage):
    await stage.call("sendMessage", chat_id=ANA, text="x")
    await stage.call("sendMessage", chat_id=ANA, text="")
    good, bad = stage.platform.requests.of("sendmessage")
    assert (good.status, good.is_accepted, good.at) == (200, True, stage.clock.at)
    assert (bad.status, bad.is_accepted) == (400, False)
    assert bad.description == "Bad Request: message text is empty"
    assert good.number < bad.number
    assert stage.platform.requests.in_flight == 0


@on_stage
async def test_uploads_are_recorded_by_name(stage):
    await stage.bot.send_document(ANA, b"x", filename="team.csv")
    (record,) = stage.platform.requests.of("sendDocument")
    assert list(record.file_names.values()) == ["team.csv"]


def test_a_long_run_keeps_only_the_last_calls():
    log = RequestLog(keep_last=2)
    for name in ("a", "b", "c"):
        log.open(name, {}, {}, datetime(2026, 3, 2, tzinfo=UTC))
    assert [record.method for record in log] == ["b", "c"]
    assert log.received == 3  # DERIVED: all three are counted
