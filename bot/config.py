"""What the person who runs the bot must or may say, from the environment or a private file."""

import stat
from pathlib import Path
from urllib.parse import urlsplit

from pydantic import Field, SecretStr, ValidationError, field_validator
from pydantic_settings import BaseSettings, SettingsConfigDict
from sqlalchemy.engine import make_url
from sqlalchemy.exc import ArgumentError, NoSuchModuleError

ENV_FILE = Path(".env")
SQLITE_HEAD = b"SQLite format 3\0"  # [bytes] sqlite: database file format, 1.3


class SetUpError(Exception):
    """The set-up is wrong; the message says in one line what to do."""


class Settings(BaseSettings):
    """Settings; each is read from ``HOLDWELL_`` and its name in capitals.

    ``heartbeat_file``: touched after each minute's round, so that a monitor on the machine sees
    that the bot is alive by the file's age. ``heartbeat_url``: asked for (GET) at the same time,
    for a monitor elsewhere that raises the alarm when nothing comes; both may be set.
    """

    model_config = SettingsConfigDict(
        env_prefix="HOLDWELL_", env_file=ENV_FILE, extra="ignore", hide_input_in_errors=True
    )

    token: SecretStr | None = None
    database: SecretStr = SecretStr("sqlite:///holdwell.sqlite3")
    api_url: str | None = None
    poll_s: int = 25
    heartbeat_file: Path | None = None
    heartbeat_url: SecretStr | None = None
    backups: Path | None = None
    backups_kept: int = Field(default=7, ge=1, le=365)

    @field_validator("heartbeat_url")
    @classmethod
    def _url_can_be_asked(cls, url: SecretStr | None) -> SecretStr | None:
        if url is None or not url.get_secret_value().strip():
            return None
        if not _is_http(url.get_secret_value().strip()):
            raise ValueError("an address that begins with http:// or https://")
        return url

    @property
    def heartbeat_address(self) -> str | None:
        """The monitor's address, never to be logged: it may hold a key."""
        return self.heartbeat_url.get_secret_value().strip() if self.heartbeat_url else None

    @property
    def database_url(self) -> str:
        """The database's address, never to be logged: it may hold a password."""
        return self.database.get_secret_value()


def _is_http(url: str) -> bool:
    """Tell whether an address can be asked for by GET."""
    parts = urlsplit(url)
    return parts.scheme in {"http", "https"} and bool(parts.hostname)


def read_settings() -> Settings:
    """Read the settings.

    Raises:
        SetUpError: in one line, when a setting is wrong or the private file is not private.

    """
    _check_private(ENV_FILE)
    try:
        return Settings()
    except ValidationError as faults:
        wrong = ", ".join(f"HOLDWELL_{str(error['loc'][0]).upper()}" for error in faults.errors())
        raise SetUpError(f"These settings cannot be read: {wrong}. Correct them.") from None


def token_of(settings: Settings) -> str:
    """Return the bot token.

    Raises:
        SetUpError: when there is none.

    """
    if settings.token is None or not settings.token.get_secret_value().strip():
        raise SetUpError(
            "No bot token: put HOLDWELL_TOKEN=<token> in the environment or in a .env file."
        )
    return settings.token.get_secret_value().strip()


def check_backup_place(folder: Path | None) -> None:
    """Check that daily copies can be written.

    Raises:
        SetUpError: in one line, when they cannot.

    """
    if folder is None:
        return
    try:
        folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        probe = folder / ".holdwell.probe"
        probe.touch()
        probe.unlink()
    except OSError:
        raise SetUpError(
            f"Cannot write copies into {folder}: make it writable or set HOLDWELL_BACKUPS."
        ) from None


def check_database_place(url: str) -> None:
    """Check that the database's address is one, and that its folder can be written to.

    Raises:
        SetUpError: in one line, when it cannot.

    """
    try:
        parsed = make_url(url)
        parsed.get_dialect().import_dbapi()
    except (ArgumentError, NoSuchModuleError):
        raise SetUpError(
            "HOLDWELL_DATABASE is no database address; write sqlite:///holdwell.sqlite3, say."
        ) from None
    except ImportError as missing:
        raise SetUpError(
            f"HOLDWELL_DATABASE needs a driver that is not installed: {missing.name}."
        ) from None
    if parsed.get_backend_name() == "sqlite" and parsed.database:
        file = Path(parsed.database).absolute()
        _check_writable(file)
        _check_is_database(file)


def _check_writable(file: Path) -> None:
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
        probe = file.parent / f".{file.name}.probe"
        probe.touch()
        probe.unlink()
    except OSError:
        raise SetUpError(
            f"Cannot write in the folder {file.parent}: make it writable or set HOLDWELL_DATABASE."
        ) from None


def _check_is_database(file: Path) -> None:
    if not file.exists():
        return
    try:
        with file.open("rb") as opened:
            head = opened.read(len(SQLITE_HEAD))
    except OSError:
        raise SetUpError(f"Cannot read {file}: mend it or set HOLDWELL_DATABASE.") from None
    if head not in {b"", SQLITE_HEAD}:
        raise SetUpError(f"{file} is no database: move it away or set HOLDWELL_DATABASE.")


def _check_private(file: Path) -> None:
    if file.exists() and stat.S_IMODE(file.stat().st_mode) & 0o077:
        raise SetUpError(f"{file} can be read by others and holds the token: run chmod 600 {file}")
