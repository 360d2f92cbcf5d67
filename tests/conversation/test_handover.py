"""The page to hand over: by button, facts only, nothing dropped, names in their own letters."""

import io
from datetime import timedelta
from pathlib import Path

import pytest
from pypdf import PdfReader
from sqlmodel import select

from bot.pictures.handover_page import draw
from bot.pictures.handover_values import HandoverPage
from storage.queries import people
from storage.tables.wire import OutboxRow
from tests.conversation.athlete_stage import COACH_CHAT, MONDAY, Stage

LABEL = "Page to hand over"


@pytest.fixture
def stage(tmp_path: Path) -> Stage:
    stage = Stage.with_first_session(tmp_path)
    stage.write("2) 20 20 20")
    stage.write("left wrist 6/10")
    stage.go_to(MONDAY + timedelta(days=1), 9)
    stage.write("5")
    stage.write("my hand has been numb all day")
    return stage


def page_of(stage: Stage) -> HandoverPage:
    stage.write("/who Ines", chat_id=COACH_CHAT)
    stage.tap(LABEL, chat_id=COACH_CHAT)
    with stage.database.transaction() as tx:
        rows = tx.exec(select(OutboxRow).where(OutboxRow.operation == "document")).all()
    return HandoverPage.model_validate(rows[-1].payload["page"])


def text_of(page: HandoverPage) -> str:
    pages = PdfReader(io.BytesIO(draw(page))).pages
    return " ".join(" ".join(one.extract_text() for one in pages).split())


def test_the_page_says_what_was_trained_what_hurt_where_and_how_it_behaved(stage: Stage) -> None:
    text = text_of(page_of(stage))
    assert "Bar hang 20, 20, 20 s" in text
    assert "left wrist: last 5 of 10, rested" in text
    assert "6 (Mon 2 Mar), 5 (Tue 3 Mar, next morning)" in text
    assert "numbness, weakness or lasting pins and needles" in text
    assert "not a medical record" in text


def pages_of(page: HandoverPage) -> list[str]:
    return [one.extract_text() for one in PdfReader(io.BytesIO(draw(page))).pages]


def test_an_ordinary_stretch_is_one_page(stage: Stage) -> None:
    (text,) = pages_of(page_of(stage))
    assert "1 / 1" not in text


def test_what_does_not_fit_goes_on_behind_and_nothing_is_dropped(stage: Stage) -> None:
    page = page_of(stage)
    lines = tuple(f"line {number:03} " + "of a long day " * 20 for number in range(60))
    long = page.sections[0].model_copy(update={"lines": lines})
    texts = pages_of(page.model_copy(update={"sections": (long, *page.sections[1:])}))
    told = " ".join(" ".join(texts).split())
    assert len(texts) > 1
    assert all(f"line {number:03}" in told for number in range(60))
    assert all(section.heading in told for section in page.sections)
    assert all("not a medical record" in text for text in texts)
    assert [f"{number} / {len(texts)}" in text for number, text in enumerate(texts, 1)] == (
        [True] * len(texts)
    )
    # The heading of what goes on is said again, and no page ends with one.
    assert texts[1].count(page.sections[0].heading) == 1


def test_places_that_one_chart_cannot_tell_apart_stand_in_a_second(stage: Stage) -> None:
    page = page_of(stage)
    (one,) = page.series[:1]
    many = tuple(one.model_copy(update={"name": f"place {number}"}) for number in range(6))
    told = " ".join(pages_of(page.model_copy(update={"series": many})))
    assert all(f"place {number}" in told for number in range(6))


@pytest.mark.parametrize("name", ["Łukasz Żółć", "Ειρήνη", "Сергій", "Ñandú Ç. Ødegård", "Şenay Ğ"])
def test_names_keep_their_letters(stage: Stage, name: str) -> None:
    page = page_of(stage).model_copy(update={"title": name})
    assert name in text_of(page)


def test_words_of_self_harm_are_not_on_the_page(stage: Stage) -> None:
    stage.write("i want to kill myself")
    text = text_of(page_of(stage)).lower()
    assert "kill" not in text
    assert "message that needs a person" not in text


def test_the_button_stands_under_a_pain_alert_and_who_asked_is_on_record(stage: Stage) -> None:
    stage.button(LABEL, chat_id=COACH_CHAT)
    page_of(stage)
    assert len(stage.audit("handover.sent")) == 1


def test_another_coach_gets_no_page(stage: Stage) -> None:
    with stage.turn() as turn:
        people.add_person(turn.tx, name="Otto", now=stage.now, chat_id=77, is_coach=True)
    stage.write("/who Ines", chat_id=77)
    assert all(LABEL not in shown.buttons for shown in stage.screen(77))
