"""Who somebody is: of age or not, and which table of goals holds."""

import re

from bot.acts.intake_answers import Answer, Heard, Unclear, Why, bare, choice, tidy
from bot.acts.intake_loosely import with_digits

YES = ("yes", "y", "yeah", "yep", "yes ok", "ok yes", "ok", "okay", "sure",
       "agree", "i agree", "agreed", "yup", "yes i agree", "yes agree", "yes agreed", "yes sure",
       "of course", "yes of course", "yes please", "i do", "yes i do", "yes yes", "estoy yes",
       "estoy de acuerdo", "si", "vale", "claro", "de acuerdo", "acepto")  # fmt: skip
ADULT = {
    True: (
        *YES,
        "18",
        "18 or older",
        "adult",
        "an adult",
        "yes i am",
        "yes older",
        "i am",
        "older",
        "yes lo soy",
        "yes claro",
        "yes yes",
        "yes que yes",
        "over 18",
        "i'm over 18",
        "i am over 18",
        "im over 18",
        "i am 18 or older",
        "adulto",
        "adulta",
        "mayor de edad",
        "18 o mas",
        "tengo 18 o mas",
    ),
    False: (
        "no",
        "under 18",
        "not yet",
        "no i am not",
        "no i'm not",
        "minor",
        "younger",
        "i am under 18",
        "menor",
        "menor de edad",
    ),
}
REFERENCE = {
    "men": ("men", "men's", "mens", "male", "man", "m", "hombres", "hombre"),
    "women": ("women", "women's", "womens", "female", "woman", "w", "f", "mujeres", "mujer"),
    "own": (
        "coach",
        "coach decides",
        "own",
        "let the coach decide",
        "other",
        "neither",
        "entrenador",
        "entrenadora",
        "que decida mi entrenador",
        "otro",
        "ninguna",
    ),
}
AGE = re.compile(
    r"(?:(?:yes|no)[ ,]*)?(?:i'?m|i am|im|tengo|age|edad|my age is)?[ :]*(?P<age>\d{1,3})"
    r"(?: ?(?:years?|y|yo|yrs?)(?: old)?)?(?: (?:already|ya))?"
)
ADULT_AGE = 18  # [years] safety: minors
AGES = (8, 99)  # [years] ch: outside it is a slip
UNSURE = re.compile(
    r"(?:let|que)(?: lo)? (?!me\b)(?:\S+ ){1,3}(?:decides?|decida|choose|elija)"
    r"|que (?:lo )?(?:decida|elija) (?:mi |la |el )?\S+(?: \S+)?"
    r"|(?:the |my )?coach (?:decides|chooses)|you (?:choose|decide)"
    r"|(?:i )?do ?n'?t (?:know|care)|(?:i'?m )?not sure|no idea|no se|no lo se|ni idea"
    r"|(?:me )?da igual|no estoy segur[oa]|either|any|whatever|does ?n'?t matter"
    r"|prefer not to say|prefiero no decirlo"
)
""""I do not know": then the coach decides."""
TABLE = re.compile(
    r"(?:the |la |el )?(?:table )?(?:of |for |de )?(?:the |los |las )?"
    r"(?P<who>\w+(?:'?s)?)(?: table| one)?"
)


def adult(text: str) -> Answer:
    """Read a yes, a no, or an age; a yes or no that its age contradicts is asked again."""
    said = tidy(with_digits(text))
    found = AGE.fullmatch(said)
    if found is None:
        return choice(ADULT)(text)
    age = int(found["age"])
    is_adult = age >= ADULT_AGE
    if not AGES[0] <= age <= AGES[1] or said.startswith("no" if is_adult else "yes"):
        return Unclear(Why.CHOICE)
    return Heard(is_adult)


def reference(text: str) -> Answer:
    """Read which table; who does not know leaves it to the coach."""
    if UNSURE.fullmatch(bare(text)):
        return Heard("own")
    found = TABLE.fullmatch(tidy(text))
    return choice(REFERENCE)(found["who"] if found else text)
