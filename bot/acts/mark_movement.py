"""``/plan NAME pin MOVEMENT reason``: pinned, banned or freed by words; alone it is the view."""

import re

from bot.acts import show_coming
from bot.acts.about_athlete import Arguments, about_tapped, entries
from bot.acts.find_athlete import Named
from bot.acts.find_movement import movements_named
from bot.acts.plan_change import begin, replacing
from bot.acts.plan_weeks import coming_days, coming_keys
from bot.acts.swap_movement import ask_movement
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import coach_plan as words
from bot.wording import coach_swap
from scheduler.training.coach_plan import Ban, Pin, PlanChange, StandingSwap
from storage.records.people import Athlete, Person

MARK = "plan.mark"
MARKS = {"fijar": "pin", "vetar": "ban", "liberar": "free"}
WORDS = re.compile(
    r"\s*(?P<mark>pin|ban|free|fijar|vetar|liberar)\b\s*(?P<rest>.*)", re.IGNORECASE | re.DOTALL
)


def show_or_mark(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Show the coming weeks; with a word and a movement behind the name, mark the movement."""
    if not named.rest.strip():
        return show_coming.show(turn, coach, named)
    said = WORDS.fullmatch(named.rest)
    if said is None:
        turn.say(coach, words.mark_usage(turn.tongue(coach)))
        return Outcome.NOT_UNDERSTOOD
    mark = said["mark"].lower()
    mark = MARKS.get(mark, mark)
    coming = coming_keys(coming_days(turn, named.person, named.athlete))
    meant = movements_named(
        said["rest"],
        movements=turn.house.library.movements.values(),
        tongue=turn.tongue(coach),
        among=coming,
    )
    if len(meant.found) == 1:
        return _mark(turn, coach, named, mark, meant.found[0].key, why=meant.rest)
    tongue = turn.tongue(coach)
    text = (
        coach_swap.which_of(tongue, asked=meant.asked)
        if meant.found
        else coach_swap.not_known(tongue, asked=meant.asked, example=words.MARK_EXAMPLE)
    )
    keys = [one.key for one in meant.found] or coming
    rest = meant.rest if meant.found else ""
    return ask_movement(turn, coach, named, text, keys=keys, act=MARK, rest=rest, out=mark)


def _mark(turn: Turn, coach: Person, named: Named, mark: str, key: str, *, why: str) -> Outcome:
    change = _change(named.athlete, mark, key)
    if not change.add and not change.remove:
        text = words.marked_already(turn.tongue(coach), name=named.person.name, key=key)
        turn.say(coach, text)
        return Outcome.NOT_UNDERSTOOD
    return begin(turn, coach, named, change, why=why)


def _change(athlete: Athlete, mark: str, key: str) -> PlanChange:
    """Return what a word changes; empty where it stands so already."""
    standing = athlete.profile.coach_plan
    if mark == "free":
        gone = tuple(
            one
            for one in standing.entries
            if (isinstance(one, Pin | Ban) and one.movement_key == key)
            or (isinstance(one, StandingSwap) and key in {one.was, one.movement_key})
        )
        return PlanChange(remove=gone)
    marked = standing.pinned if mark == "pin" else standing.banned
    if key in marked:
        return PlanChange()
    entry = Pin(movement_key=key) if mark == "pin" else Ban(movement_key=key)
    return replacing(athlete, [entry])


@about_tapped
def chosen(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """The movement was tapped."""
    mark, key = str(arguments["out"]), str(arguments["key"])
    return _mark(turn, coach, named, mark, key, why=str(arguments["rest"]))


command, picked = entries(show_or_mark, act="plan", example=words.EXAMPLE)

TAPS = {"plan": picked, MARK: chosen}
