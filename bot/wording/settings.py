"""The settings: what stands there, how it is changed, and what the coach hears of it."""

from collections.abc import Sequence
from typing import Any

from bot.wording import intake
from bot.wording.intake import NAMES, TOPICS, shown
from bot.wording.labels import label
from bot.wording.tongue import Marked, Tongue, tongue_of

LANGUAGES = ("en", "es")
"""Under whose names a setting may be written, whatever the person's own language."""

OWN_NAMES = {"elsewhere": ("other training",), "event": ("event",), "zone": ("zone", "city"),
             "evening_at": ("evening", "tarde"),
             "session_at": ("time",), "months": ("trained",), "decimal_mark": ("decimals",),
             "mass_kg": ("weight",), "injury": ("injury", "injuries"), "adult": ("age",),
             "band": ("bands",)}  # fmt: skip
"""What people write beside the name that the list shows."""


def screen(tongue: Tongue, answers: Sequence[tuple[str, Any]]) -> str:
    """List every setting as it stands."""
    head = tongue.say("<b>Your settings.</b> Tap one to change it.")
    lines = [intake.answered(tongue, key, value) for key, value in answers]
    hint = tongue.say("Or write it at once, like <code>/settings minutes 45</code>.")
    return "\n".join([head, "", *lines, "", hint])


def names_of(key: str) -> tuple[str, ...]:
    """Return the names under which a setting can be written, in every language."""
    own = tuple(tongue_of(language).say(NAMES[key]) for language in LANGUAGES)
    return (*own, *OWN_NAMES.get(key, ()), key)


def name_label(tongue: Tongue, key: str) -> str:
    """Label the button of one setting."""
    return label(tongue, NAMES[key])


def all_label(tongue: Tongue) -> str:
    """Label the button back to the list."""
    return label(tongue, "All settings")


def question(tongue: Tongue, key: str, *, coach: str, now: Any, above: str = "") -> str:
    """Ask a question of the intake anew, with what stands there now."""
    is_written = now not in ("", None)
    line = tongue.say("Now: {value}", value=shown(tongue, key, now)) if is_written else ""
    asked = intake.asked(tongue, key, coach=coach)
    return "\n".join(part for part in (above, line, asked) if part)


def unclear(tongue: Tongue, why: str) -> str:
    """Say what to send instead."""
    return intake.unclear(tongue, why)


def which_place(tongue: Tongue) -> str:
    """More than one zone may be meant."""
    return intake.unclear(tongue, "which_place")


def which_hour(tongue: Tongue) -> str:
    """An hour without its half of the day."""
    return intake.unclear(tongue, "which_hour")


def partly(tongue: Tongue, key: str, value: Sequence[Any], unsure: Sequence[str]) -> str:
    """Some of a list was understood."""
    return intake.partly(tongue, key, value, unsure)


def unknown(tongue: Tongue) -> str:
    """No setting has that name."""
    return tongue.say(
        "I know no setting of that name. Tap one, or write it like "
        "<code>/settings minutes 45</code>."
    )


def changed(tongue: Tongue, key: str, value: Any, *, is_same: bool, is_planned_anew: bool) -> str:
    """Play a changed setting back, with what follows from it."""
    line = intake.answered(tongue, key, value)
    if is_same:
        return tongue.say("{line}. That is as it was.", line=Marked(line))
    if is_planned_anew:
        then = tongue.say("The coming days are planned anew. A session that was sent stands.")
        return f"{line}\n{then}"
    return line


def questions_first(tongue: Tongue) -> str:
    """The first questions are not over yet."""
    return tongue.say(
        "First come the questions that are open here. "
        "You can change every answer in the list at their end."
    )


def not_asked_now(tongue: Tongue) -> str:
    """A button of a question that makes no sense any more."""
    return tongue.say("That is not asked any more. /settings shows what can be changed.")


def coach_is_asked(tongue: Tongue, *, coach: str) -> str:
    """What would lift care is for the coach to decide."""
    return tongue.say(
        "{coach} is asked about that. Until then it stays as it was, to be careful.", coach=coach
    )


def lifted_to_athlete(tongue: Tongue, *, coach: str) -> str:
    """The coach took an answer off."""
    return tongue.say("{coach} has changed your health answers as you asked.", coach=coach)


def left_to_athlete(tongue: Tongue, *, coach: str) -> str:
    """The coach left it as it is."""
    return tongue.say("{coach} leaves your health answers as they are for now.", coach=coach)


def changed_to_coach(tongue: Tongue, *, name: str, key: str, old: Any, new: Any) -> str:
    """Tell the coach what an athlete changed, in a line."""
    return tongue.say(
        "<b>{name}</b> changed a setting. {what}: {old} → <b>{new}</b>. "
        "The coming days are planned anew.",
        name=name,
        what=tongue.say(NAMES[key]),
        old=shown(tongue, key, old),
        new=shown(tongue, key, new),
    )


def country_to_coach(tongue: Tongue, *, name: str, zone: str, number: str | None) -> str:
    """Tell the coach that an athlete is in another country, where another number may hold."""
    told = (
        tongue.say("Safety messages name {number} there.", number=number)
        if number
        else tongue.say("Safety messages say “your local emergency number” there: /emergency.")
    )
    return tongue.say(
        "<b>{name}</b> is now in the time zone {zone}. {told}",
        name=name,
        zone=zone,
        told=Marked(told),
    )


def topics_to_coach(
    tongue: Tongue, *, name: str, topics: Sequence[str], has_signs: bool, is_held: bool
) -> str:
    """Tell the coach which health answers are new, and what waits for them."""
    parts = [
        tongue.say("<b>{name}</b> now answers these health questions with yes:", name=name),
        *(tongue.say("· “{topic}”", topic=tongue.say(TOPICS[key])) for key in topics),
    ]
    if has_signs:
        parts.append(_signs(tongue, name))
    if is_held:
        parts.append(
            tongue.say(
                "Nothing is sent until you let {name} go on. Stage and plan stay.", name=name
            )
        )
    return "\n".join(parts)


def injury_to_coach(tongue: Tongue, *, name: str, said: str) -> str:
    """Hand on what an athlete adds about an earlier injury."""
    told = said or tongue.say("told to the coach in person")
    return tongue.say(
        "<b>{name}</b> adds about an earlier injury: “{said}”. What its joint loads keeps to the "
        "first stage. /giveback gives it back.",
        name=name,
        said=told,
    )


def guardian_first(tongue: Tongue, *, coach: str) -> str:
    """Somebody under 18: an adult has to be spoken with before anything goes on."""
    return tongue.say(
        "Thank you. {coach} speaks with your parent or guardian first. "
        "No session comes until then. What you write here goes to {coach}.",
        coach=coach,
    )


def minor_to_coach(tongue: Tongue, *, name: str) -> str:
    """An athlete says to be under 18: a guardian comes first."""
    return tongue.say(
        "<b>{name}</b> now says to be under 18. I ask for a guardian's contact. "
        "Nothing is sent until you have spoken with the guardian and let {name} go on.",
        name=name,
    )


def guardian_to_coach(tongue: Tongue, *, name: str, contact: str) -> str:
    """Hand on a guardian's contact."""
    return tongue.say("Guardian of <b>{name}</b>: {contact}.", name=name, contact=contact)


def lift_question(tongue: Tongue, *, name: str, topics: Sequence[str], has_signs: bool) -> str:
    """Ask the coach whether an answer that held something back may go."""
    if not topics:
        return tongue.say("<b>{name}</b> now says to be 18 or older. Is that right?", name=name)
    parts = [
        tongue.say("<b>{name}</b> no longer answers these with yes:", name=name),
        *(tongue.say("· “{topic}”", topic=tongue.say(TOPICS[key])) for key in topics),
        tongue.say("They stay as they are until you decide."),
    ]
    if has_signs:
        parts.append(_signs(tongue, name))
    return "\n".join(parts)


def _signs(tongue: Tongue, name: str) -> str:
    return tongue.say(
        "These signs belong before a licensed clinician. "
        "Decide only when {name} reports having been seen and cleared to train.",
        name=name,
    )


def lift_label(tongue: Tongue) -> str:
    """Label the button that takes an answer off."""
    return label(tongue, "Take it over")


def leave_label(tongue: Tongue) -> str:
    """Label the button that leaves an answer as it is."""
    return label(tongue, "Leave it as it is")


def nothing_to_lift(tongue: Tongue) -> str:
    """The answer is gone already."""
    return tongue.say("That is settled already, so nothing was changed.")


def lifted_to_coach(tongue: Tongue, *, name: str, is_waiting: bool) -> str:
    """Confirm to the coach what was taken over."""
    if is_waiting:
        return tongue.say("Taken over for {name}, who still waits for you to go on.", name=name)
    return tongue.say("Taken over for {name}. The coming days are planned anew.", name=name)


def left_to_coach(tongue: Tongue, *, name: str) -> str:
    """Confirm to the coach that nothing changed."""
    return tongue.say("Left as it is, and {name} is told.", name=name)


def goes_on_to_coach(tongue: Tongue, *, name: str) -> str:
    """Confirm to the coach that training goes on."""
    return tongue.say("{name} goes on, in the same stage. The days are planned anew.", name=name)
