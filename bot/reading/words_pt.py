"""The Portuguese words that are unmistakable beside figures, without accents."""

from collections.abc import Mapping

from bot.reading.words import Mark

PHRASES: Mapping[Mark, str] = {
    Mark.TIMES: "x|por|vezes",
    Mark.AT: "com|com os|com as",
    Mark.AND: "e|depois|e depois|a seguir",
    Mark.ALL: "todas|todas as series|em todas|cada serie|em cada serie|as tres|as tres series",
    Mark.EACH: "cada|cada uma",
    Mark.EACH_SIDE: "cada lado|por lado|cada braco|por braco|de cada lado|ambos os lados|"
    "cada mao|por mao|os dois lados|em cada lado|ambos os bracos",
    Mark.LEFT: "esq|esquerda|esquerdo|lado esquerdo|braco esquerdo|mao esquerda",
    Mark.RIGHT: "dir|dta|direita|direito|lado direito|braco direito|mao direita",
    Mark.SET: "serie",
    Mark.SETS: "series",
    Mark.FILLER: "de|a|o|as|os|com a|fiz|hoje|e as|e a|foi|foram|na|no|em",
    Mark.SECONDS: "s|seg|segs|segundo|segundos",
    Mark.MINUTES: "min|minuto|minutos",
    Mark.HOURS: "h|hora|horas",
    Mark.KG: "kg|kgs|quilo|quilos|kilos",
    Mark.LB: "lb|lbs|libra|libras",
    Mark.METRES: "m|metro|metros",
    Mark.REPS: "rep|reps|repeticao|repeticoes",
    Mark.PAIN: "dor|dores|doi|doem|doeu|doia|doendo|dolorido|dolorida|incomodo|incomoda|"
    "incomodou|fisgada|pontada|machuquei|magoei|lesionei|pontadas|fisgadas|latejando|"
    "formigueiro|formigamento|dormencia|inchado|inchada|ardencia|desconforto",
    Mark.NO_PAIN: "sem dor|sem dores|nao doi|nao doeu|nenhuma dor|nada de dor|nao tenho dor|"
    "nao tenho dores|nao me doi|nao me doi nada|sem nenhuma dor",
}
ORDINALS: Mapping[str, int] = {
    "primeira": 1,
    "segunda": 2,
    "terceira": 3,
    "quarta": 4,
    "ultima": -1,
    "primeira serie": 1,
    "segunda serie": 2,
    "terceira serie": 3,
    "ultima serie": -1,
}
NUMBERS: Mapping[str, int] = {
    word: value
    for words, first in {
        "zero um dois tres quatro cinco seis sete oito nove dez onze doze treze catorze quinze": 0,
        "dezesseis dezessete dezoito dezenove vinte": 16,
    }.items()
    for value, word in enumerate(words.split(), start=first)
} | {
    "uma": 1,
    "duas": 2,
    "quatorze": 14,
    "dezasseis": 16,
    "dezassete": 17,
    "dezanove": 19,
    "trinta": 30,
    "quarenta": 40,
    "cinquenta": 50,
    "sessenta": 60,
    "setenta": 70,
    "oitenta": 80,
    "noventa": 90,
    "cem": 100,
}
JOINT = "e"
