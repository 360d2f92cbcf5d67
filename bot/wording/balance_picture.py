"""A week's sets in words: on the picture, and as its caption."""

from datetime import date, timedelta

from bot.pictures.values import BalancePicture, BalanceRow, BalanceSide
from bot.wording import coach_week
from bot.wording.coach_pain import direction_word
from bot.wording.coach_week import SetCount, WeekFigures
from bot.wording.pictures import caption_of, named, plain, short_day
from bot.wording.tongue import Tongue
from scheduler.catalogue.values import Arm, Chain, Direction

PAIRS = (
    (Direction.VERTICAL_PUSH, Direction.VERTICAL_PULL),
    (Direction.HORIZONTAL_PUSH, Direction.HORIZONTAL_PULL),
    (Direction.DOWNWARD_PUSH, Direction.UPWARD_PULL),
)
"""Opposites of one day, as the catalogue pairs them."""


def picture(tongue: Tongue, figures: WeekFigures, *, name: str, monday: date) -> BalancePicture:
    """Write the picture."""
    return BalancePicture(
        title=plain(tongue.say("Sets of the week")),
        subtitle=named(name, plain(_span(tongue, monday))),
        planned=plain(tongue.say("planned")),
        done=plain(tongue.say("done")),
        nothing=plain(tongue.say("No sets planned this week.")),
        rows=_rows(tongue, figures) if figures.directions else (),
    )


def caption(tongue: Tongue, figures: WeekFigures, *, name: str, monday: date) -> str:
    """Say what the picture shows to whoever cannot see it."""
    head = tongue.say("<b>{name}</b> · {span}", name=name, span=_span(tongue, monday))
    return caption_of([head, *coach_week.lines(tongue, figures)])


def _span(tongue: Tongue, monday: date) -> str:
    return tongue.say(
        "{first} to {last}",
        first=short_day(tongue, monday),
        last=short_day(tongue, monday + timedelta(days=6)),
    )


def _rows(tongue: Tongue, figures: WeekFigures) -> tuple[BalanceRow, ...]:
    directions = [
        (
            (direction_word(tongue, left), figures.directions.get(left)),
            (direction_word(tongue, right), figures.directions.get(right)),
        )
        for left, right in PAIRS
    ]
    pairs = [
        ((tongue.say("push"), figures.push), (tongue.say("pull"), figures.pull)),
        *(pair for pair in directions if pair[0][1] or pair[1][1]),
        (
            (tongue.say("weight in hand"), figures.chains.get(Chain.OPEN)),
            (tongue.say("hand fixed"), figures.chains.get(Chain.CLOSED)),
        ),
        (
            (tongue.say("arm straight"), figures.arms.get(Arm.STRAIGHT)),
            (tongue.say("arm bent"), figures.arms.get(Arm.BENT)),
        ),
    ]
    return tuple(BalanceRow(left=_side(*left), right=_side(*right)) for left, right in pairs)


def _side(words: str, count: SetCount | None) -> BalanceSide:
    found = count or SetCount()
    return BalanceSide(words=plain(words), done=found.done, planned=found.planned)
