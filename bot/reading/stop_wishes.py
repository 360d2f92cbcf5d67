"""A wish to stop: a set, the session, the messages or all of it. Which one is for taps to say."""

import re

from bot.reading.plain_letters import plain_letters

WHAT = (
    r"(?: (?:now|here|today|for today|this|it|all this|training|the training|"
    r"with this|with the training|doing this|the bot|this bot|using this|the session|this session|"
    r"the sessions|the program|the plan|coaching|messages|the messages|for now|please))*"
)
ESTO = (
    r"(?: (?:ya|aqui|hoy|por hoy|esto|todo esto|el entreno|de entrenar|con esto|"
    r"el entrenamiento|con el entrenamiento|el bot|la sesion|esta sesion|las sesiones|el plan|"
    r"los mensajes|por ahora|por favor|mas))*"
)
WISHES = tuple(
    re.compile(pattern)
    for pattern in (
        # english
        r"(?:please )?(?:stop|quit|cancel|unsubscribe)" + WHAT,
        r"(?:i )?(?:want|wanna|would like|need|have|wish|m going|am going|d like)(?: to)? "
        r"(?:stop|quit|leave|cancel|give up|give it up|drop out|unsubscribe)" + WHAT,
        r"(?:can|could|may|how do|how can) i (?:stop|quit|leave|cancel|unsubscribe|drop out)"
        + WHAT,
        r"i (?:quit|give up|m out|am out|m quitting|am quitting|m stopping|am stopping)" + WHAT,
        r"i (?:don t|do not|dont) want to "
        r"(?:go on|continue|train|do this|keep going)(?: any ?more)?" + WHAT,
        r"no more (?:sessions|messages|training)" + WHAT,
        # spanish, without accents
        r"(?:para|parar|basta|cancelar|baja|darme de baja)" + ESTO,
        r"(?:yo )?(?:quiero|quisiera|necesito|voy a|me gustaria) "
        r"(?:parar|dejarlo|dejar|salir|irme|abandonar|abandonarlo|cancelar|cancelarlo|"
        r"darme de baja|terminar)" + ESTO,
        r"(?:puedo|como puedo) (?:parar|dejarlo|dejar|salir|cancelar|darme de baja)" + ESTO,
        r"(?:lo dejo|me rindo|abandono)" + ESTO,
        r"(?:ya )?no quiero (?:seguir|continuar|entrenar|hacer esto)" + ESTO,
        r"no mas (?:sesiones|mensajes|entrenamientos)" + ESTO,
    )
)
LONGEST = 10  # [words] ch: a wish with its story is for the coach


def is_stop_wish(text: str) -> bool:
    """Tell whether a whole message is a wish to stop, and says nothing else.

    It reads no sign: what may be one is read before, on every message. "All" and "everything"
    are left out on purpose: such a wish is for a person.
    """
    said = " ".join(re.findall(r"[a-z0-9]+", plain_letters(text)))
    return len(said.split()) <= LONGEST and any(one.fullmatch(said) for one in WISHES)
