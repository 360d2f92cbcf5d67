"""The coach of the two years: gives the commands of the diary, and says yes to what is complete."""

import random
from datetime import datetime
from functools import partial
from zoneinfo import ZoneInfo

from demo_scenario.coaching import SimulatedCoach
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.phone import Phone
from demo_scenario.team import Team
from demo_scenario.two_years.diary import COACH_SAYS


class TwoYearsCoach(SimulatedCoach):
    """The coach of the diary."""

    def __init__(self, phone: Phone, *, team: Team, chance: random.Random) -> None:
        """Plan the commands of the diary in place of the team's story."""
        super().__init__(team.coach, phone, team=team, chance=chance, start=team.start)
        self._plans.clear()
        for one in COACH_SAYS:
            when = datetime.combine(one.on, one.at, self.zone)
            self.at(when.astimezone(ZoneInfo("UTC")), partial(phone.write, one.text))

    def _confirm_stage(self, message: ShownMessage) -> None:
        """Leave it, where the checklist has opened again since it was proposed."""
        self._tap_soon(message, "No, leave it")
