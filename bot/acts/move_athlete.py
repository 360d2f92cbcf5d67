"""The owner moves an athlete to another coach; what is open about the athlete goes along."""

from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime
from typing import Any

from bot.acts import pass_on, tell_alerts
from bot.acts.find_athlete import folded, subject_of
from bot.acts.tell_athlete import tell
from bot.acts.timing import timing_of
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import intake_end, plain, relayed
from bot.wording import moving as words
from bot.wording.tongue import Tongue
from scheduler.calendar.alert_telling import first_telling_at
from scheduler.pain.values import Urgency
from storage.queries import care, people
from storage.records.care import Alert
from storage.records.people import Athlete, AthleteState, Person
from storage.records.wire import MessageKind

PICK, MOVE, LEAVE = "owner.move_pick", "owner.move", "owner.move_not"
MOVED = "athlete.moved"
JOINTS = frozenset({"to", "a", "→"})
AT_ONCE = frozenset({Urgency.NOW, Urgency.TODAY})
CHOICES_MOST = 12  # [buttons] ch: who needs more has to write more of the name

Pair = tuple[Person, Athlete]


def command(turn: Turn, owner: Person, text: str, _event: Wrote) -> Outcome:
    """``/move NAME to COACH``."""
    tongue, coaches = turn.tongue(owner), people.coaches(turn.tx)
    cut = _cut(text, coaches)
    if cut is None:
        turn.say(owner, words.usage(tongue, [one.name for one in coaches]))
        return Outcome.NOT_UNDERSTOOD
    asked, new = cut
    found = _matches(asked, _everybody(turn, coaches))
    if not found:
        turn.say(owner, words.no_athlete(tongue, asked=asked))
        return Outcome.NOT_UNDERSTOOD
    if len(found) == 1:
        return _ask(turn, owner, found[0], new)
    names = {one.id: one.name for one in coaches}
    taps = [
        [
            Tap(
                words.choice(tongue, name=person.name, coach=names.get(athlete.coach_id, "?")),
                PICK,
                {"athlete": person.id, "to": new.id},
            )
        ]
        for person, athlete in found[:CHOICES_MOST]
    ]
    turn.say(owner, words.which(tongue, asked=asked, count=len(found)), taps=taps)
    return Outcome.ASKED


def picked(turn: Turn, owner: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """One of several athletes of that name."""
    pair = _pair(turn, owner, arguments)
    if pair is None:
        return Outcome.STALE_TAP
    return _ask(turn, owner, pair, people.person(turn.tx, int(arguments["to"])))


def move(turn: Turn, owner: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Move, unless something changed since the question."""
    pair = _pair(turn, owner, arguments)
    if pair is None:
        return Outcome.STALE_TAP
    person, athlete = pair
    old, new = (people.person(turn.tx, int(arguments[one])) for one in ("from", "to"))
    tongue = turn.tongue(owner)
    if athlete.coach_id != old.id or not new.is_coach:
        now = people.person(turn.tx, athlete.coach_id)
        turn.say(owner, words.changed_since(tongue, name=person.name, coach=now.name))
        return Outcome.STALE_TAP
    if not _is_reachable(new):
        turn.say(owner, words.no_chat(tongue, coach=new.name))
        return Outcome.STALE_TAP
    hand_over(turn, owner, person, athlete, old=old, new=new)
    back = {"athlete": person.id, "from": new.id, "to": old.id}
    turn.say(
        owner,
        words.done(tongue, name=person.name, old=old.name, new=new.name),
        taps=[[Tap(words.back_label(tongue), MOVE, back)]],
    )
    return Outcome.COMMAND


def leave(turn: Turn, owner: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """The athlete stays."""
    pair = _pair(turn, owner, arguments)
    if pair is None:
        return Outcome.STALE_TAP
    person, athlete = pair
    coach = people.person(turn.tx, athlete.coach_id)
    said = words.left(turn.tongue(owner), name=person.name, coach=coach.name)
    turn.answer_tap(owner, event.message_id, said)
    return Outcome.COMMAND


def hand_over(
    turn: Turn, owner: Person, person: Person, athlete: Athlete, *, old: Person, new: Person
) -> None:
    """Change the coach, record it, tell all three; a group is the old coach's word and ends."""
    along = _along(turn, turn.tongue(new), person)
    people.change_athlete(turn.tx, person.id, coach_id=new.id, group_name=None)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=MOVED,
        athlete_id=person.id,
        actor_id=owner.id,
        before={"coach": old.id, "coach_name": old.name, "group": athlete.group_name or ""},
        after={"coach": new.id, "coach_name": new.name, "group": ""},
    )
    tell(turn, person, words.to_athlete(turn.tongue(person), old=old.name, new=new.name))
    if old.id != owner.id:
        said = words.to_old_coach(turn.tongue(old), name=person.name, new=new.name)
        turn.say(old, said, kind=MessageKind.NOTICE)
    tongue = turn.tongue(new)
    turn.say(
        new,
        words.to_new_coach(tongue, name=person.name, old=old.name, along=along),
        kind=MessageKind.NOTICE,
        subject=subject_of(person),
        taps=_taps_for_new(tongue, person, athlete),
    )
    _hand_alerts(turn, person, new)
    for waiting in care.unanswered(turn.tx, [person.id]):
        said = relayed.words(tongue, person.name, waiting.words)
        pass_on.tell_coach(turn, new, person, said)


def _taps_for_new(tongue: Tongue, person: Person, athlete: Athlete) -> list[list[Tap]]:
    """Return what the new coach can do; who waits for a look at the answers is let in from here."""
    rows = [[Tap(words.open_label(tongue), "coach.who", {"athlete": person.id})]]
    if athlete.state is AthleteState.WAITS_FOR_COACH:
        is_guardian = not athlete.profile.is_adult
        about = {"athlete": person.id, "is_guardian": is_guardian}
        label = intake_end.let_start_label(tongue, is_guardian=is_guardian)
        rows.append([Tap(label, "coach.let_start", about)])
    return rows


def _hand_alerts(turn: Turn, person: Person, new: Person) -> None:
    """Open alerts become the new coach's, who hears of them as if they were raised now."""
    for alert in care.open_alerts(turn.tx, athlete_id=person.id):
        first = _first_telling(turn, alert, new)
        care.change_alert(turn.tx, alert.id, coach_id=new.id, times_told=0, tell_at=first)
        if first is not None and first <= turn.now:
            tell_alerts.tell(turn, new, alert.id)


def _first_telling(turn: Turn, alert: Alert, new: Person) -> datetime | None:
    """Return when the new coach hears of it; a wait for the athlete's answer goes on.

    Only what cannot wait for the morning waits for an answer, a few minutes.
    """
    first = first_telling_at(alert.urgency, raised_at_utc=turn.now, coach=timing_of(new)).value
    waits_for_answer = alert.urgency in AT_ONCE and alert.times_told == 0
    if first is None or not waits_for_answer or alert.tell_at is None:
        return first
    return max(first, alert.tell_at)


def _ask(turn: Turn, owner: Person, pair: Pair, new: Person) -> Outcome:
    tongue, (person, athlete) = turn.tongue(owner), pair
    old = people.person(turn.tx, athlete.coach_id)
    if new.id == old.id:
        turn.say(owner, words.same_coach(tongue, name=person.name, coach=old.name))
    elif new.id == person.id:
        turn.say(owner, words.not_oneself(tongue, name=person.name))
    elif not _is_reachable(new):
        turn.say(owner, words.no_chat(tongue, coach=new.name))
    else:
        about = {"athlete": person.id, "from": old.id, "to": new.id}
        along = _along(turn, tongue, person)
        turn.say(
            owner,
            words.ask(tongue, name=person.name, old=old.name, new=new.name, along=along),
            taps=[
                [
                    Tap(words.move_label(tongue), MOVE, about),
                    Tap(words.leave_label(tongue), LEAVE, about),
                ]
            ],
        )
        return Outcome.ASKED
    return Outcome.NOT_UNDERSTOOD


def _along(turn: Turn, tongue: Tongue, person: Person) -> str:
    return words.goes_along(
        tongue,
        alerts=len(care.open_alerts(turn.tx, athlete_id=person.id)),
        decisions=len(care.proposals(turn.tx, [person.id])),
        messages=len(care.unanswered(turn.tx, [person.id])),
    )


def _pair(turn: Turn, owner: Person, arguments: Mapping[str, Any]) -> Pair | None:
    """Find the athlete of a button; one who is gone or has left is nobody to move."""
    athlete = people.athlete(turn.tx, int(arguments["athlete"]))
    if athlete is None or athlete.is_practice or athlete.state is AthleteState.LEFT:
        turn.say(owner, plain.old_button(turn.tongue(owner)))
        return None
    return people.person(turn.tx, athlete.person_id), athlete


def _is_reachable(person: Person) -> bool:
    return person.chat_id is not None and not person.is_blocked


def _everybody(turn: Turn, coaches: Sequence[Person]) -> list[Pair]:
    return [pair for coach in coaches for pair in people.athletes_of(turn.tx, coach.id)]


def _matches(asked: str, known: Sequence[Pair]) -> list[Pair]:
    wanted = folded(asked)
    exact = [pair for pair in known if folded(pair[0].name) == wanted]
    return exact or [pair for pair in known if wanted in folded(pair[0].name)]


def _cut(text: str, coaches: Sequence[Person]) -> tuple[str, Person] | None:
    """Cut a text at the word that leaves exactly one coach behind it."""
    for before, behind in _cuts(text):
        alike = _named(behind, coaches)
        if len(alike) == 1:
            return before, alike[0]
    return None


def _cuts(text: str) -> Iterator[tuple[str, str]]:
    parts = text.split()
    for at in range(1, len(parts) - 1):
        if parts[at].casefold() in JOINTS:
            yield " ".join(parts[:at]), " ".join(parts[at + 1 :])


def _named(name: str, coaches: Sequence[Person]) -> list[Person]:
    wanted = folded(name)
    exact = [one for one in coaches if folded(one.name) == wanted]
    return exact or [one for one in coaches if wanted in folded(one.name)]


TAPS = {PICK: picked, MOVE: move, LEAVE: leave}
