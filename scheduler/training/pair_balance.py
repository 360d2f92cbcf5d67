"""Push and pull of one pair on the day itself: pulls that are cut for pain take pushes along."""

import math

from scheduler.reasons import Decision, reason
from scheduler.sources import CP
from scheduler.training.training_reasons import DoseReason
from scheduler.training.values import Dose

CUT_FOR_PAIN = frozenset({DoseReason.EASE_CUT, DoseReason.SETS_SHARED})


def push_beside(
    push: Decision[Dose], *, pull: Decision[Dose], push_planned: int, pull_planned: int
) -> Decision[Dose]:
    """Cut a push in proportion where its partner pull was cut for pain or on its way back (CP).

    ``push_planned`` and ``pull_planned`` [sets, 1 or more] are what the week gives to both. The
    week's balance was kept with these; a cut on the day must not leave more pushes than it allows.
    What was cut in the push already counts; at least one set stays. A pull that is not cut, or cut
    for another reason, changes nothing.
    """
    codes = {one.code for one in pull.reasons}
    if pull.value.sets >= pull_planned or not codes & CUT_FOR_PAIN:
        return push
    most = max(1, math.floor(push_planned * pull.value.sets / pull_planned + 1e-9))
    if push.value.sets <= most:
        return push
    why = reason(
        DoseReason.PUSH_CUT_WITH_PULL,
        CP,
        movement=pull.value.movement_key,
        pull_sets=pull.value.sets,
        sets=most,
    )
    return Decision(
        value=push.value.model_copy(update={"sets": most}), reasons=(*push.reasons, why)
    )
