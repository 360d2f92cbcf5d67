"""Column types that keep what a database would lose: a time's zone, a document's shape."""

from datetime import UTC, datetime
from enum import StrEnum
from typing import Any, TypeVar

from pydantic import TypeAdapter
from sqlalchemy import JSON, DateTime, Dialect
from sqlalchemy import Enum as SqlEnum
from sqlalchemy.types import TypeDecorator

EnumT = TypeVar("EnumT", bound=StrEnum)


class UtcInstant(TypeDecorator[datetime]):
    """An aware instant, stored as UTC. A time without a zone is refused rather than guessed."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Turn an aware time into UTC; SQLite keeps it without the zone it would drop anyway."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError(f"a stored instant needs its zone, got {value!r}")
        utc = value.astimezone(UTC)
        return utc.replace(tzinfo=None) if dialect.name == "sqlite" else utc

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Give the stored instant back as aware UTC."""
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if dialect.name == "sqlite" else value.astimezone(UTC)


class Document(TypeDecorator[Any]):
    """A frozen model (or a tuple of them) kept as JSON and validated on the way in and out."""

    impl = JSON
    cache_ok = True

    def __init__(self, kind: Any) -> None:
        """Remember the type whose values this column holds."""
        super().__init__(none_as_null=True)
        self.kind = kind
        self._adapter: TypeAdapter[Any] = TypeAdapter(kind)

    def process_bind_param(self, value: Any, dialect: Dialect) -> Any:  # noqa: ARG002
        """Validate and dump to plain JSON values."""
        if value is None:
            return None
        return self._adapter.dump_python(self._adapter.validate_python(value), mode="json")

    def process_result_value(self, value: Any, dialect: Dialect) -> Any:  # noqa: ARG002
        """Validate what was stored and give the model back."""
        return None if value is None else self._adapter.validate_python(value)


def coded(kind: type[EnumT], *, name: str) -> SqlEnum:
    """Return a portable column type for ``kind``: its values as text, with a CHECK constraint."""
    return SqlEnum(
        kind,
        name=name,
        native_enum=False,
        create_constraint=True,
        values_callable=lambda members: [member.value for member in members],
        length=max(len(member.value) for member in kind),
    )
