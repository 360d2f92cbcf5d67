"""English for the wide net: the whole person, distress and nights, besides the closer concepts."""

from bot.reading.red_flag_en_doubts import DOUBTS
from bot.reading.red_flag_en_other import OTHER
from bot.reading.red_flag_en_sensations import COURSE, SENSATIONS
from bot.reading.red_flag_words import together

WIDE_PERSON = {
    "wide_bladder": together(
        """
        accident*~(leggings|pants|shorts|knickers|trousers|underwear|bed|tights)
        (leggings|pants|shorts|knickers|trousers|underwear)~(wet|soaked|damp)~(didnt|without|
        never) (notice|feel|know)
        """,
        OTHER["bladder"],
        """
        (didnt|havent|couldnt|not) (make|made|making) it to (the )?(toilet|loo|bathroom)
        messed my~; soaked my (pants|shorts)
        (didnt|dont|not) (even )?(feel|notice|know) (i was |it |that i |im )?(weeing|peeing|going|
        coming out|leaking)
        (numb*|no feeling|tingl*|cant feel)~(between (my|the) legs|inner thighs?|backside and|
        bum and|
        undercarriage|down there|down below|privates?|saddle|groin|crotch|seat)
        (pee|wee|urine|poo|bladder|bowel*)~(leak*|escap*|accident*|control|without (noticing|
        knowing))
        (pee|wee|urine|poo|poop)~(came|come|comes|coming|dribbl*|drip*|trickl*|slipped|ran) (out|
        down)*
        (leak*|accident*|lost control)~(pee|wee|urine|poo|bladder|bowel*|down there)
        """,
    ),
    "wide_bladder_figure": OTHER["bladder_figure"],
    "wide_pregnant": OTHER["pregnant"],
    "wide_bleed": OTHER["bleed"],
    "wide_bleed_figure": DOUBTS["bleed_minor"],
    "wide_overdose": together(
        """
        (doubl*|tripl*) (up )?(on )?(my |the )?(pills|tablets|meds|medication|insulin|dose|tablet|
        painkillers)
        (twice|double|triple|three times) (the|my)~(dose|amount)~(pills|tablets|meds|medication|
        insulin|paracetamol|ibuprofen)*
        (extra|too many|loads of|bunch of|handful of|whole lot of|rest of the|all the) (pills|
        tablets|painkillers|sleeping)
        """,
        OTHER["overdose"],
        """
        (took|taken|taking|swallowed|had|necked|downed)~~(more|many|much|double|whole|all|lots|
        loads|
        bunch|handful|pile|packet|bottle|box)~(pills|tablets|painkillers|meds|medication|medicine|
        paracetamol|ibuprofen|codeine|sleeping|insulin|capsules)
        oded; od ed; od d; overdone~(pills|tablets|meds|medication|painkillers|insulin)
        (more|too many|too much) (of my |of the |of them )?(pills|tablets|painkillers|meds|
        medication)
        """,
    ),
    "wide_overdose_figure": together(
        OTHER["overdose_figure"],
        """
            (od|odd|oded|od d|overdosed|overdosing|overdose) on (?!my|the|pills|tablets|meds|
            medication|paracetamol)\\w+
        """,
    ),
    "wide_self_harm": together(
        """
        (dont|not|never)~(want|think|wish|hope|care)~wake up
        (driv*|steer*|crash*|swerv*|jump*|step*|walk*)~(off|into|in front of) (the|a)~(road|
        bridge|tree|wall|lorry|traffic|roof|cliff|edge|train|bus)
        (think|thinking|thought|thoughts|imagin*)~(crashing|jumping|drowning|hanging|overdosing|
        disappearing|ending)
        (wish|hope) (i|it)~(would just end|was over|were over|could end|
        could stop)(?! (the )?(set|session|burpee*|plank*|winter))
        (say|saying|said|write|writing) (my )?goodbye*~(everyone|family|kids|forever|letter*)
        """,
        OTHER["self_harm"],
        """
        (everyone|everybody|world|family|kids)~(better|easier)~without me
        (dont|not|cant) see~(point|reason)~(anymore|any more|going on|carrying on|living|being here)
        (sleep|bed)~(not|never|dont) (ever )?wak*; (better|easier)~(not|never) (be here|exist|
        being here|being around)
        (in front of|under) (a|the) (train|bus|car|lorry|truck|tube)(?! (station|stop))
        no point~(to|in|of)~(me|my life|being here|being alive|carrying on|going on|living|
        any of it|existing)
        (stop|stopped) (being here|existing|living); (not|never) wake(ing)? up again
        (want|wanted|wish|need)~(everything|it all|all of it|it|life|this life)~(stop|end|over|
        go away|finish*)~(
        for good|forever|for ever|permanently|once and for all|completely)
        (want|wanted) (out|it to be over|to stop existing|to not exist|
        to disappear)(?! of (the session|this|set|bed|here))
        (wish|hope|hoping)~(not|never|wont|didnt) wake; sick of being alive; want out of life
        (been|started|im|back to) (cutting|self harming|hurting myself)( again)?(?! (the|my hair|
        back|
        down|out|weight|carbs|calories|grass|hedge|wood|short|corners))
        (plan|way|ways|how) to (end|die|kill); (pills|tablets) (and|to) end
        (life|living)~(pointless|not worth|too much for me|over for me)
        """,
    ),
    "wide_self_harm_figure": OTHER["self_harm_figure"],
    "wide_comes_back": """
        every week (for|this|since)~; (for|over|past|last)~(months|six weeks|6 weeks|five weeks|
        5 weeks|a month|
        ages now|eight weeks|8 weeks); (keeps|kept) (coming|creeping|popping) back
        (back|again) (every|each) week; week after week; month after month
    """,
    "wide_harmless_back": """
        sore; soreness; doms; stiff*; tight*; better; best; stronger; improv*; progress*
        training; trained
        programme; plan; first time; without; no (pain|issues|problems); pain free; fine; good
    """,
    "wide_settled": """
        (gone|fine|ok|okay|recovered|back|settled|normal|good)~(in|after|within) (a |about |
        under )?~(sec|secs|
        second|seconds|min|mins|minute|minutes|moment)
        (recovered|settled|calmed) (quickly|fast|fine|straight away)
    """,
    "wide_wakes": """
        (cant|didnt|hardly|barely|havent|no) (sleep|slept)~(for|because of|with|due to|thanks to|
        from|cos of)~(shoulder|
        elbow|arm|wrist|neck|hand|back|forearm|pain|ache)
        (shoulder|elbow|arm|wrist|neck|hand|back|forearm|pain|ache|aching|throbbing|joint|it)~(
        woken|woke|wakes|waking|keeps|kept|keeping) (me|us)( up)?(?! (on|posted|going|fit|motivated|
        busy|honest|company|dry|warm|sane|safe))
    """,
    "wide_night": SENSATIONS["night"],
    "wide_all_night": "all night; every night; night after night; all through the night",
    "wide_many_nights": SENSATIONS["two_nights"],
    "wide_night_figure": together(DOUBTS["gone_by_morning"], DOUBTS["legs_ache"]),
    "wide_movement_linked": SENSATIONS["movement_linked"],
    "wide_rest_pain": together(
        DOUBTS["rest_only"],
        """
        (even |also )?(when|while|if|with)~(still|resting|not moving|doing nothing|lying down|
        sat down|
        sitting down|motionless|at rest|dont move|not using)
        at rest; without (moving|doing)~; (sitting|lying) (still|there|quietly)
        """,
    ),
    "wide_weight_loss": together(
        OTHER["weight_drop"],
        """
            (dropped|lost|down)~(dress size|sizes|a size|belt hole*); (clothes|trousers|jeans|
            ring)~(loose|falling off|hang*)
        """,
    ),
    "wide_no_reason": OTHER["no_reason"],
    "wide_night_sweat": together(
        OTHER["night_sweats"], "(sweat*|soak*|drench*)~(sheets|bed|bedding|pyjamas|pillow|duvet)"
    ),
    "wide_hot_room": DOUBTS["hot_room"],
    "wide_unwell": DOUBTS["unwell_strong"],
    "wide_cancer": OTHER["cancer"],
    "wide_laugh": COURSE["laugh"],
}
