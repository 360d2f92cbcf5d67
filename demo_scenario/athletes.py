"""Athletes as they are at the other end of a chat: they train, answer, slip, ask, and forget."""

import random
import re
from collections.abc import Callable, Sequence
from datetime import date, datetime, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from demo_scenario import acting, tested_day, training_day
from demo_scenario.eye import SeenSession, label_at_most, labels, see_session
from demo_scenario.hidden import HiddenBody
from demo_scenario.intake_answers import IntakeAnswer, answer_of_intake
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.phone import Phone
from demo_scenario.player import Player
from demo_scenario.scenes.steps import Silence
from demo_scenario.scenes.the_season import LATE, SCENES, SILENCES
from demo_scenario.slips import Slip, slip_of, slipped
from demo_scenario.spanish_screen import Understood
from demo_scenario.story import HURTS, SENDS, Happening, Hurts, Sends
from demo_scenario.team import AthleteEntry, Habit
from demo_scenario.typing_habits import DoneItem, messages, one_item
from scheduler.catalogue.library import Library

CALLED_OFF = ("Called off.", "Anulada.")
CANT_LABELS = ("No time", "Ill", "Travelling")
LEAST_COMPARED = 4  # [numbers] ch: fewer may agree by chance
NUMBER = re.compile(r"\d+(?:\.\d+)?")
TYPES_S = (15, 50)  # [s] ch: between two messages or taps of one person
POOR_WEEKS = 0.1  # [share of weeks] ch: now and then somebody sleeps badly
TESTS_EFFORT = 6  # [of 10] ch: few sets, each near the end
TAPS_S = (3, 9)  # [s] ch


class SimulatedAthlete(Player):
    """One athlete: reads nothing but the screen."""

    def __init__(
        self,
        entry: AthleteEntry,
        phone: Phone,
        *,
        body: HiddenBody,
        library: Library,
        chance: random.Random,
        start: date,
    ) -> None:
        """Plan what the story has for this athlete."""
        super().__init__(phone, name=entry.name, chance=chance)
        self.entry = entry
        self.zone = ZoneInfo(entry.zone)
        self.trained = 0
        self.has_joined = not entry.joins
        self._body = body
        self._library = library
        self._sessions_seen: set[int] = set()
        self._done: list[DoneItem] = []
        self._left: dict[str, float] = {}
        self._hurts: Hurts | None = None
        self._has_explained = False
        self._busy_with: int | None = None
        self._test_left = 0.0
        self._is_testing = False
        self._off_on = -1
        self._start = start
        self._understands = Understood(entry.language)
        acting.plan(self, SCENES, start=start, zone=self.zone)
        for one in SENDS:
            if one.part is entry.part:
                when = datetime.combine(start + timedelta(days=one.day), one.at, self.zone)
                self.at(when.astimezone(ZoneInfo("UTC")), partial(self._send, one))

    def read(self, message: ShownMessage) -> None:
        """React to one new message as people do: sessions are trained, questions answered."""
        if self._is_silent():
            return
        message = self._understands.message(message)
        if message.text.startswith(CALLED_OFF):
            self._off_on = self._day()
        session = see_session(message)
        if session is not None:
            self._plan_session(session)
        elif message.buttons:
            self._answer(message)
        elif "Write it like this" in message.text and not self._has_explained and self._done:
            self._has_explained = True
            self.soon(self._write_plainly, least_s=30, most_s=60)

    def open_link(self, payload: str) -> None:
        """Follow the personal link and press start."""
        self.phone.person.open_link(payload)

    def _day(self) -> int:
        """Return the day of the demo, counted from 0, by this person's calendar."""
        now = self.now.astimezone(self.zone).date() if self.now else self._start
        return (now - self._start).days

    def _is_silent(self) -> bool:
        return any(self._is_in(one) for one in SILENCES)

    def _writes_late(self) -> bool:
        return any(one.who == self.name and one.day == self._day() for one in LATE)

    def _is_in(self, one: Silence) -> bool:
        return one.who == self.name and one.first_day <= self._day() <= one.last_day

    # Training ------------------------------------------------------------------------------

    def _plan_session(self, session: SeenSession) -> None:
        if session.message_id in self._sessions_seen or self.now is None:
            return
        self._sessions_seen.add(session.message_id)
        if not session.items and self._writes_late():
            return  # the reminder finds somebody who has trained and writes tomorrow
        spread = max(5, self.entry.replies_after_min // 4)
        wait = self.entry.replies_after_min + self.chance.randint(-spread, spread)
        when = self.now + timedelta(minutes=wait)
        if self.chance.random() > self.entry.keeps:
            if self.chance.random() < 0.7:
                self.at(when, lambda: self._cant(session))
            return
        self.at(when, lambda: self._train(session.message_id))

    def _cant(self, session: SeenSession) -> None:
        self._tap(session.message_id, "Can't today")

    def _train(self, message_id: int) -> None:
        message = self.phone.message(message_id)
        session = see_session(self._understands.message(message)) if message else None
        if session is None or self.now is None or self._is_silent() or self._off_on == self._day():
            return
        self.trained += 1
        self._has_explained = False
        self._is_testing = False
        self._hurts = next(
            (one for one in HURTS if one.part is self.entry.part and one.session == self.trained),
            self._hurts and None,
        )
        self._body.begin_day(self.now.astimezone(self.zone).date())
        self._done, self._left = training_day.train(
            session,
            body=self._body,
            library=self._library,
            goes_beyond=self.entry.goes_beyond,
        )
        if self._done:
            self._report(session)
        else:
            self._cant(session)  # all of it was taken out since

    def _report(self, session: SeenSession) -> None:
        if self.now is not None and self._writes_late():
            self.at(
                self.now + timedelta(days=1),
                partial(self._write_late, self._day(), tuple(self._done)),
            )
            return
        habit = self.entry.habits[self.trained % len(self.entry.habits)]
        if habit is Habit.STEP_BY_STEP:
            self._tap(session.message_id, "Step by step")
            return
        if habit is Habit.ALL_AS_PLANNED:
            if all(one.is_as_written for one in self._done):
                self._tap(session.message_id, "All as planned")
                return
            habit = Habit.NUMBERED
        slip = slip_of(self.entry.part, self.trained)
        texts = [self._understands.said(one) for one in messages(habit, self._done, self.chance)]
        wrong, mend = slipped(slip, texts[0], self._done[0]) if slip else (texts[0], None)
        first_id = self.phone.write(wrong)
        if mend is not None and slip is Slip.SORRY:
            self.soon(lambda: self._say(mend), least_s=20, most_s=40)
        elif mend is not None:
            self.soon(lambda: self._edit(first_id, mend), least_s=20, most_s=40)
        self._say_later(texts[1:])

    def _write_late(self, day: int, done: tuple[DoneItem, ...]) -> None:
        """Write the day's name above what was done on it."""
        lines = [f"{one.seen.number}) {one_item(one)}" for one in done]
        self._say("\n".join([f"{self._start + timedelta(days=day):%A}", *lines]))

    def _say_later(self, texts: list[str]) -> None:
        if self.now is None:
            return
        when = self.now
        for text in texts:
            when += timedelta(seconds=self.chance.randint(*TYPES_S))
            self.at(when, partial(self._say_unless_explained, text))

    def _say_unless_explained(self, text: str) -> None:
        """Go on item by item, unless the whole session was written plainly meanwhile."""
        if not self._has_explained:
            self._say(text)

    def _write_plainly(self) -> None:
        lines = [f"{one.seen.number}) {one_item(one)}" for one in self._done]
        self._say(self._understands.said("\n".join(lines)))

    def _say(self, text: str) -> None:
        self.phone.write(text)

    def _edit(self, message_id: int, text: str) -> None:
        self.phone.person.edit(message_id, text)

    def _send(self, one: Sends) -> None:
        person = self.phone.person
        match one.what:
            case Happening.TEXT:
                person.write(one.text)
            case Happening.STICKER:
                person.send_sticker()
            case Happening.VOICE:
                person.send_voice()
            case Happening.CLIP:
                person.send_video("push-up hold, set 3, is this ok?")

    # Questions -----------------------------------------------------------------------------

    def _answer(self, message: ShownMessage) -> None:
        """Find out what is asked, and plan the tap or the words that answer it."""
        for words, answer in self._questions():
            if words in message.text:
                label = answer(message)
                if label is not None:
                    self._tap_soon(message.message_id, label)
                return
        intake = answer_of_intake(message, self.entry)
        if intake is not None:
            self._answer_intake(message.message_id, intake)
        elif not self.entry.coaches and set(labels(message)) - {"Change a number", "Change"}:
            self.puzzle_over(message)

    def _questions(self) -> list[tuple[str, Callable[[ShownMessage], str | None]]]:
        return [
            (tested_day.OPENING, self._begin_tests),
            ("Then your best", self._test),
            ("How many more", lambda message: label_at_most(message, self._test_left)),
            ("were in you?", self._reserve),
            ("How hard was the whole session?", self._effort),
            ("Did anything hurt", self._pain),
            ("What did you get?", self._one_item),
            ("Where does it hurt?", lambda _: self._hurts.site if self._hurts else None),
            ("which side?", lambda _: self._hurts.side if self._hurts else None),
            ("Good morning. Your", self._morning),
            ("0 to 10?", self._score),
            ("is any of this so?", lambda _: "None of these"),
            ("One more check", lambda _: "None of these"),
            ("How were sleep and mood", lambda _: self._slept()),
            ("long. How was it?", lambda _: "Well, without training"),
            ("why leave it out?", lambda _: "Rather not"),
            ("What is it today?", lambda _: self.chance.choice(CANT_LABELS)),
            ("If no button fits", self._which_reading),
            ("Is it new, sudden or strange", lambda _: "No, nothing of that kind"),
            ("If that changes, stop and get help", lambda _: None),
            ("Which item is it?", lambda message: labels(message)[0]),
            ("Called off.", lambda _: None),
            ("Anulada.", lambda _: None),
            ("after some minutes", lambda message: labels(message)[0]),
        ]

    def _answer_intake(self, message_id: int, answer: IntakeAnswer) -> None:
        """Answer once: the message is edited under every tap of a choice of several."""
        if message_id == self._busy_with:
            return
        self._busy_with = message_id if len(answer.taps) > 1 else None
        if answer.text:
            self.soon(lambda: self._say(answer.text), least_s=8, most_s=20)
        if self.now is None:
            return
        when = self.now
        for label in answer.taps:
            when += timedelta(seconds=self.chance.randint(*TAPS_S))
            self.at(when, partial(self._tap_part, message_id, label))

    def _tap_part(self, message_id: int, label: str) -> None:
        if label == "Done":
            self._busy_with = None
        self._tap(message_id, label)

    def _begin_tests(self, message: ShownMessage) -> None:
        """Come to a day of tests after the usual while; whoever skips it answers nothing."""
        if message.message_id in self._sessions_seen or self.now is None:
            return
        self._sessions_seen.add(message.message_id)
        when = self.now + timedelta(minutes=self.entry.replies_after_min)
        if self.chance.random() <= self.entry.keeps:
            self.at(when, partial(self._start_tests, message.message_id))

    def _start_tests(self, message_id: int) -> None:
        if self.now is not None:
            self._body.begin_day(self.now.astimezone(self.zone).date())
        self._is_testing = True
        self._done, self._left, self._hurts = [], {}, None
        self._tap(message_id, "Start")

    def _test(self, message: ShownMessage) -> str | None:
        """Do the test that is shown, and tap the figure nearest below what was done."""
        seen = tested_day.see_test(message)
        done = tested_day.do_test(seen, body=self._body, library=self._library) if seen else None
        if done is None:
            return "Skip it"
        effort, self._test_left = done
        return label_at_most(message, effort.done)

    def _reserve(self, message: ShownMessage) -> str | None:
        asked = message.text.rsplit("\n", 1)[-1]
        name = next((one for one in self._left if asked.startswith(one)), None)
        return label_at_most(message, self._left[name]) if name else None

    def _effort(self, message: ShownMessage) -> str | None:
        if self._is_testing:
            return label_at_most(message, TESTS_EFFORT)
        return label_at_most(message, training_day.session_effort(self._done, self._left))

    def _pain(self, _: ShownMessage) -> str:
        return "Something hurts" if self._hurts else "Nothing hurt"

    def _slept(self) -> str:
        return "Sleep poor" if self.chance.random() < POOR_WEEKS else "Both fine"

    def _score(self, message: ShownMessage) -> str | None:
        return label_at_most(message, self._hurts.score) if self._hurts else None

    def _morning(self, message: ShownMessage) -> str | None:
        return label_at_most(message, self._hurts.next_morning if self._hurts else 0)

    def _one_item(self, message: ShownMessage) -> str | None:
        asked = message.text.rsplit("\n", 1)[-1]
        for one in self._done:
            if f"{one.seen.number}. {one.seen.name}:" in asked:
                if one.is_as_written:
                    return "As planned"
                said = self._understands.said(one_item(one))
                self.soon(partial(self._say, said), least_s=20, most_s=60)
        return None

    def _which_reading(self, message: ShownMessage) -> str:
        """Tap the reading whose numbers are mine; else say that none is, and write plainly."""
        for label in labels(message):
            if _reads_as(label, self._done):
                return label
        if not self._has_explained:
            self._has_explained = True
            self.soon(self._write_plainly, least_s=40, most_s=70)
        return "None of these"

    def _tap_soon(self, message_id: int, label: str) -> None:
        self.soon(lambda: self._tap(message_id, label), least_s=TAPS_S[0], most_s=TAPS_S[1])

    def _tap(self, message_id: int, label: str) -> None:
        self.phone.tap(message_id, self._understands.label(label))


def _reads_as(label: str, done: Sequence[DoneItem]) -> bool:
    """Tell whether a button reads as one of these items, or begins to read as all of them.

    A long label is cut off on the screen, so its last number may be a part of one.
    """
    said = [float(number) for number in NUMBER.findall(label)]
    if any(said == list(map(float, one.values)) for one in done):
        return True
    mine = [float(value) for one in done for value in one.values]
    return len(said) >= LEAST_COMPARED and said[:-1] == mine[: len(said) - 1]
