"""``holdwell erase``: whoever runs the machine erases a person, also one who never came in."""

from collections.abc import Sequence
from datetime import datetime

from sqlmodel import Session

from bot import copies
from bot.acts import erase_person
from bot.acts.find_athlete import folded
from bot.config import SetUpError
from bot.turn import House, Turn
from scheduler.catalogue.library import default_library
from scheduler.training.rulebook import default_rulebook
from storage import erasure, erasure_list
from storage.database import Database
from storage.migrate import migrate
from storage.private_file import database_file
from storage.queries import care, leaving, people
from storage.records.people import Athlete, Person

Known = tuple[Person, Athlete | None]


def erase(
    url: str, who: str, *, at: datetime, is_sure: bool, is_alert_no_matter: bool = False
) -> str:
    """Erase a person by name or number; return in one line what was done.

    Raises:
        SetUpError: when nobody or several are meant, when it was not confirmed, while an alert is
            open, and for a coach who has athletes.

    """
    database = Database(url)
    try:
        migrate(database.engine)
        with database.transaction() as tx:
            person, athlete = _only_one(people.everybody(tx), who)
            _refuse_what_comes_first(tx, person, athlete, is_alert_no_matter=is_alert_no_matter)
            if not is_sure:
                raise SetUpError(
                    f"{_named(person, athlete)} would be erased for good: add --yes to do it."
                )
            _erase(tx, person, athlete, at=at)
            leaving.sweep(tx, at=at)
            known = leaving.erasures(tx)
    finally:
        database.close()
    if (file := database_file(url)) is not None:
        place = erasure_list.list_beside(file)
        erasure_list.write_list(place, (*known, *erasure_list.read_list(place)))
        copies.wipe(url)
    return (
        f"Person {person.id} is erased. Copies made before hold the data until they are replaced."
    )


def _erase(tx: Session, person: Person, athlete: Athlete | None, *, at: datetime) -> None:
    """Erase somebody whole; an athlete who coaches too goes as an athlete first."""
    house = House(library=default_library(), rulebook=default_rulebook(), bot_name="")
    if athlete is not None:
        erase_person.erase(Turn(tx=tx, now=at, house=house), person, athlete, asked_by=None)
    if athlete is None or person.is_coach or person.is_owner:
        erasure.erase(tx, person.id, at=at)
        erasure.note_erasure(tx, person.id, at=at, is_whole=True)
        care.write_audit(tx, at=at, what="person.erased", athlete_id=None)


def _refuse_what_comes_first(
    tx: Session, person: Person, athlete: Athlete | None, *, is_alert_no_matter: bool
) -> None:
    coached = people.athletes_of(tx, person.id)
    others = [one for one, _ in coached if one.id != person.id]
    if others:
        raise SetUpError(
            f"{person.name} coaches {len(others)} athletes: "
            "move them to another coach or erase them first."
        )
    if (
        athlete is not None
        and care.open_alerts(tx, athlete_id=person.id)
        and not is_alert_no_matter
    ):
        raise SetUpError(
            f"An alert about {person.name} is open: let the coach answer it first, "
            "or add --even-with-open-alert."
        )


def _only_one(everybody: Sequence[Known], who: str) -> Known:
    """Find who is meant: a number, a whole name, or a part of one name only."""
    wanted = folded(who)
    found = [pair for pair in everybody if who.isdecimal() and pair[0].id == int(who)]
    found = found or [pair for pair in everybody if folded(pair[0].name) == wanted]
    found = found or [pair for pair in everybody if wanted and wanted in folded(pair[0].name)]
    if not found:
        raise SetUpError(f"Nobody here is called {who!r}: write a name, or a person's number.")
    if len(found) > 1:
        listed = "; ".join(_named(*pair) for pair in found[:10])
        raise SetUpError(f"Several are meant: {listed}. Write the number.")
    return found[0]


def _named(person: Person, athlete: Athlete | None) -> str:
    roles = [
        *(["owner"] if person.is_owner else []),
        *(["coach"] if person.is_coach else []),
        *(["athlete"] if athlete is not None else []),
    ]
    return f"{person.id} {person.name} ({', '.join(roles) or 'no role'})"
