"""The one line in languages that the bot does not speak: passed on, and what to do in need."""

from collections.abc import Mapping
from html import escape

LINES: Mapping[str, str] = {
    "pt": "Passei a sua mensagem a {coach}. Numa emergência, ligue {number}.",
    "de": "Ich habe die Nachricht an {coach} weitergegeben. Im Notfall bitte {number} anrufen.",
    "fr": "J’ai transmis votre message à {coach}. En cas d’urgence, appelez {number}.",
}
UNKNOWN_NUMBER: Mapping[str, str] = {
    "pt": "para o número local de emergência",
    "de": "die örtliche Notrufnummer",
    "fr": "le numéro d’urgence local",
}
"""What stands for the number where the coach has confirmed none."""


def passed_on(language: str, *, coach: str, number: str | None) -> str:
    """Say in the athlete's own words that a person has the message, and whom to call in need."""
    told = number or UNKNOWN_NUMBER[language]
    return LINES[language].format(coach=escape(coach, quote=False), number=told)
