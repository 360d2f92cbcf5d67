"""What a week is for: ordinary, lighter, taper, in season, easy after, band only, break."""

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None

KINDS = (
    "ordinary",
    "lighter",
    "band_only",
    "returning",
    "taper",
    "in_season",
    "easy_after",
    "break",
)


def upgrade() -> None:
    """Apply; a week that was drawn as a lighter one is one."""
    with op.batch_alter_table("week") as table:
        table.add_column(
            sa.Column(
                "kind",
                sa.Enum(
                    *KINDS, name="week_kind", native_enum=False, create_constraint=True, length=10
                ),
                server_default="ordinary",
                nullable=False,
            )
        )
    op.execute("UPDATE week SET kind = 'lighter' WHERE is_lighter")


def downgrade() -> None:
    """Take back."""
    with op.batch_alter_table("week") as table:
        table.drop_constraint("week_kind", type_="check")
        table.drop_column("kind")
