"""Pain, alerts, audit, and what waits for a person."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    _create_audit()
    _create_alert()
    _create_passed_on()
    _create_proposal()
    _create_pain_event()


def downgrade() -> None:
    """Take back."""
    for table in ("pain_event", "proposal", "passed_on", "alert", "audit"):
        op.drop_table(table)


def _create_audit() -> None:
    op.create_table(
        "audit",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=True),
        sa.Column("actor_id", sa.Integer(), nullable=True),
        sa.Column("what", sa.String(), nullable=False),
        sa.Column("words", sa.String(), nullable=False),
        sa.Column("reasons", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("before", sa.JSON(), nullable=False),
        sa.Column("after", sa.JSON(), nullable=False),
        sa.ForeignKeyConstraint(["actor_id"], ["person.id"], name=op.f("fk_audit_actor_id_person")),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_audit_athlete_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_audit")),
    )
    with op.batch_alter_table("audit", schema=None) as batch_op:
        batch_op.create_index("ix_audit_athlete_at", ["athlete_id", "at"], unique=False)


def _create_alert() -> None:
    op.create_table(
        "alert",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column("level", sa.Integer(), nullable=False),
        sa.Column(
            "urgency",
            sa.Enum(
                "now",
                "today",
                "soon",
                "convenient",
                name="urgency",
                native_enum=False,
                create_constraint=True,
            ),
            nullable=False,
        ),
        sa.Column("words", sa.String(), nullable=False),
        sa.Column("reasons", sa.JSON(none_as_null=True), nullable=False),
        sa.Column(
            "state",
            sa.Enum(
                "open",
                "seen",
                "cleared",
                name="alert_state",
                native_enum=False,
                create_constraint=True,
            ),
            nullable=False,
        ),
        sa.Column("raised_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("times_told", sa.Integer(), nullable=False),
        sa.Column("tell_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("answered_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("answered_by_id", sa.Integer(), nullable=True),
        sa.ForeignKeyConstraint(
            ["answered_by_id"], ["person.id"], name=op.f("fk_alert_answered_by_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_alert_athlete_id_athlete")
        ),
        sa.ForeignKeyConstraint(["coach_id"], ["person.id"], name=op.f("fk_alert_coach_id_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_alert")),
    )
    with op.batch_alter_table("alert", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_alert_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index("ix_alert_state_tell", ["state", "tell_at"], unique=False)


def _create_passed_on() -> None:
    op.create_table(
        "passed_on",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("words", sa.String(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("answered_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_passed_on_athlete_id_athlete")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_passed_on")),
    )
    with op.batch_alter_table("passed_on", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_passed_on_athlete_id"), ["athlete_id"], unique=False)


def _create_proposal() -> None:
    op.create_table(
        "proposal",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("facts", sa.JSON(), nullable=False),
        sa.Column("made_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("answered_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("answer", sa.String(), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_proposal_athlete_id_athlete")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_proposal")),
    )
    with op.batch_alter_table("proposal", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_proposal_athlete_id"), ["athlete_id"], unique=False)


def _create_pain_event() -> None:
    op.create_table(
        "pain_event",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("event", sa.JSON(), nullable=False),
        sa.Column("session_id", sa.Integer(), nullable=True),
        sa.Column("message_id", sa.BigInteger(), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_pain_event_athlete_id_athlete")
        ),
        sa.ForeignKeyConstraint(
            ["session_id"], ["session.id"], name=op.f("fk_pain_event_session_id_session")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_pain_event")),
    )
    with op.batch_alter_table("pain_event", schema=None) as batch_op:
        batch_op.create_index("ix_pain_event_athlete_at", ["athlete_id", "at", "id"], unique=False)
