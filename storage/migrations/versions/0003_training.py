"""Weeks, sessions, items and sets."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    _create_week()
    _create_session()
    _create_item()
    _create_set_done()


def _coded(name: str, *values: str) -> sa.Enum:
    """A code as text with a CHECK constraint, the same on every database."""
    return sa.Enum(*values, name=name, native_enum=False, create_constraint=True)


def downgrade() -> None:
    """Take back."""
    for table in ("set_done", "item", "session", "week"):
        op.drop_table(table)


def _create_week() -> None:
    op.create_table(
        "week",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("monday", sa.Date(), nullable=False),
        sa.Column("stage", sa.Integer(), nullable=False),
        sa.Column("is_lighter", sa.Boolean(), nullable=False),
        sa.Column("sets_share", sa.Float(), nullable=False),
        sa.Column("next_letter", sa.String(), nullable=False),
        sa.Column("relaxations", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("reasons", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("drawn_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_week_athlete_id_athlete")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_week")),
        sa.UniqueConstraint("athlete_id", "monday", name="uq_week_athlete_monday"),
    )


def _create_session() -> None:
    op.create_table(
        "session",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("week_id", sa.Integer(), nullable=False),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("letter", sa.String(), nullable=False),
        sa.Column(
            "state",
            _coded("session_state", "planned", "sent", "trained", "missed", "called_off"),
            nullable=False,
        ),
        sa.Column("sent_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("trained_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("closed_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("effort", sa.Integer(), nullable=True),
        sa.Column("minutes", sa.Integer(), nullable=True),
        sa.Column("is_pain_answered", sa.Boolean(), nullable=False),
        sa.Column("is_step_by_step", sa.Boolean(), nullable=False),
        sa.Column("called_off_because", sa.String(), nullable=True),
        sa.CheckConstraint(
            "effort IS NULL OR effort BETWEEN 0 AND 10", name=op.f("ck_session_effort")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["athlete.person_id"], name=op.f("fk_session_athlete_id_athlete")
        ),
        sa.ForeignKeyConstraint(["week_id"], ["week.id"], name=op.f("fk_session_week_id_week")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_session")),
    )
    with op.batch_alter_table("session", schema=None) as batch_op:
        batch_op.create_index("ix_session_athlete_on", ["athlete_id", "on"], unique=False)
        batch_op.create_index(batch_op.f("ix_session_week_id"), ["week_id"], unique=False)


def _create_item() -> None:
    op.create_table(
        "item",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("session_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("pair", sa.Integer(), nullable=True),
        sa.Column(
            "direction",
            _coded(
                "item_direction",
                "vertical_push",
                "horizontal_push",
                "downward_push",
                "vertical_pull",
                "horizontal_pull",
                "upward_pull",
            ),
            nullable=False,
        ),
        sa.Column(
            "role",
            _coded("item_role", "main", "accessory"),
            nullable=False,
        ),
        sa.Column("movement_key", sa.String(), nullable=False),
        sa.Column(
            "quality",
            _coded(
                "item_quality",
                "muscular_endurance",
                "strength_endurance",
                "general_strength",
                "dynamic_fresh",
                "repeated_effort",
                "maximal_strength",
            ),
            nullable=False,
        ),
        sa.Column("planned_sets", sa.Integer(), nullable=False),
        sa.Column("dose", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("reasons", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("arms", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("reserve", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("is_reserve_asked", sa.Boolean(), nullable=False),
        sa.Column("is_skipped", sa.Boolean(), nullable=False),
        sa.Column("is_left_out", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(
            ["session_id"],
            ["session.id"],
            name=op.f("fk_item_session_id_session"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_item")),
    )
    with op.batch_alter_table("item", schema=None) as batch_op:
        batch_op.create_index("ix_item_movement", ["movement_key", "session_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_item_session_id"), ["session_id"], unique=False)


def _create_set_done() -> None:
    op.create_table(
        "set_done",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("item_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("done", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("is_as_planned", sa.Boolean(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("message_id", sa.BigInteger(), nullable=True),
        sa.Column("reported_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("replaced_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["item_id"], ["item.id"], name=op.f("fk_set_done_item_id_item"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_set_done")),
    )
    with op.batch_alter_table("set_done", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_set_done_item_id"), ["item_id"], unique=False)
        batch_op.create_index("ix_set_message", ["chat_id", "message_id"], unique=False)
