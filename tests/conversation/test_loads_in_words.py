"""What stands behind a weight: in each hand, on the body, or on the one bar."""

import pytest

from bot.wording.doses import load
from bot.wording.tongue import tongue_of
from scheduler.catalogue.library import default_library
from scheduler.training.values import Quality, Rung
from tests.training.athletes import dose

LIBRARY = default_library().movements


@pytest.mark.parametrize(
    ("key", "said"),
    [
        ("farmer_carry", "20 kg a hand"),
        ("one_arm_row", "20 kg a hand"),
        ("barbell_shrug", "20 kg"),
        ("strict_pull_up", "plus 20 kg on the body"),
    ],
)
def test_a_weight_says_where_it_is(key: str, said: str):
    movement = LIBRARY[key]
    asked = dose(movement, Quality.STRENGTH_ENDURANCE, target=10).model_copy(
        update={"rung": Rung(load_kg=20)}
    )
    assert load(tongue_of("en"), asked, movement) == said
