"""English for the wide net: chest, heart and breath, besides what the closer concepts know."""

from bot.reading.red_flag_en_doubts import DOUBTS
from bot.reading.red_flag_en_head import BREATH
from bot.reading.red_flag_en_heart import HEART
from bot.reading.red_flag_en_places import PLACES
from bot.reading.red_flag_en_sensations import COURSE, SENSATIONS
from bot.reading.red_flag_words import together

WIDE_HEART = {
    "wide_chest": together(
        PLACES["chest"],
        """
        torso; solar plexus; (behind|under|below|beneath|between) (my |the )?(ribs|breast*)
        left ribs; left side of my (ribs|body); under my (left )?arm(pit)?
        (cheat|chess|ches|chst|chesr|cest|chast)(?= (\\w+ ){0,3}(tight|hurt|pain|pressur|heav|ach|
        squeez))
        """,
    ),
    "wide_heart": "heart; ticker",
    "wide_pressure": together(
        SENSATIONS["pressure"],
        """
        tight*; squash*; weight (on|of|sitting|across|pressing); fist; knot; wrung; gripped
        grip like; clutch*; smother*; suffocat*; squished; strap; belt; a load on; tugging
        (sat|sits|sitting|pushing|leaning|kneeling|stood|standing) on; (brick|slab|stone|rock|anvil|
        boulder|sandbag|plate|ton)~on
        """,
    ),
    "wide_pain": together(
        SENSATIONS["pain"],
        "spasm*; jab*; gnaw*; knife*; stab*; knot*; kills; killing; agony; sharp; tearing; ripping",
    ),
    "wide_on_me": """
        (rope|belt|strap|vice|corset|cage|girdle|cable|chain|band)~(round|around|across)~(me|
        upper body|torso|
        ribs|body|middle)
        (elephant|anvil|weight|brick|slab|someone|something|somebody|boulder|rock|ton of bricks)~(
        on|sitting on|sat on|standing on|pressing on) (me|my upper body)
    """,
    "wide_hurry": """
        rush*; hurry*; hurri*; stairs; staircase; upstairs; uphill; hill; hills; flight*
        (for|to catch|catching) (the|my|a) (bus|train|tube|tram); late for; brisk*; walk* fast
        escalator; exert*; exertion; walking (the dog|up|quickly|fast|home|to)
    """,
    "wide_odd": """
        weird; weirdly; funny; odd; oddly; strange; strangely; peculiar; dodgy; iffy; wrong
        (not|isnt|doesnt feel|dont feel|wasnt|didnt feel) (quite |at all )?right; off; flutter*
        rough; horrible; nasty; awful; something (in|inside|going on)
    """,
    "wide_companion": together(
        HEART["sweat"],
        HEART["sick"],
        BREATH["cant_breathe"],
        """
        breathless*; short of breath; shortness of breath; jaw; puffed
        (down|into|up|through|along|to|toward|towards|in) (my |the |both )?(left |right )?(arm|arms|
        jaw|neck|teeth|throat|back|shoulder blade*)
        left arm; both arms; spread*; radiat*; shoots (down|up|into); travel* (down|up|into)
        """,
    ),
    "wide_heart_companion": together(
        HEART["sweat"], HEART["sick"], BREATH["cant_breathe"], "breathless*"
    ),
    "wide_again": together(DOUBTS["again"], "sometimes; often; on and off; every"),
    "wide_muscle": together(COURSE["muscle_hint"], COURSE["after_exercise"]),
    "wide_chest_cue": together(
        DOUBTS["position_cue"],
        """
        chest (work|day|exercise*|move*|session|routine|muscle*|hair|freezer|of drawers|cold|
        infection|cough|size|measurement*|pass*)
        (heavy|heavier|tight|tighter) (on|for|in) (the )?(press|bench|push|dip)*
        (press|bench|push ups|flys?|flyes|dips) for (my )?chest; get it off my chest
        chest (is )?(fine|good|great|ok|stronger|bigger|growing)
        (bar|band|rings|hands|elbows|chin|knees|bell|kettlebell|weight|plate|dumbbell*) (at|to|by|
        against|on|near|under|over|across|in front of) (my |the )?(chest|sternum)
        chest (strap|band|pad|rig)
        (strap|bra|vest|top|shirt|jacket|belt|harness|monitor|band) (is|was|felt|feels|too|
        so)~tight~
        """,
    ),
    "wide_effort": SENSATIONS["stairs"],
    "wide_referred": """
        arm; arms; shoulder; shoulders; jaw; upper back; back; shoulder blade*; neck; throat
    """,
    "wide_arm": PLACES["arm"],
    "wide_jaw": "jaw; jawline; jaws; lower teeth; throat",
    "wide_arm_motion": SENSATIONS["arm_motion"],
    "wide_sore": SENSATIONS["sore"],
    "wide_trained": together(COURSE["exercise"], COURSE["during_exercise"]),
    "wide_indigestion": HEART["indigestion"],
    "wide_heart_figure": together(HEART["heart_figure"], HEART["heart_delight"]),
    "wide_breath": together(
        """
        (breath|breathing)~(back under control|under control|back to normal|right|to settle|to slow)
        breathing (is |feels |was |went )?(fast|rapid|ragged|shallow|weird|funny|off|wrong|
        hard) (still|at rest|now|even)
        """,
        BREATH["cant_breathe"],
        """
        breathless*; short(ness|er)? (of|on) (breath|air)
        (catch|get|getting|find|finding|draw|drawing|take|suck|sucking|pull) (my |a |any |enough |
        in )?(proper |full |good |deep |whole )?(breath|breaths|air|oxygen)(?! (back )?(quick*|fast|
        easily|fine|in between|between))
        breath*~(short|shallow|difficult|laboured|labored|hard work|wont|heavy|uneven|tight)
        (gulp*|suck*|pant*|grasp*|heav*|beg*|desperate|starv*|hungry|fight*|gasp*) for (air|
        breath|oxygen)
        (hard|tough|tricky|difficult|struggle|struggling|battle|effort) to breathe
        (air|oxygen)~(hungry|enough|starved); chest wont (open|expand|fill)
        """,
    ),
    "wide_winded": BREATH["breathless"],
    "wide_not_settling": together(
        DOUBTS["wont_settle"],
        """
        at rest; resting; sitting; sat; lying; lying down; in bed; on the (sofa|couch)
        doing nothing; for no reason; no reason; without (moving|doing anything); talking
        (an|one|two|three|few|couple of|several) hours?; hours; all (day|night|morning|evening)
        (wont|not|isnt|hasnt|doesnt|didnt|never) (stop*|settl*|calm*|slow*|eas*|go*|pass*)
        long after; ages after; since (yesterday|this morning|lunch|the session|last night)
        """,
    ),
    "wide_on_breathing": together(
        BREATH["breath_in"],
        "(breathe|breathing|breath|breathes) in; inhal*; each breath; lungs fill; deep breath*",
    ),
    "wide_breath_cue": together(DOUBTS["breath_cue"], BREATH["nose"]),
    "wide_nose": BREATH["nose"],
    "wide_heartbeat": together(
        HEART["heart_irregular"],
        """
        (heart|pulse|heartbeat|ticker)~(drum*|gallop*|racy|stumbl*|trip*|pause*|thud*|leap*|hop*|
        misbehav*|acting up|playing up|all wrong|not right|out of sync)
        """,
    ),
    "wide_heart_fast": HEART["heart_fast"],
}
