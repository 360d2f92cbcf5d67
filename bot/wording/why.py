"""Why, in plain words; and the figures behind it for whoever asks."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bot.wording import coach_checklist, doses
from bot.wording.labels import label
from bot.wording.movement_names import name_of
from bot.wording.reasons import say_reason
from bot.wording.tongue import Marked, Tongue
from scheduler.catalogue.values import Measure, Movement
from scheduler.reasons import Figure, Reason
from scheduler.sources import SOURCES
from scheduler.training.gates import Checklist
from scheduler.training.values import Dose


@dataclass(frozen=True)
class Decided:
    """One decision: the dose that comes next, what decided it, and what keeps it from more."""

    movement: Movement
    dose: Dose
    reasons: Sequence[Reason]
    not_more: Reason | None


def why(
    tongue: Tongue,
    decisions: Sequence[Decided],
    checklist: Checklist,
    *,
    measures: Mapping[str, Measure],
    is_today: bool = False,
) -> str:
    """Say why the doses are what they are, why not more, and why not the next stage.

    ``is_today`` where they are those of the session that is out.
    """
    head = tongue.say("<b>Today's doses</b>") if is_today else tongue.say("<b>Your next doses</b>")
    lines = [head]
    lines += [_decided(tongue, one) for one in decisions if one.reasons] or [
        tongue.say("Nothing is decided yet: the first session starts carefully.")
    ]
    not_more = dict.fromkeys(
        say_reason(tongue, one.not_more) for one in decisions if one.not_more is not None
    )
    if not_more:
        lines += ["", tongue.say("<b>Why not more</b>"), *not_more]
    lines += ["", coach_checklist.head(tongue, checklist)]
    if not coach_checklist.is_last_stage(checklist):
        lines += coach_checklist.lines(tongue, checklist, measures=measures)
    return "\n".join(lines)


def _decided(tongue: Tongue, one: Decided) -> str:
    load = doses.load(tongue, one.dose, one.movement)
    amount = doses.amount(tongue, one.dose.measure, one.dose.target)
    dose = tongue.say("{sets} × {amount}", sets=one.dose.sets, amount=amount)
    return tongue.say(
        "{name}: <b>{dose}</b>. {why}",
        name=name_of(tongue, one.movement),
        dose=Marked(f"{dose}, {load}" if load else dose),
        why=Marked(say_reason(tongue, one.reasons[0])),
    )


def figures_label(tongue: Tongue) -> str:
    """Label the button to the figures."""
    return label(tongue, "Show the figures")


def figures(tongue: Tongue, decisions: Sequence[Decided]) -> list[str]:
    """List every reason: the rule, what it compared, and where its threshold comes from."""
    if not decisions:
        return [tongue.say("Nothing is decided yet, so there are no figures.")]
    return [_figures(tongue, one) for one in decisions]


def _figures(tongue: Tongue, one: Decided) -> str:
    lines = [tongue.say("<b>{name}</b>", name=name_of(tongue, one.movement))]
    lines += [_one(tongue, reason) for reason in one.reasons]
    return "\n".join([*lines, ""])


def _one(tongue: Tongue, reason: Reason) -> str:
    said = ", ".join(
        tongue.say("{name} {value}", name=name.replace("_", " "), value=_shown(tongue, value))
        for name, value in reason.figures.items()
    )
    rule = reason.code.rpartition(".")[2].replace("_", " ")
    source = SOURCES.get(reason.source)
    return tongue.say(
        "· {rule}{said} ({source})",
        rule=rule,
        said=Marked(f": {said}" if said else ""),
        source=source.reference if source else reason.source,
    )


def _shown(tongue: Tongue, value: Figure) -> str:
    if isinstance(value, bool):
        return tongue.say("yes") if value else tongue.say("no")
    if isinstance(value, int | float):
        return tongue.number(value)
    return value.replace("_", " ")
