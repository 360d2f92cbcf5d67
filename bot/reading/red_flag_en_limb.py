"""English signs of arms and legs, and their look-alikes."""

LIMB = {
    "numb": """
        numb; numbs; numbed; numbness; numbish; numbing; tingl*; pins and needles
        pins n needles; pins needles; pins and needle; pin and needles; pin and needle; tingly
        prickl*; prickling; paraesth*; paresth*; buzzing; fizzing; fizzy; electric shock*
        electric feeling*; electricity; zapping; zaps; dead feeling; no feeling; no sensation
        lost (all )?(feeling|sensation); losing (feeling|sensation); loss of (feeling|sensation)
        lack of (feeling|sensation)
        (cant|dont|barely|hardly) (to )?(really |properly |even )?feel (my|the|a thing|anything|
        some|these|two|three|half)~(hand|hands|finger|fingers|thumb|arm|arms|fingertips|pinky|leg|
        legs|foot|feet|toes|wrist|shoulder|skin|side|face)
        (arm|arms|hand|hands|finger|fingers|thumb|leg|foot|fingertips)~(went|goes|go|going|gone|
        fell|falls|falling|feels|feel|is|are) (completely |all |really |totally )?(to sleep|asleep|
        dead)
        (arm|arms|hand|hands|fingers)~(fallen asleep|asleep|gone to sleep)
        (feeling|sensation) (is |has |still )?(gone|lost|hasnt come back|not come back|isnt back|
        dull*|reduced|strange|different|weird|isnt right|not right)
        half asleep (hand|arm|fingers); cant tell (hot|what im touching)*
        ants (crawling|under)*; cotton wool
    """,
    "numb_figure": """
        (foot|feet|leg|legs|bum|toes) (went|fell|gone|goes|go|fallen) (to sleep|asleep|
        dead)~(sitting|sat|
        crossed|kneel*|loo|toilet|bus|plane|car|desk)
        numb to(?! (the )?(touch|my|finger*)); mind numbing*; mind numbingly; numbingly
        numb (with|from) (boredom|shock|grief|excitement|laughing|sitting|cold)
        comfortably numb; bum (is |went |goes |was )?numb; numb (bum|backside|arse|ass|butt)
        (backside|arse|butt|ass)~numb; emotionally numb
        numbing (cream|spray|gel|sensation|myself); brain (is |went |feels )?numb; numb skull
        dentist*; numb the pain; tingl* (scalp|with excitement|sensation of)*; spine tingl*
        tingl* with (pride|excitement)
        buzzing (after|from|about|for|with|off|at|that|today|to|i|lol|haha|now)
        (absolutely|so|im|still|proper|was|phone|really|watch|fly|feeling|totally|well|the|
        pure) buzzing
        buzzing; phone buzz*; fizzy (drink|drinks|water|pop); beta alanine; pre workout
        preworkout; mint*; spicy; chilli*; dead (after|from)
        (cant|dont) feel my (arms|legs|shoulders|body|face|abs) (haha|lol|lmao|after|from|
        today haha|anymore haha|by the end|at the end|now lol|now haha|in the end)
        (arms|legs) (are|feel|were|is|went|feel completely|are absolutely|are so|r) dead
        deadlift*; alive and tingling; tingl* muscles; goosebumps
    """,
    "numb_strong": """
        numb; numbs; numbed; numbness; numbish; numbing; tingl*; pins and needles
        pins n needles; paraesth*; paresth*; electric shock*; prickl*; tingly; no feeling
        no sensation; lost (all )?(feeling|sensation)
        (cant|dont) (to )?(really )?feel (my|the)~(hand|finger|fingers|thumb|arm|hands|leg|foot|
        fingertips)
    """,
    "weak": """
        (strength|power|feeling|control) in (my |the )?(left |right )?(arm|hand|grip|wrist|
        fingers|thumb|leg|shoulder) (has |is |just |have )?(gone|went|vanished|lost|missing|
        disappeared|dropped)
        grip~(vanished|disappeared|gone overnight)
        strength (has |is )?(vanished|disappeared|gone|lost)~(hand|arm|grip|fingers|wrist)
        (hand|arm|grip|fingers)~strength (has |is )?(vanished|disappeared|gone)
        (keep|keeps|kept|always|been|started) dropping (things|stuff|everything|it all)?
        dropping (things|stuff|everything)
        (fingers|finger|hand|hands|arm|leg|thumb)~(wont|dont|not|cant|doesnt|arent|isnt)~(do what|
        obey|listen|respond*|move properly|work*|close|open|grip|hold things|doing what)
        dropped~(mug|cup|phone|plate|glass|keys|fork|pen)~(twice|again|three times|today)
        (arm|hand|leg|fingers)~(dead and heavy|heavy and dead|dead and weak|feels dead)~
        weakness (in|down|of|on|all down|through|to)~(arm|arms|hand|hands|grip|wrist|fingers|leg|
        legs|shoulder|shoulders|side|forearm|thumb|elbow|limb)
        (arm|arms|hand|hands|wrist|fingers|shoulder|leg|legs|thumb|side|elbow|grip|forearm|bicep|
        tricep)~(gone weak|went weak|going weak|getting weaker|suddenly weak|is weak|are weak|
        feels weak|feel weak|so weak|really weak|very weak|weakness|weak since|become weak|
        became weak|weak and|weak now|weak all|no strength|no power|lost strength|lost power|
        lost its strength|has no strength|gives way|gave way|keeps giving|not working|wont work|
        stopped working|useless|wont respond|doesnt work|isnt working|clumsy|floppy|limp|wont close|
        wont open|wont grip)
        (new|sudden|unusual|strange|weird|unexplained|noticeable|odd) weak*
        weak (arm|hand|grip|wrist|shoulder|fingers|leg)~(since|today|now|suddenly|this morning|
        all day|woke)
        lost~(strength|power|use|grip|control) (in|of|from) (my |the |both )?(left |right )?(arm|
        arms|hand|hands|grip|wrist|fingers|thumb|leg|legs|shoulder)
        (no|zero|lost all|loss of|lost|losing|hardly any|less) (strength|power|control|use)~(in|
        of) (my |the |both )?(left |right )?(arm|hand|grip|wrist|fingers|hands|arms|leg|legs|
        shoulder|thumb)
        (dropping|drop|dropped|keep dropping|dropping) (things|cups|stuff|my (phone|cup|keys|mug|
        fork|toothbrush)|everything|mugs|plates|a cup|the cup|keys|my)~
        cant (to )?(hold|grip|squeeze|open|turn|do up|button|pick up)~(cup|mug|key|keys|jar|
        pen|phone|door|buttons|button|toothbrush|fist|kettle|spoon|fork|bottle|handle|steering|
        anything|zip|glass|shirt|things|pan|tap|plate|it)
        (wrist|foot|hand) drop
        legs (are |feel |have gone |going |went )?(weak|clumsy|heavy and weak|giving way|unsteady)
        hands (are |feel |have gone |getting )?(clumsy|weak|useless)
    """,
    "clumsy": """
        clumsy; clumsiness; fumbl*; dropping things; electric shock*; shock* down; unsteady
        wobbly; stumbl*; tripping; heavy; giving way; cant walk; weak*; jelly; numb; numbs
        numbed; numbness; numbish; numbing; tingl*; pins and needles; pins n needles; wont work
        dont work; not working; stiff legs; buckl*; no feeling; cant feel; lost feeling
    """,
    "cant_lift": """
        lift* (my |the )?(left |right )?arm (is |feels |now )?(impossible|not possible|
        not happening|no chance|out of the question)
        (raise|raising) (my )?(left |right )?arm (is )?(impossible|not happening)
        cant (get|take|bring|move|pull|pick)~arm~(off|up|away|above|over|out|past|from|higher)
        (no longer|not able to|can no longer|hardly|barely) (able to )?(lift|raise|move)~(my |
        the )(left |right )?arm( |$)?
        cant (reach|get)~(overhead|above my head|behind my back|up)~arm; cant (lift|raise)~arm
        arm~cant (be )?(lift*|rais*)
        cant (to )?(even |really |physically |actually |properly |now )?(lift|raise|elevate|get|
        move|use)~(my |the |this |that |left |right |bad |sore |injured )(arm|shoulder)( up| above|
         over| past| out| at all| anymore| to| higher| overhead)?
        arm (just |simply )?(wont|doesnt|does not|will not|refuses to|cant|not|
        wouldnt) (to )?(even )?(lift|raise|go up|go above|go over|come up|go past|move|get up|
        elevate|go)
        cant (to )?(lift|raise|get|move) it (up|above|over|past|at all|out|higher|sideways|anymore|
        away|overhead|to shoulder|more than)
        (lost|no) ability to (lift|raise|move)
        arm (hangs|hanging|just hangs|hung|is hanging) (limp|there|down|by my side|useless*)
        cant (to )?(lift|raise) (my )?(left|right)( one| arm)?
        cant (to )?(reach|brush my hair|comb|put (my|a) (shirt|coat|top|jacket) on|
        wash my hair)~(arm|shoulder|overhead|above|hair)*
        shoulder (just )?(wont|doesnt) (lift|raise|move|go up|work)
        cant (to )?(lift|raise|move|use) (my |the )?(left |right )?(arm|shoulder)
        impossible to (lift|raise) (my|the)~(arm|shoulder)
        (not able|unable|struggl*) to (lift|raise)~(arm); arm stuck; no active lift; drop arm
    """,
    "arms_plural": "arms; both arms; shoulders; t rex; trex",
    "loss": """
        cant (to )?(even |really |properly |now )?(lift|move|bend|straighten|grip|use|raise|push|
        press|twist|turn|hold|make|put weight|extend|flex|rotate|pick|pull|close|open|do anything)*
        (wont|doesnt|refuses to) (lift|move|bend|straighten|grip|raise|work|go up|extend|flex|
        rotate|turn|push)*
        no (strength|power|movement|grip); zero (strength|power|grip); weak; weakness; weaker
        lost (all )?(strength|power|movement|grip|function|use)*
        loss of (strength|power|movement|function|grip); useless; hangs; hanging; limp; bruis*
        black and blue; purple
        (changed|different|funny|weird|wrong|odd|strange|new|not the same) shape
        shape (has )?(changed|looks|is|gone|different)~; lump; bulg*; bunch* up; balled up
        popeye; gone flat; dent; dented; hole; gap; deform*; misshap*; dropped; rolled up
        hollow; swollen; swelling; swelled; ballooned; out of shape
        looks (wrong|weird|odd|different|funny); cant (to )?(lift|raise|move)~arm; cave*
        indent*; muscle (is |has )?(moved|gone|rolled|bunched|slid*|dropped|balled)
        one side lower
    """,
    "pop": """
        pop; popped; popping; snap; snapped; snapping; tear; tore; torn; tearing; rip; ripped
        ripping; twang; pinged; ping; gunshot; crunch; crunched; ruptur*; crack; cracked; clunk
        went bang; gave way; detach*; loud bang; a bang; pulled off
        (something|it|tendon|muscle|bicep|pec) (went|gave|go|give|let go); thwack; sproing
    """,
    "pop_event": """
        went (pop|snap|bang|crack|crunch|ping|twang|clunk)
        (shoulder|elbow|bicep|pec|wrist|knee|thumb|chest|arm) went pop
        (it|something) (popped|snapped|ripped|tore|went pop)
        (felt|heard|hear|feel|there was|big|loud|massive|huge|audible|sudden|proper|horrible|nasty|
        sickening|made)~(pop|snap|tear|rip|crack|crunch|twang|ping|tearing|ripping|popping|bang|
        clunk|go|give|snapping)
        (something|it|bicep|pec|shoulder|elbow|tendon|wrist|muscle|tricep|chest|thumb|finger|
        forearm|arm|cuff|hamstring|calf)~(popped|snapped|tore|ripped|pinged|ruptured|twanged|
        went pop|went bang|just went|went|gave way|torn|cracked|crunched|detached)
        (tore|torn|ripped|ruptured|snapped|detached)~(bicep|biceps|pec|pecs|shoulder|tendon|muscle|
        cuff|tricep|triceps|something|elbow|ligament|wrist|chest|arm|forearm|calf|lat)
    """,
    "pop_harmless": """
        (always|usually|often|sometimes|constantly|normally|regularly|generally)~(pop*|click*|
        crack*|crunch*|snap*)
        (pop*|click*|crack*|clunk*)~(always|usually|sometimes|no pain|painless|painlessly|
        doesnt hurt|without pain|not painful|not sore|doesnt bother|like normal|as usual|every rep|
        a lot|a bit|but no)
        pop (by|over|round|into|to the|to see|quiz|music|that in|me|the question|one out)
        popped (in to|in and|by|over|round|into|to|down|along|on|the kettle|my head|a|out to|
        out for|up) (the|a|my|to|and|for|at|on|there|here|her|his)*
        popcorn; pop up
        snapp*~(photo|pic|picture|video|selfie|band|chat|back into|up|at|his|her|of|out of it)
        snap (out|chat|a|of|up|decision|shot); snapchat
        band (snapped|ripped|broke|tore|pinged|popped|twanged)~
        (band|strap|shirt|shorts|shoelace|leggings|glove|gloves|rope|tape|t shirt|tshirt|callus|
        callous|skin|bag|sole|calluses|sleeve|grips|ticket|page|nail)~(snap*|tore|torn|rip*|tear*|
        popp*|ping*|cracked)
        (tore|ripped|torn|tear|snapped|ripping|cracked|rip)~(band|callus|callous|skin|shirt|shorts|
        page|glove|up|through|it up|into|a strip|nail|shoelace|on|strap|open|hands|phone|screen|
        palm|blister)
        tearing up; in tears; tears; burst into; ripped (abs|physique|body|now|lately|like)*
        getting ripped; looking ripped; look ripped
        crack* (on|up|a|me|at|open|the|through|into|down|it|knuckles|my (knuckles|back|neck|phone))
        cracking; cracked it; got cracked; crack at it; crack of; crunches; ping me
        went (away|well|great|ok|fine|good|to|for|up|down|really|better|smoothly|through|all|a|
        home|easy|
        easier|perfectly|back|badly|so|much|as|according|past|quickly|too|into|and|over|very|fast|
        not|on|off|round|out|swim*|running)
        clicky; clicks; click; clicking; give (it|me|up|a|you)
    """,
    "visible_out": """
        (facing|pointing|turned|sitting|going) (sideways|backwards|the wrong way|outwards|
        inwards|wrong)
        (bent|bends|bending|moving|moves|points)~(shouldnt|not meant|not supposed|should not|
        isnt meant)
        out of (place|its socket|the socket|socket|joint|position|the joint|alignment|its place)
        come out of~(socket|place|joint)
        (popped|came|come|comes|slipped|slid|jumped|pulled|pop|pops|knocked|sticking|stuck|poking|
        poked|pokes|sticks|hanging|pushed|gone|went|goes|is|looks|still|bulging|forced|
        yanked) (right |clean |completely |straight |all the way |partly |halfway |
        half )?out( of (its |the |my )?(socket|place|joint))?
        deform*; misshap*
        (wrong|weird|funny|odd|strange|different|not right|bad|square|squared off) (shape|angle|way|
        position|place)
        bent (the wrong way|backwards|sideways|back|out of shape|at a|funny)
        (at|in) (a|an|some) (weird|funny|odd|strange|wrong|bad|horrible|unnatural|crazy|mad|bad|
        awkward|right|nasty)~(angle|position|shape)
        looks (out|wrong|dislocated|bent|squared|deformed|crooked|wonky|weird|square|like its out|
        out of)
        not where it (should|is supposed|ought); (bone|bump|lump)~(sticking|poking|where)
        isnt where it (should|is supposed|ought|normally)*
        isnt (in|in place|in the right place|in its socket|sitting right|straight); not in place
        not (in|in its|in the) socket; crooked; wonky; facing the wrong
        hanging (weird|wrong|out|funny|off|low*)
        pointing (the wrong|sideways|up|backwards|wrong|off)*; wont go back*
        (cant|couldn) (to )?(get|put|pop|push) it back*; stuck out; visibly; is dislocated
        still dislocated; still out; squared off; dangling; twisted round; wrong direction
    """,
    "dislocate": """
        (popped|put|pulled|knocked|threw|twisted|forced|yanked|wrenched) (my|the) (left |
        right )?(shoulder|elbow|finger|thumb|knee|kneecap|collarbone|wrist|jaw) (right |
        clean )?out
        (shoulder|elbow|finger|thumb|knee|kneecap|collarbone) (is )?out(?= [,.]|$)
        (shoulder|elbow|finger|thumb|knee|kneecap|collarbone|wrist|jaw|joint)~(went|came|gone|slid|
        shifted|slipped|comes|goes|going|coming|is|was) (right |straight |clean |partly |half |
        halfway )?out(?! (of (breath|time|energy)|to|fine|well))
        dislocat*; dislocate; dislocation; sublux*; subluxed
        (popped|came|come|comes|slipped|slid|jumped|pulled|pop|pops|slips|went|pushed|clunked|moved|
        shifted|fell|rolled|slide|slip) (right |clean |partly |halfway |half |briefly |almost |
        slightly |kind of |sort of )?out
        out of (its |the |my )?(socket|joint|place)
        (slipped|slid|shift*|clunk*|moved|slip|slips)~(socket|joint|out|forward|forwards)
        put~shoulder out; put my (shoulder|finger|thumb|elbow) out; threw my (shoulder) out
    """,
    "pop_out_figure": """
        (band|stick|broomstick|shoulder) (dislocates|dislocations|pass throughs); dislocates [0-9]+
        (popped|pop|popping|pops|nipped|nip|went|going|go|goes|slipped|came|come) out (to (the |
        get |grab |see |a |work|town|buy|meet)|shopping|for (a |some |the )?(walk|run|lunch|coffee|
        drink|drinks|dinner|milk|food|errand|jog|ride|meal|bit of air|air|fresh air|pint|curry|day)|
        of (the )?(house|office|work|gym|class|bed|meeting|retirement|breath|time|my mind|nowhere|
        town|control|energy|juice|steam|reps|the door|order|range|surgery|hospital)|tonight|
        with (the|my) (girls|lads|kids|dog|mates|friends)|fine|well|great|good|better|ok|strong|
        stronger|easier|lower|higher|tops|swinging)|stuck out like|veins~(popp*|sticking|stuck|
        bulging)|eyes~pop*|pull* out (all|of the (session|race|class|event))|came out (as|tops|
        swinging)|out of (the way|my way|office|comfort)
    """,
    "urine_dark": """
        (urine|pee|wee|piss)~~(funny|weird|strange|odd) (colour|color)
        blood in~(urine|pee|wee|piss|toilet)
        (toilet|loo) (water )?(went|turned|was|is) (brown|red|black|like coke)
        (urine|pee|wee|piss|peeing|weeing|pissing|wees|pees|peed|weed|pissed)~~(dark|brown|brownish|
        cola|coke|coca|tea|black|red|rusty|rust|pink|reddish|blood|bloody|coffee|port|amber|orange|
        like tea|stout|guinness|pepsi|whisky|iced)
        (dark|brown|brownish|cola|coke|tea|black|red|rusty|rust|pink|coffee|reddish|bloody|
        cola coloured|blood in|bloody|orange)~(urine|pee|wee|piss|peeing|weeing|wees)
        blood when i (pee|wee|go)*; peeing (blood|coke|cola|tea|brown|dark|red)
        (going|went|been) to the (loo|toilet|bathroom)~(dark|brown|cola|coke|tea coloured|black)
    """,
    "urine_harmless": """
        beetroot; beet; beets; beet juice; vitamin*; rhubarb; pale yellow; straw; clear
    """,
    "cant_straighten": """
        cant (even |really )?bend (my |the )?(arms|elbows|arm|elbow|either)
        (arms|arm|elbow|elbows|bicep|biceps)~~cant (straighten|extend|bend)
        cant (to )?(fully |really |even |completely |properly |quite |actually )?(straighten|extend|
        unbend|fully straighten)~(arm|arms|elbow|elbows|it|them|out|fully|at all|left|right)*
        (elbow|elbows|arm|arms)~(wont|dont|cant|not|doesnt|refuse to) (fully |even |
        completely )?(straighten|extend|unbend|go straight|fully)
        (stuck|locked) (bent|at 90|at ninety|in a bent|in the bent)*; arms? stuck (bent|at)
        trex arms; t rex arms; elbow* (is |are )?(stuck|locked) bent; stuck bent
        straighten (my|the) (arm|arms|elbow|elbows)~(cant|impossible|no chance|at all)
        unable to straighten
    """,
    "fever": """
        fever; feverish; a temperature; high temp; high temperature; running a temp*
        temp (of|is|was|at)? ?(3[89]|40|10[0-4])
        temperature (of|is|was|at|over|above)? ?(about |around )?(3[89]|40|10[0-4])
        (3[89]|40)( [0-9])? ?(degrees|c|celsius|temp|temperature|fever); chills; rigors; shivers
        thermometer~(3[89]|40|10[0-4]); (3[89]|40|10[0-4])~thermometer
        shivering and; (shivering|shivery|hot and cold); burning up; got a temp*; have a temp*
        with a temp*; sweats and chills
    """,
    "not_fever": """
        hay fever; hayfever; cabin fever; fever pitch; disco fever; saturday night fever
        gym fever; room temp*; water temp*; body temp*
        temperature (outside|in (the )?(gym|garage|room)|dropped); race fever; baby fever
        gold fever; spring fever
    """,
    "fall": """
        fell; fall; falling; fallen; slipped; tripped; landed on; landed; came off; crash
        crashed; tumbled; stumbled; went over; bailed; hit the (floor|ground|deck); slip
        faceplant*; foosh; stacked it; came a cropper; took a tumble; thrown off; knocked off
        off my bike; tumble
    """,
    "fall_figure": """
        fall* (apart|asleep|behind|short|off the wagon|out|in love|on a|on the|into place|back|
        through|season|away|for)
        fell (asleep|behind|apart|short|in love|off the wagon|out with|back|on my birthday|into|
        through|for it)
        fall is; autumn; fell to pieces; landed (a|the|my)( new)? (job|deal|role|kick|flip)*
        slipped (my mind|up|behind|into|a|in a|on my|out|disc); crash diet
        crashed (out|early|on the sofa|hard)
    """,
    "lost_grip": """
        cant (to )?(grip|hold|make a fist|squeeze|grab|pick up|close|grasp|clench|bend); no grip
        lost (my |all )?grip; lost grip strength
        grip (is |has )?(gone|weak|hurts|lost|rubbish|useless|poor|terrible|non existent|shot|zero)
        weak grip; wont grip; wont close; grip strength (is )?(gone|down|zero)*; loss of grip
        not able to grip; hurts to grip; barely grip; grip gone
    """,
    "pump": """
        pump; pumped; pumps; arm pump; forearm pump; after climbing; pump was; swole; hench
        jacked; gains; vascular*; massive pump; look huge; looking huge; getting big*
        bigger (than|now|arms)~(last|before|year|month|ever)
    """,
}
