"""English signs of the heart, and their look-alikes."""

HEART = {
    "heart_attack": """
        heart (is |was |has been |started )?(paining|pained|sore|tight|squeezing)
        pain* (in|around|near|over|on) (my |the )?heart
        (having|having a|am having a|getting|had|have|its|its a|be|is it|feels like|felt like|
        think)~heart attack
        cardiac arrest; heart attack (symptoms|signs|right now|now); angina
        (pain|ache|aching|pressure|stabbing|hurts|hurting|tightness|squeezing|discomfort|
        tight)~(heart|my heart)
        heart (hurts|is hurting|aches|is aching|pain|hurting)
        pain (in|around|near|over) (my |the )?(heart|left chest)
    """,
    "heart_figure": """
        (nearly|almost|practically|near)~heart attack
        heart attack (when|seeing|reading|looking|at the|material|on a plate)*
        (gave|give|giving|gives)~heart attack; broke~heart
        heart (was |is |just )?(broken|breaking|sank|melts|melted|bleeds|of gold)
        heart aches (for|to|that); heart and soul; heart hurts (for|that|to); heart in my mouth
        heartbroken; heart (isnt|wasnt|not) in it; (by|learn) heart; heart out; change of heart
        heartache; heart attack~(plan|price|bill|saw|reading|programme|haha|lol|jumped|burpees)
        heart goes out; lost heart; take heart; warm* my heart; heart (was )?pumping
        heart emoji; bless*
    """,
    "heart_irregular": """
        (heart|pulse)~(did|does|doing|doin|went|goes|going)~(thing|flip|weird|funny|odd|haywire|
        somersault*|jump*|skip*|something)
        missed beats; missing beats; beats (were |are )?(missing|skipped|irregular); palpitat*
        (heart|pulse|hr|heart rate|heartbeat|heart beat|ticker)~(skip*|flutter*|irregular*|missing|
        missed|misses|misfir*|jump*|flip*|all over (the place|the shop)|erratic*|uneven*|funny|
        weird|strange|odd|out of rhythm|off beat|stutter*|arrhythm*|flop*|extra|double|stopping|
        pausing|paused|wonky|dancing|somersault*|spik* for no|unsteady|thudd*|bouncing)
        (skipp*|missed|irregular|fluttery|extra|funny|weird|erratic|ectopic|uneven|missing|skips|
        dropped)~(heart|beat|beats|heartbeat|heartbeats|pulse|rhythm|heart beat)
        ectopic*; arrhythm*; afib; atrial; flutter* in (my )?chest; fluttering; heart flutter*
        chest flutter*; thump* in my chest; chest~flutter*; svt
    """,
    "heart_fast": """
        (heart|pulse|hr|heart rate|heartbeat|heart beat)~(rac*|pounding|pound|hammering|thump*|
        beating (so |really |very |too )?(fast|hard|quick*)|through the roof|sky high|going (so |
        really |very |too )?fast|1[2-9][0-9]|too fast|fast|banging|high|going like|crazy|bonkers|
        mad|nuts|wild)
        (racing|pounding|hammering|thumping) heart; tachy*
    """,
    "heart_delight": """
        skipp* a beat (when|with|at|seeing|as)*~(saw|see|price|email|seeing|plan|message|excite*|
        joy|love|looked|news|thought|heard)*
        heart flutter* (when|at) (i |the )?(saw|see|thought|sight); excited; butterflies
        in love; fluttering (eyes|eyelids|flag|flags|kick|kicks); flutter kick*
        skip* (a )?(beat with|session|day|rope|set|week|ropes); heart jumped when; scared me
        jump scare; heart rate (monitor|strap|zone|zones|watch)
    """,
    "sweat": """
        sweat*; clammy; cold sweat*; pouring with sweat; drenched; grey; gray; pale; ashen
    """,
    "cold_sweat": """
        cold sweat*; clammy; sweating (for no reason|at rest|loads|buckets|a lot|like mad)
        came over~(sweaty|hot); broke out in a; sweats; sweaty; sweating; grey; ashen; pale
    """,
    "sick": """
        sick; nause*; nauseous; nauseated; vomit*; threw up; queasy; throw up; being sick; sicky
        puke*; faint; light headed; lightheaded; dizzy; dizziness
    """,
    "indigestion": "indigestion; heartburn; heart burn; acid reflux; reflux",
}
