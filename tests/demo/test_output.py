"""What a play leaves behind: pages for people, figures for machines, a table for the terminal."""

import io
import json
import re
from pathlib import Path

import pytest
import typer
from rich.console import Console

from demo_scenario.chat_pages import write_pages
from demo_scenario.cli import SUMMARY_NAME, end_with, write_summary
from demo_scenario.invariants import Broken
from demo_scenario.play import Stage
from demo_scenario.showing import show_days, show_table
from demo_scenario.story import OVERRIDE_REASON, RED_FLAG_WORDS
from demo_scenario.summary import Summary, digest_of_chats, summary_of


@pytest.fixture
def summary(fortnight: Stage) -> Summary:
    return summary_of(fortnight, seed=7, weeks=2, broken=(Broken("a rule", "a place"),))


def test_each_person_has_a_page_that_fits_a_phone_and_needs_no_network(
    fortnight: Stage, tmp_path: Path
) -> None:
    pages = write_pages(fortnight, tmp_path)
    assert {page.stem for page in pages} == {
        "index",
        *(player.name.lower() for player in fortnight.players),
    }
    for page in pages:
        html = page.read_text("utf-8")
        assert 'name="viewport"' in html
        assert "prefers-color-scheme: dark" in html
        assert "<script" not in html
        assert "<link" not in html
        assert 'src="http' not in html
        for place in re.findall(r'src="([^"]+)"', html):
            assert (tmp_path / place).read_bytes().startswith(b"\x89PNG")


def test_chat_shows_the_pictures_that_were_sent(fortnight: Stage, tmp_path: Path) -> None:
    write_pages(fortnight, tmp_path)
    coach = (tmp_path / f"{fortnight.coach.name.lower()}.html").read_text("utf-8")
    assert coach.count("<img ") >= 2  # CHOSEN: the coach's own, and the digest's of the team


def test_page_holds_what_was_said_escaped(fortnight: Stage, tmp_path: Path) -> None:
    write_pages(fortnight, tmp_path)
    coach = (tmp_path / f"{fortnight.coach.name.lower()}.html").read_text("utf-8")
    assert OVERRIDE_REASON in coach
    assert "it&#x27;s still weak" in coach or "it's still weak" in coach


def test_summary_file_says_seed_breaches_and_digest(
    fortnight: Stage, summary: Summary, tmp_path: Path
) -> None:
    write_summary(summary, tmp_path)
    read = json.loads((tmp_path / SUMMARY_NAME).read_text("utf-8"))
    assert read["seed"] == 7
    assert read["breaches"] == ["a rule: a place"]
    assert read["chats_sha256"] == digest_of_chats(fortnight)


def test_terminal_shows_the_red_flag_the_override_and_the_breach(
    fortnight: Stage, summary: Summary
) -> None:
    paper = io.StringIO()
    console = Console(file=paper, width=300)
    show_days(fortnight, console)
    show_table(summary, console)
    one_line = " ".join(paper.getvalue().split())
    assert RED_FLAG_WORDS in one_line
    assert OVERRIDE_REASON in one_line
    assert "a rule: a place" in one_line


def test_broken_play_ends_with_the_names_of_what_broke(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(typer.Exit) as ended:
        end_with((Broken("a rule", "a place"),))
    assert ended.value.exit_code == 1
    assert "a rule: a place" in capsys.readouterr().err


def test_whole_play_ends_well() -> None:
    end_with(())
