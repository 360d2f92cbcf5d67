"""What can be used, and by what trace on a screen or in the database it is known to have been."""

from dataclasses import dataclass

from demo_scenario.loopback.files import MediaKind


@dataclass(frozen=True, slots=True)
class Feature:
    """One feature. Any of its traces proves its use.

    ``wrote``: a command that the bot then followed; ``says``: what the bot then shows, as a
    pattern; ``audit``: what then stands in the record;
    ``due``: what then was sent by the clock; ``off_for``: why a session was then called off;
    ``own``: what a person then sent that is no text; ``shows``: with what kind of file the bot's
    words then come; ``file``: the name of a file that the bot then sent, as a pattern.
    """

    name: str
    wrote: str = ""
    says: str = ""
    audit: str = ""
    due: str = ""
    off_for: str = ""
    own: MediaKind | None = None
    shows: MediaKind | None = None
    file: str = ""


OF_ATHLETES = (
    Feature("link, terms, first questions", audit="intake.finished"),
    Feature("guardian of a minor", audit="intake.guardian_agreed"),
    Feature("guided first tests", audit="tests.done"),
    Feature("Spanish", says=r"Responde con tus números|¿Te dolió algo"),
    Feature("settings changed", audit="settings.changed"),
    Feature("numbers in pounds", says=r"\d lb a hand"),
    Feature("swap: no equipment", says=r": No equipment for it$"),
    Feature("swap: does not feel right", says=r": Does not feel right$"),
    Feature("swap: prefers another", says=r": I prefer another$"),
    Feature("swap: it hurts", says=r": It hurts$"),
    Feature("not today: ill", off_for="ill"),
    Feature("not today: travelling", off_for="travelling"),
    Feature("not today: no time", off_for="no_time"),
    Feature("not today: no equipment", off_for="no_equipment"),
    Feature("not today: something hurts", off_for="hurts"),
    Feature("a break begins", audit="break.begins"),
    Feature("a break ends", audit="break.ends"),
    Feature("a session before its day", audit="session.early"),
    Feature("other training", audit="other_training"),
    Feature(
        "an earlier day written down later", says=r"^For (Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day"
    ),
    Feature("a result corrected", audit="result.changed"),
    Feature("reminder in the evening", due="session_reminder"),
    Feature("silence noticed", due="silence_check"),
    Feature("how-to", says=r"Often seen:"),
    Feature("how-to with the coach's own picture", says=r"Often seen:", shows=MediaKind.PHOTO),
    Feature("clip sent", own=MediaKind.VIDEO),
    Feature("pictures sent", own=MediaKind.PHOTO),
    Feature("the answer under a clip", says=r" on your clip"),
    Feature("voice note", own=MediaKind.VOICE),
    Feature("/today", wrote="/today"),
    Feature("/week", wrote="/week"),
    Feature("/history", says=r"Your bests of the last year"),
    Feature("a movement's history drawn", says=r"on the picture\.", shows=MediaKind.PHOTO),
    Feature("/season", wrote="/season"),
    Feature("/why", wrote="/why"),
    Feature("/pain and its levels", audit="pain.left_out"),
    Feature("the next morning's question", due="morning_question"),
    Feature("red flag: told what to do", says=r"^Please stop upper-body training"),
    Feature("alert to the coach", audit="alert.raised"),
    Feature("words that stay private", says=r"(?i)you matter|not alone|crisis|suicid"),
    Feature("/export of one's own", says=r"Your data as files"),
    Feature("a file of one's own", file=r"\.(csv|ics|json|zip)$"),
    Feature("/leave", says=r"^Everything about you is erased now"),
    Feature("a new phone", audit="athlete.new_phone"),
)

OF_COACHES = (
    Feature("roster", wrote="/roster"),
    Feature("one athlete on a screen", wrote="/who"),
    Feature("history, season and balance drawn", says=r"the season$", shows=MediaKind.PHOTO),
    Feature("weekly digest", due="digest"),
    Feature("digest with the team's picture", says=r"(?i)team", shows=MediaKind.PHOTO),
    Feature("groups", audit="group.changed"),
    Feature("/tell all and a group", audit="coach.told_many"),
    Feature("words to one athlete", audit="coach.wrote"),
    Feature("stage by approval", audit="proposal.accepted"),
    Feature("stages together by one tap", says=r"^\d+ moved up$"),
    Feature("/stage against the checklist", audit="stage.changed"),
    Feature("invitation", audit="athlete.invited"),
    Feature("a team by file", says=r"^\d+ personal links?, "),
    Feature("/plan shown", wrote="/plan"),
    Feature("/plan changed, /swap, /dose", audit="plan.changed"),
    Feature("a change taken back", audit="plan.taken_back"),
    Feature("/rest", audit="pain.rested_by_coach"),
    Feature("/clear", audit="pain.cleared"),
    Feature("/clear with the clinician's word", says=r"assessed by a licensed clinician"),
    Feature("/season changed", audit="season.changed"),
    Feature("/tests", audit="tests.opened"),
    Feature("/clips", wrote="/clips"),
    Feature("/clips ask", audit="clips.asking"),
    Feature("a clip answered", audit="clip.answered"),
    Feature("/howto", audit="how_to.kept"),
    Feature("/shown", audit="standard.decided"),
    Feature("/upkeep", audit="upkeep.set"),
    Feature("/giveback", audit="injury.given_back"),
    Feature("own numbers and back", audit="file.replaced"),
    Feature("own movements as files", wrote="/movements"),
    Feature("/hours", audit="coach.hours"),
    Feature("/emergency", audit="coach.emergency_number"),
    Feature("stand-in", audit="coach.stand_in"),
    Feature("to another coach", audit="athlete.moved"),
    Feature("practice athlete", audit="practice.begun"),
    Feature("practice athlete ended", audit="practice.ended"),
    Feature("review after thirty days", audit="review.sent"),
    Feature("note", audit="coach.note"),
    Feature("record of decisions", wrote="/audit"),
    Feature("handover to a clinician", audit="handover.sent"),
    Feature("an athlete's files", audit="data.exported"),
    Feature("erased on a written wish", says=r"had everything about you erased"),
    Feature("/house", wrote="/house"),
    Feature("an outage reported", says=r"I was not running from"),
)

FEATURES = (*OF_ATHLETES, *OF_COACHES)
