"""The settings: every answer of the first questions, changed later by a tap or a short text."""

from collections.abc import Mapping, Sequence
from typing import Any

from bot.acts import settings_care, settings_change
from bot.acts.checklist import local_today
from bot.acts.intake import DONE_WORDS, FOR_THE_COACH
from bot.acts.intake_answers import Heard, Partly, Several, Unclear, Why, tidy
from bot.acts.intake_resume import open_dialog
from bot.acts.intake_show import choice_taps, hour_taps, in_order, in_rows, zone_taps
from bot.acts.intake_steps import (
    BY_KEY,
    INJURY_TOPICS,
    WEIGHT_STEPS,
    Step,
    read_answer,
    settable_steps,
)
from bot.acts.open_question import open_question
from bot.acts.reading_context import at_hand, read_at_hand
from bot.acts.settings_now import answers_of
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.values import NotUnderstood, PassedOn
from bot.turn import Tap, TapRows, Turn
from bot.wording import settings as words
from storage import buttons
from storage.queries import people, training
from storage.records.people import Athlete, AthleteState, Person
from storage.records.wire import MessageKind, OpenQuestion

ASKED_STILL = {
    "equipment": [one.key for one in WEIGHT_STEPS] + ["band"],
    "screen": list(INJURY_TOPICS),
    "adult": False,
}
"""Answers under which every question is one that may have been asked."""
SETTING = "setting"  # the kind of the open question
BEFORE = frozenset({AthleteState.INVITED, AthleteState.INTAKE, AthleteState.LEFT})
"""The states in which the first questions come first."""
FREE_WORDS = frozenset({"screen", "injury", "guardian", "elsewhere", "event"})
"""Settings whose value is a sentence: the red-flag reader listens to it."""
NAMES_A_ROW = 2  # [buttons] ch: a name of two words each
Arguments = Mapping[str, Any]


def command(turn: Turn, person: Person, rest: str, event: Wrote) -> Outcome:
    """``/settings``, ``/settings minutes``, ``/settings minutes 45``."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None or _comes_too_early(turn, person, athlete):
        return Outcome.COMMAND
    if not rest:
        return show(turn, person, athlete)
    step, said = _named(person, athlete, rest)
    if step is None:
        turn.say(person, words.unknown(turn.tongue(person)))
        show(turn, person, athlete)
        return Outcome.NOT_UNDERSTOOD
    if not said:
        ask(turn, person, athlete, step)
        return Outcome.COMMAND
    found = _read(turn, person, athlete, step, event, said, {}, is_asked_for=True)
    return found or Outcome.NOT_UNDERSTOOD


def show(turn: Turn, person: Person, athlete: Athlete, *, message_id: int | None = None) -> Outcome:
    """Show every setting with a button for each."""
    tongue, answers = turn.tongue(person), answers_of(person, athlete)
    steps = settable_steps(answers)
    text = words.screen(tongue, [(step.key, answers[step.key]) for step in steps])
    taps = in_rows(
        (Tap(words.name_label(tongue, step.key), "set.ask", {"step": step.key}) for step in steps),
        NAMES_A_ROW,
    )
    _put(turn, person, text, taps, message_id)
    return Outcome.COMMAND


def ask(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    step: Step,
    *,
    draft: Sequence[Any] | None = None,
    wanted: Sequence[str] = (),
    above: str = "",
    several: Several | None = None,
    is_partly: bool = False,
    message_id: int | None = None,
) -> None:
    """Ask one question as the intake does; ``wanted`` is the equipment that it belongs to."""
    tongue, answers = turn.tongue(person), answers_of(person, athlete)
    now = answers[step.key]
    coach = people.person(turn.tx, athlete.coach_id)
    chosen = (now if draft is None else draft) if step.is_many else ()
    about = {"draft": list(chosen), "wanted": list(wanted)} if step.is_many else {}
    told = {**about, "adds": True} if is_partly else about
    taps = choice_taps(tongue, step, chosen, acts="set", about=about)
    if step.key == "zone":
        places = several or Several((person.zone, coach.zone))
        taps = zone_taps(turn, tongue, places, acts="set")
    elif several is not None:
        taps = hour_taps(tongue, step.key, several, acts="set")
    text = words.question(tongue, step.key, coach=coach.name, now=now, above=above)
    open_question(turn, person, SETTING, {"step": step.key, **told})
    back = [Tap(words.all_label(tongue), "set.all")]
    _put(turn, person, text, [*taps, back], message_id)


def is_plain_value(turn: Turn, person: Person, athlete: Athlete, text: str) -> bool:
    """Tell whether what stands behind the command is a setting's name, with or without its value.

    Names, days, hours, weights and the like say nothing of how anybody is; free words may.
    """
    if _is_name(text):
        return True
    step, said = _named(person, athlete, text)
    if step is None or not said or step.key in FREE_WORDS:
        return False
    found = read_answer(step, said, today=local_today(turn, person), units=person.units)
    return isinstance(found, Heard)


def _is_name(text: str) -> bool:
    """Tell whether a text is the name of a setting and nothing else, also of one not asked now."""
    return tidy(text) in {tidy(name) for key in BY_KEY for name in words.names_of(key)}


def hear(turn: Turn, person: Person, athlete: Athlete, event: Wrote) -> Outcome | None:
    """Hear a text while a setting is asked about; None when it is no answer to that."""
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    if question is None or question.kind != SETTING or event.is_edit:
        return None
    if _is_overtaken(turn, person, question):
        buttons.close_question(turn.tx, event.chat_id)
        return None
    step, about = BY_KEY[str(question.subject["step"])], question.subject
    draft = about.get("draft")
    if step.is_many and draft and tidy(event.text) in DONE_WORDS:
        return _take(turn, person, athlete, step, draft, about)
    return _read(turn, person, athlete, step, event, event.text, about, is_asked_for=False)


def _read(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    step: Step,
    event: Wrote,
    text: str,
    about: Arguments,
    *,
    is_asked_for: bool,
) -> Outcome | None:
    """Read an answer; ``is_asked_for`` when the text can be meant for nothing else."""
    is_words = step.key == "event"  # any words are a goal, so look first whether they are that
    if is_words and not is_asked_for and _is_something_else(turn, person, event):
        return None
    match read_answer(step, text, today=local_today(turn, person), units=person.units):
        case Heard(value):
            if about.get("adds"):
                value = in_order(step, {*about["draft"], *value})
            return _take(turn, person, athlete, step, value, about)
        case Partly(value, unsure):
            draft = in_order(step, {*(about["draft"] if about.get("adds") else ()), *value})
            above = words.partly(turn.tongue(person), step.key, draft, unsure)
            wanted = about.get("wanted", ())
            ask(
                turn, person, athlete, step, draft=draft, wanted=wanted, above=above, is_partly=True
            )
            return Outcome.ASKED
        case Several() as several:
            tongue = turn.tongue(person)
            above = words.which_place(tongue) if step.key == "zone" else words.which_hour(tongue)
            ask(turn, person, athlete, step, several=several, above=above)
            return Outcome.ASKED
        case Unclear(why):
            if not is_asked_for and _is_something_else(turn, person, event):
                return None
            above = words.unclear(turn.tongue(person), why)
            ask(turn, person, athlete, step, wanted=about.get("wanted", ()), above=above)
    return Outcome.NOT_UNDERSTOOD


def _is_something_else(turn: Turn, person: Person, event: Wrote) -> bool:
    """Tell whether a text is a result, a day off, a question: none of it is lost to a setting."""
    if FOR_THE_COACH.search(event.text.lower()):
        return True
    reading = read_at_hand(turn, person, event.text, at_hand(turn, person, event, None), None)
    return bool(reading.pains) or not isinstance(reading, NotUnderstood | PassedOn)


def _is_overtaken(turn: Turn, person: Person, question: OpenQuestion) -> bool:
    """Tell whether a session was sent since the question: figures are then meant for that."""
    sent = [one.sent_at for one in training.open_sessions(turn.tx, person.id)]
    return any(at is not None and at > question.asked_at for at in sent)


def _take(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    step: Step,
    value: Any,
    about: Arguments,
    *,
    message_id: int | None = None,
) -> Outcome:
    """Take an answer over, play it back, and go on to what it leads to."""
    old = answers_of(person, athlete)[step.key]
    if person.chat_id is not None:
        buttons.close_question(turn.tx, person.chat_id)
    is_same = old == value
    leads_to = None
    if not is_same and step.key in settings_care.KEYS:
        leads_to = settings_care.change(turn, person, athlete, step.key, value)
    elif not is_same:
        settings_change.change(turn, person, athlete, step.key, value)
    person = people.person(turn.tx, person.id)
    athlete = people.athlete(turn.tx, person.id) or athlete
    wanted = value if step.key == "equipment" else about.get("wanted", ())
    now = answers_of(person, athlete)
    leads_to = leads_to or (settings_change.missing(now, wanted) if wanted else None)
    text = words.changed(
        turn.tongue(person),
        step.key,
        now[step.key],
        is_same=is_same,
        is_planned_anew=not is_same and _is_planned_anew(athlete, step),
    )
    all_tap = [[Tap(words.all_label(turn.tongue(person)), "set.all")]]
    _put(turn, person, text, all_tap if leads_to is None else [], message_id)
    if leads_to is not None:
        ask(turn, person, athlete, BY_KEY[leads_to], wanted=wanted)
    return Outcome.ANSWERED


def _is_planned_anew(athlete: Athlete, step: Step) -> bool:
    is_training = athlete.state is AthleteState.TRAINING
    return is_training and step.key in settings_change.PLANNED_ANEW


def _named(person: Person, athlete: Athlete, rest: str) -> tuple[Step | None, str]:
    """Find the setting that the first words name, in either language, and what stands behind."""
    said = tidy(rest)
    for step in settable_steps(answers_of(person, athlete)):
        for name in words.names_of(step.key):
            plain_name = tidy(name)
            if said == plain_name or said.startswith(f"{plain_name} "):
                spoken = rest.split()
                return step, " ".join(spoken[len(plain_name.split()) :])
    return None, ""


def _comes_too_early(turn: Turn, person: Person, athlete: Athlete) -> bool:
    if athlete.state not in BEFORE and not has_open_intake(turn, person):
        return False
    turn.say(person, words.questions_first(turn.tongue(person)))
    return True


def has_open_intake(turn: Turn, person: Person) -> bool:
    """Tell whether the first questions still run, in which everything can be changed as well."""
    return open_dialog(turn, person) is not None


def _put(turn: Turn, person: Person, text: str, taps: TapRows, message_id: int | None) -> None:
    if message_id is None:
        turn.say(person, text, kind=MessageKind.QUESTION, taps=taps)
    else:
        turn.change(person, message_id, text, taps=taps)


def _at(turn: Turn, person: Person, key: str) -> tuple[Athlete, Step] | Outcome:
    """Look at the facts again when a button is tapped."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None or _comes_too_early(turn, person, athlete):
        return Outcome.STALE_TAP
    step = BY_KEY.get(key)
    if step is None or step not in settable_steps(answers_of(person, athlete) | ASKED_STILL):
        turn.say(person, words.not_asked_now(turn.tongue(person)))
        return Outcome.STALE_TAP
    return athlete, step


def tap_all(turn: Turn, person: Person, _arguments: Arguments, event: Tapped) -> Outcome:
    """Back to the list."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None or _comes_too_early(turn, person, athlete):
        return Outcome.STALE_TAP
    if person.chat_id is not None:
        question = buttons.open_question(turn.tx, chat_id=person.chat_id, now=turn.now)
        if question is not None and question.kind == SETTING:
            buttons.close_question(turn.tx, person.chat_id)
    return show(turn, person, athlete, message_id=event.message_id)


def tap_ask(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A setting was chosen from the list."""
    found = _at(turn, person, str(arguments["step"]))
    if isinstance(found, Outcome):
        return found
    ask(turn, person, *found, message_id=event.message_id)
    return Outcome.ANSWERED


def tap_answer(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A button that answers."""
    found = _at(turn, person, str(arguments["step"]))
    if isinstance(found, Outcome):
        return found
    value = arguments["value"]
    return _take(turn, person, *found, value, arguments, message_id=event.message_id)


def tap_toggle(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A button that adds to a choice of several, or takes away; the buttons carry the choice."""
    found = _at(turn, person, str(arguments["step"]))
    if isinstance(found, Outcome):
        return found
    athlete, step = found
    draft, value = list(arguments["draft"]), arguments["value"]
    chosen = [one for one in draft if one != value] if value in draft else [*draft, value]
    wanted = arguments.get("wanted", ())
    above = ""
    if step.most is not None and len(chosen) > step.most:
        chosen, above = draft, words.unclear(turn.tongue(person), step.too_many)
    order = {one: place for place, one in enumerate(step.choices)}
    chosen.sort(key=lambda one: order.get(one, len(order)))
    ask(
        turn,
        person,
        athlete,
        step,
        draft=chosen,
        wanted=wanted,
        above=above,
        message_id=event.message_id,
    )
    return Outcome.ANSWERED


def tap_done(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """The choice of several is complete; ``is_none`` says that nothing applies."""
    found = _at(turn, person, str(arguments["step"]))
    if isinstance(found, Outcome):
        return found
    athlete, step = found
    chosen = [] if arguments.get("is_none") else list(arguments["draft"])
    if step.needs_one and not chosen:
        above = words.unclear(turn.tongue(person), Why.NONE_CHOSEN)
        ask(turn, person, athlete, step, draft=[], above=above, message_id=event.message_id)
        return Outcome.NOT_UNDERSTOOD
    return _take(turn, person, athlete, step, chosen, arguments, message_id=event.message_id)


TAPS = {
    "set.all": tap_all,
    "set.ask": tap_ask,
    "set.answer": tap_answer,
    "set.toggle": tap_toggle,
    "set.done": tap_done,
}
