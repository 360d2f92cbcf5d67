"""What an athlete is told when something needs a person: calm, short, never a condition."""

from bot.wording.emergency import call
from bot.wording.follow_ups import ANSWERS, OTHER_ANSWERS, QUESTIONS
from bot.wording.pain import TAP_LINES
from bot.wording.tongue import Tongue
from scheduler.pain.events import Certainty
from scheduler.pain.red_flags import RED_FLAGS, FollowUp, RedFlag, Stops
from scheduler.pain.tap_list import TapLine
from scheduler.pain.values import Level, Urgency


def told(
    tongue: Tongue, flag: RedFlag, *, coach: str, number: str | None, stops: Stops | None = None
) -> str:
    """Say what to do now; ``stops`` is how much training it stops where that is known."""
    rule = RED_FLAGS[flag]
    if rule.is_private:
        return _crisis(tongue, number)
    if rule.level is Level.EMERGENCY:
        return _emergency(tongue, coach, number)
    return _clinician(tongue, flag, coach, number, stops or rule.stops)


def asked(tongue: Tongue, flag: RedFlag, *, coach: str, number: str | None) -> str:
    """Ask about a doubt, which counts until it is answered."""
    rule = RED_FLAGS[flag]
    question = tongue.say(QUESTIONS[rule.follow_up])
    if flag is RedFlag.CHEST_INSIDE:
        return tongue.say(
            "Pressure or tightness inside, or with breathlessness, sweating, arm or jaw: "
            "call {number} now. Soreness of the muscle when you press or move it: tap here. "
            "Stop training until this is clear.",
            number=_number(tongue, number),
        )
    if rule.level is Level.EMERGENCY:
        return tongue.say(
            "Please stop. {question} If yes, or if you are unsure, call {number} now. "
            "Nobody may be watching this chat.",
            question=question,
            number=_number(tongue, number),
        )
    return tongue.say(
        "Please stop for now. {question} {coach} can see your answer, and is told if none comes.",
        question=question,
        coach=coach,
    )


def question_labels(tongue: Tongue, follow_up: FollowUp) -> tuple[str, str]:
    """Return the buttons of a question: what confirms it, what denies it."""
    yes, no = ANSWERS.get(follow_up, OTHER_ANSWERS)
    return tongue.say(yes), tongue.say(no)


def denied(tongue: Tongue, *, coach: str) -> str:
    """The doubt was answered away."""
    return tongue.say(
        "Thank you, noted. If that changes, stop and get help. {coach} can see your answer.",
        coach=coach,
    )


def already_passed_on(tongue: Tongue) -> str:
    """The button of a doubt that is settled."""
    return tongue.say(
        "That is passed on already. Only a person can take it back. "
        "If you feel worse, get help now."
    )


def answer_said(tongue: Tongue, follow_up: FollowUp, certainty: Certainty) -> str:
    """Write the answer that the athlete tapped, for the coach's alert."""
    yes, no = question_labels(tongue, follow_up)
    return no if certainty is Certainty.DENIED else yes


def tapped_line(tongue: Tongue, line: TapLine) -> str:
    """Write a tapped line of the short list for the coach's alert."""
    return tongue.say(TAP_LINES[line])


def medicine_deferred(tongue: Tongue, *, coach: str) -> str:
    """A question that only a licensed person may answer."""
    return tongue.say(
        "That is a question for a pharmacist, a doctor or a physiotherapist. "
        "I cannot answer it. {coach} sees that you asked.",
        coach=coach,
    )


def medicine_to_coach(tongue: Tongue, name: str, words: str) -> str:
    """Tell the coach that it was asked."""
    return tongue.say(
        "<b>{name}</b> asked about medicine or a diagnosis, and was sent to licensed people:\n"
        "{words}",
        name=name,
        words=words,
    )


def _emergency(tongue: Tongue, coach: str, number: str | None) -> str:
    return tongue.say(
        "Please stop now. Call {number} now, or have somebody call. "
        "Do not wait for an answer here: nobody may be watching this chat. "
        "{coach} is being told. All sessions stop.",
        number=_number(tongue, number),
        coach=coach,
    )


def _clinician(tongue: Tongue, flag: RedFlag, coach: str, number: str | None, stops: Stops) -> str:
    rule = RED_FLAGS[flag]
    if rule.urgency is Urgency.TODAY:
        return tongue.say(
            "Please stop upper-body training. Have this seen by a doctor today, "
            "in an emergency department where nothing else is open. {coach} is told now. "
            "If it gets worse, call {number}.",
            coach=coach,
            number=_number(tongue, number),
        )
    if stops is Stops.UPPER_BODY:
        return tongue.say(
            "Please stop upper-body training for now. Have it looked at by a doctor "
            "or physiotherapist. {coach} is told. If it gets worse, do not wait.",
            coach=coach,
        )
    if stops is Stops.ITEM:
        return tongue.say(
            "We leave that movement out. If the tingling comes back, lasts, or an arm feels weak, "
            "have it looked at today. {coach} is told.",
            coach=coach,
        )
    return tongue.say(
        "We leave out what loads that place. Please have it looked at by a doctor "
        "or physiotherapist. {coach} is told. If it gets worse, do not wait.",
        coach=coach,
    )


def _crisis(tongue: Tongue, number: str | None) -> str:
    return tongue.say(
        "I am glad you wrote that. You matter, and this needs a person, not a bot. "
        "Please call {number} or a crisis line now. Ask somebody to stay with you. "
        "I have told your coach only that you need a person now. "
        "I cannot promise to keep it secret.",
        number=_number(tongue, number),
    )


def _number(tongue: Tongue, number: str | None) -> str:
    return call(tongue, number)
