"""The coach at the other end: answers alerts, decides, writes back, and looks at the roster."""

import random
import re
from datetime import date, datetime, time, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from demo_scenario import acting
from demo_scenario.eye import labels
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.phone import Phone
from demo_scenario.player import Player
from demo_scenario.scenes.the_season import SCENES
from demo_scenario.story import COACH_SENDS, answer_to
from demo_scenario.team import AthleteEntry, CoachEntry, Part, Team

LINK_IN_LINE = re.compile(r"^(?P<name>\w+): \S+start=(?P<payload>[A-Za-z0-9_-]+)", re.MULTILINE)
SINGLY_DAYS = 28  # [days] ch: then decisions on stages are collected
TOGETHER_EVERY_DAYS = 28  # [days] ch
TOGETHER_AT = time(18, 30)  # [wall time] ch: half an hour after the list was looked at
CLIP_ANSWERS = ("Own words", "Looks right", "voice", "Looks right")
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
        self._start = start
        self._clips = 0
        acting.plan(self, SCENES, start=start, zone=self.zone)
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
        elif "Own words" in has:
            self._answer_clip(message)
        elif "Send as it is" in has:
            self._tap_later(message, "Send as it is", minutes=self.entry.looks_after_min)
        elif "Answer" in has:
            self._answer_words(message)
        elif "No, leave it" in has:
            self._confirm_stage(message)
        elif (at_once := _at_once(has)) is not None:
            self._tap_soon(message, at_once)
        elif message.text.startswith("Write now: your next"):
            self._write(message)
        else:
            self._about_tests(message)

    def _about_tests(self, message: ShownMessage) -> None:
        """Let people start and tests come, and take the stage that they suggest."""
        wanted = ("With the next session", "Set stage", "Guardian agrees", "I have looked")
        for one in labels(message):
            if one.startswith("Review: "):
                self._tap_later(message, one, minutes=self.entry.looks_after_min)
        if any(one.name in message.text for one in self._by_file()):
            wanted = (*wanted[:1], "Leave stage", *wanted[2:])  # these two go by the checklist
        label = next((one for one in labels(message) if one.startswith(wanted)), None)
        if label is not None:
            self._tap_later(message, label, minutes=self.entry.looks_after_min)

    def _by_file(self) -> list[AthleteEntry]:
        return [one for one in self._team.athletes if one.part is Part.BY_FILE]

    def _decide(self, message: ShownMessage) -> None:
        """Say yes to what the rules propose; a complete checklist is what was waited for."""
        yes = next(label for label in labels(message) if label != "Not yet")
        if self.now is None:
            return
        today = (self.now.astimezone(self.zone).date() - self._start).days
        if today < SINGLY_DAYS:
            self._tap_later(message, yes, minutes=self.entry.looks_after_min)
            return
        on = today + TOGETHER_EVERY_DAYS - 1 - today % TOGETHER_EVERY_DAYS
        when = datetime.combine(self._start + timedelta(days=on), TOGETHER_AT, self.zone)
        at = max(when.astimezone(ZoneInfo("UTC")), self.now + timedelta(minutes=5))
        self.at(at, partial(self._tap_if_open, message, yes))

    def _tap_if_open(self, message: ShownMessage, yes: str) -> None:
        """Decide what the list of decisions has not decided already."""
        said = (yes, message.text.partition("\n")[0])
        names = [one.name for one in self._team.athletes if any(one.name in text for text in said)]
        stage = re.search(r"\d", yes)
        done = any(
            "moved up" in one.text and any(name in one.text for name in names)
            for one in self.phone.glance()
        )
        if done or self.phone.tap(message.message_id, yes) or not names or stage is None:
            return
        # The message is far up by now.
        self.phone.write(f"/stage {names[0]} {stage[0]} the checklist is complete")

    def _answer_clip(self, message: ShownMessage) -> None:
        """Answer in own words, by a stock cue, by voice, and so on in turn."""
        if "waiting" in message.text:
            return  # looked up in the list; the clip's own message is answered
        self._heard[message.text.split()[0]] = message.text
        how = CLIP_ANSWERS[self._clips % len(CLIP_ANSWERS)]
        self._clips += 1
        if how != "voice":
            self._tap_later(message, how, minutes=self.entry.looks_after_min)
        elif self.now is not None:
            when = self._awake(self.now + timedelta(minutes=self.entry.looks_after_min))
            self.at(when, partial(self._speak_on, message.message_id))

    def _speak_on(self, message_id: int) -> None:
        self.phone.person.send_voice(reply_to_message_id=message_id)

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
        for found in LINK_IN_LINE.finditer(message.text):
            self.links[found["name"]] = found["payload"]
        for athlete in self._team.athletes:
            if athlete.name in message.text and not self.links:
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
    if "In a week" in has:
        # Today, or the first day that the wait after a fever leaves open.
        return min(has - {"In a week"}, default=None)
    known = ("All of it", "Send all the same")
    return next((one for one in known if one in has), None)
