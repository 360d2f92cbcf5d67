"""A clip as the coach sees it: by reference, with whose it is, its item, its dose, and cues."""

from bot.acts.item_facts import item_facts
from bot.turn import Tap, TapRows, Turn
from bot.wording import clips as words
from bot.wording import cues, doses, movement_names
from scheduler.catalogue.values import Movement
from storage.queries import training
from storage.records.media import Clip
from storage.records.people import Person

CUES_A_ROW = 2  # [buttons] ch: two labels fit a narrow phone


def subject_of(clip: Clip) -> str:
    """Return the subject of a message that shows a clip: a reply to it goes under the clip."""
    return f"clip:{clip.id}"


def clip_id(subject: str | None) -> int | None:
    """Return which clip a message showed, if it showed one."""
    kind, _, number = (subject or "").partition(":")
    return int(number) if kind == "clip" and number.isdecimal() else None


def movement_of(turn: Turn, clip: Clip) -> Movement | None:
    """Return the movement that a clip shows, as far as it is known."""
    return turn.house.library.movements.get(clip.movement_key) if clip.movement_key else None


def name_of(turn: Turn, reader: Person, clip: Clip) -> str | None:
    """Return the name of what a clip shows, as its reader calls it."""
    movement = movement_of(turn, clip)
    if movement is None:
        return None
    return movement_names.name_of(turn.tongue(reader), movement)


def text_of(
    turn: Turn, coach: Person, athlete: Person, clip: Clip, *, is_asked: bool = False
) -> str:
    """Write what stands under the clip; ``is_asked``: which item it is was just asked."""
    return words.of_athlete(
        turn.tongue(coach),
        name=athlete.name,
        kind="photo" if clip.sent_as == "photo" else "video",
        item=name_of(turn, coach, clip),
        dose=_dose(turn, coach, clip),
        caption=clip.caption,
        is_asked=is_asked,
    )


def announce(turn: Turn, coach: Person, athlete: Person, clip: Clip, *, is_asked: bool) -> None:
    """Show a clip that has just come."""
    text = text_of(turn, coach, athlete, clip, is_asked=is_asked)
    show(turn, coach, clip, text, taps=taps_for(turn, coach, clip))


def show(turn: Turn, coach: Person, clip: Clip, text: str, *, taps: TapRows) -> None:
    """Show a clip with words under it; without a reference of its own it is copied below them."""
    if clip.file_id is not None and clip.sent_as in {"photo", "video", "animation"}:
        turn.show_media(
            coach,
            sent_as=clip.sent_as,
            file_id=clip.file_id,
            caption=text,
            taps=taps,
            subject=subject_of(clip),
        )
        return
    turn.say(coach, text, taps=taps, subject=subject_of(clip))
    turn.relay(
        coach,
        from_chat_id=clip.chat_id,
        message_id=clip.message_id,
        subject=subject_of(clip),
    )


def taps_for(turn: Turn, coach: Person, clip: Clip) -> list[list[Tap]]:
    """Return the stock answers and the way to own words."""
    tongue = turn.tongue(coach)
    stock = [
        Tap(cues.cue_label(tongue, key), "clip.cue", {"clip": clip.id, "cue": key})
        for key in cues.cues_of(movement_of(turn, clip))
    ]
    rows = [stock[at : at + CUES_A_ROW] for at in range(0, len(stock), CUES_A_ROW)]
    return [*rows, [Tap(words.own_words_label(tongue), "clip.words", {"clip": clip.id})]]


def _dose(turn: Turn, coach: Person, clip: Clip) -> str | None:
    if clip.item_id is None:
        return None
    item, session_id = training.item(turn.tx, clip.item_id)
    if item.dose is None:
        return None
    facts = item_facts(turn, training.session(turn.tx, session_id), item)
    return doses.dose_line(turn.tongue(coach), facts.dose, facts.movement, arms=facts.arms)
