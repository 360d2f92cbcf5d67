"""The hidden body over years: it has further to go than in the four weeks of the team."""

from demo_scenario.hidden import HiddenBody
from scheduler.catalogue.values import Movement

GAIN_AN_EXPOSURE = 0.016  # [log units] ch: slows as it adds up
GAIN_MOST = 0.75  # [log units] ch: about twice what the first day could do


class GrowingBody(HiddenBody):
    """A newcomer's body, which does not stop at what a month can bring."""

    def end_exercise(self, movement: Movement) -> None:
        """Gain from a finished item: less, the more was gained already."""
        family = self._families[movement.family]
        family.gained += GAIN_AN_EXPOSURE * max(0.0, 1 - family.gained / GAIN_MOST)
