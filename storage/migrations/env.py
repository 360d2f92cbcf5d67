"""How migrations run: on the connection that the caller opened, in one transaction."""

from typing import Any, Literal

from alembic import context

from storage.column_types import Document, UtcInstant
from storage.tables import metadata


def _plain_type(kind: str, item: Any, _context: Any) -> str | Literal[False]:
    """Write our column types as the plain ones beneath, so that a migration stands alone."""
    if kind != "type":
        return False
    if isinstance(item, UtcInstant):
        return "sa.DateTime(timezone=True)"
    if isinstance(item, Document):
        return "sa.JSON(none_as_null=True)"
    return "sa.String()" if type(item).__name__ == "AutoString" else False


context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=metadata,
    render_as_batch=True,
    transactional_ddl=True,
    compare_type=True,
    render_item=_plain_type,
)
with context.begin_transaction():
    context.run_migrations()
