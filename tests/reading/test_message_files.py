"""Files of messages: what is refused with its line, and what counts as right, asked or wrong.

All CHOSEN.
"""

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner

from bot.cli import app
from demo_scenario.readings.cli import add_to
from demo_scenario.readings.files import cases
from demo_scenario.readings.verdicts import Verdict, check
from scheduler.located_yaml import WrongFileError

HANG = {"number": 1, "names": ["Hang"], "measure": "hold_s", "sets": 3, "target": 40}
ROW = {"number": 2, "names": ["Row"], "measure": "reps", "sets": 2, "target": 8, "sides": "each"}
PLACE: Mapping[str, Any] = {
    "context": "hang",
    "is": {
        "today": "2026-03-04",
        "session": {"day": "2026-03-04", "items": [HANG, ROW]},
        "asked_item": 1,
        "recorded": [],
    },
}
SETS = [{"value": 45}, {"value": 40}, {"value": 38}]


def file_of(*messages: Mapping[str, object], place: Mapping[str, object] = PLACE) -> str:
    return "\n".join(json.dumps(line) for line in (place, *messages))


def expecting(say: str, **expect: object) -> dict[str, object]:
    return {"in": "hang", "say": say, "expect": expect}


def verdict_of(say: str, **expect: object) -> Verdict:
    (checked,) = check(cases(file_of(expecting(say, **expect)), file_name="own.jsonl"))
    return checked.verdict


def problems_of(text: str) -> list[str]:
    with pytest.raises(WrongFileError) as fault:
        cases(text, file_name="own.jsonl")
    return list(fault.value.problems)


def test_a_reading_as_expected_is_right():
    assert (
        verdict_of("45 40 38", outcome="recorded", results=[{"item": 1, "sets": SETS}]) == "right"
    )


def test_sets_as_planned_stand_for_the_planned_figures():
    planned = [{"planned": True}] * 3
    assert verdict_of("done", outcome="recorded", results=[{"item": 1, "sets": planned}]) == "right"


def test_a_question_where_results_were_plain_is_asked_without_need():
    assert verdict_of("45 40", outcome="recorded", results=[{"item": 1, "sets": SETS}]) == "asked"


def test_results_where_a_question_was_due_are_silently_wrong():
    assert verdict_of("45 40 38", outcome="asked") == "wrong"


def test_another_figure_than_expected_is_silently_wrong():
    other = [{"value": 45}, {"value": 40}, {"value": 39}]
    assert (
        verdict_of("45 40 38", outcome="recorded", results=[{"item": 1, "sets": other}]) == "wrong"
    )


def test_a_pain_lost_is_silently_wrong_whatever_the_outcome():
    pain = [{"site": "wrist", "score": 4}]
    assert verdict_of("45 40", outcome="asked", pain=pain) == "wrong"


def test_a_harmless_other_outcome_is_right_where_the_line_allows_it():
    assert verdict_of("45 40 38", outcome="asked", may_be=["recorded"]) == "right"


def test_a_wrong_field_is_refused_with_its_line_and_what_is_expected():
    (problem,) = problems_of(file_of(expecting("45", outcome="rekorded")))
    assert problem.startswith("own.jsonl line 2, expect.outcome: ")
    assert "'recorded'" in problem


def test_a_field_that_the_format_does_not_have_is_refused():
    (problem,) = problems_of(file_of(expecting("45", outcome="asked", resluts=[])))
    assert problem.startswith("own.jsonl line 2, expect.resluts: ")


def test_a_context_that_no_line_names_is_refused():
    text = file_of({"in": "nowhere", "say": "45", "expect": {"outcome": "asked"}})
    assert problems_of(text) == [
        'own.jsonl line 2, in: expected a context named on a line before, not "nowhere"'
    ]


def test_the_number_of_no_item_is_refused():
    wrong = {**PLACE, "is": {**PLACE["is"], "asked_item": 7}}
    (problem, *_) = problems_of(file_of(expecting("45", outcome="asked"), place=wrong))
    assert problem.endswith("is.asked_item: expected the number of an item of a session, not 7")


def test_a_line_that_is_no_json_is_refused_with_its_number():
    (problem,) = problems_of(file_of() + "\n{broken")
    assert problem.startswith("own.jsonl line 2, expected one JSON object")


def test_the_command_prints_each_outcome_and_the_totals(tmp_path: Path):
    file = tmp_path / "own.jsonl"
    good = expecting("45 40 38", outcome="recorded", results=[{"item": 1, "sets": SETS}])
    file.write_text(file_of(good, expecting("45 40 38", outcome="asked")), encoding="utf-8")
    if not any(command.name == "read" for command in app.registered_commands):
        add_to(app)
    done = CliRunner().invoke(app, ["read", str(file), "--timing"])
    assert done.exit_code == 1  # something was silently wrong
    lines = done.stdout.splitlines()
    assert lines[0].startswith("right     2 [hang] 45 40 38 → recorded; 1) 45 40 38")
    assert lines[1].startswith("wrong     3 [hang] 45 40 38")
    assert lines[2].strip() == "expected asked"
    assert lines[3] == "2 messages: recorded right 1, asked needlessly 0, silently wrong 1"
    assert "p99" in lines[4]
