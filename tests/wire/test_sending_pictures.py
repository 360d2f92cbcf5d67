"""Pictures leave as photos and albums, drawn in a process beside the loop; or else their words."""

from bot.pictures.studio import Studio
from bot.pictures.values import BalancePicture, BalanceRow, BalanceSide
from demo_scenario.loopback.faults import Refusal
from demo_scenario.loopback.files import MediaKind
from storage import outbox
from storage.records.wire import Operation
from storage.tables.wire import OutboxState
from tests.wire.stage import ANA, BRUNO, on_wire, texts

ALBUM_MOST = 10  # PUBLISHED botapi: sendMediaGroup, media, 2-10
PHOTO_BYTES_MOST = 10_000_000  # PUBLISHED botapi: sendPhoto, 10 MB
SIDES_SUM_MOST = 10_000  # PUBLISHED botapi: sendPhoto, width and height in total

SIDE = BalanceSide(words="push", done=3, planned=9)
PICTURE = BalancePicture(
    title="Sets of the week",
    subtitle="2 Mar to 8 Mar",
    planned="planned",
    done="done",
    nothing="No sets planned this week.",
    rows=(BalanceRow(left=SIDE, right=SIDE),),
)


def shot(number: int = 0, *, is_broken: bool = False) -> dict[str, object]:
    facts = PICTURE.model_dump(mode="json")
    return {
        "picture": {**facts, "rows": "none"} if is_broken else facts,
        "caption": f"<b>Ana</b> · {number}",
        "instead": "The picture itself could not be drawn.",
        "subject": f"athlete:{number}",
    }


@on_wire
async def test_a_picture_arrives_as_a_photo_with_its_words_and_buttons(wire):
    row = wire.put(
        "", operation=Operation.PHOTO, payload={**shot(), "buttons": [[["More", "token"]]]}
    )
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.out(row).state is OutboxState.SENT
    (shown,) = wire.ana.sees_from_bot()
    assert shown.media is MediaKind.PHOTO
    assert shown.text == "Ana · 0"
    assert [button.text for line in shown.buttons for button in line] == ["More"]
    assert shown.file_id is not None
    stored = wire.platform.files.details(shown.file_id)
    assert stored.width == 1080  # CHOSEN: as wide as a phone
    assert stored.width + stored.height <= SIDES_SUM_MOST
    assert stored.size_bytes < PHOTO_BYTES_MOST


@on_wire
async def test_ten_pictures_are_one_album_and_a_reply_to_any_finds_its_athlete(wire):
    pictures = [shot(number) for number in range(ALBUM_MOST)]
    row = wire.put("", operation=Operation.ALBUM, payload={"pictures": pictures})
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.out(row).state is OutboxState.SENT
    shown = wire.ana.sees_from_bot()
    assert [one.text for one in shown] == [f"Ana · {number}" for number in range(ALBUM_MOST)]
    assert len({one.media_group_id for one in shown}) == 1
    with wire.database.transaction() as tx:
        subjects = [
            (outbox.sent_message(tx, chat_id=ANA, message_id=one.message_id) or (0, None))[1]
            for one in shown[1:]
        ]
    assert subjects == [f"athlete:{number}" for number in range(1, ALBUM_MOST)]


@on_wire
async def test_a_picture_that_fails_to_draw_is_its_words_and_blocks_nobody(wire):
    broken = wire.put("", operation=Operation.PHOTO, payload=shot(is_broken=True))
    wire.put("after it")
    wire.put("meanwhile", to=BRUNO)
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert wire.out(broken).state is OutboxState.SENT
    assert texts(wire.ana) == ["Ana · 0\nThe picture itself could not be drawn.", "after it"]
    assert texts(wire.bruno) == ["meanwhile"]


@on_wire
async def test_an_album_with_a_broken_picture_sends_the_others_and_then_its_words(wire):
    pictures = [shot(0), shot(1, is_broken=True), shot(2)]
    wire.put("", operation=Operation.ALBUM, payload={"pictures": pictures})
    wire.start(wire.sender)
    await wire.pass_time(20)
    assert texts(wire.ana) == [
        "Ana · 0",
        "Ana · 2",
        "Ana · 1\nThe picture itself could not be drawn.",
    ]


@on_wire
async def test_an_album_of_which_one_is_left_is_a_photo(wire):
    pictures = [shot(0, is_broken=True), shot(1)]
    wire.put("", operation=Operation.ALBUM, payload={"pictures": pictures})
    wire.start(wire.sender)
    await wire.pass_time(20)
    photo, words = wire.ana.sees_from_bot()
    assert photo.media is MediaKind.PHOTO
    assert words.text.startswith("Ana · 0\n")


@on_wire
async def test_a_reply_does_not_wait_for_pictures_that_are_drawn(wire):
    for chat_id in range(5001, 5031):  # CHOSEN: 30, more than the 16 that may be on their way
        wire.server.people.add(chat_id, "Somebody")
        wire.put("", to=chat_id, operation=Operation.PHOTO, payload=shot())
    wire.sender = wire.new_sender(is_paced=False)
    wire.put("an answer", to=BRUNO)
    wire.start(wire.sender)
    await wire.pass_time(60)
    sends = [one for one in wire.platform.requests if one.method.lower().startswith("send")]
    order = [int(one.params["chat_id"]) for one in sends]
    assert set(order) >= {BRUNO, *range(5001, 5031)}
    # CHOSEN: written behind 30 pictures, and sent while the first few are drawn
    assert BRUNO in order[:5]


@on_wire
async def test_a_photo_that_the_platform_refuses_is_handed_on(wire):
    refusal = Refusal(status=400, description="Bad Request: IMAGE_PROCESS_FAILED")
    wire.platform.faults.add(refusal, chat_id=ANA)
    row = wire.put("", operation=Operation.PHOTO, payload=shot())
    wire.start(wire.sender)
    await wire.pass_time(5)
    assert [one for one, _ in wire.refused] == [row]


@on_wire
async def test_the_worker_starts_with_the_first_picture_and_ends_with_the_sender(wire):
    studio = Studio()
    seen = [studio.is_open]
    png = await studio.draw(PICTURE.model_dump(mode="json"))
    seen.append(studio.is_open)
    assert png.startswith(b"\x89PNG")  # PUBLISHED: the signature of the format
    studio.close()
    seen.append(studio.is_open)
    assert seen == [False, True, False]
    assert (await studio.draw(PICTURE.model_dump(mode="json"))) == png
    studio.close()
