"""Marit at her phone for two years: trains, is ill, hurts, forgets, and goes on holiday."""

from collections.abc import Callable
from datetime import date, datetime, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from demo_scenario.athletes import SimulatedAthlete
from demo_scenario.eye import SeenSession, labels
from demo_scenario.intake_answers import IntakeAnswer
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.phone import Phone
from demo_scenario.story import Hurts
from demo_scenario.two_years.diary import ACHES, ATHLETE_SAYS, EVENT_IN_INTAKE, ILL, Ache

SAYS_WHY = 0.5  # [share of missed sessions] ch: the others pass in silence
TRY = "a try of your checklist: end the set when the position goes"
READS_AS = "stop with about 0 s left"

ANSWERS = {
    "How long have you trained": IntakeAnswer(taps=("Under 6 months",)),
    "What can you use there": IntakeAnswer(
        taps=(
            "Box or sturdy chair",
            "Bar to hang from",
            "Low bar, hip height",
            "Parallel bars",
            "Dumbbells",
            "Bands",
            "Done",
        )
    ),
    "Which bands": IntakeAnswer(taps=("Light", "Medium", "Heavy", "Done")),
    "goal or an event": IntakeAnswer(text=EVENT_IN_INTAKE),
}


class TryReadingPhone(Phone):
    """A phone whose owner reads a try as what it is: a set that is ended by the position alone."""

    def glance(self) -> tuple[ShownMessage, ...]:
        """Return the bottom of the chat."""
        return tuple(
            one.model_copy(update={"text": one.text.replace(TRY, READS_AS)})
            for one in super().glance()
        )


class TwoYearsAthlete(SimulatedAthlete):
    """The athlete of the diary."""

    _aches: list[Ache]

    def plan_diary(self) -> None:
        """Plan what is written of her own accord, in place of the team's story."""
        self._plans.clear()
        for one in ATHLETE_SAYS:
            when = datetime.combine(one.on, one.at, self.zone)
            self.at(when.astimezone(ZoneInfo("UTC")), partial(self.phone.write, one.text))
        self._aches = list(ACHES)

    def _today(self) -> date:
        if self.now is None:
            raise RuntimeError(f"{self.name} has not looked at the phone yet")
        return self.now.astimezone(self.zone).date()

    def _is_ill(self) -> bool:
        return any(first <= self._today() <= last for first, last in ILL)

    def _plan_session(self, session: SeenSession) -> None:
        is_reminder = not session.items  # whoever forgot the session forgets its reminder too
        if is_reminder or session.message_id in self._sessions_seen or self.now is None:
            return
        self._sessions_seen.add(session.message_id)
        when = self.now + timedelta(
            minutes=self.entry.replies_after_min + self.chance.randint(-9, 9)
        )
        if self._is_ill():
            self.at(when, lambda: self._cant(session))
        elif self.chance.random() <= self.entry.keeps:
            self.at(when, lambda: self._train(session.message_id))
        elif self.chance.random() < SAYS_WHY:
            self.at(when, lambda: self._cant(session))

    def _train(self, message_id: int) -> None:
        super()._train(message_id)
        self._hurts = None
        if self._aches and self._aches[0].on <= self._today():
            self._hurts = self._as_asked(self._aches.pop(0))

    def _as_asked(self, ache: Ache) -> Hurts:
        return Hurts(
            part=self.entry.part,
            session=self.trained,
            site=ache.site,
            side=ache.side,
            score=ache.score,
            next_morning=ache.next_morning,
        )

    def _questions(self) -> list[tuple[str, Callable[[ShownMessage], str | None]]]:
        own: list[tuple[str, Callable[[ShownMessage], str | None]]] = [
            ("What is it today?", lambda _: "Ill" if self._is_ill() else "No time"),
        ]
        return [*own, *super()._questions()]

    def _answer(self, message: ShownMessage) -> None:
        for words, answer in ANSWERS.items():
            if words in message.text and "Looks right" not in labels(message):
                self._answer_intake(message.message_id, answer)
                return
        super()._answer(message)
