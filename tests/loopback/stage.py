"""One loopback server, one real library bot and one bare HTTP client, for the length of a test."""

import asyncio
import inspect
from collections.abc import Awaitable, Callable
from contextlib import AsyncExitStack
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any

import aiohttp
import telegram
from telegram.request import HTTPXRequest

from demo_scenario.loopback.bounds import FileBounds
from demo_scenario.loopback.person import Person
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.server import LoopbackServer

ANA, BRUNO = 1001, 1002  # CHOSEN: chat ids of our own invention
UNKNOWN_CHAT = 9999  # CHOSEN: nobody


@dataclass
class Clock:
    """A clock that stands still until it is moved."""

    at: datetime = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)  # CHOSEN

    def now(self) -> datetime:
        return self.at

    def advance(self, **by: float) -> None:
        self.at += timedelta(**by)


@dataclass
class Stage:
    """Everything that a test acts with."""

    clock: Clock
    platform: LoopbackPlatform
    server: LoopbackServer
    http: aiohttp.ClientSession
    bot: telegram.Bot
    ana: Person
    bruno: Person

    async def call(self, method: str, **params: Any) -> tuple[int, Any]:
        """Call a method with a JSON body, and return the status and the decoded answer."""
        url = f"{self.server.base_url}{self.platform.token}/{method}"
        async with self.http.post(url, json=params) as answer:
            return answer.status, await answer.json()

    async def result(self, method: str, **params: Any) -> Any:
        """Call a method that must succeed, and return its result."""
        status, body = await self.call(method, **params)
        assert status == 200, body
        return body["result"]


def request_without_certificates() -> HTTPXRequest:
    """Return the library's own transport; loopback has no certificates to load."""
    return HTTPXRequest(httpx_kwargs={"verify": False})


def on_stage(scene: Callable[..., Awaitable[None]]) -> Callable[..., None]:
    """Run an async test with a :class:`Stage` as its first argument."""

    def test(**given: Any) -> None:
        asyncio.run(_play(scene, given))

    signature = inspect.signature(scene)
    rest = [each for name, each in signature.parameters.items() if name != "stage"]
    test.__signature__ = signature.replace(parameters=rest)  # type: ignore[attr-defined]
    test.__name__ = scene.__name__
    test.__doc__ = scene.__doc__
    test.__dict__.update(scene.__dict__)
    return test


async def _play(scene: Callable[..., Awaitable[None]], given: dict[str, Any]) -> None:
    clock = Clock()
    # CHOSEN: a lowered upload bound, so that no test carries 50 MB.
    bounds = FileBounds(photo_bytes=4_000, upload_bytes=6_000, download_bytes=5_000)
    platform = LoopbackPlatform(now=clock.now, seed=7, file_bounds=bounds)
    async with AsyncExitStack() as stack:
        server = await stack.enter_async_context(LoopbackServer(platform))
        http = await stack.enter_async_context(aiohttp.ClientSession())
        bot = telegram.Bot(
            platform.token,
            base_url=server.base_url,
            base_file_url=server.base_file_url,
            request=request_without_certificates(),
            get_updates_request=request_without_certificates(),
        )
        await stack.enter_async_context(bot)
        ana = server.people.add(ANA, "Ana")
        bruno = server.people.add(BRUNO, "Bruno", "es")
        await scene(Stage(clock, platform, server, http, bot, ana, bruno), **given)
