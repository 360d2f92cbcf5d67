"""One command for everything: format, lint, types and the import contract are tests too."""

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
TOOLS = Path(sys.executable).parent

CHECKS = {
    "every file is formatted": ["ruff", "format", "--check", "--quiet", "."],
    "the linter has nothing to say": ["ruff", "check", "--quiet", "."],
    "types are strict and right": ["mypy"],
    "imports follow the arrows": ["lint-imports"],
}


@pytest.mark.parametrize("command", CHECKS.values(), ids=CHECKS.keys())
def test_house_rule(command: list[str]):
    done = subprocess.run(  # noqa: S603 (the command is a constant of this file)
        [str(TOOLS / command[0]), *command[1:]],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr


def test_the_top_level_holds_what_the_design_allows_and_nothing_else():
    listed = subprocess.run(
        ["git", "ls-files"],  # noqa: S607
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    ).stdout.split()
    top = {name.split("/")[0] for name in listed}
    allowed = {"README.md", "DEVELOPERS.md", "LICENSE", "pyproject.toml"} | {
        "bot",
        "scheduler",
        "storage",
        "tests",
        "demo_scenario",
    }
    assert {name for name in top if not name.startswith(".")} <= allowed


def test_no_python_file_is_longer_than_four_hundred_lines():
    too_long = {
        str(file.relative_to(ROOT)): lines
        for folder in ("bot", "scheduler", "storage", "demo_scenario", "tests")
        for file in (ROOT / folder).rglob("*.py")
        if (lines := len(file.read_text().splitlines())) > 400
    }
    assert too_long == {}
