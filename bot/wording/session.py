"""The day's session and the questions about it, for a narrow screen and one thumb."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.reading.examples import example_of
from bot.wording import dates, doses
from bot.wording.movement_names import name_of
from bot.wording.tongue import Marked, Tongue
from scheduler.catalogue.values import Measure, Movement, Sides
from scheduler.pain.values import Side
from scheduler.training.values import Dose, SetDone

EXAMPLES_SHOWN = 2  # [lines] ch: an example, not a form


@dataclass(frozen=True)
class ItemFacts:
    """One item as the session shows it."""

    number: int
    pair: int | None
    movement: Movement
    dose: Dose
    arms: tuple[Side, ...]


@dataclass(frozen=True)
class SessionFacts:
    """Everything that the session's message says."""

    on: date
    letter: str
    minutes: int
    items: tuple[ItemFacts, ...]
    left_out: str = ""
    note: str = ""


def session(tongue: Tongue, facts: SessionFacts) -> str:
    """Write the whole session, with how to answer it."""
    head = tongue.say(
        "<b>{weekday}, day {letter}</b> · about {minutes} min",
        weekday=dates.weekday(tongue, facts.on).capitalize(),
        letter=facts.letter,
        minutes=facts.minutes,
    )
    lines = [head]
    if facts.note:
        lines.append(facts.note)
    if facts.left_out:
        lines += ["", facts.left_out]
    lines += ["", _warm_up(tongue), *_blocks(tongue, facts.items), "", how_to_answer(tongue, facts)]
    return "\n".join(lines)


def _warm_up(tongue: Tongue) -> str:
    return tongue.say(
        "<b>Warm-up</b>\n2 min easy movement, 10 slow shoulder-blade circles, "
        "then one easy set of each."
    )


def _blocks(tongue: Tongue, items: tuple[ItemFacts, ...]) -> list[str]:
    lines: list[str] = []
    for pair in dict.fromkeys(item.pair for item in items):
        block = [item for item in items if item.pair == pair]
        lines += ["", _block_head(tongue, pair, block)]
        for item in block:
            lines += _item(tongue, item)
    return lines


def _block_head(tongue: Tongue, pair: int | None, block: list[ItemFacts]) -> str:
    rest = doses.rest(tongue, block[0].dose.rest_s)
    if pair is None:
        return tongue.say("<b>Extra</b> · {rest}", rest=rest)
    if len(block) == 1:
        return tongue.say("<b>Block {pair}</b> · {rest}", pair=pair, rest=rest)
    return tongue.say("<b>Pair {pair}</b>, in turn · {rest}", pair=pair, rest=rest)


def _item(tongue: Tongue, item: ItemFacts) -> list[str]:
    dose = doses.dose_line(tongue, item.dose, item.movement, arms=item.arms)
    return [
        tongue.say("{n}. {name}", n=item.number, name=name_of(tongue, item.movement)),
        tongue.say(
            "    <b>{dose}</b>, {wish}",
            dose=Marked(dose),
            wish=doses.reserve_wish(tongue, item.dose),
        ),
    ]


def how_to_answer(tongue: Tongue, facts: SessionFacts) -> str:
    """Show an answer made from today's own items."""
    lines = "\n".join(
        f"<code>{example_answer(tongue, item)}</code>" for item in facts.items[:EXAMPLES_SHOWN]
    )
    return tongue.say(
        "Answer with your numbers, one line an item, like\n{lines}\nor use a button.",
        lines=Marked(lines),
    )


def example_answer(tongue: Tongue, item: ItemFacts) -> str:
    """Write an answer to one item that the reader understands."""
    return example_of(
        number=item.number,
        measure=item.dose.measure,
        sets=item.dose.sets,
        target=item.dose.target,
        arms=item.arms if item.movement.sides is Sides.EACH else (),
        language=tongue.language,
    )


def recorded(tongue: Tongue, item: ItemFacts, sets: tuple[SetDone, ...], *, assumed: str) -> str:
    """Play one item's results back in one line, with what was assumed."""
    line = tongue.say(
        "{n}. {name}: <b>{results}</b>",
        n=item.number,
        name=name_of(tongue, item.movement),
        results=doses.results(tongue, item.dose, sets),
    )
    return f"{line} ({assumed})" if assumed else line


def of_day(tongue: Tongue, on: date) -> str:
    """Head the card of another day than today."""
    return tongue.say("<b>For {weekday}</b>", weekday=dates.weekday(tongue, on))


def skipped(tongue: Tongue, item: ItemFacts) -> str:
    """Play back that an item was left undone."""
    return tongue.say("{n}. {name}: not done", n=item.number, name=name_of(tongue, item.movement))


def reserve_question(tongue: Tongue, movement: Movement, dose: Dose) -> str:
    """Ask what was left after the last set of an item."""
    if dose.measure is Measure.REPS:
        return tongue.say(
            "{name}, last set: how many more good reps were in you?", name=name_of(tongue, movement)
        )
    return tongue.say(
        "{name}, last set: how many more seconds were in you?", name=name_of(tongue, movement)
    )


def effort_question(tongue: Tongue) -> str:
    """Ask how hard the whole session was, in our own words."""
    return tongue.say("How hard was the whole session? 0 is nothing at all, 10 is all you had.")


def effort_noted(tongue: Tongue, effort: int) -> str:
    """Repeat the effort."""
    return tongue.say("Session effort {effort} of 10.", effort=effort)


def pain_question(tongue: Tongue) -> str:
    """Ask about pain at the end of a session."""
    return tongue.say("Did anything hurt, today or since last time? Plain muscle ache is no pain.")


def still_open(tongue: Tongue, names: list[str]) -> str:
    """Say which items still have no answer."""
    return tongue.say("Still open: {names}.", names=", ".join(names))


def item_question(tongue: Tongue, item: ItemFacts) -> str:
    """Ask for one item's numbers, step by step."""
    _, _, figures = example_answer(tongue, item).partition(" ")
    return tongue.say(
        "{n}. {name}: {dose}. What did you get? Like <code>{example}</code>.",
        n=item.number,
        name=name_of(tongue, item.movement),
        dose=doses.dose_line(tongue, item.dose, item.movement, arms=item.arms),
        example=figures,
    )


def closed(tongue: Tongue, *, bests: Sequence[str], changes: Sequence[str], more: int) -> str:
    """Thank, name a best, and say what changes next time and why."""
    lines = [tongue.say("Thank you, that is all."), *bests]
    if changes:
        lines += ["", tongue.say("<b>Next time</b>"), *changes]
    if more:
        lines.append(tongue.count(more, "And {n} more: /why", "And {n} more: /why"))
    return "\n".join(lines)


def all_left_out(tongue: Tongue) -> str:
    """Nothing of the session may be trained, so nothing can have been done as planned."""
    return tongue.say("Everything of that session is left out, so there is nothing to record.")
