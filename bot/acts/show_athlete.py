"""One athlete on one screen, for the coach."""

from datetime import timedelta

from bot.acts import (
    balance_picture,
    close_messages,
    decide_proposal,
    give_back,
    history_picture,
    limits,
    remarks,
    season_picture,
    week_figures,
    week_load,
)
from bot.acts.about_athlete import entries
from bot.acts.checklist import checklist_of, local_today, measures_of
from bot.acts.find_athlete import Named, subject_of
from bot.acts.pain_picture import picture_of
from bot.acts.places import held_places, left_out_words, places_of
from bot.acts.show_audit import entries_for
from bot.acts.show_roster import KEPT_WINDOW
from bot.acts.standing_still import still_lines
from bot.outcomes import Outcome
from bot.turn import Tap, TapRows, Turn
from bot.wording import coach_athlete, coach_checklist, coach_groups, coach_plan, coach_roster
from bot.wording import handover as handover_words
from bot.wording import limits as limit_words
from bot.wording import pictures as picture_words
from bot.wording.coach_athlete import AthleteFacts, ClearedFacts, ReturnFacts
from bot.wording.coach_roster import RosterFacts
from bot.wording.pages import pages_of
from scheduler.calendar.zones import zone_named
from scheduler.pain.values import Side, Site
from storage.queries import care, people, training
from storage.records.people import Athlete, AthleteState, Person

WHO = "coach.who"
CLEARED = "pain.cleared"
CLEARED_SHOWN = timedelta(days=14)  # [days] ch: as long as pain counts on the checklist
CLEARINGS_MOST = 3  # [lines] ch: one screen; all of them are under /audit
CHANGES_SHOWN = 3  # [decisions] ch: the last ones; all of them are under /audit
LIMITS_SHOWN = 6  # [lines] ch: the standards' movements and the main pairs
NOT_CHANGES = frozenset({"coach.wrote", "dose.kept"})


def show(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Send the screen, with buttons for what can be done."""
    lines = coach_athlete.screen(turn.tongue(coach), facts_of(turn, coach, named))
    pages = pages_of(lines)
    for page in pages:
        is_last = page is pages[-1]
        turn.say(
            coach,
            page,
            taps=_taps(turn, coach, named) if is_last else (),
            subject=subject_of(named.person),
        )
    return Outcome.COMMAND


def facts_of(turn: Turn, coach: Person, named: Named) -> AthleteFacts:
    """Collect everything that the screen shows."""
    person, athlete, tongue = named.person, named.athlete, turn.tongue(coach)
    today = local_today(turn, person)
    monday = today - timedelta(days=today.weekday())
    checklist = checklist_of(turn, person, athlete)
    kept, sent = training.kept_of_sent(
        turn.tx, [person.id], first=today - KEPT_WINDOW, last=today
    ).get(person.id, (0, 0))
    week = training.sessions_between(
        turn.tx, person.id, first=monday, last=monday + timedelta(days=6)
    )
    changes = [
        entry
        for entry in care.audit_of(turn.tx, person.id, most=30)
        if entry.what not in NOT_CHANGES
    ]
    return AthleteFacts(
        name=person.name,
        stage=athlete.stage,
        weeks=max(0, (today - athlete.stage_since).days // 7),
        is_re_earned=athlete.stage_is_re_earned,
        state=athlete.state.value,
        is_blocked=person.is_blocked,
        kept=kept,
        sent=sent,
        standing=_standing(turn, coach, named, sent=sent),
        checklist_head=coach_checklist.head(tongue, checklist),
        checklist=()
        if coach_checklist.is_last_stage(checklist)
        else tuple(
            coach_checklist.lines(tongue, checklist, measures=measures_of(turn, athlete.stage))
        ),
        week=week_figures.figures_of(turn, week),
        limits=tuple(
            limit_words.limit(tongue, one)
            for one in limits.limits_of(turn, athlete, today=today)[:LIMITS_SHOWN]
        ),
        still=still_lines(turn, coach, person),
        load=week_load.load_line(turn, coach, person, today=today),
        held=give_back.held_line(turn, coach, named),
        places=places_of(turn, athlete),
        left_out=left_out_words(turn, coach, athlete),
        cleared=_cleared(turn, coach, person),
        returns=_returns(turn, athlete),
        changes=entries_for(turn, coach, changes[:CHANGES_SHOWN]),
        decisions=_decisions(turn, coach, named),
        remarks=remarks.lines_for(turn, coach, person.id),
        waiting=tuple(one.words for one in care.unanswered(turn.tx, [person.id])),
    )


def _standing(turn: Turn, coach: Person, named: Named, *, sent: int) -> str:
    """Return what the athlete does instead of training, as the roster says it."""
    person, athlete = named.person, named.athlete
    coming = training.next_planned(turn.tx, [person.id], since=local_today(turn, person))
    facts = RosterFacts(
        athlete_id=person.id,
        name=person.name,
        stage=athlete.stage,
        state=athlete.state.value,
        kept=0,
        sent=sent,
        paused_until=athlete.paused_until,
        started_on=athlete.started_on,
        next_on=coming.get(person.id),
    )
    return coach_roster.standing(turn.tongue(coach), facts)


def _cleared(turn: Turn, coach: Person, person: Person) -> tuple[ClearedFacts, ...]:
    """Return what was cleared lately, the newest first."""
    zone, since = zone_named(coach.zone), turn.now - CLEARED_SHOWN
    entries = [
        one
        for one in care.audit_of(turn.tx, person.id, most=CLEARINGS_MOST, what=(CLEARED,))
        if one.at >= since
    ]
    return tuple(
        ClearedFacts(
            on=one.at.astimezone(zone).date(),
            place=str(one.after.get("place", "")),
            who=people.person(turn.tx, one.actor_id).name if one.actor_id is not None else "",
        )
        for one in entries
    )


def _returns(turn: Turn, athlete: Athlete) -> tuple[ReturnFacts, ...]:
    """Return the way back of each cleared place, left and right together where alike."""
    alike: dict[tuple[Site | None, float, bool, int], list[Side]] = {}
    for one in picture_of(turn, athlete).returns:
        key = (
            one.region.site if one.region else None,
            one.share_of_sets,
            one.is_one_step_back,
            one.sessions_left,
        )
        alike.setdefault(key, []).append(one.region.arm if one.region else Side.BOTH)
    return tuple(
        ReturnFacts(
            site=site,
            side=sides[0] if len(sides) == 1 else Side.BOTH,
            share_of_sets=share,
            is_one_step_back=is_back,
            sessions_left=left,
        )
        for (site, share, is_back, left), sides in alike.items()
    )


def _decisions(turn: Turn, coach: Person, named: Named) -> tuple[str, ...]:
    tongue = turn.tongue(coach)
    found = [
        coach_athlete.decision_line(tongue, decide_proposal.title_of(turn, coach, proposal))
        for proposal in care.proposals(turn.tx, [named.person.id])
    ]
    if care.open_alerts(turn.tx, athlete_id=named.person.id):
        found.append(coach_athlete.open_alert_line(tongue))
    if named.athlete.state is AthleteState.WAITS_FOR_COACH:
        found.append(coach_athlete.look_at_answers_line(tongue))
    return tuple(found)


def _taps(turn: Turn, coach: Person, named: Named) -> TapRows:
    tongue, about = turn.tongue(coach), {"athlete": named.person.id}
    rows: list[list[Tap]] = [
        decide_proposal.taps_for(turn, coach, proposal)
        for proposal in care.proposals(turn.tx, [named.person.id])
    ]
    rows += [
        [Tap(coach_athlete.seen_label(tongue), "alert.seen", {"alert": alert.id})]
        for alert in care.open_alerts(turn.tx, athlete_id=named.person.id)[:1]
    ]
    row = [
        Tap(coach_athlete.write_label(tongue), "coach.write", about),
        Tap(coach_athlete.audit_label(tongue), "coach.audit", about),
    ]
    row.insert(1, Tap(coach_plan.step_label(tongue, "plan"), "plan", about))
    if held_places(turn, named.athlete):
        row.append(Tap(coach_athlete.clear_label(tongue), "coach.clear_ask", about))
    unanswered = close_messages.tap_for(turn, coach, named.person)
    rows += [[unanswered]] if unanswered else []
    pictures = [
        Tap(picture_words.history_label(tongue), history_picture.ACT, about),
        Tap(picture_words.season_label(tongue), season_picture.ACT, about),
        Tap(picture_words.balance_label(tongue), balance_picture.ACT, about),
    ]
    more = [Tap(coach_groups.open_label(tongue), "coach.group_choose", about)]
    if picture_of(turn, named.athlete).regions:
        more.append(Tap(handover_words.label(tongue), "coach.handover", about))
    return [*rows, row, pictures, more]


# ``/who NAME``.
command, tapped = entries(show, act=WHO, example="/who Robin", has_rest=False)
