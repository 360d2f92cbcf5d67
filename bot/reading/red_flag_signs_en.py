"""English for the signs themselves: what only a red flag, or a look-alike of one, would say."""

BREATH = {
    "cant_breathe": """
        cant (really |properly |even |hardly |fully )?(breathe|breath)( properly)?; (struggl*|trouble|difficulty|difficult|hard|labour*|fighting|battling|problems|problem|unable) (to |with |in )?(breathe|breath|breathing)
        cant (to )?(catch|get|take|draw)~(breath|air); gasping; wheez*; suffocat*; choking; not enough air
        cant (to )?breathe; breathing (is |feels |has been )?(hard|difficult|laboured|labored|tough|a struggle|shallow|funny|weird|rapid|fast)
        barely (breathe|breathing); fighting for (breath|air); no air; air hunger; cant get (enough )?air
        (breath|breathing) (wont|hasnt|isnt|not|still|never) (settle|settled|settling|come|slow|slowed|recover|recovered|calm|coming|back|hard|right|normal)*
    """,
    "breathless": """
        breathless*; short(ness)? of breath; short breath; short breathed; out of breath; winded; puffed; puffing; panting; sob
        breathing heavy; breathing heavily; breathing hard; shortness of breath; breathing fast; out of puff
    """,
    "breath_in": """
        (when|to|on|every|with|each|take|taking|if|as|whenever) (i |time i |a |my |im |in )?(take a |taking a |try to )?(deep |full |big )?(breathe|breath|breathes|breathing|breaths|inhale|inhaling|inhalation|in breath)( in)?
        breathing in; breathing(?= (hurts|hurt|is painful|really hurts|hurting|is sore)); deep breath*; breathe in; breathe deep*; breath in; inhal*; breathe too deep*; full breath
    """,
    "nose": "nose; nostril*; nasal; through my nose; blocked; bunged up; bracing; breathing drill*; breath work; breathwork; breathing cue*; cue",
}
HEAD = {
    "passed_out": """
        pass out; passed out; passing out; passes out; fainted; fainting; fainte*; blacked out; black out; blacking out; blackout; blacked
        collaps*; keeled over; lost consciousness; losing consciousness; loss of consciousness; unconscious; knocked out
        came (to|round)~(on|floor|ground); woke up on the (floor|ground|mat); i was out (cold|for); out cold
        lost a few seconds; lights (went|going) out; legs (went|gave)~(under|from under) me; found me on the (floor|ground)
        hit the (deck|floor|ground)~(out|cold|woke); syncope; faint; went down like a sack; conked out; flaked out; i was gone for
        everything went (black|dark); next thing i (knew|know|remember)~(floor|ground|on); came round; seizure; had a fit; fitting; convuls*
    """,
    "near": """
        nearly; almost; thought i (was going to|would|might|was about to|was gonna); felt like i (was going to|would|might|could|was about to); about to; close to; feel like i might
        going to; feeling; felt; feel; bit; (like|as if) i; verge of
    """,
    "not_passed_out": """
        (passed out|pass out|collaps*|crash*|passing out|conked out|flaked out|out cold)~(sofa|couch|bed|asleep|pillow|settee|armchair|bath|in front|tv|heap|before 9|by 9|by 10|at 9|early|exhausted|sleep|home)
        faint (line|ache|pain|bruise|twinge|hope|memory|mark|smell|idea|signal|click|hint|glimmer|buzz|praise|heart*|of heart|chance|niggle|soreness)
        collapsible; arch collaps*; (shoulders|hips|form|elbows|lower back|chest|position|wrist|core|arms|elbow|shoulder) (keep |kept |keeps )?(collaps*); collaps* (position|shoulder|wrist|arch|at the)
        collaps* (in|into|on|at) (my|the) (hips|shoulders|elbows|lower back|wrists|bottom); (laptop|phone|app|roof|tent|scrum|bench|chair|shelf|bridge|building)~(collaps*|blacked out|blackout)
        blackout (curtain|curtains|blind|blinds); (legs|arms|body) (just )?collaps*; before i collaps*
        knocked out (of|all|my|the|a|some|another|20|10); knocked out~(reps|sets|round|tournament|cup)
        power cut; blacked out (my|the|a|some|two|three|all)~(diary|calendar|date|dates|days|weeks|windows|week|evenings|slots); passed out (leaflets|flyers|the)*; collaps* (laughing|from laughing|with laughter); black out (training|friday)*
        going to collapse; could collapse; want to collapse; ready to collapse; about to collapse~(haha|session)
    """,
    "dizzy": """
        dizz*; light headed*; lightheaded*; vertigo; spinning; spinny; unsteady; unsteadiness; off balance; off my balance; wobbly; woozy; giddy; double vision; seeing double
        blurred vision; blurry; blurred; vision (is |went |goes |gone )?(blur*|funny|double|weird|off); swaying; room spin*; imbalance; balance (is )?(off|gone|poor|bad)
        cant walk straight; faint; wonky; staggering; unbalanced; feels like im on a boat
    """,
    "confused": """
        confus*; disorient*; disoriented; not making (any )?sense; wasnt making (any )?sense; didnt know where; dont know where i (am|was); delirious; muddled; incoheren*
        foggy; cant (to )?think (straight|clearly); talking nonsense; talking gibberish; cant (to )?remember~; stopped sweating; not sweating; dont remember; didnt remember; rambling
        forgot (where|my|what day|how)~; out of it; not with it; spaced out; slurr*; mumbling; not thinking (straight|clearly); babbling; brain isnt working; head is mush; lost track of where
        no idea where i; couldn think; hazy; woozy; disorientated; acting (strange|weird|odd); seeing things; not myself; who i was
    """,
    "plan_confusion": """
        confus*~(about|by|with|plan|sets|app|session|week|programme|program|instructions|which|whether|weights|form|exercise|video|timetable|schedule|reps|how|message|wording|numbering|tempo)
        (plan|sets|app|session|week|instructions|video|exercise|wording|numbers|programme|tempo)~(confus*)
    """,
    "heat": """
        heat; hot day; heatwave; heat wave; in the sun; sun; boiling; 3[0-9] ?(degrees|c|celsius)*; 4[0-9] (degrees|c|celsius); humid*; sauna; roasting; scorch*; sweltering; baking
        overheat*; overheated; hot yoga; hot room; hot gym; so hot; very hot; really hot; hot out; hot outside; hot garage; sunstroke; heatstroke; heat stroke; too hot; hot in (here|there|the); stifling; 9[0-9] degrees; 10[0-9] degrees; heat exhaustion; hot weather
    """,
    "face_speech": """
        (face|mouth|lip|eye|eyelid|smile|cheek)~(droop*|dropped|dropping|sagg*|lopsided|wonky|numb|fallen|slack|wont move|crooked|uneven|frozen|paraly*|down on one side|gone funny|funny on one side|weird on one side|weak)
        droop* (face|mouth|eye|lip|smile|on one side); slurr* (my |of )?(words|speech|my)*; slurr*; slurring; cant (to )?(speak|talk|get (my|the|any) words)
        (speech|words|talking)~(slurr*|funny|garbled|jumbled|wont come|not coming|came out wrong|coming out wrong|weird|muddled|gone|mixed up|mumbl*|nonsense|strange|affected|thick)
        lost my (speech|words|vision|sight); cant find (my|the) words; words wont come; words (are |were |kept )?com* out (wrong|funny|jumbled|weird|all); cant see (out of|from|in)
        (lost|losing|lose|loss of)~(vision|sight|speech); went blind; half my (face|body); one side of (my )?(face|body|mouth)
        (having|had|have) a (mini )?stroke; signs of a stroke; stroke symptoms; might be a stroke; tongue feels (thick|numb|heavy)
    """,
    "weak_arm_sudden": """
        (arm|leg|hand|side|face|body)~(suddenly|all of a sudden)~(weak|limp|useless|dropped|wont|stopped|heavy|dead|gave|numb|paraly*|floppy|cant)
        (suddenly|all of a sudden)~(weak|weakness|limp|floppy|paraly*|lost (all )?(power|strength|use)|cant (move|lift|feel|use|raise))
        sudden~weak*; (arm|leg|hand|side)~(went|gone|goes|is|has gone|feels) (all |completely |totally )?(limp|floppy|paraly*); (weak|weakness|numb|limp|paraly*)~(one side|left side|right side|whole side)
        (one side|left side|right side|whole side|half (of )?my (body|face))~(weak|weakness|limp|numb|paraly*|wont move|heavy)
        cant (to )?(lift|move|feel) (one|my left|my right|the left|the right|left|right) side; suddenly couldn*; lost (all )?power in my (arm|leg|hand|left|right)
        (arm|leg|hand)~(wont|stopped) (work|working|move|moving|respond*)~(suddenly|out of nowhere|sudden)
        paraly*; one arm drift*
    """,
    "headache": "headache*; head ache*; head pain; pain in (my|the) head; head (is )?(hurt*|pounding|splitting|killing|aching|thumping|throbbing|sore|really hurts); migraine*; head hurts; head feels",
    "worst": """
        worst~(headache|head|pain|ever|life)*; worst; thunderclap; of my life; like (being )?(hit|a bomb|an explosion|someone hit|id been hit|i was hit|ive been hit|i got hit|something hit)*; explod*; exploded; explosive; never had (a headache|one|anything|it)~(like|this|before)
        never (had|felt|known|experienced)~(like|this|such); out of nowhere; came on (in|within) (a )?(second|seconds|flash)*; instantly; sudden; suddenly; all of a sudden; bolt; burst; popped; blinding; in seconds; split second; went off in my head; unlike any; peak*
    """,
    "head_knock": """
        (hit|bang*|bump*|knock*|whack*|smack*|crack*|clonk*|bash*|clunk*|hitting|struck|clock*|cracked|donk*|conk*|thump*|clipped|smash*|clobber*|clatter*)~(my |the |his |back of (my |the )?|side of my )?(head|skull|temple|forehead|noggin)
        (head|skull|forehead|temple)~(hit|bang*|bump*|knock*|smack*|cracked|struck|whack*|bounced|smashed|clipped|collided)
        (bar|kettlebell|dumbbell|weight|plate|ball|barbell|elbow|knee|pole|box|ring|it|band|door|beam|bell|post)~(fell|dropped|landed|hit|smacked|whacked|came down|clipped|struck|caught|swung|snapped|got me)~(head|face|temple|skull|forehead)
        (fell|landed|came down|dropped|crashed|toppled)~(on|onto) (my |the )?(head|face|skull|crown); concuss*; head injury; head knock; knock (to|on) (my|the) (head|noggin)
        (blow|bump|whack|bang|bash|smack|hit|crack|clash|clout) (to|on|of) (my |the )?(back of (my |the )?)?(head|heads|skull); head first; headfirst; head clash*; took~(to|on|off) the (head|temple)
        caught~(in|on) the (head|temple|face); whiplash; head butt*; came off~(head)
    """,
    "not_head_knock": """
        (bang*|hit*|knock*|smack*)~head~(wall|desk|keyboard|brick wall)~(try*|plan|figure|work|with|over|trying|about)*; banging my head against; nail on the head; head hit the pillow; hit the pillow; headbang*
        head down; over my head; off (the top of )?my head; banging headache; bang on; banging tunes; head (is )?(banging|thumping|pounding) (tunes|music)*; banging session; nailed; get my head (round|around); (hit|bang) head on; knock on wood
    """,
    "vomit_memory": """
        vomit*; threw up; throwing up; thrown up; throw up; being sick; been sick; puk*; puked; puking; chuck*( up| my guts)*; sick (twice|three times|once|everywhere|after|a few times)
        was sick; am sick; cant (to )?remember*; dont remember; didnt remember; memory; amnesia; forgot (the|what|how|everything); forgetting; forgetful; no memory; no recollection; blank*; drows*; sleepy; hard to wake; cant stay awake; keep falling asleep; confus*; knocked out
        unconscious; lost consciousness; blacked out; passed out; out cold; slurr*; fluid from; blood from (my )?(ear|nose); seizure*; fit; fitting; disorient*; out for a (second|few|minute)*; double vision; pupils; repeating myself; same question*; lethargic; lost (some )?time; bleeding from (my |the )?(ear|ears)
        keep nodding off; nodding off; so sleepy; not making sense; where i was; dont know what happened; gap in; missing time; sick; saw black; went black
    """,
    "head_signs": """
        headache*; head ache*; head hurts; foggy; fog; fuzzy; dazed; seeing stars; saw stars; stars; dizz*; light hurts; bright lights; light sensitive; sensitive to light; noise; nause*; feel sick; feeling sick; felt sick; cant concentrate; concentrat*; slow; spaced; groggy; ringing; blurr*; off; weird; woozy; head pain; not right; hazy; out of sorts; pounding; unsteady; pressure; lump; egg; rough; vacant
    """,
    "neck_injury": """
        (fell|fall|landed|landing|came down|dropped|crash*|toppled|tumbled)~(on|onto|hurt|injur*|jarred|did|twisted|hit)~neck; (neck)~(injur*|snapped|broke|broken|crunched|jarred|twisted|whiplash|landed|compressed|got crushed|bent (right )?back|jolted|popped|wrenched|cracked loud*|hit)
        (injur*|snapped|broke|broken|jarred|wrenched|crunched|crushed|smashed|jolted|hyperextend*)~neck; whiplash; (bar|weight|barbell|kettlebell|dumbbell)~(fell|dropped|landed|came down)~neck; neck injury; landed on my (head|neck)~neck; landed (right |straight )?on (my |the )?(back of (my |the )?)?neck; broke my neck
        (handstand|fell|fall|slipped|crash|crashed|tackle|tackled|accident|dived|diving|collision|landed)~~neck (pain|hurts|is killing|hurt|really hurts|is really|sore)
        (car|bike) (crash|accident)~~neck
    """,
    "neck_figure": "pain in the neck; neck and neck; breakneck; break neck; crack* (my|your) neck (all|every|like|before|to)*; neck of the woods; up to my neck; neck crack*; break (your|my) neck (to|trying|for)*; (neck|broke my neck) (to|trying)",
    "neck_pain": "neck~(pain*|hurt*|stiff*|sore|ache*|aching|achy|killing|bad|agony|seized|locked|sharp|throb*|tight|burning|twinge*); (pain*|stiff*|sore|ache*|aching|sharp|hurts|throbbing|burning)~neck; neck pain; cricked; crick",
}
HEART = {
    "heart_attack": """
        (having|having a|am having a|getting|had|have|its|its a|be|is it|feels like|felt like|think)~heart attack; cardiac arrest; heart attack (symptoms|signs|right now|now); angina; (pain|ache|aching|pressure|stabbing|hurts|hurting|tightness|squeezing|discomfort|tight)~(heart|my heart)
        heart (hurts|is hurting|aches|is aching|pain|hurting); pain (in|around|near|over) (my |the )?(heart|left chest)
    """,
    "heart_figure": """
        (nearly|almost|practically|near)~heart attack; heart attack (when|seeing|reading|looking|at the|material|on a plate)*; (gave|give|giving|gives)~heart attack; broke~heart; heart (was |is |just )?(broken|breaking|sank|melts|melted|bleeds|of gold); heart aches (for|to|that); heart and soul; heart hurts (for|that|to)
        heart in my mouth; heartbroken; heart (isnt|wasnt|not) in it; (by|learn) heart; heart out; change of heart; heartache; heart attack~(plan|price|bill|saw|reading|programme|haha|lol|jumped|burpees)
        heart goes out; lost heart; take heart; warm* my heart; heart (was )?pumping; heart emoji; bless*
    """,
    "heart_irregular": """
        palpitat*; (heart|pulse|hr|heart rate|heartbeat|heart beat|ticker)~(skip*|flutter*|irregular*|missing|missed|misses|misfir*|jump*|flip*|all over (the place|the shop)|erratic*|uneven*|funny|weird|strange|odd|out of rhythm|off beat|stutter*|arrhythm*|flop*|extra|double|stopping|pausing|paused|wonky|dancing|somersault*|spik* for no|crazy|bonkers|going mad|going nuts|going wild|unsteady|thudd*|bouncing)
        (skipp*|missed|irregular|fluttery|extra|funny|weird|erratic|ectopic|uneven|missing|skips|dropped)~(heart|beat|beats|heartbeat|heartbeats|pulse|rhythm|heart beat); ectopic*; arrhythm*; afib; atrial; flutter* in (my )?chest; fluttering; heart flutter*; chest flutter*; thump* in my chest; chest~flutter*; svt
    """,
    "heart_fast": """
        (heart|pulse|hr|heart rate|heartbeat|heart beat)~(rac*|pounding|pound|hammering|thump*|beating (so |really |very |too )?(fast|hard|quick*)|through the roof|sky high|going (so |really |very |too )?fast|1[2-9][0-9]|too fast|fast|banging|high|going like)
        (racing|pounding|hammering|thumping) heart; tachy*
    """,
    "heart_delight": "skipp* a beat (when|with|at|seeing|as)*~(saw|see|price|email|seeing|plan|message|excite*|joy|love|looked|news|thought|heard)*; heart flutter* (when|at) (i |the )?(saw|see|thought|sight); excited; butterflies; in love; fluttering (eyes|eyelids|flag|flags|kick|kicks); flutter kick*; skip* (a )?(beat with|session|day|rope|set|week|ropes); heart jumped when; scared me; jump scare; heart rate (monitor|strap|zone|zones|watch)",
    "sweat": "sweat*; clammy; cold sweat*; pouring with sweat; drenched; grey; gray; pale; ashen",
    "cold_sweat": "cold sweat*; clammy; sweating (for no reason|at rest|loads|buckets|a lot|like mad); came over~(sweaty|hot); broke out in a; sweats; sweaty; sweating; grey; ashen; pale",
    "sick": "sick; nause*; nauseous; nauseated; vomit*; threw up; queasy; throw up; being sick; sicky; puke*; faint; light headed; lightheaded; dizzy; dizziness",
    "indigestion": "indigestion; heartburn; heart burn; acid reflux; reflux",
}
LIMB = {
    "numb": """
        numb; numbs; numbed; numbness; numbish; numbing; tingl*; pins and needles; pins n needles; pins needles; pins and needle; pin and needles; pin and needle; tingly; prickl*; prickling; paraesth*; paresth*; buzzing; fizzing; fizzy; electric shock*; electric feeling*; electricity; zapping; zaps; dead feeling; no feeling; no sensation; lost (all )?(feeling|sensation); losing (feeling|sensation); loss of (feeling|sensation); lack of (feeling|sensation); (cant|dont|barely|hardly) (to )?(really |properly |even )?feel (my|the|a thing|anything|some|these|two|three|half)~(hand|hands|finger|fingers|thumb|arm|arms|fingertips|pinky|leg|legs|foot|feet|toes|wrist|shoulder|skin|side|face)
        (arm|arms|hand|hands|finger|fingers|thumb|leg|foot|fingertips)~(went|goes|go|going|gone|fell|falls|falling|feels|feel|is|are) (completely |all |really |totally )?(to sleep|asleep|dead); (arm|arms|hand|hands|fingers)~(fallen asleep|asleep|gone to sleep)
        (feeling|sensation) (is |has |still )?(gone|lost|hasnt come back|not come back|isnt back|dull*|reduced|strange|different|weird|isnt right|not right); half asleep (hand|arm|fingers); cant tell (hot|what im touching)*; ants (crawling|under)*; cotton wool
    """,
    "numb_figure": """
        mind numbing*; mind numbingly; numbingly; numb (with|from) (boredom|shock|grief|excitement|laughing|sitting|cold); comfortably numb; bum (is |went |goes |was )?numb; numb (bum|backside|arse|ass|butt); (backside|arse|butt|ass)~numb; emotionally numb; numbing (cream|spray|gel|sensation|myself); brain (is |went |feels )?numb
        numb skull; dentist*; numb the pain; tingl* (scalp|with excitement|sensation of)*; spine tingl*; tingl* with (pride|excitement); buzzing (after|from|about|for|with|off|at|that|today|to|i|lol|haha|now); (absolutely|so|im|still|proper|was|phone|really|watch|fly|feeling|totally|well|the|pure) buzzing; buzzing; phone buzz*; fizzy (drink|drinks|water|pop); beta alanine; pre workout; preworkout; dead (hang|hangs|lift|lifts|stop)*; mint*; spicy; chilli*; dead (after|from)
        (cant|dont) feel my (arms|legs|shoulders|body|face|abs) (haha|lol|lmao|after|from|today haha|anymore haha); (arms|legs) (are|feel|were|is|went|feel completely|are absolutely|are so|r) dead; deadlift*; alive and tingling; tingl* muscles; goosebumps
    """,
    "numb_strong": "numb; numbs; numbed; numbness; numbish; numbing; tingl*; pins and needles; pins n needles; paraesth*; paresth*; electric shock*; prickl*; tingly; no feeling; no sensation; lost (all )?(feeling|sensation); (cant|dont) (to )?(really )?feel (my|the)~(hand|finger|fingers|thumb|arm|hands|leg|foot|fingertips)",
    "weak": """
        weakness (in|down|of|on|all down|through|to)~(arm|arms|hand|hands|grip|wrist|fingers|leg|legs|shoulder|shoulders|side|forearm|thumb|elbow|limb); (arm|arms|hand|hands|wrist|fingers|shoulder|leg|legs|thumb|side|elbow|grip|forearm|bicep|tricep)~(gone weak|went weak|going weak|getting weaker|suddenly weak|is weak|are weak|feels weak|feel weak|so weak|really weak|very weak|weakness|weak since|become weak|became weak|weak and|weak now|weak all|no strength|no power|lost strength|lost power|lost its strength|has no strength|gives way|gave way|keeps giving|not working|wont work|stopped working|useless|wont respond|doesnt work|isnt working|clumsy|floppy|limp|wont close|wont open|wont grip)
        (new|sudden|unusual|strange|weird|unexplained|noticeable|odd) weak*; weak (arm|hand|grip|wrist|shoulder|fingers|leg)~(since|today|now|suddenly|this morning|all day|woke); lost~(strength|power|use|grip|control) (in|of|from) (my |the |both )?(left |right )?(arm|arms|hand|hands|grip|wrist|fingers|thumb|leg|legs|shoulder)
        (no|zero|lost all|loss of|lost|losing|hardly any|less) (strength|power|control|use)~(in|of) (my |the |both )?(left |right )?(arm|hand|grip|wrist|fingers|hands|arms|leg|legs|shoulder|thumb); (dropping|drop|dropped|keep dropping|dropping) (things|cups|stuff|my (phone|cup|keys|mug|fork|toothbrush)|everything|mugs|plates|a cup|the cup|keys|my)~; cant (to )?(hold|grip|squeeze|open|turn|do up|button|pick up|make)~(cup|mug|key|keys|jar|pen|phone|door|buttons|button|toothbrush|fist|kettle|spoon|fork|bottle|handle|steering|anything|zip|glass|shirt|things|pan|tap|plate|it)
        (wrist|foot|hand) drop; legs (are |feel |have gone |going |went )?(weak|clumsy|heavy and weak|giving way|wobbly|like jelly|unsteady); hands (are |feel |have gone |getting )?(clumsy|weak|useless)
    """,
    "clumsy": "clumsy; clumsiness; fumbl*; dropping things; electric shock*; shock* down; unsteady; wobbly; stumbl*; tripping; heavy; giving way; cant walk; weak*; jelly; numb; numbs; numbed; numbness; numbish; numbing; tingl*; pins and needles; pins n needles; wont work; dont work; not working; stiff legs; buckl*; no feeling; cant feel; lost feeling",
    "cant_lift": """
        cant (to )?(even |really |physically |actually |properly |now )?(lift|raise|elevate|get|move|use)~(my |the |this |that |left |right |bad |sore |injured )(arm|shoulder)( up| above| over| past| out| at all| anymore| to| higher| overhead)*; arm (just |simply )?(wont|doesnt|does not|will not|refuses to|cant|not|wouldnt) (to )?(even )?(lift|raise|go up|go above|go over|come up|go past|move|get up|elevate|go)
        cant (to )?(lift|raise|get|move) it (up|above|over|past|at all|out|higher|sideways|anymore|away|overhead|to shoulder|more than); (lost|no) ability to (lift|raise|move); arm (hangs|hanging|just hangs|hung|is hanging) (limp|there|down|by my side|useless*); cant (to )?(lift|raise) (my )?(left|right)( one| arm)?
        cant (to )?(reach|brush my hair|comb|put (my|a) (shirt|coat|top|jacket) on|wash my hair)~(arm|shoulder|overhead|above|hair)*; shoulder (just )?(wont|doesnt) (lift|raise|move|go up|work); cant (to )?(lift|raise|move|use) (my |the )?(left |right )?(arm|shoulder)
        impossible to (lift|raise) (my|the)~(arm|shoulder); (not able|unable|struggl*) to (lift|raise)~(arm); arm stuck; no active lift; drop arm
    """,
    "arms_plural": "arms; both arms; shoulders; t rex; trex",
    "loss": """
        cant (to )?(even |really |properly |now )?(lift|move|bend|straighten|grip|use|raise|push|press|twist|turn|hold|make|put weight|extend|flex|rotate|pick|pull|close|open|do anything)*; (wont|doesnt|refuses to) (lift|move|bend|straighten|grip|raise|work|go up|extend|flex|rotate|turn|push)*; no (strength|power|movement|grip); zero (strength|power|grip); weak; weakness; weaker; lost (all )?(strength|power|movement|grip|function|use)*; loss of (strength|power|movement|function|grip); useless; hangs; hanging; limp
        bruis*; black and blue; purple; (changed|different|funny|weird|wrong|odd|strange|new|not the same) shape; shape (has )?(changed|looks|is|gone|different)~; lump; bulg*; bunch* up; balled up; popeye; gone flat; dent; dented; hole; gap; deform*; misshap*; dropped; rolled up; hollow; swollen; swelling; swelled; ballooned; out of shape; looks (wrong|weird|odd|different|funny); cant (to )?(lift|raise|move)~arm; cave*; indent*; muscle (is |has )?(moved|gone|rolled|bunched|slid*|dropped|balled); one side lower
    """,
    "pop": """
        pop; popped; popping; snap; snapped; snapping; tear; tore; torn; tearing; rip; ripped; ripping; twang; pinged; ping; gunshot; crunch; crunched; ruptur*; crack; cracked; clunk; went bang; gave way; detach*; loud bang; a bang; pulled off; (something|it|tendon|muscle|bicep|pec) (went|gave|go|give|let go); thwack; sproing
    """,
    "pop_event": """
        (felt|heard|hear|feel|there was|big|loud|massive|huge|audible|sudden|proper|horrible|nasty|sickening|made)~(pop|snap|tear|rip|crack|crunch|twang|ping|tearing|ripping|popping|bang|clunk|go|give|snapping)
        (something|it|bicep|pec|shoulder|elbow|tendon|wrist|muscle|tricep|chest|thumb|finger|forearm|arm|cuff|hamstring|calf)~(popped|snapped|tore|ripped|pinged|ruptured|twanged|went pop|went bang|just went|went|gave way|torn|cracked|crunched|detached); (tore|torn|ripped|ruptured|snapped|detached)~(bicep|biceps|pec|pecs|shoulder|tendon|muscle|cuff|tricep|triceps|something|elbow|ligament|wrist|chest|arm|forearm|calf|lat)
    """,
    "pop_harmless": """
        (always|usually|often|sometimes|constantly|normally|regularly|generally)~(pop*|click*|crack*|crunch*|snap*); (pop*|click*|crack*|clunk*)~(always|usually|sometimes|no pain|painless|painlessly|doesnt hurt|without pain|not painful|not sore|doesnt bother|like normal|as usual|every rep|a lot|a bit|but no)
        pop (by|over|round|into|to|out to|down|a|up|on|along|it|quiz|music|corn|goes|that|me|the|them|one); popped (in to|in and|by|over|round|into|to|down|along|on|the kettle|my head|a|out to|out for|up) (the|a|my|to|and|for|at|on|there|here|her|his)*; popcorn; pop up; snapp*~(photo|pic|picture|video|selfie|band|chat|back into|up|at|his|her|of|out of it); snap (out|chat|a|of|up|decision|shot); snapchat; band (snapped|ripped|broke|tore|pinged|popped|twanged)~; (band|strap|shirt|shorts|shoelace|leggings|glove|gloves|rope|tape|t shirt|tshirt|callus|callous|skin|bag|sole|calluses|sleeve|grips|ticket|page|nail)~(snap*|tore|torn|rip*|tear*|popp*|ping*|cracked); (tore|ripped|torn|tear|snapped|ripping|cracked|rip)~(band|callus|callous|skin|shirt|shorts|page|glove|up|through|it up|into|a strip|nail|shoelace|on|strap|open|hands|phone|screen|palm|blister)
        tearing up; in tears; tears; burst into; ripped (abs|physique|body|now|lately|like)*; getting ripped; looking ripped; look ripped; crack* (on|up|a|me|at|open|the|through|into|down|it|knuckles|my (knuckles|back|neck|phone)); cracking; cracked it; got cracked; crack at it; crack of; crunches; ping me; went (well|great|ok|fine|good|to|for|up|down|really|better|smoothly|through|all|a|home|easy|easier|perfectly|back|badly|so|much|as|according|past|quickly|too|into|and|over|very|fast|not|on|off|round|out|swim*|running)
        clicky; clicks; click; clicking; give (it|me|up|a|you)
    """,
    "visible_out": """
        out of (place|its socket|the socket|socket|joint|position|the joint|alignment|its place); come out of~(socket|place|joint); (popped|came|come|comes|slipped|slid|jumped|pulled|pop|pops|knocked|sticking|stuck|poking|poked|pokes|sticks|hanging|pushed|gone|went|goes|is|looks|still|bulging|forced|yanked) (right |clean |completely |straight |all the way |partly |halfway |half )?out( of (its |the |my )?(socket|place|joint))?
        deform*; misshap*; (wrong|weird|funny|odd|strange|different|not right|bad|square|squared off) (shape|angle|way|position|place); bent (the wrong way|backwards|sideways|back|out of shape|at a|funny); (at|in) (a|an|some) (weird|funny|odd|strange|wrong|bad|horrible|unnatural|crazy|mad|bad|awkward|right|nasty)~(angle|position|shape); looks (out|wrong|dislocated|bent|squared|deformed|crooked|wonky|weird|square|like its out|out of); not where it (should|is supposed|ought); (bone|bump|lump)~(sticking|poking|where); isnt where it (should|is supposed|ought|normally)*; isnt (in|in place|in the right place|in its socket|sitting right|straight); not in place; not (in|in its|in the) socket; crooked; wonky; facing the wrong; hanging (weird|wrong|out|funny|off|low*); pointing (the wrong|sideways|up|backwards|wrong|off)*; wont go back*; (cant|couldn) (to )?(get|put|pop|push) it back*; stuck out; visibly; is dislocated; still dislocated; still out; squared off; dangling; twisted round; wrong direction
    """,
    "dislocate": """
        dislocat*; dislocate; dislocation; sublux*; subluxed; (popped|came|come|comes|slipped|slid|jumped|pulled|pop|pops|slips|went|pushed|clunked|moved|shifted|fell|rolled|slide|slip) (right |clean |partly |halfway |half |briefly |almost |slightly |kind of |sort of )?out( of| and| for| then|$)*; out of (its |the |my )?(socket|joint|place); (slipped|slid|shift*|clunk*|moved|slip|slips)~(socket|joint|out|forward|forwards); put~shoulder out; put my (shoulder|finger|thumb|elbow) out; threw my (shoulder) out
    """,
    "pop_out_figure": "(popped|pop|popping|pops|nipped|nip|went|going|go|goes|slipped|came|come) out (to (the |get |grab |see |a |work|town|buy|meet)|shopping|for (a |some |the )?(walk|run|lunch|coffee|drink|drinks|dinner|milk|food|errand|jog|ride|meal|bit of air|air|fresh air|pint|curry|day)|of (the )?(house|office|work|gym|class|bed|meeting|retirement|breath|time|my mind|nowhere|town|control|energy|juice|steam|reps|the door|order|range|surgery|hospital)|tonight|with (the|my) (girls|lads|kids|dog|mates|friends)|fine|well|great|good|better|ok|strong|stronger|easier|lower|higher|tops|swinging)|stuck out like|veins~(popp*|sticking|stuck|bulging)|eyes~pop*|pull* out (all|of the (session|race|class|event))|came out (as|tops|swinging)|out of (the way|my way|office|comfort)",
    "urine_dark": """
        (urine|pee|wee|piss|peeing|weeing|pissing|wees|pees|peed|weed|pissed)~~(dark|brown|brownish|cola|coke|coca|tea|black|red|rusty|rust|pink|reddish|blood|bloody|coffee|port|amber|orange|like tea|stout|guinness|pepsi|whisky|iced)
        (dark|brown|brownish|cola|coke|tea|black|red|rusty|rust|pink|coffee|reddish|bloody|cola coloured|blood in|bloody|orange)~(urine|pee|wee|piss|peeing|weeing|wees); blood when i (pee|wee|go)*; peeing (blood|coke|cola|tea|brown|dark|red); (going|went|been) to the (loo|toilet|bathroom)~(dark|brown|cola|coke|tea coloured|black)
    """,
    "urine_harmless": "beetroot; beet; beets; beet juice; vitamin*; rhubarb; pale yellow; straw; clear",
    "cant_straighten": """
        cant (to )?(fully |really |even |completely |properly |quite |actually )?(straighten|extend|unbend|fully straighten)~(arm|arms|elbow|elbows|it|them|out|fully|at all|left|right)*; (elbow|elbows|arm|arms)~(wont|dont|cant|not|doesnt|refuse to) (fully |even |completely )?(straighten|extend|unbend|go straight|fully); (stuck|locked) (bent|at 90|at ninety|in a bent|in the bent)*; arms? stuck (bent|at); trex arms; t rex arms; elbow* (is |are )?(stuck|locked) bent; stuck bent
        straighten (my|the) (arm|arms|elbow|elbows)~(cant|impossible|no chance|at all); unable to straighten
    """,
    "fever": """
        fever; feverish; a temperature; high temp; high temperature; running a temp*; temp (of|is|was|at)? ?(3[89]|40|10[0-4]); temperature (of|is|was|at|over|above)? ?(about |around )?(3[89]|40|10[0-4]); (3[89]|40)( [0-9])? ?(degrees|c|celsius|temp|temperature|fever); chills; rigors; shivers; shivering and; (shivering|shivery|hot and cold); burning up; got a temp*; have a temp*; with a temp*; sweats and chills
    """,
    "not_fever": "hay fever; hayfever; cabin fever; fever pitch; disco fever; saturday night fever; gym fever; room temp*; water temp*; body temp*; temperature (outside|in (the )?(gym|garage|room)|dropped); race fever; baby fever; gold fever; spring fever",
    "fall": "fell; fall; falling; fallen; slipped; tripped; landed on; landed; came off; crash; crashed; tumbled; stumbled; went over; bailed; hit the (floor|ground|deck); slip; faceplant*; foosh; stacked it; came a cropper; took a tumble; thrown off; knocked off; off my bike; tumble",
    "fall_figure": "fall* (apart|asleep|behind|short|off the wagon|out|in love|on a|on the|into place|back|through|season|away|for); fell (asleep|behind|apart|short|in love|off the wagon|out with|back|on my birthday|into|through|for it); fall is; autumn; fell to pieces; landed (a|the|my)( new)? (job|deal|role|kick|flip)*; slipped (my mind|up|behind|into|a|in a|on my|out|disc); crash diet; crashed (out|early|on the sofa|hard)",
    "lost_grip": "cant (to )?(grip|hold|make a fist|squeeze|grab|pick up|close|grasp|clench|bend); no grip; lost (my |all )?grip; lost grip strength; grip (is |has )?(gone|weak|hurts|lost|rubbish|useless|poor|terrible|non existent|shot|zero); weak grip; wont grip; wont close; grip strength (is )?(gone|down|zero)*; loss of grip; not able to grip; hurts to grip; barely grip; grip gone",
    "pump": "pump; pumped; pumps; arm pump; forearm pump; after climbing; pump was; swole; hench; jacked; gains; vascular*; massive pump; look huge; looking huge; getting big*; bigger (than|now|arms)~(last|before|year|month|ever)",
}
OTHER = {
    "bladder": """
        (lost|lose|losing|loss of|no|cant|lack of|without|less|not in|poor|cant)~control (of|over|when)? ?(my |the )?~(bladder|bowel|bowels|pee|wee|bladder or|peeing|toilet|poo|down there); cant (to )?(control|hold|feel)~(bladder|bowel|bowels|pee|wee|urine|poo|when i need|myself peeing|water); cant (to )?(pee|wee|urinate|pass water|pass urine|empty my|go to the toilet|start peeing|go for a wee|feel when); wet myself; wetting myself; wet the bed; wetting the bed; peed myself; pissed myself; weed myself; soiled; soiling; pooped myself; pooed myself; shat myself; shit myself; crapped myself; messed myself; incontinen*; (bladder|bowel|bowels)~(control|accident|gone|wont|stopped|not working|leak*|numb|problem*|weird|numbness|hold|let go); (leak*|leaking)~(urine|pee|wee|bladder|poo); accidents? (in my pants|on the way to the loo|down below); (numb|no feeling|tingl*|lost feeling|cant feel)~(between my legs|saddle|groin|genital*|crotch|private*|down below|down there|undercarriage|inner thighs|bum and|backside and|when i wipe|toilet)
        (between my legs|saddle area|groin|genitals|crotch|privates|down there)~(numb|no feeling|tingl*|cant feel); saddle numb; cant tell when i need (to|the)~; not been able to (pee|wee)
    """,
    "bladder_figure": "(laugh*|giggl*|funny|hilarious|haha|lol)~(wet|peed|pissed|weed|pee|pissing|wetting)*; (wet|peed|pissed|weed|shit|shat|crapped|pee|piss|wee|shitting|pissing|wetting|peeing|crap) (myself|ourselves) (laughing|with laughter|when|at|over|before|thinking|watching|at the|reading|about|that|giggling|with (fear|excitement|joy)|lol|haha); (nearly|almost|practically|could have|about to|gonna|going to) (wet|peed|pissed|weed|shit|shat|crapped|pee|piss|wee)*; scared; bricking it",
    "pregnant": "pregnan*; weeks along; expecting a (baby|boy|girl)*; im expecting; trimester; [0-9]+ weeks (pregnant|gone|preg*); preggers; preggo; up the duff; with child; baby bump; antenatal; midwife; gestation; my pregnancy; expecting",
    "bleed": "bleed*; blood; spotting; bled; haemorrhag*; hemorrhag*; clots; gush*; losing blood; brown discharge",
    "overdose": """
        overdos*; od d; odd on; od on; (took|taken|swallowed|had|necked|popped|downed|take|swallow|ate|eaten|taking|chewed|did)~(too many|too much|whole (packet|pack|box|bottle|strip|lot|tub)|(a|the|one|two|three|my) (packet|bottle|strip|box|load|pack|handful|bunch)s? (of|worth)|loads of|a lot of|handfuls of|all (of )?(my|the)|entire|double|triple|lots of|way too|tons of|bunch of|all of the|handful of|fistful of)~(pill*|tablet*|paracetamol|ibuprofen|painkill*|pain killer*|meds|medication|medicine|tylenol|advil|nurofen|codeine|tramadol|insulin|aspirin|sleeping|antidepress*|capsules|dose|panadol|naproxen|acetaminophen|diazepam|drugs|packet|bottle|co codamol|insulin|warfarin|caffeine|blockers)
        (took|taken|swallowed|had|necked|downed|popped|ate) (about |around |like |over |nearly |more than |at least |maybe |some )?(9|1[0-9]|[2-9][0-9]|[1-9][0-9][0-9]|ten|twelve|fifteen|sixteen|twenty|thirty|forty|fifty|dozen|a dozen|dozens)~(pill*|tablet*|paracetamol*|ibuprofen*|painkill*|tylenol|advil|nurofen|codeine|capsules|panadol|aspirin|caffeine|sleeping|antidepress*|co codamol|meds|of them)
        (too many|too much of (my|the)) (pills|tablets|painkillers|paracetamol|ibuprofen|meds|medication|caffeine)~; (exceeded|over|above|past|doubled|tripled|way over)~(max|maximum|daily|recommended|safe) (dose|amount|limit)~; poison* myself; took the whole (bottle|packet|box|pack|lot|strip)
    """,
    "overdose_figure": "overdos*~(coffee|chocolate|sugar|pizza|burpees|cake|carbs|push ups|caffeine haha|netflix|sun|volume|biscuits|cheese|training|pull ups|protein|work|turkey|food|vitamin d|cute*|planks|press ups|cardio); (od|odd)~(coffee|chocolate|pizza|cake|carbs|sugar|number|numbers|sets); odd; chocolates",
    "self_harm": """
        kill myself; killing myself; end my life; ending my life; end it all; ending it all; end things for good; take my own life; taking my own life; take my life; suicid*; want to die; wanted to die; wish i (was|were) (dead|never born|not here|gone); wish i (could )?(just )?(not wake up|die|disappear|wasnt here|hadnt woken up); rather be dead; better off (dead|without me); dont want to (be here|live|be alive|wake up|exist|go on|carry on (living|anymore|any more)|be around|be on this); not want to (live|be here|be alive|wake up|exist|go on); no (reason|point|will|desire) (to|in) (live|living|be here|being here|carry on|carrying on|going on|go on|be alive|being alive|existing); (cut|cutting|hurt|hurting|harm|harming|burn|burning|scratching|punishing) myself (again|on purpose|deliberately|to cope|to feel|badly|because|lately|last night|when i|at night|tonight|intentionally|so i)*; self harm*; selfharm*; harm myself; harming myself; hurt myself on purpose; hurting myself on purpose; cutting myself; cut myself (on purpose|again|deliberately|to)~
        (everyone|everybody|world|they|you|family|people)~(better|happier) (off )?without me; dont see (a|any|the) (point|future|reason|way)~(in|to|living|anymore|any more|out|going on|for me|being here|myself); life (isnt|is not|aint|not) worth (living|it); not worth living; cant (to )?(go on|carry on|do this life|live like this|face (another day|living|life)|take it anymore|take (any|this) (more|anymore)|keep (living|going on)|cope with life|see a way out)( like this| anymore| any more| living)*; think* (about|of) (dying|ending|death|suicide|jumping|ending it|killing myself|hurting myself|not being here|harming myself); thoughts (of|about) (suicide|dying|death|ending|hurting|harming|self|killing|not being|jumping|not wanting); ready to (die|end|go for good); jump (off|in front)~(bridge|train|roof|building|cliff|platform); hang myself; shoot myself; drown myself; overdose on purpose; disappear (for good|forever); dont deserve to live; no longer want to (live|be here|be alive|go on|exist); tired of (living|being alive|life|existing); done with (life|living); (goodbye|farewell|sorry) (everyone|all|forever)~(forever|gone|last|end); give up on life; want it (all )?to (end|be over|stop forever|stop for good); be (better|easier) if i (was|were) (gone|dead|not here|not around)*; if i (died|wasnt here|was gone|disappeared|werent here); hate my life and; want to (end|disappear forever|sleep forever|not wake up|not be here|hurt myself|harm myself|kill|end myself|be dead|go to sleep and never|sleep and not wake); urge to (hurt|harm|cut|kill|jump|end); unalive*; (kms|kys); not (be|being) here (anymore|any more|much longer|tomorrow); never wake up; planning (to|my) (end|suicide|death|kill)~; wrote (a|my) (note|goodbye|suicide|letters)~; said my goodbyes; nothing (to live for|left to live for); dark thoughts; dark place
    """,
    "self_harm_figure": """
        (want|wanted|wanting|ready|going) to die~(burpees|session|squats|round|sets|reps|workout|intervals|sprints|circuit|planks|hills|today|yesterday|hold|during|after|finisher|rounds|pull ups|lol|haha|laughing|heat|embarrassment|of embarrassment|class|set|that|doms); (kill|killing) myself~(burpees|laughing|session|sets|squats|reps|intervals|sprints|gym|hills|workout|training|finisher|planks|circuit|hanging|pull ups|push ups|on the|trying to|with the weights|to finish|to make it|to get|for the|over a); (killing|kill) me; suicide (run|runs|sprint|sprints|drill|drills|set|sets|round|rounds|burpees|grip|shuttles|squad|session|row|push ups|watch party); suicides; suicides (drill|today)*; die of (embarrassment|laughter|boredom|hunger|heat|laughing); dying of (heat|boredom|laughter|hunger|thirst); id rather die than (do|eat|miss|run); shoot myself in the foot; hurt myself (doing|on the|lifting|trying|with the|during|at the|in the|when i|if i|again (doing|lifting|training|if|on|in|like)|because i|when i fell|slipping|gardening|playing); dont want to (hurt|injure) myself; not (to |want to )?hurt myself; cut myself (shaving|cooking|on a|on the|chopping|with a kitchen|some slack|on (my|some|glass)|opening|while|slicing); burnt? myself (on|cooking|ironing|out|with the|making); cutting myself (some|short|shaving); burning myself out; punishing myself (in|at|with) (the )?(gym|burpees|training|extra); jump (off|in front) the (box|bench|bar); jumped off the (box|bench|bar); hang myself (from the bar|on the bar|on the rings|up); wish i was dead~(doms|haha|lol|burpees|legs); could die for; die for a; to die for; carry on (with|like this with|training|the)*; cant carry on (with (the|this)|the); cant (go|carry) on~(set|session|run|rep|reps|round|hold|with|bar|plank|hang|after|the); cant take (it|this|any more|anymore)~(burpee*|planks|reps|sets); cant keep going~(set|round|reps|sprints|burpees); dont want to live without (coffee|pizza|chocolate|my|the gym); wanted to end it at (rep|round|set)*; end it (early|at|after|there|on|with|with a|a set|the set|all out); point in (doing|training)*; kms~(ran|run|done|on the|bike|ride|cycled|today|rowed|row|walk|walked|swim|swam|at|in|per|this); [0-9]+ kms; [0-9]+kms; few kms; (dark place|dark thoughts)~(burpees|set|session|minute|round|hold|plank|rep|hang|on that|in that|during|finisher|at (rep|round|set|minute)|last); that~dark place; dark place (lol|haha)
        kill me now; kill me; someone kill me; death by
    """,
    "thinners": """
        blood thinner*; thinners; warfarin; apixaban; eliquis; rivaroxaban; xarelto; anticoag*; anti coag*; clopidogrel; plavix; edoxaban; heparin; coumadin; dabigatran; pradaxa; thins my blood; thin my blood; blood thinning; enoxaparin; lixiana; aspirin every day; daily aspirin
    """,
    "bruise": "bruis*; bruise; bruising; black and blue; haematoma; hematoma; purple patch; bleeding under; purple",
    "weight_loss": """
        (lost|losing|dropped|dropping|lose|shed|loss of|shedding|down)~(weight|kilo|kilos|kg|[0-9]+ ?kg|[0-9]+kg|stone|pounds|lbs|a stone)~~(without|no reason|not trying|not dieting|unexplained|havent (changed|been trying|tried)|cant explain|dont know why|no idea why|for no|unintentional*|even though|not on purpose|eating (the same|normally|as normal|fine|loads|more)|and (im )?(not|havent)|despite|strange|weird*|worrying|havent dieted|not on a diet|changed nothing|nothing changed|wasnt trying|didnt try|and i (dont|havent|am not|didnt))
        unexplained weight loss; weight (loss|is falling off|falling off|dropping off|keeps dropping|is dropping|dropping|coming off|going down)~(no reason|without|not trying|unexplained|for no|why|havent|trying); unintentional weight loss; losing weight (without|for no|but (im )?not|and (im )?not|and i dont|no reason|and havent|fast without)~; clothes~(hanging off|falling off)~; no appetite and~weight
    """,
    "night_sweats": "night sweat*; nightsweat*; sweat* (at|in the|through the|all|during the|every) night; sweat* (buckets |heavily |loads )?(in bed|in my sleep|while asleep); (soaked|drenched|soaking|wet|drench*|soak*)~(sheets|bed|pyjamas|pajamas|bedding|night|pjs|t shirt at night|duvet|mattress); wak* (up )?(drenched|soaked|soaking|sweating|in a sweat|dripping|in sweat|covered in sweat|wet with sweat)",
    "unwell": "unwell; feel ill; feeling ill; generally ill; really ill; feel rough; feeling rough; been ill; feel awful; feeling awful; off my food; no appetite; exhausted all the time; wiped out; run down; feel poorly; poorly; not well; under the weather; feel ropey; lost my appetite; fatigue* all; generally rotten; so ill",
    "cancer": "cancer; tumour*; tumor*; chemo*; lymphoma; melanoma; leukaemia; leukemia; oncolog*; mastectomy; lumpectomy; radiotherapy; myeloma; in remission; remission; sarcoma; carcinoma; malignan*; metasta*",
}
SIGNS = {**BREATH, **HEAD, **HEART, **LIMB, **OTHER}
