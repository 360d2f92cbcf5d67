"""The pictures that the demo's people take: drawn by us, since nobody here exists."""

import io
from functools import cache

from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.patches import Circle

SIDES_IN = (3.2, 2.4)  # [inch] ch: small; nobody's picture is the point of the demo
FLOOR_Y = 0.12  # [share of the height] ch


@cache
def photo_of(name: str, caption: str) -> bytes:
    """Draw a stick figure in a hold, with what it is underneath; a PNG."""
    figure = Figure(figsize=SIDES_IN, dpi=80, facecolor="#e9e4d8")
    FigureCanvasAgg(figure)
    axes = figure.add_axes((0, 0, 1, 1))
    axes.set_xlim(0, 4)
    axes.set_ylim(0, 3)
    axes.axis("off")
    axes.plot([0, 4], [FLOOR_Y * 3, FLOOR_Y * 3], color="#6b6455", linewidth=2)
    axes.plot([0.7, 1.1, 2.9], [0.36, 1.35, 0.55], color="#333", linewidth=5)
    axes.plot([1.1, 1.2], [1.35, 0.4], color="#333", linewidth=5)
    axes.add_patch(Circle((0.75, 1.6), 0.22, color="#333"))
    axes.text(2, 2.6, f"{name}: {caption.lstrip('/')}"[:44], ha="center", fontsize=8, color="#333")
    kept = io.BytesIO()
    figure.savefig(kept, format="png")
    return kept.getvalue()
