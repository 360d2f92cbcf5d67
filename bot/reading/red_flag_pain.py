"""Pain spoken of without a number: whether, and where if the words say so."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import TypeVar

from bot.reading.red_flag_scope import Hit
from scheduler.pain.events import PainSign
from scheduler.pain.values import Side, Site

MeantT = TypeVar("MeantT", Site, Side)
NEAR = 6  # [words] ch: a pain and its place
SITES = {
    "site_neck": Site.NECK,
    "site_shoulder_front": Site.SHOULDER_FRONT,
    "site_shoulder_top": Site.SHOULDER_TOP,
    "site_shoulder_back": Site.SHOULDER_BACK,
    "site_elbow_outer": Site.ELBOW_OUTER,
    "site_elbow_inner": Site.ELBOW_INNER,
    "site_elbow_back": Site.ELBOW_BACK,
    "site_upper_arm": Site.UPPER_ARM,
    "site_forearm": Site.FOREARM,
    "site_wrist": Site.WRIST,
    "site_hand": Site.HAND,
    "pec": Site.CHEST_MUSCLE,
    "site_upper_back": Site.UPPER_BACK,
}
SIGNS = {
    "sudden_sharp": PainSign.SUDDEN_SHARP,
    "stopped_set": PainSign.STOPPED_A_SET,
    "everyday": PainSign.DISTURBS_EVERYDAY_USE,
}
SIDES = {"side_left": Side.LEFT, "side_right": Side.RIGHT, "side_both": Side.BOTH}


@dataclass(frozen=True)
class PainWords:
    """Pain without a number; the place is None where the words leave it open."""

    site: Site | None
    side: Side | None
    is_sudden_sharp: bool
    signs: frozenset[PainSign] = frozenset()
    """What else the words say: it came suddenly, stopped a set, disturbs everyday things."""


def read_pain_words(counting: Callable[[str], list[Hit]]) -> PainWords | None:
    """Return the pain spoken of, or None when there is none.

    Args:
        counting: looks up the hits of a concept that count.

    Plain soreness of muscles, without a word of pain, is no pain.
    """
    pains = counting("pain_words")
    if not pains:
        return None
    site = _nearest(SITES, pains, counting)
    side = _nearest(SIDES, pains, counting)
    signs = frozenset(sign for concept, sign in SIGNS.items() if counting(concept))
    return PainWords(
        site=site, side=side, is_sudden_sharp=PainSign.SUDDEN_SHARP in signs, signs=signs
    )


def _nearest(
    concepts: dict[str, MeantT], pains: list[Hit], counting: Callable[[str], list[Hit]]
) -> MeantT | None:
    """Return what stands nearest to a word of pain."""
    gaps = [
        (abs(hit.first - pain.first), order, meant)
        for order, (concept, meant) in enumerate(concepts.items())
        for hit in counting(concept)
        for pain in pains
        if abs(hit.first - pain.first) <= NEAR
    ]
    return min(gaps, key=lambda gap: gap[:2])[2] if gaps else None
