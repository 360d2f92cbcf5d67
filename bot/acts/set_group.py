"""A coach puts athletes into groups: by command, or by button from an athlete's screen."""

from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Any

from bot.acts import coach_question, find_athlete
from bot.acts.about_athlete import about_tapped
from bot.acts.find_athlete import Named, folded, subject_of
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_groups as words
from bot.wording import coach_messages
from storage.queries import care, people
from storage.records.people import Athlete, Person

ASK = "coach.group_text"
GROUP = "coach.group"
CHOOSE, NEW, PUT_BACK = "coach.group_choose", "coach.group_new", "coach.group_back"
CHANGED = "group.changed"
NAME_MOST = 30  # [characters] ch: it heads a part of the roster and stands on a button
EVERYBODY = frozenset({"all", "everybody", "todos", "todas"})
NO_GROUP = frozenset({"none", "-", "nobody", "no", "ninguno", "ninguna"})
GROUPS_MOST = 12  # [buttons] ch: who has more writes the name
BUTTONS_A_ROW = 2  # [buttons] ch: a name must stay readable on a narrow phone


def groups_of(pairs: Sequence[tuple[Person, Athlete]]) -> tuple[str, ...]:
    """Return the groups that these athletes are in, by name."""
    found = {athlete.group_name for _, athlete in pairs if athlete.group_name}
    return tuple(sorted(found, key=str.casefold))


def known_group(text: str, groups: Sequence[str]) -> str | None:
    """Return the group that a text names, whatever its case and accents."""
    return next((group for group in groups if folded(group) == folded(text)), None)


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/group``, ``/group NAME`` or ``/group NAME GROUP``."""
    if not text.strip():
        return _overview(turn, coach)
    found = find_athlete.named(turn, coach, text, act=GROUP, example=words.EXAMPLE, has_rest=True)
    return found if isinstance(found, Outcome) else _put_or_ask(turn, coach, found)


@about_tapped
def picked(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """A group's button, or the athlete chosen among several of that name."""
    return _put_or_ask(turn, coach, found)


@about_tapped
def choose(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The button on an athlete's screen."""
    return _ask(turn, coach, found)


@about_tapped
def ask_name(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """A new group: the next text is its name."""
    tongue = turn.tongue(coach)
    coach_question.ask(turn, coach, ASK, {"athlete": found.person.id})
    turn.say(
        coach,
        words.write_name(tongue, name=found.person.name),
        taps=[[Tap(coach_messages.never_mind_label(tongue), "coach.never_mind")]],
        subject=subject_of(found.person),
    )
    return Outcome.ASKED


def hear_name(
    turn: Turn, coach: Person, about: Mapping[str, Any], text: str, *, waited: timedelta
) -> Outcome:
    """The name that was asked for; long after, the buttons are shown once more."""
    coach_question.close(turn, coach)
    rest = text if waited <= coach_question.FRESH else ""
    found = find_athlete.tapped(turn, coach, {**about, "rest": rest})
    return found if isinstance(found, Outcome) else _put_or_ask(turn, coach, found)


@about_tapped
def put_back(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Take a change of group back, unless it was changed since."""
    if (found.athlete.group_name or "") != arguments["now"]:
        tongue = turn.tongue(coach)
        turn.say(coach, words.changed_since(tongue, name=found.person.name))
        return Outcome.STALE_TAP
    return _put(turn, coach, found, str(arguments["was"]))


def _overview(turn: Turn, coach: Person) -> Outcome:
    pairs = people.athletes_of(turn.tx, coach.id)
    counts = {
        group: sum(athlete.group_name == group for _, athlete in pairs)
        for group in groups_of(pairs)
    }
    without = sum(not athlete.group_name for _, athlete in pairs)
    turn.say(coach, words.overview(turn.tongue(coach), counts, without=without))
    return Outcome.COMMAND


def _put_or_ask(turn: Turn, coach: Person, named: Named) -> Outcome:
    group = " ".join(named.rest.split())
    if not group:
        return _ask(turn, coach, named)
    if folded(group) in NO_GROUP:
        return _put(turn, coach, named, "")
    if len(group) > NAME_MOST or folded(group) in EVERYBODY or group.startswith("/"):
        turn.say(coach, words.bad_name(turn.tongue(coach), most=NAME_MOST))
        return Outcome.NOT_UNDERSTOOD
    there = groups_of(people.athletes_of(turn.tx, named.athlete.coach_id))
    return _put(turn, coach, named, known_group(group, there) or group)


def _ask(turn: Turn, coach: Person, named: Named) -> Outcome:
    tongue, own = turn.tongue(coach), named.athlete.group_name or ""
    about = {"athlete": named.person.id}
    there = groups_of(people.athletes_of(turn.tx, named.athlete.coach_id))
    taps = [
        Tap(words.group_label(tongue, group), GROUP, {**about, "rest": group})
        for group in there[:GROUPS_MOST]
        if group != own
    ]
    rows = [taps[at : at + BUTTONS_A_ROW] for at in range(0, len(taps), BUTTONS_A_ROW)]
    last = [Tap(words.new_label(tongue), NEW, about)]
    if own:
        last.append(Tap(words.none_label(tongue), GROUP, {**about, "rest": "none"}))
    turn.say(
        coach,
        words.choose(tongue, name=named.person.name, group=own),
        taps=[*rows, last],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def _put(turn: Turn, coach: Person, named: Named, group: str) -> Outcome:
    tongue, person = turn.tongue(coach), named.person
    old = named.athlete.group_name or ""
    if group == old:
        turn.say(coach, words.same(tongue, name=person.name, group=group))
        return Outcome.COMMAND
    people.change_athlete(turn.tx, person.id, group_name=group or None)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=CHANGED,
        athlete_id=person.id,
        actor_id=coach.id,
        before={"group": old},
        after={"group": group},
    )
    back = Tap(
        words.put_back_label(tongue), PUT_BACK, {"athlete": person.id, "was": old, "now": group}
    )
    turn.say(
        coach,
        words.changed(tongue, name=person.name, old=old, new=group),
        taps=[[back]],
        subject=subject_of(person),
    )
    return Outcome.COMMAND


TAPS = {GROUP: picked, CHOOSE: choose, NEW: ask_name, PUT_BACK: put_back}
