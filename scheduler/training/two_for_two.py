"""The published rule for raising a load: two repetitions over the goal, two sessions running."""

from collections.abc import Sequence

REPS_OVER_GOAL = 2  # [repetitions] essentials2016: ch. 17, two-for-two rule
SESSIONS_RUNNING = 2  # [sessions] essentials2016: ch. 17, two-for-two rule


def is_load_raised(last_set_reps: Sequence[float], *, goal_reps: float) -> bool:
    """Tell whether the two-for-two rule raises the load.

    Parameters: ``last_set_reps`` [repetitions] in the last set of each trained session, oldest
    first; ``goal_reps`` [repetitions]. Source: essentials2016, two or more repetitions over the
    goal in the last set of two consecutive trained sessions. The doses here use double
    progression instead, which asks no more than the top of the range; this is its stricter form.
    """
    latest = last_set_reps[-SESSIONS_RUNNING:]
    return len(latest) == SESSIONS_RUNNING and all(
        reps >= goal_reps + REPS_OVER_GOAL for reps in latest
    )
