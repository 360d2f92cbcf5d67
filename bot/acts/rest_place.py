"""``/rest NAME left wrist reason``: what loads a place is left out until a person clears it."""

from collections.abc import Mapping
from typing import Any

from bot.acts import ask_why, coach_question, draw_week, pain_consequences
from bot.acts.about_athlete import Arguments, about_tapped, entries
from bot.acts.find_athlete import Named, subject_of
from bot.acts.pain_picture import events_of, new_key, picture_of, record_event
from bot.acts.place_words import place_named
from bot.acts.places import left_out_words
from bot.acts.plan_change import LEAVE
from bot.acts.tell_athlete import tell
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_changes, coach_pain
from bot.wording import coach_rest as words
from scheduler.pain.events import Cleared, Rested
from scheduler.pain.levels import clearing_decision
from scheduler.pain.values import MIDLINE, Level, Side, Site, regions_of
from storage.queries import care, people
from storage.records.people import Person
from storage.records.wire import MessageKind

SITE, SIDE, GO, BACK = "rest.site", "rest.side", "rest.go", "rest.back"
RESTED, TAKEN_BACK = "pain.rested_by_coach", "pain.rest_taken_back"
WHYS = ("hurts", "safe", "seen")
A_ROW = 2  # [buttons] ch: names of places are short


def begin(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Read place, side and reason; what is missing or may mean two is asked by buttons."""
    meant = place_named(named.rest)
    request = {"athlete": named.person.id, "why": meant.rest}
    if meant.side is not None:
        request["side"] = meant.side.value
    tongue = turn.tongue(coach)
    if not meant.sites and named.rest.strip():
        return _ask_site(
            turn, coach, named, words.place_unknown(tongue), tuple(Site), {**request, "why": ""}
        )
    if not meant.sites:
        text = words.which_place(tongue, name=named.person.name)
        return _ask_site(turn, coach, named, text, tuple(Site), request)
    if len(meant.sites) > 1:
        text = words.which_of(tongue, name=named.person.name)
        return _ask_site(turn, coach, named, text, meant.sites, request)
    return _with_site(turn, coach, named, {**request, "site": meant.sites[0].value})


def _ask_site(
    turn: Turn,
    coach: Person,
    named: Named,
    text: str,
    sites: tuple[Site, ...],
    request: Mapping[str, Any],
) -> Outcome:
    tongue = turn.tongue(coach)
    taps = [
        Tap(words.place_label(tongue, site), SITE, {**request, "site": site.value})
        for site in sites
    ]
    rows = [taps[at : at + A_ROW] for at in range(0, len(taps), A_ROW)]
    turn.say(coach, text, taps=rows, subject=subject_of(named.person))
    return Outcome.ASKED


def _with_site(turn: Turn, coach: Person, named: Named, request: Mapping[str, Any]) -> Outcome:
    site, tongue = Site(request["site"]), turn.tongue(coach)
    if site in MIDLINE:
        return _with_side(turn, coach, named, {**request, "side": Side.BOTH.value})
    if "side" in request:
        return _with_side(turn, coach, named, request)
    turn.say(
        coach,
        words.which_side(tongue, site=site),
        taps=[
            [
                Tap(words.side_label(tongue, side), SIDE, {**request, "side": side.value})
                for side in Side
            ]
        ],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def _with_side(turn: Turn, coach: Person, named: Named, request: Mapping[str, Any]) -> Outcome:
    site, side = Site(request["site"]), Side(request["side"])
    if _held(turn, named, site, side) == len(regions_of(site, side)):
        text = words.rested_already(
            turn.tongue(coach), name=named.person.name, site=site, side=side
        )
        turn.say(coach, text, subject=subject_of(named.person))
        return Outcome.NOT_UNDERSTOOD
    if site is Site.ELSEWHERE and not request.get("is_sure"):
        return _ask_elsewhere(turn, coach, named, request)
    if not str(request["why"]).strip():
        what = words.rest_what(turn.tongue(coach), site=site, side=side)
        return ask_why.ask(
            turn,
            coach,
            named.person,
            act=GO,
            request=request,
            text=coach_changes.ask_why(turn.tongue(coach), what=what),
            whys=WHYS,
        )
    return _rest(turn, coach, named, site, side, why=str(request["why"]).strip())


def _ask_elsewhere(turn: Turn, coach: Person, named: Named, request: Mapping[str, Any]) -> Outcome:
    tongue = turn.tongue(coach)
    turn.say(
        coach,
        words.elsewhere(tongue, name=named.person.name),
        taps=[
            [
                Tap(coach_changes.anyway_label(tongue), GO, {**request, "is_sure": True}),
                Tap(coach_changes.leave_label(tongue), LEAVE, request),
            ]
        ],
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


def _held(turn: Turn, named: Named, site: Site, side: Side) -> int:
    """Count the arms' places that only a person can clear already."""
    picture = picture_of(turn, named.athlete)
    found = (picture.region(one.site, one.arm) for one in regions_of(site, side))
    return sum(one is not None and one.level >= Level.REST for one in found)


def _rest(turn: Turn, coach: Person, named: Named, site: Site, side: Side, *, why: str) -> Outcome:
    """Record it, leave out what loads the place at once, tell both."""
    person, athlete = named.person, named.athlete
    before, had = picture_of(turn, athlete), _held(turn, named, site, side)
    event = Rested(
        key=new_key(turn, person.id),
        at_utc=turn.now,
        site=site,
        side=side,
        by=f"person:{coach.id}",
        reason=why,
    )
    record_event(turn, person.id, event)
    _audit(turn, coach, named, site, side, what=RESTED, why=why)
    is_told = tell(
        turn,
        person,
        words.rested_to_athlete(turn.tongue(person), coach=coach.name, site=site, side=side),
        kind=MessageKind.SAFETY,
    )
    pain_consequences.leave_out(turn, person, athlete, before, picture_of(turn, athlete))
    _confirm(turn, coach, named, site, side, why=why, is_told=is_told, may_go_back=had == 0)
    return Outcome.COMMAND


def _audit(
    turn: Turn, coach: Person, named: Named, site: Site, side: Side, *, what: str, why: str
) -> None:
    place = coach_pain.place(turn.tongue(coach), site, side)
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=what,
        athlete_id=named.person.id,
        actor_id=coach.id,
        words=why,
        after={"place": place, "site": site.value, "side": side.value},
    )


def _confirm(
    turn: Turn,
    coach: Person,
    named: Named,
    site: Site,
    side: Side,
    *,
    why: str,
    is_told: bool,
    may_go_back: bool,
) -> None:
    """Tell the coach, and the athlete's own coach where another one did it."""
    person = named.person
    request = {
        "athlete": person.id,
        "site": site.value,
        "side": side.value,
        "events": care.count_pain_events(turn.tx, person.id),
    }
    for reader in {coach.id: coach, named.athlete.coach_id: _own_coach(turn, named)}.values():
        tongue = turn.tongue(reader)
        text = words.rested(
            tongue,
            name=person.name,
            site=site,
            side=side,
            why=why,
            left_out=left_out_words(turn, reader, named.athlete),
            is_told=is_told,
        )
        back = [[Tap(coach_changes.take_back_label(tongue), BACK, request)]]
        turn.say(reader, text, taps=back if may_go_back else (), subject=subject_of(person))


def _own_coach(turn: Turn, named: Named) -> Person:
    return people.person(turn.tx, named.athlete.coach_id)


@about_tapped
def site_chosen(
    turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped
) -> Outcome:
    """The place was tapped."""
    coach_question.close(turn, coach)
    return _with_site(turn, coach, named, arguments)


@about_tapped
def side_chosen(
    turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped
) -> Outcome:
    """The side was tapped, or the reason."""
    coach_question.close(turn, coach)
    return _with_side(turn, coach, named, arguments)


@about_tapped
def take_back(turn: Turn, coach: Person, named: Named, arguments: Arguments, _: Tapped) -> Outcome:
    """Undo a resting that nothing was said to since: as a clearing, with its careful way back."""
    person, tongue = named.person, turn.tongue(coach)
    site, side = Site(arguments["site"]), Side(arguments["side"])
    event = Cleared(
        key=new_key(turn, person.id),
        at_utc=turn.now,
        site=site,
        side=side,
        by=f"person:{coach.id}",
        reason=TAKEN_BACK,
    )
    is_same = care.count_pain_events(turn.tx, person.id) == int(arguments["events"])
    if not is_same or not clearing_decision(events_of(turn, person.id), event).value:
        turn.say(coach, words.rest_stays(tongue, name=person.name), subject=subject_of(person))
        return Outcome.STALE_TAP
    record_event(turn, person.id, event)
    _audit(turn, coach, named, site, side, what=TAKEN_BACK, why="")
    draw_week.redraw(turn, person, named.athlete)
    told = words.rest_taken_back_to_athlete(
        turn.tongue(person), coach=coach.name, site=site, side=side
    )
    tell(turn, person, told, kind=MessageKind.SAFETY)
    text = words.rest_taken_back(tongue, name=person.name, site=site, side=side)
    turn.say(coach, text, subject=subject_of(person))
    return Outcome.COMMAND


command, picked = entries(begin, act="rest.who", example=words.REST_EXAMPLE)

TAPS = {
    "rest.who": picked,
    SITE: site_chosen,
    SIDE: side_chosen,
    GO: side_chosen,
    BACK: take_back,
}
