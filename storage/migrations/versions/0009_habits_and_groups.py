"""A person's own units, a coach's groups, and a coach's practice athlete."""

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Apply."""
    with op.batch_alter_table("person") as person:
        person.add_column(sa.Column("units", sa.String(), nullable=False, server_default="kg"))
        person.add_column(sa.Column("decimal_mark", sa.String(), nullable=True))
    with op.batch_alter_table("athlete") as athlete:
        athlete.add_column(sa.Column("group_name", sa.String(), nullable=True))
        athlete.add_column(
            sa.Column("is_practice", sa.Boolean(), nullable=False, server_default=sa.false())
        )


def downgrade() -> None:
    """Take back."""
    with op.batch_alter_table("athlete") as athlete:
        athlete.drop_column("is_practice")
        athlete.drop_column("group_name")
    with op.batch_alter_table("person") as person:
        person.drop_column("decimal_mark")
        person.drop_column("units")
