"""English for who is spoken of, denials, and questions, for the red-flag reader."""

PEOPLE = {
    "person": """
        (my |our |the |her |his |their )?(mum|mom|mam|mother|dad|father|brother|bro|sister|wife|
        husband|hubby|partner|boyfriend|girlfriend|missus|friend|friends|mate|mates|buddy|bestie|
        colleague|coworker|boss|neighbour|neighbor|son|daughter|kid|kids|baby|gran|grandad|granddad|
        grandma|grandpa|grandfather|grandmother|nan|nana|uncle|aunt|auntie|aunty|cousin|niece|
        nephew|inlaw|teammate|flatmate|roommate|housemate|training partner|fella|client|patient|
        stepdad|stepmum|fiance|fiancee|dog|cat|horse|puppy|parents|folks|nanna|papa|mama|pal|
        student)s?
        (a|some|this|that|the|another|one) (guy|bloke|lad|girl|woman|man|lady|fella|chap|dude|
        player|runner|member|old man|person|fighter|footballer|actor|character|kid|boy)
        lad; guy; bloke; girl; woman; man; lady; fella; chap; kid
        (the|our|my|their) (keeper|captain|goalie|striker|instructor|teacher|trainer|gf|bf|wee one|
        little one|boy|girl|lads|twins|toddler|baby|bro|sis|old man|old dear|landlord|manager|
        lodger|driver|nurse|flatmates)
        someone; somebody; everyone; everybody; people; anyone
        (one|some) of (the|my|our) (others|lads|guys|girls|clients|friends|mates|team); he; she
        hes; shes; (his|her)(?! (advice|words|opinion|view))
    """,
    "reports": """
        (says|said|saying|say|thinks|thought|reckons|reckoned|noticed|told|tells|asked|asks|worried|
        worries|wants|suggested|suggests|insists|insisted|wondered|wonders)
    """,
    "writes_for": """
        (this is|its|im|i am|am) (his|her|their|the) (husband|wife|partner|boyfriend|girlfriend|
        mum|mom|dad|
        mother|father|brother|sister|friend|flatmate|housemate|roommate|son|daughter|colleague)
        (writing|texting|typing|messaging) (for|on behalf of|from)~; (his|her|their) phone
    """,
    "me": "i; im; ive; me; my; mine; myself; id; i will",
    "starts_me": "i; im; ive; me; mine; myself; id",
}

NEGATION = {
    "no": """
        (dont|doesnt|didnt|wont) (go|goes|get|hear|notice|see|feel any|really get|ever get|
        ever have|ever go|seem to get|usually get|really have)
        (no|nothing|without|zero|never|nor|neither|nil|free of|absence of|denies|deny|denied|
        none of|didnt get|didnt have|didnt feel|dont have|dont get|dont feel|dont have any|
        doesnt have|havent had|havent got|havent noticed|havent felt|hasnt got|not had|not got|
        not having|not feeling|not felt|not experiencing|isnt|wasnt|arent|werent|aint|not|hasnt|
        havent|doesnt|didnt|never had|dont notice|didnt notice|dont see|rather than|instead of|
        stopped having|negative for)
    """,
    "not_negating": """
        no (idea|doubt|matter|wonder|relief|improvement|better|change|joke|one|longer|reason|
        reasons|clue|warning|strength|feeling|sensation|grip|power|control|more than|other|way|
        real reason|pulse)
        nothing (helps|works|makes|like|to|but|else|eases|i do|new|happens|changed|about|
        in the tank)
        not (just|only|sure|better|improving|going|good|normal|stopping|easing|settling|well|right|
        great|certain|kidding|joking|fine|ok|ideal|shifting|clearing|getting|healing|feeling (great|
        good|well|right|too good)|slowing|calming|coming|moving|able|doing|sleeping|trying|in place|
        where|wanting|to alarm|to worry|long|stop|as|make|making|related|unrelated|nice|straight|
        myself|worth|to be|related|when|with|even)
        never (had|felt|known|experienced|seen) (anything|this|it|such|pain|one|a|like|so|
        that)~(before|like|this)
        never had (this|it|that) before; not having it
        havent (slept|been|told|seen|stopped|eaten|moved|had it before|had this before|
        had that before|felt right)
        isnt (right|going|getting|good|better|settling|shifting|easing|normal|stopping|moving|
        working|where|in|straight|sitting)
        wasnt (there|right|expecting|too)
        didnt (sleep|go|settle|stop|ease|know|want|think|help|happen|dare|expect|recognise|realise|
        make)
        hasnt (gone|settled|eased|stopped|improved|gotten|got better|cleared|shifted|come|slowed|
        calmed|been right)
        havent (been|gone|settled|slept|got better)
        doesnt (go|feel right|feel good|look right|look|settle|stop|ease|help|matter|move|work|seem|
        sit|want|want to)
        arent (right|working|moving|going|getting); werent (working)
        (cant|cannot|couldnt|hardly|barely|wont)~without; not (a )?little; no(?= ,)
    """,
    "barrier": """
        but; its; it is; this is; theres; there is; except; apart from; however; although
        though; just; only; so; then; now; because; until; still; yet
        and (i|im|ive|my|a|the|it|its|now|then|also|some|bad|really|very|still|have|had|got|pain|
        cant|feel|felt|both|left|right)
        which; instead; apart; besides; other than; started; since; after; cos; coz; when
    """,
    "list_word": "or; nor; any",
    "more_than": """
        (not|isnt|wasnt|more than|nothing like|unlike|different (to|from)|worse than|beyond|
        doesnt feel like)~(sore|doms|soreness|muscle|muscular|ache|stiff|stiffness|tired)
    """,
    "all_clear": """
        (is|are|feels|feel|was|were|its|all|both|seems|looks)? ?(fine|ok|okay|good|great|clear|
        normal|alright|perfect|solid|happy)
        none; nope; nah; negative; no; nothing; zero; nil; not really; not at all
    """,
}

TALK = {
    "medicine": """
        ibuprofen; paracetamol; tylenol; advil; nurofen; naproxen; aleve; voltaren; voltarol
        diclofenac; painkiller*; pain killer*; anti inflammator*; antiinflammator*; nsaid*
        medication*; medicine*; meds; cortisone; steroid*; antibiotic*; cbd; tramadol; codeine
        co codamol; aspirin; tablets; pills; prednisone; prednisolone; beta blocker*
        blood pressure (tablets|pills|meds); statin*; inhaler; muscle relaxant*; gabapentin
        creatine; supplement*; injection; panadol; antidepressant*; dose of
    """,
    "asking": """
        can i; should i; could i; may i; is it (ok|okay|safe|alright|fine|bad|worth|normal)
        how (much|many|often|long); which; what (do|should|is|are|can|could|dose|would)
        would (it|you); any good; ok to; safe to; recommend*; what about; do you think
        do i need; is (this|that|it); are (these|they); does (this|that|it); have i; did i
        whats; could (it|this|that) be; might (it|this|that) be; am i; or is; wondering if
        wonder if; think (its|this is|ive); sounds like; do i have; is there; any idea
    """,
    "condition": """
        tear; torn; tore; tendonitis; tendinitis; tendinopath*; rotator cuff; impinge*; bursitis
        arthritis; carpal tunnel; (golfers|tennis|climbers) elbow; sprain*; strain*; fractur*
        broken; break; frozen shoulder; hernia; (trapped|pinched) nerve; slipped disc; labrum
        labral; rsi; ligament; tendon; inflammation; inflamed; rhabdo*; pulled a muscle
        pulled muscle; concuss*; dislocat*; (heart|asthma) (attack|condition); infection
        diagnos*; stress fracture; nerve damage; subluxat*; angina; stroke; blood clot; clot
        wrong with (me|my|it); scan; mri; x ray; xray; slap tear; cuff; thoracic outlet
    """,
}
