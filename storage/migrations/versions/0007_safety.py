"""Emergency numbers by country, as a coach confirmed them."""

import sqlalchemy as sa
from alembic import op

from storage.column_types import UtcInstant

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    op.create_table(
        "emergency_number",
        sa.Column("coach_id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("country", sa.String(length=2), nullable=False),
        sa.Column("number", sa.String(), nullable=False),
        sa.Column("confirmed_at", UtcInstant(), nullable=False),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_emergency_number_coach_id_person")
        ),
        sa.PrimaryKeyConstraint("coach_id", "country", name=op.f("pk_emergency_number")),
    )


def downgrade() -> None:
    """Take back."""
    op.drop_table("emergency_number")
