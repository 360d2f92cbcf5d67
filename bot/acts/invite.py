"""A coach invites an athlete by a personal link, or gives a known one a new link."""

from collections.abc import Mapping
from typing import Any

from bot.acts import join
from bot.acts.about_athlete import about_tapped
from bot.acts.checklist import local_today
from bot.acts.find_athlete import Named, folded, subject_of
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_invite, invite_file
from storage.queries import people
from storage.records.people import Person

NAME_MOST = 60  # [characters] ch: a roster line must hold it


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/invite NAME``."""
    name = " ".join(text.split())
    tongue = turn.tongue(coach)
    if not name or len(name) > NAME_MOST:
        turn.say(coach, f"{coach_invite.usage(tongue)}\n\n{invite_file.how(tongue)}")
        return Outcome.NOT_UNDERSTOOD
    known = [
        person
        for person, _ in people.athletes_of(turn.tx, coach.id)
        if folded(person.name) == folded(name)
    ]
    if not known:
        invite_new(turn, coach, name)
        return Outcome.COMMAND
    same = Tap(coach_invite.same_label(tongue), "coach.relink", {"athlete": known[0].id})
    other = Tap(coach_invite.other_label(tongue), "coach.invite_other", {"name": name})
    turn.say(coach, coach_invite.same_name(tongue, name=known[0].name), taps=[[same], [other]])
    return Outcome.ASKED


def invite_other(
    turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Somebody else of the same name is invited."""
    invite_new(turn, coach, str(arguments["name"]))
    return Outcome.COMMAND


@about_tapped
def relink(
    turn: Turn, coach: Person, found: Named, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """The same person gets a new link, and keeps the history."""
    _hand_out(turn, coach, found.person)
    return Outcome.COMMAND


def invite_new(turn: Turn, coach: Person, name: str) -> Person:
    """Make a person and an athlete who has not answered anything yet."""
    person, _ = join.add_athlete(turn, coach, name)
    _hand_out(turn, coach, person)
    return person


def _hand_out(turn: Turn, coach: Person, person: Person) -> None:
    url = join.invite(turn, coach, person)
    until = local_today(turn, coach) + join.LINK_KEPT
    turn.say(
        coach,
        coach_invite.link(turn.tongue(coach), name=person.name, url=url, until=until),
        subject=subject_of(person),
    )
