"""The coach's desk: what a coach writes, taps and commands, and which act it leads to."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import timedelta
from typing import Any

from bot.acts import (
    answer_alert,
    answer_clip,
    approve_batch,
    ask_tests,
    ask_why,
    balance_picture,
    change_season,
    change_stage,
    clear_pain,
    close_messages,
    coach_help,
    coach_note,
    coach_question,
    decide_proposal,
    decide_standard,
    emergency_number,
    erase_athlete,
    export,
    give_back,
    handover,
    history_picture,
    howto_media,
    intake,
    invite,
    invite_team,
    join,
    mark_movement,
    pause_athlete,
    plan_change,
    plan_edits,
    practice,
    red_flag,
    replace_file,
    rest_place,
    review,
    season_picture,
    set_dose,
    set_group,
    set_hours,
    set_upkeep,
    settings_care,
    show_athlete,
    show_audit,
    show_coming,
    show_roster,
    swap_movement,
    take_file,
    team_pictures,
    tell_athlete,
    tell_many,
    tell_media,
)
from bot.acts.find_athlete import subject_id
from bot.desks import athlete as athlete_desk
from bot.desks.coach_once import ONCE
from bot.desks.entry import Command, TapAct, TapEntry
from bot.events import FileArrived, Media, SentMedia, Tapped, Wrote
from bot.outcomes import Outcome
from bot.reading.captions import command_in
from bot.turn import Turn
from bot.wording import coach_help as help_words
from bot.wording import coach_messages, plain
from storage import buttons, outbox
from storage.records.people import Person, Role
from storage.records.wire import OpenQuestion

ASKS = frozenset(
    {
        tell_athlete.WRITE,
        clear_pain.DAY,
        ask_why.ASK,
        set_group.ASK,
        review.ASK,
        answer_clip.WORDS,
        replace_file.WHY,
    }
)


def _help(turn: Turn, person: Person, _text: str, _event: Wrote) -> Outcome:
    from bot.desks import front  # noqa: PLC0415  it knows all menus, and imports this desk

    coach_help.show(turn, person, front.menu_of(turn, person))
    return Outcome.COMMAND


def _practice(turn: Turn, person: Person, text: str, _event: Wrote) -> Outcome:
    from bot.desks import front  # noqa: PLC0415  it knows all menus, and imports this desk

    return practice.command(turn, person, text, menu_of=front.menu_of, acts=athlete_desk.TAPS)


def _practice_end(
    turn: Turn, person: Person, _arguments: Mapping[str, Any], _event: Tapped
) -> Outcome:
    from bot.desks import front  # noqa: PLC0415  it knows all menus, and imports this desk

    return practice.end(turn, person, menu_of=front.menu_of, acts=athlete_desk.TAPS)


def _closing(command: Command) -> Command:
    """A command ends what was asked before, so that a later text is not taken for its answer."""

    def act(turn: Turn, person: Person, text: str, event: Wrote) -> Outcome:
        if _question(turn, event) is not None:
            coach_question.close(turn, person)
        return command.act(turn, person, text, event)

    return replace(command, act=act)


COMMANDS: dict[str, Command] = {
    entry.name: _closing(entry)
    for entry in (
        Command("roster", "who needs you first", show_roster.command),
        Command("who", "one athlete on one screen", show_athlete.command),
        Command("tell", "your words to one, to a group, to all", tell_many.command),
        Command("clips", "clips that wait for your answer", answer_clip.command),
        Command("group", "who is in which group", set_group.command),
        Command("stage", "change a stage, with a reason", change_stage.command),
        Command("plan", "the coming two weeks, and changes to them", mark_movement.command),
        Command("swap", "one movement for another, with a reason", swap_movement.command),
        Command("dose", "a dose by hand, with a reason", set_dose.command),
        Command("rest", "leave out what loads a place, with a reason", rest_place.command),
        Command("pause", "a break for an athlete, and its end", pause_athlete.command),
        Command("tests", "guided tests, with what is tested", ask_tests.command),
        Command("season", "the season: events, travel, what fits", change_season.command),
        Command("clear", "clear what is left out, with a reason", clear_pain.command),
        Command("giveback", "give back what an old injury holds, with a reason", give_back.command),
        Command("shown", "decide a standard on a clip, with a reason", decide_standard.command),
        Command("upkeep", "easy bent-arm sets on or off, with a reason", set_upkeep.command),
        Command("howto", "your own picture or clip of a movement", howto_media.command),
        Command(
            "movements", "your movements as files, and how to change them", replace_file.movements
        ),
        Command(
            "standards", "your numbers as a file, and how to change them", replace_file.standards
        ),
        Command("note", "a note that only you see", coach_note.note),
        Command("audit", "what was decided, by whom, and why", show_audit.command),
        Command("emergency", "the number that safety messages name", emergency_number.command),
        Command("hours", "your waking hours, day and hour of the digest", set_hours.command),
        Command("export", "your team as a table, or an athlete's files", export.command),
        Command("erase", "erase an athlete who asked for it in writing", erase_athlete.command),
        Command("invite", "a personal link for a new athlete", invite.command),
        Command("practice", "an athlete of your own, to see what they see", _practice),
        Command("help", "what you can send", _help),
        Command("start", "where things stand", join.start, is_in_menu=False),
    )
}

_ACTS: dict[str, TapAct] = {
    **settings_care.COACH_TAPS,
    **intake.COACH_TAPS,
    "coach.roster": show_roster.tapped,
    "coach.who": show_athlete.tapped,
    "coach.audit": show_audit.tapped,
    "coach.write": tell_athlete.ask_text,
    "coach.tell": tell_athlete.picked,
    "coach.never_mind": tell_athlete.never_mind,
    "coach.note": coach_note.picked,
    "coach.stage": change_stage.picked,
    "coach.stage_anyway": change_stage.anyway,
    "coach.stage_leave": change_stage.leave,
    "coach.stage_back": change_stage.take_back,
    **give_back.TAPS,
    **ask_tests.TAPS,
    **decide_standard.TAPS,
    **set_upkeep.TAPS,
    **show_coming.TAPS,
    **mark_movement.TAPS,
    **plan_edits.TAPS,
    **rest_place.TAPS,
    **pause_athlete.TAPS,
    **swap_movement.TAPS,
    **set_dose.TAPS,
    **plan_change.TAPS,
    "coach.season": change_season.picked,
    "coach.clear": clear_pain.picked,
    "coach.clear_ask": clear_pain.picked,
    "coach.clear_place": clear_pain.place_chosen,
    "coach.clear_assessed": clear_pain.assessed,
    "coach.clear_day": clear_pain.day_chosen,
    "coach.clear_stop": clear_pain.stop,
    "coach.relink": invite.relink,
    "coach.invite_other": invite.invite_other,
    **emergency_number.TAPS,
    **handover.TAPS,
    **set_group.TAPS,
    **tell_many.TAPS,
    **set_hours.TAPS,
    **invite_team.TAPS,
    **review.TAPS,
    **close_messages.TAPS,
    **approve_batch.TAPS,
    practice.END: _practice_end,
    **export.COACH_TAPS,
    **erase_athlete.COACH_TAPS,
    **answer_clip.TAPS,
    **howto_media.TAPS,
    **replace_file.TAPS,
    **history_picture.TAPS,
    **season_picture.TAPS,
    **balance_picture.TAPS,
    **team_pictures.TAPS,
    "alert.seen": answer_alert.seen,
    "proposal.accept": decide_proposal.accept,
    "proposal.decline": decide_proposal.decline,
}
TAPS: dict[str, TapEntry] = {
    name: TapEntry(Role.COACH, act, is_once=name in ONCE) for name, act in _ACTS.items()
}


def is_for_coach(turn: Turn, person: Person, event: Wrote, *, is_athlete: bool) -> bool:
    """Tell whether a text is meant for the coach's desk, of somebody who may be both.

    Replying to a message about another athlete always is. An answer to a question of this desk
    is too, unless it needs the red-flag reader: a coach's own danger comes first.
    """
    if not is_athlete:
        return True
    replied = _replied_about(turn, event)
    if replied is not None and replied != person.id:
        return True
    if event.is_edit or _question(turn, event) is None:
        return False
    return not athlete_desk.is_safety_matter(event)


def hear(turn: Turn, person: Person, event: Wrote) -> Outcome:
    """Hear a coach's text: a reply goes to its athlete, else it answers what was asked."""
    if not person.is_coach:
        turn.say(person, help_words.nothing_for_owner(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    refused = _refused(turn, person, event)
    if refused is not None:
        return refused
    clip = answer_clip.replied(turn, event.chat_id, event.reply_to_message_id)
    if clip is not None:
        about = {"clip": clip.id}
        return answer_clip.hear_text(turn, person, about, event.text, waited=timedelta(0))
    replied, question = _replied_about(turn, event), _question(turn, event)
    if question is not None and replied in {None, question.subject.get("athlete")}:
        return _answer(turn, person, question, event)
    if replied is not None:
        about = {"athlete": replied}
        return tell_athlete.hear_text(turn, person, about, event.text, waited=timedelta(0))
    turn.say(person, coach_messages.no_addressee(turn.tongue(person)))
    return Outcome.NOT_UNDERSTOOD


def is_media_for_coach(turn: Turn, person: Person, event: SentMedia, *, is_athlete: bool) -> bool:
    """Tell whether something that is not text is meant for this desk, as :func:`is_for_coach`."""
    if not is_athlete:
        return True
    replied = _replied_about(turn, event)
    if replied is not None and replied != person.id:
        return True
    is_meant = (
        _is_how_to(event)
        or answer_clip.replied(turn, event.chat_id, event.reply_to_message_id) is not None
        or _asked_for_media(turn, event) is not None
        or take_file.is_for_coach(turn, event)
    )
    return is_meant and not red_flag.is_raised(event.caption)


def see(turn: Turn, person: Person, event: SentMedia) -> Outcome:
    """See what is not text: a how-to, a reply to its athlete, a file to the act that reads it."""
    if not person.is_coach:
        turn.say(person, plain.media_without_reader(turn.tongue(person)))
        return Outcome.NOT_UNDERSTOOD
    if _is_how_to(event):
        _, _, rest = event.caption.strip().partition(" ")
        return howto_media.take(turn, person, rest, event)
    clip = answer_clip.replied(turn, event.chat_id, event.reply_to_message_id)
    if clip is not None:
        return answer_clip.hear_media(turn, person, clip.id, event)
    replied, question = _replied_about(turn, event), _asked_for_media(turn, event)
    if replied is not None:
        return tell_media.send(turn, person, replied, event)
    if take_file.names_command(event):
        return take_file.ask(turn, person, event)
    if question is not None and question.kind == answer_clip.WORDS:
        return answer_clip.hear_media(turn, person, int(question.subject["clip"]), event)
    if question is not None:
        return tell_media.send(turn, person, int(question.subject["athlete"]), event)
    if event.media is Media.DOCUMENT:
        return take_file.ask(turn, person, event)
    return tell_media.no_addressee(turn, person)


def take(turn: Turn, person: Person, event: FileArrived) -> Outcome:
    """Take a file that was fetched for this person, who may have lost the role meanwhile."""
    if not person.is_coach:
        return Outcome.STALE_TAP
    return take_file.arrived(turn, person, event)


def _asked_for_media(turn: Turn, event: SentMedia) -> OpenQuestion | None:
    """Return the open question that anything may answer: the coach's words to an athlete."""
    question = _question(turn, event)
    is_asked = question is not None and question.kind in {tell_athlete.WRITE, answer_clip.WORDS}
    return question if is_asked else None


def _is_how_to(event: SentMedia) -> bool:
    return command_in(event.caption, among=COMMANDS) == howto_media.COMMAND


def _answer(turn: Turn, person: Person, question: OpenQuestion, event: Wrote) -> Outcome:
    about, waited = question.subject, turn.now - question.asked_at
    match question.kind:
        case clear_pain.DAY:
            return clear_pain.hear_day(turn, person, about, event.text)
        case ask_why.ASK:
            return ask_why.answered(turn, person, about, event.text, waited=waited, taps=_ACTS)
        case review.ASK:
            return review.hear_text(turn, person, about, event.text, waited=waited)
        case set_group.ASK:
            return set_group.hear_name(turn, person, about, event.text, waited=waited)
        case replace_file.WHY:
            return replace_file.hear_why(turn, person, about, event.text, waited=waited)
        case answer_clip.WORDS:
            return answer_clip.hear_text(turn, person, about, event.text, waited=waited)
        case _:
            return tell_athlete.hear_text(turn, person, about, event.text, waited=waited)


def _refused(turn: Turn, person: Person, event: Wrote) -> Outcome | None:
    tongue = turn.tongue(person)
    if event.is_edit:
        turn.say(person, coach_messages.edits_do_not_reach(tongue))
    elif event.is_forwarded:
        turn.say(person, coach_messages.forwarded(tongue))
    else:
        return None
    return Outcome.NOT_UNDERSTOOD


def _replied_about(turn: Turn, event: Wrote | SentMedia) -> int | None:
    if event.reply_to_message_id is None:
        return None
    found = outbox.sent_message(
        turn.tx, chat_id=event.chat_id, message_id=event.reply_to_message_id
    )
    if found is None:
        return None
    clip = answer_clip.replied(turn, event.chat_id, event.reply_to_message_id)
    return clip.athlete_id if clip is not None else subject_id(found[1])


def _question(turn: Turn, event: Wrote | SentMedia) -> OpenQuestion | None:
    question = buttons.open_question(turn.tx, chat_id=event.chat_id, now=turn.now)
    return question if question is not None and question.kind in ASKS else None
