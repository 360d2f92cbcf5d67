"""The end of the intake: what was understood, what comes now, and what the coach hears."""

from collections.abc import Mapping, Sequence
from datetime import date, time
from typing import Any

from bot.wording import tests_found
from bot.wording.coach_pain import PlaceFacts, place_line
from bot.wording.dates import day
from bot.wording.emergency import call
from bot.wording.intake import NAMES, TOPICS, answered, shown
from bot.wording.labels import label
from bot.wording.tongue import Marked, Tongue


def summary(tongue: Tongue, answers: Sequence[tuple[str, Any]], *, above: str = "") -> str:
    """List what was understood, numbered, to be changed or confirmed."""
    head = tongue.say("<b>This is what I understood.</b> Tap a line to change it.")
    lines = [
        tongue.say("{n}. {line}", n=n, line=Marked(answered(tongue, key, value)))
        for n, (key, value) in enumerate(answers, start=1)
    ]
    return "\n".join([*([above, ""] if above else []), head, *lines])


def right_label(tongue: Tongue) -> str:
    """Label the button that confirms the list."""
    return label(tongue, "Looks right")


def change_label(tongue: Tongue, number: int, key: str) -> str:
    """Label the button that changes one line."""
    return label(tongue, "{n}. {name}", n=number, name=tongue.say(NAMES[key]))


def begins(
    tongue: Tongue,
    *,
    coach: str,
    on: date,
    at: time,
    is_now: bool,
    has_tests: bool = False,
    number: str | None = None,
) -> str:
    """Training begins: when the first session comes, and a short lesson."""
    when = (
        tongue.say("Your first session comes today, in a moment.")
        if is_now
        else tongue.say(
            "Your first session comes on {day} at {at}.", day=day(tongue, on), at=f"{at:%H:%M}"
        )
    )
    lesson = tongue.say(
        "<b>Before you start</b>\n"
        "The first two weeks are easy on purpose: few sets, about half of what you could do.\n"
        "<b>In reserve</b> means what you had left when you stopped: seconds, or clean "
        "repetitions. After the last set I ask for it. Stop while that much is left.\n"
        "<b>Soreness</b> is dull, in the muscle, and comes a day or two later. "
        "Training may go on with it.\n"
        "<b>Pain</b> is sharp, in or near a joint, or makes you move differently. "
        "Stop that movement and tell me, with a number from 0 to 10. /pain does it too.\n"
        "If something worries you, see a doctor or physiotherapist. "
        "In an emergency call {call}. Nobody may be watching this chat.",
        call=call(tongue, number),
    )
    ask = tongue.say("/help says what I understand. Anything else you write goes to {coach}.",
                     coach=coach)  # fmt: skip
    tests = [tests_found.begins_with_tests(tongue)] if has_tests else []
    return "\n\n".join([when, *tests, lesson, ask])


def waits(tongue: Tongue, *, coach: str) -> str:
    """Nothing is trained until the coach has looked."""
    return tongue.say(
        "Thank you. {coach} looks at your health answers before you start. "
        "No session comes until then. What you write here goes to {coach}.",
        coach=coach,
    )


def signs(tongue: Tongue, *, number: str | None) -> str:
    """What to do about signs that were named in the health questions."""
    return tongue.say(
        "Please see a doctor about what you ticked before you train. "
        "Pressure or pain in the chest, fainting, or breathlessness that does not settle: "
        "call {call} now. Nobody may be watching this chat.",
        call=call(tongue, number),
    )


def pain_now(tongue: Tongue, *, coach: str) -> str:
    """Something hurts already."""
    return tongue.say(
        "You said that something hurts now. Send /pain, so that {coach} knows where and how much. "
        "If it gets worse or worries you, see a doctor or physiotherapist.",
        coach=coach,
    )


def guardian_waits(tongue: Tongue, *, coach: str) -> str:
    """An athlete under 18: an adult has to be spoken with first."""
    return tongue.say(
        "Thank you. {coach} speaks with your parent or guardian first. "
        "Then the questions go on here. No session comes until then. "
        "What you write here goes to {coach}.",
        coach=coach,
    )


def goes_on(tongue: Tongue, *, coach: str) -> str:
    """The coach has spoken with the guardian."""
    return tongue.say("{coach} has spoken with your guardian. We can go on.", coach=coach)


def let_start_told(tongue: Tongue, *, coach: str) -> str:
    """The coach has looked at the answers."""
    return tongue.say("{coach} has looked at your answers: you can start.", coach=coach)


def coach_begins(tongue: Tongue, *, name: str, on: date, lines: Sequence[str]) -> str:
    """Tell the coach that an athlete begins, and with what answers."""
    head = tongue.say(
        "<b>{name}</b> has finished the questions and begins. First session: {day}.",
        name=name,
        day=day(tongue, on),
    )
    return "\n".join([head, *lines])


def coach_waits(
    tongue: Tongue, *, name: str, screen: Sequence[str], has_signs: bool, lines: Sequence[str]
) -> str:
    """Ask the coach to look at the answers; nothing is sent to the athlete until then."""
    parts = [
        tongue.say("<b>{name}</b> has finished the questions and waits for you.", name=name),
        tongue.say("Answered with yes:"),
        *(tongue.say("· “{topic}”", topic=tongue.say(TOPICS[key])) for key in screen),
    ]
    if has_signs:
        parts.append(
            tongue.say(
                "These signs belong before a licensed clinician. "
                "Let {name} start only when {name} reports having been seen and cleared to train.",
                name=name,
            )
        )
    parts.append(
        tongue.say(
            "The screen is no diagnosis. Until you let {name} start, nothing is sent.", name=name
        )
    )
    return "\n".join([*parts, "", *lines])


def coach_guardian(tongue: Tongue, *, name: str, contact: str) -> str:
    """Ask the coach to speak with a guardian."""
    return tongue.say(
        "<b>{name}</b> is under 18. Guardian: {contact}. Nothing more is asked and nothing is "
        "programmed until you have spoken with the guardian and let {name} go on.",
        name=name,
        contact=contact,
    )


def answer_lines(tongue: Tongue, answers: Mapping[str, Any]) -> list[str]:
    """List the answers for the coach; the health topics are written out apart."""
    return [
        tongue.say("{name}: {value}", name=tongue.say(NAMES[key]), value=shown(tongue, key, value))
        for key, value in answers.items()
        if key in NAMES and key != "screen"
    ]


def hurts_line(tongue: Tongue, place: PlaceFacts) -> str:
    """Tell the coach what was reported as hurting while the questions went on."""
    return tongue.say("Reported meanwhile: {place}", place=Marked(place_line(tongue, place)))


def open_label(tongue: Tongue) -> str:
    """Label the button to the athlete's record."""
    return label(tongue, "Open the record")


def let_start_label(tongue: Tongue, *, is_guardian: bool) -> str:
    """Label the button that lets an athlete start, or go on."""
    if is_guardian:
        return label(tongue, "Guardian agrees: go on")
    return label(tongue, "I have looked: let them start")


def started_to_coach(tongue: Tongue, *, name: str, on: date) -> str:
    """Confirm to the coach that training begins."""
    return tongue.say("{name} starts. First session: {day}.", name=name, day=day(tongue, on))


def goes_on_to_coach(tongue: Tongue, *, name: str) -> str:
    """Confirm to the coach that the questions go on."""
    return tongue.say("Noted. The questions go on for {name}.", name=name)


def no_longer_waits(tongue: Tongue, *, name: str) -> str:
    """A button about an athlete who does not wait any more."""
    return tongue.say("{name} is not waiting any more, so nothing was changed.", name=name)
