"""A drafted review of each athlete, which the coach sends, changes or leaves."""

from collections.abc import Mapping
from datetime import date, timedelta
from html import unescape
from re import compile as pattern
from typing import Any

from bot.acts import coach_question, find_athlete, limits
from bot.acts.bests import bests_between
from bot.acts.checklist import checklist_of, local_today
from bot.acts.coach_dues import CoachDue
from bot.acts.find_athlete import Named, subject_of
from bot.acts.pain_picture import events_of, picture_of
from bot.acts.tell_athlete import tell
from bot.acts.timing import timing_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_decisions, coach_messages, coach_pain
from bot.wording import limits as limit_words
from bot.wording import review as words
from bot.wording.review import ReviewFacts
from scheduler.calendar.reviews import review_owed, review_span
from scheduler.calendar.values import Review
from scheduler.calendar.waking_hours import is_awake
from scheduler.calendar.wall_time import due_instant, local_date_of, monday_of
from scheduler.calendar.zones import zone_named
from scheduler.pain.events import MorningAnswered, PainReported
from scheduler.pain.values import Level
from scheduler.training.season_values import SeasonWeekKind
from storage.queries import care, due, people, training
from storage.records.care import Proposal
from storage.records.people import Athlete, AthleteState, Person
from storage.records.wire import MessageKind

KIND = "review"
SHOW, SEND, CHANGE, LEAVE = "review.show", "review.send", "review.change", "review.leave"
ASK = "review.text"
TOLD = CoachDue.REVIEW_TOLD
SENT, LEFT = "review.sent", "review.left"
LIGHT = frozenset({SeasonWeekKind.LIGHTER, SeasonWeekKind.TAPER, SeasonWeekKind.EASY_AFTER})
LINES_MOST = 3  # [lines] ch: the largest changes and the best bests; the rest is under /who
BUTTONS_MOST = 20  # [drafts] ch: the others wait on the roster
TAG = pattern(r"<[^>]*>")
A_DAY = timedelta(days=1)


def owed(turn: Turn, person: Person, athlete: Athlete) -> tuple[Review, ...]:
    """Return the review that is owed; none in a lighter week, or before the week is drawn."""
    if athlete.is_practice or athlete.started_on is None:
        return ()
    today = local_today(turn, person)
    found = review_owed(started_on=athlete.started_on, today=today, is_lighter_week=False)
    if found is None:
        return ()
    week = training.week(turn.tx, person.id, monday_of(today))
    if week is None or week.is_lighter or week.kind in LIGHT:
        return ()
    return (found,)


def draft(turn: Turn, person: Person, athlete: Athlete, *, number: int) -> None:
    """Draft a review; an older one that was never answered makes way for it."""
    today = local_today(turn, person)
    if athlete.started_on is None:
        return
    review = review_owed(started_on=athlete.started_on, today=today, is_lighter_week=False)
    if review is None or review.number != number:
        return
    for older in care.proposals(turn.tx, [person.id], kind=KIND):
        care.answer_proposal(turn.tx, older.id, at=turn.now, answer="a later one")
    first, last = review_span(review, started_on=athlete.started_on)
    facts = facts_of(turn, person, athlete, first=first, last=last)
    text = words.text(turn.tongue(person), facts)
    care.propose(
        turn.tx,
        athlete_id=person.id,
        kind=KIND,
        facts={"number": number, "text": _plain(text)},
        at=turn.now,
    )


def facts_of(
    turn: Turn, person: Person, athlete: Athlete, *, first: date, last: date
) -> ReviewFacts:
    """Collect what a review says, in the athlete's own language."""
    tongue = turn.tongue(person)
    trained, sent = training.kept_of_sent(turn.tx, [person.id], first=first, last=last).get(
        person.id, (0, 0)
    )
    changes = limits.changes_of(turn, athlete, first=last - limits.COMPARED, last=last)
    bests = bests_between(turn, tongue, person.id, first=first, last=last)
    asked = checklist_of(turn, person, athlete).items
    sore = _sore_days(turn, person, athlete, first=first, last=last)
    rested = picture_of(turn, athlete).rested
    return ReviewFacts(
        first=first,
        last=last,
        trained=trained,
        sent=sent,
        stage=athlete.stage,
        met=sum(item.is_met for item in asked),
        asked=len(asked),
        changes=tuple(limit_words.change(tongue, one) for one in changes[:LINES_MOST]),
        bests=tuple(one.line for one in bests[:LINES_MOST]),
        sore_days=len(sore),
        worst_pain=max(sore.values(), default=0),
        left_out="" if rested.is_empty else _plain(coach_pain.left_out(tongue, rested)),
    )


def _sore_days(
    turn: Turn, person: Person, athlete: Athlete, *, first: date, last: date
) -> dict[date, int]:
    """Return the days with pain of one or more, and the highest number of each."""
    zone = zone_named(person.zone)
    since = due_instant(local_date=first, wall_time=timing_of(person).planning_at, zone=zone)
    found: dict[date, int] = {}
    for event in events_of(turn, athlete.person_id, since=since - A_DAY):
        if not isinstance(event, PainReported | MorningAnswered) or not event.score:
            continue
        on = local_date_of(event.at_utc, zone)
        if first <= on <= last:
            found[on] = max(found.get(on, 0), event.score)
    return found


def tell_waiting(turn: Turn, coach: Person) -> None:
    """Put new drafts before the coach in their waking hours: one whole, several as a list."""
    if not is_awake(turn.now, timing=timing_of(coach)):
        return
    fresh = [
        one
        for one in care.proposals_to(turn.tx, coach.id, kind=KIND)
        if due.take(
            turn.tx,
            person_id=coach.id,
            kind=TOLD,
            subject=str(one.id),
            due_at=one.made_at,
            now=turn.now,
        )
    ]
    if len(fresh) == 1:
        _show(turn, coach, fresh[0], people.person(turn.tx, fresh[0].athlete_id))
    elif fresh:
        names = [people.person(turn.tx, one.athlete_id).name for one in fresh]
        tongue = turn.tongue(coach)
        taps = [
            [show_tap(turn, coach, proposal, name=name)]
            for proposal, name in zip(fresh, names, strict=True)
        ]
        said = words.several(tongue, names)
        turn.say(coach, said, kind=MessageKind.NOTICE, taps=taps[:BUTTONS_MOST])


def show_tap(turn: Turn, coach: Person, proposal: Proposal, *, name: str) -> Tap:
    """Return the button that shows one draft."""
    label = words.show_label(turn.tongue(coach), name=name)
    return Tap(label, SHOW, {"proposal": proposal.id})


def show(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Show one draft."""
    found = _open(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    _show(turn, coach, found[0], found[1].person)
    return Outcome.ASKED


def send(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """Send the draft as it is; what came up since is said first."""
    found = _open(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    proposal, named = found
    if not arguments.get("anyway") and _waits(turn, named):
        tongue = turn.tongue(coach)
        about = {"proposal": proposal.id, "anyway": True}
        turn.say(
            coach,
            words.look_first(tongue, name=named.person.name),
            taps=[
                [Tap(words.anyway_label(tongue), SEND, about)],
                [Tap(words.leave_label(tongue), LEAVE, {"proposal": proposal.id})],
            ],
            subject=subject_of(named.person),
        )
        return Outcome.ASKED
    return _send(turn, coach, proposal, named, str(proposal.facts["text"]), answer="sent")


def change(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The coach's next text goes out in place of the draft."""
    found = _open(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    proposal, named = found
    tongue = turn.tongue(coach)
    about = {"athlete": named.person.id, "proposal": proposal.id}
    coach_question.ask(turn, coach, ASK, about)
    turn.say(
        coach,
        words.write_instead(tongue, name=named.person.name),
        taps=[[Tap(coach_messages.never_mind_label(tongue), "coach.never_mind")]],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def hear_text(
    turn: Turn, coach: Person, about: Mapping[str, Any], text: str, *, waited: timedelta
) -> Outcome:
    """The coach's own words came; long after, the draft is shown once more instead."""
    coach_question.close(turn, coach)
    found = _open(turn, coach, about)
    if isinstance(found, Outcome):
        return found
    proposal, named = found
    if waited > coach_question.FRESH:
        _show(turn, coach, proposal, named.person)
        return Outcome.ASKED
    return _send(turn, coach, proposal, named, text, answer="changed")


def leave(turn: Turn, coach: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """No review this time; the athlete is not told of what never happened."""
    found = _open(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    proposal, named = found
    _answer(turn, coach, proposal, what=LEFT, answer="left")
    said = words.left(turn.tongue(coach), name=named.person.name)
    turn.answer_tap(coach, event.message_id, said)
    return Outcome.COMMAND


def _send(
    turn: Turn, coach: Person, proposal: Proposal, named: Named, text: str, *, answer: str
) -> Outcome:
    person, tongue = named.person, turn.tongue(coach)
    said = coach_messages.from_coach(turn.tongue(person), coach=coach.name, text=text)
    if not tell(turn, person, said):
        turn.say(coach, words.not_reached(tongue, name=person.name), subject=subject_of(person))
        return Outcome.COMMAND
    _answer(turn, coach, proposal, what=SENT, answer=answer)
    turn.say(coach, words.sent(tongue, name=person.name), subject=subject_of(person))
    return Outcome.PASSED_ON


def _answer(turn: Turn, coach: Person, proposal: Proposal, *, what: str, answer: str) -> None:
    care.answer_proposal(turn.tx, proposal.id, at=turn.now, answer=answer)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=what,
        athlete_id=proposal.athlete_id,
        actor_id=coach.id,
        after={"number": proposal.facts["number"], "answer": answer},
    )


def _open(
    turn: Turn, coach: Person, arguments: Mapping[str, Any]
) -> tuple[Proposal, Named] | Outcome:
    proposal = care.proposal(turn.tx, int(arguments["proposal"]))
    if proposal is None:
        return Outcome.STALE_TAP
    named = find_athlete.tapped(turn, coach, {"athlete": proposal.athlete_id})
    if isinstance(named, Outcome):
        return named
    if proposal.answered_at is not None or proposal.kind != KIND:
        said = coach_decisions.answered_before(turn.tongue(coach), name=named.person.name)
        turn.say(coach, said)
        return Outcome.STALE_TAP
    return proposal, named


def _show(turn: Turn, coach: Person, proposal: Proposal, person: Person) -> None:
    tongue = turn.tongue(coach)
    turn.say(
        coach,
        words.draft(
            tongue,
            name=person.name,
            title=words.title(tongue, number=int(proposal.facts["number"])),
            text=str(proposal.facts["text"]),
        ),
        kind=MessageKind.NOTICE,
        subject=subject_of(person),
        taps=_taps(turn, coach, proposal),
    )


def _taps(turn: Turn, coach: Person, proposal: Proposal) -> TapRows:
    tongue, about = turn.tongue(coach), {"proposal": proposal.id}
    return [
        [Tap(words.send_label(tongue), SEND, about)],
        [
            Tap(words.change_label(tongue), CHANGE, about),
            Tap(words.leave_label(tongue), LEAVE, about),
        ],
    ]


def _waits(turn: Turn, named: Named) -> bool:
    """Tell whether something graver waits than a look back."""
    return bool(
        care.open_alerts(turn.tx, athlete_id=named.person.id)
        or picture_of(turn, named.athlete).level >= Level.REST
        or named.athlete.state is not AthleteState.TRAINING
    )


def _plain(text: str) -> str:
    """Take the markup out: a draft is the coach's own text once it is sent."""
    return unescape(TAG.sub("", text))


TAPS = {SHOW: show, SEND: send, CHANGE: change, LEAVE: leave}
