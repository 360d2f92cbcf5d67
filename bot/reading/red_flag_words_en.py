"""English for the red-flag reader: places, sensations, course, and who is spoken of.

Written for several Englishes, without apostrophes and accents. Our own list; a clinician must
check it before use.
"""

from bot.reading.red_flag_doubts_en import DOUBTS
from bot.reading.red_flag_signs_en import SIGNS
from bot.reading.red_flag_words import WordSet

PLACES = {
    "chest": "chest; chests; breastbone; breast bone; sternum; breast; ribcage; rib cage",
    "inside": """
        inside; centre of; center of; middle of; behind my; behind the; across my; deep in; internal*
    """,
    "pec": "pec; pecs; pectoral*; chest muscle*; muscle* (in|of|on) my chest",
    "arm": """
        arm; arms; forearm*; fore arm*; bicep; biceps; tricep; triceps; elbow; elbows; limb; limbs
        upper arm; armpit
    """,
    "hand": """
        hand; hands; finger; fingers; fingertip*; thumb; thumbs; wrist; wrists; pinky; pinkie; palm
        knuckle*; ring finger; little finger; grip
    """,
    "shoulder": "shoulder; shoulders; collarbone; collar bone; shoulder blade*; delt; delts",
    "leg": "leg; legs; foot; feet; toe; toes; thigh*; knee; knees; shin*; ankle*; hip; hips",
    "calf": "calf; calfs; calves; lower leg",
    "jaw": "jaw; jawline; jaws; lower teeth",
    "upper_back": "upper back; between (my|the) shoulder blades; back",
    "neck": "neck; cervical; nape",
    "joint": """
        shoulder; shoulders; elbow; elbows; wrist; wrists; finger; fingers; thumb; thumbs; knuckle*
        joint; joints; knee; knees; ankle; ankles; hip; collarbone; collar bone; ac joint; kneecap
        arm; arms; bone; jaw; toe; toes
    """,
    "both_arms": """
        both (of )?(my |the )?(arm|arms|hands|hand|sides|wrists|forearms|shoulders|elbows)
        (my |the )?(arms|hands|fingers) (on )?both sides; either arm; each arm; (two|all) (arms|hands)
        arms and (legs|hands); all four limbs; arms and my legs
    """,
    "legs_or_walk": """
        leg; legs; feet; foot; toes; walking; walk; balance; lower body; knees
    """,
    "limb_pair": "arms; hands; fingers",
    "one_side": "one side; one sided; left side; right side; one half; half (of )?my; down one side",
}
SENSATIONS = {
    "pain": """
        pain*; hurt; hurts; hurting; hurty; ache; aches; aching; ached; achey; achy; agony; agonising
        agonizing; discomfort; stabbing; stabs; sharp; burning; throb*; killing me; uncomfortable
        excruciating; twinge*; niggle*; niggling; sting*; smarting; gip; giving me (gip|grief|jip)
        playing up; gives me grief; in bits; flared; flare up; burns; cramp*; shooting
    """,
    "sore": "sore; soreness; doms; tender; tenderness; stiff; stiffness; ache; aches; achy; aching",
    "sharp": "sharp; stabbing; knife; knifelike; shooting; electric; sudden; suddenly; jolt; lightning",
    "pressure": """
        pressure; tight; tightness; tightening; tightened; tighter; squeez*; crush*; heavy; heaviness
        constrict*; constriction; elephant; weight on; vice; vise; band (round|around|across)
        clamp*; compress*; pressing; clench*; gripping feeling; strap (round|around); fullness
        (something|someone|somebody)~(sitting|pressing|sat|standing|stood|squeezing|squashing|stamping|resting);  squash*; tightens
    """,
    "swollen": """
        swollen; swelling; swelled; swole up; swell; swells; swolen; puffy; puffed up; balloon*; blown up
        bigger than; twice (the|its|it s) size; double (the|its) size; huge; size of a*; fat and; bloated
        puffing up; swelled up; inflated; larger than; thicker than
    """,
    "hard": "hard; rock hard; rock solid; solid; like (a )?(rock|stone|wood|board); tense; shiny; woody",
    "severe": """
        severe; agony; unbearable; excruciating; worst pain; agonising; agonizing
        so painful; really painful; screaming; insane pain; intense; terrible pain; horrific; killing me
        extremely painful; massive pain; mega painful; unreal pain; huge pain; pain is (so )?bad
        very painful; awful pain; incredibly painful; horrendous; bad pain; hurts like hell; a lot of pain
        off the charts; out of (all )?proportion; cant bear; cant stand the pain
    """,
    "colour": """
        blue; bluish; blueish; purple; purplish; discoloured; discolored; discolouration; discoloration
        dusky; mottled; dark; darker; red; reddish; white; pale; grey; gray; violet; blotchy
        veins; changed (colour|color); funny (colour|color); (weird|strange|odd) (colour|color)
    """,
    "cold_limb": "cold; pale; white; blue; numb; bluish; grey; gray; cool; no pulse",
    "heavy": "heavy; heavier; heaviness; leaden; weighs a ton",
    "hot": """
        hot; warm; burning up; roasting; heat; feverish; on fire; boiling; hot to (the )?touch
    """,
    "red": "red; redness; reddish; inflamed; angry; swollen; puffy; shiny",
    "sudden": """
        sudden; suddenly; all of a sudden; out of nowhere; out of the blue; instantly; in seconds
        just now; thunderclap; like (a )?(lightning|bolt|gunshot|explosion)*; came on fast; all at once
        within (a )?(second|seconds|minute); from nowhere; bang; a minute ago; minutes ago; woke up and
        this morning; an hour ago; straight away
    """,
    "new": """
        new; started; since; suddenly; sudden; gone; went; going; lost; losing; now; still; woke; today
        yesterday; became; become; getting; got; comes and goes; all day; days; hours; week; weeks; havent
        always had no; overnight; keep; keeps; kept; constantly; constant; feels; feel; noticed
    """,
    "night": """
        at night; in the night; through the night; during the night; every night; most nights; nights
        (second|third|2nd|3rd|another|two|three|2|3|few|couple of) night*; wakes me; woke me; waking me
        wake me; wakes us; waking up (with|from|because); wake up (with|from|because); keeps me (up|awake)
        kept me (up|awake); keeping me (up|awake); cant sleep; couldnt sleep; cannot sleep; woken (me|up)
        woken by; no sleep; at 3am; 3am; 2am; 4am; 3 am; 2 am; 4 am; overnight; nighttime; night time
        nightly; when i (lie|lay) down; lying in bed; in bed; last night; disturbs my sleep; up all night
        middle of the night; woke up; losing sleep; stops me sleeping; night after night; awake with
    """,
    "two_nights": """
        every night; most nights; nights; (second|third|2nd|3rd|another) night; night after night; nightly
        (two|three|four|five|2|3|4|5|few|couple of|several) nights; keeps (me|waking|wakes|on waking)
        wakes me; waking me; nights running; all week; this week; at night; always; weeks; in a row
        and (the )?night before; again; for days; through the night
    """,
    "at_rest": """
        at rest; resting; when i rest; even resting; doing nothing; sat still; sitting still; sitting down
        sitting; sat; seated; lying; lying down; laying down; laying; lie down; in bed; on the (sofa|couch)
        not moving; not doing anything; without moving; even when still; for no reason; no reason; at my desk
        even when im not; even if i dont move; watching (tv|telly); just sat; hours (later|after|now)
        an hour (later|after); for (an|half an|two|2|3|1) hour*; half an hour; minutes (later|after|now)
        wont (settle|slow|calm|go|stop|come)*; not (settling|slowing|calming|easing|coming|going)*
        isnt (settling|slowing|calming|easing|going|coming)*; hasnt (settled|slowed|calmed|eased|come)
        still; wont go down; doesnt (settle|slow|calm|go|ease|stop); didnt (settle|slow|calm|ease)
        since (this|last|yesterday|lunch|the|i); all day; all night; all morning; this morning; constantly
        regardless; after i stopped; after stopping; long after; even now; unrelated to movement
        whatever i do; no matter what; whether i move or not
    """,
    "movement_linked": """
        when i (roll|rolled|turn|turned|lie on|lay on|lift|move|press|reach|twist) ; when i roll over
        rolled (on|over|onto); roll (on|over|onto); lie on it; lay on it; lying on it; slept on it
        sleeping on it; slept funny; sleep on; slept on; laid on it; if i lie on; rolling over; rolling on
        rolling onto; turn over; turned over; slept badly on; slept weird; slept awkward*
    """,
    "stairs": """
        stairs; stair; staircase; upstairs; steps up; uphill; hill; hills; walk fast; walking fast
        brisk walk*; walk briskly; walking; walk; climb; climbing; rushing; hurrying; exertion; exert
        exert myself; effort; jog; jogging; carrying shopping; mowing; run for the bus; running for
        shovelling; shoveling; hoovering; hurry; walked up; cycling; on the bike; treadmill; ran for the
        escalator; any effort; physical effort; push the pram; out walking; flight of; flights
    """,
    "eases_with_rest": """
        (goes|went|go|gone|eases|stops|stopped|settles|fades|disappears|better) (away )?(when|if|once|as soon as|after) (i|im)
        (goes|went|eases|eased|settles|settled) (off|away|down)?( )?(with|at|on|after) rest*; when i stop; once i stop
        if i stop; after i (rest|stop|sit); when i rest; stops when; eases when; gone when i; have to stop
    """,
    "arm_motion": """
        when i (lift|raise|move|reach|press|rotate|push|pull|swing|throw) ; lift* (my |the )?arm*
        swinging; reaching; moving (my|the) arm; carrying; dog (pulling|pulled|lead|lead); bag strap; rucksack
        backpack; doms; push ups; pull ups; pressing; from yesterday*
    """,
    "not_arm_motion": """
        not (when|with|by) (i )?(mov*|lift*|rais*|press*) ; doesnt hurt to move; fine when i move it
        moving (it|my arm|the arm)~(fine|nothing|ok|no difference|doesnt)
    """,
}
COURSE = {
    "passed": """
        (gone|went|goes|cleared|passed|passes|vanished|stopped|settled|fine|ok|back to normal|normal)~(after|in|within)~(minute|minutes|min|mins|second|seconds|secs|moment|bit|sec)
        went (away )?(when|once|as soon as|straight|right) (i|away|after)*; gone now; goes away (when|once)
        (came|comes) back (after|in|within) (a )?(minute|min|sec|second|few)*; for a (few )?(second|seconds|sec|moment|minute|min)*
        wore off; shook it off; shake it (off|out); shook it out; cleared (up )?(quickly|fast|straight)*
        went away; passed quickly; few seconds; couple of (seconds|minutes|mins)
    """,
    "no_weakness": "no weakness; not weak; strength (is )?(fine|ok|normal|good); grip (is )?(fine|ok|normal)",
    "hang": "hang; hangs; hanging; dead hang*; bar hang*; on the bar; off the bar; hung",
    "slept_on": """
        slept on; sleeping on; fell asleep on; lay on; laid on; lying on; sat on; sitting on; slept funny
        leaning on; crossed; crossing; slept weird; laying on; slept awkward*; asleep on; leant on
    """,
    "went_back": """
        (went|gone|goes|popped|pop|slid|slipped|clunked|came|put|pushed|moved|snapped|jumped|fell|clicked|rolled|got|eased|relocated|pulled|shoved|knocked)~(back (in|into|in place|to place|where|by itself|on its own|again)|back)
        back in (place|its|the|now|by|on); back in; back into; relocated; reduced itself; put (it|itself) back
        and back; for a (second|sec|moment)
    """,
    "long_ago": """
        years ago; year ago; a few years (ago|back)*; (in|since|from|back in|of) (19|20)[0-9]{2}; last (year|season|summer|winter|autumn)
        as a (kid|child|teenager|teen|boy|girl); when i was~(kid|child|young|younger|teenager|school|little|boy|girl|student|teen|[0-9]+)
        at school; at uni; previously; history of; old injury; back in the day; ages ago; long ago
        months ago; used to; years back; once before; decade ago; decades ago; in my (teens|twenties|20s|30s|thirties)
        in the past; in (january|february|march|april|june|july|august|september|october|november|december)
        before i (started|joined); an old
    """,
    "exercise": """
        burpee*; push ups; pushups; press ups; pull ups; pullups; chin ups; squats; squat; sprint*; run
        runs; hill reps; workout*; session*; circuit*; set; sets; round; rounds; rep; reps; plank*; hang; hangs
        training; train; wod; finisher*; intervals; cardio; gym; class; bench; benching; dips; rows; rowing
        carry; carries; farmer*; exercise*; holds; hold; programme; program; week [0-9]+; coach; kettlebell*
        lifts; lifting; skipping; presses; handstand*; ring; rings; warm up; conditioning; leg day; swim
        hiit; boxing; sparring; match; game; race; spin
    """,
    "after_exercise": """
        (after|from|following|post|because of|thanks to|since)~(burpee*|push ups|pushups|press ups|pull ups|pullups|bench|benching|dips|flys|flyes|flies|session|workout|training|class|gym|rows|circuit|chest day|planks|holds|weights|sets|set|stretch*|yesterdays*|yesterday|mondays*|tuesdays*|wednesdays*|thursdays*|fridays*|saturdays*|sundays*|press)
        chest day; doms; pump; pumped
    """,
    "during_exercise": """
        (during|mid|in|halfway|middle of|end of|while|doing|on|after|between)~(burpee*|push ups|pushups|press ups|pull ups|pullups|sprint*|run|session|workout|set|sets|round|rounds|rep|circuit|class|intervals|training|gym|hill|hills|rowing|hold|hang|skipping|hiit|finisher|finishers|exercise|match|game|race|warm up|carry|carries|stairs)
        (burpees|sprints|hill reps|intervals|circuits|finisher|conditioning)
    """,
    "muscle_hint": """
        doms; pec; pecs; pectoral*; muscle; muscles; muscular; when i (press|touch|poke|push|prod) (on )?(it|there)
        to (the )?touch; to press; when (pressed|touched|poked); stretch*; good sore; worked; soreness
        chest day; in a good way; nicely; pump; pumped; sore; foam roll*; tender
    """,
    "tired": """
        last set; last round; last rep; last few; final (set|round|rep); by the end; at the end; end of
        fatigue*; tired; failure; failed; towards the end; as usual; compared to; weaker than; than my
        weak point; weak link; weakest; weaker side; weaker; weak spot; weak session; weak today
        week session; mentally; willpower; weak excuse; weak coffee; not as strong; todays session; feeble
        strength work; could barely; knackered; from yesterday; no energy
    """,
    "figure": """
        killer; dying; dead; died; death; murder*; brutal; lethal; suicide (run|runs|sprint|sprints|drill|drills|set|sets|round)*
    """,
    "laugh": "haha*; lol; lols; lmao; rofl; hehe*; jk; joking; just kidding; only joking; hah; lolol*; xd",
    "cold_weather": """
        (from|with|because of|in|due to) (the )?(cold|freezing|snow|frost|winter|ice|ice bath|cold water|cold bar)
        freezing (outside|out|today|morning|cold); cold (weather|morning|day|outside|garage|gym|bar|water|ride|swim)
        so cold (out|outside|today|in); minus [0-9]+; winter; frozen; gloves; ice bath; cold plunge
    """,
    "lifts_figure": "[0-9]+ ?(kg|kilos|lb|lbs|pounds|k)",
}
PEOPLE = {
    "person": """
        (my |our |the |her |his |their )?(mum|mom|mam|mother|dad|father|brother|bro|sister|wife|husband|hubby|partner|boyfriend|girlfriend|missus|friend|friends|mate|mates|buddy|bestie|colleague|coworker|boss|neighbour|neighbor|son|daughter|kid|kids|baby|gran|grandad|granddad|grandma|grandpa|grandfather|grandmother|nan|nana|uncle|aunt|auntie|aunty|cousin|niece|nephew|inlaw|teammate|flatmate|roommate|housemate|training partner|fella|client|patient|stepdad|stepmum|fiance|fiancee|dog|cat|horse|puppy|parents|folks|nanna|papa|mama|pal|student)s?
        (a|some|this|that|the|another|one) (guy|bloke|lad|girl|woman|man|lady|fella|chap|dude|player|runner|member|old man|person|fighter|footballer|actor|character|kid|boy)
        someone; somebody; everyone; everybody; people; anyone; (one|some) of (the|my|our) (others|lads|guys|girls|clients|friends|mates|team)
        he; she; hes; shes; (his|her)(?! (advice|words|opinion|view))
    """,
    "reports": """
        (says|said|saying|say|thinks|thought|reckons|reckoned|noticed|told|tells|asked|asks|worried|worries|wants|suggested|suggests|insists|insisted|wondered|wonders)
    """,
    "me": "i; im; ive; me; my; mine; myself; id; i will",
    "starts_me": "i; im; ive; me; mine; myself; id",
}
NEGATION = {
    "no": """
        (no|nothing|without|zero|never|nor|neither|nil|free of|absence of|denies|deny|denied|none of|didnt get|didnt have|didnt feel|dont have|dont get|dont feel|dont have any|doesnt have|havent had|havent got|havent noticed|havent felt|hasnt got|not had|not got|not having|not feeling|not felt|not experiencing|isnt|wasnt|arent|werent|aint|not|hasnt|havent|doesnt|didnt|never had|dont notice|didnt notice|dont see|rather than|instead of|stopped having|negative for)
    """,
    "not_negating": """
        no (idea|doubt|matter|wonder|relief|improvement|better|change|joke|one|longer|reason|reasons|clue|warning|strength|feeling|sensation|grip|power|control|more than|other|way|real reason|pulse)
        nothing (helps|works|makes|like|to|but|else|eases|i do|new|happens|changed|about|in the tank)
        not (just|only|sure|better|improving|going|good|normal|stopping|easing|settling|well|right|great|certain|kidding|joking|fine|ok|ideal|shifting|clearing|getting|healing|feeling (great|good|well|right|too good)|slowing|calming|coming|moving|able|doing|sleeping|trying|in place|where|wanting|to alarm|to worry|long|stop|as|make|making|related|unrelated|nice|straight|myself|worth|to be|related|when|with|even)
        never (had|felt|known|experienced|seen) (anything|this|it|such|pain|one|a|like|so|that)~(before|like|this)
        never had (this|it|that) before; not having it; havent (slept|been|told|seen|stopped|eaten|moved|had it before|had this before|had that before|felt right)
        isnt (right|going|getting|good|better|settling|shifting|easing|normal|stopping|moving|working|where|in|straight|sitting)
        wasnt (there|right|expecting|too)
        didnt (sleep|go|settle|stop|ease|know|want|think|help|happen|dare|expect|recognise|realise|make)
        hasnt (gone|settled|eased|stopped|improved|gotten|got better|cleared|shifted|come|slowed|calmed|been right)
        havent (been|gone|settled|slept|got better)
        doesnt (go|feel right|feel good|look right|look|settle|stop|ease|help|matter|move|work|seem|sit|want|want to)
        arent (right|working|moving|going|getting); werent (working)
        (cant|cannot|couldnt|hardly|barely|wont)~without; not (a )?little; no(?= ,)
    """,
    "barrier": """
        but; except; apart from; however; although; though; except; just; only; so; then; now; because; until; still; yet
        and (i|im|ive|my|a|the|it|its|now|then|also|some|bad|really|very|still|have|had|got|pain|cant|feel|felt|both|left|right)
        which; instead; apart; besides; other than; started; since; after; cos; coz; when
    """,
    "list_word": "or; nor; any",
    "more_than": """
        (not|isnt|wasnt|more than|nothing like|unlike|different (to|from)|worse than|beyond|doesnt feel like)~(sore|doms|soreness|muscle|muscular|ache|stiff|stiffness|tired)
    """,
    "all_clear": """
        (is|are|feels|feel|was|were|its|all|both|seems|looks)? ?(fine|ok|okay|good|great|clear|normal|alright|perfect|solid|happy)
        none; nope; nah; negative; no; nothing; zero; nil; not really; not at all
    """,
}
TALK = {
    "medicine": """
        ibuprofen; paracetamol; tylenol; advil; nurofen; naproxen; aleve; voltaren; voltarol; diclofenac
        painkiller*; pain killer*; anti inflammator*; antiinflammator*; nsaid*; medication*; medicine*; meds
        cortisone; steroid*; antibiotic*; cbd; tramadol; codeine; co codamol; aspirin; tablets; pills
        prednisone; prednisolone; beta blocker*; blood pressure (tablets|pills|meds); statin*; inhaler
        muscle relaxant*; gabapentin; creatine; supplement*; injection; panadol; antidepressant*; dose of
    """,
    "asking": """
        can i; should i; could i; may i; is it (ok|okay|safe|alright|fine|bad|worth|normal)
        how (much|many|often|long); which; what (do|should|is|are|can|could|dose|would)
        would (it|you); any good; ok to; safe to; recommend*; what about; do you think; do i need
        is (this|that|it); are (these|they); does (this|that|it); have i; did i; whats; could (it|this|that) be
        might (it|this|that) be; am i; or is; wondering if; wonder if; think (its|this is|ive); sounds like; do i have
        is there; any idea
    """,
    "condition": """
        tear; torn; tore; tendonitis; tendinitis; tendinopath*; rotator cuff; impinge*; bursitis; arthritis
        carpal tunnel; (golfers|tennis|climbers) elbow; sprain*; strain*; fractur*; broken; break; frozen shoulder
        hernia; (trapped|pinched) nerve; slipped disc; labrum; labral; rsi; ligament; tendon; inflammation
        inflamed; rhabdo*; pulled a muscle; pulled muscle; concuss*; dislocat*; (heart|asthma) (attack|condition)
        infection; diagnos*; stress fracture; nerve damage; subluxat*; angina; stroke; blood clot; clot
        wrong with (me|my|it); scan; mri; x ray; xray; slap tear; cuff; thoracic outlet
    """,
}
SITES = {
    "site_neck": "neck",
    "site_shoulder_front": "front of (my |the )?(left |right )?shoulder*; front (shoulder|delt)*; (shoulder|shoulders) at the front",
    "site_shoulder_top": "top of (my |the )?(left |right )?shoulder*; ac joint",
    "site_shoulder_back": "(back|rear) of (my |the )?(left |right )?shoulder*; rear (shoulder|delt)*",
    "site_upper_arm": "upper arm*; bicep; biceps; tricep; triceps",
    "site_elbow_outer": "(outer|outside|outside of (my |the )?)( left| right)?( )?elbow*; elbow (on the )?outside",
    "site_elbow_inner": "(inner|inside|inside of (my |the )?)( left| right)?( )?elbow*; elbow (on the )?inside",
    "site_elbow_back": "back of (my |the )?(left |right )?elbow*; point of (my |the )?elbow",
    "site_forearm": "forearm*; fore arm*",
    "site_wrist": "wrist*",
    "site_hand": "hand; hands; finger*; thumb*; palm; knuckle*",
    "site_upper_back": "upper back; between (my|the) shoulder blades; shoulder blade*",
    "side_left": "left; lhs; leftie; lefty",
    "side_right": "right; rhs",
    "side_both": "both; either side; each side",
    "pain_words": "pain*; hurt; hurts; hurting; agony; stabbing; twinge*; niggl*; throb*; sharp; discomfort; aching (joint|elbow|wrist|shoulder)*; playing up; flared up; killing me; giving me (grief|gip|jip)",
    "sudden_sharp": "sudden (sharp )?pain; sharp pain; suddenly (hurt|sharp)*; sudden sharp; sharp (stab|twinge|jab); stabbing pain; felt something (go|give|pull); pulled something; shooting pain",
}
DENIAL_PASSES_OVER = frozenset(PLACES) | frozenset(COURSE) | frozenset(SITES) | frozenset(
    {"limb_any", "no_weakness", "wont_settle", "hypothetical", "rest_only", "limb_pair"}
)
"""Places and course are not denied: "no feeling in my hand" is about the hand all the same."""
WRITTEN_OUT = {
    "ill": "ill",
    "u": "you",
    "ur": "your",
    "cant": "cant",
    "cannot": "cant",
    "coz": "because",
    "cuz": "because",
    "cos": "because",
    "bc": "because",
    "rn": "now",
    "abit": "a bit",
    "alot": "a lot",
    "dnt": "dont",
    "didn": "didnt",
    "didint": "didnt",
    "wouldnt": "wont",
    "unable": "cant",
    "couldnt": "cant",
    "hart": "heart",
    "brest": "breast",
    "brething": "breathing",
    "breth": "breath",
    "breathe": "breathe",
    "cheast": "chest",
    "chets": "chest",
    "chst": "chest",
    "chect": "chest",
    "numbb": "numb",
    "num": "numb",
    "numn": "numb",
    "nimb": "numb",
    "sholder": "shoulder",
    "shouder": "shoulder",
    "sholder's": "shoulder",
    "shulder": "shoulder",
    "pls": "please",
    "thru": "through",
    "nite": "night",
    "tho": "though",
    "gonna": "going to",
    "wanna": "want to",
    "gotta": "have to",
    "kinda": "kind of",
    "dosent": "doesnt",
    "wernt": "werent",
    "havnt": "havent",
    "tite": "tight",
    "thight": "tight",
    "thigh": "thigh",
    "nek": "neck",
    "hed": "head",
    "hrs": "hours",
    "hr": "hour",
    "mins": "minutes",
    "yday": "yesterday",
    "yest": "yesterday",
    "tmrw": "tomorrow",
    "diarrhoea": "diarrhoea",
    "wee": "wee",
    "feint": "faint",
    "feinted": "fainted",
    "fainte": "faint",
    "brused": "bruised",
    "brusing": "bruising",
    "pidgeon": "pigeon",
    "stares": "stairs",
    "weekness": "weakness",
    "preasure": "pressure",
    "presure": "pressure",
    "tightnes": "tightness",
    "dizzyness": "dizziness",
    "tinglin": "tingling",
    "swolen": "swollen",
    "swolled": "swollen",
    "nubmness": "numbness",
    "palpatations": "palpitations",
    "unconcious": "unconscious",
    "vomitting": "vomiting",
    "urin": "urine",
    "diziness": "dizziness",
    "sux": "sucks",
    "aswell": "as well",
    "ankel": "ankle",
    "elbo": "elbow",
    "rist": "wrist",
    "musle": "muscle",
    "muscel": "muscle",
    "hurst": "hurts",
    "wont": "wont",
    "wasn": "wasnt",
    "isn": "isnt",
    "couldn": "cant",
    "doesn": "doesnt",
}
MENDED_TO = """
    breath breathing breathe breathless chest pressure tightness shoulder shoulders elbow wrist forearm finger fingers
    headache vomiting vomited numbness tingling tingly swollen swelling dislocated dislocate palpitations fainted fainting
    collapsed unconscious dizziness weakness fever temperature bruised bruising purple urine straighten suicidal suicide
    overdose overdosed paracetamol ibuprofen pregnant bleeding bladder bowels stairs sweating sweaty nausea nauseous slurred
    slurring speech drooping blurred vision sudden suddenly popped snapped heart heartbeat irregular fluttering warfarin
    concussion concussed confused confusion needles prickling sensation feeling sharp heavy crushing squeezing clammy
    blacked asleep cancer severe unbearable deformed socket collarbone tightening squeezed discoloured
    disoriented thunderclap stomach pounding racing breathlessness incontinent myself kilos weight trying
"""
PROTECTED = """
    banged banging blending blocked bowel bowers bowles bowls breach breaching breadth breast
    breeding brest brushed brushing cancel cancers chance cheat cheats chefs chess chests chews
    concession conclusion crest cruising cushing drooling dropping feeding felling fevers fewer
    finder finders finer firearm flattering fleeing freeing freer fringe fringes fueling harts
    heady healy heard hearn hears hearst heated heath heats heave hertz kills kiosk needle
    needless numbers overdone pooped propped racine racking raging raking raping rating raving
    seating selling sensations server sever severed severn shape shard share shark shear
    shelling shouldve slapped smelling sockets spelling spurred stains stair starks stars starts
    stasis stirs stomachs swapped swearing thingy thinly tiring toying turing tying typing
    unbeatable vinson visions waist waists weigh weighs weights weighty wight worst wright
    wrists write
"""
ENGLISH = WordSet(
    language="en",
    concepts={**PLACES, **SENSATIONS, **COURSE, **PEOPLE, **NEGATION, **TALK, **SITES, **DOUBTS, **SIGNS},
    written_out={slip: word for slip, word in WRITTEN_OUT.items() if slip != word},
    mended_to=frozenset(MENDED_TO.split()),
    protected=frozenset(PROTECTED.split()),
)
"""English as athletes type it."""
