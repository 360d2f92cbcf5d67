"""When a review of an athlete's training comes round: after a month, then every twelve weeks."""

from datetime import date, timedelta

from scheduler.calendar.values import Review

FIRST_AFTER = timedelta(days=30)  # [d] ch: a month of training is enough to look back on
THEN_EVERY = timedelta(weeks=12)  # [weeks] ch: a block of training and its lighter weeks
KEPT = timedelta(days=10)  # [d] ch: a lighter week passes; later the next one says more


def review_owed(*, started_on: date, today: date, is_lighter_week: bool) -> Review | None:
    """Return the review that is owed today.

    Args:
        started_on: when the training began.
        today: the athlete's own date.
        is_lighter_week: whether this week is a lighter one, which no review is drawn from.

    Returns:
        The latest review whose day has come, for ten days; it waits while the week is a lighter
        one. None before the first, and where its ten days are over. Numbers count from 1, so
        that a review is drafted once, whatever became of the one before.

    """
    if is_lighter_week or today < started_on + FIRST_AFTER:
        return None
    number = 1 + (today - started_on - FIRST_AFTER) // THEN_EVERY
    on = started_on + FIRST_AFTER + (number - 1) * THEN_EVERY
    if today - on >= KEPT:
        return None
    return Review(number=number, on=on)


def review_span(review: Review, *, started_on: date) -> tuple[date, date]:
    """Return the first and the last day that a review looks back on."""
    first = started_on if review.number == 1 else review.on - THEN_EVERY
    return first, review.on - timedelta(days=1)
