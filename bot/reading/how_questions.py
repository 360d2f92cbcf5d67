"""A question how a movement is done, in words: what stands where its name should."""

import re

from bot.reading.plain_letters import plain_letters

ARTICLE = r"(?:(?:the|a|an|my|this|that|el|la|los|las|un|una|unos|unas|lo|mi) )?"
BEFORE = r"(?:(?:hey|hi|hello|hola|please|por favor|oye|sorry|perdon|coach) )*"
BEHIND = (
    r"(?: (?:again|exactly|properly|correctly|please|done|work|then|bien|exactamente|por favor|"
    r"otra vez|correctamente))*"
)
ASKS = (
    r"how (?:do|should|can|must|would) (?:i|you|we|one) (?:do|perform|make|execute)",
    r"how to(?: do| perform)?",
    r"how (?:is|are|does)",
    r"how (?=(?:the|a|an) )",
    r"what (?:is|are|does|s)",
    r"what s meant by|what does|what do you mean by",
    r"(?:show|tell|explain)(?: me)?(?: again)?(?: how to do)?",
    r"(?:i )?(?:don t|do not|dont) know (?:how to do|what is)",
    r"como (?:se )?(?:hace|hacen|hago|hacer|haria|hay que hacer|debo hacer|es|son|era|va|van)",
    r"como (?=(?:el|la|los|las) )",
    r"que (?:es|son|era|significa)",
    r"(?:explica|explicame|ensena|ensename|muestrame)(?: otra vez)?(?: como se hace| como hacer)?",
    r"no se (?:como se hace|como hacer|que es)",
    r"en que consiste",
)
WHOLE = re.compile(
    rf"{BEFORE}(?:{'|'.join(ASKS)})\s+{ARTICLE}(?P<name>[a-z0-9][a-z0-9 -]*?){BEHIND}"
)
NAME_LETTERS_LEAST = 3  # [letters] ch: "what is up" asks for no movement
NAME_WORDS_MOST = 6  # [words] ch: no name of the library is longer


def movement_asked(text: str) -> str | None:
    """Return the words that stand for the movement in "how do I do the …?", else None.

    Only where the whole message is that one question; whether a movement has the name is for the
    library to say.
    """
    said = plain_letters(text).strip()
    if re.search(r"[.;:?!\n].*\w", said):
        return None  # more is said beside the question
    plain = " ".join(re.sub(r"[^a-z0-9 -]", " ", said).split())
    found = WHOLE.fullmatch(plain)
    name = found["name"].strip() if found else ""
    is_name = len(name) >= NAME_LETTERS_LEAST and len(name.split()) <= NAME_WORDS_MOST
    return name if is_name else None
