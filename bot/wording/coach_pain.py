"""Pain in words for the coach: places, levels, what is left out. Never a condition."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from bot.wording.flag_words import flag_word
from bot.wording.movement_names import movement_name
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.catalogue.values import Demand, Direction, Measure
from scheduler.pain.values import MIDLINE, LeftOut, Level, Side, Site

SITES: Mapping[Site, Template] = {
    Site.NECK: "neck",
    Site.SHOULDER_FRONT: "front of the shoulder",
    Site.SHOULDER_TOP: "top of the shoulder",
    Site.SHOULDER_BACK: "back of the shoulder",
    Site.UPPER_ARM: "upper arm",
    Site.ELBOW_OUTER: "outside of the elbow",
    Site.ELBOW_INNER: "inside of the elbow",
    Site.ELBOW_BACK: "back of the elbow",
    Site.FOREARM: "forearm",
    Site.WRIST: "wrist",
    Site.HAND: "hand",
    Site.CHEST_MUSCLE: "chest muscle",
    Site.UPPER_BACK: "upper back",
    Site.ELSEWHERE: "elsewhere",
}
LEFT: Mapping[Site, Template] = {
    Site.SHOULDER_FRONT: "left shoulder (front)",
    Site.SHOULDER_TOP: "left shoulder (top)",
    Site.SHOULDER_BACK: "left shoulder (back)",
    Site.UPPER_ARM: "left upper arm",
    Site.ELBOW_OUTER: "left elbow (outside)",
    Site.ELBOW_INNER: "left elbow (inside)",
    Site.ELBOW_BACK: "left elbow (back)",
    Site.FOREARM: "left forearm",
    Site.WRIST: "left wrist",
    Site.HAND: "left hand",
    Site.CHEST_MUSCLE: "left chest muscle",
    Site.UPPER_BACK: "left upper back",
}
RIGHT: Mapping[Site, Template] = {
    Site.SHOULDER_FRONT: "right shoulder (front)",
    Site.SHOULDER_TOP: "right shoulder (top)",
    Site.SHOULDER_BACK: "right shoulder (back)",
    Site.UPPER_ARM: "right upper arm",
    Site.ELBOW_OUTER: "right elbow (outside)",
    Site.ELBOW_INNER: "right elbow (inside)",
    Site.ELBOW_BACK: "right elbow (back)",
    Site.FOREARM: "right forearm",
    Site.WRIST: "right wrist",
    Site.HAND: "right hand",
    Site.CHEST_MUSCLE: "right chest muscle",
    Site.UPPER_BACK: "right upper back",
}
"""The places of one arm, as people call them."""
LEVELS: Mapping[Level, Template] = {
    Level.NONE: "nothing",
    Level.WATCH: "watched",
    Level.EASE: "eased",
    Level.REST: "rested",
    Level.CLINICIAN: "see a clinician",
    Level.EMERGENCY: "emergency",
}
DEMANDS: Mapping[Demand, Template] = {
    Demand.OVERHEAD: "overhead work",
    Demand.WRIST_EXTENSION: "weight on a bent-back wrist",
    Demand.GRIP: "gripping",
    Demand.ELBOW_FLEXION: "bending the elbow under load",
    Demand.ELBOW_EXTENSION: "straightening the elbow under load",
    Demand.SHOULDER_EXTENSION: "the arm behind the body under load",
    Demand.CROSS_BODY: "the arm across the body",
    Demand.END_RANGE_ROTATION: "rotation at its end",
    Demand.TRACTION: "hanging and heavy carrying",
    Demand.IMPACT: "catching and landing on the hands",
    Demand.INVERSION: "head-down positions",
    Demand.NECK_LOAD: "load on the neck",
}
MEASURES: Mapping[Measure, Template] = {
    Measure.HOLD_S: "holds",
    Measure.REPS: "repetitions",
    Measure.CARRY_M: "carries",
    Measure.CARRY_S: "carries",
}
DIRECTIONS: Mapping[Direction, Template] = {
    Direction.VERTICAL_PUSH: "vertical push",
    Direction.HORIZONTAL_PUSH: "horizontal push",
    Direction.DOWNWARD_PUSH: "dips and supports",
    Direction.VERTICAL_PULL: "vertical pull",
    Direction.HORIZONTAL_PULL: "horizontal pull",
    Direction.UPWARD_PULL: "shrugs and carries",
}


@dataclass(frozen=True)
class PlaceFacts:
    """One place that hurts or hurt: where, how it is ranked, the last score [0-10].

    ``flag`` is the key of a sign that a person must look at; then the place says nothing.
    """

    site: Site
    side: Side
    level: Level
    score: float | None = None
    flag: str | None = None


def level_word(tongue: Tongue, level: Level) -> str:
    """Name a level in the coach's words."""
    return tongue.say(LEVELS[level])


def direction_word(tongue: Tongue, direction: Direction) -> str:
    """Name a direction in plain words."""
    return tongue.say(DIRECTIONS[direction])


def place(tongue: Tongue, site: Site, side: Side) -> str:
    """Name a place: ``left wrist``, ``neck``."""
    name = tongue.say(SITES[site])
    if site in MIDLINE:
        return name
    match side:
        case Side.LEFT:
            return tongue.say(LEFT[site])
        case Side.RIGHT:
            return tongue.say(RIGHT[site])
        case _:
            return tongue.say("{place}, both sides", place=name)


def where_of(tongue: Tongue, facts: PlaceFacts) -> str:
    """Name the place, or the sign where there is one."""
    if facts.flag is not None:
        return flag_word(tongue, facts.flag)
    return place(tongue, facts.site, facts.side)


def place_line(tongue: Tongue, facts: PlaceFacts) -> str:
    """Write a place with its score and level: ``left wrist 4 of 10 · eased``."""
    where = where_of(tongue, facts)
    level = level_word(tongue, facts.level)
    if facts.score is None:
        return tongue.say("{where} · {level}", where=where, level=level)
    return tongue.say(
        "{where} {score} of 10 · {level}",
        where=where,
        score=tongue.number(facts.score),
        level=level,
    )


EVERY_WAY = frozenset((one, arm) for one in Direction for arm in (Side.LEFT, Side.RIGHT))


def left_out(tongue: Tongue, what: LeftOut) -> str:
    """Write what is left out, arm by arm; empty when nothing is."""
    if what.everything or what.directions == EVERY_WAY:
        return tongue.say("all upper-body training")
    demands = _by_name((tongue.say(DEMANDS[demand]), side) for demand, side in what.demands)
    directions = _by_name((direction_word(tongue, one), side) for one, side in what.directions)
    measures = _by_name((tongue.say(MEASURES[one]), side) for one, side in what.measures)
    found = (*demands, *directions, *measures)
    names = [_with_side(tongue, name, sides) for name, sides in found]
    movements = (
        tongue.say("{name}", name=movement_name(tongue, key)) for key in sorted(what.movements)
    )
    return ", ".join([*names, *movements])


def _by_name(pairs: Iterable[tuple[str, Side]]) -> list[tuple[str, frozenset[Side]]]:
    sides: dict[str, set[Side]] = {}
    for name, side in pairs:
        sides.setdefault(name, set()).add(side)
    return [(name, frozenset(found)) for name, found in sorted(sides.items())]


def _with_side(tongue: Tongue, name: str, sides: frozenset[Side]) -> str:
    if sides == {Side.LEFT}:
        return tongue.say("{what} (left)", what=Marked(name))
    if sides == {Side.RIGHT}:
        return tongue.say("{what} (right)", what=Marked(name))
    return name
