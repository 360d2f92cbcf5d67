"""What a coach may command, and which act it leads to."""

from dataclasses import replace

from bot.acts import (
    answer_clip,
    ask_tests,
    change_season,
    change_stage,
    clear_pain,
    coach_help,
    coach_note,
    coach_question,
    decide_standard,
    emergency_number,
    erase_athlete,
    export,
    give_back,
    howto_media,
    invite,
    join,
    mark_movement,
    pause_athlete,
    practice,
    replace_file,
    rest_place,
    set_dose,
    set_group,
    set_hours,
    set_upkeep,
    show_athlete,
    show_audit,
    show_roster,
    swap_movement,
    tell_many,
)
from bot.desks import athlete as athlete_desk
from bot.desks.coach_asked import question_in
from bot.desks.entry import Command
from bot.events import Wrote
from bot.outcomes import Outcome
from bot.turn import Turn
from storage.records.people import Person


def _help(turn: Turn, person: Person, _text: str, _event: Wrote) -> Outcome:
    from bot.desks import front  # noqa: PLC0415  it knows all menus, and imports this desk

    coach_help.show(turn, person, front.menu_of(turn, person))
    return Outcome.COMMAND


def _practice(turn: Turn, person: Person, text: str, _event: Wrote) -> Outcome:
    from bot.desks import front  # noqa: PLC0415  it knows all menus, and imports this desk

    return practice.command(turn, person, text, menu_of=front.menu_of, acts=athlete_desk.TAPS)


def _closing(command: Command) -> Command:
    """A command ends what was asked before, so that a later text is not taken for its answer."""

    def act(turn: Turn, person: Person, text: str, event: Wrote) -> Outcome:
        if question_in(turn, event) is not None:
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
