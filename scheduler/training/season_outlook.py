"""What can honestly be reached by the main event, from where an athlete really is."""

from datetime import date

from pydantic import BaseModel

from scheduler.reasons import Decision, Figure, Reason, reason
from scheduler.training.rulebook import Rulebook
from scheduler.training.season_reasons import SeasonReason
from scheduler.training.season_values import STRICT, Season, SeasonEvent
from scheduler.training.seasons import plan_season
from scheduler.training.values import StageState


class Outlook(BaseModel):
    """The stage by a day: as it was planned, and as it can honestly be reached now.

    ``event`` is the next main one, None without one, when ``by`` is how far the season looks;
    ``next_stage_on``: the earliest proposed day of the next stage, None when it does not fit.
    """

    model_config = STRICT

    event: SeasonEvent | None
    by: date
    stage_planned: int
    stage_honest: int
    next_stage_on: date | None

    @property
    def is_behind(self) -> bool:
        """True when less can be reached than was planned."""
        return self.stage_honest < self.stage_planned


def honest_outlook(
    season: Season, *, today: date, state: StageState, rulebook: Rulebook
) -> Decision[Outlook]:
    """Compare an earlier plan with what fits from today on, at the stage really held.

    Parameters: ``season``, as planned before; ``today``; ``state``, the stage held today and
    since when. The season is planned again from here with every least week in full (CH), so
    nobody is rushed to a date: who is behind sees fewer stages by the event, not shorter ones.
    """
    again = replanned(season, today=today, state=state, rulebook=rulebook)
    event = next(iter(again.request.main_events), None)
    by = event.on if event is not None else again.weeks[-1].sunday
    outlook = Outlook(
        event=event,
        by=by,
        stage_planned=season.stage_by(by),
        stage_honest=again.stage_by(by),
        next_stage_on=_next_stage_on(again, state),
    )
    return Decision(value=outlook, reasons=_why(outlook, state=state, rulebook=rulebook))


def replanned(season: Season, *, today: date, state: StageState, rulebook: Rulebook) -> Season:
    """Return the season planned again from today, its proportions counted from its beginning."""
    request = season.request.model_copy(
        update={
            "began_on": season.request.began_on or season.request.today,
            "today": today,
            "state": state,
            "past": (),
        }
    )
    return plan_season(request, rulebook=rulebook).value


def _next_stage_on(season: Season, state: StageState) -> date | None:
    return next((week.monday for week in season.weeks if week.stage == state.stage + 1), None)


def _why(outlook: Outlook, *, state: StageState, rulebook: Rulebook) -> tuple[Reason, ...]:
    source = rulebook.season.last_stage_least_weeks.source
    figures: dict[str, Figure] = {
        "on": outlook.by.isoformat(),
        "planned": outlook.stage_planned,
        "stage": outlook.stage_honest,
    }
    found = [reason(_code(outlook), source, **figures)]
    if outlook.next_stage_on is not None:
        on = outlook.next_stage_on.isoformat()
        stage = state.stage + 1
        found.append(reason(SeasonReason.OUTLOOK_NEXT_STAGE, source, on=on, stage=stage))
    return tuple(found)


def _code(outlook: Outlook) -> SeasonReason:
    if outlook.event is None:
        return SeasonReason.OUTLOOK_NO_EVENT
    if outlook.is_behind:
        return SeasonReason.OUTLOOK_BEHIND
    if outlook.stage_honest > outlook.stage_planned:
        return SeasonReason.OUTLOOK_AHEAD
    return SeasonReason.OUTLOOK_AS_PLANNED
