"""Red flags: read first on every message, asked about where in doubt, never argued away."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import cache
from typing import Any

from bot.acts import intake_resume, pain_consequences, pain_picture
from bot.acts.emergency_number import number_for
from bot.acts.item_facts import sent_items
from bot.acts.pass_on import tell_coach
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.reading.movements_only import is_movements_only, names_pattern
from bot.reading.red_flags import FlagCandidate, RedFlagReading, read_red_flags
from bot.turn import Tap, TapRows, Turn
from bot.wording import red_flags as words
from bot.wording.catalogue.spoken import SPOKEN
from bot.wording.movement_names import names_to_read
from bot.wording.tongue import tongue_of
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Demand
from scheduler.pain.events import Certainty, FlagAnswered, FlagRaised
from scheduler.pain.picture import FlagPicture
from scheduler.pain.red_flags import RED_FLAGS, RedFlag, Stops, severity
from scheduler.pain.tap_list import TapLine
from scheduler.pain.values import Side
from storage.queries import care, people, training
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

TINGLES = frozenset({RedFlag.NUMB_OR_WEAK, RedFlag.TINGLING_PASSED})
BY_LIKENESS = frozenset({RedFlag.UNCLEAR_EMERGENCY, RedFlag.UNCLEAR_SIGN})
"""What no rule names: the message only reads like others that carry a sign."""


def is_raised(text: str) -> bool:
    """Tell whether a text raises anything that needs a person."""
    return bool(_read(text).candidates)


def _read(text: str) -> RedFlagReading:
    """Read a text; names of movements and figures alone are like no sign.

    What a rule raises stands, whatever it stands beside.
    """
    reading = read_red_flags(text)
    is_likeness = {one.flag for one in reading.candidates} <= BY_LIKENESS
    if not reading.candidates or not is_likeness or not is_movements_only(text, _movements()):
        return reading
    return replace(reading, candidates=())


@cache
def _movements() -> re.Pattern[str]:
    """Return what finds the names of the library's movements, in every language spoken."""
    return names_pattern(
        name
        for movement in default_library().movements.values()
        for language in SPOKEN
        for name in names_to_read(tongue_of(language), movement)
    )


def listen(
    turn: Turn, person: Person, athlete: Athlete, text: str, *, message_id: int
) -> RedFlagReading:
    """Listen to a message and act on what it raises, whatever else it says."""
    reading = _read(text)
    if reading.asks_about_medicine:
        _defer_medicine(turn, person, athlete, "" if reading.is_private else text)
    if not reading.candidates:
        return reading
    fresh_ones = _not_raised_by(turn, athlete, reading.candidates, message_id)
    if not fresh_ones:
        return reading
    before = pain_picture.picture_of(turn, athlete)
    for candidate in fresh_ones:
        _record(turn, athlete, candidate, reading, message_id)
    flags = pain_picture.picture_of(turn, athlete).flags
    known = {flag.key for flag in before.flags}
    # What to do is said first, then what changes in the session.
    _answer(turn, person, athlete, [one for one in flags if one.key not in known] or list(flags))
    # What a private sign was said with goes no further, not even beside another sign.
    said = "" if reading.is_private else text
    pain_consequences.follow(turn, person, athlete, before, words_said=said)
    return reading


def _not_raised_by(
    turn: Turn, athlete: Athlete, candidates: Sequence[FlagCandidate], message_id: int
) -> list[FlagCandidate]:
    """Leave out what this message raised before it was edited: nobody is told of it twice."""
    ids = set(care.pain_events_from_message(turn.tx, athlete.person_id, message_id))
    raised = {
        event.get("flag")
        for event_id, event in care.pain_events(turn.tx, athlete.person_id)
        if event_id in ids
    }
    return [one for one in candidates if one.flag.value not in raised]


def raise_tapped(
    turn: Turn, person: Person, athlete: Athlete, flag: RedFlag, line: TapLine
) -> None:
    """A line of the short list was tapped: it counts as the gravest of its group until asked."""
    before = pain_picture.picture_of(turn, athlete)
    event = FlagRaised(
        key=pain_picture.new_key(turn, person.id),
        at_utc=turn.now,
        flag=flag,
        certainty=Certainty.ASKED,
    )
    pain_picture.record_event(turn, person.id, event)
    said = words.tapped_line(turn.tongue(person), line)
    flags = pain_picture.picture_of(turn, athlete).flags
    _answer(turn, person, athlete, [one for one in flags if one.key == event.key])
    pain_consequences.follow(turn, person, athlete, before, words_said=said)


def answered(turn: Turn, person: Person, arguments: Mapping[str, Any], event: Tapped) -> Outcome:
    """The question about a doubt was answered by a tap."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    before = pain_picture.picture_of(turn, athlete)
    flag = next((one for one in before.flags if one.key == arguments["flag"]), None)
    tongue = turn.tongue(person)
    if flag is None or flag.certainty is not Certainty.ASKED:
        turn.say(person, words.already_passed_on(tongue), kind=MessageKind.SAFETY)
        return Outcome.STALE_TAP
    certainty = Certainty(arguments["certainty"])
    pain_picture.record_event(
        turn,
        person.id,
        FlagAnswered(
            key=pain_picture.new_key(turn, person.id),
            at_utc=turn.now,
            flag_key=flag.key,
            certainty=certainty,
        ),
    )
    _note_answer(turn, person, flag, certainty)
    has_passed = certainty is Certainty.DENIED and flag.is_in_hang and flag.flag in TINGLES
    if has_passed:
        _note_passing(turn, person, flag)
    after = pain_consequences.follow(
        turn,
        person,
        athlete,
        before,
        words_said="" if flag.is_private else words.answer_said(tongue, flag.follow_up, certainty),
    )
    coach = people.person(turn.tx, athlete.coach_id)
    told = RedFlag.TINGLING_PASSED if has_passed else flag.flag
    text = (
        words.denied(tongue, coach=coach.name)
        if certainty is Certainty.DENIED and not has_passed
        else words.told(
            tongue,
            told,
            coach=coach.name,
            number=number_for(turn, person, coach),
            stops=Stops.ITEM if has_passed else flag.stops,
        )
    )
    # What is no sign may still hurt: then it is told by the usual taps.
    hurts = [[Tap(tongue.say("Something hurts"), "pain.where", {"session": None})]]
    taps = hurts if certainty is Certainty.DENIED else []
    if event.message_id is not None:
        turn.change(person, event.message_id, text, taps=taps)
    else:
        turn.say(person, text, kind=MessageKind.SAFETY, taps=taps)
    if certainty is Certainty.DENIED:
        ask_open(turn, person, athlete, after.flags)
    intake_resume.resume(turn, person, athlete)
    return Outcome.SAFETY


def ask_open(turn: Turn, person: Person, athlete: Athlete, flags: Sequence[FlagPicture]) -> bool:
    """Ask about the gravest doubt that still stands; False where there is none."""
    doubts = [one for one in flags if one.certainty is Certainty.ASKED]
    if not doubts:
        return False
    _answer(turn, person, athlete, [max(doubts, key=lambda one: severity(one.flag))])
    return True


def _note_answer(turn: Turn, person: Person, flag: FlagPicture, certainty: Certainty) -> None:
    """Leave a line for the coach, also where nobody was told yet; nothing of a private sign."""
    care.write_audit(
        turn.tx,
        at=turn.now,
        what="flag.answered",
        athlete_id=person.id,
        actor_id=person.id,
        reasons=() if flag.is_private else flag.reasons,
        after={} if flag.is_private else {"flag": flag.flag.value, "answer": certainty.value},
    )


def _note_passing(turn: Turn, person: Person, flag: FlagPicture) -> None:
    """A tingle in a hang that is gone within minutes takes the item out and nothing else."""
    passed = FlagRaised(
        key=pain_picture.new_key(turn, person.id),
        at_utc=turn.now,
        flag=RedFlag.TINGLING_PASSED,
        certainty=Certainty.CONFIRMED,
        movement=flag.movement,
        is_in_hang=True,
    )
    pain_picture.record_event(turn, person.id, passed)


def _record(
    turn: Turn,
    athlete: Athlete,
    candidate: FlagCandidate,
    reading: RedFlagReading,
    message_id: int,
) -> None:
    """Write the sign down; only one that stops its place and no more is bound to a place."""
    is_of_a_place = RED_FLAGS[candidate.flag].stops is Stops.REGION
    pain = reading.pain if is_of_a_place else None
    is_tingle = reading.is_in_hang and candidate.flag in TINGLES
    event = FlagRaised(
        key=pain_picture.new_key(turn, athlete.person_id),
        at_utc=turn.now,
        flag=candidate.flag,
        certainty=candidate.certainty.certainty,
        site=pain.site if pain else None,
        side=(pain.side if pain else None) or Side.BOTH,
        movement=_hung_from(turn, athlete) if is_tingle else None,
        is_in_hang=is_tingle,
    )
    pain_picture.record_event(turn, athlete.person_id, event, message_id=message_id)


def _hung_from(turn: Turn, athlete: Athlete) -> str | None:
    """Return the movement of the open session that pulls at the arms, if there is just one."""
    found = {
        item.movement_key
        for session in training.open_sessions(turn.tx, athlete.person_id)[:1]
        for item in sent_items(session)
        if Demand.TRACTION in turn.house.library.movements[item.movement_key].demands
    }
    return found.pop() if len(found) == 1 else None


def _answer(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    flags: list[FlagPicture],
) -> None:
    """Tell the athlete what to do about the gravest, and ask about what is in doubt."""
    if not flags:
        return
    coach = people.person(turn.tx, athlete.coach_id)
    tongue = turn.tongue(person)
    worst = max(flags, key=lambda one: severity(one.flag))
    text = words.told(
        tongue,
        worst.flag,
        coach=coach.name,
        number=number_for(turn, person, coach),
        stops=worst.stops,
    )
    taps: TapRows = ()
    if worst.certainty is Certainty.ASKED:
        text = words.asked(
            tongue, worst.flag, coach=coach.name, number=number_for(turn, person, coach)
        )
        taps = _question_taps(turn, person, worst)
    turn.say(person, text, kind=MessageKind.SAFETY, taps=taps)


def _question_taps(turn: Turn, person: Person, flag: FlagPicture) -> TapRows:
    tongue = turn.tongue(person)
    yes, no = words.question_labels(tongue, RED_FLAGS[flag.flag].follow_up)
    return [
        [Tap(yes, "flag.answer", {"flag": flag.key, "certainty": Certainty.CONFIRMED.value})],
        [Tap(no, "flag.answer", {"flag": flag.key, "certainty": Certainty.DENIED.value})],
    ]


def _defer_medicine(turn: Turn, person: Person, athlete: Athlete, text: str) -> None:
    """Questions about medicine or a diagnosis are for licensed people; the coach sees them."""
    coach = people.person(turn.tx, athlete.coach_id)
    turn.say(
        person,
        words.medicine_deferred(turn.tongue(person), coach=coach.name),
        kind=MessageKind.SAFETY,
    )
    if text:
        care.pass_on(turn.tx, athlete_id=person.id, words=text, at=turn.now)
        told = words.medicine_to_coach(turn.tongue(coach), person.name, text)
        tell_coach(turn, coach, person, told)
