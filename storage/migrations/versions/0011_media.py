"""Clips that wait for a coach, a coach's own media for movements, and files in versions."""

import sqlalchemy as sa
from alembic import op

from storage.column_types import UtcInstant

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None

UNANSWERED = sa.text("answered_at IS NULL")


def upgrade() -> None:
    """Apply."""
    _make_clip()
    _make_how_to_media()
    _make_file_version()


def _make_clip() -> None:
    op.create_table(
        "clip",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("message_id", sa.BigInteger(), nullable=False),
        sa.Column("file_id", sa.String(), nullable=True),
        sa.Column("sent_as", sa.String(), nullable=False),
        sa.Column("album_id", sa.String(), nullable=True),
        sa.Column("caption", sa.String(), nullable=False),
        sa.Column("item_id", sa.Integer(), nullable=True),
        sa.Column("movement_key", sa.String(), nullable=True),
        sa.Column("at", UtcInstant(), nullable=False),
        sa.Column("answered_at", UtcInstant(), nullable=True),
        sa.Column("answered_by_id", sa.Integer(), nullable=True),
        sa.ForeignKeyConstraint(
            ["answered_by_id"], ["person.id"], name=op.f("fk_clip_answered_by_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_clip_athlete_id_athlete")
        ),
        sa.ForeignKeyConstraint(["item_id"], ["item.id"], name=op.f("fk_clip_item_id_item")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_clip")),
    )
    op.create_index("ix_clip_athlete_at", "clip", ["athlete_id", "at"], unique=False)
    op.create_index(
        "ix_clip_waiting",
        "clip",
        ["athlete_id"],
        unique=False,
        sqlite_where=UNANSWERED,
        postgresql_where=UNANSWERED,
    )


def _make_how_to_media() -> None:
    op.create_table(
        "how_to_media",
        sa.Column("coach_id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("movement_key", sa.String(), nullable=False),
        sa.Column("file_id", sa.String(), nullable=False),
        sa.Column("sent_as", sa.String(), nullable=False),
        sa.Column("at", UtcInstant(), nullable=False),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_how_to_media_coach_id_person")
        ),
        sa.PrimaryKeyConstraint("coach_id", "movement_key", name=op.f("pk_how_to_media")),
    )


def _make_file_version() -> None:
    op.create_table(
        "file_version",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column(
            "kind",
            sa.Enum(
                "movements",
                "standards",
                name="file_kind",
                native_enum=False,
                create_constraint=True,
                length=9,
            ),
            nullable=False,
        ),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("content", sa.Text(), nullable=True),
        sa.Column("meaning", sa.JSON(), nullable=False),
        sa.Column("words", sa.String(), nullable=False),
        sa.Column("made_at", UtcInstant(), nullable=False),
        sa.Column("made_by_id", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_file_version_coach_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["made_by_id"], ["person.id"], name=op.f("fk_file_version_made_by_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_file_version")),
    )
    op.create_index(
        "ix_file_version_coach", "file_version", ["coach_id", "kind", "id"], unique=False
    )


def downgrade() -> None:
    """Take back."""
    op.drop_table("file_version")
    op.drop_table("how_to_media")
    op.drop_table("clip")
