"""Health, age and old injuries told anew: more care at once, less only by the coach's word."""

from collections.abc import Mapping, Sequence
from typing import Any

from bot.acts import draw_week, hold_for_look, intake_finish
from bot.acts.about_athlete import about_tapped
from bot.acts.find_athlete import Named
from bot.acts.intake_steps import (
    INJURY_TOPICS,
    INVERSION_TOPICS,
    SCREEN_TOPICS,
    SIGNS,
    waits_for_coach,
)
from bot.acts.old_injuries import injuries_of
from bot.acts.settings_change import record, say_to_coach
from bot.acts.settings_now import answers_of
from bot.acts.tell_athlete import tell
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import intake_end
from bot.wording import settings as words
from storage.queries import care, people
from storage.records.people import Athlete, AthleteState, Person, Profile
from storage.records.wire import MessageKind

KEYS = frozenset({"screen", "injury", "adult", "guardian"})
LIFTED = "settings.care_lifted"
UNTOLD = ""  # an injury was ticked, and its words are not told yet
IN_PERSON = "told in person"
Arguments = Mapping[str, Any]


def change(turn: Turn, person: Person, athlete: Athlete, key: str, value: Any) -> str | None:
    """Take an answer about care; return the question that it leads to."""
    match key:
        case "screen":
            return _screen(turn, person, athlete, frozenset(value))
        case "injury":
            _injury(turn, person, athlete, str(value))
        case "adult":
            return _age(turn, person, athlete, is_adult=bool(value))
        case _:
            _guardian(turn, person, athlete, str(value))
    return None


def _screen(turn: Turn, person: Person, athlete: Athlete, said: frozenset[str]) -> str | None:
    old = frozenset(athlete.profile.screen_yes)
    added, removed = said - old, old - said
    if added:
        athlete = _add_topics(turn, person, athlete, added)
    if removed:
        _ask_coach(turn, person, athlete, "screen", {"remove": _ordered(removed)})
    return "injury" if added & INJURY_TOPICS else None


def _add_topics(turn: Turn, person: Person, athlete: Athlete, added: frozenset[str]) -> Athlete:
    """Take new topics over at once; most of them hold the athlete until the coach has looked."""
    old = athlete.profile
    update: dict[str, Any] = {
        "screen_yes": _ordered({*old.screen_yes, *added}),
        "may_invert": old.may_invert and not INVERSION_TOPICS & added,
    }
    if added & INJURY_TOPICS:
        update |= {"lifted": frozenset(), "are_hangs_lifted": False}
        update["earlier_injury"] = old.earlier_injury or UNTOLD
    athlete = _save(turn, person, athlete, "screen", old.model_copy(update=update))
    coach = people.person(turn.tx, athlete.coach_id)
    is_held = waits_for_coach(_ordered(added))
    if is_held:
        athlete = hold_for_look.hold(turn, person, athlete)
        intake_finish.say_waits(turn, person, coach, _ordered(added))
    else:
        draw_week.redraw(turn, person, athlete)
    text = words.topics_to_coach(
        turn.tongue(coach),
        name=person.name,
        topics=_ordered(added),
        has_signs=bool(added & set(SIGNS)),
        is_held=is_held,
    )
    say_to_coach(turn, coach, person, text, taps=[_let_tap(turn, coach, person)] if is_held else [])
    return athlete


def _injury(turn: Turn, person: Person, athlete: Athlete, said: str) -> None:
    """Add words about an old injury; they never narrow what an earlier one holds."""
    old = athlete.profile
    named = injuries_of(said, screen=frozenset(old.screen_yes))
    if not old.earlier_injury:
        update: dict[str, Any] = {"earlier_injury": said or IN_PERSON, "injuries": named}
    else:
        is_all = not old.injuries or not named  # where no joint is named, every one is meant
        merged = (
            () if is_all else (*old.injuries, *(one for one in named if one not in old.injuries))
        )
        update = {"earlier_injury": f"{old.earlier_injury}. {said}", "injuries": merged}
    update |= {"lifted": frozenset(), "are_hangs_lifted": False}
    athlete = _save(turn, person, athlete, "injury", old.model_copy(update=update))
    draw_week.redraw(turn, person, athlete)
    coach = people.person(turn.tx, athlete.coach_id)
    text = words.injury_to_coach(turn.tongue(coach), name=person.name, said=said)
    say_to_coach(turn, coach, person, text)


def _age(turn: Turn, person: Person, athlete: Athlete, *, is_adult: bool) -> str | None:
    """Somebody under 18 waits; that somebody is of age now is for the coach to take over."""
    if is_adult:
        _ask_coach(turn, person, athlete, "adult", {})
        return None
    athlete = _save(
        turn, person, athlete, "adult", athlete.profile.model_copy(update={"is_adult": False})
    )
    hold_for_look.hold(turn, person, athlete)
    coach = people.person(turn.tx, athlete.coach_id)
    text = words.minor_to_coach(turn.tongue(coach), name=person.name)
    say_to_coach(turn, coach, person, text, taps=[_let_tap(turn, coach, person)])
    told = words.guardian_first(turn.tongue(person), coach=coach.name)
    turn.say(person, told, kind=MessageKind.SAFETY)
    return "guardian"


def _guardian(turn: Turn, person: Person, athlete: Athlete, contact: str) -> None:
    profile = athlete.profile.model_copy(update={"guardian": contact})
    athlete = _save(turn, person, athlete, "guardian", profile)
    coach = people.person(turn.tx, athlete.coach_id)
    text = words.guardian_to_coach(turn.tongue(coach), name=person.name, contact=contact)
    say_to_coach(turn, coach, person, text)


def _save(turn: Turn, person: Person, athlete: Athlete, key: str, new: Profile) -> Athlete:
    before = answers_of(person, athlete)[key]
    saved = people.change_athlete(turn.tx, person.id, profile=new)
    record(turn, person, key, before, answers_of(person, saved)[key])
    return saved


def _ask_coach(turn: Turn, person: Person, athlete: Athlete, key: str, about: Arguments) -> None:
    """What would lift care stays as it is, and the coach is asked."""
    coach = people.person(turn.tx, athlete.coach_id)
    topics = about.get("remove", ())
    tongue = turn.tongue(coach)
    text = words.lift_question(
        tongue, name=person.name, topics=topics, has_signs=bool(set(topics) & set(SIGNS))
    )
    told = {"athlete": person.id, "key": key, **about}
    taps = [
        Tap(words.lift_label(tongue), "coach.setting_yes", told),
        Tap(words.leave_label(tongue), "coach.setting_no", told),
    ]
    say_to_coach(turn, coach, person, text, taps=taps)
    turn.say(person, words.coach_is_asked(turn.tongue(person), coach=coach.name))


@about_tapped
def take_off(
    turn: Turn, coach: Person, found: Named, arguments: Arguments, event: Tapped
) -> Outcome:
    """The coach takes an answer off that held something back."""
    tongue, old = turn.tongue(coach), found.athlete.profile
    new = _without(old, arguments)
    if new == old:
        turn.answer_tap(coach, event.message_id, words.nothing_to_lift(tongue))
        return Outcome.STALE_TAP
    athlete = people.change_athlete(turn.tx, found.person.id, profile=new)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=LIFTED,
        athlete_id=found.person.id,
        actor_id=coach.id,
        before={"setting": arguments["key"], "value": list(old.screen_yes)},
        after={"setting": arguments["key"], "value": list(new.screen_yes)},
    )
    draw_week.redraw(turn, found.person, athlete)
    tell(turn, found.person, words.lifted_to_athlete(turn.tongue(found.person), coach=coach.name))
    is_waiting = athlete.state is AthleteState.WAITS_FOR_COACH
    text = words.lifted_to_coach(tongue, name=found.person.name, is_waiting=is_waiting)
    turn.answer_tap(coach, event.message_id, text)
    return Outcome.COMMAND


@about_tapped
def leave(turn: Turn, coach: Person, found: Named, _arguments: Arguments, event: Tapped) -> Outcome:
    """The coach leaves it as it is, and the athlete hears it."""
    tell(turn, found.person, words.left_to_athlete(turn.tongue(found.person), coach=coach.name))
    text = words.left_to_coach(turn.tongue(coach), name=found.person.name)
    turn.answer_tap(coach, event.message_id, text)
    return Outcome.COMMAND


def _without(old: Profile, arguments: Arguments) -> Profile:
    if arguments["key"] == "adult":
        return old.model_copy(update={"is_adult": True, "guardian": None})
    kept = tuple(one for one in old.screen_yes if one not in set(arguments["remove"]))
    update: dict[str, Any] = {
        "screen_yes": kept,
        "may_invert": old.may_invert or not INVERSION_TOPICS & set(kept),
    }
    if not INJURY_TOPICS & set(kept):
        update |= {"earlier_injury": None, "injuries": ()}
    return old.model_copy(update=update)


def _ordered(topics: Sequence[str] | frozenset[str] | set[str]) -> tuple[str, ...]:
    return tuple(one for one in SCREEN_TOPICS if one in topics)


def _let_tap(turn: Turn, coach: Person, person: Person) -> Tap:
    label = intake_end.let_start_label(turn.tongue(coach), is_guardian=False)
    return Tap(label, "coach.let_start", {"athlete": person.id, "is_guardian": False})


COACH_TAPS = {"coach.setting_yes": take_off, "coach.setting_no": leave}
