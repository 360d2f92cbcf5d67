"""Every person's whole chat as one plain page: readable on a phone, by day and by night."""

from collections.abc import Iterable, Iterator, Mapping
from datetime import date
from html import escape
from pathlib import Path
from zoneinfo import ZoneInfo

from demo_scenario.loopback.files import MediaKind
from demo_scenario.loopback.screen import ShownButton, ShownMessage
from demo_scenario.play import Stage
from demo_scenario.player import Player

PNG = b"\x89PNG"
PICTURES = "pictures"
STYLE = """
:root { color-scheme: light dark; --ink: #222; --paper: #f4f1ea; --rule: #b9b2a3; --own: #e3ddcf }
@media (prefers-color-scheme: dark) {
  :root { --ink: #e6e1d6; --paper: #1d1f1e; --rule: #575b57; --own: #2b2f2d }
}
body { font: 16px/1.45 Georgia, serif; color: var(--ink); background: var(--paper);
  max-width: 38rem; margin: 0 auto; padding: 1rem }
h1 { font-size: 1.3rem } h2 { font-size: 1rem; border-bottom: 2px solid var(--rule) }
article { margin: .9rem 0; padding-left: .7rem; border-left: 3px solid var(--rule) }
article.person { margin-left: 2rem; padding: .4rem .7rem; background: var(--own); border: 0 }
header { font: 12px/1.6 monospace; opacity: .75 }
pre { font: inherit; margin: 0; white-space: pre-wrap; overflow-wrap: anywhere }
kbd { display: inline-block; font: 13px/1.4 monospace; border: 1px solid var(--rule);
  border-radius: 2px; padding: .05rem .45rem; margin: .2rem .25rem 0 0 }
img { max-width: 100%; display: block }
details { font-size: .85rem; opacity: .8 }
nav a { display: block; padding: .4rem 0; color: inherit }
"""


def write_pages(stage: Stage, folder: Path) -> list[Path]:
    """Write a page for each person and one that leads to them; return what was written."""
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    for player in stage.players:
        page = folder / f"{player.name.lower()}.html"
        pictures = _pictures_of(player, stage, folder)
        page.write_text(_page(player.name, _chat(player, pictures)), encoding="utf-8")
        written.append(page)
    links = "".join(
        f'<a href="{player.name.lower()}.html">{escape(player.name)}</a>'
        for player in stage.players
    )
    index = folder / "index.html"
    index.write_text(_page("Chats", [f"<nav>{links}</nav>"]), encoding="utf-8")
    return [index, *written]


def _pictures_of(player: Player, stage: Stage, folder: Path) -> dict[str, str]:
    """Write the pictures of a chat beside the page; return each one's place by its file."""
    found: dict[str, str] = {}
    for message in player.sees():
        if message.media is not MediaKind.PHOTO or message.file_id is None:
            continue
        content = stage.server.platform.files.content(message.file_id)
        if not content.startswith(PNG) or message.file_id in found:
            continue
        place = Path(PICTURES) / f"{player.name.lower()}-{len(found) + 1}.png"
        (folder / PICTURES).mkdir(exist_ok=True)
        (folder / place).write_bytes(content)
        found[message.file_id] = place.as_posix()
    return found


def zone_of(player: Player) -> ZoneInfo:
    """Return the zone in which a person's page tells the time."""
    zone: ZoneInfo = getattr(player, "zone", ZoneInfo("UTC"))
    return zone


def _page(title: str, parts: Iterable[str]) -> str:
    body = "\n".join(parts)
    return (
        '<!doctype html>\n<html lang="en"><meta charset="utf-8">'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f"<title>{escape(title)}</title><style>{STYLE}</style>\n"
        f"<h1>{escape(title)}</h1>\n{body}\n</html>\n"
    )


def _chat(player: Player, pictures: Mapping[str, str]) -> Iterator[str]:
    zone = zone_of(player)
    yield f"<p>Times in {escape(zone.key)}.</p>"
    day: date | None = None
    for message in player.sees():
        local = message.sent_at.astimezone(zone)
        if local.date() != day:
            day = local.date()
            yield f"<h2>{day:%A} {day.day} {day:%B %Y}</h2>"
        yield _message(message, f"{local:%H:%M}", player.name, pictures)


def _message(message: ShownMessage, at: str, name: str, pictures: Mapping[str, str]) -> str:
    who = "Holdwell" if message.is_from_bot else name
    kind = "bot" if message.is_from_bot else "person"
    edited = ", changed later" if message.edited_at else ""
    media = _media(message, pictures)
    earlier = "".join(
        f"<details><summary>before</summary><pre>{one.html}</pre>{_keys(one.buttons)}</details>"
        for one in message.history
    )
    return (
        f'<article class="{kind}"><header>{at} {escape(who)}{edited}</header>{earlier}{media}'
        f"<pre>{message.html}</pre>{_keys(message.buttons)}</article>"
    )


def _media(message: ShownMessage, pictures: Mapping[str, str]) -> str:
    place = pictures.get(message.file_id or "")
    if place is not None:
        return f'<img src="{escape(place)}" alt="a picture">'
    if message.media is None:
        return ""
    named = f": {escape(message.file_name or '')}" if message.media is MediaKind.DOCUMENT else ""
    return f"<p>[{message.media.value}{named}]</p>"


def _keys(rows: tuple[tuple[ShownButton, ...], ...]) -> str:
    if not rows:
        return ""
    lines = ("".join(f"<kbd>{escape(one.text)}</kbd>" for one in row) for row in rows)
    return "<div>" + "<br>".join(lines) + "</div>"
