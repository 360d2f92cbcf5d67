"""A coach's team as a table: who, where they stand, and what was trained lately."""

from datetime import timedelta

from bot.acts.checklist import local_today
from bot.exports.spreadsheet import table_bytes
from bot.turn import Turn
from storage.queries import own_data, people, training
from storage.records.people import Person

LATELY = timedelta(days=28)  # [days] ch: four weeks, as the digest counts
HEAD = (
    "name", "group", "stage", "stage_since", "state", "started_on", "paused_until",
    "last_trained_on", "sessions_sent_28_days", "sessions_trained_28_days", "open_alerts",
    "unanswered_messages",
)  # fmt: skip


def team_file(turn: Turn, coach: Person, *, decimal_mark: str) -> bytes:
    """Return a row an athlete, by name; a practice athlete is nobody of the team."""
    team = [pair for pair in people.athletes_of(turn.tx, coach.id) if not pair[1].is_practice]
    ids = [person.id for person, _ in team]
    today = local_today(turn, coach)
    kept = training.kept_of_sent(turn.tx, ids, first=today - LATELY, last=today)
    trained, waiting = own_data.last_trained_of(turn.tx, ids), own_data.waiting_of(turn.tx, ids)
    rows = [
        [
            person.name, athlete.group_name, athlete.stage, athlete.stage_since,
            athlete.state.value, athlete.started_on, athlete.paused_until,
            trained.get(person.id), kept.get(person.id, (0, 0))[1], kept.get(person.id, (0, 0))[0],
            *waiting.get(person.id, (0, 0)),
        ]
        for person, athlete in team
    ]  # fmt: skip
    return table_bytes(HEAD, rows, decimal_mark=decimal_mark)
