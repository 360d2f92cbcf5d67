"""A file that a coach sent is read once and kept by an id: its button carries the id only."""

import sqlalchemy as sa
from alembic import op

from storage.column_types import UtcInstant

revision = "0014"
down_revision = "0013"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    op.create_table(
        "file_draft",
        sa.Column("id", sa.String(length=32), nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column(
            "kind",
            sa.Enum(
                "movements",
                "standards",
                name="file_draft_kind",
                native_enum=False,
                create_constraint=True,
                length=9,
            ),
            nullable=False,
        ),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("content", sa.Text(), nullable=True),
        sa.Column("meaning", sa.JSON(), nullable=False),
        sa.Column("base_id", sa.Integer(), nullable=True),
        sa.Column("at", UtcInstant(), nullable=False),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_file_draft_coach_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_file_draft")),
    )


def downgrade() -> None:
    """Take back."""
    op.drop_table("file_draft")
