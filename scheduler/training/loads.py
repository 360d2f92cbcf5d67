"""Which resistances an athlete can really take, in order, and how big the step to the next is."""

from collections import Counter
from enum import StrEnum

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import ALWAYS_AT_HAND, Equipment, Loading, Movement
from scheduler.training.dose_rules import StepRules
from scheduler.training.values import NO_RESISTANCE, AthleteProfile, Band, Rung

WEIGHTS = frozenset(
    {Equipment.DUMBBELLS, Equipment.KETTLEBELLS, Equipment.BARBELL, Equipment.CABLE}
)
"""The implements that come in kilograms."""


class StepSize(StrEnum):
    """How big a step to the next owned resistance is."""

    TINY = "tiny"
    ORDINARY = "ordinary"
    MODERATE = "moderate"
    LARGE = "large"


class NextRung(BaseModel):
    """The next harder resistance, and how big the step to it is."""

    model_config = ConfigDict(frozen=True)

    rung: Rung
    size: StepSize


def rungs(movement: Movement, *, profile: AthleteProfile) -> tuple[Rung, ...]:
    """Return the resistances owned for a movement, easiest first; never one that is not owned.

    A movement loaded from outside takes the weights, or else the bands of one family, that one
    of its owned alternatives of equipment names. A weighted body starts with nothing added.
    Help by a band goes from the strongest to the weakest; help by the feet has one rung, and so
    has a movement without load.
    Empty where a movement needs a weight or band and none is owned.
    """
    if movement.loading is Loading.NONE:
        return (NO_RESISTANCE,)
    implements = _implements(movement, profile=profile)
    if movement.loading is Loading.ASSISTED:
        return _help_rungs(profile) if Equipment.BAND in implements else (NO_RESISTANCE,)
    weights = _weight_rungs(implements, profile=profile)
    if movement.loading is Loading.BODYWEIGHT_PLUS:
        return (NO_RESISTANCE, *weights)
    if not weights and Equipment.BAND in implements:
        return _band_rungs(profile)
    return weights


def _implements(movement: Movement, *, profile: AthleteProfile) -> frozenset[Equipment]:
    """Return what carries the load in the alternatives that fit; any weight for added weight."""
    if movement.loading is Loading.BODYWEIGHT_PLUS:
        return WEIGHTS - {Equipment.BARBELL, Equipment.CABLE}
    at_hand = profile.equipment | ALWAYS_AT_HAND
    fitting = [choice for choice in movement.equipment if choice <= at_hand]
    return frozenset().union(*fitting)


def _weight_rungs(implements: frozenset[Equipment], *, profile: AthleteProfile) -> tuple[Rung, ...]:
    owned = {
        load_kg
        for implement in implements & WEIGHTS
        for load_kg in profile.loads_kg.get(implement, ())
        if load_kg > 0
    }
    return tuple(Rung(load_kg=load_kg) for load_kg in sorted(owned))


def _band_rungs(profile: AthleteProfile) -> tuple[Rung, ...]:
    return tuple(Rung(band=band.key) for band in _one_family(profile.bands))


def _help_rungs(profile: AthleteProfile) -> tuple[Rung, ...]:
    strongest_first = reversed(_one_family(profile.bands))
    return tuple(Rung(band=band.key, assist_kg=band.help_kg) for band in strongest_first)


def _one_family(bands: tuple[Band, ...]) -> tuple[Band, ...]:
    """Return the biggest family of bands, lightest first: ranks compare inside a family only."""
    sizes = Counter(band.family for band in sorted(bands, key=lambda band: band.family))
    if not sizes:
        return ()
    ((biggest, _),) = sizes.most_common(1)
    members = [band for band in bands if band.family == biggest]
    return tuple(sorted(members, key=lambda band: band.rank))


def step_share(
    lower: Rung, higher: Rung, *, movement: Movement, body_mass_kg: float
) -> float | None:
    """Return how much harder ``higher`` is than ``lower`` [share of ``lower``]; None if unknown.

    The body's part counts where the library says how much of it rests on the hands; a change of
    band, and added weight on an unknown share of the body, are of unknown size.
    """
    if lower.band is not None or higher.band is not None:
        return None
    body_kg = 0.0
    if movement.loading is Loading.BODYWEIGHT_PLUS:
        if movement.bodyweight_share is None:
            return None
        body_kg = movement.bodyweight_share * body_mass_kg
    lower_kg = body_kg + (lower.load_kg or 0.0)
    if lower_kg == 0:
        return None
    return (body_kg + (higher.load_kg or 0.0)) / lower_kg - 1


def next_rung(
    current: Rung,
    *,
    movement: Movement,
    profile: AthleteProfile,
    steps: StepRules,
) -> NextRung | None:
    """Return the next owned resistance to step to, or None at the heaviest.

    The smallest owned step within 2-10 % (acsm2009); where there is none, the smallest above, so
    that steps under 2 % are passed over; a step of unknown size (bands) counts as large.
    """
    owned = rungs(movement, profile=profile)
    if current not in owned:
        return None
    harder = owned[owned.index(current) + 1 :]
    if not harder:
        return None
    sized = [_sized(current, rung, movement, profile.body_mass_kg, steps) for rung in harder]
    worthwhile = [step for step in sized if step.size is not StepSize.TINY]
    return worthwhile[0] if worthwhile else None


def _sized(
    current: Rung, rung: Rung, movement: Movement, body_mass_kg: float, steps: StepRules
) -> NextRung:
    share = step_share(current, rung, movement=movement, body_mass_kg=body_mass_kg)
    if share is None:
        return NextRung(rung=rung, size=StepSize.LARGE)
    return NextRung(rung=rung, size=_size_of(share, steps))


def _size_of(share: float, steps: StepRules) -> StepSize:
    rounded = round(share, 9)
    if rounded < steps.load_step_share.least:
        return StepSize.TINY
    if rounded in steps.load_step_share:
        return StepSize.ORDINARY
    if rounded <= steps.moderate_step_share_most.value:
        return StepSize.MODERATE
    return StepSize.LARGE


def rung_below(current: Rung, *, movement: Movement, profile: AthleteProfile) -> Rung | None:
    """Return the next easier owned resistance, or None at the easiest."""
    owned = rungs(movement, profile=profile)
    if current not in owned or owned.index(current) == 0:
        return None
    return owned[owned.index(current) - 1]


def nearest_owned(current: Rung, *, movement: Movement, profile: AthleteProfile) -> Rung | None:
    """Return ``current`` if owned, else the heaviest owned one not above it, else None.

    A band that is no longer owned has no order to the others: the easiest owned one stands in.
    """
    owned = rungs(movement, profile=profile)
    if current in owned:
        return current
    if not owned:
        return None
    if current.load_kg is None:
        return owned[0]
    lighter = [rung for rung in owned if rung.band is None and _kg(rung) <= current.load_kg]
    return lighter[-1] if lighter else None


def _kg(rung: Rung) -> float:
    return rung.load_kg or 0.0
