"""On with a report of pain: what is still missing of it is asked, else what it changes is said."""

from bot.acts import pain_ask, pain_picture, pain_report, record_results
from bot.acts.intake_resume import MORE_LIST, MORE_SIGNS, remember, resume
from bot.acts.pain_taps import list_taps, score_taps, sign_taps
from bot.turn import Turn
from bot.wording import pain as words
from scheduler.pain.picture import AskKind, PainPicture
from scheduler.pain.values import Side, Site, regions_of
from storage.queries import people, training
from storage.records.people import Athlete, Person

SIGNS_FROM_SCORE = 3  # [of 10] ch: below it the three further questions are not worth a tap


def go_on(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    key: str,
    *,
    session_id: int | None,
    edit: int | None = None,
    signs_asked: bool = False,
) -> None:
    """Ask what is still missing of a report, or say what it changes."""
    report = pain_report.find(turn, athlete, key)
    if report is None:
        return
    tongue = turn.tongue(person)
    about = {"report": key, "session": session_id}
    picture = pain_picture.picture_of(turn, athlete)
    if report.score is None or report.must_ask:
        text = words.how_much(tongue, report.site, report.side)
        pain_ask.ask_number(turn, person, key, session_id)
        pain_ask.put(turn, person, text, score_taps(about), edit=edit)
    elif report.score >= SIGNS_FROM_SCORE and not signs_asked and not report.signs:
        remember(turn, person, about, MORE_SIGNS)
        text = words.which_sign(tongue, report.site, report.side)
        pain_ask.put(turn, person, text, sign_taps(tongue, about), edit=edit)
    elif any(ask.kind is AskKind.TAP_LIST for ask in picture.asks):
        remember(turn, person, about, MORE_LIST)
        pain_ask.put(turn, person, words.tap_list(tongue), list_taps(tongue, about), edit=edit)
    else:
        _finish(turn, person, athlete, picture, report.site, report.side, session_id, edit=edit)


def _finish(
    turn: Turn,
    person: Person,
    athlete: Athlete,
    picture: PainPicture,
    site: Site,
    side: Side,
    session_id: int | None,
    *,
    edit: int | None,
) -> None:
    coach = people.person(turn.tx, athlete.coach_id)
    tongue = turn.tongue(person)
    shown = [picture.region(one.site, one.arm) for one in regions_of(site, side)]
    worst = max((one for one in shown if one), key=lambda one: one.level, default=None)
    if worst is None:
        text = words.nothing_hurt(tongue)
    elif person.id in turn.advised:
        text = words.noted(tongue, worst)
    else:
        text = words.outcome(tongue, worst, coach=coach.name)
    pain_ask.put(turn, person, text, (), edit=edit)
    resume(turn, person, athlete)
    session = training.session(turn.tx, session_id) if session_id else None
    if session is not None and session.is_open and session.is_test_day:
        # The next test comes by itself; the end of the day does not ask again what was told.
        training.change_session(turn.tx, session.id, is_pain_answered=session.has_results)
        record_results.go_on(turn, person, session.id)
    elif (
        session is not None and session.is_open and any(item.is_reported for item in session.items)
    ):
        # Before the first result it is not the answer to the question at the session's end.
        training.change_session(turn.tx, session.id, is_pain_answered=True)
        record_results.go_on(turn, person, session.id)
