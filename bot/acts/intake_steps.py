"""The questions of the intake as a table: what is asked when, and how an answer is read."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from bot.acts import intake_answers as read
from bot.acts import intake_clock, intake_figures, intake_lists
from bot.acts.intake_answers import Answer, Reader, Why
from bot.acts.intake_elsewhere import elsewhere_of
from bot.acts.intake_places import event_of, zone_of
from bot.acts.intake_who import adult, reference
from scheduler.catalogue.values import Equipment

Answers = Mapping[str, Any]

AGREE = "agree"  # before the table: nothing is asked without it
GUARDIAN_WAIT = "guardian_wait"  # inside it: an adult has to be spoken with first
REVIEW = "review"  # after it: what was understood

SIGNS = ("known_illness", "effort_signs", "faint")
INVERSION_TOPICS = frozenset({"pressure_or_eyes", "pregnant"})
INVERSION_ONLY = frozenset({"pressure_or_eyes"})
INJURY_TOPICS = frozenset({"out_or_operated", "recent_injury", "hurts_now"})
SCREEN_TOPICS = (*SIGNS, "pregnant", "pressure_or_eyes", "out_or_operated", "recent_injury",
                 "hurts_now")  # fmt: skip

EQUIPMENT_WORDS: Mapping[str, Sequence[str]] = {
    Equipment.BOX.value: (
        "box",
        "chair",
        "step",
        "sturdy chair",
        "box or sturdy chair",
        "cajon",
        "silla",
    ),
    Equipment.HIGH_BAR.value: (
        "high bar",
        "pull-up bar",
        "pull up bar",
        "pullup bar",
        "chin-up bar",
        "chin up bar",
        "chinup bar",
        "pull-ups bar",
        "pull ups bar",
        "pullups bar",
        "pull bar",
        "hanging bar",
        "bar to hang from",
        "bar for pull-ups",
        "bar for pull ups",
        "bar to do pull ups",
        "barra de dominadas",
        "barra para dominadas",
        "barra para hacer dominadas",
        "barra dominadas",
        "barra para colgarse",
        "barra alta",
    ),
    Equipment.LOW_BAR.value: ("low bar", "bar at hip height", "table edge", "barra baja"),
    Equipment.PARALLEL_BARS.value: (
        "parallel bars",
        "dip bars",
        "parallettes",
        "dip station",
        "paralelas",
        "barras paralelas",
    ),
    Equipment.RINGS.value: ("rings", "ring", "straps", "rings or straps", "anillas"),
    Equipment.DUMBBELLS.value: (
        "dumbbells",
        "dumbbell",
        "dumbell",
        "db",
        "mancuernas",
        "mancuerna",
    ),
    Equipment.KETTLEBELLS.value: (
        "kettlebells",
        "kettlebell",
        "kettle bell",
        "kb",
        "pesas rusas",
        "pesa rusa",
    ),
    Equipment.BARBELL.value: (
        "barbell",
        "barbells",
        "barbell and plates",
        "barbell with plates",
        "bar with plates",
        "barra con discos",
        "barra con pesas",
        "barra olimpica",
        "barra de pesas",
    ),
    Equipment.BENCH.value: ("bench", "benche", "weight bench", "banco", "banca"),
    Equipment.BAND.value: (
        "bands",
        "band",
        "elastic band",
        "resistance band",
        "bandas",
        "banda",
        "gomas",
        "goma",
        "banda elastica",
        "bandas elasticas",
        "gomas elasticas",
        "bands elasticas",
        "elasticos",
        "elasticas",
        "ligas",
        "liga",
        "exercise band",
        "stretch band",
    ),
    Equipment.CABLE.value: ("cable", "cable station", "pulley", "cable machine", "polea", "poleas"),
}
BAND_WORDS: Mapping[str, Sequence[str]] = {
    "light": ("light", "light band", "easy", "thin", "ligera", "suave"),
    "medium": ("medium", "middle", "medium band", "media"),
    "heavy": ("heavy", "strong", "hard", "thick", "heavy band", "fuerte", "dura"),
}
BAR_WORDS = frozenset({"bar", "bars", "barra", "barras"})
"""One to hang from, or one to load: asked."""
LANGUAGES = {"en": ("english", "en", "ingles"), "es": ("spanish", "es", "espanol", "castellano")}
UNITS = {
    "kg": ("kg", "kgs", "kilo", "kilos", "kilograms", "kilogramos"),
    "lb": ("lb", "lbs", "pound", "pounds", "libra", "libras"),
}
MARKS = {".": (".", "point", "dot", "punto", "12.5"), ",": (",", "comma", "coma", "12,5")}


@dataclass(frozen=True)
class Step:
    """One question: its key, its buttons' values, how text is read, and when it is asked.

    ``is_many`` toggles buttons until done; ``needs_one`` then refuses an empty choice.
    ``is_later`` has a sensible start and is asked under the settings alone.
    """

    key: str
    read: Callable[[str, date], Answer]
    choices: Sequence[Any] = ()
    a_row: int = 2
    is_many: bool = False
    needs_one: bool = False
    most: int | None = None
    too_many: Why = Why.CHOICE
    is_asked: Callable[[Answers], bool] = lambda _: True
    is_later: bool = False


def _plainly(reader: Reader) -> Callable[[str, date], Answer]:
    return lambda text, _today: reader(text)


def _owns(implement: Equipment) -> Callable[[Answers], bool]:
    return lambda answers: implement.value in answers.get("equipment", ())


def _weights(implement: Equipment, choices_kg: Sequence[float]) -> Step:
    return Step(
        implement.value,
        _plainly(intake_figures.weights_kg),
        choices=choices_kg,
        a_row=4,
        is_many=True,
        needs_one=True,
        is_asked=_owns(implement),
    )


WEIGHT_STEPS = (
    _weights(Equipment.DUMBBELLS, (2.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 16.0, 20.0, 24.0)),
    _weights(Equipment.KETTLEBELLS, (4.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 24.0)),
    _weights(Equipment.BARBELL, (10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0)),
    _weights(Equipment.CABLE, (2.5, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0)),
)

STEPS: Sequence[Step] = (
    Step("adult", _plainly(adult), choices=(True, False)),
    Step("guardian", _plainly(read.contact), is_asked=lambda said: said.get("adult") is False),
    Step("reference", _plainly(reference), choices=("men", "women", "own"), a_row=3),
    Step(
        "mass_kg",
        _plainly(intake_figures.mass_kg),
        choices=(45.0, 50.0, 55.0, 60.0, 65.0, 70.0, 75.0, 80.0, 85.0, 90.0, 100.0, 110.0),
        a_row=4,
    ),
    # Of a span on a button its careful end counts: less experience, more days without training.
    Step(
        "months",
        _plainly(intake_figures.months_of_span),
        choices=(0.0, 3.0, 6.0, 12.0, 36.0),
        a_row=1,
    ),
    Step(
        "untrained_days",
        _plainly(intake_figures.days_of_span),
        choices=(6, 14, 28, 90, 365),
        a_row=1,
        is_asked=lambda said: said.get("months") != 0,
    ),
    Step(
        "weekdays",
        _plainly(intake_lists.weekdays),
        choices=tuple(range(7)),
        is_many=True,
        needs_one=True,
        most=intake_lists.WEEKDAYS_MOST,
        too_many=Why.WEEKDAYS_MANY,
    ),
    Step("minutes", _plainly(intake_figures.minutes), choices=(15, 20, 30, 40, 50, 60), a_row=3),
    Step(
        "equipment",
        _plainly(
            intake_lists.named(EQUIPMENT_WORDS, unknown=Why.EQUIPMENT, open_words=BAR_WORDS)
        ),
        choices=tuple(EQUIPMENT_WORDS),
        is_many=True,
    ),
    *WEIGHT_STEPS,
    Step(
        "bands",
        _plainly(intake_lists.named(BAND_WORDS, unknown=Why.BANDS)),
        choices=tuple(BAND_WORDS),
        a_row=3,
        is_many=True,
        needs_one=True,
        is_asked=_owns(Equipment.BAND),
    ),
    Step("elsewhere", _plainly(elsewhere_of), choices=([],), a_row=1),
    Step(
        "event",
        lambda text, today: event_of(text, today=today),
        choices=({"on": None, "goal": ""},),
        a_row=1,
    ),
    Step("zone", _plainly(zone_of)),
    Step(
        "session_at",
        _plainly(intake_clock.session_clock),
        choices=("06:00", "07:00", "08:00", "12:00", "17:00", "18:00", "19:00"),
        a_row=4,
    ),
    Step(
        "evening_at",
        _plainly(intake_clock.evening),
        choices=("19:00", "20:00", "21:00", "22:00"),
        a_row=4,
        is_later=True,
    ),
    Step("screen", _plainly(intake_lists.topics(SCREEN_TOPICS)), choices=SCREEN_TOPICS, a_row=4,
         is_many=True),
    Step(
        "injury",
        _plainly(read.words(least=3)),
        choices=("",),
        is_asked=lambda said: bool(INJURY_TOPICS & set(said.get("screen", ()))),
    ),
    Step("language", _plainly(read.choice(LANGUAGES)), choices=tuple(LANGUAGES),
         is_later=True),
    Step("units", _plainly(read.choice(UNITS)), choices=tuple(UNITS), is_later=True),
    Step("decimal_mark", _plainly(read.choice(MARKS)), choices=tuple(MARKS),
         is_later=True),
)  # fmt: skip
BY_KEY = {step.key: step for step in STEPS}


def asked_steps(answers: Answers) -> tuple[Step, ...]:
    """Return the questions that these answers lead to, in order."""
    return tuple(step for step in STEPS if step.is_asked(answers) and not step.is_later)


def settable_steps(answers: Answers) -> tuple[Step, ...]:
    """Return the questions whose answers can be changed later, in order."""
    return tuple(step for step in STEPS if step.is_asked(answers))


def read_answer(step: Step, text: str, *, today: date, units: str) -> Answer:
    """Read an answer as its person writes it: a bare weight is in the person's own units."""
    is_weight = step.key == "mass_kg" or step in WEIGHT_STEPS
    if is_weight and units == "lb" and intake_figures.is_bare_figure(text):
        text = f"{text} lb"
    return step.read(text, today)


def next_key(answers: Answers) -> str:
    """Return where the dialog stands: the first question without an answer, or what follows."""
    for step in asked_steps(answers):
        if step.key not in answers:
            return step.key
        if step.key == "guardian" and not answers.get("is_guardian_heard"):
            return GUARDIAN_WAIT
    return REVIEW


def key_before(key: str, answers: Answers) -> str | None:
    """Return the question before this one, or None at the first."""
    keys = [step.key for step in asked_steps(answers)]
    if key == REVIEW:
        return keys[-1]
    place = keys.index(key) if key in keys else 0
    return keys[place - 1] if place else None


def place_of(key: str, answers: Answers) -> tuple[int, int]:
    """Return which question of how many this is, as far as the answers so far tell."""
    keys = [step.key for step in asked_steps(answers)]
    return keys.index(key) + 1, len(keys)


def waits_for_coach(screen: Sequence[str]) -> bool:
    """Tell whether the answers to the health questions must be looked at before training."""
    return bool(set(screen) - INVERSION_ONLY)
