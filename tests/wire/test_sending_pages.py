"""A page leaves as a file that is drawn when it is sent; what is refused is told of."""

from datetime import date

from bot.pictures.handover_values import HandoverPage, Section, Series
from demo_scenario.loopback.faults import Refusal
from storage.records.wire import MessageKind, Operation
from storage.tables.wire import OutboxState
from tests.wire.stage import ANA, on_wire

PAGE = HandoverPage(
    title="Training and pain: Łukasz",
    subtitle="Mon 2 Mar to Mon 9 Mar",
    sections=(Section(heading="What was trained", lines=("Mon 2 Mar: Bar hang 20, 20, 20 s",)),),
    chart_heading="Pain, 0 to 10",
    chart_days=(date(2026, 3, 2), date(2026, 3, 9)),
    chart_day_labels=("Mon 2 Mar", "Mon 9 Mar"),
    series=(Series(name="left wrist", points=((date(2026, 3, 2), 6), (date(2026, 3, 3), 4))),),
    foot="It is not a medical record.",
)
PAYLOAD = {
    "page": PAGE.model_dump(mode="json"),
    "file_name": "handover.pdf",
    "caption": "<b>Łukasz</b>: the page to hand over.",
}


@on_wire
async def test_a_page_arrives_as_a_file_with_its_caption(wire):
    row = wire.put("", operation=Operation.DOCUMENT, payload=PAYLOAD)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.out(row).state is OutboxState.SENT
    (shown,) = wire.ana.sees_from_bot()
    assert shown.message_id == wire.out(row).message_id
    assert shown.text == "Łukasz: the page to hand over."
    assert shown.file_name == "handover.pdf"


@on_wire
async def test_a_refused_alert_is_handed_on_and_not_only_logged(wire):
    wire.platform.faults.add(Refusal(status=400, description="Bad Request: no"), chat_id=ANA)
    row = wire.put("<b>now", kind=MessageKind.ALERT)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.out(row).state is OutboxState.REFUSED
    assert [one for one, _ in wire.refused] == [row]
