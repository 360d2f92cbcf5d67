"""From facts to the bytes of a PNG; runs in the process that draws."""

from collections.abc import Mapping
from typing import Any

from matplotlib import style
from matplotlib.figure import Figure

from bot.pictures import balance, history, season, team
from bot.pictures.look import HATCH_PT, png
from bot.pictures.values import (
    PICTURE,
    BalancePicture,
    HistoryPicture,
    Picture,
    SeasonPicture,
    TeamPicture,
)

SETTINGS: list[str | dict[str, Any]] = ["default", {"hatch.linewidth": HATCH_PT}]


def draw(facts: Mapping[str, Any]) -> bytes:
    """Draw a picture from its facts as they are kept."""
    picture = PICTURE.validate_python(facts)
    with style.context(SETTINGS):  # the machine's own settings for drawings change nothing
        return png(figure_of(picture))


def figure_of(picture: Picture) -> Figure:
    """Return the figure of a picture."""
    match picture:
        case HistoryPicture():
            return history.figure_of(picture)
        case SeasonPicture():
            return season.figure_of(picture)
        case BalancePicture():
            return balance.figure_of(picture)
        case TeamPicture():
            return team.figure_of(picture)
