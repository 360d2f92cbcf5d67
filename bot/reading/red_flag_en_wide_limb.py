"""English for the wide net: joints, arms and legs, besides what the closer concepts know."""

from bot.reading.red_flag_en_doubts import DOUBTS
from bot.reading.red_flag_en_head import HEAD
from bot.reading.red_flag_en_limb import LIMB
from bot.reading.red_flag_en_other import OTHER
from bot.reading.red_flag_en_places import PLACES
from bot.reading.red_flag_en_sensations import COURSE, SENSATIONS
from bot.reading.red_flag_words import together

WIDE_LIMB = {
    "wide_joint": PLACES["joint"],
    "wide_looks_wrong": together(
        """
        (kneecap|knee cap|ball|bone|joint|finger|thumb|elbow)~(on|round|around|to|at) the (side|
        outside|back|front|wrong side)(?! of (the|my) (bar|box|bench|mat|door|room|gym|house|car))
        """,
        LIMB["visible_out"],
        DOUBTS["looks_bad"],
        """
        (bone|collarbone|collar bone|knuckle|joint|end)~(sticking|sticks|poking|pokes|tenting|
        jutting|juts|
        sitting|bulging|popping) (up|out|through|under|sideways|proud|forward*)
        (lump|bump|step|bulge|dent|dip)~(shoulder|collarbone|joint|elbow|wrist|where it)
        (lower|higher|further (forward|back)) than the other; sagging; step (in|at) (my|the)
        (not|isnt|doesnt)~(where it|sit right|line up|lined up|look right|look normal|look like)
        (wrong|other|opposite) (way|direction); (shape|outline) (has |is |looks )?(changed|wrong|
        different|off|weird)
        """,
    ),
    "wide_slipped": together(
        LIMB["dislocate"],
        """
        (hopped|hop|jumped|slipped|popped|slid|moved|came|went|clunked|shot|rolled|fell|
        dropped) out and~(in|back|again)
        (slid|slip*|shift*|mov*|pop*|jump*|slide*|rode|ride*) (round|around|sideways|across|over|
        to the side|up and over|forward*|backward*)
        (went|gone|goes|came|comes|coming|jumped|jumps) out (for|again|when|briefly|a (second|
        moment|bit))
        """,
    ),
    "wide_socket": "socket; out of joint; in the joint; not (sitting|seated|tracking) right",
    "wide_put_back": DOUBTS["back_in"],
    "wide_past": together(
        "(in|at) (school|college|uni|university)", COURSE["long_ago"], DOUBTS["history_only"]
    ),
    "wide_out_figure": together(
        "(band|stick|broomstick|shoulder) (dislocat*|pass through*); dislocates [0-9]+",
        LIMB["pop_out_figure"],
        LIMB["pop_harmless"],
    ),
    "wide_form_cue": together(DOUBTS["position_cue"], HEAD["not_passed_out"]),
    "wide_cold_limb": DOUBTS["cold_hand"],
    "wide_stuck": DOUBTS["stuck_out"],
    "wide_pop": together(
        LIMB["pop_event"],
        """
        (felt|feel|heard|hear) (a|some|it|something) (\\w+ )?(pop|snap|rip|tear|crack|crunch|twang|
        ping|give|go|tearing|ripping|unzip*|let go)
        (tore|torn|ripped|ruptured|snapped) (my|the)~(bicep*|pec*|shoulder|tendon|muscle|elbow|
        tricep*|forearm|cuff|lat)
        """,
    ),
    "wide_pop_figure": """
        went (?!pop|snap|bang|crack|crunch|ping|twang|clunk|with)[a-z]+
        (always|usually|often|sometimes|constantly|normally|regularly|generally|like always|
        as ever|every rep)
        (pop*|click*|crack*|clunk*|crunch*)~(no pain|painless*|without pain|doesnt hurt|not painful)
        (band|strap|shirt|shorts|shoelace|leggings|glove*|rope|tape|tshirt|callus*|callous*|skin|
        bag|
        sole|sleeve|grips|nail|blister|palm|phone|screen|page|bottle|knuckles)
        pop(ped)? (by|over|round|into|to|in|up|out to|out for|along|on|down); popcorn; pop up
        tear* up; in tears; ripped (abs|physique|body|now|lately)*; getting ripped; look* ripped
        crack* (on|up|open|down|at|the code|a smile|it|me up); get cracking; went (well|great|ok)
        snap (out|chat|decision)
    """,
    "wide_loss": LIMB["loss"],
    "wide_cant_lift": together(
        """
        (try|trying|tried|go) to (raise|lift|move|bring up)~(arm|shoulder)~(nothing|wont|doesnt|
        no (movement|response)|it stays|just hangs)
        """,
        LIMB["cant_lift"],
        "cant~(lift|raise|get)~(arm|arms|shoulder|shoulders)",
    ),
    "wide_today": "today; still; now; since; this morning; all day; anymore; any more",
    "wide_lifts": COURSE["lifts_figure"],
    "wide_hang": COURSE["hang"],
    "wide_weak_side": """
        (weak|weaker|weakest|strong|stronger|better|dominant|bad|good) (side|arm|hand|point|link)
    """,
    "wide_cant_open": """
        cant (even |really )?(open|twist|turn|undo|unscrew|unlock|button|do up|pinch|hold|carry|
        pick up|pour)
        ~(jar|jars|cap|lid|bottle|key|door|tap|cup|mug|pen|kettle|shirt|fork|phone|bag|glass|
        button*|zip)
    """,
    "wide_lift_figure": together(
        DOUBTS["tired_arms"], COURSE["lifts_figure"], "heavy; heavier; weights; rep; reps"
    ),
    "wide_fall": together(LIMB["fall"], "fell*; came off; landed; wiped out; went flying"),
    "wide_fall_figure": LIMB["fall_figure"],
    "wide_limb": together(
        """
        shin; shins; elbow; knuckle*; ankle
        """,
        DOUBTS["limb_any"],
    ),
    "wide_legs": PLACES["leg"],
    "wide_face": "face; lip; lips; cheek; tongue; mouth",
    "wide_swollen": together(
        """
        blew up; blown up; puffed; ballooning; fat (arm|wrist|hand|calf|elbow); fat and; dusky
        """,
        SENSATIONS["swollen"],
        "(fatter|bigger|thicker|wider|larger|puffier|chunkier) (than|compared)~(left|right|other)",
        "ballooned; blown up; inflated; sausage*; balloon*",
    ),
    "wide_grip_lost": """
        cant (to )?(grip|make a fist|squeeze|grasp|clench|hold (a|my|the) (cup|mug|pen|glass|phone|
        fork|bag|bottle))
        grip~(gone|vanished|disappeared|dead|useless|non existent); lost (my |all )?grip strength
        fingers wont close; hand wont close; no grip left since
    """,
    "wide_hard": together(
        DOUBTS["hard_only"], "rock solid; stretched; shiny; like (concrete|marble|steel)"
    ),
    "wide_severe": together(
        SENSATIONS["severe"],
        "(9|10|nine|ten) (, |of |out of )?(10|ten); worst; off the scale; screaming",
    ),
    "wide_colour": SENSATIONS["colour"],
    "wide_turned_colour": DOUBTS["colour_turned"],
    "wide_heavy": SENSATIONS["heavy"],
    "wide_pump": together(LIMB["pump"], DOUBTS["pump_only"]),
    "wide_minor": DOUBTS["joint_only"],
    "wide_kit": together(DOUBTS["kit_colour"], DOUBTS["session_was"]),
    "wide_cold": """
        (from|with|because of|in|due to) (the )?(cold|freezing|snow|frost|winter|ice|ice bath|
        cold (water|bar))
        freezing (outside|out|today|morning|cold); minus [0-9]+; frozen; ice bath; cold plunge
        cold (weather|morning|day|outside|garage|gym|bar|water|ride|swim); so cold (out|outside|
        today|in)
    """,
    "wide_bruise": together(OTHER["bruise"], DOUBTS["bruise_word"]),
    "wide_urine": LIMB["urine_dark"],
    "wide_urine_figure": LIMB["urine_harmless"],
    "wide_cant_straighten": together(
        LIMB["cant_straighten"],
        """
            (stuck|locked|jammed|frozen)~(bent|half bent|flexed|at ninety|crooked); (elbow|elbows|
            arm|arms)~half bent
        """,
        "cant~(elbow|elbows|arm|arms)~(straight|straighten*|extend*)",
        "(elbow|elbows|arm|arms)~(wont|dont|refuse|cant|not)~(straight|straighten*|extend*|unbend)",
    ),
    "wide_fever": together(
        LIMB["fever"],
        "(38|39|40)~~(ache*|aching|shiver*|ill|sweat*|rough|in bed|hot and); burning forehead",
    ),
    "wide_fever_figure": LIMB["not_fever"],
    "wide_hot": together(SENSATIONS["hot"], DOUBTS["hot_touch"]),
    "wide_red": DOUBTS["red_word"],
    "wide_calf": PLACES["calf"],
    "wide_thinners": OTHER["thinners"],
    "wide_numb": together(
        LIMB["numb"],
        "electric*; electricity; shooting~(down|into|along|through|up) (my|the|both)",
        """
        (finger|fingers|thumb|pinky|pinkie|hand|hands|arm|arms|forearm|palm|fingertips|
        wrist)~(asleep|numb|
        gone to sleep|deadened)
        (wearing|like|in) (a |thick |rubber |wool |boxing )?(glove|gloves|mittens); cotton wool
        belongs to someone
        """,
        "(feel|feels|felt|feeling)~(asleep|rubbery|woolly|wooden|dead|not mine|foreign)",
    ),
    "wide_numb_figure": together(
        """
        never had it; just (asking|curious|wondering); numb to(?! (the )?(touch|my|finger*))
        mind numbing*; numbingly; comfortably numb
        numb (with|from) (boredom|shock|grief|excitement|laughing|sitting|cold); numb (bum|
        backside|arse)
        (bum|backside|arse|butt)~numb; emotionally numb; numbing (cream|spray|gel); brain (is |
        went )?numb
        dentist*; numb the pain; tingl* with (pride|excitement); spine tingl*; goosebumps; deadlift*
        (absolutely|so|im|still|proper|was|phone|really|watch|fly|feeling|totally|well|pure) buzzing
        buzzing (after|from|about|for|with|off|at|that|today|to|i|lol|haha|now|tonight)
        phone buzz*; fizzy (drink*|water|pop); beta alanine; pre workout; preworkout; mint*; chilli*
        (cant|dont) feel my (arms|legs|shoulders|body|face|abs) (haha|lol|lmao|after|from|
        today haha|
        anymore haha|by the end|at the end|now lol|now haha|in the end)
        (arms|legs) (are|feel|were|is|feel completely|are absolutely|are so|r) dead; dead (after|
        from)
        (foot|feet|leg|legs|bum|toes) (went|fell|gone|goes|go|fallen) (to sleep|asleep|numb|
        dead)~(sitting|sat|
        crossed|kneel*|loo|toilet|bus|plane|car|desk)
        """,
        "slept on; fell asleep on; lay on; been (lying|leaning|sitting) on; crossed legs",
    ),
    "wide_weak": together(
        "feeble; puny; floppy; flimsy; powerless; strengthless; like jelly since",
        LIMB["weak"],
        DOUBTS["weak_word"],
        """
        (grip|strength|power)~(gone|went|vanished|deserted|left me|disappeared|packed up|given up)
        (wont|doesnt|dont|not|cant|stopped|refuses to) (work|working|respond|responding|obey|do what
        i want|cooperate|hold|close|open); dead weight; (let|lets|letting) go of (things|stuff)
        (wrist|hand|foot|fingers) (drop|dropped|drops|hangs|flops|flopped|dangles|is hanging|
        just hangs)
        cant (pull|lift|hold|bend|bring|raise) (it|them|my hand|my wrist|my fingers|my foot) (up|
        back|straight)
        (keep|keeps|kept) (dropping|letting go|giving way|buckling|fumbling)
        """,
    ),
    "wide_tired": """
        (last|final) (set|sets|round|rounds|rep|reps|few|hang|one|minute)
        (by|at|towards|near) the end; end of (the )?(set|session|round|week|workout); fatigue*
        tired; tiring; failure; failed; knackered; shattered; spent; wrecked; cooked; fried
        (weaker|weak) (than|side|point|link|spot|session|week|coffee|excuse); weakest; doms
        from (yesterday|the (session|sets|climbing|carries)); compared to; todays session
        (grip|strength|arms?|hands?) (gave|gives|went|goes|failed|fails|gave out|go) (out )?(at|
        before|first|on the (last|third|second|final|hang))
        after (the|those|that|all|doing|so many|a|my) (\\w+ )?(hangs?|set|sets|session|carries|
        rows|pull ups|dips|climb*|reps|burpees|workout|round|rounds)
        mentally; willpower; motivat*; no energy; low energy; sleepy
    """,
}
