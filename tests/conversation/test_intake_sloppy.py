"""Answers of sloppy people to every question of the intake: read right, or asked, never wrong.

Every expected value is what the words say in plain speech (COMMON PRACTICE); figures that were
worked out show how (DERIVED).
"""

from datetime import date
from typing import Any

import pytest

from bot.acts.intake_answers import Heard, Partly, Several, Unclear
from bot.acts.intake_steps import BY_KEY, STEPS, read_answer

TODAY = date(2026, 10, 5)
ASK = "asked about"
"""Not sure: a question back is right, a value is not."""
RIGHT: list[tuple[str, str, Any]] = [
    ("adult", "I'm 34", True),
    ("adult", "34 años", True),
    ("adult", "tengo 41 años", True),
    ("adult", "yes, 28", True),
    ("adult", "sí, claro", True),
    ("adult", "yes I am!", True),
    ("adult", "17", False),
    ("adult", "I'm over 18", True),
    ("adult", "tengo dieciséis años", False),
    ("adult", "almost", ASK),
    ("adult", "no, 25", ASK),
    ("adult", "yes, 15", ASK),
    ("reference", "the women's", "women"),
    ("reference", "la de hombres", "men"),
    ("reference", "not sure", "own"),
    ("reference", "que lo decida Mara", "own"),
    ("reference", "me da igual", "own"),
    ("reference", "both maybe", ASK),
    ("mass_kg", "peso 58,5", 58.5),
    ("mass_kg", "58.5 kilos", 58.5),
    ("mass_kg", "about 72", 72.0),
    ("mass_kg", "i think 81 kg or so", 81.0),
    ("mass_kg", "unos 63 kilos y medio", 63.5),
    ("mass_kg", "58'5", 58.5),
    ("mass_kg", "fifty-eight and a half", 58.5),
    ("mass_kg", "setenta y dos", 72.0),
    ("mass_kg", "11 stone 4", 71.7),  # DERIVED: (11 × 14 + 4) lb × 0.45359237 = 71.67 kg
    ("mass_kg", "a hundred and fifty pounds", 68.0),  # DERIVED: 150 × 0.45359237 = 68.04
    ("mass_kg", "my weight is 90kg", 90.0),
    ("mass_kg", "between 70 and 72", ASK),
    ("mass_kg", "I'm 34", ASK),
    ("mass_kg", "1,75 m", ASK),
    ("mass_kg", "lost 5 kg, now 70", ASK),
    ("mass_kg", "one fifty pounds", ASK),
    ("months", "around 3 years", 36.1),  # DERIVED: round(3 × 365.25) days / 30.4 = 36.05
    ("months", "a year and a half", 18.0),  # DERIVED: round(547.875) / 30.4 = 18.03
    ("months", "llevo unos 2 años", 24.0),
    ("months", "2 años y medio", 30.0),
    ("months", "1-2 years", 12.0),  # CHOSEN: the careful end
    ("months", "eighteen months", 18.0),
    ("months", "half a year", 6.0),
    ("months", "two and a half years", 30.0),
    ("months", "just started", 0.0),
    ("months", "acabo de empezar", 0.0),
    ("months", "on and off for years", ASK),
    ("months", "less than a year", ASK),
    ("months", "since 2020", ASK),
    ("untrained_days", "about ten days", 10),
    ("untrained_days", "around 3 weeks", 21),
    ("untrained_days", "hace como 3 semanas", 21),
    ("untrained_days", "hace unas 3 semanas", 21),
    ("untrained_days", "the day before yesterday", 2),
    ("untrained_days", "2 or 3 weeks ago", 21),  # CHOSEN: the careful end
    ("untrained_days", "a couple of weeks", 14),
    ("untrained_days", "hace once días", 11),
    ("untrained_days", "less than a week", 7),
    ("untrained_days", "esta mañana", 0),
    ("untrained_days", "last summer", ASK),
    ("untrained_days", "a few weeks", ASK),
    ("untrained_days", "once a week", ASK),
    ("weekdays", "mon, wed & fri", [0, 2, 4]),
    ("weekdays", "mon-wed-fri", [0, 2, 4]),
    ("weekdays", "M W F", [0, 2, 4]),
    ("weekdays", "L X V", [0, 2, 4]),
    ("weekdays", "wensday and saterday", [2, 5]),
    ("weekdays", "entre semana", [0, 1, 2, 3, 4]),
    ("weekdays", "los findes", [5, 6]),
    ("weekdays", "martes, jueves y sabado por la tarde", [1, 3, 5]),
    ("weekdays", "tue-thu", ASK),
    ("weekdays", "t th", ASK),
    ("weekdays", "every day except sunday", ASK),
    ("weekdays", "not monday", ASK),
    ("weekdays", "3 times a week", ASK),
    ("minutes", "around an hour", 60),
    ("minutes", "forty five", 45),
    ("minutes", "45 max", 45),
    ("minutes", "45-60 min", 45),  # CHOSEN: the short end
    ("minutes", "hora y media", 90),
    ("minutes", "an hour and a half", 90),
    ("minutes", "1h30", 90),
    ("minutes", "tres cuartos de hora", 45),
    ("minutes", "unos 40 minutos", 40),
    ("minutes", "1:30", ASK),
    ("minutes", "depends", ASK),
    ("equipment", "pull up bar, bench, dumbbells 4 to 12 kg", ["high_bar", "dumbbells", "bench"]),
    ("equipment", "i have rings, a chair and some rubber bands at home", ["box", "rings", "band"]),
    ("equipment", "una silla, gomas y barra de dominadas", ["box", "high_bar", "band"]),
    ("equipment", "2 kettlebells (16kg)", ["kettlebells"]),
    ("equipment", "no tengo nada", []),
    ("equipment", "a bar and two bands", ASK),
    ("equipment", "barra, banco y mancuernas de 4 a 12 kg", ASK),
    ("equipment", "rings but no bar", ASK),
    ("equipment", "bands, trampoline", ASK),
    ("equipment", "full gym", ASK),
    ("dumbbells", "4, 6 and 8", [4.0, 6.0, 8.0]),
    ("dumbbells", "4kg 6kg 8kg", [4.0, 6.0, 8.0]),
    ("dumbbells", "tengo de 4, 6 y 8 kilos", [4.0, 6.0, 8.0]),
    ("dumbbells", "4 to 12 in steps of 2", [4.0, 6.0, 8.0, 10.0, 12.0]),
    ("dumbbells", "de 4 a 12 de 2 en 2", [4.0, 6.0, 8.0, 10.0, 12.0]),
    ("dumbbells", "four, six and eight", [4.0, 6.0, 8.0]),
    ("dumbbells", "4 to 12 kg", ASK),
    ("dumbbells", "4-12", ASK),
    ("dumbbells", "up to 20 kg", ASK),
    ("dumbbells", "one 12 kg", ASK),
    ("kettlebells", "12 y 16 kg", [12.0, 16.0]),
    ("kettlebells", "16kg kettlebell", [16.0]),
    ("barbell", "20, 30, 40 kg", [20.0, 30.0, 40.0]),
    ("barbell", "20 + plates", ASK),
    ("cable", "5 10 15", [5.0, 10.0, 15.0]),
    ("cable", "5 a 50", ASK),
    ("bands", "a light and a heavy one", ["light", "heavy"]),
    ("bands", "una media y una fuerte", ["medium", "heavy"]),
    ("bands", "red and black", ASK),
    ("elsewhere", "not really", []),
    ("elsewhere", "no, nada más", []),
    ("elsewhere", "tue climbing, sat swim",
     [{"name": "climbing", "weekday": 2}, {"name": "swim", "weekday": 6}]),
    ("elsewhere", "fútbol los sábados", [{"name": "futbol", "weekday": 6}]),
    ("elsewhere", "climbing on tuesdays and thursdays at 7pm",
     [{"name": "climbing", "weekday": 2}, {"name": "climbing", "weekday": 4}]),
    ("elsewhere", "running 3 times a week", ASK),
    ("event", "not yet", {"on": None, "goal": ""}),
    ("event", "ni idea", {"on": None, "goal": ""}),
    ("event", "just get stronger", {"on": None, "goal": "just get stronger"}),
    ("event", "barcelna", ASK),
    ("event", "12/06/2027", ASK),
    ("zone", "I live in Barcelona", "Europe/Madrid"),
    ("zone", "cerca de Valencia", "Europe/Madrid"),
    ("zone", "barcelona, spain", "Europe/Madrid"),
    ("zone", "barcelna", ASK),
    ("zone", "barn", ASK),
    ("zone", "Valencia, Venezuela", ASK),
    ("zone", "Springfield, Illinois", ASK),
    ("session_at", "a las 7 d la tarde", "19:00"),
    ("session_at", "7 de la tarde", "19:00"),
    ("session_at", "sobre las 18", "18:00"),
    ("session_at", "siete y media de la mañana", "07:30"),
    ("session_at", "quarter to seven in the morning", "06:45"),
    ("session_at", "around 7pm", "19:00"),
    ("session_at", "19h", "19:00"),
    ("session_at", "1830", "18:30"),
    ("session_at", "noon", "12:00"),
    ("session_at", "las 8 menos cuarto de la tarde", "19:45"),
    ("session_at", "12 de la noche", "00:00"),
    ("session_at", "half past six", ASK),
    ("session_at", "six thirty", ASK),
    ("session_at", "at quarter to seven", ASK),
    ("session_at", "7", ASK),
    ("session_at", "half six", ASK),
    ("session_at", "1 de la noche", ASK),
    ("session_at", "before work", ASK),
    ("session_at", "between 6 and 7", ASK),
    ("session_at", "after 6 pm", ASK),
    ("evening_at", "half past eight", "20:30"),
    ("evening_at", "8:30", ASK),
    ("evening_at", "a las ocho y media", "20:30"),
    ("evening_at", "8 am", ASK),
    ("screen", "none of the above", []),
    ("screen", "ninguna de esas", []),
    ("screen", "two and seven", ["effort_signs", "recent_injury"]),
    ("screen", "solo la 7", ["recent_injury"]),
    ("screen", "all except 2", ASK),
    ("screen", "1-3", ASK),
    ("screen", "2 to 4", ASK),
    ("screen", "del 2 al 4", ASK),
    ("screen", "no 3", ASK),
    ("injury", "hombro izq, caída, 2019", "hombro izq, caída, 2019"),
    ("language", "castellano", "es"),
    ("units", "pounds", "lb"),
    ("decimal_mark", "coma", ","),
    ("guardian", "mi madre, 600 123 456", "mi madre, 600 123 456"),
    ("guardian", "my mum", ASK),
]  # fmt: skip


@pytest.mark.parametrize(("key", "text", "meant"), RIGHT, ids=lambda one: str(one)[:40])
def test_a_sloppy_answer_is_read_right_or_asked_about(key: str, text: str, meant: Any) -> None:
    answer = read_answer(BY_KEY[key], text, today=TODAY, units="kg")
    if meant is ASK:
        assert isinstance(answer, Unclear | Several | Partly)
    else:
        assert answer == Heard(meant)


def test_every_question_is_tried() -> None:
    assert {key for key, _, _ in RIGHT} == {step.key for step in STEPS}


@pytest.mark.parametrize("text", ["72", "seventy two", "setenta y dos", "about 72"])
def test_a_bare_weight_of_somebody_who_writes_pounds_is_never_kilograms(text: str) -> None:
    # DERIVED: 72 lb × 0.45359237 = 32.66 kg
    answer = read_answer(BY_KEY["mass_kg"], text, today=TODAY, units="lb")
    assert answer == Heard(32.7)


def test_what_was_understood_of_a_list_is_kept_beside_what_was_not() -> None:
    answer = BY_KEY["equipment"].read("barra, banco y mancuernas de 4 a 12 kg", TODAY)
    assert answer == Partly(["dumbbells", "bench"], ("barra",))
