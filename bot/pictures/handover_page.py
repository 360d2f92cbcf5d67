"""Draw the handover page as a PDF, on one page where it fits, with letters of many languages."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from pathlib import Path
from textwrap import wrap

import matplotlib
from fpdf import FPDF

from bot.pictures.handover_values import HandoverPage, Section, Series

FONT = "DejaVu"
MARGIN_MM = 16.0  # [mm] ch
LINE_MM = 4.6  # [mm] ch: the height of a line of small print
CHART_MM = (178.0, 44.0)  # [mm] ch: width and height of the chart
CHART_TOP_MM = 222.0  # [mm] ch: above it the sections, below it the foot
SCORES = (0, 5, 10)  # [of 10] ch: the lines across the chart
STYLES = (
    ((38, 70, 83), ""),
    ((200, 80, 40), "3 1.5"),
    ((90, 90, 90), "1 1"),
    ((120, 60, 140), "5 1"),
)
LEGEND_MM = (56.0, 34.5)  # [mm] ch: where the first label stands, and how far apart they are
LINES_MOST = 40  # [lines] ch: what fits above the chart
LINES_MOST_ALONE = 50  # [lines] ch: what fits on a page without a chart
LETTERS_MOST = 108  # [letters] ch: what fits on a line


@dataclass(frozen=True)
class _Line:
    text: str
    is_heading: bool = False


def draw(page: HandoverPage) -> bytes:
    """Return the page as the bytes of a PDF; what does not fit goes on behind, and none is cut.

    A chart holds the scores of a few places; those of more stand on the pages behind.
    """
    pdf = FPDF(format="A4")
    pdf.set_auto_page_break(auto=False)
    pdf.set_margin(MARGIN_MM)
    pdf.set_title(page.title)
    fonts = Path(matplotlib.get_data_path()) / "fonts" / "ttf"
    pdf.add_font(FONT, "", str(fonts / "DejaVuSans.ttf"))
    pdf.add_font(FONT, "B", str(fonts / "DejaVuSans-Bold.ttf"))
    charts = _charts(page.series)
    pages = _paged(page.sections, charts=len(charts))
    for number, lines in enumerate(pages):
        _one(pdf, page, lines, charts[number : number + 1], place=(number + 1, len(pages)))
    return bytes(pdf.output())


def _one(
    pdf: FPDF,
    page: HandoverPage,
    lines: Sequence[_Line],
    charts: Sequence[Sequence[Series]],
    *,
    place: tuple[int, int],
) -> None:
    pdf.add_page()
    _write(pdf, page.title, size=15, style="B", height=8)
    _write(pdf, page.subtitle, size=9, height=5)
    for line in lines:
        if line.is_heading:
            pdf.ln(2)
            _write(pdf, line.text, size=10, style="B", height=5.5)
            continue
        pdf.set_font(FONT, "", 8.5)
        pdf.cell(0, LINE_MM, line.text, new_x="LMARGIN", new_y="NEXT")
    for chart in charts:
        _chart(pdf, page, chart)
    pdf.set_y(-18)
    _write(pdf, page.foot, size=8, height=4)
    number, count = place
    if count > 1:
        pdf.set_y(-10)
        _write(pdf, f"{number} / {count}", size=8, height=4)


def _charts(series: Sequence[Series]) -> list[Sequence[Series]]:
    """Group the places that have scores, as many in a chart as can be told apart."""
    told = [one for one in series if one.points]
    return [told[start : start + len(STYLES)] for start in range(0, len(told), len(STYLES))]


def _paged(sections: Sequence[Section], *, charts: int) -> list[list[_Line]]:
    """Deal the lines out to pages; a heading never stands last, and is said again behind."""
    pages: list[list[_Line]] = [[]]

    def room() -> int:
        most = LINES_MOST if len(pages) <= max(charts, 1) else LINES_MOST_ALONE
        return most - len(pages[-1])

    for section in sections:
        heading = _Line(section.heading, is_heading=True)
        if room() < 2:
            pages.append([])
        pages[-1].append(heading)
        for part in (part for line in section.lines for part in wrap(line, LETTERS_MOST)):
            if room() < 1:
                pages.append([heading])
            pages[-1].append(_Line(part))
    pages.extend([] for _ in range(charts - len(pages)))
    return pages


def _write(pdf: FPDF, text: str, *, size: float, height: float, style: str = "") -> None:
    pdf.set_font(FONT, style, size)
    pdf.multi_cell(0, height, text, align="L", new_x="LMARGIN", new_y="NEXT")


def _chart(pdf: FPDF, page: HandoverPage, series: Sequence[Series]) -> None:
    """Draw the scores over time: a line a place, told apart by dashes, not by colour alone."""
    width, height = CHART_MM
    left, top = MARGIN_MM, CHART_TOP_MM
    pdf.set_xy(left, top - 8)
    _write(pdf, page.chart_heading, size=10, style="B", height=5)
    pdf.set_draw_color(200)
    pdf.set_line_width(0.1)
    pdf.set_font(FONT, "", 7)
    for score in SCORES:
        y = top + height * (1 - score / 10)
        pdf.line(left + 6, y, left + width, y)
        pdf.text(left, y + 1, str(score))
    pdf.text(left + 6, top + height + 4, page.chart_day_labels[0])
    last = page.chart_day_labels[1]
    pdf.text(left + width - pdf.get_string_width(last), top + height + 4, last)
    for number, one in enumerate(series):
        _line(pdf, one, number, page.chart_days)
    pdf.set_dash_pattern()


def _line(pdf: FPDF, series: Series, number: int, days: tuple[date, date]) -> None:
    width, height = CHART_MM
    colour, dashes = STYLES[number]
    pdf.set_draw_color(*colour)
    pdf.set_line_width(0.5)
    span = max((days[1] - days[0]).days, 1)
    points = [
        (
            MARGIN_MM + 6 + (width - 6) * (day - days[0]).days / span,
            CHART_TOP_MM + height * (1 - score / 10),
        )
        for day, score in series.points
    ]
    dash, gap = (float(part) for part in dashes.split()) if dashes else (0.0, 0.0)
    pdf.set_dash_pattern(dash=dash, gap=gap)
    for (x0, y0), (x1, y1) in pairwise(points):
        pdf.line(x0, y0, x1, y1)
    pdf.set_dash_pattern()
    for x, y in points:
        pdf.circle(x, y, 0.7)
    x, y = LEGEND_MM[0] + number * LEGEND_MM[1], CHART_TOP_MM - 5.6
    pdf.set_dash_pattern(dash=dash, gap=gap)
    pdf.line(x, y, x + 6, y)
    pdf.set_dash_pattern()
    pdf.set_font(FONT, "", 6)
    pdf.text(x + 7, y + 0.8, series.name)
