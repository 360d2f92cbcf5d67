"""Small talk: a greeting, a thank-you, a cheer, a thumb. It asks nothing of anybody.

A message is small talk only where phrases of these kinds use up every word of it; whatever else
stands beside them is for the coach. A yes or no is none: it may answer what the coach asked.
"""

import re
import unicodedata
from enum import StrEnum

from bot.reading.plain_letters import plain_letters

FEELS = (
    r"(?:great|good|amazing|awesome|fantastic|excellent|brilliant|lovely|nice|fun|perfect|strong)"
)
VERY = r"(?:so|very|really|super|pretty)"
BIEN = r"(?:bien|genial|fenomenal|estupendo|estupenda|fuerte|de lujo|de maravilla|perfecto)"


class Courtesy(StrEnum):
    """What a message of small talk mostly says."""

    GREETING = "greeting"
    THANKS = "thanks"
    CHEER = "cheer"
    HEARD = "heard"


PHRASES: tuple[tuple[Courtesy, str], ...] = (
    # english
    (Courtesy.GREETING, r"good (?:morning|afternoon|evening|day)|morning|hi|hello|hey|hi there"),
    (Courtesy.GREETING, r"hello there|hey there"),
    (
        Courtesy.THANKS,
        (
            r"(?:many )?thanks(?: a lot| so much| very much| again)?|"
            r"thank you(?: very| so)?(?: much)?(?: again)?|thx|ty|ta|cheers|much appreciated"
        ),
    ),
    (
        Courtesy.CHEER,
        (
            rf"(?:(?:i|it|that|this|today) )?(?:feel|feels|felt|feeling|was|went)(?: {VERY})*"
            rf" (?:{FEELS}|well)(?: today)?"
        ),
    ),
    (Courtesy.CHEER, rf"(?:{VERY} )*{FEELS}(?: (?:session|workout|training|one|job|work|stuff))?"),
    (Courtesy.CHEER, r"(?:i )?loved? (?:it|that|this)|cool|super|wow|yay|woohoo|all good"),
    (
        Courtesy.HEARD,
        r"ok|okay|k|kk|got it|will do|noted|understood|sounds good|no (?:problem|worries)",
    ),
    (
        Courtesy.HEARD,
        r"lol|haha|hehe|bye(?: bye)?|see (?:you|ya)(?: (?:tomorrow|later|soon|then))?",
    ),
    (
        Courtesy.HEARD,
        r"good night|take care|you too|have a (?:good|nice|great) (?:day|evening|one|weekend)",
    ),
    # spanish, without accents
    (Courtesy.GREETING, r"hola|buenas|buen dia|buenos dias|buenas tardes"),
    (Courtesy.THANKS, r"(?:muchas |mil )?gracias(?: por todo| de nuevo)?|muchisimas gracias"),
    (
        Courtesy.CHEER,
        (
            rf"(?:me (?:he )?sent(?:i|ido)|me ha ido|me fue|ha ido|fue|estuvo|ha estado)"
            rf"(?: (?:muy|super))? {BIEN}(?: hoy)?"
        ),
    ),
    (Courtesy.CHEER, rf"(?:que |muy )?{BIEN}|guay|perfecta|me (?:ha encantado|encanto)"),
    (Courtesy.CHEER, r"(?:que )?buen(?:a sesion| entreno| entrenamiento)"),
    (Courtesy.HEARD, r"vale|okey|de acuerdo|entendido|recibido|jaja|jajaja|de nada|igualmente"),
    (
        Courtesy.HEARD,
        r"adios|chao|hasta (?:manana|luego|pronto)|nos vemos|buenas noches|buen finde",
    ),
    (Courtesy.HEARD, r"(?:un )?saludos?|(?:un )?abrazos?"),
)
FINISHED = (Courtesy.HEARD, r"(?:all )?done|hecho|listo|lista|finished|terminado|ya esta")
"""Small talk only where nothing is left to be told of today."""

LONGEST = 12  # [words] ch: small talk is short; a longer text may hold something after all
GLAD = frozenset(
    "👍👌🙏💪🔥🙂😊😀😁😄😅😂🤣😎🎉✅👏🙌🤝👋🥳😉😍💯⭐🌟🤗😃😆💜💙💚🧡💛🖤🤍✨👊🤙🫶🫡😇🌞😘🥰🏋❤☺✔☀♥"
)
BESIDE = re.compile("[\U0001f3fb-\U0001f3ff\ufe0f\u200d♀♂]")
"""Skin tones, signs of the sex and what joins them to the sign before."""


def courtesy_of(text: str, *, coach: str = "", has_finished: bool = False) -> Courtesy | None:
    """Tell what small talk a message is; None where anything in it may be more.

    ``coach`` is a name that may stand in it, ``has_finished`` whether today's answers are in, so
    that a "done" tells nothing new. A "?" or a figure always may be more, an unknown sign too.
    """
    if "?" in text or any(unicodedata.category(one) == "Nd" for one in text):
        return None
    signs = [one for one in BESIDE.sub("", text) if unicodedata.category(one) in {"So", "Sk"}]
    if any(one not in GLAD for one in signs):
        return None
    words = re.findall(r"[a-z]+", plain_letters(text))
    names = frozenset(re.findall(r"[a-z]+", plain_letters(coach))) | {"coach"}
    if len(words) > LONGEST or _has_other_letters(text):
        return None
    if not words:
        return Courtesy.HEARD
    return _of_phrases(
        " ".join(word for word in words if word not in names), has_finished=has_finished
    )


def is_courtesy(text: str) -> bool:
    """Tell whether a message holds nothing but small talk and signs."""
    return courtesy_of(text) is not None


def _of_phrases(said: str, *, has_finished: bool) -> Courtesy | None:
    """Take phrase after phrase from the front, the longest first; None where a word is left."""
    phrases = (*PHRASES, FINISHED) if has_finished else PHRASES
    found: list[Courtesy] = []
    while said:
        taken = [
            (match.end(), kind)
            for kind, pattern in phrases
            if (match := re.match(rf"(?:and |y )?(?:{pattern})(?= |$)", said))
        ]
        if not taken:
            return None
        end, kind = max(taken, key=lambda one: one[0])
        found.append(kind)
        said = said[end:].strip()
    for kind in (Courtesy.CHEER, Courtesy.THANKS, Courtesy.GREETING):
        if kind in found:
            return kind
    return Courtesy.HEARD


def _has_other_letters(text: str) -> bool:
    """Tell whether letters of another script stand in it, which no phrase here reads."""
    return any(one.isalpha() and not "a" <= one <= "z" for one in plain_letters(text))
