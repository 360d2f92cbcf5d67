"""How a person plays a scene: step after step, each on what the screen shows by then."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime, timedelta
from functools import partial
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from demo_scenario.eye import labels
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.scenes.steps import (
    WAIT_S,
    Film,
    Picture,
    Scene,
    SendBack,
    SendFile,
    Speak,
    Step,
    Tap,
    Wait,
    Write,
)
from demo_scenario.shown_photo import photo_of

if TYPE_CHECKING:
    from demo_scenario.player import Player

UTC = ZoneInfo("UTC")


def plan(player: Player, scenes: tuple[Scene, ...], *, start: date, zone: ZoneInfo) -> None:
    """Plan the scenes of one person."""
    for scene in scenes:
        if scene.who == player.name:
            _plan_try(player, scene, 0, start=start, zone=zone)


def _plan_try(player: Player, scene: Scene, attempt: int, *, start: date, zone: ZoneInfo) -> None:
    local = datetime.combine(start + timedelta(days=scene.days[attempt]), scene.at, zone)
    again: Callable[[], None] | None = None
    if attempt + 1 < len(scene.days):
        again = partial(_plan_try, player, scene, attempt + 1, start=start, zone=zone)
    player.at(local.astimezone(UTC), partial(_step, player, scene, 0, again))


def is_meant(scene: Scene | None, place: int, message: ShownMessage) -> bool:
    """Tell whether a scene that is being played will tap this message itself."""
    if scene is None or not message.buttons:
        return False
    return any(
        isinstance(step, Tap) and _button(step, message) is not None for step in scene.steps[place:]
    )


def _step(player: Player, scene: Scene, place: int, again: Callable[[], None] | None) -> None:
    step = scene.steps[place]
    if not _do(player, step):
        if again is not None:
            player.scene = None
            again()
            return
        if not (isinstance(step, Tap) and step.if_there):
            player.scene = None
            player.stumbled.append(f"{player.name}, day {scene.first_day}: {step}")
            return
    player.scene, player.scene_place = scene, place + 1
    if place + 1 == len(scene.steps):
        player.soon(partial(_end, player, scene), least_s=WAIT_S, most_s=WAIT_S)
        return
    wait = step.seconds if isinstance(step, Wait) else WAIT_S
    player.soon(partial(_step, player, scene, place + 1, None), least_s=wait, most_s=wait)


def _end(player: Player, scene: Scene) -> None:
    if player.scene is scene:
        player.scene = None


def _do(player: Player, step: Step) -> bool:
    match step:
        case Write(text, on):
            return _write(player, text, on)
        case Tap():
            return _tap(player, step)
        case SendBack():
            return _send_back(player, step)
        case _:
            _send(player, step)
    return True


def _write(player: Player, text: str, on: str) -> bool:
    answered = _newest(player, on) if on else None
    if on and answered is None:
        return False
    player.phone.person.write(text, reply_to_message_id=answered.message_id if answered else None)
    return True


def _send(player: Player, step: Step) -> None:
    """Send what is no text."""
    person = player.phone.person
    match step:
        case Film((caption,)):
            person.send_video(caption)
        case Film(captions):
            person.send_album(captions)
        case Picture(caption):
            person.send_photo(caption, content=photo_of(player.name, caption))
        case Speak():
            person.send_voice()
        case SendFile(name, content, caption):
            person.send_document(name, content.encode(), caption)


def _newest(player: Player, says: str) -> ShownMessage | None:
    found = [one for one in player.phone.glance() if one.is_from_bot and says in one.text]
    return found[-1] if found else None


def _button(step: Tap, message: ShownMessage) -> str | None:
    if step.on not in message.text:
        return None
    return next((label for label in labels(message) if label.startswith(step.label)), None)


def _tap(player: Player, step: Tap) -> bool:
    for message in reversed(player.phone.glance()):
        label = _button(step, message) if message.is_from_bot else None
        if label is not None:
            return player.phone.tap(message.message_id, label)
    return False


def _send_back(player: Player, step: SendBack) -> bool:
    files = player.phone.person.platform.files
    for message in reversed(player.phone.glance()):
        if message.file_name == step.name and message.file_id is not None:
            text = files.content(message.file_id).decode()
            if step.old not in text:
                return False
            changed = text.replace(step.old, step.new, 1).encode()
            player.phone.person.send_document(step.name, changed, step.caption)
            return True
    return False
