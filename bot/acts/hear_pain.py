"""Pain said in words: recorded at once, the careful way, and asked about where it is unclear."""

from collections.abc import Sequence
from typing import Any

from bot.acts import (
    morning_question,
    pain_ask,
    pain_consequences,
    pain_go_on,
    pain_nothing,
    pain_picture,
    pain_report,
    pain_talk,
)
from bot.acts.reading_context import at_hand, read_at_hand
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.reading.pain_numbers import PainNumbers, pain_numbers, word_count
from bot.reading.red_flag_pain import PainWords
from bot.reading.red_flags import RedFlagReading
from bot.reading.values import Asked, PainMention, Reading, Recorded
from bot.turn import Turn
from bot.wording import pain as words
from scheduler.pain.events import Occasion, PainSign
from scheduler.pain.values import Side, Site
from storage.queries import people, training
from storage.records.people import Athlete, Person
from storage.records.wire import OpenQuestion

NUMBER_WORDS_MOST = 16  # [words] ch: in a longer text a bare number may be anything
BARE_WORDS_MOST = 3  # [words] ch: "no pain", "nothing hurt today": nothing else is said


def command(turn: Turn, person: Person, rest: str, event: Wrote) -> Outcome:
    """``/pain``: what stands behind it is a report; else the place is asked for."""
    athlete = people.athlete(turn.tx, person.id)
    said = event.model_copy(update={"text": f"pain {rest}"})
    mentions = (
        read_at_hand(turn, person, said.text, at_hand(turn, person, said, None), None).pains
        if rest
        else ()
    )
    if athlete is None or not hear(turn, person, athlete, mentions, said, None):
        pain_ask.ask_where(turn, person, session_id=None)
    return Outcome.COMMAND


def hear(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    mentions: Sequence[PainMention],
    event: Wrote,
    question: OpenQuestion | None,
    *,
    may_ask: bool = True,
) -> bool:
    """Hear every mention of pain in a message; True when there was any.

    ``may_ask`` is False where the message raised a graver matter: then what is unclear about the
    pain waits, and no second question stands beside the first.
    """
    heard = False
    for mention in mentions:
        if _answers_morning(turn, person, athlete, mention, question):
            heard = True
        elif _is_denial(mention):
            heard = _denied(turn, person, event, question) or heard
        else:
            _report(turn, person, athlete, mention, event, question, may_ask=may_ask)
            heard = True
    return heard


def meant(reading: Reading, flags: RedFlagReading, text: str) -> tuple[PainMention, ...]:
    """Return what of a reading's pains is a report of the athlete, completed by the words.

    What is said of somebody else, asked, supposed, long past or plain soreness is none, unless a
    number or a sharp onset stands beside it. What is unclear is one.
    """
    own = flags.pain
    kept = [
        one
        for one in reading.pains
        if own is not None or one.score is not None or not flags.is_no_report
    ]
    if not kept and own is not None and not flags.candidates and (own.site or own.signs):
        kept = [PainMention(sites=(own.site,) if own.site else (), side=own.side)]
    is_plain = not isinstance(reading, Recorded) and word_count(text) <= NUMBER_WORDS_MOST
    numbers = pain_numbers(text, is_asked=False) if is_plain else None
    if isinstance(reading, Asked) and numbers is not None and numbers.count > 1:
        numbers = None  # several figures may be results: those are asked about
    return tuple(_completed(one, own, numbers) for one in kept)


def _completed(
    mention: PainMention, own: PainWords | None, numbers: PainNumbers | None
) -> PainMention:
    """Add the number, the place, the side and the signs that the other readers did not see."""
    said = numbers.score if numbers is not None else None
    is_higher = said is not None and (mention.score is None or said > mention.score)
    if numbers is not None and is_higher and (mention.score is None or numbers.count == 1):
        mention = mention.model_copy(update={"score": numbers.score, "must_ask": numbers.must_ask})
    if own is None:
        return mention
    return mention.model_copy(
        update={
            "side": mention.side or own.side,
            "sites": mention.sites or ((own.site,) if own.site else ()),
            "is_sharp": mention.is_sharp or own.is_sudden_sharp,
            "stopped_a_set": mention.stopped_a_set or PainSign.STOPPED_A_SET in own.signs,
            "disturbs": PainSign.DISTURBS_EVERYDAY_USE in own.signs,
        }
    )


def _is_denial(mention: PainMention) -> bool:
    return mention.score == 0 and not mention.sites


def _denied(turn: Turn, person: Person, event: Wrote, question: OpenQuestion | None) -> bool:
    """ "No pain" answers the session's question, as its button does, also before it is asked."""
    session_id = question.subject.get("session") if question else None
    if question is not None and question.kind == "pain" and session_id is not None:
        pain_nothing.close_question_of(turn, person, session_id)
        return True
    if len(event.text.split()) > BARE_WORDS_MOST or any(one.isdigit() for one in event.text):
        return False  # beside results or other words: those are answered, and the end asks again
    begun = [
        one
        for one in training.open_sessions(turn.tx, person.id)
        if (one.has_results if one.is_test_day else any(item.is_reported for item in one.items))
    ]
    if begun:
        pain_nothing.close_question_of(turn, person, begun[0].id)
    else:
        turn.say(person, words.nothing_hurt(turn.tongue(person)))
    return True


def _answers_morning(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    mention: PainMention,
    question: OpenQuestion | None,
) -> bool:
    """A number behind the morning's question is its answer, unless it names another place."""
    if question is None or question.kind != "morning" or mention.score is None:
        return False
    site = Site(question.subject["site"])
    if mention.sites and site not in mention.sites:
        return False
    morning_question.answer(
        turn,
        person,
        athlete,
        site=site,
        side=Side(question.subject["side"]),
        score=mention.score,
        must_ask=mention.must_ask,
    )
    return True


def _report(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    mention: PainMention,
    event: Wrote,
    question: OpenQuestion | None,
    *,
    may_ask: bool,
) -> None:
    is_bare = not mention.sites and mention.score is not None
    if is_bare and question is not None:
        is_taken = answer_question(turn, person, athlete, mention, event, question)
        if is_taken:
            return
    before = pain_picture.picture_of(turn, athlete)
    sessions = training.open_sessions(turn.tx, person.id)
    session_id = sessions[0].id if sessions else None
    key = _corrected(turn, athlete, mention, event) or pain_report.add(
        turn,
        athlete,
        site=mention.sites[0] if mention.sites else Site.ELSEWHERE,
        side=mention.side or Side.BOTH,
        score=mention.score,
        must_ask=mention.must_ask,
        signs=_signs(mention),
        occasion=Occasion.AFTER_SESSION if session_id else Occasion.MESSAGE,
        session_id=session_id,
        message_id=event.message_id,
        is_site_said=len(mention.sites) == 1,
        is_side_said=mention.side is not None,
    )
    pain_consequences.follow(turn, person, athlete, before, words_said=event.text)
    if may_ask:
        _ask_what_is_unclear(turn, person, athlete, mention, key, session_id)


def answer_question(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    mention: PainMention,
    event: Wrote,
    question: OpenQuestion,
) -> bool:
    """Take a number as the answer to the open question; False where none asks for one."""
    if question.kind == "pain.score":
        _answer_number(turn, person, athlete, mention, question)
        return True
    if question.kind == "pain.place":
        pain_talk.report(
            turn,
            person,
            athlete,
            question.subject,
            score=mention.score,
            must_ask=mention.must_ask,
            signs=_signs(mention),
            message_id=event.message_id,
        )
        return True
    return False


def _corrected(turn: Turn, athlete: Athlete, mention: PainMention, event: Wrote) -> str | None:
    """Let an edited message correct the report that it made, instead of making another."""
    if not event.is_edit:
        return None
    for key in pain_report.keys_of_message(turn, athlete, event.message_id):
        known = pain_report.find(turn, athlete, key)
        if known is not None and (not mention.sites or known.site in mention.sites):
            return pain_report.amend(
                turn, athlete, key, side=mention.side, score=mention.score, sign=_sign(mention)
            )
    return None


def _sign(mention: PainMention) -> PainSign | None:
    return next(iter(_signs(mention)), None)


def _ask_what_is_unclear(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    mention: PainMention,
    key: str,
    session_id: int | None,
) -> None:
    about: dict[str, Any] = {"report": key, "session": session_id}
    if len(mention.sites) != 1:
        sites = [one.value for one in mention.sites]
        about |= {"has_side": mention.side is not None, "sites": sites}
        pain_ask.ask_unclear(turn, person, about)
    elif mention.side is None and not pain_picture.is_midline(mention.sites[0]):
        pain_ask.ask_unclear(turn, person, {**about, "site": mention.sites[0].value})
    else:
        pain_go_on.go_on(turn, person, athlete, key, session_id=session_id)


def _answer_number(
    turn: Turn, person: Person, athlete: Athlete, mention: PainMention, question: OpenQuestion
) -> None:
    before = pain_picture.picture_of(turn, athlete)
    key = pain_report.amend(turn, athlete, question.subject["report"], score=mention.score)
    pain_consequences.follow(turn, person, athlete, before, words_said=f"{mention.score}/10")
    if key is not None:
        session_id = question.subject.get("session")
        pain_go_on.go_on(turn, person, athlete, key, session_id=session_id)


def _signs(mention: PainMention) -> list[PainSign]:
    found = []
    if mention.is_sharp:
        found.append(PainSign.SUDDEN_SHARP)
    if mention.stopped_a_set:
        found.append(PainSign.STOPPED_A_SET)
    if mention.disturbs:
        found.append(PainSign.DISTURBS_EVERYDAY_USE)
    return found
