"""Formatted text as the platform reads it: HTML in, plain text and entities out, in UTF-16 units.

Descriptions of what is wrong follow the platform's form, with the byte offset where it stumbled.
"""

import html
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from demo_scenario.loopback.refusals import RefusedError, bad_request

Entity = dict[str, Any]

_TYPE_OF_TAG: Mapping[str, str] = {  # botapi: formatting options, HTML style
    "b": "bold",
    "strong": "bold",
    "i": "italic",
    "em": "italic",
    "u": "underline",
    "ins": "underline",
    "s": "strikethrough",
    "strike": "strikethrough",
    "del": "strikethrough",
    "span": "spoiler",
    "tg-spoiler": "spoiler",
    "tg-emoji": "custom_emoji",
    "a": "text_link",
    "code": "code",
    "pre": "pre",
    "blockquote": "blockquote",
}
_CHARACTER_OF_NAME = {"lt": "<", "gt": ">", "amp": "&", "quot": '"'}  # botapi: HTML style, note 3
_ATTRIBUTE = re.compile(r"""\s+([A-Za-z0-9-]+)(?:\s*=\s*("[^"]*"|'[^']*'|[^\s"'<>]+))?""")
_REFERENCE = re.compile(r"&(?:#x([0-9a-fA-F]{1,6})|#([0-9]{1,7})|([a-z]+));")
_COMMAND = re.compile(r"(?<![\w/@])/[A-Za-z0-9_]{1,64}(?:@\w{3,32})?(?![\w/])")
_LINK_SCHEMES = ("http://", "https://", "tg://", "mailto:", "tel:")
_UNICODE_MAX = 0x10FFFF


@dataclass(frozen=True, slots=True)
class FormattedText:
    """Plain text, its entities, and the HTML that draws it."""

    text: str
    entities: tuple[Entity, ...] = ()
    html: str = ""


def utf16_units(text: str) -> int:
    """Count as the platform counts: a character outside the basic plane is two."""
    return len(text) if text.isascii() else len(text.encode("utf-16-le", "surrogatepass")) // 2


def plain_text(text: str) -> FormattedText:
    """Take text as it is, with no formatting."""
    stripped = text.strip()
    return FormattedText(text=stripped, html=html.escape(stripped, quote=False))


def with_entities(text: str, entities: Sequence[Any]) -> FormattedText:
    """Take text with entities named beside it; the HTML shows it without them."""
    if not all(isinstance(each, dict) and {"offset", "length"} <= each.keys() for each in entities):
        raise bad_request("can't parse MessageEntity")
    return _trimmed(text, entities, html.escape(text, quote=False))


def with_commands(text: str) -> FormattedText:
    """Take a person's text, and mark the commands in it as their app does."""
    entities = tuple(
        {
            "type": "bot_command",
            "offset": utf16_units(text[: found.start()]),
            "length": utf16_units(found.group()),
        }
        for found in _COMMAND.finditer(text)
    )
    return FormattedText(text=text, entities=entities, html=html.escape(text, quote=False))


def parse_html(source: str) -> FormattedText:
    """Read HTML as the platform's HTML style does.

    Raises:
        RefusedError: 400, ``can't parse entities``, for an unknown, unclosed or crossed tag.

    """
    if "<" not in source and "&" not in source:
        return plain_text(source)
    reader = _Reader(source)
    while reader.at < len(source):
        reader.step()
    if reader.open_tags:
        name = reader.open_tags[-1].name
        raise _unreadable(f'Can\'t find end tag corresponding to start tag "{name}"')
    return _trimmed("".join(reader.parts), reader.entities, source)


@dataclass(slots=True)
class _OpenTag:
    name: str
    offset: int
    part: int
    attributes: dict[str, str]


@dataclass(slots=True)
class _Reader:
    source: str
    at: int = 0
    units: int = 0
    parts: list[str] = field(default_factory=list)
    entities: list[Entity] = field(default_factory=list)
    open_tags: list[_OpenTag] = field(default_factory=list)

    def step(self) -> None:
        """Read one run of text, one character reference or one tag."""
        character = self.source[self.at]
        if character == "<":
            if self.source.startswith("</", self.at):
                self._close()
            else:
                self._open()
        elif character == "&" and (reference := _REFERENCE.match(self.source, self.at)):
            self._write(_character_of(reference))
            self.at = reference.end()
        else:
            following = re.compile(r"[<&]").search(self.source, self.at + 1)
            end = following.start() if following else len(self.source)
            self._write(self.source[self.at : end])
            self.at = end

    def _write(self, text: str) -> None:
        self.parts.append(text)
        self.units += utf16_units(text)

    def _byte_offset(self) -> int:
        return len(self.source[: self.at].encode())

    def _open(self) -> None:
        where = self._byte_offset()
        found = re.compile(r"<([^\s>]*)").match(self.source, self.at)
        name = found.group(1).lower() if found else ""
        end = self.at + 1 + len(name)
        if end >= len(self.source):
            raise _unreadable(f"Unclosed start tag at byte offset {where}")
        if name not in _TYPE_OF_TAG:
            raise _unreadable(f'Unsupported start tag "{name}" at byte offset {where}')
        attributes: dict[str, str] = {}
        while pair := _ATTRIBUTE.match(self.source, end):
            attributes[pair.group(1).lower()] = html.unescape((pair.group(2) or "").strip("\"'"))
            end = pair.end()
        closed = re.compile(r"\s*>").match(self.source, end)
        if not closed:
            raise _unreadable(f"Unclosed start tag at byte offset {where}")
        if name == "span" and attributes.get("class") != "tg-spoiler":
            raise _unreadable(f'Tag "span" must have class "tg-spoiler" at byte offset {where}')
        self.open_tags.append(_OpenTag(name, self.units, len(self.parts), attributes))
        self.at = closed.end()

    def _close(self) -> None:
        where = self._byte_offset()
        found = re.compile(r"</([^\s>]*)\s*>").match(self.source, self.at)
        if not self.open_tags:
            raise _unreadable(f"Unexpected end tag at byte offset {where}")
        if not found:
            raise _unreadable(f"Unclosed end tag at byte offset {where}")
        tag = self.open_tags.pop()
        name = found.group(1).lower()
        if name and name != tag.name:
            raise _unreadable(
                f"Unmatched end tag at byte offset {where}, "
                f'expected "</{tag.name}>", found "</{name}>"'
            )
        self.at = found.end()
        entity = self._entity_of(tag)
        if entity is not None:
            self.entities.append(entity)

    def _entity_of(self, tag: _OpenTag) -> Entity | None:
        entity: Entity = {
            "type": _TYPE_OF_TAG[tag.name],
            "offset": tag.offset,
            "length": self.units - tag.offset,
        }
        if not entity["length"]:
            return None
        if tag.name == "a":
            link = tag.attributes.get("href") or "".join(self.parts[tag.part :])
            if not (link.startswith(_LINK_SCHEMES) or "." in link):
                return None
            entity["url"] = link if link.startswith(_LINK_SCHEMES) else f"http://{link}/"
        elif tag.name == "tg-emoji":
            entity["custom_emoji_id"] = tag.attributes.get("emoji-id", "")
        elif tag.name == "blockquote" and "expandable" in tag.attributes:
            entity["type"] = "expandable_blockquote"
        return entity


def _character_of(reference: re.Match[str]) -> str:
    hexadecimal, decimal, name = reference.groups()
    if name:
        return _CHARACTER_OF_NAME.get(name, reference.group())
    code = int(hexadecimal, 16) if hexadecimal else int(decimal)
    return chr(code) if 0 < code <= _UNICODE_MAX else reference.group()


def _trimmed(text: str, entities: Sequence[Entity], source: str) -> FormattedText:
    """Drop the white space around the text, as the platform does, and move the entities along."""
    stripped = text.strip()
    lead = utf16_units(text[: len(text) - len(text.lstrip())])
    total = utf16_units(stripped)
    kept = []
    for entity in entities:
        start = max(0, entity["offset"] - lead)
        end = min(total, entity["offset"] + entity["length"] - lead)
        if end > start:
            kept.append({**entity, "offset": start, "length": end - start})
    kept.sort(key=lambda entity: (entity["offset"], -entity["length"]))
    return FormattedText(text=stripped, entities=tuple(kept), html=source.strip())


def _unreadable(fault: str) -> RefusedError:
    return bad_request(f"can't parse entities: {fault}")
