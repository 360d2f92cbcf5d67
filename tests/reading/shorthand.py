"""A short notation for readings, so that a table of messages can be read at a glance."""

from bot.reading.known import ItemResult, KnownItem, SetResult
from bot.reading.values import (
    Activity,
    Asked,
    CantToday,
    Correction,
    CorrectionKind,
    OtherTraining,
    PainMention,
    PassedOn,
    Reading,
    Recorded,
    SessionNow,
    Told,
)
from scheduler.pain.values import Side

ARM = {Side.LEFT: "L", Side.RIGHT: "R", Side.BOTH: ""}


def shorthand(reading: Reading, planned: dict[str, KnownItem], *, today) -> str:
    """Return the reading in the notation of the table."""
    return " | ".join([_head(reading, planned, today), *_beside(reading)])


def _head(reading: Reading, planned: dict[str, KnownItem], today) -> str:
    match reading:
        case Recorded():
            items = "; ".join(_item(item, planned[item.ref]) for item in reading.items)
            return items + (f" on {reading.day}" if reading.day != today else "")
        case Asked():
            return f"ask {reading.question.value.removeprefix('reading.')}"
        case Correction(kind=CorrectionKind.SETS):
            return "fix " + "; ".join(
                f"{_name(c.ref)} {ARM[c.side]}{c.number}: {c.old:g}>{c.new:g}"
                for c in reading.changes
            )
        case Correction():
            return f"fix {reading.kind.value}"
        case CantToday():
            return "cant" + (f" {reading.reason.value}" if reading.reason else "")
        case Told():
            return "told" + ("" if reading.is_yes is None else f" {reading.is_yes}")
        case OtherTraining():
            return "other"
        case SessionNow():
            return "now"
        case PassedOn():
            return f"passed {reading.why.value.removeprefix('reading.')}"
    return "lost"


def _name(ref: str) -> str:
    return ref.rsplit(".", maxsplit=1)[-1]


def _item(item: ItemResult, planned: KnownItem) -> str:
    words = [_name(item.ref), *(_set(s, planned) for s in item.sets)]
    words += ["skip"] * item.is_skipped + ["stop"] * item.is_stopped
    if item.reserve:
        words.append(f"r{item.reserve.left:g}" + "+" * item.reserve.is_at_least)
    return " ".join(words)


def _set(done: SetResult, planned: KnownItem) -> str:
    load = "" if done.load_kg == planned.load_kg else f"@{done.load_kg:g}"
    return f"{ARM[done.side]}{done.value:g}{load}" + "p" * done.is_as_planned


def _beside(reading: Reading) -> list[str]:
    words = [_activity(activity) for activity in reading.activities]
    if reading.effort is not None:
        words.append(f"effort {reading.effort:g}")
    if reading.reserve is not None:
        words.append(f"reserve {reading.reserve.left:g}" + "+" * reading.reserve.is_at_least)
    words += [_pain(pain) for pain in reading.pains]
    if reading.asks_coach and not isinstance(reading, PassedOn):
        words.append("asks")
    return words


def _activity(told: Activity) -> str:
    words = [told.name]
    words += [f"{told.minutes:g}min"] if told.minutes else []
    words += [f"{told.distance_m:g}m"] if told.distance_m else []
    words += [f"e{told.effort:g}"] if told.effort is not None else []
    return " ".join([*words, *(f"{count:g}" for count in told.counts)])


def _pain(pain: PainMention) -> str:
    words = ["pain"]
    if pain.side is not None:
        words.append(pain.side.value)
    if len(pain.sites) == 1:
        words.append(pain.sites[0].value)
    elif pain.sites:
        words.append(pain.sites[0].value.split("_")[0] + "?")
    words.append(("?" if pain.score is None else str(pain.score)) + "!" * pain.must_ask)
    words += ["sharp"] * pain.is_sharp + ["stopped"] * pain.stopped_a_set
    return " ".join(words)
