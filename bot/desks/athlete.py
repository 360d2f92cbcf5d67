"""The athlete's desk: what an athlete writes, taps and commands, and which act it leads to."""

from bot.acts import (
    ask_help,
    cant_today,
    change_result,
    choose_reading,
    export,
    flag_answer,
    hear_pain,
    hear_reading,
    how_to,
    intake,
    intake_pain,
    intake_resume,
    join,
    leave,
    morning_question,
    open_answer,
    pain_nothing,
    pain_signs,
    pain_talk,
    pain_typed,
    pass_on,
    place_shared,
    red_flag,
    session_taps,
    settings,
    show_history,
    show_plan,
    show_season,
    show_why,
    stop_wish,
    swap_item,
    take_clip,
    tests_taps,
    weekly_question,
)
from bot.desks.entry import Command, TapEntry
from bot.events import Media, SentMedia, Wrote
from bot.outcomes import Outcome
from bot.reading.plain_letters import plain_letters
from bot.reading.red_flags import RedFlagReading
from bot.turn import Turn
from storage.queries import people
from storage.records.people import Athlete, AthleteState, Person, Role


def _help(turn: Turn, person: Person, rest: str, event: Wrote) -> Outcome:
    menu = [(one.name, one.about) for one in COMMANDS.values() if one.is_in_menu]
    also = {one.name: one.also[0] for one in COMMANDS.values() if one.also}
    return ask_help.athlete(turn, person, rest, event, commands=menu, also=also)


COMMANDS: dict[str, Command] = {
    entry.name: entry
    for entry in (
        Command("today", "what is next", show_plan.today, also=("hoy",)),
        Command("week", "this week's sessions", show_plan.week, also=("semana",)),
        Command(
            "why",
            "why this dose, and what comes next",
            show_why.command,
            also=(
                "porque",
                "por",
            ),
        ),
        Command(
            "season", "your season, and what can be reached", show_season.own, also=("temporada",)
        ),
        Command("how", "how a movement is done", how_to.command, also=("como",)),
        Command(
            "history",
            "your bests, and how a movement went",
            show_history.command,
            also=(
                "historial",
                "historia",
            ),
        ),
        Command(
            "pain",
            "report something that hurts",
            hear_pain.command,
            also=(
                "dolor",
                "duele",
            ),
        ),
        Command(
            "pause",
            "a break, such as /pause 2 weeks",
            cant_today.pause,
            also=(
                "pausa",
                "descanso",
            ),
        ),
        Command(
            "settings",
            "change days, hours, equipment, language",
            settings.command,
            also=(
                "ajustes",
                "configuracion",
                "setting",
            ),
        ),
        Command(
            "export",
            "your data as files",
            export.own,
            also=(
                "exportar",
                "datos",
            ),
        ),
        Command(
            "leave",
            "leave, and have everything erased",
            leave.command,
            also=(
                "irme",
                "baja",
                "salir",
            ),
        ),
        Command("help", "how this works, and help in an emergency", _help, also=("ayuda",)),
        Command("start", "where things stand", join.start, is_in_menu=False, also=("inicio",)),
        Command("stop", "stop something", stop_wish.command, is_in_menu=False, also=("parar",)),
    )
}

NOTHING_ASKED = {AthleteState.INVITED, AthleteState.INTAKE, AthleteState.WAITS_FOR_COACH}
"""The states in which no session is out: what is written then is for the coach."""

ONCE = frozenset({"pause.for", "leave.yes", "set.answer", "set.done"})
"""Acts that are done by the first tap: a slip weeks later begins no second break."""

TAPS: dict[str, TapEntry] = {
    name: TapEntry(Role.ATHLETE, act, is_once=name in ONCE)
    for name, act in {
        **session_taps.TAPS,
        **tests_taps.TAPS,
        **swap_item.TAPS,
        **take_clip.TAPS,
        **cant_today.TAPS,
        **choose_reading.TAPS,
        **change_result.TAPS,
        **pain_nothing.TAPS,
        **pain_talk.TAPS,
        **pain_signs.TAPS,
        **open_answer.TAPS,
        **morning_question.TAPS,
        **weekly_question.TAPS,
        **show_why.TAPS,
        **flag_answer.TAPS,
        **intake.TAPS,
        **settings.TAPS,
        **show_plan.TAPS,
        **how_to.TAPS,
        **show_history.TAPS,
        **export.TAPS,
        **leave.TAPS,
        **stop_wish.TAPS,
    }.items()
}


def hear(turn: Turn, person: Person, athlete: Athlete, event: Wrote) -> Outcome:
    """Hear what an athlete wrote: red flags first, in every state, then the open dialog."""
    turn.bodies[person.id] = athlete.profile.facts
    flags = red_flag.listen(turn, person, athlete, event.text, message_id=event.message_id)
    is_flagged = bool(flags.candidates)
    dialog = intake_resume.open_dialog(turn, person)
    if dialog is not None:
        return intake.hear(turn, person, athlete, dialog, event, flags=flags)
    if not is_flagged and (set_to := settings.hear(turn, person, athlete, event)) is not None:
        return set_to
    if athlete.state in NOTHING_ASKED:
        return _beside_nothing(turn, person, athlete, event, flags)
    if not is_flagged and (typed := pain_typed.hear(turn, person, athlete, event)) is not None:
        return typed
    if not is_flagged and (asked := _plain_wish(turn, person, athlete, event, flags)) is not None:
        return asked
    outcome = hear_reading.hear(turn, person, athlete, event, flags=flags)
    return Outcome.SAFETY if is_flagged else outcome


def _plain_wish(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, flags: RedFlagReading
) -> Outcome | None:
    """Answer what is a question or a wish and nothing else: how a movement is done, to stop."""
    if flags.asks_about_medicine or flags.is_private:
        return None
    asked = how_to.hear(turn, person, event)
    return asked if asked is not None else stop_wish.hear(turn, person, athlete, event)


def _beside_nothing(
    turn: Turn, person: Person, athlete: Athlete, event: Wrote, flags: RedFlagReading
) -> Outcome:
    """Nothing is asked of this athlete now: what hurts is a report, the rest is for the coach."""
    has_agreed = athlete.agreed_at is not None
    is_flagged = bool(flags.candidates)
    if has_agreed and not is_flagged and pain_typed.hear(turn, person, athlete, event) is not None:
        return Outcome.SAFETY
    mentions = intake_pain.told(turn, person, event, flags) if has_agreed else ()
    private = event.model_copy(update={"text": ""}) if flags.is_private else event
    is_told = hear_pain.hear(turn, person, athlete, mentions, private, None, may_ask=not is_flagged)
    if is_flagged or (is_told and "?" not in event.text):
        return Outcome.SAFETY
    if flags.asks_about_medicine:
        return Outcome.PASSED_ON
    return hear_reading.pass_on_words(turn, person, event)


def listen_first(turn: Turn, person: Person, athlete: Athlete, event: Wrote) -> RedFlagReading:
    """Listen for red flags in what stands behind a command, and act on any that it raises."""
    word, _, rest = event.text.partition(" ")
    called = plain_letters(word[1:].partition("@")[0])
    is_setting = called in {"settings", *COMMANDS["settings"].also}
    if is_setting and settings.is_plain_value(turn, person, athlete, rest.strip()):
        return RedFlagReading()
    flags = red_flag.listen(turn, person, athlete, rest, message_id=event.message_id)
    if flags.candidates:
        if not person.is_coach:  # of whom a coach's "/pause NAME ..." speaks, is not known
            hear_behind(turn, person, event, flags)
        intake_resume.resume(turn, person, athlete)
    return flags


def hear_behind(turn: Turn, person: Person, event: Wrote, flags: RedFlagReading) -> None:
    """Hear what hurts behind a command that is about something else; ``/pain`` hears its own.

    Only with a place or a number: "/help pain" reports nothing.
    """
    word, _, rest = event.text.partition(" ")
    athlete = people.athlete(turn.tx, person.id)
    is_report = word.lower().partition("@")[0] == "/pain" and not flags.candidates
    if athlete is None or is_report or not rest.strip():
        return
    if athlete.state in NOTHING_ASKED and athlete.agreed_at is None:
        return
    said = event.model_copy(update={"text": rest})
    mentions = intake_pain.told(turn, person, said, flags)
    told = [one for one in mentions if one.sites or one.score is not None]
    if flags.is_private:
        said = said.model_copy(update={"text": ""})
    hear_pain.hear(turn, person, athlete, told, said, None, may_ask=not flags.candidates)


def see(turn: Turn, person: Person, athlete: Athlete, event: SentMedia) -> Outcome:
    """Take a clip or a picture: what is written under it is listened to like any message."""
    if event.media is Media.LOCATION and event.latitude is not None:
        return place_shared.hear(turn, person, athlete, event)
    flags = red_flag.listen(turn, person, athlete, event.caption, message_id=event.message_id)
    if flags.is_private:
        intake_resume.resume(turn, person, athlete)
        return Outcome.SAFETY
    if athlete.state in NOTHING_ASKED or event.media not in take_clip.CLIPS:
        outcome = pass_on.media(turn, person, athlete, event)
        if athlete.state not in NOTHING_ASKED:
            read = hear_reading.hear_caption(turn, person, athlete, event, flags=flags)
            outcome = read or outcome
        else:
            _caption_of_newcomer(turn, person, athlete, event, flags)
        return Outcome.SAFETY if flags.candidates else outcome
    read = hear_reading.hear_caption(turn, person, athlete, event, flags=flags)
    may_ask = not flags.candidates and read is not Outcome.ASKED
    outcome = take_clip.take(turn, person, athlete, event, may_ask=may_ask)
    return Outcome.SAFETY if flags.candidates else read or outcome


def _caption_of_newcomer(
    turn: Turn, person: Person, athlete: Athlete, event: SentMedia, flags: RedFlagReading
) -> None:
    """Pain under a picture is pain; then the open question comes again."""
    said = Wrote(
        chat_id=event.chat_id, at=event.at, message_id=event.message_id, text=event.caption
    )
    mentions = intake_pain.told(turn, person, said, flags) if athlete.agreed_at is not None else ()
    may_ask = not flags.candidates
    if not hear_pain.hear(turn, person, athlete, mentions, said, None, may_ask=may_ask):
        intake_resume.resume(turn, person, athlete)


def is_safety_matter(event: Wrote) -> bool:
    """Tell whether the words need the red-flag reader's answer, whatever else they are."""
    return red_flag.is_raised(event.text)
