"""The Bot API over HTTP on 127.0.0.1: reads a call, lets a planned fault strike, answers."""

import asyncio
import json
from typing import Any

from aiohttp import web

from demo_scenario.loopback.chats import StoredMessage
from demo_scenario.loopback.faults import (
    Break,
    DroppedAfter,
    DroppedBefore,
    FloodWait,
    GatewayFailure,
    NotJson,
    Refusal,
    Strike,
)
from demo_scenario.loopback.methods import carry_out
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.people import People
from demo_scenario.loopback.platform_state import LoopbackPlatform
from demo_scenario.loopback.reading_requests import read_params
from demo_scenario.loopback.refusals import (
    RefusedError,
    too_many_requests,
    unauthorized,
    unknown_path,
)
from demo_scenario.loopback.request_log import RecordedRequest

HOST = "127.0.0.1"
_ROOM_FOR_PARTS = 64 * 1024  # [bytes] CH: what a multipart body adds around the largest file
_GATEWAY_PAGE = "<html><head><title>{0}</title></head><body><h1>{0}</h1></body></html>"


class LoopbackServer:
    """Serves a platform; stopping and starting it again keeps the state and the port."""

    def __init__(self, platform: LoopbackPlatform) -> None:
        """Serve nothing yet."""
        self.platform = platform
        self.people = People(platform)
        self.port = 0
        self._server: web.Server | None = None
        self._runner: web.ServerRunner | None = None

    @property
    def base_url(self) -> str:
        """Return what the messaging library calls ``base_url``: the token is put behind it."""
        return f"http://{HOST}:{self.port}/bot"

    @property
    def base_file_url(self) -> str:
        """Return what the messaging library calls ``base_file_url``."""
        return f"http://{HOST}:{self.port}/file/bot"

    async def start(self) -> "LoopbackServer":
        """Listen, on the port of last time if there was one."""
        self._server = web.Server(
            self._answer,
            request_factory=self._request,
            # A poll whose client has died must not look parked.
            handler_cancellation=True,
            access_log=None,
        )
        self._runner = web.ServerRunner(self._server, shutdown_timeout=0.1)
        await self._runner.setup()
        site = web.TCPSite(self._runner, HOST, self.port, reuse_address=True)
        await site.start()
        self.port = self._runner.addresses[0][1]
        return self

    async def stop(self) -> None:
        """Break every connection and listen no more, as in an outage."""
        if self._runner is None or self._server is None:
            return
        for connection in self._server.connections:
            if connection.transport is not None:
                connection.transport.abort()
        await self._runner.cleanup()
        self._runner = self._server = None

    async def __aenter__(self) -> "LoopbackServer":
        """Start."""
        return await self.start()

    async def __aexit__(self, *_exception: object) -> None:
        """Stop."""
        await self.stop()

    def _request(
        self, message: Any, payload: Any, protocol: Any, writer: Any, task: Any
    ) -> web.BaseRequest:
        return web.BaseRequest(
            message,
            payload,
            protocol,
            writer,
            task,
            asyncio.get_running_loop(),
            client_max_size=self.platform.files.bounds.upload_bytes + _ROOM_FOR_PARTS,
        )

    async def _answer(self, request: web.BaseRequest) -> web.StreamResponse:
        path = request.path
        try:
            if path.startswith("/file/bot"):
                return self._download(path.removeprefix("/file/bot"))
            token, slash, method = path.removeprefix("/bot").partition("/")
            if not path.startswith("/bot") or not slash or ":" not in token:
                raise unknown_path()
            if token != self.platform.token:
                raise unauthorized()
            params = await read_params(request)
        except RefusedError as refused:
            return _json_response(refused.status, refused.as_json())
        return await self._answer_call(request, method, params)

    async def _answer_call(
        self, request: web.BaseRequest, method: str, params: Params
    ) -> web.StreamResponse:
        names = {name: upload.file_name for name, upload in params.uploads.items()}
        log = self.platform.requests
        record = log.open(method, params.values, names, self.platform.now())
        try:
            strike = self.platform.faults.strike(method, _chat_id(params))
            record.fault = strike.name
            if strike.before_s:
                await asyncio.sleep(strike.before_s)
            if strike.broken is None or _lets_through(strike.broken):
                return await self._carry_out(request, record, params, strike)
            return _broken_response(request, record, strike.broken)
        finally:
            log.close()
            self.platform.changes.tell()

    async def _carry_out(
        self, request: web.BaseRequest, record: RecordedRequest, params: Params, strike: Strike
    ) -> web.StreamResponse:
        sent: list[StoredMessage] = []
        try:
            result, sent = await carry_out(self.platform, record.method, params)
        except RefusedError as refused:
            status, body = refused.status, refused.as_json()
            record.description = refused.description
        else:
            status, body = 200, {"ok": True, "result": result}
            record.is_accepted = True
        if strike.after_s or strike.broken is not None:
            for message in sent:
                message.is_heard = False
            self.platform.changes.tell()
            await asyncio.sleep(strike.after_s)
        if strike.broken is not None:
            return _broken_response(request, record, strike.broken)
        for message in sent:
            message.is_heard = True
        record.status = status
        return _json_response(status, body)

    def _download(self, rest: str) -> web.StreamResponse:
        token, _, path = rest.partition("/")
        if token != self.platform.token:
            raise unauthorized()
        stored = self.platform.files.at_path(path)
        if stored is None:
            raise unknown_path()
        return web.Response(body=stored.content, content_type="application/octet-stream")


def _lets_through(broken: Break) -> bool:
    if isinstance(broken, GatewayFailure | NotJson):
        return broken.is_accepted
    return isinstance(broken, DroppedAfter)


def _chat_id(params: Params) -> int | None:
    value = params.text("chat_id")
    return int(value) if value.lstrip("-").isdecimal() else None


def _broken_response(
    request: web.BaseRequest, record: RecordedRequest, broken: Break
) -> web.StreamResponse:
    if isinstance(broken, DroppedBefore | DroppedAfter):
        if request.transport is not None:
            request.transport.abort()
        return web.Response()  # never arrives: there is no connection left to carry it
    if isinstance(broken, GatewayFailure):
        record.status = broken.status
        page = _GATEWAY_PAGE.format(f"{broken.status} gateway failure")
        return web.Response(status=broken.status, text=page, content_type="text/html")
    if isinstance(broken, NotJson):
        record.status = 200
        return web.Response(text=broken.body, content_type="text/html")
    refused = (
        too_many_requests(retry_after_s=broken.retry_after_s)
        if isinstance(broken, FloodWait)
        else _refused(broken)
    )
    record.status, record.description = refused.status, refused.description
    return _json_response(refused.status, refused.as_json())


def _refused(refusal: Refusal) -> RefusedError:
    return RefusedError(refusal.status, refusal.description, parameters=refusal.parameters)


def _json_response(status: int, body: Any) -> web.Response:
    return web.Response(
        status=status, body=json.dumps(body).encode(), content_type="application/json"
    )
