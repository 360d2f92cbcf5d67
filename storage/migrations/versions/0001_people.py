"""People and the links by which they come in."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    _create_person()
    _create_athlete()
    _create_invitation()


def downgrade() -> None:
    """Take back."""
    for table in ("invitation", "athlete", "person"):
        op.drop_table(table)


def _create_person() -> None:
    op.create_table(
        "person",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=True),
        sa.Column("language", sa.String(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.Column("is_owner", sa.Boolean(), nullable=False),
        sa.Column("is_coach", sa.Boolean(), nullable=False),
        sa.Column("is_blocked", sa.Boolean(), nullable=False),
        sa.Column("digest_weekday", sa.Integer(), nullable=False),
        sa.Column("digest_at", sa.Time(), nullable=False),
        sa.Column("waking_from", sa.Time(), nullable=False),
        sa.Column("waking_until", sa.Time(), nullable=False),
        sa.Column("emergency_number", sa.String(), nullable=True),
        sa.Column("stand_in_id", sa.Integer(), nullable=True),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.CheckConstraint("digest_weekday BETWEEN 0 AND 6", name=op.f("ck_person_weekday")),
        sa.ForeignKeyConstraint(
            ["stand_in_id"], ["person.id"], name=op.f("fk_person_stand_in_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_person")),
        sa.UniqueConstraint("chat_id", name=op.f("uq_person_chat_id")),
    )


def _create_athlete() -> None:
    op.create_table(
        "athlete",
        sa.Column("person_id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column(
            "state",
            sa.Enum(
                "invited",
                "intake",
                "waits_for_coach",
                "training",
                "paused",
                "left",
                name="athlete_state",
                native_enum=False,
                create_constraint=True,
            ),
            nullable=False,
        ),
        sa.Column("profile", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("stage", sa.Integer(), nullable=False),
        sa.Column("stage_since", sa.Date(), nullable=False),
        sa.Column("stage_is_re_earned", sa.Boolean(), nullable=False),
        sa.Column("session_at", sa.Time(), nullable=False),
        sa.Column("evening_at", sa.Time(), nullable=False),
        sa.Column("started_on", sa.Date(), nullable=True),
        sa.Column("agreed_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("paused_until", sa.Date(), nullable=True),
        sa.Column("absence_reason", sa.String(), nullable=True),
        sa.CheckConstraint("stage BETWEEN 1 AND 5", name=op.f("ck_athlete_stage")),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_athlete_coach_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_athlete_person_id_person")
        ),
        sa.PrimaryKeyConstraint("person_id", name=op.f("pk_athlete")),
    )
    with op.batch_alter_table("athlete", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_athlete_coach_id"), ["coach_id"], unique=False)


def _create_invitation() -> None:
    op.create_table(
        "invitation",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("secret_digest", sa.String(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column(
            "role",
            sa.Enum(
                "owner",
                "coach",
                "athlete",
                name="invited_role",
                native_enum=False,
                create_constraint=True,
            ),
            nullable=False,
        ),
        sa.Column("issued_by_id", sa.Integer(), nullable=True),
        sa.Column("expires_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("used_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["issued_by_id"], ["person.id"], name=op.f("fk_invitation_issued_by_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_invitation_person_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_invitation")),
        sa.UniqueConstraint("secret_digest", name=op.f("uq_invitation_secret_digest")),
    )
    with op.batch_alter_table("invitation", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_invitation_person_id"), ["person_id"], unique=False)
