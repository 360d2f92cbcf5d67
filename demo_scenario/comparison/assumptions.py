"""What might be true of bodies: several sets of assumptions, so that no rule is tuned to one.

All figures are chosen (CH). They say how a simulated body behaves, and claim nothing about people.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Assumptions:
    """One set of assumptions.

    ``gain_most`` [log units] bounds what can be gained, None for no bound; ``tires_a_set`` [log
    units] within a session; ``lasting_a_set`` [log units] carried on, halved every
    ``half_life_days`` [days]; ``day_spread`` [log units, least and most of the individual
    standard deviation]; ``guess_near_s`` [s] is the spread of a reserve answer at failure and
    ``guess_per_s`` [s for each s left] what distance adds; ``guess_bias_s`` [s] the spread of the
    athletes' own leanings; ``missed_share`` [share of sessions]; ``break_days`` [days] of one
    break in every 12 weeks.
    """

    name: str
    says: str
    gain_most: float | None = None
    tires_a_set: float = 0.07
    lasting_a_set: float = 0.006
    half_life_days: float = 1.5
    day_spread: tuple[float, float] = (0.05, 0.10)
    guess_near_s: float = 3.0
    guess_per_s: float = 0.25
    guess_bias_s: float = 2.0
    missed_share: float = 0.08
    break_days: int = 0


ASSUMPTIONS = (
    Assumptions(name="linear", says="the logarithm grows by as much at each exposure"),
    Assumptions(name="saturating", says="each gain is smaller, the more was gained", gain_most=0.6),
    Assumptions(
        name="tiring",
        says="sets cost more, and the cost lasts for days",
        tires_a_set=0.14,
        lasting_a_set=0.02,
        half_life_days=3.0,
    ),
    Assumptions(
        name="poor answers",
        says="reserve answers are far off, each athlete in an own way",
        guess_near_s=7.0,
        guess_per_s=0.5,
        guess_bias_s=6.0,
    ),
    Assumptions(
        name="many missed",
        says="three sessions in ten are missed, and twelve days in a row each quarter",
        missed_share=0.3,
        break_days=12,
    ),
)
