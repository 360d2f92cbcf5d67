"""Rows are found by what they hang on: each deleted row is looked for there, in every table."""

import sqlalchemy as sa
from alembic import op

revision = "0013"
down_revision = "0012"
branch_labels = None
depends_on = None

WHERE_SAID = (
    ("ix_outbox_edits", "outbox", "edits_outbox_id"),
    ("ix_pain_event_session", "pain_event", "session_id"),
    ("ix_clip_item", "clip", "item_id"),
)
ALL = (
    ("ix_test_attempt_round", "test_attempt", "round_id"),
    ("ix_test_attempt_session", "test_attempt", "session_id"),
    ("ix_due_handled_at", "due", "handled_at"),
)


def upgrade() -> None:
    """Apply."""
    for name, table, column in WHERE_SAID:
        said = sa.text(f"{column} IS NOT NULL")
        op.create_index(name, table, [column], sqlite_where=said, postgresql_where=said)
    for name, table, column in ALL:
        op.create_index(name, table, [column])


def downgrade() -> None:
    """Take back."""
    for name, table, _column in (*ALL, *WHERE_SAID):
        op.drop_index(name, table)
