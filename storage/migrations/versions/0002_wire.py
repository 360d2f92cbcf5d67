"""What arrived, what must be sent, and what a button stands for."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    _create_inbox()
    _create_mark()
    _create_outbox()
    _create_button()
    _create_dialog()
    _create_due()
    _create_question()


def downgrade() -> None:
    """Take back."""
    for table in ("question", "due", "dialog", "button", "outbox", "mark", "inbox"):
        op.drop_table(table)


def _create_inbox() -> None:
    op.create_table(
        "inbox",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("update_id", sa.BigInteger(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=True),
        sa.Column("raw", sa.Text(), nullable=True),
        sa.Column("received_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column(
            "state",
            sa.Enum(
                "waiting",
                "handled",
                "set_aside",
                name="inbox_state",
                native_enum=False,
                create_constraint=True,
            ),
            nullable=False,
        ),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("handled_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("outcome", sa.String(), nullable=True),
        sa.Column("fault_reference", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_inbox")),
        sa.UniqueConstraint("update_id", name=op.f("uq_inbox_update_id")),
    )
    with op.batch_alter_table("inbox", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_inbox_chat_id"), ["chat_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_inbox_received_at"), ["received_at"], unique=False)
        batch_op.create_index("ix_inbox_state", ["state", "id"], unique=False)


def _create_mark() -> None:
    op.create_table(
        "mark",
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_mark")),
    )


def _create_outbox() -> None:
    op.create_table(
        "outbox",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("operation", sa.String(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("payload", sa.JSON(), nullable=False),
        sa.Column("subject", sa.String(), nullable=True),
        sa.Column("edits_outbox_id", sa.Integer(), nullable=True),
        sa.Column(
            "state",
            sa.Enum(
                "waiting",
                "sending",
                "sent",
                "refused",
                "blocked",
                "dropped",
                name="outbox_state",
                native_enum=False,
                create_constraint=True,
            ),
            nullable=False,
        ),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("not_before", sa.DateTime(timezone=True), nullable=False),
        sa.Column("useful_until", sa.DateTime(timezone=True), nullable=True),
        sa.Column("lease_until", sa.DateTime(timezone=True), nullable=True),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("is_doubtful", sa.Boolean(), nullable=False),
        sa.Column("sent_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("message_id", sa.BigInteger(), nullable=True),
        sa.Column("fault", sa.String(), nullable=True),
        sa.CheckConstraint("attempts >= 0", name=op.f("ck_outbox_attempts_not_negative")),
        sa.ForeignKeyConstraint(
            ["edits_outbox_id"], ["outbox.id"], name=op.f("fk_outbox_edits_outbox_id_outbox")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_outbox")),
    )
    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_outbox_created_at"), ["created_at"], unique=False)
        batch_op.create_index("ix_outbox_turn", ["state", "chat_id", "id"], unique=False)


def _create_button() -> None:
    op.create_table(
        "button",
        sa.Column("token", sa.String(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("act", sa.String(), nullable=False),
        sa.Column("arguments", sa.JSON(), nullable=False),
        sa.Column("made_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("used_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_button_person_id_person")
        ),
        sa.PrimaryKeyConstraint("token", name=op.f("pk_button")),
    )
    with op.batch_alter_table("button", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_button_made_at"), ["made_at"], unique=False)
        batch_op.create_index(batch_op.f("ix_button_person_id"), ["person_id"], unique=False)


def _create_dialog() -> None:
    op.create_table(
        "dialog",
        sa.Column("chat_id", sa.BigInteger(), autoincrement=False, nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("step", sa.String(), nullable=False),
        sa.Column("answers", sa.JSON(), nullable=False),
        sa.Column("changed_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_dialog_person_id_person")
        ),
        sa.PrimaryKeyConstraint("chat_id", name=op.f("pk_dialog")),
    )


def _create_due() -> None:
    op.create_table(
        "due",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("subject", sa.String(), nullable=False),
        sa.Column("due_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("handled_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("outcome", sa.String(), nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name=op.f("fk_due_person_id_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_due")),
    )
    with op.batch_alter_table("due", schema=None) as batch_op:
        batch_op.create_index(
            "uq_due_person_kind_subject", ["person_id", "kind", "subject"], unique=True
        )


def _create_question() -> None:
    op.create_table(
        "question",
        sa.Column("chat_id", sa.BigInteger(), autoincrement=False, nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("subject", sa.JSON(), nullable=False),
        sa.Column("asked_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("expires_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_question_person_id_person")
        ),
        sa.PrimaryKeyConstraint("chat_id", name=op.f("pk_question")),
    )
