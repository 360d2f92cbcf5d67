"""A coach invites an athlete by a personal link, or gives a known one a new link."""

from collections.abc import Mapping
from datetime import time, timedelta
from typing import Any

from bot.acts import find_athlete
from bot.acts.checklist import local_today
from bot.acts.find_athlete import folded, subject_of
from bot.events import Tapped, Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_invite
from scheduler.training.values import AthleteProfile, ReferenceValues
from storage.queries import care, people
from storage.records.people import Person, Profile, Role

VALID = timedelta(days=14)  # [days] ch: a link that lies about does not work for long
NAME_MOST = 60  # [characters] ch: a roster line must hold it
FIRST_SESSION_AT = time(7, 0)  # [wall time] ch: until the athlete names another
INVITED = "athlete.invited"
UNKNOWN_KG = 50.0  # [kg] ch: a light stand-in until the first questions are answered
UNKNOWN = Profile(
    facts=AthleteProfile(
        reference=ReferenceValues.OWN, body_mass_kg=UNKNOWN_KG, training_age_months=0
    )
)
"""What is assumed of somebody who has answered nothing; nobody trains on it."""


def command(turn: Turn, coach: Person, text: str, _event: Wrote) -> Outcome:
    """``/invite NAME``."""
    name = " ".join(text.split())
    tongue = turn.tongue(coach)
    if not name or len(name) > NAME_MOST:
        turn.say(coach, coach_invite.usage(tongue))
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


def relink(turn: Turn, coach: Person, arguments: Mapping[str, Any], _event: Tapped) -> Outcome:
    """The same person gets a new link, and keeps the history."""
    found = find_athlete.tapped(turn, coach, arguments)
    if isinstance(found, Outcome):
        return found
    _hand_out(turn, coach, found.person)
    return Outcome.COMMAND


def invite_new(turn: Turn, coach: Person, name: str) -> Person:
    """Make a person and an athlete who has not answered anything yet."""
    person = people.add_person(
        turn.tx, name=name, now=turn.now, language=coach.language, zone=coach.zone
    )
    people.add_athlete(
        turn.tx,
        person_id=person.id,
        coach_id=coach.id,
        profile=UNKNOWN,
        on=local_today(turn, coach),
        session_at=FIRST_SESSION_AT,
    )
    _hand_out(turn, coach, person)
    return person


def _hand_out(turn: Turn, coach: Person, person: Person) -> None:
    secret = turn.house.make_secret()
    people.add_invitation(
        turn.tx,
        secret=secret,
        person_id=person.id,
        role=Role.ATHLETE,
        issued_by_id=coach.id,
        expires_at=turn.now + VALID,
    )
    care.write_audit(turn.tx, at=turn.now, what=INVITED, athlete_id=person.id, actor_id=coach.id)
    url = f"https://t.me/{turn.house.bot_name}?start={secret}"
    until = local_today(turn, coach) + VALID
    turn.say(
        coach,
        coach_invite.link(turn.tongue(coach), name=person.name, url=url, until=until),
        subject=subject_of(person),
    )
