"""A coach decides a standard on a clip: where figures cannot show it, or the coach has seen it."""

from collections.abc import Mapping
from typing import Any

from bot.acts import ask_why
from bot.acts.about_athlete import about_tapped, entries
from bot.acts.find_athlete import Named, subject_of
from bot.acts.own_standards import DECIDED, decided_by_coach
from bot.events import Tapped
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import coach_settings as words
from storage.queries import care
from storage.records.people import Person

ACT = "coach.shown"


def ask(turn: Turn, coach: Person, named: Named) -> Outcome:
    """Show the standards of the stage, each to be taken as shown or not; a reason comes first."""
    tongue, athlete = turn.tongue(coach), named.athlete
    rows = turn.house.rulebook.standards.get(athlete.stage, ())
    if not rows:
        turn.say(coach, words.no_standards(tongue, stage=athlete.stage))
        return Outcome.NOT_UNDERSTOOD
    if not named.rest.strip():
        what = words.to_decide(tongue, name=named.person.name)
        return ask_why.ask_in_words(turn, coach, named, act=ACT, what=what)
    decided = decided_by_coach(turn, athlete)
    taps = [
        [
            Tap(
                words.standard_label(tongue, row.key, is_met=not decided.get(row.key, False)),
                "coach.shown_one",
                {
                    "athlete": named.person.id,
                    "stage": athlete.stage,
                    "key": row.key,
                    "is_met": not decided.get(row.key, False),
                    "why": named.rest.strip(),
                },
            )
        ]
        for row in rows
    ]
    turn.say(
        coach,
        words.which_standard(tongue, name=named.person.name),
        taps=taps,
        subject=subject_of(named.person),
    )
    return Outcome.ASKED


@about_tapped
def decide(
    turn: Turn, coach: Person, found: Named, arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    """Keep the coach's word on one standard; the checklist counts it from now on."""
    tongue, stage = turn.tongue(coach), int(arguments["stage"])
    if found.athlete.stage != stage:
        turn.say(coach, words.stage_is_another(tongue, name=found.person.name))
        return Outcome.STALE_TAP
    key, is_met = str(arguments["key"]), bool(arguments["is_met"])
    care.write_audit(
        turn.tx,
        at=turn.now,
        what=DECIDED,
        athlete_id=found.person.id,
        actor_id=coach.id,
        words=str(arguments["why"]),
        before={"is_met": decided_by_coach(turn, found.athlete).get(key)},
        after={"key": key, "is_met": is_met, "of_stage": stage},
    )
    turn.say(
        coach,
        words.standard_decided(tongue, name=found.person.name, key=key, is_met=is_met),
        subject=subject_of(found.person),
    )
    return Outcome.COMMAND


# ``/shown NAME reason``: then a button for each standard of the stage.
command, picked = entries(ask, act=ACT, example=words.SHOWN_EXAMPLE)
TAPS = {ACT: picked, "coach.shown_one": decide}
