"""Years of history: where a pain fold had come to is kept, items are found by their session."""

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None

OPEN = sa.text("closed_at IS NULL")


def upgrade() -> None:
    """Apply."""
    op.create_table(
        "kept_pain_fold",
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("rules", sa.String(length=32), nullable=False),
        sa.Column("through_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("through_id", sa.Integer(), nullable=False),
        sa.Column("events", sa.Integer(), nullable=False),
        sa.Column("state", sa.JSON(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"],
            ["athlete.person_id"],
            name=op.f("fk_kept_pain_fold_athlete_id_athlete"),
        ),
        sa.PrimaryKeyConstraint("athlete_id", name=op.f("pk_kept_pain_fold")),
    )
    op.create_index(
        "ix_session_open", "session", ["athlete_id", "on"], sqlite_where=OPEN, postgresql_where=OPEN
    )
    op.create_index("ix_item_session_movement", "item", ["session_id", "movement_key"])
    op.drop_index("ix_item_session_id", "item")
    op.drop_index("ix_item_movement", "item")


def downgrade() -> None:
    """Take back."""
    op.create_index("ix_item_movement", "item", ["movement_key", "session_id"])
    op.create_index("ix_item_session_id", "item", ["session_id"])
    op.drop_index("ix_item_session_movement", "item")
    op.drop_index("ix_session_open", "session")
    op.drop_table("kept_pain_fold")
