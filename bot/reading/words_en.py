"""The English words that carry meaning in a reply, without accents and apostrophes in any case.

A phrase with an apostrophe stands for all its spellings: "can't", "cant", "can t".
"""

from collections.abc import Mapping

from bot.reading.words import Mark

PHRASES: Mapping[Mark, str] = {
    Mark.TIMES: "x|by|times",
    Mark.AT: "at|@|with|using|used|went up to|up to the|dropped to|dropped down to|down to|"
    "moved up to|bumped to|bumped up to|switched to",
    Mark.PLUS: "plus",
    Mark.AND: "and|then|and then|followed by|n then|n|nd|after that|finally",
    Mark.OR: "or|to|o|between",
    Mark.ALL: "all|all sets|every set|each set|every one|each one|every|every time|each time|"
    "all of them|for all|both sets|for each set|across|across the board|on each set|per set|"
    "each round|every round|straight across|all the way|all the way through|throughout",
    Mark.EACH: "each|ea|apiece|for each|a piece",
    Mark.EACH_SIDE: "each side|per side|both sides|each arm|per arm|both arms|a side|e s|"
    "each hand|per hand|either side|both|both hands|on both sides|on each side|on each arm|"
    "for both arms|an arm|a hand|per arm|every side|same both sides|same each side|"
    "same on both sides|same both arms|left and right|l and r|l r|both sides same|either arm",
    Mark.LEFT: "l|lt|lh|lft|left side|left arm|on the left|on left|left one|on my left",
    Mark.RIGHT: "r|rt|rh|rgt|right|right side|right arm|on the right|on right|right one|"
    "on my right",
    Mark.LEFT_WORD: "left",
    Mark.SET: "set|round",
    Mark.SETS: "sets|rounds",
    Mark.STOPPED: "stopped|stopped there|stopped after|stop|had to stop|then stopped|quit|gave up|"
    "cut it short|called it|no third|no last set|skipped the last|skipped the last one|"
    "skipped the last set|skipped last|missed the last|missed the last one|missed the last set|"
    "that was it|that's it|called it a day|no third set|no 3rd|no 3rd set|no fourth set|"
    "no 4th set|no 4th|bailed|bailed on the last|bailed on the last one|bailed on the rest|"
    "dropped the last set|left out the last|left out the last set|left the last one out|"
    "then nothing|no more|packed it in|threw in the towel|cut short|pulled the plug|"
    "stopping there|stopped early|ended there|skipped set 3|skipped the third|skipped third|"
    "skipped the third set|skipped the 3rd|skipped 3rd|didn't do the last|"
    "didn't do the last one|didn't do the last set|couldn't do the last|"
    "couldn't do the last set|couldn't do the last one|couldn't do the third|"
    "couldn't do a third|couldn't do the third set|couldn't finish the last set|"
    "couldn't manage the last|couldn't manage a third|didn't do the third|"
    "didn't do a third|didn't do the third set|nothing for the last|gave up on the last|"
    "gave up on the third|skip the last|skip the last one|skip the last set|no last one|"
    "without the last|without the last set|stopped short|had to quit|had to bail|shut it down|"
    "ran out of gas|ran out of steam|ran out of juice|then done",
    Mark.ONLY: "only|just|only got|only did|only managed|just got|just did|just managed",
    Mark.PLANNED: "as planned|as prescribed|as written|according to plan|to plan|on plan|"
    "like planned|same as planned|as per plan|per plan|as per the plan|as the plan says|"
    "as it says|as it said|as sent|as you wrote|as you said|like you wrote|like you said|"
    "as programmed|as set|same as the plan|the same as planned|like the plan|just like the plan|"
    "went to plan|went as planned|"
    "as planed|as pland|like it says|exactly as planned|exactly as written|by the book",
    Mark.DONE: "done|finished|completed|did it|all done|did them|nailed it|got it done|"
    "done and dusted|complete|did that|smashed it|crushed it|did this",
    Mark.EVERYTHING: "everything|whole session|all of it|the lot|whole thing|entire session|"
    "the whole lot|full session|did everything|did it all|whole workout",
    Mark.REST: "everything else|the rest|rest|all the rest|all the others|all others|others|"
    "the others|all else|the other ones|the remaining ones|rest of it|the rest of it|"
    "everything after that|the rest of the session|rest of the session",
    Mark.SAME: "same|same again|ditto|again|same thing|same as before|idem|same for the rest",
    Mark.SKIPPED: "skipped|skip|skipped it|left out|did not do|didn't do|not done|skipping|"
    "skip it|skipped this|skip this|skipped that|skip that|skipping it|leaving it out|left it out|"
    "left this out|left that out|passed on|didn't do it|did not do it|didn't get to|"
    "did not get to|missed|missed out|missed it|never did|never got to|no time for|"
    "skipping this|skipped this one|skip this one|skipping this one|skipped that one|"
    "skip that one|didn't do this|didn't do this one|didn't do that one|did not do this one|"
    "did not do this|didn't manage|gave it a miss|missed this|missed this one|"
    "not doing|not doing this one|wasn't able to do|couldn't do|could not do|can't do|"
    "cannot do|couldn't do it|couldn't do this one|left off|ran out of time for|"
    "didn't have time for|had no time for|no chance to do|bailed on|leaving out",
    Mark.BUT: "but|except|apart from|except for|other than|aside from|minus the|bar the|but not",
    Mark.ABOUT: "about|around|roughly|approx|approximately|ish|maybe|probably|"
    "i think|i guess|i believe|or so|something like|circa|give or take|somewhere around|"
    "somewhere about|reckon|i reckon|like maybe",
    Mark.RISKY: "almost|nearly|should|should i|would|could|can i|aim|aiming|goal|goals|"
    "target|targets|instead|planned|plan|the plan|last time|last week|last month|last year|"
    "before|used to|want|wanted|try|trying|tried|if|he|she|they|his|her|their|him|friend|"
    "brother|sister|kid|son|daughter|wife|husband|child|mate|buddy|partner|teammate|dad|mum|mom|"
    "without|didn't|failed|couldn't|didn't get|wasn't|weren't|isn't|aren't|don't|doesn't|won't|"
    "minus|negative|per|twice|double|less than|more than|under|over|up to|percent|"
    "nan|infinity|inf|said|says|supposed|supposed to|meant to|going for|was going for|"
    "hoping|hope|wish|usually|normally|typically|record|pb|pr|personal best|my best|never|"
    "yards|yard|yds|yd|feet|foot|ft|inch|inches|miles|mile|mi|cm|mm|bpm|kcal|calories|cal|"
    "pm|o'clock|oclock|years|year|yrs|weeks|week|days|months|people|stone|floors|steps|laps|"
    "stairs|pages|dollars|euros|weigh|weighed|weight was|bodyfat|slept|sleep|age|aged|"
    "between sets|rest between|rested|rest was|resting|warm up|warmup|warmed up|warm ups|"
    "not sure|unsure|don't know|dunno|can't remember|don't remember|forgot|forget|not certain|"
    "vs|versus|compared|compared to|prescribed|wrote|written|asked for|told me|told|"
    "yesterday's target|attempt|attempted|attempting|shy of|short of|off|away from|ago|since|"
    "missing|impossible|assisted yet|not done yet|not yet|haven't|yet to|still to do|"
    "improved by|increase|increased by|by mistake|fewer|less|better than|"
    "longer than|shorter than|worse than|heavier|lighter|heavier than|lighter than|was it|"
    "do i|did i|what if|until|till|feel like i could|swear|somebody|someone|guy|girl|anyone|"
    "everybody|everyone else|we|your|theirs|competition|video|watched|saw|"
    "total|in total|altogether|combined|sum|average|avg|mean of|median|max|"
    "heart rate|pulse|hr was|bpm was|degrees|temperature|birthday|number is",
    Mark.LATER: "tomorrow|next|next time|next week|will|iwill|going to|gonna|see you|hopefully|"
    "looking forward|later|tonight|soon|plan to|want to|let's|wewill|i will",
    Mark.NOT: "not|no|nope|nor|nah",
    Mark.COULD: "could have done|could've done|could of done|coulda done|could have got|"
    "could've got|could have gone|could have managed|could've managed|could have held|"
    "could've held|could have gone for|could have squeezed out|could have done another|"
    "could've done another|could have held on for|could have held another|maybe another|"
    "could have kept going for|could have gone another|had another",
    Mark.MORE: "more|more reps|more secs|more seconds|extra|or more|or so more|another one",
    Mark.AT_LEAST: "at least|minimum|easily",
    Mark.HALF: "half|a half",
    Mark.WITHDRAWN: "never mind|nevermind|nvm|forget it|doesn't matter|don't worry",
    Mark.EXERCISE: "exercise|exercises|movement|item|lift",
    Mark.BECAUSE: "because|cause|cos|bc|due to|so|so i|cuz|coz|as my|since my",
    Mark.BAND: "band",
    Mark.SORRY: "sorry|oops|wait|no wait|correction|wrong|typo|make that|actually|my bad|whoops|"
    "my mistake|mistake|scratch that it was|apologies|oh wait|ooops|"
    "fat fingers|fat fingered|i got that wrong|that's wrong|that was wrong|was wrong|"
    "is wrong|correct that to|correct to|mistyped|miscounted|read it wrong|autocorrect|edit",
    Mark.MEANT: "i meant|meant|should be|should have been|was meant to be|it was|i mean|"
    "should read|should say|ought to be|was really|was actually|is really|is actually|"
    "should've been|meant to say|meant to type|meant to write|was supposed to say|"
    "supposed to say|that was actually|in fact",
    Mark.UNDO: "undo|undo that|delete that|delete it|scratch that|cancel that|remove that|"
    "take that back|ignore that|forget that|scrap that|undo it|undo last|undo the last|"
    "undo the last one|delete last|delete the last|delete the last one|remove the last one|"
    "remove it|take it back|disregard|disregard that|ignore the last one|ignore my last|"
    "ignore last|ignore that last one|ignore my last message|ignore last message|erase that|"
    "delete my last|delete my last message|wipe that|strike that|cancel last|cancel the last one|"
    "undo my last|please undo|ignore the last message|delete those|remove those|remove last|"
    "bin that|clear that|undo those|erase it|forget my last message|forget the last one",
    Mark.OTHER_ARM: "other arm|wrong arm|other side|wrong side|that was the other arm|"
    "it was the other arm|other hand|wrong hand|the other arm|the other side|wrong way round|"
    "swap the sides|swap sides|sides swapped|sides are swapped|mixed up the sides|"
    "mixed up my sides|mixed the sides up|mixed up the arms|got the sides wrong|"
    "other way round|other way around|the other way round|wrong way around|swap left and right|"
    "mixed up left and right|swap them",
    Mark.EFFORT: "rpe|effort|session effort|effort level|intensity|session rpe|exertion|"
    "overall effort|session was|session felt like|difficulty|hardness",
    Mark.LEFT_OVER: "left in the tank|left in tank|in the tank|in reserve|rir|reps in reserve|"
    "more in me|in me|in hand|reserve|left in me|more in the tank|still in the tank|to spare|"
    "spare|more left|left over|in the bank|reps left|secs left|seconds left|sec left|"
    "reps left in the tank|reps in the tank|secs in the tank|seconds in the tank|"
    "seconds left in the tank|secs left in the tank|rep left|rep in the tank|"
    "rep in reserve|more reps in me|more in there|more reps in the tank|left in there|"
    "seconds in reserve|secs in reserve|s left|s in reserve|reps to spare|seconds to spare|"
    "reps left over|more rep in me|rep left in the tank",
    Mark.NOTHING_LEFT: "nothing left|none left|nothing in reserve|nothing left in the tank|"
    "to failure|nothing in the tank|zero left|empty tank|tank empty|tank was empty|"
    "couldn't have done another|couldn't have done more|couldn't have done one more|all out|"
    "went to failure|nothing to spare|no more in me|no reps left|absolutely nothing left|"
    "nothing more in me|tank is empty|nothing more",
    Mark.NONE: "none|nothing|nothing at all|none at all|absolutely nothing|nil|nada|zilch",
    Mark.YES: "yes|yep|yeah|sure|ok|okay|yup|ye|yea|aye|y|definitely|absolutely|of course|"
    "yes please|correct|right on|that's right|i did|yes i did",
    Mark.PAIN: "pain|pains|painful|hurt|hurts|hurting|ache|aches|aching|achy|twinge|tweak|tweaked|"
    "niggle|niggles|niggly|niggling|sting|stings|tender|pinch|pinching|throbbing|strained|ouch|"
    "tight|stiff|uncomfortable|discomfort|not without pain|funny|weird|killing me|playing up|"
    "acting up|bothering me|bothers me|giving me grief|giving me trouble|giving me jip|"
    "giving me gyp|giving me bother|grumbling|cranky|irritated|"
    "inflamed|twinges|twinging|zinging|zing|sprained|injured|dodgy|iffy|"
    "flared up|flare up|flaring up|sore spot|painfull|"
    "stinging|stabby|numb|tingly|tingling|swollen|bruised",
    Mark.NO_PAIN: "no pain|no pains|pain free|painfree|zero pain|without pain|without any pain|"
    "nothing hurts|nothing hurt|no hurt|does not hurt|doesn't hurt|didn't hurt|"
    "did not hurt|not painful|not sore|no aches|no issues|no pain at all|no niggles|"
    "no discomfort|no twinges|no pain today|no wrist pain at all|nothing hurting|"
    "nothing sore|not hurting|no hurting|no complaints|hurts nowhere|pain none|pain no|"
    "pain nothing|pain nil|not a twinge|no trouble|isn't hurting|wasn't hurting|no soreness|"
    "no more pain|pain gone|pain is gone|pain's gone|no longer hurts|stopped hurting|"
    "0 pain|any pain no|can't feel any pain|don't feel any pain|don't have any pain|"
    "haven't any pain|can't feel pain|no longer any pain|never hurt",
    Mark.SORE: "sore|soreness|doms",
    Mark.SHARP: "sharp|sudden|suddenly|popped|pop|snapped|stabbing|shooting",
    Mark.FINE: "fine today|better today|good today|fine|good|great|is fine|was fine|feels fine|"
    "felt fine|is ok|was ok|feels good|"
    "felt good|bent|bend|bending|sank|sink|sinking|flared|shrugged|straight|all good|no problem|"
    "better|happy|solid|strong|locked|ok today|feels ok|felt ok|felt great|feels great|"
    "feels better|felt better|was good|is good|much better|behaved|behaving|held up|holding up|"
    "felt solid|felt strong|feels strong|feels solid|position|grip was|strap|wraps|straps|"
    "wrap|sleeve|sleeves|guard|all fine|is happy|was happy|felt nice|feels nice",
    Mark.PART: "outer|outside|inner|inside|front|top|back|rear",
    Mark.CANT: "can't|cannot|can not|no training|not happening|can't today|cant make it|"
    "can't train|"
    "can't make it|not today|not training today|won't make it|can't make it today|"
    "can't train today|can't do today|can't do it today|skip today|skipping today|"
    "skip today's session|skipping today's session|skip the session|skip this session|"
    "skipping this session|missing today|have to miss today|gotta skip today|need to skip today|"
    "no training today|won't train today|not going to train|not going to make it|"
    "not gonna make it|won't be training|no session today|not gonna train|can't do the session|"
    "can't do today's session|unable to train|have to skip today|got to skip today|"
    "will have to skip|must skip today|need a day off|taking today off|day off today|"
    "can't workout today|can't work out today|not able to train|won't be able to train|"
    "can't come today|not happening today|isn't happening today|no chance today|"
    "gonna have to skip|won't happen today|miss today|miss today's session|"
    "going to skip today|out today|have to miss|calling off today|today is a no|"
    "not going to happen today|skipping the session|skipping training|skip training|"
    "not training|couldn't train today|didn't train today|couldn't train|didn't train|"
    "won't get to it today|can't fit it in today|can't fit it in|giving today a miss",
    Mark.ILL: "ill|sick|fever|flu|got a cold|have a cold|not feeling well|don't feel well|unwell|"
    "under the weather|feeling rough|feel rough|stomach bug|food poisoning|throwing up|"
    "vomiting|covid|a temperature|feverish|got the flu|have the flu|head cold|bad cold|"
    "caught a cold|caught something|coming down with|migraine|down with|feel awful|"
    "feeling awful|feeling poorly|poorly|tummy bug|sore throat|feel terrible|in bed with|"
    "i've a cold|a cold|feeling terrible|feeling really rough",
    Mark.TRAVELLING: "travelling|traveling|travel|on the road|away|on a trip|on holiday|"
    "on vacation|at the airport|in the airport|on a plane|on a train|flying|flight|in a hotel|"
    "at a hotel|away for work|out of town|business trip|on a bus|driving all day|abroad|"
    "camping|work trip|in transit|my flight|on the train|on the plane|vacation|holiday",
    Mark.NO_TIME: "no time|too busy|busy|working late|ran out of time|no time today|"
    "stuck at work|stuck at the office|at the office|stuck in traffic|stuck in a meeting|"
    "stuck in meetings|work is crazy|work is mad|work ran over|deadline|"
    "swamped|crazy day|hectic day|hectic|not enough time|don't have time|didn't have time|"
    "work's crazy|meetings all day|double shift|long shift|late shift|snowed under|overtime|"
    "haven't got time|no time at all|out of time|slammed|exams|work late|stuck late|"
    "kept late|at work all day|packed day|work emergency",
    Mark.NO_EQUIPMENT: "no gym|no equipment|no bar|no weights|gym closed|gym is closed|no kit|"
    "gym's closed|gym was closed|gym shut|gym is shut|no access to a gym|no dumbbells|"
    "no kettlebells|no bands|no rings|no gear|don't have weights|don't have my weights|"
    "no weights here|no gym here|nothing to train with|no access to the gym|don't have equipment|"
    "haven't got my kit|without equipment|forgot my kit|left my kit|no pull up bar|"
    "no pullup bar|don't have a bar|locked out of the gym|gym locked|the gym is full|"
    "equipment broke|equipment is broken|no equipment here|don't have my kit|"
    "don't have my equipment|don't have any equipment|don't have any weights",
    Mark.ACTIVITY: "swam|swim|swimming|ran|run|running|jog|jogged|jogging|cycled|cycling|bike|"
    "biked|biking|class|climbing|climbed|bouldering|bouldered|wrestling|grappling|judo|boxing|"
    "yoga|hike|hiked|hiking|tennis|football|basketball|rowing|rowed|walked|surf|surfed|surfing|"
    "skiing|skied|training with team|volleyball|badminton|squash|padel|golf|rugby|hockey|soccer|"
    "netball|handball|martial arts|karate|pilates|crossfit|spin class|dance|dancing|danced|"
    "bjj|jiu jitsu|kickboxing|muay thai|team practice|practice|paddling|paddled|kayaking|"
    "kayaked|canoeing|skating|skated|gardening|moved house|moving house|dug the garden|"
    "digging|walking|walk|bike ride|ride|rode|rollerblading|snowboarding|snowboarded|"
    "table tennis|cricket|baseball|softball|fencing|gymnastics|parkour|trampoline|"
    "bike commute|row machine|rowing machine|erg|ergometer|elliptical|stairmaster|sparring|"
    "swim class|judo class|yoga class|climbing class|played|team training|five a side|"
    "5 a side|water polo|triathlon|circuit class|aerobics|zumba|sprints|intervals",
    Mark.NOW: "today's session now|session now|send it now|send today's now|train now|"
    "start now|send me today's session|send me the session|send today's session|"
    "send me today's session now|send session now|can i get today's session now|"
    "today's session please|can i have today's session now|start early|train early|"
    "do it now|ready now|ready to train|i'm ready now|session early|give me today's session|"
    "can you send today's session now|can you send today's session|send me the session now|"
    "today's session early|get today's session early|send it early|send the session|"
    "can i train now|can i start now|can i start early|can i train early|"
    "can i do today's session now|can i do the session now|can i get today's session early|"
    "can i get the session now|could you send today's session now|can i have the session now|"
    "want to train now|want to start now|want today's session now|would like to train now|"
    "can i have my session now|my session now|need today's session now|"
    "workout now|today's workout now|give me today's workout|send me today's workout|"
    "send me the workout|send today's workout|today's workout please|todays session please|"
    "next session please|today's training please",
    Mark.FILLER: "i|my|a|an|the|of|in|on|for|was|were|is|it|got|did|get|had|have|this|that|me|"
    "feels|felt|like|level|score|also|too|today|reached|held|hit|managed|made|my set|bit|little|"
    "today i|out|am|i'm|im|been|be|some|really|very|quite|so far|please|ones|this one|"
    "that one|training|session|train|pretty|iwould|i've|iwould say|say|id say|would say|i got|"
    "i did|i had|id call it|call it|it's|that's|there|there was|these|those|them|as|"
    "as well|well|did the|was the|went|go|from|into|its|are|which|who|one was|s was|"
    "a bit|a little|bit of|kind of|sort of|kinda|sorta|just now|right now|exactly|only a|"
    "today was|today's|numbers|results|result|reps were|times were|came out at|came to|"
    "ended up|ended up with|ended up at|ended on|finished with|finished on|finished at|"
    "started with|started at|started on|opened with|went with|here|here's|managed to get|"
    "managed to hold|able to|was able to|able to get|could hold|got to|made it to|up|"
    "banged out|cranked out|knocked out|squeezed out|ground out|put up|churned out|"
    "pushed to|fought for|scraped|clocked|logged|timed|counted|rated|rating|out of|added|on top|"
    "iwould call it|iwould call that a",
    Mark.CHAT: "run out of|ran out of|in the long run|hey|hi|hello|can't believe it|"
    "can't believe|can't wait|can't complain|coach|yall|"
    "kindly|kindly note|note|pls|plz|bank holiday|morning|"
    "evening|afternoon|good morning|good evening|yo|hiya|"
    "thanks|thank you|thank|thx|cheers|ty|lol|haha|hahaha|wow|phew|ugh|man|dude|bro|mate|boss|guys|"
    "easy|hard|tough|heavy|light|brutal|rough|smooth|clean|ugly|shaky|wobbly|slow|fast|quick|"
    "tired|knackered|toast|fried|cooked|gassed|spent|wrecked|smoked|dead|exhausted|fresh|"
    "strong|weak|nice|awesome|amazing|bad|terrible|awful|tricky|fun|intense|spicy|burned|"
    "challenging|comfortable|decent|alright|right okay|so so|meh|grindy|grind|grinder|"
    "surprisingly|honestly|finally|still|already|yet|much|lot|lots|of work|way|super|"
    "barely|progress|improving|improvement|new|best|yay|woohoo|woo|boom|"
    "slippery|sweaty|hot|cold|humid|outside in|bar|floor|mat|gym|home|at home|grip|hands|"
    "form|technique|tempo|control|pace|breathing|focus|music|energy|mood|chalk|shoes|"
    "legs|core|back|workout|everything felt|getting|getting there|"
    "definitely felt|though|tho|however|anyway|anyways|btw|fyi|fwiw|tbh|imo|ngl|"
    "especially|towards|toward|end|the end|start|beginning|time|minute in|by|burn|pump|"
    "pumped|loved|love|enjoyed|enjoy|hated|hate|proud|pleased|surprised|glad|psyched|stoked|"
    "good one|nice one|great session|good session|solid session|not bad|not too bad|too bad|"
    "log|logging|entry|update|report|reporting|checking in|check in|done for today|"
    "done today|all done today|for today|from today|today's numbers|session today|"
    "straightforward|manageable|doable|a grind|steady|stable|balanced|"
    "felt easy|felt hard|felt heavy|felt light|felt tough|felt ok|feeling good|feeling strong|"
    "feeling tired|feeling it|feeling great|feeling|went well|went great|went ok|went fine",
    Mark.SECONDS: "s|sec|secs|second|seconds|secnds|secods|sek",
    Mark.MINUTES: "min|mins|minute|minutes|minuts",
    Mark.HOURS: "h|hr|hrs|hour|hours",
    Mark.KG: "kg|kgs|kilo|kilos|k|kilograms|kilogram",
    Mark.LB: "lb|lbs|pound|pounds|lbd|pounders",
    Mark.METRES: "m|metre|metres|meter|meters|mtrs|mtr",
    Mark.KILOMETRES: "km|kms|kilometre|kilometres|kilometer|kilometers",
    Mark.REPS: "rep|reps|repetition|repetitions|rps",
    Mark.BODYWEIGHT: "bw|bodyweight|body weight",
}
"""The first mark that has a phrase keeps it."""

HOW = ("better", "harder", "easier", "worse", "stronger", "heavier", "longer", "more", "tougher")
COMPARED = "|".join(
    f"{how} than {when}"
    for how in HOW
    for when in (
        *("last time", "last week", "last session", "monday", "before", "ever", "expected"),
        *("usual", "planned", "i thought", "it looks", "normal", "yesterday", "the last time"),
    )
)
"""Remarks that compare: they say nothing of these figures, wherever they stand behind them."""
ORDINALS: Mapping[str, int] = {
    phrase: number
    for number, phrases in {
        1: "first|1st|first one|first set|1st set|1st one|the first|opening set",
        2: "second one|2nd|second set|2nd set|2nd one|second was",
        3: "third|3rd|third one|third set|3rd set|3rd one",
        4: "fourth|4th|fourth one|fourth set|4th set",
        5: "fifth|5th|fifth one|fifth set|5th set",
        6: "sixth|6th|sixth set",
        -1: "last|last one|last set|final set|final one|the last",
        -2: "last two|last 2|last two sets|last couple|final two|last 2 sets",
    }.items()
    for phrase in phrases.split("|")
}
"""Which set a word names; -1 is the last one, -2 the last two in order."""
