"""English for the wide net: head and neck, besides what the closer concepts know."""

from bot.reading.red_flag_en_doubts import DOUBTS
from bot.reading.red_flag_en_head import HEAD
from bot.reading.red_flag_en_places import PLACES
from bot.reading.red_flag_words import together

WIDE_HEAD = {
    "wide_fainted": together(
        HEAD["passed_out"],
        """
        woke up (lying |flat )?(on|face down)~(floor|ground|mat|grass|deck); blanked (out|for)
        (went|gone) down (like|in a)~; (i|just) dropped (to the|onto the) (floor|ground)
        (went|go|gone) limp; came to; (catch|caught|hold|held) me (up|before|as i fell)
        (gone|out|lost it) for (a |about |maybe )?(few|couple|five|ten|[0-9]+)?~(sec|secs|second|
        seconds|minute|minutes)
        lost (a few|some|couple of) (seconds|minutes); (lights|world) (went )?out; keel*
        """,
    ),
    "wide_near_faint": together(
        DOUBTS["near_faint"],
        """
        (vision|sight|eyes|everything|world)~(narrow*|clos*|tunnel*|fad*|dark*|grey*|gray*|black*|
        white|dim*|spark*)
        (nearly|almost) (went|hit|on) (over|down|the (floor|deck|ground)); had to (sit|
        lie) down~(faint|dizzy|black)
        """,
    ),
    "wide_near": "nearly; almost; about to; close to; going to; verge; thought i; felt like",
    "wide_faint_figure": together(
        HEAD["not_passed_out"],
        """
            (blackout|blackouts)~(street|town|building|area|house|city|village|neighbourhood|
            block|power)
        """,
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
    "wide_confused": together(
        """
        lost the plot; (what|which) (day|year|month|time|set|exercise) it (was|is); who i was
        (forgot|forgetting)~(where|what|how|who)
        talking (rubbish|nonsense|gibberish); (staring|blank) into space; not with it
        """,
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
        (plan|sets|app|instructions|video|exercise|exercises|wording|numbers|programme|
        tempo)~confus*
        lost (with|in) (the|this|your) (plan|app|programme|program|list)
    """,
    "wide_heat": HEAD["heat"],
    "wide_face_speech": together(
        """
        (mix|mixing|mixed|muddl*|jumbl*|swap*|los*|forget*) (up )?(my )?(words|sentences)
        (couldnt|cant) (feel or move|move or feel|feel and move|move and feel)~(arm|leg|hand|side|
        foot)
        (arm|leg|side|foot)~(paralys*|stopped working|would not move|wouldnt move|
        wont move)(?! (from|after) (doms|soreness))
        (couldnt|cant) (feel|move)~(left|right) (leg|side|arm|foot)~(for|until|then)
        one side~(weak|numb|heavy|floppy|dead); (drag*|trailing) (my )?(left|right)? ?(foot|leg)
        """,
        HEAD["face_speech"],
        """
        (one|left|right) (half|side) of (my |the )?(face|mouth|body|lip)
        (face|mouth|smile|lip|cheek|eyelid|eye)~(hang*|hung|drop*|slid*|slip*)(?! (open|out with|
        shut))
        (arm|leg|hand|side) (just )?(dropped|gave way|went limp|went dead|fell)~(cant|
        couldnt) (move|lift|feel|use)
        (arm|leg|hand)~and i cant move it; cant (find|get|say|form|think of|remember)~words
        (words|speech|sentences|
        everything i say|it all)~(scrambl*|jumbl*|garbl*|mush*)
        (face|mouth|smile|lip|cheek|eyelid)~(droop*|lopsided|sag*|slack|crooked|wonky|frozen)
        (words|speech|sentence*)~(jumbl*|slur*|mush*|garbl*|mangl*|scrambl*|thick|stuck)
        cant (speak|talk|form|say|pronounce)~; whole (left|right) side
        """,
    ),
    "wide_face_figure": together(DOUBTS["dental"], "speechless; cant talk (now|long|later|much)"),
    "wide_vision": """
        double vision; seeing double; (lost|losing|loss of)~(sight|vision); blind in
        seeing (two|2|twice|doubles); two of everything; cant see (out of|properly|from)~(eye|
        left|right)*; vision (gone|went|goes)
        half (of )?my vision
    """,
    "wide_sudden": "sudden; suddenly; all of a sudden; out of nowhere; out of the blue; at once",
    "wide_headache": together(
        """
        head~(burst|bursting|split|explode|blow*|cracking open|in two)
        """,
        HEAD["headache"],
        "head exploded; explosion in my head",
        """
            (head|skull|temples?)~(splitting|pounding|exploding|bursting|killing|thunder*|agony|
            pain*)
        """,
        "(pain|agony|explosion|ache)~~(head|skull|temple*|behind my eye*)",
    ),
    "wide_worst": HEAD["worst"],
    "wide_hangover": together(
        DOUBTS["hangover"], "work; stress; emails; meetings; kids; information; deadline*; numbers"
    ),
    "wide_head_knock": together(
        HEAD["head_knock"],
        """
        (bar|kettlebell|bell|dumbbell|plate|barbell|weight|ball|door|shelf)~(head|skull|temple|
        forehead)
        (head|skull|temple|forehead|nose)~(concrete|tile*|pavement|kerb|curb|floor|frame|shelf)
        bumped heads
        """,
    ),
    "wide_head_grave": together(
        """
        seeing (two|double|stars)*; two of everything; double vision; blurr*; (one|both) pupil*
        worse and worse; sleepy; muddled
        """,
        HEAD["vomit_memory"],
    ),
    "wide_knock_figure": together(
        HEAD["not_head_knock"],
        """
        (bar|weight|bell|kettlebell|dumbbell*|plate|barbell|arms|hands|ball|rings)~(over|above|
        overhead|behind|past|under|by|beside|near) (my |the )?head
        (head|chin) (over|above|to|past|at) (the )?bar; lift my head; head through
        """,
    ),
    "wide_neck": together(
        PLACES["neck"],
        """
            (tuck*|drop*|lower*|nod*|bend*|turn*) (my )?(chin|head); look* (down|up)
            chin to (my )?chest
        """,
    ),
    "wide_neck_hurt": together(
        """
        (bar|barbell|weight|kettlebell|bell|plate|rack|dumbbell)~(on|onto|to|across|hit|in) (my |
        the )?(back of (my |the )?)?neck
        """,
        HEAD["neck_injury"],
    ),
    "wide_neck_figure": HEAD["neck_figure"],
    "wide_both_limbs": together(PLACES["both_arms"], "(arms|hands) and (legs|feet); everywhere"),
}
