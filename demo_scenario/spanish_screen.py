"""What somebody who uses the bot in Spanish sees, told as the other players know it."""

import re
from dataclasses import dataclass

from demo_scenario.loopback.screen import ShownMessage

ENGLISH = "en"
TEXTS = {
    "Cada prueba empieza con una serie fácil": "Each test begins with an easy set",
    "Después, lo mejor que puedas": "Then your best",
    "buenas reps más te quedaban?": "were in you?",
    "segundos más te quedaban?": "were in you?",
    "¿Cómo de dura fue toda la sesión?": "How hard was the whole session?",
    "¿Te dolió algo": "Did anything hurt",
    "¿Qué te salió?": "What did you get?",
    "¿Dónde te duele?": "Where does it hurt?",
    ": ¿qué lado?": ": which side?",
    "Buenos días. ¿Cómo está": "Good morning. Your",
    "de 0 a 10? 0 es nada": "0 to 10? 0 is nothing",
    "¿pasa algo de esto?": "is any of this so?",
    "Una pregunta más": "One more check",
    "¿Cómo fueron el sueño": "How were sleep and mood",
    "larga. ¿Cómo te fue?": "long. How was it?",
    "¿por qué la dejas?": "why leave it out?",
    "¿Qué pasa hoy?": "What is it today?",
    "Si ningún botón encaja": "If no button fits",
    "tras unos minutos": "after some minutes",
    "Escríbelo así": "Write it like this",
    "para cuando te queden unos": "stop with about",
    "para cuando te queden": "stop with",
    "un intento de tu lista": "a try of your checklist",
    "solo el brazo izquierdo": "left arm only",
    "solo el brazo derecho": "right arm only",
    "cada brazo": "each arm",
    "por mano": "a hand",
    "sobre el cuerpo": "on the body",
    "banda ligera": "light band",
    "banda media": "medium band",
    "banda fuerte": "heavy band",
}
BUTTONS = {
    "Todo según el plan": "All as planned",
    "Paso a paso": "Step by step",
    "Hoy no puedo": "Can't today",
    "Nada me dolió": "Nothing hurt",
    "Algo me duele": "Something hurts",
    "Los dos bien": "Both fine",
    "Mal sueño": "Sleep poor",
    "Bien, sin entrenar": "Well, without training",
    "Nada de esto": "None of these",
    "Sin tiempo": "No time",
    "Prefiero no hacerla": "Rather not",
    "Cambiar un número": "Change a number",
}
SAID = {english: spanish for spanish, english in BUTTONS.items()}


@dataclass(frozen=True, slots=True)
class Understood:
    """A language in which a person reads the screen and finds the buttons."""

    language: str

    def message(self, message: ShownMessage) -> ShownMessage:
        """Return a message as a reader of English would have seen it."""
        if self.language == ENGLISH:
            return message
        text = message.text
        for spanish, english in TEXTS.items():
            text = text.replace(spanish, english)
        rows = tuple(
            tuple(one.model_copy(update={"text": BUTTONS.get(one.text, one.text)}) for one in row)
            for row in message.buttons
        )
        return message.model_copy(update={"text": text, "buttons": rows})

    def label(self, label: str) -> str:
        """Return what stands on the real button."""
        return label if self.language == ENGLISH else SAID.get(label, label)

    def said(self, text: str) -> str:
        """Return what this person writes for it: the arms by their own names."""
        if self.language == ENGLISH:
            return text
        return re.sub(r"\b[LR]\b", lambda arm: "izq" if arm[0] == "L" else "der", text)
