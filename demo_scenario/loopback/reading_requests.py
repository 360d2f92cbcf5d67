"""From an HTTP request to parameters: the address's query and whichever body there is."""

import json
from typing import Any
from urllib.parse import parse_qsl

from aiohttp import web
from aiohttp.web_request import FileField

from demo_scenario.loopback.files import Upload
from demo_scenario.loopback.params import Params
from demo_scenario.loopback.refusals import bad_request, too_large


async def read_params(request: web.BaseRequest) -> Params:
    """Read what a call asks, from JSON, a form, multipart parts, or the address."""
    values: dict[str, Any] = dict(request.query) if request.query_string else {}
    if not request.can_read_body:
        return Params(values)
    kind = request.content_type
    try:
        if kind == "multipart/form-data":
            return await _read_multipart(request, values)
        body = await request.read()
    except web.HTTPRequestEntityTooLarge:
        raise too_large() from None
    if kind == "application/json":
        values.update(_json_object(body))
    elif kind == "application/x-www-form-urlencoded":
        values.update(parse_qsl(body.decode(errors="replace"), keep_blank_values=True))
    return Params(values)


async def _read_multipart(request: web.BaseRequest, values: dict[str, Any]) -> Params:
    uploads = {}
    for name, part in (await request.post()).items():
        if isinstance(part, FileField):
            with part.file as opened:
                uploads[name] = Upload(part.filename, opened.read(), part.content_type)
        else:
            values[name] = part if isinstance(part, str) else bytes(part).decode(errors="replace")
    return Params(values, uploads)


def _json_object(body: bytes) -> dict[str, Any]:
    try:
        tree = json.loads(body or b"{}")
    except ValueError:
        tree = None
    if not isinstance(tree, dict):
        raise bad_request("can't parse request: expected a JSON object")
    return tree
