"""The words of the handover page: facts only, nothing that names or judges a condition."""

from collections.abc import Sequence
from datetime import date

from bot.wording import dates
from bot.wording.coach_pain import level_word, place
from bot.wording.flag_words import flag_word
from bot.wording.tongue import Tongue
from scheduler.pain.events import Certainty
from scheduler.pain.picture import FlagPicture, RegionPicture
from scheduler.pain.values import Side, Site


def title(tongue: Tongue, name: str) -> str:
    """Head the page."""
    return plain(tongue.say("Training and pain: {name}", name=name))


def subtitle(tongue: Tongue, made_on: date, since: date) -> str:
    """Say of which days it tells."""
    return tongue.say(
        "{since} to {until}. As reported by the athlete; facts only, no assessment.",
        since=full_day(tongue, since),
        until=full_day(tongue, made_on),
    )


def full_day(tongue: Tongue, on: date) -> str:
    """Write a day with its year."""
    return dates.day_and_year(tongue, on)


def headings(tongue: Tongue) -> tuple[str, str, str, str, str]:
    """Return the headings: trained, hurts, course, signs, left out."""
    return (
        tongue.say("What was trained"),
        tongue.say("What hurts, and since when"),
        tongue.say("How it behaved"),
        tongue.say("Signs reported"),
        tongue.say("Left out now"),
    )


def session_line(tongue: Tongue, on: date, results: Sequence[str], effort: int | None) -> str:
    """Write one session."""
    felt = tongue.say(" (effort {effort} of 10)", effort=effort) if effort is not None else ""
    return plain(
        tongue.say("{day}{felt}: ", day=dates.day(tongue, on), felt=felt) + "; ".join(results)
    )


def earlier_sessions(tongue: Tongue, number: int) -> str:
    """Say how many sessions of these days are not listed."""
    return plain(
        tongue.count(
            number, "{n} earlier session is not listed.", "{n} earlier sessions are not listed."
        )
    )


def region_line(tongue: Tongue, one: RegionPicture, since: date | None) -> str:
    """Write one place: score, level, since when."""
    where = place(tongue, one.region.site, one.region.arm)
    score = (
        tongue.say("last {score} of 10", score=one.last_score)
        if one.last_score is not None
        else tongue.say("no number yet")
    )
    began = tongue.say(", since {day}", day=dates.day(tongue, since)) if since else ""
    return plain(
        tongue.say(
            "{where}: {score}, {level}{began}",
            where=where,
            score=score,
            level=level_word(tongue, one.level),
            began=began,
        )
    )


def course_line(
    tongue: Tongue, site: Site, arm: Side, points: Sequence[tuple[date, int, bool]]
) -> str:
    """Write the scores of a place in order; ``True`` marks an answer of a morning after."""
    told = ", ".join(
        tongue.say(
            "{score} ({day}{morning})",
            score=score,
            day=dates.day(tongue, on),
            morning=tongue.say(", next morning") if is_morning else "",
        )
        for on, score, is_morning in points
    )
    return plain(tongue.say("{where}: {told}", where=place(tongue, site, arm), told=told))


def flag_line(tongue: Tongue, flag: FlagPicture, on: date) -> str:
    """Write a sign that stands."""
    asked = (
        tongue.say(", asked about, not answered yet") if flag.certainty is Certainty.ASKED else ""
    )
    return plain(
        tongue.say(
            "{day}: {sign}{asked}",
            day=dates.day(tongue, on),
            sign=flag_word(tongue, flag.flag.value),
            asked=asked,
        )
    )


def nothing(tongue: Tongue) -> str:
    """Say that there is nothing under a heading."""
    return tongue.say("Nothing in these days.")


def chart_heading(tongue: Tongue) -> str:
    """Head the chart."""
    return tongue.say("Pain, 0 to 10")


def foot(tongue: Tongue) -> str:
    """Say what the page is not."""
    return tongue.say(
        "Written by a coaching program from what was reported in a chat. It is not a medical "
        "record, and nothing in it was examined."
    )


def caption(tongue: Tongue, name: str) -> str:
    """Accompany the file in the chat."""
    return tongue.say("<b>{name}</b>: the page to hand over. Facts as reported.", name=name)


def label(tongue: Tongue) -> str:
    """Label the button."""
    return tongue.say("Page to hand over")


def plain(text: str) -> str:
    """Take back the escaping of marks: a page is no chat message."""
    return text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")
