"""Find pain in a reply: where, which side, how much. Words raise, they never lower."""

import itertools
from collections.abc import Sequence

from bot.reading.body_words import PARTS
from bot.reading.clauses import (
    CLAUSE_ENDS,
    PASSED_OVER,
    SIDE_MARKS,
    WORDS_OF_PAIN,
    Clause,
    clauses,
)
from bot.reading.known import Expects, ReadingContext
from bot.reading.pain_goes_on import first_score, goes_on, last_score, merged
from bot.reading.scores import (
    counted,
    followed_by_figure,
    is_score,
    rating_anywhere,
    scores_after,
    scores_before,
)
from bot.reading.tokens import Token
from bot.reading.values import PainMention
from bot.reading.words import Mark
from scheduler.pain.values import Side, Site

MOST_PLACES = 12  # [places] CH: nobody names more in one clause
ISSUES = frozenset({"issue", "issues", "problem", "problems", "trouble", "problemas", "problema"})
AGAIN = frozenset({"again", "otra vez"})
TIRED = frozenset(
    {
        *("tired", "pumped", "pump", "toast", "fried", "cooked", "smoked", "dead", "gassed"),
        *("spent", "exhausted", "knackered", "shaky", "done", "shot", "wrecked", "cansado"),
        *("cansada", "cansados", "cansadas", "agotados", "cargados", "gave", "gone", "blown"),
        *("width", "height", "packed", "relaxed", "engaged", "retracted", "level", "locked"),
        *(
            "ok",
            "okay",
            "taps",
            "apart",
            "loose",
            "warm",
            "warmed",
            "stacked",
            "bloqueados",
            "relajados",
        ),
    }
)
"""Words for tiredness and for technique, which are no pain."""
RETURNS = frozenset({"is", "was", "s", "are", "came", "come", "comes", "coming", "crept"})
FORCED_STOPS = frozenset({"had to stop", "tuve que parar"})


def find_pain(
    tokens: Sequence[Token], context: ReadingContext
) -> tuple[tuple[PainMention, ...], list[Token]]:
    """Return every pain mention, and the tokens without them."""
    is_asked = context.question is not None and context.question.expects is Expects.PAIN
    mentions: list[PainMention] = []
    parts = list(clauses(tokens))
    is_right_behind = False
    for at, (clause, is_question) in enumerate(zip(parts, _questions(parts), strict=True)):
        found = _mentions(clause, is_asked=is_asked, is_question=is_question)
        if found and found[0].side is None and at > 0:
            found[0] = found[0].model_copy(update={"side": _side_of_a_stop(parts[at - 1])})
        if is_right_behind and _is_denied_behind(parts[at - 1], mentions[-1], found):
            mentions[-1] = mentions[-1].model_copy(update={"score": 0, "must_ask": False})
            found, found_any = [], True
        elif is_right_behind and found and _is_same_pain(mentions[-1], found[0]):
            mentions[-1] = merged(mentions[-1], found.pop(0))
            found_any = True
        elif is_right_behind and found and mentions[-1].score is None:
            found_any = first_score(clause, mentions)
        elif is_right_behind and not found:
            found_any = goes_on(clause, mentions, is_asked=is_asked)
        else:
            found_any = bool(found)
        if any(token.mark not in CLAUSE_ENDS for token in clause.tokens):
            is_right_behind = found_any or bool(found)
        mentions += found
    if is_asked and len(mentions) == 1 and mentions[0].score is None:
        last_score(parts, mentions)
    rest = [token for clause in parts for token in clause.rest()]
    if any(mention.score != 0 or mention.sites for mention in mentions):
        mentions = [m for m in mentions if m.score != 0 or m.sites]
    stopped = _stopped_by_pain(tokens)
    return tuple(_with_stop(m, is_stop=stopped) for m in mentions), rest


def _side_of_a_stop(before: Clause) -> Side | None:
    """Return the arm of "right skipped," right before a pain: it is why that arm stopped."""
    sides = [SIDE_MARKS[t.mark] for t in before.tokens if t.mark in SIDE_MARKS]
    is_stop = before.has(Mark.SKIPPED, Mark.STOPPED) and before.tokens[-1].mark is Mark.COMMA
    return sides[-1] if sides and is_stop else None


def _questions(parts: Sequence[Clause]) -> list[bool]:
    """Tell of each clause whether the sentence that it belongs to ends in a question mark."""
    told: list[bool] = []
    is_question = False
    for clause in reversed(parts):
        last = clause.tokens[-1].mark
        if last in {Mark.QUESTION, Mark.LINE, Mark.STOP_SIGN}:
            is_question = last is Mark.QUESTION
        told.append(is_question)
    return told[::-1]


def _mentions(clause: Clause, *, is_asked: bool, is_question: bool) -> list[PainMention]:
    has_words = clause.has(Mark.PAIN, Mark.NO_PAIN, Mark.SHARP)
    anchors = [i for i in clause.find(Mark.SITE) if has_words or not _is_fine(clause.tokens, i)]
    has_score = any(is_score(token) for token in clause.tokens)
    if is_question and not (has_words or is_asked or has_score or clause.has(Mark.SORE)):
        anchors = []  # "should the elbows bend?" tells of no pain
    if has_words or clause.has(Mark.RATING) or is_asked:
        anchors = sorted(anchors + clause.find(Mark.WEAK_SITE))
    if not anchors and (has_words or is_asked):
        anchors = [i for i in clause.find(Mark.PART) if clause.tokens[i].text == "back"]
    if not anchors and has_words:
        anchors = [
            i
            for i, token in enumerate(clause.tokens)
            if token.mark in {Mark.PAIN, Mark.NO_PAIN, Mark.SHARP}
        ][:1]
    anchors = anchors[:MOST_PLACES]
    ends = [*anchors[1:], *[len(clause.tokens)] * bool(anchors)]
    found: list[PainMention] = []
    for i, end in zip(anchors, ends, strict=True):
        told = _mention(clause, i, end, is_only=len(anchors) == 1, is_asked=is_asked)
        if found and _is_same_place(found[-1], told):
            found[-1] = merged(found[-1], told)
        else:
            found.append(told)
    return [*found, *_other_sides(clause, found)]


def _other_sides(clause: Clause, found: Sequence[PainMention]) -> list[PainMention]:
    """Return the pain of the other side, told without its place: "left elbow 2, right 4"."""
    others: list[PainMention] = []
    for i, token in enumerate(clause.tokens):
        if not found or i in clause.taken or token.mark not in SIDE_MARKS:
            continue
        at = i + 1
        while at < len(clause.tokens) and clause.tokens[at].mark in {Mark.FILLER, Mark.AND}:
            at += 1
        is_side = found[-1].side not in {None, SIDE_MARKS[token.mark]}
        if at < len(clause.tokens) and is_side and at not in clause.taken:
            if not is_score(clause.tokens[at]) or followed_by_figure(clause.tokens, at + 1):
                continue
            score, must_ask = counted(clause.tokens[at].choices[0])
            update = {"side": SIDE_MARKS[token.mark], "score": score, "must_ask": must_ask}
            others.append(found[-1].model_copy(update=update))
            clause.taken |= {i, at}
    return others


def _is_same_pain(before: PainMention, told: PainMention) -> bool:
    """Tell whether "hurts about 4" goes on about the place that was named before it."""
    is_bare = not told.sites and told.score != 0 and bool(before.sites)
    return before.score is None and (is_bare or _is_same_place(before, told))


def _is_denied_behind(clause: Clause, before: PainMention, found: Sequence[PainMention]) -> bool:
    """Tell whether "but no pain" takes back a place that was named without a word of pain."""
    is_denial = len(found) == 1 and found[0].score == 0 and not found[0].sites
    return is_denial and before.score is None and not clause.has(*WORDS_OF_PAIN)


def _is_same_place(before: PainMention, told: PainMention) -> bool:
    """Tell whether one place was named twice: "thumb side of my right hand"."""
    is_same_side = before.side is None or told.side is None or before.side is told.side
    is_one_score = before.score is None or told.score is None
    return before.sites == told.sites != () and is_same_side and is_one_score


def _is_fine(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether the words say that nothing is wrong there: "wrist fine"."""
    after = [t for t in tokens[at + 1 : at + 7] if t.mark is not Mark.FILLER]
    is_well = bool(after) and (
        after[0].mark is Mark.FINE or after[0].text in TIRED or after[0].text.startswith("better")
    )
    if not is_well:
        return False
    is_rated = any(t.mark is Mark.RATING for t in tokens[at + 1 :])
    lone = [t for t in tokens[at + 1 :] if t.mark is Mark.NUMBER]
    return not is_rated and not (len(lone) == 1 and is_score(lone[0]))


def _mention(clause: Clause, at: int, end: int, *, is_only: bool, is_asked: bool) -> PainMention:
    tokens = clause.tokens
    scores = scores_after(clause, at, end) or scores_before(clause, at, is_asked=is_asked)
    if not scores and is_only:
        scores = rating_anywhere(clause)
    _take_words(clause)
    clause.taken.add(at)
    is_denied = not scores and _is_denied(tokens)
    if is_denied:
        clause.taken.update(clause.find(Mark.NOT))
        clause.taken.update(
            i
            for i, (a, b) in enumerate(itertools.pairwise(tokens))
            if _is_zero(a) and b.mark is Mark.PAIN
        )
    score, must_ask = (0, False) if is_denied else counted(scores)
    return PainMention(
        sites=_sites(tokens, at),
        side=_side(clause, at),
        score=score,
        must_ask=must_ask,
        is_sharp=clause.has(Mark.SHARP),
    )


def _is_denied(tokens: Sequence[Token]) -> bool:
    """Tell whether "no" stands before the pain, with at most a place between."""
    if any(token.mark is Mark.NO_PAIN for token in tokens):
        return True
    marks = [t.mark for t in tokens if t.mark not in SIDE_MARKS and t.mark is not Mark.FILLER]
    pairs = list(itertools.pairwise(marks))
    sites = {Mark.SITE, Mark.WEAK_SITE}
    if any((Mark.NOT, place) in pairs for place in sites) and ISSUES & {t.text for t in tokens}:
        return True
    if any(a in sites and b is Mark.NONE for a, b in pairs):
        return True
    if any(_is_zero(a) and b.mark is Mark.PAIN for a, b in itertools.pairwise(tokens)):
        return True
    triples = list(zip(marks, marks[1:], marks[2:], strict=False))
    return (Mark.NOT, Mark.PAIN) in pairs or any(
        (Mark.NOT, place, Mark.PAIN) in triples for place in (Mark.SITE, Mark.WEAK_SITE)
    )


def _is_zero(token: Token) -> bool:
    return token.is_bare and token.value == 0


def _take_words(clause: Clause) -> None:
    clause.taken.update(
        i
        for i, token in enumerate(clause.tokens)
        if token.mark in WORDS_OF_PAIN or token.mark is Mark.PART or token.text in AGAIN
    )


def _sites(tokens: Sequence[Token], at: int) -> tuple[Site, ...]:
    """Return the places that the words may mean; "outer" and the like narrow them down."""
    parts = {
        PARTS[token.text]
        for i, token in enumerate(tokens)
        if token.mark is Mark.PART and not _comes_back(tokens, i)
    }
    if not tokens[at].sites and "back" in parts:
        return Site.UPPER_BACK, Site.ELSEWHERE
    narrowed = tuple(site for site in tokens[at].sites if site.value.split("_")[-1] in parts)
    return narrowed or tokens[at].sites


def _comes_back(tokens: Sequence[Token], at: int) -> bool:
    """Tell whether "back" says that something returns: "that elbow is back"."""
    return at > 0 and tokens[at].text == "back" and tokens[at - 1].text in RETURNS


def _side(clause: Clause, at: int) -> Side | None:
    """Return the side just before the place, or just behind it."""
    tokens = clause.tokens
    if tokens[at].text in {"left hand", "right hand"}:
        return Side(tokens[at].text.split()[0])
    before = range(at - 1, -1, -1)
    after = range(at + 1, len(tokens))
    for way in (before, after):
        for i in way:
            if i not in clause.taken and tokens[i].mark in SIDE_MARKS:
                clause.taken.add(i)
                return SIDE_MARKS[tokens[i].mark]
            if tokens[i].mark not in PASSED_OVER:
                break
    return None


def _stopped_by_pain(tokens: Sequence[Token]) -> bool:
    """Tell whether a stop and a cause share a line, or a set "had to stop"."""
    line: set[Mark] = set()
    for token in (*tokens, Token(Mark.LINE, "")):
        if token.mark is Mark.LINE:
            line = set()
        line.add(token.mark)
        if {Mark.STOPPED, Mark.BECAUSE} <= line or token.text in FORCED_STOPS:
            return True
    return False


def _with_stop(mention: PainMention, *, is_stop: bool) -> PainMention:
    return mention.model_copy(update={"stopped_a_set": is_stop and mention.score != 0})
