"""One movement of one athlete as a picture: capacity, asked and done, pain beneath."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from bot.acts import capacity, limits, pain_scores
from bot.acts.about_athlete import about_tapped
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, subject_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.pictures.values import CoursePoint, HistoryDay, HistoryPicture
from bot.turn import Shot, Tap, TapRows, Turn
from bot.wording import history_picture as words
from bot.wording import pictures as picture_words
from bot.wording.history_picture import MovementHistory
from bot.wording.movement_names import name_of
from bot.wording.tongue import Tongue
from scheduler.catalogue.values import Movement, Sides
from scheduler.pain.values import Side
from scheduler.training.capacity import Observation, estimate
from scheduler.training.dose_facts import DoseFacts
from scheduler.training.exposure_reading import sets_of_arm
from scheduler.training.real_change import likely_range
from scheduler.training.tries import reference_of
from scheduler.training.values import Exposure, Quality, Rung
from storage.records.people import Athlete, Person

ACT = "coach.history"
OTHERS_MOST = 6  # [buttons] ch: more movements than are trained in a week
BUTTONS_A_ROW = 2  # [buttons] ch: a movement's name must stay readable
A_DAY = timedelta(days=1)


def send(turn: Turn, person: Person, athlete: Athlete, movement_key: str) -> Outcome:
    """Send an athlete their own picture of one movement."""
    return _send_to(turn, person, person, athlete, movement_key)


@about_tapped
def tapped(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The coach's button: the foremost movement first, the others by a button beneath."""
    person, athlete = found.person, found.athlete
    movements = limits.lately_trained(turn, athlete, today=local_today(turn, person))
    asked = arguments.get("movement")
    key = asked or next((one.key for one in movements), None)
    if key is None:
        text = words.nothing_trained(turn.tongue(coach), name=person.name)
        turn.say(coach, text, subject=subject_of(person))
        return Outcome.COMMAND
    others = [one for one in movements if one.key != key][:OTHERS_MOST]
    return _send_to(
        turn, coach, person, athlete, str(key), taps=_taps(turn.tongue(coach), person, others)
    )


def _taps(tongue: Tongue, person: Person, others: Sequence[Movement]) -> TapRows:
    taps = [
        Tap(
            words.movement_label(tongue, name_of(tongue, one)),
            ACT,
            {"athlete": person.id, "movement": one.key},
        )
        for one in others
    ]
    return [taps[at : at + BUTTONS_A_ROW] for at in range(0, len(taps), BUTTONS_A_ROW)]


def _send_to(
    turn: Turn, to: Person, person: Person, athlete: Athlete, key: str, *, taps: TapRows = ()
) -> Outcome:
    movement = turn.house.library.movements.get(key)
    if movement is None:
        turn.say(to, words.unknown(turn.tongue(to)))
        return Outcome.NOT_UNDERSTOOD
    turn.send_picture(to, shot_of(turn, to, person, athlete, movement), taps=taps)
    return Outcome.COMMAND


def foremost_shot(turn: Turn, to: Person, person: Person, athlete: Athlete) -> Shot | None:
    """Return the picture of an athlete's foremost movement; None where none was trained lately."""
    movements = limits.lately_trained(turn, athlete, today=local_today(turn, person))
    return shot_of(turn, to, person, athlete, movements[0]) if movements else None


def shot_of(turn: Turn, to: Person, person: Person, athlete: Athlete, movement: Movement) -> Shot:
    """Gather one movement's picture in the reader's words."""
    tongue, today = turn.tongue(to), local_today(turn, person)
    found = facts_of(turn, person, athlete, movement, today=today)
    facts = replace(found, is_named=to.id != person.id)
    first = min([*(one.on for one in facts.days), *(one.on for one in facts.pain)], default=today)
    return Shot(
        picture=HistoryPicture(
            words=words.words(tongue, facts),
            first=first,
            last=today,
            days=tuple(facts.days),
            course=tuple(facts.course),
            pain=tuple(facts.pain),
            ticks=picture_words.ticks(tongue, first, today),
        ),
        caption=words.caption(tongue, facts),
        subject=subject_of(person) if to.id != person.id else None,
    )


def facts_of(
    turn: Turn, person: Person, athlete: Athlete, movement: Movement, *, today: date
) -> MovementHistory:
    """Collect what was asked, done and estimated of a movement, and what hurt meanwhile."""
    known = capacity.seen(turn, person.id, movement, before=today + A_DAY)
    since = known.own[0].on if known.own else today - limits.COMPARED
    dose = known.own[-1].dose if known.own else None
    arm, course = _course(turn, athlete, movement, known)
    return MovementHistory(
        name=person.name,
        movement=movement,
        dose=dose,
        arm=arm,
        days=_days(known.own, arm=arm),
        course=[one for one in course if one.on >= since],
        pain=pain_scores.highest_of_days(turn, person, since=since),
    )


def _days(own: Sequence[Exposure], *, arm: Side) -> list[HistoryDay]:
    newest = own[-1].dose.rung if own else None
    found = []
    for one in own:
        done = sets_of_arm(one, arm=arm)
        if not done:
            continue
        last = done[-1]
        rung = one.dose.rung if last.rung is None else last.rung
        found.append(
            HistoryDay(
                on=one.on,
                asked=one.dose.target,
                done=max(0.0, last.value),
                is_other_load=rung != newest,
            )
        )
    return found


def _course(
    turn: Turn, athlete: Athlete, movement: Movement, known: capacity.Known
) -> tuple[Side, list[CoursePoint]]:
    """Return the weaker arm, and its estimate as it stood behind each look."""
    arms = (Side.LEFT, Side.RIGHT) if movement.sides is Sides.EACH else (Side.BOTH,)
    if not known.own:
        return Side.BOTH, []
    rung = known.own[-1].dose.rung
    facts = DoseFacts(
        movement=movement,
        quality=Quality.MUSCULAR_ENDURANCE,
        profile=athlete.profile.facts,
        planned_sets=1,
        weeks_trained=0,
    )
    reference_kg = reference_of(rung, facts=facts)
    looks = {
        arm: capacity.looks_of(turn, known, arm=arm, facts=facts, reference_kg=reference_kg)
        for arm in arms
    }
    ends = {
        arm: end.level.mean
        for arm, seen in looks.items()
        if (end := estimate(seen, rulebook=turn.house.rulebook)) is not None
    }
    if not ends:
        return arms[0], []
    weaker = min(ends, key=lambda arm: ends[arm])
    return weaker, _points(turn, looks[weaker], rung=rung, facts=facts)


def _points(
    turn: Turn, looks: Sequence[Observation], *, rung: Rung, facts: DoseFacts
) -> list[CoursePoint]:
    by_day: dict[date, CoursePoint] = {}
    for count in range(1, len(looks) + 1):
        known = estimate(looks[:count], rulebook=turn.house.rulebook)
        if known is None or known.observations < limits.LOOKS_LEAST:
            continue  # fewer say little, here as on the athlete's screen
        least, most = likely_range(known)
        values = [
            capacity.value_at_rung(value, rung=rung, facts=facts)
            for value in (least, known.value, most)
        ]
        if values[0] > 0:
            by_day[known.on] = CoursePoint(
                on=known.on, least=values[0], likely=values[1], most=values[2]
            )
    return [by_day[on] for on in sorted(by_day)]


TAPS = {ACT: tapped}
