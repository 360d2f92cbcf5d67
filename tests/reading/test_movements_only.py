"""Names of movements and figures alone read like no sign; anything more is looked at as ever."""

import json
from pathlib import Path

import pytest

from bot.acts import red_flag
from bot.acts.red_flag import BY_LIKENESS
from bot.reading.movements_only import is_movements_only, names_pattern
from bot.reading.red_flags import read_red_flags
from bot.wording.movement_names import names_to_read
from bot.wording.tongue import tongue_of
from scheduler.catalogue.library import default_library

CORPUS = Path(__file__).parents[1] / "pain" / "corpus"
NAMES = names_pattern(("One-arm lying reach", "Elevación en Y tumbado", "Dip"))
# CHOSEN: our own ways of asking how a movement is done, and of telling that it was or was not
ASKED = {
    "en": ("{}", "how do I do the {}?", "{} 10 10 10", "skipped {}", "{} 3x8 @ 12 kg"),
    "es": ("{}", "¿cómo se hace {}?", "{} 10 10 10", "sin hacer la {}", "qué es {}"),
}


@pytest.mark.parametrize(
    ("text", "is_only"),
    [
        ("One-arm lying reach", True),
        ("how do I do the one arm lying reach?", True),
        ("cómo se hace la elevación en y tumbado", True),
        ("one-arm lying reach 10 10 x", True),
        ("one-arm lying reach, arm went dead", False),
        ("dip and my arm is heavy", False),
        ("how do I do it", False),
        ("10 10 10", False),
        ("", False),
    ],
)
def test_only_names_figures_and_plain_words_count(text, is_only) -> None:
    assert is_movements_only(text, NAMES) is is_only


@pytest.mark.parametrize("language", ["en", "es"])
def test_no_name_of_the_library_reads_like_a_sign(language: str) -> None:
    tongue = tongue_of(language)
    raised = [
        text
        for movement in default_library().movements.values()
        for name in names_to_read(tongue, movement)[:1]
        for frame in ASKED[language]
        if red_flag.is_raised(text := frame.format(name.lower()))
        # what a rule names is asked about whatever it stands in
        and {one.flag for one in read_red_flags(text).candidates} <= BY_LIKENESS
    ]
    assert raised == []


def test_no_sign_of_the_frozen_lines_is_lost_to_it() -> None:
    lines = [
        json.loads(line)
        for file in sorted(CORPUS.glob("frozen_*.jsonl"))
        for line in file.read_text(encoding="utf-8").splitlines()
    ]
    signs = [one["say"] for one in lines if one["expect"]["kind"] == "red_flag"]
    assert len(signs) > 400  # CHOSEN: the four sets together hold some 470
    heard = [one for one in signs if read_red_flags(one).candidates]
    assert [one for one in heard if not red_flag.is_raised(one)] == []
