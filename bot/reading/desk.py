"""The session that figures are read for, and what fitting them to it may end in."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.reading.fit import Fit, Outcome, fit
from bot.reading.known import ItemResult, KnownItem, KnownSession
from bot.reading.phrases import said_about
from bot.reading.tokens import Token
from bot.reading.values import Asked, QuestionCode, Recorded

MOST_OPTIONS = 4  # [buttons] CH


@dataclass(frozen=True)
class Desk:
    """The session in question, the item asked about, and whether bare loads are pounds."""

    session: KnownSession
    asked_ref: str | None
    pound: bool

    @property
    def open_items(self) -> list[KnownItem]:
        """The items without an answer; all of them when every one has one."""
        items = [item for item in self.session.items if not item.is_reported]
        return items or list(self.session.items)

    @property
    def asked(self) -> KnownItem | None:
        """The item asked about, or the only one that there is."""
        if self.asked_ref is None and len(self.session.items) == 1:
            return self.session.items[0]
        return next((i for i in self.session.items if i.ref == self.asked_ref), None)

    def fit(self, item: KnownItem, tokens: Sequence[Token]) -> Outcome:
        """Fit tokens to an item."""
        return fit(said_about(item, tokens, pound=self.pound))

    def recorded(self, fits: Sequence[Fit]) -> Recorded:
        """Return the fits as results, in the order of the session."""
        order = {item.ref: n for n, item in enumerate(self.session.items)}
        ordered = sorted(fits, key=lambda f: order[f.result.ref])
        return Recorded(
            session_ref=self.session.ref,
            day=self.session.day,
            items=tuple(f.result for f in ordered),
            assumptions=tuple(a for f in ordered for a in f.assumptions),
        )

    def asks(self, question: QuestionCode, options: Sequence[Sequence[Fit]]) -> Asked | None:
        """Return a question with distinct options, or None when there is none to offer."""
        distinct: dict[tuple[ItemResult, ...], Recorded] = {}
        for fits in options:
            recorded = self.recorded(fits)
            distinct.setdefault(recorded.items, recorded)
        kept = tuple(distinct.values())[:MOST_OPTIONS]
        return Asked(question=question, options=kept) if kept else None
