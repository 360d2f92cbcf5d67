"""How our pictures look: one paper, one ink, sizes in pixels of a width that phones show whole.

A picture brings its own opaque paper and a frame, so that it reads alike in a light chat and in a
dark one. Whatever colour says is said by a shape, a pattern or a word too.
"""

import io
from functools import cache
from pathlib import Path

import matplotlib
from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.font_manager import FontProperties
from matplotlib.patches import FancyBboxPatch, Rectangle
from matplotlib.text import Text

WIDTH_PX = 1080  # [px] ch: as wide as a phone's screen; a chat scales it down
DPI = 100  # [px/in] ch: only pixels count here
COMPRESSION = 3  # [0-9] ch: half the time of the usual 6, for a tenth more bytes
HATCH_PT = 1.8  # [pt] ch: stripes that are still seen when a chat scales the picture down
MARGIN_PX = 44  # [px] ch
BODY_PX = 28  # [px] ch: the smallest print is 24, a third of a phone's own letters when scaled
SMALL_PX = 24  # [px] ch
TITLE_PX = 46  # [px] ch

PAPER = "#F3EEE3"
INK = "#1C2A31"
SOFT = "#56626A"  # second print
FAINT = "#D3CBBA"  # lines that carry nothing
DEEP = "#0B5566"  # what was done, and the left of two
RUST = "#A2390F"  # what was asked, and what needs a look
WASH = "#BCD3D1"  # a range behind a line
PALE = "#E3DCCB"  # a box behind print

ELLIPSIS = "…"


def points(px: float) -> float:
    """Return a size in pixels as the drawing library counts it [pt]."""
    return px * 72 / DPI


@cache
def font(*, is_bold: bool = False) -> FontProperties:
    """Return the letters that come with the drawing library, whatever the machine has."""
    folder = Path(matplotlib.get_data_path()) / "fonts" / "ttf"
    return FontProperties(
        fname=str(folder / ("DejaVuSans-Bold.ttf" if is_bold else "DejaVuSans.ttf"))
    )


def sheet(height_px: int) -> tuple[Figure, Axes]:
    """Return a figure and axes over all of it, in pixels from the upper left corner."""
    figure = Figure(figsize=(WIDTH_PX / DPI, height_px / DPI), dpi=DPI, facecolor=PAPER)
    FigureCanvasAgg(figure)
    axes = figure.add_axes((0, 0, 1, 1), facecolor="none")
    axes.set_xlim(0, WIDTH_PX)
    axes.set_ylim(height_px, 0)
    axes.set_axis_off()
    frame = Rectangle(
        (2, 2), WIDTH_PX - 4, height_px - 4, fill=False, edgecolor=INK, linewidth=points(4)
    )
    axes.add_patch(frame)
    return figure, axes


def write(
    axes: Axes,
    x: float,
    y: float,
    text: str,
    *,
    px: float = BODY_PX,
    colour: str = INK,
    is_bold: bool = False,
    align: str = "left",
    within_px: float | None = None,
) -> Text:
    """Write a line with its middle at ``y``; what is wider than ``within_px`` is cut and says so.

    Signs of a formula mean nothing here: people's names are no formulas.
    """
    drawn = axes.text(
        x,
        y,
        text,
        fontproperties=font(is_bold=is_bold),
        fontsize=points(px),
        color=colour,
        ha=align,
        va="center_baseline",
        parse_math=False,
    )
    if within_px is not None:
        _cut(drawn, within_px)
    return drawn


def width_px(text: Text) -> float:
    """Measure what is drawn [px]."""
    return float(text.get_window_extent().width)


def _cut(drawn: Text, within_px: float) -> None:
    whole = drawn.get_text()
    least, most = 0, len(whole)
    if width_px(drawn) <= within_px:
        return
    while least < most:
        middle = (least + most + 1) // 2
        drawn.set_text(whole[:middle].rstrip() + ELLIPSIS)
        if width_px(drawn) <= within_px:
            least = middle
        else:
            most = middle - 1
    drawn.set_text(whole[:least].rstrip() + ELLIPSIS)


def head(axes: Axes, title: str, subtitle: str = "") -> None:
    """Write the title, and what belongs to it beneath."""
    within = WIDTH_PX - 2 * MARGIN_PX
    write(axes, MARGIN_PX, 62, title, px=TITLE_PX, is_bold=True, within_px=within)
    if subtitle:
        write(axes, MARGIN_PX, 116, subtitle, colour=SOFT, within_px=within)


def box(
    axes: Axes,
    x: float,
    y: float,
    width: float,
    height: float,
    *,
    fill: str | None = None,
    edge: str | None = None,
    hatch: str | None = None,
    line_px: float = 3,
    line_style: str = "-",
) -> None:
    """Draw a box with its upper left corner at a place."""
    if width <= 0 or height <= 0:
        return
    axes.add_patch(
        Rectangle(
            (x, y),
            width,
            height,
            facecolor=fill or "none",
            edgecolor=edge or "none",
            hatch=hatch,
            linewidth=points(line_px),
            linestyle=line_style,
        )
    )


def plate(axes: Axes, x: float, y: float, width: float, height: float, *, fill: str = PALE) -> None:
    """Draw a plate with round corners behind print."""
    rounded = f"round,pad=0,rounding_size={min(16, height / 2)}"
    axes.add_patch(
        FancyBboxPatch((x, y), width, height, boxstyle=rounded, facecolor=fill, edgecolor="none")
    )


def png(figure: Figure) -> bytes:
    """Return the picture as the bytes of a PNG."""
    buffer = io.BytesIO()
    squeezed = {"compress_level": COMPRESSION}
    figure.savefig(buffer, format="png", dpi=DPI, facecolor=PAPER, pil_kwargs=squeezed)
    return buffer.getvalue()
