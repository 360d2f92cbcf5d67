"""What a season must keep to: spoiled in one place, and looked at; all CHOSEN, our own demo."""

import io
import zipfile

import pytest
from sqlmodel import Session, col, select

from demo_scenario import season_invariants
from demo_scenario.play import Stage
from demo_scenario.team import Part
from storage.queries import people
from storage.records.people import AthleteState
from storage.tables.leaving import ErasureRow
from storage.tables.media import ClipRow
from storage.tables.people import AthleteRow
from tests.demo.test_invariants import rules_broken

WORDS = ("some days i want to kill myself",)


def lose_sight_of_a_clip(tx: Session, _: Stage) -> None:
    clip = tx.exec(select(ClipRow).order_by(col(ClipRow.id))).first()
    assert clip is not None
    clip.answered_at = None
    athlete = tx.exec(select(AthleteRow).where(AthleteRow.person_id == clip.athlete_id)).one()
    athlete.state = AthleteState.LEFT


def erase_only_on_paper(tx: Session, stage: Stage) -> None:
    person = people.person_in_chat(tx, stage.team.part(Part.STEADY).chat_id)
    assert person is not None
    tx.add(ErasureRow(person_id=person.id, erased_at=stage.clock.now(), is_whole=True))


@pytest.mark.parametrize(
    ("spoil", "rule"),
    [
        (lose_sight_of_a_clip, "a clip that nobody sees"),
        (erase_only_on_paper, "something of an erased person is left"),
    ],
)
def test_spoiled_season_is_found_out(fortnight: Stage, spoil, rule: str) -> None:
    assert rule in rules_broken(fortnight, spoil)


def test_somebody_who_finds_no_button_is_named(fortnight: Stage) -> None:
    fortnight.coach.stumbled.append("Ruta, day 3: no such button")
    try:
        rules = rules_broken(fortnight, lambda _tx, _stage: None)
    finally:
        fortnight.coach.stumbled.clear()
    assert rules == {"somebody could not do what they meant to"}


def test_private_words_are_found_in_a_plain_file_and_in_a_packed_one() -> None:
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w") as archive:
        archive.writestr("words.csv", f"2027-01-13;{WORDS[0].upper()}")
    assert season_invariants.holds(packed.getvalue(), WORDS)
    assert season_invariants.holds(f"a;{WORDS[0]};b".encode(), WORDS)
    assert not season_invariants.holds(b"2027-01-13;my wrist hurts", WORDS)


def test_private_words_told_to_another_are_found_out(
    fortnight: Stage, monkeypatch: pytest.MonkeyPatch
) -> None:
    said = next(one.text for one in fortnight.coach.sees_from_bot() if "Passed on" not in one.text)
    monkeypatch.setattr(season_invariants, "private_words", lambda _: frozenset({said}))
    found = list(season_invariants.private_words_told(fortnight))
    assert any(one.startswith(fortnight.coach.name) for one in found)


@pytest.mark.parametrize(
    ("said", "is_private"),
    [
        (WORDS[0], True),
        ("my chest feels tight and heavy", False),
        ("1) 20 20 20", False),
        ("", False),
    ],
)
def test_what_is_private_is_what_was_said_plainly(said: str, *, is_private: bool) -> None:
    assert season_invariants.is_said_privately(said) is is_private


# PUBLISHED (botapi: sendMediaGroup, "must include 2-10 items"): ten are right, eleven are not.
@pytest.mark.parametrize(("pictures", "is_too_long"), [(10, False), (11, True)])
def test_album_of_more_than_ten_is_named(pictures: int, *, is_too_long: bool) -> None:
    found = list(season_invariants.too_long("Ruta", [*["a"] * pictures, None, "b"]))
    assert bool(found) is is_too_long
