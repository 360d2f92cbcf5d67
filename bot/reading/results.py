"""From segments to the results of a session: recorded, or asked with what they may mean."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from bot.reading.desk import MOST_OPTIONS, Desk
from bot.reading.fit import DOUBTS, Fit, Outcome
from bot.reading.in_order import lines_in_order
from bot.reading.known import ItemResult, KnownItem, Reserve
from bot.reading.segments import Segment, segments
from bot.reading.tokens import Token
from bot.reading.values import Asked, Assumption, AssumptionCode, QuestionCode, Recorded
from bot.reading.words import FIGURES, Mark
from scheduler.catalogue.values import Measure

Found = Recorded | Asked | None
WHOLE_DOUBTS = DOUBTS | {Mark.STOPPED, Mark.SKIPPED, Mark.BUT, Mark.ABOUT, Mark.NONE, Mark.HALF}
"""Words beside which "all as planned" is asked about."""
MEASURES = {
    Mark.SECONDS: {Measure.HOLD_S, Measure.CARRY_S},
    Mark.METRES: {Measure.CARRY_M},
    Mark.REPS: {Measure.REPS},
}


def read_results(tokens: Sequence[Token], desk: Desk) -> Found:
    """Return the results that the tokens tell, a question, or None when they tell none."""
    before, every = segments(tokens)
    left_out = [one for one in every if not one.says_something]
    named = _merged(_spread(every, desk))
    if not named and left_out and _is_all_but(before):
        return _all_but(left_out, desk)
    if not named:
        return _unnamed(before, desk) if before.says_something else None
    if not before.says_something:
        return _named(named, desk)
    return _both(before, named, desk)


def _is_all_but(before: Segment) -> bool:
    """Tell whether "everything but" or "all done except" stands before a name."""
    marks = {token.mark for token in before.tokens}
    whole = {Mark.ALL, Mark.EVERYTHING, Mark.DONE, Mark.PLANNED}
    return bool(marks & whole) and Mark.BUT in marks and not marks & FIGURES


def _all_but(left_out: Sequence[Segment], desk: Desk) -> Asked | None:
    """Ask whether the rest was done as planned, and the named ones not at all."""
    refs = frozenset[str]().union(*(segment.refs for segment in left_out))
    rest = [fit for fit in planned(desk) if fit.result.ref not in refs]
    skipped = [
        Fit(ItemResult(ref=item.ref, is_skipped=True))
        for item in desk.open_items
        if item.ref in refs
    ]
    return desk.asks(QuestionCode.WHOLE_SESSION, [[*rest, *skipped], rest]) if rest else None


def _spread(every: Sequence[Segment], desk: Desk) -> list[Segment]:
    """Share what is said of several names, and of "the rest" with all other open items.

    "Hang and press as planned" is about both. Figures behind two names are asked about.
    """
    spread: list[Segment] = []
    waiting: list[Segment] = []
    for segment in every:
        if not segment.says_something:
            waiting += [segment] if segment.is_bare and not segment.is_rest else []
            continue
        alone = not any(one.refs - segment.refs for one in waiting)
        if segment.is_shared:
            spread += [replace(one, tokens=list(segment.tokens)) for one in waiting]
        spread.append(segment if alone or segment.is_shared else _doubtful(segment))
        waiting = []
    if spread and any(one.refs - spread[-1].refs for one in waiting):
        spread[-1] = _doubtful(spread[-1])
    told = frozenset[str]().union(*(segment.refs for segment in every))
    return [one for segment in spread for one in _unfolded(segment, told, desk)]


def _doubtful(segment: Segment) -> Segment:
    return replace(segment, is_strange=True)


def _unfolded(segment: Segment, told: frozenset[str], desk: Desk) -> list[Segment]:
    if not segment.is_rest:
        return [segment]
    is_plain = not segment.has_figures and not any(t.mark is Mark.DONE for t in segment.tokens)
    return [
        replace(
            segment,
            refs=frozenset({item.ref}),
            tokens=list(segment.tokens),
            is_strange=segment.is_strange or not is_plain,
            is_rest=False,
        )
        for item in desk.open_items
        if item.ref not in told
    ]


def _merged(named: Sequence[Segment]) -> list[Segment]:
    """Put segments about the same item together."""
    merged: dict[frozenset[str], Segment] = {}
    for segment in named:
        known = merged.setdefault(segment.refs, replace(segment, tokens=[]))
        known.tokens += [*segment.tokens, Token(Mark.COMMA, "")]
    return list(merged.values())


def _named(named: Sequence[Segment], desk: Desk, given: Sequence[Fit] = ()) -> Found:
    """Fit each named segment; one question for the message when any of them needs one."""
    outcomes = [_outcome(segment, desk) for segment in named]
    if any(not outcome.options for outcome in outcomes):
        return None
    first = next((o.question for o in outcomes if not o.is_sure), None)
    changed = {o.result.ref for outcome in outcomes for o in outcome.options}
    kept = [f for f in given if f.result.ref not in changed]
    if first is None and len({o.options[0].result.ref for o in outcomes}) < len(outcomes):
        first = QuestionCode.WHICH_ITEM
    if first is None:
        return desk.recorded([*kept, *(outcome.options[0] for outcome in outcomes)])
    width = max(len(outcome.options) for outcome in outcomes)
    rows = [[o.options[min(n, len(o.options) - 1)] for o in outcomes] for n in range(width)]
    rows = [row for row in rows if len({f.result.ref for f in row}) == len(row)]
    return desk.asks(first, [[*kept, *row] for row in rows])


def _outcome(segment: Segment, desk: Desk) -> Outcome:
    items = [item for item in desk.session.items if item.ref in segment.refs]
    outcomes = [desk.fit(item, segment.tokens) for item in items]
    if len(outcomes) == 1 and outcomes[0].is_sure and segment.is_strange:
        return Outcome(outcomes[0].options, QuestionCode.WHICH_ITEM)
    if len(outcomes) == 1:
        return _with_mended(outcomes[0], items[0], segment)
    fitting = [o.options[0] for o in outcomes if o.is_sure]
    near = fitting or [o.options[0] for o in outcomes if o.options]
    return Outcome(tuple(near[:MOST_OPTIONS]), QuestionCode.WHICH_ITEM if near else None)


def _with_mended(outcome: Outcome, item: KnownItem, segment: Segment) -> Outcome:
    """Show in the playback that a name with a slip in it was mended, or gone by its number."""
    codes = [AssumptionCode.NAME_GUESSED] if segment.is_mended else []
    codes += [AssumptionCode.NUMBER_DECIDED] if segment.number_decided else []
    taken = tuple(Assumption(code=code, item_ref=item.ref) for code in codes)
    options = tuple(Fit(f.result, (*f.assumptions, *taken)) for f in outcome.options)
    return Outcome(options, outcome.question)


def _unnamed(said: Segment, desk: Desk) -> Found:
    """Read a message without a name: for the item asked about, else ask which."""
    marks = {token.mark for token in said.tokens}
    has_figures = bool(marks & {Mark.NUMBER, Mark.COUNT, Mark.BODYWEIGHT, Mark.RATING, Mark.JUNK})
    is_whole = bool(marks & {Mark.ALL, Mark.EVERYTHING}) and Mark.PLANNED in marks
    if not has_figures and marks & {Mark.PLANNED, Mark.DONE} and (is_whole or not desk.asked):
        return _whole(marks, desk, is_said=is_whole)
    if desk.asked:
        outcome = desk.fit(desk.asked, said.tokens)
        if outcome.is_sure and _begins_with_a_stranger(said.tokens):
            return desk.asks(QuestionCode.WHICH_ITEM, [outcome.options])
        if outcome.is_sure:
            return desk.recorded(outcome.options)
        if outcome.question is None:
            return None
        return desk.asks(outcome.question, [[option] for option in outcome.options])
    return _which_item(said, desk)


def _begins_with_a_stranger(tokens: Sequence[Token]) -> bool:
    """Tell whether the figures follow a word that may name something not in this session."""
    spoken = [t.mark for t in tokens if t.mark not in {Mark.FILLER, Mark.COMMA, Mark.LINE}]
    return spoken[:2] == [Mark.WORD, Mark.NUMBER]


def _whole(marks: set[Mark], desk: Desk, *, is_said: bool) -> Found:
    """Record the whole session as planned when that was said, else ask."""
    fits = planned(desk)
    doubts = marks & WHOLE_DOUBTS
    if is_said and not doubts and (desk.asked is None or len(fits) == 1):
        return desk.recorded(fits)
    lone = [f for f in fits if desk.asked and f.result.ref == desk.asked.ref] or fits[:1]
    return desk.asks(QuestionCode.WHOLE_SESSION, [fits, lone])


def planned(desk: Desk) -> list[Fit]:
    """Return every open item as planned."""
    done = [Token(Mark.PLANNED, "as planned")]
    return [desk.fit(item, done).options[0] for item in desk.open_items]


def _which_item(said: Segment, desk: Desk) -> Found:
    outcomes = [desk.fit(item, said.tokens) for item in desk.open_items]
    sure = [o.options[0] for o in outcomes if o.is_sure]
    units = {t.unit for t in said.tokens if t.unit is not None and t.unit in MEASURES}
    if len(units) == 1:
        measures = MEASURES[units.pop()]
        alike = [o for i, o in zip(desk.open_items, outcomes, strict=True) if i.measure in measures]
        if len(alike) == 1 and alike[0].is_sure:
            only = alike[0].options[0]
            taken = Assumption(code=AssumptionCode.ONLY_ITEM_THAT_FITS, item_ref=only.result.ref)
            return desk.recorded([Fit(only.result, (*only.assumptions, taken))])
    near = [o for o in outcomes if o.question is not QuestionCode.MORE_NUMBERS]
    rows = [[option] for option in sure or (o.options[0] for o in near if o.options)]
    in_order = lines_in_order(said.tokens, desk)
    if in_order.is_sure:
        return desk.recorded(in_order.fits)
    lines = [in_order.fits] if in_order.fits else []
    return desk.asks(QuestionCode.WHICH_ITEM, [*lines, *rows])


def _both(before: Segment, named: Sequence[Segment], desk: Desk) -> Found:
    """Read "all as planned but press 8 8 6", and figures for the item asked about before a name."""
    marks = {token.mark for token in before.tokens}
    refs = frozenset[str]().union(*(segment.refs for segment in named))
    figures = marks & {Mark.NUMBER, Mark.COUNT, Mark.RATING, Mark.JUNK, Mark.BODYWEIGHT}
    if not figures and marks & {Mark.PLANNED, Mark.DONE}:
        is_whole = bool(marks & {Mark.ALL, Mark.EVERYTHING}) or Mark.BUT in marks
        if {item.ref for item in desk.open_items} <= refs:
            return _named(named, desk)  # "done. hang 45 40 38, press 8 8 7": nothing is left
        found = _named(named, desk, planned(desk))
        if not is_whole and isinstance(found, Recorded):
            return Asked(question=QuestionCode.WHOLE_SESSION, options=(found,))
        return found
    if desk.asked is None or desk.asked.ref in refs:
        return _asked_about_front(before, named, desk)
    first = Segment(frozenset({desk.asked.ref}), before.tokens)
    return _named([first, *named], desk)


def _asked_about_front(before: Segment, named: Sequence[Segment], desk: Desk) -> Found:
    """Ask which item the figures in front belong to; the named ones come with each option."""
    refs = frozenset[str]().union(*(segment.refs for segment in named))
    options: list[Recorded] = []
    for item in desk.open_items:
        if item.ref not in refs:
            found = _named([Segment(frozenset({item.ref}), before.tokens), *named], desk)
            options += [found] if isinstance(found, Recorded) else []
    if not options:
        return None
    return Asked(question=QuestionCode.WHICH_ITEM, options=tuple(options[:MOST_OPTIONS]))


def with_reserve(found: Recorded, reserves: Mapping[str, Reserve]) -> Recorded:
    """Return the results with what was left after each item."""
    items = tuple(
        item.model_copy(update={"reserve": reserves[item.ref]}) if item.ref in reserves else item
        for item in found.items
    )
    return found.model_copy(update={"items": items})
