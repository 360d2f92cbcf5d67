"""Coming in: personal links are made, used once, and bind a chat to a person."""

import re
from collections.abc import Callable, Sequence
from datetime import datetime, time, timedelta

from sqlmodel import Session

from bot.acts import intake_course, link_guesses
from bot.acts.checklist import local_today
from bot.acts.find_athlete import subject_of
from bot.acts.intake_profile import BLANK
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Tap, Turn
from bot.wording import intake_end, joining
from bot.wording.catalogue.spoken import SPOKEN
from bot.wording.tongue import Template
from storage import buttons, outbox
from storage.queries import care, people
from storage.records.people import Athlete, AthleteState, Invitation, Person, Role
from storage.records.wire import MessageKind

LINK_KEPT = timedelta(days=14)  # [days] ch: an invitation may wait for a holiday
SESSION_AT = time(7, 0)  # [wall time] ch: until the intake has asked
SECRET = re.compile(r"/start(?:@\w+)?\s+(?P<secret>[A-Za-z0-9_-]{1,64})\s*")  # botapi: deep links

MenuOf = Callable[[Turn, Person], Sequence[tuple[str, Template]]]


def no_menu(_turn: Turn, _person: Person) -> Sequence[tuple[str, Template]]:
    """No menu is known here; the front desk knows who has which commands."""
    return ()


def secret_in(text: str) -> str | None:
    """Return the secret of a ``/start SECRET``, if the text is one."""
    found = SECRET.fullmatch(text)
    return found["secret"] if found else None


def new_link(
    tx: Session,
    *,
    bot_name: str,
    person: Person,
    role: Role,
    issued_by_id: int | None,
    now: datetime,
    make_secret: Callable[[], str] = buttons.random_secret,
) -> str:
    """Make a personal link; an unused older one for the same role stops working."""
    secret = make_secret()
    people.add_invitation(
        tx,
        secret=secret,
        person_id=person.id,
        role=role,
        issued_by_id=issued_by_id,
        expires_at=now + LINK_KEPT,
    )
    return f"https://t.me/{bot_name}?start={secret}"


def add_athlete(turn: Turn, coach: Person, name: str) -> tuple[Person, Athlete]:
    """Write down a new athlete of a coach, who has no chat and no answers yet."""
    person = people.add_person(
        turn.tx, name=name, now=turn.now, zone=coach.zone, language=coach.language
    )
    return person, _make_athlete(turn, person, coach)


def invite(turn: Turn, coach: Person, person: Person) -> str:
    """Make the athlete's personal link and record it; also for somebody with a new phone."""
    care.write_audit(
        turn.tx, at=turn.now, what="athlete.invited", athlete_id=person.id, actor_id=coach.id
    )
    return new_link(
        turn.tx,
        bot_name=turn.house.bot_name,
        person=person,
        role=Role.ATHLETE,
        issued_by_id=coach.id,
        now=turn.now,
        make_secret=turn.house.make_secret,
    )


def start(turn: Turn, person: Person, _rest: str, event: Wrote) -> Outcome:
    """``/start`` without a secret, from somebody known: welcome back, and on where it stopped."""
    _welcome_back(turn, person, event.chat_id)
    return Outcome.COMMAND


def use_link(
    turn: Turn, event: Wrote, secret: str, person: Person | None, *, menu_of: MenuOf = no_menu
) -> Outcome:
    """Take a link for what it is: new, used, expired, unknown, or somebody else's."""
    refused = Outcome.STRANGER if person is None else Outcome.NOT_UNDERSTOOD
    if link_guesses.is_shut_out(turn, event.chat_id):
        return refused
    tongue = turn.tongue(person) if person is not None else turn.tongue_with(event)
    found = people.invitation(turn.tx, secret)
    if found is None:
        is_last = link_guesses.note_wrong(turn, event.chat_id)
        _refuse(
            turn, event, joining.too_many_tries(tongue) if is_last else joining.unknown_link(tongue)
        )
        return refused
    if found.used_at is not None:
        if person is not None and person.id == found.person_id:
            _welcome_back(turn, person, event.chat_id)
            return Outcome.COMMAND
        _refuse(turn, event, joining.used_link(tongue))
        return refused
    if found.expires_at <= turn.now:
        _refuse(turn, event, joining.expired_link(tongue))
        return refused
    return _come_in(turn, event, found, person, menu_of)


def _come_in(
    turn: Turn, event: Wrote, found: Invitation, person: Person | None, menu_of: MenuOf
) -> Outcome:
    meant = people.person(turn.tx, found.person_id)
    if person is not None and _has_practice(turn, person, found):
        turn.say(person, joining.practice_first(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    if person is not None and person.id != meant.id and not _may_take_over(turn, meant, person):
        turn.say(person, joining.link_of_another(turn.tongue(person), name=person.name))
        return Outcome.NOT_UNDERSTOOD
    people.use_invitation(turn.tx, found.id, at=turn.now)
    turn.tx.expire_all()
    old_chat_id = meant.chat_id if meant.chat_id != event.chat_id else None
    known = person or _bind(turn, meant, event)
    athlete = _give_role(turn, known, meant, found)
    menu = menu_of(turn, people.person(turn.tx, known.id))
    if menu:
        turn.set_menu(known, menu)
    _greet(turn, known, athlete, found, old_chat_id=old_chat_id)
    return Outcome.JOINED


def _may_take_over(turn: Turn, meant: Person, person: Person) -> bool:
    """An owner, coach or athlete may take a further role, made for them under a new entry."""
    if meant.chat_id is not None:
        return False
    return people.athlete(turn.tx, meant.id) is None or (
        people.athlete(turn.tx, person.id) is None and (person.is_coach or person.is_owner)
    )


def _has_practice(turn: Turn, person: Person | None, found: Invitation) -> bool:
    """Tell whether a practice athlete is in the way: one chat holds one athlete."""
    own = people.athlete(turn.tx, person.id) if person is not None else None
    return found.role is Role.ATHLETE and own is not None and own.is_practice


def _bind(turn: Turn, meant: Person, event: Wrote) -> Person:
    """Give the person this chat; what waited in an old one comes along."""
    old_chat_id = meant.chat_id
    facts: dict[str, object] = {"chat_id": event.chat_id, "is_blocked": False}
    language = (event.language_code or "")[:2].lower()
    if old_chat_id is None and language in SPOKEN:
        facts["language"] = language
    if old_chat_id is not None:
        _leave_chat(turn, meant, old_chat_id, event.chat_id)
    return people.change_person(turn.tx, meant.id, **facts)


def _leave_chat(turn: Turn, person: Person, old_chat_id: int, new_chat_id: int) -> None:
    outbox.move_chat(turn.tx, old_chat_id=old_chat_id, new_chat_id=new_chat_id)
    buttons.close_question(turn.tx, old_chat_id)
    dialog = buttons.dialog(turn.tx, old_chat_id)
    if dialog is not None:
        buttons.end_dialog(turn.tx, old_chat_id)
        buttons.keep_dialog(
            turn.tx,
            chat_id=new_chat_id,
            person_id=person.id,
            kind=dialog.kind,
            step=dialog.step,
            answers=dialog.answers,
            now=turn.now,
        )
    text = joining.old_phone(turn.tongue(person))
    turn.say_to_chat(old_chat_id, text, kind=MessageKind.NOTICE)


def _give_role(turn: Turn, known: Person, meant: Person, found: Invitation) -> Athlete | None:
    """Give the role; an entry that was made only for it is emptied when another takes it over."""
    if known.id != meant.id:
        people.change_person(turn.tx, meant.id, is_owner=False, is_coach=False)
    if found.role is Role.OWNER:
        people.change_person(turn.tx, known.id, is_owner=True)
    elif found.role is Role.COACH:
        people.change_person(turn.tx, known.id, is_coach=True)
    else:
        return _as_athlete(turn, known, meant, found)
    return people.athlete(turn.tx, known.id)


def _as_athlete(turn: Turn, known: Person, meant: Person, found: Invitation) -> Athlete:
    own = people.athlete(turn.tx, known.id)
    invited = people.athlete(turn.tx, meant.id)
    if own is None:
        coach_id = invited.coach_id if invited else found.issued_by_id
        coach = people.person(turn.tx, coach_id) if coach_id is not None else known
        if invited is not None:
            people.change_athlete(turn.tx, meant.id, state=AthleteState.LEFT)
        made = _make_athlete(turn, known, coach)
        return made if invited is None else _as_told(turn, made, invited)
    if own.state is AthleteState.LEFT:
        return people.change_athlete(turn.tx, known.id, state=AthleteState.INVITED, agreed_at=None)
    return own


def _as_told(turn: Turn, made: Athlete, invited: Athlete) -> Athlete:
    """Take over what the coach told when inviting: stage, group, best sets."""
    return people.change_athlete(
        turn.tx,
        made.person_id,
        stage=invited.stage,
        group_name=invited.group_name,
        profile=invited.profile,
    )


def _make_athlete(turn: Turn, person: Person, coach: Person) -> Athlete:
    return people.add_athlete(
        turn.tx,
        person_id=person.id,
        coach_id=coach.id,
        profile=BLANK,
        on=local_today(turn, person),
        session_at=SESSION_AT,
    )


def _greet(
    turn: Turn,
    person: Person,
    athlete: Athlete | None,
    found: Invitation,
    *,
    old_chat_id: int | None,
) -> None:
    tongue = turn.tongue(person)
    if old_chat_id is not None:
        turn.say(person, joining.new_phone(tongue))
    if found.role is Role.COACH:
        turn.say(person, joining.coach_welcome(tongue, name=person.name))
    elif found.role is Role.OWNER:
        turn.say(person, joining.owner_welcome(tongue, name=person.name))
    elif athlete is not None:
        _tell_coach(turn, person, athlete, is_new_phone=old_chat_id is not None)
        _welcome_back(turn, person, person.chat_id, is_new=athlete.agreed_at is None)


def _tell_coach(turn: Turn, person: Person, athlete: Athlete, *, is_new_phone: bool) -> None:
    coach = people.person(turn.tx, athlete.coach_id)
    what = "athlete.new_phone" if is_new_phone else "athlete.joined"
    care.write_audit(turn.tx, at=turn.now, what=what, athlete_id=person.id, actor_id=person.id)
    if coach.id == person.id:
        return
    tongue = turn.tongue(coach)
    say = joining.moved_to_coach if is_new_phone else joining.joined_to_coach
    turn.say(
        coach,
        say(tongue, name=person.name),
        kind=MessageKind.NOTICE,
        subject=subject_of(person),
        taps=[[Tap(intake_end.open_label(tongue), "coach.who", {"athlete": person.id})]],
    )


def _welcome_back(turn: Turn, person: Person, chat_id: int | None, *, is_new: bool = False) -> None:
    """Greet somebody known; an intake that is not finished goes on where it stopped."""
    athlete = people.athlete(turn.tx, person.id)
    if not is_new:
        turn.say(person, joining.welcome_back(turn.tongue(person), name=person.name))
    unfinished = {AthleteState.INVITED, AthleteState.INTAKE}
    has_dialog = chat_id is not None and buttons.dialog(turn.tx, chat_id) is not None
    if athlete is not None and (athlete.state in unfinished or has_dialog):
        intake_course.begin(turn, person, athlete)


def _refuse(turn: Turn, event: Wrote, text: str) -> None:
    turn.say_to_chat(event.chat_id, text, kind=MessageKind.NOTICE)
