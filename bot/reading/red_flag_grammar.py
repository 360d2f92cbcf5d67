"""How a language says whom a word is about, and what it denies: data for the scopes."""

import re
from dataclasses import dataclass, field


@dataclass(frozen=True)
class Grammar:
    """The small words that the scopes look at; the longer lists are concepts.

    ``happened`` must follow another person within a few words for the rest to be about them;
    ``goes_on`` carries that across a sign. ``owners`` are words that make what follows somebody
    else's by themselves. ``own_in_list`` shows that a list after a denial has ended.
    """

    happened: re.Pattern[str]
    goes_on: re.Pattern[str]
    owners: frozenset[str]
    likened: frozenset[str]
    beside_me: frozenset[str]
    no_words: frozenset[str]
    after_no: frozenset[str]
    own_in_list: frozenset[str]
    name_happened: frozenset[str] = frozenset()
    not_names: frozenset[str] = frozenset()
    owner_ending: str = ""
    """The letter that ends a person's genitive: "my mums shoulder"."""
    not_owners: frozenset[str] = field(default_factory=frozenset)
