"""English signs of breath, head and neck, and their look-alikes."""

BREATH = {
    "cant_breathe": """
        (breath|breathing)~~(back to normal|come back|came back|not right|isnt right|still off)
        cant (get|find|fill)~(breath|lungs|air); lungs (wont|dont|cant) (fill|work|open)
        fight* for breath; struggl* for breath; trouble breathing
        breathing (is |feels |got |gets )?(tight|restricted|really bad|bad)
        cant (really |properly |even |hardly |fully )?(breathe|breath)( properly)?
        (struggl*|trouble|difficulty|difficult|hard|labour*|fighting|battling|problems|problem|
        unable) (to |with |in )?(breathe|breath|breathing)
        cant (to )?(catch|get|take|draw)~(breath|air); gasping; wheez*; suffocat*; choking
        not enough air; cant (to )?breathe
        breathing (is |feels |has been )?(hard|difficult|laboured|labored|tough|a struggle|shallow|
        funny|weird|rapid|fast)
        barely (breathe|breathing); fighting for (breath|air); no air; air hunger
        cant get (enough )?air
        (breath|breathing) (wont|hasnt|isnt|not|still|never) (settle|settled|settling|come|slow|
        slowed|recover|recovered|calm|coming|back|hard|right|normal)*
    """,
    "breathless": """
        breath is short; struggling for air; hyperventilat*; breathless*; short(ness)? of breath
        short breath; short breathed; out of breath; winded; puffed; puffing; panting; sob
        breathing heavy; breathing heavily; breathing hard; shortness of breath; breathing fast
        out of puff
    """,
    "breath_in": """
        (when|to|on|every|with|each|take|taking|if|as|whenever) (i |time i |a |my |im |
        in )?(take a |taking a |try to )?(deep |full |big )?(breathe|breath|breathes|breathing|
        breaths|inhale|inhaling|inhalation|in breath)( in)?
        breathing in; breathing(?= (hurts|hurt|is painful|really hurts|hurting|is sore))
        deep breath*; breathe in; breathe deep*; breath in; inhal*; breathe too deep*
        full breath
    """,
    "nose": """
        hay fever; hayfever; from (the|a|this|my) cold; with (this|a|my) cold; got a cold
        sinus*; head cold; bit of a cold; this cold; covid last; nose; nostril*; nasal
        through my nose; blocked; bunged up; bracing; breathing drill*; breath work; breathwork
        breathing cue*; cue
    """,
}

HEAD = {
    "passed_out": """
        knocked (myself |me |him )?out (cold|on|when|for a|against|hitting); knocked myself out
        funny turn; went under; out for the count; came around on; dropped like a stone
        fell over unconscious; dropped unconscious
        (pass|passed|passing) (clean|right|completely|fully|straight|totally) out
        came to (with|and (i|everyone|they)|after|lying|in a|surrounded)
        (fell|went|dropped) unconscious; greyed out; grayed out; blanked out; zoned out and fell
        woke up on the (grass|carpet|gym floor); i went down~(black|out|cold); fits; pass out
        passed out; passing out; passes out; fainted; fainting; fainte*; blacked out; black out
        blacking out; blackout; blacked; collaps*; keeled over; lost consciousness
        losing consciousness; loss of consciousness; unconscious; knocked out
        came (to|round)~(on|floor|ground); woke up on the (floor|ground|mat)
        i was out (cold|for); out cold; lost a few seconds; lights (went|going) out
        legs (went|gave)~(under|from under) me; found me on the (floor|ground)
        hit the (deck|floor|ground)~(out|cold|woke); syncope; faint; went down like a sack
        conked out; flaked out; i was gone for; everything went (black|dark)
        next thing i (knew|know|remember)~(floor|ground|on); came round; seizure; had a fit
        fitting; convuls*
    """,
    "near": """
        nearly; almost; thought i (was going to|would|might|was about to|was gonna)
        felt like i (was going to|would|might|could|was about to); about to; close to
        feel like i might; going to; feeling; felt; feel; bit; (like|as if) i; verge of
    """,
    "not_passed_out": """
        (blackout|blackouts)~(street|town|building|area|house|city|village|block|power)
        (passed out|pass out|collaps*|crash*|passing out|conked out|flaked out|out cold)~(sofa|
        couch|bed|asleep|pillow|settee|armchair|bath|in front|tv|heap|before 9|by 9|by 10|at 9|
        early|exhausted|sleep|home)
        faint (line|ache|pain|bruise|twinge|hope|memory|mark|smell|idea|signal|click|hint|glimmer|
        buzz|praise|heart*|of heart|chance|niggle|soreness)
        collapsible; arch collaps*
        (shoulders|hips|form|elbows|lower back|chest|position|wrist|core|arms|elbow|
        shoulder) (keep |kept |keeps )?(collaps*)
        collaps* (position|shoulder|wrist|arch|at the)
        collaps* (in|into|on|at) (my|the) (hips|shoulders|elbows|lower back|wrists|bottom)
        (laptop|phone|app|roof|tent|scrum|bench|chair|shelf|bridge|building)~(collaps*|blacked out|
        blackout)
        blackout (curtain|curtains|blind|blinds); (legs|arms|body) (just )?collaps*
        before i collaps*; knocked out (of|all|my|the|a|some|another|20|10)
        knocked out~(reps|sets|round|tournament|cup); power cut
        blacked out (my|the|a|some|two|three|all)~(diary|calendar|date|dates|days|weeks|windows|
        week|evenings|slots)
        passed out (leaflets|flyers|the)*; collaps* (laughing|from laughing|with laughter)
        black out (training|friday)*; going to collapse; could collapse; want to collapse
        ready to collapse; about to collapse~(haha|session)
    """,
    "dizzy": """
        dizz*; light headed*; lightheaded*; vertigo; spinning; spinny; unsteady; unsteadiness
        off balance; off my balance; wobbly; woozy; giddy; double vision; seeing double
        blurred vision; blurry; blurred
        vision (is |went |goes |gone )?(blur*|funny|double|weird|off); swaying; room spin*
        imbalance; balance (is )?(off|gone|poor|bad); cant walk straight; faint; wonky
        staggering; unbalanced; feels like im on a boat
    """,
    "confused": """
        confus*; disorient*; disoriented; not making (any )?sense; wasnt making (any )?sense
        didnt know where; dont know where i (am|was); delirious; muddled; incoheren*; foggy
        cant (to )?think (straight|clearly); talking nonsense; talking gibberish
        cant (to )?remember~; stopped sweating; not sweating; dont remember; didnt remember
        rambling; forgot (where|my|what day|how)~; out of it; not with it; spaced out; slurr*
        mumbling; not thinking (straight|clearly); babbling; brain isnt working; head is mush
        lost track of where; no idea where i; couldn think; hazy; woozy; disorientated
        acting (strange|weird|odd); seeing things; not myself; who i was
    """,
    "plan_confusion": """
        confus*~(about|by|with|plan|sets|app|session|week|programme|program|instructions|which|
        whether|weights|form|exercise|video|timetable|schedule|reps|how|message|wording|numbering|
        tempo)
        (plan|sets|app|session|week|instructions|video|exercise|wording|numbers|programme|
        tempo)~(confus*)
    """,
    "heat": """
        heat; hot day; heatwave; heat wave; in the sun; sun; boiling
        3[0-9] ?(degrees|c|celsius)*; 4[0-9] (degrees|c|celsius); humid*; sauna; roasting
        scorch*; sweltering; baking; overheat*; overheated; hot yoga; hot room; hot gym; so hot
        very hot; really hot; hot out; hot outside; hot garage; sunstroke; heatstroke
        heat stroke; too hot; hot in (here|there|the); stifling; 9[0-9] degrees; 10[0-9] degrees
        heat exhaustion; hot weather
    """,
    "face_speech": """
        cant~~(speak|talk|speak properly|talk properly)
        face~(strange|weird|funny|tingly|tingling|numb|numbness|paraly*)~; (cant|wont) smile
        smile (is |looks )?(lopsided|wonky|uneven|crooked|one sided)
        talking (funny|rubbish|gibberish|like im drunk); sound* drunk
        words (jumbled|slurred|garbled|mixed up)
        (face|mouth|lip|eye|eyelid|smile|cheek)~(droop*|dropped|dropping|sagg*|lopsided|wonky|numb|
        numbness|fallen|slack|wont move|crooked|uneven|frozen|paraly*|down on one side|gone funny|
        funny on one side|weird on one side|weak)
        droop* (face|mouth|eye|lip|smile|on one side); slurr* (my |of )?(words|speech|my)*
        slurr*; slurring; cant (to )?(speak|talk|get (my|the|any) words)
        (speech|words|talking)~(slurr*|funny|garbled|jumbled|wont come|not coming|came out wrong|
        coming out wrong|weird|muddled|gone|mixed up|mumbl*|nonsense|strange|affected|thick)
        lost my (speech|words|vision|sight); cant find (my|the) words; words wont come
        words (are |were |kept )?com* out (wrong|funny|jumbled|weird|all)
        cant see (out of|from|in); (lost|losing|lose|loss of)~(vision|sight|speech); went blind
        half my (face|body); one side of (my )?(face|body|mouth)
        (having|had|have) a (mini )?stroke; signs of a stroke; stroke symptoms
        might be a stroke; tongue feels (thick|numb|numbness|heavy)
    """,
    "weak_arm_sudden": """
        (arm|leg|hand|side|face|body)~(suddenly|all of a sudden)~(weak|limp|useless|dropped|wont|
        stopped|heavy|dead|gave|numb|numbness|paraly*|floppy|cant)
        (suddenly|all of a sudden)~(weak|weakness|limp|floppy|paraly*|lost (all )?(power|strength|
        use)|cant (move|lift|feel|use|raise))
        sudden~weak*
        (arm|leg|hand|side)~(went|gone|goes|is|has gone|feels) (all |completely |totally )?(limp|
        floppy|paraly*)
        (weak|weakness|numb|numbness|limp|paraly*)~(one side|left side|right side|whole side)
        (one side|left side|right side|whole side|half (of )?my (body|face))~(weak|weakness|limp|
        numb|numbness|paraly*|wont move|heavy)
        cant (to )?(lift|move|feel) (one|my left|my right|the left|the right|left|right) side
        suddenly couldn*; lost (all )?power in my (arm|leg|hand|left|right)
        (arm|leg|hand)~(wont|stopped) (work|working|move|moving|respond*)~(suddenly|out of nowhere|
        sudden)
        paraly*; one arm drift*
    """,
    "headache": """
        headache*; head ache*; head pain; pain in (my|the) head
        head (is )?(hurt*|pounding|splitting|killing|aching|thumping|throbbing|sore|really hurts)
        migraine*; head hurts; head feels
    """,
    "worst": """
        hit me; in (a|one|under a) (second|flash|moment|instant|minute); severe; excruciating
        horrendous; unbearable; agonising; agonizing; massive
        most (awful|painful|terrible|horrible|intense|severe|violent|vicious); crippling
        knocked me sideways; worst~(headache|head|pain|ever|life)*; worst; thunderclap
        of my life
        like (being )?(hit|a bomb|an explosion|someone hit|id been hit|i was hit|ive been hit|
        i got hit|something hit)*
        explod*; exploded; explosive; never had (a headache|one|anything|it)~(like|this|before)
        never (had|felt|known|experienced)~(like|this|such); out of nowhere
        came on (in|within) (a )?(second|seconds|flash)*; instantly; sudden; suddenly
        all of a sudden; bolt; burst; popped; blinding; in seconds; split second
        went off in my head; unlike any; peak*
    """,
    "head_knock": """
        headbutt*; head butt*; nutted (the|a) (bar|rig|wall|door|beam); head met
        (dumbbell|kettlebell|bar|plate|weight|barbell|ball|box)~(to|on|in|against) (the |my )?(head|
        face|skull|temple)
        walked into~head; (dunt|dint|whallop*|wallop*|ding*|skelp*)~head
        (knock|hit|bang|bump)~(to|on|off) (my |the )?head
        head~(off|against|on|into) (the|a) (rig|bar|floor|wall|rack|bench|post|beam|door|box)
        (hit|bang*|bump*|knock*|whack*|smack*|crack*|clonk*|bash*|clunk*|hitting|struck|clock*|
        cracked|donk*|conk*|thump*|clipped|smash*|clobber*|clatter*)~(my |the |his |back of (my |
        the )?|side of my )?(head|skull|temple|forehead|noggin)
        (head|skull|forehead|temple)~(hit|bang*|bump*|knock*|smack*|cracked|struck|whack*|bounced|
        smashed|clipped|collided)
        (bar|kettlebell|dumbbell|weight|plate|ball|barbell|elbow|knee|pole|box|ring|it|band|door|
        beam|bell|post)~(fell|dropped|landed|hit|smacked|whacked|came down|clipped|struck|caught|
        swung|snapped|got me)~(head|face|temple|skull|forehead)
        (fell|landed|came down|dropped|crashed|toppled)~(on|onto) (my |the )?(head|face|skull|crown)
        concuss*; head injury; head knock; knock (to|on) (my|the) (head|noggin)
        (blow|bump|whack|bang|bash|smack|hit|crack|clash|clout) (to|on|of) (my |the )?(back of (my |
        the )?)?(head|heads|skull)
        head first; headfirst; head clash*; took~(to|on|off) the (head|temple)
        caught~(in|on) the (head|temple|face); whiplash; came off~(head)
    """,
    "not_head_knock": """
        (bang*|hit*|knock*|smack*)~head~(wall|desk|keyboard|brick wall)~(try*|plan|figure|work|with|
        over|trying|about)*
        banging my head against; nail on the head; head hit the pillow; hit the pillow
        headbang*; head down; over my head; off (the top of )?my head; banging headache; bang on
        banging tunes; head (is )?(banging|thumping|pounding) (tunes|music)*; banging session
        nailed; get my head (round|around); (hit|bang) head on; knock on wood
    """,
    "vomit_memory": """
        keep forgetting; cant stop being sick; threw it all up; vomit*; threw up; throwing up
        thrown up; throw up; being sick; been sick; puk*; puked; puking; chuck*
        sick (twice|three times|once|everywhere|after|a few times); was sick; am sick
        cant (to )?remember*; dont remember; didnt remember; memory; amnesia
        forgot (the|what|how|everything); forgetting; forgetful; no memory; no recollection
        blank*; drows*; sleepy; hard to wake; cant stay awake; keep falling asleep; confus*
        knocked out; unconscious; lost consciousness; blacked out; passed out; out cold; slurr*
        fluid from; blood from (my )?(ear|nose); seizure*; fit; fitting; disorient*
        out for a (second|few|minute)*; double vision; pupils; repeating myself; same question*
        lethargic; lost (some )?time; bleeding from (my |the )?(ear|ears); keep nodding off
        nodding off; so sleepy; not making sense; where i was; dont know what happened; gap in
        missing time; sick; saw black; went black
    """,
    "head_signs": """
        headache*; head ache*; head hurts; foggy; fog; fuzzy; dazed; seeing stars; saw stars
        stars; dizz*; light hurts; bright lights; light sensitive; sensitive to light; noise
        nause*; feel sick; feeling sick; felt sick; cant concentrate; concentrat*; slow; spaced
        groggy; ringing; blurr*; off; weird; woozy; head pain; not right; hazy; out of sorts
        pounding; unsteady; pressure; lump; egg; rough; vacant
    """,
    "neck_injury": """
        whiplash*
        (fell|fall|landed|landing|came down|dropped|crash*|toppled|tumbled)~(on|onto|hurt|injur*|
        jarred|did|twisted|hit)~neck
        (neck)~(injur*|snapped|broke|broken|crunched|jarred|twisted|whiplash|landed|compressed|
        got crushed|bent (right )?back|jolted|popped|wrenched|cracked loud*|hit)
        (injur*|snapped|broke|broken|jarred|wrenched|crunched|crushed|smashed|jolted|
        hyperextend*)~neck
        whiplash; (bar|weight|barbell|kettlebell|dumbbell)~(fell|dropped|landed|came down)~neck
        neck injury; landed on my (head|neck)~neck
        landed (right |straight )?on (my |the )?(back of (my |the )?)?neck; broke my neck
        (handstand|fell|fall|slipped|crash|crashed|tackle|tackled|accident|dived|diving|collision|
        landed)~~neck (pain|hurts|is killing|hurt|really hurts|is really|sore)
        (car|bike) (crash|accident)~~neck
    """,
    "neck_figure": """
        pain in the neck; neck and neck; breakneck; break neck
        crack* (my|your) neck (all|every|like|before|to)*; neck of the woods; up to my neck
        neck cracks; break (your|my) neck (to|trying|for)*; (neck|broke my neck) (to|trying)
    """,
    "neck_pain": """
        neck~(pain*|hurt*|stiff*|sore|ache*|aching|achy|killing|bad|agony|seized|locked|sharp|
        throb*|tight|burning|twinge*)
        (pain*|stiff*|sore|ache*|aching|sharp|hurts|throbbing|burning)~neck; neck pain; cricked
        crick
    """,
}
