"""Indexes for what is asked at every reply and every tick, so that five years cost no more."""

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    op.create_index("ix_inbox_chat_received", "inbox", ["chat_id", "received_at"])
    op.drop_index("ix_inbox_chat_id", "inbox")
    op.create_index("ix_outbox_message", "outbox", ["chat_id", "message_id"])
    op.create_index("ix_due_person_due_at", "due", ["person_id", "due_at"])
    op.drop_column("outbox", "lease_until")


def downgrade() -> None:
    """Take back."""
    op.add_column("outbox", sa.Column("lease_until", sa.DateTime(timezone=True), nullable=True))
    op.drop_index("ix_due_person_due_at", "due")
    op.drop_index("ix_outbox_message", "outbox")
    op.create_index("ix_inbox_chat_id", "inbox", ["chat_id"])
    op.drop_index("ix_inbox_chat_received", "inbox")
