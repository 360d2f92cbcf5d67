"""The house for its owner."""

from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from bot.wording import house as words
from bot.wording.house import CoachFacts, HouseFacts, UnseenFacts
from bot.wording.pages import pages_of
from storage import outbox
from storage.queries import care, house, people
from storage.records.people import Person


def command(turn: Turn, owner: Person, _text: str, _event: Wrote) -> Outcome:
    """``/house``."""
    for page in pages_of(words.lines(turn.tongue(owner), facts_of(turn))):
        turn.say(owner, page)
    return Outcome.COMMAND


def facts_of(turn: Turn) -> HouseFacts:
    """Collect how the house stands."""
    unsent = house.count_unsendable(turn.tx)
    return HouseFacts(
        coaches=tuple(_coach(turn, one) for one in people.coaches(turn.tx)),
        unseen=tuple(
            UnseenFacts(
                athlete=people.person(turn.tx, one.athlete_id).name,
                coach=people.person(turn.tx, one.coach_id).name,
                level=one.level,
                age=turn.now - one.raised_at,
            )
            for one in care.open_alerts(turn.tx)
        ),
        set_aside=house.count_set_aside(turn.tx),
        waiting=outbox.count_unsent(turn.tx),
        refused=unsent.get("refused", 0),
        blocked=unsent.get("blocked", 0),
        dropped=unsent.get("dropped", 0),
    )


def _coach(turn: Turn, coach: Person) -> CoachFacts:
    stand_in = coach.stand_in_id
    pairs = people.athletes_of(turn.tx, coach.id)
    ids = [person.id for person, _ in pairs]
    return CoachFacts(
        name=coach.name,
        athletes=tuple(person.name for person, _ in pairs),
        alerts=len(care.alerts_of(turn.tx, ids)),
        decisions=len(care.proposals(turn.tx, ids)),
        messages=len(care.unanswered(turn.tx, ids)),
        stand_in=people.person(turn.tx, stand_in).name if stand_in is not None else "",
        is_reachable=coach.chat_id is not None and not coach.is_blocked,
    )
