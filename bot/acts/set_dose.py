"""``/dose NAME movement 4x30 @ 12 reason``: a dose by hand, until the movement is next done."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.acts import coach_question
from bot.acts.about_athlete import Arguments, about_tapped, entries
from bot.acts.checklist import local_today
from bot.acts.dose_today import profile_on
from bot.acts.find_athlete import Named, subject_of
from bot.acts.find_movement import movements_named
from bot.acts.plan_change import begin, replacing
from bot.acts.plan_weeks import ComingDay, coming_days, coming_keys, dose_as_sent
from bot.acts.swap_movement import ask_movement, next_with
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_swap as words
from bot.wording.plan_entries import dose as dose_in_words
from bot.wording.plan_entries import resistance
from scheduler.catalogue.values import Measure, Movement
from scheduler.training.coach_plan import DoseSet
from scheduler.training.loads import rungs
from scheduler.training.values import Dose, Rung
from storage.queries import training
from storage.records.people import Person

WHICH, AMOUNT = "dose.which", "dose.amount"
LB_IN_KG = 0.45359237  # [kg/lb] definition
NEAR_KG = 0.05  # [kg] ch: pounds are rounded when they are written
POUNDS = frozenset({"lb", "lbs"})
UNITS_OF = {
    "s": {Measure.HOLD_S, Measure.CARRY_S},
    "reps": {Measure.REPS},
    "m": {Measure.CARRY_M},
}
STEP_OF = {Measure.REPS: 1}  # [repetitions] ch: what one tap changes
STEP_ELSE = 5  # [s or m] ch
DOSE = re.compile(
    r"(?P<sets>\d{1,3})\s*[x×*]\s*(?P<target>\d{1,4})\s*"
    r"(?P<unit>seconds?|secs?|s|reps?|metres?|meters?|m)?\b"
    r"(?:\s*(?:@|at|mit|con)\s*(?P<load>\d{1,3}(?:[.,]\d{1,2})?\s*(?P<mass>kg|lbs?)?"
    r"|[a-z]+(?:\s+band)?|none|0))?",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class Written:
    """A dose as it was written; ``load`` None where none was."""

    sets: int
    target: int
    unit: str | None
    load: str | None
    why: str


def set_dose(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Read movement, sets × amount and load; whatever is missing is asked by buttons."""
    days = coming_days(turn, named.person, named.athlete)
    coming = coming_keys(days)
    tongue = turn.tongue(coach)
    found = DOSE.search(named.rest)
    name = named.rest[: found.start()] if found else named.rest
    meant = movements_named(
        name,
        movements=turn.house.library.movements.values(),
        tongue=turn.tongue(coach),
        among=coming,
    )
    written = named.rest[found.start() :] if found else ""
    if len(meant.found) == 1:
        return _for_movement(turn, coach, named, days, meant.found[0], written)
    if not name.strip():
        text = words.which_dose(tongue, name=named.person.name)
        keys: Sequence[str] = coming
    elif not meant.found:
        text = words.not_known(tongue, asked=meant.asked, example=words.DOSE_EXAMPLE)
        keys = coming
    else:
        text = words.which_of(tongue, asked=meant.asked)
        keys = [one.key for one in meant.found]
    return ask_movement(turn, coach, named, text, keys=keys, act=WHICH, rest=written)


def _for_movement(
    turn: Turn,
    coach: Person,
    named: Named,
    days: Sequence[ComingDay],
    movement: Movement,
    text: str,
) -> Outcome:
    written = read(text)
    if written is None:
        return _ask_amount(turn, coach, named, days, movement)
    tongue = turn.tongue(coach)
    if written.unit is not None and movement.measure not in UNITS_OF[written.unit]:
        turn.say(coach, words.not_in_that_unit(tongue, key=movement.key, measure=movement.measure))
        return Outcome.NOT_UNDERSTOOD
    on = _from_day(turn, named.person, movement.key)
    now = _decided(turn, named, days, movement)
    rung = _rung(coach, named, movement, written.load, now=now, on=on)
    if rung is None:
        owned = _owned(turn, coach, named, movement, on)
        turn.say(coach, words.owned_loads(tongue, key=movement.key, loads=owned))
        return Outcome.NOT_UNDERSTOOD
    if not written.sets or not written.target:
        turn.say(coach, words.dose_usage(tongue, measure=movement.measure))
        return Outcome.NOT_UNDERSTOOD
    entry = DoseSet(
        movement_key=movement.key,
        from_on=on,
        sets=written.sets,
        target=written.target,
        rung=rung,
    )
    return begin(turn, coach, named, replacing(named.athlete, [entry]), why=written.why)


def read(text: str) -> Written | None:
    """Read ``4x30 @ 12 reason``; None where there are no sets × amount."""
    found = DOSE.match(text.strip())
    if found is None:
        return None
    unit = (found["unit"] or "").lower()
    return Written(
        sets=int(found["sets"]),
        target=int(found["target"]),
        unit=_unit(unit),
        load=found["load"],
        why=text.strip()[found.end() :].strip(" ,.:;—-"),
    )


def _unit(said: str) -> str | None:
    if not said:
        return None
    if said.startswith("s"):
        return "s"
    return "reps" if said.startswith("r") else "m"


def _from_day(turn: Turn, person: Person, key: str) -> date:
    """Return the first day that a dose can hold for: tomorrow where it is done today already."""
    today = local_today(turn, person)
    sessions = training.sessions_between(turn.tx, person.id, first=today, last=today)
    is_done = any(
        item.movement_key == key and bool(item.sets) for one in sessions for item in one.items
    )
    return today + timedelta(days=1) if is_done else today


def _decided(
    turn: Turn, named: Named, days: Sequence[ComingDay], movement: Movement
) -> Dose | None:
    place = next_with(days, movement.key)
    if place is None:
        return None
    return dose_as_sent(turn, named.person, named.athlete, *place).value


def _rung(
    coach: Person,
    named: Named,
    movement: Movement,
    load: str | None,
    *,
    now: Dose | None,
    on: date,
) -> Rung | None:
    """Return the resistance that is meant: as it is now where none is named; None if not owned."""
    owned = rungs(movement, profile=profile_on(named.athlete, on))
    if load is None:
        return now.rung if now is not None else next(iter(owned), None)
    said = load.strip().lower()
    band = said.removesuffix("band").strip()
    for rung in owned:
        if rung.band is not None and rung.band.lower() == band:
            return rung
    figure = re.match(r"\d+(?:[.,]\d+)?", said)
    kg = float(figure.group().replace(",", ".")) if figure else 0.0
    is_pounds = any(said.endswith(unit) for unit in POUNDS) or (
        not said.endswith("kg") and coach.units == "lb"
    )
    kg = kg * LB_IN_KG if is_pounds else kg
    near = NEAR_KG if not is_pounds else 10 * NEAR_KG
    is_none = said in {"none", "0"} or not kg
    return next(
        (
            rung
            for rung in owned
            if rung.band is None
            and (not rung.load_kg if is_none else abs((rung.load_kg or 0.0) - kg) <= near)
        ),
        None,
    )


def _owned(turn: Turn, coach: Person, named: Named, movement: Movement, on: date) -> list[str]:
    tongue = turn.tongue(coach)
    found = rungs(movement, profile=profile_on(named.athlete, on))
    return [said for rung in found if (said := resistance(tongue, rung, movement))]


def _ask_amount(
    turn: Turn, coach: Person, named: Named, days: Sequence[ComingDay], movement: Movement
) -> Outcome:
    """Offer doses near the one that the rules have; without one, say how to write it."""
    tongue, now = turn.tongue(coach), _decided(turn, named, days, movement)
    if now is None:
        turn.say(coach, words.dose_usage(tongue, measure=movement.measure))
        return Outcome.NOT_UNDERSTOOD
    on = _from_day(turn, named.person, movement.key)
    current = DoseSet(
        movement_key=movement.key, from_on=on, sets=now.sets, target=now.target, rung=now.rung
    )
    turn.say(
        coach,
        words.which_amount(tongue, key=movement.key, now=dose_in_words(tongue, current)),
        taps=_near_taps(turn, coach, named, movement, current),
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def _near_taps(
    turn: Turn, coach: Person, named: Named, movement: Movement, now: DoseSet
) -> TapRows:
    step = STEP_OF.get(movement.measure, STEP_ELSE)
    owned = rungs(movement, profile=profile_on(named.athlete, now.from_on))
    at = owned.index(now.rung) if now.rung in owned else 0
    beside = [*owned[max(0, at - 1) : at], *owned[at + 1 : at + 2]]
    near: list[dict[str, object]] = [
        {"sets": now.sets - 1},
        {"sets": now.sets + 1},
        {"target": now.target - step},
        {"target": now.target + step},
    ]
    near += [{"rung": rung} for rung in beside]
    doses = [now.model_copy(update=change) for change in near]
    tongue = turn.tongue(coach)
    taps = [
        Tap(
            words.text_label(tongue, dose_in_words(tongue, one)),
            AMOUNT,
            {"athlete": named.person.id, "entry": one.model_dump(mode="json")},
        )
        for one in doses
        if one.sets > 0 and one.target > 0
    ]
    return [taps[first : first + 2] for first in range(0, len(taps), 2)]


@about_tapped
def which(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """The movement was tapped; the dose may have been written before."""
    coach_question.close(turn, coach)
    days = coming_days(turn, named.person, named.athlete)
    movement = turn.house.library.movements[str(arguments["key"])]
    return _for_movement(turn, coach, named, days, movement, str(arguments["rest"]))


@about_tapped
def amount(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """The dose was tapped."""
    entry = DoseSet.model_validate(arguments["entry"])
    on = _from_day(turn, named.person, entry.movement_key)
    fresh = entry.model_copy(update={"from_on": on})
    return begin(turn, coach, named, replacing(named.athlete, [fresh]), why="")


command, picked = entries(set_dose, act="dose.who", example=words.DOSE_EXAMPLE)

TAPS = {"dose.who": picked, WHICH: which, AMOUNT: amount}
