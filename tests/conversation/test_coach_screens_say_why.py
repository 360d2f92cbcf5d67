"""What the coach's screens say: the deciding reason, each thing once, names as in the library.

All figures CHOSEN.
"""

from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from bot.acts.intake_answers import Heard
from bot.acts.intake_places import event_of
from bot.acts.send_digest import send_digest
from bot.wording import changes, coach_audit, coach_checklist, digest, relayed
from bot.wording import red_flags as red_flag_words
from bot.wording.coach_alerts import AlertFacts, alert_text
from bot.wording.coach_audit import EntryFacts
from bot.wording.coach_pain import PlaceFacts, left_out
from bot.wording.digest import DigestFacts
from bot.wording.reasons import say_reason
from bot.wording.tongue import tongue_of
from scheduler.catalogue.library import default_library
from scheduler.catalogue.values import Direction, Role
from scheduler.pain.events import Certainty
from scheduler.pain.red_flags import FollowUp
from scheduler.pain.tap_list import TapLine
from scheduler.pain.values import LeftOut, Level, Side, Site, Urgency
from scheduler.reasons import Reason
from scheduler.training.gates import Checklist, ChecklistItem, Condition
from scheduler.training.values import Dose, Quality, SetDone
from storage.queries import training
from storage.records.training import SessionState
from tests.conversation.coach_bench import Bench

TONGUE = tongue_of("en")
FLAG = Reason(code="pain.red_flag", figures={"flag": "numb_or_weak"}, source="ch")
EASED = Reason(code="dose.ease_cut", source="ch")
STAYED = Reason(code="dose.same_after_gap", figures={"share_of_sets": 1.0}, source="ch")
STEP = Reason(code="dose.step_in_time", figures={"was": 20, "target": 22}, source="ch")


@pytest.fixture
def bench(tmp_path: Path) -> Bench:
    return Bench(tmp_path)


def dose(sets: int, target: int) -> Dose:
    return Dose(
        movement_key="bar_hang",
        quality="muscular_endurance",
        measure="hold_s",
        sets=sets,
        target=target,
        floor=5,
        rest_s=60,
        reserve_asked=5,
    )


def audit(what: str, old: Dose, new: Dose, *reasons: Reason) -> str:
    return coach_audit.entry(
        TONGUE,
        EntryFacts(
            at=datetime(2026, 3, 2, 8, tzinfo=UTC),
            who="",
            what=what,
            reasons=reasons,
            before={"movement": "bar_hang", "dose": old.model_dump(mode="json")},
            after={"dose": new.model_dump(mode="json")},
        ),
    )


def cared(before: LeftOut, after: LeftOut, level: Level) -> str:
    return coach_audit.what_changed(
        TONGUE,
        EntryFacts(
            at=datetime(2026, 3, 2, 8, tzinfo=UTC),
            who="",
            what="pain.left_out",
            before={"level": 0, "rested": before.model_dump(mode="json")},
            after={"level": int(level), "rested": after.model_dump(mode="json")},
        ),
    )


def test_a_dose_with_more_sets_is_not_explained_by_fewer_sets():
    said = audit("dose.up", dose(1, 20), dose(2, 20), EASED)
    assert "fewer sets" not in said
    assert "That day's plan has more sets." in said


def test_a_dose_that_changed_is_not_said_to_stay():
    said = audit("dose.up", dose(1, 20), dose(3, 20), STAYED)
    assert "stays" not in said
    assert "100 %" not in said


def test_fewer_sets_are_explained_by_what_cut_them():
    said = audit(
        "dose.down", dose(3, 20), dose(2, 20), Reason(code="dose.same_pain", source="ch"), EASED
    )
    assert "fewer sets for now" in said
    assert "stays" not in said


def test_the_athlete_is_told_the_reason_of_the_change_and_no_other():
    movement = default_library().movements["bar_hang"]
    line = changes.change_line(TONGUE, movement, dose(1, 20), dose(3, 20), (STAYED,))
    assert line.endswith("That day's plan has more sets.")
    up = changes.change_line(TONGUE, movement, dose(3, 20), dose(3, 22), (STEP, EASED))
    assert up.endswith("Every set done, with enough left.")


def test_all_of_the_sets_are_no_share_worth_naming():
    assert say_reason(TONGUE, STAYED) == "After days off the dose stays."


def test_the_audit_tells_eased_from_left_out():
    rowing = LeftOut(directions=frozenset({(Direction.HORIZONTAL_PULL, Side.LEFT)}))
    assert "eased" in cared(LeftOut(), LeftOut(), Level.EASE)
    assert "left out" not in cared(LeftOut(), LeftOut(), Level.EASE)
    assert cared(LeftOut(), rowing, Level.REST) == "Pain: left out, horizontal pull (left)."
    assert cared(rowing, LeftOut(), Level.NONE) == "Pain: nothing is left out any more."


def test_an_alert_names_each_sign_and_reason_once():
    text = alert_text(
        TONGUE,
        AlertFacts(
            name="Ana Lark",
            level=Level.CLINICIAN,
            urgency=Urgency.TODAY,
            raised_at=datetime(2026, 3, 2, 8, tzinfo=UTC),
            words="my hand went to sleep",
            reasons=(FLAG, FLAG, Reason(code="pain.stopped_a_set", source="ch")),
            places=(
                PlaceFacts(
                    site=Site.ELSEWHERE,
                    side=Side.BOTH,
                    level=Level.CLINICIAN,
                    flag="numb_or_weak",
                ),
            ),
        ),
    )
    sign = say_reason(TONGUE, FLAG).removeprefix("Reported: ").removesuffix(".")
    assert text.count(sign) == 1
    assert text.count("It stopped a set.") == 1


def test_the_words_of_an_alert_are_the_label_that_was_tapped_and_no_question_of_ours():
    for follow_up in FollowUp:
        yes, no = red_flag_words.question_labels(TONGUE, follow_up)
        assert red_flag_words.answer_said(TONGUE, follow_up, Certainty.CONFIRMED) == yes
        assert red_flag_words.answer_said(TONGUE, follow_up, Certainty.DENIED) == no
    for line in TapLine:
        assert not red_flag_words.tapped_line(TONGUE, line).startswith("Tapped")


def sides(*, sessions: int) -> str:
    why = Reason(
        code="gate.sides",
        figures={
            "movement": "palm_up_wrist_curl",
            "weaker_for_stronger": 1.0,
            "needed": 0.85,
            "sessions": sessions,
        },
        source="ch",
    )
    item = ChecklistItem(condition=Condition.SIDES, is_met=sessions >= 3, reason=why)
    (line,) = coach_checklist.lines(TONGUE, Checklist(stage=1, items=(item,)), measures={})
    return line


def test_too_few_sessions_are_not_said_to_be_uneven_arms():
    assert sides(sessions=1) == (
        "<b>not yet:</b> Palm-up wrist curl: both arms in 1 session so far, "
        "more are needed to compare them."
    )
    assert sides(sessions=3).startswith("met: Palm-up wrist curl: weaker side at 100 %")


def test_days_shown_are_never_more_of_than_asked():
    figures = {
        "key": "push_up_hold",
        "sets": 3,
        "target": 45,
        "load_kg": 0.0,
        "best_set": 50,
        "days_shown": 3,
        "needed_days": 2,
    }
    why = Reason(code="gate.standard", figures=figures, source="ch")
    item = ChecklistItem(condition=Condition.STANDARD, is_met=True, reason=why)
    (line,) = coach_checklist.lines(TONGUE, Checklist(stage=1, items=(item,)), measures={})
    assert line.endswith("shown on 3 days, 2 asked")
    assert "3 of 2" not in say_reason(TONGUE, why)


def test_movements_have_the_names_of_the_library():
    what = LeftOut(movements=frozenset({"palm_up_wrist_curl"}))
    assert left_out(TONGUE, what) == "Palm-up wrist curl"
    eased = Reason(
        code="week.eased_to_neighbour",
        figures={"movement": "inverted_row", "to": "palm_up_wrist_curl"},
        source="ch",
    )
    assert "the easier palm-up wrist curl takes its place" in say_reason(TONGUE, eased)


def test_what_was_sent_is_named_as_people_call_it():
    assert relayed.media(TONGUE, "Ana", "voice", "") == "<b>Ana</b> sent a voice note."
    assert "sent a clip" in relayed.media(TONGUE, "Ana", "video", "")


@pytest.mark.parametrize("text", ["do my first dip, no date", "do my first dip (no date)"])
def test_no_date_is_no_part_of_a_goal(text: str):
    heard = event_of(text, today=date(2026, 3, 2))
    assert isinstance(heard, Heard)
    assert heard.value == {"on": None, "goal": "do my first dip"}


def test_a_digest_names_bests_last_and_counts_the_rest():
    facts = DigestFacts(
        first=date(2026, 3, 2),
        last=date(2026, 3, 8),
        athletes=9,
        kept=10,
        sent=10,
        quiet=(("Bo", timedelta(days=4)),),
        bests=("Ana · hang", "Cy · row"),
        bests_more=18,
        unbalanced=(("Di", 10, 3),),
    )
    text, over = digest.first_message(TONGUE, facts)
    assert over == ()
    order = [text.index(part) for part in ("Silent", "out of balance", "Bests", "and 18 more")]
    assert order == sorted(order)


def test_who_shows_what_was_cleared_and_the_sessions_left_on_the_way_back(bench: Bench):
    ana = bench.add_athlete("Ana Lark")
    bench.hurts(ana, 7)
    bench.write("/clear ana two good weeks in daily use")
    bench.later(days=2)
    bench.write("/who ana")
    said = "\n".join(bench.texts()[-3:])
    assert "Nothing reported" not in said
    assert "by Mara Quill: left wrist" in said
    # CHOSEN: two sessions at 70 % of the sets after a rest (SAFETY, escalation)
    assert "Coming back: left wrist, 2 more sessions at 70 % of the sets" in said


def test_an_athlete_without_pain_has_nothing_reported(bench: Bench):
    bench.add_athlete("Ana Lark")
    bench.write("/who ana")
    assert "Nothing reported." in bench.last()


def did(bench: Bench, athlete_id: int, on: date, *, seconds: dict[str, int]) -> None:
    """Write a trained session of holds, three sets each."""
    with bench.turn() as turn:
        week = training.add_week(
            turn.tx,
            athlete_id=athlete_id,
            monday=on,
            stage=1,
            is_lighter=False,
            next_letter="A",
            relaxations=(),
            reasons=(),
            at=bench.now,
        )
        session_id = training.add_session(
            turn.tx,
            athlete_id=athlete_id,
            week_id=week.id,
            on=on,
            letter="A",
            state=SessionState.TRAINED,
            closed_at=bench.now,
        )
        for position, (key, value) in enumerate(seconds.items(), start=1):
            item_id = training.add_item(
                turn.tx,
                session_id=session_id,
                position=position,
                pair=1,
                direction=default_library().movements[key].direction,
                role=Role.MAIN,
                movement_key=key,
                quality=Quality.MUSCULAR_ENDURANCE,
                planned_sets=3,
                arms=(),
            )
            training.snapshot_dose(
                turn.tx,
                item_id,
                dose=dose(3, 20).model_copy(update={"movement_key": key}),
                reasons=(),
                arms=(),
            )
            done = [(n, SetDone(side=Side.BOTH, value=value), False) for n in (1, 2, 3)]
            training.record_sets(turn.tx, item_id, done, chat_id=1, message_id=None, at=bench.now)


def test_the_digest_names_one_best_an_athlete_five_in_all_and_counts_the_rest(bench: Bench):
    for number in range(7):
        ana = bench.add_athlete(f"Athlete {number}")
        did(bench, ana.id, date(2026, 2, 23), seconds={"bar_hang": 20, "wall_hinge_hold": 20})
        did(bench, ana.id, date(2026, 3, 2), seconds={"bar_hang": 22, "wall_hinge_hold": 30})
    with bench.turn() as turn:
        send_digest(turn, bench.coach, date(2026, 3, 9))
    text = "\n".join(bench.texts())
    # DERIVED: 7 athletes with 2 bests each are 14; 5 are named, 9 are counted
    assert text.count("longest yet") == text.count("Wall reach hold") == 5
    assert "and 9 more" in text
