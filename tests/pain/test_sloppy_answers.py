"""How people answer first questions and grumble about a session: none of it asks about a sign.

CHOSEN: lines written before the reader saw any of their kind; none of them is learnt from.
"""

import pytest

from bot.reading.red_flags import read_red_flags
from scheduler.pain.red_flags import RED_FLAGS
from scheduler.pain.values import Level

EVERYDAY = (
    "lun mie vie y a veces el sabado",
    "lunes miercoles y viernes, el sabado a veces",
    "una floja y otra mas dura",
    "tengo las pesas flojas, de 2 y 3 kilos",
    "la goma que tengo es blandita",
    "me he cansado mucho",
    "fatal, no he llegado ni a la mitad",
    "floja hoy, he bajado el peso",
    "a floppy band and a stiff one",
    "weak session, dropped the weight",
    "awful session didnt even get half way",
)
SIGNS = (
    ("noto la mano floja y se me caen las llaves", Level.CLINICIAN),
    ("me he cansado de vivir, de verdad", Level.EMERGENCY),
    ("estoy fatal, no puedo respirar bien ni sentada", Level.EMERGENCY),
    ("a veces se me va la fuerza de todo el brazo", Level.CLINICIAN),
    ("my hand went floppy and it has not come back", Level.CLINICIAN),
)


@pytest.mark.parametrize("words", EVERYDAY)
def test_a_sloppy_answer_or_a_weak_day_is_not_asked_about_as_a_sign(words):
    assert read_red_flags(words).candidates == ()


@pytest.mark.parametrize(("words", "level"), SIGNS)
def test_the_same_words_about_the_body_still_count(words, level):
    found = [RED_FLAGS[one.flag].level for one in read_red_flags(words).candidates]
    assert level in found
