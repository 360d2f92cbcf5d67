"""Push and pull of one pair on the day: what the pull is cut for pain, the push follows."""

from collections.abc import Mapping, Sequence

from scheduler.reasons import Decision
from scheduler.training.pair_balance import push_beside
from scheduler.training.values import Dose
from storage.records.training import ItemRecord


def beside_pull(
    item: ItemRecord, items: Sequence[ItemRecord], decided: Mapping[int, Decision[Dose]]
) -> Decision[Dose]:
    """Return an item's dose: a push goes along where the pull of its pair is cut for pain."""
    own = decided[item.id]
    if item.pair is None or not item.direction.is_push:
        return own
    for other in items:
        if other.pair == item.pair and other.id in decided and not other.direction.is_push:
            own = push_beside(
                own,
                pull=decided[other.id],
                push_planned=item.planned_sets,
                pull_planned=other.planned_sets,
            )
    return own
