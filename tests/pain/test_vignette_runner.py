"""The runner of vignettes: the format, refusals by line, and the frozen corpus."""

import json
from pathlib import Path

import pytest

from demo_scenario.learning.lines import OWN_LINES, lines_in
from demo_scenario.vignettes.playing import play
from demo_scenario.vignettes.totals import totals_of
from demo_scenario.vignettes.values import Vignette, read_vignettes
from scheduler.located_yaml import WrongFileError
from scheduler.pain.values import Level, Urgency

CORPUS = Path(__file__).parent / "corpus" / "frozen_1.jsonl"
UNLEARNT = ("frozen_2.jsonl", "frozen_3.jsonl", "frozen_4.jsonl", "frozen_5.jsonl")
"""Vignettes that no reader learnt from: they are not among the lines of ``holdwell learn``."""
UNLEARNT_BELOW_AT_MOST = 0.03  # [share of the signs] CHOSEN: a little above what was measured
UNLEARNT_ALARMS_AT_MOST = 0.04  # [share of the harmless] CHOSEN: a little above what was measured
UNLEARNT_RAISED_AT_MOST = 0.33  # [share of the harmless] CHOSEN: they are hard on purpose
CONTESTED = Path(__file__).parent / "corpus" / "contested.txt"
FALSE_ALARMS_AT_MOST, QUESTIONS_AT_MOST = 0.03, 0.10  # [share of the harmless] CHOSEN
ORDINARY_OFF_AT_MOST = 0.05  # [share of the ordinary] CHOSEN: a doubt about plain pain is a tap


def vignette(say, *, language="en", **more):
    expect = {"level": "none", "kind": "harmless"}
    return Vignette.model_validate(
        {"id": "x", "language": language, "say": say, "expect": expect, **more}
    )


def test_a_vignette_is_played_with_its_history_question_and_texts():
    history = [
        {"days_ago": 1, "at": "session", "site": "wrist", "side": "left", "score": 2},
    ]
    question = {"kind": "morning", "site": "wrist", "side": "left"}
    played = play(vignette("6", history=history, question=question))
    assert (played.level, played.urgency) == (Level.REST, Urgency.SOON)
    assert any("wrist" in text for text in played.texts)


def test_a_vignette_leaves_nothing_behind():
    assert play(vignette("i passed out")).level is Level.EMERGENCY
    assert play(vignette("all good today")).level is Level.NONE


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("{", "the line"),
        ('{"id": "a", "say": "hi", "expect": {"level": "bad", "kind": "harmless"}}', "one of none"),
        ('{"id": "a", "expect": {"level": "none", "kind": "harmless"}}', "say"),
        (
            '{"id": "a", "say": "x", "more": 1, "expect": {"level": "none", "kind": "harmless"}}',
            "more",
        ),
    ],
)
def test_a_bad_line_is_refused_with_its_number_and_what_is_expected(tmp_path, line, told):
    good = json.dumps({"id": "a", "say": "hi", "expect": {"level": "none", "kind": "harmless"}})
    file = tmp_path / "some.jsonl"
    file.write_text(f"{good}\n{line}\n", encoding="utf-8")
    with pytest.raises(WrongFileError, match="line 2") as refused:
        read_vignettes(file)
    assert told in str(refused.value)


@pytest.mark.parametrize("content", ["", "\n\n"])
def test_an_empty_file_is_refused(tmp_path, content):
    file = tmp_path / "some.jsonl"
    file.write_text(content, encoding="utf-8")
    with pytest.raises(WrongFileError, match="at least one"):
        read_vignettes(file)


def test_the_frozen_corpus_holds_its_figures():
    contested = {
        line.split(":")[0] for line in CONTESTED.read_text(encoding="utf-8").splitlines() if line
    }
    played = [play(one) for one in read_vignettes(CORPUS) if one.id not in contested]
    totals = totals_of(played)
    assert totals.below == 0
    assert totals.alarms <= FALSE_ALARMS_AT_MOST * totals.harmless
    assert totals.questions <= QUESTIONS_AT_MOST * totals.harmless
    assert totals.ordinary_off <= ORDINARY_OFF_AT_MOST * totals.ordinary


@pytest.mark.parametrize("name", UNLEARNT)
def test_vignettes_that_nobody_learnt_from_hold_their_figures(name):
    file = CORPUS.parent / name
    learnt_from = {line.text for line in lines_in(OWN_LINES)}
    vignettes = read_vignettes(file)
    assert not {one.say for one in vignettes} & learnt_from
    totals = totals_of([play(one) for one in vignettes])
    assert totals.below <= UNLEARNT_BELOW_AT_MOST * totals.red_flags
    assert totals.alarms <= UNLEARNT_ALARMS_AT_MOST * totals.harmless
    assert totals.alarms + totals.questions <= UNLEARNT_RAISED_AT_MOST * totals.harmless
