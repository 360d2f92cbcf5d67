"""The platform's files: kept so that they can be sent again, fetched and opened."""

import random
import struct
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

from demo_scenario.loopback.bounds import (
    PHOTO_SIDES_RATIO_MAX,
    PHOTO_SIDES_SUM_MAX,
    FileBounds,
)
from demo_scenario.loopback.refusals import bad_request, too_large

_IMAGE_STARTS = (b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff", b"GIF8", b"RIFF", b"BM")


class MediaKind(StrEnum):
    """What a message carries besides text; the value is the platform's field of that name."""

    PHOTO = "photo"
    DOCUMENT = "document"
    VIDEO = "video"
    ANIMATION = "animation"
    VOICE = "voice"
    AUDIO = "audio"
    STICKER = "sticker"
    LOCATION = "location"
    CONTACT = "contact"


@dataclass(frozen=True, slots=True)
class Upload:
    """A file as it comes in a request."""

    file_name: str
    content: bytes
    mime_type: str = "application/octet-stream"


@dataclass(frozen=True, slots=True)
class StoredFile:
    """A file that the platform has; ``size_bytes`` may be declared without the content."""

    file_id: str
    unique_id: str
    path: str
    kind: MediaKind
    file_name: str
    mime_type: str
    content: bytes
    size_bytes: int
    width: int
    height: int
    duration_s: int

    def as_json(self) -> Any:
        """Return the value of the message's field named after the kind."""
        shared = {
            "file_id": self.file_id,
            "file_unique_id": self.unique_id,
            "file_size": self.size_bytes,
        }
        sides = {"width": self.width, "height": self.height}
        named = {"file_name": self.file_name, "mime_type": self.mime_type}
        if self.kind is MediaKind.PHOTO:
            return [shared | sides]
        if self.kind is MediaKind.STICKER:
            still = {"type": "regular", "is_animated": False, "is_video": False, "emoji": "💪"}
            return shared | sides | still
        if self.kind in {MediaKind.VIDEO, MediaKind.ANIMATION}:
            return shared | sides | named | {"duration": self.duration_s}
        if self.kind is MediaKind.VOICE:
            return shared | {"mime_type": self.mime_type, "duration": self.duration_s}
        if self.kind is MediaKind.AUDIO:
            return shared | named | {"duration": self.duration_s}
        return shared | named


@dataclass(slots=True)
class FileStore:
    """Every file by its id; ids are opaque and drawn from the platform's seeded chance."""

    chance: random.Random
    bounds: FileBounds = field(default_factory=FileBounds)
    _by_id: dict[str, StoredFile] = field(default_factory=dict)
    _by_path: dict[str, StoredFile] = field(default_factory=dict)

    def keep(
        self,
        kind: MediaKind,
        upload: Upload,
        *,
        declared_bytes: int | None = None,
        width: int = 1280,
        height: int = 720,
        duration_s: int = 0,
    ) -> StoredFile:
        """Store an upload as ``kind``; ``declared_bytes`` stands in for content not carried."""
        file_id = f"{self.chance.getrandbits(320):080x}"
        stored = StoredFile(
            file_id=file_id,
            unique_id=file_id[:16],
            path=f"{kind.value}s/file_{len(self._by_id)}{_ending(upload.file_name)}",
            kind=kind,
            file_name=upload.file_name,
            mime_type=upload.mime_type,
            content=upload.content,
            size_bytes=len(upload.content) if declared_bytes is None else declared_bytes,
            width=width,
            height=height,
            duration_s=duration_s,
        )
        self._by_id[file_id] = self._by_path[stored.path] = stored
        return stored

    def keep_from_bot(self, kind: MediaKind, upload: Upload) -> StoredFile:
        """Store what a bot uploads, refusing what is empty, too large, or no picture."""
        size_bytes = len(upload.content)
        if not size_bytes:
            raise bad_request("file must be non-empty")
        if kind is not MediaKind.PHOTO:
            if size_bytes > self.bounds.upload_bytes:
                raise too_large()
            return self.keep(kind, upload)
        if size_bytes > self.bounds.photo_bytes:
            raise bad_request(
                f"file of size {size_bytes} bytes is too big for a photo; "
                f"the maximum size is {self.bounds.photo_bytes} bytes"
            )
        width, height = _sides_of_picture(upload.content)
        return self.keep(kind, upload, width=width, height=height)

    def of_kind(self, file_id: str, kind: MediaKind) -> StoredFile:
        """Return the file that a bot names by id, for sending again."""
        stored = self._by_id.get(file_id)
        if stored is None:
            raise bad_request("wrong file identifier/HTTP URL specified")
        if stored.kind is not kind:
            raise bad_request(f"can't use file of type {stored.kind} as {kind}")
        return stored

    def downloadable(self, file_id: str) -> StoredFile:
        """Return the file that a bot may fetch."""
        stored = self._by_id.get(file_id)
        if stored is None:
            raise bad_request("wrong file_id or the file is temporarily unavailable")
        if stored.size_bytes > self.bounds.download_bytes:
            raise bad_request("file is too big")
        return stored

    def at_path(self, path: str) -> StoredFile | None:
        """Return the file at a download path, if there is one and it is small enough."""
        stored = self._by_path.get(path)
        if stored is None or stored.size_bytes > self.bounds.download_bytes:
            return None
        return stored

    def content(self, file_id: str) -> bytes:
        """Return a stored file's bytes, for the demo and tests to open."""
        return self._by_id[file_id].content

    def details(self, file_id: str) -> StoredFile:
        """Return everything known of a stored file."""
        return self._by_id[file_id]


def _ending(file_name: str) -> str:
    stem, dot, ending = file_name.rpartition(".")
    return f".{ending}" if dot and stem and ending.isalnum() else ""


def _sides_of_picture(content: bytes) -> tuple[int, int]:
    """Read a PNG's sides; another picture is taken at its word."""
    if not content.startswith(_IMAGE_STARTS):
        raise bad_request("IMAGE_PROCESS_FAILED")
    if not content.startswith(_IMAGE_STARTS[0]) or len(content) < 24:
        return 1280, 720
    width, height = struct.unpack(">II", content[16:24])
    longer, shorter = max(width, height), max(1, min(width, height))
    if width + height > PHOTO_SIDES_SUM_MAX or longer > PHOTO_SIDES_RATIO_MAX * shorter:
        raise bad_request("PHOTO_INVALID_DIMENSIONS")
    return width, height
