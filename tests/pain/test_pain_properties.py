"""Over random histories: a level never falls by itself, and worse is never milder (CHOSEN)."""

from hypothesis import given, settings
from hypothesis import strategies as st

from scheduler.pain.events import Certainty, PainSign
from scheduler.pain.levels import picture_of
from scheduler.pain.red_flags import RedFlag
from scheduler.pain.values import Level, Side, Site
from tests.pain.histories import (
    answered,
    at,
    cleared,
    corrected,
    flag,
    morning,
    report,
    session,
)

SCORES = st.one_of(st.none(), st.integers(0, 10))
SIGNS = st.lists(st.sampled_from([PainSign.STOPPED_A_SET, PainSign.PLAIN_SORENESS]), max_size=1)


@st.composite
def histories(draw):
    events = []
    for day in range(draw(st.integers(1, 12))):
        kind = draw(st.sampled_from(["session", "message", "flag", "clear", "correct", "rest"]))
        if kind == "session":
            events.append(session(day))
            if draw(st.booleans()):
                events.append(report(day, draw(SCORES), *draw(SIGNS)))
            if draw(st.booleans()):
                events.append(morning(day, draw(SCORES)))
        elif kind == "message":
            events.append(report(day, draw(SCORES), *draw(SIGNS), message=True))
        elif kind == "flag":
            certainty = draw(st.sampled_from([Certainty.ASKED, Certainty.CONFIRMED]))
            events.append(flag(day, draw(st.sampled_from(list(RedFlag))), certainty))
            if draw(st.booleans()):
                events.append(answered(day, draw(st.sampled_from(list(Certainty)[1:]))))
        elif kind == "clear":
            events.append(cleared(day, site=None, assessed=draw(st.booleans())))
        elif kind == "correct":
            put = report(day, draw(SCORES)) if draw(st.booleans()) else None
            events.append(corrected(day, f"r{max(day - 1, 0)}.1", put))
    return events


def level_at(events, moment):
    return picture_of(events, as_of_utc=moment).level


def region_level(events, moment):
    seen = picture_of(events, as_of_utc=moment).region(Site.WRIST, Side.LEFT)
    return seen.level if seen else Level.NONE


def is_settling(event):
    number = getattr(event, "score", None)
    return event.kind in {"pain_reported", "morning_answered"} and number is not None


@settings(max_examples=150, deadline=None)
@given(histories())
def test_a_level_falls_only_by_an_answer_a_correction_or_a_clearing(events):
    for count in range(1, len(events)):
        before = level_at(events[:count], events[count - 1].at_utc)
        after = level_at(events[: count + 1], events[count].at_utc)
        event = events[count]
        if after < before:
            assert event.kind in {"flag_answered", "cleared", "corrected"} or is_settling(event)


@settings(max_examples=150, deadline=None)
@given(histories())
def test_what_a_person_must_clear_falls_only_by_a_clearing(events):
    for count in range(1, len(events)):
        before = region_level(events[:count], events[count - 1].at_utc)
        after = region_level(events[: count + 1], events[count].at_utc)
        if before >= Level.REST > after:
            assert events[count].kind == "cleared"


@settings(max_examples=100, deadline=None)
@given(histories(), st.integers(3, 10))
def test_one_more_and_worse_report_never_lowers(events, score):
    last = at(20)
    worse = report(20, score, hour=-1, message=True)
    assert region_level([*events, worse], last) >= region_level(events, last)
    own = Level.REST if score > 5 else Level.EASE  # PUBLISHED bands, from memory
    assert region_level([*events, worse], last) >= own


@settings(max_examples=100, deadline=None)
@given(histories(), st.integers(1, 60))
def test_silence_lowers_nothing(events, days):
    end = events[-1].at_utc if events else at(0)
    kept = [event for event in events if event.kind != "cleared"]
    assert level_at(kept, at(days + 20)) >= level_at(kept, end)


@settings(max_examples=60, deadline=None)
@given(histories())
def test_the_same_history_in_any_order_gives_the_same_picture(events):
    turned = picture_of(reversed(events), as_of_utc=at(30))
    assert turned == picture_of(events, as_of_utc=at(30))
