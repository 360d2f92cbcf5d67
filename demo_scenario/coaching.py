"""The coach at the other end: answers alerts, decides, writes back, and looks at the roster."""

import random
from datetime import date, datetime, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from demo_scenario.eye import labels
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.phone import Phone
from demo_scenario.player import Player
from demo_scenario.story import COACH_SENDS, answer_to
from demo_scenario.team import CoachEntry, Part, Team

WRITES_S = (20, 60)  # [s] ch
TAPS_S = (3, 9)  # [s] ch


class SimulatedCoach(Player):
    """The coach: answers within minutes by day, and in the morning what came at night."""

    def __init__(
        self, entry: CoachEntry, phone: Phone, *, team: Team, chance: random.Random, start: date
    ) -> None:
        """Plan the commands of the story."""
        super().__init__(phone, name=entry.name, chance=chance)
        self.entry = entry
        self.zone = ZoneInfo(entry.zone)
        self.links: dict[str, str] = {}
        self._team = team
        self._heard: dict[str, str] = {}
        for one in COACH_SENDS:
            when = datetime.combine(start + timedelta(days=one.day), one.at, self.zone)
            self.at(when.astimezone(ZoneInfo("UTC")), partial(phone.write, one.text))

    def read(self, message: ShownMessage) -> None:
        """React to one new message."""
        has = set(labels(message))
        if "start=" in message.text:
            self._note_link(message)
        elif {"Seen", "Write"} <= has:
            self._answer_alert(message)
        elif "Not yet" in has:
            self._decide(message)
        elif "Send as it is" in has:
            self._tap_later(message, "Send as it is", minutes=self.entry.looks_after_min)
        elif "Answer" in has:
            self._answer_words(message)
        elif "No, leave it" in has:
            self._confirm_stage(message)
        elif (at_once := _at_once(has)) is not None:
            self._tap_soon(message, at_once)
        elif message.text.startswith("Write now: your next text goes to"):
            self._write(message)
        else:
            self._about_tests(message)

    def _about_tests(self, message: ShownMessage) -> None:
        """Let tests come with the next session, and take the stage that they suggest."""
        wanted = ("With the next session", "Set stage")
        label = next((one for one in labels(message) if one.startswith(wanted)), None)
        if label is not None:
            self._tap_later(message, label, minutes=self.entry.looks_after_min)

    def _decide(self, message: ShownMessage) -> None:
        """Say yes to what the rules propose; a complete checklist is what was waited for."""
        yes = next(label for label in labels(message) if label != "Not yet")
        wait = self.entry.looks_after_min
        self._tap_later(message, yes, minutes=wait)

    def _confirm_stage(self, message: ShownMessage) -> None:
        """Move the traveller up all the same; leave the over-eager where he is."""
        traveller = self._team.part(Part.TRAVELLER).name
        anyway = next((label for label in labels(message) if label.startswith("Yes, stage")), None)
        if anyway is not None:
            is_override = traveller in message.text
            self._tap_soon(message, anyway if is_override else "No, leave it")

    def _answer_alert(self, message: ShownMessage) -> None:
        wait = self.entry.looks_at_alerts_after_min
        self._tap_later(message, "Seen", minutes=wait)
        self._tap_later(message, "Write", minutes=wait + 1)

    def _answer_words(self, message: ShownMessage) -> None:
        self._heard[message.text.split()[0]] = message.text
        self._tap_later(message, "Answer", minutes=self.entry.looks_after_min)

    def _write(self, message: ShownMessage) -> None:
        for athlete in self._team.athletes:
            if athlete.name in message.text:
                text = answer_to(self._heard.pop(athlete.name, ""), is_alert=True)
                self.soon(partial(self.phone.write, text), least_s=WRITES_S[0], most_s=WRITES_S[1])
                return

    def _note_link(self, message: ShownMessage) -> None:
        for athlete in self._team.athletes:
            if athlete.name in message.text:
                payload = message.text.split("start=", 1)[1].split()[0].strip(".,)")
                self.links[athlete.name] = payload

    def _tap_soon(self, message: ShownMessage, label: str) -> None:
        self.soon(
            lambda: self.phone.tap(message.message_id, label), least_s=TAPS_S[0], most_s=TAPS_S[1]
        )

    def _tap_later(self, message: ShownMessage, label: str, *, minutes: int) -> None:
        """Tap in waking hours; whatever comes at night waits for the morning, but for alerts."""
        if self.now is None:
            return
        when = self.now + timedelta(minutes=minutes, seconds=self.chance.randint(0, 50))
        self.at(self._awake(when), lambda: self.phone.tap(message.message_id, label))

    def _awake(self, when: datetime) -> datetime:
        local = when.astimezone(self.zone)
        morning = local.replace(
            hour=self.entry.waking_from.hour, minute=self.entry.waking_from.minute, second=0
        )
        if local.time() < self.entry.waking_from:
            return max(when, morning.astimezone(ZoneInfo("UTC")))
        if local.time() >= self.entry.waking_until:
            return (morning + timedelta(days=1)).astimezone(ZoneInfo("UTC"))
        return when


def _at_once(has: set[str]) -> str | None:
    """Return the button that this coach taps without a thought, if the message has it."""
    if {"Yes, assessed", "No, not yet"} <= has:
        return "Yes, assessed"
    if {"Today", "In a week"} <= has:
        return "Today"
    return "All of it" if "All of it" in has else None
