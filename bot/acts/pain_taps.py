"""Keyboards for pain: where, which side, how much, what else."""

from collections.abc import Mapping
from typing import Any

from bot.turn import Tap, TapRows
from bot.wording import pain as words
from bot.wording.tongue import Template, Tongue
from scheduler.pain.events import PainSign
from scheduler.pain.tap_list import TapLine
from scheduler.pain.values import Side, Site

About = Mapping[str, Any]
SIDES: tuple[tuple[Side, Template], ...] = (
    (Side.LEFT, "Left"),
    (Side.RIGHT, "Right"),
    (Side.BOTH, "Both"),
)


def site_taps(tongue: Tongue, about: About, *, sites: tuple[Site, ...] = ()) -> TapRows:
    """Two sites a row; only some where the words already named them."""
    taps = [
        Tap(tongue.say(words.SITE_LABELS[site]), "pain.site", {**about, "site": site.value})
        for site in sites or tuple(Site)
    ]
    return [taps[start : start + 2] for start in range(0, len(taps), 2)]


def side_taps(tongue: Tongue, about: About) -> TapRows:
    """Left, right, both."""
    return [
        [
            Tap(tongue.say(label), "pain.side", {**about, "side": side.value})
            for side, label in SIDES
        ]
    ]


def score_taps(about: About, *, act: str = "pain.score") -> TapRows:
    """Whole numbers from 0 to 10."""

    def tap(score: int) -> Tap:
        return Tap(str(score), act, {**about, "score": score})

    return [[tap(score) for score in range(6)], [tap(score) for score in range(6, 11)]]


def sign_taps(tongue: Tongue, about: About) -> TapRows:
    """What else was true of it, one line each."""
    rows = [
        [Tap(tongue.say(text), "pain.sign", {**about, "sign": sign.value})]
        for sign, text in words.SIGNS.items()
    ]
    return [*rows, [Tap(tongue.say("None of these"), "pain.sign", {**about, "sign": ""})]]


def list_taps(tongue: Tongue, about: About) -> TapRows:
    """The short list of signs that need a person."""
    rows = [
        [Tap(tongue.say(words.TAP_LINES[line]), "pain.list", {**about, "line": line.value})]
        for line in TapLine
    ]
    return [*rows, [Tap(tongue.say("None of these"), "pain.list", {**about, "line": ""})]]


def signs_of(value: str) -> PainSign | None:
    """Read a sign from a button; the empty one means none."""
    return PainSign(value) if value else None
