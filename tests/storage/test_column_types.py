"""Instants keep their zone, documents their shape, and what does not fit is refused."""

from datetime import UTC, datetime, timedelta, timezone

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from pydantic import ValidationError
from sqlalchemy.exc import IntegrityError, StatementError

from scheduler.training.values import ReserveAnswer
from storage.column_types import Document
from storage.queries import due, people

ZONES = st.builds(timezone, st.timedeltas(timedelta(hours=-14), timedelta(hours=14)))


@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(at=st.datetimes(datetime(1970, 1, 2), datetime(2199, 1, 1), timezones=ZONES))  # noqa: DTZ001
def test_an_instant_comes_back_as_the_same_instant_in_utc(database, at):
    with database.transaction() as tx:
        due.set_mark(tx, "probe", at=at)
    with database.transaction() as tx:
        back = due.mark(tx, "probe")
    assert back == at
    assert back.tzinfo is UTC


def test_a_time_without_a_zone_is_refused_rather_than_guessed(database):
    with pytest.raises(StatementError, match="needs its zone"), database.transaction() as tx:
        due.set_mark(tx, "probe", at=datetime(2026, 1, 1))  # noqa: DTZ001
        tx.flush()


def test_a_document_of_the_wrong_shape_is_refused_on_its_way_in(database):
    column = Document(ReserveAnswer)
    dialect = database.engine.dialect
    assert column.process_bind_param(None, dialect) is None
    with pytest.raises(ValidationError):
        column.process_bind_param({"left": -1}, dialect)
    stored = column.process_bind_param(ReserveAnswer(left=4, is_at_least=True), dialect)
    assert column.process_result_value(stored, dialect) == ReserveAnswer(left=4, is_at_least=True)


def test_a_code_outside_its_list_is_refused_by_the_database_itself(database, now):
    with database.engine.begin() as connection, pytest.raises(IntegrityError, match="CHECK"):
        connection.exec_driver_sql(
            "INSERT INTO inbox (update_id, received_at, state, attempts) "
            "VALUES (1, '2026-01-01', 'lost', 0)"
        )


def test_a_transaction_that_fails_leaves_nothing_behind(database, now):
    with pytest.raises(RuntimeError, match="half-way"), database.transaction() as tx:
        people.add_person(tx, name="Nobody", now=now)
        raise RuntimeError("half-way")
    with database.transaction() as tx:
        assert people.coaches(tx) == ()
