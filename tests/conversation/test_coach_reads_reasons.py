"""Every reason that a rule can give has a sentence of its own, and no reason ever breaks one."""

from enum import StrEnum
from html import unescape

import pytest

from bot.wording.flag_words import FLAGS
from bot.wording.reasons import SENTENCES, fields_of, say_reason
from bot.wording.tongue import tongue_of
from scheduler.calendar.calendar_reasons import CalendarReason
from scheduler.pain.pain_reasons import PainReason
from scheduler.pain.red_flags import RedFlag
from scheduler.reasons import Figure, Reason
from scheduler.training.baseline_reasons import BaselineReason
from scheduler.training.season_reasons import SeasonReason
from scheduler.training.training_reasons import (
    CapacityReason,
    DoseReason,
    GapReason,
    GateReason,
    PermissionReason,
    VolumeReason,
)
from scheduler.training.week_reasons import WeekReason

ROOMS: tuple[type[StrEnum], ...] = (
    PermissionReason,
    DoseReason,
    VolumeReason,
    GapReason,
    GateReason,
    CapacityReason,
    WeekReason,
    SeasonReason,
    BaselineReason,
    PainReason,
    CalendarReason,
)
CODES = sorted(code.value for room in ROOMS for code in room)
INSIDE = ("gate", "demand", "cell", "quality", "chain", "_", "{", "}")
FIGURES: dict[str, Figure] = {
    "on": "2026-03-02",
    "local_date": "2026-03-02",
    "direction": "vertical_push",
    "movement": "hang",
    "to": "pike_hold",
    "harder": "pull_up",
    "key": "push_up_hold",
    "quality": "strength_endurance",
    "missing": "open closed",
    "flag": "numb_or_weak",
    "level": 2,
}


def plausible(template: str) -> dict[str, Figure]:
    names = {name.removesuffix("_pct").removesuffix("_span") for name in fields_of(template)}
    spans = {f"{name.removesuffix('_span')}_s" for name in fields_of(template) if "_span" in name}
    return {name: FIGURES.get(name, 3) for name in names | spans | fields_of(template)}


def test_every_code_of_every_room_has_a_sentence_and_no_sentence_is_without_a_code():
    assert sorted(SENTENCES) == CODES


@pytest.mark.parametrize("code", CODES)
def test_each_sentence_is_said_with_its_figures_and_without_any(code: str):
    tongue = tongue_of("en")
    for template in SENTENCES[code]:
        said = unescape(
            say_reason(tongue, Reason(code=code, figures=plausible(template), source="ch"))
        )
        assert said.endswith(".")
        assert not [word for word in INSIDE if word in said.casefold()]
    bare = say_reason(tongue, Reason(code=code, source="ch"))
    assert bare.endswith(".")
    assert not bare.startswith("By a rule")


@pytest.mark.parametrize("code", CODES)
def test_no_two_codes_say_the_same_with_all_their_figures(code: str):
    others = [templates[0] for other, templates in SENTENCES.items() if other != code]
    assert SENTENCES[code][0] not in others


def test_the_last_template_of_each_code_needs_no_figure():
    assert [code for code, templates in SENTENCES.items() if fields_of(templates[-1])] == []


def test_an_unknown_code_is_said_in_its_own_words_and_never_fails():
    said = say_reason(tongue_of("en"), Reason(code="new.brand_new_rule", source="ch"))
    assert said == "By a rule: brand new rule."


def test_figures_of_a_kind_nobody_expected_break_nothing():
    odd: dict[str, Figure] = {"was": "<b>", "target": True, "to": "", "level": 99, "flag": "?"}
    for code in CODES:
        assert "<b>" not in say_reason(tongue_of("en"), Reason(code=code, figures=odd, source="ch"))


def test_every_sign_has_words():
    assert set(FLAGS) == set(RedFlag)
