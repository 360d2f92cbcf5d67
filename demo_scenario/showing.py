"""What the terminal shows of a play: a few days as chats, and a closing table."""

from collections.abc import Callable, Iterator, Sequence
from datetime import date

from rich.console import Console
from rich.markup import escape
from rich.table import Table

from demo_scenario.chat_pages import zone_of
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.play import Stage
from demo_scenario.player import Player
from demo_scenario.story import OVERRIDE_REASON, RED_FLAG_WORDS
from demo_scenario.summary import Summary
from demo_scenario.team import Part
from demo_scenario.used import NAMES_SHOWN

HEARD = ("recorded", "corrected", "asked", "not_understood", "passed_on", "safety", "cant_today")
REASON_WORDS = {
    "dose.step_in_time": "longer: all sets done, enough left",
    "dose.step_in_reps": "more reps: all sets done, enough left",
    "dose.step_in_load": "heavier: top of the range twice",
    "dose.step_past_top": "past the top, the next weight is far",
    "dose.plainly_light": "heavier: plainly light",
    "dose.plainly_light_band": "the next band: plainly light",
    "dose.plainly_easy": "a harder movement: plainly easy",
    "dose.after_try": "on from what a try left",
    "dose.same_after_try": "as before, after a try",
    "dose.accessory_twice": "extra work, one good session so far",
    "dose.more_sets_first": "a set given back first",
    "dose.same_after_gap": "after days off",
    "dose.same_pain": "something hurts that it loads",
    "dose.same_lighter_week": "a lighter week",
    "dose.same_no_answer": "no answer on what was left",
    "dose.same_little_left": "less left than asked",
    "dose.same_missed": "a set missed",
    "dose.down_nothing_left": "nothing left, twice",
    "dose.down_little_left": "less left than asked, four times",
    "dose.down_after_misses": "missed, twice",
}
WIDTH = 76  # [columns] ch: fits a narrow terminal


def show_days(stage: Stage, console: Console) -> None:
    """Show the chats that tell what the demo is about."""
    for title, player, messages in _scenes(stage):
        if not messages:
            continue
        console.rule(f"[bold]{escape(title)}[/]", align="left")
        for message in messages:
            _show(message, player, console)


def _scenes(stage: Stage) -> Iterator[tuple[str, Player, Sequence[ShownMessage]]]:
    steady = stage.athletes[stage.team.part(Part.STEADY).name]
    flagged = stage.athletes[stage.team.part(Part.RED_FLAG).name]
    yield "A session and its answers", steady, _day_of(steady, 2)
    yield "A red flag, the athlete's side", flagged, _around(flagged, _says(RED_FLAG_WORDS), 3)
    yield "The same, the coach's side", stage.coach, _around(stage.coach, _says(RED_FLAG_WORDS), 5)
    yield (
        "The coach overrides a stage",
        stage.coach,
        _around(stage.coach, _says(OVERRIDE_REASON), 3),
    )
    yield "The weekly digest", stage.coach, _around(stage.coach, _says("Doses:"), 1, last=True)


def _says(words: str) -> Callable[[ShownMessage], bool]:
    return lambda message: words in message.text


def _around(
    player: Player, is_first: Callable[[ShownMessage], bool], count: int, *, last: bool = False
) -> list[ShownMessage]:
    """Return a message and what follows it, ``count`` messages in all."""
    messages = player.sees()
    places = [place for place, message in enumerate(messages) if is_first(message)]
    if not places:
        return []
    place = places[-1] if last else places[0]
    return list(messages[place : place + count])


def _day_of(player: Player, weekday: int) -> list[ShownMessage]:
    """Return the first full day on a weekday of a person's chat."""
    zone = zone_of(player)
    day: date | None = None
    found = []
    for message in player.sees():
        on = message.sent_at.astimezone(zone).date()
        if day is None and on.weekday() == weekday:
            day = on
        if on == day:
            found.append(message)
    return found


def _show(message: ShownMessage, player: Player, console: Console) -> None:
    local = message.sent_at.astimezone(zone_of(player))
    who = "Holdwell" if message.is_from_bot else player.name
    style = "cyan" if message.is_from_bot else "green"
    console.print(f"[dim]{local:%a %H:%M}[/] [{style}]{escape(who)}[/]")
    console.print(message.text or f"({message.media})", markup=False, highlight=False, width=WIDTH)
    for row in message.buttons:
        keys = "  ".join(f"[reverse] {escape(button.text)} [/]" for button in row)
        console.print(keys, highlight=False)
    console.print()


def show_table(summary: Summary, console: Console) -> None:
    """Show the figures."""
    table = Table(title=f"{summary.weeks} weeks, seed {summary.seed}", title_justify="left")
    table.add_column("what")
    table.add_column("how many", justify="right")
    table.add_column("more")
    states = ", ".join(f"{count} {state}" for state, count in summary.sessions.items())
    table.add_row("sessions sent", str(summary.sessions_sent), states)
    for name in HEARD:
        table.add_row(f"replies {name.replace('_', ' ')}", str(summary.replies.get(name, 0)), "")
    for name, count in summary.doses.items():
        why = "\n".join(_said(code, times) for code, times in summary.dose_reasons[name].items())
        table.add_row(f"doses {name}", str(count), why)
    for name, changes in summary.stages.items():
        table.add_row(f"stage of {name}", "", "\n".join(changes))
    for alert in summary.alerts:
        after = alert.answered_after_min
        answered = "still open" if after is None else f"answered after {after:g} min"
        table.add_row(f"alert, {alert.athlete}", f"told {alert.times_told}", answered)
    table.add_row("invariants broken", str(len(summary.breaches)), "\n".join(summary.breaches))
    console.print(table)


def show_used(summary: Summary, console: Console) -> None:
    """Show who used what, and first when."""
    table = Table(title="used: feature → by whom, when", title_justify="left")
    for head in ("feature", "by whom", "first", "times"):
        table.add_column(head, justify="right" if head == "times" else "left")
    for one in summary.used:
        people = ", ".join(one.people[:NAMES_SHOWN])
        more = len(one.people) - NAMES_SHOWN
        who = f"{people} and {more} more" if more > 0 else people or "nobody yet"
        first = f"{one.first_on:%d %b %Y}" if one.first_on else ""
        table.add_row(one.feature, who, first, str(one.times or ""))
    console.print(table)


def _said(code: str, times: int) -> str:
    """Write a reason's kind in words; its figures belong to single decisions."""
    words = REASON_WORDS.get(code)
    if words is not None:
        return f"{times} × {words}"
    return f"{times} × {code.rpartition('.')[2].replace('_', ' ')}"
