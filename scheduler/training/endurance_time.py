"""How long a hold lasts at a fraction of the strongest one: the published curves by joint.

The 95 % prediction band is 29-47 % wide (freylaw2010): good for relating two loads of one person,
never for predicting a person from the table.
"""

from pydantic import BaseModel, ConfigDict

from scheduler.catalogue.values import Joint


class Curve(BaseModel):
    """Endurance time [s] = ``scale_s`` * fraction ** ``power``."""

    model_config = ConfigDict(frozen=True)

    scale_s: float
    power: float


CURVES = {
    Joint.SHOULDER: Curve(scale_s=14.86, power=-1.83),
    Joint.ELBOW: Curve(scale_s=17.98, power=-2.21),
    Joint.GRIP: Curve(scale_s=33.55, power=-1.61),
    Joint.TRUNK: Curve(scale_s=22.69, power=-2.27),
    Joint.GENERAL: Curve(scale_s=21.92, power=-1.98),
}  # [s, 1] freylaw2010: coefficients of the power model by joint
LEAST_FRACTION = 0.25  # [fraction of the maximum] freylaw2010: few data below


def endurance_time_s(*, fraction: float, joint: Joint) -> float:
    """Return how long a hold lasts on average [s].

    Parameters: ``fraction`` of the maximal voluntary contraction [0-1]; ``joint``, the limiting
    one. Source: freylaw2010, ET = b0 f^b1. Fitted from 25 to 100 %.

    Raises:
        ValueError: outside 0-1, where the curve means nothing.

    """
    if not 0 < fraction <= 1:
        message = f"expected a fraction above 0 and up to 1, got {fraction}"
        raise ValueError(message)
    curve = CURVES[joint]
    return float(curve.scale_s * fraction**curve.power)


def fraction_of_maximum(*, endurance_s: float, joint: Joint) -> float:
    """Return the fraction of the maximum [0-1] at which a hold lasts ``endurance_s`` [s, above 0].

    The curve turned round (freylaw2010); above 1 for times shorter than the curve's 100 %.
    """
    curve = CURVES[joint]
    return float((endurance_s / curve.scale_s) ** (1 / curve.power))


def fitted_range_s(joint: Joint) -> tuple[float, float]:
    """Return the shortest and longest time [s] that the curve is fitted for: at 100 and 25 %."""
    return (
        endurance_time_s(fraction=1.0, joint=joint),
        endurance_time_s(fraction=LEAST_FRACTION, joint=joint),
    )


def is_fitted(*, endurance_s: float, joint: Joint) -> bool:
    """Tell whether ``endurance_s`` [s] lies inside the range that the curve is fitted for."""
    shortest_s, longest_s = fitted_range_s(joint)
    return shortest_s <= endurance_s <= longest_s


def time_at_other_load_s(
    *, endurance_s: float, load_kg: float, other_load_kg: float, joint: Joint
) -> float:
    """Return how long the same person holds another load [s]: T2 = T1 (L2 / L1)^b.

    Parameters: ``endurance_s`` [s, above 0], to failure, at ``load_kg`` [kg or any unit, above
    0]; ``other_load_kg`` [same unit]; ``joint``. Source: freylaw2010, exponent by joint; the
    person's own maximum cancels out. Valid where both times are fitted (:func:`is_fitted`);
    callers ask, this returns the extrapolation too.
    """
    return float(endurance_s * (other_load_kg / load_kg) ** CURVES[joint].power)


def load_for_time_kg(
    *, endurance_s: float, load_kg: float, other_endurance_s: float, joint: Joint
) -> float:
    """Return the load [same unit as ``load_kg`` [kg]] that the same person holds for another time.

    The inverse of :func:`time_at_other_load_s`, with the same range and source (freylaw2010).
    """
    return float(load_kg * (other_endurance_s / endurance_s) ** (1 / CURVES[joint].power))
