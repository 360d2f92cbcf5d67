"""What the record calls a decision about the next dose, in one place for who writes and reads."""

from bot.wording.changes import DOWN, KEPT, UP

DOSE_DECISIONS = tuple(f"dose.{way}" for way in (UP, KEPT, DOWN))
"""Codes of the audit; written when a session closes."""
