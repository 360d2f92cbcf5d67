"""What else is true of a pain: how it came, what it disturbs, and the short list of signs."""

from bot.acts import pain_ask, pain_consequences, pain_picture, pain_report, red_flag
from bot.acts.pain_ask import Arguments
from bot.acts.pain_go_on import go_on
from bot.acts.pain_taps import signs_of
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import pain as words
from bot.wording import red_flags as red_flag_words
from scheduler.pain.events import TapListAnswered
from scheduler.pain.tap_list import TapLine, flag_of_line
from storage.queries import people
from storage.records.people import Athlete, Person


def sign(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """What else was true of it."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    found = signs_of(arguments["sign"])
    key = arguments["report"]
    if pain_report.is_long_told(turn, athlete, key):
        return pain_ask.too_late(turn, person)
    if found is not None:
        before = pain_picture.picture_of(turn, athlete)
        key = pain_report.amend(turn, athlete, key, sign=found) or key
        said = turn.tongue(person).say(words.SIGNS[found])
        pain_consequences.follow(turn, person, athlete, before, words_said=said)
    go_on(
        turn,
        person,
        athlete,
        key,
        session_id=arguments.get("session"),
        edit=event.message_id,
        signs_asked=True,
    )
    return Outcome.SAFETY


def list_line(turn: Turn, person: Person, arguments: Arguments, event: Tapped) -> Outcome:
    """A line of the short list, or none of them."""
    athlete = people.athlete(turn.tx, person.id)
    if athlete is None:
        return Outcome.STALE_TAP
    if arguments["line"] and _stands(turn, athlete, TapLine(arguments["line"])):
        turn.say(person, red_flag_words.already_passed_on(turn.tongue(person)))
        return Outcome.STALE_TAP
    pain_picture.record_event(
        turn,
        person.id,
        TapListAnswered(key=pain_picture.new_key(turn, person.id), at_utc=turn.now),
    )
    if arguments["line"]:
        line = TapLine(arguments["line"])
        red_flag.raise_tapped(turn, person, athlete, flag_of_line(line), line)
        return Outcome.SAFETY
    go_on(
        turn,
        person,
        athlete,
        arguments["report"],
        session_id=arguments.get("session"),
        edit=event.message_id,
        signs_asked=True,
    )
    return Outcome.SAFETY


def _stands(turn: Turn, athlete: Athlete, line: TapLine) -> bool:
    """Tell whether a line was tapped before and still counts: a double tap is no second sign."""
    flags = pain_picture.picture_of(turn, athlete).flags
    return any(flag.flag is flag_of_line(line) for flag in flags)


TAPS = {"pain.sign": sign, "pain.list": list_line}
