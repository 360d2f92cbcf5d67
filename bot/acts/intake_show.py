"""What an open question of the intake looks like: text and buttons."""

from collections.abc import Collection, Iterable, Mapping, Sequence
from typing import Any

from bot.acts import intake_steps
from bot.acts.emergency_number import number_for
from bot.acts.intake_answers import Several
from bot.acts.intake_profile import kept_answers
from bot.acts.intake_steps import AGREE, BY_KEY, GUARDIAN_WAIT, REVIEW, Step
from bot.turn import Tap, TapRows, Turn
from bot.wording import intake as words
from bot.wording import intake_end as end_words
from bot.wording import joining
from bot.wording.places import place_labels
from bot.wording.tongue import Tongue
from scheduler.calendar.zones import zone_named
from scheduler.pain.emergency_numbers import country_of_zone
from storage import buttons
from storage.queries import people
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

DRAFT = "draft"  # the key of what is toggled and not yet done
ADDS = "draft_adds"  # the key that says: what is written next is added to the draft
ZONE = "zone"
CHANGES_A_ROW = 2  # [buttons] ch: a name of two words each

Answers = Mapping[str, Any]


def ask(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    key: str,
    answers: Answers,
    *,
    noted: str = "",
    unclear: str = "",
    several: Several | None = None,
    message_id: int | None = None,
) -> None:
    """Ask what is open, in a new message or in the one that was tapped."""
    tongue, coach = turn.tongue(person), people.person(turn.tx, athlete.coach_id)
    wrong = words.unclear(tongue, unclear) if unclear else ""
    if several is not None:
        wrong = words.unclear(tongue, "which_place" if key == ZONE else "which_hour")
    match key:
        case _ if key == AGREE:
            terms = joining.conditions(
                tongue, name=person.name, coach=coach.name, number=number_for(turn, person, coach)
            )
            text = wrong or terms  # who read them a moment ago needs no second copy
            turn.say(person, text, kind=MessageKind.SAFETY, taps=_agree_taps(tongue))
            return
        case _ if key == GUARDIAN_WAIT:
            text = end_words.guardian_waits(tongue, coach=coach.name)
            turn.say(person, text, kind=MessageKind.SAFETY)
            return
        case _ if key == REVIEW:
            kept = tuple(kept_answers(answers).items())
            text = end_words.summary(tongue, kept, above=wrong or noted)
            taps: TapRows = _review_taps(tongue, [name for name, _ in kept])
        case _:
            text = _question(tongue, key, answers, coach, noted or wrong)
            taps = _question_taps(turn, tongue, key, answers, coach, several)
    if message_id is None:
        _close_others(turn, person)
        turn.say(person, text, kind=MessageKind.QUESTION, taps=taps)
    else:
        turn.change(person, message_id, text, taps=taps)


def without_draft(answers: Answers) -> dict[str, Any]:
    """Return the answers without what is only toggled."""
    return {name: one for name, one in answers.items() if name not in {DRAFT, ADDS}}


def _close_others(turn: Turn, person: Person) -> None:
    """What is typed from now on answers this question; older ones keep their buttons."""
    if person.chat_id is not None:
        buttons.close_question(turn.tx, person.chat_id)


def play_back(turn: Turn, person: Person, key: str, value: Any, *, message_id: int | None) -> str:
    """Put the answer in place of the question that was tapped, or return it for the next one."""
    text = words.answered(turn.tongue(person), key, value)
    if message_id is None:
        return text
    turn.change(person, message_id, text)
    return ""


def _question(tongue: Tongue, key: str, answers: Answers, coach: Person, above: str) -> str:
    place, of = intake_steps.place_of(key, answers)
    return words.question(tongue, key, coach=coach.name, place=place, of=of, above=above)


def _question_taps(
    turn: Turn,
    tongue: Tongue,
    key: str,
    answers: Answers,
    coach: Person,
    several: Several | None,
) -> TapRows:
    step = BY_KEY[key]
    taps = choice_taps(tongue, step, answers.get(DRAFT, ()))
    if key == ZONE:
        taps = zone_taps(turn, tongue, several or Several((coach.zone,)))
    elif several is not None:
        taps = hour_taps(tongue, key, several)
    if intake_steps.key_before(key, answers) is not None:
        taps = [*taps, [Tap(words.back_label(tongue), "intake.back", {"step": key})]]
    return taps


def choice_taps(
    tongue: Tongue,
    step: Step,
    draft: Sequence[Any],
    *,
    acts: str = "intake",
    about: Mapping[str, Any] | None = None,
) -> list[list[Tap]]:
    """Return the buttons of a question; ``draft`` is what is chosen so far of several.

    ``acts`` names who hears the taps: the intake, which remembers the draft, or the settings,
    whose buttons carry it ``about`` themselves.
    """
    chosen = draft if step.is_many else ()
    act = f"{acts}.toggle" if step.is_many else f"{acts}.answer"
    extra = [one for one in chosen if one not in step.choices]
    told = {"step": step.key, **(about or {})}
    taps = [
        Tap(
            words.choice_label(tongue, step.key, value, is_chosen=value in chosen),
            act,
            {**told, "value": value},
        )
        for value in (*step.choices, *extra)
    ]
    end = [_end_taps(tongue, step, f"{acts}.done", told)] if step.is_many else []
    return [*in_rows(taps, step.a_row), *end]


def _end_taps(tongue: Tongue, step: Step, act: str, about: Mapping[str, Any]) -> list[Tap]:
    done = Tap(words.done_label(tongue), act, about)
    if step.needs_one:
        return [done]
    return [Tap(words.none_label(tongue), act, {**about, "is_none": True}), done]


def zone_taps(
    turn: Turn, tongue: Tongue, places: Several, *, acts: str = "intake"
) -> list[list[Tap]]:
    """Return a button for each zone: its place, and what its clock shows now."""
    zones = list(dict.fromkeys(places.values))
    names = dict(zip(places.values, places.names, strict=False))
    labels = place_labels(
        tongue,
        [(zone, names.get(zone, ""), country_of_zone(zone)) for zone in zones],
        clocks=[turn.now.astimezone(zone_named(zone)).time() for zone in zones],
    )
    return [
        [Tap(text, f"{acts}.answer", {"step": ZONE, "value": zone})]
        for text, zone in zip(labels, zones, strict=True)
    ]


def hour_taps(tongue: Tongue, key: str, hours: Several, *, acts: str = "intake") -> list[list[Tap]]:
    """Return a button for each hour that may be meant."""
    return [
        [Tap(words.hour_label(tongue, one), f"{acts}.answer", {"step": key, "value": one})]
        for one in hours.values
    ]


def _agree_taps(tongue: Tongue) -> list[list[Tap]]:
    return [
        [Tap(joining.agree_label(tongue), "intake.agree")],
        [Tap(joining.decline_label(tongue), "intake.decline")],
    ]


def _review_taps(tongue: Tongue, keys: Sequence[str]) -> list[list[Tap]]:
    changes = [
        Tap(end_words.change_label(tongue, n, key), "intake.change", {"change": key})
        for n, key in enumerate(keys, start=1)
    ]
    right = Tap(end_words.right_label(tongue), "intake.right")
    return [[right], *in_rows(changes, CHANGES_A_ROW)]


def in_order(step: Step, chosen: Collection[Any]) -> list[Any]:
    """Return what is chosen in the order of the buttons; what has none stands behind."""
    return [one for one in step.choices if one in chosen] + sorted(set(chosen) - set(step.choices))


def in_rows(taps: Iterable[Tap], a_row: int) -> list[list[Tap]]:
    """Put buttons in rows."""
    listed = list(taps)
    return [listed[at : at + a_row] for at in range(0, len(listed), a_row)]
