"""Answers of the fixed questions in Spanish, put into the English words that their readers know.

Only whole words change, so that names, numbers and what is English already stay as they are.
"""

import re
from collections.abc import Mapping

WORDS: Mapping[str, str] = {
    # how long, how long ago
    "hace": "", "unos": "about", "unas": "about", "casi": "about", "mas de": "more than",
    "mas o menos": "about", "mas o menos hace": "about",
    "dia": "day", "dias": "days", "semana": "week", "semanas": "weeks", "mes": "month",
    "meses": "months", "ano": "year", "anos": "years", "minuto": "minute", "minutos": "minutes",
    "hora": "hour", "horas": "hours", "una hora": "an hour", "un dia": "1 day",
    "una semana": "1 week", "un mes": "1 month", "un ano": "1 year", "medio ano": "half a year",
    "media hora": "30 minutes", "hora y media": "90 minutes", "una hora y media": "90 minutes",
    "ayer": "yesterday", "hoy": "today", "nunca": "never", "todavia no": "not yet",
    "aun no": "not yet",
    # yes, no, on, back
    "si": "yes", "claro": "yes", "vale": "yes", "de acuerdo": "yes", "acepto": "i agree",
    "no acepto": "i do not agree", "nada": "nothing", "ninguno": "none", "ninguna": "none",
    "ningun": "none", "nada de esto": "none of these", "nada mas": "nothing else",
    "no a todo": "no to all", "atras": "back", "volver": "back", "vuelve atras": "back",
    "listo": "done", "lista": "done", "ya esta": "done", "hecho": "done", "eso es todo": "done",
    "esta bien": "looks right", "todo bien": "looks right", "correcto": "correct",
    "sin fecha": "no date", "sin prueba": "no event", "sin meta": "no goal",
    "anos o mas": "or older", "menos de 18": "under 18", "menor": "minor", "adulto": "adult",
    "adulta": "adult", "hombres": "men", "hombre": "men",
    "mujeres": "women", "mujer": "women", "tabla de hombres": "men", "tabla de mujeres": "women",
    "lo decide mi coach": "coach", "decide mi coach": "coach", "que decida mi coach": "coach",
    # clock
    "a las": "at", "a la": "at", "de la manana": "am", "de la tarde": "pm", "de la noche": "pm",
    "mediodia": "noon", "12 de la noche": "0:00", "medianoche": "0:00",
    # weights and equipment
    "libra": "lb", "libras": "lb", "cada una": "each", "cada uno": "each",
    "mancuerna": "dumbbell", "mancuernas": "dumbbells", "pesa rusa": "kettlebell",
    "pesas rusas": "kettlebells", "barra con discos": "barbell", "barra olimpica": "barbell",
    "barra para colgarse": "high bar", "barra de dominadas": "high bar", "barra alta": "high bar",
    "barra baja": "low bar", "paralelas": "parallel bars", "barras paralelas": "parallel bars",
    "anillas": "rings", "cintas": "straps", "anillas o cintas": "rings", "cajon": "box",
    "silla": "chair", "cajon o silla firme": "box", "banco": "bench", "goma": "band",
    "gomas": "bands", "banda": "band", "bandas": "bands", "banda elastica": "band",
    "polea": "cable", "sin material": "no equipment", "ligera": "light", "ligeras": "light",
    "media": "medium", "medias": "medium", "fuerte": "heavy", "fuertes": "heavy", "dura": "heavy",
}  # fmt: skip
"""Words and phrases without accents, as :func:`bot.reading.script.plain` leaves them."""
PHRASE = re.compile(rf"\b(?:{'|'.join(sorted(map(re.escape, WORDS), key=len, reverse=True))})\b")
AND = re.compile(r"(?<=[^\W_]) [ye] (?=[^\W_])")
"""``y`` between two things; alone it is somebody's yes."""


def in_english(said: str) -> str:
    """Return a tidied answer with its Spanish words in English."""
    told = PHRASE.sub(lambda found: WORDS[found[0]], AND.sub(" and ", said))
    return " ".join(told.split())
