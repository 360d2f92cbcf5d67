"""One turn of the writer: the transaction, the time, and the ways to say something."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from sqlmodel import Session

from bot.events import Event, SentMedia, Wrote
from bot.pictures.values import Picture
from bot.wording.pictures import not_drawn
from bot.wording.tongue import Template, Tongue, tongue_of
from scheduler.catalogue.library import Library
from scheduler.pain.picture import PainPicture
from scheduler.training.baseline_values import TestedSet
from scheduler.training.rulebook import Rulebook
from scheduler.training.values import AthleteProfile
from storage import buttons, outbox
from storage.records.people import Person
from storage.records.wire import MessageKind, Operation


@dataclass(frozen=True)
class Tap:
    """A button to be: what it shows, which act it asks for, and with what."""

    label: str
    act: str
    arguments: Mapping[str, Any] = field(default_factory=dict)


TapRows = Sequence[Sequence[Tap]]

ALBUM_MOST = 10  # [pictures] botapi: sendMediaGroup, media


@dataclass(frozen=True)
class Shot:
    """A picture to be: its facts, the same in words, and what it is about."""

    picture: Picture
    caption: str
    subject: str | None = None


@dataclass(frozen=True)
class House:
    """What every act may look at.

    A coach may put other movements and numbers in force (:mod:`bot.acts.in_force`): the house as
    it stands there knows the ``common`` one, which keeps what was made ``by_coach``, each with
    the newest version of any file that it was made from. ``copies_kept`` [days]: how long the
    bot's own daily copies last; 0 where it makes none.
    """

    library: Library
    rulebook: Rulebook
    bot_name: str
    make_token: Callable[[], str] = buttons.random_token
    make_secret: Callable[[], str] = buttons.random_secret
    copies_kept: int = 0
    common: "House | None" = field(default=None, compare=False, repr=False)
    by_coach: dict[int, "tuple[int, House]"] = field(
        default_factory=dict, compare=False, repr=False
    )


@dataclass(frozen=True)
class Turn:
    """Everything an act needs. Whatever it says is sent only if its transaction commits.

    ``pictures`` are the pain pictures drawn in this turn, by athlete; whoever records an event
    takes the athlete's out (:func:`bot.acts.pain_picture.record_event`). ``tested`` likewise are
    the tested sets read in this turn (:mod:`bot.acts.tested`), and ``bodies`` the facts of athletes
    as the turn found them, for whoever only asks about the body.
    """

    tx: Session
    now: datetime
    house: House
    pictures: dict[int, PainPicture] = field(default_factory=dict, compare=False, repr=False)
    bodies: dict[int, AthleteProfile] = field(default_factory=dict, compare=False, repr=False)
    advised: set[int] = field(default_factory=set, compare=False, repr=False)
    tested: dict[int, tuple[TestedSet, ...]] = field(
        default_factory=dict, compare=False, repr=False
    )

    def tongue(self, person: Person) -> Tongue:
        """Return the person's own language and formats."""
        return tongue_of(person.language, units=person.units, decimal_mark=person.decimal_mark)

    def tongue_with(self, event: Event) -> Tongue:
        """Return the language that somebody unknown has set their own screen to."""
        code = event.language_code if isinstance(event, Wrote | SentMedia) else None
        return tongue_of((code or "")[:2].lower())

    def say(
        self,
        to: Person,
        text: str,
        *,
        kind: MessageKind = MessageKind.REPLY,
        taps: TapRows = (),
        subject: str | None = None,
        not_before: datetime | None = None,
        useful_until: datetime | None = None,
        reply_to: int | None = None,
    ) -> int | None:
        """Write a message to a person, ``reply_to`` one of theirs; None when they have no chat."""
        if to.chat_id is None:
            return None
        payload: dict[str, Any] = {"text": text}
        if reply_to is not None:
            payload["reply_to"] = reply_to
        if taps:
            payload["buttons"] = self._rows(to, to.chat_id, taps)
        return outbox.put(
            self.tx,
            chat_id=to.chat_id,
            operation=Operation.SEND,
            kind=kind,
            payload=payload,
            now=self.now,
            not_before=not_before,
            useful_until=useful_until,
            subject=subject,
        )

    def say_to_chat(
        self, chat_id: int, text: str, *, kind: MessageKind, subject: str | None = None
    ) -> None:
        """Write to a chat that belongs to nobody we know; no buttons, no markup of theirs."""
        self._put(chat_id, Operation.SEND, {"text": text}, kind=kind, subject=subject)

    def change(self, to: Person, message_id: int, text: str, *, taps: TapRows = ()) -> None:
        """Edit a message that the person sees, by its platform id."""
        if to.chat_id is None:
            return
        payload: dict[str, Any] = {"text": text, "message_id": message_id}
        if taps:
            payload["buttons"] = self._rows(to, to.chat_id, taps)
        self._put(to.chat_id, Operation.EDIT, payload)

    def answer_tap(self, to: Person, message_id: int | None, text: str) -> None:
        """Turn the tapped message into its answer; say it anew where its id is not known."""
        if message_id is None:
            self.say(to, text)
        else:
            self.change(to, message_id, text)

    def relay(self, to: Person, *, from_chat_id: int, message_id: int, subject: str) -> None:
        """Copy somebody's message to a person by reference, whatever it contains."""
        if to.chat_id is not None:
            payload = {"from_chat_id": from_chat_id, "message_id": message_id}
            self._put(to.chat_id, Operation.COPY, payload, subject=subject)

    def show_media(
        self,
        to: Person,
        *,
        sent_as: str,
        file_id: str,
        caption: str,
        taps: TapRows = (),
        subject: str | None = None,
    ) -> None:
        """Send a picture or clip that the platform keeps, by reference, with words under it."""
        if to.chat_id is None:
            return
        payload: dict[str, Any] = {"sent_as": sent_as, "file_id": file_id, "text": caption}
        if taps:
            payload["buttons"] = self._rows(to, to.chat_id, taps)
        self._put(to.chat_id, Operation.MEDIA, payload, subject=subject)

    def send_picture(
        self,
        to: Person,
        shot: Shot,
        *,
        kind: MessageKind = MessageKind.REPLY,
        taps: TapRows = (),
        useful_until: datetime | None = None,
    ) -> None:
        """Send a picture with the same in words; its facts are kept here, drawn when it leaves."""
        if to.chat_id is None:
            return
        payload = self._shot(to, shot)
        if taps:
            payload["buttons"] = self._rows(to, to.chat_id, taps)
        self._put(
            to.chat_id,
            Operation.PHOTO,
            payload,
            kind=kind,
            subject=shot.subject,
            useful_until=useful_until,
        )

    def send_album(
        self,
        to: Person,
        shots: Sequence[Shot],
        *,
        kind: MessageKind = MessageKind.REPLY,
        useful_until: datetime | None = None,
    ) -> None:
        """Send several pictures side by side, in albums of at most ten."""
        if to.chat_id is None:
            return
        for start in range(0, len(shots), ALBUM_MOST):
            group = shots[start : start + ALBUM_MOST]
            self._put(
                to.chat_id,
                Operation.ALBUM,
                {"pictures": [self._shot(to, one) for one in group]},
                kind=kind,
                subject=group[0].subject,
                useful_until=useful_until,
            )

    def _shot(self, to: Person, shot: Shot) -> dict[str, Any]:
        return {
            "picture": shot.picture.model_dump(mode="json"),
            "caption": shot.caption,
            "instead": not_drawn(self.tongue(to)),
            "subject": shot.subject,
        }

    def fetch(
        self,
        of: Person,
        *,
        file_id: str,
        name: str,
        purpose: str,
        bytes_most: int,
        words: str = "",
    ) -> None:
        """Fetch a file that the person sent; it arrives as an event, for ``purpose``.

        ``words`` are the person's own about it, ``bytes_most`` how large it may be.
        """
        if of.chat_id is not None:
            payload = {"file_id": file_id, "name": name, "purpose": purpose}
            about = {"words": words, "bytes_most": bytes_most}
            self._put(of.chat_id, Operation.FETCH, {**payload, **about})

    def send_file(
        self,
        to: Person,
        *,
        file_name: str,
        caption: str,
        wanted: Mapping[str, Any] | None = None,
        page: Mapping[str, Any] | None = None,
        subject: str | None = None,
    ) -> None:
        """Send a file that is made when it leaves; until then only what it is made of waits here.

        ``wanted`` says which file, ``page`` the facts of a page in it; alone, the page is the file.
        """
        if to.chat_id is not None:
            made_of = {"file": wanted, "page": page}
            payload = {
                **{key: dict(one) for key, one in made_of.items() if one is not None},
                "file_name": file_name,
                "caption": caption,
            }
            self._put(to.chat_id, Operation.DOCUMENT, payload, subject=subject)

    def set_menu(self, to: Person, commands: Sequence[tuple[str, Template]]) -> None:
        """Show these commands in the person's menu, in the person's language."""
        if to.chat_id is not None:
            tongue = self.tongue(to)
            payload = {"commands": [[name, tongue.say(about)] for name, about in commands]}
            self._put(to.chat_id, Operation.MENU, payload, kind=MessageKind.MENU)

    def _put(
        self,
        chat_id: int,
        operation: Operation,
        payload: Mapping[str, Any],
        *,
        kind: MessageKind = MessageKind.REPLY,
        subject: str | None = None,
        useful_until: datetime | None = None,
    ) -> None:
        outbox.put(
            self.tx,
            chat_id=chat_id,
            operation=operation,
            kind=kind,
            payload=payload,
            now=self.now,
            subject=subject,
            useful_until=useful_until,
        )

    def _rows(self, to: Person, chat_id: int, taps: TapRows) -> list[list[tuple[str, str]]]:
        return [
            [
                (
                    tap.label,
                    buttons.new_button(
                        self.tx,
                        chat_id=chat_id,
                        person_id=to.id,
                        act=tap.act,
                        arguments=tap.arguments,
                        now=self.now,
                        make_token=self.house.make_token,
                    ),
                )
                for tap in row
            ]
            for row in taps
        ]
