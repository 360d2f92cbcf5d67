"""The red flags that stand: raised, answered, and until when."""

from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from scheduler.pain.events import Certainty, FlagAnswered, FlagRaised
from scheduler.pain.red_flags import LEARNT, RED_FLAGS, FlagRule, RedFlag, Stops
from scheduler.pain.values import Region, Site, regions_of

TINGLING_AGAIN_WITHIN = timedelta(days=90)  # [d] ch: a second passing tingle so soon is "again"
CHEST_ALERT_WAIT = timedelta(minutes=10)  # [min] ch: only the coach's alert waits for the tap
ELSEWHERE_OF_FLAGS = frozenset({Site.ELSEWHERE})


@dataclass(frozen=True)
class OpenFlag:
    """A red flag that stands; a doubt counts as the flag until it is answered."""

    key: str
    flag: RedFlag
    certainty: Certainty
    since_utc: datetime
    regions: tuple[Region, ...] = ()
    movement: str | None = None
    is_in_hang: bool = False
    ends_at_utc: datetime | None = None

    @property
    def rule(self) -> FlagRule:
        """What the flag means."""
        return RED_FLAGS[self.flag]

    @property
    def stops(self) -> Stops:
        """How much it stops: with no known place, a region becomes the upper body."""
        stops = self.rule.stops
        if stops is Stops.REGION and not self.regions:
            return Stops.UPPER_BODY
        return stops


def raise_flag(
    flags: tuple[OpenFlag, ...], event: FlagRaised, *, earlier: tuple[FlagRaised, ...]
) -> tuple[OpenFlag, ...]:
    """Add a raised flag; a passing tingle that comes again counts as lasting (ch)."""
    if event.certainty is Certainty.DENIED:
        return flags
    flag = event.flag
    if flag is RedFlag.TINGLING_PASSED and any(_is_tingle(e, event) for e in earlier):
        flag = RedFlag.NUMB_OR_WEAK
    regions = regions_of(event.site, event.side) if event.site else ()
    is_place_known = event.site is not None and event.site not in ELSEWHERE_OF_FLAGS
    return (
        *flags,
        OpenFlag(
            key=event.key,
            flag=flag,
            certainty=event.certainty,
            since_utc=event.at_utc,
            regions=regions if is_place_known else (),
            movement=event.movement,
            is_in_hang=event.is_in_hang,
        ),
    )


def answer_flag(flags: tuple[OpenFlag, ...], event: FlagAnswered) -> tuple[OpenFlag, ...]:
    """Apply a tap: it confirms, or takes back a doubt; a sign said outright it leaves standing."""
    kept = []
    for flag in flags:
        is_meant = flag.key == event.flag_key and flag.certainty is Certainty.ASKED
        if is_meant and event.certainty is Certainty.DENIED:
            continue
        is_confirmed = is_meant and event.certainty is Certainty.CONFIRMED
        kept.append(replace(flag, certainty=Certainty.CONFIRMED) if is_confirmed else flag)
    return tuple(kept)


def alert_wait(flag: RedFlag, certainty: Certainty, *, is_in_hang: bool = False) -> timedelta:
    """Return how long the coach's alert waits for the athlete's tap.

    Ten minutes for an unanswered chest question, for a tingle in a hang that may be gone
    already, and for what only reads like a sign, or like despair; else nothing. The athlete and
    the training never wait (ch).
    """
    may_pass = flag in LEARNT | {RedFlag.CHEST_INSIDE, RedFlag.SELF_HARM}
    may_pass |= flag is RedFlag.NUMB_OR_WEAK and is_in_hang
    is_waiting = may_pass and certainty is Certainty.ASKED
    return CHEST_ALERT_WAIT if is_waiting else timedelta(0)


def _is_tingle(earlier: FlagRaised, event: FlagRaised) -> bool:
    return (
        earlier.flag is RedFlag.TINGLING_PASSED
        and earlier.certainty is not Certainty.DENIED
        and event.at_utc - earlier.at_utc <= TINGLING_AGAIN_WITHIN
    )
