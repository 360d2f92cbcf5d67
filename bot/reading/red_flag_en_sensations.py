"""English sensations, and the course they take, for the red-flag reader."""

SENSATIONS = {
    "pain": """
        pain*; hurt; hurts; hurting; hurty; ache; aches; aching; ached; achey; achy; agony
        agonising; agonizing; discomfort; stabbing; stabs; sharp; burning; throb*; killing me
        uncomfortable; excruciating; twinge*; niggle*; niggling; sting*; smarting; gip
        giving me (gip|grief|jip); playing up; gives me grief; in bits; flared; flare up; burns
        cramp*; shooting
    """,
    "sore": """
        sore; soreness; doms; tender; tenderness; stiff; stiffness; ache; aches; achy; aching
    """,
    "sharp": """
        sharp; stabbing; knife; knifelike; shooting; electric; sudden; suddenly; jolt; lightning
    """,
    "pressure": """
        pressure; tight; tightness; tightening; tightened; tighter; squeez*; crush*; heavy
        heaviness; constrict*; constriction; elephant; weight on; vice; vise
        band (round|around|across); clamp*; compress*; pressing; clench*; gripping feeling
        strap (round|around); fullness
        (something|someone|somebody)~(sitting|pressing|sat|standing|stood|squeezing|squashing|
        stamping|resting)
        squash*; tightens
    """,
    "swollen": """
        swollen; swelling; swelled; swole up; swell; swells; swolen; puffy; puffed up; balloon*
        blown up; bigger than; twice (the|its|it s) size; double (the|its) size; huge
        size of a*; fat and; bloated; puffing up; swelled up; inflated; larger than
        thicker than
    """,
    "hard": """
        hard; rock hard; rock solid; solid; like (a )?(rock|stone|wood|board); tense; shiny
        woody
    """,
    "severe": """
        worse and worse; getting worse by the (hour|minute); pain wont (stop|ease); extreme pain
        extreme; crying (in|with) pain; in tears; pain is (through|off)
        severe; agony; unbearable; excruciating; worst pain; agonising; agonizing; so painful
        really painful; screaming; insane pain; intense; terrible pain; horrific; killing me
        extremely painful; massive pain; mega painful; unreal pain; huge pain; pain is (so )?bad
        very painful; awful pain; incredibly painful; horrendous; bad pain; hurts like hell
        a lot of pain; off the charts; out of (all )?proportion; cant bear; cant stand the pain
    """,
    "colour": """
        blue; bluish; blueish; purple; purplish; discoloured; discolored; discolouration
        discoloration; dusky; mottled; dark; darker; red; reddish; white; pale; grey; gray
        violet; blotchy; veins; changed (colour|color); funny (colour|color)
        (weird|strange|odd) (colour|color)
    """,
    "cold_limb": "cold; pale; white; blue; numb; bluish; grey; gray; cool; no pulse",
    "heavy": "heavy; heavier; heaviness; leaden; weighs a ton",
    "hot": """
        hot; warm; burning up; roasting; heat; feverish; on fire; boiling; hot to (the )?touch
    """,
    "red": "red; redness; reddish; inflamed; angry; swollen; puffy; shiny",
    "sudden": """
        sudden; suddenly; all of a sudden; out of nowhere; out of the blue; instantly
        in seconds; just now; thunderclap; like (a )?(lightning|bolt|gunshot|explosion)*
        came on fast; all at once; within (a )?(second|seconds|minute); from nowhere; bang
        a minute ago; minutes ago; woke up and; this morning; an hour ago; straight away
    """,
    "new": """
        new; started; since; suddenly; sudden; gone; went; going; lost; losing; now; still; woke
        today; yesterday; became; become; getting; got; comes and goes; all day; days; hours
        week; weeks; havent; always had no; overnight; keep; keeps; kept; constantly; constant
        feels; feel; noticed
    """,
    "night": """
        at night; in the night; through the night; during the night; every night; most nights
        nights; (second|third|2nd|3rd|another|two|three|2|3|few|couple of) night*; wakes me
        woke me; waking me; wake me; wakes us; waking up (with|from|because)
        wake up (with|from|because); keeps me (up|awake); kept me (up|awake)
        keeping me (up|awake); cant sleep; couldnt sleep; cannot sleep; woken (me|up); woken by
        no sleep; at 3am; 3am; 2am; 4am; 3 am; 2 am; 4 am; overnight; nighttime; night time
        nightly; when i (lie|lay) down; lying in bed; in bed; last night; disturbs my sleep
        up all night; all night; middle of the night; woke up; losing sleep; stops me sleeping
        night after night; awake with
    """,
    "two_nights": """
        every night; most nights; nights; (second|third|2nd|3rd|another) night
        night after night; nightly; (two|three|four|five|2|3|4|5|few|couple of|several) nights
        keeps (me|waking|wakes|on waking); wakes me; waking me; nights running; all week
        this week; at night; always; weeks; in a row; and (the )?night before; again; for days
        through the night
    """,
    "at_rest": """
        at rest; resting; when i rest; even resting; doing nothing; sat still; sitting still
        sitting down; sitting; sat; seated; lying; lying down; laying down; laying; lie down
        in bed; on the (sofa|couch); not moving; not doing anything; without moving
        even when still; for no reason; no reason; at my desk; even when im not
        even if i dont move; watching (tv|telly)
        just (sat|walking|standing|talking|sitting|lying|getting dressed)~; talking
        walking to the (kitchen|loo|car|door|bathroom|toilet|shop); hours (later|after|now)
        an hour (later|after); for (an|half an|two|2|3|1) hour*; half an hour
        minutes (later|after|now); wont (settle|slow|calm|go|stop|come)*
        not (settling|slowing|calming|easing|coming|going)*
        isnt (settling|slowing|calming|easing|going|coming)*
        hasnt (settled|slowed|calmed|eased|come); still; wont go down
        doesnt (settle|slow|calm|go|ease|stop); didnt (settle|slow|calm|ease)
        since (this|last|yesterday|lunch|the|i); all day; all night; all morning; this morning
        constantly; regardless; after i stopped; after stopping; long after; even now
        unrelated to movement; whatever i do; no matter what; whether i move or not
    """,
    "movement_linked": """
        when i (roll|rolled|turn|turned|lie on|lay on|lift|move|press|reach|twist)
        when i roll over; rolled (on|over|onto); roll (on|over|onto); lie on it; lay on it
        lying on it; slept on it; sleeping on it; slept funny; sleep on; slept on; laid on it
        if i lie on; rolling over; rolling on; rolling onto; turn over; turned over
        slept badly on; slept weird; slept awkward*
    """,
    "stairs": """
        rush; rushed; rushes; push myself; exert; exerting; hurried
        stairs; stair; staircase; upstairs; steps up; uphill; hill; hills; walk fast
        walking fast; brisk walk*; walk briskly; walking; walk; climb; climbing; rushing
        hurrying; exertion; exert; exert myself; effort; jog; jogging; carrying shopping; mowing
        run for the bus; running for; shovelling; shoveling; hoovering; hurry; walked up
        cycling; on the bike; treadmill; ran for the; escalator; any effort; physical effort
        push the pram; out walking; flight of; flights
    """,
    "eases_with_rest": """
        (goes|went|go|gone|eases|stops|stopped|settles|fades|disappears|better) (away )?(when|if|
        once|as soon as|after) (i|im)
        (goes|went|eases|eased|settles|settled) (off|away|down)?( )?(with|at|on|after) rest*
        when i stop; once i stop; if i stop; after i (rest|stop|sit); when i rest; stops when
        eases when; gone when i; have to stop
    """,
    "arm_motion": """
        when i (lift|raise|move|reach|press|rotate|push|pull|swing|throw); lift* (my |the )?arm*
        swinging; reaching; moving (my|the) arm; carrying; dog (pulling|pulled|lead|lead)
        bag strap; rucksack; backpack; doms; push ups; pull ups; pressing; from yesterday*
    """,
    "not_arm_motion": """
        not (when|with|by) (i )?(mov*|lift*|rais*|press*); doesnt hurt to move
        fine when i move it; moving (it|my arm|the arm)~(fine|nothing|ok|no difference|doesnt)
    """,
}

COURSE = {
    "passed": """
        (gone|went|goes|cleared|passed|passes|vanished|stopped|settled|fine|ok|back to normal|
        normal)~(after|in|within)~(minute|minutes|min|mins|second|seconds|secs|moment|bit|sec)
        went (away )?(when|once|as soon as|straight|right) (i|away|after)*; gone now
        goes away (when|once)
        (came|comes) back (after|in|within) (a )?(minute|min|sec|second|few)*
        for a (few )?(second|seconds|sec|moment|minute|min)*; wore off; shook it off
        shake it (off|out); shook it out; cleared (up )?(quickly|fast|straight)*; went away
        passed quickly; few seconds; couple of (seconds|minutes|mins)
    """,
    "no_weakness": """
        no weakness; not weak; strength (is )?(fine|ok|normal|good); grip (is )?(fine|ok|normal)
    """,
    "hang": "hang; hangs; hanging; dead hang*; bar hang*; on the bar; off the bar; hung",
    "slept_on": """
        slept on; sleeping on; fell asleep on; lay on; laid on; lying on; sat on; sitting on
        slept funny; leaning on; crossed; crossing; slept weird; laying on; slept awkward*
        asleep on; leant on
    """,
    "went_back": """
        (went|gone|goes|popped|pop|slid|slipped|clunked|came|put|pushed|moved|snapped|jumped|fell|
        clicked|rolled|got|eased|relocated|pulled|shoved|knocked)~(back (in|into|in place|to place|
        where|by itself|on its own|again)|back)
        back in (place|its|the|now|by|on); back in; back into; relocated; reduced itself
        put (it|itself) back; and back; for a (second|sec|moment)
    """,
    "long_ago": """
        years ago; year ago; a few years (ago|back)*; (in|since|from|back in|of) (19|20)[0-9]{2}
        last (year|season|summer|winter|autumn); as a (kid|child|teenager|teen|boy|girl)
        when i was~(kid|child|young|younger|teenager|school|little|boy|girl|student|teen|[0-9]+)
        at school; at uni; previously; history of; old injury; back in the day; ages ago
        long ago; months ago; used to; years back; once before; decade ago; decades ago
        in my (teens|twenties|20s|30s|thirties); in the past
        in (january|february|march|april|june|july|august|september|october|november|december)
        before i (started|joined); an old
    """,
    "exercise": """
        burpee*; push ups; pushups; press ups; pull ups; pullups; chin ups; squats; squat
        sprint*; run; runs; hill reps; workout*; session*; circuit*; set; sets; round; rounds
        rep; reps; plank*; hang; hangs; training; train; wod; finisher*; intervals; cardio; gym
        class; bench; benching; dips; rows; rowing; carry; carries; farmer*; exercise*; holds
        hold; programme; program; week [0-9]+; coach; kettlebell*; lifts; lifting; skipping
        presses; handstand*; ring; rings; warm up; conditioning; leg day; swim; hiit; boxing
        sparring; match; game; race; spin
    """,
    "after_exercise": """
        (after|from|following|post|because of|thanks to|since)~(burpee*|push ups|pushups|press ups|
        pull ups|pullups|bench|benching|dips|flys|flyes|flies|session|workout|training|class|gym|
        rows|circuit|chest day|planks|holds|weights|sets|set|stretch*|yesterdays*|yesterday|
        mondays*|tuesdays*|wednesdays*|thursdays*|fridays*|saturdays*|sundays*|press)
        chest day; doms; pump; pumped
    """,
    "during_exercise": """
        (during|mid|in|halfway|middle of|end of|while|doing|on|after|between)~(burpee*|push ups|
        pushups|press ups|pull ups|pullups|sprint*|run|session|workout|set|sets|round|rounds|rep|
        circuit|class|intervals|training|gym|hill|hills|rowing|hold|hang|skipping|hiit|finisher|
        finishers|exercise|match|game|race|warm up|carry|carries|stairs)
        (burpees|sprints|hill reps|intervals|circuits|finisher|conditioning)
    """,
    "muscle_hint": """
        doms; pec; pecs; pectoral*; muscle; muscles; muscular
        when i (press|touch|poke|push|prod) (on )?(it|there); to (the )?touch; to press
        when (pressed|touched|poked); stretch*; good sore; worked; soreness; chest day
        in a good way; nicely; pump; pumped; sore; foam roll*; tender
    """,
    "tired": """
        last set; last round; last rep; last few; final (set|round|rep); by the end; at the end
        end of; fatigue*; tired; failure; failed; towards the end; as usual; compared to
        weaker than; than my; weak point; weak link; weakest; weaker side; weaker; weak spot
        weak session; weak today; week session; mentally; willpower; weak excuse; weak coffee
        not as strong; todays session; feeble; strength work; could barely; knackered
        from yesterday; no energy
    """,
    "figure": """
        killer; dying; dead; died; death; murder*; brutal; lethal
        suicide (run|runs|sprint|sprints|drill|drills|set|sets|round)*
    """,
    "laugh": """
        haha*; lol; lols; lmao; rofl; hehe*; jk; joking; just kidding; only joking; hah; lolol*
        xd
    """,
    "cold_weather": """
        (from|with|because of|in|due to) (the )?(cold|freezing|snow|frost|winter|ice|ice bath|
        cold water|cold bar)
        freezing (outside|out|today|morning|cold)
        cold (weather|morning|day|outside|garage|gym|bar|water|ride|swim)
        so cold (out|outside|today|in); minus [0-9]+; winter; frozen; gloves; ice bath
        cold plunge
    """,
    "lifts_figure": "[0-9]+ ?(kg|kilos|lb|lbs|pounds|k)",
}
