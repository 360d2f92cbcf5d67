"""A wrist that hurts: its report by taps, and what stands of it."""

from scheduler.pain.values import Level, Side, Site
from tests.conversation.athlete_stage import Stage

ALL = "1) 20 20 20\n2) 20 20 20\n3) 15 15 15\n4) 15 15 15\n5) 15 15"
"""The first session's results, all as asked."""


def level(stage: Stage, site: Site = Site.WRIST, side: Side = Side.LEFT) -> Level:
    found = stage.picture().region(site, side)
    return found.level if found else Level.NONE


def score(stage: Stage, site: Site = Site.WRIST, side: Side = Side.LEFT) -> int | None:
    found = stage.picture().region(site, side)
    return found.last_score if found else None


def tap_wrist(stage: Stage, number: str) -> None:
    for label in ("Something hurts", "Wrist", "Left", number):
        stage.tap(label)
