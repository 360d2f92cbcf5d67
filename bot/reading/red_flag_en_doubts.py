"""English for what narrows a sign down: look-alikes, cues of a coach, old stories."""

DOUBTS = {
    "limb_any": """
        muscle; muscles
        kneecap; arm; arms; forearm*; bicep; biceps; tricep; triceps; elbow; elbows; hand; hands
        finger; fingers; fingertip*; thumb; thumbs; wrist; wrists; pinky; leg; legs; foot; feet
        toe; toes; thigh*; calf; calves; shin*; shoulder; shoulders; pec; chest; limb; limbs
        knee; ankle; palm
    """,
    "pain_not_sore": """
        pain*; hurts; hurt; hurting; painful; stabbing; sharp; burning; burns; agony; discomfort
        uncomfortable; killing me; ache; aches; aching; twinge*; cramp*; throbbing; stabs
        squeezing
    """,
    "position_cue": """
        chest (to|up|down|touch*|on|against|high|out|height|level|forward|first|facing|near|
        lifted)~(bar|floor|ground|wall|box|bench|tall|proud|pad|knees|rings|up)*
        chest (press*|fly|flys|flyes|day|supported|expander|opener|stretch|band|strap|
        infection clear*)
        (keep|keeping|stay|kept|brace*|squeeze|squeezed|squeezing) (a )?(core|abs|
        shoulder blades|body|everything|position|chest|my chest|pecs|grip|glutes)
        bar (to|at|on) (my |the )?chest
        (should|where do|how do|do) (my|the|i)~(elbows|shoulders|chest|hands|wrists); flare*
        elbow* (stick|sticking|flared|flaring|pointing|poking|going|go|out at|drifting|drift|
        winging) out
        sticking out (to the side|on (the )?(push|press|row|dip)); elbows out; heart rate strap
        (strap|bra|vest|top|shirt|jacket|belt|harness|monitor) (is|was|felt|feels|too|so)~tight
        tight (tshirt|t shirt|top|vest|shirt|jacket|bra); off my chest
        chest (feels |is |was )?(stronger|bigger|great|good|fine|strong); lock* out
        fully straight on; lockout; strict rep*; for time; shoulders (out|back|down) of
    """,
    "dental": """
        dentist; tooth; toothache; teeth; filling; wisdom; anaesthetic; botox; chewing; chew
        tmj; grinding; clench*; braces; gum
    """,
    "wont_settle": """
        (wont|wasnt|hasnt|not|isnt|never|didnt|doesnt)~(settl*|slow*|calm*|recover*|come back|ease*|
        easing|go away|coming back|going away|subside|passing|going down|improv*)
        (20|30|40|45|60|ten|fifteen|twenty|thirty|15|10) minutes~(later|after|now|on|still)*
        half an hour~; an hour (later|after)*; hours (later|after|on|now)
        still (cant|breathless|out|struggling|short|gasping|panting|puffing|wheezing)
        even (sitting|at rest|now|after)
    """,
    "breath_cue": "laugh*; abs; cough*; cold air; nose; doms; breathing drill*; cue",
    "near_faint": """
        (nearly|almost|about to|thought i|thought id|felt like|close to|verge of|feeling like|
        feel like|could have|half|came near to|was going to|going to|on the edge of)~(pass out|
        passed out|passing out|faint|fainted|fainting|black out|blacked out|blacking out|collapse|
        collapsed|collapsing|keel over|keeled over)
        (feel|feels|felt|feeling|went|was|got|quite|bit|very|really|so|all) (a bit |really |very |
        quite |so |all |a little |like |kind of )?faint
        faint and; everything (started going|went|going) (grey|gray|dark|blurry|black|white)
        vision (went|going|started|closed|narrowed|tunnel*)~(black|dark|tunnel|grey|spotty|in)*
        tunnel vision; saw stars when; faint (during|after|mid|on|when|in the)
    """,
    "hangover": """
        hangover; hungover; wine; beers; beer; pints; drank; drinks last night
        worst headache ever haha; caffeine withdrawal; no coffee; skipped coffee
    """,
    "stuck_out": """
        (wont|cant|not|hasnt)~(get|put|pop|push|go)~(in|back)
        (wont|cant|not|hasnt|isnt|refuses to|didnt|couldn|doesnt)~(go|get|put|pop|push|come|slide|
        slid|gone|went|popping|going)~back
        still out; stuck out; wont go in; wont pop in; (not|isnt) back in
    """,
    "looks_bad": """
        looks (horrible|awful|wrong|nasty|weird|bad|mangled|odd|grim|disgusting|funny|off|deformed|
        bent|rank|minging|gross|scary)
    """,
    "catch": """
        catch(?! (my|a|your|the|up|it)); catches; catching(?! (my|a|your|the|up)); stitch; grabs
        stab; stabs; jab; jabs; stabbing; knife; knives
    """,
    "cant_move": "cant (move|turn|lift|bend|rotate)~(neck|head)",
    "dropping_things": "dropp* (things|stuff|everything); drop things; dropping my~",
    "breathless_word": """
        breathless*; short(ness)? of breath; short breath; struggling for air; hyperventilat*
    """,
    "sudden_only": "sudden; suddenly; all of a sudden; out of nowhere; out of the blue",
    "odd_feeling": """
        (doesnt|dont|isnt|not) (feel|feeling|sit|sitting|quite)? ?(right|great|good|normal)
        acting up; playing up; bothering me; flutter*; cramp*
        (feels|felt|feeling|feel|bit|really|very|quite|so|is|was|goes|went|gone|getting|
        being) (a bit |really |very |quite |so |kind of |sort of |all )?(weird|funny|odd|strange|
        off|uncomfortable|rough|wrong|bad|not right|dodgy|iffy|fluttery|congested)
        not right
    """,
    "history_only": """
        used to (get|have|feel|suffer|be|faint|pop|go); (years|months|ages|decades) ago
        had~last (year|season|summer|winter)
        (not|never|none|nothing|no trouble|no problem|no problems|no issues|fine|stable|solid|
        all good|resolved|cleared|gone) since
        as a (kid|teenager|child)
    """,
    "again": """
        again; its back; come back; came back; returned; now; today; this week; lately; recently
        started; still; since then my
    """,
    "never_had": """
        never (had|have|get|got) (it|that|this|any|them)(?= [,.?]| just| but| so| myself|$)
    """,
    "unwell_strong": """
        no appetite; off my food; lost my appetite; generally (unwell|ill|rotten|awful)
        (feel|feeling|felt) (really |very |generally |so |quite )?(ill|unwell|poorly|awful|
        rotten) (with|too|as well|all the time|for (days|weeks)|these days|lately|this week|since)*
        (feel|feeling) generally
    """,
    "weak_word": """
        weak; weaker; weakness; floppy; limp; useless; clumsy
        (no|lost|zero|losing|less|little) (all )?(strength|power|use|control)( in)?
    """,
    "limb_not_grip": """
        arm; hand; fingers; finger; thumb; wrist; leg; foot; arms; hands; forearm
    """,
    "cold_hand": """
        (hand|fingers|finger|arm|foot|it|thumb)~(cold|pale|white|blue|numb|grey|gray|bluish|
        no pulse|tingl*|purple|bloodless)
        (cold|pale|white|blue|numb|grey|gray|bluish|tingl*)~(hand|fingers|finger|arm|thumb)
    """,
    "dislocate_word": "dislocat*; sublux*",
    "tired_arms": """
        (arms|shoulders) (from|after|lol|haha|tomorrow|today|any (higher|more) after)
        (doms|soreness|so sore|sore from|wrecked|destroyed|ruined|smashed|fried|cooked|toast|jelly|
        noodles|spaghetti|dead|knackered|shattered|fatigued)~arms
        arms (are|were|feel|felt)~(jelly|noodles|spaghetti|toast|fried|dead|cooked|wrecked|lead|
        knackered|shot|finished|done|gone|sore)
        lift my arms; raise my arms; move my arms; lift it for
        (another|one more|10|5|8|12) (rep|reps)
        (heavier|weight|dumbbell|kettlebell|bar|load|bell); cant get my arm round
        one arm (row|hang|hold|press); get the (weight|bar|bell)
    """,
    "pump_only": """
        pump; pumps; arm pump; forearm pump; pumped; swole; gains; after climbing; look huge
        looking huge; bigger (than last|now|arms|biceps)*; t shirt*; sleeves
    """,
    "hard_only": """
        rock hard; hard as (a )?(rock|stone|board|wood|iron); solid as
        like (a )?(rock|stone|wood|board); tense and; woody; tight as a drum; shiny
        feels wooden; hard to touch; hard to the touch; solid
    """,
    "session_was": """
        (session|set|sets|workout|round|rounds|class|training|week|it|that|circuit|day|gym|room|
        garage|weather)~(was|were|is) (so |really |very |pretty |quite |well |red )?(hard|hot|tough|
        intense|brutal|killer)
        hard (session|set|work|one|day|week|workout|training|going|round|graft); worked hard
        went hard
        hot (session|day|room|gym|in|outside|garage|weather|shower|bath|water bottle|pack|tub|yoga)
    """,
    "joint_only": """
        ankle*; knee; knees
        (bit|little|slightly|bit of|slight|mild|minor)~(swollen|swelling|puffy); bite; sting
        stung; mosquito; wasp; bee; insect; lymph*; gland*; glands; lip; tonsils
        finger (is|was) swollen; ring (is|was|feels|felt) tight; eye*; period; bloated; ringer*
    """,
    "colour_strong": """
        blue; bluish; purple; purplish; discolour*; discolor*; dusky; mottled; violet; grey
        gray; blotchy
    """,
    "bruise_word": "bruis*; grazed; graze; hematoma; haematoma; chalk; paint; dye; pen",
    "kit_colour": """
        (blue|red|purple|black|green|yellow|grey|gray|white|pink|orange|light|dark|heavy)( coloured|
         colored)? (band|bands|bar|kettlebell|kettlebells|bell|dumbbell|dumbbells|plate|plates|mat|
        box|strap|straps|rope|loop|tape|one|tee|shirt|tshirt|top|shorts|sleeve|belt|gloves|ring|
        rings|ball|line|zone|bull|day)
        zone (red|blue); red line*; in the red; redlined; red zone; red faced; red face
        feeling blue; hot stuff; hot tub; hot pack
    """,
    "colour_turned": """
        (went|gone|turned|turning|goes|going|go|looks|is|are|became|getting) (all |a bit |slightly |
        completely |really |kind of |a |very |bright |dark |almost )?(blue|bluish|purple|purplish|
        discoloured|discolored|dusky|mottled|grey|gray|violet|blotchy|funny colour|weird colour|
        strange colour|odd colour)
    """,
    "arm_swollen": """
        (whole|entire|all of my|one|my|left|right|upper) arm~~(swollen|swelled|swelling|puffy|
        ballooned|blown up|huge|double|twice|swole up|puffed)
        swell* (of|in|all (down|up|over|along)|down|up) (my |the )?(whole |entire |left |right |
        upper )?arm
        swollen (left |right |upper |whole )?arm
    """,
    "back_in": """
        (went|popped|pop|slid|clunked|slipped|clicked|put|pushed|goes|pops|snapped|shoved) (it |
        itself |right |straight )?back (in|into place|into (the|its) socket|in place)
    """,
    "legs_ache": """
        (legs|quads|hamstrings|calves|feet|leg|knees|back) (ache|aches|aching|sore|hurt|restless|
        cramp*)
    """,
    "legs_only": "leg; legs; knee; knees; hamstring*; back; fingers; wheel; hips",
    "hot_touch": """
        (hot|warm|burning|boiling|roasting|heat)~(to the touch|to touch|touch)
        (radiating|giving off|gives off) heat
        hot and (swollen|red|throbbing|puffy|painful|inflamed|angry|tender)
        (red|swollen|puffy) and (hot|warm|burning); (red|swollen|painful)( and| ,)? hot
        hot to touch; hot (red|swollen) (joint|elbow|shoulder|wrist|knee|finger|thumb|ankle)
    """,
    "red_word": "red; redness; reddened; warm to; tender and warm; hot to; hot and",
    "resting_rate": """
        (resting|average|max) (hr|heart rate|pulse) (is|was|of|down|up|at)*
        heart rate (was|is|got|hit|up|averaged|peaked|maxed)~(today|in the|during|session|set|
        on the)
    """,
    "bleed_minor": """
        nose; nosebleed; gum; gums; blood pressure; blood test*; blood work; bloods; cut my
        blister*; callus*; blood group; finger; knee; graze*; no bleeding
        implantation last year; blood sugar
    """,
    "sore_ache": "ache; aches; aching; achy; throb*; sore",
    "gone_by_morning": """
        gone by (the )?morning; gone this morning; fine (by|this|in the) morning
        ok (by|this) morning; fine now; fine today; went off by; baby; toddler; kids; neighbour*
        dog; noise; worry; work; stress; the cat; puppy; storm; phone; alarm
        legs (ache|sore|doms); cramp*; doms; excite*; hot
    """,
    "rest_only": """
        at rest; even at rest
        even when (im |i am )?(resting|not moving|sitting|sat|still|doing nothing|i rest|
        not using it|lying)
        even resting
        when (im |i am )?(resting|doing nothing|not moving|sat still|sitting still|completely still|
        not doing anything|just sitting)
        doing nothing; unrelated to movement; without moving; not moving; whether i move or not
        no matter (what|how|which) (i do|position|way i)*; constant; constantly; all the time
        round the clock; 24 7; never goes away; never stops
        nothing (makes it better|eases it|helps); even if i dont move; when im just sat
        when im still; just sitting; regardless of (movement|position|what i)
    """,
    "hot_room": """
        hot (room|night|weather|bedroom); heatwave; no fan; no ac; no aircon; menopaus*
        hot flush*; hot flash*; duvet too; thick duvet; thicker duvet; winter duvet; spin*
        heating (on|was)*; water bottle
    """,
    "hypothetical": """
        (should|do|would|can) (i|we) (stop|continue|carry on|keep going|rest|train|quit) if
        what if (i|my|it|the|they)
        if i (get|feel|have|notice|start)~~(should|do|would|can) (i|we)
        (does|do|can|could|will|would|is it)~~(cause*|causing|lead to|give you|give me|make you)~
        if i (ever|were to) (get|feel|have|start|notice)*; in case (i|of|it|anything|my)
        what (should|do|would) (i|you|we) do if (i|my|it|someone)*
        worried (about|of|that) (getting|having|i (will|might|could))~
        scared of (getting|dislocating|tearing|having|popping|hurting)~
        (dont|didnt) want (to|it to|a|my)~(dislocat*|pop*|tear|get|injur*|faint|pass out|collapse|
        rupture)*
        can (push ups|it|this|hangs|dips|that|these|you|they|pull ups|training|the exercise) cause~
        to (avoid|prevent|stop getting)~
        how (do|can|would) i (know|tell|avoid|prevent) (if|when|getting|a)~
        read (about|that|an article|somewhere|on)~; article (about|on)~; video (about|of|on)~
        podcast (about|on)~; film (about|where)~
        so (i|it|my|they) (dont|doesnt|wont)~(pop*|dislocat*|pass out|faint|collapse|go|tear|get|
        hurt|injure)*
        risk of~; what are the (signs|symptoms) of~; first aid (course|training|class)~
        course (about|on) ~; learning about~; learned about~; learnt about~
        to not (faint|pass out|pop|dislocate|tear); afraid of~
        watched (a|an|the)~(documentary|film|video|episode|show|series)~
    """,
    "woken_by": """
        (woken|woke|wakes|waking|awake|kept me up|keeps me up|keeping me up)~~(by|with|
        because of|from)~(elbow|shoulder|arm|wrist|neck|hand|back|forearm|pain|ache|it)
        night pain; nightly pain; night time pain; nighttime pain
    """,
    "no_issue": """
        (never|not|isnt|wasnt|no longer)~(issue|problem|concern|thing for me)
    """,
}
