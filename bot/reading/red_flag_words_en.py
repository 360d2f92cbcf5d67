"""English for the red-flag reader: all concepts, spellings, and what a slip must not hide.

Written for several Englishes, without apostrophes and accents. Our own list; a clinician must
check it before use.
"""

from bot.reading.red_flag_en_doubts import DOUBTS
from bot.reading.red_flag_en_grammar import ENGLISH_GRAMMAR
from bot.reading.red_flag_en_head import BREATH, HEAD
from bot.reading.red_flag_en_heart import HEART
from bot.reading.red_flag_en_limb import LIMB
from bot.reading.red_flag_en_other import OTHER
from bot.reading.red_flag_en_people import NEGATION, PEOPLE, TALK
from bot.reading.red_flag_en_places import PLACES, SITES
from bot.reading.red_flag_en_sensations import COURSE, SENSATIONS
from bot.reading.red_flag_en_wide import WIDE
from bot.reading.red_flag_wide_rules import WIDE_PLACES
from bot.reading.red_flag_words import WordSet

DENIAL_PASSES_OVER = (
    frozenset(PLACES)
    | frozenset(COURSE)
    | (frozenset(SITES) - {"pain_words", "sudden_sharp", "stopped_set", "everyday"})
    | {"limb_any", "no_weakness", "wont_settle", "hypothetical", "rest_only", "limb_pair"}
    | WIDE_PLACES
)
WRITTEN_OUT = {
    "necks": "neck",
    "hearts": "heart",
    "heads": "head",
    "faces": "face",
    "mouths": "mouth",
    "bladders": "bladder",
    "jaws": "jaw",
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
JOINED = {
    ("can", "not"): "cant",
    ("cant", "to"): "cant",
    ("not", "able"): "cant",
    ("can", "barely"): "cant",
    ("can", "hardly"): "cant",
    ("cant", "even"): "cant",
    ("cant", "really"): "cant",
    ("cant", "properly"): "cant",
    ("struggling", "to"): "cant",
    ("struggle", "to"): "cant",
    ("cant", "seem"): "cant",
    ("cant", "quite"): "cant",
    ("wont", "even"): "wont",
    ("do", "not"): "dont",
    ("does", "not"): "doesnt",
    ("did", "not"): "didnt",
    ("is", "not"): "isnt",
    ("was", "not"): "wasnt",
    ("has", "not"): "hasnt",
    ("have", "not"): "havent",
    ("will", "not"): "wont",
    ("could", "not"): "cant",
    ("would", "not"): "wont",
    ("no", "more"): "no",
}
MENDED_TO = """
    asleep blacked bladder bleeding blurred bowels breath breathe breathing breathless
    breathlessness bruised bruising cancer chest clammy collapsed collarbone concussed
    concussion confused confusion crushing deformed discoloured dislocate dislocated
    disoriented dizziness drooping elbow fainted fainting feeling fever finger fingers
    fluttering forearm headache heart heartbeat heavy ibuprofen incontinent irregular kilos
    myself nausea nauseous needles numbness overdose overdosed palpitations paracetamol
    popped pounding pregnant pressure prickling purple racing sensation severe sharp
    shoulder shoulders slurred slurring snapped socket speech squeezed squeezing stairs
    stomach straighten sudden suddenly suicidal suicide sweating sweaty swelling swollen
    temperature thunderclap tight tightening tightness tingling tingly trying unbearable
    unconscious urine vision vomited vomiting warfarin weakness weight wrist
"""
PROTECTED = """
    tights tithe tightly
    banged banging blending blocked bowel bowers bowles bowls breach breaching breadth
    breast breeding brest brushed brushing cancel cancers chance cheat cheats chefs chess
    chests chews concession conclusion crest cruising cushing drooling dropping feeding
    felling fevers fewer finder finders finer firearm flattering fleeing freeing freer
    fringe fringes fueling harts heady healy heard hearn hears hearst heated heath heats
    heave hertz kills kiosk needle needless numbers overdone pooped propped racine racking
    raging raking raping rating raving seating selling sensations server sever severed
    severn shape shard share shark shear shelling shouldve slapped smelling sockets spelling
    spurred stains stair starks stars starts stasis stirs stomachs swapped swearing thingy
    thinly tiring toying turing tying typing unbeatable vinson visions waist waists weigh
    weighs weights weighty wight worst wright wrists write
"""
ENGLISH = WordSet(
    language="en",
    grammar=ENGLISH_GRAMMAR,
    denial_passes_over=DENIAL_PASSES_OVER,
    concepts={
        **PLACES,
        **SENSATIONS,
        **COURSE,
        **PEOPLE,
        **NEGATION,
        **TALK,
        **SITES,
        **DOUBTS,
        **BREATH,
        **HEAD,
        **HEART,
        **LIMB,
        **OTHER,
        **WIDE,
    },
    written_out={slip: word for slip, word in WRITTEN_OUT.items() if slip != word},
    joined=JOINED,
    mended_to=frozenset(MENDED_TO.split()),
    protected=frozenset(PROTECTED.split()),
)
"""English as athletes type it."""
