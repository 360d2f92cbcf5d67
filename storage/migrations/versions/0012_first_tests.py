"""Guided tests: rounds and attempts; remarks beside results."""

import sqlalchemy as sa
from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None

OPEN = sa.text("closed_at IS NULL")


def upgrade() -> None:
    """Apply."""
    _make_remark()
    _make_test_round()
    _make_test_attempt()


def _make_remark() -> None:
    op.create_table(
        "remark",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("words", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_remark_athlete_id_athlete")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_remark")),
    )
    op.create_index("ix_remark_athlete_at", "remark", ["athlete_id", "at"])


def _make_test_round() -> None:
    op.create_table(
        "test_round",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column(
            "why",
            _choice("tests_why", "start", "return", "coach"),
            nullable=False,
        ),
        sa.Column(
            "begins",
            _choice("tests_begin", "next", "lighter"),
            nullable=False,
        ),
        sa.Column("opened_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("opened_by_id", sa.Integer(), nullable=True),
        sa.Column("stage_then", sa.Integer(), nullable=False),
        sa.Column("plan", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("reasons", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("days_sent", sa.Integer(), nullable=False),
        sa.Column("closed_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column(
            "end",
            _choice("tests_end", "done", "lapsed", "called_off"),
            nullable=True,
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_test_round_athlete_id_athlete")
        ),
        sa.ForeignKeyConstraint(
            ["opened_by_id"], ["person.id"], name=op.f("fk_test_round_opened_by_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_test_round")),
    )
    op.create_index("ix_test_round_athlete", "test_round", ["athlete_id", "opened_at"])
    op.create_index(
        "uq_test_round_open",
        "test_round",
        ["athlete_id"],
        unique=True,
        sqlite_where=OPEN,
        postgresql_where=OPEN,
    )


def _make_test_attempt() -> None:
    op.create_table(
        "test_attempt",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("round_id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("session_id", sa.Integer(), nullable=True),
        sa.Column("key", sa.String(), nullable=False),
        sa.Column("movement_key", sa.String(), nullable=False),
        sa.Column(
            "measure",
            _choice("attempt_measure", "hold_s", "reps", "carry_m", "carry_s"),
            nullable=False,
        ),
        sa.Column(
            "side",
            _choice("attempt_side", "left", "right", "both"),
            nullable=False,
        ),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column(
            "ended",
            _choice("attempt_ended", "done", "hurt", "skipped"),
            nullable=False,
        ),
        sa.Column("why", sa.String(), nullable=False),
        sa.Column("value", sa.Float(), nullable=True),
        sa.Column("rung", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("reserve", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("is_reserve_asked", sa.Boolean(), nullable=False),
        sa.Column("pain", sa.Integer(), nullable=True),
        sa.Column("message_id", sa.BigInteger(), nullable=True),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("replaced_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_test_attempt_athlete_id_athlete")
        ),
        sa.ForeignKeyConstraint(
            ["round_id"],
            ["test_round.id"],
            name=op.f("fk_test_attempt_round_id_test_round"),
            ondelete="CASCADE",
        ),
        sa.ForeignKeyConstraint(
            ["session_id"], ["session.id"], name=op.f("fk_test_attempt_session_id_session")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_test_attempt")),
    )
    op.create_index("ix_test_attempt_athlete_on", "test_attempt", ["athlete_id", "on"])


def _choice(name: str, *values: str) -> sa.Enum:
    return sa.Enum(*values, name=name, native_enum=False, create_constraint=True)


def downgrade() -> None:
    """Take back."""
    op.drop_index("ix_test_attempt_athlete_on", "test_attempt")

    op.drop_table("test_attempt")
    op.drop_index("uq_test_round_open", "test_round")
    op.drop_index("ix_test_round_athlete", "test_round")

    op.drop_table("test_round")
    op.drop_index("ix_remark_athlete_at", "remark")

    op.drop_table("remark")
