"""The French words that are unmistakable beside figures, without accents."""

from collections.abc import Mapping

from bot.reading.words import Mark

PHRASES: Mapping[Mark, str] = {
    Mark.TIMES: "x|fois",
    Mark.AT: "avec|a",
    Mark.AND: "et|puis|et puis|ensuite",
    Mark.ALL: "toutes|tous|a chaque serie|chaque serie|a chaque fois|toutes les series|"
    "les trois|les trois series|par serie",
    Mark.EACH: "chacune|chacun|chaque",
    Mark.EACH_SIDE: "de chaque cote|par cote|chaque cote|chaque bras|par bras|des deux cotes|"
    "les deux cotes|par main|chaque main|de chaque bras|les deux bras|pour chaque bras",
    Mark.LEFT: "g|gauche|a gauche|bras gauche|cote gauche|main gauche|l",
    Mark.RIGHT: "d|dr|droite|droit|a droite|bras droit|cote droit|main droite|r",
    Mark.SET: "serie",
    Mark.SETS: "series|sets|tours",
    Mark.FILLER: "de|la|le|les|des|j|ai|fait|tenu|aujourd|hui|c|etait|en|du|au|j ai|"
    "aujourd hui|sur|pour",
    Mark.SECONDS: "s|sec|seconde|secondes",
    Mark.MINUTES: "min|mn|minute|minutes",
    Mark.HOURS: "h|heure|heures",
    Mark.KG: "kg|kgs|kilo|kilos",
    Mark.LB: "lb|lbs|livre|livres",
    Mark.METRES: "m|metre|metres",
    Mark.REPS: "rep|reps|repetition|repetitions|repet|repets",
    Mark.PAIN: "mal|douleur|douleurs|douloureux|douloureuse|fait mal|me fait mal|font mal|"
    "blesse|blessee|gene|tire|pique|lance|elancement|elancements|pincement|courbature|"
    "engourdi|engourdie|fourmillement|fourmillements|gonfle|gonflee|brulure|tiraille|"
    "tiraillement|claque|coince",
    Mark.NO_PAIN: "pas de douleur|aucune douleur|sans douleur|pas de douleurs|"
    "ca ne fait pas mal|ne fait pas mal|fait pas mal|rien ne fait mal|zero douleur",
}
ORDINALS: Mapping[str, int] = {
    "premiere": 1,
    "deuxieme": 2,
    "seconde serie": 2,
    "troisieme": 3,
    "quatrieme": 4,
    "derniere": -1,
    "premiere serie": 1,
    "deuxieme serie": 2,
    "troisieme serie": 3,
    "derniere serie": -1,
}
_SMALL_WORDS = (
    "zero un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize"
)
_SMALL = _SMALL_WORDS.split()
NUMBERS: Mapping[str, int] = {word: value for value, word in enumerate(_SMALL)} | {
    "une": 1,
    "vingt": 20,
    "trente": 30,
    "quarante": 40,
    "cinquante": 50,
    "soixante": 60,
    "septante": 70,
    "huitante": 80,
    "nonante": 90,
    "cent": 100,
}
JOINT = "et"
