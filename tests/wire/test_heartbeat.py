"""A sign of life each minute, for a monitor on the machine and for one elsewhere.

The monitor is a server on this machine's own loopback address; nothing else is asked for.
"""

import asyncio
import logging
import stat

import pytest
from aiohttp import web

from bot.config import SetUpError, read_settings
from bot.heartbeat import Heartbeat
from tests.wire.housed import housed, surroundings

HANGS_S = 120.0  # [s] CHOSEN: beyond it something hangs, and says so
KEY = "a-key-of-a-monitor"  # CHOSEN: nobody's


class Monitor:
    """Counts what asks for it, and answers with a status."""

    def __init__(self, status: int = 200) -> None:
        self.asked: list[str] = []
        self._status = status
        self._runner: web.AppRunner | None = None
        self.url = ""

    async def __aenter__(self) -> "Monitor":
        app = web.Application()
        app.router.add_get("/{rest:.*}", self._answer)
        self._runner = web.AppRunner(app, access_log=None)
        await self._runner.setup()
        site = web.TCPSite(self._runner, "127.0.0.1", 0)
        await site.start()
        self.url = f"http://127.0.0.1:{self._runner.addresses[0][1]}/ping/{KEY}"
        return self

    async def __aexit__(self, *_exception: object) -> None:
        assert self._runner is not None
        await self._runner.cleanup()

    async def _answer(self, request: web.Request) -> web.Response:
        self.asked.append(request.path)
        return web.Response(status=self._status)


async def until(holds, *, within_s: float = HANGS_S) -> None:
    for _ in range(int(within_s / 0.05)):
        if holds():
            return
        await asyncio.sleep(0.05)
    raise TimeoutError


def test_each_round_touches_the_file_and_asks_for_the_address(tmp_path):
    async def story():
        file = tmp_path / "alive"
        async with (
            Monitor() as monitor,
            housed(tmp_path, heartbeat_file=file, heartbeat_url=monitor.url),
        ):
            await until(lambda: file.exists() and len(monitor.asked) >= 1)
            first = file.stat().st_mtime_ns
            # Half a minute a second: the next round comes within two seconds.
            await until(lambda: file.stat().st_mtime_ns > first and len(monitor.asked) >= 2)
            assert set(monitor.asked) == {f"/ping/{KEY}"}

    asyncio.run(story())


def test_a_round_that_fails_gives_no_sign_of_life(tmp_path, caplog):
    async def failed(rounds):
        await until(lambda: len(caplog.records) >= rounds)

    async def story():
        file = tmp_path / "alive"
        async with housed(tmp_path, heartbeat_file=file) as stage:
            await until(file.exists)
            # The house cannot read its own clock's last mark any more: no round ends.
            with stage.database.transaction() as tx:
                tx.connection().exec_driver_sql("ALTER TABLE mark RENAME TO lost")
            await failed(rounds=1)  # so a round that had begun before is over
            last = file.stat().st_mtime_ns
            await failed(rounds=3)
            assert file.stat().st_mtime_ns == last

    with caplog.at_level(logging.WARNING):
        asyncio.run(story())


@pytest.mark.parametrize("status", [404, 500])
def test_a_monitor_that_refuses_is_logged_without_its_key(status, caplog):
    async def story():
        async with Monitor(status) as monitor:
            heart = Heartbeat(url=monitor.url)
            heart.beat()
            await until(lambda: bool(caplog.records))
            await heart.stop()

    with caplog.at_level(logging.WARNING):
        asyncio.run(story())
    assert str(status) in caplog.text
    assert KEY not in caplog.text


def test_a_monitor_that_is_not_there_and_a_file_that_cannot_be_touched_stop_nothing(
    tmp_path, caplog
):
    async def story():
        async with Monitor() as monitor:
            url = monitor.url
        heart = Heartbeat(file=tmp_path / "nowhere" / "alive", url=url)
        heart.beat()
        await until(lambda: len(caplog.records) >= 2)
        heart.beat()
        await heart.stop()

    with caplog.at_level(logging.WARNING):
        asyncio.run(story())
    assert KEY not in caplog.text


def test_with_nothing_set_nothing_is_done():
    async def story():
        heart = Heartbeat()
        heart.beat()
        await heart.stop()
        assert len(asyncio.all_tasks()) == 1

    asyncio.run(story())


def settings_of(monkeypatch, folder, **settings):
    monkeypatch.chdir(folder)
    for name, value in surroundings(**settings).items():
        monkeypatch.setenv(name, value)
    return read_settings()


def test_the_settings_name_the_file_and_the_address_and_never_show_the_key(tmp_path, monkeypatch):
    address = f"https://monitor.example/{KEY}"
    settings = settings_of(monkeypatch, tmp_path, heartbeat_file="alive", heartbeat_url=address)
    assert settings.heartbeat_file is not None
    assert settings.heartbeat_file.name == "alive"
    assert settings.heartbeat_address == address
    assert KEY not in repr(settings)


@pytest.mark.parametrize("address", ["monitor.example/x", "ftp://monitor.example", "file:///etc/x"])
def test_an_address_that_cannot_be_asked_for_is_refused_in_one_line(tmp_path, monkeypatch, address):
    with pytest.raises(SetUpError, match="HOLDWELL_HEARTBEAT_URL"):
        settings_of(monkeypatch, tmp_path, heartbeat_url=address)
    assert stat.S_ISDIR(tmp_path.stat().st_mode)
