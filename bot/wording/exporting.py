"""The words around files that people take along."""

from bot.wording.labels import label
from bot.wording.tongue import Tongue

EXAMPLE = "/export robin"


def choose_own(tongue: Tongue) -> str:
    """Offer an athlete their own data."""
    return tongue.say(
        "<b>Your data as files</b>\n"
        "Tables open in a spreadsheet. The season goes into a calendar. "
        "The data file holds everything for another program.\n"
        "A file that is downloaded is yours to guard. Which one?"
    )


def choose_of(tongue: Tongue, *, name: str) -> str:
    """Offer a coach an athlete's data."""
    return tongue.say(
        "<b>{name}</b>: which file?\n"
        "It holds health data. Pass it on only as {name} wishes, and delete it when done.",
        name=name,
    )


def file_label(tongue: Tongue, kind: str) -> str:
    """Label the button of a file."""
    return {
        "results": label(tongue, "Results (table)"),
        "sessions": label(tongue, "Sessions (table)"),
        "pain": label(tongue, "Pain (table)"),
        "words": label(tongue, "Own words (table)"),
        "season": label(tongue, "Season (calendar)"),
        "data": label(tongue, "Everything (data)"),
        "everything": label(tongue, "All in one archive"),
    }[kind]


def caption(tongue: Tongue, kind: str, *, name: str) -> str:
    """Say what a file is."""
    return {
        "results": tongue.say("{name}: every reported set, loads in kilograms.", name=name),
        "sessions": tongue.say("{name}: every session, a line each.", name=name),
        "pain": tongue.say("{name}: what was reported about pain. No assessment.", name=name),
        "words": tongue.say("{name}: messages that are kept in their own words.", name=name),
        "season": tongue.say(
            "{name}: the season. It is as of today; take it anew when plans move.", name=name
        ),
        "data": tongue.say("{name}: everything, for another program.", name=name),
        "schema": tongue.say("What the fields of the data mean."),
        "everything": tongue.say("{name}: all files in one.", name=name),
    }[kind]


def team_caption(tongue: Tongue) -> str:
    """Say what the team's table is."""
    return tongue.say(
        "Your team, a line each. One athlete's files: <code>{example}</code>", example=EXAMPLE
    )


def no_team(tongue: Tongue) -> str:
    """There is nobody to export."""
    return tongue.say("You have no athletes yet. Invite one with <code>/invite NAME</code>.")


def only_own(tongue: Tongue) -> str:
    """An athlete wrote something behind the command."""
    return tongue.say("Send just /export. It gives you your own data.")


def calendar_name(tongue: Tongue) -> str:
    """Name the calendar."""
    return label(tongue, "Training")


def training_day(tongue: Tongue, letter: str) -> str:
    """Name a day that is drawn."""
    return label(tongue, "Training, day {letter}", letter=letter)


def training_ahead(tongue: Tongue) -> str:
    """Name a day that is meant for training and not drawn yet."""
    return label(tongue, "Training")


def may_move(tongue: Tongue) -> str:
    """Say how sure a day ahead is."""
    return label(tongue, "Not planned in detail yet; it may move.")


def event(tongue: Tongue, name: str, *, is_main: bool) -> str:
    """Name an event."""
    if name:
        return label(tongue, "Event: {name}", name=name)
    return label(tongue, "Main event") if is_main else label(tongue, "Event")


def competing(tongue: Tongue) -> str:
    """Name the days of competing."""
    return label(tongue, "Competing")


def away(tongue: Tongue) -> str:
    """Name the days away."""
    return label(tongue, "Away")


def pause(tongue: Tongue) -> str:
    """Name a break."""
    return label(tongue, "Break from training")
