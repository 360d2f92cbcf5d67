"""The words that carry meaning in a reply, in English and Spanish, without accents."""

from collections.abc import Mapping
from enum import Enum, auto


class Mark(Enum):
    """What a token is."""

    NUMBER = auto()
    RATING = auto()
    BODYWEIGHT = auto()
    ITEM = auto()
    JUNK = auto()
    WORD = auto()
    LINE = auto()
    STOP_SIGN = auto()
    QUESTION = auto()
    COMMA = auto()
    SLASH = auto()
    DASH = auto()
    PLUS = auto()
    TIMES = auto()
    AT = auto()
    COUNT = auto()
    AND = auto()
    OR = auto()
    ALL = auto()
    EACH = auto()
    EACH_SIDE = auto()
    LEFT = auto()
    RIGHT = auto()
    ORDINAL = auto()
    SET = auto()
    SETS = auto()
    STOPPED = auto()
    ONLY = auto()
    PLANNED = auto()
    DONE = auto()
    EVERYTHING = auto()
    SAME = auto()
    SKIPPED = auto()
    BUT = auto()
    ABOUT = auto()
    RISKY = auto()
    NOT = auto()
    FILLER = auto()
    BECAUSE = auto()
    BAND = auto()
    SORRY = auto()
    MEANT = auto()
    UNDO = auto()
    OTHER_ARM = auto()
    EFFORT = auto()
    LEFT_OVER = auto()
    LEFT_WORD = auto()
    NOTHING_LEFT = auto()
    NONE = auto()
    YES = auto()
    PAIN = auto()
    NO_PAIN = auto()
    SORE = auto()
    SHARP = auto()
    FINE = auto()
    SITE = auto()
    WEAK_SITE = auto()
    PART = auto()
    CANT = auto()
    ILL = auto()
    TRAVELLING = auto()
    NO_TIME = auto()
    NO_EQUIPMENT = auto()
    ACTIVITY = auto()
    NOW = auto()
    DAY = auto()
    SECONDS = auto()
    MINUTES = auto()
    HOURS = auto()
    KG = auto()
    LB = auto()
    METRES = auto()
    KILOMETRES = auto()
    REPS = auto()


FIGURES = frozenset({Mark.NUMBER, Mark.COUNT, Mark.RATING, Mark.BODYWEIGHT, Mark.JUNK})
"""Marks of tokens that hold a figure, readable or not."""

PHRASES: Mapping[Mark, str] = {
    Mark.TIMES: "x|by|times|por|veces",
    Mark.AT: "at|@|with|con|using",
    Mark.AND: "and|then|and then|y|luego|despues|followed by",
    Mark.OR: "or|to|o|between|entre",
    Mark.ALL: "all|all sets|every set|each set|every one|each one|every|every time|all of them|"
    "for all|both sets|for each set|todas|todos|cada serie|todas las series|en todas|across",
    Mark.EACH: "each|ea|cada una|cada uno|c u|cada|apiece",
    Mark.EACH_SIDE: "each side|per side|both sides|each arm|per arm|both arms|a side|e s|"
    "each hand|per hand|either side|cada lado|por lado|cada brazo|ambos lados|both|ambos|ambas",
    Mark.LEFT: "l|lt|lh|left side|left arm|izq|izquierda|izquierdo|lado izquierdo",
    Mark.RIGHT: "r|rt|rh|right|right side|right arm|der|dcha|derecha|derecho|lado derecho",
    Mark.LEFT_WORD: "left",
    Mark.SET: "set|round|serie|ronda",
    Mark.SETS: "sets|rounds|series|rondas|vueltas",
    Mark.STOPPED: "stopped|stopped there|stopped after|stop|had to stop|then stopped|quit|gave up|"
    "cut it short|called it|no third|no last set|skipped the last|skipped the last one|"
    "skipped the last set|skipped last|missed the last|missed the last one|missed the last set|"
    "that was it|pare|tuve que parar|me detuve|lo deje|sin la ultima|y pare|abandone",
    Mark.ONLY: "only|just|solo|solamente|nada mas",
    Mark.PLANNED: "as planned|as prescribed|as written|according to plan|to plan|on plan|"
    "like planned|same as planned|como estaba previsto|segun lo previsto|como previsto|"
    "lo previsto|segun el plan",
    Mark.DONE: "done|finished|completed|did it|all done|hecho|hecha|terminado|listo|lista",
    Mark.EVERYTHING: "everything|whole session|all of it|the lot|todo|toda la sesion",
    Mark.SAME: "same|same again|ditto|again|igual|lo mismo|idem",
    Mark.SKIPPED: "skipped|skip|skipped it|left out|did not do|didn't do|didn t do|not done|"
    "me salte|no hice|saltado",
    Mark.BUT: "but|except|apart from|except for|other than|pero|excepto|menos|salvo",
    Mark.ABOUT: "about|around|roughly|approx|approximately|ish|maybe|almost|nearly|unos|casi|"
    "aprox|aproximadamente|mas o menos",
    Mark.RISKY: "tomorrow|next|should|should i|would|could|can i|will|going to|aim|goal|target|"
    "instead|planned|plan|last time|last week|before|used to|want|wanted|try|if|he|she|they|"
    "his|her|friend|brother|sister|manana|deberia|quiero|proxima|proximo|antes|ella|amigo|kid|son|daughter|wife|husband|child|hijo|hija|"
    "without|didn't|didn t|didnt|failed|couldn't|couldn t|couldnt|didn't get|wasn't|wasn t|sin|"
    "minus|negative|per|twice|double|less than|more than|under|over|at least|up to|"
    "menos de|mas de|percent|half|nan|infinity|inf",
    Mark.NOT: "not|no|nope|never|nor",
    Mark.BECAUSE: "because|cause|cos|bc|due to|so|so i|porque|por culpa",
    Mark.BAND: "band|banda|goma",
    Mark.SORRY: "sorry|oops|wait|no wait|correction|wrong|typo|perdon|correccion|error|make that|"
    "actually",
    Mark.MEANT: "i meant|meant|should be|should have been|was meant to be|queria decir|it was",
    Mark.UNDO: "undo|undo that|delete that|delete it|scratch that|cancel that|remove that|"
    "take that back|ignore that|forget that|deshacer|borra eso|borralo",
    Mark.OTHER_ARM: "other arm|wrong arm|other side|wrong side|that was the other arm|"
    "it was the other arm|otro brazo|el otro brazo|otro lado",
    Mark.EFFORT: "rpe|effort|session effort|effort level|esfuerzo|intensity",
    Mark.LEFT_OVER: "left in the tank|left in tank|in the tank|in reserve|rir|reps in reserve|"
    "more in me|"
    "in hand|reserve|left in me|en reserva|mas en reserva|de reserva|quedaban|me quedaban",
    Mark.NOTHING_LEFT: "nothing left|none left|nothing in reserve|nothing left in the tank|"
    "to failure|nada en reserva|al fallo",
    Mark.NONE: "none|nothing|nil|ninguno|ninguna|nada",
    Mark.YES: "yes|yep|yeah|si|sure|ok|okay|vale",
    Mark.PAIN: "pain|pains|painful|hurt|hurts|hurting|ache|aches|aching|achy|twinge|tweak|tweaked|"
    "niggle|niggles|sting|stings|tender|pinch|pinching|throbbing|strained|ouch|tight|stiff|"
    "uncomfortable|discomfort|not without pain|funny|weird|dolor|dolores|duele|duelen|dolia|"
    "me duele|me duelen|molesta|molestia|molestias|pinchazo|dolorido|dolorida",
    Mark.NO_PAIN: "no pain|no pains|pain free|painfree|zero pain|without pain|without any pain|"
    "nothing hurts|nothing hurt|no hurt|does not hurt|doesn't hurt|doesn t hurt|didn't hurt|"
    "didn t hurt|did not hurt|not painful|not sore|no aches|no issues|sin dolor|no duele|"
    "no me duele|nada de dolor|no hay dolor|ningun dolor|no dolor|no me duele nada",
    Mark.SORE: "sore|soreness|doms|agujetas",
    Mark.SHARP: "sharp|sudden|suddenly|popped|pop|snapped|stabbing|agudo|agudo de repente|"
    "de repente|punzante",
    Mark.FINE: "fine|good|great|is fine|was fine|feels fine|felt fine|is ok|was ok|feels good|"
    "felt good|"
    "bent|bend|bending|sank|sink|sinking|flared|shrugged|straight|doblados|bien|"
    "esta bien|all good|no problem",
    Mark.PART: "outer|outside|inner|inside|front|top|back|externo|interno|exterior|interior",
    Mark.CANT: "can't|can t|cant|cannot|can not|can't today|can t today|cant make it|can't train|"
    "can t train|can't make it|can t make it|not today|not training today|won't make it|"
    "no puedo|hoy no puedo|hoy no|no podre",
    Mark.ILL: "ill|sick|fever|flu|got a cold|have a cold|enfermo|enferma|fiebre|gripe|resfriado",
    Mark.TRAVELLING: "travelling|traveling|travel|on the road|away|on a trip|on holiday|"
    "de viaje|viajando|viaje|vacaciones",
    Mark.NO_TIME: "no time|too busy|busy|working late|ran out of time|sin tiempo|no tengo tiempo|"
    "ocupado|ocupada",
    Mark.NO_EQUIPMENT: "no gym|no equipment|no bar|no weights|gym closed|gym is closed|no kit|"
    "sin gimnasio|sin material|sin equipo|sin barra",
    Mark.ACTIVITY: "swam|swim|swimming|ran|run|running|jog|jogged|cycled|cycling|bike|biked|"
    "class|climbing|climbed|bouldering|wrestling|grappling|judo|boxing|yoga|hike|hiked|hiking|"
    "tennis|football|basketball|rowing|walked|surf|surfed|surfing|skiing|training with team|"
    "nade|nadar|corri|correr|clase|bici|escalada|escale|lucha|yoga clase|caminata|partido",
    Mark.NOW: "today's session now|today s session now|session now|send it now|send today's now|"
    "sesion de hoy ya|la sesion ahora|sesion ahora",
    Mark.FILLER: "i|my|a|an|the|of|in|on|for|was|were|is|it|got|did|get|had|have|this|that|me|"
    "feels|felt|like|level|score|also|too|today|reached|held|hit|managed|made|my set|bit|little|"
    "today i|with the|out|am|i'm|i m|im|been|be|de|del|la|el|los|las|en|a la|mi|un poco|hice|"
    "hoy|fue|aguante|he|some|really|very|quite|so far|please|one|ones|una|estoy|es|era|=|"
    "train|training|session",
    Mark.SECONDS: "s|sec|secs|second|seconds|seg|segs|segundo|segundos",
    Mark.MINUTES: "min|mins|minute|minutes|minuto|minutos",
    Mark.HOURS: "h|hr|hrs|hour|hours|hora|horas",
    Mark.KG: "kg|kgs|kilo|kilos|k",
    Mark.LB: "lb|lbs|pound|pounds|libra|libras",
    Mark.METRES: "m|metre|metres|meter|meters|mts|metro|metros",
    Mark.KILOMETRES: "km|kms|kilometre|kilometres|kilometer|kilometers|kilometros",
    Mark.REPS: "rep|reps|repetition|repetitions|repeticion|repeticiones",
    Mark.BODYWEIGHT: "bw|bodyweight|body weight|peso corporal",
}
"""Two marks never share a phrase, but for FILLER, which gives way."""

ORDINALS: Mapping[str, int] = {
    phrase: number
    for number, phrases in {
        1: "first|1st|first one|first set|primera|primero|primera serie",
        2: "second one|2nd|second set|segunda|segunda serie|second was",
        3: "third|3rd|third one|third set|tercera|tercera serie",
        4: "fourth|4th|fourth one|fourth set|cuarta|cuarta serie",
        5: "fifth|5th|fifth one|fifth set|quinta",
        6: "sixth|6th|sixth set|sexta",
        -1: "last|last one|last set|final set|final one|ultima|ultima serie|la ultima",
        -2: "last two|last 2|last two sets|ultimas dos|las dos ultimas",
    }.items()
    for phrase in phrases.split("|")
}
"""Which set a word names; -1 is the last one, -2 the last two in order."""
