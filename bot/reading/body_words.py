"""The words for places of the body, in five languages, without accents."""

from collections.abc import Mapping

from scheduler.pain.values import Site

ELBOW = (Site.ELBOW_OUTER, Site.ELBOW_INNER, Site.ELBOW_BACK)
SHOULDER = (Site.SHOULDER_FRONT, Site.SHOULDER_TOP, Site.SHOULDER_BACK)


def _by_word(table: Mapping[str, tuple[Site, ...]]) -> dict[str, tuple[Site, ...]]:
    return {word: sites for words, sites in table.items() for word in words.split("|")}


SITES: Mapping[str, tuple[Site, ...]] = _by_word(
    {
        "wrist|wrists|muneca|munecas": (Site.WRIST,),
        "elbow|elbows|codo|codos": ELBOW,
        "tennis elbow|codo de tenista": (Site.ELBOW_OUTER,),
        "golfers elbow|codo de golfista": (Site.ELBOW_INNER,),
        "shoulder|shoulders|hombro|hombros|rotator cuff|delt|delts|deltoid|deltoide": SHOULDER,
        "shoulder blade|shoulder blades|omoplato|omoplatos|escapula": (Site.UPPER_BACK,),
        "neck|cuello|cervicales": (Site.NECK,),
        "forearm|forearms|antebrazo|antebrazos": (Site.FOREARM,),
    }
)
"""Places that speak of pain by themselves."""
SITES_PT: Mapping[str, tuple[Site, ...]] = _by_word(
    {
        "pulso|pulsos|punho|punhos": (Site.WRIST,),
        "cotovelo|cotovelos": ELBOW,
        "ombro|ombros": SHOULDER,
        "pescoco": (Site.NECK,),
        "antebraco|antebracos": (Site.FOREARM,),
    }
)
SITES_DE: Mapping[str, tuple[Site, ...]] = _by_word(
    {
        "handgelenk|handgelenke|handgelenken|handgelenkschmerzen": (Site.WRIST,),
        "ellbogen|ellenbogen|ellbogenschmerzen|ellenbogenschmerzen": ELBOW,
        "schulter|schultern|schulterschmerzen": SHOULDER,
        "nacken|hals|nackenschmerzen": (Site.NECK,),
        "unterarm|unterarme|unterarmen": (Site.FOREARM,),
    }
)
SITES_FR: Mapping[str, tuple[Site, ...]] = _by_word(
    {
        "poignet|poignets": (Site.WRIST,),
        "coude|coudes": ELBOW,
        "epaule|epaules": SHOULDER,
        "cou|nuque": (Site.NECK,),
        "avant bras": (Site.FOREARM,),
    }
)
WEAK_SITES: Mapping[str, tuple[Site, ...]] = _by_word(
    {
        "hand|hands|finger|fingers|thumb|thumbs|palm|palms|knuckle|knuckles|pinky|mano|manos|"
        "dedo|dedos|left hand|right hand|pulgar|nudillo|nudillos|menique": (Site.HAND,),
        "arm|arms|brazo|brazos": (Site.UPPER_ARM, Site.FOREARM),
        "upper arm|bicep|biceps|tricep|triceps": (Site.UPPER_ARM,),
        "chest|pec|pecs|pecho|pectoral|pectorales": (Site.CHEST_MUSCLE,),
        "upper back|lats|lat|trap|traps|espalda alta|mid back|trapecio|trapecios|dorsal|"
        "dorsales|parte alta de la espalda": (Site.UPPER_BACK,),
        "espalda": (Site.UPPER_BACK, Site.ELSEWHERE),
        "lower back|low back|knee|knees|hip|hips|leg|legs|ankle|ankles|foot|feet|head|rib|ribs|"
        "hamstring|hamstrings|calf|calves|quad|quads|groin|lumbar|lumbares|rodilla|rodillas|"
        "cadera|pierna|piernas|tobillo|pie|cabeza|gemelo|gemelos|costilla|costillas|"
        "zona lumbar|espalda baja": (Site.ELSEWHERE,),
    }
)
"""Places that may be named for another reason: they need a pain word or a score beside them."""
PARTS: Mapping[str, str] = {
    word: part
    for part, words in {
        "outer": "outer|outside|externo|exterior|externa|por fuera|parte externa|cara externa",
        "inner": "inner|inside|interno|interior|interna|por dentro|parte interna|cara interna",
        "front": "front|de delante|delantera|delantero|por delante|anterior|frontal|"
        "parte delantera|parte de delante",
        "top": "top|arriba|parte alta|superior|parte de arriba",
        "back": "back|rear|por detras|de atras|trasero|trasera|posterior|parte de atras|"
        "parte trasera",
    }.items()
    for word in words.split("|")
}
