"""Fit the weights: logistic regression over the reader's own features, with a known library."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from bot.reading.red_flag_learnt import Group, Weights
from bot.reading.red_flags import features_of
from demo_scenario.learning.lines import Line, digest_of

if TYPE_CHECKING:
    from scipy.sparse import csr_matrix

LEAST_LINES = 3  # [lines] ch: what stands in fewer is learnt by heart, not learnt
STRENGTH = 10.0  # ch: by cross-validation over authors (``holdwell learn --check``)
MOST_STEPS = 3000  # [iterations] ch: it ends far earlier


@dataclass(frozen=True)
class Fitted:
    """A fitted model, and how its library would score it."""

    vocabulary: dict[str, int]
    model: Any
    made_from: str

    def likelihoods(self, texts: Sequence[str]) -> list[dict[Group, float]]:
        """Return what the library itself says of these messages."""
        matrix = _matrix([features_of(text) for text in texts], self.vocabulary)
        groups = [Group(one) for one in self.model.classes_]
        return [
            dict(zip(groups, row, strict=True)) for row in self.model.predict_proba(matrix).tolist()
        ]

    def weights(self) -> Weights:
        """Return the weights for the reader, as its table keeps them."""
        kept = {
            name: tuple(round(float(one[at]), 2) for one in self.model.coef_)
            for name, at in self.vocabulary.items()
        }
        starts = tuple(round(float(one), 4) for one in self.model.intercept_)
        groups = tuple(Group(one) for one in self.model.classes_)
        return Weights(groups, starts, kept, self.made_from)


def fit(lines: Sequence[Line]) -> Fitted:
    """Fit to these lines; the same lines give the same weights."""
    from sklearn.linear_model import LogisticRegression  # noqa: PLC0415  only to learn

    found = [features_of(line.text) for line in lines]
    counts = Counter(name for one in found for name in one)
    names = sorted(name for name, count in counts.items() if count >= LEAST_LINES)
    vocabulary = {name: at for at, name in enumerate(names)}
    model = LogisticRegression(C=STRENGTH, max_iter=MOST_STEPS, class_weight="balanced")
    model.fit(_matrix(found, vocabulary), [line.group.value for line in lines])
    return Fitted(vocabulary, model, digest_of(lines))


def _matrix(found: Sequence[frozenset[str]], vocabulary: dict[str, int]) -> "csr_matrix":
    import numpy  # noqa: PLC0415  only to learn
    from scipy.sparse import csr_matrix  # noqa: PLC0415  only to learn

    rows = [sorted(vocabulary[name] for name in one if name in vocabulary) for one in found]
    ends = numpy.cumsum([0, *(len(row) for row in rows)])
    columns = numpy.array([at for row in rows for at in row], dtype=int)
    values = numpy.concatenate([numpy.full(len(row), 1 / max(len(row), 1) ** 0.5) for row in rows])
    return csr_matrix((values, columns, ends), shape=(len(rows), len(vocabulary)))
