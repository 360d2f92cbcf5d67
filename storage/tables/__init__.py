"""All tables. Importing this package declares every one of them on the one metadata."""

from sqlmodel import SQLModel

SQLModel.metadata.naming_convention = {
    # Named constraints, set before the first table: a migration must be able to find them.
    "ix": "ix_%(column_0_label)s",
    "uq": "uq_%(table_name)s_%(column_0_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_name)s_%(referred_table_name)s",
    "pk": "pk_%(table_name)s",
}

from storage.tables import (  # noqa: E402 (after the names)
    care,
    first_tests,
    leaving,
    media,
    people,
    safety,
    training,
    wire,
)

metadata = SQLModel.metadata

__all__ = [
    "care",
    "first_tests",
    "leaving",
    "media",
    "metadata",
    "people",
    "safety",
    "training",
    "wire",
]
