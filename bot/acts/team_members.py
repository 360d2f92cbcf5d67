"""A coach's own athletes with their week, as the team's picture shows them."""

from collections.abc import Mapping
from datetime import date

from bot.acts import show_roster
from bot.turn import Turn
from bot.wording.team_picture import TeamMember
from scheduler.pain.values import Level
from storage.queries import people, training
from storage.records.people import Person


def members_of(
    turn: Turn, coach: Person, levels: Mapping[int, Level], *, first: date, last: date
) -> list[TeamMember]:
    """Return each athlete with the week's sessions; who has no level could not be worked out."""
    athletes = {person.id for person, _ in people.athletes_of(turn.tx, coach.id)}
    counts = training.kept_of_sent(turn.tx, list(athletes), first=first, last=last)
    return [
        TeamMember(
            kept=counts.get(one.athlete_id, (0, 0))[0],
            sent=counts.get(one.athlete_id, (0, 0))[1],
            level=levels.get(one.athlete_id),
            roster=one,
        )
        for one in show_roster.roster_of(turn, coach)
        if one.athlete_id in athletes
    ]
