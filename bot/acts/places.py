"""Where an athlete's pain stands, as the coach's texts show it."""

from collections.abc import Sequence

from bot.acts.pain_picture import picture_of
from bot.turn import Turn
from bot.wording import coach_pain
from bot.wording.coach_pain import PlaceFacts
from scheduler.pain.picture import FlagPicture, PainPicture, RegionPicture
from scheduler.pain.values import Level, Side, Site
from storage.records.people import Athlete, Person


def places_of(turn: Turn, athlete: Athlete) -> tuple[PlaceFacts, ...]:
    """Return every place with a level, and every sign that stands, the gravest first."""
    picture = picture_of(turn, athlete)
    regions = [one for one in picture.regions if one.level > Level.NONE]
    return _gravest_first((*merged(regions), *_signs(picture.flags)))


def held_places(turn: Turn, athlete: Athlete) -> tuple[PlaceFacts, ...]:
    """Return what only a person can clear."""
    return held_in(picture_of(turn, athlete))


def held_in(picture: PainPicture) -> tuple[PlaceFacts, ...]:
    """Return what only a person can clear in a picture: regions and signs."""
    regions = [one for one in picture.regions if one.needs_person]
    return _gravest_first((*merged(regions), *_signs(picture.flags)))


def left_out_words(turn: Turn, reader: Person, athlete: Athlete) -> str:
    """Say what is left out, in the reader's language; empty when nothing is."""
    return coach_pain.left_out(turn.tongue(reader), picture_of(turn, athlete).rested)


def merged(regions: Sequence[RegionPicture]) -> tuple[PlaceFacts, ...]:
    """Join left and right of one site where they stand alike."""
    arms: dict[tuple[Site, Level, int | None], list[Side]] = {}
    for one in regions:
        key = (one.region.site, one.level, one.last_score)
        arms.setdefault(key, []).append(one.region.arm)
    return tuple(
        PlaceFacts(
            site=site,
            side=sides[0] if len(sides) == 1 else Side.BOTH,
            level=level,
            score=score,
        )
        for (site, level, score), sides in arms.items()
    )


def _signs(flags: Sequence[FlagPicture]) -> tuple[PlaceFacts, ...]:
    return tuple(
        PlaceFacts(site=Site.ELSEWHERE, side=Side.BOTH, level=one.level, flag=one.flag.value)
        for one in flags
    )


def _gravest_first(places: Sequence[PlaceFacts]) -> tuple[PlaceFacts, ...]:
    return tuple(sorted(places, key=lambda one: -one.level))
