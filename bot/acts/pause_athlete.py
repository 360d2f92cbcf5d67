"""``/pause NAME 2 weeks reason``: a break that the coach gives, and its end."""

import re
from collections.abc import Mapping
from datetime import date, timedelta
from typing import Any

from bot.acts import ask_why, cant_today, coach_question
from bot.acts.about_athlete import Arguments, about_tapped, entries
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.acts.tell_athlete import tell
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_changes
from bot.wording import coach_rest as words
from storage.queries import people
from storage.records.people import AthleteState, Person

GO, BACK, AGAIN = "pause.go", "pause.back", "pause.again"
OFF = re.compile(r"\s*(?:off|end|over|stop)\b[\s,.:;-]*(?P<why>.*)", re.IGNORECASE | re.DOTALL)
OWN = re.compile(r"\s*(?:$|\d|(?:off|end|stop)\b)", re.IGNORECASE)
USUAL_WEEKS = (1, 2, 4)  # [weeks] ch: what is offered by taps
WHYS = ("ill", "travelling", "holiday", "load")
MAY_PAUSE = {AthleteState.TRAINING, AthleteState.PAUSED}


def ask_or_change(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Read how long, or the end; what is missing is asked by buttons."""
    tongue, name = turn.tongue(coach), named.person.name
    if named.athlete.state not in MAY_PAUSE:
        turn.say(coach, words.not_training(tongue, name=name), subject=subject_of(named.person))
        return Outcome.NOT_UNDERSTOOD
    if (ends := OFF.match(named.rest)) is not None:
        return _go_on(turn, coach, named, {"until": None, "why": ends["why"].strip()})
    until = cant_today.pause_end(named.rest, local_today(turn, named.person))
    if until is None:
        return _ask_length(turn, coach, named)
    found = cant_today.PAUSE.search(named.rest)
    beside = named.rest[: found.start()] + named.rest[found.end() :] if found else ""
    why = beside.strip(" ,.:;—-")
    return _go_on(turn, coach, named, {"until": until.isoformat(), "why": why})


def _ask_length(turn: Turn, coach: Person, named: Named) -> Outcome:
    tongue, today = turn.tongue(coach), local_today(turn, named.person)
    about = {"athlete": named.person.id, "why": named.rest.strip()}
    lengths = [
        Tap(
            words.weeks_label(tongue, weeks),
            GO,
            {**about, "until": (today + timedelta(weeks=weeks)).isoformat()},
        )
        for weeks in USUAL_WEEKS
    ]
    is_paused = named.athlete.state is AthleteState.PAUSED
    end = [[Tap(words.end_label(tongue), GO, {**about, "until": None})]] if is_paused else []
    text = (
        words.on_a_break(tongue, name=named.person.name, until=named.athlete.paused_until)
        if is_paused
        else words.how_long(tongue, name=named.person.name)
    )
    turn.say(coach, text, taps=[*end, lengths], subject=subject_of(named.person))
    return Outcome.ASKED


@about_tapped
def chosen(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """The length, the end or the reason was tapped or written."""
    coach_question.close(turn, coach)
    if named.athlete.state not in MAY_PAUSE:
        turn.say(coach, words.pause_changed_since(turn.tongue(coach), name=named.person.name))
        return Outcome.STALE_TAP
    return _go_on(turn, coach, named, arguments)


def _go_on(turn: Turn, coach: Person, named: Named, arguments: Mapping[str, Any]) -> Outcome:
    tongue, until = turn.tongue(coach), _until(arguments)
    is_over = until is not None and until <= local_today(turn, named.person)
    if is_over or (until is None and named.athlete.state is not AthleteState.PAUSED):
        turn.say(coach, words.not_on_a_break(tongue, name=named.person.name))
        return Outcome.NOT_UNDERSTOOD
    why = str(arguments["why"]).strip()
    if not why:
        what = words.pause_what(tongue, until=until) if until else words.end_what(tongue)
        request = {"athlete": named.person.id, "until": arguments["until"]}
        whys = WHYS if until else ("back",)
        return ask_why.ask(
            turn,
            coach,
            named.person,
            act=GO,
            request=request,
            text=coach_changes.ask_why(tongue, what=what),
            whys=whys,
        )
    if until is None:
        return _end(turn, coach, named, why=why)
    return _begin(turn, coach, named, until, why=why)


def _until(arguments: Mapping[str, Any]) -> date | None:
    said = arguments["until"]
    return date.fromisoformat(str(said)) if said else None


def _begin(turn: Turn, coach: Person, named: Named, until: date, *, why: str) -> Outcome:
    person, tongue = named.person, turn.tongue(coach)
    before = named.athlete.paused_until
    cant_today.begin_break(turn, person, until=until, by=coach, why=why)
    told = words.paused_to_athlete(turn.tongue(person), coach=coach.name, until=until)
    is_told = tell(turn, person, told)
    back = {
        "athlete": person.id,
        "until": until.isoformat(),
        "before": before.isoformat() if before else None,
    }
    turn.say(
        coach,
        words.paused(tongue, name=person.name, until=until, why=why, is_told=is_told),
        taps=[[Tap(coach_changes.take_back_label(tongue), BACK, back)]],
        subject=subject_of(person),
    )
    return Outcome.COMMAND


def _end(turn: Turn, coach: Person, named: Named, *, why: str) -> Outcome:
    person = named.person
    tell(turn, person, words.pause_ended_to_athlete(turn.tongue(person), coach=coach.name))
    cant_today.end_break(turn, person, by=coach, why=why)
    tongue, was = turn.tongue(coach), named.athlete.paused_until
    again = {"athlete": person.id, "until": was.isoformat() if was else None}
    turn.say(
        coach,
        words.pause_ended(tongue, name=person.name),
        taps=[[Tap(coach_changes.take_back_label(tongue), AGAIN, again)]] if was else (),
        subject=subject_of(person),
    )
    return Outcome.COMMAND


@about_tapped
def begin_again(
    turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped
) -> Outcome:
    """Undo the end of a break that would not be over yet."""
    until = _until(arguments)
    is_ahead = until is not None and until > local_today(turn, named.person)
    if until is None or not is_ahead or named.athlete.state is not AthleteState.TRAINING:
        turn.say(coach, words.pause_changed_since(turn.tongue(coach), name=named.person.name))
        return Outcome.STALE_TAP
    why = coach_changes.take_back_label(turn.tongue(coach))
    return _begin(turn, coach, named, until, why=why)


@about_tapped
def take_back(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """Undo a break that still stands: it ends, or lasts as long as it did before."""
    until, before = _until(arguments), arguments.get("before")
    is_same = named.athlete.state is AthleteState.PAUSED and named.athlete.paused_until == until
    if not is_same:
        turn.say(coach, words.pause_changed_since(turn.tongue(coach), name=named.person.name))
        return Outcome.STALE_TAP
    why = coach_changes.take_back_label(turn.tongue(coach))
    earlier = date.fromisoformat(str(before)) if before else None
    if earlier is not None and earlier > local_today(turn, named.person):
        return _begin(turn, coach, named, earlier, why=why)
    return _end(turn, coach, named, why=why)


_about_others, picked = entries(ask_or_change, act="pause.who", example=words.PAUSE_EXAMPLE)


def command(turn: Turn, coach: Person, text: str, event: Wrote) -> Outcome:
    """``/pause NAME 2 weeks reason``; a coach who is an athlete too pauses by the length alone."""
    if people.athlete(turn.tx, coach.id) is not None and OWN.match(text):
        return cant_today.pause(turn, coach, text, event)
    return _about_others(turn, coach, text, event)


TAPS = {"pause.who": picked, GO: chosen, BACK: take_back, AGAIN: begin_again}
