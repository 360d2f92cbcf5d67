"""The German words that are unmistakable beside figures, without accents (ß as ss)."""

from collections.abc import Mapping

from bot.reading.words import Mark

PHRASES: Mapping[Mark, str] = {
    Mark.TIMES: "x|mal|a",
    Mark.AT: "mit|mit je|bei",
    Mark.AND: "und|dann|und dann|danach",
    Mark.ALL: "alle|alle satze|jeder satz|jedes mal|in jedem satz|alle drei|pro satz|jeweils|"
    "in allen satzen|je satz|alle saetze",
    Mark.EACH: "je",
    Mark.EACH_SIDE: "pro seite|je seite|beide seiten|pro arm|je arm|beide arme|jede seite|"
    "auf beiden seiten|jeder arm|beidseitig|beide|pro hand|je hand|jeder seite",
    Mark.LEFT: "li|links|linker arm|linke seite|linke hand|linke|linken|linker|linkes|l",
    Mark.RIGHT: "re|rechts|rechter arm|rechte seite|rechte hand|rechte|rechten|rechter|rechtes|r",
    Mark.SET: "satz",
    Mark.SETS: "satze|saetze|satzen|durchgange|runden|sets",
    Mark.FILLER: "die|der|das|einen|es|waren|war|heute|hab|habe|ich|gemacht|geschafft|"
    "im|den|dem|von|geschaft|sind",
    Mark.SECONDS: "s|sek|sekunde|sekunden|sec",
    Mark.MINUTES: "min|minute|minuten",
    Mark.HOURS: "h|std|stunde|stunden",
    Mark.KG: "kg|kilo|kilos|kilogramm",
    Mark.LB: "lb|lbs|pfund",
    Mark.METRES: "m|meter|metern",
    Mark.REPS: "wdh|wdhs|wiederholung|wiederholungen|wh|reps|whs",
    Mark.PAIN: "schmerz|schmerzen|schmerzt|schmerzte|schmerzhaft|weh|wehtun|tut weh|tat weh|"
    "wehgetan|ziehen|zieht|sticht|stechen|stich|zwickt|zwicken|verletzt|gezerrt|gezwickt|"
    "geschwollen|taub|kribbeln|kribbelt|brennt|zerrung|druckt|beschwerden|"
    "schulterschmerzen|ellenbogenschmerzen|handgelenkschmerzen|ruckenschmerzen|"
    "nackenschmerzen|gezogen|muckt|meckert",
    Mark.NO_PAIN: "keine schmerzen|kein schmerz|ohne schmerzen|schmerzfrei|tut nicht weh|"
    "tut nichts weh|nichts tut weh|keinerlei schmerzen|tat nicht weh|keine beschwerden",
}
ORDINALS: Mapping[str, int] = {
    "erste": 1,
    "erster": 1,
    "zweite": 2,
    "zweiter": 2,
    "dritte": 3,
    "dritter": 3,
    "vierte": 4,
    "letzte": -1,
    "letzter": -1,
    "erster satz": 1,
    "zweiter satz": 2,
    "dritter satz": 3,
    "letzter satz": -1,
}
_ONES_WORDS = (
    "null eins zwei drei vier funf sechs sieben acht neun zehn elf zwolf dreizehn "
    "vierzehn funfzehn sechzehn siebzehn achtzehn neunzehn"
)
_ONES = _ONES_WORDS.split()
_TENS = {
    "zwanzig": 20,
    "dreissig": 30,
    "vierzig": 40,
    "funfzig": 50,
    "sechzig": 60,
    "siebzig": 70,
    "achtzig": 80,
    "neunzig": 90,
}
_UNITS = {"ein": 1} | {word: value for value, word in enumerate(_ONES[2:10], start=2)}
NUMBERS: Mapping[str, int] = (
    {word: value for value, word in enumerate(_ONES)}
    | _TENS
    | {f"{one}und{ten}": a + b for one, a in _UNITS.items() for ten, b in _TENS.items()}
    | {"hundert": 100, "einhundert": 100, "fuenf": 5, "zwoelf": 12, "fuenfzig": 50, "zwo": 2}
)
JOINT = ""
