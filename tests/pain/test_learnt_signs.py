"""The third net: weights learnt from written lines, scored as the library that learnt them does."""

import pytest
from typer.testing import CliRunner

from bot.cli import app
from bot.reading.red_flag_learnt import (
    SIGN_FROM,
    Group,
    doubt_in,
    read_weights,
    weights,
    write_weights,
)
from bot.reading.red_flags import Stated, candidates_of, features_of, read_red_flags
from demo_scenario.learning.command import add_to, read_lines
from demo_scenario.learning.fitting import fit
from demo_scenario.learning.lines import OWN_LINES, Line, digest_of, lines_in
from scheduler.pain.red_flags import LEARNT, RED_FLAGS, RedFlag
from scheduler.pain.values import Level

EVERY = 29  # CHOSEN: one line in so many, from all authors
SAME_WITHIN = 0.02  # CHOSEN: the table keeps two decimals of each weight


@pytest.fixture(scope="module")
def all_lines():
    return lines_in(OWN_LINES)


@pytest.fixture(scope="module")
def some_lines(all_lines):
    return all_lines[::EVERY]


def test_the_table_was_learnt_from_the_lines_that_lie_here(all_lines):
    assert weights().made_from == digest_of(all_lines), "run `holdwell learn`"


def test_likelihoods_are_those_of_the_library_that_learnt_them(some_lines):
    # REFERENCE LIBRARY: scikit-learn, LogisticRegression.predict_proba.
    fitted = fit(some_lines)
    ours = fitted.weights()
    theirs = fitted.likelihoods([line.text for line in some_lines[:60]])
    for line, expected in zip(some_lines[:60], theirs, strict=True):
        found = ours.likelihoods(features_of(line.text))
        assert found == pytest.approx(expected, abs=SAME_WITHIN)
        assert sum(found.values()) == pytest.approx(1)


def test_the_table_reads_back_as_it_was_written(some_lines):
    learnt = fit(some_lines[:120]).weights()
    assert read_weights(write_weights(learnt).splitlines(keepends=True)) == learnt


def test_lines_that_were_learnt_from_are_mostly_read_right(some_lines):
    # What was seen is no proof for what is new: the frozen vignettes are. This finds a table or a
    # list of features that went out of step.
    found = read_lines(some_lines, weights())
    assert found.counts["below"] <= 0.02 * found.counts["signs"]
    raised = found.counts["alarms"] + found.counts["asked"]
    assert raised <= 0.1 * found.counts["harmless"]


def test_what_only_reads_like_a_sign_is_asked_and_never_stated():
    said = "my arm goes no higher than my chin since i came off the wall"
    for candidate in candidates_of(said, weights()):
        if candidate.flag in LEARNT:
            assert candidate.certainty is Stated.ASKED
    assert read_red_flags(said).level >= Level.CLINICIAN


def likely(**groups):
    return {group: groups.get(group.value, 0.0) for group in Group}


def test_the_gravest_likely_group_decides_what_is_asked():
    assert doubt_in(likely(harmless=0.9, emergency=0.1)) is None
    assert doubt_in(likely(harmless=0.3, clinician=0.6, emergency=0.1)) is RedFlag.UNCLEAR_SIGN
    assert (
        doubt_in(likely(harmless=0.3, clinician=0.35, emergency=0.35)) is RedFlag.UNCLEAR_EMERGENCY
    )
    assert doubt_in(likely(harmless=0.2, crisis=0.7, emergency=0.1)) is RedFlag.SELF_HARM
    assert doubt_in(likely(harmless=1 - SIGN_FROM, clinician=SIGN_FROM)) is RedFlag.UNCLEAR_SIGN


@pytest.mark.parametrize("flag", sorted(LEARNT))
def test_a_doubt_without_a_name_counts_like_a_named_one(flag):
    assert RED_FLAGS[flag].level >= Level.CLINICIAN


def test_checking_leaves_each_file_out_in_turn(tmp_path, some_lines):
    add_to(app)
    for number, part in enumerate((some_lines[:150], some_lines[150:300]), 1):
        rows = "".join(f"{one.label}\t{one.language}\t{one.text}\n" for one in part)
        (tmp_path / f"part_{number}.tsv").write_text(rows, encoding="utf-8")
    before = weights().made_from
    result = CliRunner().invoke(app, ["learn", str(tmp_path), "--check"])
    assert result.exit_code == 0
    assert "part_1.tsv: " in result.output
    assert "signs" in result.output
    weights.cache_clear()
    assert weights().made_from == before


def test_a_wrong_line_is_named_and_nothing_is_written(tmp_path):
    add_to(app)
    (tmp_path / "wrong.tsv").write_text("todai\ten\thello\n", encoding="utf-8")
    result = CliRunner().invoke(app, ["learn", str(tmp_path)])
    assert result.exit_code == 2
    assert "wrong.tsv, line 1: expected LABEL" in result.output


def test_lines_know_their_group():
    assert Line("tingle", "en", "x").group is Group.CLINICIAN
