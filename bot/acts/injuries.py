"""Old injuries: what they hold back until the coach gives it back, as the intake told them."""

from bot.turn import Turn
from scheduler.catalogue.values import Direction
from scheduler.reasons import Decision
from scheduler.training.baseline_intake import intake_decision
from scheduler.training.baseline_tests import is_hang
from scheduler.training.baseline_values import IntakeAnswers, IntakeOutcome, ScreenTopic
from storage.records.people import Athlete


def outcome_of(turn: Turn, athlete: Athlete) -> Decision[IntakeOutcome]:
    """Decide what the intake's answers hold back now that the coach has looked."""
    profile = athlete.profile
    answers = IntakeAnswers(
        topics=frozenset(ScreenTopic(topic) for topic in profile.screen_yes),
        injuries=profile.injuries,
        is_adult=profile.is_adult,
        has_guardian_agreed=True,
        has_coach_looked=True,
        lifted=profile.lifted,
        are_hangs_lifted=profile.are_hangs_lifted,
    )
    return intake_decision(answers, library=turn.house.library, rulebook=turn.house.rulebook)


def held_directions(turn: Turn, athlete: Athlete) -> frozenset[Direction]:
    """Return the directions that keep to stage 1's row until the coach gives them back."""
    if not athlete.profile.screen_yes:
        return frozenset()
    return outcome_of(turn, athlete).value.held


def banned_hangs(turn: Turn, athlete: Athlete) -> frozenset[str]:
    """Return the hangs that stay out after a joint was out of place or operated on."""
    if not athlete.profile.screen_yes or outcome_of(turn, athlete).value.may_hang:
        return frozenset()
    library = turn.house.library.movements
    return frozenset(key for key, movement in library.items() if is_hang(movement))
