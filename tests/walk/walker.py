"""Somebody curious: gives every command, taps every button, answers every question, and watches.

What is done next is what was done least, so that the walk comes everywhere. It notes a fault where
nothing answered, where English stands in a Spanish chat, and where what was asked does not go on
after a restart.
"""

import re
from collections import Counter
from dataclasses import dataclass, field

from bot.desks import front
from demo_scenario.loopback.screen import ShownButton, ShownMessage
from storage.queries import people
from tests.walk.lines import ANY_WORDS, COMMANDS, LAST_OF_ALL, TYPED
from tests.walk.stage import Answer, WalkStage, all_buttons

TAPS_EACH = 2  # [taps] CHOSEN: a button may stand in two states
MOST_STEPS = 60  # [steps] CHOSEN: of one exploration, so that days go on
ENGLISH = re.compile(r"\b(the|and|your|with|what|this|please|which|nothing)\b", re.IGNORECASE)


@dataclass
class Walker:
    """One walk through the house."""

    stage: WalkStage
    tapped: Counter[str] = field(default_factory=Counter)
    commanded: Counter[tuple[int, str]] = field(default_factory=Counter)
    asked: Counter[str] = field(default_factory=Counter)
    restarted_at: set[str] = field(default_factory=set)
    faults: list[str] = field(default_factory=list)
    gone: dict[str, tuple[int, int, ShownButton]] = field(default_factory=dict)
    steps: int = 0

    async def commands(self, chat_id: int, *, last: bool = False) -> None:
        """Give every command that the person has, each next in its list of lines."""
        for name in self._names(chat_id):
            lines = COMMANDS.get(name, ("",))
            at = self.commanded[chat_id, name]
            if at >= len(lines) or (name in LAST_OF_ALL) is not last:
                continue
            self.commanded[chat_id, name] += 1
            await self.writes(chat_id, f"/{name} {lines[at]}".strip())

    async def writes(self, chat_id: int, text: str) -> Answer:
        """Write something, and look into everything that it opens."""
        answer = await self.stage.does(chat_id, f"wrote {text!r}", lambda one: one.write(text))
        self._watch(chat_id, answer)
        await self._explore(chat_id)
        return answer

    async def looks(self, chat_id: int) -> None:
        """Look at what came by itself."""
        await self._explore(chat_id)

    def unreached(self) -> list[str]:
        """Return the acts of buttons that were never tapped."""
        return sorted(set(front.TAPS) - set(self.tapped))

    async def _explore(self, chat_id: int) -> None:
        for _ in range(MOST_STEPS):
            await self._answer_what_is_asked(chat_id)
            found = self._least_tapped(chat_id)
            if found is None:
                return
            message, button, act = found
            self.tapped[act] += 1
            answer = await self._tap(chat_id, message, button, act)
            self._watch(chat_id, answer)

    async def _tap(
        self, chat_id: int, message: ShownMessage, button: ShownButton, act: str
    ) -> Answer:
        data = button.data or ""
        self.steps += 1
        answer = await self.stage.does(
            chat_id,
            f"tapped {button.text!r} ({act}) below {message.text[:60]!r}",
            lambda one: one.tap(message.message_id, data),
        )
        now = self.stage.screen(chat_id).get(message.message_id)
        still = {one.data for _, one in all_buttons((now,))} if now else set()
        if data not in still:
            self.gone[act] = (chat_id, message.message_id, button)
        return answer

    def _least_tapped(self, chat_id: int) -> tuple[ShownMessage, ShownButton, str] | None:
        found = []
        shown = tuple(one for one in self.stage.screen(chat_id).values() if one.is_from_bot)
        for at, (message, button) in enumerate(all_buttons(shown[-12:])):
            known = self.stage.button(chat_id, button)
            if known is None:
                self.faults.append(f"a button without meaning: {button.text!r}")
                continue
            if known.used_at is None and self.tapped[known.act] < TAPS_EACH:
                late = known.act in LAST_OF_ALL
                found.append((late, self.tapped[known.act], at, message, button, known.act))
        if not found:
            return None
        late, _, _, message, button, act = min(found, key=lambda one: one[:3])
        return None if late else (message, button, act)

    async def _answer_what_is_asked(self, chat_id: int) -> None:
        for _ in range(4):
            kind = self.stage.question(chat_id)
            if kind is None or self.asked[kind] >= TAPS_EACH:
                return
            self.asked[kind] += 1
            if kind not in self.restarted_at:
                self.restarted_at.add(kind)
                await self.stage.restart()
                if self.stage.question(chat_id) != kind:
                    self.faults.append(f"{kind} is not asked any more after a restart")
            for text in TYPED.get(kind, TYPED.get(kind.split("/")[0], ANY_WORDS)):
                self._watch(chat_id, await self._answers(chat_id, text, kind))
                if self.stage.question(chat_id) != kind:
                    break

    async def _answers(self, chat_id: int, text: str, kind: str) -> Answer:
        did = f"answered {text!r} to {kind}"
        return await self.stage.does(chat_id, did, lambda one: one.write(text))

    def _watch(self, chat_id: int, answer: Answer) -> None:
        self.steps += 1
        if not answer.shown:
            self.faults.append(f"no answer: {answer.did}")
        if self.stage.language != "en":
            for message in answer.shown:
                self._look_for_english(message, answer.did)

    def _look_for_english(self, message: ShownMessage, did: str) -> None:
        said = message.text + " " + " ".join(one.text for _, one in all_buttons((message,)))
        if len(set(ENGLISH.findall(said.lower()))) > 1:
            self.faults.append(f"English after {did}: {said[:300]!r}")

    def _names(self, chat_id: int) -> list[str]:
        with self.stage.database.transaction() as tx:
            person = people.person_in_chat(tx, chat_id)
            athlete = people.athlete(tx, person.id) if person else None
        return list(front.commands_of(person, athlete)) if person else []
