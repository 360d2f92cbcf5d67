"""Everything of an athlete that is theirs, gathered; private signs and crisis words never are.

Only reads, so that it may be gathered beside the writer.
"""

from collections.abc import Mapping
from typing import Any

from bot.acts.coach_note import NOTE
from bot.acts.export_pain import pain_of
from bot.acts.export_tests import tests_of
from bot.exports.units import UNITS
from bot.exports.values import (
    AthleteData,
    ExportedAthlete,
    ExportedDecision,
    ExportedDose,
    ExportedEvent,
    ExportedItem,
    ExportedProfile,
    ExportedSession,
    ExportedSet,
    ExportedSpan,
    ExportedWords,
    Who,
)
from bot.reading.red_flags import read_red_flags
from bot.turn import Turn
from bot.wording.flag_words import is_private
from scheduler.catalogue.values import Measure
from scheduler.training.season_values import Span
from scheduler.training.values import Dose
from storage.queries import own_data, people
from storage.records.care import AuditEntry
from storage.records.people import Athlete, AthleteState, Person, Profile
from storage.records.training import ItemRecord, SessionRecord, SetRecord

BEFORE_INTAKE = frozenset({AthleteState.INVITED, AthleteState.INTAKE})
NOT_THEIRS = frozenset({NOTE, "handover.sent", "data.exported"})
"""Notes are the coach's own; that somebody took a file is no decision about the training."""
KNOWN_PROFILE = {
    "facts", "weekdays", "minutes", "goal", "event_on", "events", "in_season", "travels",
    "earlier_injury", "guardian", "country",
}  # fmt: skip
KNOWN_FACTS = {"body_mass_kg", "training_age_months", "equipment", "loads_kg"}


def data_of(turn: Turn, person: Person, athlete: Athlete) -> AthleteData:
    """Gather the file."""
    return AthleteData(
        made_at=turn.now,
        athlete=_athlete(turn, person, athlete),
        sessions=tuple(_session(turn, one) for one in own_data.sessions(turn.tx, person.id)),
        tests=tests_of(turn, person),
        pain=pain_of(turn, person),
        words=_words(turn, person),
        decisions=_decisions(turn, person),
    )


def may_be_told(words: str) -> bool:
    """Tell whether words may stand in a file: what needs a person now stands nowhere."""
    return not read_red_flags(words).is_private


def _athlete(turn: Turn, person: Person, athlete: Athlete) -> ExportedAthlete:
    is_known = athlete.state not in BEFORE_INTAKE
    return ExportedAthlete(
        name=person.name,
        coach=people.person(turn.tx, athlete.coach_id).name,
        state=athlete.state.value,
        stage=athlete.stage,
        stage_since=athlete.stage_since,
        started_on=athlete.started_on,
        paused_until=athlete.paused_until,
        agreed_at=athlete.agreed_at,
        zone=person.zone,
        language=person.language,
        session_at=athlete.session_at,
        evening_at=athlete.evening_at,
        profile=_profile(athlete.profile) if is_known else None,
    )


def _profile(profile: Profile) -> ExportedProfile:
    facts = profile.facts
    plain = profile.model_dump(mode="json", exclude=KNOWN_PROFILE)
    plain_facts = facts.model_dump(mode="json", exclude=KNOWN_FACTS)
    return ExportedProfile(
        weekdays=tuple(day + 1 for day in profile.weekdays),
        minutes=profile.minutes,
        goal=profile.goal if may_be_told(profile.goal) else "",
        body_mass_kg=facts.body_mass_kg,
        training_age_months=facts.training_age_months,
        equipment=tuple(sorted(one.value for one in facts.equipment)),
        loads_kg={key.value: loads for key, loads in sorted(facts.loads_kg.items())},
        events=tuple(
            ExportedEvent(on=one.on, name=one.name, is_main=one.is_main)
            for one in profile.all_events
        ),
        competing=_spans(profile.in_season),
        travels=_spans(profile.travels),
        earlier_injury=_told(profile.earlier_injury),
        guardian=_told(profile.guardian),
        country=profile.country,
        other=_told_of({**plain_facts, **plain}),
    )


def _spans(spans: tuple[Span, ...]) -> tuple[ExportedSpan, ...]:
    return tuple(ExportedSpan(first=one.first, last=one.last) for one in spans)


def _session(turn: Turn, session: SessionRecord) -> ExportedSession:
    return ExportedSession(
        on=session.on,
        letter=session.letter,
        state=session.state.value,
        sent_at=session.sent_at,
        trained_at=session.trained_at,
        effort=session.effort,
        minutes=session.minutes,
        called_off_because=_told(session.called_off_because),
        items=tuple(
            _item(turn, number, item) for number, item in enumerate(session.items, start=1)
        ),
    )


def _item(turn: Turn, number: int, item: ItemRecord) -> ExportedItem:
    movement = turn.house.library.movements.get(item.movement_key)
    measure = item.dose.measure if item.dose else movement.measure if movement else Measure.REPS
    return ExportedItem.model_validate(
        {
            "number": number,
            "movement": item.movement_key,
            # A movement may have left the library since it was trained.
            "name": movement.name if movement else item.movement_key,
            "unit": UNITS[measure],
            "dose": _dose(item.dose) if item.dose else None,
            "sets": tuple(_set(one) for one in item.sets),
            "reserve_left": item.reserve.left if item.reserve else None,
            "is_reserve_at_least": bool(item.reserve and item.reserve.is_at_least),
            "is_skipped": item.is_skipped,
            "is_left_out": item.is_left_out,
        }
    )


def _dose(dose: Dose) -> ExportedDose:
    return ExportedDose(
        sets=dose.sets,
        target=dose.target,
        load_kg=dose.rung.load_kg,
        band=dose.rung.band,
        help_kg=dose.rung.assist_kg,
        rest_s=dose.rest_s,
        reserve_asked=dose.reserve_asked,
        quality=dose.quality.value,
        is_try=dose.is_try,
    )


def _set(one: SetRecord) -> ExportedSet:
    return ExportedSet.model_validate(
        {
            "number": one.number,
            "side": one.done.side.value,
            "value": one.done.value,
            "load_kg": one.done.rung.load_kg if one.done.rung else None,
            "band": one.done.rung.band if one.done.rung else None,
            "is_as_planned": one.is_as_planned,
            "reported_at": one.reported_at,
        }
    )


def _words(turn: Turn, person: Person) -> tuple[ExportedWords, ...]:
    """Return what the athlete wrote and is kept: what went to the coach, and what raised alerts."""
    told = {(at, words) for at, words in own_data.words_kept(turn.tx, person.id) if words}
    return tuple(
        ExportedWords(at=at, words=words) for at, words in sorted(told) if may_be_told(words)
    )


def _decisions(turn: Turn, person: Person) -> tuple[ExportedDecision, ...]:
    entries = own_data.decisions(turn.tx, person.id)
    return tuple(
        ExportedDecision(
            at=one.at,
            what=one.what,
            by=_who(one, person),
            said=_told_of(one.after) if one.actor_id == person.id else {},
        )
        for one in entries
        if one.what not in NOT_THEIRS and not _is_of_a_private_sign(one)
    )


def _who(entry: AuditEntry, person: Person) -> Who:
    if entry.actor_id is None:
        return "rules"
    return "athlete" if entry.actor_id == person.id else "coach"


def _is_of_a_private_sign(entry: AuditEntry) -> bool:
    figures = [one.figures.get("flag", "") for one in entry.reasons]
    named = [*figures, entry.before.get("flag", ""), entry.after.get("flag", "")]
    return any(is_private(str(flag)) for flag in named if flag)


def _told(words: str | None) -> str | None:
    return words if words is None or may_be_told(words) else ""


def _told_of(said: Mapping[str, Any]) -> dict[str, Any]:
    return {key: _clean(value) for key, value in said.items()}


def _clean(value: Any) -> Any:
    """Leave out words that may stand nowhere, however deep they lie."""
    match value:
        case str():
            return value if may_be_told(value) else ""
        case dict():
            return {key: _clean(one) for key, one in value.items()}
        case list() | tuple():
            return [_clean(one) for one in value]
        case _:
            return value
