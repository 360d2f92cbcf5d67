"""The words for places of the body, in English and Spanish, without accents."""

from collections.abc import Mapping

from scheduler.pain.values import Site

ELBOW = (Site.ELBOW_OUTER, Site.ELBOW_INNER, Site.ELBOW_BACK)
SHOULDER = (Site.SHOULDER_FRONT, Site.SHOULDER_TOP, Site.SHOULDER_BACK)
SITES: Mapping[str, tuple[Site, ...]] = {
    word: sites
    for words, sites in {
        "wrist|wrists|muneca|munecas": (Site.WRIST,),
        "elbow|elbows|codo|codos": ELBOW,
        "shoulder|shoulders|hombro|hombros": SHOULDER,
        "neck|cuello": (Site.NECK,),
        "forearm|forearms|antebrazo|antebrazos": (Site.FOREARM,),
    }.items()
    for word in words.split("|")
}
"""Places that speak of pain by themselves."""
WEAK_SITES: Mapping[str, tuple[Site, ...]] = {
    word: sites
    for words, sites in {
        "hand|hands|finger|fingers|thumb|palm|mano|manos|dedo|dedos|left hand|right hand": (
            Site.HAND,
        ),
        "arm|arms|brazo|brazos": (Site.UPPER_ARM, Site.FOREARM),
        "upper arm|bicep|biceps|tricep|triceps": (Site.UPPER_ARM,),
        "chest|pec|pecs|pecho|pectoral": (Site.CHEST_MUSCLE,),
        "upper back|lats|lat|trap|traps|espalda alta": (Site.UPPER_BACK,),
        "espalda": (Site.UPPER_BACK, Site.ELSEWHERE),
        "lower back|knee|knees|hip|hips|leg|legs|ankle|foot|feet|head|rib|ribs|lumbar|rodilla|"
        "cadera|pierna|piernas|tobillo|pie|cabeza": (Site.ELSEWHERE,),
    }.items()
    for word in words.split("|")
}
"""Places that may be named for another reason: they need a pain word or a score beside them."""
PARTS: Mapping[str, str] = {
    "outer": "outer",
    "outside": "outer",
    "externo": "outer",
    "exterior": "outer",
    "inner": "inner",
    "inside": "inner",
    "interno": "inner",
    "interior": "inner",
    "front": "front",
    "top": "top",
    "back": "back",
}
