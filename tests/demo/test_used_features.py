"""What counts as used is what left a trace; all CHOSEN, our own demo."""

import pytest
import typer
from sqlmodel import select

from demo_scenario.cli import end_with
from demo_scenario.play import Stage
from demo_scenario.scenes.features import FEATURES
from demo_scenario.scenes.steps import Tap
from demo_scenario.scenes.the_season import SCENES
from demo_scenario.used import Used, unused, used_in
from storage.tables.care import AuditRow

USED_IN_A_FORTNIGHT = {
    "link, terms, first questions": "Juno",
    "Spanish": "Nuria",
    "swap: no equipment": "Sol",
    "how-to with the coach's own picture": "Oda",
    "/howto": "Ruta",
    "groups": "Ruta",
    "weekly digest": "Ruta",
}


def test_every_feature_has_one_name_and_a_trace() -> None:
    names = [one.name for one in FEATURES]
    assert len(set(names)) == len(names)
    for one in FEATURES:
        traces = (one.wrote, one.says, one.audit, one.due, one.off_for, one.own, one.file)
        assert any(traces), one.name


def test_a_fortnight_shows_who_used_what(fortnight: Stage) -> None:
    found = {one.feature: one for one in used_in(fortnight)}
    for feature, name in USED_IN_A_FORTNIGHT.items():
        assert name in found[feature].people, feature
    assert found["/leave"].people == ()  # nobody leaves before the end of the season


def test_without_its_trace_a_feature_counts_as_not_used(fortnight: Stage) -> None:
    with fortnight.house.database.transaction() as tx:
        rows = tx.exec(select(AuditRow).where(AuditRow.what == "how_to.kept")).all()
        for row in rows:
            row.what = "spoiled"
            tx.add(row)
    try:
        assert "/howto" in unused(used_in(fortnight))
    finally:
        with fortnight.house.database.transaction() as tx:
            for row in tx.exec(select(AuditRow).where(AuditRow.what == "spoiled")):
                row.what = "how_to.kept"
                tx.add(row)


def test_whole_season_names_what_nobody_used(capsys: pytest.CaptureFixture[str]) -> None:
    found = (
        Used(feature="/why", people=("Oda",), first_on=None, times=1),
        Used(feature="/leave", people=(), first_on=None, times=0),
    )
    with pytest.raises(typer.Exit) as ended:
        end_with((), missing=unused(found))
    assert ended.value.exit_code == 1
    assert "nobody used: /leave" in capsys.readouterr().err


def test_scenes_begin_with_something_that_can_be_done_or_tried_again() -> None:
    for scene in SCENES:
        first = scene.steps[0]
        assert len(scene.days) > 1 or not (isinstance(first, Tap) and first.if_there), scene
        assert list(scene.days) == sorted(scene.days)
