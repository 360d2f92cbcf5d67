"""Spanish for the red-flag reader: the fields of the wide net, spellings, slips and grammar.

Written without accents, as the text is shaped. Our own list; a clinician must check it before use.
"""

import re

from bot.reading.red_flag_es_head import HEAD, HEART
from bot.reading.red_flag_es_limb import LIMB
from bot.reading.red_flag_es_people import NEGATION, PEOPLE, SITES, TALK, TINGLE
from bot.reading.red_flag_es_person import PERSON
from bot.reading.red_flag_grammar import Grammar
from bot.reading.red_flag_wide_rules import WIDE_PLACES
from bot.reading.red_flag_words import WordSet

WRITTEN_OUT = {
    "q": "que", "k": "que", "xq": "porque", "pq": "porque", "porq": "porque", "tb": "tambien",
    "tmb": "tambien", "x": "por", "d": "de", "muxo": "mucho", "mxo": "mucho", "toy": "estoy",
    "ta": "esta", "pa": "para", "to": "todo", "tó": "todo", "ombro": "hombro", "onbro": "hombro",
    "mano's": "manos", "braso": "brazo", "brasos": "brazos", "peccho": "pecho", "pexo": "pecho",
    "aogo": "ahogo", "aoga": "ahoga", "ahora": "ahora", "aora": "ahora", "desmaye": "desmaye",
    "vrazo": "brazo", "corason": "corazon", "corazn": "corazon", "ormigueo": "hormigueo",
    "inchado": "hinchado", "inchada": "hinchada", "inchazon": "hinchazon", "incha": "hincha",
    "ablar": "hablar", "ablo": "hablo", "cabesa": "cabeza", "izq": "izquierdo", "dcho": "derecho",
    "bomito": "vomito", "bomitado": "vomitado", "bomitar": "vomitar", "vomite": "vomite",
    "respirrar": "respirar", "nose": "no se", "sangrr": "sangre", "ostia": "golpe",
    "hostia": "golpe", "torta": "golpe", "leñazo": "golpe", "lenazo": "golpe", "mariado": "mareado",
    "mariada": "mareada", "mareao": "mareado", "hinchao": "hinchado", "dormio": "dormido",
    "dormia": "dormia", "morao": "morado", "salio": "salio", "salío": "salio", "tomao": "tomado",
    "pasao": "pasado", "doblao": "doblado", "cansao": "cansado", "calambrazo": "calambrazo",
    "pis": "pis", "munheca": "muneca", "ay": "ay", "ahi": "ahi", "hoy": "hoy",
}  # fmt: skip
MENDED_TO = """
    pecho presion opresion corazon brazo brazos hombro hombros muneca mandibula cuello espalda
    cabeza respirar respiracion aliento mareado mareada mareo desmaye desmayado desmayo
    hormigueo dormida dormido entumecido entumecida hinchado hinchada hinchazon fiebre orina
    oscura palpitaciones taquicardia vomitado vomitar nauseas sudores sudando dolor duele
    pinchazo chasquido crujido dislocado dislocada conocimiento inconsciente sobredosis pastillas
    embarazada sangrado sangrando suicidarme morirme matarme vejiga debilidad fuerza izquierdo
    izquierda derecho derecha pantorrilla moraton cancer levantar estirar agarrar codo
"""
PROTECTED = """
    madre padre madres mayor marco marzo made mando manda dedos modo todos cuela cuelas sentado
    santo brazada brasas hombre hombres cuelo cuelgo espaldas cabezas mareas marea dolar duelo
    duelos puele presion prision pecha techo hecho derecha derechos fiera fierro oriente orilla
    oscuro sangria sudadera desmayo suelo suele duela coda cuerpo moral forzar fuerzas cancel
    canceles respiro levanta estira agarra mano fecha leche noche coche pocho pacho peche ancho
    abrazo abrazos hinchar codos cuellos corazones pecas pecado fuera fuerte puerta muerto nuestro
    hombrera hombreras duende derecho cabezal dormir dormilon horario hormigon
"""
SPANISH_GRAMMAR = Grammar(
    happened=re.compile(
        r"(ha|han|habia|tiene|tuvo|tenia|esta|estaba|estuvo|es|era|fue|le|les|se|sufrio|sufre|cayo|"
        r"dio|dice|perdio|murio|rompio|lleva|llevo|anda|empezo|acabo|casi|con|que|siente|nota|noto|"
        r"sintio|toma|tomo|sangra|va|hizo|hace|puede|podia|\w+(aba|ado|ido|io|ieron|aron))(?!\w)"
    ),
    goes_on=re.compile(
        r"(y |luego |pero |que |se |le |tiene|tuvo|esta|estaba|ha|su |sus |"
        r"no (puede|podia|responde)|con |despues |cayo|perdio|\w+(aba|io|ado|ido) )"
    ),
    owners=frozenset(),
    likened=frozenset({"como", "parece", "parecia"}),
    beside_me=frozenset(),
    no_words=frozenset({"no", "nada", "ninguno", "ninguna", "cero", "nunca", "negativo"}),
    after_no=frozenset({"y", "gracias", "por", "haha", "jaja"}),
    own_in_list=frozenset(
        {"me", "mi", "tengo", "noto", "siento", "estoy", "pero", "solo", "es", "he"}
    ),
)
SPANISH = WordSet(
    language="es",
    concepts={
        **HEART,
        **HEAD,
        **LIMB,
        **PERSON,
        **PEOPLE,
        **NEGATION,
        **TALK,
        **TINGLE,
        **SITES,
    },
    grammar=SPANISH_GRAMMAR,
    denial_passes_over=WIDE_PLACES
    | (frozenset(SITES) - {"pain_words", "sudden_sharp", "stopped_set", "everyday"})
    | {"hypothetical", "no_weakness", "passed", "hang"},
    written_out={slip: word for slip, word in WRITTEN_OUT.items() if slip != word},
    mended_to=frozenset(MENDED_TO.split()),
    protected=frozenset(PROTECTED.split()),
)
"""Spanish as athletes type it."""
