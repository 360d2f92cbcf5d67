"""How much fits: the lengths and sizes that the platform's documentation publishes."""

import re

from pydantic import BaseModel, ConfigDict

from demo_scenario.loopback.entities import FormattedText, utf16_units
from demo_scenario.loopback.refusals import bad_request

TEXT_UNITS_MAX = 4096  # [UTF-16 units] botapi: sendMessage, text, after entities parsing
CAPTION_UNITS_MAX = 1024  # [UTF-16 units] botapi: sendPhoto, caption, after entities parsing
CALLBACK_DATA_BYTES_MAX = 64  # [bytes] botapi: InlineKeyboardButton, callback_data
CALLBACK_ANSWER_CHARS_MAX = 200  # [characters] botapi: answerCallbackQuery, text
DEEP_LINK = re.compile(r"[A-Za-z0-9_-]{1,64}")  # botapi: bot features, deep linking
BUTTONS_IN_ROW_MAX = 8  # [buttons] botapi: inline keyboards (2: as in telegram.constants)
BUTTONS_MAX = 100  # [buttons] botapi: inline keyboards (2: as in telegram.constants)
ALBUM_ITEMS_MIN = 2  # [messages] botapi: sendMediaGroup, media
ALBUM_ITEMS_MAX = 10  # [messages] botapi: sendMediaGroup, media
COMMANDS_MAX = 100  # [commands] botapi: setMyCommands, commands
COMMAND_NAME = re.compile(r"[a-z0-9_]{1,32}")  # botapi: BotCommand, command
COMMAND_DESCRIPTION_MAX = 256  # [characters] botapi: BotCommand, description
DELETABLE_FOR_S = 48 * 3600  # [s] botapi: deleteMessage, 48 hours
PHOTO_SIDES_SUM_MAX = 10_000  # [pixels] botapi: sendPhoto, width and height in total
PHOTO_SIDES_RATIO_MAX = 20  # [ratio] botapi: sendPhoto, width and height ratio


class FileBounds(BaseModel):
    """The largest files, in bytes; a test may lower them so that it need not carry megabytes."""

    model_config = ConfigDict(frozen=True)

    photo_bytes: int = 10_000_000  # [bytes] botapi: sendPhoto, 10 MB
    upload_bytes: int = 50_000_000  # [bytes] botapi: sendDocument, 50 MB
    download_bytes: int = 20_000_000  # [bytes] botapi: getFile, 20 MB


def check_text(formatted: FormattedText) -> FormattedText:
    """Refuse a message's text that is empty or too long, counted after entities parsing."""
    if not formatted.text:
        raise bad_request("message text is empty")
    if utf16_units(formatted.text) > TEXT_UNITS_MAX:
        raise bad_request("message is too long")
    return formatted


def check_caption(formatted: FormattedText) -> FormattedText:
    """Refuse a caption that is too long, counted after entities parsing."""
    if utf16_units(formatted.text) > CAPTION_UNITS_MAX:
        raise bad_request("message caption is too long")
    return formatted
