"""Pain in words for the athlete: calm, short, never a condition, never a promise."""

from collections.abc import Mapping, Sequence

from bot.wording.coach_pain import SITES, PlaceFacts, place
from bot.wording.coach_pain import left_out as what_is_left_out
from bot.wording.emergency import call
from bot.wording.tongue import Marked, Template, Tongue
from scheduler.pain.events import PainSign
from scheduler.pain.picture import PainPicture, RegionPicture
from scheduler.pain.tap_list import TapLine
from scheduler.pain.values import Level, Side, Site

SIGNS: Mapping[PainSign, Template] = {
    PainSign.SUDDEN_SHARP: "It came suddenly and sharp",
    PainSign.STOPPED_A_SET: "It stopped a set",
    PainSign.DISTURBS_EVERYDAY_USE: "It disturbs everyday things",
}
TAP_LINES: Mapping[TapLine, Template] = {
    TapLine.CHEST_OR_BREATH: "Chest, breath or heartbeat",
    TapLine.HEAD_OR_NECK: "Head or neck, fainting",
    TapLine.NUMB_OR_WEAK: "Numb, weak, cannot lift it",
    TapLine.SHAPE_OR_POP: "Out of shape, a pop, a fall",
    TapLine.SWOLLEN_HOT_OR_DARK: "Swollen, hot, fever, dark urine",
    TapLine.NIGHT_OR_UNWELL: "At night, or feeling ill",
}
SITE_LABELS: Mapping[Site, Template] = {
    Site.NECK: "Neck",
    Site.SHOULDER_FRONT: "Shoulder, front",
    Site.SHOULDER_TOP: "Shoulder, top",
    Site.SHOULDER_BACK: "Shoulder, back",
    Site.UPPER_ARM: "Upper arm",
    Site.ELBOW_OUTER: "Elbow, outside",
    Site.ELBOW_INNER: "Elbow, inside",
    Site.ELBOW_BACK: "Elbow, back",
    Site.FOREARM: "Forearm",
    Site.WRIST: "Wrist",
    Site.HAND: "Hand",
    Site.CHEST_MUSCLE: "Chest muscle",
    Site.UPPER_BACK: "Upper back",
    Site.ELSEWHERE: "Somewhere else",
}


def too_late_to_say(tongue: Tongue) -> str:
    """A number was tapped for a question of days ago."""
    return tongue.say(
        "That question is from days ago, and nothing is changed. If it hurts now, send /pain."
    )


def where(tongue: Tongue) -> str:
    """Ask where it hurts."""
    return tongue.say("Where does it hurt? If it is bad or frightening, call for help first.")


def which_side(tongue: Tongue, site: Site) -> str:
    """Ask for the side."""
    return tongue.say("{place}: which side?", place=tongue.say(SITE_LABELS[site]))


def how_much(tongue: Tongue, site: Site, side: Side) -> str:
    """Ask for the number."""
    return tongue.say(
        "{place}: how much, 0 to 10? 0 is nothing, 10 is the worst you can think of.",
        place=_capital(place(tongue, site, side)),
    )


def said(tongue: Tongue, site: Site, side: Side, score: int | None) -> str:
    """Write a report that was tapped, as its words for the coach's alert."""
    text = tongue.say(
        "{place}{score}", place=place(tongue, site, side), score=_score(tongue, score)
    )
    return _capital(text)


def which_sign(tongue: Tongue, site: Site, side: Side) -> str:
    """Ask what else was true of it."""
    return tongue.say("{place}: is any of this so?", place=_capital(place(tongue, site, side)))


def tap_list(tongue: Tongue) -> str:
    """Ask about the signs that need a person."""
    return tongue.say("One more check. Is any of this new or unusual for you?")


def morning(tongue: Tongue, site: Site, side: Side, *, is_morning: bool = True) -> str:
    """Ask on the morning after; once more later in the day, where it was not answered."""
    if site is Site.ELSEWHERE:
        return tongue.say("What hurt: how much today, 0 to 10?")
    if not is_morning:
        return tongue.say(
            "Still open: your {place} today, 0 to 10?", place=place(tongue, site, side)
        )
    return tongue.say("Good morning. Your {place} today, 0 to 10?", place=place(tongue, site, side))


def advice(tongue: Tongue, facts: PlaceFacts, *, coach: str, is_side_said: bool = True) -> str:
    """Say first what to do about a place that a person must look at; what changes comes after."""
    side = facts.side if is_side_said else None
    where_it_is = _named(tongue, facts.site, side, facts.score)
    if facts.level >= Level.CLINICIAN:
        return tongue.say(
            "{place}: stop what loads it, and have it looked at by a doctor or physiotherapist. "
            "{coach} is told.",
            place=where_it_is,
            coach=coach,
        )
    return tongue.say(
        "{place}: stop what loads it. If it gets worse or worries you, see a doctor or "
        "physiotherapist. {coach} is told.",
        place=where_it_is,
        coach=coach,
    )


def noted(tongue: Tongue, region: RegionPicture) -> str:
    """Repeat a number whose advice has just been said."""
    where_it_is = _named(tongue, region.region.site, region.region.arm, region.last_score)
    return tongue.say("Noted: {place}.", place=where_it_is)


def _named(tongue: Tongue, site: Site, side: Side | None, score: float | None) -> str:
    """Name a place with its number, a side only where it was said; an unknown one hurts."""
    if site is Site.ELSEWHERE:
        where_it_is = tongue.say("what hurts")
    else:
        where_it_is = tongue.say(SITES[site]) if side is None else place(tongue, site, side)
    whole = None if score is None else round(score)
    return _capital(tongue.say("{place}{score}", place=where_it_is, score=_score(tongue, whole)))


def outcome(tongue: Tongue, region: RegionPicture, *, coach: str) -> str:
    """Say what a report changes for one place."""
    where_it_is = place(tongue, region.region.site, region.region.arm)
    score = region.last_score
    if region.region.site is Site.ELSEWHERE and region.level is Level.REST:
        return tongue.say(
            "Noted. Your sessions wait until {coach} has looked. If it gets worse or worries "
            "you, see a doctor or physiotherapist.",
            coach=coach,
        )
    match region.level:
        case Level.NONE:
            return tongue.say("Noted, {place}. Nothing changes.", place=where_it_is)
        case Level.WATCH:
            return _watch(tongue, where_it_is, score)
        case Level.EASE:
            return tongue.say(
                "Noted, {place}{score}. What loads it is made easier or shorter for now, "
                "and does not get harder until it has settled.",
                place=where_it_is,
                score=_score(tongue, score),
            )
        case Level.REST:
            return tongue.say(
                "We leave out what loads your {place} until {coach} has looked. "
                "The rest goes on. If it gets worse or worries you, "
                "see a doctor or physiotherapist.",
                place=where_it_is,
                coach=coach,
            )
    return tongue.say(
        "We leave out what loads your {place}. Please have it looked at by a doctor "
        "or physiotherapist. {coach} is told.",
        place=where_it_is,
        coach=coach,
    )


def _watch(tongue: Tongue, where_it_is: str, score: int | None) -> str:
    return tongue.say(
        "Noted, {place}{score}. Nothing changes today.",
        place=where_it_is,
        score=_score(tongue, score),
    )


def _score(tongue: Tongue, score: int | None) -> str:
    return "" if score is None else tongue.say(" {score} of 10", score=score)


def left_out_line(
    tongue: Tongue, picture: PainPicture, *, coach: str, why: Sequence[str] = ()
) -> str:
    """Say in every session what is left out, for which report, and who can bring it back."""
    if picture.rested.is_empty:
        return ""
    return tongue.say(
        "Left out for now: {what}.{because} {coach} can bring it back, once it has been looked at.",
        what=Marked(what_is_left_out(tongue, picture.rested)),
        because=_because(tongue, why),
        coach=coach,
    )


def _because(tongue: Tongue, why: Sequence[str]) -> Marked:
    if not why:
        return Marked("")
    return Marked(tongue.say(" That spares what you reported: {places}.", places=", ".join(why)))


def nothing_to_train(
    tongue: Tongue, picture: PainPicture, *, coach: str, number: str | None
) -> str:
    """Nothing of today's session may be trained."""
    if picture.level >= Level.EMERGENCY:
        return tongue.say(
            "All sessions are stopped. If you have not been helped yet, or it comes back, call "
            "{number} now. Nobody may be watching this chat. "
            "{coach} can let you start again once you have been looked at.",
            coach=coach,
            number=call(tongue, number),
        )
    if picture.level >= Level.CLINICIAN:
        return tongue.say(
            "No session today: we wait until you have been looked at by a doctor "
            "or physiotherapist, and {coach} has heard. Write to me if anything changes.",
            coach=coach,
        )
    return tongue.say(
        "No session today: what is planned loads what hurts. {coach} is looking at it.",
        coach=coach,
    )


def taken_out_of_today(
    tongue: Tongue, names: Sequence[str], *, why: Sequence[str], coach: str
) -> str:
    """Correct a session that was sent already: what, why, and who can bring it back."""
    return tongue.say(
        "From today's session, leave out: {names}.{because} The rest stands. "
        "{coach} can bring it back.",
        names=", ".join(names),
        because=_because(tongue, why),
        coach=coach,
    )


def today_waits(tongue: Tongue, *, coach: str, is_place_known: bool) -> str:
    """Nothing of today's session may be trained: it is not known what would load the place."""
    if is_place_known:
        return tongue.say(
            "Stop for today. Your sessions wait until {coach} has looked.", coach=coach
        )
    return tongue.say("Stop for today. Your sessions wait until I know where it hurts.")


def instead_today(tongue: Tongue, lines: Sequence[str]) -> str:
    """Fill a session that was sent already with what may be done."""
    return "\n".join([tongue.say("Instead today:"), *lines])


def back_in_today(tongue: Tongue, names: Sequence[str]) -> str:
    """A doubt was answered away: today's session stands again."""
    return tongue.say(
        "Back in today's session: {names}. Only if you feel well.", names=", ".join(names)
    )


def eased_today(tongue: Tongue, lines: Sequence[str]) -> str:
    """Correct the doses of a session that was sent already."""
    return "\n".join([tongue.say("Easier for the rest of today:"), *lines])


def morning_fine(tongue: Tongue) -> str:
    """The morning's answer is back to where it was."""
    return tongue.say("Thank you. It has settled, so training goes on as planned.")


def nothing_hurt(tongue: Tongue) -> str:
    """Nothing hurt."""
    return tongue.say("Good, nothing hurt.")


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
