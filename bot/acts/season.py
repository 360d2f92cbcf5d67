"""An athlete's season from what is stored: planned anew each time, never faster than the gates."""

from datetime import date, timedelta

from bot.acts.stage_history import CHANGED, TAKEN_BACK, held_stages
from bot.acts.week_request import kinds_of_past
from bot.turn import Turn
from scheduler.calendar.wall_time import monday_of
from scheduler.reasons import Decision
from scheduler.training.season_outlook import Outlook, honest_outlook
from scheduler.training.season_values import Season, SeasonRequest, SeasonWeek, Span
from scheduler.training.seasons import plan_season, week_kind_on
from scheduler.training.values import StageState
from storage.queries import care
from storage.records.people import Athlete

A_DAY = timedelta(days=1)


def season_request(turn: Turn, athlete: Athlete, *, today: date) -> SeasonRequest:
    """Gather what a season depends on, as of a day."""
    profile = athlete.profile
    return SeasonRequest(
        today=today,
        state=StageState(
            stage=athlete.stage,
            entered_on=min(athlete.stage_since, today),
            is_re_earned=athlete.stage_is_re_earned,
        ),
        training_age_months=profile.facts.training_age_months,
        days_untrained_before=profile.facts.days_untrained_before,
        is_off_season=profile.is_off_season,
        began_on=_began_on(athlete, today=today),
        events=profile.all_events,
        in_season=profile.in_season,
        breaks=_breaks(athlete, today=today),
        travels=profile.travels,
        weekdays=frozenset(day + 1 for day in profile.weekdays),
        past=kinds_of_past(turn, athlete.person_id, before=monday_of(today)),
    )


def season_of(turn: Turn, athlete: Athlete, *, today: date) -> Decision[Season]:
    """Plan the season from a day on."""
    request = season_request(turn, athlete, today=today)
    return plan_season(request, rulebook=turn.house.rulebook)


def season_week(turn: Turn, athlete: Athlete, *, monday: date) -> Decision[SeasonWeek]:
    """Say what the week that begins on ``monday`` is for."""
    season = season_of(turn, athlete, today=monday).value
    return week_kind_on(season, monday, rulebook=turn.house.rulebook)


def outlook_of(turn: Turn, athlete: Athlete, *, today: date) -> Decision[Outlook]:
    """Compare what was planned when the season began with what can honestly be reached."""
    now = season_request(turn, athlete, today=today)
    began = now.began_on or today
    first = now.model_copy(
        update={
            "today": began,
            "state": StageState(stage=_stage_on(turn, athlete, began), entered_on=began),
            "past": (),
        }
    )
    planned = plan_season(first, rulebook=turn.house.rulebook).value
    return honest_outlook(planned, today=today, state=now.state, rulebook=turn.house.rulebook)


def _began_on(athlete: Athlete, *, today: date) -> date:
    """Return when the time to the next main event began: after the last one, or with training."""
    past = [event.on for event in athlete.profile.all_events if event.is_main and event.on < today]
    started = min(athlete.started_on or today, today)
    return max([started, *(on + A_DAY for on in past)])


def _breaks(athlete: Athlete, *, today: date) -> tuple[Span, ...]:
    until = athlete.paused_until
    if until is None or until <= today:
        return ()
    return (Span(first=today, last=until - A_DAY),)


def _stage_on(turn: Turn, athlete: Athlete, on: date) -> int:
    """Return the stage that was held on a day, from the recorded changes."""
    entries = care.audit_of(turn.tx, athlete.person_id, what=(CHANGED, TAKEN_BACK))
    later = [held for held in held_stages(entries) if held.until > on]
    return later[0].stage if later else athlete.stage
