"""How somebody new answers the welcome and the questions of the intake: mostly by taps."""

from dataclasses import dataclass

from demo_scenario.eye import labels
from demo_scenario.loopback.screen import ShownMessage
from demo_scenario.team import AthleteEntry
from scheduler.catalogue.values import Equipment
from scheduler.training.values import ReferenceValues

TOOLS = {
    Equipment.BOX: "Box or sturdy chair",
    Equipment.HIGH_BAR: "Bar to hang from",
    Equipment.LOW_BAR: "Low bar, hip height",
    Equipment.DUMBBELLS: "Dumbbells",
    Equipment.BAND: "Bands",
}
DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")


@dataclass(frozen=True, slots=True)
class IntakeAnswer:
    """Taps one after another, or a line of text."""

    taps: tuple[str, ...] = ()
    text: str = ""


def answer_of_intake(message: ShownMessage, entry: AthleteEntry) -> IntakeAnswer | None:
    """Return how a question of the intake is answered; None when it is none of them."""
    agree = next((one for one in labels(message) if one in {"Agree", "I agree", "Yes"}), None)
    if agree is not None and "agree" in message.text:
        return IntakeAnswer(taps=(agree,))
    if "Looks right" in labels(message):
        return IntakeAnswer(taps=("Looks right",))
    if "At what time" in message.text and f"{entry.session_at:%H:%M}" not in labels(message):
        return IntakeAnswer(text=f"{entry.session_at:%H:%M}")
    for words, answer in _answers(entry).items():
        if words in message.text:
            return answer
    return None


def _answers(entry: AthleteEntry) -> dict[str, IntakeAnswer]:
    """Map a few words of each question to the answer of this person."""
    city = entry.zone.rsplit("/", 1)[-1].replace("_", " ")
    dumbbells = tuple(f"{kg:g} kg" for kg in entry.dumbbells_kg)
    return {
        "Are you 18 or older": IntakeAnswer(
            taps=("Under 18",) if entry.guardian else ("18 or older",)
        ),
        "Then a parent or guardian": IntakeAnswer(text=entry.guardian or ""),
        "Which one shall we hold you to": IntakeAnswer(
            taps=("Men's table",) if entry.reference is ReferenceValues.MEN else ("Women's table",)
        ),
        "What do you weigh": IntakeAnswer(text=f"{entry.body_mass_kg:g} kg"),
        "How long have you trained": IntakeAnswer(taps=("Under 6 months",)),
        "When did you last train": IntakeAnswer(taps=("Within the last week",)),
        "On which days": IntakeAnswer(taps=(*(DAYS[day] for day in entry.weekdays), "Done")),
        "How many minutes": IntakeAnswer(taps=(f"{entry.minutes} min",)),
        "What can you use there": IntakeAnswer(
            taps=(*(label for tool, label in TOOLS.items() if tool in entry.equipment), "Done")
        ),
        "Which dumbbells": IntakeAnswer(taps=(*dumbbells, "Done")),
        "Which bands": IntakeAnswer(taps=("Light", "Medium", "Done")),
        "train anything else every week": IntakeAnswer(taps=("Nothing else",)),
        "goal or an event": IntakeAnswer(text="do my first support hold, no date"),
        "Which big city": IntakeAnswer(text=city),
        "At what time": IntakeAnswer(taps=(f"{entry.session_at:%H:%M}",)),
        "Now your health": IntakeAnswer(taps=("None of these",)),
    }
