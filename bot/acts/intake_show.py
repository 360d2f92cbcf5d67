"""What an open question of the intake looks like: text and buttons."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from bot.acts import intake_steps
from bot.acts.intake_profile import kept_answers
from bot.acts.intake_steps import AGREE, BY_KEY, GUARDIAN_WAIT, REVIEW, Step
from bot.turn import Tap, TapRows, Turn
from bot.wording import intake as words
from bot.wording import intake_end as end_words
from bot.wording import joining
from bot.wording.tongue import Tongue
from storage.queries import people
from storage.records.people import Athlete, Person
from storage.records.wire import MessageKind

DRAFT = "draft"  # the key of what is toggled and not yet done
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
    several: Sequence[str] = (),
    message_id: int | None = None,
) -> None:
    """Ask what is open, in a new message or in the one that was tapped."""
    tongue, coach = turn.tongue(person), people.person(turn.tx, athlete.coach_id)
    wrong = words.unclear(tongue, unclear) if unclear else ""
    if several:
        wrong = words.unclear(tongue, "which_place")
    match key:
        case _ if key == AGREE:
            terms = joining.conditions(tongue, name=person.name, coach=coach.name)
            text = "\n\n".join(filter(None, [wrong, terms]))
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
            text, taps = _question(tongue, key, answers, coach, noted or wrong, several)
    if message_id is None:
        turn.say(person, text, kind=MessageKind.QUESTION, taps=taps)
    else:
        turn.change(person, message_id, text, taps=taps)


def play_back(turn: Turn, person: Person, key: str, value: Any, *, message_id: int | None) -> str:
    """Put the answer in place of the question that was tapped, or return it for the next one."""
    text = words.answered(turn.tongue(person), key, value)
    if message_id is None:
        return text
    turn.change(person, message_id, text)
    return ""


def _question(
    tongue: Tongue, key: str, answers: Answers, coach: Person, above: str, several: Sequence[str]
) -> tuple[str, TapRows]:
    place, of = intake_steps.place_of(key, answers)
    text = words.question(tongue, key, coach=coach.name, place=place, of=of, above=above)
    step = BY_KEY[key]
    taps = _choice_taps(tongue, step, answers)
    if key == "zone":
        taps = _zone_taps(tongue, several or (coach.zone,))
    if intake_steps.key_before(key, answers) is not None:
        taps = [*taps, [Tap(words.back_label(tongue), "intake.back", {"step": key})]]
    return text, taps


def _choice_taps(tongue: Tongue, step: Step, answers: Answers) -> list[list[Tap]]:
    chosen = answers.get(DRAFT, ()) if step.is_many else ()
    act = "intake.toggle" if step.is_many else "intake.answer"
    extra = [one for one in chosen if one not in step.choices]
    taps = [
        Tap(
            words.choice_label(tongue, step.key, value, is_chosen=value in chosen),
            act,
            {"step": step.key, "value": value},
        )
        for value in (*step.choices, *extra)
    ]
    return [*_in_rows(taps, step.a_row), *([_end_taps(tongue, step)] if step.is_many else [])]


def _end_taps(tongue: Tongue, step: Step) -> list[Tap]:
    about = {"step": step.key}
    done = Tap(words.done_label(tongue), "intake.done", about)
    if step.needs_one:
        return [done]
    return [Tap(words.none_label(tongue), "intake.done", {**about, "is_none": True}), done]


def _zone_taps(tongue: Tongue, zones: Sequence[str]) -> list[list[Tap]]:
    return [
        [Tap(words.place_label(tongue, zone), "intake.answer", {"step": "zone", "value": zone})]
        for zone in zones
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
    return [[right], *_in_rows(changes, CHANGES_A_ROW)]


def _in_rows(taps: Iterable[Tap], a_row: int) -> list[list[Tap]]:
    listed = list(taps)
    return [listed[at : at + a_row] for at in range(0, len(listed), a_row)]
