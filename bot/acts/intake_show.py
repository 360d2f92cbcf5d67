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
from storage import buttons
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
        _close_others(turn, person)
        turn.say(person, text, kind=MessageKind.QUESTION, taps=taps)
    else:
        turn.change(person, message_id, text, taps=taps)


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


def _question(
    tongue: Tongue, key: str, answers: Answers, coach: Person, above: str, several: Sequence[str]
) -> tuple[str, TapRows]:
    place, of = intake_steps.place_of(key, answers)
    text = words.question(tongue, key, coach=coach.name, place=place, of=of, above=above)
    step = BY_KEY[key]
    taps = choice_taps(tongue, step, answers.get(DRAFT, ()))
    if key == "zone":
        taps = zone_taps(tongue, several or (coach.zone,))
    if intake_steps.key_before(key, answers) is not None:
        taps = [*taps, [Tap(words.back_label(tongue), "intake.back", {"step": key})]]
    return text, taps


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


def zone_taps(tongue: Tongue, zones: Sequence[str], *, acts: str = "intake") -> list[list[Tap]]:
    """Return a button for each zone."""
    return [
        [Tap(words.place_label(tongue, zone), f"{acts}.answer", {"step": "zone", "value": zone})]
        for zone in dict.fromkeys(zones)
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


def in_rows(taps: Iterable[Tap], a_row: int) -> list[list[Tap]]:
    """Put buttons in rows."""
    listed = list(taps)
    return [listed[at : at + a_row] for at in range(0, len(listed), a_row)]
