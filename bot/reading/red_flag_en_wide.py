"""English for the wide net: the fields of words, besides what the closer concepts know."""

from bot.reading.red_flag_en_doubts import DOUBTS
from bot.reading.red_flag_en_head import BREATH, HEAD
from bot.reading.red_flag_en_heart import HEART
from bot.reading.red_flag_en_limb import LIMB
from bot.reading.red_flag_en_other import OTHER
from bot.reading.red_flag_en_places import PLACES
from bot.reading.red_flag_en_sensations import COURSE, SENSATIONS


def _all(*parts: str) -> str:
    return "\n".join(parts)


WIDE_HEART = {
    "wide_chest": _all(
        PLACES["chest"],
        """
        torso; solar plexus; (behind|under|below|beneath|between) (my |the )?(ribs|breast*)
        left ribs; left side of my (ribs|body); under my (left )?arm(pit)?
        (cheat|chess|ches|chst|chesr|cest|chast)(?= (\\w+ ){0,3}(tight|hurt|pain|pressur|heav|ach|squeez))
        """,
    ),
    "wide_heart": "heart; ticker",
    "wide_pressure": _all(
        SENSATIONS["pressure"],
        """
        tight*; squash*; weight (on|of|sitting|across|pressing); fist; knot; wrung; gripped
        grip like; clutch*; smother*; suffocat*; squished; strap; belt; a load on; tugging
        (sat|sits|sitting|pushing|leaning|kneeling|stood|standing) on; (brick|slab|stone|rock|anvil|
        boulder|sandbag|plate|ton)~on
        """,
    ),
    "wide_pain": _all(
        SENSATIONS["pain"],
        "spasm*; jab*; gnaw*; knife*; stab*; knot*; kills; killing; agony; sharp; tearing; ripping",
    ),
    "wide_on_me": """
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
    "wide_companion": _all(
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
    "wide_heart_companion": _all(
        HEART["sweat"], HEART["sick"], BREATH["cant_breathe"], "breathless*"
    ),
    "wide_again": _all(DOUBTS["again"], "sometimes; often; on and off; every"),
    "wide_muscle": _all(COURSE["muscle_hint"], COURSE["after_exercise"]),
    "wide_chest_cue": _all(
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
        (strap|bra|vest|top|shirt|jacket|belt|harness|monitor|band) (is|was|felt|feels|too|so)~tight~
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
    "wide_trained": _all(COURSE["exercise"], COURSE["during_exercise"]),
    "wide_indigestion": HEART["indigestion"],
    "wide_heart_figure": _all(HEART["heart_figure"], HEART["heart_delight"]),
    "wide_breath": _all(
        BREATH["cant_breathe"],
        """
        breathless*; short(ness|er)? (of|on) (breath|air)
        (catch|get|getting|find|finding|draw|drawing|take|suck|sucking|pull) (my |a |any |enough |
        in )?(proper |full |good |deep |whole )?(breath|breaths|air|oxygen)(?! (back )?(quick*|fast|
        easily|fine|in between|between))
        breath*~(short|shallow|difficult|laboured|labored|hard work|wont|heavy|uneven|tight)
        (gulp*|suck*|pant*|grasp*|heav*|beg*|desperate|starv*|hungry|fight*|gasp*) for (air|breath|oxygen)
        (hard|tough|tricky|difficult|struggle|struggling|battle|effort) to breathe
        (air|oxygen)~(hungry|enough|starved); chest wont (open|expand|fill)
        """,
    ),
    "wide_winded": BREATH["breathless"],
    "wide_not_settling": _all(
        DOUBTS["wont_settle"],
        """
        at rest; resting; sitting; sat; lying; lying down; in bed; on the (sofa|couch)
        doing nothing; for no reason; no reason; without (moving|doing anything); talking
        (an|one|two|three|few|couple of|several) hours?; hours; all (day|night|morning|evening)
        (wont|not|isnt|hasnt|doesnt|didnt|never) (stop*|settl*|calm*|slow*|eas*|go*|pass*)
        long after; ages after; since (yesterday|this morning|lunch|the session|last night)
        """,
    ),
    "wide_on_breathing": _all(
        BREATH["breath_in"],
        "(breathe|breathing|breath|breathes) in; inhal*; each breath; lungs fill; deep breath*",
    ),
    "wide_breath_cue": _all(DOUBTS["breath_cue"], BREATH["nose"]),
    "wide_nose": BREATH["nose"],
    "wide_heartbeat": _all(
        HEART["heart_irregular"],
        """
        (heart|pulse|heartbeat|ticker)~(drum*|gallop*|racy|stumbl*|trip*|pause*|thud*|leap*|hop*|
        misbehav*|acting up|playing up|all wrong|not right|out of sync)
        """,
    ),
    "wide_heart_fast": HEART["heart_fast"],
}
WIDE_HEAD = {
    "wide_fainted": _all(
        HEAD["passed_out"],
        """
        woke up (lying |flat )?(on|face down)~(floor|ground|mat|grass|deck); blanked (out|for)
        (went|gone) down (like|in a)~; (i|just) dropped (to the|onto the) (floor|ground)
        (went|go|gone) limp; came to; (catch|caught|hold|held) me (up|before|as i fell)
        (gone|out|lost it) for (a |about |maybe )?(few|couple|five|ten|[0-9]+)?~(sec|secs|second|seconds|minute|minutes)
        lost (a few|some|couple of) (seconds|minutes); (lights|world) (went )?out; keel*
        """,
    ),
    "wide_near_faint": DOUBTS["near_faint"],
    "wide_near": "nearly; almost; about to; close to; going to; verge; thought i; felt like",
    "wide_faint_figure": _all(
        HEAD["not_passed_out"],
        "(blackout|blackouts)~(street|town|building|area|house|city|village|neighbourhood|block|power)",
        "(power|electricity|street)~(blackout|blacked out|out)",
    ),
    "wide_dizzy": """
        dizz*; lightheaded*; light headed*; woozy; giddy; vertigo; wobbly in the head
        (room|world|everything|head|gym)~(spin|spinning|spins|swimming|tilt*); headspin; head rush
        seeing (stars|spots); black spots
    """,
    "wide_dizzy_figure": """
        dizz* (heights|with (joy|success|excitement)); dizzying; spin class; spinning class
    """,
    "wide_confused": _all(
        HEAD["confused"],
        """
        cant~(work out|figure out|find my way|follow|count|add up|understand); lost my way; got lost
        (mixed|jumbled|scrambled|cloudy) (up|head|thoughts)*; wandering; no clue where
        """,
    ),
    "wide_disoriented": """
        disorient*; delirious; incoheren*; (no idea|didnt know|dont know|couldnt tell) where i (was|
        am); talking (nonsense|gibberish|rubbish)
    """,
    "wide_confused_figure": """
        confus*~(by|with|plan|sets|app|session|week|programme|program|instructions|which|weights|
        form|exercise|exercises|video|timetable|schedule|wording|numbering|tempo|numbers|message)
        (plan|sets|app|instructions|video|exercise|exercises|wording|numbers|programme|tempo)~confus*
        lost (with|in) (the|this|your) (plan|app|programme|program|list)
    """,
    "wide_heat": HEAD["heat"],
    "wide_face_speech": _all(
        HEAD["face_speech"],
        """
        (one|left|right) (half|side) of (my |the )?(face|mouth|body|lip)
        (face|mouth|smile|lip|cheek|eyelid)~(droop*|lopsided|sag*|slack|crooked|wonky|frozen)
        (words|speech|sentence*)~(jumbl*|slur*|mush*|garbl*|mangl*|scrambl*|thick|stuck)
        cant (speak|talk|form|say|pronounce)~; whole (left|right) side
        """,
    ),
    "wide_face_figure": _all(DOUBTS["dental"], "speechless; cant talk (now|long|later|much)"),
    "wide_vision": """
        double vision; seeing double; (lost|losing|loss of)~(sight|vision); blind in
        seeing (two|2|twice|doubles); two of everything; cant see (out of|properly|from)~(eye|left|right)*; vision (gone|went|goes)
        half (of )?my vision
    """,
    "wide_sudden": "sudden; suddenly; all of a sudden; out of nowhere; out of the blue; at once",
    "wide_headache": _all(
        HEAD["headache"],
        "head exploded; explosion in my head",
        "(head|skull|temples?)~(splitting|pounding|exploding|bursting|killing|thunder*|agony|pain*)",
        "(pain|agony|explosion|ache)~~(head|skull|temple*|behind my eye*)",
    ),
    "wide_worst": HEAD["worst"],
    "wide_hangover": _all(
        DOUBTS["hangover"], "work; stress; emails; meetings; kids; information; deadline*; numbers"
    ),
    "wide_head_knock": _all(
        HEAD["head_knock"],
        """
        (bar|kettlebell|bell|dumbbell|plate|barbell|weight|ball|door|shelf)~(head|skull|temple|
        forehead)
        (head|skull|temple|forehead|nose)~(concrete|tile*|pavement|kerb|curb|floor|frame|shelf)
        bumped heads
        """,
    ),
    "wide_head_grave": HEAD["vomit_memory"],
    "wide_knock_figure": _all(
        HEAD["not_head_knock"],
        """
        (bar|weight|bell|kettlebell|dumbbell*|plate|barbell|arms|hands|ball|rings)~(over|above|
        overhead|behind|past|under|by|beside|near) (my |the )?head
        (head|chin) (over|above|to|past|at) (the )?bar; lift my head; head through
        """,
    ),
    "wide_neck": _all(
        PLACES["neck"],
        "(tuck*|drop*|lower*|nod*|bend*|turn*) (my )?(chin|head); look* (down|up); chin to (my )?chest",
    ),
    "wide_neck_hurt": HEAD["neck_injury"],
    "wide_neck_figure": HEAD["neck_figure"],
    "wide_both_limbs": _all(PLACES["both_arms"], "(arms|hands) and (legs|feet); everywhere"),
}
WIDE_LIMB = {
    "wide_joint": PLACES["joint"],
    "wide_looks_wrong": _all(
        LIMB["visible_out"],
        DOUBTS["looks_bad"],
        """
        (bone|collarbone|collar bone|knuckle|joint|end)~(sticking|sticks|poking|pokes|tenting|jutting|juts|
        sitting|bulging|popping) (up|out|through|under|sideways|proud|forward*)
        (lump|bump|step|bulge|dent|dip)~(shoulder|collarbone|joint|elbow|wrist|where it)
        (lower|higher|further (forward|back)) than the other; sagging; step (in|at) (my|the)
        (not|isnt|doesnt)~(where it|sit right|line up|lined up|look right|look normal|look like)
        (wrong|other|opposite) (way|direction); (shape|outline) (has |is |looks )?(changed|wrong|
        different|off|weird)
        """,
    ),
    "wide_slipped": _all(
        LIMB["dislocate"],
        """
        (slid|slip*|shift*|mov*|pop*|jump*|slide*|rode|ride*) (round|around|sideways|across|over|
        to the side|up and over|forward*|backward*)
        (went|gone|goes|came|comes|coming|jumped|jumps) out (for|again|when|briefly|a (second|moment|bit))
        """,
    ),
    "wide_socket": "socket; out of joint; in the joint; not (sitting|seated|tracking) right",
    "wide_put_back": DOUBTS["back_in"],
    "wide_past": _all(COURSE["long_ago"], DOUBTS["history_only"]),
    "wide_out_figure": _all(
        "(band|stick|broomstick|shoulder) (dislocat*|pass through*); dislocates [0-9]+",
        LIMB["pop_out_figure"],
        LIMB["pop_harmless"],
    ),
    "wide_form_cue": _all(DOUBTS["position_cue"], HEAD["not_passed_out"]),
    "wide_cold_limb": DOUBTS["cold_hand"],
    "wide_stuck": DOUBTS["stuck_out"],
    "wide_pop": _all(
        LIMB["pop_event"],
        """
        (felt|feel|heard|hear) (a|some|it|something) (\\w+ )?(pop|snap|rip|tear|crack|crunch|twang|
        ping|give|go|tearing|ripping|unzip*|let go)
        (tore|torn|ripped|ruptured|snapped) (my|the)~(bicep*|pec*|shoulder|tendon|muscle|elbow|
        tricep*|forearm|cuff|lat)
        """,
    ),
    "wide_pop_figure": """
        (always|usually|often|sometimes|constantly|normally|regularly|generally|like always|
        as ever|every rep)
        (pop*|click*|crack*|clunk*|crunch*)~(no pain|painless*|without pain|doesnt hurt|not painful)
        (band|strap|shirt|shorts|shoelace|leggings|glove*|rope|tape|tshirt|callus*|callous*|skin|bag|
        sole|sleeve|grips|nail|blister|palm|phone|screen|page|bottle|knuckles)
        pop(ped)? (by|over|round|into|to|in|up|out to|out for|along|on|down); popcorn; pop up
        tear* up; in tears; ripped (abs|physique|body|now|lately)*; getting ripped; look* ripped
        crack* (on|up|open|down|at|the code|a smile|it|me up); get cracking; went (well|great|ok)
        snap (out|chat|decision)
    """,
    "wide_loss": LIMB["loss"],
    "wide_cant_lift": _all(
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
        cant (even |really )?(open|twist|turn|undo|unscrew|unlock|button|do up|pinch|hold|carry|pick up|pour)
        ~(jar|jars|cap|lid|bottle|key|door|tap|cup|mug|pen|kettle|shirt|fork|phone|bag|glass|button*|zip)
    """,
    "wide_lift_figure": _all(
        DOUBTS["tired_arms"], COURSE["lifts_figure"], "heavy; heavier; weights; rep; reps"
    ),
    "wide_fall": _all(LIMB["fall"], "fell*; came off; landed; wiped out; went flying"),
    "wide_fall_figure": LIMB["fall_figure"],
    "wide_limb": DOUBTS["limb_any"],
    "wide_legs": PLACES["leg"],
    "wide_face": "face; lip; lips; cheek; tongue; mouth",
    "wide_swollen": _all(
        SENSATIONS["swollen"],
        "(fatter|bigger|thicker|wider|larger|puffier|chunkier) (than|compared)~(left|right|other)",
        "ballooned; blown up; inflated; sausage*; balloon*",
    ),
    "wide_grip_lost": """
        cant (to )?(grip|make a fist|squeeze|grasp|clench|hold (a|my|the) (cup|mug|pen|glass|phone|
        fork|bag|bottle))
        grip~(gone|vanished|disappeared|dead|useless|non existent); lost (my |all )?grip strength; fingers wont close; hand wont close; no grip left since
    """,
    "wide_hard": _all(
        DOUBTS["hard_only"], "rock solid; stretched; shiny; like (concrete|marble|steel)"
    ),
    "wide_severe": _all(
        SENSATIONS["severe"],
        "(9|10|nine|ten) (, |of |out of )?(10|ten); worst; off the scale; screaming",
    ),
    "wide_colour": SENSATIONS["colour"],
    "wide_turned_colour": DOUBTS["colour_turned"],
    "wide_heavy": SENSATIONS["heavy"],
    "wide_pump": _all(LIMB["pump"], DOUBTS["pump_only"]),
    "wide_minor": DOUBTS["joint_only"],
    "wide_kit": _all(DOUBTS["kit_colour"], DOUBTS["session_was"]),
    "wide_cold": """
        (from|with|because of|in|due to) (the )?(cold|freezing|snow|frost|winter|ice|ice bath|cold (water|bar))
        freezing (outside|out|today|morning|cold); minus [0-9]+; frozen; ice bath; cold plunge
        cold (weather|morning|day|outside|garage|gym|bar|water|ride|swim); so cold (out|outside|today|in)
    """,
    "wide_bruise": _all(OTHER["bruise"], DOUBTS["bruise_word"]),
    "wide_urine": LIMB["urine_dark"],
    "wide_urine_figure": LIMB["urine_harmless"],
    "wide_cant_straighten": _all(
        LIMB["cant_straighten"],
        "cant~(elbow|elbows|arm|arms)~(straight|straighten*|extend*)",
        "(elbow|elbows|arm|arms)~(wont|dont|refuse|cant|not)~(straight|straighten*|extend*|unbend)",
    ),
    "wide_fever": LIMB["fever"],
    "wide_fever_figure": LIMB["not_fever"],
    "wide_hot": _all(SENSATIONS["hot"], DOUBTS["hot_touch"]),
    "wide_red": DOUBTS["red_word"],
    "wide_calf": PLACES["calf"],
    "wide_thinners": OTHER["thinners"],
    "wide_numb": _all(
        LIMB["numb"],
        "electric*; electricity; shooting~(down|into|along|through|up) (my|the|both)",
        """
        (finger|fingers|thumb|pinky|pinkie|hand|hands|arm|arms|forearm|palm|fingertips|wrist)~(asleep|numb|
        gone to sleep|deadened)
        (wearing|like|in) (a |thick |rubber |wool |boxing )?(glove|gloves|mittens); cotton wool; belongs to someone
        """,
        "(feel|feels|felt|feeling)~(asleep|rubbery|woolly|wooden|dead|not mine|foreign)",
    ),
    "wide_numb_figure": _all(
        """
        never had it; just (asking|curious|wondering); numb to(?! (the )?(touch|my|finger*)); mind numbing*; numbingly; comfortably numb
        numb (with|from) (boredom|shock|grief|excitement|laughing|sitting|cold); numb (bum|backside|arse)
        (bum|backside|arse|butt)~numb; emotionally numb; numbing (cream|spray|gel); brain (is |went )?numb
        dentist*; numb the pain; tingl* with (pride|excitement); spine tingl*; goosebumps; deadlift*
        (absolutely|so|im|still|proper|was|phone|really|watch|fly|feeling|totally|well|pure) buzzing
        buzzing (after|from|about|for|with|off|at|that|today|to|i|lol|haha|now|tonight)
        phone buzz*; fizzy (drink*|water|pop); beta alanine; pre workout; preworkout; mint*; chilli*
        (cant|dont) feel my (arms|legs|shoulders|body|face|abs) (haha|lol|lmao|after|from|today haha|
        anymore haha|by the end|at the end|now lol|now haha|in the end)
        (arms|legs) (are|feel|were|is|feel completely|are absolutely|are so|r) dead; dead (after|from)
        (foot|feet|leg|legs|bum|toes) (went|fell|gone|goes|go|fallen) (to sleep|asleep|numb|dead)~(sitting|sat|
        crossed|kneel*|loo|toilet|bus|plane|car|desk)
        """,
        "slept on; fell asleep on; lay on; been (lying|leaning|sitting) on; crossed legs",
    ),
    "wide_weak": _all(
        "feeble; puny; floppy; flimsy; powerless; strengthless; like jelly since",
        LIMB["weak"],
        DOUBTS["weak_word"],
        """
        (grip|strength|power)~(gone|went|vanished|deserted|left me|disappeared|packed up|given up)
        (wont|doesnt|dont|not|cant|stopped|refuses to) (work|working|respond|responding|obey|do what
        i want|cooperate|hold|close|open); dead weight; (let|lets|letting) go of (things|stuff)
        (wrist|hand|foot|fingers) (drop|dropped|drops|hangs|flops|flopped|dangles|is hanging|just hangs)
        cant (pull|lift|hold|bend|bring|raise) (it|them|my hand|my wrist|my fingers|my foot) (up|back|straight)
        (keep|keeps|kept) (dropping|letting go|giving way|buckling|fumbling)
        """,
    ),
    "wide_tired": """
        (last|final) (set|sets|round|rounds|rep|reps|few|hang|one|minute)
        (by|at|towards|near) the end; end of (the )?(set|session|round|week|workout); fatigue*
        tired; tiring; failure; failed; knackered; shattered; spent; wrecked; cooked; fried
        (weaker|weak) (than|side|point|link|spot|session|week|coffee|excuse); weakest; doms
        from (yesterday|the (session|sets|climbing|carries)); compared to; todays session
        (grip|strength|arms?|hands?) (gave|gives|went|goes|failed|fails|gave out|go) (out )?(at|before|first|on the (last|third|second|final|hang))
        after (the|those|that|all|doing|so many|a|my) (\\w+ )?(hangs?|set|sets|session|carries|rows|pull ups|dips|climb*|reps|burpees|workout|round|rounds)
        mentally; willpower; motivat*; no energy; low energy; sleepy
    """,
}
WIDE_PERSON = {
    "wide_bladder": _all(
        OTHER["bladder"],
        """
        (numb*|no feeling|tingl*|cant feel)~(between (my|the) legs|inner thighs?|backside and|bum and|
        undercarriage|down there|down below|privates?|saddle|groin|crotch|seat)
        (pee|wee|urine|poo|bladder|bowel*)~(leak*|escap*|accident*|control|without (noticing|knowing))
        (pee|wee|urine|poo|poop)~(came|come|comes|coming|dribbl*|drip*|trickl*|slipped|ran) (out|down)*
        (leak*|accident*|lost control)~(pee|wee|urine|poo|bladder|bowel*|down there)
        """,
    ),
    "wide_bladder_figure": OTHER["bladder_figure"],
    "wide_pregnant": OTHER["pregnant"],
    "wide_bleed": OTHER["bleed"],
    "wide_bleed_figure": DOUBTS["bleed_minor"],
    "wide_overdose": _all(
        OTHER["overdose"],
        """
        (took|taken|taking|swallowed|had|necked|downed)~~(more|many|much|double|whole|all|lots|loads|
        bunch|handful|pile|packet|bottle|box)~(pills|tablets|painkillers|meds|medication|medicine|
        paracetamol|ibuprofen|codeine|sleeping|insulin|capsules)
        oded; od ed; od d; overdone~(pills|tablets|meds|medication|painkillers|insulin)
        (more|too many|too much) (of my |of the |of them )?(pills|tablets|painkillers|meds|medication)
        """,
    ),
    "wide_overdose_figure": _all(
        OTHER["overdose_figure"],
        "(od|odd|oded|od d|overdosed|overdosing|overdose) on (?!my|the|pills|tablets|meds|medication|paracetamol)\\w+",
    ),
    "wide_self_harm": _all(
        OTHER["self_harm"],
        """
        (everyone|everybody|world|family|kids)~(better|easier)~without me
        (dont|not|cant) see~(point|reason)~(anymore|any more|going on|carrying on|living|being here)
        (sleep|bed)~(not|never|dont) (ever )?wak*; (better|easier)~(not|never) (be here|exist|being here|being around)
        (stop|stopped) (being here|existing|living); (not|never) wake(ing)? up again
        (want|wanted|wish|need)~(everything|it all|all of it|it|life|this life)~(stop|end|over|go away|finish*)~(
        for good|forever|for ever|permanently|once and for all|completely)
        (want|wanted) (out|it to be over|to stop existing|to not exist|to disappear)(?! of (the session|this|set|bed|here))
        (wish|hope|hoping)~(not|never|wont|didnt) wake; sick of being alive; want out of life
        (been|started|im|back to) (cutting|self harming|hurting myself)( again)?(?! (the|my hair|back|
        down|out|weight|carbs|calories|grass|hedge|wood|short|corners))
        (plan|way|ways|how) to (end|die|kill); (pills|tablets) (and|to) end
        (life|living)~(pointless|not worth|too much for me|over for me)
        """,
    ),
    "wide_self_harm_figure": OTHER["self_harm_figure"],
    "wide_comes_back": """
        every week (for|this|since)~; (for|over|past|last)~(months|six weeks|6 weeks|five weeks|5 weeks|a month|
        ages now|eight weeks|8 weeks); (keeps|kept) (coming|creeping|popping) back
        (back|again) (every|each) week; week after week; month after month
    """,
    "wide_harmless_back": """
        sore; soreness; doms; stiff*; tight*; better; best; stronger; improv*; progress*; training; trained
        programme; plan; first time; without; no (pain|issues|problems); pain free; fine; good
    """,
    "wide_settled": """
        (gone|fine|ok|okay|recovered|back|settled|normal|good)~(in|after|within) (a |about |under )?~(sec|secs|
        second|seconds|min|mins|minute|minutes|moment)
        (recovered|settled|calmed) (quickly|fast|fine|straight away)
    """,
    "wide_wakes": """
        (cant|didnt|hardly|barely|havent|no) (sleep|slept)~(for|because of|with|due to|thanks to|from|cos of)~(shoulder|
        elbow|arm|wrist|neck|hand|back|forearm|pain|ache)
        (shoulder|elbow|arm|wrist|neck|hand|back|forearm|pain|ache|aching|throbbing|joint|it)~(
        woken|woke|wakes|waking|keeps|kept|keeping) (me|us)( up)?(?! (on|posted|going|fit|motivated|
        busy|honest|company|dry|warm|sane|safe))
    """,
    "wide_night": SENSATIONS["night"],
    "wide_many_nights": SENSATIONS["two_nights"],
    "wide_night_figure": _all(DOUBTS["gone_by_morning"], DOUBTS["legs_ache"]),
    "wide_movement_linked": SENSATIONS["movement_linked"],
    "wide_rest_pain": _all(
        DOUBTS["rest_only"],
        """
        (even |also )?(when|while|if|with)~(still|resting|not moving|doing nothing|lying down|sat down|
        sitting down|motionless|at rest|dont move|not using)
        at rest; without (moving|doing)~; (sitting|lying) (still|there|quietly)
        """,
    ),
    "wide_weight_loss": OTHER["weight_drop"],
    "wide_no_reason": OTHER["no_reason"],
    "wide_night_sweat": OTHER["night_sweats"],
    "wide_hot_room": DOUBTS["hot_room"],
    "wide_unwell": DOUBTS["unwell_strong"],
    "wide_cancer": OTHER["cancer"],
    "wide_laugh": COURSE["laugh"],
}
WIDE = {**WIDE_HEART, **WIDE_HEAD, **WIDE_LIMB, **WIDE_PERSON}
