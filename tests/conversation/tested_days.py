"""Days of guided tests: begun, answered label by label, and what is stored of them."""

from datetime import timedelta

from storage.queries import first_tests
from tests.conversation.athlete_stage import MONDAY, Stage

WEDNESDAY = MONDAY + timedelta(days=2)


def begun(stage: Stage) -> Stage:
    stage.go_to(MONDAY, 7)
    stage.tap("Start")
    return stage


def attempts(stage: Stage):
    with stage.turn() as turn:
        latest = first_tests.rounds(turn.tx, stage.person.id)[0]
        return [
            (one.key, one.side.value, one.value, one.ended.value)
            for one in first_tests.attempts_of(turn.tx, latest.id)
        ]


def do(stage: Stage, *labels: str) -> None:
    for label in labels:
        stage.later(minutes=2)
        stage.tap(label)


def first_day(stage: Stage) -> None:
    do(begun(stage), "57", "5", "38", "38", "10", "50", "0")


def second_day(stage: Stage) -> None:
    do(stage, "5", "Nothing hurt")
    stage.go_to(WEDNESDAY, 7)
    stage.tap("Start")
