"""English places and sites for the red-flag reader."""

PLACES = {
    "chest": """
        chest; chests; chested; chestal; breastbone; breast bone; sternum; breast; ribcage
        rib cage
    """,
    "inside": """
        inside; centre of; center of; middle of; behind my; behind the; across my; deep in
        internal*
    """,
    "pec": "pec; pecs; pectoral*; chest muscle*; muscle* (in|of|on) my chest",
    "arm": """
        arm; arms; forearm*; fore arm*; bicep; biceps; tricep; triceps; elbow; elbows; limb
        limbs; upper arm; armpit
    """,
    "hand": """
        hand; hands; finger; fingers; fingertip*; thumb; thumbs; wrist; wrists; pinky; pinkie
        palm; knuckle*; ring finger; little finger; grip
    """,
    "shoulder": """
        shoulder; shoulders; collarbone; collar bone; shoulder blade*; delt; delts
    """,
    "leg": """
        leg; legs; foot; feet; toe; toes; thigh*; knee; knees; shin*; ankle*; hip; hips
    """,
    "one_leg": "one leg; left leg; right leg",
    "calf": "calf; calfs; calves; lower leg",
    "jaw": "jaw; jawline; jaws; lower teeth",
    "upper_back": "upper back; between (my|the) shoulder blades; back",
    "neck": "neck; cervical; nape",
    "joint": """
        shoulder; shoulders; elbow; elbows; wrist; wrists; finger; fingers; thumb; thumbs
        knuckle*; joint; joints; knee; knees; ankle; ankles; hip; collarbone; collar bone
        ac joint; kneecap; arm; arms; bone; jaw; toe; toes
    """,
    "both_arms": """
        both (of )?(my |the )?(arm|arms|hands|hand|sides|wrists|forearms|shoulders|elbows)
        (my |the )?(arms|hands|fingers) (on )?both sides; either arm; each arm
        (two|all) (arms|hands); arms and (legs|hands); all four limbs; arms and my legs
    """,
    "legs_or_walk": """
        leg; legs; feet; foot; toes; walking; walk; balance; lower body; knees
    """,
    "limb_pair": "arms; hands; fingers",
    "one_side": """
        one side; one sided; left side; right side; one half; half (of )?my; down one side
    """,
}

SITES = {
    "site_neck": "neck",
    "site_shoulder_front": """
        front of (my |the )?(left |right )?shoulder*; front (shoulder|delt)*
        (shoulder|shoulders) at the front
    """,
    "site_shoulder_top": "top of (my |the )?(left |right )?shoulder*; ac joint",
    "site_shoulder_back": """
        (back|rear) of (my |the )?(left |right )?shoulder*; rear (shoulder|delt)*
    """,
    "site_upper_arm": "upper arm*; bicep; biceps; tricep; triceps",
    "site_elbow_outer": """
        (outer|outside|outside of|outside of my|
        outside of the) (left |right )?elbow*
        elbow (on the )?outside
    """,
    "site_elbow_inner": """
        (inner|inside|inside of|inside of my|
        inside of the) (left |right )?elbow*
        elbow (on the )?inside
    """,
    "site_elbow_back": """
        back of (my |the )?(left |right )?elbow*; point of (my |the )?elbow
    """,
    "site_forearm": "forearm*; fore arm*",
    "site_wrist": "wrist*",
    "site_hand": "hand; hands; finger*; thumb*; palm; knuckle*",
    "site_upper_back": "upper back; between (my|the) shoulder blades; shoulder blade*",
    "side_left": "left; lhs; leftie; lefty",
    "side_right": "right; rhs",
    "side_both": "both; either side; each side",
    "pain_words": """
        pain*(?! of ); hurt; hurts; hurting; agony; stabbing; twinge*; niggl*; throb*; sharp
        discomfort
        aching (joint|elbow|wrist|shoulder)*; playing up; flared up; killing me
        giv(ing|es|e|en|ed) me~(grief|gip|jip|trouble|bother); gave me~(grief|gip|jip|trouble)
        cranky; grumpy; iffy; dodgy; angry; irritated; irritable; bother*; annoy*; sensitive; tender
        acting up; not right; not happy; twingey; niggly; achy; ached; ache; aches; aching
        stings; stinging
        complain*; grumbl*; moaning; unhappy; barking; nagging; tweak*; sore to~
    """,
    "no_report": """
        sore*; doms; tight*; stiff*; pump*; swole; burn; burned; happy; strong*; fine; good
        great; healed
        years ago; as a kid; used to; in (19|20)[0-9]{2}; not anymore; sorted; technique; form check
        (should|do|can|could|where|how) (do |should |can )?(i|my); supposed to; meant to
        is it (ok|normal|meant)
        what do i do if; pain of; lend; no (pain|issues|problems|trouble)
    """,
    "everyday": """
        (open|opening|opened|turn|turning|twist|twisting|unscrew*|undo*)~(jar|jars|door|doors|key|
        lid|bottle|
        tap|doorknob|handle)
        (put|putting|pull|pulling|get|getting|take|taking)~(coat|jacket|shirt|jumper|bra|seatbelt|
        seat belt|
        socks|top|tshirt|hoodie|backpack)
        brush* (my )?(teeth|hair); wash* (my )?(hair|back); comb*~hair; typing; type on; mouse
        driving
        steering wheel; (carry|carrying|lifting|lift|pick|picking|hold|holding) (up )?(a |the |
        my )?(cup|mug|
        kettle|pan|shopping|bag|bags|baby|toddler|kid|phone|bottle|plate)
        pouring; shak* hands; cooking; chopping; handwriting; getting dressed; dressing myself
        at work
        everyday; daily (life|things|tasks); around the house; changing gear; pushing (a |the )?door
    """,
    "stopped_set": """
        (had to|have to|made me|makes me|forced me to|needed to) (stop|quit|drop|bail|cut|
        come off|let go|
        put it down|rack|give up|end|skip)
        (stopped|quit|ended|cut|came off|come off|bailed|gave up|packed in|let go|dropped|
        racked)~(early|
        short|halfway|mid set|because|cos|due to|at [0-9]+|on set|the set)
        couldnt (finish|continue|carry on|complete); cant (finish|complete)~(set|sets|session)
    """,
    "sudden_sharp": """
        sudden (sharp )?pain; sharp pain; suddenly (hurt|sharp)*; sudden sharp
        sharp (stab|twinge|jab); stabbing pain; felt something (go|give|pull); pulled something
        shooting pain
    """,
}
