"""Missed days: what stays, what is cut for how many weeks, and when to begin again."""

from enum import StrEnum

from pydantic import BaseModel, ConfigDict, Field

from scheduler.reasons import Decision, reason
from scheduler.training.labelled import Labelled
from scheduler.training.rulebook import Rulebook
from scheduler.training.training_reasons import GapReason


class Absence(StrEnum):
    """Why nothing was trained; unknown is handled like illness."""

    TRAVEL = "travel"
    ILLNESS = "illness"
    OTHER = "other"


class Return(BaseModel):
    """What training is like after a gap.

    ``share_of_sets`` [fraction, 0-1] of the ordinary sets, rounded down, at least one;
    ``may_step``: whether doses may get harder; ``is_long``: a gap that makes a returner, also
    when its weeks are over;
    ``needs_screen``: screen and baseline come first; ``stage_most`` [1-5], where one applies.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    share_of_sets: float = Field(default=1.0, gt=0, le=1)
    may_step: bool = True
    is_long: bool = False
    needs_screen: bool = False
    stage_most: int | None = None


NO_GAP = Return()
"""Nothing was missed."""


def after_gap(
    *,
    days_untrained: int,
    weeks_back: int,
    absence: Absence,
    stage: int,
    rulebook: Rulebook,
) -> Decision[Return]:
    """Decide how training goes on after days without it.

    Parameters: ``days_untrained`` [days, 0 or more] between the last trained session of any
    direction (training elsewhere while away counts as trained) and the first one back;
    ``weeks_back`` [whole weeks since that first one, 0 in the first]; ``absence``; ``stage``
    [1-5]. Shares after 28 days and after illness follow caterisano2019; those after healthy
    travel are chosen. From 84 days on screen and baseline come again, and the consensus' shares
    apply to what is planned from them.
    """
    rules = rulebook.gaps
    if days_untrained < rules.no_step_from_days.value:
        return Decision(
            value=NO_GAP,
            reasons=(
                reason(GapReason.AS_PLANNED, rules.no_step_from_days.source, days=days_untrained),
            ),
        )
    if days_untrained < rules.short_from_days.value:
        return _without_step(days_untrained, weeks_back=weeks_back, rulebook=rulebook)
    return _with_shares(
        days_untrained, weeks_back=weeks_back, absence=absence, stage=stage, rulebook=rulebook
    )


def _without_step(days: int, *, weeks_back: int, rulebook: Rulebook) -> Decision[Return]:
    """Keep the doses for the first week back."""
    source = rulebook.gaps.no_step_from_days.source
    if weeks_back >= 1:
        return Decision(value=NO_GAP, reasons=(reason(GapReason.RETURN_DONE, source, days=days),))
    return Decision(
        value=Return(may_step=False), reasons=(reason(GapReason.NO_STEP, source, days=days),)
    )


def _with_shares(
    days: int, *, weeks_back: int, absence: Absence, stage: int, rulebook: Rulebook
) -> Decision[Return]:
    rules = rulebook.gaps
    code, shares = _shares(days, absence=absence, stage=stage, rulebook=rulebook)
    is_long = days >= rules.long_from_days.value
    needs_screen = days >= rules.again_from_days.value
    stage_most = rules.again_stage_most.whole if needs_screen else None
    if weeks_back >= len(shares):
        done = reason(GapReason.RETURN_DONE, shares[-1].source, days=days, weeks_back=weeks_back)
        return Decision(value=Return(is_long=is_long, stage_most=stage_most), reasons=(done,))
    share = shares[weeks_back]
    why = [reason(code, share.source, days=days, weeks_back=weeks_back, share=share.value)]
    if needs_screen:
        why.insert(0, reason(GapReason.SCREEN_AGAIN, rules.again_from_days.source, days=days))
    value = Return(
        share_of_sets=share.value,
        may_step=False,
        is_long=is_long,
        needs_screen=needs_screen and weeks_back == 0,
        stage_most=stage_most,
    )
    return Decision(value=value, reasons=tuple(why))


def _shares(
    days: int, *, absence: Absence, stage: int, rulebook: Rulebook
) -> tuple[GapReason, tuple[Labelled, ...]]:
    rules = rulebook.gaps
    if days >= rules.long_from_days.value:
        return GapReason.SHARE_AFTER_LONG, rules.long_shares
    if absence is Absence.TRAVEL and stage < rules.careful_from_stage.value:
        return GapReason.SHARE_AFTER_TRAVEL, rules.healthy_shares
    return GapReason.SHARE_CAREFUL, rules.careful_shares


def may_train_after_fever(*, clear_h: float, rulebook: Rulebook) -> Decision[bool]:
    """Decide whether training may begin again after a fever (CP).

    Parameters: ``clear_h`` [h, 0 or more] since the last sign of fever, without medicine.
    """
    wait = rulebook.gaps.fever_clear_hours
    is_clear = clear_h >= wait.value
    code = GapReason.AS_PLANNED if is_clear else GapReason.FEVER_WAIT
    return Decision(
        value=is_clear,
        reasons=(reason(code, wait.source, clear_h=clear_h, needed_h=wait.value),),
    )


def sets_after_share(*, sets: int, share: float) -> int:
    """Return ``share`` [fraction, 0-1] of ``sets`` [sets], rounded down, at least one [sets]."""
    return max(1, int(round(sets * share, 6)))
