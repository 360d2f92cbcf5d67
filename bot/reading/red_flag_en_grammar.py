"""English grammar for the scopes: whose words, and what a denial reaches."""

import re

from bot.reading.red_flag_grammar import Grammar

NAME_HAPPENED = """
    has had got fainted collapsed dislocated tore passed broke blacked fell popped
"""
NOT_NAMES = """
    today yesterday last just body everything something nothing this that there what which
    who then also monday tuesday wednesday thursday friday saturday sunday have ever
    session set still never always finally only tonight week morning after before once
    really first second half both one lower mid skin muscle biceps left right top front
    rear inner outer ended
"""
ENGLISH_GRAMMAR = Grammar(
    happened=re.compile(
        r"(has|had|have|is|was|got|gets|did|does|went|goes|fell|fainted|passed|collapsed|popped|"
        r"tore|broke|hurt|hurts|died|suffers|suffered|dislocated|been|tripped|keeps|kept|felt|"
        r"feels|took|ended|blacked|faints|said|s|just|once|nearly|almost|in|with|who|cant|couldnt|"
        r"needed|collapsing|hit|faint|pass|collapse|banged|knocked|threw|smashed|lost|gave|having|"
        r"getting|complained|started|thought|broken|isnt|wasnt|and|on|woke|wakes|might|may|\w+ed)"
        r"(?!\w)"
    ),
    goes_on=re.compile(
        r"(and |then |so |but |had|has|got|went|was|were|ended|turned|needed|his|her|their|he|she|"
        r"they|who|which|popped|couldnt|cant|totally|proper|right|\w+ed\b)"
    ),
    owners=frozenset({"his", "her", "hes", "shes", "their"}),
    likened=frozenset({"like", "if", "though"}),
    beside_me=frozenset({"to", "beside", "behind", "near", "of"}),
    no_words=frozenset({"no", "none", "nope", "nah", "nil", "negative", "zero", "never"}),
    after_no=frozenset({"and", "thankfully", "haha", "at"}),
    own_in_list=frozenset({"i", "im", "ive", "my", "but", "just", "bad", "some", "in", "is"}),
    name_happened=frozenset(NAME_HAPPENED.split()),
    not_names=frozenset(NOT_NAMES.split()),
    owner_ending="s",
    not_owners=frozenset({"hes", "shes"}),
)
