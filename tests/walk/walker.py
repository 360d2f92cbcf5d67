"""Somebody curious: gives every command, taps every button, answers every question, and watches.

Scenes lead where chance does not; beside them what is done next is what was done least. A fault is
noted where nothing answers, where another language stands in a chat, where what was asked does not
go on after a restart, and where somebody else could have done the same.
"""

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

from bot.desks import athlete as athlete_desk
from bot.desks import front
from demo_scenario.loopback.person import Person as OnPhone
from demo_scenario.loopback.screen import ShownButton, ShownMessage
from storage.queries import people
from storage.records.wire import Button
from storage.tables.wire import InboxState
from tests.walk.lines import COMMANDS, ENGLISH_STILL, HELD, OWN, SAYS_ANYTHING, TYPED, WORDS, WRONG
from tests.walk.stage import ATHLETES, ON_PHONE, Answer, WalkStage, all_buttons
from tests.walk.tongues import foreign

LOOKS_BACK = 6  # [messages] CHOSEN: how far up somebody curious scrolls
LOOKS_FAR = 30  # [messages] CHOSEN: how far up somebody scrolls who looks for a button
REFUSED = 400  # [HTTP status] RFC 9110, section 15.5: and above, the call was refused
SAID_ALREADY = "message is not modified"
"""Turning a message into what it says already is refused, and nothing is lost by it."""
MOST_STEPS = 60  # [steps] CHOSEN: of one exploration, so that days go on
APART = ("step", "why", "reason", "how", "what", "field")
"""Arguments by which buttons of one act are different questions."""


@dataclass(frozen=True)
class Tapped:
    """A button that somebody tapped, to be tapped again much later."""

    chat_id: int
    message_id: int
    token: str
    act: str
    label: str


@dataclass
class Walker:
    """One walk through the house."""

    stage: WalkStage
    trespass: Callable[[WalkStage, Button], list[str]] | None = None
    tapped: Counter[str] = field(default_factory=Counter)
    apart: Counter[tuple[str, str]] = field(default_factory=Counter)
    commanded: Counter[tuple[int, str]] = field(default_factory=Counter)
    asked: Counter[str] = field(default_factory=Counter)
    faults: list[str] = field(default_factory=list)
    history: list[Tapped] = field(default_factory=list)
    costs: list[str] = field(default_factory=list)
    steps: int = 0
    is_erased: bool = False
    set_aside: int = -1
    refused: list[str] = field(default_factory=lambda: ["not counted"])

    # what somebody does

    async def writes(self, chat_id: int, text: str, **more: Any) -> Answer:
        """Write something."""
        return await self.does(chat_id, f"wrote {text!r}", lambda one: one.write(text, **more))

    async def does(self, chat_id: int, did: str, act: Callable[[OnPhone], object]) -> Answer:
        """Do anything, and see that it is answered, in the right language, over a restart."""
        answer = await self.stage.does(chat_id, did, act)
        self._watch(answer)
        await self._over_a_restart(chat_id)
        return answer

    async def taps(self, chat_id: int, act: str, **where: Any) -> None:
        """Tap the newest button of an act, with these arguments; it must be there."""
        found = self.find(chat_id, act, **where)
        if found is None:
            shown = sorted({known.act for _, _, known in self._buttons(chat_id)})
            last = self.stage.last_said(chat_id)
            self.faults.append(f"{ON_PHONE[chat_id]} sees no {act} {where}: {shown} below {last!r}")
            return
        await self._tap(chat_id, *found)

    async def taps_if_there(self, chat_id: int, act: str, **where: Any) -> bool:
        """Tap a button where there is one that was not used yet."""
        found = self.find(chat_id, act, **where)
        if found is None or found[2].used_at is not None:
            return False
        await self._tap(chat_id, *found)
        return True

    def find(
        self, chat_id: int, act: str, **where: Any
    ) -> tuple[ShownMessage, ShownButton, Button] | None:
        """Return the newest button of an act, with these arguments."""
        for found in self._buttons(chat_id, back=LOOKS_FAR):
            known = found[2]
            fits = all(known.arguments.get(name) == value for name, value in where.items())
            if known.act == act and fits:
                return found
        return None

    async def tells(self, chat_id: int, name: str, line: str) -> None:
        """Give a command, and look into everything that it opens."""
        await self.writes(chat_id, f"/{name} {line}".strip())
        await self.explores(chat_id)

    async def commands(self, chat_id: int, *, lines: int = 1) -> None:
        """Give every command that the person has, each next in its list of lines."""
        for name in self.names(chat_id):
            own = chat_id in ATHLETES and name in athlete_desk.COMMANDS
            known = OWN.get(name, ("",)) if own else COMMANDS.get(name, ("",))
            at = self.commanded[chat_id, name]
            for line in known[at : at + lines]:
                self.commanded[chat_id, name] += 1
                await self.tells(chat_id, name, line)

    async def explores(self, chat_id: int) -> None:
        """Answer what is asked, and tap what was tapped least, until nothing is new."""
        for _ in range(MOST_STEPS):
            await self._answer_what_is_asked(chat_id)
            found = next(
                (
                    one
                    for one in self._buttons(chat_id)
                    if one[2].used_at is None
                    and one[2].act not in HELD
                    and not self.apart[one[2].act, _apart(one[2])]
                ),
                None,
            )
            if found is None:
                return
            await self._tap(chat_id, *found)

    # what it costs

    def spent(self, chat_id: int) -> tuple[int, int, int, int]:
        """Return how often somebody tapped and wrote so far, and what the bot wrote and turned."""
        seen = self.stage.on_phone[chat_id].sees()
        from_bot = [one for one in seen if one.is_from_bot]
        taps = sum(one.chat_id == chat_id for one in self.history)
        turned = sum(len(one.history) for one in from_bot)
        return taps, len(seen) - len(from_bot), len(from_bot), turned

    def told(self, chat_id: int, before: tuple[int, int, int, int]) -> str:
        """Return in words what was spent since."""
        taps, texts, sent, turned = (
            now - then for now, then in zip(self.spent(chat_id), before, strict=True)
        )
        return f"{taps} taps, {texts} texts; the bot sends {sent} messages and turns {turned}"

    def counts_refusals(self) -> None:
        """Remember what the house could not do and what the platform would not take."""
        with self.stage.database.transaction() as tx:
            states = tx.connection().exec_driver_sql("SELECT state FROM inbox").scalars()
            self.set_aside = sum(one == InboxState.SET_ASIDE.value for one in states)
        self.refused = [
            f"{one.method}: {one.description}"
            for one in self.stage.platform.requests
            if one.status is not None
            and one.status >= REFUSED
            and SAID_ALREADY not in one.description
        ]

    # what was never done

    def unreached(self) -> set[str]:
        """Return the acts of buttons that were never tapped."""
        return set(front.TAPS) - set(self.tapped)

    def names(self, chat_id: int) -> list[str]:
        """Return the commands that somebody has now."""
        with self.stage.database.transaction() as tx:
            person = people.person_in_chat(tx, chat_id)
            athlete = people.athlete(tx, person.id) if person else None
        return list(front.commands_of(person, athlete)) if person else []

    # how it is done

    async def _tap(
        self, chat_id: int, message: ShownMessage, button: ShownButton, known: Button
    ) -> Answer:
        self.apart[known.act, _apart(known)] += 1
        if self.trespass is not None and not self.tapped[known.act]:
            self.faults += self.trespass(self.stage, known)
        self.tapped[known.act] += 1
        token = button.data or ""
        self.history.append(Tapped(chat_id, message.message_id, token, known.act, button.text))
        return await self.does(
            chat_id,
            f"tapped {button.text!r} ({known.act}) below {message.text[:60]!r}",
            lambda one: one.tap(message.message_id, token),
        )

    def _buttons(
        self, chat_id: int, *, back: int = LOOKS_BACK
    ) -> list[tuple[ShownMessage, ShownButton, Button]]:
        shown = [one for one in self.stage.screen(chat_id).values() if one.is_from_bot]
        found = []
        for message, button in all_buttons(tuple(shown[-back:])):
            known = self.stage.button(chat_id, button)
            if known is None and self.is_erased:
                continue  # what was about somebody who left is forgotten with them
            if known is None:
                self.faults.append(f"a button without meaning: {button.text!r}")
            else:
                found.append((message, button, known))
        return found

    async def _answer_what_is_asked(self, chat_id: int) -> None:
        kind = self.stage.question(chat_id)
        if kind is None or self.asked[f"{kind} answered"]:
            return
        self.asked[f"{kind} answered"] += 1
        plain = kind.split("/")[0]
        default = (WORDS,) if plain in SAYS_ANYTHING else (WRONG, "3")
        for text in TYPED.get(kind, TYPED.get(plain, default)):
            await self.writes(chat_id, text)
            if self.stage.question(chat_id) != kind:
                return

    async def _over_a_restart(self, chat_id: int) -> None:
        """Stop the house where something is asked for the first time, and start it again."""
        kind = self.stage.question(chat_id)
        if kind is None or self.asked[kind]:
            return
        self.asked[kind] += 1
        await self.stage.restart()
        if self.stage.question(chat_id) != kind:
            self.faults.append(f"{kind} is not asked any more after a restart")

    def _watch(self, answer: Answer) -> None:
        self.steps += 1
        if not answer.shown:
            self.faults.append(f"no answer: {answer.did}")
        for message in answer.shown:
            self.reads(message, answer.did)

    def reads(self, message: ShownMessage, did: str) -> None:
        """See that a message is in the language of the chat."""
        labels = " | ".join(one.text for row in message.buttons for one in row)
        said = f"{message.text}\n{labels}"
        if found := foreign(said, language=self.stage.language):
            if any(one in did for one in ENGLISH_STILL):
                return
            at = max(0, said.find(found) - 150)
            self.faults.append(f"another language ({found!r}) after {did}: {said[at : at + 300]!r}")


def _apart(known: Button) -> str:
    return "/".join(str(known.arguments[one]) for one in APART if one in known.arguments)
