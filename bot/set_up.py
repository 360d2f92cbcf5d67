"""Setting up from the machine: the link by which an owner or a coach comes in."""

from telegram import Bot
from telegram.error import InvalidToken, TelegramError

from bot.acts.join import new_link
from bot.app import Wiring, make_bot
from bot.config import SetUpError
from bot.wire.faults import understand
from bot.wire.receive import OperatorError
from scheduler.calendar.zones import UnknownZoneError, zone_named
from storage.database import Database
from storage.migrate import migrate
from storage.queries import people
from storage.records.people import Role


async def make_link(wiring: Wiring, *, role: Role, name: str, zone: str) -> str:
    """Make an owner or a coach and return their personal link.

    Raises:
        SetUpError: for a role or zone that a link cannot have.
        OperatorError: when the platform does not answer or does not know the token.

    """
    if role is Role.ATHLETE:
        raise SetUpError("Athletes are invited by their coach in the chat: /invite NAME.")
    try:
        zone_named(zone)
    except UnknownZoneError as fault:
        raise SetUpError(str(fault)) from None
    bot_name = await _name_of(make_bot(wiring))
    database = Database(wiring.database_url)
    try:
        migrate(database.engine)
        with database.transaction() as tx:
            now = wiring.clock.now()
            person = people.add_person(
                tx,
                name=name,
                now=now,
                zone=zone,
                is_owner=role is Role.OWNER,
                is_coach=role is Role.COACH,
            )
            return new_link(
                tx, bot_name=bot_name, person=person, role=role, issued_by_id=None, now=now
            )
    finally:
        database.close()


async def _name_of(bot: Bot) -> str:
    try:
        async with bot:
            return bot.username
    except InvalidToken:
        raise OperatorError(
            "The platform does not know this bot token: check HOLDWELL_TOKEN."
        ) from None
    except TelegramError as error:
        raise OperatorError(
            f"The platform cannot be reached ({understand(error).detail}): check the network."
        ) from None
