"""Buttons outlive what they were about: tapped again at the end, they answer and change nothing."""

from tests.walk.lines import AGAIN
from tests.walk.tables import Key, Row, changed, stored
from tests.walk.walker import Tapped, Walker


async def taps_again(walker: Walker) -> None:
    """Tap once more what was tapped before, whether or not it can still be seen."""
    by_act: dict[str, list[Tapped]] = {}
    for one in walker.history:
        by_act.setdefault(one.act, []).append(one)
    for act, tapped in sorted(by_act.items()):
        for one in dict.fromkeys((tapped[0], tapped[-1])):
            if act not in AGAIN:
                await _again(walker, one)


async def _again(walker: Walker, one: Tapped) -> None:
    stage, before = walker.stage, _stored(walker)
    answer = await stage.does(
        one.chat_id,
        f"tapped {one.label!r} ({one.act}) again",
        lambda phone: phone.tap(one.message_id, one.token, even_if_gone=True),
    )
    if not answer.shown and not _has_turned(walker, one):
        walker.faults.append(f"no answer: {answer.did}")
    for message in answer.shown:
        walker.reads(message, answer.did)
    after = _stored(walker)
    if reached := changed(before, after):
        whats = sorted({_told(key, before, after) for key in reached})
        walker.faults.append(f"changed by a button that was used: {answer.did}: {whats}")


def _has_turned(walker: Walker, one: Tapped) -> bool:
    """Tell whether the message says already what came of the tap: the button is not on it."""
    now = walker.stage.screen(one.chat_id).get(one.message_id)
    return now is not None and one.token not in {shown.data for row in now.buttons for shown in row}


def _stored(walker: Walker) -> dict[Key, Row]:
    with walker.stage.database.transaction() as tx:
        return stored(tx)


def _told(key: Key, before: dict[Key, Row], after: dict[Key, Row]) -> str:
    old, new = before.get(key, {}), after.get(key, {})
    if not old or not new:
        return f"{key[0]} {'new' if new else 'gone'} {new.get('what', new.get('kind', ''))}"
    return f"{key[0]}: {[name for name in new if new[name] != old[name]]}"
