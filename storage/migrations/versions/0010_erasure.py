"""Who waits to leave, and which persons were erased."""

import sqlalchemy as sa
from alembic import op

from storage.column_types import UtcInstant

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    op.create_table(
        "leave_wish",
        sa.Column("person_id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("asked_at", UtcInstant(), nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_leave_wish_person_id_person")
        ),
        sa.PrimaryKeyConstraint("person_id", name=op.f("pk_leave_wish")),
    )
    op.create_table(
        "erasure",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("erased_at", UtcInstant(), nullable=False),
        sa.Column("is_whole", sa.Boolean(), nullable=False),
        sa.Column("swept_at", UtcInstant(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_erasure")),
    )
    op.create_index("ix_erasure_person_id", "erasure", ["person_id"])


def downgrade() -> None:
    """Take back."""
    op.drop_table("erasure")
    op.drop_table("leave_wish")
