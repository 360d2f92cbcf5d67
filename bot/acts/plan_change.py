"""A coach's change of the plan: why, what it breaks, done on record, and taken back."""

from collections.abc import Mapping, Sequence
from typing import Any

from bot.acts import ask_why, coach_question, draw_week, plan_today
from bot.acts.about_athlete import Arguments, about_tapped
from bot.acts.capacity import seen
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.acts.plan_warnings import Against, found_against
from bot.acts.tell_athlete import tell
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_changes as words
from bot.wording import plan_entries
from bot.wording.tongue import Tongue
from scheduler.training.coach_doses import is_used
from scheduler.training.coach_plan import (
    Ban,
    DayMove,
    DoseSet,
    ItemChange,
    Pin,
    PlanChange,
    PlanEntry,
    StandingSwap,
    still_of_use,
)
from storage.queries import care, people, training
from storage.records.people import Athlete, Person
from storage.records.training import SessionState

GO_ON, ANYWAY, LEAVE, BACK = "plan.go_on", "plan.anyway", "plan.leave", "plan.back"
CHANGED, TAKEN_BACK = "plan.changed", "plan.taken_back"


def begin(turn: Turn, coach: Person, named: Named, change: PlanChange, *, why: str) -> Outcome:
    """Say what cannot be, ask for the reason, say what it breaks; else change the plan."""
    tongue = turn.tongue(coach)
    if not change.add and not change.remove:
        turn.say(
            coach,
            words.stands_already(tongue, name=named.person.name),
            subject=subject_of(named.person),
        )
        return Outcome.COMMAND
    if not change.fits(named.athlete.profile.coach_plan):
        turn.say(coach, words.changed_since(tongue, name=named.person.name))
        return Outcome.STALE_TAP
    # Why is asked first: only then does anybody read what the weeks break.
    is_whole = bool(why.strip())
    found = found_against(turn, named.person, named.athlete, change, is_whole=is_whole)
    what = said(tongue, change)
    if found.never is not None:
        turn.say(
            coach,
            words.refused(tongue, name=named.person.name, what=what, reason=found.never),
            subject=subject_of(named.person),
        )
        return Outcome.NOT_UNDERSTOOD
    request = request_of(named, change)
    if not why.strip():
        return ask_why.ask(
            turn,
            coach,
            named.person,
            act=GO_ON,
            request=request,
            text=words.ask_why(turn.tongue(coach), what=what),
        )
    if found.reasons:
        return _ask_once_more(turn, coach, named, found, {**request, "why": why.strip()})
    return make(turn, coach, named, found.change, why=why.strip())


def said(tongue: Tongue, change: PlanChange) -> str:
    """Write a change in one line: what comes, else what goes."""
    if change.add:
        return words.lines_of(tongue, change.add)
    return words.removed(tongue, change.remove)


def request_of(named: Named, change: PlanChange) -> dict[str, Any]:
    """Return a change as a button carries it."""
    return {"athlete": named.person.id, "change": change.model_dump(mode="json")}


def change_in(arguments: Mapping[str, Any]) -> PlanChange:
    """Return the change that a button carries."""
    return PlanChange.model_validate(arguments["change"])


def _ask_once_more(
    turn: Turn, coach: Person, named: Named, found: Against, request: Mapping[str, Any]
) -> Outcome:
    tongue = turn.tongue(coach)
    turn.say(
        coach,
        words.against(
            tongue,
            name=named.person.name,
            what=said(tongue, found.change),
            reasons=found.reasons,
        ),
        taps=[
            [
                Tap(words.anyway_label(tongue), ANYWAY, request),
                Tap(words.leave_label(tongue), LEAVE, request),
            ]
        ],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


@about_tapped
def go_on(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """The reason was given."""
    coach_question.close(turn, coach)
    return begin(turn, coach, named, change_in(arguments), why=str(arguments["why"]))


@about_tapped
def anyway(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """The coach wants it against the rules that may be overridden; it is looked at once more."""
    change = change_in(arguments)
    if not change.fits(named.athlete.profile.coach_plan):
        turn.say(coach, words.changed_since(turn.tongue(coach), name=named.person.name))
        return Outcome.STALE_TAP
    found = found_against(turn, named.person, named.athlete, change)
    if found.never is not None:
        return begin(turn, coach, named, change, why=str(arguments["why"]))
    return make(turn, coach, named, found.change, why=str(arguments["why"]), against=found)


@about_tapped
def leave(turn: Turn, coach: Person, named: Named, _: Arguments, event: Tapped) -> Outcome:
    """The plan stays."""
    text = words.left_alone(turn.tongue(coach), name=named.person.name)
    turn.answer_tap(coach, event.message_id, text)
    return Outcome.COMMAND


def make(
    turn: Turn,
    coach: Person,
    named: Named,
    change: PlanChange,
    *,
    why: str,
    against: Against | None = None,
    what: str = CHANGED,
) -> Outcome:
    """Change the plan, record it, plan anew, tell both."""
    person, tongue = named.person, turn.tongue(coach)
    today_lines, is_told = _carry_out(
        turn, coach, named, change, why=why, what=what, against=against
    )
    text = words.done(tongue, name=person.name, what=said(tongue, change), why=why, is_told=is_told)
    lines = [text, *(words.today_too(tongue, line) for line in today_lines)]
    turn.say(
        coach,
        "\n".join(lines),
        taps=[_after_taps(tongue, named, change)],
        subject=subject_of(person),
    )
    return Outcome.COMMAND


def _after_taps(tongue: Tongue, named: Named, change: PlanChange) -> list[Tap]:
    """Offer to take it back, and to make a swap of one day stand for every time."""
    taps = [Tap(words.take_back_label(tongue), BACK, request_of(named, change))]
    once = change.add[0] if change.add else None
    if isinstance(once, ItemChange):
        swap = StandingSwap(was=once.was, movement_key=once.movement_key)
        always = request_of(named, replacing(named.athlete, [swap]))
        taps.append(Tap(words.every_time_label(tongue), GO_ON, {**always, "why": ""}))
    return taps


def _carry_out(
    turn: Turn,
    coach: Person,
    named: Named,
    change: PlanChange,
    *,
    why: str,
    what: str,
    against: Against | None = None,
) -> tuple[list[str], bool]:
    """Store, record, plan anew and tell the athlete; return what changed in today's session."""
    person = named.person
    profile = named.athlete.profile
    plan = still_of_use(change.done_to(profile.coach_plan), today=local_today(turn, person))
    new = profile.model_copy(update={"coach_plan": plan})
    athlete = people.change_athlete(turn.tx, person.id, profile=new)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=what,
        athlete_id=person.id,
        actor_id=coach.id,
        words=why,
        reasons=against.reasons if against else (),
        before={"entries": [one.model_dump(mode="json") for one in change.remove]},
        after={"entries": [one.model_dump(mode="json") for one in change.add]},
    )
    lines = plan_today.follow(turn, person, athlete, change)
    draw_week.redraw(turn, person, athlete)
    mine = turn.tongue(person)
    said_lines = plan_entries.said_to_athlete(
        mine, coach=coach.name, gone=change.remove, new=change.add
    )
    today = [words.today_too(mine, line) for line in lines]
    return lines, tell(turn, person, "\n".join([*said_lines, *today]))


@about_tapped
def take_back(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """Undo a change, unless it has been used, is over, or was changed since."""
    change, tongue = change_in(arguments), turn.tongue(coach)
    what = said(tongue, change)
    undone = change.reverse
    is_late = any(_is_over(turn, named, one) for one in change.add)
    if is_late or not undone.fits(named.athlete.profile.coach_plan):
        turn.say(coach, words.too_late(tongue, name=named.person.name, what=what))
        return Outcome.STALE_TAP
    lines, _told = _carry_out(turn, coach, named, undone, why="", what=TAKEN_BACK)
    text = words.taken_back(tongue, name=named.person.name, what=what)
    said_lines = [text, *(words.today_too(tongue, line) for line in lines)]
    turn.say(coach, "\n".join(said_lines), subject=subject_of(named.person))
    return Outcome.COMMAND


def _is_over(turn: Turn, named: Named, entry: PlanEntry) -> bool:
    """Tell whether an entry has had its effect: then nothing of it can be taken back."""
    today = local_today(turn, named.person)
    match entry:
        case ItemChange():
            return entry.on < today or _is_item_done(turn, named.person, entry)
        case DayMove():
            return entry.on < today or _is_sent(turn, named.person, entry)
        case DoseSet():
            movement = turn.house.library.movements[entry.movement_key]
            return is_used(entry, seen(turn, named.person.id, movement, before=None).own)
    return False


def _is_item_done(turn: Turn, person: Person, entry: ItemChange) -> bool:
    sessions = training.sessions_between(turn.tx, person.id, first=entry.on, last=entry.on)
    return any(
        item.is_reported
        for session in sessions
        for item in session.items
        if (item.pair, item.direction) == (entry.pair, entry.direction)
    ) or any(not one.is_open and one.state is not SessionState.PLANNED for one in sessions)


def _is_sent(turn: Turn, person: Person, entry: DayMove) -> bool:
    sessions = training.sessions_between(turn.tx, person.id, first=entry.to, last=entry.to)
    return any(one.state is not SessionState.PLANNED for one in sessions)


def replacing(athlete: Athlete, new: Sequence[PlanEntry]) -> PlanChange:
    """Return the change that puts entries in and takes out what they cannot stand beside."""
    gone = tuple(
        old
        for old in athlete.profile.coach_plan.entries
        if old not in new and any(_subject(old) == _subject(one) for one in new)
    )
    fresh = tuple(one for one in new if one not in athlete.profile.coach_plan.entries)
    return PlanChange(remove=gone, add=fresh)


def _subject(entry: PlanEntry) -> tuple[object, ...]:
    """Return what an entry is about: of two about the same only the newer stands."""
    match entry:
        case ItemChange():
            return ("item", entry.on, entry.pair, entry.direction)
        case StandingSwap():
            return ("swap", entry.was)
        case DayMove():
            return ("day", entry.on)
        case DoseSet():
            return ("dose", entry.movement_key)
        case Pin() | Ban():
            return ("mark", entry.movement_key)


TAPS = {GO_ON: go_on, ANYWAY: anyway, LEAVE: leave, BACK: take_back}
