"""Uploads are kept, named by id, sent again, fetched, and refused when they are too large."""

import struct

import aiohttp
import pytest
from telegram import InputMediaDocument, InputMediaPhoto
from telegram.error import BadRequest, NetworkError

from demo_scenario.loopback.sample_uploads import PHOTO
from tests.loopback.stage import ANA, BRUNO, on_stage


def _png(width, height, size=100):
    start = b"\x89PNG\r\n\x1a\n" + struct.pack(">I4sII", 13, b"IHDR", width, height)
    return start + b"\0" * (size - len(start))


@on_stage
async def test_an_uploaded_photo_is_kept_measured_and_sent_again_by_its_id(stage):
    content = _png(1200, 900)
    sent = await stage.bot.send_photo(ANA, content, caption="<b>chart</b>", parse_mode="HTML")
    assert (sent.photo[-1].width, sent.photo[-1].height) == (1200, 900)  # DERIVED: from its header
    again = await stage.bot.send_photo(BRUNO, sent.photo[-1].file_id)
    assert again.photo[-1].file_id == sent.photo[-1].file_id
    (shown,) = stage.ana.sees()
    assert (shown.text, shown.html) == ("chart", "<b>chart</b>")
    assert stage.platform.files.content(shown.file_id) == content


@on_stage
async def test_a_document_comes_back_byte_for_byte(stage):
    sent = await stage.bot.send_document(ANA, b"name,stage\n", filename="team.csv")
    assert sent.document.file_name == "team.csv"
    file = await stage.bot.get_file(sent.document.file_id)
    assert bytes(await file.download_as_bytearray()) == b"name,stage\n"
    assert stage.platform.files.details(sent.document.file_id).path.endswith(".csv")


@on_stage
async def test_a_clip_goes_on_by_id_and_by_copy_without_a_download(stage):
    message_id = stage.ana.send_video("hold 40 s", declared_bytes=60_000_000)
    (update,) = await stage.bot.get_updates()
    await stage.bot.send_video(BRUNO, update.message.video.file_id)
    await stage.bot.copy_message(BRUNO, ANA, message_id)
    await stage.bot.copy_message(BRUNO, ANA, message_id, caption="Ana, hold")
    captions = [(message.text, message.is_copy) for message in stage.bruno.sees()]
    assert captions == [("", False), ("hold 40 s", True), ("Ana, hold", True)]
    assert len({message.file_id for message in stage.bruno.sees()}) == 1


@on_stage
async def test_what_is_too_large_to_fetch_is_refused(stage):
    stage.ana.send_video(declared_bytes=5_001)  # DERIVED: one above this stage's bound
    (update,) = await stage.bot.get_updates()
    with pytest.raises(BadRequest, match="File is too big"):
        await stage.bot.get_file(update.message.video.file_id)


@on_stage
async def test_an_upload_above_the_bound_is_refused_as_too_large(stage):
    with pytest.raises(NetworkError, match="Request Entity Too Large"):
        await stage.bot.send_document(ANA, b"x" * 6_001)
    with pytest.raises(NetworkError, match="Request Entity Too Large"):
        await stage.bot.send_document(ANA, b"x" * 200_000)  # above what the server even reads
    with pytest.raises(BadRequest, match="too big for a photo"):
        await stage.bot.send_photo(ANA, _png(10, 10, size=4_001))
    assert stage.ana.sees() == ()


@pytest.mark.parametrize(
    ("content", "fault"),  # the library lowers the platform's capitals
    [
        (b"%PDF-1.7 no picture", "Image_process_failed"),
        # PUBLISHED botapi, sendPhoto: sides at most 10,000 in total, ratio at most 20
        (_png(9_000, 1_001), "Photo_invalid_dimensions"),
        (_png(2_001, 100), "Photo_invalid_dimensions"),
    ],
    ids=["no picture", "sides of 10,001", "ratio of 20.01"],
)
@on_stage
async def test_what_is_no_picture_or_too_long_a_one_is_no_photo(stage, content, fault):
    with pytest.raises(BadRequest, match=fault):
        await stage.bot.send_photo(ANA, content)


@on_stage
async def test_an_empty_file_is_refused(stage):
    url = f"{stage.server.base_url}{stage.platform.token}/sendDocument"
    form = _form(chat_id=str(ANA), document=("empty.txt", b""))
    async with stage.http.post(url, data=form) as answer:
        assert (await answer.json())["description"] == "Bad Request: file must be non-empty"


def _form(**fields):
    form = aiohttp.FormData()
    for name, value in fields.items():
        if isinstance(value, tuple):
            form.add_field(name, value[1], filename=value[0])
        else:
            form.add_field(name, value)
    return form


@on_stage
async def test_a_video_id_is_no_photo(stage):
    stage.ana.send_video()
    (update,) = await stage.bot.get_updates()
    with pytest.raises(BadRequest, match="an't use file of type video as photo"):
        await stage.bot.send_photo(ANA, update.message.video.file_id)


@on_stage
async def test_an_album_of_the_bot_shares_a_group_and_keeps_each_caption(stage):
    sent = await stage.bot.send_media_group(
        ANA, [InputMediaPhoto(_png(10, 10), caption=f"week {number}") for number in (1, 2, 3)]
    )
    assert len({message.media_group_id for message in sent}) == 1
    assert [message.text for message in stage.ana.sees()] == ["week 1", "week 2", "week 3"]
    file_ids = {message.file_id for message in stage.ana.sees()}
    assert len(file_ids) == 3  # DERIVED: three uploads


@on_stage
async def test_an_album_with_one_bad_part_sends_none(stage):
    with pytest.raises(BadRequest):
        await stage.bot.send_media_group(
            ANA, [InputMediaDocument(b"a", filename="a.txt"), InputMediaDocument("unknown-id")]
        )
    assert stage.ana.sees() == ()


@on_stage
async def test_a_file_needs_the_token_and_a_real_path(stage):
    stage.ana.send_photo()
    (update,) = await stage.bot.get_updates()
    file = await stage.bot.get_file(update.message.photo[0].file_id)
    path = stage.platform.files.details(file.file_id).path
    for address, status in (
        (f"{stage.server.base_file_url}{stage.platform.token}/{path}", 200),
        (f"{stage.server.base_file_url}{stage.platform.token}/nothing", 404),
        (f"{stage.server.base_file_url}7000000002:another/{path}", 401),
    ):
        async with stage.http.get(address) as answer:
            assert answer.status == status
            if status == 200:
                assert await answer.read() == PHOTO.content


@on_stage
async def test_a_caption_can_be_edited_and_a_photo_has_no_text_to_edit(stage):
    sent = await stage.bot.send_photo(ANA, _png(10, 10), caption="week 1")
    await stage.bot.edit_message_caption(ANA, sent.id, caption="week 2")
    with pytest.raises(BadRequest, match="no text in the message to edit"):
        await stage.bot.edit_message_text("x", ANA, sent.id)
    assert stage.ana.sees()[0].text == "week 2"
