"""Clips, how-to media and files of a coach, through the whole house over HTTP."""

import asyncio
from collections.abc import Awaitable, Callable
from pathlib import Path

from demo_scenario.loopback.interface_check import problems_of_all
from demo_scenario.loopback.person import Person
from scheduler.catalogue.library import packaged_texts
from tests.wire.housed import Housed, housed

FILE = "accessories.yaml"


def in_house(scene: Callable[[Housed], Awaitable[None]]) -> Callable[[Path], None]:
    """Run an async test with the running house."""

    def test(tmp_path: Path) -> None:
        async def play() -> None:
            async with housed(tmp_path) as house:
                await scene(house)
                # PUBLISHED botapi, by the typed methods of an independent library
                assert problems_of_all(house.platform.requests) == ()

        asyncio.run(play())

    test.__name__, test.__doc__ = scene.__name__, scene.__doc__
    return test


def _reference(person: Person, message_id: int) -> str:
    file = person.chat.messages[message_id].content.file
    assert file is not None
    return file.file_id


def tap(person: Person, label: str) -> None:
    """Tap the newest button of that label."""
    for shown in reversed(person.sees_from_bot()):
        for row in shown.buttons:
            for button in row:
                if button.text == label and button.data is not None:
                    person.tap(shown.message_id, button.data)
                    return
    raise AssertionError(f"no button {label!r}")


@in_house
async def test_a_clip_reaches_the_coach_and_the_answer_comes_back_under_it(house: Housed) -> None:
    athlete = house.athletes[0]
    clip = athlete.send_video("how is this?", declared_bytes=60_000_000)
    await house.rest()
    shown = house.coach.sees_from_bot()[-1]
    assert "how is this?" in shown.text
    assert shown.file_id == _reference(athlete, clip)
    house.coach.write("Elbows straight to the end.", reply_to_message_id=shown.message_id)
    await house.rest()
    answer = athlete.sees_from_bot()[-1]
    assert "Elbows straight to the end." in answer.text
    under = athlete.chat.messages[answer.message_id].reply_to
    assert under is not None
    assert under.message_id == clip
    assert "getFile" not in {call.method for call in house.platform.requests}


@in_house
async def test_a_picture_is_kept_for_a_how_to_by_answering_it(house: Housed) -> None:
    picture = house.coach.send_photo()
    await house.rest()
    house.coach.write("/howto wall slide", reply_to_message_id=picture)
    await house.rest()
    assert "how-to of Wall slide" in house.coach.sees_from_bot()[-1].text
    house.coach.write("/howto wall slide")
    await house.rest()
    shown = house.coach.sees_from_bot()[-1]
    assert shown.file_id == _reference(house.coach, picture)
    assert "Often seen" in shown.text


@in_house
async def test_a_file_comes_and_is_in_force_after_a_tap(house: Housed) -> None:
    house.coach.write("/movements")
    await house.rest()
    seen = house.coach.sees_from_bot()
    files = {one.file_name: one for one in seen if str(one.file_name).endswith(".yaml")}
    assert set(files) == set(packaged_texts())
    content = house.platform.files.content(files[FILE].file_id or "").decode()
    assert content == packaged_texts()[FILE]
    changed = content.replace("common_fault: ", "common_fault: Look, ", 1)
    house.coach.send_document(FILE, changed.encode(), "/movements clearer words")
    await house.rest()
    assert "common_fault" in house.coach.sees_from_bot()[-1].text
    tap(house.coach, "Put in force")
    await house.rest()
    assert f"{FILE} is in force" in house.coach.sees_from_bot()[-1].text
    house.coach.send_document(FILE, b"movements: 3\n", "/movements broken")
    await house.rest()
    assert "is not taken, and nothing was changed" in house.coach.sees_from_bot()[-1].text
