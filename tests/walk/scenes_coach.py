"""What coaches and the owner do: decide, answer, send files, move and erase."""

from datetime import timedelta

from scheduler.catalogue.library import packaged_texts
from scheduler.training.gates import Checklist
from storage.queries import care, people
from tests.conversation.own_files import ADDED, FILE
from tests.walk.stage import ATHLETE, COACH, OWNER, SORE, WAITING, WalkStage
from tests.walk.walker import Walker

LONG_AFTER = timedelta(minutes=70)  # [min] CHOSEN: behind it a question is not fresh any more
TEAM = b"name,stage\nUma,1\nVic,2\n"


def months_pass(stage: WalkStage) -> None:
    """Put what takes months into the house: reviews, and checklists that are complete."""
    with stage.database.transaction() as tx:
        for chat_id in (ATHLETE, SORE, WAITING):
            person = people.person_in_chat(tx, chat_id)
            athlete = people.athlete(tx, person.id) if person else None
            assert athlete is not None
            care.propose(
                tx,
                athlete_id=athlete.person_id,
                kind="review",
                facts={"number": 2, "text": "lorem ipsum"},
                at=stage.clock.now(),
            )
            care.propose(
                tx,
                athlete_id=athlete.person_id,
                kind="stage_up",
                facts={
                    "stage": athlete.stage + 1,
                    "from_stage": athlete.stage,
                    "stage_since": athlete.stage_since.isoformat(),
                    "checklist": Checklist(stage=athlete.stage, items=()).model_dump(mode="json"),
                },
                at=stage.clock.now(),
            )


async def decides(walker: Walker) -> None:
    """Reviews: changed, left, sent; proposals: declined, accepted, several at once."""
    for name, act in (("Inma", "leave"), ("Ines", "send"), ("Bo", "change")):
        await walker.writes(COACH, f"/who {name}")
        await walker.taps(COACH, "review.show")
        await walker.taps(COACH, f"review.{act}")
    await walker.writes(COACH, "lorem ipsum")
    await walker.explores(COACH)


async def answers_clips(walker: Walker) -> None:
    """The queue: a stock cue, own words, late words."""
    await walker.writes(COACH, "/clips")
    await walker.taps(COACH, "clip.next")
    await walker.taps(COACH, "clip.cue")
    await walker.writes(COACH, "/clips")
    await walker.taps(COACH, "clip.words")
    await walker.stage.strike_at(walker.stage.clock.now() + LONG_AFTER)
    await walker.writes(COACH, "lorem ipsum")
    await walker.taps(COACH, "clip.send")


async def sends_files(walker: Walker) -> None:
    """Own movements and a team's table: of no use first, then taken, and taken back."""

    async def sends(name: str, content: bytes, caption: str) -> None:
        await walker.does(
            COACH, f"sent {name}", lambda one: one.send_document(name, content, caption)
        )

    await sends("a.pdf", b"%PDF", "")
    await sends(FILE, b"- nonsense: [", "/movements lorem")
    await sends(FILE, ADDED.encode(), "/movements")
    await walker.taps(COACH, "file.not_now")
    await sends(FILE, ADDED.encode(), "/movements lorem ipsum")
    await walker.taps(COACH, "file.confirm")
    await walker.taps(COACH, "file.versions")
    await walker.taps(COACH, "file.back")
    await walker.taps(COACH, "file.confirm")
    await sends(FILE, packaged_texts()[FILE].encode(), "/movements lorem")
    await sends("team.csv", b"nonsense", "")
    await sends("team.csv", TEAM, "")
    await walker.taps(COACH, "coach.invite_team_not")
    await sends("team.csv", TEAM, "")
    await walker.taps(COACH, "coach.invite_team")
    await walker.does(COACH, "sent a photo", lambda one: one.send_photo("/howto hang"))
    await walker.explores(COACH)
    await walker.does(COACH, "sent a photo", lambda one: one.send_photo(""))
    await walker.does(COACH, "sent a voice note", lambda one: one.send_voice())
    await walker.does(COACH, "sent a sticker", lambda one: one.send_sticker())


async def clears_a_place(walker: Walker) -> None:
    """Two places are left out: which one is asked."""
    await walker.writes(COACH, "/clear Inma lorem ipsum")
    await walker.taps(COACH, "coach.clear_place")


async def clears(walker: Walker) -> None:
    """What was left out is cleared: stopped first, then with the statement and the day."""
    for act in ("coach.clear_stop", "coach.clear_place", "coach.clear_assessed"):
        await walker.writes(COACH, "/clear Inma lorem ipsum")
        await walker.explores(COACH)
        await walker.taps_if_there(COACH, act)


async def owner_moves(walker: Walker) -> None:
    """To another coach and back."""
    await walker.writes(OWNER, "/move Bo to Otto")
    await walker.taps(OWNER, "owner.move_not")
    for coach in ("Otto", "Mara"):
        await walker.writes(OWNER, f"/move Bo to {coach}")
        await walker.taps(OWNER, "owner.move")


async def looks_around(walker: Walker) -> None:
    """Corners that the curious pass by."""
    await walker.writes(COACH, "/hours")
    await walker.taps(COACH, "hours.ask")
    await walker.taps(COACH, "hours.show")
    await walker.taps(COACH, "hours.ask")
    await walker.taps(COACH, "hours.set")
    await walker.writes(COACH, "/group Ines Juniors")
    await walker.writes(COACH, "/roster")
    await walker.taps(COACH, "coach.roster")
    await walker.taps(COACH, "coach.group_back")
    await walker.writes(COACH, "/swap Inma")
    await walker.taps(COACH, "swap.out")
    await walker.taps(COACH, "swap.in")
    await walker.writes(COACH, "lorem ipsum")
    await walker.writes(COACH, "/dose Inma")
    await walker.taps(COACH, "dose.which")
    await walker.taps(COACH, "dose.amount")
    await walker.writes(COACH, "lorem ipsum")
    await walker.writes(COACH, "/rest Ines wrist lorem ipsum")
    await walker.taps(COACH, "rest.side")
    await walker.writes(COACH, "/emergency 061 ES")
    await walker.writes(COACH, "/emergency")
    await walker.taps(COACH, "coach.emergency_confirm")
    await walker.does(COACH, "sent a photo", lambda one: one.send_photo("/howto hang"))
    await walker.writes(COACH, "/howto")
    await walker.taps(COACH, "howto.which")
    await walker.writes(COACH, "/plan Ines")
    await walker.taps(COACH, "plan.week")
    await walker.taps(COACH, "plan.day")
    await walker.taps(COACH, "plan.move")
    await walker.writes(COACH, "/plan Ines ban nonsense")
    await walker.taps(COACH, "plan.mark")


async def asks_for_tests(walker: Walker) -> None:
    """Guided tests with the next session."""
    await walker.writes(COACH, "/tests Ines")
    await walker.taps(COACH, "coach.tests_ask", begins="lighter")
    await walker.taps(COACH, "coach.tests_off")
    await walker.writes(COACH, "/tests Ines")
    await walker.taps(COACH, "coach.tests_ask", begins="next")


async def practises(walker: Walker) -> None:
    """A coach sees what athletes see, and ends it."""
    await walker.writes(COACH, "/practice please")
    await walker.explores(COACH)
    await walker.writes(COACH, "/practice")
    await walker.taps_if_there(COACH, "coach.practice_end")


async def erases(walker: Walker) -> None:
    """Somebody who asked for it in writing: kept first, then gone."""
    await walker.writes(COACH, "/who Inma")
    while await walker.taps_if_there(COACH, "alert.seen"):
        pass
    for chat_id, role, name in ((COACH, "coach", "Inma"), (OWNER, "owner", "Olga")):
        await walker.writes(chat_id, f"/erase {name} lorem ipsum")
        await walker.taps(chat_id, f"{role}.erase.keep")
        await walker.writes(chat_id, f"/erase {name} lorem ipsum")
        await walker.taps(chat_id, f"{role}.erase.first")
        await walker.taps(chat_id, f"{role}.erase.second")
