"""What athletes do: join by a link, train, hurt, are tested, change their settings, leave."""

import re

from tests.walk.lines import OWN_WORD
from tests.walk.stage import ATHLETE, COACH, INVITED, NEWCOMER, SORE, STRANGER
from tests.walk.walker import Walker

LINK = re.compile(r"start=([\w-]+)")
CHOSEN_IN_INTAKE = {
    "weekdays": (0, 2, 4),
    "equipment": ("high_bar", "dumbbells", "band"),
    "dumbbells": (4, 8),
    "bands": ("light",),
}
"""What is chosen of several; elsewhere the first button that there is."""


async def stranger_tries(walker: Walker) -> None:
    """Somebody without a link writes, sends and commands: they are told what this is, each time."""
    await walker.writes(STRANGER, "hello")
    await walker.writes(STRANGER, "/roster")
    await walker.writes(STRANGER, "/start not-a-secret-of-ours")
    await walker.does(STRANGER, "sent a sticker", lambda one: one.send_sticker())
    await walker.does(STRANGER, "sent a photo", lambda one: one.send_photo("/howto hang"))
    await walker.does(STRANGER, "sent a file", lambda one: one.send_document("a.csv", b"name\nA"))


async def newcomer_joins(walker: Walker) -> None:
    """By a personal link through all first questions, each answered wrongly first."""
    link = await walker.writes(COACH, f"/invite {INVITED}")
    text = "\n".join(one.html + str(one.buttons) for one in link.shown)
    found = LINK.search(text)
    assert found is not None, text
    await walker.does(NEWCOMER, "opened the link", lambda one: one.open_link(found[1]))
    await walker.writes(NEWCOMER, "???")
    await walker.taps(NEWCOMER, "intake.decline")
    await walker.taps(NEWCOMER, "intake.begin")
    await walker.taps(NEWCOMER, "intake.agree")
    wronged: set[str] = set()
    for _ in range(40):
        step = _step(walker)
        if step == "review":
            break
        if step not in wronged:
            wronged.add(step)
            await walker.writes(NEWCOMER, "???")
            if len(wronged) == 3:
                await walker.taps(NEWCOMER, "intake.back")
                continue
        await _answers_intake(walker, step)
    await walker.writes(NEWCOMER, "???")
    await walker.taps(NEWCOMER, "intake.change")
    await _answers_intake(walker, _step(walker))
    await walker.taps(NEWCOMER, "intake.right")


def _step(walker: Walker) -> str:
    asked = walker.stage.question(NEWCOMER)
    return (asked or "/").split("/")[1]


async def _answers_intake(walker: Walker, step: str) -> None:
    for value in CHOSEN_IN_INTAKE.get(step, ()):
        if walker.find(NEWCOMER, "intake.toggle", value=value):
            await walker.taps(NEWCOMER, "intake.toggle", value=value)
    if step in CHOSEN_IN_INTAKE:
        await walker.taps(NEWCOMER, "intake.done", step=step)
    elif walker.find(NEWCOMER, "intake.answer", step=step):
        await walker.taps(NEWCOMER, "intake.answer", step=step)
    else:
        await walker.taps(NEWCOMER, "intake.done", step=step, is_none=True)


async def good_day(walker: Walker) -> None:
    """All as planned, by taps: what it costs is printed."""
    before = walker.spent(ATHLETE)
    await walker.taps(ATHLETE, "as_planned")
    await answers_session(walker, ATHLETE)
    walker.costs.append(f"a good day: {walker.told(ATHLETE, before)}")


async def answers_session(walker: Walker, chat_id: int) -> None:
    """Answer what a session still asks, by taps."""
    acts = {"reserve": "reserve", "effort": "effort", "pain": "pain.none"}
    for _ in range(12):
        act = acts.get(walker.stage.question(chat_id) or "")
        if act is None:
            return
        await walker.taps(chat_id, act)


async def bad_day(walker: Walker) -> None:
    """A swap, one by one, what is not understood, a correction, pain: what it costs is printed."""
    before = walker.spent(SORE)
    await walker.taps(SORE, "swap")
    await walker.taps(SORE, "swap.item")
    await walker.taps(SORE, "swap.why", why="no_equipment")
    await walker.taps_if_there(SORE, "swap.to")
    if not walker.tapped["swap.to"]:
        await walker.taps(SORE, "swap")
        await walker.taps(SORE, "swap.item")
        await walker.taps(SORE, "swap.why", why="not_right")
        await walker.taps_if_there(SORE, "swap.to")
    await walker.writes(SORE, "1) 20 18")
    await walker.taps(SORE, "reading.none")
    await walker.writes(SORE, "1) 20 18")
    await walker.taps(SORE, "reading.choose")
    await walker.taps(SORE, "reserve.unknown")
    await walker.taps(SORE, "steps")
    await walker.writes(SORE, "???")
    await walker.taps(SORE, "item.how_to")
    await walker.taps(SORE, "item.skip")
    await walker.taps(SORE, "change")
    await walker.taps(SORE, "change.item")
    await walker.writes(SORE, "20 19 18")
    for _ in range(8):
        if not (
            await walker.taps_if_there(SORE, "item.as_planned")
            or await walker.taps_if_there(SORE, "reserve.unknown")
        ):
            break
    await walker.taps_if_there(SORE, "effort")
    await hurts(walker, score=5)
    walker.costs.append(f"a bad day: {walker.told(SORE, before)}")


async def half_told(walker: Walker) -> None:
    """A pain whose place is half known: the session asks for the rest by a button."""
    said = {"en": "my elbow hurts 4/10", "es": "me duele el codo 4/10"}
    await walker.writes(SORE, said[walker.stage.language])
    await walker.writes(SORE, "/today")
    await walker.taps(SORE, "pain.open")
    await walker.taps(SORE, "pain.site", site="elbow_inner")
    await walker.taps(SORE, "pain.side", side="left")
    await walker.taps_if_there(SORE, "pain.sign", sign="")
    await walker.taps_if_there(SORE, "pain.list", line="")


async def hurts(walker: Walker, *, score: int) -> None:
    """Something hurts: where, which side, how much, what else."""
    await walker.taps(SORE, "pain.where")
    await walker.writes(SORE, "???")
    await walker.taps(SORE, "pain.site", site="wrist")
    await walker.taps(SORE, "pain.side", side="both")
    await walker.writes(SORE, "???")
    await walker.taps(SORE, "pain.score", score=score)
    await walker.taps_if_there(SORE, "pain.sign")


async def morning_after(walker: Walker) -> None:
    """One question after a day with pain."""
    await walker.taps(SORE, "morning.score", score=3)


async def early_session(walker: Walker) -> None:
    """The next session before its day."""
    await walker.writes(ATHLETE, "/today")
    await walker.taps(ATHLETE, "session.now")
    await walker.does(ATHLETE, "sent a clip", lambda one: one.send_video(""))
    await walker.taps(ATHLETE, "clip.item")
    await walker.taps(ATHLETE, "how_to")
    await walker.taps(ATHLETE, "how_to.show")
    await walker.taps(ATHLETE, "steps")
    await walker.taps(ATHLETE, "item.as_planned")
    await walker.does(ATHLETE, "sent a clip", lambda one: one.send_video(""))
    await walker.taps(ATHLETE, "clip.which")
    await walker.does(ATHLETE, "sent a photo", lambda one: one.send_photo(""))
    await walker.does(ATHLETE, "sent a voice note", lambda one: one.send_voice())
    await walker.does(ATHLETE, "sent a sticker", lambda one: one.send_sticker())
    await walker.does(ATHLETE, "sent a file", lambda one: one.send_document("a.pdf", b"%PDF"))
    await walker.writes(ATHLETE, f"{OWN_WORD}?")
    await walker.taps(ATHLETE, "as_planned")
    await answers_session(walker, ATHLETE)


async def cannot_today(walker: Walker) -> None:
    """Ill, then a break, and its end."""
    await walker.taps(SORE, "cant")
    await walker.taps(SORE, "cant.because", reason="ill")
    await walker.taps(SORE, "pause.for")
    await walker.writes(SORE, "/pause off")
    await walker.taps(SORE, "break.was")
    await walker.writes(SORE, "/pause 1 week")
    await walker.taps(SORE, "break.end")


async def tested(walker: Walker) -> None:
    """Guided tests: wrong words, a figure, one changed, the rest another day."""
    await walker.taps(NEWCOMER, "tests.start")
    await walker.writes(NEWCOMER, "???")
    await _tells_one_test(walker)
    await walker.taps(NEWCOMER, "tests.change")
    await walker.taps(NEWCOMER, "tests.stop")
    await answers_session(walker, NEWCOMER)


async def _tells_one_test(walker: Walker) -> None:
    for _ in range(3):
        if await walker.taps_if_there(NEWCOMER, "tests.left"):
            return
        await walker.taps(NEWCOMER, "tests.value")


async def tested_on(walker: Walker) -> None:
    """The rest of the tests on the next day: one is left out, and why."""
    await walker.taps(NEWCOMER, "tests.start")
    await walker.taps(NEWCOMER, "tests.skip")
    await walker.taps(NEWCOMER, "tests.skipped")
    await walker.taps_if_there(NEWCOMER, "tests.stop")
    await answers_session(walker, NEWCOMER)


async def tested_again(walker: Walker) -> None:
    """The coach asked for tests: one hurts, and the rest is left for another day."""
    await walker.taps(ATHLETE, "tests.start")
    await walker.taps(ATHLETE, "tests.hurt")
    for act, where in (("pain.site", {"site": "elbow_outer"}), ("pain.side", {"side": "right"})):
        await walker.taps(ATHLETE, act, **where)
    await walker.taps(ATHLETE, "pain.score", score=2)
    await walker.taps_if_there(ATHLETE, "pain.list", line="")
    await answers_session(walker, ATHLETE)


async def care_is_told(walker: Walker) -> None:
    """Health told anew holds an athlete at once; the coach decides what lifts it."""
    await _sets_health(walker, "faint")
    await walker.taps(COACH, "coach.let_start")
    for decided in ("coach.setting_no", "coach.setting_yes"):
        await _sets_health(walker, "faint")
        await walker.taps(COACH, decided)
    await _sets_health(walker, "out_or_operated")
    await walker.writes(NEWCOMER, "lorem ipsum")
    await walker.writes(COACH, "/giveback Nia lorem ipsum")
    await walker.taps(COACH, "coach.giveback_one")


async def _sets_health(walker: Walker, topic: str) -> None:
    await walker.writes(NEWCOMER, "/settings")
    await walker.taps(NEWCOMER, "set.ask", step="screen")
    await walker.taps(NEWCOMER, "set.toggle", value=topic)
    if not await walker.taps_if_there(NEWCOMER, "set.done", is_none=None, draft=[topic]):
        await walker.taps(NEWCOMER, "set.done", is_none=True)


async def pain_gets_worse(walker: Walker) -> None:
    """Much pain brings the short list; a line of it, and a doubt in words, stop all training."""
    await half_told(walker)
    await walker.writes(SORE, "/pain")
    for act, where in (
        ("pain.site", {"site": "shoulder_front"}),
        ("pain.side", {"side": "right"}),
        ("pain.score", {"score": 8}),
    ):
        await walker.taps(SORE, act, **where)
    await walker.taps_if_there(SORE, "pain.sign", sign="")
    await walker.taps(SORE, "pain.list")
    said = {"en": "my chest feels tight", "es": "siento el pecho apretado"}
    await walker.writes(SORE, said[walker.stage.language])
    await walker.taps(SORE, "flag.answer", certainty="denied")


async def leaves(walker: Walker) -> None:
    """The last of all: stay, then go."""
    await walker.writes(NEWCOMER, "/leave")
    await walker.taps(NEWCOMER, "leave.stay")
    await walker.writes(NEWCOMER, "/leave")
    await walker.taps(NEWCOMER, "leave.yes")
