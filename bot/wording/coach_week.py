"""A week in figures: sets by direction, and what is set against what."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from bot.wording.coach_pain import direction_word
from bot.wording.tongue import Tongue
from scheduler.catalogue.values import Arm, Chain, Direction
from scheduler.training.session_load import Undefined, WeekLoad


@dataclass(frozen=True)
class SetCount:
    """Sets done and sets planned."""

    done: int = 0
    planned: int = 0

    def __add__(self, other: "SetCount") -> "SetCount":
        """Add two counts."""
        return SetCount(self.done + other.done, self.planned + other.planned)


@dataclass(frozen=True)
class WeekFigures:
    """Main sets of one week by direction, kind and arm; extra work is not counted."""

    directions: Mapping[Direction, SetCount] = field(default_factory=dict)
    chains: Mapping[Chain, SetCount] = field(default_factory=dict)
    arms: Mapping[Arm, SetCount] = field(default_factory=dict)

    @property
    def push(self) -> SetCount:
        """All pushing sets."""
        return _sum(count for one, count in self.directions.items() if one.is_push)

    @property
    def pull(self) -> SetCount:
        """All pulling sets."""
        return _sum(count for one, count in self.directions.items() if not one.is_push)


def _sum(counts: Iterable[SetCount]) -> SetCount:
    return sum(counts, start=SetCount())


def lines(tongue: Tongue, figures: WeekFigures) -> list[str]:
    """Write the week's sets: a line a direction, then the balances."""
    if not any(one.planned or one.done for one in figures.directions.values()):
        return [tongue.say("No sets planned this week.")]
    found = [
        tongue.say(
            "{direction}: {done} of {planned}",
            direction=direction_word(tongue, one),
            done=count.done,
            planned=count.planned,
        )
        for one in Direction
        if (count := figures.directions.get(one)) is not None
    ]
    return [*found, push_to_pull(tongue, figures), *_kinds(tongue, figures)]


def push_to_pull(tongue: Tongue, figures: WeekFigures) -> str:
    """Write pushing against pulling, as planned and as done."""
    return tongue.say(
        "push and pull: {push} and {pull} planned, {push_done} and {pull_done} done",
        push=figures.push.planned,
        pull=figures.pull.planned,
        push_done=figures.push.done,
        pull_done=figures.pull.done,
    )


def _kinds(tongue: Tongue, figures: WeekFigures) -> list[str]:
    chains = [figures.chains.get(one, SetCount()).planned for one in (Chain.OPEN, Chain.CLOSED)]
    arms = [figures.arms.get(one, SetCount()).planned for one in (Arm.STRAIGHT, Arm.BENT)]
    return [
        tongue.say(
            "weight in the hand: {open}, hand fixed: {closed}", open=chains[0], closed=chains[1]
        ),
        tongue.say("arm straight: {straight}, bent: {bent}", straight=arms[0], bent=arms[1]),
    ]


def load_line(tongue: Tongue, load: WeekLoad) -> str:
    """Write the load of seven days, effort times minutes, and how even the days were."""
    if isinstance(load.monotony, Undefined):
        return tongue.say("load of 7 days {load}", load=round(load.load))
    return tongue.say(
        "load of 7 days {load}, monotony {monotony}",
        load=round(load.load),
        monotony=round(load.monotony, 1),
    )
