"""A drawn week with what the coach changed in it: only where nothing stands against it."""

from collections.abc import Sequence
from dataclasses import dataclass

from scheduler.catalogue.library import Library
from scheduler.catalogue.values import Movement, Role
from scheduler.reasons import Reason, reason
from scheduler.sources import CP
from scheduler.training.coach_plan import CoachPlan, ItemChange, StandingSwap
from scheduler.training.permissions import LADDER, quality_for, takes_no_load
from scheduler.training.permissions import Slot as PermissionSlot
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import Quality
from scheduler.training.week_minutes import session_minutes
from scheduler.training.week_reasons import WeekReason
from scheduler.training.week_shelf import Shelf
from scheduler.training.week_values import Session, Slot, WeekDraft, WeekRequest

AGAINST_STAGE = frozenset({WeekReason.NOTHING_PERMITTED, WeekReason.NOT_YET})
"""All that a coach's recorded override goes against. What is left out, not owned, or out after an
old injury is never among it."""


@dataclass(frozen=True)
class _Look:
    """What a change is judged by."""

    request: WeekRequest
    library: Library
    rulebook: Rulebook

    def obstacle(self, movement: Movement, *, slot: Slot, is_override: bool) -> WeekReason | None:
        request = self.request
        if is_override and not request.held_at_stage_one & {slot.direction, movement.direction}:
            allowed = request.allowed_by_coach | {movement.key}
            request = request.model_copy(update={"allowed_by_coach": allowed})
        shelf = Shelf(request=request, library=self.library, rulebook=self.rulebook)
        is_upkeep = slot.pair is None and movement.role is Role.MAIN and shelf.has_upkeep
        return shelf.obstacle(movement, direction=slot.direction, on=slot.on, is_upkeep=is_upkeep)


def obstacle_to(
    movement: Movement,
    *,
    slot: Slot,
    request: WeekRequest,
    library: Library,
    rulebook: Rulebook,
    is_override: bool = False,
) -> WeekReason | None:
    """Return what stands against a movement in a place of the week, the gravest first, or None.

    ``is_override``: the coach has been told that the stage does not permit it, and wants it. An
    override never reaches a direction that is held at stage 1's row (chosen, careful): that is
    given back by itself. Hard pulling on the day before is said by the check of the week.
    """
    found = _Look(request, library, rulebook).obstacle(movement, slot=slot, is_override=is_override)
    return None if found is WeekReason.HANG_AFTER_HARD_PULLING else found


def fits_place(movement: Movement, *, slot: Slot, library: Library) -> bool:
    """Tell whether a movement counts for what a place is for: its direction, and its role (CP)."""
    role = library.movements[slot.movement_key].role
    if role is Role.ACCESSORY or movement.role is Role.ACCESSORY:
        return movement.role is role
    return slot.direction in {movement.direction, movement.stands_in_for}


def with_changes(
    draft: WeekDraft,
    *,
    plan: CoachPlan,
    request: WeekRequest,
    library: Library,
    rulebook: Rulebook,
) -> WeekDraft:
    """Put the coach's movements into a drawn week, and say of each that had to wait why.

    Parameters: ``draft`` as the rules drew it for ``request``; sent days stand. A change gives
    way to what is left out, not owned, out after an old injury, or not permitted any more; the
    place then keeps what was drawn (chosen, careful).
    """
    look = _Look(request, library, rulebook)
    reasons: list[Reason] = []
    sessions = []
    sent = {slot.on for slot in request.kept}
    for session in draft.sessions:
        if session.on in sent:
            sessions.append(session)
            continue
        slots, why = _changed(session.slots, plan=plan, look=look)
        sessions.append(_with_slots(session, slots, look=look))
        reasons += why
    return draft.model_copy(
        update={"sessions": tuple(sessions), "reasons": (*draft.reasons, *reasons)}
    )


def _changed(
    slots: Sequence[Slot], *, plan: CoachPlan, look: _Look
) -> tuple[tuple[Slot, ...], list[Reason]]:
    reasons: list[Reason] = []
    found: list[Slot] = list(slots)
    for at, slot in enumerate(slots):
        change = _change_of(slot, plan=plan, library=look.library)
        movement = look.library.movements.get(change.movement_key) if change else None
        if change is None or movement is None or movement.key == slot.movement_key:
            continue
        others = {one.movement_key for one in found} - {slot.movement_key}
        against = look.obstacle(movement, slot=slot, is_override=change.is_override)
        is_free = fits_place(movement, slot=slot, library=look.library)
        if movement.key in others or not is_free or against not in _ACCEPTED:
            reasons.append(_about(WeekReason.COACH_CHANGE_WAITS, slot, movement))
            continue
        found[at] = _slot_with(movement, slot=slot, look=look)
        reasons.append(_about(WeekReason.CHANGED_BY_COACH, slot, movement))
    return tuple(found), reasons


_ACCEPTED = frozenset({None, WeekReason.HANG_AFTER_HARD_PULLING})


def _change_of(
    slot: Slot, *, plan: CoachPlan, library: Library
) -> ItemChange | StandingSwap | None:
    """Return the change of a place; upkeep and an accessory may share what a place is known by."""
    dated = plan.item_change(on=slot.on, pair=slot.pair, direction=slot.direction)
    was = library.movements.get(dated.was) if dated is not None else None
    if was is not None and was.role is library.movements[slot.movement_key].role:
        return dated
    return plan.swap_of(slot.movement_key)


def slot_with(
    movement: Movement,
    *,
    slot: Slot,
    request: WeekRequest,
    library: Library,
    rulebook: Rulebook,
) -> Slot:
    """Return a place of the week with another movement: the arms that may do it, its quality."""
    return _slot_with(movement, slot=slot, look=_Look(request, library, rulebook))


def _slot_with(movement: Movement, *, slot: Slot, look: _Look) -> Slot:
    shelf = Shelf(request=look.request, library=look.library, rulebook=look.rulebook)
    return slot.model_copy(
        update={
            "movement_key": movement.key,
            "quality": _quality(movement, slot=slot, look=look),
            "arms": shelf.arms(movement, direction=slot.direction),
        }
    )


def _quality(movement: Movement, *, slot: Slot, look: _Look) -> Quality:
    """Return what the place trains with another movement: never a heavier row than before (CH).

    Where the movement before took no load, its low row says nothing about the place.
    """
    request = look.request
    if slot.pair is None:
        return slot.quality
    fresh = quality_for(
        movement,
        slot=PermissionSlot(
            stage=request.stage_for(slot.direction, movement.direction),
            weeks_in_stage=request.stage_week - 1,
            is_first_pair=slot.pair == 1,
            is_maximal_taken=slot.quality is not Quality.MAXIMAL_STRENGTH,
        ),
        rulebook=look.rulebook,
    ).value
    before = look.library.movements[slot.movement_key]
    if takes_no_load(before) or not {fresh, slot.quality} <= set(LADDER):
        return fresh
    return min(fresh, slot.quality, key=LADDER.index)


def _with_slots(session: Session, slots: tuple[Slot, ...], *, look: _Look) -> Session:
    if slots == session.slots:
        return session
    minutes = session_minutes(
        slots,
        movements=look.library.movements,
        stage=look.request.stage,
        rulebook=look.rulebook,
    )
    return session.model_copy(update={"slots": slots, "minutes": minutes})


def _about(code: WeekReason, slot: Slot, movement: Movement) -> Reason:
    return reason(code, CP, on=slot.on.isoformat(), movement=slot.movement_key, to=movement.key)
