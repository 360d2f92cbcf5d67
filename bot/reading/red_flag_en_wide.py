"""English for the wide net, together."""

from bot.reading.red_flag_en_wide_head import WIDE_HEAD
from bot.reading.red_flag_en_wide_heart import WIDE_HEART
from bot.reading.red_flag_en_wide_limb import WIDE_LIMB
from bot.reading.red_flag_en_wide_person import WIDE_PERSON

WIDE = {**WIDE_HEART, **WIDE_HEAD, **WIDE_LIMB, **WIDE_PERSON}
