"""``/swap NAME MOVEMENT for MOVEMENT reason``: another movement the next time it comes."""

import re
from collections.abc import Sequence

from bot.acts import coach_question
from bot.acts.about_athlete import Arguments, about_tapped, entries
from bot.acts.find_athlete import Named, subject_of
from bot.acts.find_movement import MovementsNamed, movements_named
from bot.acts.plan_change import begin
from bot.acts.plan_edits import item_change, stand_ins
from bot.acts.plan_weeks import ComingDay, coming_days, coming_keys
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_swap as words
from storage.records.people import Person
from storage.records.training import ItemRecord

OUT, IN = "swap.out", "swap.in"
FOR = re.compile(r"\s+(?:for|to|with|por)\s+", re.IGNORECASE)
CHOICES_MOST = 10  # [buttons] ch: one screen
INSTEAD_MOST = 8  # [buttons] ch


def swap(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Read what goes and what comes; whatever is missing or matches twice is asked by buttons."""
    days = coming_days(turn, named.person, named.athlete)
    coming = coming_keys(days)
    tongue = turn.tongue(coach)
    if not coming:
        turn.say(coach, words.nothing_coming(tongue, name=named.person.name))
        return Outcome.COMMAND
    first, *behind = FOR.split(named.rest, maxsplit=1)
    out = movements_named(
        first,
        movements=turn.house.library.movements.values(),
        tongue=turn.tongue(coach),
        among=coming,
    )
    if len(out.found) != 1:
        return _ask_out(turn, coach, named, out, coming, rest=behind[0] if behind else "")
    key = out.found[0].key
    if key not in coming:
        text = words.not_coming(tongue, name=named.person.name, key=key)
        return ask_movement(turn, coach, named, text, keys=coming, act=OUT)
    if not behind:
        return _ask_in(turn, coach, named, days, key, why=out.rest)
    return _with_second(turn, coach, named, days, key, behind[0])


def _ask_out(
    turn: Turn,
    coach: Person,
    named: Named,
    out: MovementsNamed,
    coming: Sequence[str],
    *,
    rest: str,
) -> Outcome:
    tongue = turn.tongue(coach)
    if not named.rest.strip():
        text = words.which_out(tongue, name=named.person.name)
        return ask_movement(turn, coach, named, text, keys=coming, act=OUT)
    if not out.found:
        text = words.not_known(tongue, asked=out.asked, example=words.SWAP_EXAMPLE)
        return ask_movement(turn, coach, named, text, keys=coming, act=OUT, rest=rest)
    keys = [one.key for one in out.found]
    text = words.which_of(tongue, asked=out.asked)
    return ask_movement(turn, coach, named, text, keys=keys, act=OUT, rest=rest)


def ask_movement(
    turn: Turn,
    coach: Person,
    named: Named,
    text: str,
    *,
    keys: Sequence[str],
    act: str,
    rest: str = "",
    out: str = "",
) -> Outcome:
    """Ask for a movement, a button each; ``rest`` are words that still belong to the command."""
    tongue = turn.tongue(coach)
    about = {"athlete": named.person.id, "rest": rest, "out": out}
    turn.say(
        coach,
        text,
        taps=[
            [Tap(words.movement_label(tongue, key), act, {**about, "key": key})]
            for key in keys[:CHOICES_MOST]
        ],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def next_with(days: Sequence[ComingDay], key: str) -> tuple[ComingDay, ItemRecord] | None:
    """Return the next place of a movement that may still be changed."""
    return next(
        (
            (day, item)
            for day in days
            if day.is_open
            for item in day.items
            if item.movement_key == key and not item.is_reported
        ),
        None,
    )


def _ask_in(
    turn: Turn, coach: Person, named: Named, days: Sequence[ComingDay], key: str, *, why: str
) -> Outcome:
    tongue, place = turn.tongue(coach), next_with(days, key)
    choices = stand_ins(turn, named, *place)[:INSTEAD_MOST] if place is not None else ()
    if not choices:
        turn.say(coach, words.swap_usage(tongue), subject=subject_of(named.person))
        return Outcome.NOT_UNDERSTOOD
    return ask_movement(
        turn,
        coach,
        named,
        words.which_in(tongue, key=key),
        keys=[one.key for one in choices],
        act=IN,
        rest=why,
        out=key,
    )


def _with_second(
    turn: Turn, coach: Person, named: Named, days: Sequence[ComingDay], key: str, text: str
) -> Outcome:
    tongue, place = turn.tongue(coach), next_with(days, key)
    fitting = {one.key for one in stand_ins(turn, named, *place)} if place else set()
    new = movements_named(
        text,
        movements=turn.house.library.movements.values(),
        tongue=turn.tongue(coach),
        among=fitting,
    )
    if not new.found:
        turn.say(coach, words.not_known(tongue, asked=new.asked, example=words.SWAP_EXAMPLE))
        return _ask_in(turn, coach, named, days, key, why="")
    if [one.key for one in new.found] == [key]:
        turn.say(coach, words.same_movement(tongue, key=key))
        return _ask_in(turn, coach, named, days, key, why=new.rest)
    if len(new.found) > 1:
        keys = [one.key for one in new.found]
        said = words.which_of(tongue, asked=new.asked)
        return ask_movement(turn, coach, named, said, keys=keys, act=IN, rest=new.rest, out=key)
    return _change(turn, coach, named, days, key, new.found[0].key, why=new.rest)


def _change(
    turn: Turn,
    coach: Person,
    named: Named,
    days: Sequence[ComingDay],
    key: str,
    to: str,
    *,
    why: str,
) -> Outcome:
    place = next_with(days, key)
    if place is None:
        text = words.not_coming(turn.tongue(coach), name=named.person.name, key=key)
        return ask_movement(turn, coach, named, text, keys=coming_keys(days), act=OUT)
    return begin(turn, coach, named, item_change(named, *place, to=to), why=why)


@about_tapped
def out_chosen(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """What goes was tapped; what comes may have been written before."""
    coach_question.close(turn, coach)
    days = coming_days(turn, named.person, named.athlete)
    key, rest = str(arguments["key"]), str(arguments["rest"])
    if key not in coming_keys(days):
        text = words.not_coming(turn.tongue(coach), name=named.person.name, key=key)
        return ask_movement(turn, coach, named, text, keys=coming_keys(days), act=OUT)
    if rest:
        return _with_second(turn, coach, named, days, key, rest)
    return _ask_in(turn, coach, named, days, key, why="")


@about_tapped
def in_chosen(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """What comes was tapped."""
    days = coming_days(turn, named.person, named.athlete)
    key, to = str(arguments["out"]), str(arguments["key"])
    return _change(turn, coach, named, days, key, to, why=str(arguments["rest"]))


command, picked = entries(swap, act="swap.who", example=words.SWAP_EXAMPLE)

TAPS = {"swap.who": picked, OUT: out_chosen, IN: in_chosen}
