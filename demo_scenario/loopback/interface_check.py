"""Hold a recorded call against an independent library's typed picture of the same interface.

The library (aiogram) is a test dependency, so it is imported when a check is made: the demo runs
without it. Its models know names and types, not lengths; those are the server's to refuse.
"""

import json
from collections.abc import Iterable, Mapping
from functools import cache
from typing import Any

from pydantic import BaseModel, ValidationError
from pydantic.fields import FieldInfo

from demo_scenario.loopback.request_log import RecordedRequest


def problems_of_call(
    method: str, params: Mapping[str, Any], file_names: Mapping[str, str] | None = None
) -> tuple[str, ...]:
    """Say what of a call does not fit the published interface; nothing, when all of it fits.

    Args:
        method: the method's name as called; its case does not matter.
        params: parameters as they came, form strings or JSON values.
        file_names: files that came beside them, by the name of their part.

    """
    model = _models().get(method.lower())
    if model is None:
        return (f"{method}: there is no such method",)
    files = file_names or {}
    by_name = {info.alias or name: info for name, info in model.model_fields.items()}
    known = {name: value for name, value in params.items() if name in by_name}
    problems = [f"{method}.{name}: no such parameter" for name in params if name not in by_name]
    values = {name: _decoded(value, by_name[name]) for name, value in known.items()}
    values |= {name: _uploaded(files[name]) for name in files if name in by_name}
    problems += [
        f"{method}.{name}: a file that nothing names"
        for name in files
        if name not in by_name and f"attach://{name}" not in json.dumps(values, default=str)
    ]
    try:
        parsed = model.model_validate(values)
    except ValidationError as faults:
        return (*problems, *_worded(method, faults))
    unknown = [
        place for name in known for place in _unknown_below(name, getattr(parsed, name, None))
    ]
    return (*problems, *(f"{method}.{place}: no such field" for place in unknown))


def problems_of(record: RecordedRequest) -> tuple[str, ...]:
    """Say what of a recorded call does not fit the published interface."""
    return problems_of_call(record.method, record.params, record.file_names)


def problems_of_all(records: Iterable[RecordedRequest]) -> tuple[str, ...]:
    """Check many calls, and say each problem once."""
    return tuple(dict.fromkeys(found for record in records for found in problems_of(record)))


@cache
def _models() -> dict[str, type[BaseModel]]:
    from aiogram import methods  # noqa: PLC0415  test dependency, see above

    return {
        model.__api_method__.lower(): model
        for name in methods.__all__
        if isinstance(model := getattr(methods, name), type)
        and issubclass(model, methods.TelegramMethod)
        and model is not methods.TelegramMethod
    }


def _decoded(value: Any, field: FieldInfo) -> Any:
    """Decode a form's JSON, but never of a field that is text and nothing else."""
    is_tree = isinstance(value, str) and value[:1] in {"{", "["}
    if not is_tree or field.annotation in {str, str | None}:
        return value
    try:
        return json.loads(value)
    except ValueError:
        return value


def _uploaded(file_name: str) -> Any:
    from aiogram.types import BufferedInputFile  # noqa: PLC0415  test dependency, see above

    return BufferedInputFile(b"", filename=file_name)


def _worded(method: str, faults: ValidationError) -> list[str]:
    return [
        f"{method}.{'.'.join(str(step) for step in fault['loc'])}: {fault['msg']}"
        for fault in faults.errors()
    ]


def _unknown_below(place: str, value: Any) -> list[str]:
    """Find what the models let through without knowing it."""
    if isinstance(value, BaseModel):
        found = [f"{place}.{name}" for name in value.model_extra or ()]
        for name in type(value).model_fields:
            found += _unknown_below(f"{place}.{name}", getattr(value, name))
        return found
    if isinstance(value, list | tuple):
        return [
            each
            for number, item in enumerate(value)
            for each in _unknown_below(f"{place}.{number}", item)
        ]
    return []
