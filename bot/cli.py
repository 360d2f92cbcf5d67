"""The command ``holdwell``: run the bot, make personal links, and what the demo adds."""

import asyncio
import importlib
import importlib.util
import logging
from collections.abc import Callable
from typing import Annotated, NoReturn

import typer
from rich.console import Console

from bot.app import run_until_stopped, wiring_from
from bot.config import SetUpError, check_database_place, read_settings
from bot.set_up import make_link
from bot.wire.receive import OperatorError
from bot.wording.catalogue import command as catalogue_command
from scheduler.calendar.zones import ZoneDataError, check_zone_data, use_packaged_zones
from scheduler.located_yaml import WrongFileError
from storage.migrate import NewerDatabaseError
from storage.records.people import Role

DEMO_COMMANDS = (
    "demo_scenario.cli",
    "demo_scenario.trials.cli",
    "demo_scenario.benchmarks.cli",
    "demo_scenario.comparison.cli",
    "demo_scenario.readings.cli",
    "demo_scenario.two_years.cli",
    "demo_scenario.vignettes.cli",
    "demo_scenario.learning.command",
)
USER_FAULTS = (SetUpError, OperatorError, NewerDatabaseError, ZoneDataError, WrongFileError)

console = Console(stderr=True)
app = typer.Typer(
    name="holdwell",
    help="A chat bot for strength coaches who train shoulders, elbows and wrists at a distance.",
    no_args_is_help=True,
    pretty_exceptions_enable=False,
)
catalogue_command.add_to(app)


@app.command()
def run() -> None:
    """Run the bot until it is told to stop."""
    _quiet_logs()
    settings = read_settings()
    check_database_place(settings.database_url)
    asyncio.run(run_until_stopped(wiring_from(settings)))


@app.command()
def link(
    role: Annotated[Role, typer.Argument(help="owner or coach")],
    name: Annotated[str, typer.Argument(help="what the person is called in the chat")],
    zone: Annotated[str, typer.Option(help="time zone, such as Europe/Berlin")] = "UTC",
) -> None:
    """Print a personal link by which an owner or a coach comes in."""
    _quiet_logs()
    settings = read_settings()
    check_database_place(settings.database_url)
    typer.echo(asyncio.run(make_link(wiring_from(settings), role=role, name=name, zone=zone)))


def main() -> None:
    """Run a command; what the user can mend is said in one line, with exit code 2."""
    _add_demo_commands()
    try:
        use_packaged_zones()
        check_zone_data()
        app()
    except USER_FAULTS as fault:
        _say_and_exit(str(fault))


def _add_demo_commands() -> None:
    """Add the demo's own commands by name, so that nothing imports them."""
    for name in DEMO_COMMANDS:
        if importlib.util.find_spec(name.split(".")[0]) is None:
            return  # the bot runs without its demo
        add: Callable[[typer.Typer], None] = importlib.import_module(name).add_to
        add(app)


def _say_and_exit(message: str) -> NoReturn:
    console.print(f"holdwell: {message}", markup=False, highlight=False, soft_wrap=True)
    raise SystemExit(2)


def _quiet_logs() -> None:
    """Log to stderr; the HTTP client's own lines hold the token and stay off."""
    logging.basicConfig(level=logging.INFO, format="%(asctime)s %(levelname)s %(message)s")
    for noisy in ("httpx", "httpcore", "apscheduler", "telegram", "alembic"):
        logging.getLogger(noisy).setLevel(logging.WARNING)


if __name__ == "__main__":
    main()
