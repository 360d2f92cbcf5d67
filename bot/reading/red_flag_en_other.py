"""English signs of the whole body and of distress, and their look-alikes."""

OTHER = {
    "bladder": """
        cant feel~~(toilet|loo)
        cant feel~(toilet|weeing|peeing|pooing|wee|pee|poo)
        cant (start|stop) (weeing|peeing|a wee)
        cant (tell|feel|sense) (when )?(i need|if i need|needing)~(wee|pee|go|toilet|loo|poo|to|
        bathroom)
        (bladder|bowel|bowels|pee|wee)~(by itself|without feeling|without noticing|
        without realising)
        numbness (around|in|between|of)~(groin|backside|bum|saddle|genitals|crotch|privates|
        legs inner)
        (lost|lose|losing|loss of|no|cant|lack of|without|less|not in|poor|cant)~control (of|over|
        when)? ?(my |the )?~(bladder|bowel|bowels|pee|wee|bladder or|peeing|toilet|poo|down there)
        cant (to )?(control|hold|feel)~(bladder|bowel|bowels|pee|wee|urine|poo|when i need|
        myself peeing|water)
        cant (to )?(pee|wee|urinate|pass water|pass urine|empty my|go to the toilet|start peeing|
        go for a wee|feel when)
        wet myself; wetting myself; wet the bed; wetting the bed; peed myself; pissed myself
        weed myself; soiled; soiling; pooped myself; pooed myself; shat myself; shit myself
        crapped myself; messed myself; incontinen*
        (bladder|bowel|bowels)~(control|accident|gone|wont|stopped|not working|leak*|numb|numbness|
        problem*|weird|numbness|hold|let go)
        (leak*|leaking)~(urine|pee|wee|bladder|poo)
        accidents? (in my pants|on the way to the loo|down below)
        (numb|numbness|no feeling|tingl*|lost feeling|cant feel)~(between my legs|saddle|groin|
        genital*|crotch|private*|down below|down there|undercarriage|inner thighs|bum and|
        backside and|when i wipe|toilet)
        (between my legs|saddle area|groin|genitals|crotch|privates|down there)~(numb|numbness|
        no feeling|tingl*|cant feel)
        saddle numb; cant tell when i need (to|the)~; not been able to (pee|wee)
    """,
    "bladder_figure": """
        (laugh*|giggl*|funny|hilarious|haha|lol)~(wet|peed|pissed|weed|pee|pissing|wetting)*
        (wet|peed|pissed|weed|shit|shat|crapped|pee|piss|wee|shitting|pissing|wetting|peeing|
        crap) (myself|ourselves) (laughing|with laughter|when|at|over|before|thinking|watching|
        at the|reading|about|that|giggling|with (fear|excitement|joy)|lol|haha)
        (nearly|almost|practically|could have|about to|gonna|going to) (wet|peed|pissed|weed|shit|
        shat|crapped|pee|piss|wee)*
        scared; bricking it
    """,
    "pregnant": """
        at [0-9]+ weeks; [0-9]+ weeks in
        (im|i am|am|currently|now|and) [0-9]+ weeks( along| gone| in)?
        [0-9]+(wks|wk|weeks)~(preg*|along|gone); pregnan*; weeks along
        expecting a (baby|boy|girl)*; im expecting; trimester
        [0-9]+ weeks (pregnant|gone|preg*); preggers; preggo; up the duff; with child; baby bump
        antenatal; midwife; gestation; my pregnancy; expecting
    """,
    "bleed": """
        bleed*; blood; spotting; bled; haemorrhag*; hemorrhag*; clots; gush*; losing blood
        brown discharge
    """,
    "overdose": """
        i odd; ive odd; i od; ive od; od last night; took an od
        (whole|entire) (blister|sheet|strip|packet|box|bottle)~(of|in)~(pill*|tablet*|paracetamol|
        ibuprofen|meds)
        more (tablets|pills|painkillers|paracetamol|ibuprofen) than~
        (doubled|tripled|double|triple) (my |the )?(dose|tablets|meds|medication|insulin)
        took (all )?(my |the )?(tablets|pills|meds) (at once|in one go|all at once|together)
        too much (insulin|medication|paracetamol|ibuprofen|codeine|morphine|medicine|
        caffeine powder)
        overdos*; od d; odd on; od on
        (took|taken|swallowed|had|necked|popped|downed|take|swallow|ate|eaten|taking|chewed|
        did)~(too many|too much|whole (packet|pack|box|bottle|strip|lot|tub)|(a|the|one|two|three|
        my) (packet|bottle|strip|box|load|pack|handful|bunch)s? (of|worth)|loads of|a lot of|
        handfuls of|all (of )?(my|the)|entire|double|triple|lots of|way too|tons of|bunch of|
        all of the|handful of|fistful of)~(pill*|tablet*|paracetamol|ibuprofen|painkill*|
        pain killer*|meds|medication|medicine|tylenol|advil|nurofen|codeine|tramadol|insulin|
        aspirin|sleeping|antidepress*|capsules|dose|panadol|naproxen|acetaminophen|diazepam|drugs|
        packet|bottle|co codamol|insulin|warfarin|caffeine|blockers)
        (took|taken|swallowed|had|necked|downed|popped|ate) (about |around |like |over |nearly |
        more than |at least |maybe |some )?(9|1[0-9]|[2-9][0-9]|[1-9][0-9][0-9]|ten|twelve|fifteen|
        sixteen|twenty|thirty|forty|fifty|dozen|a dozen|dozens)~(pill*|tablet*|paracetamol*|
        ibuprofen*|painkill*|tylenol|advil|nurofen|codeine|capsules|panadol|aspirin|caffeine|
        sleeping|antidepress*|co codamol|meds|of them)
        (too many|too much of (my|the)) (pills|tablets|painkillers|paracetamol|ibuprofen|meds|
        medication|caffeine)~
        (exceeded|over|above|past|doubled|tripled|way over)~(max|maximum|daily|recommended|
        safe) (dose|amount|limit)~
        poison* myself; took the whole (bottle|packet|box|pack|lot|strip)
    """,
    "overdose_figure": """
        (od|odd|oded|od d|overdosed|overdosing|overdose) on (?!my|the|pills|tablets|meds|medication|
        paracetamol|insulin|ibuprofen|codeine|painkillers)\\w+
        overdos*~(coffee|chocolate|sugar|pizza|burpees|cake|carbs|push ups|caffeine haha|netflix|
        sun|volume|biscuits|cheese|training|pull ups|protein|work|turkey|food|vitamin d|cute*|
        planks|press ups|cardio)
        (od|odd)~(coffee|chocolate|pizza|cake|carbs|sugar|number|numbers|sets); chocolates
    """,
    "self_harm": """
        goodbye everyone; goodbye world; this is goodbye; final goodbye; say goodbye to everyone
        (cut|cutting|slit|slashed|scratched|burned|burnt) my (own )?(arms|wrists|wrist|thighs|legs|
        skin|arm)~(again|last night|tonight|on purpose|to|because|when i|deliberately|yesterday|
        lately)
        (feel|feeling|felt|thinking|think|want|wanted|thought|thoughts)~(ending|end) (it|things|
        everything)( all)?
        wish i~(wont|not|never|didnt)~(wake|exist|be here|been born|woken); top myself
        do myself in; finish myself off; do something stupid
        give up on (life|living|everything); giving up on (life|living)
        (im|am|being|such) (just )?a burden
        burden (to|on) (everyone|everybody|my family|them|people)
        rather not (exist|be alive|be here|wake up); hate (being alive|living|my life and)
        never been born; lost the will to (live|go on); no will to (live|go on)
        cant see myself (being here|living|alive); dont want this life
        (if|when) i (wasnt|werent|was not|were not|was|were|am not|just wasnt|just)~(around|alive|
        gone|dead|disappeared|not here|here anymore|here any more|no longer here)
        (nobody|no one|noone|none of them) (would|will|ll|d) (care|miss|notice|even notice|
        even care)( me| if)?
        whats the point (of|in) (living|anything|it all|carrying on|going on|life|being here|
        being alive|me)
        (not|dont feel) safe (with|from|around) myself
        dont trust myself (tonight|alone|not to|to be); want to be dead
        wish i could (disappear|not exist|vanish|die|sleep forever)
        cant see a (future|way forward|way out|reason)
        dont want to (wake up|be alive|keep living|continue living|live|exist|be here|
        carry on living|go on living|go on|keep going with life)
        (want|ready) to end (it|things|everything|my life|the pain for good)
        end it (tonight|now|today|soon|all|for good|forever)
        cant (do|take|handle|face) (this )?(life|living|another day|being alive)
        just want (it|everything) (all )?to (end|stop forever|be over)
        no (reason|point) to (go on|live|carry on|be here|exist)
        thinking of (ending|killing|dying|hurting|suicide|harming|jumping)~
        think* about (ending|killing|dying|hurting|suicide|not being|jumping|harming)
        been self harming; feel* suicidal; urges to
        i hurt myself (last|again|on|because i|to feel|deliberately); kill myself
        killing myself; end my life; ending my life; end it all; ending it all
        end things for good; take my own life; taking my own life; take my life; suicid*
        want to die; wanted to die; wish i (was|were) (dead|never born|not here|gone)
        wish i (could )?(just )?(not wake up|die|disappear|wasnt here|hadnt woken up)
        rather be dead; better off (dead|without me)
        dont want to (be here|live|be alive|wake up|exist|go on|carry on (living|anymore|any more)|
        be around|be on this)
        not want to (live|be here|be alive|wake up|exist|go on)
        no (reason|point|will|desire) (to|in) (live|living|be here|being here|carry on|carrying on|
        going on|go on|be alive|being alive|existing)
        (cut|cutting|hurt|hurting|harm|harming|burn|burning|scratching|punishing) myself (again|
        on purpose|deliberately|to cope|to feel|badly|because|lately|last night|when i|at night|
        tonight|intentionally|so i)*
        self harm*; selfharm*; harm myself; harming myself; hurt myself on purpose
        hurting myself on purpose; cutting myself
        cut myself (on purpose|again|deliberately|to)~
        (everyone|everybody|world|they|you|family|people)~(better|happier) (off )?without me
        dont see (a|any|the) (point|future|reason|way)~(in|to|living|anymore|any more|out|going on|
        for me|being here|myself)
        life (isnt|is not|aint|not) worth (living|it); not worth living
        cant (to )?(go on|carry on|do this life|live like this|face (another day|living|life)|
        take it anymore|take (any|this) (more|anymore)|keep (living|going on)|cope with life|
        see a way out)( like this| anymore| any more| living)?
        think* (about|of) (dying|ending|death|suicide|jumping|ending it|killing myself|
        hurting myself|not being here|harming myself)
        thoughts (of|about) (suicide|dying|death|ending|hurting|harming|self|killing|not being|
        jumping|not wanting)
        ready to (die|end|go for good)
        jump (off|in front)~(bridge|train|roof|building|cliff|platform); hang myself
        shoot myself; drown myself; overdose on purpose; disappear (for good|forever)
        dont deserve to live; no longer want to (live|be here|be alive|go on|exist)
        tired of (living|being alive|life|existing); done with (life|living)
        (goodbye|farewell|sorry) (everyone|all|forever)~(forever|gone|last|end); give up on life
        want it (all )?to (end|be over|stop forever|stop for good)
        be (better|easier) if i (was|were) (gone|dead|not here|not around)*
        if i (died|wasnt here|was gone|disappeared|werent here); hate my life and
        want to (end|disappear forever|sleep forever|not wake up|not be here|hurt myself|
        harm myself|kill|end myself|be dead|go to sleep and never|sleep and not wake)
        urge to (hurt|harm|cut|kill|jump|end); unalive*; (kms|kys)
        not (be|being) here (anymore|any more|much longer|tomorrow); never wake up
        planning (to|my) (end|suicide|death|kill)~; wrote (a|my) (note|goodbye|suicide|letters)~
        said my goodbyes; nothing (to live for|left to live for); dark thoughts; dark place
    """,
    "self_harm_figure": """
        lost the will to (live|go on)~(set|burpee*|haha|lol|round|halfway|planks|rep|plank|hold|
        session|intervals|today|after|on the)
        (feel|feeling|felt|think|thinking|thought)~end* it~(set|hold|session|round|rep|early|there|
        plank)
        do something stupid (with|in the gym|like (lift|train|skip|go))
        cut my (arm|arms|leg|legs|wrist|thigh|thighs|skin)~(on|gardening|shaving|barbed|thorns|
        bramble*|glass|box|bar|bike)
        end it (tonight|now|today|soon|there|early|here)~(set|session|on a|high|good note|at)
        ready to end (it|things)~(session|set|week|burpees)
        just want it to end~(set|hold|plank|burpee*|round|haha|week|winter)
        (want|wanted) it to (end|stop)~(plank|hold|set|round|burpee*)
        (want|wanted|wanting|ready|going) to die~(burpees|session|squats|round|sets|reps|workout|
        intervals|sprints|circuit|planks|hills|today|yesterday|hold|during|after|finisher|rounds|
        pull ups|lol|haha|laughing|heat|embarrassment|of embarrassment|class|set|that|doms)
        (kill|killing) myself~(burpees|laughing|session|sets|squats|reps|intervals|sprints|gym|
        hills|workout|training|finisher|planks|circuit|hanging|pull ups|push ups|on the|trying to|
        with the weights|to finish|to make it|to get|for the|over a)
        (killing|kill) me
        suicide (run|runs|sprint|sprints|drill|drills|set|sets|round|rounds|burpees|grip|shuttles|
        squad|session|row|push ups|watch party)
        suicides; suicides (drill|today)*
        die of (embarrassment|laughter|boredom|hunger|heat|laughing)
        dying of (heat|boredom|laughter|hunger|thirst); id rather die than (do|eat|miss|run)
        shoot myself in the foot
        hurt myself (doing|on the|lifting|trying|with the|during|at the|in the|when i|if i|
        again (doing|lifting|training|if|on|in|like)|because i|when i fell|slipping|gardening|
        playing)
        dont want to (hurt|injure) myself; not (to |want to )?hurt myself
        cut myself (shaving|cooking|on a|on the|chopping|with a kitchen|some slack|on (my|some|
        glass)|opening|while|slicing)
        burnt? myself (on|cooking|ironing|out|with the|making)
        cutting myself (some|short|shaving); burning myself out
        punishing myself (in|at|with) (the )?(gym|burpees|training|extra)
        jump (off|in front) the (box|bench|bar); jumped off the (box|bench|bar)
        hang myself (from the bar|on the bar|on the rings|up)
        wish i was dead~(doms|haha|lol|burpees|legs); could die for; die for a; to die for
        carry on (with|like this with|training|the)*; cant carry on (with (the|this)|the)
        cant (go|carry) on~(set|session|run|rep|reps|round|hold|with|bar|plank|hang|after|the)
        cant take (it|this|any more|anymore)~(burpee*|planks|reps|sets)
        cant keep going~(set|round|reps|sprints|burpees)
        dont want to live without (coffee|pizza|chocolate|my|the gym)
        wanted to end it at (rep|round|set)*
        end it (early|at|after|there|on|with|with a|a set|the set|all out)
        point in (doing|training)*
        kms~(ran|run|done|on the|bike|ride|cycled|today|rowed|row|walk|walked|swim|swam|at|in|per|
        this)
        [0-9]+ kms; [0-9]+kms; few kms
        (dark place|dark thoughts)~(burpees|set|session|minute|round|hold|plank|rep|hang|on that|
        in that|during|finisher|at (rep|round|set|minute)|last)
        that~dark place; dark place (lol|haha); kill me now; kill me; someone kill me; death by
    """,
    "thinners": """
        blood thinner*; thinners; warfarin; apixaban; eliquis; rivaroxaban; xarelto; anticoag*
        anti coag*; clopidogrel; plavix; edoxaban; heparin; coumadin; dabigatran; pradaxa
        thins my blood; thin my blood; blood thinning; enoxaparin; lixiana; aspirin every day
        daily aspirin
    """,
    "bruise": """
        bruis*; bruise; bruising; black and blue; haematoma; hematoma; purple patch
        bleeding under; purple
    """,
    "weight_drop": """
        (lost|losing|dropped|dropping|lose|shed|shedding|down|loss of|lost about)~(weight|kilo|
        kilos|kg|kgs|[0-9]+kg|stone|pounds|lbs|lb|half a stone)
        weight (loss|is falling|falling|dropping|keeps dropping|is dropping|coming off|
        is coming off|going down|is going down|keeps going down)
        clothes~(hanging off|falling off|too big); getting thinner; losing so much weight
    """,
    "no_reason": """
        without (trying|dieting|meaning|changing|reason|any reason|any change)
        (for )?no (reason|apparent|obvious|real reason); not trying; wasnt trying
        havent (tried|been trying|changed|dieted|been dieting|done anything); not dieting
        not on a diet; unexplained; unexplainably; cant explain; dont know why; no idea why
        not sure why; unintentional*; not on purpose; didnt try
        (eating|eat) (the same|normally|as normal|fine|loads|more|well|like a horse|plenty|properly)
        nothing changed; changed nothing; dont understand; no explanation; not meaning to
        not intentional*; (strange|weird*|worrying*|odd*)
    """,
    "night_sweats": """
        night sweat*; nightsweat*; sweat* (at|in the|through the|all|during the|every) night
        sweat* (buckets |heavily |loads )?(in bed|in my sleep|while asleep)
        (soaked|drenched|soaking|wet|drench*|soak*)~(sheets|bed|pyjamas|pajamas|bedding|night|pjs|
        t shirt at night|duvet|mattress)
        wak* (up )?(drenched|soaked|soaking|sweating|in a sweat|dripping|in sweat|covered in sweat|
        wet with sweat)
    """,
    "unwell": """
        unwell; feel ill; feeling ill; generally ill; really ill; feel rough; feeling rough
        been ill; feel awful; feeling awful; off my food; no appetite; exhausted all the time
        wiped out; run down; feel poorly; poorly; not well; under the weather; feel ropey
        lost my appetite; fatigue* all; generally rotten; so ill
    """,
    "cancer": """
        cancer; tumour*; tumor*; chemo*; lymphoma; melanoma; leukaemia; leukemia; oncolog*
        mastectomy; lumpectomy; radiotherapy; myeloma; in remission; remission; sarcoma
        carcinoma; malignan*; metasta*
    """,
}
